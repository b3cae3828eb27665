import { say } from '../../words/say.ts';
import { Measured, type Standing } from '../frame/measured.tsx';
import { RowName, ScaleLines, StemBandDot } from '../frame/stem-band-dot.tsx';
import { layOutSpread, type SpreadLayout, type SpreadMark } from './layout.ts';
import type { SpreadRow } from './series.ts';

/** The yearly costs. Without `width` the picture takes the width of its place. */
export function SpreadPicture({ rows, ...standing }: Standing & { readonly rows: readonly SpreadRow[] }) {
  return <Measured {...standing}>{(place) => <Painted layout={layOutSpread(rows, standing.size, place)} />}</Measured>;
}

function Painted({ layout }: { readonly layout: SpreadLayout }) {
  const { width, height } = layout;
  return (
    <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} aria-hidden="true">
      <ScaleLines {...layout} />
      {layout.marks.map((mark) => (
        <Row key={mark.row.id} mark={mark} layout={layout} />
      ))}
    </svg>
  );
}

function Row({ mark, layout }: { readonly mark: SpreadMark; readonly layout: SpreadLayout }) {
  const { row, y, thickness, cost } = mark;
  const { font } = layout;
  const colour = row.ours ? 'var(--ground)' : 'var(--fuel)';
  const tint = row.ours ? 'var(--ground-tint)' : 'var(--fuel-tint)';
  const baseline = y + font * 0.35;
  // The block of name and price stands in the middle of the row.
  const step = layout.note * 1.15;
  const nameY = baseline - (mark.priceLines.length * step) / 2;
  const nameX = Math.min(layout.ticks[0]!.x, layout.zeroX) - 14;
  return (
    <g data-system={row.id}>
      <RowName lines={mark.nameLines} x={nameX} baseline={nameY} font={font} strong={row.ours} />
      {mark.priceLines.map((line, index) => (
        <text
          key={line}
          className="faint"
          x={nameX}
          y={nameY + ((mark.nameLines.length - 1) / 2) * font * 1.15 + (index + 1) * step}
          fontSize={layout.note}
          textAnchor="end"
        >
          {line}
        </text>
      ))}
      {cost === null ? (
        <>
          <rect
            x={layout.openBar.x}
            y={y - thickness / 2}
            width={layout.openBar.width}
            height={thickness}
            fill="none"
            stroke="var(--quiet)"
            strokeWidth={1.5}
            strokeDasharray="5 4"
          />
          <text className="faint" x={layout.openBar.x + layout.openBar.width + 12} y={baseline} fontSize={font}>
            {say('not known yet')}
          </text>
        </>
      ) : (
        <>
          {cost.designedX === null ? null : (
            <line
              x1={cost.designedX}
              x2={cost.designedX}
              y1={y - thickness * 0.7}
              y2={y + thickness * 0.7}
              stroke={colour}
              strokeWidth={2}
              data-part="designed"
            />
          )}
          <StemBandDot
            {...cost}
            y={y}
            thickness={thickness}
            colour={colour}
            tint={tint}
            isAssumed={row.grade === 'assumed' || row.openPrice === true}
          />
          <text x={cost.labelX} y={layout.stacked ? baseline - font * 0.6 : baseline} fontSize={font} fontWeight={650}>
            {cost.middle}
            {layout.stacked ? null : (
              <tspan fill="var(--quiet)" fontWeight={400} dx={8}>
                {cost.range}
              </tspan>
            )}
          </text>
          {layout.stacked ? (
            <text className="faint" x={cost.labelX} y={baseline + font * 0.6} fontSize={font}>
              {cost.range}
            </text>
          ) : null}
        </>
      )}
    </g>
  );
}
