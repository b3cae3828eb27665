import type { Catalogue } from '../say.ts';

/** What heating costs, how sure that is, and the names of ways of heating. */
export const COST: Catalogue = {
  // Systems
  'The log shows {mean} on average while the heat pump was heating, hot water included, in {readings} readings. The coldest day usually needs more.':
    'Das Protokoll zeigt im Mittel {mean}, während die Wärmepumpe heizte, mit Warmwasser, in {readings} Messwerten. Der kälteste Tag braucht meist mehr.',
  '{mean} on average': '{mean} im Mittel',
  '{mean} while the heat pump was heating': '{mean}, während die Wärmepumpe heizte',
  // Cost
  'We do not know yet what heating this home with a heat pump would cost.':
    'Wir wissen noch nicht, was das Heizen mit einer Wärmepumpe hier kosten würde.',
  'Heating this home with a heat pump should cost about {amount} a year.':
    'Mit einer Wärmepumpe dürfte das Heizen hier etwa {amount} im Jahr kosten.',
  'What you pay for heating now is not known yet.': 'Was Sie jetzt für das Heizen zahlen, ist noch nicht bekannt.',
  '{other} {number, select, many {cost} other {costs}} about {same, select, yes {the same, {amount}} other {{amount}}}.':
    '{other} {number, select, other {kostet}} etwa {same, select, yes {gleich viel, {amount}} other {{amount}}}.',
  '{other} {number, select, many {cost} other {costs}} about {amount}.':
    '{other} {number, select, other {kostet}} etwa {amount}.',
  '{other} would cost about {same, select, yes {the same, {amount}} other {{amount}}}.':
    'Zum Vergleich, {other}: etwa {same, select, yes {gleich viel, {amount}} other {{amount}}}.',
  'If you still cook on gas, you go on paying the gas standing charge, {amount} a year. Without gas in the house it ends, and the heat pump costs about {less} a year. What an electric hob uses is not counted.':
    'Kochen Sie weiter mit Gas, zahlen Sie weiter den Grundpreis für Gas, {amount} im Jahr. Ohne Gas im Haus entfällt er, und die Wärmepumpe kostet etwa {less} im Jahr. Den Strom für ein Kochfeld zählen wir nicht.',
  'The gas standing charge, {amount} a year, ends with the boiler, since nothing else here uses gas.':
    'Der Grundpreis für Gas, {amount} im Jahr, entfällt mit dem Kessel, weil hier sonst nichts Gas braucht.',
  'We cannot give a range yet.': 'Eine Spanne können wir noch nicht nennen.',
  'about {homes} in 100 homes': 'etwa {homes} von 100 Häusern',
  'fewer than 1 in 100 homes': 'weniger als 1 von 100 Häusern',
  '8 in 10 homes like yours should lie between {low} and {high}, 2 outside.':
    '8 von 10 Häusern wie Ihrem dürften zwischen {low} und {high} liegen, 2 außerhalb.',
  'One home’s bill moves too: with winter and prices, 8 in 10 of its years lie between {low} and {high}.':
    'Auch die Rechnung eines Hauses schwankt: Mit Winter und Preisen liegen 8 von 10 seiner Jahre zwischen {low} und {high}.',
  'An even payment is about {even} a month. The most expensive month is {month}, at about {amount}.':
    'Gleichmäßig verteilt sind es etwa {even} im Monat. Am teuersten ist der {month} mit etwa {amount}.',
  'For the first year put {amount} a month aside: that is enough for 9 in 10 homes like yours.':
    'Legen Sie im ersten Jahr {amount} im Monat zurück: Das reicht bei 9 von 10 Häusern wie Ihrem.',
  'If it works as designed: {amount} a year. In practice {homes} get there.':
    'Arbeitet sie wie ausgelegt: {amount} im Jahr. Das erreichen {homes}.',
  'We cannot compare the heat pump with {other} yet.': 'Die Wärmepumpe lässt sich noch nicht vergleichen ({other}).',
  'Compared with {other}, the heat pump costs about the same. For 8 in 10 homes like yours it is {range} a year.':
    'Im Vergleich ({other}) kostet die Wärmepumpe etwa gleich viel. Bei 8 von 10 Häusern wie Ihrem sind es im Jahr {range}.',
  'Compared with {other}, the heat pump should cost about {amount} a year {way, select, less {less} other {more}}. For 8 in 10 homes like yours it is {range}.':
    'Im Vergleich ({other}) dürfte die Wärmepumpe etwa {amount} im Jahr {way, select, less {weniger} other {mehr}} kosten. Bei 8 von 10 Häusern wie Ihrem sind es {range}.',
  'A cold winter and a mild one cost about the same, {amount}.':
    'Ein kalter und ein milder Winter kosten etwa gleich viel, {amount}.',
  'A cold winter, as comes once in 10 years, would bring it to about {cold}. A mild one would bring it to {mild}.':
    'In einem kalten Winter, wie er einmal in 10 Jahren kommt, wären es etwa {cold}, in einem milden {mild}.',
  'A kWh of heat costs {price} with the heat pump.': 'Eine kWh Wärme kostet mit der Wärmepumpe {price}.',
  'A kWh of heat costs {price} with the heat pump and {otherPrice} with {other}.':
    'Eine kWh Wärme kostet mit der Wärmepumpe {price}. Zum Vergleich, {other}: {otherPrice}.',
  'For the rooms alone, with pumps left out, it is {price} and {otherPrice}.':
    'Für die Räume allein, ohne Pumpen, sind es {price} und {otherPrice}.',
  'We have no bill, heat loss or certificate yet. So this is a typical home, with the heating chosen under “Heat needed”.':
    'Noch fehlen Rechnung, Heizlast und Energieausweis. Darum ist das ein durchschnittliches Haus mit der Heizung, die unter „Wärmebedarf“ gewählt ist.',
  'At no seasonal factor does the heat pump cost the same as {other}.':
    'Bei keiner JAZ kostet die Wärmepumpe so viel wie {other}.',
  'At any possible seasonal factor, heat costs less with the heat pump than with {other}.':
    'Bei jeder möglichen JAZ kostet die Wärme mit der Wärmepumpe weniger als ohne sie. Verglichen ist {other}.',
  'At a seasonal factor of {factor}, heat costs the same as with {other}.':
    'Bei einer JAZ von {factor} kostet die Wärme gleich viel. Verglichen ist {other}.',
  'Below that it costs more.': 'Darunter kostet sie mehr.',
  'With standing charge, service and pumps, the whole year costs the same at {factor}. Below that the heat pump costs more.':
    'Mit Grundpreis, Wartung und Pumpen kostet das ganze Jahr bei {factor} gleich viel. Darunter kostet die Wärmepumpe mehr.',
  // How sure
  'We cannot say yet how often the heat pump would cost less.':
    'Wie oft die Wärmepumpe weniger kosten würde, können wir noch nicht sagen.',
  'In all {all} futures the heat pump costs less. It is likely, but nobody can be certain.':
    'In allen {all} möglichen Verläufen kostet die Wärmepumpe weniger. Das ist wahrscheinlich, aber niemand kann sicher sein.',
  'In all {all} futures the heat pump costs more.': 'In allen {all} möglichen Verläufen kostet die Wärmepumpe mehr.',
  'In all {all} futures both cost the same.': 'In allen {all} möglichen Verläufen kosten beide gleich viel.',
  'In {same} they cost the same.': 'In {same} kosten sie gleich viel.',
  'In no future out of {all} does the heat pump cost less. In {more} it costs more.':
    'In keinem von {all} möglichen Verläufen kostet die Wärmepumpe weniger. In {more} kostet sie mehr.',
  'In {less} {less, plural, one {future} other {futures}} out of {all} the heat pump costs less.':
    'In {less} von {all} möglichen Verläufen kostet die Wärmepumpe weniger.',
  'In {less} {less, plural, one {future} other {futures}} out of {all} the heat pump costs less, in {more} it costs more.':
    'In {less} von {all} möglichen Verläufen kostet die Wärmepumpe weniger, in {more} mehr.',
  'Each dot is one future, as likely as any other. It has its own winter, prices and way of living.':
    'Jeder Punkt ist ein möglicher Verlauf, so wahrscheinlich wie jeder andere. Er hat seinen eigenen Winter, seine Preise und Gewohnheiten.',
  'the price of electricity': 'der Strompreis',
  'the price of the other fuel': 'der Preis des anderen Brennstoffs',
  'how well the heat pump works': 'wie gut die Wärmepumpe arbeitet',
  'how much heat the rooms need': 'wie viel Wärme die Räume brauchen',
  'how much hot water you use': 'wie viel Warmwasser Sie brauchen',
  'how cold the winter is': 'wie kalt der Winter ist',
  'how much pumps, fans and standby use': 'wie viel Pumpen, Ventilator und Stand-by verbrauchen',
  'what a service costs': 'was eine Wartung kostet',
  'how well the other heating works': 'wie gut die andere Heizung arbeitet',
  'how you live': 'wie Sie leben',
  'No single thing decides the answer.': 'Nichts allein entscheidet die Antwort.',
  'What matters most is {driver}.': 'Am meisten zählt: {driver}.',
  'After that {count, plural, one {comes} other {come}} {next}.':
    'Danach {count, plural, one {kommt} other {kommen}}: {next}.',
  'an unknown amount more or less': 'ein unbekannter Betrag mehr oder weniger',
  '{low} to {high} less': '{low} bis {high} weniger',
  '{low} to {high} more': '{low} bis {high} mehr',
  'from {more} more to {less} less': 'von {more} mehr bis {less} weniger',
  // Grades
  measured: 'gemessen',
  estimated: 'geschätzt',
  assumed: 'angenommen',
  'not there yet': 'noch nicht da',
  'Read from a meter, a bill or a rating plate.': 'Von Zähler, Rechnung oder Typenschild abgelesen.',
  'Worked out from something that was measured.': 'Aus etwas Gemessenem errechnet.',
  'Taken from a table, since nobody has told us.': 'Aus einer Tabelle, weil es nicht angegeben ist.',
  'Not there yet.': 'Noch nicht da.',
  // What could change it
  'If electricity costs {price} more per kWh, {clause}.': 'Kostet Strom je kWh {price} mehr, {clause}.',
  'If the water to the radiators has to be 5 degrees hotter, {clause}.':
    'Muss der Vorlauf 5 Grad heißer sein, {clause}.',
  'If the rooms are one degree warmer, {clause}.': 'Sind die Räume ein Grad wärmer, {clause}.',
  'If you use 50% more hot water, {clause}.': 'Brauchen Sie 50 % mehr Warmwasser, {clause}.',
  'In a cold winter {clause}.': 'In einem kalten Winter {clause}.',
  'we cannot say what the year costs': 'lässt sich nicht sagen, was das Jahr kostet',
  'the year costs about the same': 'kostet das Jahr etwa gleich viel',
  'the year costs about {amount} {way, select, less {less} other {more}}':
    'kostet das Jahr etwa {amount} {way, select, less {weniger} other {mehr}}',
  // What was chosen for a file
  'what the home buys': 'was das Haus kauft',
  'what the home sends out': 'was das Haus abgibt',
  'what the heat pump uses': 'was die Wärmepumpe braucht',
  'heat given out': 'abgegebene Wärme',
  weather: 'Wetter',
  'a temperature of the heat pump': 'eine Temperatur der Wärmepumpe',
  'local time': 'Ortszeit',
  UTC: 'UTC',
  'winter time all year': 'das ganze Jahr Winterzeit',
  'type {shape}': 'Typ {shape}',
  'in {unit}': 'in {unit}',
  'sent out below nought': 'unter null eingespeist',
  'faults below nought': 'unter null Fehler',
  'own use within it': 'Eigenverbrauch enthalten',
  'all of it bought': 'alles Netzbezug',
  'day first': 'Tag zuerst',
  'month first': 'Monat zuerst',
  'year first': 'Jahr zuerst',
  'year last': 'Jahr zuletzt',
  'decimal comma': 'Dezimalkomma',
  'decimal point': 'Dezimalpunkt',
  'times name the start': 'Zeitangaben nennen den Beginn',
  'times name the end': 'Zeitangaben nennen das Ende',
  'the last day belongs to the bill': 'der letzte Tag gehört zur Rechnung',
  'the last day begins the next bill': 'mit dem letzten Tag beginnt die nächste Rechnung',
  'all columns of one kind': 'alle Spalten einer Art',
  'no other columns': 'keine anderen Spalten',
  'your columns': 'Ihre Spalten',
  'what you said of single columns': 'was Sie zu einzelnen Spalten gesagt haben',
};
