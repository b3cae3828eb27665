import { execFileSync, spawn } from 'node:child_process';
import {
  existsSync,
  linkSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { writePdf } from '../../../sample-bills/write-pdf.ts';
import { Reckoning } from '../../../src/desk/audit.ts';
import { reckon } from '../../../src/host/reckon-command.ts';
import { Appraisal } from '../../../src/model/shapes/appraisal.ts';
import { BillCheck } from '../../../src/model/shapes/bill-check.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'plainwarmth-reckon-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

const run = (...args: string[]) => runOn('2026-11-25', ...args);

async function runOn(today: string, ...args: string[]) {
  const said = { out: '', err: '' };
  const code = await reckon(args, {
    out: (text) => {
      said.out += text;
    },
    err: (text) => {
      said.err += text;
    },
    today,
  });
  return { code, ...said };
}

/** An invented household with two years of typed gas bills. */
const HOUSEHOLD = {
  name: 'Thornbank',
  home: { postcode: 'DE6', people: 3 },
  present: { system: 'gas-condensing', efficiency: 0.84 },
  heat: { heatLossKW: 6.1, designOutdoorC: -3.4 },
  machine: { source: 'ground', spaceFactor: 3.7, waterFactor: 2.8, boundary: 'H3' },
  typed: [
    {
      carrier: 'gas',
      name: 'Gas bills',
      periods: [
        { from: '2024-10-01', to: '2025-01-01', kWh: 5400, quality: 'actual' },
        { from: '2025-01-01', to: '2025-04-01', kWh: 6100, quality: 'actual' },
        { from: '2025-04-01', to: '2025-07-01', kWh: 2000, quality: 'actual' },
        { from: '2025-07-01', to: '2025-10-01', kWh: 900, quality: 'actual' },
      ],
    },
  ],
};
const NAMES = { to: 'Mrs Miller', ringName: 'Anna Hill', ringTelephone: '01632 960 123' };
const CHECK = {
  estimate: { asOf: '2026-11-25' },
  check: {
    from: '2026-12-01',
    to: '2027-03-01',
    boughtKWh: 2900,
    meter: 'heat-pump',
    pencePerKWh: 27,
    readings: 'actual',
  },
};

function write(content: unknown, name = 'household.json'): string {
  const path = join(folder, name);
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content));
  return path;
}

