/** The thread: one line a stage with its present result, or what it needs. Read downwards it is the whole case. */
import type { Appraisal } from '../model/appraisal/appraisal.ts';
import type { BillCheck } from '../model/appraisal/promise.ts';
import type { Evidence, Series } from '../model/evidence/evidence.ts';
import { type Grade, weakestGrade } from '../model/working.ts';
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
import type { SpokenPromise } from './promise.ts';
import { carrierName } from './systems.ts';

export type ThreadStage = 'evidence' | 'heat' | 'machine' | 'prices' | 'cost' | 'promise' | 'check';
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
  readonly promises: readonly SpokenPromise[];
  readonly checks: readonly Pick<BillCheck, 'verdict' | 'actualPence' | 'expected' | 'madeOn'>[];
}

export const STAGE_NAMES: Readonly<Record<ThreadStage, string>> = {
  evidence: 'Evidence',
  heat: 'Heat needed',
  machine: 'The machine',
  prices: 'Prices',
  cost: 'Running cost',
  promise: 'Promise',
  check: 'Bill check',
};

export function threadLines(input: ThreadInput): ThreadLine[] {
  const { appraisal } = input;
  const line = (stage: ThreadStage, result: string, grade: ShownGrade): ThreadLine => ({
    stage,
    name: STAGE_NAMES[stage],
    result,
    grade,
  });
  const waiting = (stage: ThreadStage) => line(stage, 'nothing to show yet', 'missing');
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
    promiseLine(input, line),
    checkLine(input, line),
  ];
}

type Line = (stage: ThreadStage, result: string, grade: ShownGrade) => ThreadLine;

const MS_PER_DAY = 86_400_000;
/** "gas 24 months", "electricity 361 days in 365". */
function seriesInShort(series: Series): string {
  const days = Math.round((Date.parse(series.to) - Date.parse(series.from)) / MS_PER_DAY);
  const name = carrierName(series.carrier);
  if (series.resolution === 'period') return `${name} ${counted(Math.max(1, Math.round(days / 30.4)), 'month')}`;
  const share = series.expected > 0 ? series.present / series.expected : 1;
  const there = Math.round(days * Math.min(share, 1));
  return there === days ? `${name} ${counted(days, 'day')}` : `${name} ${grouped(there)} days in ${grouped(days)}`;
}

function evidenceLine({ evidence }: ThreadInput, line: Line): ThreadLine {
  const all = evidence.flatMap((one) => one.series);
  if (all.length === 0) return line('evidence', 'needs a bill or a meter file', 'missing');
  const shown = all.slice(0, 3).map(seriesInShort).join(', ');
  const more = all.length > 3 ? ` and ${grouped(all.length - 3)} more` : '';
  const grades = all.map((series): Grade => {
    const count = Math.max(series.present, 1);
    return series.estimatedCount / count > 0.1 ? 'estimated' : 'measured';
  });
  return line('evidence', `${shown}${more}`, weakestGrade(grades));
}

function heatLine({ demand: { total } }: Appraisal, line: Line): ThreadLine {
  if (!Number.isFinite(total.value)) return line('heat', 'needs a record, a heat loss or a floor area', 'missing');
  const spread = (total.high - total.low) / 2;
  const give = Number.isFinite(spread) && spread >= 1 ? `, give or take ${spokenCount(spread)}` : '';
  return line('heat', `${spokenCount(total.value)} kWh a year${give}`, total.grade);
}

function machineLine({ machine: { whole } }: Appraisal, line: Line): ThreadLine {
  if (!Number.isFinite(whole.value)) return line('machine', 'needs a seasonal factor', 'missing');
  return line('machine', `factor ${factor(whole.value)} for heat and hot water (H4)`, whole.grade);
}

function pricesLine({ prices, systems }: Appraisal, line: Line): ThreadLine {
  const { electricity } = prices;
  if (!Number.isFinite(prices.electricityPencePerKWh)) return line('prices', 'needs a tariff', 'missing');
  const carrier = systems.find((system) => system.id === 'present')?.carrier ?? 'gas';
  const other = { gas: prices.gasPencePerKWh, oil: prices.oilPencePerKWh, lpg: prices.lpgPencePerKWh };
  const beside = carrier === 'electricity' || !Number.isFinite(other[carrier]) ? '' : ` and ${pence(other[carrier])}`;
  const dates =
    electricity.to === undefined
      ? `from ${monthSpan(electricity.from, electricity.from)}`
      : monthSpan(electricity.from, electricity.to);
  const old = electricity.staleDays === undefined ? '' : ', old';
  return line('prices', `${pence(prices.electricityPencePerKWh)}${beside}, ${dates}${old}`, electricity.grade);
}

function costLine({ systems }: Appraisal, line: Line): ThreadLine {
  const cost = systems.find((system) => system.id === 'heat-pump')?.cost;
  if (!cost || !Number.isFinite(cost.value)) return line('cost', 'needs heat, a machine and prices', 'missing');
  return line('cost', `${spokenPounds(cost.value)} a year, ${poundsRange(cost.low, cost.high)}`, cost.grade);
}

function promiseLine({ promises }: ThreadInput, line: Line): ThreadLine {
  const last = promises.toSorted((a, b) => a.number - b.number).at(-1);
  if (!last) return line('promise', 'none kept yet', 'missing');
  return line(
    'promise',
    `${spokenPounds(last.heatPumpPence)} a year, number ${last.number} of ${longDate(last.madeOn.slice(0, 10))}`,
    'measured',
  );
}

const VERDICTS = {
  inside: 'inside what was promised',
  above: 'above what was promised',
  below: 'below what was promised',
};

function checkLine({ checks, promises }: ThreadInput, line: Line): ThreadLine {
  const last = checks.toSorted((a, b) => a.madeOn.localeCompare(b.madeOn)).at(-1);
  if (last) return line('check', `${spokenPounds(last.actualPence)}, ${VERDICTS[last.verdict]}`, 'measured');
  return line('check', promises.length > 0 ? 'needs a later bill' : 'needs a promise and a later bill', 'missing');
}
