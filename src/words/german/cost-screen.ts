import type { Catalogue } from '../say.ts';

/** The running cost: its figures, sliders and tables. */
export const COST_SCREEN: Catalogue = {
  'Heat for the rooms. {title}': 'Wärme für die Räume. {title}',
  'Where the balance tips': 'Wo es gleich viel kostet',
  'Here it is {factor}.': 'Hier ist sie {factor}.',
  'is {factor}': 'ist sie {factor}',
  'What it is made of': 'Woraus es besteht',
  'Show it at the table': 'Am Tisch zeigen',
  'Every way of heating stands here.': 'Alle Heizungsarten stehen hier.',
  'Stands beside the heat pump': 'Steht neben der Wärmepumpe',
  'As the home suggests': 'Wie es zum Haus passt',
  'All as a table': 'Alles als Tabelle',
  'underlined figures open their working': 'unterstrichene Zahlen öffnen ihren Rechenweg',
  mild: 'mild',
  cold: 'kalt',
  Winter: 'Winter',
  'Floor water': 'Heizwasser',
  'Radiator water': 'Heizwasser',
  '{count}% of today’s': '{count} % von heute',
  'Change what it costs to put in': 'Einbaukosten ändern',
  'Say what it costs to put in': 'Einbaukosten nennen',
  'Units bought, kWh': 'Gekauft, kWh',
  'For units': 'Arbeitspreis',
  Standing: 'Grundpreis',
  'Carbon, kg': 'CO₂, kg',
  'A typical year of heating and hot water, at the prices of today.':
    'Ein übliches Jahr Heizung und Warmwasser, zu heutigen Preisen.',
  'Against {other}.': 'Gegen {other}.',
  'What if: {changes}.': 'Was wäre, wenn: {changes}.',
  // Up to here the opening of “In 14 futures out of 20 the heat pump costs less.” is one figure.
  ' the heat pump': ' koste',
  'What if': 'Was wäre, wenn',
  'As it is': 'Wie es ist',
  ': takes every what-if back': ': nimmt jedes „Was wäre, wenn“ zurück',
};
