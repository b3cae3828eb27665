/** A made home in one dialect: the bytes of the file, and what it says. */

import { seededRandom } from '../../build/damage.ts';
import { toCivilDate, toDayNumber } from '../../src/model/calendar/civil.ts';
import { offsetMinutes as askOffset } from '../../src/model/calendar/zone.ts';
import { sumOf } from '../../src/model/units/sums.ts';
import { type Dialect, gasKWh, type Of, type Unit } from './draw.ts';
import { FIRST_DAY, type MadeRecord, makeRecord, type Reading, YEAR_DAYS } from './made-home.ts';
import { drawTwists, OTHER, type Twist, twistDate, twistSheet, ZONE_NAMES } from './twist.ts';
import { MONTHS, WORDS } from './words.ts';

const offsets = new Map<string, number>();
/** Zones change at full quarters of hours; asking the platform for each row would take most of the time. */
function offsetMinutes(zone: string, ms: number): number {
  const key = `${zone} ${Math.floor(ms / 900_000)}`;
  const known = offsets.get(key) ?? askOffset(zone, ms);
  offsets.set(key, known);
  return known;
}

/** One record that the file holds; kWh or °C by local day, or by month where `byMonth`. */
export interface Truth {
  readonly of: Of;
  readonly register: string;
  readonly byDay: ReadonlyMap<string, number>;
  readonly byMonth: boolean;
}

/** A written table in its parts, as cells. */
export interface SheetLines {
  readonly titles: readonly (readonly string[])[];
  readonly heads: readonly (readonly string[])[];
  readonly rows: readonly (readonly string[])[];
}

export interface Written {
  /** Absent where days stand across or cells have fixed widths. */
  readonly sheet?: SheetLines;
  readonly columns: readonly { readonly heading: string; readonly of: Of; readonly unit: Unit }[];
  readonly fileName: string;
  readonly bytes: Uint8Array;
  readonly text: string;
  readonly truths: readonly Truth[];
  /** What is as right: one record of the sum rather than its registers. */
  readonly orElse?: readonly Truth[];
  readonly twists: ReadonlySet<Twist>;
  readonly valueColumn: number;
  /** What nobody could tell from the file. */
  readonly ambiguous: ReadonlySet<string>;
}

/** kWh in one [MJ per m³: 39.5]. */
const KWH: Readonly<Partial<Record<Unit, number>>> = {
  Wh: 0.001,
  kWh: 1,
  MWh: 1000,
  MJ: 1 / 3.6,
  GJ: 1000 / 3.6,
  BTU: 0.000_293_071_07,
};
const DECIMALS: Readonly<Record<Unit, number>> = {
  Wh: 0,
  kWh: 3,
  MWh: 6,
  MJ: 4,
  GJ: 7,
  BTU: 2,
  W: 1,
  kW: 4,
  'm³': 4,
  'hundred ft³': 4,
  '°C': 1,
  '°F': 1,
};
const UNIT_TEXT: Readonly<Partial<Record<Unit, readonly string[]>>> = {
  'm³': ['m³', 'm3'],
  'hundred ft³': ['CCF', 'hcf', '100 ft³'],
};

interface Column {
  readonly of: Of;
  readonly register: string;
  readonly heading: string;
  readonly unit: Unit;
  readonly record: MadeRecord;
}

