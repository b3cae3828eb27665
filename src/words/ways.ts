import type { DemandWay } from '../model/shapes/appraisal.ts';
import { phrase } from './say.ts';

interface WayWords {
  readonly name: string;
  readonly from: string;
  /** What the way needs before it can be gone. */
  readonly wanting: string;
}

export const WAY_WORDS: { readonly [way in DemandWay]: WayWords } = {
  record: {
    name: phrase('the bills and meters'),
    from: phrase('From the bills and meters'),
    wanting: phrase('From the bills and meters: needs a year of bills or readings'),
  },
  'heat-loss': {
    name: phrase('the heat loss'),
    from: phrase('From the heat loss'),
    wanting: phrase('From the heat loss: needs the heat loss in kW'),
  },
  certificate: {
    name: phrase('the certificate'),
    from: phrase('From the certificate'),
    wanting: phrase('From the certificate: needs the figures of the energy certificate'),
  },
  'floor-area': {
    name: phrase('size and age'),
    from: phrase('From size and age'),
    wanting: phrase('From size and age: needs the floor area'),
  },
};
