/**
 * What the lines above a table and the name of its file say of the data. They are free text: names, streets, contracts,
 * dates of printing. A word there counts only where the line speaks of the data; above a column every word does.
 */
import type { SeriesRole } from '../../model/shapes/evidence.ts';
import { FUEL_IDS, FUELS } from '../../model/shapes/heating.ts';
import type { EnergyUnit } from '../terms/choices.ts';
import { cellText } from '../text/table.ts';
import type { ColumnFacts } from './column-facts.ts';
import { carrierOfWords, type Energy, offsetOfWords, plainWords, unitOfWords } from './headings.ts';
import type { Sheet } from './sheet.ts';
import {
  AMOUNT,
  BESIDE_THE_ENERGY,
  DRAWN,
  ELECTRIC,
  MADE,
  MADE_HERE,
  MONEY,
  NOT_ENGLISH,
  OF_A_COMPANY,
  OF_A_DAY,
  OF_A_PARTY,
  OF_HEAT_NETWORK,
  POWER,
  RECORD,
  SENT_OUT,
} from './vocabulary.ts';

/** "Water Lane", "Gasstraße", "Rue du Gaz". */
export const PLACE =
  /\b[\w-]+ (lane|street|st|road|rd|close|avenue|ave|drive|way|court|yard|hill|farm|mill|cottages?|grove|gardens|terrace|strasse|str|weg|platz|gasse|allee|straat|laan|plein|vej|gade)\b|\b[\w-]+(strasse|weg|platz|gasse|straat|laan|vej|gade)\b|\b(rue|avenue|chemin|place|calle|avenida|plaza|camino|via|viale|piazza|corso)( (du|de|des|de la|del|della|d'|l'))* ?[\w-]+/g;

