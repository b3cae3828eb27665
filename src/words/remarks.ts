/**
 * The sentence for each thing that intake remarks: file, line, what was found, what is expected, what to do.
 * A code without a sentence of its own does not compile.
 */
import type { RemarkCode } from '../intake/terms/remark-codes.ts';
import { addDays, toDayNumber } from '../model/calendar/civil.ts';
import type { Remark } from '../model/shapes/evidence.ts';
import { tell } from '../model/shapes/told.ts';
import { capitalised, longDate } from './numbers.ts';
import { language, phrase, say, type Value } from './say.ts';
import { sayTold } from './say-told.ts';
import { carrierName } from './systems.ts';

/** Headings stand as they are written; "column 3" is our own name for a column without one. */
export const columnNames = (text = ''): string =>
  text.replaceAll(/\bcolumn (\d+)\b/g, (_, number: string) => say('column {number}', { number }));
/** 'column "Used"', or "column 3". */
const columnWords = (column: string): string =>
  /^column \d+$/.test(column) ? columnNames(column) : say('column "{name}"', { name: columnNames(column) });
const quoted = (text: string | undefined): string =>
  text === undefined || text === '' ? say('nothing') : say('"{text}"', { text });

/** A common slip made plain: "1O.5 (a letter O)". */
function numberFound(text: string | undefined): string {
  if (text === undefined) return say('nothing');
  if (/\d[oO]|[oO]\d/.test(text)) return say('{text} (with a letter O)', { text });
  if (/\d[lI]|[lI]\d/.test(text)) return say('{text} (with a letter l)', { text });
  return say('"{text}"', { text });
}

/** "2025-01-15 05:30" is "15 January 2025, 05:30"; what is no such stamp stays as it is. */
function stampWords(stamp = '?'): string {
  const [, day, time] = /^(\d{4}-\d{2}-\d{2})(?:[ T](\d{2}:\d{2}))?$/.exec(stamp) ?? [];
  if (day === undefined || Number.isNaN(Date.parse(day))) return stamp;
  return time === undefined ? longDate(day) : `${longDate(day)}, ${time}`;
}

/** "Berlin" of "Europe/Berlin". */
const zoneName = (zone = ''): string => zone.slice(zone.lastIndexOf('/') + 1).replaceAll('_', ' ');

/** "1 March 2025 to 4 March 2025" of days whose end is exclusive; "between" where days of others lie among them. */
function daysOf({ from, to, count = 1 }: Remark): string {
  if (from === undefined || to === undefined) return say('on days not named');
  const last = addDays(to, -1);
  if (last === from) return longDate(from);
  const gaps = { low: longDate(from), high: longDate(last) };
  return toDayNumber(to) - toDayNumber(from) === count
    ? say('{low} to {high}', gaps)
    : say('between {low} and {high}', gaps);
}

/** What the gaps of the sentences stand for. Dates are read only where a sentence has them: other stamps may be no dates. */
function gapsOf(remark: Remark): Readonly<Record<string, Value>> {
  const { file, row, column, found, expected, foundTold, expectedTold, from, to, effectKWh } = remark;
  const count = remark.count ?? 1;
  const energy = Math.abs(Math.round((effectKWh ?? 0) * 10) / 10).toLocaleString(language());
  return {
    file,
    /** Stands for the file too, with the line where there is one. */
    at: row === undefined ? file : say('Line {row} of {file}', { row: String(row), file }),
    column: column === undefined ? say('the column') : columnWords(column),
    field: column ?? say('the tariff'),
    /** A record by its column, or by its kind of energy where it has no name. */
    series: column === undefined ? carrierName(remark.carrier ?? '') : columnWords(column),
    record: column === undefined ? say('a record') : say('"{text}"', { text: column }),
    carrier: remark.carrier ?? 'none',
    hasName: column === undefined ? 'no' : 'yes',
    /** As it stands in the file. What is told is said as we say it, and not quoted. */
    found: foundTold ? sayTold(foundTold) : quoted(found),
    number: numberFound(found),
    words: sayTold(foundTold ?? found ?? ''),
    names: foundTold ? sayTold(foundTold) : columnNames(found),
    said: foundTold || found ? 'yes' : 'no',
    expected: sayTold(expectedTold ?? expected ?? tell('a-number')),
    expectedNames: expectedTold ? sayTold(expectedTold) : columnNames(expected),
    says: expectedTold || expected ? 'yes' : 'no',
    foundZone: zoneName(found),
    expectedZone: zoneName(expected),
    ofWeather: remark.carrier === 'outdoor-temperature' ? 'yes' : 'no',
    foundCode: found ?? '',
    expectedCode: expected?.split(' ')[0] ?? '',
    code: remark.code,
    count,
    from: stampWords(from),
    to: stampWords(to),
    hasDays: from === undefined ? 'no' : 'yes',
    get days() {
      return daysOf(remark);
    },
    /** Days of stamps that both count. */
    span: from === undefined || to === undefined ? 'none' : from.slice(0, 10) === to.slice(0, 10) ? 'day' : 'days',
    get firstDay() {
      return longDate(from!.slice(0, 10));
    },
    get lastDay() {
      return longDate(to!.slice(0, 10));
    },
    energy: `${energy} kWh`,
    effect: effectKWh === undefined ? 'none' : effectKWh < 0 ? 'less' : 'more',
    when: from === undefined ? '' : ` (${stampWords(from)})`,
    /** A sentence of its own, where one remark stands for many. */
    alike: count < 2 ? '' : ` ${say('There are {count} lines like it.', { count })}`,
  };
}

const FOREIGN: Readonly<Record<string, string>> = {
  spreadsheet: phrase('{file} is a spreadsheet workbook. Open it and save the sheet as CSV, then import that.'),
  'old spreadsheet': phrase(
    '{file} is a workbook of an older office program. Open it and save it as CSV, then import that.',
  ),
  'open spreadsheet': phrase('{file} is a spreadsheet workbook. Open it and save the sheet as CSV, then import that.'),
  archive: phrase('{file} is a packed archive. Unpack it first, then import the file inside.'),
  PDF: phrase('{file} is a PDF. Add it under Bills and readings, as a bill.'),
  picture: phrase(
    '{file} is a picture, and we do not read pictures. Ask for the bill as a PDF, or type the figures in.',
  ),
  document: phrase(
    '{file} is a document of a writing program. Print a bill to a PDF, and choose that. A table can be copied and pasted here.',
  ),
  'e-mail': phrase(
    '{file} is an e-mail. Open it, save the bill or file that comes with it, and choose that. If its text is the bill, print it to a PDF.',
  ),
  shortcut: phrase('{file} is only a link to something. Open it, download the bill or the readings, and choose that.'),
  'web page': phrase('{file} is a web page. Look there for a download as CSV, or print the bill to a PDF.'),
  XML: phrase('{file} is an XML file, but not of the open standard for meter data. Ask for the data as CSV.'),
  database: phrase('{file} is a database. Export the table as CSV, then import that.'),
};

