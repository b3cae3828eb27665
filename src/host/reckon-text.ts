/** The reckoning as text for a terminal. */

import { rangeOf } from '../model/demand/figure.ts';
import { guidedSearch } from '../model/guided-search/guided-search.ts';
import { LEAST_FACTOR } from '../model/heat-pump/machine-questions.ts';
import {
  type Appraisal,
  type PriceBasis,
  pricesUsed,
  type SystemResult,
  type Versus,
} from '../model/shapes/appraisal.ts';
import type { BillCheck } from '../model/shapes/bill-check.ts';
import type { Remark } from '../model/shapes/evidence.ts';
import { mayLead } from '../model/shapes/lifetime.ts';
import type { WrittenEstimate } from '../model/shapes/written-estimate.ts';
import { siteTables } from '../reference/site-tables.ts';
import {
  causeName,
  checkSentence,
  doubtSentences,
  fairSentence,
  insideOf,
  insidePart,
  partsWithRow,
  priceSentence,
} from '../words/check.ts';
import {
  costSentence,
  designSentence,
  gasStandingSentence,
  paymentSentence,
  rangeSentence,
  yearToYearSentence,
} from '../words/cost.ts';
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
import { notSeenWords } from '../words/findings-worth.ts';
import { followedSentence, monthVerdict, nextBillSentence } from '../words/following.ts';
import { gradeName } from '../words/grades.ts';
import {
  answerSentence,
  customerWords,
  effortSentence,
  inTwenty,
  leadSentence,
  likelyCauseName,
  questionTask,
  searchSentence,
  twentiethsMeaning,
} from '../words/guided-search.ts';
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
import { purchaseSentences } from '../words/lifetime.ts';
import { boundaryName, designedSentence } from '../words/machine.ts';
import {
  capitalised,
  chance,
  exactKWh,
  exactPounds,
  factor,
  grouped,
  longDate,
  monthSpan,
  pence,
  poundsAndPence,
  poundsRange,
  unknown,
} from '../words/numbers.ts';
import { offerCells, offerHeads, offersSentence } from '../words/offers.ts';
import { nameOfPrice, priceName, standsSentence, yearAtPrices } from '../words/prices.ts';
import { questionSentence } from '../words/questions.ts';
import { fileAccountLines, recordUseSentence } from '../words/record-uses.ts';
import { remarkSentence } from '../words/remarks.ts';
import { say } from '../words/say.ts';
import { sayTold } from '../words/say-told.ts';
import {
  alikeSentence,
  brineFallText,
  gapSentence,
  plantCauseText,
  siteRemarkSentence,
  siteSummary,
  standingSentence,
  worthSaying,
} from '../words/site-readings.ts';
import { leftOutSentence, systemName } from '../words/systems.ts';
import { tariffCells, tariffHeads, tariffNotes, waysTable } from '../words/tariff-choice.ts';
import { tariffHeadline } from '../words/which-tariff.ts';
import { inColumns } from './columns.ts';
import type { Reckoned } from './reckon-household.ts';

const range = (low: string, high: string) => say('{low} to {high}', { low, high });
const section = (title: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : ['', title, ...lines.map((line) => `  ${line}`)];

function heatLines({ demand }: Appraisal): string[] {
  const estimates = demand.estimates.map(({ way, spaceKWh, spaceErrorKWh, waterKWh, grade }) => {
    const { low, high } = rangeOf(spaceKWh, spaceErrorKWh);
    const water = waterKWh === undefined ? say('not said') : exactKWh(waterKWh);
    return [wayName(way), exactKWh(spaceKWh), range(exactKWh(low), exactKWh(high)), water, gradeName(grade)];
  });
  const { space, water } = demand;
  const sum = [
    say('what the sums are based on'),
    exactKWh(space.value),
    range(exactKWh(space.low), exactKWh(space.high)),
    exactKWh(water.value),
    gradeName(space.grade),
  ];
  const head = [say('heat a year'), say('rooms only'), say('rooms, 8 in 10 homes'), say('hot water'), say('rooms are')];
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
    say('Rooms {rooms}, hot water {water}, measured at {boundary}: {counts}.', {
      rooms: factor(space.value),
      water: factor(water.value),
      boundary,
      counts: boundaryName(boundary),
    }),
    say('The whole house as its meter sees it: {whole} ({low} to {high}).', {
      whole: factor(whole.value),
      low: factor(whole.low),
      high: factor(whole.high),
    }),
    ...[designedSentence(machine)].filter((line) => line !== ''),
    say('Measured in homes: {low} to {high}, middle {middle}.', {
      low: factor(fieldSpread.low),
      high: factor(fieldSpread.high),
      middle: factor(fieldSpread.middle),
    }),
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
    versus ? chance(versus.chanceLess) : '',
  ];
}

