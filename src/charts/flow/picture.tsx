import { say } from '../../words/say.ts';
import { Measured, type Standing } from '../frame/measured.tsx';
import { type FlowKind, type FlowLayout, layOutFlow } from './layout.ts';
import type { FlowInput } from './series.ts';

/** Where the heat comes from and where it goes, as ribbons as thick as their kWh. */
export function FlowPicture({ input, ...standing }: Standing & { readonly input: FlowInput }) {
  return (
    <Measured {...standing}>
      {(place) => {
        const layout = layOutFlow(input, standing.size, place);
        return layout ? <Painted layout={layout} /> : null;
      }}
    </Measured>
  );
}

/** Bought is amber, what the ground gives is green; both together are the heat pump's own green, taps hatched. */
const COLOURS: { readonly [kind in FlowKind]: { readonly fill: string; readonly stroke: string } } = {
  meter: { fill: 'var(--meter-tint)', stroke: 'var(--meter)' },
  source: { fill: 'var(--ground-tint)', stroke: 'var(--ground)' },
  rooms: { fill: 'var(--ground-tint)', stroke: 'var(--ground)' },
  taps: { fill: 'var(--paper)', stroke: 'var(--ground)' },
  lost: { fill: 'var(--paper)', stroke: 'var(--quiet)' },
};

function Painted({ layout }: { readonly layout: FlowLayout }) {
  const { width, height, font, faint, ribbons, machine } = layout;
  const [upper, lower] = say('heat / pump').split(' / ');
  return (
    <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} aria-hidden="true">
      {ribbons.map(({ kind, path }) => (
        <path
          key={kind}
          d={path}
          fill={COLOURS[kind].fill}
          stroke={COLOURS[kind].stroke}
          strokeWidth={1.5}
          strokeLinejoin="round"
          strokeDasharray={kind === 'lost' ? '5 4' : undefined}
          data-part={kind}
        />
      ))}
      <rect {...machine} rx={3} fill="var(--paper)" stroke="var(--ink)" strokeWidth={1.5} data-part="machine" />
      <text
        x={machine.x + machine.width / 2}
        y={machine.y + machine.height / 2 - font * 0.25}
        fontSize={faint}
        textAnchor="middle"
      >
        {upper}
      </text>
      <text
        x={machine.x + machine.width / 2}
        y={machine.y + machine.height / 2 + font * 0.85}
        fontSize={faint}
        textAnchor="middle"
      >
        {lower}
      </text>
      {ribbons.map(({ kind, name, amount, at }) => (
        <g key={kind}>
          <text x={at.x} y={at.y - 2} fontSize={font} fontWeight={650} textAnchor={at.anchor}>
            {name}
          </text>
          <text className="faint" x={at.x} y={at.y + faint + 3} fontSize={faint} textAnchor={at.anchor}>
            {amount}
          </text>
        </g>
      ))}
    </svg>
  );
}
