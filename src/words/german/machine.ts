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
  'About 1 home in {homes} reached the factor it was designed for. So our range leans to the dear side.':
    'Etwa 1 Haus von {homes} erreichte die geplante Arbeitszahl. Darum neigt unsere Spanne zur teuren Seite.',
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
    'Aus den Prüfpunkten, dem Boden und dem Wetter, halbe Stunde um halbe Stunde.',
};
