import { say } from '../../words/say.ts';
import { LevelLines } from '../frame/level-lines.tsx';
import { Measured, type Standing } from '../frame/measured.tsx';
import { layOutYears, type YearsLayout, type YearsMark } from './layout.ts';
import type { YearsSeries } from './series.ts';

/** What has been paid by each year: a whole green line for the heat pump, a dashed slate one for the other, bands about both. */
export function YearsPicture({ series, ...standing }: Standing & { readonly series: YearsSeries }) {
  return <Measured {...standing}>{(place) => <Painted layout={layOutYears(series, standing.size, place)} />}</Measured>;
}

const STYLES = {
  pump: { colour: 'var(--ground)', tint: 'var(--ground-tint)', wide: 3.5, dash: undefined },
  beside: { colour: 'var(--fuel)', tint: 'var(--fuel-tint)', wide: 3, dash: '9 5' },
} as const;

function Painted({ layout }: { readonly layout: YearsLayout }) {
  const { width, height, left, right, top, bottom, font, faint, breakEven } = layout;
  return (
    <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} aria-hidden="true">
      <text className="faint" x={0} y={faint} fontSize={faint}>
        {say('paid in total, in today’s money')}
      </text>
      <LevelLines ticks={layout.moneyTicks} left={left} right={right} faint={faint} />
      {layout.yearTicks.map((tick) => (
        <text
          data-axis=""
          key={tick.label}
          className="faint"
          x={tick.x}
          y={bottom + faint * 1.35}
          fontSize={faint}
          textAnchor="middle"
        >
          {tick.label}
        </text>
      ))}
      <text className="faint" x={(left + right) / 2} y={bottom + faint * 2.6} fontSize={faint} textAnchor="middle">
        {say('years from now')}
      </text>
      {layout.marks.toReversed().map((mark) => (
        <Band key={mark.whose} mark={mark} />
      ))}
      <line x1={left} x2={left} y1={top} y2={bottom} stroke="var(--ink)" strokeWidth={1.5} />
      {breakEven ? (
        <line
          x1={breakEven.x}
          x2={breakEven.x}
          y1={top}
          y2={bottom}
          stroke="var(--ink)"
          strokeWidth={1.5}
          strokeDasharray="2 4"
          data-part="break-even"
        />
      ) : null}
      {layout.marks.toReversed().map((mark) => (
        <Line key={mark.whose} mark={mark} font={font} />
      ))}
      {breakEven ? (
        <>
          <circle
            cx={breakEven.x}
            cy={breakEven.y}
            r={font * 0.38}
            fill="var(--ink)"
            stroke="var(--paper)"
            strokeWidth={2}
          />
          <text
            x={breakEven.labelX}
            y={top - font * 0.25}
            fontSize={font}
            fontWeight={650}
            textAnchor={breakEven.anchor}
          >
            {breakEven.label}
          </text>
        </>
      ) : null}
    </svg>
  );
}

function Band({ mark }: { readonly mark: YearsMark }) {
  const { colour, tint } = STYLES[mark.whose];
  return (
    <path
      d={mark.band}
      fill={tint}
      fillOpacity={0.55}
      stroke={colour}
      strokeWidth={1}
      data-part={`band-${mark.whose}`}
    />
  );
}

function Line({ mark, font }: { readonly mark: YearsMark; readonly font: number }) {
  const { colour, wide, dash } = STYLES[mark.whose];
  return (
    <g>
      <path
        d={mark.line}
        fill="none"
        stroke={colour}
        strokeWidth={wide}
        strokeLinejoin="round"
        {...(dash ? { strokeDasharray: dash } : {})}
        data-part={`line-${mark.whose}`}
      />
      {mark.nameLines.map((line, index) => (
        <text
          key={line}
          x={mark.labelX}
          y={mark.labelY + index * font * 1.15}
          fontSize={font}
          fontWeight={mark.whose === 'pump' ? 650 : 400}
        >
          {line}
        </text>
      ))}
      <text className="faint" x={mark.labelX} y={mark.labelY + mark.nameLines.length * font * 1.15} fontSize={font}>
        {mark.total}
      </text>
    </g>
  );
}
