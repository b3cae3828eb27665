import type { Catalogue } from '../say.ts';

/** What the numbers cannot settle. */
export const QUESTIONS: Catalogue = {
  'rooms that are not heated': 'Räume, die nicht geheizt werden',
  'rooms cooler than assumed': 'kühlere Räume als angenommen',
  'rooms warmer than assumed': 'wärmere Räume als angenommen',
  'heat that no meter sees, such as a stove': 'Wärme, die kein Zähler sieht, etwa von einem Ofen',
  'a boiler that works better or worse than assumed':
    'eine Heizung, die besser oder schlechter arbeitet als angenommen',
  'a heat loss that was put too low': 'eine zu niedrig angesetzte Heizlast',
  'a certificate made for an average household, not for this one':
    'ein Ausweis, der für einen durchschnittlichen Haushalt gilt und nicht für diesen',
  'a home unlike others of its size and age': 'ein Haus, das anders ist als andere seiner Größe und seines Alters',
  'bills with estimated readings': 'Rechnungen mit geschätzten Ablesungen',
  'the wood stove': 'Holzofen',
  'the open fire': 'offener Kamin',
  'the electric heaters': 'elektrische Heizgeräte',
  'the solar panels for hot water': 'Sonnenkollektoren für Warmwasser',
  'Nothing is known of this home’s heat yet, so we use a typical home of about {heat}. Add bills, the heat loss or the floor area.':
    'Über die Wärme dieses Hauses ist noch nichts bekannt. Darum rechnen wir mit einem durchschnittlichen Haus mit etwa {heat}. Fügen Sie Rechnungen, Heizlast oder Wohnfläche hinzu.',
  'The price of {fuel}, {price}, is unusual. Most lie between {low} and {high}. Is it in pence?':
    'Der Preis für {fuel}, {price}, ist ungewöhnlich. Die meisten liegen zwischen {low} und {high}. Ist er in Cent?',
  'What heating costs now cannot be said: nobody has typed the price of {fuel}, and none is built in here. Type it.':
    'Was das Heizen jetzt kostet, lässt sich nicht sagen: niemand hat den Preis für {fuel} eingegeben, und hier ist keiner eingebaut. Bitte eingeben.',
  'The climate region of the home is not given, so we use {region}. Please choose it.':
    'Die Klimaregion des Hauses ist nicht angegeben, darum gilt {region}. Bitte wählen.',
  'The climate region chosen is none of this country, so we use {region}. Please choose it.':
    'Die gewählte Klimaregion gehört nicht zu diesem Land, darum gilt {region}. Bitte wählen.',
  'No climate region is known for the postcode “{postcode}”, so we use {region}. Check it, or choose the region.':
    'Zur Postleitzahl „{postcode}“ ist keine Klimaregion bekannt, darum gilt {region}. Prüfen Sie sie oder wählen Sie die Region.',
  'Hot water, boilers, heat pumps in use and the spread of prices follow British tables and studies, named in the sums. A yearly service has no price here. Type your own figures where you have them.':
    'Warmwasser, Heizkessel, Wärmepumpen im Betrieb und die Streuung der Preise folgen britischen Tabellen und Studien, die der Rechenweg nennt. Eine jährliche Wartung hat hier keinen Preis. Geben Sie eigene Werte ein, wo Sie welche haben.',
  'A heat loss says nothing without the outdoor temperature that it was worked out for. Type it.':
    'Eine Heizlast sagt nichts ohne die Norm-Außentemperatur, für die sie gilt. Bitte eingeben.',
  '{way} {number, select, many {give} other {gives}} {heat}, {otherWay} {otherNumber, select, many {give} other {gives}} {otherHeat}. That is too far apart to be chance.':
    '{way}:{number, select, other {}} {heat}. Dagegen {otherWay}:{otherNumber, select, other {}} {otherHeat}. Das liegt für einen Zufall zu weit auseinander.',
  'Likely reasons: {reasons}.': 'Wahrscheinliche Gründe: {reasons}.',
  'The heat cannot be taken from {way}, as was chosen. The other ways are used until it is there.':
    'Die gewählte Grundlage fehlt noch: {way}. Bis sie da ist, gelten die anderen Wege.',
  'The electricity rises with the cold, by about {use} a year. Do electric heaters warm some rooms? Their heat is not counted in. Solar panels could look alike, or a heat pump that runs already.':
    'Der Strom steigt mit der Kälte, im Jahr um etwa {use}. Wärmen elektrische Heizgeräte einige Räume? Ihre Wärme ist nicht mitgezählt. Eine Solaranlage sähe ähnlich aus, auch eine Wärmepumpe, die schon läuft.',
  'The {carrier} is that of further meters, and no main meter is here. Is it all that the home takes? If not, bring the main meter’s file.':
    'Energieart {carrier}: Hier sind nur weitere Zähler, der Hauptzähler fehlt. Ist es alles, was das Haus verbraucht? Wenn nicht, bringen Sie die Datei des Hauptzählers.',
  'Some heat comes from {kind}, and no meter sees it.':
    'Ein Teil der Wärme kommt anders ins Haus: {kind}. Diese Wärme sieht kein Zähler.',
  'It is not counted in. Without it the home needs more from its main heating.':
    'Sie ist nicht mitgezählt. Ohne sie braucht das Haus mehr von seiner Heizung.',
  'A usual one brings about {heat} a year.': 'Üblich sind etwa {heat} im Jahr.',
  'Since {known, select, yes {about {day}} other {some day}} this home takes {share} {way, select, more {more} other {less}} {carrier} in the same weather ({low} to {high}).':
    'Seit {known, select, yes {etwa {day}} other {einiger Zeit}} braucht dieses Haus bei gleichem Wetter {share} {way, select, more {mehr} other {weniger}} {carrier} ({low} bis {high}).',
  'In {cases} cases out of 100 that is more than habit.': 'In {cases} von 100 Fällen ist das mehr als Gewohnheit.',
  'Did more people move in, or was it built on?': 'Sind mehr Menschen eingezogen, oder wurde angebaut?',
  'Was it insulated, or was the boiler changed?': 'Wurde gedämmt, oder wurde die Heizung getauscht?',
  'The sums use the days since then.': 'Gerechnet wird mit den Tagen seither.',
  'The sums still use all the readings.': 'Gerechnet wird weiter mit allen Messwerten.',
  'This meter counts the whole home. Of about {base} used in any weather, {water} are taken as hot water. The rest runs lights, appliances and anything else.':
    'Dieser Zähler zählt das ganze Haus. Etwa {base} braucht es bei jedem Wetter; davon gelten {water} als Warmwasser. Der Rest ist für Licht, Geräte und alles andere.',
  'About {share} of this record are estimated readings. Ask for the meter’s own readings.':
    'Etwa {share} dieser Messwerte sind geschätzt. Bitten Sie um die abgelesenen Zählerstände.',
  'bill or reading': 'Rechnung oder Ablesung',
  'bills or readings': 'Rechnungen oder Ablesungen',
  'We left out {bills} with no days or less than no use. Look at their dates and numbers.':
    'Weggelassen wurden: {bills} ohne Tage oder mit negativem Verbrauch. Prüfen Sie Daten und Zahlen.',
  'The {carrier} record does not rise when it gets colder. Was the home heated by something else?':
    'Die Messwerte ({carrier}) steigen nicht, wenn es kälter wird. Wurde das Haus anders geheizt?',
  '{period, select, month {Months} other {Bills}} stray by about {share} from what the weather explains. Did others live here for a time, or is a number wrong?':
    '{period, select, month {Monate} other {Rechnungen}} weichen um etwa {share} von dem ab, was das Wetter erklärt. Wohnten hier eine Zeit lang andere, oder stimmt eine Zahl nicht?',
  'All that the record shows is less than hot water for {people} needs. Is its unit right, and is all of the fuel in it?':
    'Alles, was die Messreihe zeigt, ist weniger, als das Warmwasser für {people} braucht. Stimmt die Einheit, und ist der ganze Brennstoff darin?',
  'The weather explains only {share} of this record. Long absences, a fire or wrong dates may stand behind it.':
    'Das Wetter erklärt nur {share} dieser Messwerte. Lange Abwesenheit, ein Kamin oder falsche Daten können dahinter stehen.',
  'We have no weather for {days} of the readings, so we use a typical year in the region ({region}). A weather file would make the answer surer.':
    'Für einen Teil der Messwerte fehlt das Wetter: {days}. Dafür gilt ein normales Jahr der Region ({region}). Eine Wetterdatei macht die Antwort sicherer.',
  'In a year about {heat} of heat go in any weather, beyond what the people use as hot water and for cooking. Pipes lose some of it. What else runs on it?':
    'Im Jahr gehen bei jedem Wetter etwa {heat} Wärme weg, mehr als Warmwasser und Kochen brauchen. Einiges verlieren die Rohre. Was hängt noch daran?',
  'The record’s use in warm weather is less than hot water for {people} needs. Is the water heated another way?':
    'Bei warmem Wetter ist der Verbrauch kleiner als der Bedarf an Warmwasser ({people}). Wird das Wasser anders erwärmt?',
  'Only the total of {days} is known, so weather and hot water cannot be told apart. More dates would make it surer.':
    'Nur die Summe über {days} ist bekannt. Wetter und Warmwasser lassen sich so nicht trennen. Mehr Zwischenstände machen es sicherer.',
  'A heat loss of 0 cannot be. Type the heat loss in kW at the design temperature.':
    'Eine Heizlast von 0 kann es nicht geben. Geben Sie die Heizlast in kW bei der Auslegungstemperatur ein.',
  'A heat loss of {loss} W for each degree is unusual. Check the figure and its unit.':
    'Ein Wärmeverlust von {loss} W je Grad ist ungewöhnlich. Prüfen Sie Zahl und Einheit.',
  'A heat loss of {loss} W for each degree is unusual for {area} m². Check the figure and its unit.':
    'Ein Wärmeverlust von {loss} W je Grad ist für {area} m² ungewöhnlich. Prüfen Sie Zahl und Einheit.',
  'The rooms are at {room}, not above the design outdoor temperature of {outdoor}. One of the two is wrong.':
    'Die Räume haben {room}, nicht mehr als die Auslegungstemperatur draußen von {outdoor}. Eines von beiden ist falsch.',
  'No design temperature was given, so {outdoor} is taken ({place}, the {rule} set). Two sets are in use, so ask which one the heat loss was made for.':
    'Die Auslegungstemperatur ist nicht angegeben, darum gilt {outdoor} ({place}, Reihe zu {rule}). Zwei Reihen sind in Gebrauch. Fragen Sie, für welche die Heizlast gerechnet ist.',
  'A boiler that gives {share} gives more than it burns. Some papers count that way, yet it is rare in a home.':
    'Eine Heizung mit {share} gibt mehr, als sie verbrennt. Manche Unterlagen zählen so, in einem Haus ist es aber selten.',
  // The machine
  'A factor of {found} cannot be. It must lie between {low} and {high}, so it is left out until you correct it.':
    'Eine JAZ von {found} kann es nicht geben. Sie muss zwischen {low} und {high} liegen. Bis Sie sie berichtigen, bleibt sie weg.',
  'No seasonal factor was given, so we use the middle of metered homes: {middle}, most between {low} and {high}.':
    'Keine JAZ ist angegeben, darum gilt die Mitte gemessener Häuser: {middle}, meist zwischen {low} und {high}.',
  'A factor of {typed} is above what most metered homes reach, {low} to {high}. What makes this home better?':
    'Eine JAZ von {typed} liegt über dem, was gemessene Häuser meist erreichen: {low} bis {high}. Was macht dieses Haus besser?',
  'A factor of {typed} with water at {flow} is above what most metered homes would reach at that flow, {high}. Is it for cooler water?':
    'Eine JAZ von {typed} bei {flow} Vorlauf liegt über dem, was gemessene Häuser dabei meist erreichen würden: {high}. Gilt sie für kühleres Wasser?',
  'It is not given what the seasonal factor counts. We take it as {taken}: with brine pump and backup heater, without the pumps in the home. Look in the data sheet.':
    'Was die JAZ mitzählt, ist nicht angegeben. Wir nehmen {taken} an: mit Solepumpe und Heizstab, ohne die Pumpen im Haus. Sehen Sie im Datenblatt nach.',
  'No factor for hot water was given. From {typed} for the rooms we take {derived}, with a wider range.':
    'Für Warmwasser ist keine JAZ angegeben. Aus {typed} für die Räume nehmen wir {derived}, mit breiterer Spanne.',
  'The factor for hot water, {water}, is above the one for the rooms, {space}. Hot water is hotter, so it is usually below. Are they swapped?':
    'Die JAZ für Warmwasser, {water}, liegt über der für die Räume, {space}. Warmwasser ist heißer, darum liegt sie sonst darunter. Sind beide vertauscht?',
  'No points of the data sheet were given, so we use those of a usual heat pump. Type two or more from the sheet, such as B0/W35 and B0/W55.':
    'Keine Prüfpunkte des Datenblatts sind angegeben, darum gelten die einer üblichen Wärmepumpe. Geben Sie zwei oder mehr ein, etwa B0/W35 und B0/W55.',
  'In the points of the data sheet a harder task gives a better figure. That cannot be, so the worse of the two is used. Check them.':
    'Im Datenblatt gibt die schwerere Aufgabe den besseren Wert. Das kann nicht sein, darum gilt der schlechtere. Prüfen Sie beide.',
  'The brine from the ground would come in at {coldest} on the coldest day. A larger array keeps it above {frost}.':
    'Die Sole käme am kältesten Tag mit {coldest} aus dem Erdreich. Eine größere Quelle hält sie über {frost}.',
  'The heat pump is too small for the coldest days. The backup heater gives {share} of the heat. Check its output and the heat loss.':
    'Die Wärmepumpe ist für die kältesten Tage zu klein. Der Heizstab gibt {share} der Wärme. Prüfen Sie Heizleistung und Heizlast.',
  'The sum gives a seasonal factor of {reckoned}, above what most metered homes reach, {low} to {high}. What makes this home better?':
    'Die Berechnung ergibt eine JAZ von {reckoned}. Gemessene Häuser erreichen meist {low} bis {high}. Was macht dieses Haus besser?',
  'A depth of {found} m does not suit {kind, select, vertical {boreholes} other {pipes in a trench}}. It should lie between {low} and {high} m, so the usual depth is taken.':
    'Eine Tiefe von {found} m passt nicht für {kind, select, vertical {Erdsonden} other {Rohre im Graben}}. Sie sollte zwischen {low} und {high} m liegen. Darum gilt die übliche Tiefe.',
  // Prices
  'The {fuel} prices used here ended {days} ago. Type today’s prices before you give an estimate.':
    'Die Preise für {fuel} sind abgelaufen, seither: {days}. Geben Sie die heutigen ein, bevor Sie eine Kostenschätzung abgeben.',
  'The {fuel} prices used here begin only on {date}. Type the prices of the day itself.':
    'Die Preise für {fuel} gelten erst ab {date}. Geben Sie die Preise des Tages selbst ein.',
  'The {fuel} tariff chosen for this home is no longer there. The built-in price is used, so choose a tariff again.':
    'Der für dieses Haus gewählte Tarif ({fuel}) ist nicht mehr da. Es gilt der eingebaute Preis. Wählen Sie wieder einen Tarif.',
  '“{tariff}” has steps. About {use} a year of other electricity fill the first ones, and the heating pays what comes on top.':
    '„{tariff}“ hat Mengenstufen. Etwa {use} anderer Strom im Jahr füllen die ersten, die Heizung zahlt, was darüber liegt.',
  'That is taken from this home’s own record.': 'Das stammt aus den Messwerten dieses Hauses.',
  'That is the usual use of such a home. A year of its electricity bills would make it surer.':
    'Das ist der übliche Verbrauch eines solchen Hauses. Stromrechnungen eines Jahres machen es sicherer.',
  '“{tariff}” charges for the highest half-hour of each month. The home alone reaches {home}, with the heat pump about {together} if it runs evenly. That adds {amount} a year, counted with the standing charge.':
    '„{tariff}“ berechnet die höchste halbe Stunde jedes Monats. Das Haus allein erreicht {home}, mit gleichmäßig laufender Wärmepumpe etwa {together}. Das sind {amount} mehr im Jahr, beim Grundpreis mitgezählt.',
  '“{tariff}” charges for the highest half-hour of each month. Nobody can know that without half-hourly readings, so it is not counted. Each kW more costs {amount} a year. Ask for the meter’s half-hourly record.':
    '„{tariff}“ berechnet die höchste halbe Stunde jedes Monats. Ohne halbstündliche Messwerte kennt sie niemand, darum ist sie nicht mitgezählt. Jedes kW mehr kostet {amount} im Jahr. Fragen Sie nach den halbstündlichen Messwerten des Zählers.',
  '“{tariff}” charges for the highest half-hour of each month. This meter counts heating too, so what the heat pump adds cannot be known. It is not counted. Each kW more costs {amount} a year. Ask what power the home uses without heating.':
    '„{tariff}“ berechnet die höchste halbe Stunde jedes Monats. Dieser Zähler zählt auch Heizung; was die Wärmepumpe hinzufügt, lässt sich nicht wissen. Es ist nicht mitgezählt. Jedes kW mehr kostet {amount} im Jahr. Fragen Sie, welche Leistung das Haus ohne Heizung braucht.',
  '“{tariff}” charges for {power} agreed, {amount} a year whatever heats the home, so it is not in the comparison. Ask whether the heat pump needs more.':
    '„{tariff}“ berechnet {power} vereinbarte Leistung, {amount} im Jahr, womit auch geheizt wird. Darum fehlt das im Vergleich. Fragen Sie, ob die Wärmepumpe mehr braucht.',
  'The tariff chosen for {fuel} is one for another fuel. The built-in price is used, so choose a tariff again.':
    'Der für {fuel} gewählte Tarif gilt für einen anderen Energieträger. Es gilt der eingebaute Preis. Wählen Sie wieder einen Tarif.',
  'We cannot say what heating costs now, since we have no price for its kind. Choose the nearest kind, or leave the comparison out.':
    'Was das Heizen jetzt kostet, lässt sich nicht sagen, weil wir für diese Heizung keine Preise haben. Wählen Sie die ähnlichste Art oder lassen Sie sie weg.',
  'What heats the home now is not given, so we assume a gas boiler. Choose it under “Heat needed”.':
    'Noch ist nicht angegeben, womit jetzt geheizt wird. Darum nehmen wir eine Gasheizung an. Wählen Sie die Heizung unter „Wärmebedarf“.',
  'An efficiency of {found} cannot be. It must lie above 0 and be at most {high}, so it is left out until you correct it.':
    'Ein Nutzungsgrad von {found} kann es nicht geben. Er muss über 0 und höchstens bei {high} liegen. Bis Sie ihn berichtigen, bleibt er weg.',
  '“{tariff}”: {fault}': '„{tariff}“: {fault}',
};