describe('a household file', () => {
  test('is reckoned to a text with every part of the answer', async () => {
    const { code, out, err } = await run(write(HOUSEHOLD));
    expect([code, err]).toEqual([0, '']);
    for (const part of ['Heat needed', 'Heat pump', 'Running cost', 'Where both cost the same', 'Prices and sources']) {
      expect(out).toContain(part);
    }
    expect(out).toMatch(/Ground-source heat pump +£[\d,]+ +£[\d,]+ to £[\d,]+/);
  });

  test('gives the documented JSON, the same twice', async () => {
    const path = write(HOUSEHOLD);
    const first = await run(path, '--json');
    const reckoning = JSON.parse(first.out);
    expect(reckoning).toMatchObject({ format: 'plainwarmth.reckoning', version: 2, check: null });
    expect(Appraisal.safeParse(reckoning.appraisal).error?.issues).toBeUndefined();
    expect((await run(path, '--json')).out).toBe(first.out);
    const [pump] = reckoning.appraisal.systems;
    const { unitsPence, standingPence, servicePence } = pump.split;
    expect(unitsPence + standingPence + servicePence).toBeCloseTo(pump.cost.value, 6);
  });

  test('says of every record and every column what it was used for: text, JSON and the paper’s working', async () => {
    const rows = Array.from({ length: 400 }, (_, i) => {
      const date = new Date(Date.UTC(2024, 8, 1) + i * 86_400_000).toISOString().slice(0, 10);
      return `${date},${20 + (i % 9)},${i % 5},K-1`;
    });
    write(['Date,Gas (kWh),Water (m³),Customer no.', ...rows].join('\n'), 'meters.csv');
    const { typed: _, ...household } = HOUSEHOLD;
    const path = write({ ...household, files: [{ file: 'meters.csv' }] });
    const lines = [
      /Gas \(kWh\): used for the heat needed, \d+ days of it\./,
      /Water \(m³\): not used, since water is priced by nobody here\./,
      /Date: used as the time of each reading\./,
      /Gas \(kWh\), Water \(m³\): used as the amount\./,
      /Customer no\.: left out: it names or numbers something\./,
    ];
    const html = join(folder, 'working.html');
    const { out } = await run(path, '--working', html);
    for (const line of lines) expect(out).toMatch(line);
    const paper = readFileSync(html, 'utf8').replaceAll(/<[^>]+>/g, '');
    for (const line of lines) expect(paper).toMatch(line);
    const { files } = JSON.parse((await run(path, '--json')).out);
    expect(files).toMatchObject([{ fileName: 'meters.csv', records: [{ use: 'heat' }, { use: 'water' }] }]);
    expect(files[0].columns).toHaveLength(4);
  });

  test('lets an engineer follow it: ranges, inputs, months by band, rooms and water apart, hours by temperature, the round', async () => {
    const machine = { ...HOUSEHOLD.machine, way: 'full' };
    const nights = {
      id: 'e',
      name: 'Day and night',
      fuel: 'electricity',
      origin: 'invented',
      grade: 'measured',
      versions: [
        {
          from: '2026-10-01',
          standingPencePerDay: 50,
          vat: { rate: 0.05, included: true },
          bands: [
            { name: 'night', pencePerKWh: 12, times: [{ from: '00:30', to: '07:30' }] },
            { name: 'day', pencePerKWh: 30, times: 'rest' },
          ],
        },
      ],
    };
    const path = write({ ...HOUSEHOLD, machine, prices: { electricityTariffId: 'e' }, tariffs: [nights] });
    const printed = JSON.parse((await run(path, '--json')).out);
    const { audit, appraisal, lifetime } = Reckoning.parse(printed);
    expect(lifetime!.kind).toBe('running');
    expect([audit.draws, audit.seed]).toEqual([4096, 20_260_101]);
    expect(audit.costs.map(({ system }) => system)).toEqual(appraisal.systems.map(({ id }) => id));
    expect(audit.savings.map(({ against }) => against)).toEqual(appraisal.versus.map(({ against }) => against));
    for (const { low, reckoned, middle, high } of [...audit.costs, ...audit.savings]) {
      expect(low).toBeLessThanOrEqual(middle);
      expect(middle).toBeLessThanOrEqual(high);
      expect(Math.abs(reckoned - middle)).toBeLessThanOrEqual(Math.max(200, 0.06 * (high - low)));
    }
    for (const { input, source, spreadSource, middle } of audit.inputs) {
      expect(source, input).toMatch(/\w{4}/);
      // What has a middle of its own is from one place, and how far it strays often from another.
      if (middle !== undefined && !input.endsWith('-heat')) expect(spreadSource, input).toMatch(/\w{4}/);
    }
    const ofPump = audit.inputs.find(({ input, system }) => input === 'space-factor' && system === 'heat-pump')!;
    expect(ofPump.source).toContain('rated points of EN 14511');
    expect(ofPump.spreadSource).toMatch(/^metered homes, less half .*In-situ heat pump performance/);
    for (const { system, months, fixedPence, servicePence, waterHours: _, ...uses } of audit.systems) {
      const { cost, bought } = appraisal.systems.find(({ id }) => id === system)!;
      const used = Object.values(uses);
      expect(used.reduce((sum, { kWh }) => sum + kWh, 0)).toBeCloseTo(bought.value, 6);
      expect(used.reduce((sum, { pence }) => sum + pence, fixedPence + servicePence)).toBeCloseTo(cost.value, 4);
      expect(months.reduce((sum, { kWh, pencePerKWh }) => sum + kWh * pencePerKWh, 0)).toBeCloseTo(
        used.reduce((sum, { pence }) => sum + pence, 0),
        4,
      );
    }
    const hours = audit.hoursByOutdoor!;
    expect(hours.reduce((sum, one) => sum + one.hours, 0)).toBe(8760);
    expect(hours.reduce((sum, one) => sum + one.spaceKWh, 0)).toBeCloseTo(audit.systems[0]!.space.kWh, 6);
    const heated = hours.filter(({ spaceCop }) => spaceCop !== null);
    const mild = heated.find(({ outdoorC }) => outdoorC === 7)!;
    expect(heated[0]!.spaceCop!).toBeLessThan(mild.spaceCop!);
    expect(audit.round).toMatchObject({ from: 'ground', ok: true, loop: { refrigerant: 'R407C' } });
  });

  test.each([
    ['GB', 'yearly means of this price in recent years, each over the one before'],
    ['DE', 'nobody publishes this price, so that it is taken to stray widely; a judgement'],
  ])('in %s the spread of a delivered price is said to be from what it is from', async (country, spreadSource) => {
    const { home, heat, machine } = HOUSEHOLD;
    const present = { system: 'oil', efficiency: 0.84 };
    const path = write({
      name: 'Oil',
      country,
      home: { people: home.people, gasGrid: false },
      present,
      heat,
      machine,
      prices: { oilPencePerLitre: 90 },
    });
    const { audit } = Reckoning.parse(JSON.parse((await run(path, '--json')).out));
    expect(audit.inputs.find(({ input }) => input === 'oil-price')).toMatchObject({ spreadSource });
  });

  test('holds bill, estimate and plant readings to their rules on every run', async () => {
    const faulty = { ...HOUSEHOLD, ...CHECK, check: { ...CHECK.check, to: '2026-11-01' } };
    expect((await run(write(faulty))).code).toBe(2);
    const unknown = await run(write({ name: 'Unknown', estimate: { asOf: '2026-11-25' } }));
    expect([unknown.code, unknown.err]).toEqual([2, expect.stringContaining('can be no written estimate')]);
    const impossible = await run(write({ ...HOUSEHOLD, asOf: '2027-02-29' }));
    expect([impossible.code, impossible.err]).toEqual([2, expect.stringContaining('a day of the calendar')]);
    const siteReadings = [{ id: 'v', date: '2026-11-20', readings: { brineInC: 2, brineOutC: 5 } }];
    const visited = await run(write({ ...HOUSEHOLD, siteReadings }));
    expect(visited.out).toMatch(/At the plant\n {2}20 November 2026: One reading cannot be/);
    expect([visited.code, visited.err]).toEqual([
      2,
      expect.stringMatching(/^siteReadings\[0\]\.readings\.brineOutC: /),
    ]);
    const asJson = await run(write({ ...HOUSEHOLD, siteReadings }), '--json');
    const { plant } = Reckoning.parse(JSON.parse(asJson.out));
    expect(asJson.code).toBe(2);
    expect(plant![0]!.remarks[0]).toMatchObject({
      refused: true,
      where: 'siteReadings[0].readings.brineOutC',
      found: 5,
    });
    expect(plant![0]!.values).toEqual([]);
    const possible = await run(
      write({ ...HOUSEHOLD, siteReadings: [{ ...siteReadings[0], readings: { brineInC: 5, brineOutC: 2 } }] }),
    );
    expect([possible.code, possible.err]).toEqual([0, '']);
  });

  test('refuses two tariffs of one id and two offers of one name', async () => {
    const tariff = {
      id: 'own',
      name: 'Own',
      fuel: 'electricity',
      origin: 'bill',
      grade: 'measured',
      versions: [
        {
          from: '2026-01-01',
          standingPencePerDay: 50,
          vat: { rate: 0.05, included: true },
          bands: [{ name: 'all day', pencePerKWh: 25, times: 'rest' }],
        },
      ],
    };
    const machine = { source: 'air' };
    const offers = ['Second', 'First', 'Second'].map((name) => ({ name, machine }));
    const twins = await run(write({ ...HOUSEHOLD, tariffs: [tariff, tariff], offer: 'First', offers }));
    expect(twins.code).toBe(2);
    expect(twins.err.match(/must be an? (id|name) that no (tariff|offer) before it has/g)).toHaveLength(3);
    expect(twins.err).toContain('tariffs.1.id');
    expect(twins.err).toContain('offers.1.name');
    expect((await run(write({ ...HOUSEHOLD, tariffs: [tariff, { ...tariff, id: 'other' }] }))).code).toBe(0);
  });

  test('names every price used, and refuses all that are open at once', async () => {
    const storage = await run(write({ ...HOUSEHOLD, typed: [], present: { system: 'storage' } }));
    expect(storage.out).toMatch(/\n {2}Electricity by day and night: Assumed day and night prices/);
    const oil = write({ ...HOUSEHOLD, typed: [], present: { system: 'oil' } });
    const { code, err } = await run(oil, '--html', join(folder, 'out.html'));
    expect([code, err.match(/"price": "\w+"/g)]).toEqual([
      2,
      ['"price": "oil"', '"price": "pellets"', '"price": "lpg"'],
    ]);
  });

  test('says payback with its range and the month with instalments, once price and grant are both typed', async () => {
    const gbp = { heatPumpGBP: 14_000, grantGBP: 7500, replacementGBP: 3000, presentYearsLeft: 4, loanYears: 10 };
    const typed = await run(write({ ...HOUSEHOLD, purchase: gbp }));
    const years = typed.out.split('Putting it in, and the years to come\n')[1]!.split('\n\n')[0]!;
    expect(years).toMatch(/paid back|pay that back/);
    expect(years).toMatch(
      /In instalments over 10 years, without interest, it is £54 a month. With running it that is £/,
    );
    expect(years).toContain('8 in 10 homes like yours');
    const { grantGBP: _, ...withoutGrant } = gbp;
    expect((await run(write({ ...HOUSEHOLD, purchase: withoutGrant }))).out).not.toContain('In instalments');
  });

  test('of which nothing is known is reckoned with a question, but gives no document', async () => {
    const path = write({ name: 'Unknown' });
    expect((await run(path)).code).toBe(0);
    const refused = await run(path, '--html', join(folder, 'out.html'));
    expect(refused.code).toBe(2);
    expect(refused.err).toContain('can be no written estimate');
  });

  test('gives the document, the same twice', async () => {
    const [one, two] = [join(folder, 'one.html'), join(folder, 'two.html')];
    const path = write(HOUSEHOLD);
    expect((await run(path, '--html', one)).code).toBe(0);
    expect((await run(path, '--html', two)).code).toBe(0);
    expect(readFileSync(one, 'utf8')).toContain('Thornbank');
    expect(readFileSync(two, 'utf8')).toBe(readFileSync(one, 'utf8'));
  });

  test('holds its bill against its written estimate', async () => {
    const path = write({ ...HOUSEHOLD, ...CHECK });
    const { check } = JSON.parse((await run(path, '--check', '--json')).out);
    expect(BillCheck.safeParse(check).error?.issues).toBeUndefined();
    expect(check.actualPence).toBeCloseTo(2900 * 27, 6);
    expect((await run(path, '--check')).out).toContain('Bill check');
    expect((await run(path, '--check')).out).toMatch(/joined in it[\s\S]*What the readings show/);
  });

  test('asks for no price of a fuel that the home has not, where only a bill is compared', async () => {
    const path = write({ ...HOUSEHOLD, ...CHECK, present: { system: 'oil' } });
    expect((await run(path, '--check')).code).toBe(0);
    const paper = await run(path, '--check', '--html', join(folder, 'paper.html'));
    expect(paper.code).toBe(2);
    expect(paper.err).toContain('prices.stand');
  });

  test('a whole home’s bill without its other use runs, is never called outside, and says which key is missing', async () => {
    const { boughtKWh: _, ...check } = CHECK.check;
    for (const boughtKWh of [300, 2900, 9000]) {
      const path = write({ ...HOUSEHOLD, ...CHECK, check: { ...check, meter: 'whole-house', boughtKWh } });
      const { code, out } = await run(path, '--check');
      expect(code).toBe(0);
      expect(out).toContain('“otherKWh”');
      expect(out.split('\nBill check\n')[1]).not.toMatch(/The bill lies|outside|above the range|below the range/);
      const json = JSON.parse((await run(path, '--check', '--json')).out);
      expect([json.check.verdict, json.check.input.otherKWh]).toEqual(['unknown', undefined]);
      expect(json.checkSaid.headline).toMatch(/is for the whole home/);
    }
    const none = await run(write(HOUSEHOLD), '--check', '--language', 'de');
    expect([none.code, none.err]).toEqual([2, expect.stringContaining('enthält keine Rechnung')]);
  });

  test('goes on with the search from the answers in the file, and refuses one that is none', async () => {
    const search = async (answers: unknown) => {
      const path = write({ ...HOUSEHOLD, ...CHECK, check: { ...CHECK.check, boughtKWh: 5900, answers } });
      const { code, out, err } = await run(path, '--check', '--json');
      return code === 0 ? JSON.parse(out).search : err;
    };
    const before = await search([]);
    expect(before.state).toBe('open');
    const { question, outcomes } = before.next[0];
    const after = await search([{ question, outcome: outcomes[1].outcome }]);
    expect(after.causes).toContainEqual({ cause: outcomes[1].leadsTo, twentieths: outcomes[1].twentieths });
    expect(after.next.map((next: { question: string }) => next.question)).not.toContain(question);
    expect(await search([{ question, outcome: 'perhaps' }])).toContain('check.answers');
  });

  test('writes the letter and the sheet apart; without the names the letter is refused, with every key', async () => {
    const path = write({ ...HOUSEHOLD, ...CHECK, letter: NAMES });
    const [letter, sheet] = [join(folder, 'letter.html'), join(folder, 'sheet.html')];
    expect((await run(path, '--letter', letter, '--sheet', sheet)).err).toMatch(/Wrote [\s\S]*Wrote /);
    expect(readFileSync(letter, 'utf8')).toContain('Dear Mrs Miller,');
    expect(readFileSync(letter, 'utf8')).not.toContain('The sums');
    expect(readFileSync(sheet, 'utf8')).toContain('The sums');
    for (const option of ['--letter', '--sheet'])
      expect((await run(path, option, join(folder, 'letter.doc'))).code).toBe(2);
    const nameless = write(
      { ...HOUSEHOLD, ...CHECK, letter: { to: 'Mrs Miller', ringTelephone: ' ' } },
      'nameless.json',
    );
    const { code, err } = await run(nameless, '--letter', join(folder, 'none.html'));
    expect(code).toBe(2);
    expect(err).toMatch(/letter\.ringName[\s\S]*letter\.ringTelephone/);
    expect(err).not.toContain('letter.to');
    expect(existsSync(join(folder, 'none.html'))).toBe(false);
    expect((await run(nameless, '--sheet', sheet)).code).toBe(0);
  });

  test('takes the units of the bill from the heat pump’s own readings', async () => {
    const rows = ['Date,Heat pump electricity (kWh)'];
    for (let day = 0; day < 90; day++) {
      rows.push(`${new Date(Date.UTC(2026, 11, 1 + day)).toISOString().slice(0, 10)},20.5`);
    }
    write(`${rows.join('\n')}\n`, 'pump.csv');
    const files = [{ file: 'pump.csv', choices: { carrier: 'electricity', role: 'heat-pump' } }];
    const { boughtKWh: _, ...check } = CHECK.check;
    const path = write({ ...HOUSEHOLD, ...CHECK, check, files });
    const { out, err } = await runOn('2027-03-02', path, '--check', '--json');
    expect(err).toBe('');
    expect(JSON.parse(out).check.input.boughtKWh).toBeCloseTo(90 * 20.5, 6);
    const missing = await run(write({ ...HOUSEHOLD, ...CHECK, check }, 'without.json'), '--check');
    expect([missing.code, missing.err]).toMatchObject([2, expect.stringContaining('check.boughtKWh')]);
  });

  test('takes a price that the bill does not say from its total, then from the tariff, and says so', async () => {
    const { pencePerKWh: _, ...check } = CHECK.check;
    const version = (from: string, pencePerKWh: number) => ({
      from,
      standingPencePerDay: 50,
      vat: { rate: 0.05, included: true },
      bands: [{ name: 'all hours', pencePerKWh, times: 'rest' }],
    });
    const tariff = { id: 't', name: 'Plain', fuel: 'electricity', origin: 'invented', grade: 'measured' };
    const tariffs = [{ ...tariff, versions: [version('2026-01-01', 24), version('2027-01-15', 30)] }];
    const household = { ...HOUSEHOLD, ...CHECK, tariffs, prices: { electricityTariffId: 't' } };
    const input = async (change: object) =>
      JSON.parse((await run(write({ ...household, ...change }), '--check', '--json')).out).check.input;
    // Half of the 90 days at either price.
    expect(await input({ check })).toMatchObject({ pencePerKWh: 27, priceTariff: 'Plain' });
    expect(await input({ check: { ...check, totalPence: 29_000 } })).toMatchObject({ pencePerKWh: 10 });
    expect((await run(write({ ...household, check }), '--check')).out).toContain('27.0 p a kWh is that of the tariff');
    const without = await run(write({ ...household, check, tariffs: [], prices: {} }), '--check');
    expect([without.code, without.err]).toMatchObject([2, expect.stringContaining('check.pencePerKWh')]);
  });
});

