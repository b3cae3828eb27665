import { LevelLines } from '../frame/level-lines.tsx';
import { Measured, type Standing } from '../frame/measured.tsx';
import { type FollowingLayout, type FollowingMark, type FollowingName, KEY_WIDTH, layOutFollowing } from './layout.ts';
import type { FollowingSeries } from './series.ts';

/** Estimated against metered, month by month. */
export function FollowingPicture({ series, ...standing }: Standing & { readonly series: FollowingSeries }) {
  return (
    <Measured {...standing}>{(place) => <Painted layout={layOutFollowing(series, standing.size, place)} />}</Measured>
  );
}

function Painted({ layout }: { readonly layout: FollowingLayout }) {
  const { width, height, left, right, baseY, font, faint } = layout;
  return (
    <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} aria-hidden="true">
      <LevelLines ticks={layout.ticks} left={left} right={right} faint={faint} />
      {layout.marks.map((mark) => (
        <Month key={mark.month} mark={mark} layout={layout} />
      ))}
      <line x1={left} x2={right} y1={baseY} y2={baseY} stroke="var(--ink)" strokeWidth={1.5} />
      {layout.names.map((name) => (
        <g key={name.text}>
          <Key name={name} font={font} />
          <text x={name.x} y={name.y} fontSize={font}>
            {name.text}
          </text>
        </g>
      ))}
    </svg>
  );
}

function Month({ mark, layout }: { readonly mark: FollowingMark; readonly layout: FollowingLayout }) {
  const { x, width, middle, band, actual, verdict } = mark;
  const { baseY, faint, font } = layout;
  return (
    <g data-month={mark.month} data-verdict={verdict}>
      <rect
        x={x}
        y={band.y}
        width={width}
        height={band.height}
        fill="var(--ground-tint)"
        stroke="var(--ground)"
        strokeWidth={1.5}
        {...(mark.weatherKnown ? {} : { strokeDasharray: '5 4' })}
      />
      <line x1={x} x2={x + width} y1={mark.expectedY} y2={mark.expectedY} stroke="var(--ground)" strokeWidth={2.5} />
      <line
        x1={x - width * 0.25}
        x2={x + width * 1.25}
        y1={mark.estimatedY}
        y2={mark.estimatedY}
        stroke="var(--quiet)"
        strokeWidth={1.5}
        strokeDasharray="3 3"
      />
      {actual ? <Meter x={middle} y={actual.y} radius={font * 0.4} verdict={verdict} /> : null}
      {actual ? (
        <text x={middle} y={actual.labelY} fontSize={faint} textAnchor="middle">
          {actual.label}
        </text>
      ) : null}
      <text className="faint" x={middle} y={baseY + faint + 6} fontSize={faint} textAnchor="middle">
        {mark.name}
      </text>
      {mark.year ? (
        <text className="faint" x={middle} y={baseY + faint * 2.2 + 6} fontSize={faint} textAnchor="middle">
          {mark.year}
        </text>
      ) : null}
    </g>
  );
}

/** The mark that a name stands for. */
function Key({ name, font }: { readonly name: FollowingName; readonly font: number }) {
  const x = name.x - KEY_WIDTH;
  const y = name.y - font * 0.33;
  if (name.mark === 'actual') return <Meter x={x + 9} y={y} radius={font * 0.4} verdict="inside" />;
  if (name.mark === 'estimated')
    return <line x1={x} x2={x + 18} y1={y} y2={y} stroke="var(--quiet)" strokeWidth={1.5} strokeDasharray="3 3" />;
  if (name.mark === null) return null;
  return (
    <>
      <rect
        x={x + 3}
        y={y - font * 0.4}
        width={12}
        height={font * 1.2}
        fill="var(--ground-tint)"
        stroke="var(--ground)"
        strokeWidth={1.5}
      />
      <line x1={x + 3} x2={x + 15} y1={y + font * 0.2} y2={y + font * 0.2} stroke="var(--ground)" strokeWidth={2.5} />
    </>
  );
}

/** A dot inside, a diamond outside: the colour is not the only cue. */
function Meter(props: { readonly x: number; readonly y: number; readonly radius: number; readonly verdict: string }) {
  const { x, y, radius, verdict } = props;
  if (verdict === 'inside') {
    return <circle cx={x} cy={y} r={radius} fill="var(--meter)" stroke="var(--paper)" strokeWidth={1.5} />;
  }
  const r = radius * 1.35;
  return (
    <path
      d={`M${x} ${y - r}l${r} ${r}l${-r} ${r}l${-r} ${-r}z`}
      fill={verdict === 'above' ? 'var(--over)' : 'var(--meter)'}
      stroke="var(--paper)"
      strokeWidth={1.5}
    />
  );
}
