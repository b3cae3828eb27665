import type { Damage } from '../../store/store-fault.ts';
import { renewIfKnown } from '../bring-in.ts';
import { refuseFaultyTariffs } from '../check-tariffs.ts';
import { listDamage } from '../damage-notes.ts';
import { fileNameOf, toFileOut } from '../file-out.ts';
import { findHousehold } from '../find.ts';
import { gatherHousehold, writeHouseholdFile } from '../household-file.ts';
import { householdWithoutPeople } from '../mask-people.ts';
import { openHousehold } from '../open-household.ts';
import type { DeskContext, Handlers } from '../ports.ts';
import { renewIds } from '../renew-ids.ts';
import { storeHousehold } from '../store-household.ts';

type HouseholdFileHandlers = Pick<Handlers, 'household.duplicate' | 'household.export' | 'household.import'>;

export function householdFileHandlers({ ports, store, files }: DeskContext): HouseholdFileHandlers {
  return {
    // Written estimates stay with the household that they were made to.
    'household.duplicate'({ id, name }) {
      const { household } = findHousehold(store, id);
      const whole = {
        ...gatherHousehold(store, { ...household, name }, { withFiles: true }),
        estimates: [],
        checks: [],
      };
      const copy = renewIds(whole, ports.newId);
      storeHousehold(store, copy, ports.now());
      return openHousehold(store, copy.household.id);
    },
    'household.export'({ id, withFiles }) {
      const { household } = findHousehold(store, id);
      const damage: Damage[] = [];
      const whole = gatherHousehold(store, household, { withFiles, onDamage: (one) => damage.push(one) });
      const file = writeHouseholdFile(householdWithoutPeople(whole));
      const out = toFileOut(fileNameOf(household.name, 'plainwarmth.json'), 'application/json', JSON.stringify(file));
      // The rest of a household leaves, even when a piece of it is damaged, and what is missing is said.
      return damage.length === 0
        ? out
        : {
            ...out,
            remark: listDamage(damage)
              .map(({ message }) => message)
              .join(' '),
          };
    },
    async 'household.import'({ fileId }, work) {
      const { fileName, bytes } = files.take(fileId);
      const whole = await ports.readHousehold(fileName, bytes, { id: ports.newId(), today: ports.today() }, work);
      // Others had their turn meanwhile: another call may have brought it in.
      files.take(fileId);
      refuseFaultyTariffs(whole.household.tariffs);
      const fresh = renewIfKnown(store, whole, ports.newId);
      storeHousehold(store, fresh, ports.now());
      files.drop(fileId);
      return openHousehold(store, fresh.household.id);
    },
  };
}
