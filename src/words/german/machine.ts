import type { Catalogue } from '../say.ts';

/** What the machine does, its year by the half-hour, and its round from within. */
export const MACHINE: Catalogue = {
  'We do not know yet what the machine makes of a unit.':
    'Was das Gerät aus einer Kilowattstunde macht, wissen wir noch nicht.',
  'For every unit you buy, {source, select, ground {the ground} other {the air outside}} adds almost nothing.':
    'Zu jeder gekauften Kilowattstunde gibt {source, select, ground {der Boden} other {die Außenluft}} fast nichts dazu.',
  'For every unit you buy, {source, select, ground {the ground} other {the air outside}} adds about {ratio}.':
    'Zu jeder gekauften Kilowattstunde gibt {source, select, ground {der Boden} other {die Außenluft}} etwa {ratio} dazu.',
  'the machine alone': 'das Gerät allein',
  'the machine and its source pump or fan': 'das Gerät mit Solepumpe oder Lüfter',
  'the machine, its source pump or fan and the backup heater': 'das Gerät mit Solepumpe oder Lüfter und Heizstab',
  'the machine with all pumps and the backup heater': 'das Gerät mit allen Pumpen und Heizstab',
  'We reckon with a factor of {factor} for rooms and hot water, all pumps counted (H4). It could be {low} to {high}.':
    'Wir rechnen mit einer Arbeitszahl von {factor} für Räume und Warmwasser, alle Pumpen mitgezählt (H4). Sie kann auch {low} bis {high} sein.',
  'Hot water, pumps and standby are counted in.': 'Warmwasser, Pumpen und Bereitschaft sind mitgezählt.',
  'For the rooms alone it is {factor}, counting {boundary}. Hot water, pumps and standby take their share.':
    'Für die Räume allein ist sie {factor}. Gezählt ist dabei: {boundary}. Warmwasser, Pumpen und Bereitschaft nehmen ihren Teil.',
  'Pumps, standby and the like take {units} a year.': 'Pumpen, Bereitschaft und Ähnliches brauchen {units} im Jahr.',
  'By its design it would be {design}. But {homes} reached the factor they were designed for, so we reckon with {factor}, the middle of what homes get.':
    'Nach der Auslegung wären es {design}. Aber {homes} erreichten die Arbeitszahl ihrer Auslegung. Darum rechnen wir mit {factor}, der Mitte dessen, was Häuser erreichen.',
  'In homes that were metered, most {source, select, ground {ground} other {air}} machines reached {low} to {high}, with {middle} in the middle ({boundary}).':
    'In Häusern mit Zählern erreichten die meisten {source, select, ground {Erdwärmepumpen} other {Luftwärmepumpen}} {low} bis {high}, in der Mitte {middle} ({boundary}).',
  'In {homes} homes that were metered, most {source, select, ground {ground} other {air}} machines reached {low} to {high}, with {middle} in the middle ({boundary}).':
    'In {homes} Häusern mit Zählern erreichten die meisten {source, select, ground {Erdwärmepumpen} other {Luftwärmepumpen}} {low} bis {high}, in der Mitte {middle} ({boundary}).',
  'The figure used here is above that, so ask what makes this home better.':
    'Die Zahl hier liegt darüber. Fragen Sie also, was dieses Haus besser macht.',
  'The figure used here is below that, so it is careful.': 'Die Zahl hier liegt darunter, ist also vorsichtig.',
  'The figure used here lies inside.': 'Die Zahl hier liegt darin.',
  'Compressor, for the rooms': 'Verdichter, für die Räume',
  'Compressor, for hot water': 'Verdichter, für Warmwasser',
  'Source pump or fan': 'Solepumpe oder Lüfter',
  'Backup heater': 'Heizstab',
  'Weekly heating of the hot water tank': 'Wöchentliches Aufheizen des Warmwasserspeichers',
  'Pump of the heating circuit': 'Pumpe des Heizkreises',
  Standby: 'Bereitschaft',
  'Heating water 5 degrees cooler would save about {amount} a year ({units}).':
    'Um 5 Grad kühleres Heizwasser würde etwa {amount} im Jahr sparen ({units}).',
  'Hot water 5 degrees cooler would save about {amount} a year ({units}).':
    'Um 5 Grad kühleres Warmwasser würde etwa {amount} im Jahr sparen ({units}).',
  'Half as much pipe again in the ground would save about {amount} a year ({units}).':
    'Anderthalbmal so viel Rohr im Boden würde etwa {amount} im Jahr sparen ({units}).',
  'Cooler water or more pipe in the ground would change little here.':
    'Kühleres Wasser oder mehr Rohr im Boden würde hier wenig ändern.',
  'Two factors for the whole year, from a data sheet or a certificate.':
    'Zwei Arbeitszahlen für das ganze Jahr, aus einem Datenblatt oder Zertifikat.',
  'From the rated points, the ground and the weather, half-hour by half-hour.':
    'Aus den Nennpunkten, dem Boden und dem Wetter, halbe Stunde um halbe Stunde.',
  'The ground': 'Der Boden',
  Evaporator: 'Verdampfer',
  Compressor: 'Verdichter',
  Condenser: 'Verflüssiger',
  'The house': 'Das Haus',
  'Expansion valve': 'Expansionsventil',
  'Outdoor air': 'Außenluft',
  'an unknown number of units an hour': 'unbekannt viele kWh/Stunde',
  '1 unit an hour': '1 kWh/Stunde',
  '{count} units an hour': '{count} kWh/Stunde',
  'A fan draws in air at {airIn} and blows it out at {airOut}. At times the machine stops to melt its frost.':
    'Ein Lüfter saugt Luft mit {airIn} an und bläst sie mit {airOut} wieder hinaus. Ab und zu hält das Gerät an und taut seinen Reif ab.',
  'Water with frost protection comes up from the ground at {brineIn} and goes back at {brineOut}.':
    'Wasser mit Frostschutz kommt mit {brineIn} aus dem Boden und geht mit {brineOut} zurück.',
  'That warms a liquid which boils at {boiling}. As it boils, it takes up the heat of the {source, select, air {air} other {ground}}.':
    'Das wärmt eine Flüssigkeit, die bei {boiling} siedet. Beim Sieden nimmt sie die Wärme {source, select, air {der Luft} other {des Bodens}} auf.',
  'The compressor squeezes the vapour until it is {hot} hot. This is most of what the meter counts.':
    'Der Verdichter presst den Dampf zusammen, bis er {hot} heiß ist. Das ist das meiste von dem, was der Zähler zählt.',
  'The compressor squeezes the vapour until it is {hot} hot. This is what the meter counts.':
    'Der Verdichter presst den Dampf zusammen, bis er {hot} heiß ist. Das ist es, was der Zähler zählt.',
  'The hot vapour warms your heating water. It turns back into liquid at about {condensing}.':
    'Der heiße Dampf wärmt Ihr Heizwasser. Bei etwa {condensing} wird er wieder flüssig.',
  'The water goes to your {emitters, select, floor {floor} other {radiators}} at {flow} and comes back at {back}.':
    'Das Wasser geht mit {flow} zu {emitters, select, floor {Ihrer Fußbodenheizung} other {Ihren Heizkörpern}} und kommt mit {back} zurück.',
  'A narrow valve lets the pressure go. The liquid cools to {after}, and the round begins again.':
    'Ein enges Ventil nimmt den Druck weg. Die Flüssigkeit kühlt auf {after} ab, und der Kreis beginnt von vorn.',
  'Each hour the air gives {added} units of heat and the compressor adds {bought}. The house gets {given}. Fan and frost take {beside} more.':
    'Jede Stunde gibt die Luft {added} kWh Wärme, und der Verdichter gibt {bought} dazu. Das Haus bekommt {given}. Lüfter und Abtauen brauchen noch {beside}.',
  'Each hour the {source, select, air {air} other {ground}} gives {added} units of heat and the meter adds {bought}. The house gets {given}.':
    'Jede Stunde gibt {source, select, air {die Luft} other {der Boden}} {added} kWh Wärme, und der Zähler gibt {bought} dazu. Das Haus bekommt {given}.',
  'The refrigerant': 'Das Kältemittel',
  'The boiling temperature': 'Die Verdampfungstemperatur',
  'The condensing temperature': 'Die Verflüssigungstemperatur',
  'The superheat': 'Die Überhitzung',
  'The subcooling': 'Die Unterkühlung',
  'The compressor’s efficiency': 'Der Wirkungsgrad des Verdichters',
  'The hot gas temperature': 'Die Heißgastemperatur',
  'The brine going back to the ground': 'Die Sole auf dem Rückweg in den Boden',
  'The return temperature': 'Die Rücklauftemperatur',
  'The heat wanted': 'Die gewünschte Wärme',
  'The COP': 'Der COP',
  '{place} is out of reach; expected is {expected}. Correct the temperatures and try again.':
    '{place} ist nicht erreichbar; erwartet wird {expected}. Berichtigen Sie die Temperaturen und versuchen Sie es noch einmal.',
  '{place} is {found}; expected is {expected}. Correct the temperatures and try again.':
    '{place} ist {found}; erwartet wird {expected}. Berichtigen Sie die Temperaturen und versuchen Sie es noch einmal.',
  '{name} · {source, select, air {a very cold day between two defrosts} other {a very cold day}}, {outdoor} outside · {gas}, {grade}':
    '{name} · {source, select, air {ein sehr kalter Tag zwischen zwei Abtauungen} other {ein sehr kalter Tag}}, {outdoor} draußen · {gas}, {grade}',
  'to the house': 'ins Haus',
  'How the machine does it': 'Wie das Gerät es macht',
  'Air in': 'Luft hinein',
  'From the ground': 'Aus dem Boden',
  'Air out': 'Luft hinaus',
  'Back to it': 'Zurück hinein',
  'Heat taken': 'Wärme geholt',
  'Boils at': 'Siedet bei',
  'Low pressure on the gauge': 'Niederdruck am Manometer',
  'Gas on its way out': 'Gas am Ausgang',
  'Gas after cooling the motor': 'Gas nach Kühlung des Motors',
  'Hot gas': 'Heißgas',
  Fan: 'Lüfter',
  'fan and frost: {amount}': 'Lüfter und Abtauen: {amount}',
  'Melting frost, on average': 'Abtauen, im Mittel',
  'Turns to liquid at': 'Wird flüssig bei',
  'High pressure on the gauge': 'Hochdruck am Manometer',
  Flow: 'Vorlauf',
  Return: 'Rücklauf',
  'Heat given': 'Wärme gegeben',
  'Liquid before': 'Flüssigkeit davor',
  'Cold mix behind': 'Kaltes Gemisch dahinter',
  'The round of the heat at this moment, with {refrigerant} in the machine. Pressures as a gauge shows them.':
    'Der Kreis der Wärme in diesem Augenblick, mit {refrigerant} im Gerät. Drücke, wie ein Manometer sie zeigt.',
  'How much': 'Wie viel',
  'above 0 kW': 'über 0 kW',
  'above 1': 'über 1',
};