export function writeDialect(drawn: Dialect): Written {
  const twists = drawTwists(drawn);
  const d: Dialect = {
    ...drawn,
    ...(twists.has('named months') ? { dateForm: 'named' } : {}),
    ...(twists.has('fixed width') ? { separator: '\u0001', quoted: false } : {}),
    ...(twists.has('apostrophes') ? { thousands: true } : {}),
  };
  const random = seededRandom(d.seed * 104_729 + 5);
  const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)]!;
  const words = WORDS[d.language];
  const ambiguous = new Set<string>();
  const unitWord = (unit: Unit) => pick(UNIT_TEXT[unit] ?? [unit]);
  const inHeading = (word: string, unit: Unit): string => {
    const u = unitWord(unit);
    switch (d.unitPlace) {
      case 'brackets':
        return `${word} (${u})`;
      case 'square brackets':
        return `${word} [${u}]`;
      case 'after':
        return `${word} ${u}`;
      case 'before':
        return `${u} ${word}`;
      default:
        return word;
    }
  };
  const columns = makeColumns(d, words, pick, inHeading);
  const isNet = twists.has('net');
  const written = isNet ? [netColumn(columns)] : columns;
  const minutes = d.minutes === 0 ? 1440 : d.minutes;
  const base = columns[0]!.record;
  const count = base.days.reduce((sum, day) => sum + day.readings.length, 0);
  const flat: { day: number; n: number }[] = [];
  for (const [day, { readings }] of base.days.entries()) for (const n of readings.keys()) flat.push({ day, n });

  const numbersSeen = { clear: false };
  const say = (value: number, unit: Unit): string => {
    let [whole, fraction = ''] = value.toFixed(DECIMALS[unit]).split('.') as [string, string?];
    if (d.thousands && whole.replace('-', '').length > 3)
      whole = whole.replace(
        /\B(?=(\d{3})+(?!\d))/g,
        twists.has('apostrophes') ? '’' : d.decimal === ',' ? '.' : d.separator === ',' && !d.quoted ? ' ' : ',',
      );
    const text = fraction === '' ? whole : `${whole}${d.decimal}${fraction}`;
    if (!/^-?[1-9]\d{0,2}[.,]\d{3}$/.test(text) && /[.,]/.test(text)) numbersSeen.clear = true;
    if (!/[.,]/.test(text)) numbersSeen.clear ||= false;
    return d.unitPlace === 'behind numbers' ? `${text} ${unit === 'hundred ft³' ? 'ccf' : unit}` : text;
  };
  const truths = columns.map((c) => ({
    of: c.of,
    register: c.register,
    byDay: new Map<string, number>(),
    counts: new Map<string, number>(),
  }));
  let [shownNow, sumNow] = [0, 0];
  const togetherOf: number[] = [];
  const dayOf: string[] = [];
  const shownOf: number[] = [];
  const cellOf = (c: Column, i: number, day: number, n: number): string => {
    const reading = c.record.days[day]!.readings[n]!;
    const key = d.minutes === 0 ? c.record.days[day]!.date.slice(0, 7) : c.record.days[day]!.date;
    if (reading.missing && d.gaps !== 'none' && i === 0) [shownNow, sumNow] = [Number.NaN, Number.NaN];
    if (reading.missing && d.gaps !== 'none') return d.gaps === 'words' ? pick(['-', 'n/a', 'null']) : '';
    const { shown, kWh } = shownAs(reading, c.unit, minutes, d.zone, c.of);
    for (const [n, truth] of truths.entries()) {
      if (!isNet && n !== i) continue;
      const amount = !isNet ? kWh : Math.max(0, n === 0 ? kWh : -kWh);
      truth.byDay.set(key, (truth.byDay.get(key) ?? 0) + amount);
      truth.counts.set(key, (truth.counts.get(key) ?? 0) + 1);
    }
    if (i === 0) [shownNow, sumNow] = [shown, 0];
    sumNow += shown;
    return say(twists.has('sent out below nought') && shown !== 0 ? -shown : shown, c.unit);
  };

  const rows: string[][] = [];
  const zoneOffset = (ms: number) => offsetMinutes(d.zone, ms);
  const standard = Math.min(zoneOffset(Date.UTC(2025, 0, 1)), zoneOffset(Date.UTC(2025, 6, 1)));
  const civilOf = (ms: number) =>
    ms + (d.clock === 'local' ? zoneOffset(ms) : d.clock === 'utc' ? 0 : standard) * 60_000;
  const offsetText = (ms: number) => {
    const m = d.clock === 'local' ? zoneOffset(ms) : d.clock === 'utc' ? 0 : standard;
    if (twists.has('named zones')) return ` ${ZONE_NAMES[d.zone]![m > standard ? 1 : 0]}`;
    if (m === 0 && d.seed % 2 === 0) return 'Z';
    return `${m < 0 ? '-' : '+'}${String(Math.floor(Math.abs(m) / 60)).padStart(2, '0')}:${String(Math.abs(m) % 60).padStart(2, '0')}`;
  };
  const dateText = (civil: number): string =>
    twists.has('year, month, day')
      ? partsOf(civil).map(Number).join(SPLIT)
      : twistDate(d, dateOf(d, civil), civil, twists);
  const stampText = (ms: number): string => {
    if (d.dateForm === 'seconds') return String(ms / 1000);
    if (d.dateForm === 'milliseconds') return String(ms);
    const civil = civilOf(ms);
    if (d.dateForm === 'serial') return (civil / 86_400_000 + 25_569).toFixed(6).replace('.', d.decimal);
    if (d.dateForm === 'compact') return `${dateText(civil)}${timeOf('HH:MM', civil).replace(':', '')}`;
    const joined = `${dateText(civil)}${d.dateForm === 'iso T' ? 'T' : ' '}${timeOf(d.dateForm === 'iso T' ? 'HH:MM:SS' : d.hourForm, civil)}`;
    return d.clockSaid === 'offset' ? `${joined}${offsetText(ms)}` : joined;
  };

  const stampHeads = headsOf(d, words, pick);
  const extra = extraCells(d, pick);
  const valueHeads = d.what === 'both in a column' ? [] : written.map((c) => c.heading);
  let head: string[];
  if (d.layout === 'across') {
    const slots = 1440 / minutes;
    head = [
      stampHeads[0]!,
      ...Array.from({ length: slots + 60 / minutes }, (_, i) =>
        d.seed % 2 ? `H${i + 1}` : i < slots ? timeOf('HH:MM', i * minutes * 60_000) : `+${i - slots + 1}`,
      ),
    ];
    if (d.seed % 2 === 0) head = head.slice(0, slots + 1);
    const c = columns[0]!;
    c.record.days.forEach((day, i) => {
      const cells = day.readings.map((_, n) => cellOf(c, 0, i, n));
      if (d.seed % 2 === 1) while (cells.length < slots + 60 / minutes) cells.push('');
      else {
        acrossByClock(cells, day.start, i);
        return;
      }
      rows.push([dateText(Date.parse(day.date)), ...cells]);
    });
    function acrossByClock(cells: string[], start: number, i: number): void {
      // By the clock: the skipped hour is empty; the doubled one cannot be told, so such days are written in UTC-free order by count.
      const date = c.record.days[i]!.date;
      if (cells.length === slots) rows.push([dateText(Date.parse(date)), ...cells]);
      else if (cells.length < slots) {
        const before = zoneOffset(start);
        const change = c.record.days[i]!.readings.findIndex(({ at }) => zoneOffset(at) !== before);
        cells.splice(change, 0, ...Array<string>(slots - cells.length).fill(''));
        rows.push([dateText(Date.parse(date)), ...cells]);
      } else rows.push([dateText(Date.parse(date)), ...cells]);
    }
  } else {
    head = [...stampHeads];
    const counters = columns.map((_, i) => 1000 + 137 * i);
    const stepRows: { at: number; end: number; day: number; n: number }[] = [];
    if (d.minutes === 0) {
      for (let month = 0; month < 12; month++) {
        const first = toDayNumber(`2025-${String(month + 1).padStart(2, '0')}-01`) - FIRST_DAY;
        const next =
          month === 11 ? YEAR_DAYS : toDayNumber(`2025-${String(month + 2).padStart(2, '0')}-01`) - FIRST_DAY;
        stepRows.push({
          at: base.days[first]!.start,
          end: next === YEAR_DAYS ? base.days[YEAR_DAYS - 1]!.start + 86_400_000 : base.days[next]!.start,
          day: first,
          n: next,
        });
      }
    } else
      for (const { day, n } of flat) {
        const at = base.days[day]!.readings[n]!.at;
        stepRows.push({
          at,
          end:
            minutes < 1440 ? at + minutes * 60_000 : day + 1 < YEAR_DAYS ? base.days[day + 1]!.start : at + 86_400_000,
          day,
          n,
        });
      }
    const cellsAt = (row: { day: number; n: number }): string[] => {
      if (d.minutes !== 0) return written.map((c, i) => (d.measure === 'counter' ? '' : cellOf(c, i, row.day, row.n)));
      return written.map((c, i) => monthCell(c, i, row.day, row.n));
    };
    const monthCell = (c: Column, i: number, first: number, next: number): string => {
      let wh = 0;
      for (let day = first; day < next; day++) wh += c.record.days[day]!.readings[0]!.value;
      const { shown, kWh } = shownAs({ at: 0, value: wh, missing: false }, c.unit, 1440, d.zone, c.of);
      truths[i]!.byDay.set(c.record.days[first]!.date.slice(0, 7), kWh);
      if (i === 0) [shownNow, sumNow] = [shown, 0];
      sumNow += shown;
      return d.measure === 'counter' ? '' : say(twists.has('sent out below nought') ? -shown : shown, c.unit);
    };
    const hourly = hourNumbers(d, base);
    stepRows.forEach((row, k) => {
      const reading = d.minutes === 0 ? undefined : base.days[row.day]!.readings[row.n]!;
      if (reading?.missing && d.gaps === 'rows left out') return;
      const stamps = stampsOf(d, row, { stampText, dateText, civilOf, offsetText }, hourly, reading, k);
      if (d.measure === 'counter') {
        const shown = columns.map((c, i) => {
          const at = counters[i]!;
          const wh =
            d.minutes === 0 ? sumDays(c.record, row.day, row.n) : c.record.days[row.day]!.readings[row.n]!.value;
          const { shown: step, kWh } = shownAs({ at: 0, value: wh, missing: false }, c.unit, minutes, d.zone, c.of);
          counters[i] = at + step;
          const key = d.minutes === 0 ? c.record.days[row.day]!.date.slice(0, 7) : c.record.days[row.day]!.date;
          truths[i]!.byDay.set(key, (truths[i]!.byDay.get(key) ?? 0) + kWh);
          return say(at, c.unit);
        });
        rows.push([...stamps, ...shown, ...extra.cells(k)]);
        if (k === stepRows.length - 1)
          rows.push([
            ...stampsOf(
              d,
              { ...row, at: row.end, day: row.day + 1 },
              { stampText, dateText, civilOf, offsetText },
              hourly,
              undefined,
              k + 1,
            ),
            ...columns.map((c, i) => say(counters[i]!, c.unit)),
            ...extra.cells(k + 1),
          ]);
      } else if (d.what === 'both in a column') {
        const cells = cellsAt(row);
        for (const [i, c] of columns.entries()) rows.push([...stamps, c.heading, cells[i]!, ...extra.cells(k)]);
      } else {
        rows.push([...stamps, ...cellsAt(row), ...extra.cells(k)]);
        dayOf.push(d.minutes === 0 ? '' : base.days[row.day]!.date);
        shownOf.push(shownNow);
        togetherOf.push(sumNow);
      }
    });
    head.push(
      ...(d.what === 'both in a column'
        ? [pick(words.kind), inHeading(pick(['Value', words.use[1]!]), columns[0]!.unit)]
        : valueHeads),
      ...extra.heads,
    );
    if (d.unitPlace === 'column') {
      head.push(words.unit);
      const unit = columns[0]!.unit === 'hundred ft³' ? 'ccf' : columns[0]!.unit;
      for (const row of rows) row.push(unit);
    }
  }
  if (d.newestFirst) for (const list of [rows, dayOf, shownOf, togetherOf]) list.reverse();
  if (d.totals) {
    const sum = sumOf(shownOf.filter((shown) => !Number.isNaN(shown)));
    const signed = twists.has('sent out below nought') ? -sum : sum;
    const total = d.measure === 'counter' || sum === 0 ? count : signed;
    rows.push([
      words.total,
      ...head.slice(1).map((_, i) => (i === stampHeads.length - 1 ? say(total, columns[0]!.unit) : '')),
    ]);
  }
  const unitRow =
    d.unitPlace === 'row below' && d.layout !== 'across'
      ? [
          head.map((_, i) =>
            i >= stampHeads.length && i < stampHeads.length + written.length && d.what !== 'both in a column'
              ? unitWord(written[i - stampHeads.length]!.unit)
              : d.what === 'both in a column' && i === stampHeads.length + 1
                ? unitWord(written[0]!.unit)
                : '',
          ),
        ]
      : [];
  const twisted = twistSheet(
    d,
    {
      titles: titleLines(d, words, columns),
      heads: [head, ...unitRow],
      rows,
      dayOf,
      shown: shownOf,
      together: togetherOf,
      stamps: stampHeads.length,
      values: d.what === 'both in a column' ? 2 : written.length,
    },
    twists,
    (value) => say(value, columns[0]!.unit),
  );
  const table = [...twisted.heads, ...twisted.rows];
  const dateAt = twists.has('weekday beside') ? 1 : 0;
  const lines = [...twisted.titles, ...(twists.has('days across') ? transposed(table) : table)].map((cells) =>
    cells
      .map((cell) =>
        twists.has('a.m. and p.m.') ? cell.replace(/ ([AP])M$/, d.seed % 2 === 0 ? ' $1.M.' : '$1m') : cell,
      )
      .flatMap((cell, i) => (i !== dateAt || !twists.has('year, month, day') ? cell : splitDate(cell, d))),
  );
  const sheet: SheetLines | undefined =
    twists.has('days across') || twists.has('fixed width') || d.layout === 'across'
      ? undefined
      : {
          titles: lines.slice(0, twisted.titles.length),
          heads: lines.slice(twisted.titles.length, twisted.titles.length + twisted.heads.length),
          rows: lines.slice(twisted.titles.length + twisted.heads.length),
        };
  const quote = (cell: string) => (d.quoted || cell.includes(d.separator) || cell.includes('\n') ? `"${cell}"` : cell);
  const text = twists.has('fixed width')
    ? inFixedWidth(lines, d.lineEnd)
    : `${lines.map((cells) => cells.map(quote).join(d.separator)).join(d.lineEnd)}${d.lineEnd}`;
  if (!numbersSeen.clear) ambiguous.add('decimal');
  markAmbiguous(d, columns, text, ambiguous);
  for (const [twist, of] of OPEN) if (twists.has(twist)) for (const one of of) ambiguous.add(one);
  const isMean = d.measure === 'degrees';
  const [first] = truths;
  const orElse = twists.has('sum of rates')
    ? [{ of: first!.of, register: '', byMonth: d.minutes === 0, byDay: addedUp(truths.map(({ byDay }) => byDay)) }]
    : undefined;
  return {
    ...(sheet ? { sheet } : {}),
    columns: written.map(({ heading, of, unit }) => ({ heading, of, unit })),
    twists,
    valueColumn:
      Math.max(0, twisted.heads.at(-1 - unitRow.length)!.indexOf(written[0]!.heading)) +
      (twists.has('year, month, day') ? 2 : 0),
    ...(orElse ? { orElse } : {}),
    fileName: fileNameOf(d),
    bytes: encode(text, d.encoding),
    text,
    truths: truths.map(({ of, register, byDay, counts }) => ({
      of,
      register,
      byMonth: d.minutes === 0,
      byDay: isMean ? new Map([...byDay].map(([key, sum]) => [key, sum / (counts.get(key) ?? 1)])) : byDay,
    })),
    ambiguous,
  };
}