describe('in German', () => {
  test('text, document and letter are, and the figures stay the same', async () => {
    const path = write({ ...HOUSEHOLD, ...CHECK, letter: NAMES });
    const [document, letter] = [join(folder, 'unterlage.html'), join(folder, 'brief.html')];
    const { code, out } = await run(path, '--check', '--language', 'de', '--html', document, '--letter', letter);
    expect(code).toBe(0);
    for (const part of ['Wärmebedarf', 'Wärmepumpe', 'Verbrauchskosten', 'Rechnungsprüfung', 'Preise und Quellen'])
      expect(out).toContain(`\n${part}\n`);
    expect(out).toMatch(/Sole\/Wasser-Wärmepumpe +[\d.]+\s£ /);
    for (const file of [document, letter]) expect(readFileSync(file, 'utf8')).toContain('<html lang="de-DE"');
    const [english, german] = [await run(path, '--json'), await run(path, '--json', '--language', 'de')];
    expect(JSON.parse(german.out).appraisal.systems).toEqual(JSON.parse(english.out).appraisal.systems);
  });
  test('a refusal is too, and the next run without it is English', async () => {
    const path = write({ ...HOUSEHOLD, machine: { spaceFactor: 0.5 } });
    expect((await run(path, '--language', 'de')).err).toContain('Die JAZ für die Räume ist 0.5; verlangt ist');
    expect((await run(path)).err).toContain('The seasonal factor for heating the rooms is 0.5');
    const roof = { panels: [{ kWp: 4, facing: 'up', pitchDegrees: 91, shading: 'little' }] };
    const { err } = await run(write({ ...HOUSEHOLD, roof }), '--language', 'de');
    expect(err).toContain('Die Richtung der Solarmodule ist „up“; verlangt ist: eines von „N“, „');
    expect(err).toContain('Die Neigung der Solarmodule ist 91°; verlangt ist: höchstens 90°.');
  });
  test('another language is refused', async () => {
    const { code, err } = await run(write(HOUSEHOLD), '--language', 'fr');
    expect([code, err]).toEqual([2, expect.stringContaining('The languages are en and de, and “fr” was named.')]);
  });
});

