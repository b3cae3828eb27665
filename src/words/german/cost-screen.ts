import type { Catalogue } from '../say.ts';

/** The running cost: its figures, sliders and tables. */
export const COST_SCREEN: Catalogue = {
  'Heat for the rooms. {title}': 'Wärme für die Räume. {title}',
  'Break-even': 'Gleiche Kosten',
  'Here it is {factor}.': 'Hier ist sie {factor}.',
  'is {factor}': 'ist sie {factor}',
  'What the cost is made of': 'Zusammensetzung der Kosten',
  'Show the customer': 'Dem Kunden zeigen',
  'Every kind of heating is shown.': 'Alle Heizungsarten sind gezeigt.',
  'Compared with the heat pump': 'Vergleich mit der Wärmepumpe',
  'As the home suggests': 'Wie es zum Haus passt',
  'All as a table': 'Alles als Tabelle',
  'underlined figures show how they were worked out': 'unterstrichene Zahlen zeigen ihren Rechenweg',
  mild: 'mild',
  cold: 'kalt',
  Winter: 'Winter',
  'Flow temperature': 'Vorlauf',
  '{count}% of today’s': '{count} % von heute',
  'Change price and grant': 'Preis und Förderung ändern',
  'Type price and grant': 'Preis und Förderung eingeben',
  'Energy bought, kWh': 'Gekauft, kWh',
  Energy: 'Energie',
  Standing: 'Grundpreis',
  'Carbon, kg': 'CO₂, kg',
  'Compared with {other}.': 'Vergleich: {other}.',
  'What if: {changes}.': 'Was wäre, wenn: {changes}.',
  // Up to here the opening of “In 14 futures out of 20 the heat pump costs less.” is one figure.
  ' the heat pump': ' koste',
  'What if': 'Was wäre, wenn',
  Reset: 'Zurücksetzen',
  ': every slider back to today': ': alle Regler auf heute',
};