function costLines(appraisal: Appraisal): string[] {
  const { systems, versus, machine } = appraisal;
  const head = [
    yearAtPrices(appraisal),
    say('cost'),
    say('8 in 10 homes'),
    say('energy'),
    say('standing'),
    say('service'),
    say('bought'),
    say('per kWh heat'),
    say('heat pump less'),
  ];
  const rows = systems.map((system) =>
    costRow(
      system,
      machine.source,
      versus.find(({ against }) => against === system.id),
    ),
  );
  return [...inColumns([head, ...rows]), ...[leftOutSentence(appraisal)].filter(Boolean)];
}

function evenLines({ versus, systems }: Appraisal): string[] {
  return versus.flatMap(({ against, breakEvenFactor, priceRatio, breakEvenPriceRatio }) => {
    if (breakEvenFactor === null && breakEvenPriceRatio === null) return [];
    const kind = systems.find(({ id }) => id === against)?.kind ?? against;
    const never = breakEvenFactor !== null && breakEvenFactor < LEAST_FACTOR;
    const factorThen = breakEvenFactor === null || never ? null : factor(breakEvenFactor);
    const ratios =
      priceRatio === null || breakEvenPriceRatio === null
        ? null
        : { ratio: grouped(breakEvenPriceRatio, 2), now: grouped(priceRatio, 2) };
    const facts = [
      never ? say('heat from the heat pump costs less at any possible factor') : '',
      factorThen !== null && ratios
        ? say('same cost at a seasonal factor of {factor}, or at a price ratio of {ratio} (now {now})', {
            factor: factorThen,
            ...ratios,
          })
        : '',
      factorThen !== null && !ratios ? say('same cost at a seasonal factor of {factor}', { factor: factorThen }) : '',
      factorThen === null && ratios ? say('same cost at a price ratio of {ratio} (now {now})', ratios) : '',
    ];
    return [`${systemName(against, kind)}: ${facts.filter((fact) => fact !== '').join('; ')}`];
  });
}

function priceLine(fuel: string, basis: PriceBasis): string {
  const { from, to, grade, origin, kind } = basis;
  const line = say(
    '{fuel}: {name}, {dated, select, no {without a date, used for} other {from}} {from}{ends, select, yes { to {to}} other {}}, {grade}; {origin}',
    {
      fuel,
      dated: kind === 'typed' ? 'no' : 'yes',
      name: sayTold(nameOfPrice(basis)),
      from: longDate(from),
      ends: to === undefined ? 'no' : 'yes',
      to: to === undefined ? '' : longDate(to),
      grade: gradeName(grade),
      origin: sayTold(origin),
    },
  );
  return [line, basis.staleDays === undefined ? '' : say('old'), standsSentence(basis)].filter(Boolean).join('; ');
}

function sourceLines(appraisal: Appraisal): string[] {
  const { climate, machine, modelVersion, asOf } = appraisal;
  return [
    ...[...pricesUsed(appraisal)].map(([price, basis]) => priceLine(capitalised(priceName(price)), basis)),
    say('Climate: {region}; {source}', { region: sayTold(climate.regionName), source: sayTold(climate.source) }),
    say('Factors met in homes: {source}', { source: sayTold(machine.fieldSpread.source) }),
    say('Worked out for {date} with model {version}.', { date: longDate(asOf), version: modelVersion }),
  ];
}