describe('what is refused, with exit code 2', () => {
  const PANELS = { kWp: 4, facing: 'S', pitchDegrees: 30, shading: 'little' };
  const CASES: readonly { name: string; file: unknown; args?: string[]; says: readonly string[] }[] = [
    {
      name: 'a seasonal factor of 0.5',
      file: { ...HOUSEHOLD, machine: { spaceFactor: 0.5 } },
      says: [
        'machine.spaceFactor',
        'The seasonal factor for heating the rooms is 0.5',
        'at least 1',
        'electric heater',
      ],
    },
    {
      name: 'a seasonal factor of 9',
      file: { ...HOUSEHOLD, machine: { spaceFactor: { value: 9 } } },
      says: ['machine.spaceFactor', 'is 9; it must be at most 8'],
    },
    {
      name: 'an efficiency of 130 %',
      file: { ...HOUSEHOLD, present: { system: 'oil', efficiency: 1.3 } },
      says: ['present.efficiency', 'is 1.3; it must be at most 1.1', '110 %'],
    },
    {
      name: 'a heat loss of 0',
      file: { ...HOUSEHOLD, heat: { heatLossKW: 0 } },
      says: ['heat.heatLossKW', 'The heat loss is 0 kW; it must be more than 0 kW'],
    },
    {
      name: 'panels of 0 kWp on the second slope, a battery and a room band that cannot be, each in words with its remedy',
      file: {
        ...HOUSEHOLD,
        roof: { panels: [PANELS, { ...PANELS, kWp: 0, pitchDegrees: 120 }], exportPencePerKWh: -5 },
        battery: { usableKWh: 0 },
        car: { chargerKW: 0 },
        comfort: { downK: -1 },
      },
      says: [
        'roof.panels.1.kWp: The peak power of the solar panels is 0 kWp; it must be more than 0 kWp. A slope without',
        'The slope of the solar panels is 120°; it must be at most 90°. 0° lies flat',
        'The price of electricity sent out is -5 p/kWh; it must be at least 0 p/kWh. Where nothing is paid',
        'The size of the battery is 0 kWh; it must be more than 0 kWh. A battery that holds nothing is left out.',
        'The power of the charger is 0 kW; it must be at least 1 kW',
        'How much cooler the rooms may be is -1 K; it must be at least 0 K. It is counted from the usual room',
      ],
    },
    {
      name: 'several at once, each named',
      file: { name: 'x', heat: { heatLossKW: 0 }, present: { efficiency: 1.3 }, machine: { spaceFactor: 0.5 } },
      says: ['heat.heatLossKW', 'present.efficiency', 'machine.spaceFactor'],
    },
    { name: 'a misspelt field', file: { ...HOUSEHOLD, hotwater: {} }, says: ['“hotwater” is not a field'] },
    {
      name: 'an offer taken on a day to come',
      file: {
        ...HOUSEHOLD,
        offer: 'Ground',
        offers: [{ name: 'Air', machine: {} }],
        taken: { offer: 'Air', on: '2199-01-01' },
      },
      says: ['taken.on', 'that day has not come yet'],
    },
    { name: 'no name', file: {}, says: ['the name of the household is missing'] },
    { name: 'no JSON', file: '{"name": "x"', says: ['household.json', 'not a whole JSON file'] },
    { name: 'a newer version', file: { ...HOUSEHOLD, version: 3 }, says: ['newer Plainwarmth', 'version 3'] },
    {
      name: 'a raw file that is not there',
      file: { ...HOUSEHOLD, files: [{ file: 'gas.csv' }] },
      says: ['gas.csv', 'does not lie beside it'],
    },
    { name: 'no bill to check', file: HOUSEHOLD, args: ['--check'], says: ['holds no bill to check'] },
    { name: 'an option that does not exist', file: HOUSEHOLD, args: ['--jsn'], says: ['--jsn', 'plainwarmth reckon'] },
  ];
  test.each(CASES)('$name', async ({ file, args = [], says }) => {
    const { code, out, err } = await run(write(file), ...args);
    expect([code, out]).toEqual([2, '']);
    for (const part of says) expect(err.toLowerCase()).toContain(part.toLowerCase());
  });

  test('an hour without a price, named', async () => {
    const tariff = {
      id: 't',
      name: 'Night only',
      fuel: 'electricity',
      origin: 'bill',
      grade: 'measured',
      versions: [
        {
          from: '2026-01-01',
          standingPencePerDay: 50,
          vat: { rate: 0.05, included: true },
          bands: [{ name: 'night', pencePerKWh: 15, times: [{ from: '00:00', to: '23:30' }] }],
        },
      ],
    };
    const { code, err } = await run(write({ ...HOUSEHOLD, tariffs: [tariff] }));
    expect([code, err]).toMatchObject([2, expect.stringContaining('from 23:30 to 24:00')]);
  });

  test('a raw file that cannot be read, with its line', async () => {
    const rows = [
      'From,To,Gas (kWh)',
      '2025-01-01,2025-02-01,900',
      '2025-02-01,2025-03-01,80O',
      '2025-03-01,2025-04-01,600',
    ];
    write(`${rows.join('\n')}\n`, 'gas.csv');
    const files = [{ file: 'gas.csv', choices: { carrier: 'gas' } }];
    const { code, out, err } = await run(write({ name: 'x', heat: { heatLossKW: 5 }, files }));
    // Whether a bad row stops the file or is left out is for intake to say; either way it names file and line.
    expect(code === 2 ? err : out).toMatch(/line 3[^\n]*gas\.csv/i);
  });

  test('a raw file of a gigabyte, before any of it is read', async () => {
    const path = join(folder, 'huge.csv');
    writeFileSync(path, '');
    truncateSync(path, 1024 ** 3);
    const { code, err } = await run('--read', path);
    expect(code).toBe(2);
    expect(err).toContain('huge.csv has 1,024 MB');
  });

  test('a raw file outside the folder, whatever stands before its name', async () => {
    const outside = join(folder, 'outside.csv');
    writeFileSync(outside, 'Date,Electricity (kWh)\n2026-01-01,9.5\n2026-01-02,10\n');
    mkdirSync(join(folder, 'inner\n'), { recursive: true });
    symlinkSync(outside, join(folder, 'inner\n', 'link.csv'));
    for (const file of ['\n../outside.csv', '../outside.csv', 'link.csv']) {
      const path = join(folder, 'inner\n', 'household.json');
      writeFileSync(path, JSON.stringify({ ...HOUSEHOLD, files: [{ file }] }));
      const { code, out } = await run(path);
      expect([file, code, out]).toEqual([file, 2, '']);
    }
  });

  test('a pipe, a device and a folder, at once', async () => {
    const pipe = join(folder, 'pipe.json');
    execFileSync('mkfifo', [pipe]);
    for (const path of [pipe, '/dev/zero', folder]) {
      for (const args of [[path], ['--read', path]]) {
        const { code, err } = await run(...args);
        expect([code, err]).toEqual([2, expect.stringContaining('where a file is needed')]);
      }
    }
  });

  test.each([
    ['a folder', (inside: string) => inside, 'where a file is needed'],
    ['a place that is not there', (inside: string) => join(inside, 'none', 'out.html'), 'is not there'],
    ['a way through a file', () => join(folder, 'household.json', 'out.html'), 'where a folder is needed'],
  ])('%s to write the document to', async (_, target, words) => {
    const { code, err } = await run(write(HOUSEHOLD), '--html', target(folder));
    expect([code, err]).toEqual([2, expect.stringContaining(words)]);
    expect(err).not.toContain('at ');
  });

  test('the file of values to write the document to, before it is read', async () => {
    const path = join(folder, 'values.json');
    writeFileSync(path, 'signed');
    const { code, err } = await run(write(HOUSEHOLD), '--values', path, '--html', path);
    expect([code, err]).toEqual([2, expect.stringContaining('would be written over')]);
    expect(readFileSync(path, 'utf8')).toBe('signed');
  });

  test('its own input to write the document to, by whatever name', async () => {
    const path = write(HOUSEHOLD);
    const link = join(folder, 'other.html');
    linkSync(path, link);
    for (const target of [path, link]) {
      const { code, err } = await run(path, '--html', target);
      expect([code, err]).toEqual([2, expect.stringContaining('would be written over')]);
    }
    expect(JSON.parse(readFileSync(path, 'utf8'))).toEqual(HOUSEHOLD);
  });

  test('a pipe to write the document to, where nobody reads', async () => {
    const pipe = join(folder, 'pipe.html');
    execFileSync('mkfifo', [pipe]);
    const { code, err } = await run(write(HOUSEHOLD), '--html', pipe);
    expect([code, err]).toEqual([2, expect.stringContaining('where a file is needed')]);
  });

  test('a household file that is not there', async () => {
    const { code, err } = await run(join(folder, 'none.json'));
    expect([code, err]).toMatchObject([2, expect.stringContaining('There is no file')]);
  });
});

