import type { Catalogue } from '../say.ts';

/** What is wrong with a tariff or a bill. */
export const REFUSALS: Catalogue = {
  Mondays: 'montags',
  Tuesdays: 'dienstags',
  Wednesdays: 'mittwochs',
  Thursdays: 'donnerstags',
  Fridays: 'freitags',
  Saturdays: 'samstags',
  Sundays: 'sonntags',
  'bank holidays': 'an Feiertagen',
  'every month': 'jeden Monat',
  '{count, plural, one {There is # more such stretch.} other {There are # more such stretches.}}':
    '{count, plural, one {Noch # solche Zeit kommt vor.} other {Noch # solche Zeiten kommen vor.}}',
  'There is no price on {days} in {month} from {from} to {to}.':
    'Für eine Zeit gibt es keinen Preis: {days}, {month}, {from} bis {to} Uhr.',
  'Give the hours a band, or let one hold at all other times (“rest” in a file).':
    'Geben Sie diesen Stunden eine Preisstufe, oder lassen Sie eine zu allen anderen Zeiten gelten („rest“ in einer Datei).',
  'Two prices claim the same time on {days} in {month} from {from} to {to}: “{first}” and “{second}”.':
    'Für dieselbe Zeit gibt es zwei Preise: {days}, {month}, {from} bis {to} Uhr, „{first}“ und „{second}“.',
  'Change the hours of one of them.': 'Ändern Sie bei einem davon die Stunden.',
  'The prices from {from} stand after those from {previous}. Put them in order of date.':
    'Die Preise ab {from} stehen nach denen ab {previous}. Ordnen Sie sie nach dem Datum.',
  'Two sets of prices begin on {from}. Remove one of them.': 'Zwei Preislisten beginnen am {from}. Entfernen Sie eine.',
  'The prices end on {until}, before they begin on {from}. Correct one of the dates.':
    'Die Preise enden am {until}, bevor sie am {from} beginnen. Berichtigen Sie eines der Daten.',
  'Both “{first}” and “{second}” claim the rest of the time. Only one band may.':
    '„{first}“ und „{second}“ gelten beide für die übrige Zeit. Das darf nur eine Preisstufe.',
  'No time is left for “{name}”. Remove it, or change the hours of the others.':
    'Für „{name}“ bleibt keine Zeit übrig. Entfernen Sie diese Preisstufe, oder ändern Sie die Stunden der anderen.',
  'Two bands are named “{name}”. Give each its own name.':
    'Zwei Preisstufen heißen „{name}“. Geben Sie jeder einen eigenen Namen.',
  '“{name}” begins and ends at {time}. Give it a time that lasts; a whole day is 00:00 to 24:00.':
    '„{name}“ beginnt und endet um {time} Uhr. Geben Sie eine Zeit an, die dauert; ein ganzer Tag ist 00:00 bis 24:00.',
  '“{name}” changes at {time}. Sums here go by the half-hour, so the change is taken at the next one.':
    '„{name}“ wechselt um {time} Uhr. Gerechnet wird in halben Stunden, darum gilt der Wechsel ab der nächsten.',
  'A standing charge of {price} a day is below zero. Type what is paid for each day.':
    'Ein Grundpreis von {price} am Tag ist negativ. Geben Sie ein, was je Tag gezahlt wird.',
  'A standing charge of {price} a day is low. Is it in pence?':
    'Ein Grundpreis von {price} am Tag ist niedrig. Ist er in Cent?',
  'A standing charge of {price} a day is high. Is it perhaps for a month?':
    'Ein Grundpreis von {price} am Tag ist hoch. Gilt er vielleicht für einen Monat?',
  '“{name}” at {price} per kWh is unusual. Most lie between {low} and {high}. Is it in pence?':
    '„{name}“ mit {price} je kWh ist ungewöhnlich. Die meisten liegen zwischen {low} und {high}. Stimmt die Einheit?',
  'VAT of {rate} is unusual. Homes pay 5% on energy. Check the bill.':
    'Eine Mehrwertsteuer von {rate} ist ungewöhnlich. In Großbritannien zahlen Haushalte auf Energie 5 %. Prüfen Sie die Rechnung.',
  '“{name}” has a price for bank holidays. Say which country’s bank holidays count.':
    '„{name}“ hat einen Preis für Feiertage. Geben Sie an, welches Landes Feiertage gelten.',
  'The standing charge stands twice: {daily} a day and {monthly} a month. Keep one.':
    'Der Grundpreis steht zweimal da: {daily} am Tag und {monthly} im Monat. Behalten Sie einen.',
  'The steps of “{name}” go back from {before} to {upTo} kWh. Put them in order.':
    'Die Mengenstufen von „{name}“ springen von {before} auf {upTo} kWh zurück. Ordnen Sie sie.',
  '“{name}” has steps, and each half-hour has its own price too. Take the steps out, or the half-hours. Prices that change over from one to the other are two versions, each with its first day.':
    '„{name}“ hat Mengenstufen und dazu für jede halbe Stunde einen Preis. Nehmen Sie das eine oder das andere heraus. Wechselt der Tarif von einem zum anderen, sind das zwei Preislisten, jede mit ihrem ersten Tag.',
  'Export at {price} pays more than a kWh costs, {dearest}. Check the figure.':
    'Einspeisung zu {price} bringt mehr, als eine kWh kostet, {dearest}. Prüfen Sie die Zahl.',
  'The prices of {date} stand after those of {previous}. Put the days in order, each once.':
    'Die Preise vom {date} stehen nach denen vom {previous}. Ordnen Sie die Tage, jeden nur einmal.',
  'There is no price from {date} at {time} on, for {days}. Add the missing prices.':
    'Ab {date}, {time} Uhr, fehlen die Preise für {days}. Fügen Sie sie hinzu.',
  'There is no price on {date} at {time}. {count, plural, one {# half-hour is missing. Add it.} other {# half-hours are missing. Add them.}}':
    'Am {date} um {time} Uhr gibt es keinen Preis. {count, plural, one {# halbe Stunde fehlt. Fügen Sie sie hinzu.} other {# halbe Stunden fehlen. Fügen Sie sie hinzu.}}',
  '{date} has {found, plural, one {# price} other {# prices}}, yet only {expected, plural, one {# half-hour} other {# half-hours}}. Take out what is too much.':
    'Der {date} hat {found, plural, one {# Preis} other {# Preise}}, aber nur {expected, plural, one {# halbe Stunde} other {# halbe Stunden}}. Nehmen Sie heraus, was zu viel ist.',
  'The half-hourly prices cover {days} of a year. The other {without} take the price beside them.':
    'Halbstündliche Preise gibt es für {days} eines Jahres. Für die übrigen ({without}) gilt der Preis daneben.',
  'Gas seldom has a price by the hour, yet “{name}” has one. Is this electricity?':
    'Gas hat selten einen Preis nach Uhrzeit, „{name}“ aber schon. Ist das Strom?',
  // Bills
  'The bill ends on {to}, before it begins on {from}. Correct one of the dates.':
    'Die Rechnung endet am {to}, bevor sie am {from} beginnt. Berichtigen Sie eines der Daten.',
  'The bill covers {days}. At most {most} can be checked at once, so take them in parts.':
    'Die Rechnung umfasst {days}. Höchstens {most} lassen sich auf einmal prüfen. Teilen Sie sie auf.',
  '§ 14a EnWG gives a sum by the year or a lower price on a meter of its own, never both. Remove one of the two.':
    '§ 14a EnWG sieht einen Betrag im Jahr oder einen niedrigeren Preis am eigenen Zähler vor, nie beides. Löschen Sie eines davon.',
  '{price} are taken off each kWh of the heat pump, so much that nothing is left of a price. Check the two.':
    'Bei {price} Ermäßigung je kWh der Wärmepumpe bleibt von einem Preis nichts übrig. Prüfen Sie beide Werte.',
  'The tariff changed on {on}, after the bill ends on {to}. Correct the day, or remove it.':
    'Der Tarif hat am {on} gewechselt, die Rechnung endet aber schon am {to}. Berichtigen Sie den Tag, oder löschen Sie ihn.',
  'The kWh of the bill would have cost less than nothing. Type what they cost before credits and payments.':
    'Die kWh der Rechnung hätten weniger als nichts gekostet. Geben Sie ein, was sie vor Gutschriften und Abschlägen kosteten.',
  'The bill comes to {price} per kWh. A home pays between {low} and {high}. Correct the price, total or kWh.':
    'Die Rechnung kommt auf {price} je kWh. Ein Haushalt zahlt zwischen {low} und {high}. Berichtigen Sie Preis, Summe oder kWh.',
  'The bill has kWh but no price. Type the price per kWh, or what the kWh cost together.':
    'Die Rechnung nennt kWh, aber keinen Preis. Geben Sie den Preis je kWh ein oder den Betrag für alle zusammen.',
  'This estimate has no heat pump in it, so no bill can be compared with it.':
    'Diese Kostenschätzung enthält keine Wärmepumpe, darum lässt sich keine Rechnung mit ihr vergleichen.',
};
