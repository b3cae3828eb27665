import { refuseFaultyTariffs } from '../check-tariffs.ts';
import { fileNameOf, toFileOut } from '../file-out.ts';
import { findHousehold } from '../find.ts';
import { gatherHousehold, type WholeHousehold, writeHouseholdFile } from '../household-file.ts';
import { openHousehold } from '../open-household.ts';
import { parseWholeHousehold } from '../parse-household.ts';
import type { DeskContext, Handlers } from '../ports.ts';
import { renewIds } from '../renew-ids.ts';
import { storeHousehold } from '../store-household.ts';

type HouseholdFileHandlers = Pick<Handlers, 'household.duplicate' | 'household.export' | 'household.import'>;

export function householdFileHandlers({ ports, store, files }: DeskContext): HouseholdFileHandlers {
  /** Whether any of the file's own identifiers is taken already, here or by an import that was taken back. */
  const isKnown = ({ household, evidence, estimates }: WholeHousehold) =>
    store.readHousehold(household.id) !== undefined ||
    evidence.some(
      ({ import: { id, series } }) =>
        store.findEvidence(id) !== undefined || series.some((one) => store.findEvidenceOfSeries(one.id) !== undefined),
    ) ||
    estimates.some(({ id }) => store.readEstimate(id) !== undefined);

  return {
    // Written estimates stay with the household that they were made to.
    'household.duplicate'({ id, name }) {
      const { household } = findHousehold(store, id);
      const whole = { ...gatherHousehold(store, { ...household, name }), estimates: [], checks: [] };
      const copy = renewIds(whole, ports.newId);
      storeHousehold(store, copy, ports.now());
      return openHousehold(store, copy.household.id);
    },
    'household.export'({ id }) {
      const { household } = findHousehold(store, id);
      const file = writeHouseholdFile(gatherHousehold(store, household));
      return toFileOut(fileNameOf(household.name, 'plainwarmth.json'), 'application/json', JSON.stringify(file));
    },
    'household.import'({ fileId }) {
      const { fileName, bytes } = files.take(fileId);
      const whole = parseWholeHousehold(bytes, fileName, ports.newId);
      refuseFaultyTariffs(whole.household.tariffs);
      const fresh = isKnown(whole) ? renewIds(whole, ports.newId) : whole;
      storeHousehold(store, fresh, ports.now());
      files.drop(fileId);
      return openHousehold(store, fresh.household.id);
    },
  };
}
