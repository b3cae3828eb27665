import type { Catalogue } from '../say.ts';

/** What heating costs, how sure that is, and the names of ways of heating. */
export const COST: Catalogue = {
  // Systems
  'The log says {mean} on average while the machine made heat, hot water included, in {readings} readings. The coldest day usually needs more.':
    'Das Protokoll nennt im Mittel {mean}, während das Gerät Wärme erzeugte, Warmwasser eingeschlossen, in {readings} Messwerten. Der kälteste Tag braucht meist mehr.',
  '{mean} on average': '{mean} im Mittel',
  '{mean} while the machine made heat': '{mean}, während das Gerät Wärme erzeugte',
  // Cost
  'We do not know yet what heating this home with a heat pump would cost.':
    'Wir wissen noch nicht, was das Heizen mit einer Wärmepumpe hier kosten würde.',
  'Heating this home with a heat pump should cost about {amount} a year.':
    'Das Heizen mit einer Wärmepumpe dürfte hier etwa {amount} im Jahr kosten.',
  'What you pay for heating now is not known yet.': 'Was Sie jetzt für das Heizen zahlen, ist noch nicht bekannt.',
  '{other} {number, select, many {cost} other {costs}} about {same, select, yes {the same, {amount}} other {{amount}}}.':
    '{other} {number, select, many {kostet} other {kostet}} etwa {same, select, yes {gleich viel, {amount}} other {{amount}}}.',
  '{other} {number, select, many {cost} other {costs}} about {amount}.':
    '{other} {number, select, many {kostet} other {kostet}} etwa {amount}.',
  '{other} would cost about {same, select, yes {the same, {amount}} other {{amount}}}.':
    '{other} würde etwa {same, select, yes {gleich viel kosten, {amount}} other {{amount} kosten}}.',
  '{amount} a year stays because you cook on gas: it is the gas standing charge. Without gas in the house it goes, and the heat pump costs about {less} a year. What an electric hob takes is not counted.':
    '{amount} im Jahr bleiben, weil Sie mit Gas kochen: das ist der Grundpreis für Gas. Ohne Gas im Haus fällt er weg, und die Wärmepumpe kostet etwa {less} im Jahr. Was ein Elektroherd braucht, ist nicht gezählt.',
  'The gas standing charge, {amount} a year, goes with the boiler, since nothing else here burns gas.':
    'Der Grundpreis für Gas, {amount} im Jahr, fällt mit dem Kessel weg, weil hier sonst nichts Gas verbrennt.',
  'We cannot give a range yet.': 'Eine Spanne können wir noch nicht nennen.',
  'fewer than {homes} in 10 homes': 'weniger als {homes} von 10 Häusern',
  '8 in 10 homes like yours should lie between {low} and {high}, 2 outside.':
    '8 von 10 Häusern wie Ihrem dürften zwischen {low} und {high} liegen, 2 außerhalb.',
  'One home’s bill moves too: with winter and prices, 8 in 10 of its years lie between {low} and {high}.':
    'Auch die Rechnung eines Hauses schwankt: Mit Winter und Preisen liegen 8 von 10 seiner Jahre zwischen {low} und {high}.',
  'An even payment is about {even} a month. The dearest month is {month}, at about {amount}.':
    'Gleichmäßig sind es etwa {even} im Monat. Am teuersten ist der {month} mit etwa {amount}.',
  'For the first year put {amount} a month aside: that is enough for 9 in 10 homes like yours.':
    'Legen Sie für das erste Jahr {amount} im Monat zurück: Das reicht bei 9 von 10 Häusern wie Ihrem.',
  'If it works as designed: {amount} a year; {homes} get there.':
    'Wenn sie läuft wie ausgelegt: {amount} im Jahr; das gelingt in {homes}.',
  'By the month that is about {amount}.': 'Das sind etwa {amount} im Monat.',
  'By the month that is about {amount}, beside {otherAmount} for {other}.':
    'Das sind etwa {amount} im Monat, gegenüber {otherAmount} für {other}.',
  'Against {other} the heat pump cannot be judged yet.':
    'Wie die Wärmepumpe gegen {other} abschneidet, lässt sich noch nicht sagen.',
  'Against {other} the heat pump costs about the same. It could be {range} a year.':
    'Gegen {other} kostet die Wärmepumpe etwa gleich viel. Es kann auch {range} im Jahr sein.',
  'Against {other} the heat pump should cost about {amount} a year {way, select, less {less} other {more}}. It could be {range}.':
    'Gegen {other} dürfte die Wärmepumpe etwa {amount} im Jahr {way, select, less {weniger} other {mehr}} kosten. Es kann auch {range} sein.',
  '{amount} for units': '{amount} für Kilowattstunden',
  '{amount} for the standing charge': '{amount} für den Grundpreis',
  '{amount} for the yearly service': '{amount} für die jährliche Wartung',
  'Nothing is paid in a year.': 'Im Jahr wird nichts bezahlt.',
  'That is {parts}.': 'Das sind {parts}.',
  'A cold winter and a mild one cost about the same, {amount}.':
    'Ein kalter und ein milder Winter kosten etwa gleich viel, {amount}.',
  'A cold winter, as comes once in 10 years, would bring it to about {cold}. A mild one would bring it to {mild}.':
    'Ein kalter Winter, wie er einmal in 10 Jahren kommt, brächte es auf etwa {cold}. Ein milder brächte es auf {mild}.',
  'A unit of heat costs {price} with the heat pump.': 'Eine Kilowattstunde Wärme kostet mit der Wärmepumpe {price}.',
  'A unit of heat costs {price} with the heat pump and {otherPrice} with {other}.':
    'Eine Kilowattstunde Wärme kostet mit der Wärmepumpe {price}. Vergleich: {other}, {otherPrice}.',
  'For the rooms alone, with pumps left out, it is {price} and {otherPrice}.':
    'Für die Räume allein, ohne Pumpen, sind es {price} und {otherPrice}.',
  'No bill, heat loss or certificate is known yet. So this is a usual home, with the heating set under “Heat needed”.':
    'Noch ist weder eine Rechnung noch die Heizlast noch ein Energieausweis bekannt. Darum steht hier ein übliches Haus mit der Heizung, die unter „Wärmebedarf“ eingestellt ist.',
  'No factor makes the heat pump cost the same as {other}.':
    'Bei keiner Arbeitszahl kostet die Wärmepumpe so viel wie {other}.',
  'At any factor it can have, a unit of heat costs less with the heat pump than with {other}.':
    'Bei jeder möglichen Arbeitszahl kostet die Wärme der Wärmepumpe weniger als die durch {other}.',
  'At a factor of {factor} a unit of heat costs the same as with {other}.':
    'Bei einer Arbeitszahl von {factor} kostet die Wärme so viel wie die durch {other}.',
  'Below that it costs more.': 'Darunter kostet sie mehr.',
  'With standing charge, service and pumps in, the whole year costs the same at {factor}. Below that the heat pump costs more.':
    'Mit Grundpreis, Wartung und Pumpen kostet das ganze Jahr bei {factor} gleich viel. Darunter kostet die Wärmepumpe mehr.',
  // How sure
  'We cannot say yet how often the heat pump would cost less.':
    'Wie oft die Wärmepumpe weniger kosten würde, können wir noch nicht sagen.',
  'In all {all} futures out of {all} the heat pump costs less. It is likely, but nobody can be certain.':
    'In allen {all} von {all} möglichen Verläufen kostet die Wärmepumpe weniger. Das ist wahrscheinlich, aber niemand kann sicher sein.',
  'In all {all} futures out of {all} the heat pump costs more.':
    'In allen {all} von {all} möglichen Verläufen kostet die Wärmepumpe mehr.',
  'In all {all} futures out of {all} both cost the same.':
    'In allen {all} von {all} möglichen Verläufen kosten beide gleich viel.',
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
  'how well the machine heats the rooms': 'wie gut das Gerät die Räume heizt',
  'how much heat the rooms need': 'wie viel Wärme die Räume brauchen',
  'how much hot water you use': 'wie viel Warmwasser Sie brauchen',
  'how cold the winter is': 'wie kalt der Winter ist',
  'how much pumps, fans and standby use': 'wie viel Pumpen, Gebläse und Bereitschaft verbrauchen',
  'what a service costs': 'was eine Wartung kostet',
  'how well the other heating works': 'wie gut die andere Heizung arbeitet',
  'how you live': 'wie Sie leben',
  'No single thing decides the answer.': 'Nichts allein entscheidet die Antwort.',
  'What matters most is {driver}.': 'Am meisten zählt: {driver}.',
  '{next} {count, plural, one {comes} other {come}} next.':
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
  'Taken from a table, since nobody has told us.': 'Aus einer Tabelle, da es uns niemand gesagt hat.',
  'Not there yet.': 'Noch nicht da.',
  // What could change it
  'If a unit of electricity costs {price} more, {clause}.': 'Kostet eine Kilowattstunde Strom {price} mehr, {clause}.',
  'If the water to the radiators has to be 5 degrees hotter, {clause}.':
    'Muss das Wasser zu den Heizkörpern 5 Grad heißer sein, {clause}.',
  'If the rooms are one degree warmer, {clause}.': 'Sind die Räume ein Grad wärmer, {clause}.',
  'If you use half as much hot water again, {clause}.': 'Brauchen Sie anderthalbmal so viel Warmwasser, {clause}.',
  'In a cold winter {clause}.': 'In einem kalten Winter {clause}.',
  '{clause}.': '{clause}.',
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
  'a temperature of the machine': 'eine Temperatur des Geräts',
  'local time': 'Ortszeit',
  UTC: 'UTC',
  'winter time all year': 'das ganze Jahr Winterzeit',
  'shape {shape}': 'Form {shape}',
  'in {unit}': 'in {unit}',
  'day first': 'Tag zuerst',
  'month first': 'Monat zuerst',
  'decimal comma': 'Dezimalkomma',
  'decimal point': 'Dezimalpunkt',
  'stamps name the start': 'Zeitangaben nennen den Beginn',
  'stamps name the end': 'Zeitangaben nennen das Ende',
  'the last day belongs to the bill': 'der letzte Tag gehört zur Rechnung',
  'the last day begins the next bill': 'mit dem letzten Tag beginnt die nächste Rechnung',
  'your columns': 'Ihre Spalten',
};
