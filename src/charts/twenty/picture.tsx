import { Measured, type Standing } from '../frame/measured.tsx';
import { layOutTwenty, type TwentyLayout } from './layout.ts';

/** Twenty equally likely differences in yearly cost; positive pence mean that the heat pump costs less. */
export function TwentyPicture({ savingsPence, ...standing }: Standing & { readonly savingsPence: readonly number[] }) {
  return (
    <Measured {...standing}>
      {(place) => <Painted layout={layOutTwenty(savingsPence, standing.size, place)} />}
    </Measured>
  );
}

function Painted({ layout }: { readonly layout: TwentyLayout }) {
  const { width, height, left, right, top, base, zeroX, font, faint, radius } = layout;
  return (
    <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} aria-hidden="true">
      <rect
        x={left}
        y={top}
        width={Math.max(zeroX - left, 0)}
        height={base - top}
        fill="var(--fuel-tint)"
        opacity={0.35}
      />
      {layout.names.map(({ line, ...place }) => (
        <text className="faint" key={`${place.x} ${line}`} fontSize={font} {...place}>
          {line}
        </text>
      ))}
      {layout.dots.map((dot) => (
        <circle
          key={`${dot.x} ${dot.y}`}
          cx={dot.x}
          cy={dot.y}
          r={radius}
          fill={dot.side === 'less' ? 'var(--ground-tint)' : 'var(--paper)'}
          stroke={dot.side === 'less' ? 'var(--ground)' : 'var(--fuel)'}
          strokeWidth={2}
          data-side={dot.side}
        />
      ))}
      <line x1={left} x2={right} y1={base} y2={base} stroke="var(--ink)" strokeWidth={1.5} />
      <line x1={zeroX} x2={zeroX} y1={top} y2={base + 8} stroke="var(--ink)" strokeWidth={2} />
      {layout.ticks.map((tick) => (
        <text
          data-axis=""
          key={tick.x}
          className="faint"
          x={tick.x}
          y={base + faint + 12}
          fontSize={faint}
          textAnchor="middle"
        >
          {tick.label}
        </text>
      ))}
    </svg>
  );
}
