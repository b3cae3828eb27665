/** The reckoning as text for a terminal. */
import type { Appraisal, SystemResult, Versus } from '../model/appraisal/appraisal.ts';
import type { BillCheck } from '../model/appraisal/promise.ts';
import { rangeOf } from '../model/demand/figure.ts';
import type { Remark } from '../model/evidence/evidence.ts';
import { causeName, insideOf, nextSentence, verdictSentence } from '../words/check.ts';
import { costSentence, LEAST_FACTOR, rangeSentence } from '../words/cost.ts';
import {
  askSentence,
  costOfFinding,
  findingCaution,
  findingCheckSentence,
  findingName,
  noFindingsSentence,
  noReadingsSentence,
  seenSentence,
  sureShort,
  whenSentence,
} from '../words/findings.ts';
import { followedSentence, monthVerdict, nextBillSentence } from '../words/following.ts';
import { gradeName } from '../words/grades.ts';
import {
  basisSentence,
  changeSentence,
  fitSentence,
  heatLossSentence,
  heatSentence,
  missingWaySentence,
  waterSentence,
  wayName,
  yearsAheadSentence,
} from '../words/heat.ts';
import { boundaryName } from '../words/machine.ts';
import {
  exactKWh,
  exactPounds,
  factor,
  grouped,
  longDate,
  monthSpan,
  pence,
  percent,
  poundsAndPence,
  poundsRange,
} from '../words/numbers.ts';
import { questionSentence } from '../words/questions.ts';
import { remarkSentence } from '../words/remarks.ts';
import { systemName } from '../words/systems.ts';
import { inColumns } from './columns.ts';
import type { Reckoned } from './reckon-household.ts';

