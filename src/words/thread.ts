/** The thread: one line a stage with its present result, or what it needs. Read downwards it is the whole case. */
import { compareDates } from '../model/calendar/civil.ts';
import { type Appraisal, type PriceBasis, priceOf } from '../model/shapes/appraisal.ts';
import type { BillCheck } from '../model/shapes/bill-check.ts';
import type { Evidence, Series } from '../model/shapes/evidence.ts';
import { type Grade, weakestGrade } from '../model/shapes/working.ts';
import { completenessOf } from './completeness.ts';
import type { ShownGrade } from './grades.ts';
import {
  counted,
  factor,
  grouped,
  longDate,
  monthSpan,
  pence,
  poundsRange,
  spokenCount,
  spokenPounds,
} from './numbers.ts';
import { undatedInShort } from './prices.ts';
import { type Currency, inMoneyOf, phrase, say } from './say.ts';
import { carrierName } from './systems.ts';

/** A written estimate, as far as a line speaks of it. */
interface SpokenEstimate {
  readonly number: number;
  readonly madeOn: string;
  readonly heatPumpPence: number;
  readonly lowPence: number;
  readonly highPence: number;
  readonly grade: Grade;
  readonly id?: string;
  /** Money of its amounts; absent means pounds. */
  readonly currency?: Currency | undefined;
}

export type ThreadStage = 'evidence' | 'heat' | 'machine' | 'prices' | 'cost' | 'estimate' | 'check';
export interface ThreadLine {
  readonly stage: ThreadStage;
  readonly name: string;
  /** Present result, or what is missing. */
  readonly result: string;
  readonly grade: ShownGrade;
}
export interface ThreadInput {
  readonly evidence: readonly Pick<Evidence, 'series'>[];
  /** Null while nothing can be reckoned. */
  readonly appraisal: Appraisal | null;
  readonly estimates: readonly SpokenEstimate[];
  readonly checks: readonly (Pick<BillCheck, 'verdict' | 'actualPence' | 'expected' | 'madeOn'> & {
    readonly estimateId?: string;
  })[];
}

const STAGE_NAMES: Readonly<Record<ThreadStage, string>> = {
  evidence: phrase('Bills and readings'),
  heat: phrase('Heat needed'),
  machine: phrase('Heat pump'),
  prices: phrase('Prices'),
  cost: phrase('Running cost'),
  estimate: phrase('Written estimate'),
  check: phrase('Bill check'),
};

const stageName = (stage: ThreadStage): string => say(STAGE_NAMES[stage]);

export function threadLines(input: ThreadInput): ThreadLine[] {
  const { appraisal } = input;
  const line = (stage: ThreadStage, result: string, grade: ShownGrade): ThreadLine => ({
    stage,
    name: stageName(stage),
    result,
    grade,
  });
  const waiting = (stage: ThreadStage) => line(stage, say('nothing to show yet'), 'missing');
  return [
    evidenceLine(input, line),
    ...(appraisal
      ? [
          heatLine(appraisal, line),
          machineLine(appraisal, line),
          pricesLine(appraisal, line),
          costLine(appraisal, line),
        ]
      : (['heat', 'machine', 'prices', 'cost'] as const).map(waiting)),
    estimateLine(input, line),
    checkLine(input, line),
  ];
}

type Line = (stage: ThreadStage, result: string, grade: ShownGrade) => ThreadLine;

/** "gas 24 months", "electricity 361 days in 365". */
function seriesInShort(series: Series): string {
  const { daysHave: there, daysSpan: days } = completenessOf(series);
  const name = carrierName(series.carrier);
  if (series.resolution === 'period') return `${name} ${counted(Math.max(1, Math.round(days / 30.4)), 'month')}`;
  if (there === days) return `${name} ${counted(days, 'day')}`;
  return say('{name} {there} days in {days}', { name, there: grouped(there), days: grouped(days) });
}

function evidenceLine({ evidence }: ThreadInput, line: Line): ThreadLine {
  const all = evidence.flatMap((one) => one.series);
  if (all.length === 0) return line('evidence', say('needs a bill or a meter file'), 'missing');
  const shown = all.slice(0, 3).map(seriesInShort).join(', ');
  const inShort = all.length > 3 ? say('{shown} and {count} more', { shown, count: all.length - 3 }) : shown;
  const grades = all.map((series): Grade => {
    const count = Math.max(series.present, 1);
    return series.estimatedCount / count > 0.1 ? 'estimated' : 'measured';
  });
  return line('evidence', inShort, weakestGrade(grades));
}