describe('a bill on paper', () => {
  const paper = (name: string) => join(import.meta.dirname, '../../../sample-bills/paper', name);
  test('--read prints each value with what proves it, and none of the names', async () => {
    const { code, out } = await run('--read', paper('gas.pdf'));
    expect(code).toBe(0);
    expect(out).toContain('Later reading, actual: 20,636  proved by 20,636 − 20,318 = 318 m³');
    expect(out).not.toMatch(/Sample|88123456/);
    expect((await run('--json', '--read', paper('gas.pdf'))).out).not.toMatch(/Sample|88123456/);
  });
  test('what it leaves open ends with code 2, the question and the key that answers it', async () => {
    const wrong = readFileSync(paper('credit.pdf'), 'latin1').replace('174.87', '184.87');
    writeFileSync(join(folder, 'wrong.pdf'), wrong, 'latin1');
    const read = await run('--read', join(folder, 'wrong.pdf'));
    expect(read.code).toBe(2);
    expect(read.out).toMatch(/question: .*≠ £184\.87.*\n.*--choose paper\.asPrinted=true beside/);
    const household = (choices: object) => {
      const path = join(folder, 'home.json');
      writeFileSync(path, JSON.stringify({ name: 'Reed House', files: [{ file: 'wrong.pdf', choices }] }));
      return run(path);
    };
    expect(await household({})).toMatchObject({ code: 2 });
    expect(await household({ paper: { looked: true, asPrinted: true } })).toMatchObject({ code: 0 });
  });
  test('two halves are one bill in either order, and each alone is asked about or refused', async () => {
    const half = (name: string, lines: readonly (readonly [string, string?])[]) => {
      const texts = lines.flatMap(([label, amount = ''], i) =>
        [label, amount].map((text, cell) => ({ text, x: 50 + 430 * cell, y: 60 + 20 * i, size: 11 })),
      );
      writeFileSync(join(folder, name), writePdf([texts.filter(({ text }) => text !== '')]));
      return join(folder, name);
    };
    const front = half('front.pdf', [
      ['Electricity, 2 July to 1 October 2026'],
      ['Total before VAT', '£175.78'],
      ['VAT at 5 %', '£8.79'],
      ['Total of this bill', '£184.57'],
      ['Thank you for your payment', '£150.00'],
    ]);
    const back = half('back.pdf', [
      ['How your electricity was reckoned'],
      ['Units 416 kWh at 30.40 p', '£126.46'],
      ['Standing charge 91 days at 54.2 p', '£49.32'],
    ]);
    for (const pages of [
      [front, back],
      [back, front],
    ]) {
      const { code, out } = await run('--read', ...pages);
      expect(out).toContain('416 kWh');
      expect(code).toBe(0);
    }
    expect(await run('--read', back, '--read', front)).toMatchObject({ code: 0 });
    const alone = await run('--read', front);
    expect([alone.code, alone.out]).toEqual([2, expect.stringContaining('perhaps a page is missing')]);
    expect((await run('--read', back)).code).toBe(2);
    const home = async (files: object) => {
      const path = join(folder, 'home.json');
      writeFileSync(path, JSON.stringify({ name: 'Reed House', files: [files] }));
      return run(path);
    };
    expect(await home({ file: 'back.pdf', pages: ['front.pdf'] })).toMatchObject({ code: 0 });
    for (const taken of [
      await run('--read', front, 'days.csv'),
      await home({ file: 'front.pdf', pages: ['days.csv'] }),
    ])
      expect([taken.code, taken.err]).toEqual([2, expect.stringContaining('neither a PDF nor a picture')]);
  });
});

