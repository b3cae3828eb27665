/** What charts of ranges have in common: the scale behind the rows, the name before one, and its stem, band and dot. */

interface Stretch {
  readonly x: number;
  readonly width: number;
}

/** The ticks from top to bottom with their figures below, and the line at zero. */
export function ScaleLines(props: {
  readonly ticks: readonly { readonly x: number; readonly label: string }[];
  readonly top: number;
  readonly bottom: number;
  readonly zeroX: number;
  readonly faint: number;
}) {
  const { ticks, top, bottom, zeroX, faint } = props;
  return (
    <>
      {ticks.map((tick) => (
        <g key={tick.label}>
          <line x1={tick.x} x2={tick.x} y1={top} y2={bottom} stroke="var(--line)" />
          <text data-axis="" className="faint" x={tick.x} y={bottom + faint + 8} fontSize={faint} textAnchor="middle">
            {tick.label}
          </text>
        </g>
      ))}
      <line x1={zeroX} x2={zeroX} y1={top} y2={bottom} stroke="var(--ink)" strokeWidth={1.5} />
    </>
  );
}

/** The lines of a row's name, ending at `x` and centred about its middle. */
export function RowName(props: {
  readonly lines: readonly string[];
  readonly x: number;
  readonly baseline: number;
  readonly font: number;
  readonly strong: boolean;
}) {
  const { lines, x, baseline, font } = props;
  return lines.map((line, index) => (
    <text
      key={line}
      x={x}
      y={baseline + (index - (lines.length - 1) / 2) * font * 1.15}
      fontSize={font}
      textAnchor="end"
      fontWeight={props.strong ? 650 : 400}
    >
      {line}
    </text>
  ));
}

/** Stem from zero, band where 8 cases in 10 lie, dot at the most likely; dashed where it is only assumed. */
export function StemBandDot(props: {
  readonly stem: Stretch | null;
  readonly band: Stretch;
  readonly dotX: number;
  /** Middle line of the row. */
  readonly y: number;
  readonly thickness: number;
  readonly colour: string;
  readonly tint: string;
  readonly isAssumed: boolean;
}) {
  const { stem, band, y, thickness, colour } = props;
  return (
    <>
      {stem ? (
        <rect
          x={stem.x}
          y={y - thickness / 8}
          width={stem.width}
          height={thickness / 4}
          fill={colour}
          data-part="stem"
        />
      ) : null}
      <rect
        x={band.x}
        y={y - thickness / 2}
        width={band.width}
        height={thickness}
        fill={props.tint}
        stroke={colour}
        strokeWidth={1.5}
        {...(props.isAssumed ? { strokeDasharray: '5 4' } : {})}
        data-part="band"
      />
      <circle
        cx={props.dotX}
        cy={y}
        r={thickness / 4.2}
        fill={colour}
        stroke="var(--paper)"
        strokeWidth={2}
        data-part="dot"
      />
    </>
  );
}
