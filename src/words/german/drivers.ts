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
  'Cooler heating water: every 5 degrees lower {effect}.': 'Kühleres Heizwasser, je 5 Grad weniger: {effect}.',
  'Warmer rooms: every degree more {effect}.': 'Wärmere Räume, je Grad mehr: {effect}.',
  'A hotter cylinder: every 5 degrees more {effect}.': 'Heißerer Speicher, je 5 Grad mehr: {effect}.',
  'Half as much hot water again {effect}.': 'Anderthalbmal so viel Warmwasser: {effect}.',
  'Half the usual length of pipe in the ground {effect}.': 'Halb so viel Rohr im Boden wie üblich: {effect}.',
  'Half as much again as usual {effect}.': 'Anderthalbmal so viel: {effect}.',
  'Each thing by itself, all else as typed. Steps are reckoned from this home, not from a rule of thumb.':
    'Jedes für sich, alles andere wie eingegeben. Die Schritte sind für dieses Haus gerechnet, nicht nach einer Faustregel.',
  'Each thing by itself, all else as the sliders have it: {whatIf}. Steps are reckoned from this home.':
    'Jedes für sich, alles andere wie an den Reglern: {whatIf}. Die Schritte sind für dieses Haus gerechnet.',
  'The factor rises only because hot water, the harder work, becomes a smaller part.':
    'Die Arbeitszahl steigt nur, weil das Warmwasser, die schwerere Arbeit, einen kleineren Teil ausmacht.',
  'Heating water on a very cold day': 'Heizwasser an einem sehr kalten Tag',
  Rooms: 'Räume',
  'Hot water in the cylinder': 'Warmwasser im Speicher',
  'Hot water used, against today': 'Warmwasser, gemessen an heute',
  'Pipes in the ground, against the usual': 'Rohre im Boden, gemessen am Üblichen',
  'as shown {amount}': 'wie gezeigt {amount}',
  '{place}, as shown': '{place}, wie gezeigt',
  'Floor, {flow}': 'Fußboden, {flow}',
  'Radiators, {flow}': 'Heizkörper, {flow}',
  'We cannot say yet what other emitters would change.':
    'Noch lässt sich nicht sagen, was andere Heizflächen ändern würden.',
  'A warm floor at {other} would cost {does} radiators at {shown}.':
    'Eine Fußbodenheizung mit {other} würde {does} Heizkörper mit {shown} kosten.',
  'Radiators at {other} would cost {does} a warm floor at {shown}.':
    'Heizkörper mit {other} würden {does} eine Fußbodenheizung mit {shown} kosten.',
  'about the same as': 'etwa so viel wie',
  'up to {less} a year less or up to {more} more, for 8 in 10 homes like yours, than':
    'bei 8 von 10 Häusern wie Ihrem bis zu {less} im Jahr weniger oder bis zu {more} mehr als',
  'about {amount} a year less ({range} for 8 in 10 homes like yours) than':
    'etwa {amount} im Jahr weniger ({range} bei 8 von 10 Häusern wie Ihrem) als',
  'about {amount} a year more ({range} for 8 in 10 homes like yours) than':
    'etwa {amount} im Jahr mehr ({range} bei 8 von 10 Häusern wie Ihrem) als',
  'cost of a year': 'Kosten eines Jahres',
  factor: 'Arbeitszahl',
  'The heat pump’s year, all else as shown. The factor is for rooms and hot water, pumps counted (H4).':
    'Das Jahr der Wärmepumpe, alles andere wie gezeigt. Arbeitszahl für Räume und Warmwasser, mit Pumpen (H4).',
  '8 in 10 homes like yours lie between low and high.': '8 von 10 Häusern wie Ihrem liegen zwischen niedrig und hoch.',
  'Cost of a year': 'Kosten eines Jahres',
  Factor: 'Arbeitszahl',
  Emitters: 'Heizflächen',
  'As reckoned': 'Wie gerechnet',
  Low: 'Niedrig',
  High: 'Hoch',
  'Cost by heating water temperature': 'Kosten nach Heizwassertemperatur',
  'Cost by room temperature': 'Kosten nach Raumtemperatur',
  'Cost by hot water temperature': 'Kosten nach Warmwassertemperatur',
  'Cost by hot water used': 'Kosten nach Warmwassermenge',
  'Cost by size of the ground array': 'Kosten nach Größe der Erdsonden oder Kollektoren',
  'Cost with radiators and with a warm floor': 'Kosten mit Heizkörpern und mit Fußbodenheizung',
};