function addedUp(records: readonly ReadonlyMap<string, number>[]): Map<string, number> {
  const sum = new Map<string, number>();
  for (const byDay of records) for (const [key, kWh] of byDay) sum.set(key, (sum.get(key) ?? 0) + kWh);
  return sum;
}

/** Parts of a date on the way to columns of their own. */
const SPLIT = '\u0000';

function splitDate(cell: string, { language }: Dialect): string[] {
  if (cell.includes(SPLIT)) return cell.split(SPLIT);
  return WORDS[language].date.includes(cell) ? [...OTHER[language].ymd] : [cell, '', ''];
}

const transposed = (table: readonly (readonly string[])[]): string[][] =>
  table[0]!.map((_, column) => table.map((cells) => cells[column] ?? ''));

function inFixedWidth(lines: readonly (readonly string[])[], lineEnd: string): string {
  const widths: number[] = [];
  for (const cells of lines)
    if (cells.length > 1) for (const [i, cell] of cells.entries()) widths[i] = Math.max(widths[i] ?? 0, cell.length);
  return lines
    .map(
      (cells) =>
        `${cells
          .map((cell, i) => cell.padEnd(widths[i]!))
          .join('  ')
          .trimEnd()}${lineEnd}`,
    )
    .join('');
}

/** What a twist leaves open. */
const OPEN: readonly (readonly [Twist, readonly string[]])[] = [
  ['net', ['net', 'carrier']],
  ['own use beside', ['own use']],
  ['sent out below nought', ['net']],
  ['the same twice', ['column']],
  ['sum of rates', ['column']],
  ['named zones', ['clock']],
];

