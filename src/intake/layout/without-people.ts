/**
 * Texts of a file that are kept (names of files, sheets, records and columns, titles and footers in remarks) without
 * whom they are of. A name is known by a title, by a word that announces it, or as `names.ts` says; a lone surname is not.
 */
import { monthOfName } from '../dates/month-names.ts';
import { plainWords } from './headings.ts';
import { isKnownWord, isPlaceWord, isSurname, withoutBareNames } from './names.ts';
import { AMOUNT, RATE_REGISTER } from './vocabulary.ts';

export const TITLES = 'Mrs?|Ms|Miss|Mx|Dr|Prof|Herrn?|Frau|Familie|Eheleute|Madame|Monsieur|Mme';
const GAP = '[ ,_-]+';
/** An initial has its point; the ending of a file’s name is no part of a name. */
const DOT = '\\.(?!\\p{L}{2,4}$)';
const PARTICLES = 'de|des|du|van|von|der|del|della|di|le|la';
const NAME = `(?:&|and|und|et|(?:(?:${PARTICLES})${GAP})*\\p{Lu}(?:[\\p{L}’'-]|${DOT})*)`;

/** A title with the names behind it. */
const PERSON = new RegExp(
  `(?<!\\p{L})(?:${TITLES}|MRS?|HERRN?|FRAU|FAMILIE)\\.?(?:[ ,_]+${NAME}(?![\\p{L}\\d]))+`,
  'gu',
);
const HOLDER = `(?:bill|account|contract|policy|meter|meter point)[ _-]?(?:holder|owner)|(?:first|last|full|family|customer|client|owner|tenant|occupant|account|resident)[ _-]?name|vor[ _-]?und[ _-]?nachname|(?:vor|nach|familien|kunden)name|kontoinhaber(?:in)?|vertragspartner(?:in)?|anschlussnehmer(?:in)?|dear(?! (?:sir|madam|all|householder|resident|occupier|occupant|tenant|owner)(?!\\p{L}))|customer|client|tenant|landlord|occupier|occupant|resident|householder|homeowner|prepared for|kund(?:e|in)|mieter(?:in)?|vermieter(?:in)?|eigentümer(?:in)?|titulaire|titular|locataire|abonné|usager|nom|prénom|nombre|cliente|inquilino|intestatario|nome|cognome|klant|naam|huurder|contractant|navn|lejer`;
const IS_HOLDER = new RegExp(`^(?:${HOLDER}|owner|neighbour|installer|manufacturer)$`, 'i');
/** Alone it is whose it is; "meter name" is not. */
const BARE = '(?<!(?:meter|file|register|sheet|column|site|device|channel|point|tariff|plan|user)[ _-]?)name';
const WORD = `(?:[\\p{L}’'&]|${DOT})+`;
/** "Customer Anna Weber": names begin with a capital. */
const ANNOUNCED = new RegExp(
  `(?<![\\p{L}])((?:${HOLDER}|${BARE})[ ]+)(${WORD}(?:${GAP}${WORD})*)(?![\\p{L}\\d])`,
  'giu',
);
/** "customer: anna weber", "kunde_anna_weber", "Name: …": whatever is written behind. */
const LISTED = new RegExp(
  `(?<![\\p{L}])((?:${HOLDER}|${BARE})(?:[ ]*[:=][ ]*|[_-]+))(${WORD}(?:${GAP}${WORD})*)`,
  'giu',
);
const TITLED = new RegExp(`(?<![\\p{L}])((?:mrs?|ms|herr|frau|familie)[_-]+)(${WORD}(?:[_-]+${WORD})*)`, 'giu');
/** Words of the data or of its paper, which are nobody's name. */
const OF_RECORD =
  /^(meters?|readings?|data|daten|report|export|download|history|statement|bills?|invoice|number|no|nr|id|ref|reference|code|type|class|group|name|address|account|contract|tariff|service|services|portal|site|main|total|summary|profile|load|power|rate|register|smart|half|hourly|halfhourly|daily|monthly|yearly|year|month|week|from|to|of|the|per|by|in|on|at|my|all|new|old|file|sheet|tab(?:elle)?|house|home|flat|wohnung|heat|pump|solar|pv|battery|ev|charger|boiler|kitchen|incomer|supply|nummer|zahl\w*|werte?|messstelle|marktlokation|lectur\w*|lettur\w*|releves?|points?|punto|charges?|fees?|prices?|costs?|credit|amount|balance|segment|category|since|start|end|date|time|status|notes?|rechnung|jahr|monat|lastgang|stunden\w*|compteur|donnees|contador|datos|contatore|dati|teller|gegevens|maler|watts?|lit(?:er|re)s?|therms?|days?|hours?|weeks?|months?|kwh|mwh|wh|kw|csv|xlsx?|txt|xml|json|zip|pdf|utc|gmt|mpan|mprn|january|february|march|april|may|june|july|august|september|october|november|december)$/;

