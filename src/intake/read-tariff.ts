/** Reads a tariff file: our JSON (a tariff, or the list of its versions) or our CSV. Gaps and overlaps are the model's to find. */

import type { z } from 'zod';
import type { Remark } from '../model/shapes/evidence.ts';
import { Tariff, TariffVersion } from '../model/shapes/tariff.ts';
import { tell } from '../model/shapes/told.ts';
import { LARGEST_EVIDENCE_BYTES } from './intake.ts';
import type { TariffContext } from './tariff/home-terms.ts';
import { lineOfPath } from './tariff/line-of-path.ts';
import { areHoursAcross, readPriceSeries, timeColumns } from './tariff/price-series-csv.ts';
import { readTariffCsv } from './tariff/tariff-csv.ts';
import { openRemarkBook, type RemarkBook } from './terms/remark-book.ts';
import { closest, tellExpected, valueAt } from './terms/schema-issue.ts';
import { decodeText } from './text/decode.ts';
import { recogniseForeign } from './text/foreign.ts';
import { nestsTooDeep } from './text/nesting.ts';

export interface TariffReading {
  readonly tariff: Tariff | null;
  readonly remarks: Remark[];
}

/** @param context clock and money of the home that the tariff is for */
export function readTariff(fileName: string, bytes: Uint8Array, context: TariffContext): TariffReading {
  const book = openRemarkBook(fileName);
  const tariff = readText(fileName, bytes, context, book);
  return { tariff: book.refused() ? null : tariff, remarks: book.list() };
}

function readText(fileName: string, bytes: Uint8Array, context: TariffContext, book: RemarkBook): Tariff | null {
  if (bytes.length > LARGEST_EVIDENCE_BYTES / 4) {
    book.add('file-too-large', 'refusal', {
      foundTold: tell('so-much-of', { amount: Math.ceil(bytes.length / 1_048_576), unit: 'MB' }),
      expectedTold: tell('at-most-megabytes', { megabytes: LARGEST_EVIDENCE_BYTES / 4 / 1_048_576 }),
    });
    return null;
  }
  const foreign = bytes.length === 0 ? undefined : recogniseForeign(bytes);
  if (foreign) {
    book.add('file-foreign', 'refusal', { found: foreign });
    return null;
  }
  const decoded = decodeText(bytes);
  if ('fault' in decoded) {
    book.add(decoded.fault === 'empty' ? 'file-empty' : 'file-binary', 'refusal');
    return null;
  }
  const text = decoded.text.replace(/^\uFEFF/, '');
  if (/^\s*[[{]/.test(text)) return readJson(fileName, text, book);
  if (areHoursAcross(text)) {
    book.add('tariff-across', 'refusal');
    return null;
  }
  const time = timeColumns(text);
  return time === undefined
    ? readTariffCsv(fileName, text, context, book)
    : readPriceSeries(fileName, text, time, context, book);
}

function readJson(fileName: string, text: string, book: RemarkBook): Tariff | null {
  if (nestsTooDeep(text)) {
    book.add('tariff-not-json', 'refusal', { row: 1, found: text.trim().slice(0, 60) });
    return null;
  }
  let parsed: unknown;
  try {
    parsed = JSON.parse(text);
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    const position = /position (\d+)/.exec(message)?.[1];
    // Where the text ends too early no place is named.
    const before = position === undefined ? text.trimEnd() : text.slice(0, Number(position));
    const row = before.split('\n').length;
    book.add('tariff-not-json', 'refusal', { row, found: (text.split('\n')[row - 1] ?? '').trim().slice(0, 60) });
    return null;
  }
  if (Array.isArray(parsed)) {
    const versions = settle(TariffVersion.array().min(1), parsed, text, [], book);
    if (!versions) return null;
    book.add('tariff-fuel-guessed', 'question', { expected: 'electricity' });
    return { ...titleOf(fileName), fuel: 'electricity', versions };
  }
  return typeof parsed === 'object' && parsed !== null && 'tariff' in parsed
    ? settle(Tariff, parsed.tariff, text, ['tariff'], book)
    : settle(Tariff, parsed, text, [], book);
}

/** @param outer path from the whole of the text to the data */
function settle<T>(
  schema: z.ZodType<T>,
  data: unknown,
  text: string,
  outer: readonly string[],
  book: RemarkBook,
): T | null {
  const result = schema.safeParse(data);
  if (result.success) return result.data;
  for (const given of result.error.issues.slice(0, 5)) {
    const issue = closest(given);
    const path = issue.path.map(String).join('.');
    book.add('tariff-wrong', 'refusal', {
      row: lineOfPath(text, [...outer, ...issue.path]),
      ...(path === '' ? {} : { column: path }),
      found: shown(valueAt(data, issue.path)),
      expectedTold: tellExpected(issue),
    });
  }
  return null;
}

const shown = (value: unknown): string =>
  value === undefined
    ? ''
    : typeof value === 'string'
      ? value.slice(0, 60)
      : (JSON.stringify(value) ?? '').slice(0, 60);

/** Name and origin of a tariff that does not say them itself. */
const titleOf = (fileName: string) => ({
  id: 'tariff-1',
  name: fileName.replace(/\.[a-z]{2,5}$/i, '').slice(0, 120) || 'Tariff',
  origin: tell('from-file', { file: fileName }),
  grade: 'measured' as const,
});
