/**
 * Accumulated meter data of the same open market format (NEM13): each row 250 is the time between two readings of a
 * register, with both readings and the quantity. Places of the fields from public descriptions of the format; that E is
 * drawn from the network and I sent into it, from memory.
 */
import { tell } from '../../model/shapes/told.ts';
import { readStamp } from '../dates/read-stamp.ts';
import { createStampReader, READ } from '../dates/stamp-reader.ts';
import type { FormInput, FormReading } from '../importer/form.ts';
import { readNumber } from '../numbers/read-number.ts';
import { periodPicture, periodSeries } from '../periods/period-series.ts';
import type { RawPeriod } from '../periods/raw-period.ts';
import { listNames } from '../terms/remark-book.ts';

/** Energy in kWh, by the unit as the format writes it. */
export const KWH: Readonly<Record<string, number>> = { WH: 0.001, KWH: 1, MWH: 1000 };
/** Substituted and estimated by whatever method; A is actual, V is said by rows 400, N is none. */
export const ESTIMATED = /^[SFE]/i;

interface Register {
  readonly name: string;
  readonly role: 'import' | 'export';
  readonly periods: RawPeriod[];
}

/** @param lines of the file @returns undefined where no row could be read */
export function readAccumulated(
  lines: readonly string[],
  { book }: FormInput,
): Pick<FormReading, 'series' | 'firstDays' | 'dataRows'> | undefined {
  const { registers, dataRows } = readRows(lines, book);
  const quantity = { unit: 'kWh', carrier: 'electricity', kWhPerUnit: 1, zeroAt: 0 } as const;
  const series = (['import', 'export'] as const)
    .flatMap((role) => added(registers.filter((one) => one.role === role)))
    .flatMap(
      ({ name, role, periods }, i) => periodSeries(`series-${i + 1}`, name, { ...quantity, role }, periods, book) ?? [],
    );
  const first = series[0];
  if (!first) return undefined;
  if (series.length > 1)
    book.add('several-series', 'note', {
      count: series.length,
      found: listNames(series.map(({ name }) => name)),
    });
  return { series, firstDays: periodPicture(first), dataRows };
}

function readRows(lines: readonly string[], book: FormInput['book']): { registers: Register[]; dataRows: number } {
  const registers = new Map<string, Register>();
  const reader = createStampReader();
  const dayOf = (cell: string) =>
    readStamp(cell, 0, cell.length, true, reader) === READ ? Math.floor(reader.civilMinute / 1440) : Number.NaN;
  let dataRows = 0;
  for (const [i, text] of lines.entries()) {
    const cells = text.split(',').map((cell) => cell.replaceAll('"', '').trim());
    if (cells[0] !== '250') continue;
    dataRows++;
    const [, site = '', , register = '', suffix = '', , , way = '', before = '', from = '', , , , after = '', to = ''] =
      cells;
    const [quality = '', written = '', unit = ''] = [cells[15], cells[18], cells[19]];
    const name = `${site} ${suffix || register}`.trim().slice(0, 80);
    const factor = KWH[unit.toUpperCase()];
    if (factor === undefined) {
      book.tally('espi-left-out', 'note', { column: name, found: unit });
      continue;
    }
    const line = i + 1;
    const [fromDay, toDay] = [dayOf(from), dayOf(to)];
    const number = (cell: string) => readNumber(cell, 0, cell.length, '.');
    const amount = Number.isNaN(number(written)) ? number(after) - number(before) : number(written);
    if (!(toDay > fromDay))
      book.tally('date-unreadable', 'note', { row: line, column: 'row 250', found: `${from} ${to}` });
    else if (!(amount >= 0))
      book.tally('number-unreadable', 'note', {
        row: line,
        column: name,
        found: written,
        expectedTold: tell('a-number'),
      });
    else {
      const isDrawn = /^[EB]/i.test(suffix) ? /^E/i.test(suffix) : way.toUpperCase() !== 'I';
      const known = registers.get(name) ?? { name, role: isDrawn ? 'import' : 'export', periods: [] };
      registers.set(name, known);
      const kWh = amount * factor;
      known.periods.push({
        fromDay,
        toDay,
        quantity: kWh,
        kWh,
        quality: ESTIMATED.test(quality) ? 'estimated' : 'actual',
        line,
      });
    }
  }
  return { registers: [...registers.values()], dataRows };
}

/** Registers of one direction that were read on the same days are one use. */
function added(registers: readonly Register[]): readonly Register[] {
  const spans = ({ periods }: Register) =>
    periods
      .map(({ fromDay, toDay }) => `${fromDay} ${toDay}`)
      .sort()
      .join();
  const [first, ...others] = registers;
  if (!first || others.length === 0 || others.some((one) => spans(one) !== spans(first))) return registers;
  const periods = first.periods.map((period) => {
    const same = registers.map(
      (one) => one.periods.find(({ fromDay, toDay }) => fromDay === period.fromDay && toDay === period.toDay)!,
    );
    const kWh = same.reduce((sum, one) => sum + one.kWh, 0);
    const quality = same.some((one) => one.quality === 'estimated') ? ('estimated' as const) : period.quality;
    return { ...period, kWh, quantity: kWh, quality };
  });
  return [
    {
      ...first,
      name: registers
        .map(({ name }) => name)
        .join(' + ')
        .slice(0, 80),
      periods,
    },
  ];
}
