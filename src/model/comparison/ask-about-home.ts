/** What prices that hang on the whole home's use have to say: steps, and charges on power. */

import type { Question } from '../shapes/appraisal.ts';
import { inclVat } from '../tariff/slot-price.ts';
import { sumOf } from '../units/sums.ts';
import type { PowerCharge } from './power-charge.ts';
import { askAboutPrices } from './price-questions.ts';
import type { TariffInUse } from './prices-of.ts';
import type { RestOfHome } from './rest-of-home.ts';

/** Notes and questions about one tariff; `power` is that of the heat pump. */
export function askAboutHome(
  { tariff, version }: TariffInUse,
  home: RestOfHome,
  power: PowerCharge | null,
): Question[] {
  const questions: Question[] = [];
  const named = { tariff: tariff.name };
  if (version.bands.some(({ blocks }) => blocks)) {
    const kWh = sumOf(home.monthlyKWh);
    const weight = home.grade === 'assumed' ? 'question' : 'note';
    questions.push(askAboutPrices('blocks-other-use', weight, { ...named, kWh, grade: home.grade }));
  }
  const { demand } = version;
  if (!demand) return questions;
  const yearPence = 12 * inclVat(version, demand.pencePerKWPerMonth);
  if (demand.agreedKW !== undefined) {
    const data = { ...named, kW: demand.agreedKW, pence: demand.agreedKW * yearPence };
    questions.push(askAboutPrices('power-agreed', 'question', data));
  } else if (power) {
    const { homeKW, withKW, pence } = power;
    questions.push(askAboutPrices('power-charge-counted', 'note', { ...named, homeKW, withKW, pence }));
  } else if (!home.peaks.known) {
    const data = { ...named, why: home.peaks.why, pence: yearPence };
    questions.push(askAboutPrices('power-charge-unknown', 'question', data));
  }
  return questions;
}
