import type { Catalogue } from '../say.ts';

/** Words of the charts and of the working behind a figure. */
export const CHARTS: Catalogue = {
  'Source: {source}': 'Quelle: {source}',
  'We do not know yet where the heat would come from and where it would go.':
    'Wir wissen noch nicht, woher die Wärme käme und wohin sie ginge.',
  'In a year the meter counts {meter}, and no heat is needed.':
    'In einem Jahr zählt der Zähler {meter}, und es wird keine Wärme gebraucht.',
  'In a year {added} from {source, select, air {the air} other {the ground}} and {meterCount} from the meter':
    'In einem Jahr werden {added} aus {source, select, air {der Luft} other {dem Erdreich}} und {meterCount} vom Zähler',
  'In a year {meter} from the meter': 'In einem Jahr werden {meter} vom Zähler',
  '{comes} become {rooms} of heat for the rooms.': '{comes} zu {rooms} Wärme für die Räume.',
  '{comes} become {taps} of hot water.': '{comes} zu {taps} für Warmwasser.',
  '{comes} become {rooms} for the rooms and {tapsCount} for hot water.':
    '{comes} zu {rooms} für die Räume und {tapsCount} für Warmwasser.',
  'kWh in a typical year. Pumps and standby are included in what the meter shows.':
    'kWh in einem normalen Jahr. Pumpen und Stand-by sind im Zähler enthalten.',
  'from the meter': 'vom Zähler',
  'from the {source, select, air {air} other {ground}}': 'aus {source, select, air {der Luft} other {dem Erdreich}}',
  'no heat for the rooms': 'keine Wärme für die Räume',
  rooms: 'Räume',
  'hot water': 'Warmwasser',
  'heat / pump': 'Wärme- / pumpe',
  'comes in': 'kommt herein',
  'goes out': 'geht hinaus',
  'From the meter': 'Vom Zähler',
  'From the {source, select, air {air} other {ground}}': 'Aus {source, select, air {der Luft} other {dem Erdreich}}',
  'Hot water': 'Warmwasser',
  'No heat for the rooms': 'Keine Wärme für die Räume',
  Part: 'Teil',
  Side: 'Seite',
  'Of all': 'Vom Ganzen',
  'Heat of a typical year: where it comes from and where it goes. Pumps and standby are in the meter’s part.':
    'Wärme eines normalen Jahres: woher sie kommt und wohin sie geht. Pumpen und Stand-by sind im Teil des Zählers.',
  '{name}, as a table': '{name}, als Tabelle',
  'As a picture': 'Als Bild',
  'As a table': 'Als Tabelle',
  'Save or copy': 'Speichern oder kopieren',
  'Save figures': 'Zahlen speichern',
  'The exact figures stand in the table that belongs to this picture.':
    'Die genauen Zahlen stehen in der Tabelle zu diesem Bild.',
  'The picture is in the clipboard.': 'Das Bild ist in der Zwischenablage.',
  'This browser does not let the picture be copied. Save it as PNG instead.':
    'Dieser Browser lässt das Bild nicht kopieren. Speichern Sie es als PNG.',
  'This browser could not save the picture as PNG. Save the picture as it is instead.':
    'Dieser Browser konnte das Bild nicht als PNG speichern. Speichern Sie es, wie es ist.',
  'Copy picture': 'Bild kopieren',
  'Save picture': 'Bild speichern',
  'Save as PNG': 'Als PNG speichern',
  'estimated for these days': 'geschätzt für diese Tage',
  'and prices: {range}': 'und Preise: {range}',
  'From the estimate to the bill': 'Von der Kostenschätzung zur Rechnung',
  'From {estimated} estimated to {paid} paid.': 'Von {estimated} geschätzt zu {paid} bezahlt.',
  'The largest step is “{name}”: it {way, select, added {added} other {took away}} {amount}.':
    'Der größte Schritt ist „{name}“: {amount} {way, select, added {mehr} other {weniger}}.',
  Estimated: 'Geschätzt',
  Paid: 'Bezahlt',
  'Estimated for these days and prices, low': 'Geschätzt für diese Tage und Preise, niedrig',
  'Estimated for these days and prices, high': 'Geschätzt für diese Tage und Preise, hoch',
  'From the estimate to the bill. The steps add up to the difference to the penny.':
    'Von der Kostenschätzung zur Rechnung. Die Schritte ergeben zusammen genau den Unterschied.',
  Step: 'Schritt',
  'How sure it is': 'Wie sicher das ist',
  'What could change the cost': 'Was die Kosten ändern könnte',
  'We cannot say yet what would change the cost.': 'Was die Kosten ändern würde, lässt sich noch nicht sagen.',
  'Electricity {price} more per kWh': 'Strom {price} teurer je kWh',
  'Flow temperature 5 degrees higher': 'Vorlauf 5 Grad heißer',
  'Rooms one degree warmer': 'Räume ein Grad wärmer',
  '50% more hot water': '50 % mehr Warmwasser',
  'A cold winter': 'Ein kalter Winter',
  'Each change by itself, all else as it is: what it does to the cost of a year.':
    'Jede Änderung für sich, alles andere wie es ist: was sie an den Kosten eines Jahres ändert.',
  Change: 'Änderung',
  'A year': 'Im Jahr',
  'From ground and meter to rooms and hot water': 'Von Erdreich und Zähler zu Räumen und Warmwasser',
  'the meter': 'der Zähler',
  'estimated, in': 'geschätzt, bei',
  'this weather': 'diesem Wetter',
  'normal weather': 'normales Wetter',
  'Estimated and metered, month by month': 'Geschätzt und gemessen, Monat für Monat',
  'The estimate for the days of each month that were read, and what the heat pump’s meter shows.':
    'Die Kostenschätzung für die abgelesenen Tage jedes Monats, und was der Zähler der Wärmepumpe zeigt.',
  'In normal weather': 'Bei normalem Wetter',
  'In this weather': 'Bei diesem Wetter',
  Meter: 'Zähler',
  'It lies': 'Es liegt',
  'Difference so far': 'Unterschied bisher',
  'Heat needed by month': 'Wärmebedarf nach Monat',
  'Cost by month today': 'Heutige Kosten nach Monat',
  'We do not know yet how much heat each month needs.': 'Wie viel Wärme jeder Monat braucht, wissen wir noch nicht.',
  'We do not know yet what each month costs.': 'Was jeder Monat kostet, wissen wir noch nicht.',
  'No heat is needed in any month.': 'In keinem Monat wird Wärme gebraucht.',
  'No month costs anything.': 'Kein Monat kostet etwas.',
  '{most} {what, select, heat {needs} other {costs}} most, {amount}. {least} {what, select, heat {needs} other {costs}} least, {leastAmount}.':
    'Am meisten {what, select, heat {braucht} other {kostet}} der {most}, {amount}. Am wenigsten {what, select, heat {braucht} other {kostet}} der {least}, {leastAmount}.',
  'Heat needed in a typical year, by month.': 'Wärmebedarf eines normalen Jahres, nach Monat.',
  'Cost by month of a typical year. Fixed means standing charge and service, spread evenly.':
    'Kosten eines normalen Jahres, nach Monat. Fest sind Grundpreis und Wartung, gleichmäßig verteilt.',
  'Cost by month': 'Kosten nach Monat',
  'The cost by month is not known yet.': 'Die Kosten nach Monat sind noch nicht bekannt.',
  'Every month costs about {amount} with the heat pump.': 'Mit der Wärmepumpe kostet jeder Monat etwa {amount}.',
  'With the heat pump {dearest} costs most, about {amount}. {cheapest} costs least, {leastAmount}.':
    'Mit der Wärmepumpe kostet der {dearest} am meisten, etwa {amount}. Der {cheapest} kostet am wenigsten, {leastAmount}.',
  'It costs less than “{name}” in {count, select, all {every month} none {no month} other {{less, plural, one {# month} other {# months}} of {months}}}.':
    'Weniger als „{name}“ kostet sie in {count, select, all {jedem Monat} none {keinem Monat} other {{less, plural, other {#}} von {months} Monaten}}.',
  'Energy, standing charge and service together, by month of a typical year.':
    'Energie, Grundpreis und Wartung zusammen, nach Monat eines normalen Jahres.',
  '{day} {month}': '{day}. {month}',
  'No readings could be shown.': 'Es ließen sich keine Messwerte zeigen.',
  'On {from} each reading of {carrier} {same, select, yes {is {low}} other {lies between {low} and {high}}} {unit}.':
    'Am {from} {same, select, yes {ist jeder Messwert ({carrier}) {low}} other {liegt jeder Messwert ({carrier}) zwischen {low} und {high}}} {unit}.',
  'From {from} to {to} each reading of {carrier} {same, select, yes {is {low}} other {lies between {low} and {high}}} {unit}.':
    'Vom {from} bis {to} {same, select, yes {ist jeder Messwert ({carrier}) {low}} other {liegt jeder Messwert ({carrier}) zwischen {low} und {high}}} {unit}.',
  '{missing, plural, one {# reading is} other {# readings are}} missing.':
    'Es {missing, plural, one {fehlt # Messwert} other {fehlen # Messwerte}}.',
  'Readings by local clock time.': 'Messwerte nach Ortszeit.',
  Time: 'Zeit',
  'Average of each day.': 'Mittel jedes Tages.',
  'Sum of each day.': 'Summe jedes Tages.',
  Day: 'Tag',
  Missing: 'Fehlend',
  'outside, average of the day': 'draußen, Tagesmittel',
  'no heating above {base}': 'keine Heizung über {base}',
  'before {date}': 'vor dem {date}',
  'kWh of {carrier} a day': 'kWh {carrier} am Tag',
  'Use and weather': 'Verbrauch und Wetter',
  'There are no days to show yet.': 'Noch gibt es keine Tage zu zeigen.',
  'The use of {carrier} does not rise when it gets colder.':
    'Der Verbrauch ({carrier}) steigt nicht, wenn es kälter wird.',
  'Below {base} outside, each degree colder takes {per} more kWh of {carrier} a day. About {always} a day are used in any weather.':
    'Unter {base} draußen braucht jedes Grad kälter {per} kWh {carrier} mehr am Tag. Etwa {always} am Tag werden bei jedem Wetter verbraucht.',
  'Average use a day by outdoor temperature, and the line through it.':
    'Mittlerer Verbrauch am Tag nach Außentemperatur, und die Gerade hindurch.',
  'Outside, °C': 'Draußen, °C',
  Bills: 'Rechnungen',
  'Average use, kWh a day': 'Mittlerer Verbrauch, kWh am Tag',
  'The line, kWh a day': 'Die Gerade, kWh am Tag',
  'not known yet': 'noch nicht bekannt',
  'What heating costs in a year': 'Was Heizen im Jahr kostet',
  'Not known yet: {names}.': 'Noch nicht bekannt: {names}.',
  'No yearly cost is known yet.': 'Noch sind keine jährlichen Kosten bekannt.',
  'The heat pump’s yearly cost is not known yet.': 'Was die Wärmepumpe im Jahr kostet, ist noch nicht bekannt.',
  'The heat pump should cost about {amount} a year.': 'Die Wärmepumpe dürfte etwa {amount} im Jahr kosten.',
  'No other way of heating shown here costs less.': 'Keine andere hier gezeigte Heizung kostet weniger.',
  'The thin mark is its cost if it works as designed, {amount}.':
    'Der dünne Strich sind ihre Kosten, wenn sie läuft wie ausgelegt, {amount}.',
  'As designed': 'Wie ausgelegt',
  'Of the {others} other ways shown here, {less, plural, =0 {none costs} one {# costs} other {# cost}} less and {same} about the same.':
    'Von den {others} anderen hier gezeigten Heizungen {less, plural, =0 {kostet keine} one {kostet eine} other {kosten #}} weniger und {same} etwa gleich viel.',
  'Every other way of heating shown here costs less.': 'Jede andere hier gezeigte Heizung kostet weniger.',
  'Of the {others} other ways shown here, {less} {less, plural, one {costs} other {cost}} less.':
    'Von den {others} anderen hier gezeigten Heizungen {less, plural, one {kostet eine} other {kosten #}} weniger.',
  'Cost of heating and hot water, a year. 8 in 10 homes like yours lie between low and high.':
    'Kosten für Heizung und Warmwasser im Jahr. 8 von 10 Häusern wie Ihrem liegen zwischen niedrig und hoch.',
  'Way of heating': 'Heizung',
  'How sure we are': 'Wie sicher wir sind',
  'costs more': 'kostet mehr',
  'costs less': 'kostet weniger',
  'the same': 'gleich viel',
  '{amount} more': '{amount} mehr',
  '{amount} less': '{amount} weniger',
  'A cold day in the best hours': 'Ein kalter Tag in den besten Stunden',
  'On a cold day on “{name}”, a kWh costs the same at every hour.':
    'An einem kalten Tag mit „{name}“ kostet eine kWh zu jeder Stunde gleich viel.',
  'On a cold day on “{name}”, a kWh costs most from {at}.':
    'An einem kalten Tag mit „{name}“ kostet eine kWh ab {at} am meisten.',
  'The heat pump then rests; at its usual hours it gives {usual} kW of heat.':
    'Die Wärmepumpe ruht dann; zu den üblichen Stunden liefert sie {usual} kW Wärme.',
  'The heat pump then gives {best} kW of heat, at its usual hours {usual} kW.':
    'Die Wärmepumpe liefert dann {best} kW Wärme, zu den üblichen Stunden {usual} kW.',
  'The rooms stay at {most} °C.': 'Die Räume bleiben bei {most} °C.',
  'The rooms stay between {least} and {most} °C.': 'Die Räume bleiben zwischen {least} und {most} °C.',
  'A cold day on “{name}”: price, heat and rooms, half-hour by half-hour.':
    'Ein kalter Tag mit „{name}“: Preis, Wärme und Räume, halbe Stunde für halbe Stunde.',
  'Heat, usual hours, kW': 'Wärme, übliche Stunden, kW',
  'Heat, best hours, kW': 'Wärme, beste Stunden, kW',
  'Rooms, °C': 'Räume, °C',
  'price on a cold day, {range}': 'Preis am kalten Tag, {range}',
  'heat, to {most} kW; dashed: as usual': 'Wärme, bis {most} kW; gestrichelt: wie üblich',
  'rooms, {range} °C': 'Räume, {range} °C',
  'Twenty futures, each as likely as the others, from worst to best for the heat pump.':
    'Zwanzig mögliche Verläufe, jeder so wahrscheinlich wie die anderen, für die Wärmepumpe vom schlechtesten zum besten.',
  Future: 'Verlauf',
  'In that future the heat pump costs': 'Dann kostet die Wärmepumpe',
  'dashed: days as cold': 'gestrichelt: gleich kalte Tage',
  'The day by the clock: {finding}': 'Der Tag nach der Uhr: {finding}',
  'On average over {days, plural, one {# day} other {# days}} the meter shows {power} kW at {at}.':
    'Im Mittel von {days, plural, one {# Tag} other {# Tagen}} zeigt der Zähler um {at} Uhr {power} kW.',
  'On average over {days, plural, one {# day} other {# days}} the meter shows {power} kW at {at}, compared with {otherPower} kW on days as cold.':
    'Im Mittel von {days, plural, one {# Tag} other {# Tagen}} zeigt der Zähler um {at} Uhr {power} kW, an gleich kalten Tagen {otherPower} kW.',
  'Average power by the clock: {finding}.': 'Mittlere Leistung nach der Uhr: {finding}.',
  'These days': 'Diese Tage',
  'Days as cold': 'Gleich kalte Tage',
  '{count, select, 1 {1 kWh} other {{count} kWh}}': '{count, select, 1 {1 kWh} other {{count} kWh}}',
  '{units} · no charge': '{units} · kostenlos',
  'heat for rooms and hot water': 'für Räume und Warmwasser',
  '{units} · one tile is {tile}': '{units} · ein Feld sind {tile}',
  'Where the heat comes from': 'Woher die Wärme kommt',
  'We do not know yet how much heat is needed.': 'Wie viel Wärme gebraucht wird, wissen wir noch nicht.',
  'This home needs no heat, so nothing is bought.': 'Dieses Haus braucht keine Wärme, also wird nichts gekauft.',
  'In a year the meter counts {meter} for {heat} of heat. The {source, select, air {air} other {ground}} adds nothing.':
    'In einem Jahr zählt der Zähler {meter} für {heat} Wärme. {source, select, air {Die Luft} other {Das Erdreich}} gibt nichts dazu.',
  'In a year: {meter} from the meter and {added} from the {source, select, air {air} other {ground}} make {heat} of heat.':
    'In einem Jahr: {meter} vom Zähler und {added} aus {source, select, air {der Luft} other {dem Erdreich}} ergeben {heat} Wärme.',
  'Heat for rooms and hot water in a typical year, and where it comes from.':
    'Wärme für Räume und Warmwasser in einem normalen Jahr, und woher sie kommt.',
  'Paid for energy': 'Bezahlt für Energie',
  'In rooms and hot water': 'In Räumen und Warmwasser',
  'Prices through the week': 'Preise im Lauf der Woche',
  'No price is known for this week.': 'Für diese Woche ist kein Preis bekannt.',
  'After the first ones a kWh costs {price} at every hour.': 'Nach den ersten kostet eine kWh zu jeder Stunde {price}.',
  'A kWh costs {price} at every hour.': 'Eine kWh kostet zu jeder Stunde {price}.',
  'any month': 'irgendeinem Monat',
  'In a normal week of {month} a kWh costs {low} to {high}, by the half-hour.':
    'In einer normalen Woche ({month}) kostet eine kWh je nach halber Stunde {low} bis {high}.',
  'In a week of {month} a kWh costs {low} at best (“{cheapest}”, {lowShare} of the hours). At worst it costs {high} (“{dearest}”, {highShare}).':
    'In einer Woche ({month}) kostet eine kWh im besten Fall {low} („{cheapest}“, {lowShare} der Stunden). Im schlechtesten Fall kostet sie {high} („{dearest}“, {highShare}).',
  'no price': 'kein Preis',
  'Price per kWh through a week, VAT included.': 'Preis je kWh im Lauf der Woche, mit Mehrwertsteuer.',
  Band: 'Preisstufe',
  'Share of the week': 'Anteil der Woche',
  now: 'jetzt',
  'the same after {years, plural, one {one year} other {# years}}':
    'gleich nach {years, plural, one {einem Jahr} other {# Jahren}}',
  'paid in total, in today’s money': 'insgesamt bezahlt, in heutigem Geld',
  'years from now': 'Jahre von jetzt an',
  'What is paid over the years': 'Was über die Jahre bezahlt wird',
  '{kind, select, whole {Purchase and running costs} other {Running costs alone}}, paid in total by the end of each year, in today’s money. 8 in 10 homes like yours lie between low and high.':
    '{kind, select, whole {Anschaffung und Betrieb} other {Nur der Betrieb}}, insgesamt bezahlt bis zum Ende jedes Jahres, in heutigem Geld. 8 von 10 Häusern wie Ihrem liegen zwischen niedrig und hoch.',
  'Years from now': 'Jahre von jetzt an',
  '{name}, low': '{name}, niedrig',
  '{name}, high': '{name}, hoch',
  // What the meter should show in the years ahead
  'As things are, the meter should show about {typical} of {carrier} in a typical year. A cold year (1 in 10) takes about {cold}, a mild one {mild}. We are not sure: 8 times in 10 a typical year lies between {typicalLow} and {typicalHigh}. A cold one lies between {coldLow} and {coldHigh}, a mild one between {mildLow} and {mildHigh}.':
    'Bleibt alles, wie es ist, zeigt der Zähler in einem normalen Jahr etwa {typical} {carrier}. Ein kaltes Jahr (1 von 10) braucht etwa {cold}, ein mildes {mild}. Sicher ist das nicht: In 8 von 10 Fällen liegt ein normales Jahr zwischen {typicalLow} und {typicalHigh}. Ein kaltes liegt zwischen {coldLow} und {coldHigh}, ein mildes zwischen {mildLow} und {mildHigh}.',
  'What the meter should show in a year to come. 8 such years in 10 lie between low and high.':
    'Was der Zähler in einem kommenden Jahr zeigen sollte. 8 von 10 solchen Jahren liegen zwischen niedrig und hoch.',
  Year: 'Jahr',
  'degree days': 'Gradtage',
  kWh: 'kWh',
  low: 'niedrig',
  high: 'hoch',
  'mild, 1 in 10': 'mild, 1 von 10',
  typical: 'normal',
  'cold, 1 in 10': 'kalt, 1 von 10',
};
