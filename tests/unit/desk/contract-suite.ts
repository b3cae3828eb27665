/**
 * The path of an installer through every request of the contract. It runs over the desk itself, over the loopback
 * host and over the shell's handlers, with the very client that the screens use, so that all three give the same.
 */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { type Call, contract, type FileOut, type RequestName } from '../../../src/desk/contract.ts';
import { DeskError } from '../../../src/desk/desk-error.ts';
import type { Household } from '../../../src/model/shapes/household.ts';
import { logoAddress, smallPng } from './logos.ts';
import { NOW, printedAs, TODAY } from './open-desk.ts';

export interface OpenedClient {
  readonly call: Call;
  readonly close: () => Promise<void>;
}

const bytesOf = (text: string) => new TextEncoder().encode(text);
const contentOf = (file: FileOut) => Buffer.from(file.base64, 'base64');

/** Two days of half-hours of a winter; the values are made up. */
export function meterFile(days = 60): string {
  const lines = ['Reading start (local time),Electricity used (kWh)'];
  for (let slot = 0; slot < days * 48; slot++) {
    const at = new Date(Date.UTC(2026, 0, 1) + slot * 1_800_000).toISOString();
    lines.push(`${at.slice(0, 16).replace('T', ' ')},${(0.2 + (slot % 48) / 100).toFixed(3)}`);
  }
  return `${lines.join('\n')}\n`;
}

const known = (household: Household): Household => ({
  ...household,
  home: { postcode: 'DE6', people: { value: 3, grade: 'measured', origin: 'told' } },
  heat: {
    heatLossKW: { value: 6.1, grade: 'estimated', origin: 'heat-loss sheet' },
    designOutdoorC: { value: -3.4, grade: 'estimated', origin: 'heat-loss sheet' },
  },
  machine: { source: 'ground', spaceFactor: { value: 3.7, grade: 'estimated', origin: 'design' }, boundary: 'H3' },
});

async function refusalOf(work: Promise<unknown>): Promise<DeskError> {
  const error = await work.then(
    () => undefined,
    (thrown: unknown) => thrown,
  );
  expect(error).toBeInstanceOf(DeskError);
  return error as DeskError;
}

