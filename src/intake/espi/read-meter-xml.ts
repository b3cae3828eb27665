/** The open XML standard for meter data (NAESB ESPI): every record of a feed as a series of its own. */
import { type FormInput, type FormReading, firstLetters, type IntakeForm, nothingOfForm } from '../importer/form.ts';
import { askCalorific, gasOfPlace } from '../layout/gas-factors.ts';
import type { IntakeChoices } from '../terms/choices.ts';
import { tellMoney } from '../terms/money-words.ts';
import { listNames } from '../terms/remark-book.ts';
import { isVolumeOfGas } from '../terms/units.ts';
import { decodeText } from '../text/decode.ts';
import { type BuiltRecord, buildRecord, isHomeMoney, type RecordInput } from './build-record.ts';
import { cleanReadings } from './clean-readings.ts';
import { dropCoarser } from './drop-coarser.ts';
import type { Feed } from './feed.ts';
import { type LinkedRecord, linkFeed } from './link-feed.ts';
import { parseFeed } from './parse-feed.ts';
import { quantityOf, type RecordQuantity } from './record-quantity.ts';

const NAME = 'open meter XML';
const PREVIEW_ROWS = 12;

export const meterXml: IntakeForm = {
  name: NAME,
  reason: 'the open XML standard for meter data',
  matches: (bytes) => {
    const letters = firstLetters(bytes, 600);
    return (
      /^<(\?xml|!--|!doctype (?!html)|[a-z][\w.-]*:?(feed|entry|usagepoint|intervalblock|batch))/i.test(letters) &&
      !/<html/i.test(letters)
    );
  },
  read: readMeterXml,
};

function readMeterXml({ bytes, choices, context, book }: FormInput): FormReading | undefined {
  const decoded = decodeText(bytes);
  if ('fault' in decoded) {
    book.add(decoded.fault === 'empty' ? 'file-empty' : 'file-binary', 'refusal');
    return nothingOfForm(choices);
  }
  const feed = parseFeed(decoded.text, context.onProgress);
  if ('fault' in feed) {
    if (feed.fault === 'doctype') book.add('xml-doctype', 'refusal', { row: feed.line });
    else if (feed.fault !== 'none') book.add('xml-broken', 'refusal', { row: feed.line, foundTold: feed.found });
    return nothingOfForm(choices);
  }
  if (!feed.isMeterData) return undefined;
  return readFeed(feed, { choices, context, book });
}

interface Candidate extends RecordInput {
  readonly linked: LinkedRecord;
  readonly meter: string;
}

