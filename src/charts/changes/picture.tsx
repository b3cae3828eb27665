import { Measured, type Standing } from '../frame/measured.tsx';
import { type ChangesLayout, layOutChanges } from './layout.ts';
import type { ChangeRow } from './series.ts';

/** What single changes add to the heat pump's year or take away: amber where more is paid at the meter. */
export function ChangesPicture({ rows, ...standing }: Standing & { readonly rows: readonly ChangeRow[] }) {
  return <Measured {...standing}>{(place) => <Painted layout={layOutChanges(rows, standing.size, place)} />}</Measured>;
}

function Painted({ layout }: { readonly layout: ChangesLayout }) {
  const { width, height, font, thickness, zeroX, nameX } = layout;
  return (
    <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} aria-hidden="true">
      {layout.marks.map((mark) => (
        <g key={mark.code} data-change={mark.code}>
          {mark.nameLines.map((line, index) => (
            <text
              key={line}
              x={nameX}
              y={mark.y + font * (0.35 + (index - (mark.nameLines.length - 1) / 2) * 1.15)}
              fontSize={font}
              textAnchor="end"
            >
              {line}
            </text>
          ))}
          <rect
            x={mark.x}
            y={mark.y - thickness / 2}
            width={mark.width}
            height={thickness}
            fill={mark.costs === 'more' ? 'var(--meter-tint)' : 'var(--ground-tint)'}
            stroke={mark.costs === 'more' ? 'var(--meter)' : 'var(--ground)'}
            strokeWidth={1.5}
          />
          <text x={mark.labelX} y={mark.y + font * 0.35} fontSize={font} fontWeight={650} textAnchor={mark.anchor}>
            {mark.label}
          </text>
        </g>
      ))}
      <line x1={zeroX} x2={zeroX} y1={4} y2={height - 4} stroke="var(--ink)" strokeWidth={1.5} />
    </svg>
  );
}
