/** Heat used, hot water and efficiency: apart with a heat meter, by the signature's slope without one, else joined. */

import { type Told, tell } from '../shapes/told.ts';
import type { Grade } from '../shapes/working.ts';
import { weakestGrade } from '../shapes/working.ts';
import { isOtherUnknown } from './bill-doubts.ts';
import { type Lever, workingLine as line } from './cost-state.ts';
import type { Hidden, UnitsInput, UnitsLeft } from './units-input.ts';

/** Below this the machine hardly ran and nothing can be divided by its units, kWh. */
const LEAST_KWH = 1;
/** Heat over electricity outside these is a wrong reading, not a machine. Common practice, no source. */
const FACTOR_BOUNDS = [0.8, 10] as const;

/** The levers that bring the machine's units from the estimate to `left.kWh`; each case switches exactly that much. */
export function heatLevers(input: UnitsInput, left: UnitsLeft): Lever[] {
  const { bill, estimated } = input;
  const runKWh = left.kWh - (estimated.otherKWh - estimated.waterKWh);
  const factor = (bill.heatKWh ?? 0) / runKWh;
  if (runKWh > LEAST_KWH && factor > FACTOR_BOUNDS[0] && factor < FACTOR_BOUNDS[1]) {
    return withHeatMeter(input, left, runKWh);
  }
  if (runKWh > LEAST_KWH && bill.spaceKWh !== undefined) return withSlope(input, left, runKWh);
  return [restLever(input, left)];
}

interface HeatApart {
  /** Units for the rooms and for hot water at the estimated factors, kWh. */
  readonly spaceKWh: number;
  readonly waterKWh: number;
  readonly how: 'metered' | 'slope' | 'as-estimated';
}

/** The machine's heat shared between rooms and hot water, expressed in units at the estimated factors. */
function shareHeat(
  { bill, estimated, spaceFactor, waterFactor }: UnitsInput,
  left: UnitsLeft,
  runKWh: number,
): HeatApart {
  const heatKWh = bill.heatKWh!;
  if (bill.waterHeatKWh !== undefined) {
    const water = Math.min(bill.waterHeatKWh, heatKWh);
    return { spaceKWh: (heatKWh - water) / spaceFactor, waterKWh: water / waterFactor, how: 'metered' };
  }
  if (bill.spaceKWh !== undefined && !left.inside.includes('other-electricity')) {
    const spaceKWh = Math.min(bill.spaceKWh, runKWh);
    const waterKWh = runKWh - spaceKWh;
    const share = heatKWh / (spaceFactor * spaceKWh + waterFactor * waterKWh);
    return { spaceKWh: spaceKWh * share, waterKWh: waterKWh * share, how: 'slope' };
  }
  const waterHeat = Math.min(estimated.waterKWh * waterFactor, heatKWh);
  return { spaceKWh: (heatKWh - waterHeat) / spaceFactor, waterKWh: waterHeat / waterFactor, how: 'as-estimated' };
}

function withHeatMeter(input: UnitsInput, left: UnitsLeft, runKWh: number): Lever[] {
  const { bill, estimated, weatherGrade } = input;
  const heat = shareHeat(input, left, runKWh);
  const efficiencyShare = (heat.spaceKWh + heat.waterKWh) / runKWh;
  const weather = unlessKnown(weatherGrade);
  const usedJoined: Joined =
    heat.how === 'as-estimated' ? ['heat-used', 'hot-water', ...weather] : ['heat-used', ...weather];
  const grade: Grade = weakestGrade([
    heat.how === 'metered' ? 'measured' : 'estimated',
    weatherGrade === null ? 'assumed' : weatherGrade,
  ]);
  const metered = line(tell('heat-made'), bill.heatKWh!, 'kWh', 'measured', tell('meter-or-display'));
  const used: Lever = {
    cause: 'heat-used',
    ...joinedOf(usedJoined),
    to: roomsTo(input, heat.spaceKWh),
    grade,
    title: titleOf(usedJoined),
    inputs: [metered, ...roomLines(input, heat.spaceKWh)],
  };
  const water: Lever = {
    cause: 'hot-water',
    to: { waterMoreKWh: heat.waterKWh - estimated.waterKWh },
    grade: heat.how === 'metered' ? 'measured' : 'estimated',
    title: tell('hot-water-part'),
    inputs: [
      line(tell('water-units-estimated'), estimated.waterKWh, 'kWh', 'estimated', tell('the-estimate')),
      line(tell('water-units-at-factor'), heat.waterKWh, 'kWh', 'estimated', howWater(heat.how)),
    ],
  };
  const inEfficiency: Joined = ['efficiency', ...left.inside];
  const efficiency: Lever = {
    cause: left.inside.includes('other-electricity') ? 'rest' : 'efficiency',
    ...joinedOf(inEfficiency),
    to: { efficiencyShare },
    grade: left.inside.length > 0 ? 'assumed' : heat.how === 'metered' ? 'measured' : 'estimated',
    title: titleOf(inEfficiency),
    inputs: [
      metered,
      line(tell('units-for-it'), runKWh, 'kWh', left.inside.length > 0 ? 'estimated' : 'measured', tell('readings')),
      line(tell('factor-against'), efficiencyShare, '', 'estimated', tell('worked-out')),
    ],
  };
  return [used, ...(heat.how === 'as-estimated' ? [] : [water]), efficiency];
}

