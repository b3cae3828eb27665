/** How safe the data is, as the list and the page of copies say it. */
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Store } from '../store/store.ts';
import type { DataState } from './contract.ts';
import { listDamage } from './damage-notes.ts';
import type { DeskContext } from './ports.ts';
import { isCopyDue, readUpkeep } from './upkeep.ts';

export const countHouseholds = (store: Store): number =>
  [true, false].reduce((sum, archived) => sum + store.listHouseholds({ archived }, () => undefined).length, 0);

export function readDataState({ ports, store }: DeskContext): DataState {
  const { dataFolder, windowFolder } = ports;
  const upkeep = readUpkeep(store);
  const { lastCopyOn, lastCopyPath, folder, daily, dailyLocked, failure, lastCheckOn, damage } = upkeep;
  return {
    households: countHouseholds(store),
    ...(lastCopyOn === undefined ? {} : { lastCopyOn }),
    ...(lastCopyPath === undefined ? {} : { lastCopyPath }),
    ...(folder === undefined ? {} : { folder }),
    ...(failure === undefined ? {} : { failure }),
    ...(lastCheckOn === undefined ? {} : { lastCheckOn }),
    daily,
    dailyLocked,
    isCopyDue: isCopyDue(upkeep, ports.now()),
    damage: listDamage(damage),
    olderFiles: olderFilesIn(dataFolder),
    ...(windowFolder !== undefined && existsSync(windowFolder) ? { windowFolder } : {}),
  };
}

const OURS = /^plainwarmth-(before-restore|before-version|damaged|foreign|emptied|older|other-log|written-anew)-/;

/** Files beside the data in which something older may still stand. */
function olderFilesIn(dataFolder: string): { name: string; size: number }[] {
  if (!existsSync(dataFolder)) return [];
  return readdirSync(dataFolder)
    .filter((name) => OURS.test(name))
    .map((name) => ({ name, size: statSync(join(dataFolder, name)).size }))
    .sort((a, b) => a.name.localeCompare(b.name));
}