/** What was drawn less what was sent out, in one column. */
function netColumn([use, feed]: readonly Column[]): Column {
  const days = use!.record.days.map((day, i) => ({
    ...day,
    readings: day.readings.map((r, n) => ({ ...r, value: r.value - feed!.record.days[i]!.readings[n]!.value })),
  }));
  return { ...use!, record: { ...use!.record, days } };
}

const sumDays = (record: MadeRecord, first: number, next: number): number => {
  let wh = 0;
  for (let day = first; day < next; day++) wh += record.days[day]!.readings[0]!.value;
  return wh;
};

/** What is written, rounded as written, and what that is in kWh or °C. */
function shownAs(reading: Reading, unit: Unit, minutes: number, zone: string, of?: Of): { shown: number; kWh: number } {
  const round = (value: number) => Number(value.toFixed(DECIMALS[unit]));
  if (unit === '°C') return { shown: round(reading.value / 10), kWh: round(reading.value / 10) };
  if (unit === '°F') {
    const shown = round((reading.value / 10) * 1.8 + 32);
    return { shown, kWh: (shown - 32) / 1.8 };
  }
  const hours = minutes / 60;
  if (unit === 'W' || unit === 'kW') {
    const scale = unit === 'W' ? 1 : 1000;
    const shown = round(reading.value / hours / scale);
    return { shown, kWh: (shown * scale * hours) / 1000 };
  }
  const kWh = unit === 'm³' || unit === 'hundred ft³' ? gasKWh(zone, unit) : KWH[unit]!;
  const shown = round(reading.value / 1000 / kWh);
  return { shown, kWh: of === 'water' ? shown : shown * kWh };
}

