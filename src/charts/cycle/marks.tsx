/** The two ends of the round: the ground with its pipe or the unit in the outdoor air, and the house with its floor or radiators. */
import type { CycleLayout } from './layout.ts';

/** `lit` is the step being told, `still` the others meanwhile, `plain` when nothing is lit. */
export type Strength = 'lit' | 'plain' | 'still';

const edgeOf = (strength: Strength) => (strength === 'still' ? 'var(--quiet)' : 'var(--ink)');

export function GroundMark({ layout, strength }: { readonly layout: CycleLayout; readonly strength: Strength }) {
  const { ground, brine } = layout;
  const right = ground.x + ground.width;
  const turn = ground.x + ground.width * 0.3;
  const strata = [0.3, 0.5, 0.7, 0.9].map((share) => ground.y + ground.height * share);
  return (
    <g data-step="ground" fill="none">
      <rect
        x={ground.x}
        y={ground.y}
        width={ground.width}
        height={ground.height}
        fill="var(--sheet)"
        stroke={edgeOf(strength)}
        strokeWidth={strength === 'lit' ? 3.5 : 1.5}
      />
      {/* The surface, hatched as earth is drawn. */}
      <path
        d={Array.from(
          { length: 9 },
          (_, index) => `M${ground.x + (ground.width * (index + 1)) / 10} ${ground.y}l-7 8`,
        ).join('')}
        stroke={edgeOf(strength)}
        strokeWidth={1.25}
      />
      {strata.map((y) => (
        <path key={y} d={`M${ground.x + 2} ${y}H${right - 2}`} stroke="var(--line)" strokeDasharray="10 7" />
      ))}
      {/* Out of the machine, through the ground and back. */}
      <path
        d={`M${brine.right} ${brine.outY}H${turn}V${brine.inY}H${brine.right}`}
        stroke="var(--ground)"
        strokeWidth={3}
        strokeLinejoin="round"
      />
      <path
        d={`M${right + 10} ${brine.inY - 5}l5 5l-5 5M${right + 15} ${brine.outY - 5}l-5 5l5 5`}
        stroke="var(--ground)"
        strokeWidth={2}
      />
    </g>
  );
}

/** The unit outside: a fan in its frame, air drawn in through the evaporator and blown out again. */
export function AirMark({ layout, strength }: { readonly layout: CycleLayout; readonly strength: Strength }) {
  const { ground, brine } = layout;
  const right = ground.x + ground.width;
  const centre = { x: ground.x + ground.width / 2, y: ground.y + ground.height / 2 };
  const radius = Math.min(ground.width, ground.height) * 0.36;
  const wave = (y: number) => {
    const half = (brine.right - right) / 4;
    return `M${right} ${y}q${half / 2} -5 ${half} 0t${half} 0t${half} 0t${half} 0`;
  };
  return (
    <g data-step="ground" fill="none">
      <rect
        x={ground.x}
        y={ground.y}
        width={ground.width}
        height={ground.height}
        rx={4}
        fill="var(--sheet)"
        stroke={edgeOf(strength)}
        strokeWidth={strength === 'lit' ? 3.5 : 1.5}
      />
      {/* Its feet, since it stands outside. */}
      <path
        d={`M${ground.x + ground.width * 0.15} ${ground.y + ground.height}v6M${right - ground.width * 0.15} ${ground.y + ground.height}v6`}
        stroke={edgeOf(strength)}
        strokeWidth={3}
      />
      <circle cx={centre.x} cy={centre.y} r={radius} stroke={edgeOf(strength)} strokeWidth={1.5} />
      {[0, 120, 240].map((turn) => (
        <path
          key={turn}
          transform={`rotate(${turn} ${centre.x} ${centre.y})`}
          d={`M${centre.x} ${centre.y}q${radius * 0.75} ${-radius * 0.25} ${radius * 0.35} ${-radius * 0.8}q${-radius * 0.5} ${radius * 0.1} ${-radius * 0.35} ${radius * 0.8}`}
          stroke="var(--ground)"
          strokeWidth={2}
        />
      ))}
      <path d={`${wave(brine.inY)}${wave(brine.outY)}`} stroke="var(--ground)" strokeWidth={3} />
      <path
        d={`M${brine.right - 9} ${brine.inY - 6}l7 6l-7 6M${right + 9} ${brine.outY - 6}l-7 6l7 6`}
        stroke="var(--ground)"
        strokeWidth={2}
      />
    </g>
  );
}

export function HouseMark(props: {
  readonly layout: CycleLayout;
  readonly strength: Strength;
  readonly floor: boolean;
}) {
  const { layout, strength, floor } = props;
  const { house, water } = layout;
  const eaves = house.y + house.height * 0.24;
  const bottom = house.y + house.height;
  const [left, right] = [house.x, house.x + house.width];
  const far = house.x + house.width * 0.78;
  return (
    <g data-step="house" fill="none">
      <path
        d={`M${left} ${bottom}V${eaves}L${(left + right) / 2} ${house.y}L${right} ${eaves}V${bottom}Z`}
        fill="var(--sheet)"
        stroke={edgeOf(strength)}
        strokeWidth={strength === 'lit' ? 3.5 : 1.5}
        strokeLinejoin="round"
      />
      <path
        d={floor ? floorPipe(water, far) : radiator(water, far)}
        stroke="var(--fuel)"
        strokeWidth={3}
        strokeLinejoin="round"
      />
      <path
        d={`M${left - 15} ${water.flowY - 5}l5 5l-5 5M${left - 10} ${water.returnY - 5}l-5 5l5 5`}
        stroke="var(--fuel)"
        strokeWidth={2}
      />
    </g>
  );
}

type Water = CycleLayout['water'];

/** Winding, as it lies under a floor. */
function floorPipe({ left, right, flowY, returnY }: Water, far: number): string {
  const step = (returnY - flowY) / 4;
  return `M${left} ${flowY}H${far}v${step}H${right + 6}v${step}H${far}v${step}H${right + 6}v${step}H${left}`;
}

/** Flow at the top, return at the bottom, ribs between. */
function radiator({ left, right, flowY, returnY }: Water, far: number): string {
  const ribs = [0, 1, 2, 3, 4].map((index) => {
    const x = right + 4 + ((far - right - 4) * index) / 4;
    return `M${x} ${flowY}V${returnY}`;
  });
  return `M${left} ${flowY}H${far}M${left} ${returnY}H${far}${ribs.join('')}`;
}