const howWater = (how: HeatApart['how']) => tell(how === 'metered' ? 'heat-metered' : 'days-without-heating');

/** No heat meter: what rose with the cold, and what did not. */
function withSlope(input: UnitsInput, left: UnitsLeft, runKWh: number): Lever[] {
  const { bill, estimated, weatherGrade } = input;
  const spaceKWh = Math.min(bill.spaceKWh!, runKWh);
  const steadyKWh = runKWh - spaceKWh;
  // What else a home uses is more in winter too, and what began in winter is on no warm day yet.
  const alsoCold = left.inside.filter((cause) => cause === 'backup' || cause === 'other-electricity');
  const inRooms: Joined = ['heat-used', 'efficiency', ...alsoCold, ...unlessKnown(weatherGrade)];
  const inSteady: Joined = ['hot-water', 'efficiency', ...left.inside];
  return [
    {
      cause: 'rooms',
      joined: inRooms,
      to: roomsTo(input, spaceKWh),
      grade: weatherGrade && !left.inside.includes('metering') ? 'estimated' : 'assumed',
      title: titleOf(inRooms),
      inputs: roomLines(input, spaceKWh),
    },
    {
      cause: left.inside.length > 0 ? 'steady' : 'hot-water',
      joined: inSteady,
      to: { waterMoreKWh: steadyKWh - estimated.waterKWh },
      grade: left.inside.includes('other-electricity') || left.inside.includes('metering') ? 'assumed' : 'estimated',
      title: titleOf(inSteady),
      inputs: [
        line(tell('water-units-estimated'), estimated.waterKWh, 'kWh', 'estimated', tell('the-estimate')),
        line(tell('units-not-with-cold'), steadyKWh, 'kWh', 'estimated', tell('warm-days')),
      ],
    },
  ];
}

/** Rooms against the estimate: as a share of the units expected in this weather; as units where nothing was expected. */
function roomsTo({ expectedSpaceKWh }: UnitsInput, spaceKWh: number): Lever['to'] {
  return expectedSpaceKWh > LEAST_KWH
    ? { heatShare: spaceKWh / expectedSpaceKWh }
    : { heatShare: 0, spaceMoreKWh: spaceKWh };
}

const roomLines = ({ expectedSpaceKWh }: UnitsInput, spaceKWh: number) => [
  line(tell('room-units-expected'), expectedSpaceKWh, 'kWh', 'estimated', tell('the-estimate')),
  line(tell('room-units'), spaceKWh, 'kWh', 'estimated', tell('worked-out')),
];

/** Nothing separates: one part for all that was not expected. */
function restLever({ bill, estimated, expectedSpaceKWh, weatherGrade }: UnitsInput, left: UnitsLeft): Lever {
  const expectedKWh = expectedSpaceKWh + estimated.otherKWh;
  const joined: Joined = ['heat-used', 'hot-water', 'efficiency', ...left.inside, ...unlessKnown(weatherGrade)];
  const meterGrade: Grade = bill.readings === 'estimated' ? 'estimated' : 'measured';
  const assumed =
    weatherGrade === null || left.inside.includes('metering') || left.inside.includes('other-electricity');
  return {
    cause: 'rest',
    joined,
    to: { restKWh: left.kWh - expectedKWh },
    grade: assumed ? 'assumed' : 'estimated',
    title: titleOf(joined),
    inputs: [
      line(tell('units-expected'), expectedKWh, 'kWh', 'estimated', tell('the-estimate')),
      line(tell('units-on-bill'), bill.boughtKWh, 'kWh', meterGrade, tell(`bill-${bill.readings}`)),
      line(
        tell('other-taken-off'),
        bill.otherKWh ?? 0,
        'kWh',
        isOtherUnknown(bill) ? 'assumed' : (bill.otherKWh ?? 0) > 0 ? 'estimated' : 'measured',
        tell('the-bill'),
      ),
      line(tell('units-not-expected'), left.kWh - expectedKWh, 'kWh', 'estimated', tell('worked-out')),
    ],
  };
}

const unlessKnown = (weatherGrade: Grade | null): 'weather'[] => (weatherGrade ? [] : ['weather']);
const joinedOf = (causes: Joined) => (causes.length > 1 ? { joined: causes } : {});

/** Causes of one part, the one that leads it first. */
type Joined = readonly [keyof typeof LEADING, ...(keyof typeof LEADING | Hidden | 'weather')[]];
const LEADING = { 'heat-used': 'heat-used', 'hot-water': 'hot-water-part', efficiency: 'efficiency' } as const;
const ALONE = { ...LEADING, 'heat-used': 'heat-used-part' } as const;

/** "Heat used and efficiency, joined"; a cause alone keeps its own title. */
function titleOf([leading, ...others]: Joined): Told {
  const names = others.map((cause) => tell(`inner-${cause}`));
  const last = names.at(-1);
  if (!last) return tell(ALONE[leading]);
  const first = tell(LEADING[leading]);
  return names.length === 1
    ? tell('joined-two', { first, last })
    : tell('joined-many', { first, causes: names.slice(0, -1), last });
}
