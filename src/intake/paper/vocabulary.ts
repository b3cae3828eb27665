/** The words by which a bill says what a number is, in English and German. Everyday words of the trade, from memory. */

/**
 * `\w` in a pattern is any letter or digit: to a regular expression ä and é are none. `ends` are words that others may end
 * with: without a pattern for their other letters they are found four times as fast.
 */
function words(pattern: string, ends = ''): RegExp {
  const whole = `(?<![\\p{L}])(?:${pattern})`;
  const all = (ends === '' ? whole : `(?:${whole}|${ends})`).replaceAll('\\w', '[\\p{L}\\d]');
  return new RegExp(`${all}(?![\\p{L}])`, 'iu');
}

/** Strom counts within any word. Without a pattern for its other letters it is found four times as fast. */
export const ELECTRICITY = new RegExp(
  `${words('electricity|electric|power supply|elektrizität|électricité|elektriciteit|stroom|energia elettrica|electricidad|energía eléctrica').source}|strom`,
  'iu',
);
export const GAS = words(
  '(?:natural )?gas|erdgas\\w*|gasrechnung|gasverbrauch\\w*|gasabrechnung|gaslieferung|gaz|aardgas|gas (?:naturale|natural)',
);
/** Heat that is piped to the home; no fuel is known of it. */
export const HEAT = words(
  'heat networks?|district heat(?:ing)?|communal (?:heat(?:ing)?|boilers?)|heating (?:and|&) hot water (?:charges?|bill|account|statement)|heat interface units?|energy cent(?:re|er)|heat (?:meter|used|supply|charges?)|(?:fern|nah)wärme\\w*|wärme(?:zähler|lieferung|abrechnung|menge|preis|verbrauch)\\w*|arbeitspreis wärme|chauffage urbain|réseau de chaleur|stadsverwarming|warmtelevering|teleriscaldamento',
);
export const WATER = words(
  '(?<!hot )water|sewage|sewerage|wastewater|trinkwasser\\w*|wasser\\w*|abwasser\\w*|schmutzwasser\\w*|niederschlagswasser\\w*|agua|acqua|acquedotto|drinkwater|eau (?:potable|froide)',
);