function makeColumns(
  d: Dialect,
  words: (typeof WORDS)['en'],
  pick: <T>(list: readonly T[]) => T,
  inHeading: (word: string, unit: Unit) => string,
): Column[] {
  const minutes = d.minutes === 0 ? 1440 : d.minutes;
  const gaps = d.gaps !== 'none';
  const made = (what: 'use' | 'sun' | 'gas' | 'degrees', n = 0) =>
    makeRecord(d.zone, minutes, what, d.seed * 31 + n, gaps && n === 0);
  // Missing readings of one row are missing in all its columns.
  const column = (
    of: Of,
    register: string,
    word: string,
    what: 'use' | 'sun' | 'gas' | 'degrees',
    n = 0,
    unit = d.unit,
  ): Column => {
    const record = made(what, n);
    return {
      of,
      register,
      heading: inHeading(word, unit),
      unit,
      record: n === 0 ? record : alike(record, made('use')),
    };
  };
  const power = (word: string) => (d.measure === 'power' ? pick([`${pick(words.power)} ${word}`, word]) : word);
  const use = () =>
    d.measure === 'counter'
      ? d.carrierSaid === 'heading'
        ? `${pick(words.counter)} ${pick(words.electricity)}`
        : pick(words.counter)
      : d.measure === 'power'
        ? d.carrierSaid === 'heading'
          ? `${pick(words.power)} ${pick(words.electricity)}`
          : pick(words.power)
        : d.carrierSaid === 'heading'
          ? pick(words.electricUse)
          : pick(words.use);
  switch (d.what) {
    case 'use':
      return [column('use', '', use(), 'use')];
    case 'feed':
      return [column('feed', '', power(pick(words.feed)), 'sun')];
    case 'generation':
      return [column('generation', '', power(pick(words.generation)), 'sun')];
    case 'both': {
      const first = column(
        'use',
        '',
        d.measure === 'power'
          ? `${pick(words.power)} ${pick(words.electricUse)}`
          : pick([...words.electricUse, ...words.use]),
        'use',
      );
      return [first, column('feed', '', power(pick(words.feed)), 'sun', 1)];
    }
    case 'both in a column':
      return [
        { ...column('use', '', '', 'use'), heading: pick([...words.electricUse, ...words.use]) },
        { ...column('feed', '', '', 'sun', 1), heading: pick(words.feed) },
      ];
    case 'rates': {
      const rates = pick(words.rates);
      const before = d.measure === 'counter' ? pick([...words.counter, '']) : pick(words.use);
      return rates.map((rate, i) =>
        column(
          'use',
          rate,
          [before, d.carrierSaid === 'heading' ? pick(words.electricity) : '', rate].filter((w) => w !== '').join(' '),
          'use',
          i,
        ),
      );
    }
    case 'gas':
      return [
        column('gas', '', d.measure === 'counter' ? `${pick(words.counter)} ${words.gas[0]}` : pick(words.gas), 'gas'),
      ];
    case 'heat':
      return [
        column(
          'heat',
          '',
          d.measure === 'counter' ? `${pick(words.counter)} ${words.heat[0]}` : pick(words.heat),
          'gas',
        ),
      ];
    case 'heat and water': {
      const heat = column('heat', '', pick(words.heat), 'gas');
      const water = column('water', '', pick(words.water), 'gas', 1, 'm³');
      return d.seed % 2 ? [heat, water] : [water, heat];
    }
    case 'outdoor':
      return [column('outdoor', '', pick(words.outdoor), 'degrees')];
  }
}