const PARTICLE = new RegExp(`^(?:${PARTICLES})$`, 'i');

const isOfRecord = (word: string): boolean => {
  const plain = plainWords(word);
  return (
    OF_RECORD.test(plain) || (isKnownWord(word) && !isSurname(word)) || RATE_REGISTER.test(plain) || AMOUNT.test(plain)
  );
};

const isUnknownName = (word: string): boolean => /^\p{Lu}[\p{L}’'-]{2,}$/u.test(word) && !isOfRecord(word);

/** Of names in a row those before the first word of the record are a dash. */
function withoutNames(found: string, lead: string, names: string): string {
  const words = names.split(/([ ,_-]+)/);
  // "April Jones": where a name is announced a month before a word that is none of the record is a given name.
  const from = monthOfName(plainWords(words[0]!)) > 0 && isUnknownName(words[2] ?? '') ? 1 : 0;
  const end = words.findIndex((word, at) => at >= from && at % 2 === 0 && word !== '' && isOfRecord(word));
  const own = (end < 0 ? words : words.slice(0, end)).filter((_, at) => at % 2 === 0);
  if (!own.some((word) => /^\p{L}[\p{L}’'.-]+$/u.test(word) && !PARTICLE.test(word))) return found;
  return `${lead}–${end < 0 ? '' : words.slice(end - 1).join('')}`;
}

/** What the record is of, or at which hours, is kept; the title goes too. */
function withoutPerson(found: string): string {
  const [title] = /^[\p{L}.]+[ ,_]+/u.exec(found)!;
  const names = found.slice(title.length);
  return names.split(/[ ,_]+/).some(isUnknownName) ? withoutNames(found, '', names) : found;
}

/** Behind a bare gap it begins with a capital or a number. */
function ofAddress(found: string, word: string, gap: string, address: string): string {
  const isSaid = /[:=]/.test(gap) || /^[\p{Lu}\d]/u.test(address);
  return isSaid && (!isOfRecord(address.split(' ')[0]!) || isHouse(address)) ? `${word}${gap}–` : found;
}

/** "Mill Barn", "High Meadow": two words with capitals of which one is unknown or a place. */
export function isHouse(text: string): boolean {
  const words = text.match(/(?<!\p{L})\p{Lu}[\p{L}’'-]+/gu) ?? [];
  return (
    words.length > 1 &&
    words.some((word) => isUnknownName(word) || (isPlaceWord(word) && !OF_RECORD.test(plainWords(word))))
  );
}

/** "Property: Rose Cottage": of other words behind a site most are a part of it. */
const HOUSE_NAMED =
  /(?<!\p{L})((?:property|site|home|house|dwelling)(?: name)?[ ]*[:=][ ]*)(?:\p{Lu}[\p{L}’'-]+ ){1,3}(?:Cottages?|Lodge|Rectory|Vicarage|Grange|Manor)(?!\p{L})/giu;
/** "Thorne’s house". */
const OWNED =
  /(?<!\p{L})(\p{Lu}[\p{L}-]{2,})[’']s(?= (?:house|home|flat|meter|electricity|gas|bills?|readings?|usage)(?!\p{L}))/gu;
/** What commas part off before a British postcode is its house and whom it is for, but for parts that are of the record. */
function withoutHouse(text: string): string {
  const at = text.search(POSTCODES[0]!);
  const ofPart = (found: string) => (!/\d/.test(found) && isHouse(found) ? `${/^\s*/.exec(found)![0]}–` : found);
  return at < 0 ? text : text.slice(0, at).replaceAll(/[^,;:|\t\n]+(?=,)/g, ofPart) + text.slice(at);
}

/** The number of the house stays: alone it leads nowhere, and it tells "3 Mill Court gas" from that of number 5. */
const ofStreet = (found: string): string =>
  `${/^\d{1,4}[a-z]?,?[ _]+/i.exec(found)?.[0] ?? ''}–${/[ _]\d{1,4}[a-z]?$/i.exec(found)?.[0] ?? ''}`;

const MAIL = /[\w.+-]{1,64}@[\w-]+(?:\.[\w-]+)+/g;
/** All that stands behind a word for an address. */
const ADDRESS =
  /(?<!\p{L})((?:(?:supply|site|home|billing|postal|property) )?address|premises|post ?code|anschrift|adresse|lieferstelle|abnahmestelle|verbrauchsstelle|plz|direcci[oó]n|domicilio|indirizzo|adres)([ ]*[:=][ ]*|,?[ ]+)([^;|\t\n]*[\p{L}\d][^;|\t\n]*)/giu;
const STREET = 'lane|street|st|road|rd|close|avenue|ave|drive|way|court|hill|row|grove|gardens|terrace|crescent|place';
const STREETS: readonly RegExp[] = [
  new RegExp(`(?<![\\p{L}\\d.])\\d{1,4}[a-z]?,?[ _]+(?:\\p{L}[\\p{L}’'-]+[ _]+){1,3}(?:${STREET})(?!\\p{L})`, 'giu'),
  /(?<!\p{L})(?:\p{Lu}[\p{L}-]{0,40}[ _]){0,3}\p{Lu}[\p{L}-]{0,40}[ _-]?(?:stra(?:ß|ss)e|str\.|weg|platz|gasse|allee|straat|laan|plein|vej|gade)[ _]+\d{1,4}[a-z]?(?![\p{L}\d])/giu,
  /(?<!\p{L})(?:rue|avenue|chemin|all[ée]e|impasse|quai|calle|avenida|camino|plaza|via|viale|piazza|corso)[ _]{1,2}(?:[\p{L}’']+,?[ _]{1,2}){1,5}\d{1,4}(?![\p{L}\d])/giu,
  /(?<![\p{L}\d.])\d{1,4},?[ _]+(?:bis[ _]+)?(?:rue|avenue|chemin|boulevard|all[ée]e|impasse|quai|route|cours)[ _]+(?:(?:de|du|des|la|les)[ _]+|l[’'])*\p{L}[\p{L}’'-]*/giu,
];
/** "Am Anger 27": a street by its preposition, where no word of the record follows. */
const AT_STREET =
  /(?<!\p{L})(?:am|an der|auf de[mr]|im|in der|zum|zur|unter den|hinter de[mr]|alte[rs]?)[ _]+(\p{L}[\p{L}-]{2,40})[ _]+\d{1,4}[a-z]?(?![\p{L}\d.])/giu;
/** British, Dutch, and of five digits before a town. */
const POSTCODES: readonly RegExp[] = [
  /(?<![\p{L}\d])[A-Z]{1,2}\d[\dA-Z]?[ _]?\d[A-Z]{2}(?![\p{L}\d])/gu,
  /(?<![\p{L}\d])[1-9]\d{3} ?[A-Z]{2}[ _]\p{Lu}\p{Ll}{2,}/gu,
  /(?<![\p{L}\d.,])\d{5}[ _]\p{Lu}\p{Ll}{2,}/gu,
];

/** Letters and digits in one, or digits in groups, as numbers of meters and accounts are printed. */
const LONG_NUMBER = /[\p{L}\d]*\d[\p{L}\d]*(?: \d{2,})*/gu;
const GROUPED = /(?<![\p{L}\d])\d{2,}(?:[-_/.]\d{3,}){2,}(?:[-_/.]\d+)?(?![\p{L}\d])/gu;
const [LEAST_DIGITS, LEAST_IN_GROUPS, SHOWN_DIGITS] = [7, 10, 4];
const DATE = /^(?:(?:19|20)\d{6}(?:T?(?:\d{4}|\d{6}))?Z?|[0-3]\d[01]\d20\d\d)$/;
/** Shorter numbers of accounts, known by the word before. */
const ACCOUNT =
  /(?<!\p{L})((?:account|customer|contract|client|kunden|vertrags|klant|contrat|contrato|contratto)[ _-]?(?:number|nummer|nr|no|id|ref(?:erence)?)?[ .:#=_-]*)(?!20\d\d-20\d\d)(\d{5,6}|\d{4}-\d{4,6})(?!\d)/giu;

const shortened = (number: string): string => `…${number.replaceAll(/[^\p{L}\d]/gu, '').slice(-SHOWN_DIGITS)}`;

/** Characters of a text that are kept: no name of a record has more, and looking through it stays quick. */
const LONGEST = 1000;

/**
 * A text as it may be kept: names and addresses are a dash. Of a long number the end is left, of a street the number of
 * the house, which tell meters apart. `people` are words that the rest of the file shows to be somebody's.
 */
export function withoutPeople(text: string, people: readonly string[] = []): string {
  const behind = (found: string, lead: string, names: string) => withoutNames(found, lead, names);
  const ofTown = (found: string) => (isOfRecord(found.split(/[ _]/).at(-1)!) ? found : '–');
  const named = withoutHouse(text.slice(0, LONGEST))
    .replace(MAIL, '–')
    .replace(ADDRESS, ofAddress)
    .replace(HOUSE_NAMED, '$1–')
    .replace(OWNED, (found, name) => (isUnknownName(name) && !IS_HOLDER.test(name) ? '–' : found))
    .replace(PERSON, withoutPerson)
    .replace(TITLED, behind)
    .replace(LISTED, behind)
    .replace(ANNOUNCED, (found, lead, names) => (/^\p{Lu}/u.test(names) ? withoutNames(found, lead, names) : found));
  const housed = STREETS.reduce((whole, place) => whole.replace(place, ofStreet), named).replace(
    AT_STREET,
    (found, name) => (/^\p{Lu}/u.test(name) && !isKnownWord(name) ? ofStreet(found) : found),
  );
  const placed = POSTCODES.reduce((whole, place) => whole.replace(place, ofTown), housed);
  return withoutWords(withoutBareNames(placed), people)
    .replace(ACCOUNT, (_, lead, number) => `${lead}…${number.slice(-2)}`)
    .replace(GROUPED, (number) => (number.replaceAll(/\D/g, '').length < LEAST_IN_GROUPS ? number : shortened(number)))
    .replace(LONG_NUMBER, (number) => {
      const digits = number.replaceAll(/\D/g, '').length;
      const isShort = digits < (number.includes(' ') ? LEAST_IN_GROUPS : LEAST_DIGITS);
      return isShort || DATE.test(number) ? number : shortened(number);
    });
}

/** Words that stand there anyhow, small or capital, with gaps or "_" between them. */
function withoutWords(text: string, words: readonly string[]): string {
  if (words.length === 0) return text;
  const any = words
    .map((word) =>
      word
        .split(/[\s_-]+/)
        .map((part) => part.replaceAll(/[\\^$.*+?()[\]{}|/]/g, '\\$&'))
        .join('[\\s_-]+'),
    )
    .join('|');
  const masked = text.replaceAll(new RegExp(`(?<![\\p{L}\\d])(?:${any})(?![\\p{L}\\d])`, 'giu'), '–');
  return masked === text ? text : masked.replaceAll(/–(?:[\s,&_-]*–)+/g, '–');
}

/** The same of a value that a remark repeats: a reading or a date stays as it is. */
export const foundWithoutPeople = (found: string, people: readonly string[] = []): string =>
  /\d{10}/.test(found) || /\p{L}{3}/u.test(found) ? withoutPeople(found, people) : found;

/** Names that tell parts of a file apart, each still another than the rest. */
export function namesWithoutPeople(names: readonly string[], people: readonly string[] = []): string[] {
  const given = new Map<string, number>();
  return names.map((name) => {
    const own = withoutPeople(name, people);
    const count = (given.get(own) ?? 0) + 1;
    given.set(own, count);
    return count === 1 ? own : `${own} (${count})`;
  });
}

/** Records whose names differ by people alone stay apart. */
export function recordsWithoutPeople<T extends { readonly name: string }>(
  records: readonly T[],
  people: readonly string[] = [],
): T[] {
  const all = [...new Set(records.map(({ name }) => name))];
  const own = namesWithoutPeople(all, people);
  return records.map((one) => ({ ...one, name: own[all.indexOf(one.name)]! }));
}
