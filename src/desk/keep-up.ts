/** What the desk does by itself: a copy every day where one is wanted, and a check of every piece each week. */
import { DAILY_STEM, saveCopyInto, thinDailyCopies } from './copies.ts';
import { readDailyLock } from './daily-lock.ts';
import type { DeskPorts } from './ports.ts';
import { toRefusal } from './refusal.ts';
import { CHECK_AFTER_DAYS, changeUpkeep, checkPieces, daysSince, readUpkeep } from './upkeep.ts';

export type KeepUpPorts = Pick<DeskPorts, 'store' | 'dataFolder' | 'today' | 'now'>;

/** To be called now and then; does what is due, and keeps why it could not. A check is left for the next time once `isEnding`. */
export async function keepUp(ports: KeepUpPorts, isEnding: () => boolean = () => false): Promise<void> {
  const { store, dataFolder, today, now } = ports;
  const { firstUsedOn, daily, dailyLocked, folder, lastDailyOn, lastCheckOn } = readUpkeep(store);
  if (firstUsedOn === undefined) changeUpkeep(store, { firstUsedOn: now() });
  if (daily && folder !== undefined && lastDailyOn !== today()) {
    try {
      const lock = dailyLocked ? readDailyLock(dataFolder) : undefined;
      const { path } = await saveCopyInto({ store, dataFolder, folder, stem: DAILY_STEM, today: today(), lock });
      changeUpkeep(store, { lastCopyOn: now(), lastCopyPath: path, lastDailyOn: today(), failure: undefined });
      thinDailyCopies(path);
    } catch (error) {
      const { message, remedy } = toRefusal(error);
      const failure = [message, remedy].filter(Boolean).join(' ');
      // Told once: a stick that stays away would else make a change every hour.
      if (readUpkeep(store).failure !== failure) changeUpkeep(store, { failure });
    }
  }
  if (daysSince(lastCheckOn ?? firstUsedOn ?? now(), now()) > CHECK_AFTER_DAYS)
    await checkPieces(store, now(), { isEnding });
}
