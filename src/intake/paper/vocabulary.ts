/** The words by which a bill says what a number is, in English and German. Everyday words of the trade, from memory. */

const words = (pattern: string): RegExp => new RegExp(`(?<![\\p{L}])(?:${pattern})(?![\\p{L}])`, 'iu');

export const ELECTRICITY = words('electricity|electric|power supply|strom\\w*|elektrizität');
export const GAS = words('(?:natural )?gas|erdgas\\w*|gasrechnung|gasverbrauch\\w*|gasabrechnung|gaslieferung');
export const WATER = words(
  'water|sewage|sewerage|wastewater|trinkwasser\\w*|wasser\\w*|abwasser\\w*|schmutzwasser\\w*|niederschlagswasser\\w*',
);

export const STANDING = words(
  'standing charges?|daily charges?|service charges?|fixed charges?|supply charges?|daily supply|grundpreis\\w*|grundgebühr\\w*|verrechnungspreis|messpreis|leistungspreis|bereitstellung\\w*|standing',
);
export const LEVY = words(
  'levy|levies|stromsteuer|energiesteuer|erdgassteuer|konzessionsabgabe\\w*|\\w*umlage|co2[- ]?\\w*|carbon (?:tax|price)|climate change levy|behg\\w*|netzentgelt\\w*',
);
export const ENERGY = words(
  'units?|energy|usage|use|used|consumption|kwh|unit rate|arbeitspreis\\w*|arbeit|verbrauch\\w*|energie\\w*|lieferung|menge',
);
export const VAT = words('vat|value added tax|umsatzsteuer|mehrwertsteuer|mwst\\.?|ust\\.?|sales tax|tax');
export const INCLUDES_VAT = words(
  '(?:incl(?:uding|udes|usive of|\\.)?|of which|includes?) (?:the )?(?:\\d+ ?% ?)?(?:vat|value added tax|tax)|vat included|darin enthalten\\w*|enthaltene\\w*|(?:inkl\\.?|inklusive|einschließlich|einschl\\.) (?:\\d+ ?% ?)?(?:gesetzl\\w*\\.? )?(?:mwst|ust|umsatzsteuer|mehrwertsteuer)\\.?',
);
export const PAYMENT = words(
  'payments?|paid|you have paid|direct debits?|received|thank you|abschl[aä]g\\w*|abschlagszahlung\\w*|vorauszahlung\\w*|zahlung\\w*|gezahlt\\w*|geleistete\\w*|bezahlt\\w*',
);
export const BALANCE = words(
  'balance|brought forward|carried (?:over|forward)|previous bill|last bill|opening balance|account (?:in credit|credit)|overdue|vortrag|übertrag|saldo|vorjahr|offener betrag|in credit|(?:your )?debt',
);
export const DUE = words(
  'amount due|to pay|total due|please pay|now due|balance due|due now|you owe|nachzahlung|guthaben|restbetrag|zu zahlen\\w*|erstattung|zahlbetrag|new balance|your new balance|forderung',
);
export const NEXT_PAYMENT = words(
  'new (?:monthly )?payments?|next payments?|new direct debit|monthly payment from|from now on|will be|künftig\\w*|neuer abschlag|neue abschläge|neuer monatlicher abschlag|zukünftig\\w*|nächste\\w*',
);
export const TAKEN_OFF = words(
  'discount|rebate|allowance|reduction|credit|refund|goodwill|bonus|rabatt|gutschrift|nachlass|ermäßigung|off your',
);
export const ADDED = words(
  'fee|late charge|other charges?|adjustment|surcharge|mahn\\w*|gebühr|zuschlag|correction of',
);
export const NET = words(
  'net|sub ?total|total before vat|before vat|excluding vat|excl\\.? vat|without vat|netto\\w*|zwischensumme|nettobetrag',
);
export const TOTAL = words(
  'total|charges of this|charges for this|this bill|gesamt\\w*|brutto\\w*|rechnungsbetrag|summe|endbetrag|rechnungssumme',
);
export const PERIOD = words(
  'period|statement|bill(?:ing)? (?:for|from|period)?|supply|from|between|charges from|zeitraum|abrechnungszeitraum|lieferzeitraum|abrechnungsperiode|verbrauchszeitraum|vom|von|rechnung',
);
export const READING = words(
  'readings?|meter|register|index|opening|closing|earlier|later|latest|previous|present|zählerstand\\w*|zählerstände|stand|ablesung\\w*|ablesewert|anfangsstand|endstand',
);
export const ESTIMATED = words(
  'estimated?|est\\.?|geschätzt\\w*|rechnerisch\\w*|hochrechnung|hochgerechnet|maschinell',
);
export const ACTUAL = words(
  'actual|read by us|our reading|smart|remote|abgelesen|ablesung(?: durch uns)?|fernablesung|netzbetreiber',
);
export const BY_CUSTOMER = words(
  'customer|your own|you read|by you|selbstablesung|selbst abgelesen|kundenablesung|kunde',
);
export const CORRECTION = words(
  'correction(?: factor)?|volume correction|conversion factor|zustandszahl|z-zahl|umrechnungsfaktor',
);
export const CALORIFIC = words('calorific(?: value)?|heating value|brennwert|abrechnungsbrennwert|mj');
export const HUNDRED_CUBIC_FEET = words('hundreds? (?:of )?cubic feet|hcf|ft3|ft³|imperial');

/** Names of registers, as they are kept. */
export const REGISTERS: readonly (readonly [RegExp, string])[] = [
  [words('off[- ]?peak|low rate|low units'), 'off peak'],
  [words('night(?:time)?|nachts?|nt|niedertarif|nachttarif|nachtstrom'), 'night'],
  [words('day(?:time)?|tag|tags|tagstrom|ht|hochtarif|tagtarif'), 'day'],
  [words('evenings?|weekends?|abends?|wochenende'), 'evening and weekend'],
  [words('peak|high rate'), 'peak'],
];
