import type { Catalogue } from '../say.ts';

/** The reckoning as text, and how the store opened. */
export const HOST: Catalogue = {
  'mean {mean} °C': 'Mittel {mean} °C',
  'every {minutes} minutes': 'alle {minutes} Minuten',
  '{name}: {carrier}, {role}, {step}, {from} to before {to}, {amount}, {present} of {expected} readings':
    '{name}: {carrier}, {role}, {step}, {from} bis vor {to}, {amount}, {present} von {expected} Messwerten',
  'reading by reading': 'Messwert für Messwert',
  'bill by bill': 'Rechnung für Rechnung',
  refusal: 'Abgelehnt',
  question: 'Frage',
  note: 'Hinweis',
  'no known type': 'keine bekannte Art',
  '{fileName}: {understood}, {rows} rows': '{fileName}: {understood}, {rows} Zeilen',
  'Columns: {names}': 'Spalten: {names}',
  'Taken as: {choices}': 'Gelesen als: {choices}',
  'Tariff: {name}, {count} version(s)': 'Tarif: {name}, Preislisten: {count}',
  // Heat and machine
  'what the sums are based on': 'Grundlage der Berechnung',
  'heat a year': 'Wärme im Jahr',
  'rooms only': 'nur Räume',
  'rooms, 8 in 10 homes': 'Räume, 8 von 10 Häusern',
  'rooms are': 'Räume sind',
  'Rooms {rooms}, hot water {water}, measured at {boundary}: {counts}.':
    'Räume {rooms}, Warmwasser {water}, gemessen bei {boundary}: {counts}.',
  'The whole house as its meter sees it: {whole} ({low} to {high}).':
    'Das ganze Haus, wie sein Zähler es sieht: {whole} ({low} bis {high}).',
  'Measured in homes: {low} to {high}, middle {middle}.': 'In Häusern gemessen: {low} bis {high}, Mitte {middle}.',
  // Cost
  'At the plant': 'An der Anlage',
  'First of all': 'Zuallererst',
  'Likely causes': 'Wahrscheinliche Ursachen',
  'Questions for the household': 'Fragen an den Haushalt',
  '8 in 10 homes': '8 von 10 Häusern',
  energy: 'Energie',
  standing: 'Grundpreis',
  'standing, less what the grid takes off': 'Grundpreis, weniger den Netznachlass',
  service: 'Wartung',
  bought: 'gekauft',
  'per kWh heat': 'je kWh Wärme',
  'heat pump less': 'Wärmepumpe günstiger',
  'heat from the heat pump costs less at any possible factor':
    'bei jeder möglichen JAZ kostet die Wärme der Wärmepumpe weniger',
  'same cost at a seasonal factor of {factor}, or at a price ratio of {ratio} (now {now})':
    'gleiche Kosten bei einer JAZ von {factor} oder bei einem Preisverhältnis von {ratio} (jetzt {now})',
  'same cost at a seasonal factor of {factor}': 'gleiche Kosten bei einer JAZ von {factor}',
  'same cost at a price ratio of {ratio} (now {now})':
    'gleiche Kosten bei einem Preisverhältnis von {ratio} (jetzt {now})',
  '{fuel}: {name}, {dated, select, no {without a date, used for} other {from}} {from}{ends, select, yes { to {to}} other {}}, {grade}; {origin}':
    '{fuel}: {name}, {dated, select, no {ohne Datum, verwendet für den} other {ab}} {from}{ends, select, yes { bis {to}} other {}}, {grade}; {origin}',
  'Climate: {region}; {source}': 'Klima: {region}; {source}',
  'Factors met in homes: {source}': 'In Häusern erreichte Jahresarbeitszahlen: {source}',
  'Worked out for {date} with model {version}.': 'Berechnet für den {date} mit Modell {version}.',
  // Bill check
  'Ask: {questions}': 'Fragen: {questions}',
  'Check: {checks}': 'Prüfen: {checks}',
  'Care: {cautions}': 'Vorsicht: {cautions}',
  estimated: 'geschätzt',
  'in this weather': 'bei diesem Wetter',
  meter: 'Zähler',
  'it lies': 'das liegt',
  'from the estimate to the bill': 'von der Kostenschätzung zur Rechnung',
  difference: 'Unterschied',
  trust: 'wie sicher',
  'joined in it': 'darin enthalten',
  Files: 'Dateien',
  'Where both cost the same': 'Wo beide gleich viel kosten',
  'What the readings show': 'Was die Messwerte zeigen',
  'Since the estimate': 'Seit der Kostenschätzung',
  Questions: 'Fragen',
  'Prices and sources': 'Preise und Quellen',
  recollection: 'aus dem Gedächtnis',
  // Opening
  'The data file was brought to the newest form. A copy of it as it was lies at {path}.':
    'Die Datendatei wurde auf die neueste Form gebracht. Eine Kopie, wie sie war, liegt in {path}.',
  'The invented household could not be put in: {reason}': 'Der erfundene Haushalt ließ sich nicht einfügen: {reason}',
  'Clock of the home: {zone}, since none was named; name another with --zone.':
    'Uhr des Hauses: {zone}, da keine genannt wurde; nennen Sie eine andere mit --zone.',
  'Clock of the home: {zone}.': 'Uhr des Hauses: {zone}.',
  'Answer with “zone”: "{zone}" in the household file, or with --zone {zone}.':
    'Antworten Sie mit “zone”: "{zone}" in der Haushaltsdatei oder mit --zone {zone}.',
  'Name the file with the rest in the household file too. If this one is all: “choices”: {open} "role": "import" {close} in place of "beside".':
    'Nennen Sie auch die Datei mit dem Rest in der Haushaltsdatei. Ist diese alles: „choices“: {open} "role": "import" {close} anstelle von "beside".',
  'Answer with “choices”: {json} at this file in the household file, or with --choose {option} beside --read{count, plural, one {} other { (possible: {others})}}.':
    'Antworten Sie mit “choices”: {json} bei dieser Datei in der Haushaltsdatei, oder mit --choose {option} neben --read{count, plural, one {} other { (möglich: {others})}}.',
  'Another value goes into {keys}.': 'Ein anderer Wert gehört in {keys}.',
  'A word that was read wrong is corrected in “choices.paper.words”.':
    'Ein falsch gelesenes Wort wird in “choices.paper.words” berichtigt.',
  'Answer with “choices”: {open} "beside": {json} {close} at this file in the household file (possible: {others}). If it has several records: "besideOf": {own}.':
    'Antworten Sie mit “choices”: {open} "beside": {json} {close} bei dieser Datei in der Haushaltsdatei (möglich: {others}). Hat sie mehrere Messreihen: "besideOf": {own}.',
  Records: 'Messreihen',
};
