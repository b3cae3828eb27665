/** Whom a file names is neither in what is kept of it nor in an exported household. All names are invented. */
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { OpenHousehold } from '../../../src/desk/contract.ts';
import { reckon } from '../../../src/host/reckon-command.ts';
import type { IntakeChoices } from '../../../src/intake/intake.ts';
import type { Evidence } from '../../../src/model/shapes/evidence.ts';
import type { Household } from '../../../src/model/shapes/household.ts';
import { type FeedRecord, writeFeed } from '../intake/write-feed.ts';
import { type Cell, writeWorkbook } from '../intake/write-workbook.ts';
import { openHome } from './open-home.ts';
import { FILES_KINDS, type PeopleFile, peopleFile } from './people-files.ts';

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
  return { ...home, householdId, evidence: evidence!, written: JSON.stringify(file), bring };
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

test('the files themselves leave only where the installer says so', async () => {
  const { call, householdId, written } = await kept('usage.csv', plain);
  expect(JSON.parse(written).evidence[0].rawFile).toBeNull();
  const out = await call<{ base64: string }>('household.export', { id: householdId, withFiles: true });
  const [{ rawFile }] = JSON.parse(Buffer.from(out.base64, 'base64').toString('utf8')).evidence;
  expect(Buffer.from(rawFile, 'base64').toString('utf8')).toBe(plain);
});

test('what an earlier version kept with names leaves without them, and two meters stay two', async () => {
  const { call, store, householdId, evidence } = await kept('usage.csv', plain);
  const [own] = evidence.series;
  const name = (place: string) => `Mrs Plumtree ${place} kWh`;
  const old: Evidence = {
    ...evidence,
    id: 'old',
    sha256: 'f'.repeat(64),
    fileName: 'customer_hetty_plumtree_8812345.csv',
    columns: [{ name: name('barn'), use: 'value' }],
    series: ['barn', 'loft'].map((place) => ({ ...own!, id: `old-${place}`, evidenceId: 'old', name: name(place) })),
    remarks: [
      {
        code: 'preamble-skipped',
        weight: 'note',
        file: 'customer_hetty_plumtree.csv',
        found: 'Customer: Hetty Plumtree',
      },
    ],
  };
  store.addEvidence(old, ENCODED.encode('Hetty Plumtree'), []);
  const { base64 } = await call<{ base64: string }>('household.export', { id: householdId });
  const text = Buffer.from(base64, 'base64').toString('utf8');
  expect(text).not.toMatch(SECRETS);
  const { household, revision } = await call<OpenHousehold>('household.open', { id: householdId });
  const design = { grade: 'estimated', origin: 'design' } as const;
  const known: Household = {
    ...household,
    present: { system: 'gas-condensing', efficiency: { value: 0.84, ...design } },
    heat: { ...household.heat, heatLossKW: { value: 6.1, ...design }, designOutdoorC: { value: -3.4, ...design } },
    machine: { source: 'ground', spaceFactor: { value: 3.7, ...design }, boundary: 'H3' },
  };
  await call('household.save', { household: known, revision });
  const { id: estimateId } = await call<{ id: string }>('estimate.keep', { householdId, note: '' });
  for (const document of ['paper', 'working']) {
    const paper = await call<{ base64: string }>('estimate.print', { estimateId, document, format: 'html' });
    // Fonts hold any letters.
    const printed = Buffer.from(paper.base64, 'base64')
      .toString('utf8')
      .replaceAll(/base64,[^)"]+/g, '');
    expect(printed).toContain('Larch Rise');
    expect(SECRETS.exec(printed)).toBeNull();
  }
  const again = await call<{ base64: string }>('household.export', { id: householdId });
  expect(Buffer.from(again.base64, 'base64').toString('utf8')).not.toMatch(SECRETS);
  expect(JSON.stringify(store.listEstimates(householdId))).toMatch(SECRETS);
  const names = JSON.parse(text).evidence[1].import.series.map((one: { name: string }) => one.name);
  expect(new Set(names).size).toBe(2);
  const { fileId } = await call<{ fileId: string }>('file.offer', { fileName: 'h.json', bytes: ENCODED.encode(text) });
  const back = await call<{ evidence: Evidence[] }>('household.import', { fileId });
  expect(back.evidence.map(({ series }) => series.length)).toEqual([1, 2]);
});

/** Every way out of the desk and of the command line that a file has, by name. */
async function waysOut({ fileName, bytes }: PeopleFile, isReckoned: boolean): Promise<Record<string, string>> {
  const paper = { looked: true, meant: true, leftOut: true, leftOver: true, complete: true, asPrinted: true };
  const choices: IntakeChoices = { carrier: 'electricity', unit: 'kWh', role: 'import', paper };
  const home = openHome();
  const householdId = await home.create();
  const { fileId } = await home.call<{ fileId: string }>('file.offer', { fileName, bytes });
  const kept = await home.call('evidence.accept', { fileId, householdId, choices }).catch((error: unknown) => error);
  const { base64 } = await home.call<{ base64: string }>('household.export', { id: householdId });
  const folder = mkdtempSync(join(tmpdir(), 'plainwarmth-people-'));
  const path = (name: string) => join(folder, name);
  const run = async (...args: string[]) => {
    let said = '';
    const print = (text: string) => {
      said += text;
    };
    await reckon(args, { out: print, err: print, today: '2026-11-25' });
    return said;
  };
  writeFileSync(path(fileName), bytes);
  const out: Record<string, string> = {
    kept: kept instanceof Error ? `${kept.message} ${JSON.stringify(kept)}` : JSON.stringify(kept),
    exported: Buffer.from(base64, 'base64').toString('utf8'),
    read: await run('--read', path(fileName)),
    'read as JSON': await run('--read', path(fileName), '--json'),
  };
  if (isReckoned) {
    writeFileSync(path('home.json'), JSON.stringify({ ...RECKONED, files: [{ file: fileName, choices }] }));
    out.reckoned = await run(path('home.json'), '--working', path('working.html'));
    out['reckoned as JSON'] = await run(path('home.json'), '--json');
    if (existsSync(path('working.html'))) out.working = readFileSync(path('working.html'), 'utf8');
  }
  rmSync(folder, { recursive: true });
  return out;
}
const RECKONED = {
  name: 'Larch Rise',
  present: { system: 'gas-condensing', efficiency: 0.84 },
  heat: { heatLossKW: 6.1, designOutdoorC: -3.4 },
  machine: { source: 'ground', spaceFactor: 3.7, waterFactor: 2.8, boundary: 'H3' },
};

const plainly = (text: string) =>
  ` ${text
    .replaceAll('’', "'")
    .replaceAll(/[^\p{L}\d']+/gu, ' ')
    .toLowerCase()} `;

describe('somebody put into a file is met on no way out', () => {
  test.each(FILES_KINDS)('%s', async (kind) => {
    const met: string[] = [];
    for (let seed = 1; seed <= 6; seed++) {
      const file = peopleFile(kind, seed);
      const ways = await waysOut(file, seed === 1);
      if (seed === 1 && kind !== 'what is refused') expect(Object.keys(ways)).toContain('working');
      for (const [way, text] of Object.entries(ways))
        for (const secret of file.secrets)
          if (plainly(text).includes(plainly(secret))) met.push(`${seed} ${way}: ${secret}`);
    }
    expect(met).toEqual([]);
  });
});
