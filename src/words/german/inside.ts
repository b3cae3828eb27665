import type { Catalogue } from '../say.ts';

/** Inside the machine, place by place. */
export const INSIDE: Catalogue = {
  'The round cannot be shown with these temperatures.': 'Bei diesen Temperaturen lässt sich der Kreis nicht zeigen.',
  'Places on the round': 'Stellen im Kreis',
  'Step back': 'Schritt zurück',
  'Next step': 'Nächster Schritt',
};
