import type { CycleStep } from '../../words/cycle.ts';
import { Measured, type Standing } from '../frame/measured.tsx';
import { type Box, type CycleLayout, type Label, layOutCycle } from './layout.ts';
import { AirMark, GroundMark, HouseMark, type Strength } from './marks.tsx';
import type { CycleSeries } from './series.ts';

/**
 * The round of the heat. `lit` brings one of the six steps forward, null shows all alike. With `moving` the
 * refrigerant flows, where the person welcomes motion; the screen brings `cycle.css` for it.
 */
export function CyclePicture(
  props: Omit<Standing, 'height'> & {
    readonly series: CycleSeries;
    readonly lit: CycleStep | null;
    readonly moving?: boolean;
  },
) {
  const { series, lit, moving = false, ...standing } = props;
  return (
    <Measured {...standing}>
      {(place) => (
        <Painted
          layout={layOutCycle(series, standing.size, place)}
          lit={lit}
          moving={moving}
          floor={series.heatedBy === 'floor'}
          air={series.from === 'air'}
        />
      )}
    </Measured>
  );
}

function Painted(props: {
  readonly layout: CycleLayout;
  readonly lit: CycleStep | null;
  readonly moving: boolean;
  readonly floor: boolean;
  readonly air: boolean;
}) {
  const { layout, lit, moving } = props;
  const { width, height, font, evaporator, condenser, compressor, valve } = layout;
  const strength = (step: CycleStep): Strength => (lit === null ? 'plain' : lit === step ? 'lit' : 'still');
  const stroke = (step: CycleStep) => (strength(step) === 'lit' ? 3.5 : 1.5);
  const edge = (step: CycleStep) => (strength(step) === 'still' ? 'var(--quiet)' : 'var(--ink)');
  const Source = props.air ? AirMark : GroundMark;
  return (
    <svg
      viewBox={`0 0 ${width} ${height}`}
      width={width}
      height={height}
      aria-hidden="true"
      className={moving ? 'cycle-moving' : undefined}
      data-lit={lit ?? 'none'}
    >
      <Source layout={layout} strength={strength('ground')} />
      <HouseMark layout={layout} strength={strength('house')} floor={props.floor} />
      <Bands layout={layout} />
      <Round layout={layout} />
      {[evaporator, condenser].map((box, index) => {
        const step = index === 0 ? 'evaporator' : 'condenser';
        return (
          <g key={step} data-step={step}>
            <rect {...box} rx={3} fill="var(--sheet)" stroke={edge(step)} strokeWidth={stroke(step)} />
            <path d={coil(box)} fill="none" stroke={edge(step)} strokeWidth={1.5} />
          </g>
        );
      })}
      <g data-step="compressor">
        <circle
          cx={compressor.x}
          cy={compressor.y}
          r={compressor.radius}
          fill="var(--sheet)"
          stroke={edge('compressor')}
          strokeWidth={stroke('compressor')}
        />
        <path
          d={`M${compressor.x - compressor.radius * 0.45} ${compressor.y - compressor.radius * 0.62}L${compressor.x + compressor.radius * 0.72} ${compressor.y}L${compressor.x - compressor.radius * 0.45} ${compressor.y + compressor.radius * 0.62}Z`}
          fill="none"
          stroke={edge('compressor')}
          strokeWidth={1.5}
        />
      </g>
      <path
        data-step="valve"
        d={`M${valve.x - valve.half} ${valve.y - valve.half * 0.7}v${valve.half * 1.4}L${valve.x + valve.half} ${valve.y - valve.half * 0.7}v${valve.half * 1.4}Z`}
        fill="var(--sheet)"
        stroke={edge('valve')}
        strokeWidth={stroke('valve')}
        strokeLinejoin="round"
      />
      {layout.badges.map((badge) => (
        <g key={badge.step} data-badge={badge.step}>
          <circle
            cx={badge.x}
            cy={badge.y}
            r={layout.badgeRadius}
            fill={strength(badge.step) === 'lit' ? 'var(--ink)' : 'var(--paper)'}
            stroke={edge(badge.step)}
            strokeWidth={1.5}
          />
          <text
            x={badge.x}
            y={badge.y + layout.badgeRadius * 0.42}
            fontSize={layout.badgeRadius * 1.25}
            textAnchor="middle"
            fontWeight={650}
          >
            {/* On the span, since the look gives every text its own fill. */}
            <tspan fill={strength(badge.step) === 'lit' ? 'var(--paper)' : 'var(--ink)'}>{badge.number}</tspan>
          </text>
        </g>
      ))}
      {layout.labels.map((label) => (
        <Words
          key={`${label.step} ${label.x} ${label.y}`}
          label={label}
          font={font}
          faint={layout.faint}
          strength={strength(label.step)}
        />
      ))}
    </svg>
  );
}

