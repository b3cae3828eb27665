import { describe, expect, test } from 'vitest';
import { renderLetter, renderSheet } from '../../../src/leave-behind/letter.tsx';
import { readingDays } from '../../../src/leave-behind/schedule.ts';
import { usualOther } from '../../../src/model/bill-gap/bill-doubts.ts';
import { checkBill } from '../../../src/model/bill-gap/check-bill.ts';
import { monthlyWarnings } from '../../../src/model/bill-gap/expected-range.ts';
import { daysBetween } from '../../../src/model/calendar/civil.ts';
import type { BillCheckInput, CheckFinding } from '../../../src/model/shapes/bill-check.ts';
import { reference } from '../../../src/reference/index.ts';
import { sayTold } from '../../../src/words/say-told.ts';
import { sampleBill, sampleEstimate, spreads } from '../bill-gap/sample-estimate.ts';

const settings = { installerName: 'Hill & Daughters', installerContact: '01234 567 890', paper: 'A4' as const };
const estimate = sampleEstimate();
const check = (change: Partial<BillCheckInput> = {}) =>
  checkBill({
    estimate,
    bill: sampleBill({ degreeDays: 465, ...change }),
    reference: spreads,
    id: 'c',
    madeOn: '2027-02-10T09:00:00.000Z',
  });
const names = { to: 'Mrs Miller', ringName: 'Anna Hill', ringTelephone: '01632 960 123' };
const input = (change: Partial<BillCheckInput>, name = 'Invented household', paper: 'A4' | 'Letter' = 'A4') => ({
  check: check(change),
  estimate,
  household: { ...estimate.household, name },
  settings: { ...settings, paper },
});
const render = (change: Partial<BillCheckInput> = {}, name?: string, paper?: 'A4' | 'Letter') =>
  renderLetter(input(change, name, paper), names);
const sheet = (change: Partial<BillCheckInput> = {}, name?: string) => renderSheet(input(change, name));
const textOf = (html: string) =>
  html
    .replace(/<style[\s\S]*?<\/style>/g, ' ')
    .replace(/<[^>]+>/g, ' ')
    .replaceAll('&amp;', '&')
    .replaceAll('&#x27;', "'")
    .replace(/\s+/g, ' ');

