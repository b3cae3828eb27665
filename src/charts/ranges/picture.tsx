import { Measured, type Standing } from '../frame/measured.tsx';
import { RowName, ScaleLines, StemBandDot } from '../frame/stem-band-dot.tsx';
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
  const { width, height } = layout;
  return (
    <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} aria-hidden="true">
      <ScaleLines {...layout} />
      {layout.marks.map((mark) => (
        <Mark key={mark.row.name} mark={mark} layout={layout} />
      ))}
    </svg>
  );
}

function Mark({ mark, layout }: { readonly mark: RangeMark; readonly layout: RangesLayout }) {
  const { row, y } = mark;
  const { font } = layout;
  const baseline = y + font * 0.35;
  return (
    <g>
      <RowName
        lines={mark.nameLines}
        x={layout.zeroX - 14}
        baseline={baseline}
        font={font}
        strong={row.kind !== 'beside'}
      />
      <StemBandDot {...mark} {...COLOURS[row.kind]} thickness={layout.thickness} isAssumed={row.grade === 'assumed'} />
      <text x={mark.labelX} y={baseline} fontSize={font} fontWeight={650}>
        {row.label}
        <tspan fill="var(--quiet)" fontWeight={400} dx={8}>
          {row.range}
        </tspan>
      </text>
    </g>
  );
}
