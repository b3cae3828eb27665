/** How often faults at made plants, and slips in reading them, are named rightly, asked, named wrongly or passed over. */
import type { SiteField, SiteQuantity, SiteReadings } from '../../src/model/shapes/site-readings.ts';
import { checkSite, type SiteCheck } from '../../src/model/site-readings/check-site.ts';
import type { NamedCause } from '../../src/model/site-readings/likely-causes.ts';
import { siteTables } from '../../src/reference/site-tables.ts';
import { drawPlantCase, FAULTS, type PlantCase, SLIPS, type Slip } from './plant-case.ts';
import type { ProofTable } from './table.ts';

type Outcome = 'right' | 'asked' | 'wrong' | 'silent';

/** Most that may be named wrongly, at the upper 95 % end, and least that must be named or asked, in 100. */
interface Limit {
  readonly wrong: number;
  readonly found: number;
}
const USUAL_LIMIT: Limit = { wrong: 5, found: 90 };
/**
 * Found in fewer, as measured over 1,000 of each: a flow or a film that is worse by two thirds may still lie inside the
 * usual band, and then nothing is said. A weak compressor is the hardest, since the texts give its superheat and its
 * subcooling opposite signs: with the approaches still inside their bands it is taken for a want of refrigerant.
 */
const LIMITS: Readonly<Record<string, Limit>> = {
  'compressor-weak': { wrong: 15, found: 75 },
  'water-flow-low': { wrong: 2, found: 75 },
  'brine-flow-low': { wrong: 2, found: 80 },
  'evaporator-fouled': { wrong: 2, found: 75 },
  'valve-flooding': { wrong: 2, found: 75 },
};

const DANGERS = ['glycol-weak'];

/** The first question that a check asks of the machine, dangers and contradictions aside. */
function firstQuestion({ causes }: SiteCheck): NamedCause[] {
  const first = causes.find(({ level }) => level === 'cause');
  return first ? [first, ...first.orElse] : [];
}

/** The pressures fit several refrigerants, and the hot gas another than the one chosen. */
const asksForThePlate = ({ alike }: SiteCheck): boolean => alike?.by === 'hot-gas';

function judgeFault(check: SiteCheck, fault: string): Outcome {
  if (DANGERS.includes(fault)) return check.causes[0]?.cause === fault ? 'right' : 'silent';
  const named = firstQuestion(check).map(({ cause }) => cause as string);
  if (named.length === 0) return 'silent';
  return named[0] === fault && named.length === 1 ? 'right' : named.includes(fault) ? 'asked' : 'wrong';
}

/** What is read where a result is asked for. */
const READ: Readonly<Partial<Record<SiteQuantity, readonly SiteField[]>>> = {
  superheat: ['suctionC'],
  subcooling: ['liquidC'],
  discharge: ['dischargeC'],
  current: ['currentA', 'usualCurrentA'],
  'valve-opening': ['valveOpenPercent'],
  'at-rest': ['restPressure', 'restC'],
};

/** With what was asked for read as well, as long as there is something to be asked. */
function answered({ readings, later }: PlantCase, first: SiteCheck): SiteCheck {
  let check = first;
  let known: SiteReadings = readings;
  for (let round = 0; round < 4; round++) {
    const by = check.causes.find(({ level }) => level === 'cause')?.settling?.by;
    if (!by) break;
    for (const field of READ[by] ?? []) known = { ...known, [field]: later[field] };
    check = checkSite(known, siteTables);
  }
  return check;
}

function isSlip({ meant }: NamedCause, slip: Slip, { really }: PlantCase): boolean {
  if (!meant || meant.kind !== slip) return false;
  if (meant.kind === 'refrigerant') return meant.refrigerant === really.refrigerant;
  if (meant.kind === 'unit') return meant.unit === really.unit;
  return true;
}

function judgeSlip(check: SiteCheck, slip: Slip, made: PlantCase): Outcome {
  const codes = check.remarks.map(({ code }) => code as string);
  if (slip === 'brine exchanged') return codes.includes('brine-not-cooled') ? 'right' : 'silent';
  if (slip === 'water exchanged') return codes.includes('flow-not-warmer') ? 'right' : 'silent';
  const likely = check.remarks.flatMap(({ likely = [] }) =>
    likely.map((meant) => ({ cause: 'misread' as const, meant })),
  );
  const named: NamedCause[] = check.remarks.length > 0 ? likely : firstQuestion(check);
  // A refusal that names no slip still refuses: nothing wrong is said.
  const isAsked = check.remarks.length > 0 || (slip === 'refrigerant' && asksForThePlate(check));
  if (named.length === 0) return isAsked ? 'asked' : 'silent';
  const at = named.findIndex((one) => isSlip(one, slip, made));
  if (at < 0) return 'wrong';
  return new Set(named.map(({ meant }) => JSON.stringify(meant))).size === 1 ? 'right' : 'asked';
}

/** Upper end of a share that is met at most once in 20 by chance: normal approximation with a continuity allowance. */
function upper95(hits: number, of: number): number {
  const share = (hits + 0.5) / of;
  return 100 * Math.min(1, share + 1.645 * Math.sqrt((share * (1 - share)) / of));
}

export function provePlant(count = 1000): ProofTable {
  const percent = (hits: number) => ((100 * hits) / count).toFixed(1);
  const row = (name: string, outcomeOf: (seed: number) => readonly [Outcome, Outcome]) => {
    const first: Record<Outcome, number> = { right: 0, asked: 0, wrong: 0, silent: 0 };
    let rightLater = 0;
    for (let i = 0; i < count; i++) {
      const [now, later] = outcomeOf(i + 1);
      first[now]++;
      if (later === 'right') rightLater++;
    }
    const { wrong, found } = LIMITS[name] ?? USUAL_LIMIT;
    const within = upper95(first.wrong, count) <= wrong && (100 * (first.right + first.asked)) / count >= found;
    const measured = [first.right, first.asked, first.wrong, first.silent].map(percent);
    return [
      name,
      ...measured,
      percent(rightLater),
      upper95(first.wrong, count).toFixed(1),
      wrong,
      found,
      within ? 'yes' : 'NO',
    ];
  };
  const faults = Object.keys(FAULTS).map((fault, k) =>
    row(fault, (seed) => {
      const made = drawPlantCase(10_000 * (k + 1) + seed, fault, null);
      const check = checkSite(made.readings, siteTables);
      return [judgeFault(check, fault), judgeFault(answered(made, check), fault)];
    }),
  );
  const slips = SLIPS.map((slip, k) =>
    row(`slip: ${slip}`, (seed) => {
      const made = drawPlantCase(10_000 * (k + 31) + seed, null, slip);
      const check = checkSite(made.readings, siteTables);
      const outcome = judgeSlip(check, slip, made);
      return [outcome, outcome];
    }),
  );
  const sound = row('nothing wrong', (seed) => {
    const { readings } = drawPlantCase(seed, null, null);
    const check = checkSite(readings, siteTables);
    if (check.causes.length + check.remarks.length > 0) return ['wrong', 'wrong'];
    const outcome = asksForThePlate(check) ? 'asked' : 'right';
    return [outcome, outcome];
  });
  const rows = [sound, ...faults, ...slips];
  return {
    title: `${count} made plants of each kind, in 100: what the readings name`,
    columns: [
      'truth',
      'right',
      'asked',
      'wrong',
      'silent',
      'right once asked',
      'wrong, 95 %',
      'most',
      'least found',
      'within',
    ],
    rows,
    within: rows.every((one) => one.at(-1) === 'yes'),
  };
}
