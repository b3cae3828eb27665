import { describe, expect, test } from 'vitest';
import { DELIVERED_FUELS, PRICED_CARRIERS } from '../../../src/model/shapes/heating.ts';
import { listed } from '../../../src/words/numbers.ts';
import { britishSentence } from '../../../src/words/prices.ts';
import { type Currency, speak } from '../../../src/words/say.ts';
import { carrierName } from '../../../src/words/systems.ts';
import { larchRise } from '../leave-behind/larch-rise.ts';

const { prices } = larchRise();
const graded = (grade: 'assumed' | 'measured', gas: 'assumed' | 'measured' = grade): typeof prices => ({
  ...prices,
  electricity: { ...prices.electricity, grade },
  gas: { ...prices.gas, grade: gas },
  ...Object.fromEntries(
    DELIVERED_FUELS.flatMap((fuel) => [
      [fuel, { ...prices.gas, grade }],
      [`${fuel}PencePerKWh`, 8],
    ]),
  ),
});

describe('built-in prices are said to be British where the money is another', () => {
  const said = (fuels: string, money: string) =>
    `The prices for ${fuels} are British, with pounds written as ${money}. Put in your own before you promise anything.`;
  test.each([
    ['pounds', 'GBP', graded('assumed'), ''],
    ['euros', 'EUR', graded('assumed'), said(listed(PRICED_CARRIERS.map(carrierName)), '€')],
    ['dollars, all but gas typed', 'USD', graded('measured', 'assumed'), said('gas', '$')],
    ['euros, all typed', 'EUR', graded('measured'), ''],
  ] as const)('%s', (_, currency: Currency, given, expected) => {
    speak({ language: 'en-GB', currency });
    expect(britishSentence(given)).toBe(expected);
  });
});
