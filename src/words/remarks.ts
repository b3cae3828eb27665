/**
 * The sentence for each thing that intake remarks: file, line, what was found, what is expected, what to do.
 * A code without a sentence of its own does not compile.
 */
import type { RemarkCode } from '../intake/remark-codes.ts';
import { addDays, toDayNumber } from '../model/calendar/civil.ts';
import type { Remark } from '../model/evidence/evidence.ts';
import { longDate } from './numbers.ts';

type Sentence = (r: Remark) => string;

const at = (r: Remark): string => (r.row === undefined ? r.file : `Line ${r.row} of ${r.file}`);
const count = (r: Remark): number => r.count ?? 1;
const plural = (n: number, one: string, many = `${one}s`): string =>
  `${n.toLocaleString('en-GB')} ${n === 1 ? one : many}`;
const rows = (r: Remark): string => plural(count(r), 'row');
const readings = (r: Remark): string => plural(count(r), 'reading');
const column = (r: Remark): string => (r.column === undefined ? 'the column' : `column "${r.column}"`);
const quoted = (text: string | undefined): string => (text === undefined || text === '' ? 'nothing' : `"${text}"`);
const kWh = (value: number): string => `${Math.abs(Math.round(value * 10) / 10).toLocaleString('en-GB')} kWh`;
const about = (r: Remark): string => (r.effectKWh === undefined ? '' : `, about ${kWh(r.effectKWh)}`);
/** "and 12 more lines like it" where one remark stands for many. */
const alike = (r: Remark): string =>
  r.count === undefined || r.count < 2 ? '' : ` There are ${r.count} lines like it.`;
/** The time or day of one row. */
const when = (r: Remark): string => (r.from === undefined ? '' : ` (${r.from})`);
/** " on 3 March 2025" or " between 3 March 2025 and 9 March 2025" of stamps that both count. */
const spanOfDays = (from: string, to: string): string =>
  from.slice(0, 10) === to.slice(0, 10)
    ? ` on ${longDate(from.slice(0, 10))}`
    : ` between ${longDate(from.slice(0, 10))} and ${longDate(to.slice(0, 10))}`;
const span = (r: Remark): string => `from ${r.from ?? '?'} to ${r.to ?? '?'}`;

/** "1 March 2025 to 4 March 2025" of days whose end is exclusive; "between" where days of others lie among them. */
function days(r: Remark): string {
  if (r.from === undefined || r.to === undefined) return 'on days not named';
  const last = addDays(r.to, -1);
  if (last === r.from) return longDate(r.from);
  const whole = toDayNumber(r.to) - toDayNumber(r.from) === count(r);
  return whole ? `${longDate(r.from)} to ${longDate(last)}` : `between ${longDate(r.from)} and ${longDate(last)}`;
}
const moreOrLess = (r: Remark): string =>
  r.effectKWh === undefined ? '' : `: ${kWh(r.effectKWh)} ${r.effectKWh < 0 ? 'less' : 'more'}`;

/** A common slip made plain: "1O.5 (a letter O)". */
function foundNumber(text: string | undefined): string {
  if (text === undefined) return 'nothing';
  if (/\d[oO]|[oO]\d/.test(text)) return `${text} (with a letter O)`;
  if (/\d[lI]|[lI]\d/.test(text)) return `${text} (with a letter l)`;
  return `"${text}"`;
}

const FOREIGN: Record<string, string> = {
  spreadsheet: 'a spreadsheet workbook. Open it and save the sheet as CSV, then import that',
  'old spreadsheet': 'a workbook or document of an older office program. Open it and save it as CSV, then import that',
  archive: 'a packed archive. Unpack it first, then import the file inside',
  PDF: 'a PDF. Ask for the data as CSV, or type the figures in',
  picture: 'a picture. Type the figures in',
  'web page': 'a web page. Look there for a download as CSV',
  XML: 'an XML file, but not of the open standard for meter data. Ask for the data as CSV',
  database: 'a database. Export the table as CSV, then import that',
};

