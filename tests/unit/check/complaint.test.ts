import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { BillPrefill, OpenHousehold } from '../../../src/desk/contract.ts';
import { addDays } from '../../../src/model/calendar/civil.ts';
import { BillCheck } from '../../../src/model/shapes/bill-check.ts';
import type { Household } from '../../../src/model/shapes/household.ts';
import { openMillLane } from './mill-lane.ts';

let opened: Awaited<ReturnType<typeof openMillLane>>;
let home: OpenHousehold;
let check: BillCheck;
beforeAll(async () => {
  opened = await openMillLane();
  home = await opened.call('household.open', { id: opened.householdId });
  check = home.checks[0]!;
});
afterAll(() => opened.store.close());

const winter = { from: '2025-12-01', to: '2026-03-01', boughtKWh: 2264, otherKWh: 0, pencePerKWh: 27.69 } as const;

describe('a check with all that the evidence offers', () => {
  test('fits its schema, and its parts sum to the difference to the penny', () => {
    expect(BillCheck.safeParse(check).error?.issues).toBeUndefined();
    expect(check.parts.reduce((sum, { pence }) => sum + pence, 0)).toBe(check.actualPence - check.estimatedPence);
  });
  test('the heater is found on its days, with the units that were put into the readings', () => {
    const [finding] = check.findings!;
    expect(finding).toMatchObject({ code: 'heater-running', meter: 'heat-pump', from: '2026-01-08', to: '2026-02-19' });
    // 42 nights of two hours at 3 kW.
    expect(finding!.kWh).toBeGreaterThan(0.95 * 252);
    expect(finding!.kWh).toBeLessThan(1.05 * 252);
    expect(finding!.sure).toBeLessThan(1);
    expect(finding!.working.result).toEqual({ value: finding!.pence, unit: 'pence' });
    expect(finding!.typicalDay).toMatchObject({ minutes: 60, seenDays: 42 });
    // The night hours stand 3 kW above days as cold without it; noon does not.
    const { seen, otherwise } = finding!.typicalDay!;
    expect(seen[2]! - otherwise![2]!).toBeCloseTo(3, 0);
    expect(Math.abs(seen[11]! - otherwise![11]!)).toBeLessThan(0.2);
  });
  test('the same units are a part of their own, near their cost at the bill’s price', () => {
    const part = check.parts.find(({ cause }) => cause === 'backup')!;
    expect(part.pence).toBeGreaterThan(0.85 * 252 * 27.69);
    expect(part.pence).toBeLessThan(1.1 * 252 * 27.69);
    expect(check.parts.map(({ cause }) => cause)).toEqual(expect.arrayContaining(['weather', 'price', 'backup']));
  });
  test('every month since the written estimate is followed', () => {
    expect(check.months!.map(({ month }) => month)).toEqual([
      ...['09', '10', '11', '12'].map((month) => `2025-${month}`),
      ...['01', '02', '03', '04', '05', '06', '07', '08'].map((month) => `2026-${month}`),
    ]);
    const summed = check.months!.reduce((sum, { actualKWh, expectedKWh }) => sum + actualKWh! - expectedKWh, 0);
    expect(check.months!.at(-1)!.gapSoFarKWh).toBeCloseTo(summed, 6);
  });
  test('an estimate that a later bill put right is seen from bills alone, and so is said', async () => {
    const { call, store, householdId } = await openMillLane();
    const whole = await call('household.open', { id: householdId });
    const meter = whole.series.find(({ role }) => role === 'heat-pump')!;
    const months = ['09', '10', '11', '12', '01', '02', '03', '04', '05', '06', '07', '08'];
    const kWhOf = (month: string) => {
      const start = new Date(meter.days!.first).getTime();
      const values = meter.days!.values.filter(
        (_, i) => new Date(start + i * 86_400_000).toISOString().slice(5, 7) === month,
      );
      return values.reduce<number>((sum, value) => sum + value!, 0);
    };
    const wrong: Readonly<Record<string, number>> = { '02': 400, '03': -400 };
    const periods = months.map((month) => {
      const from = `${Number(month) >= 9 ? 2025 : 2026}-${month}-01`;
      const to = `${addDays(from, 31).slice(0, 7)}-01`;
      const quality = month === '02' ? ('estimated' as const) : ('actual' as const);
      return { from, to, kWh: kWhOf(month) + (wrong[month] ?? 0), quality };
    });
    for (const { id, series } of whole.evidence) {
      if (series.some(({ carrier }) => carrier === 'electricity')) await call('evidence.undo', { evidenceId: id });
    }
    await call('evidence.type', { householdId, name: 'bills', carrier: 'electricity', role: 'heat-pump', periods });
    // The bill ends before the one that put it right begins.
    const estimated = await call('check.run', {
      ...winter,
      estimateId: whole.estimates[0]!.id,
      meter: 'heat-pump',
      readings: 'estimated',
      boughtKWh: 2664,
    });
    expect(estimated.findings).toMatchObject([{ code: 'estimate-corrected', from: '2026-02-01', to: '2026-04-01' }]);
    expect(estimated.findings![0]!.kWh).toBeGreaterThan(250);
    expect(estimated.notSeen).toEqual([{ code: 'no-readings', names: [] }]);
    store.close();
  });
  test('without readings nothing is said of them', async () => {
    for (const { id } of home.evidence) await opened.call('evidence.undo', { evidenceId: id });
    const bare = await opened.call('check.run', {
      ...winter,
      estimateId: check.estimateId,
      meter: 'heat-pump',
      readings: 'actual',
    });
    expect(bare.findings).toBeUndefined();
    expect(bare.months).toBeUndefined();
    expect(bare.parts.find(({ cause }) => cause === 'rest')!.joined).toContain('backup');
    for (const { id } of home.evidence) await opened.call('evidence.restore', { evidenceId: id });
    await opened.call('check.drop', { checkId: bare.id });
  });
});

