import type { Catalogue } from '../say.ts';

/** A bill typed from the paper, worked out again line by line. */
export const BILL_SUMS_SCREEN: Catalogue = {
  'Type the first day of the bill.': 'Geben Sie den ersten Tag der Rechnung ein.',
  'Type the last day of the bill.': 'Geben Sie den letzten Tag der Rechnung ein.',
  'The last day is before the first. Correct one of them.':
    'Der letzte Tag liegt vor dem ersten. Berichtigen Sie einen davon.',
  'This is {days}. Take a long bill in parts.': 'Das sind {days}. Nehmen Sie eine lange Rechnung in Teilen.',
  'A later price must begin on a day inside the bill.':
    'Ein späterer Preis muss an einem Tag innerhalb der Rechnung beginnen.',
  'Give each register a name, as it stands on the bill.':
    'Geben Sie jedem Zählwerk einen Namen, so wie er auf der Rechnung steht.',
  'Type both readings, or the kWh{lines, select, one {} other { of {name}}}.':
    'Geben Sie beide Zählerstände{lines, select, one {} other { zu „{name}“}} ein oder die kWh.',
  'Type the price per kWh{lines, select, one {} other { of {name}}}.':
    'Geben Sie den Preis je kWh{lines, select, one {} other { zu „{name}“}} ein.',
  'Bill for': 'Rechnung für',
  'First day': 'Erster Tag',
  'Last day, part of the bill': 'Letzter Tag (zählt mit)',
  'The meter counts': 'Der Zähler zählt',
  'Calorific value': 'Brennwert',
  'British gas lies between 37.5 and 43.': 'Britisches Gas liegt zwischen 37,5 und 43.',
  'Volume correction': 'Mengenkorrektur',
  'Type the tariff under Prices, and the prices on the bill are checked too.':
    'Geben Sie den Tarif unter „Preise“ ein, dann werden auch die Preise der Rechnung geprüft.',
  'With a tariff the prices are checked too, also where they change within the bill.':
    'Mit einem Tarif werden auch die Preise geprüft, selbst wenn sie sich während der Rechnung ändern.',
  'Some unit prices are taken from the bill: no price of this tariff has the name of the register, or it has steps or half-hours.':
    'Einige Arbeitspreise stammen von der Rechnung. Kein Preis dieses Tarifs heißt wie das Zählwerk, oder er hat Mengenstufen oder halbe Stunden.',
  'The bill is saved. It counts in the heat needed and in the bill check.':
    'Die Rechnung ist gespeichert. Sie zählt beim Wärmebedarf und bei der Rechnungsprüfung mit.',
  'A bill’s sums': 'Eine Rechnung nachgerechnet',
  'A bill’s sums, line {row} of {fileName}': 'Eine Rechnung nachgerechnet, Zeile {row} von {fileName}',
  'Type the bill, and we check its sums.': 'Geben Sie die Rechnung ein, und wir rechnen sie nach.',
  'Compared with': 'Verglichen mit',
  'the prices on the bill itself': 'den Preisen auf der Rechnung',
  'Line by line': 'Zeile für Zeile',
  'Still to type': 'Noch einzugeben',
  'Back to bills and readings': 'Zurück zu Rechnungen und Messwerten',
  'The bill is saved with its file. What you change here changes only these sums.':
    'Die Rechnung ist mit ihrer Datei gespeichert. Was Sie hier ändern, ändert nur diese Nachrechnung.',
  'Save this bill': 'Diese Rechnung speichern',
  'It then counts in the heat needed and in the bill check.':
    'Sie zählt dann beim Wärmebedarf und bei der Rechnungsprüfung mit.',
  evening: 'Abend',
  other: 'Sonstiges',
  '{name}, later price': '{name}, späterer Preis',
  '{name}, price from': '{name}, Preis ab',
  Register: 'Zählwerk',
  'First reading': 'Erster Zählerstand',
  'Last reading': 'Letzter Zählerstand',
  'Volume used': 'Verbrauchte Menge',
  Price: 'Preis',
  Charge: 'Betrag',
  'kWh by your own readings': 'kWh nach eigener Ablesung',
  'a reading is estimated': 'ein Zählerstand ist geschätzt',
  'Another price from a later day': 'Anderer Preis ab einem späteren Tag',
  Remove: 'Entfernen',
  'Add a register, such as night': 'Zählwerk hinzufügen, etwa Nacht',
  'register without a name': 'Zählwerk ohne Namen',
  discount: 'Rabatt',
  credit: 'Gutschrift',
  charge: 'Gebühr',
  'VAT comes on top': 'MwSt. kommt dazu',
  'VAT is in the prices': 'MwSt. enthalten',
  From: 'Von',
  Days: 'Tage',
  '{sign} a day': '{sign}/Tag',
  'Another standing charge from a later day': 'Anderer Grundpreis ab einem späteren Tag',
  'Remove the last one': 'Den letzten entfernen',
  'Discounts and credits': 'Rabatte und Gutschriften',
  'What it is called': 'Wie es heißt',
  Amount: 'Betrag',
  'It is a': 'Das ist',
  'Add a discount, credit or charge': 'Rabatt, Gutschrift oder Gebühr hinzufügen',
  'VAT and total': 'Mehrwertsteuer und Summe',
  'VAT on the bill': 'Mehrwertsteuer auf der Rechnung',
  Line: 'Zeile',
  'On the bill': 'Auf der Rechnung',
  'Worked out': 'Errechnet',
  Difference: 'Unterschied',
  '{fuel, select, gas {Gas} other {Electricity}} bill, {days}':
    '{fuel, select, gas {Gasrechnung} other {Stromrechnung}}, {days}',
};
