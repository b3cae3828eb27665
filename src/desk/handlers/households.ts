import type { HouseholdRow } from '../../store/store.ts';
import type { Damage } from '../../store/store-fault.ts';
import { say } from '../../words/say.ts';
import type { HouseholdSummary } from '../contract.ts';
import { listDamage, orDamage } from '../damage-notes.ts';
import { DeskError } from '../desk-error.ts';
import { findHousehold } from '../find.ts';
import { openHousehold } from '../open-household.ts';
import type { DeskContext, Handlers } from '../ports.ts';
import { readSettings } from '../settings.ts';
import { forgetDamage } from '../upkeep.ts';

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

const summariseDamaged = (damage: Damage): HouseholdSummary => ({
  id: damage.householdId ?? '',
  name: damage.household ?? '',
  jobNumber: '',
  place: '',
  changedOn: '',
  archived: false,
  evidenceCount: 0,
  estimateCount: 0,
  damaged: listDamage([damage])[0]!,
});

export function householdHandlers({ ports, store }: DeskContext): HouseholdHandlers {
  /** Of a damaged one too, since it must be possible to erase it. */
  function nameOf(id: string): string {
    const damage: Damage[] = [];
    const whole = orDamage(
      () => findHousehold(store, id),
      (one) => damage.push(one),
    );
    return whole?.household.name ?? damage[0]?.household ?? '';
  }

  return {
    'household.list'({ find, archived }) {
      const damaged: Damage[] = [];
      const query = { ...(find ? { find } : {}), archived: archived ?? false };
      const whole = store.listHouseholds(query, (one) => damaged.push(one)).map(summarise);
      return [...damaged.map(summariseDamaged), ...whole];
    },
    async 'household.create'({ name }) {
      const { emptyHousehold } = await import('../../model/shapes/household.ts');
      const household = emptyHousehold(ports.newId(), name.trim(), readSettings(store).country);
      store.createHousehold(household, ports.now());
      return openHousehold(store, household.id);
    },
    'household.open': ({ id }) => openHousehold(store, id),
    async 'household.save'({ household, revision }) {
      const { refuseFaultyTariffs } = await import('../check-tariffs.ts');
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
      const name = nameOf(id).trim();
      if (confirmName.trim() !== name) {
        throw new DeskError({
          code: 'wrong-name',
          message: say('The name typed is not the name of this household, so nothing was erased.'),
          where: say('the name'),
          remedy: say('Type {name} to erase it with all its bills, readings and estimates.', { name }),
        });
      }
      store.eraseHousehold(id);
      forgetDamage(store, ({ householdId }) => householdId === id);
      return {};
    },
  };
}
