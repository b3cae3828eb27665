/** The desk answers in the language of the settings, from the next request on. */
import { describe, expect, test } from 'vitest';
import { type OpenHousehold, Settings } from '../../../src/desk/contract.ts';
import { DeskError } from '../../../src/desk/desk-error.ts';
import { openDesk } from './open-desk.ts';

async function refusalOf(work: Promise<unknown>): Promise<string> {
  try {
    await work;
  } catch (error) {
    if (error instanceof DeskError) return `${error.message} ${error.remedy ?? ''}`.trim();
    throw error;
  }
  throw new Error('Nothing was refused.');
}

async function germanDesk() {
  const { desk } = openDesk();
  const home = (await desk.handle('household.create', { name: 'Larch Rise' }, {})) as OpenHousehold;
  await desk.handle('settings.write', Settings.parse({ language: 'de-DE' }), {});
  return { desk, home };
}

describe('refusals', () => {
  test.each([
    [
      'household.open',
      { id: 'nobody' },
      'Diesen Haushalt gibt es nicht mehr. Gehen Sie zurück zur Liste der Haushalte; vielleicht wurde inzwischen gelöscht.',
    ],
    [
      'household.create',
      { name: '' },
      'Der Name des Haushalts ist leer; verlangt ist: eine Angabe. Berichtigen Sie es, oder lassen Sie es leer, wenn es unbekannt bleiben darf.',
    ],
    [
      'household.create',
      { name: 'x'.repeat(121) },
      `Der Name des Haushalts ist „${'x'.repeat(60)}“; verlangt ist: höchstens 120 Zeichen lang. Berichtigen Sie es, oder lassen Sie es leer, wenn es unbekannt bleiben darf.`,
    ],
    ['nothing.known', {}, 'Eine Anfrage „nothing.known“ gibt es nicht.'],
  ] as const)('%s %j', async (name, input, said) => {
    const { desk } = await germanDesk();
    // The first request settles the language; what comes before the settings are read has the last one spoken.
    await desk.handle('settings.read', {}, {});
    expect(await refusalOf(desk.handle(name, input, {}))).toBe(said);
  });
  test('a written estimate of an unknown home', async () => {
    const { desk, home } = await germanDesk();
    const asked = desk.handle('estimate.keep', { householdId: home.household.id, note: '' }, {});
    expect(await refusalOf(asked)).toMatch(/^Noch ist nicht bekannt, wie viel Wärme dieses Haus braucht\./);
  });
});

test('a file that is none', async () => {
  const { desk, home } = await germanDesk();
  const { fileId } = (await desk.handle('file.offer', { fileName: 'leer.csv', bytes: new Uint8Array() }, {})) as {
    fileId: string;
  };
  const accepted = desk.handle('evidence.accept', { fileId, householdId: home.household.id, choices: {} }, {});
  expect(await refusalOf(accepted)).toMatch(/^leer\.csv ist leer,/);
});
