/** The letter is two pages and the household’s paper four, on both papers and in both languages, whatever the names, the logo and the parts. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { PRINT_OPTIONS } from '../../src/host/print-pdf.ts';
import type { BillCheckInput } from '../../src/model/shapes/bill-check.ts';
import { CivilDate } from '../../src/model/shapes/dates.ts';
import type { Household } from '../../src/model/shapes/household.ts';
import type { Tariff } from '../../src/model/shapes/tariff.ts';
import { logoAddress, smallPng } from '../unit/desk/logos.ts';
import { expect, keepEstimate, root, test } from './host.ts';
import { pagesOfPdf } from './pdf-text.ts';

test.use({ sampleName: 'mill-lane' });

const LONG_NAME =
  'The Old Rectory Cottage and Stables beside the Mill Pond, Upper Slaughterford-under-Edge, Wilhelmina and Bartholomew X';
const LONG_NAMES = {
  to: 'Professor Doctor Wilhelmina and Bartholomew Featherstonehaugh-Cholmondeley of X',
  ringName: 'Bartholomew Maximilian Featherstonehaugh-Cholmondeley-Marjoribanks the Younger',
  ringTelephone: '+44 (0)1632 960 123 ask for the heating',
};
const UNBROKEN_NAMES = { to: 'W'.repeat(80), ringName: 'M'.repeat(80), ringTelephone: '0'.repeat(40) };

const SENDERS = [
  {
    label: 'usual',
    name: 'Mill Lane',
    installerName: 'Hill & Daughters',
    installerContact: '01234 567 890',
    letter: undefined,
  },
  {
    label: 'long',
    name: LONG_NAME,
    installerName:
      'Hill & Daughters Heating, Plumbing, Ground Works and Electrical Contractors of the Marches, Limited',
    installerContact: Array.from({ length: 12 }, (_, i) => `Line ${i + 1} of a long address`).join('\n'),
    letter: LONG_NAMES,
  },
  {
    label: 'unbroken',
    name: 'M'.repeat(120),
    installerName: 'W'.repeat(120),
    installerContact: 'm'.repeat(400),
    letter: UNBROKEN_NAMES,
  },
] as const;

/** Bills of the same winter with as many parts, unknowns and questions as there can be. */
const BILLS: Readonly<Record<string, Partial<BillCheckInput>>> = {
  'heater and little known': {},
  'whole house, estimated': { meter: 'whole-house', boughtKWh: 3400, otherKWh: 1135.6, readings: 'estimated' },
  'all metered': {
    heatKWh: 6900,
    waterHeatKWh: 1200,
    spaceKWh: 1700,
    immersionKWh: 250,
    readings: 'estimated',
    readKWh: 2150,
    billedStandingPence: 6500,
  },
};

/**
 * The document as PDF, asked for as the program asks, but in the browser that is open here: a browser started for each
 * of these papers would take most of the time. That the program prints is seen where one is downloaded.
 */
async function print(page: Page, { base64 }: { readonly base64: string }): Promise<Buffer> {
  await page.setContent(Buffer.from(base64, 'base64').toString('utf8'));
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
  const session = await page.context().newCDPSession(page);
  const { data } = await session.send('Page.printToPDF', PRINT_OPTIONS);
  await session.detach();
  return Buffer.from(data, 'base64');
}

