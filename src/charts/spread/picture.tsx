import { say } from '../../words/say.ts';
import { Measured, type Standing } from '../frame/measured.tsx';
import { layOutSpread, type SpreadLayout, type SpreadMark } from './layout.ts';
import type { SpreadRow } from './series.ts';

/** The yearly costs. Without `width` the picture takes the width of its place. */
export function SpreadPicture({ rows, ...standing }: Standing & { readonly rows: readonly SpreadRow[] }) {
  return <Measured {...standing}>{(place) => <Painted layout={layOutSpread(rows, standing.size, place)} />}</Measured>;
}

function Painted({ layout }: { readonly layout: SpreadLayout }) {
  const { width, height, top, bottom, zeroX, faint } = layout;
  return (
    <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} aria-hidden="true">
      {layout.ticks.map((tick) => (
        <g key={tick.label}>
          <line x1={tick.x} x2={tick.x} y1={top} y2={bottom} stroke="var(--line)" />
          <text data-axis="" className="faint" x={tick.x} y={bottom + faint + 8} fontSize={faint} textAnchor="middle">
            {tick.label}
          </text>
        </g>
      ))}
      <line x1={zeroX} x2={zeroX} y1={top} y2={bottom} stroke="var(--ink)" strokeWidth={1.5} />
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
  const nameX = Math.min(layout.ticks[0]!.x, layout.zeroX) - 14;
  return (
    <g data-system={row.id}>
      {mark.nameLines.map((line, index) => (
        <text
          key={line}
          x={nameX}
          y={baseline + (index - (mark.nameLines.length - 1) / 2) * font * 1.15}
          fontSize={font}
          textAnchor="end"
          fontWeight={row.ours ? 650 : 400}
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
          {cost.stem ? (
            <rect
              x={cost.stem.x}
              y={y - thickness / 8}
              width={cost.stem.width}
              height={thickness / 4}
              fill={colour}
              data-part="stem"
            />
          ) : null}
          <rect
            x={cost.band.x}
            y={y - thickness / 2}
            width={cost.band.width}
            height={thickness}
            fill={tint}
            stroke={colour}
            strokeWidth={1.5}
            {...(row.grade === 'assumed' ? { strokeDasharray: '5 4' } : {})}
            data-part="band"
          />
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
          <circle
            cx={cost.dotX}
            cy={y}
            r={thickness / 4.2}
            fill={colour}
            stroke="var(--paper)"
            strokeWidth={2}
            data-part="dot"
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
