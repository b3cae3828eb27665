import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { toCivilDate } from '../../../src/model/calendar/civil.ts';
import { readDate, showDate } from '../../../src/screens/shared/date-text.ts';
import { german } from '../../../src/words/german/german.ts';
import { LANGUAGES, speak } from '../../../src/words/say.ts';

describe('days as they are typed', () => {
  test.each([
    ['1/10/2025', '2025-10-01'],
    ['03/04/2025', '2025-04-03'],
    ['1.10.25', '2025-10-01'],
    ['1 10 2025', '2025-10-01'],
    ['1 Oct 2025', '2025-10-01'],
    ['1st October 2025', '2025-10-01'],
    ['29-Feb-2024', '2024-02-29'],
    ['2025-10-01', '2025-10-01'],
  ])('%j is %s', (text, date) => expect(readDate(text)).toEqual({ kind: 'day', date }));

  test.each(['31/02/2025', '29/02/2025', '10/13/2025', '2025', 'yesterday', '1 Okt 2025', '0/1/2025'])(
    '%j is no day',
    (text) => expect(readDate(text).kind).toBe('no day'),
  );

  test.each(LANGUAGES)('what is shown in %s is read back as the same day', (language) => {
    speak({ language, currency: 'GBP' }, german);
    fc.assert(
      fc.property(fc.integer({ min: 7000, max: 30_000 }), (dayNumber) => {
        const date = toCivilDate(dayNumber);
        expect(readDate(showDate(date))).toEqual({ kind: 'day', date });
      }),
    );
  });

  test('a German day has its stop', () => {
    speak({ language: 'de-DE', currency: 'GBP' }, german);
    expect(showDate('2026-03-01')).toBe('1. Mär 2026');
    expect(readDate('1. März 2026')).toEqual({ kind: 'day', date: '2026-03-01' });
  });
});
