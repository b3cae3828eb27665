import { makeCopyKey } from '../../store/locked-copy.ts';
import { renewIfKnown } from '../bring-in.ts';
import type { DataState } from '../contract.ts';
import { countHouseholds, type OpenedCopy, openCopy, restoreCopy, saveCopyInto } from '../copies.ts';
import { setDailyLock } from '../daily-lock.ts';
import { listDamage } from '../damage-notes.ts';
import { findHousehold } from '../find.ts';
import { isFolder, lookIntoFolder, olderFilesIn } from '../folders.ts';
import { gatherHousehold } from '../household-file.ts';
import type { DeskContext, Handlers } from '../ports.ts';
import { storeHousehold } from '../store-household.ts';
import { changeUpkeep, checkPieces, isCopyDue, readUpkeep } from '../upkeep.ts';

type DataHandlers = Pick<
  Handlers,
  | 'data.read'
  | 'data.folder'
  | 'data.save'
  | 'data.daily'
  | 'data.check'
  | 'data.look'
  | 'data.restore'
  | 'data.bring-in'
>;

export function dataHandlers({ ports, store }: DeskContext): DataHandlers {
  const { dataFolder, windowFolder } = ports;

  function state(): DataState {
    const { lastCopyOn, lastCopyPath, folder, daily, dailyLocked, failure, lastCheckOn, damage, ...upkeep } =
      readUpkeep(store);
    return {
      households: countHouseholds(store),
      ...(lastCopyOn === undefined ? {} : { lastCopyOn }),
      ...(lastCopyPath === undefined ? {} : { lastCopyPath }),
      ...(folder === undefined ? {} : { folder }),
      ...(failure === undefined ? {} : { failure }),
      ...(lastCheckOn === undefined ? {} : { lastCheckOn }),
      daily,
      dailyLocked,
      isCopyDue: isCopyDue(
        { daily, dailyLocked, damage, ...upkeep, ...(lastCopyOn === undefined ? {} : { lastCopyOn }) },
        ports.now(),
      ),
      damage: listDamage(damage),
      olderFiles: olderFilesIn(dataFolder),
      ...(windowFolder !== undefined && isFolder(windowFolder) ? { windowFolder } : {}),
    };
  }

  async function withCopy<T>(path: string, passphrase: string | undefined, work: (copy: OpenedCopy) => T): Promise<T> {
    const copy = await openCopy({ path, passphrase, dataFolder, ownPath: store.path });
    try {
      return work(copy);
    } finally {
      copy.close();
    }
  }

  return {
    'data.read': state,
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
      return state();
    },
    async 'data.check'(_, { onProgress }) {
      await checkPieces(store, ports.now(), { onProgress });
      return state();
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
        const whole = renewIfKnown(store, gatherHousehold(copy.store, household), ports.newId);
        storeHousehold(store, whole, ports.now());
        return { id: whole.household.id };
      }),
  };
}
