/** What charts with a scale on their left have in common: a faint line at each tick, its figure before it. */
export function LevelLines(props: {
  readonly ticks: readonly { readonly y: number; readonly label: string }[];
  readonly left: number;
  readonly right: number;
  readonly faint: number;
}) {
  const { ticks, left, right, faint } = props;
  return ticks.map((tick) => (
    <g key={tick.label}>
      <line x1={left} x2={right} y1={tick.y} y2={tick.y} stroke="var(--line)" />
      <text data-axis="" className="faint" x={left - 8} y={tick.y + faint * 0.35} fontSize={faint} textAnchor="end">
        {tick.label}
      </text>
    </g>
  ));
}
