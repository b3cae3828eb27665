import { Measured } from '../frame/measured.tsx';
import { measuresOf, type PictureSize } from '../frame/size.ts';
import { type HeatMonths, type HeatMonthsLayout, layOutHeatMonths } from './layout.ts';

/** Heat needed by month. Neither part is paid for or free yet, so both stand in ink alone. */
export function HeatMonthsPicture(props: {
  readonly months: HeatMonths;
  readonly size: PictureSize;
  readonly width?: number;
  readonly height?: number;
}) {
  const { months, size, width, height } = props;
  const paint = (given: number) => (
    <Painted layout={layOutHeatMonths(months, size, { width: given, ...(height === undefined ? {} : { height }) })} />
  );
  return width === undefined ? <Measured initial={measuresOf(size).width}>{paint}</Measured> : paint(width);
}

function Painted({ layout }: { readonly layout: HeatMonthsLayout }) {
  const { width, height, left, right, baseY, font, faint, names } = layout;
  return (
    <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} aria-hidden="true">
      {layout.ticks.map((tick) => (
        <g key={tick.label}>
          <line x1={left} x2={right} y1={tick.y} y2={tick.y} stroke="var(--line)" />
          <text className="faint" x={left - 8} y={tick.y + faint * 0.35} fontSize={faint} textAnchor="end">
            {tick.label}
          </text>
        </g>
      ))}
      {layout.bars.map((bar) => (
        <g key={bar.month}>
          <rect
            x={bar.x}
            y={bar.roomsY}
            width={bar.width}
            height={bar.roomsHeight}
            fill="var(--line)"
            stroke="var(--ink)"
            strokeWidth={1.5}
            data-part="rooms"
          />
          <rect
            x={bar.x}
            y={bar.waterY}
            width={bar.width}
            height={bar.waterHeight}
            fill="var(--paper)"
            stroke="var(--ink)"
            strokeWidth={1.5}
            data-part="water"
          />
          <text className="faint" x={bar.x + bar.width / 2} y={baseY + faint + 6} fontSize={faint} textAnchor="middle">
            {bar.month}
          </text>
        </g>
      ))}
      <line x1={left} x2={right} y1={baseY} y2={baseY} stroke="var(--ink)" strokeWidth={1.5} />
      <text x={names.x} y={names.waterY} fontSize={font}>
        hot water
      </text>
      <text x={names.x} y={names.roomsY} fontSize={font}>
        rooms
      </text>
    </svg>
  );
}
