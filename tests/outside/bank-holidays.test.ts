import { describe, expect, test } from 'vitest';
import { bankHolidays, easterSunday } from '../../src/model/calendar/bank-holidays.ts';
import { toCivilDate } from '../../src/model/calendar/civil.ts';
import type { BankHolidayDivision } from '../../src/model/shapes/dates.ts';

// Source of all dates: HM Government, www.gov.uk/bank-holidays (bank-holidays.json, divisions as named there), 2019 to 2028.
const PUBLISHED: Readonly<Record<BankHolidayDivision, Readonly<Record<number, string>>>> = {
  'england-and-wales': {
    2019: '01-01 04-19 04-22 05-06 05-27 08-26 12-25 12-26',
    2020: '01-01 04-10 04-13 05-08 05-25 08-31 12-25 12-28',
    2021: '01-01 04-02 04-05 05-03 05-31 08-30 12-27 12-28',
    2022: '01-03 04-15 04-18 05-02 06-02 06-03 08-29 09-19 12-26 12-27',
    2023: '01-02 04-07 04-10 05-01 05-08 05-29 08-28 12-25 12-26',
    2024: '01-01 03-29 04-01 05-06 05-27 08-26 12-25 12-26',
    2025: '01-01 04-18 04-21 05-05 05-26 08-25 12-25 12-26',
    2026: '01-01 04-03 04-06 05-04 05-25 08-31 12-25 12-28',
    2027: '01-01 03-26 03-29 05-03 05-31 08-30 12-27 12-28',
    2028: '01-03 04-14 04-17 05-01 05-29 08-28 12-25 12-26',
  },
  scotland: {
    2019: '01-01 01-02 04-19 05-06 05-27 08-05 12-02 12-25 12-26',
    2020: '01-01 01-02 04-10 05-08 05-25 08-03 11-30 12-25 12-28',
    2021: '01-01 01-04 04-02 05-03 05-31 08-02 11-30 12-27 12-28',
    2022: '01-03 01-04 04-15 05-02 06-02 06-03 08-01 09-19 11-30 12-26 12-27',
    2023: '01-02 01-03 04-07 05-01 05-08 05-29 08-07 11-30 12-25 12-26',
    2024: '01-01 01-02 03-29 05-06 05-27 08-05 12-02 12-25 12-26',
    2025: '01-01 01-02 04-18 05-05 05-26 08-04 12-01 12-25 12-26',
    2026: '01-01 01-02 04-03 05-04 05-25 06-15 08-03 11-30 12-25 12-28',
    2027: '01-01 01-04 03-26 05-03 05-31 08-02 11-30 12-27 12-28',
    2028: '01-03 01-04 04-14 05-01 05-29 08-07 11-30 12-25 12-26',
  },
  'northern-ireland': {
    2019: '01-01 03-18 04-19 04-22 05-06 05-27 07-12 08-26 12-25 12-26',
    2020: '01-01 03-17 04-10 04-13 05-08 05-25 07-13 08-31 12-25 12-28',
    2021: '01-01 03-17 04-02 04-05 05-03 05-31 07-12 08-30 12-27 12-28',
    2022: '01-03 03-17 04-15 04-18 05-02 06-02 06-03 07-12 08-29 09-19 12-26 12-27',
    2023: '01-02 03-17 04-07 04-10 05-01 05-08 05-29 07-12 08-28 12-25 12-26',
    2024: '01-01 03-18 03-29 04-01 05-06 05-27 07-12 08-26 12-25 12-26',
    2025: '01-01 03-17 04-18 04-21 05-05 05-26 07-14 08-25 12-25 12-26',
    2026: '01-01 03-17 04-03 04-06 05-04 05-25 07-13 08-31 12-25 12-28',
    2027: '01-01 03-17 03-26 03-29 05-03 05-31 07-12 08-30 12-27 12-28',
    2028: '01-03 03-17 04-14 04-17 05-01 05-29 07-12 08-28 12-25 12-26',
  },
};

describe('bank holidays by rule against the published lists', () => {
  for (const [division, years] of Object.entries(PUBLISHED)) {
    test.each(Object.entries(years))(`${division} %s`, (year, dates) => {
      const found = [...bankHolidays(Number(year), division as BankHolidayDivision)].sort((a, b) => a - b);
      expect(found.map((one) => toCivilDate(one).slice(5)).join(' ')).toBe(dates);
    });
  }
});

describe('Easter Sunday', () => {
  test.each([
    [1818, '1818-03-22'], // the earliest that can be, from memory
    [1961, '1961-04-02'], // from memory
    [2000, '2000-04-23'], // from memory
    [2038, '2038-04-25'], // the latest that can be, from memory
    [2026, '2026-04-05'], // the Sunday between Good Friday and Easter Monday of the list above
  ])('%i', (year, date) => expect(toCivilDate(easterSunday(year))).toBe(date));
  test('in 700 years it is that of D. E. Knuth (The Art of Computer Programming, 1.3.2, exercise 14; from memory)', () => {
    for (let year = 1600; year < 2300; year++) {
      const golden = (year % 19) + 1;
      const century = Math.floor(year / 100) + 1;
      const leapYearsLeftOut = Math.floor((3 * century) / 4) - 12;
      const moonCorrection = Math.floor((8 * century + 5) / 25) - 5;
      let epact = (((11 * golden + 20 + moonCorrection - leapYearsLeftOut) % 30) + 30) % 30;
      if ((epact === 25 && golden > 11) || epact === 24) epact += 1;
      const fullMoon = 44 - epact < 21 ? 74 - epact : 44 - epact;
      const sunday = new Date(Date.UTC(year, 2, fullMoon));
      do sunday.setUTCDate(sunday.getUTCDate() + 1);
      while (sunday.getUTCDay() !== 0);
      expect(toCivilDate(easterSunday(year))).toBe(sunday.toISOString().slice(0, 10));
    }
  });
});
