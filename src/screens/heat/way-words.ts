import type { DemandWay } from '../../model/appraisal/appraisal.ts';

export const WAY_WORDS: { readonly [way in DemandWay]: string } = {
  record: 'the bills and meters',
  'heat-loss': 'the heat loss',
  certificate: 'the certificate',
  'floor-area': 'size and age',
};

/** What a way needs before it can be gone. */
export const WAY_NEEDS: { readonly [way in DemandWay]: string } = {
  record: 'needs a year of bills or readings',
  'heat-loss': 'needs the heat loss in kW',
  certificate: 'needs the figures of the energy certificate',
  'floor-area': 'needs the floor area',
};
