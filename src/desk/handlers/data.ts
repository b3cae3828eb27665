import { makeCopyKey } from '../../store/locked-copy.ts';
import { renewIfKnown } from '../bring-in.ts';
import { type OpenedCopy, openCopy, restoreCopy, saveCopyInto } from '../copies.ts';
import { setDailyLock } from '../daily-lock.ts';
import { listDamage } from '../damage-notes.ts';
import { countHouseholds, readDataState } from '../data-state.ts';
import { findHousehold } from '../find.ts';
import { lookIntoFolder } from '../folders.ts';
import { gatherHousehold } from '../household-file.ts';
import type { DeskContext, Handlers } from '../ports.ts';
import { storeHousehold } from '../store-household.ts';
import { changeUpkeep, checkPieces } from '../upkeep.ts';

type DataHandlers = Pick<
  Handlers,
  'data.folder' | 'data.save' | 'data.daily' | 'data.check' | 'data.look' | 'data.restore' | 'data.bring-in'
>;

export function dataHandlers(context: DeskContext): DataHandlers {
  const { ports, store } = context;
  const { dataFolder } = ports;

  async function withCopy<T>(path: string, passphrase: string | undefined, work: (copy: OpenedCopy) => T): Promise<T> {
    const copy = await openCopy({ path, passphrase, dataFolder, ownPath: store.path });
    try {
      return work(copy);
    } finally {
      copy.close();
    }
  }

  return {
    'data.folder': ({ path }) => lookIntoFolder(path, dataFolder),
    async 'data.save'({ folder, passphrase }) {
      const saved = await saveCopyInto({
        store,
        dataFolder,
        folder,
        stem: 'Plainwarmth',
        today: ports.today(),
        lock: passphrase === undefined ? undefined : await makeCopyKey(passphrase),
      });
      changeUpkeep(store, { lastCopyOn: ports.now(), lastCopyPath: saved.path, folder });
      return { ...saved, damage: listDamage(saved.damage) };
    },
    async 'data.daily'({ folder, passphrase }) {
      const lock = folder === null ? undefined : passphrase;
      await setDailyLock(dataFolder, lock);
      changeUpkeep(store, {
        daily: folder !== null,
        dailyLocked: lock !== undefined,
        failure: undefined,
        ...(folder === null ? {} : { folder }),
      });
      return readDataState(context);
    },
    async 'data.check'(_, { onProgress }) {
      await checkPieces(store, ports.now(), { onProgress });
      return readDataState(context);
    },
    'data.look': ({ path, passphrase }) =>
      withCopy(path, passphrase, (copy) => ({
        households: [false, true].flatMap((archived) =>
          copy.store
            .listHouseholds({ archived }, () => undefined)
            .map(({ household, changedOn, evidenceCount, estimateCount }) => ({
              id: household.id,
              name: household.name,
              changedOn,
              evidenceCount,
              estimateCount,
            })),
        ),
        ...(copy.remark === null ? {} : { remark: copy.remark }),
        damage: listDamage(copy.damage),
      })),
    'data.restore': ({ path, passphrase }) =>
      withCopy(path, passphrase, (copy) => {
        const keptAs = restoreCopy(store, copy, dataFolder, ports.now());
        return { households: countHouseholds(store), ...(keptAs === null ? {} : { keptAs }) };
      }),
    'data.bring-in': ({ path, passphrase, householdId }) =>
      withCopy(path, passphrase, (copy) => {
        const { household } = findHousehold(copy.store, householdId);
        const whole = renewIfKnown(store, gatherHousehold(copy.store, household, { withFiles: true }), ports.newId);
        storeHousehold(store, whole, ports.now());
        return { id: whole.household.id };
      }),
  };
}