function heatLine({ demand: { total } }: Appraisal, line: Line): ThreadLine {
  if (!Number.isFinite(total.value)) return line('heat', say('needs bills, a heat loss or a floor area'), 'missing');
  const spread = (total.high - total.low) / 2;
  const count = spokenCount(total.value);
  const result =
    Number.isFinite(spread) && spread >= 1
      ? say('{count} kWh a year, give or take {spread}', { count, spread: spokenCount(spread) })
      : say('{count} kWh a year', { count });
  return line('heat', result, total.grade);
}

function machineLine({ machine: { whole } }: Appraisal, line: Line): ThreadLine {
  if (!Number.isFinite(whole.value)) return line('machine', say('needs a seasonal factor'), 'missing');
  return line(
    'machine',
    say('seasonal factor {factor} for heating and hot water (H4)', { factor: factor(whole.value) }),
    whole.grade,
  );
}

function pricesLine({ prices, systems }: Appraisal, line: Line): ThreadLine {
  const { electricity } = prices;
  if (!Number.isFinite(prices.electricityPencePerKWh)) return line('prices', say('needs a tariff'), 'missing');
  const carrier =
    systems.find((system) => system.id === 'present')?.carrier ??
    (systems.some((system) => system.carrier === 'gas') ? 'gas' : 'electricity');
  const other = carrier === 'electricity' ? undefined : priceOf(prices, carrier);
  const own = pence(prices.electricityPencePerKWh);
  if (!other || !Number.isFinite(other.pencePerKWh))
    return line('prices', [own, ...monthsOf(electricity)].join(', '), electricity.grade);
  const fuel = pence(other.pencePerKWh);
  const [months, fuelMonths] = [monthsOf(electricity).join(', '), monthsOf(other.basis).join(', ')];
  const both = (items: string, last: string) => say('{items} and {last}', { items, last });
  return line(
    'prices',
    months === fuelMonths ? `${both(own, fuel)}, ${months}` : both(`${own} (${months})`, `${fuel} (${fuelMonths})`),
    weakestGrade([electricity.grade, other.basis.grade]),
  );
}

/** The months that a price is of, or whose it is, and whether it is old. */
const monthsOf = ({ from, to, kind, staleDays }: Pick<PriceBasis, 'from' | 'to' | 'kind' | 'staleDays'>): string[] => [
  undatedInShort({ kind }) ??
    (to === undefined ? say('from {month}', { month: monthSpan(from, from) }) : monthSpan(from, to)),
  ...(staleDays === undefined ? [] : [say('old')]),
];

function costLine({ systems }: Appraisal, line: Line): ThreadLine {
  const pump = systems.find((system) => system.id === 'heat-pump');
  const cost = pump?.cost;
  if (!cost || !Number.isFinite(cost.value)) return line('cost', say('needs heat, heat pump and prices'), 'missing');
  const range = poundsRange(cost.low, cost.high);
  const amount = spokenPounds(cost.value);
  return line('cost', say('{amount} a year; 8 in 10 homes like yours: {range}', { amount, range }), cost.grade);
}

function estimateLine({ estimates }: ThreadInput, line: Line): ThreadLine {
  const last = estimates.toSorted((a, b) => a.number - b.number).at(-1);
  if (!last) return line('estimate', say('none yet'), 'missing');
  return line(
    'estimate',
    say('{amount} a year, no. {number} of {date}', {
      amount: inMoneyOf(last, () => spokenPounds(last.heatPumpPence)),
      number: String(last.number),
      date: longDate(last.madeOn.slice(0, 10)),
    }),
    last.grade,
  );
}

const VERDICTS = {
  inside: phrase('{amount}, inside the estimate’s range'),
  above: phrase('{amount}, above the estimate’s range'),
  below: phrase('{amount}, below the estimate’s range'),
  unknown: phrase('{amount}, for the whole home'),
};

function checkLine({ checks, estimates }: ThreadInput, line: Line): ThreadLine {
  const last = checks.toSorted((a, b) => compareDates(a.madeOn, b.madeOn)).at(-1);
  if (last) {
    const estimate = estimates.find(({ id }) => id === last.estimateId) ?? {};
    const amount = inMoneyOf(estimate, () => spokenPounds(last.actualPence));
    return line('check', say(VERDICTS[last.verdict], { amount }), 'measured');
  }
  return line(
    'check',
    say(estimates.length > 0 ? 'needs a later bill' : 'needs a written estimate and a later bill'),
    'missing',
  );
}