const SENTENCES: Record<RemarkCode, Sentence> = {
  'file-empty': (r) => `${r.file} is empty. A table of dates and numbers is expected. Download it again.`,
  'file-too-large': (r) =>
    `${r.file} has ${r.found}; we read ${r.expected}. Export a shorter span, or one meter at a time.`,
  'file-too-many-cells': (r) => `${r.file} has more cells than we can hold. Export a shorter span, or fewer columns.`,
  'file-foreign': (r) => `${r.file} is ${FOREIGN[r.found ?? ''] ?? 'not a text file. Save the data as CSV'}.`,
  'file-binary': (r) => `${r.file} is not text. A CSV file is expected. Save the data as CSV and import that.`,
  'no-shape-fits': (r) =>
    `${r.file} fits no layout we know (${r.expected}). Its columns are ${r.found}. Choose the layout and the columns yourself, or export the data another way.`,
  'no-dates': (r) =>
    `${r.file} has no column of dates. Its columns are ${r.found}. Each row needs a date, such as 2025-03-01 or 01/03/2025.`,
  'no-numbers': (r) =>
    `${r.file} has dates but no column of numbers beside them. Choose the column that holds the readings.`,
  'no-readable-rows': (r) =>
    `No row of ${r.file} gave a usable reading. Look at the rows below and choose the right columns.`,
  'comma-inside-numbers': (r) =>
    `${at(r)} reads ${quoted(r.found)}: a comma separates both the columns and the decimals. Export the file with semicolons, or with decimal points.`,
  'encoding-taken': (r) => `${r.file} is not in UTF-8. It was read as Latin-1; check any accents and signs.`,

  'layout-remembered': (r) =>
    `${r.file} has the headings of an earlier file, so what you chose for that was taken here too: ${r.found}. Look whether it holds for this file.`,

  'layout-remembered-bare': (r) =>
    `${r.file} has no headings, but its columns are written as in an earlier file, so what you chose for that was taken here too: ${r.found}. Look whether it holds for this file.`,

  'preamble-skipped': (r) =>
    `${r.file} begins with ${plural(count(r), 'title line')} (${quoted(r.found)}), which ${count(r) === 1 ? 'was' : 'were'} skipped.`,
  'totals-skipped': (r) => `${at(r)} is a row of totals (${quoted(r.found)}) and was skipped.${alike(r)}`,
  'heading-repeated': (r) => `${at(r)} repeats the headings and was skipped.${alike(r)}`,
  'row-skipped': (r) =>
    `${at(r)} has no date (${quoted(r.found)}) and was skipped. Add a date if the row matters.${alike(r)}`,
  'row-cut-off': (r) =>
    `${at(r)} is cut off (${quoted(r.found)}). The row was left out. Download the file again if it should go on.`,
  'newest-first': (r) => `${r.file} has the newest row first. The rows were put in order of time.`,
  'not-in-order': (r) => `${r.file} is not in order of time in ${plural(count(r), 'place')}. The rows were sorted.`,

  'date-impossible': (r) =>
    `${at(r)}: ${quoted(r.found)} in ${column(r)} is no day of the calendar. The row was left out. Correct the date in the file.${alike(r)}`,
  'date-unreadable': (r) =>
    `${at(r)}: ${quoted(r.found)} in ${column(r)} is not a date we can read. The row was left out. Write it as 2025-03-01.${alike(r)}`,
  'date-order-asked': (r) =>
    `${at(r)}: ${quoted(r.found)} may be ${r.expected === 'day first' ? 'day first or month first' : 'month first or day first'}, and no date in ${column(r)} tells. We took it as ${r.expected}. Choose the other if the dates look wrong.`,
  'date-order-mixed': (r) =>
    `${at(r)}: ${quoted(r.found)} does not fit the other dates in ${column(r)}, which are ${r.expected}. ${rows(r)} of this kind. Correct the file or choose the order.`,
  'dates-are-serials': (r) => `${r.file} has dates as day numbers of a spreadsheet. They were turned into dates.`,
  'after-today': (r) =>
    `${at(r)}: ${quoted(r.found)} is later than today, ${r.expected}. ${rows(r)} of this kind. Check the order of day and month.`,

  'number-unreadable': (r) =>
    `${at(r)}: the reading is ${foundNumber(r.found)}; ${r.expected ?? 'a number'} is expected. It counts as missing. Correct the file or leave the row out.${alike(r)}`,
  'decimal-asked': (r) =>
    `${at(r)}: ${quoted(r.found)} in ${column(r)} may have a decimal sign or a thousands sign. We took "${r.expected}" for the decimal sign. Choose the other if the total looks wrong.`,
  'decimal-mixed': (r) =>
    `${at(r)}: ${quoted(r.found)} is written unlike the other numbers in ${column(r)}, whose decimal sign is "${r.expected}". Correct the file or choose the sign.`,
  'decimal-comma': (r) => `${r.file} writes decimals with a comma (${column(r)}). They were read so.`,

  'unit-guessed': (r) =>
    `${r.file} does not say the unit of ${column(r)}. It has ${r.found || 'amounts'}, so we took ${r.expected}. A home uses 5 to 60 kWh of electricity a day. Confirm or choose the unit.`,
  'unit-doubtful': (r) =>
    `${column(r)} of ${r.file} says ${r.expected}, which makes ${r.found}. A home uses 5 to 60 kWh of electricity a day and seldom over 300 kWh of gas. Confirm or choose the unit.`,
  'unit-mixed': (r) =>
    `${at(r)}: ${column(r)} reads ${r.found}, where the column is in ${r.expected}. It counts as missing. Write it in ${r.expected} too.${alike(r)}`,
  'unit-not-of-carrier': (r) =>
    `${column(r)} of ${r.file} says ${r.found}, which does not go with what it is of. We took ${r.expected}. Choose what the file is of, or its unit.`,
  'carrier-guessed': (r) =>
    `${r.file} does not say what was metered. We took it for ${r.expected}. Confirm or choose the fuel.`,
  'columns-left-out': (r) =>
    `${r.file}: we read ${r.expected} and left out ${r.found}. Choose another column if that is wrong.`,
  'columns-not-understood': (r) =>
    `${r.file}: we do not know what ${r.found} ${count(r) === 1 ? 'means, so it was' : 'mean, so they were'} left out. Nothing else is missing.`,
  'standing-taken': (r) =>
    `${r.file}: ${column(r)} does not say its unit. We took ${r.expected}. Compare it with the paper.`,
  'several-series': (r) => `${r.file} holds ${count(r)} meters or registers (${r.found}). Each is kept by itself.`,
  'calorific-assumed': (r) =>
    `${r.file} gives gas by volume without its calorific value. We took ${r.expected} MJ per m³. Give the value printed on the bill.`,

  'clock-from-offset': (r) =>
    r.found === 'utc'
      ? `${r.file} writes its times in UTC. They were turned into local time.`
      : `${r.file} writes the offset from UTC beside its times. It was used as written.`,
  'clock-utc': (r) =>
    r.found === 'heading'
      ? `${r.file} says that its times are in UTC. They were turned into local time.`
      : `${r.file} does not change its clocks in March and October, so its times are UTC. They were turned into local time.`,
  'clock-assumed': (r) =>
    `${r.file} does not say whether its times are local or UTC, and no change of the clocks lies in it. We took local time. Choose UTC if the evening peak comes an hour early.`,
  'clock-asked': (r) =>
    `${r.file} does not change its clocks in spring and autumn. It may be in winter time or in UTC; we took winter time. Choose the other if that is wrong.`,
  'clock-mixed': (r) =>
    `${r.file} changes its clocks on some of the ${count(r)} change days and not on others. We took ${r.expected === 'local' ? 'local time' : 'UTC'}. Look at those days and choose.`,
  'clock-autumn-asked': (r) =>
    `${r.file} has the hour that October doubles only once. Its times may be UTC, or local with an hour lost. We took UTC. Choose local time if that is wrong.`,
  'spring-hour-filled': (r) =>
    `${r.file} has readings in the hour that the clocks skip in March. They were left out, since that hour did not exist.`,
  'autumn-hour-once': (r) => `${r.file} has the doubled hour of October only once. The second hour counts as missing.`,
  'stamp-side-asked': (r) =>
    `${r.file} does not say whether ${column(r)} names the start or the end of each reading. We took the ${r.expected}. Choose the other if that is wrong.`,
  'stamp-is-end': (r) => `${column(r)} of ${r.file} names the end of each reading. It was read so.`,
  'interval-uneven': (r) =>
    `${r.file} has most rows ${r.found} apart, which does not divide a day. Readings every 5, 10, 15, 30 or 60 minutes are expected. Export the data anew, or as daily values.`,
  'stamp-off-grid': (r) =>
    `${at(r)} does not stand on a step of ${r.expected}. ${readings(r)} went into the step they fall in.`,

  gap: (r) =>
    `${r.file} has nothing ${span(r)}: ${plural(count(r), 'reading')} missing${about(r)}. They are not taken for nought.`,
  'gaps-more': (r) =>
    `${r.file} has ${plural(count(r), 'more gap', 'more gaps')}, each shorter than those listed${about(r)} in all.`,
  'duplicate-same': (r) =>
    `${at(r)}${when(r)} repeats a reading with the same value. It counts once. ${rows(r)} of this kind.`,
  'duplicate-different': (r) =>
    `${at(r)}${when(r)} gives another value for a time that had one. The later row counts. ${rows(r)} of this kind${about(r)} of difference. Check which is right.`,
  estimated: (r) =>
    `${r.file} marks ${plural(count(r), 'row')} as estimated${r.from && r.to ? spanOfDays(r.from, r.to) : ''}${about(r)}. They are kept with that mark. Actual readings would make the answer surer.`,
  negative: (r) =>
    `${at(r)}${when(r)}: ${column(r)} reads ${r.found}, and use cannot be negative. It counts as missing. If this is export, choose that in the preview.${alike(r)}`,
  spike: (r) =>
    `${at(r)}${when(r)}: ${column(r)} reads ${r.found}; ${r.expected} is what a house can draw. It counts as missing. Check the unit and the row.${alike(r)}`,
  frozen: (r) =>
    `${r.file} shows the same value, ${r.found}, in ${readings(r)} ${span(r)}${about(r)} in all. The meter may have stood still. Check those days.`,
  'zero-run': (r) =>
    `${r.file} shows nought in ${readings(r)} ${span(r)}${r.effectKWh === undefined ? '' : `, where ${kWh(r.effectKWh)} would be usual`}. The supply or the meter may have been off. Check those days.`,
  'temperature-absurd': (r) =>
    `${at(r)}${when(r)}: ${column(r)} reads ${r.found}, which no weather here reaches. It counts as missing. Check the unit.${alike(r)}`,

  filled: (r) =>
    `${r.file}: ${readings(r)} missing ${span(r)} were filled with the mean of the same weekday, ${kWh(r.effectKWh ?? 0)} in all. They count as estimated.`,
  'fill-left-open': (r) =>
    `${r.file}: ${plural(count(r), 'missing reading')} could not be filled, since ${r.expected}. They stay missing.`,
  'overlap-same': (r) =>
    `${r.file} repeats ${plural(count(r), 'day')} that ${r.found} had, ${days(r)}, with the same values. They count once.`,
  'overlap-different': (r) =>
    `${r.file} says something else than ${r.found} of ${plural(count(r), 'day')}, ${days(r)}${moreOrLess(r)}. The newer import counts. Take it back if the older is right.`,

  'to-inclusive-asked': (r) =>
    `${at(r)}: does the bill include its last day, ${r.found}? We took it as ${r.expected}. Choose the other if bills overlap by a day.`,
  'period-overlap': (r) =>
    `${at(r)} overlaps the bill before it ${span(r)}, ${plural(count(r), 'day')}${about(r)}. Correct a date, or leave one of the bills out.`,
  'period-hole': (r) =>
    `${r.file} has no bill ${span(r)}, ${plural(count(r), 'day')}${about(r)}. Add the missing bill if you have it.`,
  'period-backwards': (r) =>
    `${at(r)} ends (${r.to}) before it begins (${r.from}). The row was left out. Correct its dates.${alike(r)}`,
  'months-by-first-day': (r) =>
    r.expected === 'ends'
      ? `${r.file} names each month by its last day. Each row was read as that whole month.`
      : `${r.file} names each month by its first day. Each row was read as that whole month.`,
  'period-by-end-date': (r) =>
    `${at(r)} (${quoted(r.found)}) has no ${r.expected === 'end' ? 'date before it' : 'date after it'}, so its period is not known. The row was left out.`,
  'period-side-asked': (r) =>
    `${r.file} has one date a row. We took ${column(r)} for the ${r.expected} of each period. Choose the other if that is wrong.`,
  'delivery-rule': (r) =>
    `${r.file}: each delivery is taken to replace what was burnt since the one before. So the first, ${r.found} on ${r.from}, only starts the count.`,
  'delivery-alone': (r) =>
    `${r.file} has ${r.from ? 'one delivery only' : 'no delivery'}. Two are needed to know how long the fuel lasted. Add the delivery before it.`,
  'register-rollover': (r) =>
    `${at(r)}: the counter went past its end (${r.found}) and began again at nought. The use between was kept${about(r)}.${alike(r)}`,
  'register-exchange': (r) =>
    `${at(r)}: the counter fell (${r.found})${r.from ? ` between ${r.from} and ${r.to}` : ''}, so the meter was changed or a figure is wrong. The use between is not known. Add the last reading of the old meter.${alike(r)}`,
  'register-alone': (r) => `${r.file} has too few readings of the counter. Two are needed to know what was used.`,

  'estimated-merged': (r) =>
    `${at(r)} was estimated, and a later actual reading put it right. The rows ${span(r)} are read as one period, ${kWh(r.effectKWh ?? 0)} in all.${alike(r)}`,
  'cost-of-several': (r) =>
    `${r.file}: ${column(r)} is one amount for several registers, ${r.found} in all. It cannot be shared out, so it was left out.`,

  'xml-broken': (r) => `${at(r)} is no valid XML (${r.found || 'it ends too early'}). Download the file again.`,
  'xml-doctype': (r) =>
    `${at(r)} declares a document type, which meter data has no need of and which can do harm. The file was not read. Download it again from the source.`,
  'espi-empty': (r) =>
    `${r.file} is meter data in the open XML standard, but none of its ${plural(r.count ?? 0, 'reading')} could be used. Ask for electricity or gas in energy or volume.`,
  'espi-unlinked': (r) =>
    `${r.file} has ${plural(count(r), 'block')} of readings that no link ties to a meter. They are kept as a record of their own. Check its name.`,
  'espi-type-missing': (r) =>
    `${r.file} does not say the unit of ${r.column ? `"${r.column}"` : 'its readings'}, since its reading type is missing. We took ${r.expected}. Choose the unit.`,
  'espi-left-out': (r) =>
    `${r.file}: we left out ${r.column ? `"${r.column}"` : 'a record'}, since it is no energy we can use (${r.found}).${alike(r)}`,
  'espi-power': (r) =>
    `${r.file} gives ${r.column ? `"${r.column}"` : 'a record'} as power. Each value was taken as the mean over its interval.${alike(r)}`,
  'espi-net': (r) =>
    `${r.file} gives use less export in one record. We keep what was bought and what was sent out apart.`,
  'espi-coarser': (r) =>
    `${r.file} gives the same meter twice: "${r.column}" repeats "${r.found}" in longer steps. The finer one was kept.${alike(r)}`,
  'espi-no-length': (r) =>
    `${at(r)}: the reading spans no time (its value is ${r.found}), as happens when clocks change. It was left out.${alike(r)}`,
  'espi-long-reading': (r) =>
    `${at(r)}: the reading spans ${r.found} where the others span ${r.expected}. It was shared out evenly.${alike(r)}`,
  'espi-clock-asked': (r) =>
    `${r.file} should count in UTC, yet it skips the hours that local clocks skip. We took local time. Choose UTC if the evening peak comes an hour late.`,
  'espi-other-clock': (r) =>
    `${r.file} cuts its days by ${r.found}, not by the home's (${r.expected}). The days were kept as they were cut.`,
  'espi-currency': (r) => `${r.file} has costs that are not in pounds (${r.found}). They were left out.`,
  'espi-cost-left-out': (r) =>
    `${r.file} has a cost beside each reading, ${r.found} in all. Costs are kept for bills only, so they were left out.`,
  'espi-summary': (r) =>
    `${r.file} also holds ${plural(count(r), 'billing summary', 'billing summaries')}, which we do not read. Type the bill in if you need it.`,

  'workbook-broken': (r) =>
    `${r.file} is a damaged workbook (${r.found}). Open it, save it again, or save the sheet as CSV.`,
  'workbook-too-large': (r) =>
    `${r.file} unpacks to ${r.found}; we read ${r.expected}. Save the sheet you need as CSV.`,
  'workbook-locked': (r) => `${r.file} is locked or not an XLSX workbook. Save it without a password, or as CSV.`,
  'workbook-empty': (r) => `${r.file} has no sheet with rows in it. Save the data as CSV, or choose another file.`,
  'sheet-asked': (r) =>
    `${r.file} has ${plural(count(r), 'sheet')} with data (${r.found}). We read "${r.expected}". Choose another if that is wrong.`,
  'sheet-taken': (r) => `We read the sheet "${r.expected}" of ${r.file}.`,

  'epw-title': (r) =>
    `${at(r)} should end with the place and its clock; ${quoted(r.found)} is no number of ${r.expected}. Download the weather file again.`,
  'epw-years-mixed': (r) =>
    `${r.file} joins months of ${plural(count(r), 'year')} (${r.found}) into one typical year. It is no record of real days, so it cannot be set beside meter readings. Use a file of measured weather.`,
  'epw-place': (r) =>
    `${r.file} is the weather of ${r.found}, written in ${r.expected} all year. It was turned into local time.`,

  'registers-by-column': (r) =>
    `${r.file} tells its registers apart in ${column(r)} (${r.found}). Each is kept by itself, and export is never added to import.`,
  'heat-pump-taken': (r) =>
    `${r.file} has heat beside electricity, so ${column(r)} was taken for the heat pump's own meter. Choose another role if it is the whole house.`,

  'tariff-not-json': (r) =>
    `${at(r)} breaks the rules of JSON at “${r.found}” or just before it. Look for a comma, bracket or quotation mark too many or too few, or save the tariff as CSV.`,
  'tariff-wrong': (r) =>
    `${at(r)}: ${r.column === undefined ? 'the tariff' : r.column} is ${r.found === '' ? 'missing' : quoted(r.found)}; it must be ${r.expected}. Correct the file.`,
  'tariff-columns': (r) =>
    `${r.file} has no column "${r.expected}". A tariff file has the columns band, from, to, days, months and pence per kWh.`,
  'tariff-row': (r) => `${at(r)}: ${column(r)} is ${quoted(r.found)}; ${r.expected} is expected. Correct the row.`,
  'tariff-fuel-guessed': (r) => `${r.file} does not say which fuel it prices. We took ${r.expected}. Confirm it.`,
  'tariff-vat-guessed': (r) =>
    `${r.file} does not say whether its prices include VAT. We took them as including 5 % VAT. Confirm it.`,
};

const isKnown = (code: string): code is RemarkCode => Object.hasOwn(SENTENCES, code);

/** One remark in words; a code from elsewhere still names its file and line. */
export function remarkSentence(remark: Remark): string {
  const sentence = isKnown(remark.code)
    ? SENTENCES[remark.code](remark)
    : `${at(remark)}: ${remark.code.replaceAll('-', ' ')}.`;
  // A file's name keeps its own small letter.
  return sentence.startsWith('column') ? `C${sentence.slice(1)}` : sentence;
}
