/** Names of series in one line above the marks, where no name fits at the marks themselves. */
import { textWidth } from './text.ts';

export interface KeyEntry {
  readonly name: string;
  readonly fill: string;
  readonly stroke: string;
  readonly bold?: boolean;
}

export function KeyLine(props: {
  readonly x: number;
  readonly y: number;
  readonly font: number;
  readonly entries: readonly KeyEntry[];
}) {
  const { x, y, font, entries } = props;
  const side = font * 0.75;
  const starts = entries.map((_, index) =>
    entries.slice(0, index).reduce((at, entry) => at + side + 8 + textWidth(entry.name, font, entry.bold) + 28, x),
  );
  return (
    <g>
      {entries.map((entry, index) => (
        <g key={entry.name}>
          <rect
            x={starts[index]}
            y={y - side}
            width={side}
            height={side}
            fill={entry.fill}
            stroke={entry.stroke}
            strokeWidth={1.5}
          />
          <text x={starts[index]! + side + 8} y={y} fontSize={font} fontWeight={entry.bold ? 650 : 400}>
            {entry.name}
          </text>
        </g>
      ))}
    </g>
  );
}
