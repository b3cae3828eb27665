import type { Driver } from '../../model/what-drives/what-drives.ts';
import { say } from '../../words/say.ts';
import { LevelLines } from '../frame/level-lines.tsx';
import { Measured, type Standing } from '../frame/measured.tsx';
import { type DriverLayout, layOutDriver } from './layout.ts';

/** The heat pump's yearly cost against one thing that drives it; the filled dot is what is shown. */
export function DriverPicture(props: Standing & { readonly driver: Driver; readonly highestPence?: number }) {
  const { driver, highestPence, ...standing } = props;
  return (
    <Measured {...standing} share={0.5}>
      {(place) => <Painted layout={layOutDriver(driver, standing.size, { ...place, highestPence })} />}
    </Measured>
  );
}

function Painted({ layout }: { readonly layout: DriverLayout }) {
  const { width, height, left, right, top, bottom, font, faint, name, nowLabel } = layout;
  return (
    <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} aria-hidden="true">
      <text className="faint" x={0} y={faint} fontSize={faint}>
        {say('cost of a year')}
      </text>
      <LevelLines ticks={layout.moneyTicks} left={left} right={right} faint={faint} />
      <line x1={left} x2={right} y1={bottom} y2={bottom} stroke="var(--ink)" strokeWidth={1.5} />
      <path
        d={layout.line}
        fill="none"
        stroke="var(--ground)"
        strokeWidth={3}
        strokeLinejoin="round"
        data-part="line"
      />
      {layout.marks.map((mark) => (
        <g key={mark.x}>
          <circle
            cx={mark.x}
            cy={mark.y}
            r={mark.now ? font * 0.42 : font * 0.24}
            fill={mark.now ? 'var(--ground)' : 'var(--paper)'}
            stroke={mark.now ? 'var(--paper)' : 'var(--ground)'}
            strokeWidth={2}
            data-part={mark.now ? 'now' : 'step'}
          />
          <text
            x={mark.x}
            y={bottom + faint * 1.35}
            fontSize={faint}
            textAnchor="middle"
            fontWeight={mark.now ? 650 : 400}
          >
            {mark.label}
          </text>
          <text className="faint" x={mark.x} y={bottom + faint * 2.6} fontSize={faint} textAnchor="middle">
            {mark.factor}
          </text>
        </g>
      ))}
      <text className="faint" x={left - 8} y={bottom + faint * 2.6} fontSize={faint} textAnchor="end">
        {say('seasonal factor')}
      </text>
      <text className="faint" x={name.x} y={bottom + faint * 3.9} fontSize={name.font} textAnchor="middle">
        {name.text}
      </text>
      {nowLabel ? (
        <text
          x={nowLabel.x}
          y={Math.max(top, nowLabel.y)}
          fontSize={font}
          fontWeight={650}
          textAnchor={nowLabel.anchor}
          stroke="var(--paper)"
          strokeWidth={5}
          paintOrder="stroke"
        >
          {nowLabel.text}
        </text>
      ) : null}
    </svg>
  );
}
