import type { Catalogue } from '../say.ts';

/** Words of the document that stays with the household. */
export const LEAVE_BEHIND: Catalogue = {
  'Paid in all, purchase and running costs, in the money of today. 8 cases in 10 lie inside the bands.':
    'Insgesamt bezahlt, Anschaffung und Betrieb, in heutigem Geld. 8 von 10 Fällen liegen in den Bändern.',
  'Paid in all, running costs alone, in the money of today. 8 cases in 10 lie inside the bands.':
    'Insgesamt bezahlt, nur der Betrieb, in heutigem Geld. 8 von 10 Fällen liegen in den Bändern.',
  'Paid in all after': 'Insgesamt bezahlt nach',
  '8 cases in 10 inside': '8 von 10 Fällen dazwischen',
  'putting it in': 'dem Einbau',
  '{year, plural, one {# year} other {# years}}': '{year, plural, one {# Jahr} other {# Jahren}}',
  'The years to come': 'Die kommenden Jahre',
  'Each further sum rests on the inputs of the first and on those that stand with it.':
    'Jede weitere Rechnung ruht auf den Angaben der ersten und auf denen, die bei ihr stehen.',
};