const alike = (record: MadeRecord, first: MadeRecord): MadeRecord => ({
  ...record,
  days: record.days.map((day, i) => ({
    ...day,
    readings: day.readings.map((r, n) => ({ ...r, missing: first.days[i]!.readings[n]!.missing })),
  })),
});

const dates = new Map<number, readonly [string, string, string]>();
function partsOf(civil: number): readonly [string, string, string] {
  const day = Math.floor(civil / 86_400_000);
  const known = dates.get(day);
  if (known) return known;
  const parts = new Date(civil).toISOString().slice(0, 10).split('-') as [string, string, string];
  dates.set(day, parts);
  return parts;
}

function dateOf(d: Dialect, civil: number): string {
  const [y, m, day] = partsOf(civil);
  switch (d.dateForm) {
    case 'd.m.y':
      return `${day}.${m}.${y}`;
    case 'd/m/y':
      return `${day}/${m}/${y}`;
    case 'd-m-y':
      return `${day}-${m}-${y}`;
    case 'm/d/y':
      return `${Number(m)}/${Number(day)}/${y}`;
    case 'y/m/d':
      return `${y}/${m}/${day}`;
    case 'compact':
      return `${y}${m}${day}`;
    case 'named':
      return `${Number(day)} ${MONTHS[d.language][Number(m) - 1]} ${y}`;
    default:
      return `${y}-${m}-${day}`;
  }
}

function timeOf(form: Dialect['hourForm'], civil: number): string {
  const minute = (((civil / 60_000) % 1440) + 1440) % 1440;
  const two = (n: number) => (n < 10 ? `0${n}` : String(n));
  const [h, m] = [two(Math.floor(minute / 60)), two(minute % 60)];
  switch (form) {
    case 'HH:MM:SS':
      return `${h}:${m}:00`;
    case 'H:MM':
      return `${Number(h)}:${m}`;
    case 'HH.MM':
      return `${h}.${m}`;
    case 'HHhMM':
      return `${h}h${m}`;
    case '12 hours':
      return `${Number(h) % 12 || 12}:${m} ${Number(h) < 12 ? 'AM' : 'PM'}`;
    default:
      return `${h}:${m}`;
  }
}

