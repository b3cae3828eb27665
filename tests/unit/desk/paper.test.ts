import { expect, test } from 'vitest';
import { writePdf } from '../../../sample-bills/write-pdf.ts';
import type { OpenHousehold } from '../../../src/desk/contract.ts';
import type { Evidence } from '../../../src/model/shapes/evidence.ts';
import { layOutBill } from '../../prove/paper/lay-out.ts';
import { openDesk } from './open-desk.ts';

async function bring(bytes: Uint8Array, choices = {}) {
  const { desk, store } = openDesk();
  const { household } = (await desk.handle('household.create', { name: 'Larch Rise' }, {})) as OpenHousehold;
  const { fileId } = (await desk.handle('file.offer', { fileName: 'Sample 88123456.pdf', bytes }, {})) as {
    fileId: string;
  };
  const request = { fileId, householdId: household.id, choices };
  const keep = async () => (await desk.handle('evidence.accept', request, {})) as { evidence: Evidence };
  const handOut = async () => {
    const { base64 } = (await desk.handle('household.export', { id: household.id, withFiles: true }, {})) as {
      base64: string;
    };
    return Buffer.from(base64, 'base64').toString();
  };
  return { store, householdId: household.id, keep, handOut };
}
const made = layOutBill(6, 1);

test('a proved bill is kept without the paper it stood on', async () => {
  const { store, keep, handOut } = await bring(writePdf(made.pages));
  const { evidence } = await keep();
  expect(evidence.series[0]!.bills).toHaveLength(1);
  expect(store.readRawFile(evidence.id)).toBeUndefined();
  expect(await handOut()).not.toMatch(/Sample|Orchard/);
});

test('where the installer says so the paper is kept too, and never handed out', async () => {
  const bytes = writePdf(made.pages);
  const { store, keep, handOut } = await bring(bytes, { paper: { keepPaper: true } });
  const { evidence } = await keep();
  expect(store.readRawFile(evidence.id)).toEqual(bytes);
  expect(JSON.parse(await handOut()).evidence[0].rawFile).toBeNull();
});

test('neither the file nor a credit bears the name of a person', async () => {
  const lines = [
    ['Mrs A. Sample, 12 Orchard Row', ''],
    ['Electricity, 2 November 2026 to 22 November 2026', ''],
    ['416 kWh at 30.40 p', '£126.46'],
    ['Standing charge 21 days at 54.2 p', '£11.38'],
    ['Sample: goodwill discount for account 88123456', '-£5.00'],
    ['VAT at 5 % on £132.84', '£6.64'],
    ['Total', '£139.48'],
  ] as const;
  const page = lines.flatMap(([label, amount], i) => [
    { text: label, x: 50, y: 60 + 20 * i, size: 11 },
    { text: amount, x: 480, y: 60 + 20 * i, size: 11 },
  ]);
  const { keep, handOut } = await bring(writePdf([page]));
  const { evidence } = await keep();
  expect(evidence.fileName).toBe('Bill 2026-11-02 to 2026-11-22.pdf');
  expect(evidence.series[0]!.bills![0]!.bill.adjustments[0]!.name).toBe('goodwill discount');
  expect(await handOut()).not.toMatch(/Sample|88123456/);
});

test('while something is asked nothing is kept', async () => {
  // Without the last page the VAT is missing.
  const pages = made.pages.map((texts) => texts.filter(({ text }) => !/VAT|tax|%/i.test(text)));
  const { store, householdId, keep } = await bring(writePdf(pages));
  await expect(keep()).rejects.toMatchObject({ code: 'paper-vat-asked' });
  expect(store.listEvidence(householdId)).toEqual([]);
});