export const STANDING = words(
  'standing charges?|daily charges?|service charges?|fixed charges?|supply charges?|daily supply|grundpreis\\w*|grundgebühr\\w*|grundpauschale|verrechnungspreis|mess(?:preis|ung|entgelt|stellenbetrieb)\\w*|leistungspreis|bereitstellung\\w*|standing|abonnement|vastrecht|vaste (?:leverings)?kosten|quota fissa|término fijo|potencia contratada|cuota fija|costo fisso',
);
export const LEVY = words(
  'levy|levies|stromsteuer|energiesteuer|erdgassteuer|contribution\\w*|co.{0,2}[- ]?(?:preis|kosten|abgabe|steuer|zertifikat)\\w*|co[2₂][- ]?\\w*|carbon (?:tax|price)|climate change levy|ccl|renewables? obligation|contracts? for difference|cfd|[bt]nuos|bsuos|duos|capacity market|behg\\w*|netzentgelt\\w*|netznutzung\\w*|energiebelasting|trasporto|accisa?e?|accijns\\w*|nettarie(?:f|ven)|cspe|cta|impuesto (?:sobre la )?electricidad|oneri',
  'abgaben?|umlagen?',
);
export const ENERGY = words(
  'units?|energy|usage|use|used|consumption|kwh|unit rate|arbeitspreis\\w*|arbeit|verbrauch\\w*|energie\\w*|lieferung|menge|consommation|énergie|levering|verbruik|consumo|quota energia|energía',
);
/** That units were used, rather than what one of them costs. */
export const USED = words('used?|usage|consumption|verbrauch\\w*|consommation|verbruik|consumo');
export const VAT = words(
  '(?<!(?:no|free of) )vat|value added tax|umsatzsteuer|mehrwertsteuer|[gh]\\.?s\\.?t\\.?|mwst\\.?|ust\\.?|sales tax|tax|tva|btw|iva',
);
export const INCLUDES_VAT = words(
  'dont (?:la )?tva|incl(?:\\.|usief) btw|(?:incl(?:uding|udes|usive of|\\.)?|of which|includes?) (?:the )?(?:\\d+ ?% ?)?(?:vat|value added tax|tax)|vat included|darin enthalten\\w*|enthaltene\\w*|(?:inkl\\.?|inklusive|einschließlich|einschl\\.) (?:\\d+ ?% ?)?(?:gesetzl\\w*\\.? )?(?:mwst|ust|umsatzsteuer|mehrwertsteuer)\\.?',
);
export const PAYMENT = words(
  'cash|tendered|(?<!(?:late|prompt|early|on-time) )payments?(?! (?:fee|charge|interest|discount))|paid|you have paid|direct debits?(?! (?:fee|charge|discount))|received|thank you|abschl[aä]g\\w*|abschlagszahlung\\w*|vorauszahlung\\w*|zahlung\\w*|gezahlt\\w*|geleistete\\w*|bezahlt\\w*|acomptes?|mensualités?|déjà (?:payé|réglé)\\w*|versements?|reeds betaald|voorschot\\w*|pagos? a cuenta|pagos? anterior(?:es)?|pagado|acconti|acconto|già (?:pagat|versat)\\w*|betaalde?',
);
export const BALANCE = words(
  'balance|brought forward|carried (?:over|forward)|previous bill|last bill|opening balance|account (?:in credit|credit)|overdue|vortrag|übertrag|saldo|vorjahr|offener betrag|in credit|credit on (?:your|the|this) (?:account|meter)|(?:security )?deposit|kaution|(?:your )?debt(?! (?:collection|recovery))',
);
export const DUE = words(
  'amount due|to pay|total due|please pay|now due|balance due|due now|you owe|nachzahlung|guthaben|restbetrag|zu zahlen\\w*|erstattung|zahlbetrag|new balance|your new balance|forderung|à payer|te betalen|te ontvangen|(?:importe|total) a pagar|da pagare|reste à payer',
);
export const NEXT_PAYMENT = words(
  'new (?:monthly )?payments?|next payments?|new direct debit|monthly payment from|from now on|will be|künftig\\w*|neuer abschlag|neue abschläge|neuer monatlicher abschlag|zukünftig\\w*|nächste\\w*',
);
export const TAKEN_OFF = words(
  'discount|rebate|allowance|reduction|credit|refund|reward|goodwill|nachlass|ermäßigung|off your|remise|réduction|ristourne|korting|vermindering|descuento|bonificación|sconto|rabat',
  'bonus|rabatt|gutschrift',
);
export const ADDED = words(
  'green (?:gas|energy|electricity|power)|(?:\\w+ly|availability|capacity|network|metering|policy|customer|basic) charge|availability|netbeheer\\w*|trasporto|gestione del contatore|alquiler|fee|late charge|other charges?|adjustment|surcharge|mahn\\w*|gebühr|zuschlag|correction of|rounding|rundung\\w*',
);
/** What a supplier charges for beside energy and its supply: cover of a boiler or home, hire of a meter, being late, visits. */
export const SERVICE = words(
  'verzekering\\w*|assurance|assicurazione|seguro|schutzbrief\\w*|(?:home|boiler|heating|breakdown|plumbing|drains?|drainage|electrics|wiring|appliance|emergency|repair)s? cover|(?:boiler|heating|home|appliance|repair|emergency|call[- ]?out|maintenance) (?:care|service|servicing|call[- ]?out|protection|check|maintenance|plan)(?: (?:plan|cover|visit))?|safety check|wartung\\w*|meter (?:rental|rent|hire|lease)|zählermiete\\w*|late[- ](?:payment )?(?:fees?|charges?|interest)|(?:late|missed|failed|returned|unpaid|declined)(?: direct)? (?:payment|debit|cheque|appointment|visit) (?:fee|charge|interest)|interest on \\w+|reminder (?:fee|charge)|mahn\\w*|verzugszins\\w*|debt (?:collection|recovery (?:fee|charge|visit))|(?:collection|disconnection|reconnection|administration|card|appointment|cancellation|exit|paper bill|copy bill|engineer) (?:fee|charge|surcharge|visit)',
  'insurance|versicherung\\w*',
);
/** Money off that is reckoned by the unit and is no use. */
export const SUPPORT = words(
  'discount|rebate|allowance|price guarantee|support|bonus|rabatt|entlastung\\w*|\\w*preisbremse|nachlass|ermäßigung|off your|vermindering|korting|remise|réduction',
);
/** What stands behind a count and is no unit of it. */
export const NO_UNIT = words(
  'at|x|a|à|á|for|of|on|in|to|from|per|each|and|plus|less|minus|times|multiplied|by|with|your|our|the|is|was|are|were|estimated|actual|smart|customer|e|c|i|zu|zum|von|vom|bis|je|pro|mal|und|mit|im|am|ab|für|auf|de|du|des|au|aux|le|la|les|et|par|pour|tegen|van|tot|per|op|en|met|geschätzt|abgelesen|rate|price|cost',
);
/** Steps of a price by amount. */
export const STEP = words(
  'first|next|remaining|further|above|up to|over|tier\\w*|block|step|erste\\w*|weitere\\w*|restliche\\w*|stufe|tranche|schijf',
);
/** Units that were charged and are taken back. */
export const GIVEN_BACK = words(
  'over[- ]?(?:estimat|charg)\\w*|less units|take back|taken back|revers\\w*|cancel\\w*|correct\\w*|credit(?:ed)? back|storn\\w*|rückerstattung|zurück\\w*|korrektur\\w*|berichtig\\w*',
);
/** Units that another bill was for already. */
export const BILLED_BEFORE = words(
  '(?:already|previously|earlier) (?:estimated )?(?:billed|charged|invoiced)|(?:billed|charged|invoiced) (?:already|previously|before|earlier|on (?:your|the|a) (?:last|previous|earlier) (?:bill|statement|invoice))|(?:bereits|schon|zuvor) (?:ab|be)?gerechnet\\w*|(?:bereits|schon|zuvor) (?:berechnet\\w*|in rechnung gestellt\\w*)|déjà facturée?s?|reeds (?:gefactureerd|in rekening gebracht)\\w*|già fatturat[aoei]|ya facturad[ao]s?',
);
/** What leaves the home. */
export const EXPORT = words(
  'export\\w*|feed[- ]in|sent out|(?:you )?sold(?: to us)?|generation|einspeis\\w*|rückspeis\\w*|teruglever\\w*|teruggeleverd\\w*|injection|surplus|excedentes?|energia immessa',
);
const DELIVERED =
  'heating oil|kerosene|lpg|propane|butane|bottled gas|bulk gas|(?:wood|blown|bagged) pellets|logs|firewood|heizöl\\w*|flüssiggas\\w*|holzpellets|brennholz|fioul|mazout|gasolio|stookolie';