test('two bills of the same days that differ are asked about by the names that the household file has for them', async () => {
  const bill = (name: string, kWh: number, sums: readonly string[]) => {
    const labels = [
      'Gas bill for the period 1 July 2026 to 30 September 2026',
      `Gas used: ${kWh} kWh at 6.00 p`,
      'Standing charge: 92 days at 30.00 p',
      'Subtotal',
      'VAT at 5 %',
      'Total charges for this bill',
    ];
    const lines = labels.map((label, i) => [label, sums[i - 1]]);
    const texts = lines.flatMap(([label = '', amount = ''], i) =>
      [label, amount].map((text, cell) => ({ text, x: 50 + 430 * cell, y: 60 + 20 * i, size: 11 })),
    );
    writeFileSync(join(folder, name), writePdf([texts.filter(({ text }) => text !== '')]));
    return { file: name };
  };
  const files = [
    bill('first.pdf', 900, ['£54.00', '£27.60', '£81.60', '£4.08', '£85.68']),
    bill('put right.pdf', 600, ['£36.00', '£27.60', '£63.60', '£3.18', '£66.78']),
  ];
  const reckoned = (more: object) =>
    run(write({ ...HOUSEHOLD, typed: undefined, files: [files[0], { ...files[1], ...more }] }));
  const open = await reckoned({});
  expect([open.code, open.err]).toEqual([
    2,
    expect.stringMatching(/first\.pdf.*put right\.pdf|put right\.pdf.*first\.pdf/),
  ]);
  expect(await reckoned({ choices: { beside: 'instead' } })).toMatchObject({ code: 0 });
});

