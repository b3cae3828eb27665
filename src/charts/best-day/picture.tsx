import { Measured, type Standing } from '../frame/measured.tsx';
import { type BestDayLayout, layOutBestDay } from './layout.ts';
import type { BestDaySeries } from './series.ts';

/** Price, heat and rooms of one cold day under each other. */
export function BestDayPicture({ series, ...standing }: Standing & { readonly series: BestDaySeries }) {
  return (
    <Measured {...standing}>{(place) => <Painted layout={layOutBestDay(series, standing.size, place)} />}</Measured>
  );
}

function Painted({ layout }: { readonly layout: BestDayLayout }) {
  const { width, height, left, right, faint, price, heat, rooms } = layout;
  return (
    <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} aria-hidden="true">
      <path d={price.path} fill="var(--meter-tint)" stroke="var(--meter)" strokeWidth={1} data-part="price" />
      <path d={heat.bestPath} fill="var(--ground-tint)" stroke="var(--ground)" strokeWidth={1} data-part="best" />
      <path
        d={heat.usualPath}
        fill="none"
        stroke="var(--ink)"
        strokeWidth={1.5}
        strokeDasharray="5 4"
        data-part="usual"
      />
      <rect x={left} width={right - left} {...rooms.band} fill="var(--fuel-tint)" />
      <path d={rooms.path} fill="none" stroke="var(--ink)" strokeWidth={2} data-part="rooms" />
      {[price, heat, rooms].map(({ name, nameY, baseY }) => (
        <g key={name}>
          <line x1={left} x2={right} y1={baseY} y2={baseY} stroke="var(--ink)" strokeWidth={1} />
          <text x={left} y={nameY} fontSize={faint}>
            {name}
          </text>
        </g>
      ))}
      {layout.hours.map((hour, index) => (
        <text
          key={hour.label}
          className="faint"
          x={hour.x}
          y={height - 4}
          fontSize={faint}
          textAnchor={index === 0 ? 'start' : index === layout.hours.length - 1 ? 'end' : 'middle'}
        >
          {hour.label}
        </text>
      ))}
    </svg>
  );
}