function Words(props: {
  readonly label: Label;
  readonly font: number;
  readonly faint: number;
  readonly strength: Strength;
}) {
  const { label, strength } = props;
  const quiet = label.weight === 'quiet' || (strength === 'still' && label.weight !== 'name');
  return (
    <text
      className={quiet && strength !== 'lit' ? 'faint' : undefined}
      x={label.x}
      y={label.y}
      fontSize={label.weight === 'quiet' ? props.faint : props.font}
      textAnchor={label.anchor}
      fontWeight={label.weight === 'name' || strength === 'lit' ? 650 : 400}
    >
      {label.text}
    </text>
  );
}

/** Heat and electricity, as thick as there is much of it. What was bought bears a stroke, so that it differs without hue. */
function Bands({ layout }: { readonly layout: CycleLayout }) {
  const band = (box: Box, of: 'ground' | 'meter', part: string) => (
    <rect key={part} {...box} fill={`var(--${of}-tint)`} stroke={`var(--${of})`} strokeWidth={1.5} data-part={part} />
  );
  const { groundBand, meterBand, houseBand } = layout;
  const bought = houseBand.meter;
  const strokes = Math.floor(bought.width / 12);
  const down = Math.floor(meterBand.height / 12);
  return (
    <g>
      {band(groundBand, 'ground', 'from-ground')}
      {band(meterBand, 'meter', 'from-meter')}
      {band(houseBand.ground, 'ground', 'house-ground')}
      {band(bought, 'meter', 'house-meter')}
      <path
        d={[
          ...Array.from(
            { length: strokes },
            (_, index) => `M${bought.x + 4 + index * 12} ${bought.y + bought.height}l6 ${-bought.height}`,
          ),
          ...Array.from(
            { length: down },
            (_, index) => `M${meterBand.x} ${meterBand.y + 10 + index * 12}l${meterBand.width} -6`,
          ),
        ].join('')}
        fill="none"
        stroke="var(--meter)"
        strokeWidth={1.25}
      />
      {/* Arrow heads: towards the evaporator, the compressor and the house. */}
      <path
        d={head(groundBand.x + groundBand.width * 0.5, groundBand.y + groundBand.height / 2, 'right')}
        {...chevron('ground')}
      />
      <path
        d={head(
          houseBand.ground.x + houseBand.ground.width * 0.5,
          houseBand.ground.y + houseBand.ground.height / 2,
          'right',
        )}
        {...chevron('ground')}
      />
    </g>
  );
}

const chevron = (of: 'ground' | 'meter') => ({ fill: 'none', stroke: `var(--${of})`, strokeWidth: 2 });

function head(x: number, y: number, way: 'right' | 'left' | 'up' | 'down', half = 6): string {
  if (way === 'right') return `M${x - half / 2} ${y - half}l${half} ${half}l${-half} ${half}`;
  if (way === 'left') return `M${x + half / 2} ${y - half}l${-half} ${half}l${half} ${half}`;
  if (way === 'down') return `M${x - half} ${y - half / 2}l${half} ${half}l${half} ${-half}`;
  return `M${x - half} ${y + half / 2}l${half} ${-half}l${half} ${half}`;
}

/** The pipe of the refrigerant, thin where the pressure is low and thick where it is high, and the current in it. */
function Round({ layout }: { readonly layout: CycleLayout }) {
  const { left, right, top, bottom } = layout.loop;
  const centre = layout.compressor.x;
  const low = `M${centre} ${bottom}H${left}V${top}H${centre}`;
  const high = `M${centre} ${top}H${right}V${bottom}H${centre}`;
  const quarter = (centre - left) / 2;
  return (
    <g fill="none" stroke="var(--fuel)">
      <path d={low} strokeWidth={3} data-part="low-side" />
      <path d={high} strokeWidth={6} data-part="high-side" />
      <path
        d={`${low}${high.replace(/^M\S+ \S+?(?=H)/, '')}`}
        stroke="var(--paper)"
        strokeWidth={1.5}
        strokeDasharray="6 18"
        data-part="current"
      />
      <path
        d={[
          head(left + quarter, top, 'right'),
          head(right - quarter * 0.55, top, 'right'),
          head(right - quarter, bottom, 'left'),
          head(left + quarter * 0.8, bottom, 'left'),
        ].join('')}
        strokeWidth={2.5}
      />
    </g>
  );
}

/** A pipe winding through an exchanger. */
function coil({ x, y, width, height }: Box): string {
  const turns = 5;
  const step = height / (turns + 1);
  const [near, far] = [x + width * 0.25, x + width * 0.75];
  const points = Array.from(
    { length: turns },
    (_, index) => `L${index % 2 === 0 ? far : near} ${y + step * (index + 1)}`,
  );
  return `M${x + width / 2} ${y}L${near} ${y + step * 0.5}${points.join('')}L${x + width / 2} ${y + height}`;
}
