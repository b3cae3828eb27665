import type { Catalogue } from '../say.ts';

/** The sums of a bill. */
export const BILL_SUMS: Catalogue = {
  'By these figures the bill comes to {amount}.': 'Nach diesen Zahlen ergibt die Rechnung {amount}.',
  'The sums on this bill are right to the penny.': 'Die Summen dieser Rechnung stimmen genau.',
  'This bill asks {amount} too {way, select, much {much} other {little}}, by these figures.':
    'Nach diesen Zahlen verlangt die Rechnung {amount} zu {way, select, much {viel} other {wenig}}.',
  '{total, select, none {No total is given, and} other {The total is right, but}} {count, plural, one {# line differs from what it should be} other {# lines differ from what they should be}}.':
    '{total, select, none {Eine Summe ist nicht angegeben, und} other {Die Summe stimmt, aber}} {count, plural, one {# Zeile weicht} other {# Zeilen weichen}} von dem ab, was dort stehen sollte.',
  // What would explain it
  'The bill is based on an estimated reading. It charges {billed}{named, select, yes { for “{meter}”} other {}}, your readings say {own}. Give the supplier your reading.':
    'Der Rechnung liegt ein geschätzter Zählerstand zugrunde. Sie berechnet {billed}{named, select, yes { für „{meter}“} other {}}, Ihre Zählerstände ergeben {own}. Melden Sie dem Versorger Ihren Stand.',
  'The bill charges {billed}{named, select, yes { for “{meter}”} other {}}. Your own readings say {own}. Look at the meter again, then tell the supplier.':
    'Die Rechnung berechnet {billed}{named, select, yes { für „{meter}“} other {}}. Ihre Zählerstände ergeben {own}. Sehen Sie noch einmal auf den Zähler und sagen Sie es dann dem Versorger.',
  'The kWh{named, select, yes { for “{meter}”} other {}} do not match the two readings. They are {apart} too {way, select, many {many} other {few}}.':
    'Die kWh{named, select, yes { für „{meter}“} other {}} passen nicht zu den beiden Zählerständen. Es sind {apart} zu {way, select, many {viel} other {wenig}}.',
  '{part, select, units {The kWh were} standing {The standing charge was} other {kWh and standing charge were}} charged at the old price, that of {date}.':
    '{part, select, units {Die kWh wurden} standing {Der Grundpreis wurde} other {kWh und Grundpreis wurden}} nach der alten Preisliste vom {date} berechnet.',
  'Newer prices apply on some or all of the days.': 'Für einige oder alle Tage gelten neuere Preise.',
  'A new price applies from {date} on.': 'Ab {date} gilt ein neuer Preis.',
  '{part, select, units {The kWh were} standing {The standing charge was} other {kWh and standing charge were}} charged at the price of {date} on all days. That price begins later than the bill does.':
    '{part, select, units {Die kWh wurden} standing {Der Grundpreis wurde} other {kWh und Grundpreis wurden}} für alle Tage nach der Preisliste vom {date} berechnet. Sie beginnt später als die Rechnung.',
  'The kWh{named, select, yes { for “{meter}”} other {}} were worked out with a calorific value of {used}. The bill says {printed} MJ/m³.':
    'Die kWh{named, select, yes { für „{meter}“} other {}} wurden mit einem Brennwert von {used} berechnet. Auf der Rechnung stehen {printed} MJ/m³.',
  'The volume was not corrected. The gas should be multiplied by {correction} before it becomes kWh.':
    'Das Volumen wurde nicht umgerechnet. Das Gas muss mit {correction} malgenommen werden, bevor daraus kWh werden.',
  'The meter counts {printed}, but the bill was worked out as if it counted {used}.':
    'Der Zähler zählt {printed}, gerechnet wurde aber, als zähle er {used}.',
  '“{first}” and “{second}” are swapped. The kWh of one were charged at the price of the other.':
    '„{first}“ und „{second}“ sind vertauscht. Der Verbrauch des einen wurde zum Preis des anderen berechnet.',
  'No VAT was charged. It should be {expected}.':
    'Es wurde keine Mehrwertsteuer berechnet. Es sollten {expected} sein.',
  'VAT was charged at {rate}. It should be {expected}.':
    'Die Mehrwertsteuer wurde mit {rate} berechnet. Es sollten {expected} sein.',
  'VAT of {rate} was charged twice: it was already in the sum.':
    'Die Mehrwertsteuer von {rate} wurde zweimal berechnet: Sie war in der Summe schon enthalten.',
  'VAT was worked out on the wrong side of the discounts and credits.':
    'Die Mehrwertsteuer wurde auf der falschen Seite der Rabatte und Gutschriften berechnet.',
  'The standing charge is for {days}. From the first day to the last there are {expected}.':
    'Der Grundpreis ist für {days} berechnet. Vom ersten bis zum letzten Tag sind es {expected}.',
  '“{name}”, {amount}, was not taken off the total.': '„{name}“, {amount}, wurde von der Summe nicht abgezogen.',
  'This would explain most of it, all but {amount}:': 'Das würde das meiste erklären, alles außer {amount}:',
  'These two together would explain it to the penny:': 'Diese beiden zusammen würden es genau erklären:',
  'This would explain it to the penny:': 'Das würde es genau erklären:',
  'None of the usual mistakes explains this. Compare the readings, dates and prices with the paper once more, then ask the supplier.':
    'Keiner der üblichen Fehler erklärt das. Vergleichen Sie Stände, Daten und Preise noch einmal mit dem Papier und fragen Sie dann den Versorger.',
  // Rows
  'kWh, {name}': 'kWh, {name}',
  kWh: 'kWh',
  'Charge for {name}': 'Betrag für {name}',
  'Charge for energy': 'Betrag für Energie',
  'Days of standing charge': 'Tage mit Grundpreis',
  'Before VAT': 'Vor Mehrwertsteuer',
  VAT: 'Mehrwertsteuer',
  Total: 'Summe',
  '{amount} at {price}': '{amount} zu {price}',
};
