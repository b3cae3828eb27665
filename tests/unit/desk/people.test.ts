/** Whom a file names is neither in what is kept of it nor in an exported household. All names are invented. */
import { describe, expect, test } from 'vitest';
import type { IntakeChoices } from '../../../src/intake/intake.ts';
import type { Evidence } from '../../../src/model/shapes/evidence.ts';
import { type FeedRecord, writeFeed } from '../intake/write-feed.ts';
import { type Cell, writeWorkbook } from '../intake/write-workbook.ts';
import { openHome } from './open-home.ts';

const ENCODED = new TextEncoder();
const SECRETS = /Plumtree|Thornfield|ZZ9|99912345|8812345/i;
const days = (heading: string, last = '') =>
  `Date,${heading}\n${Array.from({ length: 20 }, (_, i) => `2026-01-${String(i + 1).padStart(2, '0')},${5 + (i % 3)}.5`).join('\n')}\n${last}`;
const plain = days('Electricity (kWh)');
const feed = (title: string) => {
  const start = Date.UTC(2026, 0, 1) / 1000;
  const readings = Array.from({ length: 48 * 4 }, (_, i) => ({ start: start + i * 1800, duration: 1800, value: 250 }));
  const type = { commodity: 1, uom: 72, powerOfTenMultiplier: 0, intervalLength: 1800, flowDirection: 1 };
  const record: FeedRecord = { point: '1', record: '1', title, kind: 0, type, readings };
  return writeFeed([record]);
};
const sheet = (name: string, kWh: number) => ({
  name,
  rows: [
    ['Date', 'Electricity kWh'],
    ...Array.from({ length: 12 }, (_, i): Cell[] => [{ serial: 46_000 + i, form: 'date' }, kWh + (i % 2)]),
  ] as Cell[][],
});

async function kept(fileName: string, content: string | Uint8Array, choices: IntakeChoices = {}) {
  const home = openHome();
  const householdId = await home.create();
  const bytes = typeof content === 'string' ? ENCODED.encode(content) : content;
  const bring = async (own: IntakeChoices) => {
    const { fileId } = await home.call<{ fileId: string }>('file.offer', { fileName, bytes });
    return home.call<{ evidence: Evidence | null }>('evidence.accept', { fileId, householdId, choices: own });
  };
  const { evidence } = await bring(choices);
  const { base64 } = await home.call<{ base64: string }>('household.export', { id: householdId });
  const file = JSON.parse(Buffer.from(base64, 'base64').toString('utf8'));
  // The installer's own copy of the file is what it was.
  for (const one of file.evidence) one.rawFile = null;
  return { evidence: evidence!, written: JSON.stringify(file), bring };
}

describe('nothing of whom a file is for is kept or exported', () => {
  test.each([
    ['the name of the file', 'customer_hetty_plumtree_8812345.csv', plain],
    ['a title line', 'usage.csv', `Customer: Hetty Plumtree\nMPAN: 2099912345670\n\n${plain}`],
    ['an address over the table', 'usage.csv', `Supply address: 7 Thornfield Crescent ZZ9 9ZZ\n\n${plain}`],
    ['a heading', 'usage.csv', days('Mrs Plumtree electricity 2099912345670 (kWh)')],
    ['a footer', 'usage.csv', days('Electricity (kWh)', 'Account holder Hetty Plumtree 8812345\n')],
    ['a title in XML', 'usage.xml', feed('Customer Hetty Plumtree')],
    ['a meter in a title in XML', 'usage.xml', feed('Meter 2099912345670')],
  ])('%s', async (_, fileName, content) => {
    const { evidence, written } = await kept(fileName, content);
    expect(evidence.series).toHaveLength(1);
    expect(JSON.stringify(evidence)).not.toMatch(SECRETS);
    expect(written).not.toMatch(SECRETS);
  });
});

test('sheets named by people are each kept once, whichever name they are asked for by', async () => {
  const book = writeWorkbook([sheet('Tenant Hetty Plumtree', 5), sheet('Tenant Ned Thornfield', 9)]);
  const own = { carrier: 'electricity', unit: 'kWh', beside: 'added' } as const;
  const { evidence, written, bring } = await kept('flats.xlsx', book, { ...own, sheet: 'Tenant Ned Thornfield' });
  expect(evidence.part?.sheet).toBe('Tenant – (2)');
  expect(evidence.series[0]!.total).toBe(12 * 9 + 6);
  expect(written).not.toMatch(SECRETS);
  expect((await bring({ ...own, sheet: 'Tenant – (2)' })).evidence).toBeNull();
  expect((await bring({ ...own, sheet: 'Tenant –' })).evidence?.series[0]?.total).toBe(12 * 5 + 6);
});
