/** A title, or the name of the file, that says one thing and a heading that says another are asked about. */
import type { Carrier, Series, SeriesRole } from '../../model/shapes/evidence.ts';
import { isFuel } from '../../model/shapes/heating.ts';
import { choicesFor, type IntakeChoices } from '../terms/choices.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import { carrierOfWords, type Energy, plainWords } from './headings.ts';
import type { Sheet } from './sheet.ts';
import { energiesOfTitles } from './titles.ts';
import { DRAWN, USED, WHOLE_HOME } from './vocabulary.ts';
import { withoutPeople } from './without-people.ts';

interface Said {
  readonly carrier: Carrier;
  /** Use that says so is drawn, where nothing else is said. */
  readonly way: 'drawn' | SeriesRole | undefined;
}

/** Asks where all that the titles say contradicts what a heading says, and nothing else of the file is of what they say. */
export function askTitles(sheet: Sheet, series: readonly Series[], choices: IntakeChoices, book: RemarkBook): void {
  const titles = energiesOfTitles(sheet).map((one) => ({ ...saidOf(one, DRAWN, one.words), words: one.words }));
  const [first] = titles;
  if (!first) return;
  const all = [
    ...series.map(ofRecord),
    ...sheet.columns.flatMap(({ meaning: { carrier, seriesRole }, heading }) =>
      carrier === undefined ? [] : [saidOf({ carrier, ...(seriesRole ? { seriesRole } : {}) }, USED, heading)],
    ),
  ];
  if (!titles.every((title) => !all.some((one) => tellSame(title, one)))) return;
  for (const one of series) {
    const { role, carrier } = choicesFor(choices, one.name);
    if (role !== undefined || carrier !== undefined) continue;
    const own = ofRecord(one);
    // Where the heading does not say it, the title does.
    const isSaid = carrierOfWords(plainWords(one.name))?.carrier === one.carrier;
    if (!isSaid || !titles.every((title) => contradict(title, title.words, own))) continue;
    const found = { column: one.name, found: withoutPeople(first.words) };
    if (first.carrier !== one.carrier) book.add('title-energy-asked', 'question', { ...found, expected: one.carrier });
    else if (!book.has('direction-asked') && !book.has('direction-of-name-asked'))
      book.add('title-way-asked', 'question', { ...found, expected: one.role });
  }
}

function saidOf({ carrier, seriesRole }: Energy, drawn: RegExp, words: string): Said {
  const plain = plainWords(words);
  return { carrier, way: seriesRole ?? (drawn.test(plain) || DRAWN.test(plain) ? 'drawn' : undefined) };
}

const ofRecord = ({ carrier, role, name }: Series): Said =>
  saidOf({ carrier, ...(role === 'import' ? {} : { seriesRole: role }) }, USED, name);

function contradict(title: Said, words: string, own: Said): boolean {
  if (own.carrier !== 'electricity' && !isFuel(own.carrier)) return false;
  if (title.carrier !== own.carrier) {
    // What heats a home is a title of its fuel too.
    if (title.carrier === 'heat') return own.carrier === 'electricity' && own.way !== 'heat-pump';
    return title.carrier === 'electricity' || isFuel(title.carrier);
  }
  if (title.way === undefined || own.way === undefined || title.way === own.way) return false;
  // What panels made is sent out in part.
  if (title.way === 'generation' && own.way === 'export') return false;
  // A home is named after its panels, and its use stands beside what they make.
  return title.way !== 'generation' || !(WHOLE_HOME.test(words) || USED.test(words));
}

const tellSame = (title: Said, { carrier, way }: Said): boolean =>
  carrier === title.carrier && (title.way === undefined || way === undefined || way === title.way);