const section = (title: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : ['', title, ...lines.map((line) => `  ${line}`)];

function heatLines({ demand }: Appraisal): string[] {
  const estimates = demand.estimates.map(({ way, spaceKWh, spaceErrorKWh, waterKWh, grade }) => {
    const { low, high } = rangeOf(spaceKWh, spaceErrorKWh);
    const water = waterKWh === undefined ? 'not said' : exactKWh(waterKWh);
    return [wayName(way), exactKWh(spaceKWh), `${exactKWh(low)} to ${exactKWh(high)}`, water, gradeName(grade)];
  });
  const { space, water } = demand;
  const sum = [
    'what the sums rest on',
    exactKWh(space.value),
    `${exactKWh(space.low)} to ${exactKWh(space.high)}`,
    exactKWh(water.value),
    gradeName(space.grade),
  ];
  const head = ['heat a year', 'rooms only', 'rooms, 8 cases of 10', 'hot water', 'rooms are'];
  return [
    heatSentence(demand),
    waterSentence(demand),
    basisSentence(demand),
    ...inColumns([head, ...estimates, sum]),
    ...demand.missing.map(({ way, reason }) => missingWaySentence(way, reason)),
    demand.signature ? fitSentence(demand.signature) : '',
    changeSentence(demand),
    heatLossSentence(demand),
    yearsAheadSentence(demand),
  ].filter((line) => line !== '');
}

function machineLines({ machine }: Appraisal): string[] {
  const { space, water, whole, boundary, fieldSpread } = machine;
  return [
    `Rooms ${factor(space.value)}, hot water ${factor(water.value)}, measured at ${boundary}: ${boundaryName(boundary)}.`,
    `The whole house as its meter sees it: ${factor(whole.value)} (${factor(whole.low)} to ${factor(whole.high)}).`,
    `Measured in homes: ${factor(fieldSpread.low)} to ${factor(fieldSpread.high)}, middle ${factor(fieldSpread.middle)}.`,
  ];
}

function costRow(system: SystemResult, source: 'ground' | 'air', versus: Versus | undefined): string[] {
  const { cost, split, bought, pencePerKWhHeat } = system;
  return [
    systemName(system.id, system.kind, source),
    exactPounds(cost.value),
    poundsRange(cost.low, cost.high),
    exactPounds(split.unitsPence),
    exactPounds(split.standingPence),
    exactPounds(split.servicePence),
    exactKWh(bought.value),
    pence(pencePerKWhHeat.value),
    versus ? percent(versus.chanceLess) : '',
  ];
}

function costLines({ systems, versus, machine }: Appraisal): string[] {
  const head = [
    'a year',
    'cost',
    '8 years of 10',
    'units',
    'standing',
    'service',
    'bought',
    'per kWh heat',
    'heat pump less',
  ];
  const rows = systems.map((system) =>
    costRow(
      system,
      machine.source,
      versus.find(({ against }) => against === system.id),
    ),
  );
  return inColumns([head, ...rows]);
}

function evenLines({ versus, systems }: Appraisal): string[] {
  return versus.flatMap(({ against, breakEvenFactor, priceRatio, breakEvenPriceRatio }) => {
    if (breakEvenFactor === null && breakEvenPriceRatio === null) return [];
    const kind = systems.find(({ id }) => id === against)?.kind ?? against;
    const never = breakEvenFactor !== null && breakEvenFactor < LEAST_FACTOR;
    const parts = [
      ...(breakEvenFactor === null || never ? [] : [`a whole-house factor of ${factor(breakEvenFactor)}`]),
      ...(priceRatio === null || breakEvenPriceRatio === null
        ? []
        : [`a price ratio of ${grouped(breakEvenPriceRatio, 2)} (now ${grouped(priceRatio, 2)})`]),
    ];
    const even = parts.length === 0 ? '' : `even at ${parts.join(', or at ')}`;
    const cheaper = never ? 'the heat pump’s heat costs less at any factor it can have' : '';
    return [`${systemName(against, kind)}: ${[cheaper, even].filter((part) => part !== '').join('; ')}`];
  });
}

function priceLine(fuel: string, { name, from, to, grade, origin }: Appraisal['prices']['gas']): string {
  const until = to === undefined ? '' : ` to ${longDate(to)}`;
  return `${fuel}: ${name}, from ${longDate(from)}${until}, ${gradeName(grade)}; ${origin}`;
}

function sourceLines({ prices, climate, machine, modelVersion, asOf }: Appraisal): string[] {
  return [
    priceLine('Electricity', prices.electricity),
    priceLine('Gas', prices.gas),
    priceLine('Oil', prices.oil),
    priceLine('LPG', prices.lpg),
    `Climate: ${climate.regionName}; ${climate.source}`,
    `Factors met in homes: ${machine.fieldSpread.source}`,
    `Reckoned for ${longDate(asOf)} with model ${modelVersion}.`,
  ];
}

function findingLines({ findings }: BillCheck): string[] {
  if (findings === undefined) return [noReadingsSentence()];
  if (findings.length === 0) return [noFindingsSentence()];
  return findings.flatMap((finding) => [
    `${findingName(finding)}, ${whenSentence(finding)}, ${sureShort(finding)}: ${seenSentence(finding)} ${costOfFinding(finding)}`,
    `  Ask: ${finding.ask.map(askSentence).join(' ')}`,
    `  Check: ${finding.check.map(findingCheckSentence).join(' ')}`,
    `  Care: ${finding.cautions.map(findingCaution).join(' ')}`,
  ]);
}

function monthLines({ months, input }: BillCheck): string[] {
  if (!months) return [];
  const rows = months.map((month) => [
    monthSpan(month.from, month.from),
    exactKWh(month.promisedKWh),
    exactKWh(month.expectedKWh),
    `${exactKWh(month.lowKWh)} to ${exactKWh(month.highKWh)}`,
    month.actualKWh === null ? 'not known' : exactKWh(month.actualKWh),
    monthVerdict(month.verdict),
  ]);
  return [
    followedSentence(months, input.pencePerKWh),
    nextBillSentence(months),
    ...inColumns([['month', 'promised', 'in this weather', 'range', 'meter', 'it lies'], ...rows]),
  ];
}

export function checkText(check: BillCheck): string[] {
  return [
    verdictSentence(check),
    ...inColumns([
      ['from the promise to the bill', 'amount', 'trust', 'joined in it'],
      ...check.parts.map((part) => [
        causeName(part.cause, part.pence),
        poundsAndPence(part.pence),
        gradeName(part.grade),
        insideOf(part),
      ]),
    ]),
    ...check.next.map(nextSentence),
  ];
}

export function reckonText({ whole, promise, check }: Reckoned): string {
  const { appraisal } = promise;
  const remarks: Remark[] = whole.evidence.flatMap((part) => part.import.remarks);
  const pump = appraisal.systems.find(({ id }) => id === 'heat-pump');
  return [
    promise.household.name,
    costSentence(appraisal),
    ...(pump ? [rangeSentence(pump)] : []),
    ...section('Files', remarks.map(remarkSentence)),
    ...section('Heat needed', heatLines(appraisal)),
    ...section('The machine', machineLines(appraisal)),
    ...section('Running cost', costLines(appraisal)),
    ...section('Where both cost the same', evenLines(appraisal)),
    ...section('Bill check', check ? checkText(check) : []),
    ...section('What the readings show', check ? findingLines(check) : []),
    ...section('Since the promise', check ? monthLines(check) : []),
    ...section('Questions', appraisal.questions.map(questionSentence)),
    ...section('Prices and sources', sourceLines(appraisal)),
    '',
  ].join('\n');
}