const SENTENCES: Readonly<Record<RemarkCode, string>> = {
  'file-empty': phrase('{file} is empty: nothing stands in it. Download it again, or take the picture again.'),
  'file-too-large': phrase(
    '{file} has {words}; we read {expected}. Export each year by itself, half-hours instead of minutes, or one meter at a time.',
  ),
  'file-too-many-cells': phrase('{file} has more cells than we can hold. Export a shorter span, or fewer columns.'),
  'file-foreign': phrase('{file} is not a text file. Save the data as CSV.'),
  'file-binary': phrase(
    '{file} is not text, nor a picture or PDF that is read here. Save readings as CSV, and a bill as PDF, JPEG or PNG.',
  ),
  'no-shape-fits': phrase(
    '{file} fits no layout we know ({expected}). Its columns are {names}. Choose the layout and the columns yourself, or export the data another way.',
  ),
  'prices-only': phrase(
    '{file} has prices or costs ({names}) and no amounts that were used. A tariff is opened under “Prices”, with “Open a tariff file”. If amounts stand here, name their column, such as “kWh used”.',
  ),
  'no-rows': phrase('{file} has headings ({names}) and no row below them. Export it again, for days with readings.'),
  'no-table': phrase(
    '{file} is no table: we find only one column in it. Export the readings as CSV or as a spreadsheet, with a date and an amount in each row.',
  ),
  'no-dates': phrase(
    '{file} has no column of dates. Its columns are {names}. Each row needs a date, such as 2025-03-01 or 01/03/2025.',
  ),
  'no-year': phrase('{file} names months or weeks without their year. Add a column “Year” with the year of each row.'),
  'no-numbers': phrase(
    '{file} has dates but no column of numbers beside them. Choose the column that holds the readings.',
  ),
  'no-readable-rows': phrase(
    'No row of {file} gave a usable reading. Look at the rows below and choose the right columns.',
  ),
  'rows-undated': phrase(
    '{count} rows of {file} have numbers but no date, too many to leave out. Give each row its own date.',
  ),
  'tables-beside': phrase(
    '{file} has two tables side by side, each with its own dates. Save each table as a file of its own.',
  ),
  'weekdays-across': phrase(
    '{file} has a column for each day of the week, and no dates that say which week. Write the date of its first day before each week, or give each day a row.',
  ),
  'rows-of-seasons': phrase(
    '{file} names its rows by seasons or by years such as “{found}”, and no first and last day of them. Write the first day of each row in a column “From” and its last in a column “To”.',
  ),
  'comma-inside-numbers': phrase(
    '{at} reads {found}: a comma separates both the columns and the decimals. Export the file with semicolons, or with decimal points.',
  ),
  'encoding-taken': phrase('{file} is not in UTF-8. It was read as Latin-1; check any accents and signs.'),
  'layout-remembered': phrase(
    '{file} has the headings of an earlier file, so what you chose for that was taken here too: {names}. Look whether it holds for this file.',
  ),
  'layout-remembered-bare': phrase(
    '{file} has no headings, but its columns are written as in an earlier file, so what you chose for that was taken here too: {names}. Look whether it holds for this file.',
  ),
  'preamble-skipped': phrase(
    '{file} begins with {count, plural, one {# title line ({found}), which was} other {# title lines ({found}), which were}} skipped.',
  ),
  'totals-skipped': phrase('{at} is a row of totals ({found}) and was skipped.{alike}'),
  'heading-repeated': phrase('{at} repeats the headings and was skipped.{alike}'),
  'row-skipped': phrase('{at} has no date ({found}) and was skipped. Add a date if the row matters.{alike}'),
  'row-cut-off': phrase('{at} is cut off ({found}). The row was left out. Download the file again if it should go on.'),
  'rows-of-kinds': phrase(
    '{at} begins rows of several types ({words}), which we do not read. Ask for interval data, or for a table with one reading a row.',
  ),
  'newest-first': phrase('{file} has the newest row first. The rows were put in order of time.'),
  'not-in-order': phrase(
    '{file} is not in order of time in {count, plural, one {# place} other {# places}}. The rows were sorted.',
  ),
  'date-impossible': phrase(
    '{at}: {found} in {column} is no day of the calendar. The row was left out. Correct the date in the file.{alike}',
  ),
  'rows-early': phrase(
    '{at}: {count, plural, one {# row} other {# rows}} from before 1990 {count, plural, one {was} other {were}} left out. They are older than any bill here could be.',
  ),
  'date-unreadable': phrase(
    '{at}: {found} in {column} is not a date we can read. The row was left out. Write it as 2025-03-01.{alike}',
  ),
  'date-order-asked': phrase(
    '{at}: {found} may be {expectedCode, select, day {day first or month first} other {month first or day first}}, and no date in {column} tells. We took it as {expected}. Choose the other if the dates look wrong.',
  ),
  'date-order-mixed': phrase(
    '{at}: {found} does not fit the other dates in {column}, which are {expected}. {count, plural, one {# row} other {# rows}} of this kind. Correct the file or choose the order.',
  ),
  'year-first': phrase(
    '{at}: {found} in {column} was read as year, month and day. Only then are the rows in order, or the years recent enough.',
  ),
  'year-first-asked': phrase(
    '{at}: {found} in {column} may begin with the day or with the year, and the rows are in order either way. Say which it is.',
  ),
  'dates-are-serials': phrase('{file} has dates as day numbers of a spreadsheet. They were turned into dates.'),
  'dates-turned': phrase(
    '{at}: a spreadsheet has changed day and month about in {count} dates, here to {found}. They were changed back, since the rows are in order so.',
  ),
  'dates-turned-maybe': phrase(
    '{at}: a spreadsheet may have changed day and month about in {count} dates, as here in {found}. Download the file again, and import it before a spreadsheet opens it.',
  ),
  'after-today': phrase(
    '{at}: {found} is later than today, {expected}. {count, plural, one {# row that is} other {# rows that are}} later {count, plural, one {was} other {were}} left out. If nothing in the file lies ahead, check the order of day and month, and the date of this computer.',
  ),
  'short-month-asked': phrase(
    '{at} holds far less than its like: {energy} in {column}. It may be a part of a month: one that was not over when the file was made, or the first in this home. Say whether it stands for a whole month.{alike}',
  ),
  'short-month-left-out': phrase('{at} is a part of a month, as you said, and was left out: {energy}.{alike}'),
  'not-filled': phrase(
    '{at} has nought from {from} to {to}, where every row before has a use. We took it as not filled in yet and left it out. Fill it in, or leave those rows away.',
  ),
  'not-over': phrase(
    '{at} goes on to {to}, and today is {from}: what is written there is of a part of that time, and was left out.{alike}',
  ),
  'number-unreadable': phrase(
    '{at}: the reading is {number}; {expected} is expected. It counts as missing. Correct the file or leave the row out.{alike}',
  ),
  'unread-asked': phrase(
    '{at} could not be read ({found}){count, plural, one {, of {expectedNames} rows} other {, nor could others: {count} of {expectedNames} rows in all}}. Correct the file, or confirm that {count, plural, one {it} other {they}} may be left out.',
  ),
  'unread-lists-asked': phrase(
    '{file} has lists without dates ({names}), the first of {count} values. They may be what was used, so the record may not be all. Give them dates, or confirm that they may be left out.',
  ),
  'unread-doubled-asked': phrase(
    '{at}{when} gives another value for a time that had one, which comes to {energy} in all. We took the later. Correct the file, or confirm that the earlier ones may be left out.',
  ),
  'unread-credit-asked': phrase(
    '{at}: {column} gives back {names}, and no row of the file bears it: none lies in its days, or they used less. Take it off the row that it corrects, in the file, or confirm that it may be left out.{alike}',
  ),
  'unread-total-asked': phrase(
    '{at} says that {column} comes to {found}, and the rows that were read come to {expectedNames}. A row may be missing or misread. Correct the file, or confirm that the rows read are all.',
  ),
  'decimal-asked': phrase(
    '{at}: {found} in {column} may have a decimal sign or a thousands sign. We took "{expectedNames}" for the decimal sign. Choose the other if the total looks wrong.',
  ),
  'decimal-mixed': phrase(
    '{at}: {found} is written unlike the other numbers in {column}, whose decimal sign is "{expectedNames}". Correct the file or choose the sign.',
  ),
  'decimal-comma': phrase('{file} writes decimals with a comma ({column}). They were read so.'),
  'unit-guessed': phrase(
    '{file} does not say the unit of {column}. It has {said, select, yes {{words}} other {amounts}}, so we took {expected}. {carrier, select, electricity {A home uses 5 to 60 kWh of electricity a day. } gas {A home seldom uses more than 300 kWh of gas a day. } other {}}Confirm or choose the unit.',
  ),
  'unit-doubtful': phrase(
    '{column} of {file} says {expected}, which makes {words}. {carrier, select, electricity {A home uses 5 to 60 kWh of electricity a day. } gas {A home seldom uses more than 300 kWh of gas a day. } other {}}Confirm or choose the unit.',
  ),
  'unit-price-asked': phrase(
    '{column} of {file}, taken as {expected}, makes {words}, which nobody pays. Choose the unit. Of bottles or loads, write what they hold.',
  ),
  'degrees-doubtful': phrase(
    '{column} of {file} says {expected}, but its mean is {words} {expected}, which would be no weather of a home. Confirm or choose the unit.',
  ),
  'pulses-asked': phrase(
    '{column} of {file} counts pulses. We took {expected} of them for one kWh. Give the number printed on the meter.',
  ),
  'column-asked': phrase(
    '{file} has {count, plural, one {another column} other {# other columns}} of the same kind as {column}: {names}. We took {column}. Confirm it, or choose the column that is meant.',
  ),
  'units-by-row': phrase(
    '{column} of {file} is in different units from row to row ({words}). Export one unit at a time, or change the rows to one unit.',
  ),
  'unit-mixed': phrase(
    '{at}: {column} reads {names}, where the column is in {expectedNames}. It counts as missing. Write it in {expectedNames} too.{alike}',
  ),
  'unit-converted': phrase(
    '{at}: {column} reads {names}, where the column is in {expectedNames}. It was converted.{alike}',
  ),
  'repeat-left-out': phrase(
    '{file}: {record} says the same as {names} day by day, so it was left out and nothing counts twice.',
  ),
  'sum-left-out': phrase('{file}: {record} is the sum of {names}, so it was left out and nothing counts twice.'),
  'part-left-out': phrase(
    '{file}: {record} holds {names} already, so {count, plural, one {it was} other {they were}} left out and nothing counts twice.',
  ),
  'own-use-asked': phrase(
    '{column} of {file} may hold more than the home bought: what it made itself and used ({names}). We took it all as bought. Say whether it was.',
  ),
  'phases-added': phrase('{file} has each phase of the supply by itself ({names}). They were added.'),
  'unit-not-of-carrier': phrase(
    '{column} of {file} says {words}, which does not go with what it is of. We took {expected}. Choose what the file is of, or its unit.',
  ),
  'carrier-guessed': phrase(
    '{file} does not say what was metered. We took it for {expected}. Confirm it, or choose what it is.',
  ),
  'columns-left-out': phrase(
    '{file}: we read {expectedNames} and left out {names}. Choose another column if that is wrong.',
  ),
  'columns-not-understood': phrase(
    '{file}: we left out {names}. We do not know what {count, plural, one {it means} other {they mean}}. Nothing else is missing.',
  ),
  'standing-taken': phrase('{file}: {column} does not say its unit. We took {expected}. Compare it with the paper.'),
  'several-series': phrase('{file} holds {count} meters or registers ({names}). Each is saved by itself.'),
  'direction-asked': phrase(
    '{file} does not say clearly whether {column} was bought or sent out. We took it as bought. Confirm it, or choose what it is.',
  ),
  'direction-of-name-asked': phrase(
    '{column} of {file} does not say where it went. By its name it was sent out, made at home or used by the heat pump. Choose.',
  ),
  'title-energy-asked': phrase(
    '{column} of {file} names one energy, and its name or title ({names}) names another. We took the one of the heading. Confirm it, or choose.',
  ),
  'title-way-asked': phrase(
    '{column} of {file} says where the energy went, and its name or title ({names}) says otherwise. We took the heading. Confirm it, or choose.',
  ),
  'title-word-asked': phrase(
    'The name or title of {file} says “{names}”. We took {column} as all that this home used. Confirm it, or do not use it.',
  ),
  'net-asked': phrase(
    '{column} of {file} has {count, plural, one {# reading} other {# readings}} below nought. They may be what was sent out into the grid, what was bought, or faults. {said, select, yes {If they are no faults, this file cannot be used: over a day or more the two cannot be told apart. } other {}}Say which.',
  ),
  'net-of-days': phrase(
    '{column} of {file} is what was bought less what was sent out, over a day or more. The two cannot be told apart. Ask for both, or for readings by the hour.',
  ),
  'made-asked': phrase(
    '{file} does not say whether {column} is all that is made at home or only what is sent out. We took it as sent out. Confirm it, or choose.',
  ),
  'made-by-day-asked': phrase(
    '{column} of {file} has nothing at night and most about noon, as solar panels do. We took it as bought. Confirm it, or choose what it is.',
  ),
  'part-asked': phrase(
    '{column} of {file} sounds like one appliance. Confirm that it is what the whole home uses, or do not use it.',
  ),
  'part-pump-asked': phrase(
    '{column} of {file} stands beside what a heat pump logs. It may be what the whole home uses, or the heat pump alone. Say which it is.',
  ),
  'part-register-asked': phrase(
    '{column} of {file} counts one rate of the meter at a time ({names}). A second rate is not there for the same days. Confirm that it is all the home used. If another file has the rest, say so.',
  ),
  'word-asked': phrase(
    '{column} of {file} says something that we do not know ({names}). We took it as what the home used. Confirm it, say what it is, or choose another column.',
  ),
  'amount-asked': phrase(
    '{column} of {file} may be money, or the fuel that came. We took it for the fuel. Confirm it, choose another column, or do not use it.',
  ),
  'amount-days-asked': phrase(
    'The numbers in {column} of {file} are the days of their rows. They may count those days, or be what was used. We took them for what was used. Confirm it, or choose another column.',
  ),
  'calorific-assumed': phrase(
    '{foundCode, select, kWh {{file} gives gas by volume without all that makes kWh of it. We took {expected} kWh per m³. Bills print it as one factor, or as a calorific value and a correction (“Brennwert”, “Zustandszahl”) to multiply.} other {{file} gives gas by volume without its calorific value. We took {expected} MJ per m³. Give the value printed on the bill.}}{foundCode, select, therms { Where it prints therms for a CCF, multiply them by 37.26.} other {}}',
  ),
  'clock-from-offset': phrase(
    '{foundCode, select, utc {{file} writes its times in UTC. They were turned into local time.} other {{file} writes the offset from UTC beside its times. It was used as written.}}',
  ),
  'clock-utc': phrase(
    '{foundCode, select, heading {{file} says that its times are in UTC.} other {{file} does not change its clocks in spring and autumn, so its times are UTC.}} They were turned into local time.',
  ),
  'clock-assumed': phrase(
    '{file} does not say whether its times are local or UTC, and no change of the clocks lies in it. We took local time.{ofWeather, select, yes {} other { Choose UTC if the evening peak comes too early.}}',
  ),
  'clock-of-weather': phrase(
    '{file} does not name its clock. We took its times as {expectedCode, select, local {local time} utc {UTC} other {winter time}}. An hour or two hardly changes the mean of a day.',
  ),
  'clock-asked': phrase(
    '{file} does not change its clocks in spring and autumn. It may be in winter time or in UTC; we took winter time. Choose the other if that is wrong.',
  ),
  'clock-mixed': phrase(
    '{file} changes its clocks on some of the {count} change days and not on others. We took {expectedCode, select, local {local time} other {UTC}}. Look at those days and choose.',
  ),
  'sent-below-nought': phrase(
    'Every reading in {column} of {file} is below nought, as what is sent out is sometimes written. We took the amounts without the sign.',
  ),
  'clock-contradicted': phrase(
    '{file} says that its times are in UTC, but it changes its clocks in spring and autumn as local time does. We took local time. Choose.',
  ),
  'clock-autumn-asked': phrase(
    '{file} has the hour that autumn doubles only once. Its times may be UTC, or local with an hour lost. We took UTC. Choose local time if that is wrong.',
  ),
  'zone-asked': phrase(
    '{file} changes its clocks as in {expectedZone} and not as in {foundZone}, which is taken for the clock of this home. If the home stands elsewhere, set its country in “Heat needed”. Else choose the clock of the file.',
  ),
  'spring-hour-filled': phrase(
    '{file} has readings in the hour that the clocks skip in March. They were left out, since that hour did not exist.',
  ),
  'autumn-hour-once': phrase('{file} has the doubled hour of autumn only once. The second hour counts as missing.'),
  'stamp-side-asked': phrase(
    '{file} does not say whether {column} names the start or the end of each reading. We took the {expectedCode, select, end {end} other {start}}. Choose the other if that is wrong.',
  ),
  'stamp-is-end': phrase('{column} of {file} names the end of each reading. It was read so.'),
  'interval-uneven': phrase(
    '{file} has most rows {words} apart, which does not divide a day. Readings every 5, 10, 15, 30 or 60 minutes are expected. Export the data again, or as daily values.',
  ),
  'stamp-off-grid': phrase(
    '{at} does not stand on a step of {expected}. {count, plural, one {# reading} other {# readings}} went into the step they fall in.',
  ),
  'lengths-evened': phrase(
    '{at}: readings change their length, {words} here and {expected} elsewhere. The shorter ones were joined to the longer.',
  ),
  gap: phrase(
    '{file} has nothing from {from} to {to}: {count, plural, one {# reading} other {# readings}} missing{effect, select, none {} other {, about {energy}}}. They are not taken for nought.',
  ),
  'gaps-more': phrase(
    '{file} has {count, plural, one {# more gap} other {# more gaps}}, none longer than those listed{effect, select, none {} other {, about {energy}}} in all.',
  ),
  'duplicate-same': phrase(
    '{at}{when} repeats a reading with the same value. It counts once. {count, plural, one {# row} other {# rows}} of this kind.',
  ),
  'duplicate-different': phrase(
    '{at}{when} gives another value for a time that had one. The later row counts. {count, plural, one {# row} other {# rows}} of this kind{effect, select, none {} other {, about {energy}}} of difference. Check which is right.',
  ),
  'below-minutes': phrase(
    'The rows of {file} are seconds apart. We read steps of a minute and longer. Export the file by minutes, half-hours or days.',
  ),
  'times-doubled': phrase(
    '{at}: {count, plural, one {# time stands} other {# times stand}} there twice with different values, and no column says which is which. Export one meter or direction at a time, or with a column that names it.',
  ),
  estimated: phrase(
    '{file} marks {count, plural, one {# row} other {# rows}} as estimated{span, select, day { on {firstDay}} days { between {firstDay} and {lastDay}} other {}}{effect, select, none {} other {, about {energy}}}. They are saved with that mark. Actual readings would make the answer surer.',
  ),
  'taken-back': phrase(
    '{at} gives back {energy} of the days from {from} to {to}. It is taken off the rows of those days.{alike}',
  ),
  'money-back': phrase('{at} gives money back and holds no use. It is no reading of its days.{alike}'),
  'units-evened': phrase(
    '{column} of {file} changes between {expectedNames} and {names} from row to row. Each row was read in its own unit.',
  ),
  'heat-taken-back': phrase(
    '{at}{when}: {column} reads {names}, as heat does while a heat pump defrosts. It is taken off the heat beside it.{alike}',
  ),
  'sign-unknown': phrase(
    '{at}: {names} stands behind a number in {column}, and the file does not say what it means. The number was read as it is.{alike}',
  ),
  negative: phrase(
    '{at}{when}: {column} reads {names}, and use cannot be negative. It counts as missing. If this is export, choose that in the preview.{alike}',
  ),
  spike: phrase(
    '{at}{when}: {column} reads {names}; {expected} is what a house can draw. It counts as missing. Check the unit and the row.{alike}',
  ),
  frozen: phrase(
    '{file} shows the same value, {names}, in {count, plural, one {# reading} other {# readings}} from {from} to {to}{effect, select, none {} other {, about {energy}}} in all. The meter may have stood still. Check those days.',
  ),
  'zero-run': phrase(
    '{file} shows nought in {count, plural, one {# reading} other {# readings}} from {from} to {to}{effect, select, none {} other {, where {energy} would be usual}}. The supply or the meter may have been off. Check those days.',
  ),
  'temperature-absurd': phrase(
    '{at}{when}: {column} reads {names}, which no weather here reaches. It counts as missing. Check the unit.{alike}',
  ),
  filled: phrase(
    '{file}: {count, plural, one {# reading} other {# readings}} missing from {from} to {to} were filled with the mean of the same weekday, {energy} in all. They count as estimated.',
  ),
  'fill-left-open': phrase(
    '{file}: {count, plural, one {# missing reading} other {# missing readings}} could not be filled, since {expected}. They stay missing.',
  ),
  'kept-already': phrase(
    '{said, select, yes {“{names}” of {file}} other {{file}}} is saved already, and counts once. To read it otherwise, remove it first.',
  ),
  'overlap-same': phrase(
    '{file} repeats {count, plural, one {# day} other {# days}} that {names} had, {days}, with the same values. They count once.',
  ),
  'overlap-different': phrase(
    '{file} says something else than {names} of {count, plural, one {# day} other {# days}}, {days}{effect, select, none {} less {: {energy} less} other {: {energy} more}}. There {expectedNames} counts. Remove it if the other is right.',
  ),
  'records-asked': phrase(
    '{file}: {series} and {names} are of one kind. On {count, plural, one {# day} other {# days}} that both have they differ by {energy}. Two meters of this home are added, and so are two registers of one meter. Where one repeats or holds the other, keep one aside. One that puts the other right counts instead. Choose.',
  ),
  'added-part': phrase(
    '{names} is added to {expectedNames}. {count, plural, one {# day} other {# days}} that only one of them has {count, plural, one {is} other {are}} left out of the sum, {days}. Bring the other’s readings of those days, or write 0 for them in its file if it used nothing.',
  ),
  'records-part-asked': phrase(
    '{file}: {series} is to be added to what another file has, and no such file is here for its days. It is not used until then. Bring that file. If it is all that the home took, remove it, choose it again and say so.',
  ),
  'records-weather-asked': phrase(
    '{file} and {names} both tell the weather of {count, plural, one {# day} other {# days}}, and differ by {expectedNames} °C on average. They may be of two places. Keep the one of this home, and the other aside.',
  ),
  'records-number-asked': phrase(
    '{file} names another meter or supply than {names} does{says, select, yes { ({expectedNames})} other {}}. If the meter of this home was changed, it goes on. If not, it is a further meter or of another home. If {names} is the wrong one, remove that instead.',
  ),
  'records-register-asked': phrase(
    '{file} counts another rate of a meter than {names} does ({expectedNames}). Two rates of one meter are added. If both names mean the same rate, it goes on. If {names} is the wrong one, remove that instead.',
  ),
  'records-station-asked': phrase(
    '{file} is of another weather station than {names} ({expectedNames}). If both are near this home, it goes on. If {names} is the wrong one, remove that instead.',
  ),
  'records-counter-asked': phrase(
    'The meter readings of {file} do not fit those of {names} ({expectedNames}). If the meter of this home was changed, it goes on. If not, it is a further meter or of another home. If {names} is the wrong one, remove that instead.',
  ),
  'records-level-asked': phrase(
    'Where {file} and {names} meet, the use of a day changes too much ({expectedNames} kWh). Check the units first. If this home did change so much, it goes on. If not, it is a further meter or of another home.',
  ),
  'to-inclusive-asked': phrase(
    '{at}: does the row include its last day, {names}? We counted it in. Choose the other if rows overlap by a day.',
  ),
  'period-overlap': phrase(
    '{at} overlaps the bill before it from {from} to {to}, {count, plural, one {# day} other {# days}}{effect, select, none {} other {, about {energy}}}. Correct a date, or leave one of the bills out.',
  ),
  'period-overlap-asked': phrase(
    '{at} is for days of the bill before it too, {from} to {to}, {count, plural, one {# day} other {# days}}{effect, select, none {} other {, about {energy}}}. {foundCode, select, both {Both were counted.} once {Each day was counted once.} other {Does one bill replace the other, or do both stand, as those of two meters? So far both are counted.}}',
  ),
  'period-hole': phrase(
    '{file} has no bill from {from} to {to}, {count, plural, one {# day} other {# days}}{effect, select, none {} other {, about {energy}}}. Add the missing bill if you have it.',
  ),
  'period-backwards': phrase(
    '{at} ends ({to}) before it begins ({from}). The row was left out. Correct its dates.{alike}',
  ),
  'months-by-first-day': phrase(
    '{file} names each month by its {expectedCode, select, ends {last} other {first}} day. Each row was read as that whole month.',
  ),
  'period-by-end-date': phrase(
    '{at} ({found}) has no date {expectedCode, select, end {before} other {after}} it, so its period is not known. The row was left out.',
  ),
  'period-bought-asked': phrase(
    '{file} lists units bought in advance, and nothing says when they were used. We took {column} for the {expectedCode, select, end {end} other {start}} of the days in which they were. Choose the other if that is wrong, or bring readings of the meter instead.',
  ),
  'period-side-asked': phrase(
    '{file} has one date a row. We took {column} for the {expectedCode, select, end {end} other {start}} of each period. Choose the other if that is wrong.',
  ),
  'delivery-rule': phrase(
    '{file}: each delivery is taken to replace what was burnt since the one before. So the first, {words} on {from}, only starts the count.',
  ),
  'delivery-alone': phrase(
    '{file} has {hasDays, select, yes {one delivery only} other {no delivery}}. Two are needed to know how long the fuel lasted. Add the delivery before it.',
  ),
  'tank-level': phrase(
    '{column} of {file} is how full the tank is. The use is not worked out from that, since each filling hides what was used. Bring the deliveries instead, or type them: the date and the amount of each.',
  ),
  'register-rollover': phrase(
    '{at}: the counter went past its end ({words}) and began again at nought. The use between is counted{effect, select, none {} other {, about {energy}}}.{alike}',
  ),
  'register-slip': phrase(
    '{at}: the counter fell a little ({words}) and was above it again later, so a figure is wrong. The lower one was left out. Correct it if you know better.{alike}',
  ),
  'register-peak': phrase(
    '{at}: the counter stood above what it shows later ({words}), so a figure is wrong. The higher one was left out. Correct it if you know better.{alike}',
  ),
  'register-exchange': phrase(
    '{at}: the counter fell ({words}){hasDays, select, yes { between {from} and {to}} other {}}, so the meter was changed or a figure is wrong. The use between is not known. Add the last reading of the old meter.{alike}',
  ),
  'register-exchange-read': phrase(
    '{at}: the meter was changed on {from} ({words}), and the last reading of the old one is given. No use is lost.{alike}',
  ),
  'register-alone': phrase('{file} has too few readings of the counter. Two are needed to know what was used.'),
  'places-several': phrase(
    '{file} has temperatures of several places or kinds ({names}). Keep the rows or columns of one of them, then add the file again.',
  ),
  'readings-times': phrase(
    '{file} says that readings are multiplied by {found}. Multiply them in the file and take that factor out, or give the use instead.',
  ),
  'counter-noughts': phrase(
    '{at}{when}: the counter shows nought and later goes on from where it was. Such readings were left out.{alike}',
  ),
  'counts-from-midnight': phrase(
    '{column} of {file} starts again every day and only rises in between. We took it for a counter of the day: each use is the difference of two readings.',
  ),
  'counts-from-month': phrase(
    '{column} of {file} starts again every month and only rises in between. We took it for a running total: each use is the difference of two days.',
  ),
  'counts-from-year': phrase(
    '{column} of {file} starts again every year and only rises in between. We took it for a running total: each use is the difference of two rows.',
  ),
  'counter-uneven': phrase(
    '{column} of {file} was read at uneven times. What it rose between two readings was shared out over the hours between.',
  ),
  'counter-shared': phrase(
    '{column} of {file} goes on over {count, plural, one {# missing reading} other {# missing readings}}. What it rose by meanwhile was shared out evenly{effect, select, none {} other {, about {energy}}}.',
  ),
  'counter-unread': phrase(
    '{column} of {file} was not read for long {count, plural, one {once} other {# times}}, first from {from} to {to}. It rose by {energy} meanwhile. {said, select, yes {That is saved by itself, as {names}.} other {That is not in its total.}}',
  ),
  'weeks-by-number': phrase(
    '{file} numbers its weeks. We took them from Monday to Sunday. The week with the fourth of January is the first.',
  ),
  'per-day-multiplied': phrase('{column} of {file} is the mean of a day. We took it times the days of each period.'),
  'register-still': phrase(
    '{file} shows {found} in each of {count, plural, one {# row} other {# rows}} of {column}. We took it for a counter that stood still, so that nothing was used. If each row is an amount used, choose that.',
  ),
  'register-rising-asked': phrase(
    '{file}: in each of {count, plural, one {# row} other {# rows}} {column} is larger than in the one before, as a counter is. We took each for an amount used. Confirm it, or choose the counter.',
  ),
  'estimated-merged': phrase(
    '{at} was estimated, and a later actual reading corrected it. The rows from {from} to {to} are read as one period, {energy} in all.{alike}',
  ),
  'cost-of-several': phrase(
    '{file}: {column} is one amount for several registers, {names} in all. It cannot be shared out, so it was left out.',
  ),
  'xml-broken': phrase(
    '{at} is no valid XML ({said, select, yes {{words}} other {it ends too early}}). Download the file again.',
  ),
  'xml-doctype': phrase(
    '{at} declares a document type, which meter data has no need of and which can do harm. The file was not read. Download it again from the source.',
  ),
  'espi-empty': phrase(
    '{file} is meter data in the open XML standard, but none of its {count, plural, one {# reading} other {# readings}} could be used. Ask for electricity or gas in energy or volume.',
  ),
  'espi-unlinked': phrase(
    '{file} has {count, plural, one {# block} other {# blocks}} of readings that no link ties to a meter. They are saved as a record of their own. Check its name.',
  ),
  'espi-type-missing': phrase(
    '{file} does not say the unit of {hasName, select, yes {{record}} other {its readings}}, since its reading type is missing. We took {expected}. Choose the unit.',
  ),
  'espi-left-out': phrase('{file}: we left out {record}, since it is no energy we can use ({words}).{alike}'),
  'espi-power': phrase('{file} gives {record} as power. Each value was taken as the mean over its interval.{alike}'),
  'espi-net': phrase(
    '{file} gives use less export in one record. We keep what was bought and what was sent out apart.',
  ),
  'espi-coarser': phrase(
    '{file} gives the same meter twice: {record} repeats {found} in longer steps. The finer one is used.{alike}',
  ),
  'espi-no-length': phrase(
    '{at}: the reading spans no time (its value is {words}), as happens when clocks change. It was left out.{alike}',
  ),
  'espi-long-reading': phrase(
    '{at}: the reading spans {words} where the others span {expected}. It was shared out evenly.{alike}',
  ),
  'espi-clock-asked': phrase(
    '{file} should count in UTC, yet it skips the hours that local clocks skip. We took local time. Choose UTC if the evening peak comes an hour late.',
  ),
  'espi-other-clock': phrase(
    "{file} cuts its days by {names}, not by the home's ({expectedZone}). The days stay as they were cut.",
  ),
  'espi-currency': phrase(
    '{file} has costs ({names}) that are not said to be in this home’s currency. They were left out.',
  ),
  'cost-other-money': phrase('{file} has amounts in another currency than this home’s ({names}). They were left out.'),
  'espi-cost-left-out': phrase(
    '{file} has a cost beside each reading, {names} in all. Costs are saved for bills only, so they were left out.',
  ),
  'espi-summary': phrase(
    '{file} also holds {count, plural, one {# billing summary} other {# billing summaries}}, which we do not read. Type the bill in if you need it.',
  ),
  'workbook-broken': phrase(
    '{file} is a damaged workbook ({words}). Open it, save it again, or save the sheet as CSV.',
  ),
  'workbook-too-large': phrase('{file} unpacks to {words}; we read {expected}. Save the sheet you need as CSV.'),
  'workbook-locked': phrase('{file} is locked or not an XLSX workbook. Save it without a password, or as CSV.'),
  'workbook-empty': phrase('{file} has no sheet with rows in it. Save the data as CSV, or choose another file.'),
  'sheet-asked': phrase(
    '{file} has {count, plural, one {# sheet} other {# sheets}} with data ({names}). We read "{expectedNames}". Choose another if that is wrong.',
  ),
  'sheet-tables-asked': phrase(
    '{file} has {count, plural, one {# table} other {# tables}} with data ({names}). We read "{expectedNames}". Choose another if that is wrong; add {file} again for each of them.',
  ),
  'sheet-homes-asked': phrase(
    '{file} lists {count, plural, one {# home} other {# homes}} ({names}). We read "{expectedNames}". Confirm it, or choose the home that is meant.',
  ),
  'sheet-packed-asked': phrase(
    '{file} packs {count, plural, one {# file} other {# files}} with data ({names}). We read "{expectedNames}". Choose another if that is wrong; add {file} again for each of them.',
  ),
  'sheet-packed-taken': phrase('We read "{expectedNames}" out of {file}.'),
  'sheet-taken': phrase('We read the sheet "{expectedNames}" of {file}.'),
  'json-not-read': phrase(
    '{file} is JSON in which we found no list of readings, or several that may hold the same. Export it as a table (CSV), one energy at a time.',
  ),
  'lists-left-out': phrase('{file} has lists without dates ({names}). They were left out.'),
  'sheets-joined': phrase(
    '{file} has {count} sheets that go on in each other ({names}). They were read as one record.',
  ),
  'paper-locked': phrase(
    '{file} is locked with a password. Open it with the password, print it to a new PDF without one, and choose that.',
  ),
  'paper-broken': phrase('{file} is a damaged PDF. Download it again, or ask the supplier for it again.'),
  'paper-many-pages': phrase(
    '{file} has more than {expectedNames} pages, more than a bill has. Print only the pages of the bill to a new PDF, and choose that.',
  ),
  'paper-bomb': phrase(
    '{file} unpacks to more than any bill holds, so it was not opened. Ask the supplier for the bill again, or type the figures.',
  ),
  'paper-no-text': phrase(
    '{file} holds no words and no picture of a page. Ask the supplier for the bill again, or type the figures.',
  ),
  'picture-kind': phrase(
    '{file} is a picture of a kind that is not read here. Take a screenshot of it, or save it as JPEG or PNG, and choose that.',
  ),
  'picture-broken': phrase('{file} is a damaged picture. Fetch it again from the telephone or scanner.'),
  'picture-large': phrase(
    '{file} has more than {expectedNames} million points, so it was not opened. Save it smaller, and choose that.',
  ),
  'picture-small': phrase('{file} is too small to read. Take the picture closer, one page at a time.'),
  'picture-no-bill': phrase(
    'We could not read a bill in the picture {file}. Take it again: all of the page, flat, in even light, from closer. Or type the figures in.',
  ),
  'picture-no-use': phrase(
    'We read {file}, and found no use of electricity or gas with its price. If it is a bill, show all of the page, or choose its other pages too. Or type the figures.',
  ),
  'picture-unclear': phrase(
    '{file} could not be read for certain everywhere. A better picture helps: all of the page, flat, in even light, from closer.',
  ),
  'paper-no-bill': phrase(
    'We found no use of electricity or gas with its price in {file}. If it is a bill, perhaps a page is missing: choose the complete bill, or type the figures.',
  ),
  'paper-water-only': phrase(
    '{file} is a bill for water, and nothing of it is needed here. Choose the bill for electricity or gas.',
  ),
  'paper-water-left-out': phrase('{file} names water or sewage too. That was left out.'),
  'paper-heat-only': phrase(
    '{file} is a bill for heat from a network. Only bills for electricity or gas are read here.',
  ),
  'paper-by-volume': phrase(
    '{file} charges for gas by volume and says nowhere how many kWh that is. Type the figures: there m³ can be chosen.',
  ),
  'paper-two-fuels': phrase(
    '{file} seems to charge for two fuels, and no heading says which is which. Choose a copy with its headings, or type the figures.',
  ),
  'paper-other-bill': phrase(
    '{file} seems to be for something else: it says {names}. Only bills for electricity or gas are read here; a delivery of fuel can be typed in.',
  ),
  'paper-other-money': phrase(
    'The amounts on {file} are in another currency: it says {names}. Bills are read in pounds, euros or dollars.',
  ),
  'paper-money-asked': phrase(
    'The amounts on {file} are in {names}. They would count as the money of the household. Set its country in “Heat needed”, type in what they come to, or save them as printed.',
  ),
  'paper-services-left-out': phrase(
    '{file} also charges for what is no energy: {names}. That was left out of the cost.',
  ),
  'paper-shared': phrase(
    '{file} lays {names} on both fuels together. Each fuel bears its part, by what it was charged.',
  ),
  'paper-same-days': phrase(
    '{file} holds two bills for the same days ({names}) with different use. Choose only the one that stands.',
  ),
  'paper-heat-left-out': phrase('{file} names heat from a network too. That was left out.'),
  'paper-no-bill-asked': phrase(
    '{file} may be an offer, a forecast, a cancelled bill or pay for electricity sent out: it says {names}. Only what was used and charged belongs here.',
  ),
  'paper-given-back': phrase(
    '{file} gives back more than it charges, so it corrects an earlier bill. Choose the bill that stands now, or type the figures.',
  ),
  'paper-export-left-out': phrase('{file} also names electricity that was sent out. That is no use, and was left out.'),
  'paper-others-left-out': phrase(
    '{file} also works out sums that are not this home’s bill of these days, so they were left out: {names}.',
  ),
  'paper-others-only': phrase(
    'The only charges that {file} works out are not this home’s bill of these days: {names}. Choose the bill with its own charges, or type the figures.',
  ),
  'paper-left-out': phrase('No total of this bill holds these sums, so they were left out: {names}.'),
  'paper-left-out-asked': phrase(
    'No total of this bill holds these sums on {file}, so they were left out: {names}. They may be another offer, a forecast or another bill. Compare with the paper.',
  ),
  'paper-money-left-out': phrase(
    '{count, plural, one {An amount} other {# amounts}} on {file} {count, plural, one {belongs} other {belong}} to no charge we read, and {count, plural, one {was} other {were}} left out: {names}.',
  ),
  'paper-fuel-left-asked': phrase(
    '{file} has more that belongs to no charge we read: {names}. Without it the bill may not be complete. Compare with the paper.',
  ),
  'paper-billed-before-asked': phrase(
    '{file} subtracts units that another bill was for: {found}. We used {expected}, what is charged now. Add the other bill too, or the home seems to use less than it did.',
  ),
  'paper-names-left-out': phrase(
    'Names, addresses and the numbers of accounts and meters on {file} are not saved, nor the paper itself.',
  ),
  'paper-several': phrase('{file} holds {count} bills of different days. Each is saved with its own days.'),
  'paper-several-asked': phrase(
    'The pages of {file} state different days: {names}. Say whether they are one bill or several.',
  ),
  'paper-money': phrase(
    'The amounts on {file} are in {names}. They are saved as they are printed. The country in “Heat needed” settles the currency of a home.',
  ),
  'paper-fuel-asked': phrase('{file} does not say whether it is for electricity or for gas. Choose which.'),
  'paper-period-asked': phrase(
    '{said, select, yes {The last day of {file} is before its first. Type both again below.} other {We found no first and last day of the bill on {file}. Type them below.}}',
  ),
  'paper-vat-asked': phrase(
    '{said, select, yes {{file} says that its prices hold VAT, but no sum on it shows how much.} other {{file} shows no VAT that fits its sums.}} Say whether the prices hold it.',
  ),
  'paper-total-asked': phrase(
    'No sum on {file} confirms that its charges are all here: {names}. A charge or the page with the total may be missing. Compare with the paper.',
  ),
  'paper-unproved-asked': phrase(
    '{count, plural, one {One value is read, and no sum on the page proves it} other {# values are read, and no sum on the page proves them}}: {names}. Compare with the paper, and correct what is wrong by a click on the page.',
  ),
  'paper-meaning-asked': phrase(
    'What {names} {count, plural, one {stands} other {stand}} for was guessed from the place, since no word says it. Compare with the paper. Where a guess is wrong, type the bill instead.',
  ),
  'paper-contradicted-asked': phrase(
    '{count, plural, one {A sum on the paper does not come out} other {# sums on the paper do not come out}}: {names}. A number may be misread, rounded, or wrong on the paper. Correct it by a click on the page, or save the bill as printed.',
  ),
  'epw-title': phrase(
    '{at} should end with the place and its clock; {found} is no number of {expected}. Download the weather file again.',
  ),
  'epw-years-mixed': phrase(
    '{file} joins months of {count, plural, one {# year} other {# years}} ({names}) into one typical year. It is no record of real days, so it cannot be set beside meter readings. Use a file of measured weather.',
  ),
  'epw-place': phrase(
    '{file} is the weather of {names}, written in {expected} all year. It was turned into local time.',
  ),
  'weather-asked': phrase(
    '{file} speaks of {found}. Its temperatures may be means of many years, a typical year or a model. Confirm that they were measured on the days beside them, or do not use them.',
  ),
  'weather-smooth-asked': phrase(
    '{file}: from one day to the next the temperature mostly changes by {words} °C. Real weather mostly changes by one to three. It may be a mean of many years. Confirm that it was measured on those days, or do not use it.',
  ),
  'weather-indoors-asked': phrase(
    '{column} of {file} stays as warm as a room from day to day. Confirm that it was measured outdoors on those days, or do not use it.',
  ),
  'weather-extreme-asked': phrase(
    'By its name or the title of {file}, {column} is the warmest or the coldest of each day. Confirm that it is the mean, or do not use it. A file of daily means would serve.',
  ),
  'weather-extreme-only': phrase(
    '{column} of {file} is the warmest or the coldest of each day, and its mean is not there. Use a file of daily means, or of both.',
  ),
  'weather-typical': phrase(
    '{file} is no record of real days, so it cannot be set beside meter readings. Use a file of measured weather.',
  ),
  'degree-days': phrase(
    '{file} holds degree days, which are neither temperatures nor energy. Use a file of measured outdoor temperatures.',
  ),
  'other-fuel': phrase(
    '{column} of {file} is a fuel that is not compared here. Use a record of electricity, gas, oil, LPG, pellets or heat, or type the heat loss.',
  ),
  'other-fuel-asked': phrase(
    '{file} has {names} as well. Such fuel is not compared here, so its heat is in no record. Confirm that it may be left out.',
  ),
  'ways-in-turn': phrase(
    '{file} gives one direction a reading, by {column}. Each reading is what was bought less what was sent out, so the other direction counts as nought there.',
  ),
  'registers-by-column': phrase(
    '{file} tells its registers apart in {column} ({names}). Each is saved by itself, and export is never added to import.',
  ),
  'heat-pump-taken': phrase(
    `{file} has heat beside electricity, so {column} was taken for the heat pump's own meter. Choose another role if it is the whole house.`,
  ),
  'tariff-not-json': phrase(
    '{at} breaks the rules of JSON at “{names}” or just before it. Look for a comma, bracket or quotation mark too many or too few, or save the tariff as CSV.',
  ),
  'tariff-wrong': phrase(
    '{at}: {field} is {said, select, yes {{found}} other {missing}}; it must be {expected}. Correct the file.',
  ),
  'tariff-too-long': phrase(
    '{file} has {count} {foundCode, select, days {days of prices} other {prices}}, and at most {expectedNames} are read. {foundCode, select, days {Keep those of the last years.} other {Give all hours of one price the same name in the column “band”.}}',
  ),
  'tariff-columns': phrase(
    '{file} has no column "{expectedNames}". A tariff file has the columns band, from, to, days, months and {expectedNames}.',
  ),
  'tariff-row': phrase('{at}: {column} is {found}; {expected} is expected. Correct the row.'),
  'tariff-fuel-guessed': phrase('{file} does not say which fuel it prices. We took {expected}. Confirm it.'),
  'tariff-vat-guessed': phrase(
    '{file} does not say whether its prices include VAT. We took them as including {expectedNames} % VAT. Confirm it.',
  ),
  'tariff-unit-guessed': phrase(
    '{at}: {column} does not name the unit of its prices. We took them as {expectedNames} per kWh. Confirm it.',
  ),
  'tariff-date-asked': phrase(
    '{at}: {found} may be {expectedCode, select, day {day first or month first} other {month first or day first}}. We took it as {expected}. Correct it if that is wrong.',
  ),
  'tariff-line-left-out': phrase('{at}: {found} is no line of a tariff file. It was left out; type it if it matters.'),
  'tariff-columns-left-out': phrase(
    '{at}: {names} is not known in a tariff file. It was left out; type it if it matters.',
  ),
  'tariff-across': phrase(
    '{file} has the hours across and the days down. Bring a row for each time and its price, with the date and the time in the first column.',
  ),
  'tariff-prices-averaged': phrase(
    '{file} has a price every {expectedNames} minutes. We count by half-hours, each at the mean of its prices.',
  ),
  'tariff-sent-out': phrase(
    '{at}: {column} is paid for electricity sent out. Type it beside the roof, and choose a file of prices paid.',
  ),
  'tariff-prices-beside': phrase(
    '{at}: several columns hold prices: {names}. Keep one of them, and open the file again.',
  ),
  'tariff-other-money': phrase(
    '{at}: {column} is in another currency than this home’s. Convert its prices, and open the file again.',
  ),
};

const isKnown = (code: string): code is RemarkCode => Object.hasOwn(SENTENCES, code);
const sentenceOf = ({ code, found }: Remark): string =>
  (code === 'file-foreign' ? FOREIGN[found ?? ''] : undefined) ??
  (isKnown(code)
    ? SENTENCES[code]
    : phrase('{at}: another version of Plainwarmth noted “{code}”, which is not known here.'));

/** One remark in words; a code from elsewhere still names its file and line. */
export function remarkSentence(remark: Remark): string {
  const gaps = gapsOf(remark);
  const sentence = say(sentenceOf(remark), gaps);
  // A file's name keeps its own small letter.
  return sentence.startsWith(String(gaps.column)) ? capitalised(sentence) : sentence;
}