describe('the letter', () => {
  test('inside, above or below stands on the first page, in one sentence with one amount', () => {
    expect(textOf(render())).toMatch(/The bill of £\d+ lies inside the range of our estimate\./);
    // 155 kWh estimated; three times as many are far above the range.
    expect(textOf(render({ boughtKWh: 465 }))).toMatch(/The bill lies £\d+ above the range of our estimate\./);
    expect(textOf(render({ boughtKWh: 20 }))).toMatch(/The bill lies £\d+ below the range of our estimate\./);
  });
  test('it greets by name and says whom to ring on which number', () => {
    const text = textOf(render());
    expect(text).toContain('Dear Mrs Miller,');
    expect(text).toContain('ring Anna Hill on 01632 960 123.');
  });
  test('where bill and readings differ the first step is at the meter and the supplier, never nothing', () => {
    const doubt = { code: 'bill-above-readings' as const, meterName: 'House', billKWh: 465, readKWh: 265, pence: 5000 };
    const contradicted = { ...check({ boughtKWh: 465 }), doubts: [doubt] };
    const text = textOf(renderLetter({ ...input({}), check: contradicted }, names));
    expect(text).toContain('ask your supplier to check the bill.');
    expect(text).not.toContain('Nothing needs to be done.');
  });
  test('a contradicted reading leads to the meter and to no visit at the machine; both sides stand once, no amount twice', () => {
    const doubt = { code: 'bill-above-readings' as const, meterName: 'House', billKWh: 465, readKWh: 265, pence: 5000 };
    const whole = check({ boughtKWh: 465 });
    const contradicted = { ...whole, input: { ...whole.input, readKWh: 265 }, doubts: [doubt] };
    const text = textOf(renderLetter({ ...input({}), check: contradicted }, names));
    expect(text).toMatch(/The bill charges about £50 more than .*What we know The bill has 465 kWh\./);
    expect(text.match(/The bill has 465 kWh/g)).toHaveLength(1);
    expect(text).not.toContain('On our next visit we read');
    expect(text.match(/Please read all figures/g)).toHaveLength(1);
  });
  test('readings of a part of the days: asked for where there is something to explain, not where all is well', () => {
    const doubt = { code: 'readings-cover-part' as const, billKWh: 465, readKWh: 90, daysRead: 30, days: 90, pence: 0 };
    const told = (boughtKWh: number) =>
      textOf(renderLetter({ ...input({}), check: { ...check({ boughtKWh }), doubts: [doubt] } }, names));
    for (const text of [told(465), told(155)]) expect(text).toContain('cover 30 of the bill’s 90 days.');
    expect(told(465)).toContain('Please ask your supplier for the meter’s readings of all the days');
    expect(told(155)).toContain('Nothing needs to be done.');
    expect(told(155)).not.toMatch(/Bring in|We do not know yet why|We write again/);
  });
  test('what a visit found that cannot wait stands before the bill, with the first step', () => {
    const readings = {
      brineInC: 1,
      brineOutC: -2,
      glycol: { kind: 'propylene' as const, percent: 12, basis: 'mass' as const },
    };
    const household = { ...estimate.household, siteReadings: [{ id: 'v', date: check().input.from, readings }] };
    const html = renderLetter({ ...input({}), household }, names);
    expect(textOf(html)).toMatch(/First of all, .*Urgent: the brine could freeze.*ring us today.*The bill of £/);
    expect(html).toMatch(/<tbody><tr><td>We<\/td><td>We come and see to what cannot wait.*?<td>12 February 2027/);
    expect(textOf(renderSheet({ ...input({}), household }))).toMatch(/Urgent: the brine could freeze.*The sums/);
  });
  test('the whole home’s bill of which nobody knows the rest asks for a bill from before', () => {
    const doubt = { code: 'other-unknown' as const, billKWh: 465, readKWh: 250, pence: 0 };
    const unknown = { ...check({ boughtKWh: 465 }), verdict: 'unknown' as const, doubts: [doubt] };
    const text = textOf(renderLetter({ ...input({}), check: unknown }, names));
    expect(text).toContain('Please look on a bill from before the heat pump');
    expect(text).not.toContain('outside');
    const known = { ...unknown, doubts: [{ ...doubt, fromRecord: true }] };
    const before = textOf(renderLetter({ ...input({}), check: known }, names));
    expect(before).not.toContain('Please look on a bill from before the heat pump');
    expect(before).toContain('By its records from before, this home took about 250 kWh');
    expect(before.match(/Is there anything new that runs on electricity/g)).toHaveLength(1);
  });
  test.each(['What we know', 'What we do not know yet', 'What happens next'])('has the heading "%s"', (heading) =>
    expect(render({ boughtKWh: 465 })).toContain(`<h3>${heading}</h3>`),
  );
  test('each side has what it does and a day, and the next letter comes last', () => {
    const rows = [...render({ boughtKWh: 465 }).matchAll(/<tr><td>(You|We)<\/td><td>(.*?)<\/td><td>(.*?)<\/td>/g)];
    expect(rows.map(([, who, , by]) => [who, by])).toEqual([
      ['You', '17 February 2027'],
      ...rows.slice(1, -1).map(() => ['We', '24 February 2027']),
      ['We', '3 March 2027'],
    ]);
    expect(rows.at(-1)![2]).toContain('We write again');
  });
  test('where nothing is open nobody is asked and no letter is announced', () => {
    const text = textOf(render({ heatKWh: 400 }));
    expect(text).toContain('Nothing needs to be done.');
    expect(text).not.toMatch(/We write again|Please tell us/);
  });
  test('what may lie with the household is asked, never named as the reason', () => {
    // Metered: the home took half as much heat again; the machine works as estimated.
    const text = textOf(render({ boughtKWh: 465, heatKWh: 1500, waterHeatKWh: 150 }));
    expect(text).toMatch(/After that the bill is about £\d+ more than expected\. We do not know yet why\./);
    expect(text).not.toMatch(/heat added|Using more heat|hot water added/i);
  });
  test('a large load on the meter stands with what it cost, beside what is left; nobody says then that nothing is known', () => {
    const seen = [
      { code: 'power', value: 7, unit: 'kW' },
      { code: 'days', value: 30, unit: 'd' },
    ];
    const load = (pence: number) => {
      const base = check({ meter: 'whole-house', boughtKWh: 1465, otherKWh: 62 });
      const { from, to } = base.input;
      const finding = {
        ...{ code: 'large-load', meter: 'whole-house', from, to, sure: 0.85, seen, kWh: 1000, pence, penceYear: 0 },
        ...{ part: 'rest', ask: ['vehicle'], check: [], working: base.parts[0]!.working },
      } as unknown as CheckFinding;
      return textOf(renderLetter({ ...input({}), check: { ...base, findings: [finding] } }, names));
    };
    const text = load(24_000);
    expect(text).toMatch(/than expected\. What your meter shows may explain much of it\./);
    expect(text).toContain('In the days of this bill it took about 1,000 kWh, for about £240.');
    expect(text).toContain('Is a car charged at home?');
    expect(load(2_000)).toMatch(/than expected\. We do not know yet why\./);
  });
});