/** Fuel that is brought to the house. */
export const DELIVERED_FUEL = words(DELIVERED);
/** What else households get bills for. */
export const OTHER_GOODS = words(
  `${DELIVERED}|broadband|line rental|telephone|mobile|council tax|boiler service|insurance|telefon\\w*|mobilfunk\\w*|internet|grundsteuer\\w*|(?:your )?export(?:ed)?|feed[- ]in|einspeisevergütung`,
);
/** A paper that is no bill, one that stands no longer, one of a whole house. */
export const OFFER = words(
  '(?:your |a )?quot(?:e|ation)|offer|proposal|projection|if you (?:had|were)|would have (?:paid|cost)|charging (?:receipt|session|point)s?|angebot|\\w*(?:auftrags|vertrags)bestätigung|\\w*(?:heiz|neben|betriebs|warmwasser)kostenabrechnung|offerte|devis',
);
export const FORESEEN = words(
  'estimated (?:total|costs?|charges)|expected|forecast|voraussichtlich\\w*|erwartet\\w*|prognose\\w*',
);
/** A charge or a total of more than one household, of which a share is paid. */
export const WHOLE_HOUSE = words('(?:for the |whole )(?:house|building|block)|(?:gesamtes|ganzes) haus|gesamthaus');
export const CANCELLED = words(
  'your share|ihr anteil|this is (?:not a|no) bill|(?:is )?not a bill|this bill is (?:cancelled|void|replaced)|replaced by another|pro forma|stornorechnung|storniert\\w*|annulée|geannuleerd',
);
/** Another time than the bill's. */
export const EARLIER = words(
  '(?<!since (?:your |the )?)last (?:year|winter|summer|quarter|bill)|same (?:days|period|time)|previous (?:year|bill|quarter)|bill before|a year ago|vorjahr\\w*|année précédente|vorig jaar',
);
/** What is compared or foreseen and is no part of the bill. */
export const COMPARED = words(
  'last (?:year|winter|summer|quarter|bill)|same (?:days|period|time)|previous year|a year ago|estimated? (?:annual|yearly|for a year)|next year|a year|annual|for the year|over (?:twelve )?months|(?:you )?(?:would|could) (?:pay|save)|saved?|switch|projection|projected|forecast|compar\\w+|other tariffs?|cheap(?:er|est)|vorjahr\\w*|vergleich\\w*|prognose\\w*|voraussichtlich\\w*|jahresverbrauchsprognose|erwartet\\w*|expected|enthalten\\w*|davon|sparen|günstig\\w*|(?:berechnung|ermittlung) (?:ihre[rs]|der|des) (?:\\w+ )?abschl[aä]g\\w*|abschlags(?:berechnung|ermittlung)|wechsel\\w*|l’an dernier|année précédente|vorig jaar|vergelijk\\w*',
);
export const NET = words(
  'net|sub ?total|total before vat|before vat|excluding vat|excl\\.? vat|without vat|netto\\w*|zwischensumme|nettobetrag|hors (?:tva|taxes?)|total ht|subtotaal|excl\\.? btw|imponibile|base imponible',
);
export const TOTAL = words(
  'total|charges of this|charges for this|this bill|gesamt\\w*|brutto\\w*|rechnungsbetrag|summe|endbetrag|rechnungssumme|ttc|totaal|totale',
);
export const PERIOD = words(
  'period|statement|bill(?:ing)? (?:for|from|period)?|supply|from|between|charges from|zeitraum|abrechnungszeitraum|lieferzeitraum|abrechnungsperiode|verbrauchszeitraum|vom|von|rechnung|période|periode|periodo|du|van|dal',
);
export const READING = words(
  'readings?|meter|register|index|opening|closing|earlier|later|latest|previous|present|zählerstand\\w*|zählerstände|stand|ablesung\\w*|ablesewert|anfangsstand|endstand|relevé|meterstand\\w*|beginstand|eindstand|letture?|lecturas?|lectura',
);
export const ESTIMATED = words(
  'estimated?|est\\.?|geschätzt\\w*|rechnerisch\\w*|hochrechnung|hochgerechnet|maschinell|estimée?s?|geschat\\w*|estimad[ao]s?|stimat[aeio]',
);
export const ACTUAL = words(
  'actual|read by us|we read|our reading|smart|remote|abgelesen|ablesung(?: durch uns)?|fernablesung|netzbetreiber|real(?:es)?|rilevat[aeio]|gemeten',
);
export const BY_CUSTOMER = words(
  'customer|your own|you read|by you|selbstablesung|selbst abgelesen|kundenablesung|kunde',
);
export const CORRECTION = words(
  'correction(?: factor)?|volume correction|conversion factor|zustandszahl|z-zahl|umrechnungsfaktor',
);
export const CALORIFIC = words('calorific(?: value)?|cv|heating value|brennwert|abrechnungsbrennwert|mj');
export const HUNDRED_CUBIC_FEET = words('hundreds? (?:of )?cubic feet|hcf|ft3|ft³|imperial');

/** Names of registers, as they are kept. */
export const REGISTERS: readonly (readonly [RegExp, string])[] = [
  [words('off[- ]?peak|low rate|low units'), 'off peak'],
  [
    words('night(?:time)?|overnight|nachts?|nt|niedertarif|nachttarif|nachtstrom|heures creuses|dal(?:tarief|uren)?'),
    'night',
  ],
  [
    words(
      'normal (?:rate|units?)|day(?:time)?|tag|tags|tagstrom|dagtarief|dagverbruik|tagverbrauch|ht|hochtarif|tagtarif|heures pleines|normaal(?:tarief)?',
    ),
    'day',
  ],
  [words('evenings?|weekends?|abends?|wochenende'), 'evening and weekend'],
  [words('peak|high rate'), 'peak'],
  [words('shoulder'), 'shoulder'],
  [words('(?:all )?other (?:times|hours|units)'), 'other times'],
];