/** Lines about the data rather than about somebody, a day or a company; places are taken out of them. */
function linesOfData({ preamble }: Sheet): string[] {
  return preamble
    .map(({ text }) => plainWords(text).replace(/^[#/*;'" -]+/, ''))
    .filter((words) => !OF_A_PARTY.test(words) && !OF_A_DAY.test(words) && !OF_A_COMPANY.test(words))
    .map((words) => words.replaceAll(PLACE, ' ').trim());
}

/** The name of the file and of its sheet in words. */
export const fileWords = ({ fileName, workbook }: Sheet): string =>
  plainWords(`${fileName.replace(/\.[a-z]{2,4}$/i, '')} ${workbook?.sheet ?? ''}`.replaceAll(/[-_.]/g, ' '))
    .replaceAll(PLACE, ' ')
    .trim();

/** "Export" and "generated on" are what was done with a file, not where the energy went. */
const withoutErrand = (words: string): string =>
  words.replaceAll(
    /\b((data |csv )?(?<!\bgrid )exports?(?![a-z])( (of|on|from))?|exported(?! (energy|electricity|power|units|k?wh))( (of|on|from))?|imports?(?![a-z])|downloads?|(generad[oa]|generated|erzeugt|produced) (el|on|am|at|by)\b.*)/g,
    ' ',
  );

function oneCarrier(words: string): Energy | undefined {
  const hasBoth = ELECTRIC.test(words) && FUEL_IDS.some((fuel) => FUELS[fuel].said.test(words));
  return hasBoth ? undefined : carrierOfWords(withoutErrand(words));
}

/** One energy only: a line that names two, or lines of different ones, say nothing of a column. */
export function carrierOfTitles(sheet: Sheet): Energy | undefined {
  const ofFile = oneCarrier(fileWords(sheet));
  const lines = linesOfData(sheet).filter(isSpeaking);
  // Where a title says that it was drawn, the name of the file tells no other way.
  if (ofFile) return lines.some((words) => DRAWN.test(words)) ? { carrier: ofFile.carrier } : ofFile;
  const said = lines.flatMap((words) => oneCarrier(words) ?? []);
  return said.every(({ carrier }) => carrier === said[0]!.carrier) ? said[0] : undefined;
}

/** Whether a line speaks of the data. */
const isSpeaking = (words: string): boolean =>
  [RECORD, AMOUNT, SENT_OUT, MADE, MADE_HERE, POWER, OF_HEAT_NETWORK].some((one) => one.test(words)) ||
  words.replaceAll(BESIDE_THE_ENERGY, ' ').trim().split(/ +/).length <= 2 ||
  /^(fuel|energy( type)?|commodity|utility|service|energieart|sparte|medium|energie|energia|energi|suministro|fornitura)\b/.test(
    words,
  );

/** A title has few words; a longer line tells of many things. */
const WORDS_OF_TITLE = 5;

/** What the name of the file and each title of the data say by themselves that it is of, with their words. */
export const energiesOfTitles = (sheet: Sheet): readonly (Energy & { readonly words: string })[] =>
  [fileWords(sheet), ...linesOfData(sheet).filter((words) => isSpeaking(words) && !/\bsent to\b/.test(words))]
    .filter((words, i) => i === 0 || words.split(/ +/).length <= WORDS_OF_TITLE)
    .flatMap((words) => {
      const energy = oneCarrier(words);
      return energy ? [{ ...energy, words }] : [];
    });

/** A longer line explains what stands in it. */
const WORDS_OF_LINE = 12;

/** The name of the file and each title that speaks of its energy, in words. */
export const titlesOfEnergy = (sheet: Sheet): readonly string[] => [
  ...[fileWords(sheet)].filter((words) => carrierOfWords(withoutErrand(words)) !== undefined),
  ...linesOfData(sheet).filter(
    (words) =>
      words.split(/ +/).length <= WORDS_OF_LINE &&
      (carrierOfWords(withoutErrand(words)) !== undefined || unitOfWords(words) !== undefined || isSpeaking(words)),
  ),
];

/** Where the energy went by the name of the file alone; undefined where it names no way or another energy. */
export function wayOfFileName(sheet: Sheet): SeriesRole | undefined {
  const said = oneCarrier(fileWords(sheet));
  return said?.carrier === 'electricity' ? said.seriesRole : undefined;
}

/** A title names a register beside a word for one: its words for times of day may be of anything. */
const REGISTER_SAID =
  /\b(?:register|rate|tariff|tarif|zahlwerk)s?\W{1,3}(day|night|peak|off.?peak|low|high|[hn]t)\b|\b(day|night|peak|off.?peak|low|high) (?:rate|register|tariff|units)\b|\b(heures (?:pleines|creuses)|hochtarif|niedertarif|nachtstrom)\b/g;

/** The one register of some hours that a title or the name of the file gives; prices and both of a meter give none. */
export function registersOfTitles(sheet: Sheet): string | undefined {
  const said = [fileWords(sheet), ...sheet.preamble.map(({ text }) => plainWords(text))]
    .filter((words) => !/\d ?(p|ct|c)\b/.test(words) && !(MONEY.test(words) && /\d/.test(words)))
    .flatMap((words) => [...words.matchAll(REGISTER_SAID)].map((found) => found.slice(1).find(Boolean)!));
  return new Set(said).size === 1 ? said[0] : undefined;
}

/** Whether words above its columns are of a language other than English. */
export const isInOtherLanguage = ({ columns }: Sheet): boolean =>
  columns.some(({ heading }) => NOT_ENGLISH.test(plainWords(heading)));

/** Amounts and prices: 4.6 kW, 24 p/kWh. */
const AMOUNT_OF_UNIT = /\d[\d.,' ]*\s*([kmg]?wh?|[gm]j|m3|m³|°?[cf]|therms?|kva|btu)(?![a-z])/g;
const PRICE = /\S*\s?\/ ?[km]?wh\b|\b(per|pro|par|por|al|je) [km]?wh\b/g;
const BY_LABEL =
  /(?:^|[([:=]|\b(?:in|en|i|units?|uom|einheit|unite|unidad|unita|eenheid|enhed)\b[ :=]*)\s*(watts?|w)\s*(?:$|[)\],;])/;

/** Unit that the titles give to the whole table; a lone W needs a word for it, since it may be anybody's name. */
export function unitOfTitles(sheet: Sheet): EnergyUnit | undefined {
  const units = new Set(
    [...linesOfData(sheet), fileWords(sheet)].flatMap((words) => {
      const bare = words.replaceAll(PRICE, ' ').replaceAll(AMOUNT_OF_UNIT, ' ');
      const unit = unitOfWords(bare);
      return unit === undefined || (unit === 'W' && !BY_LABEL.test(bare)) ? [] : [unit];
    }),
  );
  return units.size === 1 ? [...units][0] : undefined;
}

/** Winter time by name; "CET/CEST" is what the clocks of a home show. */
const WINTER =
  /\b(mez|cet|met|est|pst|cst|mst|winterzeit|normalzeit|standard time|wintertijd|heure d.hiver|normaltid)\b/;
const SUMMER =
  /\b(mesz|cest|mest|edt|pdt|cdt|mdt|sommerzeit|summer time|daylight|zomertijd|heure d.ete|sommertid|wechsel)/;

/** Clock that does not change, where words above the dates or a title that is no moment of its own name it. */
export function steadyClockOf(
  sheet: Sheet,
  of: readonly (number | undefined)[],
): 'utc' | 'standard' | 'offset' | undefined {
  if (offsetSaid(sheet, of) !== undefined) return 'offset';
  if (saysUtc(sheet, of)) return 'utc';
  const words = of.map((c) => plainWords((c === undefined ? undefined : sheet.columns[c]?.heading) ?? '')).join(' ; ');
  return WINTER.test(words) && !SUMMER.test(words) ? 'standard' : undefined;
}

/** What a title says of a moment: "created 09:30 GMT". */
const MOMENT = /\d[:.h]\d\d(:\d\d)?\s*(UTC|GMT)/gi;

/** Minutes east of UTC that words above the dates or a title give to all of them; undefined where none or UTC itself. */
export function offsetSaid({ columns, preamble }: Sheet, of: readonly (number | undefined)[]): number | undefined {
  const above = of.flatMap((c) => (c === undefined ? [] : [columns[c]?.heading ?? '']));
  const titles = preamble.map(({ text }) => text.replaceAll(MOMENT, ' '));
  return [...above, ...titles].map(offsetOfWords).find((offset) => offset !== undefined && offset !== 0);
}

/** Whether the words above the dates, or a title that is no moment of its own, say that times are in UTC. */
const saysUtc = (sheet: Sheet, of: readonly (number | undefined)[]): boolean => {
  const { columns, preamble } = sheet;
  return (
    of.some((c) => c !== undefined && columns[c]?.meaning.utc === true) ||
    columns.some(
      ({ index, words, sampled, heading }) => words === sampled && OF_ZONES.test(heading) && isUtc(sheet, index),
    ) ||
    preamble.some(({ text }) => /\b(UTC|GMT)\b(?! ?[+-])/.test(text.replaceAll(MOMENT, ' ')))
  );
};

const OF_ZONES = /time[ _]?zone|^tz$|zeitzone|fuseau|tijdzone|tidszon|zona horaria|fuso/i;

/** Whether each row names that clock. */
function isUtc({ table, firstRow }: Sheet, column: number): boolean {
  for (let row = firstRow; row < table.rowCount; row++)
    if (!/^(utc|gmt|z)?$/i.test(cellText(table, row, column))) return false;
  return true;
}

/** Pulses for one kWh, where the words above the column or the titles name them: "1000 imp/kWh". */
export function pulsesSaid({ preamble }: Sheet, { heading }: ColumnFacts): number | undefined {
  for (const text of [heading, ...preamble.map((line) => line.text)]) {
    const number = PULSES.exec(text.toLowerCase())?.[1];
    if (number !== undefined) return Number(number.replaceAll(/\D/g, ''));
  }
  return undefined;
}
const PULSES = /(?<![\d.,])(\d{2,6}|\d{1,3}[ .,']\d{3}) ?(?:imp\w*|pulse?s?n?) ?(?:per|pro|par|por|a|\/) ?k ?wh/;

const TENTHS =
  /(0[.,]1|(?<!\d)1 ?\/ ?10) ?(°|º|&#176;|grad|deg)|\b10ths? of (a )?(°|deg|c\b)|\btenths? (of )?(a )?c\b|[x×*] ?10(?!\d)|(?<!\d)10 ?[x×*]|zehntel ?grad|tenths? of (a )?(°|deg)|dixiemes? de deg|tienden? van|decimi di grado|decimas? de grado/;

/** Whole numbers that count tenths of a degree: by the line of the titles that explains the column, else by any words. */
export function saysTenths({ preamble }: Sheet, { heading, smallest, largest }: ColumnFacts): boolean {
  if (!Number.isInteger(smallest) || !Number.isInteger(largest)) return false;
  const lines = preamble.map(({ text }) => plainWords(text).replace(/^[#/*;'" -]+/, ''));
  const name = plainWords(heading);
  const own = lines.filter((line) => line.startsWith(name) && /^ *[:=]/.test(line.slice(name.length)));
  return [name, ...(own.length > 0 ? own : lines)].some((words) => TENTHS.test(words));
}