describe('the sheet', () => {
  test.each(['The sums', 'What the readings show', 'Likely causes'])('has the heading "%s"', (heading) => {
    expect(sheet({ boughtKWh: 465 })).toContain(`<h3>${heading}</h3>`);
    expect(render({ boughtKWh: 465 })).not.toContain(heading);
  });
  test('says what it knows: weather only where there is some, and nothing measured that nobody said', () => {
    const { otherKWh: _, ...bill } = sampleBill({ meter: 'whole-house', boughtKWh: 465 });
    const unsaid = checkBill({ estimate, bill, reference: spreads, id: 'c', madeOn: check().madeOn });
    const text = textOf(renderSheet({ ...input({}), check: unsaid }));
    expect(text).toContain('Estimated for these days and this price £');
    expect(text).toContain('Other electricity taken off 0 kWh (assumed)');
    expect(text).toMatch(/Cost of the kWh of the estimated year £/);
  });
  test('the newest visit to the plant since the bill began is in the working, as hints and with its cautions', () => {
    const visit = (date: string, brineOutC: number) => ({
      id: date,
      date,
      note: `Seen on ${date}.`,
      readings: { brineInC: 3, brineOutC, glycol: { kind: 'propylene' as const, percent: 15, basis: 'mass' as const } },
    });
    const { from } = check().input;
    const household = { ...estimate.household, siteReadings: [visit(from, -4), visit('2020-01-01', 1)] };
    const text = textOf(renderSheet({ check: check(), estimate, household, settings }));
    expect(text).toContain(`Seen on ${from}.`);
    expect(text).not.toContain('Seen on 2020-01-01.');
    expect(text).toMatch(/At the plant on .*Urgent: the brine could freeze.*Brine in less brine out: 7\.0 K, above/);
    expect(text).toMatch(/likeliest first\. The order is a judgement, not a diagnosis\. .*may be/);
    expect(text).toContain('Glycol can harm people');
    expect(textOf(sheet())).not.toContain('At the plant on');
  });
  test('what is joined is named as joined, and every part has its sum', () => {
    const text = textOf(sheet({ boughtKWh: 300 }));
    expect(text).toContain('joined: heat used, hot water, how well the machine works and the backup heater');
    for (const { working } of check({ boughtKWh: 300 }).parts) expect(text).toContain(`${sayTold(working.title)}: `);
  });
  test('with readings by the hour missing it says what they would show', () => {
    expect(textOf(sheet())).toContain('There are no readings by the hour for these days.');
  });
  test('the same twice; nothing fetched, nothing run, names escaped', () => {
    const name = 'A <b>"home"</b> </style><script>x';
    expect(render({}, name)).toBe(render({}, name));
    const html = render({}, name) + sheet({}, name);
    expect(html).not.toMatch(/<script|<b>|https?:\/\/(?!www\.w3\.org)/);
    expect(textOf(html)).not.toMatch(/NaN|undefined|Infinity/);
    expect(render({}, 'x', 'Letter')).toContain('8.5in 11in');
  });
});

