import type { Catalogue } from '../say.ts';

/** What the machine does, its year by the half-hour, and its round from within. */
export const MACHINE: Catalogue = {
  'We do not know yet how much heat the heat pump makes from a kWh.':
    'Wie viel Wärme die Wärmepumpe aus einer kWh macht, wissen wir noch nicht.',
  'For every kWh of electricity you buy, {source, select, ground {the ground} other {the air outside}} adds almost no heat.':
    'Zu jeder kWh Strom, die Sie kaufen, gibt {source, select, ground {das Erdreich} other {die Außenluft}} fast keine Wärme dazu.',
  'For every kWh of electricity you buy, {source, select, ground {the ground} other {the air outside}} adds about {ratio} kWh of heat.':
    'Zu jeder kWh Strom, die Sie kaufen, gibt {source, select, ground {das Erdreich} other {die Außenluft}} etwa {ratio} kWh Wärme dazu.',
  'the heat pump alone': 'die Wärmepumpe allein',
  'the heat pump with its brine pump or fan': 'die Wärmepumpe mit Solepumpe oder Ventilator',
  'the heat pump with its brine pump or fan and the backup heater':
    'die Wärmepumpe mit Solepumpe oder Ventilator und Heizstab',
  'the heat pump with all pumps and the backup heater': 'die Wärmepumpe mit allen Pumpen und Heizstab',
  'We expect a seasonal factor of {factor} for rooms and hot water, with all pumps (H4). 8 in 10 homes like yours reach {low} to {high}.':
    'Wir erwarten eine Jahresarbeitszahl (JAZ) von {factor} für Räume und Warmwasser, mit allen Pumpen (H4). 8 von 10 Häusern wie Ihrem erreichen {low} bis {high}.',
  'Hot water, pumps and standby are included.': 'Warmwasser, Pumpen und Stand-by sind enthalten.',
  'For the rooms alone it is {factor}, counting {boundary}. Hot water, pumps and standby take their share.':
    'Für die Räume allein ist sie {factor}; gezählt ist {boundary}. Warmwasser, Pumpen und Stand-by brauchen ihren Teil.',
  'Pumps, standby and the like take {units} a year.': 'Pumpen, Stand-by und Ähnliches brauchen {units} im Jahr.',
  'By design it would be {design}. In practice {homes} get there. So we use {factor}, the middle of what homes get.':
    'Nach der Auslegung wären es {design}. Das erreichen {homes}. Darum rechnen wir mit {factor}, der Mitte der gemessenen Häuser.',
  'In homes that were metered, 8 in 10 {source, select, ground {ground-source} other {air-source}} heat pumps reached {low} to {high}, with {middle} in the middle ({boundary}).':
    'In Häusern mit Messung erreichten 8 von 10 {source, select, ground {Sole/Wasser-Wärmepumpen} other {Luft/Wasser-Wärmepumpen}} {low} bis {high}, in der Mitte {middle} ({boundary}).',
  'In {homes} homes that were metered, 8 in 10 {source, select, ground {ground-source} other {air-source}} heat pumps reached {low} to {high}, with {middle} in the middle ({boundary}).':
    'In {homes} Häusern mit Messung erreichten 8 von 10 {source, select, ground {Sole/Wasser-Wärmepumpen} other {Luft/Wasser-Wärmepumpen}} {low} bis {high}, in der Mitte {middle} ({boundary}).',
  'The figure used here is above that, so ask what makes this home better.':
    'Der Wert hier liegt darüber. Fragen Sie also, was dieses Haus besser macht.',
  'The figure used here is below that, so it is cautious.': 'Der Wert hier liegt darunter, ist also vorsichtig.',
  'The figure used here is within that.': 'Der Wert hier liegt in diesem Bereich.',
  'Compressor, for the rooms': 'Verdichter, für die Räume',
  'Compressor, for hot water': 'Verdichter, für Warmwasser',
  'Brine pump or fan': 'Solepumpe oder Ventilator',
  'Backup heater': 'Heizstab',
  'Weekly heating of the hot water tank': 'Wöchentliches Aufheizen des Warmwasserspeichers',
  'Heating circuit pump': 'Heizkreispumpe',
  Standby: 'Stand-by',
  'A flow temperature 5 degrees lower would save about {amount} a year ({units}).':
    'Ein Vorlauf mit 5 Grad weniger würde etwa {amount} im Jahr sparen ({units}).',
  'Hot water 5 degrees cooler would save about {amount} a year ({units}).':
    'Warmwasser mit 5 Grad weniger würde etwa {amount} im Jahr sparen ({units}).',
  '50% more pipe in the ground would save about {amount} a year ({units}).':
    '50 % mehr Rohr im Erdreich würde etwa {amount} im Jahr sparen ({units}).',
  'A lower flow temperature or more pipe in the ground would change little here.':
    'Ein niedrigerer Vorlauf oder mehr Rohr im Erdreich würde hier wenig ändern.',
  'Two seasonal factors, from a data sheet or a certificate.':
    'Zwei Jahresarbeitszahlen, aus Datenblatt oder Zertifikat.',
  'From the rated points, the ground and the weather, half-hour by half-hour.':
    'Aus den Prüfpunkten, dem Erdreich und dem Wetter, halbe Stunde für halbe Stunde.',
  'The ground': 'Das Erdreich',
  Evaporator: 'Verdampfer',
  Compressor: 'Verdichter',
  Condenser: 'Verflüssiger',
  'The house': 'Das Haus',
  'Expansion valve': 'Expansionsventil',
  'Outdoor air': 'Außenluft',
  'an unknown number of kWh an hour': 'unbekannt viele kWh je Stunde',
  '1 kWh an hour': '1 kWh je Stunde',
  '{count} kWh an hour': '{count} kWh je Stunde',
  'A fan draws in air at {airIn} and blows it out at {airOut}. At times the heat pump stops to melt its frost.':
    'Ein Ventilator saugt Luft mit {airIn} an und bläst sie mit {airOut} hinaus. Ab und zu hält die Wärmepumpe an und taut ab.',
  'Water with frost protection comes up from the ground at {brineIn} and goes back at {brineOut}.':
    'Die Sole kommt mit {brineIn} aus dem Erdreich und fließt mit {brineOut} zurück.',
  'That warms a liquid which boils at {boiling}. As it boils, it takes up the heat of the {source, select, air {air} other {ground}}.':
    'Sie erwärmt eine Flüssigkeit, die bei {boiling} siedet. Beim Sieden nimmt sie die Wärme {source, select, air {der Luft} other {des Erdreichs}} auf.',
  'The compressor squeezes the vapour until it is {hot} hot. This is most of what the meter counts.':
    'Der Verdichter presst den Dampf zusammen, bis er {hot} heiß ist. Das ist das meiste, was der Zähler zählt.',
  'The compressor squeezes the vapour until it is {hot} hot. This is what the meter counts.':
    'Der Verdichter presst den Dampf zusammen, bis er {hot} heiß ist. Das zählt der Zähler.',
  'The hot vapour warms your heating water. It turns back into liquid at about {condensing}.':
    'Der heiße Dampf erwärmt das Wasser Ihrer Heizung. Bei etwa {condensing} wird er wieder flüssig.',
  'The water goes to your {emitters, select, floor {floor} other {radiators}} at {flow} and comes back at {back}.':
    'Das Wasser fließt mit {flow} zu {emitters, select, floor {Ihrer Fußbodenheizung} other {Ihren Heizkörpern}} und kommt mit {back} zurück.',
  'A narrow valve lets the pressure drop. The liquid cools to {after}, and the cycle begins again.':
    'Ein enges Ventil lässt den Druck fallen. Die Flüssigkeit kühlt auf {after} ab, und der Kreislauf beginnt von vorn.',
  'Each hour the air gives {added} kWh of heat and the compressor adds {bought}. The house gets {given}. Fan and defrost take {beside} more.':
    'Jede Stunde gibt die Luft {added} kWh Wärme, der Verdichter {bought}. Das Haus bekommt {given}. Ventilator und Abtauen brauchen noch {beside}.',
  'Each hour the {source, select, air {air} other {ground}} gives {added} kWh of heat and the meter adds {bought}. The house gets {given}.':
    'Jede Stunde {source, select, air {gibt die Luft} other {gibt das Erdreich}} {added} kWh Wärme, dazu kommen {bought} vom Zähler. Das Haus bekommt {given}.',
  'The refrigerant': 'Das Kältemittel',
  'The boiling temperature': 'Die Verdampfungstemperatur',
  'The condensing temperature': 'Die Verflüssigungstemperatur',
  'The superheat': 'Die Überhitzung',
  'The subcooling': 'Die Unterkühlung',
  'The compressor’s efficiency': 'Der Wirkungsgrad des Verdichters',
  'The hot gas temperature': 'Die Heißgastemperatur',
  'The brine going back to the ground': 'Die Sole auf dem Rückweg ins Erdreich',
  'The return temperature': 'Die Rücklauftemperatur',
  'The heat wanted': 'Die gewünschte Wärme',
  'The COP': 'Der COP',
  '{place} cannot be reached; we expect {expected}. Correct the temperatures and try again.':
    '{place} ist nicht erreichbar; erwartet wird {expected}. Berichtigen Sie die Temperaturen und versuchen Sie es noch einmal.',
  '{place} is {found}; we expect {expected}. Correct the temperatures and try again.':
    '{place} ist {found}; erwartet wird {expected}. Berichtigen Sie die Temperaturen und versuchen Sie es noch einmal.',
  '{name} · {source, select, air {a very cold day between two defrosts} other {a very cold day}}, {outdoor} outside · {gas}, {grade}':
    '{name} · {source, select, air {ein sehr kalter Tag zwischen zwei Abtauungen} other {ein sehr kalter Tag}}, {outdoor} draußen · {gas}, {grade}',
  'to the house': 'ins Haus',
  'How the heat pump works': 'So arbeitet die Wärmepumpe',
  'Air in': 'Luft ein',
  'From the ground': 'Aus dem Erdreich',
  'Air out': 'Luft aus',
  'Back to the ground': 'Zurück ins Erdreich',
  'Heat taken': 'Wärme entzogen',
  'Boils at': 'Siedet bei',
  'Low pressure on the gauge': 'Niederdruck am Manometer',
  'Gas on its way out': 'Gas am Austritt',
  'Gas after cooling the motor': 'Gas nach Kühlung des Motors',
  'Hot gas': 'Heißgas',
  Fan: 'Ventilator',
  'fan and defrost: {amount}': 'Ventilator und Abtauen: {amount}',
  'Defrost, on average': 'Abtauen, im Mittel',
  'Turns to liquid at': 'Wird flüssig bei',
  'High pressure on the gauge': 'Hochdruck am Manometer',
  Flow: 'Vorlauf',
  Return: 'Rücklauf',
  'Heat given': 'Wärme abgegeben',
  'Liquid before': 'Flüssigkeit davor',
  'Cold mixture after': 'Kaltes Gemisch danach',
  'The refrigerant cycle at this moment, with {refrigerant}. Pressures as a gauge shows them.':
    'Der Kältekreis in diesem Augenblick, mit {refrigerant}. Drücke, wie ein Manometer sie zeigt.',
  'How much': 'Wie viel',
  'above 0 kW': 'über 0 kW',
  'above 1': 'über 1',
};
