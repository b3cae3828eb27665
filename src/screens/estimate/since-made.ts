/** What is different now from what a written estimate was made with, in one line. */

import { findSideBySide } from '../../model/comparison/beside.ts';
import { type Appraisal, carriersOf, priceOf } from '../../model/shapes/appraisal.ts';
import type { Series } from '../../model/shapes/evidence.ts';
import { type Fuel, isFuel } from '../../model/shapes/heating.ts';
import type { WrittenEstimate } from '../../model/shapes/written-estimate.ts';
import { earlierRuleSentence } from '../../words/estimate.ts';
import { electricityPriceWorking, fuelPriceWorking } from '../../words/explained/prices.ts';
import { rangedWorking } from '../../words/explained/ranged.ts';
import { factor, listed, pence, spokenCount, spokenPounds } from '../../words/numbers.ts';
import { inMoneyOf, say } from '../../words/say.ts';
import { sayTold } from '../../words/say-told.ts';
import { carrierName } from '../../words/systems.ts';
import type { ShownWorking } from '../../words/working.ts';

interface Now {
  readonly appraisal: Appraisal;
  readonly series: readonly Series[];
}

/** What is burnt in the ways of heating compared, as far as its price is known. */
const fuelsOf = (appraisal: Appraisal): Fuel[] =>
  [...carriersOf(appraisal)].filter(
    (carrier): carrier is Fuel => isFuel(carrier) && !!priceOf(appraisal.prices, carrier),
  );

/** Each thing that differs where it would be seen, as it was and as it is. */
function listChanges(estimate: WrittenEstimate, now: Now): string[] {
  const was = estimate.appraisal;
  const is = now.appraisal;
  const changes: string[] = [];
  const compare = (name: string, before: string, after: string) => {
    if (before !== after) changes.push(say('{name} {before} then, {after} now', { name, before, after }));
  };
  const priceThen = (price: number) => inMoneyOf(estimate, () => pence(price));
  compare(say('electricity'), priceThen(was.prices.electricityPencePerKWh), pence(is.prices.electricityPencePerKWh));
  for (const fuel of fuelsOf(is)) {
    const [before, after] = [priceOf(was.prices, fuel), priceOf(is.prices, fuel)];
    if (before && after) compare(carrierName(fuel), priceThen(before.pencePerKWh), pence(after.pencePerKWh));
  }
  compare(say('heat'), `${spokenCount(was.demand.total.value)} kWh`, `${spokenCount(is.demand.total.value)} kWh`);
  compare(say('seasonal factor'), factor(was.machine.whole.value), factor(is.machine.whole.value));
  compare(say('records'), String(estimate.evidence.length), String(now.series.length));
  compare(say('model'), was.modelVersion, is.modelVersion);
  return changes;
}

export function sayChanges(estimate: WrittenEstimate, now: Now): string {
  const changes = listChanges(estimate, now);
  const before = inMoneyOf(estimate, () => spokenPounds(findSideBySide(estimate.appraisal).pump.cost.value));
  const after = spokenPounds(findSideBySide(now.appraisal).pump.cost.value);
  if (changes.length === 0) {
    return before === after
      ? say('Nothing has changed since it was made.')
      : say('The same sums give about {after} a year now, because the date is a later one.', { after });
  }
  const cost =
    before === after
      ? say('The cost comes out the same, about {after} a year.', { after })
      : say('Today it would be about {after} a year.', { after });
  const since = say('Since it was made: {changes}. {cost}', { changes: listed(changes), cost });
  return [since, earlierRuleSentence(estimate.appraisal)].filter(Boolean).join(' ');
}

/** The sums of what is compared, as they were and as they are. */
export function sinceWorkings(was: Appraisal, is: Appraisal): ShownWorking[] {
  const of = (appraisal: Appraisal, when: string) =>
    [findSideBySide(appraisal).pump.cost, appraisal.demand.total, appraisal.machine.whole]
      .map(rangedWorking)
      .concat(electricityPriceWorking(appraisal))
      .concat(fuelsOf(appraisal).map((fuel) => fuelPriceWorking(appraisal, fuel)))
      .map((working) => ({ ...working, title: { said: `${when}: ${sayTold(working.title)}` } }));
  return [...of(was, say('Then')), ...of(is, say('Now'))];
}
