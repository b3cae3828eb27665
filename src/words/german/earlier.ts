/** English of workings that estimates kept before codes hold, and that is said otherwise since: reword finds its German. */
import type { Catalogue } from '../say.ts';

export const EARLIER: Catalogue = {
  'Pump of the heating circuit': 'Heizkreispumpe',
  'Source pump or fan': 'Solepumpe oder Ventilator',
  'Half as much hot water again': '50 % mehr Warmwasser',
};
