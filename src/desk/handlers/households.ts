import { emptyHousehold } from '../../model/shapes/household.ts';
import type { HouseholdRow } from '../../store/store.ts';
import { say } from '../../words/say.ts';
import { refuseFaultyTariffs } from '../check-tariffs.ts';
import type { HouseholdSummary } from '../contract.ts';
import { DeskError } from '../desk-error.ts';
import { findHousehold } from '../find.ts';
import { openHousehold } from '../open-household.ts';
import type { DeskContext, Handlers } from '../ports.ts';

type HouseholdHandlers = Pick<
  Handlers,
  'household.list' | 'household.create' | 'household.open' | 'household.save' | 'household.archive' | 'household.erase'
>;

const summarise = (row: HouseholdRow): HouseholdSummary => ({
  id: row.household.id,
  name: row.household.name,
  jobNumber: row.household.jobNumber ?? '',
  place: row.household.home.postcode ?? '',
  changedOn: row.changedOn,
  archived: row.archived,
  evidenceCount: row.evidenceCount,
  estimateCount: row.estimateCount,
});

export function householdHandlers({ ports, store }: DeskContext): HouseholdHandlers {
  return {
    'household.list': ({ find, archived }) =>
      store.listHouseholds({ ...(find ? { find } : {}), archived: archived ?? false }).map(summarise),
    'household.create'({ name }) {
      const household = emptyHousehold(ports.newId(), name.trim());
      store.createHousehold(household, ports.now());
      return openHousehold(store, household.id);
    },
    'household.open': ({ id }) => openHousehold(store, id),
    'household.save'({ household, revision }) {
      findHousehold(store, household.id);
      refuseFaultyTariffs(household.tariffs);
      const saved = store.saveHousehold(household, revision, ports.now());
      if (!saved) {
        throw new DeskError({
          code: 'stale',
          message: say('{name} was saved elsewhere after it was opened here, so this change was not stored over it.', {
            name: household.name,
          }),
          remedy: say('Open the household again and make the change once more.'),
        });
      }
      return { revision: saved.revision };
    },
    'household.archive'({ id, archived }) {
      findHousehold(store, id);
      store.archiveHousehold(id, archived, ports.now());
      return {};
    },
    'household.erase'({ id, confirmName }) {
      const { household } = findHousehold(store, id);
      if (confirmName.trim() !== household.name.trim()) {
        throw new DeskError({
          code: 'wrong-name',
          message: say('The name typed is not the name of this household, so nothing was erased.'),
          where: say('the name'),
          remedy: say('Type {name} to erase it with all evidence and promises.', { name: household.name }),
        });
      }
      store.eraseHousehold(id);
      return {};
    },
  };
}
