/** Which registers of an import the detectors are given, and which they are told were left out. */
import { describe, expect, test } from 'vitest';
import { lookThrough } from '../../../src/desk/join/meter-readings.ts';
import { intakeContext, takeIn } from '../../../src/desk/take-in.ts';
import type { IntakeChoices } from '../../../src/intake/intake.ts';
import { readEvidence } from '../../../src/intake/read-evidence.ts';

const DAYS = 20;
/** Hourly readings of `DAYS` days, a column a register; a register is empty from its last hour on. */
function csv(registers: Readonly<Record<string, { readonly kWh: number; readonly hours?: number }>>): string {
  const rows = Array.from({ length: DAYS * 24 }, (_, i) => {
    const stamp = new Date(Date.UTC(2026, 0, 1, i)).toISOString().slice(0, 16);
    return [stamp, ...Object.values(registers).map(({ kWh, hours = DAYS * 24 }) => (i < hours ? kWh : ''))].join(',');
  });
  return [['Start', ...Object.keys(registers)].join(','), ...rows].join('\n');
}
async function look(text: string, choices: IntakeChoices = { carrier: 'electricity', role: 'import', unit: 'kWh' }) {
  let ids = 0;
  const taken = await takeIn({
    file: { fileName: 'hours.csv', bytes: new TextEncoder().encode(text) },
    householdId: 'h1',
    importedOn: '2026-02-01',
    newId: () => `id-${ids++}`,
    readEvidence,
    choices,
    context: intakeContext('Europe/London', '2026-02-01'),
  });
  return lookThrough([taken.evidence], 'Europe/London', (id) =>
    taken.intervals.find(({ seriesId }) => seriesId === id),
  ).map(({ meter, name, leftOut, days, intervalMinutes }) => ({
    meter,
    name,
    leftOut,
    intervalMinutes,
    days: days.length,
    firstKWh: days[0]!.values[0],
  }));
}

describe('registers of one import', () => {
  test('one is looked through', async () => {
    expect(await look(csv({ 'House import (kWh)': { kWh: 0.5 } }))).toEqual([
      { meter: 'whole-house', name: 'House import (kWh)', leftOut: [], intervalMinutes: 60, days: DAYS, firstKWh: 0.5 },
    ]);
  });
  test('those that count some hours each are added', async () => {
    expect(await look(csv({ 'Rate 1 (kWh)': { kWh: 0.5 }, 'Rate 2 (kWh)': { kWh: 0.25 } }))).toMatchObject([
      { name: 'Rate 1 (kWh) + Rate 2 (kWh)', leftOut: [], firstKWh: 0.75 },
    ]);
  });
  test('of others the one with the most days is looked through, and the rest are named', async () => {
    const found = await look(
      csv({
        'House import (kWh)': { kWh: 0.5, hours: 240 },
        'Shed import (kWh)': { kWh: 0.1 },
        'Barn import (kWh)': { kWh: 0.2, hours: 48 },
      }),
    );
    expect(found).toMatchObject([
      { name: 'Shed import (kWh)', leftOut: ['House import (kWh)', 'Barn import (kWh)'], days: DAYS, firstKWh: 0.1 },
    ]);
  });
  test('where one counts all hours beside two of some, the two are added and their sum is not counted again', async () => {
    const found = await look(
      csv({
        'Total import (kWh)': { kWh: 0.75 },
        'Day import (kWh)': { kWh: 0.5 },
        'Night import (kWh)': { kWh: 0.25 },
      }),
    );
    expect(found).toMatchObject([{ name: 'Day import (kWh) + Night import (kWh)', leftOut: [], firstKWh: 0.75 }]);
  });
  test('one that does not come to the sum of the two is another meter, and is named', async () => {
    const found = await look(
      csv({
        'Garage import (kWh)': { kWh: 0.1 },
        'Day import (kWh)': { kWh: 0.5 },
        'Night import (kWh)': { kWh: 0.25 },
      }),
    );
    expect(found).toMatchObject([
      { name: 'Day import (kWh) + Night import (kWh)', leftOut: ['Garage import (kWh)'], firstKWh: 0.75 },
    ]);
  });
  test('gas is none of it', async () => {
    expect(await look(csv({ 'Gas (kWh)': { kWh: 2 } }), { carrier: 'gas', role: 'import', unit: 'kWh' })).toEqual([]);
  });
});
