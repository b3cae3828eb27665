/** What the columns and records of a file are used for in the comparison and in a bill check, or why they are not. */
import type { ColumnAccount, FileAccount, RecordAccount, RecordUse } from '../model/shapes/evidence.ts';
import { columnUse } from './column-uses.ts';
import { grouped } from './numbers.ts';
import { columnNames } from './remarks.ts';
import { phrase, say } from './say.ts';
import { sayTold } from './say-told.ts';

const USES: Readonly<Record<RecordUse, string>> = {
  heat: phrase('{name}: used for the heat needed, {days} days of it.'),
  'heat-joined': phrase('{name}: used for the heat needed, {days} days with what was joined to it.'),
  'heat-register': phrase('{name}: used for the heat needed, added to the other registers of its meter.'),
  'rest-of-home': phrase('{name}: used for what the home uses beside heating.'),
  'rest-in-part': phrase(
    '{name}: used for what the home uses beside heating, for the days on which no heat pump is in it.',
  ),
  'holds-heat-pump': phrase(
    '{name}: not used, since a heat pump may be in all of it. Other electricity cannot be told from it.',
  ),
  'rises-with-cold': phrase('{name}: not used for what the home uses beside heating, since it rises with the cold.'),
  'too-short': phrase('{name}: not used for the heat needed, since it covers too little time.'),
  'other-figure': phrase('{name}: not used for the heat needed, since another figure was chosen for it.'),
  weather: phrase('{name}: used for the weather of the days that it covers.'),
  'weather-aside': phrase('{name}: not used for the heat needed, since it covers too few days of what was metered.'),
  machine: phrase('{name}: used to show how the machine is run, and in no sum of the comparison.'),
  joined: phrase('{name}: joined with another file of the same register.'),
  added: phrase('{name}: added as a further meter of its kind.'),
  'added-alone': phrase('{name}: not used until the file is here to which it is added.'),
  aside: phrase('{name}: not used, since it is set aside.'),
  instead: phrase('{name}: counts on its days instead of another record.'),
  covered: phrase('{name}: not used, since another record tells of the same days.'),
  'other-way': phrase('{name}: not used for the heat needed, since “Heating today” names another way of heating.'),
  'sent-out': phrase('{name}: not used, since it was sent out and not bought.'),
  'made-here': phrase('{name}: not used, since the home made it itself.'),
  water: phrase('{name}: not used, since water is priced by nobody here.'),
  'bill-days': phrase('{name}: used for the days of the bill.'),
  'bill-weather': phrase('{name}: used for the weather of the bill’s days.'),
  'part-of-days': phrase('{name}: not used, since it covers only part of the bill’s days.'),
  causes: phrase('{name}: used to look for causes of a difference.'),
  months: phrase('{name}: used for the months since the estimate.'),
  'not-asked': phrase('{name}: not used, since a bill check asks for energy and weather only.'),
  'other-days': phrase('{name}: not used, since it has no day of the bill.'),
  'other-energy': phrase('{name}: not used, since this bill is for electricity.'),
  'said-otherwise': phrase('{name}: not used, since the bill or another record says what it could say.'),
};

export const recordUseSentence = ({ name, use, days }: RecordAccount): string =>
  say(USES[use], { name: columnNames(sayTold(name)), days: days === undefined ? '' : grouped(days) });

/** Of a day across, a column is one reading; the first of them tell enough. */
const NAMED_COLUMNS = 8;

/** One line for each use of columns. */
function columnLines(columns: readonly ColumnAccount[]): string[] {
  return [...Map.groupBy(columns, ({ use }) => use)].map(([use, ofUse]) => {
    const names = ofUse.slice(0, NAMED_COLUMNS).map(({ name }) => columnNames(name));
    const more = ofUse.length - names.length;
    const named = [...names, ...(more > 0 ? [say('{count} more', { count: more })] : [])].join(', ');
    return say('{columns}: {use}.', { columns: named, use: columnUse(use) });
  });
}

/** Every record of a file and every column of it. */
export const fileAccountLines = ({ columns = [], records }: FileAccount): string[] => [
  ...records.map(recordUseSentence),
  ...columnLines(columns),
];
