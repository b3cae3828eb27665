import { Measured, type Standing } from '../frame/measured.tsx';
import { layOutRanges, type RangeMark, type RangesLayout } from './layout.ts';
import type { RangeRow, RangeScale } from './series.ts';

const COLOURS: { readonly [kind in RangeRow['kind']]: { readonly colour: string; readonly tint: string } } = {
  pump: { colour: 'var(--ground)', tint: 'var(--ground-tint)' },
  sum: { colour: 'var(--ink)', tint: 'var(--line)' },
  beside: { colour: 'var(--fuel)', tint: 'var(--fuel-tint)' },
};

/** Ranges one below the other on one scale from zero. */
export function RangesPicture(props: Standing & { readonly rows: readonly RangeRow[]; readonly scale: RangeScale }) {
  const { rows, scale, ...standing } = props;
  return (
    <Measured {...standing}>{(place) => <Painted layout={layOutRanges(rows, scale, standing.size, place)} />}</Measured>
  );
}

function Painted({ layout }: { readonly layout: RangesLayout }) {
  const { width, height, top, bottom, zeroX, faint } = layout;
  return (
    <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} aria-hidden="true">
      {layout.ticks.map((tick) => (
        <g key={tick.x}>
          <line x1={tick.x} x2={tick.x} y1={top} y2={bottom} stroke="var(--line)" />
          <text data-axis="" className="faint" x={tick.x} y={bottom + faint + 7} fontSize={faint} textAnchor="middle">
            {tick.label}
          </text>
        </g>
      ))}
      <line x1={zeroX} x2={zeroX} y1={top} y2={bottom} stroke="var(--ink)" strokeWidth={1.5} />
      {layout.marks.map((mark) => (
        <Mark key={mark.row.name} mark={mark} layout={layout} />
      ))}
    </svg>
  );
}

function Mark({ mark, layout }: { readonly mark: RangeMark; readonly layout: RangesLayout }) {
  const { row, y } = mark;
  const { thickness, font } = layout;
  const ours = row.kind !== 'beside';
  const { colour, tint } = COLOURS[row.kind];
  const baseline = y + font * 0.35;
  return (
    <g>
      {mark.nameLines.map((line, index) => (
        <text
          key={line}
          x={layout.zeroX - 14}
          y={baseline + (index - (mark.nameLines.length - 1) / 2) * font * 1.15}
          fontSize={font}
          textAnchor="end"
          fontWeight={ours ? 650 : 400}
        >
          {line}
        </text>
      ))}
      <rect x={mark.stem.x} y={y - thickness / 8} width={mark.stem.width} height={thickness / 4} fill={colour} />
      <rect
        x={mark.band.x}
        y={y - thickness / 2}
        width={mark.band.width}
        height={thickness}
        fill={tint}
        stroke={colour}
        strokeWidth={1.5}
        strokeDasharray={row.grade === 'assumed' ? '5 4' : undefined}
      />
      <circle cx={mark.dotX} cy={y} r={thickness / 4.2} fill={colour} stroke="var(--paper)" strokeWidth={2} />
      <text x={mark.labelX} y={baseline} fontSize={font} fontWeight={650}>
        {row.label}
        <tspan fill="var(--quiet)" fontWeight={400} dx={8}>
          {row.range}
        </tspan>
      </text>
    </g>
  );
}