function findingLines({ findings, notSeen = [] }: BillCheck): string[] {
  const why = notSeen
    .map(notSeenWords)
    .flatMap(({ sentence, shown, more }) => [sentence, ...[...shown, ...more].map((line) => `  ${line}`)]);
  if (findings === undefined) return [noReadingsSentence(), ...why];
  if (findings.length === 0) return [noFindingsSentence(), ...why];
  const lines = findings.flatMap((finding) => [
    `${findingName(finding)}, ${whenSentence(finding)}, ${sureShort(finding)}: ${seenSentence(finding)} ${costOfFinding(finding)}`,
    ...(finding.check.length > 0
      ? [`  ${say('Check: {checks}', { checks: finding.check.map(findingCheckSentence).join(' ') })}`]
      : []),
    ...(finding.cautions.length > 0
      ? [`  ${say('Care: {cautions}', { cautions: finding.cautions.map(findingCaution).join(' ') })}`]
      : []),
  ]);
  return [...lines, ...why];
}

/** What only the household knows is asked, after all that readings and machine show. */
const askLines = ({ findings = [] }: BillCheck): string[] => [
  ...new Set(findings.flatMap(({ ask }) => ask.map(askSentence))),
];

function monthLines({ months, input }: BillCheck): string[] {
  if (!months) return [];
  const rows = months.map((month) => [
    monthSpan(month.from, month.from),
    exactKWh(month.estimatedKWh),
    exactKWh(month.expectedKWh),
    range(exactKWh(month.lowKWh), exactKWh(month.highKWh)),
    month.actualKWh === null ? unknown() : exactKWh(month.actualKWh),
    monthVerdict(month.verdict),
  ]);
  return [
    followedSentence(months, input.pencePerKWh),
    nextBillSentence(months),
    ...inColumns([
      [say('month'), say('estimated'), say('in this weather'), say('range'), say('meter'), say('it lies')],
      ...rows,
    ]),
  ];
}

/** Likely causes in twentieths, and the questions that would tell most. */
function searchLines(check: BillCheck): string[] {
  const search = guidedSearch(check);
  return [
    searchSentence(search),
    ...inColumns(search.causes.map(({ cause, twentieths }) => [`  ${likelyCauseName(cause)}`, inTwenty(twentieths)])),
    ...(search.causes.length > 0 ? [twentiethsMeaning()] : []),
    ...(check.input.answers ?? []).map(answerSentence),
    ...search.next.flatMap((next) => [
      `${questionTask(next.question, next.who)} ${effortSentence(next)}`,
      `  ${say('Say to the customer: “{words}”', { words: customerWords(next.question, next.who) })}`,
      ...next.outcomes.map(
        (outcome) => `  ${leadSentence(next.question, outcome)} [${next.question}: ${outcome.outcome}]`,
      ),
    ]),
  ];
}

function checkText(check: BillCheck): string[] {
  return [
    checkSentence(check),
    ...doubtSentences(check),
    ...(check.verdict === 'unknown'
      ? [say('Type it as “otherKWh” under “check” in the household file, and take it off “boughtKWh” there.')]
      : []),
    fairSentence(check),
    ...[priceSentence(check)].filter(Boolean),
    ...inColumns([
      [say('from the estimate to the bill'), say('difference'), say('trust'), say('joined in it')],
      ...partsWithRow(check, check.parts).flatMap((part) => [
        [causeName(part.cause, part.pence), poundsAndPence(part.pence), gradeName(part.grade), insideOf(part)],
        ...insidePart(part, check.findings).map(({ name, pence: inside }) => [
          `  ${name}`,
          poundsAndPence(inside),
          '',
          '',
        ]),
      ]),
    ]),
  ];
}

/** As many causes of a visit as can be looked into at once. */
const MOST_CAUSES = 3;

/** What endangers plant or people stands before any bill. */
const dangerLines = (plant: Reckoned['plant']): string[] =>
  (plant?.visits ?? [])
    .filter(({ check }) => check.causes.some(({ level }) => level === 'danger'))
    .map(({ visit, check }) => `${longDate(visit.date)}: ${siteSummary(check)}`);

