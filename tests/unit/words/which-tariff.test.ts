/** "Which one should I take?" */
import { describe, expect, test } from 'vitest';
import { compareTariffs } from '../../../src/model/choices/compare-tariffs.ts';
import type { Household } from '../../../src/model/shapes/household.ts';
import type { Tariff } from '../../../src/model/shapes/tariff.ts';
import type { TariffChoice } from '../../../src/model/shapes/tariff-choice.ts';
import { reference } from '../../../src/reference/index.ts';
import { tariffWorking } from '../../../src/words/explained/prices.ts';
import { german } from '../../../src/words/german/german.ts';
import { speak } from '../../../src/words/say.ts';
import { sayTold } from '../../../src/words/say-told.ts';
import { asksAndRisks, chooseSentence, tariffHeadline, tariffName } from '../../../src/words/which-tariff.ts';
import { makeHousehold, makeTariff } from '../appraisal/make-household.ts';

const flat = (id: string, pence: number): Tariff => ({ ...makeTariff(id, pence), name: `Flat ${pence}` });
const night: Tariff = {
  ...makeTariff('night', [
    { name: 'night', pencePerKWh: 8, times: [{ from: '00:00', to: '05:30' }] },
    { name: 'day', pencePerKWh: 29, times: 'rest' },
  ]),
  name: 'Night',
};
function compare(tariffs: readonly Tariff[], more: Partial<Household> = {}): TariffChoice {
  const household = makeHousehold({ prices: { electricityTariffId: tariffs[0]!.id }, tariffs: [...tariffs], ...more });
  return compareTariffs({ household, series: [], reference, asOf: '2026-11-29', draws: 64 })!;
}

describe('the answer', () => {
  test('names the tariff, its money with the range, and what the change would save', () => {
    const choice = compare([flat('now', 30), night]);
    expect(tariffHeadline(choice)).toMatch(
      /^Of 2 tariffs, “Night” costs this home least: about £[\d,]+ a year for all its electricity\. In 8 of 10 homes like yours it is £[\d,]+ to £[\d,]+\. That is about £\d+ a year less than on “Flat 30”/,
    );
    expect(chooseSentence(choice)).toMatch(/^“Night” costs you least: about £\d+ a year less than now\.$/);
    expect(asksAndRisks(choice)).toEqual([
      'It asks nothing new of you: your use is counted at its present hours.',
      'Its risk: a kWh costs up to 29.0 p.',
    ]);
  });

  test('says what a car and a battery must do for it', () => {
    const choice = compare([flat('now', 30), night], { battery: { usableKWh: 5, fromNight: true }, car: {} });
    expect(asksAndRisks(choice)[0]).toBe('It needs car and battery charging in the cheap hours.');
  });

  test('does not choose where the money is about the same', () => {
    const choice = compare([flat('now', 20.1), flat('other', 20)]);
    expect(tariffHeadline(choice)).toMatch(
      /^“Flat 20” and “Flat 20.1” come out about the same, .* only a little below the others, .* The estimate rests on “Flat 20.1”, so there is no need to change\.$/,
    );
    expect(chooseSentence(choice)).toMatch(/^Your tariff hardly matters:/);
    expect(asksAndRisks(choice)).toEqual([]);
  });

  test('is not sure where another is the cheapest in many futures', () => {
    const choice = compare([flat('now', 30), night]);
    const [first, second, ...rest] = choice.costs;
    const unsure = {
      ...choice,
      costs: [{ ...first!, cheapestShare: 0.6 }, { ...second!, cheapestShare: 0.4 }, ...rest],
    };
    expect(tariffHeadline(unsure)).toContain('That is not sure: in 8 of 20 futures');
    expect(chooseSentence(unsure)).toContain('that is not sure');
  });

  test('advises no tariff where the published average costs least, and keeps the one that is the cheapest', () => {
    const dear = compare([flat('now', 90), flat('other', 80)]);
    expect(tariffHeadline(dear)).toMatch(
      /^These tariffs do not beat the published average price, which comes to .* Of your own, “Flat 80” costs least: about £[\d,]+\./,
    );
    expect(asksAndRisks(dear)).toEqual([]);
    expect(chooseSentence(compare([night, flat('other', 80)]))).toBe(
      'Keep the present tariff: of these it is the cheapest.',
    );
    expect(chooseSentence({ ...compare([night, flat('other', 80)]), inUse: 'cannot be priced' })).toBe(
      'The tariff on top costs you least of these.',
    );
  });

  test('doubts a price at which a unit costs nothing', () => {
    expect(tariffHeadline(compare([flat('now', 30), flat('odd', -4)]))).toContain(
      'On “Flat -4” a kWh costs nothing or less on average, so what uses more does not look more expensive. Check its prices',
    );
  });

  test('leaves a name as it was typed, in German too', () => {
    speak({ language: 'de-DE', currency: 'GBP' }, german);
    const choice = compare([{ ...night, name: 'Day and night' }]);
    expect(choice.costs.filter(({ tariffId }) => tariffId !== null).map(tariffName)).toEqual(['Day and night']);
    const named = { ...night, name: 'Night rate' };
    expect(sayTold(tariffWorking(named.versions[0]!, named).title)).toBe('Preise von Night rate');
    // What is a word of ours for anybody else’s text.
    expect(sayTold('Day and night')).not.toBe('Day and night');
  });
});