function readFeed(feed: Feed, input: Pick<FormInput, 'choices' | 'context' | 'book'>): FormReading {
  const { choices, book } = input;
  const context = gasOfPlace(input.context);
  const { records, unlinked } = linkFeed(feed);
  if (unlinked > 0) book.add('espi-unlinked', 'note', { count: unlinked });
  const alone = records.length === 1;
  const localTime = feed.entries.find((e) => e.localTime)?.localTime;
  const candidates = records.flatMap((linked): Candidate[] => {
    const quantity = quantityOf(linked.readingType, linked.serviceKind, choicesFor(linked, alone, choices), context);
    if ('leftOut' in quantity) {
      book.tally('espi-left-out', 'note', { column: linked.name, foundTold: quantity.leftOut });
      return [];
    }
    if (!quantity.unitSaid) book.add('espi-type-missing', 'question', { column: linked.name, expected: quantity.unit });
    if (quantity.isPower) book.tally('espi-power', 'note', { column: linked.name });
    const usual = linked.readingType?.intervalLength;
    const readings = cleanReadings(linked.blocks, usual, quantity.isCounter, context.today, book);
    if (readings.length === 0) return [];
    const currency = linked.readingType?.currency;
    const one = { id: '', name: linked.name, quantity, readings, currency, localTime, linked, meter: linked.meter };
    return quantity.isNet && readings.some((r) => r.value < 0) ? bothWays(one) : [one];
  });
  if (candidates.length > records.length) book.add('espi-net', 'note');
  const kept = dropCoarser(candidates, book);
  const built = kept.flatMap((one, i): { one: Candidate; built: BuiltRecord }[] => {
    const record = buildRecord({ ...one, id: `series-${i + 1}` }, choices, context, book);
    return record ? [{ one, built: record }] : [];
  });
  remarkCosts(
    built.map((b) => ({ ...b.one, resolution: b.built.series.resolution })),
    input,
  );
  if (feed.summaries > 0) book.add('espi-summary', 'note', { count: feed.summaries });
  if (built.some(({ one }) => isVolumeOfGas(one.quantity.unit)) && choices.calorificMJPerM3 === undefined)
    askCalorific(context, book);
  const first = built[0];
  if (!first) {
    book.add('espi-empty', 'refusal', { count: feed.blocks.reduce((sum, b) => sum + b.start.length, 0) });
    return nothingOfForm(choices);
  }
  if (built.length > 1)
    book.add('several-series', 'note', {
      count: built.length,
      found: listNames(built.map((b) => b.built.series.name)),
    });
  const clock = built.find((b) => b.built.clock)?.built.clock;
  return {
    choices: {
      shape: NAME,
      ...(clock === undefined ? {} : { clock }),
      ...(built.length === 1 && alone ? ownChoices(first.one.quantity) : {}),
      ...(choices.calorificMJPerM3 === undefined ? {} : { calorificMJPerM3: choices.calorificMJPerM3 }),
    },
    series: built.map((b) => b.built.series),
    intervals: built.flatMap((b) => b.built.intervals ?? []),
    firstDays: first.built.firstDays,
    dataRows: feed.blocks.reduce((sum, b) => sum + b.start.length, 0),
    columns: ['record', 'start (UTC)', 'minutes', 'value', 'quality'],
    rows: previewRows(built.map((b) => b.one)),
  };
}

const ownChoices = ({ unit, carrier, role }: RecordQuantity): IntakeChoices => ({ unit, carrier, role });

/** What the installer chose is for the one record there is; among several it fills only what a record does not say. */
function choicesFor(linked: LinkedRecord, alone: boolean, choices: IntakeChoices): IntakeChoices {
  if (alone) return choices;
  const { unit, calorificMJPerM3 } = choices;
  return {
    ...(unit !== undefined && linked.readingType?.uom === undefined ? { unit } : {}),
    ...(calorificMJPerM3 === undefined ? {} : { calorificMJPerM3 }),
  };
}

/** A net record holds both directions; each becomes a series, and neither is summed with the other. */
function bothWays(one: Candidate): Candidate[] {
  const only = (sign: 1 | -1) => one.readings.map((r) => ({ ...r, value: Math.max(0, sign * r.value) }));
  return [
    { ...one, readings: only(1) },
    {
      ...one,
      name: one.name && `${one.name}, sent out`,
      quantity: { ...one.quantity, role: 'export' },
      readings: only(-1),
    },
  ];
}

/** Costs have a place beside periods only, and only in the money of the home. */
function remarkCosts(
  records: readonly (Candidate & { readonly resolution: string })[],
  { context, book }: Pick<FormInput, 'context' | 'book'>,
): void {
  const others: string[] = [];
  let leftOut = 0;
  for (const record of records) {
    const total = record.readings.reduce((sum, r) => sum + (Number.isNaN(r.cost) ? 0 : r.cost), 0);
    if (total === 0) continue;
    if (!isHomeMoney(record, context)) others.push(record.name);
    else if (record.resolution !== 'period') leftOut += total;
  }
  if (others.length > 0) book.add('espi-currency', 'note', { found: listNames(others) });
  if (leftOut !== 0)
    book.add('espi-cost-left-out', 'note', { foundTold: tellMoney(leftOut / 100_000, context.money ?? '£') });
}

function previewRows(records: readonly Candidate[]): FormReading['rows'] {
  return records
    .flatMap((record) =>
      record.readings.slice(0, PREVIEW_ROWS).map((r) => ({
        line: r.line,
        cells: [
          record.name || record.quantity.carrier,
          new Date(r.start * 1000).toISOString().slice(0, 16).replace('T', ' '),
          String(Math.round(r.duration / 60)),
          String(r.value),
          r.estimated ? 'estimated' : '',
        ],
      })),
    )
    .slice(0, PREVIEW_ROWS);
}