/** Each visit to the plant: what comes first, what cannot be, what it can mean. */
const plantLines = (plant: Reckoned['plant']): string[] => [
  ...(plant?.visits ?? []).flatMap(({ visit, check }) => [
    `${longDate(visit.date)}: ${siteSummary(check)}`,
    ...check.remarks.map((remark) => `  ${siteRemarkSentence(remark)}`),
    ...worthSaying(check).map((value) => `  ${standingSentence(value)}`),
    ...(check.alike ? [`  ${alikeSentence(check)}`] : []),
    ...check.causes.slice(0, MOST_CAUSES).map((cause) => `  ${plantCauseText(cause)}`),
    ...check.gaps.map((gap) => `  ${gapSentence(gap)}`),
  ]),
  ...(plant?.course.fall ? [brineFallText(plant.course.fall, siteTables.bands.fixed['brine-in'])] : []),
];

function tariffLines({ tariffs: choice }: WrittenEstimate): string[] {
  if (!choice) return [];
  const ways = waysTable(choice);
  return [
    tariffHeadline(choice),
    ...inColumns([[...tariffHeads(choice)], ...choice.costs.map((one) => [...tariffCells(one, choice)])]),
    ways.caption,
    ...inColumns([ways.columns.map(({ name }) => name), ...ways.rows.map(({ cells }) => cells)]),
    ...tariffNotes(choice),
  ];
}

/** Of several offers this is the one in hand: the table beside it has the prices of all. */
const purchaseLines = ({ lifetime }: WrittenEstimate): string[] =>
  lifetime && mayLead(lifetime) ? purchaseSentences(lifetime) : [];

export function reckonText({ whole, estimate, check, plant }: Reckoned): string {
  const { appraisal } = estimate;
  const remarks: Remark[] = whole.evidence.flatMap((part) => part.import.remarks);
  const pump = appraisal.systems.find(({ id }) => id === 'heat-pump');
  return [
    estimate.household.name,
    costSentence(appraisal),
    ...(pump
      ? [rangeSentence(pump), designSentence(pump), yearToYearSentence(pump), paymentSentence(pump)].filter(
          (line) => line !== '',
        )
      : []),
    ...section(say('Files'), remarks.map(remarkSentence)),
    ...section(
      say('Records'),
      (estimate.files ?? []).flatMap((file) => [
        sayTold(file.fileName),
        ...fileAccountLines(file).map((l) => `  ${l}`),
      ]),
    ),
    ...section(say('Heat needed'), heatLines(appraisal)),
    ...section(say('Heat pump'), machineLines(appraisal)),
    ...section(say('Running cost'), [
      ...costLines(appraisal),
      ...[gasStandingSentence(appraisal, estimate.household)].filter(Boolean),
    ]),
    ...section(
      say('Offers side by side'),
      estimate.offers
        ? [
            offersSentence(estimate.offers),
            ...inColumns([[...offerHeads()], ...estimate.offers.map((one) => [...offerCells(one)])]),
          ]
        : [],
    ),
    ...section(say('Putting it in, and the years to come'), purchaseLines(estimate)),
    ...section(say('Which tariff'), tariffLines(estimate)),
    ...section(say('Where both cost the same'), evenLines(appraisal)),
    ...(check ? section(say('First of all'), dangerLines(plant)) : []),
    ...section(say('Bill check'), check ? checkText(check) : []),
    ...section(say('What the readings show'), check ? findingLines(check) : []),
    ...section(say('What each record was used for'), (check?.records ?? []).map(recordUseSentence)),
    ...section(say('Likely causes'), check ? searchLines(check) : []),
    ...section(say('Questions for the household'), check ? askLines(check) : []),
    ...section(say('Since the estimate'), check ? monthLines(check) : []),
    ...section(say('At the plant'), plantLines(plant)),
    ...section(say('Questions'), appraisal.questions.map(questionSentence)),
    ...section(say('Prices and sources'), sourceLines(appraisal)),
    '',
  ].join('\n');
}
