import type { Catalogue } from '../say.ts';

/** Words of what the meter should show in the years ahead. */
export const YEARS_AHEAD: Catalogue = {
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