function headsOf(d: Dialect, words: (typeof WORDS)['en'], pick: <T>(list: readonly T[]) => T): string[] {
  const utc = d.clockSaid === 'heading' ? ' (UTC)' : '';
  if (d.minutes === 0 && d.layout === 'stamp') return [pick([...words.month, words.date[0]!])];
  if (d.minutes === 1440) return [pick(words.date)];
  switch (d.layout) {
    case 'date and time':
      return [words.date[0]!, d.side === 'end' ? pick([words.time[0]!, words.end[0]!]) : pick([...words.time])];
    case 'date and hour':
      return [words.date[0]!, pick(words.hour.filter((w) => d.hours !== 'from nought' || !/end/i.test(w)))];
    case 'start and end':
      return [`${pick(words.start)}${utc}`, `${pick(words.end)}${utc}`];
    case 'across':
      return [words.date[0]!];
    default:
      return [
        `${d.side === 'end' ? pick([...words.end, words.stamp[0]!]) : d.measure === 'counter' ? pick(words.stamp) : pick([...words.stamp, ...words.start])}${utc}`,
      ];
  }
}

interface Texts {
  readonly stampText: (ms: number) => string;
  readonly dateText: (civil: number) => string;
  readonly civilOf: (ms: number) => number;
  readonly offsetText: (ms: number) => string;
}

function stampsOf(
  d: Dialect,
  row: { at: number; end: number; day: number; n: number },
  t: Texts,
  hourly: ReadonlyMap<number, number>,
  reading: Reading | undefined,
  _k: number,
): string[] {
  const local = (ms: number) => ms + offsetMinutes(d.zone, ms) * 60_000;
  if (d.minutes === 0) {
    const first = local(row.at);
    if (d.layout === 'start and end') {
      const last = d.seed % 3 === 0 ? local(row.end) : local(row.end) - 86_400_000;
      return [t.dateText(first), t.dateText(last)];
    }
    if (d.clockSaid === 'offset')
      return [`${new Date(first).toISOString().slice(0, 19)}${offsetOfZone(d.zone, row.at)}`];
    if (d.measure === 'counter') return [t.dateText(first)];
    if (d.dateForm === 'named')
      return [`${MONTHS[d.language][new Date(first).getUTCMonth()]} ${new Date(first).getUTCFullYear()}`];
    if (d.dateForm === 'iso') return [new Date(first).toISOString().slice(0, 7)];
    return [t.dateText(first)];
  }
  if (d.minutes === 1440) return [t.dateText(local(row.at))];
  if (d.layout === 'start and end') return [t.stampText(row.at), t.stampText(row.end)];
  const shown = d.side === 'end' ? row.end : row.at;
  if (d.layout === 'date and time') {
    const civil = t.civilOf(shown);
    if (d.midnight24 && d.side === 'end' && civil % 86_400_000 === 0)
      return [
        t.dateText(civil - 86_400_000),
        timeOf(d.hourForm === '12 hours' ? 'HH:MM' : d.hourForm, 0).replace(/^0?0/, '24'),
      ];
    return [t.dateText(civil), timeOf(d.hourForm, civil)];
  }
  if (d.layout === 'date and hour') return [t.dateText(local(row.at)), String(hourly.get(reading!.at))];
  return [t.stampText(shown)];
}

function offsetOfZone(zone: string, ms: number): string {
  const m = offsetMinutes(zone, ms);
  return `${m < 0 ? '-' : '+'}${String(Math.floor(Math.abs(m) / 60)).padStart(2, '0')}:${String(Math.abs(m) % 60).padStart(2, '0')}`;
}

/** Number of each reading in its day: counted on, or as the clock names the hour. */
function hourNumbers(d: Dialect, record: MadeRecord): Map<number, number> {
  const numbers = new Map<number, number>();
  if (d.layout !== 'date and hour') return numbers;
  for (const day of record.days)
    day.readings.forEach(({ at }, n) => {
      const local = (at + offsetMinutes(d.zone, at) * 60_000 - Date.parse(day.date)) / 60_000 / record.minutes;
      numbers.set(at, d.hours === 'counted' ? n + 1 : d.hours === 'by the clock' ? local + 1 : local);
    });
  return numbers;
}

function extraCells(d: Dialect, pick: <T>(list: readonly T[]) => T) {
  const words = WORDS[d.language];
  const makers: { head: string; cell: (k: number) => string }[] = [];
  const customer = pick(['00441277', 'K-20117', 'DE0001']);
  for (const extra of d.extras) {
    if (extra === 'customer') makers.push({ head: pick(words.customer), cell: () => customer });
    if (extra === 'meter') makers.push({ head: pick(words.meter), cell: () => '7712345' });
    if (extra === 'cost') {
      // Of a half-hour a few hundredths, of a month as many times more: a price that somebody may pay.
      const halfHours = d.minutes === 0 ? 1440 : d.minutes / 30;
      const cost = (k: number) => (((k % 37) / 100 + 0.02) * halfHours).toFixed(2).replace('.', d.decimal);
      makers.push({ head: pick(words.cost), cell: cost });
    }
  }
  if (d.quality) {
    const [good, estimated] = [pick(words.actual), pick(words.estimated)];
    makers.push({ head: pick(words.quality), cell: (k) => (d.minutes !== 0 && k % 97 === 5 ? estimated : good) });
  }
  return { heads: makers.map(({ head }) => head), cells: (k: number) => makers.map(({ cell }) => cell(k)) };
}

