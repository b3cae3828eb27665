/**
 * Words of a title that make other than the home's own amounts of its numbers. In a heading they are words that are not
 * known; a title is free text, so that only these tell there. Small letters without accents; from memory.
 */

const any = (...parts: readonly string[]): RegExp => new RegExp(`(?:${parts.join('|')})`);

/** A mean over whatever there is, in a title. */
export const MEAN = any(
  '(?<![a-z])(average[ds]?|avg|mean|promedio|medio|gemiddelde?|srednia|prumer\\w*|keskiarvo|medel(varde)?)(?![a-z])(?! (unit |outdoor |air )?(price|cost|rate|temp))',
  'durchschnitt(?!s?(preis|temp))|mittelwert|(?<![a-z])(im (schnitt|mittel)|moyenn?e?|media)(?![a-z])|gennemsnit|gjennomsnitt|genomsnitt|keskimaar',
);

/** What is foreseen, in a title; "last year" is none of it there. */
export const FORESEEN = any(
  'forecast|predict|project(ed|ion)|expected|(?<![a-z])target(?![a-z])|estimated (annual|yearly|use|usage|consum)|prognos|vorhersage|hochrechnung|planwert|erwartet|prevision|pronostic|previst[oa]|estimacion|verwacht|voorspel|forventet|forvantad|ennuste|predpoved',
);

/** Homes of others, or several together, in a title. */
const HOMES =
  '(flats|apartments|homes|houses|households|dwellings|tenants|wohnungen|hauser|haushalte|mieter|parteien|wohneinheiten|logements|appartements|foyers|viviendas|pisos|appartamenti|abitazioni|woningen|appartementen|huishoudens|lejligheder|boliger|husstande|lagenheter|hushall|leiligheter|mieszkan|bytu|asuntoa)';
export const OTHER_HOMES = any(
  '(?<![a-z])neighbou?r|(similar|typical|other|comparable) (homes?|house\\w*)|benchmark|nachbar|andere[rn]? (haushalt|haus|wohnung)|vergleichshaus|voisin|(?<![a-z])(vecin|vicin)[oi]s?(?![a-z])|(?<![a-z])buren(?![a-z])|(?<![a-z])naboe?r?(?![a-z])|grann(e|ar)(?![a-z])|naapuri',
  `(?<![a-z\\d])(all|whole|both|alle|beide|tou(te)?s|todos|todas|tutti|tutte|le|les|die|de|\\d+|two|three|four|five|six|zwei|drei|vier|funf|sechs|deux|trois|quatre|dos|tres|cuatro|due|tre|quattro|twee|drie|vier|to|fire)( (the|our|der|die|les|los|las|le|gli|de|\\d+|two|three|four|five|six|zwei|drei|vier|funf|sechs))* ${HOMES}(?![a-z])`,
);

/** Of each square metre, person or home, in a title. */
export const OF_EACH = any(
  '(\\/|(?<![a-z])(per|pro|par|por|je|al|pr\\.?)) ?(m2|m²|sqm|qm|sq\\.? ?(m|ft)|square|quadratmeter|metre carre|metro (cuadrado|quadrato)|vierkante|kvadratmeter|person|head|capita|occupant|resident|kopf|bewohner|personne|habitant|persona|habitante|persoon|flat|apartment|home|house|household|dwelling|room|wohnung|haushalt|wohneinheit|zimmer|logement|foyer|vivienda|abitazione|appartamento|woning|huishouden|bolig|husstand|lagenhet|hushall|degree.?day)(?![a-z])',
);

/** What readings are multiplied by, as meters behind transformers or with a lost digit have it. */
const TIMES =
  /\b(wandler(faktor|verhaltnis)|multiplikator|(ablese|zahler)faktor|multiplier|multipl(y|ied) (it |them |all )?(by|with)|(mit|mal) \d+ (zu )?multipli\w*|multipliziert mit|multiplie[rz]? par|multiplica[rd]\w* por|moltiplicar?e? per|vermenigvuldig\w* met|gang(e|es)? med|(meter|ct) (factor|ratio|multiplier)|coef\w*\.? (de )?lecture|factor (de )?(lectura|multiplicador)|multiplicador|costante (di )?lettura|costante k|meterfactor|vermenigvuldigingsfactor|mnozna|nasobitel|omsaetningstal)\b/;

export const isMultiplied = (words: string): boolean => TIMES.test(words);

/** The factor that words give, as written; undefined where they give none but 1. */
export function factorOf(words: string): string | undefined {
  const [, factor] = new RegExp(`${TIMES.source}\\D{0,12}([\\d.,]+)`).exec(words)?.slice(-2) ?? [];
  return factor === undefined || Number.parseFloat(factor.replace(',', '.')) === 1 ? undefined : factor;
}
