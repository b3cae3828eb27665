/** Makes the frozen snapshot that is handed over; refuses where nothing could honestly be promised. */
import { appraise } from '../model/appraise.ts';
import { compareTariffs } from '../model/choices/compare-tariffs.ts';
import { accountFiles } from '../model/demand/account-records.ts';
import { reckonLifetime } from '../model/lifetime/reckon-lifetime.ts';
import { reckonOffers } from '../model/offers.ts';
import { openPrices } from '../model/shapes/appraisal.ts';
import { currencyOf } from '../model/shapes/country.ts';
import type { CivilDate } from '../model/shapes/dates.ts';
import type { Evidence, Series } from '../model/shapes/evidence.ts';
import type { Household } from '../model/shapes/household.ts';
import type { WrittenEstimate } from '../model/shapes/written-estimate.ts';
import { referenceOf } from '../reference/index.ts';
import { openPriceSentence } from '../words/prices.ts';
import { questionSentence } from '../words/questions.ts';
import { say } from '../words/say.ts';
import { DeskError } from './desk-error.ts';
import { ManyRefusals } from './parse-household.ts';

export interface EstimateInput {
  readonly id: string;
  readonly number: number;
  readonly madeOn: string;
  readonly asOf: CivilDate;
  readonly note: string;
  readonly household: Household;
  readonly imports: readonly Evidence[];
  /** Records of the imports, joined. */
  readonly series: readonly Series[];
}

/** The comparison of a day, frozen with everything it rests on. Refuses only what the model refuses. */
export function takeSnapshot({ household, imports, series, asOf, ...rest }: EstimateInput): WrittenEstimate {
  const reference = referenceOf(household);
  const appraisal = appraise({ household, series, reference, asOf });
  const refusal = appraisal.questions.find(({ weight }) => weight === 'refusal');
  if (refusal) {
    throw new DeskError({
      code: refusal.code,
      message: questionSentence(refusal),
      ...(refusal.field === undefined ? {} : { where: refusal.field }),
      remedy: say('Settle this first.'),
    });
  }
  const offers = reckonOffers({ household, series, reference, asOf }, appraisal);
  const tariffs = compareTariffs({ household, series, reference, asOf });
  const lifetime = reckonLifetime({ household, appraisal, reference });
  return {
    ...rest,
    currency: currencyOf(household),
    householdId: household.id,
    household,
    evidence: [...series],
    ...(imports.length > 0 ? { files: accountFiles(household, imports, series, appraisal) } : {}),
    appraisal,
    ...(lifetime ? { lifetime } : {}),
    ...(offers.length > 0 ? { offers } : {}),
    ...(tariffs ? { tariffs } : {}),
  };
}

/** What a bill is compared with: a typical home may stand in at the table, but nobody's bill is held against it. */
export function estimateForCheck(input: EstimateInput): WrittenEstimate {
  const estimate = takeSnapshot(input);
  const { demand, questions } = estimate.appraisal;
  if (demand.estimates.length === 0 || questions.some(({ code }) => code === 'demand-unknown')) {
    throw new DeskError({
      code: 'nothing-known',
      message: say('Nothing is known yet of how much heat this home needs, so there can be no written estimate.'),
      where: say('heat needed'),
      remedy: say(
        'Import bills or readings, or give the heat loss, the figure of the certificate, or floor area and age.',
      ),
    });
  }
  return estimate;
}

/** The same for a household's hands: every price in it is one of today, or was said to stand. */
export function makeEstimate(input: EstimateInput): WrittenEstimate {
  const estimate = estimateForCheck(input);
  const [open, ...others] = openPrices(estimate.appraisal).map((one) => ({
    code: 'price-open',
    message: openPriceSentence(one),
    where: 'prices.stand',
    remedy: say(
      'Type today’s price, leave out that kind of heating, or confirm the assumed price: on this screen, or in the household file as {key}.',
      { key: `"stand": [{ "price": "${one.price}", "on": "${estimate.appraisal.asOf}" }]` },
    ),
  }));
  if (open) throw new ManyRefusals([open, ...others]);
  return estimate;
}
