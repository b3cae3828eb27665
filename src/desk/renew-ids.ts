/** Gives a household and everything that belongs to it new identifiers, so that it can stand beside the one it came from. */
import type { Series } from '../model/shapes/evidence.ts';
import type { WholeHousehold } from './household-file.ts';

export function renewIds(whole: WholeHousehold, newId: () => string): WholeHousehold {
  const renewed = new Map<string, string>();
  const renew = (id: string) => {
    const known = renewed.get(id) ?? newId();
    renewed.set(id, known);
    return known;
  };
  const series = (one: Series): Series => ({ ...one, id: renew(one.id), evidenceId: renew(one.evidenceId) });
  const household = { ...whole.household, id: renew(whole.household.id) };
  return {
    household,
    evidence: whole.evidence.map(({ import: evidence, rawFile, intervals }) => ({
      import: { ...evidence, id: renew(evidence.id), householdId: household.id, series: evidence.series.map(series) },
      rawFile,
      intervals: intervals.map((one) => ({ ...one, seriesId: renew(one.seriesId) })),
    })),
    // Only the names change; what was estimated stays as it was.
    estimates: whole.estimates.map((estimate) => ({
      ...estimate,
      id: renew(estimate.id),
      householdId: household.id,
      household: { ...estimate.household, id: household.id },
      evidence: estimate.evidence.map(series),
    })),
    checks: whole.checks.map((check) => {
      const estimateId = renew(check.estimateId);
      return { ...check, id: renew(check.id), estimateId, input: { ...check.input, estimateId } };
    }),
  };
}