describe('--read', () => {
  test('says what is understood of a file', async () => {
    const path = write('Date,Electricity (kWh)\n2026-01-01,9.5\n2026-01-02,10.5\n2026-01-03,10\n', 'days.csv');
    const { code, out } = await run('--read', path);
    expect(code).toBe(0);
    expect(out).toContain('30 kWh');
    expect(out).toContain('3 of 3 readings');
    expect(JSON.parse((await run('--read', path, '--json')).out)).toMatchObject({ fileName: 'days.csv', dataRows: 3 });
  });

  test('asks in German too, with the units that may be meant; a column without a heading bears the name of what it is', async () => {
    const days = Array.from({ length: 31 }, (_, i) => `2026-01-${String(i + 1).padStart(2, '0')}`);
    const path = write(['Datum,Wärme', ...days.map((day, i) => `${day},${40 + (i % 7)}`)].join('\n'), 'heat.csv');
    const { out } = await run('--read', path, '--language', 'de');
    expect(out).toMatch(
      /^Frage: .*\n {2}Antworten Sie mit “choices”: \{ "unit": "kWh" .*möglich: unit=kWh, unit=Wh, unit=MWh/m,
    );
    expect(out).not.toMatch(/^(question|note|refusal):/m);
    const bare = write(days.map((day, i) => `${day},${(i % 9) - 2.5}`).join('\n'), 'bare.csv');
    const chosen = ['--choose', 'carrier=outdoor-temperature', '--choose', 'unit=°C'];
    const { out: weather } = await run('--read', bare, '--language', 'de', ...chosen);
    expect(weather).toMatch(/^Außentemperatur: Außentemperatur, Wetter, täglich, /m);
    expect(weather).toContain('Spalten: Spalte 1 | Spalte 2');
  });

  test('the name of a person and a long number in a heading stand on no paper', async () => {
    const rows = Array.from({ length: 400 }, (_, i) => {
      const date = new Date(Date.UTC(2024, 8, 1) + i * 86_400_000).toISOString().slice(0, 10);
      return `${date},${20 + (i % 9)}`;
    });
    write(['Date,MPRN 1200012345678 Mrs J Ashdown 4 Mill Lane Gas (kWh)', ...rows].join('\n'), 'named.csv');
    const { typed: _, ...household } = HOUSEHOLD;
    const html = join(folder, 'named.html');
    const { out } = await run(write({ ...household, files: [{ file: 'named.csv' }] }), '--working', html);
    const said = `${out}${readFileSync(html, 'utf8')}`;
    expect(said).toContain('MPRN …5678 – 4 – Gas (kWh)');
    expect(said).not.toMatch(/1200012345678|Ashdown|Mill Lane/);
  });

  test.each([
    { name: 'an empty file', bytes: new Uint8Array() },
    { name: 'a binary file', bytes: new Uint8Array([0x7f, 0x45, 0x4c, 0x46, 0, 0, 1, 2, 0, 0, 0, 9]) },
  ])('$name ends with code 2 and a sentence', async ({ bytes }) => {
    const path = join(folder, 'wrong.csv');
    writeFileSync(path, bytes);
    const { code, out } = await run('--read', path);
    expect(code).toBe(2);
    expect(out).toContain('refusal: ');
  });
});

describe('what a document needs settled first', () => {
  const oil = { ...HOUSEHOLD, present: { system: 'oil' as const }, typed: [], beside: { lpg: false, pellets: false } };
  const paper = (content: unknown) => run(write(content), '--html', join(folder, 'paper.html'));

  test('an old price is refused with the key that settles it; what was said is printed', async () => {
    expect((await run(write(oil))).code).toBe(0);
    const refused = await paper(oil);
    expect(refused.code).toBe(2);
    expect(refused.err).toContain('prices.stand: Oil: the price is of January 2026 and ended 298 days ago.');
    expect(refused.err).toContain('"stand": [{ "price": "oil", "on": "2026-11-25" }]');
    const stand = [{ price: 'oil', on: '2026-11-25', said: 'no slip was found' }];
    expect((await paper({ ...oil, prices: { stand } })).code).toBe(0);
    expect(readFileSync(join(folder, 'paper.html'), 'utf8')).toContain('“no slip was found”');
    expect((await paper({ ...oil, prices: { oilPencePerLitre: 71 } })).code).toBe(0);
  });
});

test('several offers stand side by side, and one is put in hand by its name', async () => {
  const offers = [{ name: 'Air', machine: { source: 'air', flowC: 50 } }];
  const path = write({ ...HOUSEHOLD, offer: 'Ground', offers });
  const { out } = await run(path);
  expect(out).toMatch(/Offers side by side[\s\S]*Ground +ground source[\s\S]*Air +air source, flow temperature 50/);
  const { machine } = JSON.parse((await run(path, '--offer', 'Air', '--json')).out).appraisal;
  expect(machine.source).toBe('air');
  const unknown = await run(path, '--offer', 'Water');
  expect(unknown).toMatchObject({ code: 2, err: expect.stringContaining('no offer called “Water”') });
});

test('a reader that hangs up, as "| head" does, is no fault', async () => {
  const terminal = JSON.stringify(join(import.meta.dirname, '../../../src/host/terminal.ts'));
  const child = spawn(process.execPath, [
    '--input-type=module',
    '-e',
    `const { ownTerminal } = await import(${terminal});
    const { out } = ownTerminal();
    setInterval(() => out('line\\n'.repeat(10_000)), 1);`,
  ]);
  let said = '';
  child.stderr.on('data', (chunk: Buffer) => {
    said += chunk.toString();
  });
  child.stdout.once('data', () => child.stdout.destroy());
  const code = await new Promise((done) => child.once('exit', done));
  expect([code, said]).toEqual([0, '']);
});

test('a name cannot steer the terminal', async () => {
  const { out } = await run(write({ ...HOUSEHOLD, name: 'Thorn\u001b[2J\u009b1m\u202Ebank' }));
  expect(out).toContain('Thorn\uFFFD[2J\uFFFD1m\uFFFDbank');
});

test('--help explains the options', async () => {
  expect(await run('--help')).toMatchObject({ code: 0, out: expect.stringContaining('--read FILE') });
});
