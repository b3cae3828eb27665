import type { Catalogue } from '../say.ts';

/** Inside the machine, place by place. */
export const INSIDE: Catalogue = {
  'The cycle cannot be shown with these temperatures.':
    'Bei diesen Temperaturen lässt sich der Kältekreis nicht zeigen.',
  'Places on the cycle': 'Stellen im Kältekreis',
  'Step back': 'Schritt zurück',
  'Next step': 'Nächster Schritt',
};