export function contractSuite(name: string, open: () => Promise<OpenedClient>): void {
  describe(name, () => {
    let client: OpenedClient;
    let asked: Set<string>;

    /** Calls, and holds the answer against the contract's own schema. */
    const call = (async (request: RequestName, input: never, options?: never) => {
      asked.add(request);
      const output: unknown = await client.call(request, input, options);
      const checked = contract[request].output.safeParse(output);
      expect(checked.error?.issues ?? [], request).toEqual([]);
      return output;
    }) as Call;

    beforeEach(async () => {
      asked = new Set();
      client = await open();
    });
    afterEach(() => client.close());

    async function withMeter() {
      const opened = await call('household.create', { name: 'Larch Rise' });
      const householdId = opened.household.id;
      const { fileId } = await call('file.offer', { fileName: 'meter.csv', bytes: bytesOf(meterFile()) });
      const { evidence } = await call('evidence.accept', { fileId, householdId, choices: {} });
      return { householdId, evidence: evidence!, opened };
    }
    async function withEstimate() {
      const { householdId, opened } = await withMeter();
      await call('household.save', { household: known(opened.household), revision: opened.revision });
      return { householdId, estimate: await call('estimate.keep', { householdId, note: 'as agreed' }) };
    }

    test('the application says who it is', async () => {
      expect(await call('app.read', {})).toMatchObject({ today: TODAY, version: expect.any(String) });
    });

    test('the program is asked to end', async () => {
      expect(await call('app.quit', {})).toEqual({});
    });

    test('everything is saved as one file, looked into, and taken in again', async () => {
      const folder = mkdtempSync(join(tmpdir(), 'plainwarmth-copies-'));
      try {
        const { household } = await call('household.create', { name: 'Larch Rise' });
        const saved = await call('data.save', { folder });
        expect([saved.path, saved.damage]).toEqual([join(folder, `Plainwarmth ${TODAY}.sqlite`), []]);
        expect((await call('data.save', { folder })).path).toBe(join(folder, `Plainwarmth ${TODAY} (2).sqlite`));
        const view = await call('data.folder', { path: folder });
        expect(view.copies.map(({ name }) => name)).toContain(`Plainwarmth ${TODAY}.sqlite`);
        const seen = await call('data.look', { path: saved.path });
        expect(seen.households.map(({ name }) => name)).toContain('Larch Rise');
        const { id } = await call('data.bring-in', { path: saved.path, householdId: household.id });
        expect((await call('household.open', { id })).household.name).toBe('Larch Rise');
        expect((await call('data.restore', { path: saved.path })).households).toBe(saved.households);
        expect((await refusalOf(call('household.open', { id }))).code).toBe('not-there');
        expect((await call('data.daily', { folder })).daily).toBe(true);
        expect(await call('data.daily', { folder: null })).toMatchObject({ daily: false, folder });
        expect((await call('data.check', {})).damage).toEqual([]);
        expect(await call('data.read', {})).toMatchObject({ isCopyDue: false, lastCopyPath: expect.any(String) });
      } finally {
        rmSync(folder, { recursive: true });
      }
    });

    test('an import that is not there is not mended', async () => {
      expect((await refusalOf(call('evidence.mend', { evidenceId: 'none' }))).code).toBe('not-there');
    });

    test('settings are kept', async () => {
      expect(await call('settings.read', {})).toMatchObject({ installerName: '', paper: 'A4' });
      const logo = logoAddress(smallPng());
      const look = { theme: 'dark', paper: 'Letter', language: 'en-GB', country: 'DE' } as const;
      const settings = { installerName: 'R. Ash', installerContact: '', ...look, logo };
      await call('settings.write', settings);
      expect(await call('settings.read', {})).toEqual(settings);
      const refusal = await refusalOf(call('settings.write', { ...settings, logo: logoAddress(bytesOf('<svg/>')) }));
      expect(refusal.code).toBe('logo-unknown');
      expect(await call('settings.read', {})).toEqual(settings);
    });

    test('a household is made, found, changed, put away and erased', async () => {
      const { household, revision } = await call('household.create', { name: ' Larch Rise ' });
      expect(household.name).toBe('Larch Rise');
      const saved = await call('household.save', { household: { ...household, jobNumber: 'PW-1' }, revision });
      expect(saved.revision).toBe(revision + 1);
      expect(await call('household.list', { find: 'pw-1' })).toHaveLength(1);
      await call('household.archive', { id: household.id, archived: true });
      expect(await call('household.list', {})).toEqual([]);
      expect(await call('household.list', { archived: true })).toHaveLength(1);
      expect((await refusalOf(call('household.erase', { id: household.id, confirmName: 'Larch' }))).code).toBe(
        'wrong-name',
      );
      await call('household.erase', { id: household.id, confirmName: 'Larch Rise' });
      expect((await refusalOf(call('household.open', { id: household.id }))).code).toBe('not-there');
    });

    test('a save over somebody else’s save is refused and changes nothing', async () => {
      const { household, revision } = await call('household.create', { name: 'First' });
      await call('household.save', { household: { ...household, name: 'Second' }, revision });
      const refusal = await refusalOf(call('household.save', { household: { ...household, name: 'Third' }, revision }));
      expect(refusal.code).toBe('stale');
      expect(refusal.remedy).toContain('Open the household again');
      expect((await call('household.open', { id: household.id })).household.name).toBe('Second');
    });

    test('what the preview shows is what the import stores', async () => {
      const { household } = await call('household.create', { name: 'Larch Rise' });
      const offered = await call('file.offer', { fileName: 'Zähler £.csv', bytes: bytesOf(meterFile()) });
      expect(offered).toMatchObject({ fileName: 'Zähler £.csv', size: bytesOf(meterFile()).byteLength });
      const request = { fileId: offered.fileId, householdId: household.id, choices: {} };
      const preview = await call('evidence.preview', request);
      const { evidence } = await call('evidence.accept', request);
      const bare = (series: readonly object[]) => series.map((one) => ({ ...one, id: '', evidenceId: '' }));
      expect(bare(evidence!.series)).toEqual(bare(preview.series));
      expect(evidence!.remarks).toEqual(preview.remarks);
      expect((await call('household.open', { id: household.id })).evidence).toEqual([evidence]);
      const readings = await call('evidence.readings', {
        seriesId: evidence!.series[0]!.id,
        from: '2026-01-01',
        to: '2026-01-02',
      });
      expect(readings).toHaveLength(48);
      expect(readings[2]).toEqual({ at: '2026-01-01T01:00', value: 0.22 });
    });

    test('the same file twice is once', async () => {
      const { householdId, evidence } = await withMeter();
      const { fileId } = await call('file.offer', { fileName: 'again.csv', bytes: bytesOf(meterFile()) });
      expect(await call('evidence.accept', { fileId, householdId, choices: {} })).toEqual({
        evidence: null,
        duplicateOf: evidence.id,
      });
    });

    test('an import is taken back and brought again', async () => {
      const { householdId, evidence } = await withMeter();
      await call('evidence.undo', { evidenceId: evidence.id });
      const without = await call('household.open', { id: householdId });
      expect(without.evidence).toEqual([]);
      expect(without.undone).toEqual([{ id: evidence.id, fileName: 'meter.csv', importedOn: NOW }]);
      expect(await call('evidence.restore', { evidenceId: evidence.id })).toEqual(evidence);
      expect((await call('household.open', { id: householdId })).evidence).toEqual([evidence]);
    });

    test.each([
      { name: 'a binary file', bytes: new Uint8Array([0x7f, 0x45, 0x4c, 0x46, 0, 1, 2, 3, 0, 0, 255, 254]) },
      { name: 'an empty file', bytes: new Uint8Array() },
      { name: 'a letter', bytes: bytesOf('Dear householder,\nyour heating is fine.\n') },
    ])('$name is refused with a sentence and nothing is stored', async ({ bytes }) => {
      const { household } = await call('household.create', { name: 'Larch Rise' });
      const { fileId } = await call('file.offer', { fileName: 'wrong.csv', bytes });
      const refusal = await refusalOf(call('evidence.accept', { fileId, householdId: household.id, choices: {} }));
      expect(refusal.message.toLowerCase()).toContain('wrong.csv');
      expect(refusal.where).toContain('wrong.csv');
      expect((await call('household.open', { id: household.id })).evidence).toEqual([]);
    });

    test('bills are typed; bills that count a day twice are refused', async () => {
      const { household } = await call('household.create', { name: 'Holm Farm' });
      const periods = [
        { from: '2025-01-01', to: '2025-04-01', kWh: 5000, quality: 'actual' as const },
        { from: '2025-04-01', to: '2025-07-01', kWh: 1500, quality: 'estimated' as const },
      ];
      const typed = { householdId: household.id, name: 'Gas bills', carrier: 'gas', role: 'import' } as const;
      const evidence = await call('evidence.type', { ...typed, periods });
      expect(evidence.series[0]).toMatchObject({
        total: 6500,
        estimatedCount: 1,
        from: '2025-01-01',
        to: '2025-07-01',
      });
      const overlapping = [...periods, { from: '2025-06-20', to: '2025-08-01', kWh: 9, quality: 'actual' as const }];
      const refusal = await refusalOf(call('evidence.type', { ...typed, periods: overlapping }));
      expect(refusal).toMatchObject({ code: 'periods-overlap', where: 'row 3' });
      expect(refusal.message).toContain('2025-06-20');
    });

    test('a written estimate is kept, printed three ways and never moves', async () => {
      const { householdId, estimate } = await withEstimate();
      expect(estimate).toMatchObject({ number: 1, note: 'as agreed', householdId });
      const html = await call('estimate.print', { estimateId: estimate.id, format: 'html' });
      expect(html).toMatchObject({ fileName: 'Larch Rise, estimate 1.html', mediaType: 'text/html' });
      expect(contentOf(html).toString('utf8')).toContain('Larch Rise');
      const pdf = await call('estimate.print', { estimateId: estimate.id, format: 'pdf' });
      expect(contentOf(pdf)).toEqual(Buffer.from(printedAs(contentOf(html).toString('utf8'))));
      const working = await call('estimate.print', { estimateId: estimate.id, document: 'working', format: 'html' });
      expect(working.fileName).toBe('Larch Rise, working of estimate 1.html');
      expect(contentOf(working).toString('utf8')).toContain('The working behind the estimate for Larch Rise');
      const csv = await call('estimate.print', { estimateId: estimate.id, format: 'csv' });
      expect(contentOf(csv).toString('utf8').split('\n').length).toBeGreaterThan(5);

      const { household, revision } = await call('household.open', { id: householdId });
      await call('household.save', { household: { ...household, name: 'Renamed' }, revision });
      expect(await call('estimate.read', { estimateId: estimate.id })).toEqual(estimate);
      const [summary] = (await call('household.open', { id: householdId })).estimates;
      const cost = estimate.appraisal.systems.find(({ id }) => id === 'heat-pump')!.cost;
      expect(summary).toMatchObject({
        heatPumpPence: cost.value,
        lowPence: cost.low,
        highPence: cost.high,
        grade: cost.grade,
      });
    });

    test('answers to the customer’s questions are printed in the home’s own figures', async () => {
      const { householdId } = await withEstimate();
      const sheet = await call('questions.print', { householdId, ids: ['radiators', 'no such'], format: 'html' });
      expect(sheet.fileName).toBe('Larch Rise, questions and answers.html');
      const text = contentOf(sheet).toString('utf8');
      expect(text).toMatch(/a radiator gives about \d+% of the heat on its label/);
      expect(text).not.toContain('Does the house gain value?');
    });

    test('nothing is promised where nothing is known of the heat', async () => {
      const { household } = await call('household.create', { name: 'Unknown' });
      const refusal = await refusalOf(call('estimate.keep', { householdId: household.id, note: '' }));
      expect(refusal.code).toBe('nothing-known');
      expect((await call('household.open', { id: household.id })).estimates).toEqual([]);
    });

    test('a bill is held against a written estimate', async () => {
      const { householdId, estimate } = await withEstimate();
      const check = await call('check.run', {
        estimateId: estimate.id,
        from: '2026-12-01',
        to: '2027-03-01',
        boughtKWh: 2600,
        otherKWh: 0,
        meter: 'heat-pump',
        pencePerKWh: 27,
        readings: 'actual',
      });
      expect(check.actualPence).toBeCloseTo(2600 * 27, 6);
      const sum = check.parts.reduce((total, part) => total + part.pence, 0);
      expect(sum).toBeCloseTo(check.actualPence - check.estimatedPence, 6);
      expect((await call('household.open', { id: householdId })).checks).toEqual([check]);
      // Half-hours of the whole home from before the written estimate say nothing of its days.
      expect(await call('check.prefill', { estimateId: check.estimateId })).toBeNull();
      // The search is told on the telephone; what was told is stored with the check, and can be removed.
      const panels = { question: 'panels', outcome: 'none', read: 'none since 2019' } as const;
      const told = await call('check.answer', { checkId: check.id, answers: [panels] });
      expect(told).toMatchObject({ id: check.id, input: { answers: [panels] } });
      expect(told.next).not.toContain('panels');
      expect((await call('household.open', { id: householdId })).checks).toEqual([told]);
      expect((await call('check.answer', { checkId: check.id, answers: [] })).next).toEqual(check.next);
      const odd = { checkId: check.id, answers: [{ question: 'panels' as const, outcome: 'hotter' }] };
      expect((await refusalOf(call('check.answer', odd))).where).toContain('answers');
      const nameless = await refusalOf(call('check.print', { checkId: check.id, format: 'html' }));
      expect(nameless).toMatchObject({ code: 'letter-name-missing', where: 'letter.to' });
      const sheet = await call('check.print', { checkId: check.id, paper: 'sheet', format: 'html' });
      expect(sheet.fileName).toMatch(/installer’s sheet of 2026-11-25\.html$/);
      expect(contentOf(sheet).toString('utf8')).toContain('The sums');
      const { household, revision } = await call('household.open', { id: householdId });
      const names = { to: 'Mrs Miller', ringName: 'Anna Hill', ringTelephone: '01632 960 123' };
      await call('household.save', { household: { ...household, letter: names }, revision });
      const letter = await call('check.print', { checkId: check.id, format: 'html' });
      expect(letter.fileName).toMatch(/letter of 2026-11-25\.html$/);
      expect(contentOf(letter).toString('utf8')).toContain('What we do not know yet');
      const pdf = await call('check.print', { checkId: check.id, format: 'pdf' });
      expect(contentOf(pdf)).toEqual(Buffer.from(printedAs(contentOf(letter).toString('utf8'))));
      await call('check.drop', { checkId: check.id });
      expect((await refusalOf(call('check.print', { checkId: check.id, format: 'html' }))).code).toBe('not-there');
      expect((await call('household.open', { id: householdId })).checks).toEqual([]);
    });

    test('a household goes out as a file and comes in equal', async () => {
      const { householdId } = await withEstimate();
      const before = await call('household.open', { id: householdId });
      const file = await call('household.export', { id: householdId });
      await call('household.erase', { id: householdId, confirmName: 'Larch Rise' });
      const { fileId } = await call('file.offer', { fileName: file.fileName, bytes: new Uint8Array(contentOf(file)) });
      const after = await call('household.import', { fileId });
      expect(after).toEqual({ ...before, revision: 1 });
      const seriesId = after.evidence[0]!.series[0]!.id;
      const span = { seriesId, from: '2026-01-05', to: '2026-01-06' };
      expect(await call('evidence.readings', span)).toHaveLength(48);
    });

    test('a copy has its own evidence and no written estimates', async () => {
      const { householdId, evidence } = await withMeter();
      const copy = await call('household.duplicate', { id: householdId, name: 'Second try' });
      expect(copy.household.name).toBe('Second try');
      expect(copy.household.id).not.toBe(householdId);
      expect(copy.evidence).toHaveLength(1);
      expect(copy.evidence[0]!.id).not.toBe(evidence.id);
      await call('household.erase', { id: householdId, confirmName: 'Larch Rise' });
      const span = { seriesId: copy.evidence[0]!.series[0]!.id, from: '2026-01-01', to: '2026-01-02' };
      expect(await call('evidence.readings', span)).toHaveLength(48);
    });

    test('a tariff is read, kept for later and dropped; one with an hour that has no price is refused', async () => {
      const bands = (to: string) => [
        { name: 'night', pencePerKWh: 17, times: [{ from: '00:30', to: '07:30' }] },
        { name: 'day', pencePerKWh: 31, times: [{ from: '07:30', to }] },
      ];
      const tariff = (to: string) => ({
        id: 'two',
        name: 'Day and night',
        fuel: 'electricity' as const,
        origin: 'bill',
        grade: 'measured' as const,
        versions: [
          { from: '2026-07-01', standingPencePerDay: 56, vat: { rate: 0.05, included: true }, bands: bands(to) },
        ],
      });
      const offer = { fileName: 'tariff.json', bytes: bytesOf(JSON.stringify(tariff('00:30'))) };
      const { fileId } = await call('file.offer', offer);
      const { household } = await call('household.create', { name: 'Larch Rise' });
      const { tariff: read, remarks } = await call('tariff.read', { fileId, householdId: household.id });
      expect(remarks).toEqual([]);
      expect(read).toMatchObject({ name: 'Day and night', versions: tariff('00:30').versions });
      await call('tariff.keep', { tariff: read });
      expect(await call('tariff.shelf', {})).toEqual([read]);
      await call('tariff.drop', { tariffId: read.id });
      expect(await call('tariff.shelf', {})).toEqual([]);
      const refusal = await refusalOf(call('tariff.keep', { tariff: tariff('23:00') }));
      expect(refusal.code).toBe('tariff-band-gap');
      expect(refusal.message).toContain('from 00:00 to 00:30');
    });

    test.each([
      { field: 'machine.spaceFactor', value: 0.5, words: 'less heat than a plain electric heater' },
      { field: 'present.efficiency', value: 1.3, words: '110 %' },
      { field: 'heat.heatLossKW', value: 0, words: 'more than 0 kW' },
    ])('$field of $value is refused with the reason', async ({ field, value, words }) => {
      const { household, revision } = await call('household.create', { name: 'Wrong' });
      const [section, name] = field.split('.') as ['machine', string];
      const wrong = { ...household[section], [name]: { value, grade: 'estimated', origin: 'typed' } };
      const refusal = await refusalOf(
        call('household.save', { household: { ...household, [section]: wrong }, revision }),
      );
      expect(refusal.where).toBe(field);
      expect(refusal.message).toContain(words);
      expect((await call('household.open', { id: household.id })).revision).toBe(revision);
    });

    test('a request that does not exist, or with rubbish in it, is refused in the same form', async () => {
      const rubbish = client.call as unknown as (name: string, input: unknown) => Promise<unknown>;
      expect((await refusalOf(rubbish('household.sell', {}))).code).toBe('unknown-request');
      expect((await refusalOf(rubbish('toString', {}))).code).toBe('unknown-request');
      expect(await refusalOf(rubbish('household.open', { id: 7 }))).toMatchObject({ code: 'bad-value', where: 'id' });
      expect((await refusalOf(rubbish('household.open', 'nothing'))).code).toBe('bad-value');
    });

    test('a call that was stopped before it began never reaches the desk', async () => {
      const stop = AbortSignal.abort();
      await expect(client.call('household.create', { name: 'Never' }, { signal: stop })).rejects.toThrow();
      expect(await call('household.list', {})).toEqual([]);
    });

    test('reading a file reports how far it is', async () => {
      const { household } = await call('household.create', { name: 'Larch Rise' });
      const { fileId } = await call('file.offer', { fileName: 'meter.csv', bytes: bytesOf(meterFile()) });
      const shares: number[] = [];
      const request = { fileId, householdId: household.id, choices: {} };
      await client.call('evidence.accept', request, { onProgress: (share) => shares.push(share) });
      expect(shares.length).toBeGreaterThan(0);
      expect(shares.every((share) => share >= 0 && share <= 1)).toBe(true);
    });

    test('values are the program’s own until a signed file of them is brought in', async () => {
      const own = await call('values.read', {});
      expect(own).toMatchObject({ edition: own.builtInEdition, laidOver: null });
      const { fileId } = await call('file.offer', { fileName: 'values.json', bytes: bytesOf('{}') });
      const looked = await refusalOf(call('values.look', { fileId }));
      expect(looked.where).toContain('values.json');
      expect((await refusalOf(call('values.use', { fileId }))).code).toBe(looked.code);
      expect(await call('values.use', { fileId: null })).toEqual(own);
    });

    test('every request of the contract is in this suite', () => {
      // The names stand in the tests above as they are written; a new request must be added to one of them.
      const text = readFileSync(new URL(import.meta.url), 'utf8');
      expect(Object.keys(contract).filter((request) => !text.includes(`call('${request}'`))).toEqual([]);
    });
  });
}
