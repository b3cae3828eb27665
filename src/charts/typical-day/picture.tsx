import { LevelLines } from '../frame/level-lines.tsx';
import { Measured, type Standing } from '../frame/measured.tsx';
import { type DayLayout, layOutDay } from './layout.ts';
import type { DaySeries } from './series.ts';

/** A day by the clock with what was seen in it. */
export function DayPicture({ series, ...standing }: Standing & { readonly series: DaySeries }) {
  return <Measured {...standing}>{(place) => <Painted layout={layOutDay(series, standing.size, place)} />}</Measured>;
}

function Painted({ layout }: { readonly layout: DayLayout }) {
  const { width, height, left, right, baseY, font, faint } = layout;
  return (
    <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} aria-hidden="true">
      <LevelLines ticks={layout.ticks} left={left} right={right} faint={faint} />
      <path d={layout.seenPath} fill="var(--meter-tint)" stroke="var(--meter)" strokeWidth={1.5} data-part="seen" />
      {layout.otherwisePath ? (
        <path
          d={layout.otherwisePath}
          fill="none"
          stroke="var(--ink)"
          strokeWidth={1.5}
          strokeDasharray="5 4"
          data-part="otherwise"
        />
      ) : null}
      <line x1={left} x2={right} y1={baseY} y2={baseY} stroke="var(--ink)" strokeWidth={1.5} />
      {layout.hours.map((hour, index) => (
        <text
          key={hour.label}
          className="faint"
          x={hour.x}
          y={baseY + faint + 6}
          fontSize={faint}
          textAnchor={index === 0 ? 'start' : index === layout.hours.length - 1 ? 'end' : 'middle'}
        >
          {hour.label}
        </text>
      ))}
      {layout.names.map((name) => (
        <text key={name.text} x={name.x} y={name.y} fontSize={font}>
          {name.text}
        </text>
      ))}
    </svg>
  );
}
