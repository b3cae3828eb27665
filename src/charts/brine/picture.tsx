import { LevelLines } from '../frame/level-lines.tsx';
import { Measured, type Standing } from '../frame/measured.tsx';
import { type BrineLayout, layOutBrine } from './layout.ts';
import type { BrineSeries } from './series.ts';

/** The brine of every visit, oldest first. */
export function BrinePicture({ series, ...standing }: Standing & { readonly series: BrineSeries }) {
  return <Measured {...standing}>{(place) => <Painted layout={layOutBrine(series, standing.size, place)} />}</Measured>;
}

const pathOf = (points: readonly { readonly x: number; readonly y: number }[]): string =>
  points.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${x} ${y}`).join('');

function Painted({ layout }: { readonly layout: BrineLayout }) {
  const { width, height, left, right, baseY, zeroY, freezingY, font, faint, marks } = layout;
  const out = marks.flatMap(({ x, outY }) => (outY === null ? [] : [{ x, y: outY }]));
  return (
    <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} aria-hidden="true">
      <LevelLines ticks={layout.ticks} left={left} right={right} faint={faint} />
      <line x1={left} x2={right} y1={zeroY} y2={zeroY} stroke="var(--ink)" strokeWidth={1.5} />
      {freezingY === null ? null : (
        <line
          x1={left}
          x2={right}
          y1={freezingY}
          y2={freezingY}
          stroke="var(--over)"
          strokeWidth={2}
          strokeDasharray="6 5"
        />
      )}
      <path d={pathOf(out)} fill="none" stroke="var(--ground)" strokeWidth={1.5} strokeDasharray="3 3" />
      <path
        d={pathOf(marks.map(({ x, inY }) => ({ x, y: inY })))}
        fill="none"
        stroke="var(--ground)"
        strokeWidth={2.5}
      />
      {marks.map(({ date, x, inY, outY, label, day }) => (
        <g key={date} data-visit={date}>
          {outY === null ? null : (
            <circle cx={x} cy={outY} r={font * 0.32} fill="var(--paper)" stroke="var(--ground)" strokeWidth={1.5} />
          )}
          <circle cx={x} cy={inY} r={font * 0.38} fill="var(--ground)" stroke="var(--paper)" strokeWidth={1.5} />
          <text x={x} y={inY - font * 0.75} fontSize={faint} textAnchor="middle">
            {label}
          </text>
          {day === null ? null : (
            <text className="faint" x={x} y={baseY + faint + 6} fontSize={faint} textAnchor="middle">
              {day}
            </text>
          )}
        </g>
      ))}
      {layout.names.map((name) => (
        <text key={name.text} x={right + 10} y={name.y} fontSize={font}>
          {name.text}
        </text>
      ))}
    </svg>
  );
}
