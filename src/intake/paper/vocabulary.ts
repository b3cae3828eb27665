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

/** Strom counts within any word but those for what heating needs of it. Without a pattern for its other letters it is found four times as fast. */
export const ELECTRICITY = new RegExp(
  `${words('electricity|electric|power supply|elektrizität|électricité|elektriciteit|stroom|energia elettrica|electricidad|energía eléctrica').source}|(?<!betriebs|hilfs|pumpen)strom`,
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
  'dont (?:la )?tva|incl(?:\\.|usief) btw|(?:inc(?:l(?:uding|udes|usive of)?)?\\.?|of which|includes?) (?:the )?(?:\\d+ ?% ?)?(?:vat|value added tax|tax)|vat included|darin enthalten\\w*|enthaltene\\w*|(?:inkl\\.?|inklusive|einschließlich|einschl\\.) (?:\\d+ ?% ?)?(?:gesetzl\\w*\\.? )?(?:mwst|ust|umsatzsteuer|mehrwertsteuer)\\.?',
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
  'new (?:monthly )?payments?|next payments?|new direct debit|monthly payment from|from now on|will (?:be|go|rise|fall|change)|künftig\\w*|neuer abschlag|neue abschläge|neuer monatlicher abschlag|zukünftig\\w*|nächste\\w*',
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
/** Money off only for whoever pays by a day. */
export const CONDITIONAL = words(
  '(?:prompt|early|on[- ]time|timely) payment|pay(?:ing)? (?:promptly|early|on time)|(?:if|when) (?:you )?(?:pay|paid|settled|received)|pay(?: this)? if|skonto|bei zahlung (?:bis|vor|innerhalb|binnen)|wenn sie (?:bis|vor|innerhalb)|frühzahler\\w*|escompte|si (?:vous )?(?:payez|réglez|payée?|réglée?)|en cas de (?:paiement|règlement)|betalingskorting|bij betaling (?:binnen|voor)|indien (?:u )?(?:betaal\\w*|voor)|als u (?:voor|binnen)',
);
/** Money off that is reckoned by the unit and is no use. */
export const SUPPORT = words(
  'discount|rebate|allowance|price guarantee|support|bonus|rabatt|entlastung\\w*|\\w*preisbremse|nachlass|ermäßigung|off your|vermindering|korting|remise|réduction',
);
/** What stands behind a count and is no unit of it. */
export const NO_UNIT = words(
  'at|x|a|à|á|for|of|on|in|to|from|per|each|and|plus|less|minus|times|multiplied|by|with|your|our|the|is|was|are|were|estimated|actual|smart|customer|e|c|i|zu|zum|von|vom|bis|je|pro|mal|und|mit|im|am|ab|für|auf|de|du|des|au|aux|le|la|les|et|par|pour|tegen|van|tot|per|op|en|met|geschätzt|abgelesen|rate|price|cost',
);
/** Heat of a house that is shared out by what its radiators count: units that are no energy. */
export const SHARED_HEAT = words(
  '\\w*(?:heiz|warmwasser)kostenabrechnung|heizkostenverteiler\\w*|(?:heat )?(?:cost )?allocat(?:or|ion) units?|heat (?:cost )?allocators?|répartiteurs? de (?:frais|chaleur)\\w*|warmtekosten\\w*|warmtemeters?',
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
/** What the home makes itself. */
export const OF_ROOF = words(
  'solar\\w*|pv\\w*|photovolt\\w*|photovoltaïque|panels?|wind turbine|net[- ]metering|solaire|zon(?:ne)?\\w*|saldering|eigenerzeug\\w*|überschuss\\w*|balkonkraftwerk',
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
  '(?<!since (?:your |the )?)last (?:year|winter|summer|quarter|bill)|same (?:days|period|time)|previous (?:year|bill|quarter)|bill before|a year ago|vorjahr\\w*|(?:letzt|vorig|vergangen)e[snm] jahr\\w*|(?:année|période) précédente|an(?:née)? (?:dernier|dernière|passé)e?|vorig(?:e)? (?:jaar|periode|kwartaal)|año (?:pasado|anterior)|anno (?:scorso|precedente)|(?:sidste|forrige) år|året før',
);
/** What is compared or foreseen and is no part of the bill. */
export const COMPARED = words(
  'last (?:year|winter|summer|quarter|bill)|same (?:days|period|time)|previous year|a year ago|estimated? (?:annual|yearly|for a year)|next year|a year|annual|for the year|over (?:twelve )?months|(?:you )?(?:would|could) (?:pay|save)|saved?|switch|projection|projected|forecast|compar\\w+|other tariffs?|cheap(?:er|est)|vorjahr\\w*|vergleich\\w*|prognose\\w*|voraussichtlich\\w*|jahresverbrauchsprognose|erwartet\\w*|expected|enthalten\\w*|davon|sparen|günstig\\w*|(?:berechnung|ermittlung) (?:ihre[rs]|der|des) (?:\\w+ )?abschl[aä]g\\w*|abschlags(?:berechnung|ermittlung)|wechsel\\w*|l’an dernier|année précédente|vorig jaar|vergelijk\\w*',
);
/** Titles of sums that are of another household, of a time to come or at other prices, in seven languages; from memory. */
export const OTHERS = words(
  [
    // Another household.
    "neighbours?(?:’s|'s)?|(?:typical|average|similar|comparable|other) (?:\\w+ ){0,2}(?:homes?|houses?|households?|customers?|users?|famil(?:y|ies)|flats?|propert(?:y|ies))|(?:homes?|houses?|households?) (?:like|such as|similar to) yours?|(?:national|regional|local|area) average|typical (?:use|usage|consumption|bill|year)",
    '(?:vergleichs|durchschnitts|muster|nachbar|referenz|beispiel)(?:haushalt|kunde|wohnung|familie|haus)\\w*|(?:ähnlich|vergleichbar|typisch|durchschnittlich|ander)\\w* (?:haushalt|kunde|wohnung|familie|häuser|haus)\\w*|nachbar(?:n|s|in|innen|schaft)?',
    '(?:foyer|ménage|client|logement|famille)s? (?:type|moyen(?:ne)?|similaire|comparable|voisin)s?|voisin(?:e|s|es)?|(?:gemiddeld|vergelijkbaar|vergelijkbare|soortgelijk|typisch|ander)e? (?:huishouden|huishoudens|klant|klanten|gezin|gezinnen|woning|woningen)|buren|buurman|buurvrouw',
    '(?:hogar|cliente|consumidor|vivienda|familia|famigli[ae]|utente|casa|abitazione)(?:es|s)? (?:tip[oa]|medi[oa]|promedio|similar[ei]?s?|simil[ei]|comparables?)|vecin[oa]s?|vicin[oi] di casa|(?:il|un) (?:suo|tuo) vicino|i (?:suoi|tuoi) vicini|(?:gennemsnitlig|typisk|tilsvarende|lignende|anden)e? (?:husstand|husstande|kunde|kunder|hus|huse|bolig|boliger|familie)|gennemsnits(?:husstand|kunde|bolig|familie)\\w*|nabo(?:en|er|ens|erne)?',
    // A time to come.
    '(?:next|coming|upcoming) (?:bill|quarter|year|month|winter|summer|period|statement|(?:\\w+ )?(?:months|quarters))|looking ahead|year ahead|projections?|projected|forecasts?|predict(?:ion|ed)|outlook|we (?:think|expect|predict)|year (?:will|would|could|might|may) cost|estimat(?:ed?|ion) (?:of )?(?:your )?(?:annual|yearly|next|future|for (?:a|the|one|next) year)\\w*|cost of (?:a|one) year',
    '(?:kommend|nächst|künftig|bevorstehend)\\w* (?:\\w+ )?(?:jahr|rechnung|abrechnung|quartal|monat|zeitraum|winter|sommer|abrechnungsjahr|verbrauchsjahr|lieferjahr)\\w*|(?:\\w*prognose|hochrechnung (?:für|auf) (?:das|die|ein|zwölf|12)|vorschau|ausblick|voraussichtlich|vorausberechnung|erwartet)\\w*|(?:berechnung|ermittlung) (?:ihre[rs]|der|des) (?:\\w+ )?abschl[aä]g\\w*|abschlags(?:berechnung|ermittlung)',
    'prévisions?|prévisionnel\\w*|prochain(?:e|s|es)? (?:\\w+ )?(?:facture|année|période|trimestre|mois)|année (?:prochaine|à venir)|mois à venir|estimation (?:annuelle|pour)|volgende? (?:jaar|factuur|nota|kwartaal|periode|maand|rekening)|komende? (?:\\w+ )?(?:jaar|maanden|periode|kwartaal|winter)|vooruitblik|verwacht\\w*',
    'previsi(?:ón|ones|one|oni)|pronóstico|próxim[oa]s? (?:\\w+ )?(?:año|factura|mes|meses|periodo|período|trimestre)|año (?:que viene|próximo)|estimación (?:anual|para|de su)|prossim[oaie] (?:\\w+ )?(?:anno|bolletta|mesi|mese|fattura|periodo|trimestre)|anno prossimo|(?:stima|spesa|costo) annu\\w+ (?:stimat|previst)\\w*|stima (?:annu\\w+|per)|næste (?:år|regning|periode|kvartal|faktura|måned|vinter)|kommende (?:\\w+ )?(?:år|periode|måneder|kvartal|vinter|regning)|forvente(?:t|de)',
    // Other prices.
    'not (?:your|yours)(?: \\w+)?|(?:another|other|alternative|different|cheaper|cheapest) (?:\\w+ )?(?:tariffs?|plans?|offers?|deals?|suppliers?)|if you (?:had|were|switch(?:ed)?|moved?|chang(?:e|ed)|chose|choose)|(?:would|could|might) have (?:paid|cost|been|saved)|you (?:would|could|might) (?:pay|save|have)|our offer|nicht ihr\\w*|(?:ander|günstiger|alternativ|billiger)\\w* (?:tarif|angebot|vertrag|anbieter)\\w*|tarifvergleich|wechselangebot|unser angebot|wenn sie (?:wechsel\\w*|gewechselt)',
    "autres? (?:offre|tarif|contrat)s?|si vous (?:changez|aviez|passez|étiez)|notre offre|comparaison (?:des|d’|d'|avec)|vous auriez|ander(?:e)? (?:tarief|contract|aanbod|leverancier)|ons aanbod|als u (?:overstapt\\w*|had|was)|otr[oa]s? (?:tarifa|oferta|contrato)s?|si (?:cambia|cambiara|hubiera|tuviera)|nuestra oferta|altr[aeo] (?:offert|tariff|contratt)[aeo]|la nostra offerta|se (?:passa|passi|passasse|cambi|cambiasse|avesse)|and(?:en|et|re) (?:aftale|produkt|tilbud|elaftale)r?|vores tilbud|hvis du (?:skifter|skiftede|havde|var)",
  ].join('|'),
);
/** At the head of a column beside the bill's. */
export const SET_BESIDE = words(
  '(?:for|in) comparison|compared?|(?:zum|im) vergleich|(?:pour|en|à titre de) comparaison|ter vergelijking|a título comparativo|(?:para|en) comparaci[óo]n|(?:per|a) confronto|til sammenligning',
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
