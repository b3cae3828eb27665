/** All that readings at the plant are judged with. */
import type { SiteTables } from '../model/site-readings/check-site.ts';
import { fluids } from './brine.ts';
import { refrigerants } from './refrigerants.ts';
import { siteBands } from './site-bands.ts';

export const siteTables: SiteTables = { refrigerants, fluids, bands: siteBands };
