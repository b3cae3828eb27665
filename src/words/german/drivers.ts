import type { Catalogue } from '../say.ts';

/** What drives the running cost. */
export const DRIVERS: Catalogue = {
  'What drives it': 'Was die Kosten bestimmt',
  'changes the cost by an unknown amount': 'die Änderung ist nicht bekannt',
  'changes almost nothing': 'das ändert fast nichts',
  'may save up to {saved} a year or cost up to {more} more, for 8 in 10 homes like yours':
    'bei 8 von 10 Häusern wie Ihrem zwischen {saved} weniger und {more} mehr im Jahr',
  'saves about {amount} a year, {range} for 8 in 10 homes like yours':
    'etwa {amount} im Jahr weniger, {range} bei 8 von 10 Häusern wie Ihrem',
  'costs about {amount} a year more, {range} for 8 in 10 homes like yours':
    'etwa {amount} im Jahr mehr, {range} bei 8 von 10 Häusern wie Ihrem',
  'Flow temperature: every 5 degrees lower {effect}.': 'Vorlauf, je 5 Grad weniger: {effect}.',
  'Warmer rooms: every degree more {effect}.': 'Wärmere Räume, je Grad mehr: {effect}.',
  'A hotter cylinder: every 5 degrees more {effect}.': 'Heißerer Speicher, je 5 Grad mehr: {effect}.',
  'Using 50% more hot water {effect}.': '50 % mehr Warmwasser: {effect}.',
  'Half the usual length of pipe in the ground {effect}.': 'Halb so viel Rohr im Erdreich wie üblich: {effect}.',
  '50% more than usual {effect}.': '50 % mehr als üblich: {effect}.',
  'Each change by itself, all else as typed. The steps are worked out for this home, not by a rule of thumb.':
    'Jede Änderung für sich, alles andere wie eingegeben. Die Schritte sind für dieses Haus berechnet, nicht nach einer Faustregel.',
  'Each change by itself, all else as on the sliders: {whatIf}. The steps are worked out for this home.':
    'Jede Änderung für sich, alles andere wie an den Reglern: {whatIf}. Die Schritte sind für dieses Haus berechnet.',
  'The factor rises only because hot water, which is harder to heat, becomes a smaller part.':
    'Die JAZ steigt nur, weil der Anteil von Warmwasser kleiner wird, das schwerer zu erwärmen ist.',
  'Flow temperature on a very cold day': 'Vorlauf an einem sehr kalten Tag',
  Rooms: 'Räume',
  'Hot water in the cylinder': 'Warmwasser im Speicher',
  'Hot water used, compared with today': 'Warmwasser, verglichen mit heute',
  'Pipes in the ground, compared with the usual length': 'Rohre im Erdreich, verglichen mit der üblichen Länge',
  'as shown {amount}': 'wie gezeigt {amount}',
  '{place}, as shown': '{place}, wie gezeigt',
  'Underfloor, {flow}': 'Fußbodenheizung, Vorlauf {flow}',
  'Radiators, {flow}': 'Heizkörper, Vorlauf {flow}',
  'We cannot say yet what other emitters would change.':
    'Noch lässt sich nicht sagen, was andere Heizflächen ändern würden.',
  'Underfloor heating at {other} would cost {does} radiators at {shown}.':
    'Mit einer Fußbodenheizung, Vorlauf {other}, kostet das Jahr {does} mit Heizkörpern, Vorlauf {shown}.',
  'Radiators at {other} would cost {does} underfloor heating at {shown}.':
    'Mit Heizkörpern, Vorlauf {other}, kostet das Jahr {does} mit einer Fußbodenheizung, Vorlauf {shown}.',
  'about the same as': 'etwa so viel wie',
  'up to {less} a year less or up to {more} more, for 8 in 10 homes like yours, than':
    'bei 8 von 10 Häusern wie Ihrem bis zu {less} weniger oder bis zu {more} mehr als',
  'about {amount} a year less ({range} for 8 in 10 homes like yours) than':
    'etwa {amount} weniger ({range} bei 8 von 10 Häusern wie Ihrem) als',
  'about {amount} a year more ({range} for 8 in 10 homes like yours) than':
    'etwa {amount} mehr ({range} bei 8 von 10 Häusern wie Ihrem) als',
  'cost of a year': 'Kosten eines Jahres',
  'seasonal factor': 'Jahresarbeitszahl (JAZ)',
  'The heat pump’s year, all else as shown. The factor is for rooms and hot water, pumps counted (H4).':
    'Das Jahr der Wärmepumpe, alles andere wie gezeigt. JAZ für Räume und Warmwasser, mit Pumpen (H4).',
  '8 in 10 homes like yours lie between low and high.': '8 von 10 Häusern wie Ihrem liegen zwischen niedrig und hoch.',
  'Cost of a year': 'Kosten eines Jahres',
  'Seasonal factor': 'Jahresarbeitszahl',
  Emitters: 'Heizflächen',
  'As worked out': 'Wie berechnet',
  Low: 'Niedrig',
  High: 'Hoch',
  'Cost by flow temperature': 'Kosten nach Vorlauftemperatur',
  'Cost by room temperature': 'Kosten nach Raumtemperatur',
  'Cost by hot water temperature': 'Kosten nach Warmwassertemperatur',
  'Cost by hot water used': 'Kosten nach Warmwassermenge',
  'Cost by size of the ground array': 'Kosten nach Größe von Erdsonde oder Erdkollektor',
  'Cost with radiators and with underfloor heating': 'Kosten mit Heizkörpern und mit Fußbodenheizung',
};
