import type { Catalogue } from '../say.ts';

/** Words of the charts and of the working behind a figure. */
export const CHARTS: Catalogue = {
  'Source: {source}': 'Quelle: {source}',
  'We do not know yet where the heat would come from and where it would go.':
    'Wir wissen noch nicht, woher die Wärme käme und wohin sie ginge.',
  'In a year the meter counts {meter}, and no heat is needed.':
    'In einem Jahr zählt der Zähler {meter}, und es wird keine Wärme gebraucht.',
  'In a year {added} from {source, select, air {the air} other {the ground}} and {meterCount} from the meter':
    'In einem Jahr werden {added} aus {source, select, air {der Luft} other {dem Boden}} und {meterCount} vom Zähler',
  'In a year {meter} from the meter': 'In einem Jahr werden {meter} vom Zähler',
  '{comes} become {rooms} of heat for the rooms.': '{comes} zu {rooms} Wärme für die Räume.',
  '{comes} become {taps} of hot water.': '{comes} zu {taps} warmem Wasser.',
  '{comes} become {rooms} for the rooms and {tapsCount} for the taps.':
    '{comes} zu {rooms} für die Räume und {tapsCount} für die Hähne.',
  'Units of a typical year. Pumps and standby are counted in what the meter shows.':
    'Einheiten eines üblichen Jahres. Pumpen und Bereitschaft sind in dem enthalten, was der Zähler zeigt.',
  'from the meter': 'vom Zähler',
  'from the {source, select, air {air} other {ground}}': 'aus {source, select, air {der Luft} other {dem Boden}}',
  'no heat of any room': 'keine Wärme im Haus',
  rooms: 'Räume',
  taps: 'Hähne',
  heat: 'Wärme-',
  pump: 'pumpe',
  'comes in': 'kommt herein',
  'goes out': 'geht hinaus',
  'From the meter': 'Vom Zähler',
  'From the {source, select, air {air} other {ground}}': 'Aus {source, select, air {der Luft} other {dem Boden}}',
  Taps: 'Hähne',
  'No heat of any room': 'Keine Wärme im Haus',
  Part: 'Teil',
  Side: 'Seite',
  'Of all': 'Vom Ganzen',
  'Heat of a typical year: where it comes from and where it goes. Pumps and standby are in the meter’s part.':
    'Wärme eines üblichen Jahres: woher sie kommt und wohin sie geht. Pumpen und Bereitschaft sind im Teil des Zählers.',
};