function titleLines(d: Dialect, words: (typeof WORDS)['en'], columns: readonly Column[]): string[][] {
  const lines = words.titles
    .slice(0, d.titles)
    .map((line) => (d.titleCells ? line.split(/(?<=:) | - | to | au | til | t\/m /) : [line]));
  if (d.unitPlace === 'title')
    lines.push([`${words.unit}: ${columns[0]!.unit === 'hundred ft³' ? 'ccf' : columns[0]!.unit}`]);
  if (d.layout === 'across') lines.push([columns[0]!.heading]);
  if (d.clockSaid === 'title')
    lines.push([
      {
        en: 'All times are in UTC',
        de: 'Alle Zeiten in UTC',
        fr: 'Heures en UTC',
        es: 'Horas en UTC',
        it: 'Orari in UTC',
        nl: 'Tijden in UTC',
        da: 'Tider i UTC',
      }[d.language],
    ]);
  return lines;
}

const FILE_SAYS: Readonly<Record<Of, Readonly<Record<string, string>>>> = {
  use: {
    en: 'electricity-2025.csv',
    de: 'Stromverbrauch 2025.csv',
    fr: 'electricite_2025.csv',
    es: 'electricidad-2025.csv',
    it: 'energia-elettrica-2025.csv',
    nl: 'stroomverbruik-2025.csv',
    da: 'elforbrug 2025.csv',
  },
  feed: {},
  generation: {},
  gas: {},
  heat: {},
  water: {},
  outdoor: {},
};
const fileNameOf = (d: Dialect): string =>
  d.carrierSaid === 'file' && ['use', 'rates', 'both', 'both in a column'].includes(d.what)
    ? FILE_SAYS.use[d.language]!
    : d.fileName;

function markAmbiguous(d: Dialect, columns: readonly Column[], text: string, ambiguous: Set<string>): void {
  if (d.unitPlace === 'nowhere') ambiguous.add('unit');
  if (columns.some((c) => c.unit === 'm³' || c.unit === 'hundred ft³')) ambiguous.add('calorific');
  if (
    ['use', 'rates', 'both', 'both in a column'].includes(d.what) &&
    (d.carrierSaid === 'nowhere' || (d.carrierSaid === 'heading' && d.measure !== 'energy' && d.what !== 'use'))
  )
    ambiguous.add('carrier');
  if (d.what === 'both' || d.what === 'both in a column') ambiguous.add('carrier');
  const isFine = d.minutes > 0 && d.minutes < 1440;
  const winter = Math.min(offsetMinutes(d.zone, Date.UTC(2025, 0, 1)), offsetMinutes(d.zone, Date.UTC(2025, 6, 1)));
  const summer = Math.max(offsetMinutes(d.zone, Date.UTC(2025, 0, 1)), offsetMinutes(d.zone, Date.UTC(2025, 6, 1)));
  if (isFine && d.clockSaid === 'nowhere' && ((d.clock !== 'local' && winter !== 0) || winter === summer))
    ambiguous.add('clock');
  if (d.layout === 'across') ambiguous.add('clock');
  // Twelve readings under no word for one may be amounts that rise.
  if (d.measure === 'counter' && d.minutes === 0) ambiguous.add('counter');
  // Whole days of local ends may be whole days of starts by UTC.
  if (isFine && d.clock !== 'local' && d.layout === 'stamp') ambiguous.add('side');
  if (d.minutes === 0 && /\/|-|\./.test(d.dateForm) && ['d/m/y', 'd-m-y', 'd.m.y', 'm/d/y'].includes(d.dateForm))
    ambiguous.add('date order');
  if (d.minutes === 0 && d.layout === 'stamp') ambiguous.add('period side');
  // A title "Export" may be what was done with the file.
  if (d.what === 'feed' && /^\W*Export\W*$/m.test(text))
    for (const one of ['carrier', 'direction-asked']) ambiguous.add(one);
  if (text === '') ambiguous.add('nothing');
}

function encode(text: string, encoding: Dialect['encoding']): Uint8Array {
  if (encoding === 'utf-16') {
    const bytes = Buffer.from(`\uFEFF${text}`, 'utf16le');
    return new Uint8Array(bytes);
  }
  if (encoding === 'latin-1' && [...text].every((letter) => letter.charCodeAt(0) < 256))
    return new Uint8Array(Buffer.from(text, 'latin1'));
  return new TextEncoder().encode(encoding === 'utf-8 mark' ? `\uFEFF${text}` : text);
}

export const monthOfDay = (date: string): string => toCivilDate(toDayNumber(date)).slice(0, 7);
