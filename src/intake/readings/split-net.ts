/** Readings of both signs are use less export: what was drawn and what was sent out become records of their own. */
import type { SeriesRole } from '../../model/shapes/evidence.ts';
import type { ColumnFacts } from '../layout/column-facts.ts';
import { plainWords } from '../layout/headings.ts';
import type { Sheet } from '../layout/sheet.ts';
import { statedCarrier, statedUnit } from '../layout/stated-energy.ts';
import { columnName } from '../layout/value-cells.ts';
import { DRAWN, SENT_OUT } from '../layout/vocabulary.ts';
import { choicesFor, type IntakeChoices, isSetAside } from '../terms/choices.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import { isOfDegrees } from '../terms/units.ts';

/** Fewer readings below nought are slips. A judgement. */
const LEAST_BELOW = 10;
/** A credit or two may stand among bills. */
const LEAST_PERIODS_BELOW = 3;
const LEAST_SHARE = 0.01;
const NET = /\bnet\b|\bnetto\b|saldo|\bsolde\b|\bneto\b|\bnetta\b/;
const BOTH_WAYS = /import.*export|export.*import|bezug.*einspeis|einspeis.*bezug/;

/** A sign in brackets or explained: a dash may stand between any words, and a plus between what is added. */
const SIGN_ABOVE = /[([] ?\+|\+ ?[)\]=:]|positi[vef]/;
const SIGN_BELOW = /[([] ?[-−–]|[-−–] ?[)\]=:]|negati[vef]/;
const IS_DRAWN = new RegExp(`${DRAWN.source}|bezug|afname|(?<![a-z])(import|draw|soutir)`);

/** Which sign the words above a column or a title give to what was sent out: "+ = feed-in", "import (-)". */
function signOfSent(sheet: Sheet, { heading }: ColumnFacts): 1 | -1 | undefined {
  const clauses = [heading, ...sheet.preamble.map(({ text }) => text)].flatMap((text) =>
    plainWords(text).split(/[/,;|]| (?:and|und|et|en|og|och|y|e) /),
  );
  const signs = clauses.flatMap((words) => {
    const [above, below] = [SIGN_ABOVE, SIGN_BELOW].map((sign) => sign.test(words));
    const [sent, drawn] = [SENT_OUT, IS_DRAWN].map((way) => way.test(words));
    return above === below || sent === drawn ? [] : [above === sent ? (1 as const) : (-1 as const)];
  });
  return new Set(signs).size === 1 ? signs[0] : undefined;
}

interface OfColumn {
  readonly column: ColumnFacts;
  readonly values: Float64Array;
}

/** What is sent out or made, written as what is drawn below nought: no amount is above it. */
export const isSentBelowNought = (role: SeriesRole | undefined, values: Float64Array): boolean =>
  (role === 'export' || role === 'generation') &&
  values.some((value) => value < 0) &&
  !values.some((value) => value > 0);

/** The column as it is, or two of it; asks where nothing says that the readings are net, refuses the net of days and longer. */
export function splitNet<T extends OfColumn>(
  sheet: Sheet,
  one: T,
  ofFile: IntakeChoices,
  book: RemarkBook,
  span: 'reading' | 'day' | 'period' = 'reading',
): T[] {
  const { column, values } = one;
  const choices = choicesFor(ofFile, columnName(sheet, column.index));
  const said = statedCarrier(sheet, column);
  if (isSentBelowNought(choices.role ?? said?.seriesRole, values)) {
    book.add('sent-below-nought', 'note', { column: columnName(sheet, column.index) });
    return [{ ...one, values: values.map((value) => 0 - value) }];
  }
  const mayBeNet =
    !isOfDegrees(choices.unit ?? statedUnit(sheet, column)) &&
    (choices.carrier ?? said?.carrier ?? 'electricity') === 'electricity' &&
    ['import', 'export'].includes(choices.role ?? said?.seriesRole ?? 'import');
  const name = columnName(sheet, column.index);
  if (!mayBeNet || isSetAside(ofFile, name)) return [one];
  // A name of both ways, or of the way out, does not say which of them is above nought.
  const isOut = (choices.role ?? said?.seriesRole) === 'export';
  const heading = plainWords(column.heading);
  const drawn = { carrier: 'electricity' as const, ...(isOut ? { seriesRole: 'import' as const } : {}) };
  const bought = { ...column, meaning: { ...column.meaning, ...drawn } };
  const sign = choices.net === 'bought' ? 1 : choices.net === undefined ? signOfSent(sheet, column) : -1;
  if (choices.net === false) return [NET.test(heading) || BOTH_WAYS.test(heading) ? { ...one, column: bought } : one];
  let below = 0;
  let above = 0;
  for (let i = 0; i < values.length; i++) {
    if (values[i]! < 0) below++;
    else if (values[i]! > 0) above++;
  }
  const isFew = Math.min(above, below) < (span === 'period' ? LEAST_PERIODS_BELOW : LEAST_BELOW);
  if (isFew || below < values.length * LEAST_SHARE) return [one];
  if (choices.net === undefined && sign === undefined && (isOut || !NET.test(heading)))
    book.add('net-asked', 'question', { column: name, count: below, ...(span === 'reading' ? {} : { found: span }) });
  else if (span !== 'reading') book.add('net-of-days', 'refusal', { column: name });
  else book.add('espi-net', 'note');
  // What went both ways in a day or a month cannot be told from its difference.
  if (span !== 'reading') return [one];
  const only = (sign: 1 | -1) => values.map((value) => (Number.isNaN(value) ? value : Math.max(0, sign * value)));
  // Unless said otherwise, what is below nought was sent out.
  const out = sign ?? -1;
  // No other energy goes both ways.
  const sentOut = { ...column.meaning, carrier: 'electricity' as const, seriesRole: 'export' as const };
  return [
    { ...one, values: only(out === 1 ? -1 : 1), column: bought },
    {
      ...one,
      values: only(out),
      column: { ...column, heading: `${name} (${out === 1 ? '+' : '−'})`, meaning: sentOut },
    },
  ];
}
