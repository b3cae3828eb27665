import { LevelLines } from '../frame/level-lines.tsx';
import { Measured, type Standing } from '../frame/measured.tsx';
import { layOutMonthParts, type MonthPartsLayout } from './layout.ts';
import type { MonthParts } from './series.ts';

/** Heat is neither paid for nor free, so it stands in ink; the cost of what is there now in slate. */
const COLOURS = {
  heat: { lower: 'var(--line)', upper: 'var(--paper)', stroke: 'var(--ink)' },
  cost: { lower: 'var(--fuel-tint)', upper: 'var(--paper)', stroke: 'var(--fuel)' },
} as const;

export function MonthPartsPicture({ parts, ...standing }: Standing & { readonly parts: MonthParts }) {
  return (
    <Measured {...standing}>
      {(place) => <Painted layout={layOutMonthParts(parts, standing.size, place)} what={parts.what} />}
    </Measured>
  );
}

function Painted({ layout, what }: { readonly layout: MonthPartsLayout; readonly what: MonthParts['what'] }) {
  const { width, height, left, right, baseY, font, faint, names } = layout;
  const colours = COLOURS[what];
  return (
    <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} aria-hidden="true">
      <LevelLines ticks={layout.ticks} left={left} right={right} faint={faint} />
      {layout.bars.map((bar) => (
        <g key={bar.month}>
          {(['lower', 'upper'] as const).map((part) => (
            <rect
              key={part}
              x={bar.x}
              y={bar[part].y}
              width={bar.width}
              height={bar[part].height}
              fill={colours[part]}
              stroke={colours.stroke}
              strokeWidth={1.5}
              data-part={part}
            />
          ))}
          <text className="faint" x={bar.x + bar.width / 2} y={baseY + faint + 6} fontSize={faint} textAnchor="middle">
            {bar.month}
          </text>
        </g>
      ))}
      <line x1={left} x2={right} y1={baseY} y2={baseY} stroke="var(--ink)" strokeWidth={1.5} />
      {names.map((name) => (
        <text key={name.text} x={name.x} y={name.y} fontSize={font}>
          {name.text}
        </text>
      ))}
    </svg>
  );
}
