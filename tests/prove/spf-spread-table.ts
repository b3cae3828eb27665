/** Seasonal factors of typical homes beside the field's, as a table of the proofs. */
import { spfSpread } from './spf-spread.ts';
import type { ProofTable } from './table.ts';

/** Limit: the middle of the homes reckoned, within 5 % of the field's, and of the same as an installer describes them within 6 %, for both sources. */
export function proveSpfSpread(count = 1000): ProofTable {
  const { rows, medianInside } = spfSpread(count);
  return {
    title: `Seasonal factor of the whole house (H4), ${count} typical homes of each source`,
    columns: ['source', 'what', 'reckoned', 'field', 'middle inside'],
    rows: rows.map(({ source, what, reckoned, field }) => [
      source,
      what,
      reckoned.toFixed(2),
      field.toFixed(2),
      what.startsWith('middle') ? (medianInside[source] ? 'yes' : 'NO') : '',
    ]),
    within: medianInside.ground && medianInside.air,
  };
}