describe('a bill from the evidence alone', () => {
  const prefill = (days: { from?: string; to?: string } = {}) =>
    opened.call('check.prefill', { estimateId: check.estimateId, ...days }) as Promise<BillPrefill | null>;
  test('the newest three whole months, the price left to be asked', async () => {
    const found = (await prefill())!;
    expect(found).toMatchObject({ from: '2026-06-01', to: '2026-09-01', meter: 'heat-pump', readings: 'actual' });
    expect(found.pencePerKWh).toBeUndefined();
    const months = check.months!.slice(-3).reduce((sum, { actualKWh }) => sum + actualKWh!, 0);
    expect(found.kWh).toBeCloseTo(months, 6);
  });
  test('the winter of the complaint has the units of its bill', async () => {
    expect((await prefill({ from: winter.from, to: winter.to }))!.kWh).toBeCloseTo(2264, -1);
  });
  test('nothing for days that no meter covers, and no date that the calendar lacks', async () => {
    expect(await prefill({ from: '2027-01-01', to: '2027-02-01' })).toBeNull();
    await expect(prefill({ from: '2026-02-30', to: '2026-03-01' })).rejects.toMatchObject({ code: 'bad-value' });
  });
  const band = (name: string, pencePerKWh: number, times: 'rest' | { from: string; to: string }[]) => ({
    name,
    pencePerKWh,
    times,
  });
  test.each([
    ['one price', [band('all hours', 25, 'rest')], 25, 25],
    ['a cheap night', [band('night', 10, [{ from: '00:00', to: '06:00' }]), band('day', 30, 'rest')], 10, 30],
  ] as const)('the tariff gives the price: %s', async (_, bands, low, high) => {
    const now = await opened.call('household.open', { id: opened.householdId });
    const household: Household = {
      ...now.household,
      prices: { ...now.household.prices, electricityTariffId: 't' },
      tariffs: [
        {
          id: 't',
          name: 'Winter plain',
          fuel: 'electricity',
          origin: 'invented',
          grade: 'measured',
          versions: [
            {
              from: '2025-01-01',
              standingPencePerDay: 50,
              vat: { rate: 0.05, included: true },
              bands: bands.map((one) => ({ ...one, times: one.times === 'rest' ? 'rest' : [...one.times] })),
            },
          ],
        },
      ],
    };
    await opened.call('household.save', { household, revision: now.revision });
    const found = (await prefill({ from: winter.from, to: winter.to }))!;
    expect(found.tariffName).toBe('Winter plain');
    if (low === high) expect(found.pencePerKWh).toBe(low);
    else {
      // The heater ran at night, so that more than a quarter of the units were cheap.
      expect(found.pencePerKWh).toBeGreaterThan(low);
      expect(found.pencePerKWh).toBeLessThan(high - 0.25 * (high - low));
    }
  });
});

describe('the letter', () => {
  const letter = async () => {
    const file = await opened.call('check.print', { checkId: check.id, format: 'html' });
    return { ...file, html: Buffer.from(file.base64, 'base64').toString('utf8') };
  };
  test('is the same to the byte twice, and named after the home and the day', async () => {
    const [one, two] = [await letter(), await letter()];
    expect(one.html).toBe(two.html);
    expect(one.fileName).toBe('Mill Lane, letter of 2026-11-25.html');
    expect(one.html).toContain('8 January 2026');
  });
  test('goes through the printer as PDF', async () => {
    const file = await opened.call('check.print', { checkId: check.id, format: 'pdf' });
    expect(file.mediaType).toBe('application/pdf');
    expect(Buffer.from(file.base64, 'base64').toString('utf8')).toMatch(/^%PDF/);
  });
  test('a check that is gone is refused in words', async () => {
    await expect(opened.call('check.print', { checkId: 'gone', format: 'html' })).rejects.toMatchObject({
      code: 'not-there',
    });
  });
});