test('letters have two pages, with names of every kind', async ({ host, page }) => {
  const { call } = host;
  const { id } = (await call('household.list', {}))[0]!;
  const { household, estimates, checks } = await call('household.open', { id });
  const settings = await call('settings.read', {});
  const logo = logoAddress(smallPng(400, 120));
  const made = [];
  for (const change of Object.values(BILLS)) {
    const { input } = checks[0]!;
    made.push(await call('check.run', { ...input, estimateId: estimates[0]!.id, ...change }));
  }
  for (const { label, name, installerName, installerContact, letter } of SENDERS) {
    const { revision } = await call('household.open', { id });
    await call('household.save', { household: { ...household, name, letter: letter ?? household.letter }, revision });
    for (const [paper, language, heading] of [
      ['A4', 'de-DE', 'Was von jetzt an abzulesen ist'],
      ['Letter', 'en-GB', 'What to read from now on'],
    ] as const) {
      await call('settings.write', { ...settings, installerName, installerContact, paper, logo, language });
      for (const [i, check] of made.entries()) {
        const bytes = await print(page, await call('check.print', { checkId: check.id, format: 'html' }));
        const file = `letter-${label}-${i}-${paper}.pdf`;
        mkdirSync(join(root, 'tests/output'), { recursive: true });
        writeFileSync(join(root, 'tests/output', file), bytes);
        const pages = await pagesOfPdf(bytes);
        expect(pages.length, file).toBe(2);
        expect(pages[1], `${file}, page 2`).toContain(heading);
      }
    }
  }
});

const tariff = (id: string, name: string, nightPence: number): Tariff => ({
  id,
  name,
  fuel: 'electricity',
  origin: 'a letter',
  grade: 'measured',
  versions: [
    {
      from: CivilDate.parse('2025-01-01'),
      standingPencePerDay: 55,
      vat: { rate: 0.05, included: true },
      bands: [
        { name: 'night', pencePerKWh: nightPence, times: [{ from: '00:30', to: '05:30' }] },
        { name: 'day', pencePerKWh: 31, times: 'rest' },
      ],
    },
  ],
});
/** Everything that can be chosen, with as many tariffs as one would type. */
const EVERYTHING: Pick<Household, 'tariffs' | 'roof' | 'battery' | 'car'> = {
  tariffs: ['Night', 'Another supplier with a long name, cheap at night', 'A third', 'A fourth', 'A fifth'].map(
    (name, at) => tariff(`t${at}`, name, 9 + at),
  ),
  roof: {
    panels: (['S', 'E', 'W'] as const).map((facing) => ({ kWp: 2, facing, pitchDegrees: 35, shading: 'some' })),
  },
  battery: { usableKWh: 9, fromNight: true },
  car: {},
};

/** The fullest papers: years to come and instalments; gas and its standing charge; each as it is and with everything that can be chosen. */
for (const sampleName of ['holm-farm', 'larch-rise']) {
  test.describe(sampleName, () => {
    test.use({ sampleName });
    test(`the paper of ${sampleName} has four pages, as it is and with everything chosen`, async ({ host, page }) => {
      const { call } = host;
      const { id } = (await call('household.list', {}))[0]!;
      const settings = await call('settings.read', {});
      for (const [label, more] of [
        ['as it is', {}],
        ['everything', EVERYTHING],
      ] as const) {
        const { household, revision } = await call('household.open', { id });
        await call('household.save', { household: { ...household, ...more }, revision });
        const estimate = await keepEstimate(host, id);
        for (const paper of ['A4', 'Letter'] as const) {
          for (const [language, headings] of [
            ['en-GB', ['What the figures are', 'Beside the other ways', 'Your first winter', 'What this rests on']],
            ['de-DE', ['Die wichtigsten Werte', 'Im Vergleich mit', 'Ihr erster Winter', 'Worauf das beruht']],
          ] as const) {
            const contact = { installerName: 'Hill & Daughters', installerContact: '1 High Street\n01234 567 890' };
            const logo = logoAddress(smallPng(400, 120));
            await call('settings.write', { ...settings, ...contact, paper, language, logo });
            const bytes = await print(page, await call('estimate.print', { estimateId: estimate.id, format: 'html' }));
            const pages = await pagesOfPdf(bytes);
            expect(pages.length, `${label}, ${paper}, ${language}`).toBe(4);
            for (const [at, heading] of headings.entries()) {
              expect(pages[at], `${label}, ${paper}, page ${at + 1}`).toContain(heading);
            }
          }
        }
      }
    });
  });
}