describe('what to read from now on', () => {
  const days = readingDays(check(), estimate);
  test('the first of each month after the letter, for a year', () => {
    expect(days.map(({ on }) => on)).toEqual([
      ...['03', '04', '05', '06', '07', '08', '09', '10', '11', '12'].map((month) => `2027-${month}-01`),
      '2028-01-01',
      '2028-02-01',
      '2028-03-01',
    ]);
    expect(days[0]!.expected).toBeNull();
  });
  test('a month has the units of the written estimate: 5 a day in winter, 2 in summer', () => {
    expect(days[1]!.expected!.kWh).toBeCloseTo(5 * 31, 6); // March
    expect(days[4]!.expected!.kWh).toBeCloseTo(2 * 30, 6); // June
    for (const { expected } of days.slice(1)) expect(expected!.warnKWh).toBeGreaterThan(expected!.kWh);
  });
  test('ring us above: the very level that the written estimate prints for the month', () => {
    const pump = estimate.appraisal.systems.find(({ id }) => id === 'heat-pump')!;
    const warnings = monthlyWarnings(estimate.appraisal, pump, reference.spread);
    expect(days.slice(1).map(({ expected }) => expected!.warnKWh)).toEqual([
      ...warnings.slice(2),
      ...warnings.slice(0, 2),
    ]);
  });
  test('a meter of the home counts other things too: as told for the bill’s days, else as is usual', () => {
    const home = check({ meter: 'whole-house', otherKWh: 62 });
    const perDay = 62 / daysBetween(home.input.from, home.input.to);
    const [, march] = readingDays(home, estimate);
    expect(march!.expected!.otherKWh).toBeCloseTo(31 * perDay, 9);
    expect(march!.expected!.kWh).toBeCloseTo(31 * (5 + perDay), 6);
    expect(march!.expected!.warnKWh - days[1]!.expected!.warnKWh).toBeCloseTo(31 * perDay, 9);
    const { otherKWh: _, ...input } = home.input;
    const [, usual] = readingDays({ ...home, input }, estimate);
    const span = { from: '2027-03-01', to: '2027-04-01' };
    expect(usual!.expected!.otherKWh).toBeCloseTo(
      usualOther(estimate.household, span, reference, [], '2026-01-01').kWh,
      9,
    );
    // Half as much as usual by its own records: half in every month to come.
    const billKWh = usualOther(estimate.household, input, reference, [], '2026-01-01').kWh;
    const doubt = { code: 'other-unknown' as const, billKWh, readKWh: billKWh / 2, fromRecord: true, pence: 0 };
    const [, own] = readingDays({ ...home, input, doubts: [doubt] }, estimate);
    expect(own!.expected!.otherKWh).toBeCloseTo(usual!.expected!.otherKWh / 2, 9);
    const metered = { ...home, input: { ...home.input, heatPumpKWh: 300 } };
    expect(readingDays(metered, estimate)).toEqual(days);
    expect(textOf(render({ meter: 'whole-house', otherKWh: 62 }))).toContain('Meter of the home');
  });
  test('a letter of December goes on in January', () => {
    expect(readingDays({ ...check(), madeOn: '2027-12-31T12:00:00Z' }, estimate)[0]!.on).toBe('2028-01-01');
  });
});
