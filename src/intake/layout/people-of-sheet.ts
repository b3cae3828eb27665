/** Whom a table is for: the names in its titles and headings, and the cells below a heading for people or places. */
import { cellText } from '../text/table.ts';
import { plainWords } from './headings.ts';
import { isKnownWord, isPlaceWord } from './names.ts';
import type { Sheet } from './sheet.ts';
import { isHouse, withoutPeople } from './without-people.ts';

const OF_PEOPLE =
  /^(?:(?:site |main )?contact|bill payer|payer|user|owner|(?:bill|account|contract|policy|meter) ?(?:holder|owner|name)|(?:customer|client|tenant|occupier|occupant|resident|householder|homeowner|landlord|kunde|kundin|mieter(?:in)?|eigentumer(?:in)?|vertragspartner(?:in)?|anschlussnehmer(?:in)?|kontoinhaber(?:in)?|titulaire|titular|abonne|usager|locataire|cliente|intestatario|inquilino|klant|huurder|lejer|contractant)(?: ?name)?|(?:first |last |full |family |sur)?name|(?:vor|nach|familien|kunden)name|nom|prenom|nombre|apellidos?|nome|cognome|naam|navn)$/;
const OF_PLACES =
  /^(?:(?:supply |site |home |billing |postal |property )?address|site|location|place|premises|property|house(?= name)|street|anschrift|adresse|strasse|lieferstelle|abnahmestelle|verbrauchsstelle|direccion|domicilio|indirizzo|adres)(?: ?name)?$/;
/** Below these a name alone is a house; a site is as often a room. */
const OF_HOUSES = /address|anschrift|adres|direccion|domicilio|indirizzo|premises|property|house/;
const OF_ACCOUNTS =
  /^(?:account|customer|contract|client|kunden|vertrags|klant|contrat|contrato|contratto)[ -]?(?:number|nummer|nr|no|id|ref)?\.?$/;
const MOST = 60;
const TITLES = 30;

const wordsOf = (text: string): string[] => text.match(/\p{L}[\p{L}’'-]+/gu) ?? [];
const unknownIn = (text: string): string[] => wordsOf(text).filter((word) => word.length > 2 && !isKnownWord(word));

/** Words and phrases that no text kept of the file repeats; at most some, the longest first. */
export function peopleOf({ fileName, preamble, columns, table, firstRow, workbook }: Sheet): string[] {
  const texts = [
    fileName,
    workbook?.sheet ?? '',
    ...preamble.slice(0, TITLES).map(({ text }) => text),
    ...columns.map(({ heading }) => heading),
  ];
  const named = texts.flatMap((text) => {
    const own = new Set(wordsOf(withoutPeople(text)));
    return unknownIn(text).filter((word) => !own.has(word));
  });
  const cells = columns.flatMap(({ index, heading }) => {
    const words = plainWords(heading);
    const isOfPeople = OF_PEOPLE.test(words);
    if (!isOfPeople && !OF_PLACES.test(words) && !OF_ACCOUNTS.test(words)) return [];
    const own = new Set<string>();
    for (let row = firstRow; row < table.rowCount && own.size < MOST; row++) own.add(cellText(table, row, index));
    return [...own].flatMap((cell) => {
      const unknown = unknownIn(cell);
      if (isOfPeople && unknown.length > 0) return [cell, ...unknown];
      const isAddress =
        /\d/.test(cell) && (unknown.length > 0 || wordsOf(cell).some(isPlaceWord) || /\d{5}/.test(cell));
      return isAddress || (OF_HOUSES.test(words) && isHouse(cell)) ? [cell] : [];
    });
  });
  return [...new Set([...named, ...cells])].slice(0, 2 * MOST).toSorted((a, b) => b.length - a.length);
}
