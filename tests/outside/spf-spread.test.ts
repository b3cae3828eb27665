/** A small part of `npm run prove`: seasonal factors of typical homes beside published field trials. */
import { describe, expect, test } from 'vitest';
import { spfSpread, spfSpreadTable } from '../prove/spf-spread.ts';

const spread = spfSpread(250);
const found = (source: 'ground' | 'air', what: string) =>
  spread.rows.find((row) => row.source === source && row.what === what)!;

describe('typical British homes, factor of the whole house at H4', () => {
  // Quartiles worked out from: Ofgem data 2017-2022 (for DESNZ, RECC and GSHPA, 2024), 286 ground source sites;
  // Electrification of Heat, final performance analysis (for DESNZ, December 2024), up to 742 homes.
  test('the middle lies close to the published one, ground and air', () =>
    expect(spread.medianInside, spfSpreadTable(spread)).toEqual({ ground: true, air: true }));
  test.each(['ground', 'air'] as const)('%s: 10 and 90 %% points within 12 %% of the field’s', (source) => {
    for (const what of ['10 % point', '90 % point']) {
      const { reckoned, field } = found(source, what);
      expect(Math.abs(reckoned / field - 1)).toBeLessThan(0.12);
    }
  });
  test('the same homes for the same seed', () => expect(spfSpread(5)).toEqual(spfSpread(5)));
});
