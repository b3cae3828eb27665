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
    // Only the names change; what was promised stays as it was.
    promises: whole.promises.map((promise) => ({
      ...promise,
      id: renew(promise.id),
      householdId: household.id,
      household: { ...promise.household, id: household.id },
      evidence: promise.evidence.map(series),
    })),
    checks: whole.checks.map((check) => {
      const promiseId = renew(check.promiseId);
      return { ...check, id: renew(check.id), promiseId, input: { ...check.input, promiseId } };
    }),
  };
}
