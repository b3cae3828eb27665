import type { Catalogue } from '../say.ts';

/** Words of the charts and of the working behind a figure. */
export const CHARTS: Catalogue = {
  'Source: {source}': 'Quelle: {source}',
};
