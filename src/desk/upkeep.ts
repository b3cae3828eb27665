/** When copies were last saved and the pieces last checked, and what there is to do about it. */
import { z } from 'zod';
import type { Store } from '../store/store.ts';
import type { Damage } from '../store/store-fault.ts';

const Piece = z.object({
  kind: z.enum(['household', 'import', 'readings', 'raw-file', 'estimate', 'check', 'settings', 'tariff']),
  householdId: z.string().optional(),
  household: z.string().optional(),
  evidenceId: z.string().optional(),
  fileName: z.string().optional(),
  number: z.number().optional(),
});

const Upkeep = z.object({
  /** Instants, ISO. */
  firstUsedOn: z.string().optional(),
  lastCopyOn: z.string().optional(),
  lastCopyPath: z.string().optional(),
  /** Where copies go. */
  folder: z.string().optional(),
  daily: z.boolean().default(false),
  /** They are locked; their key lies beside the data (`daily-lock.ts`). */
  dailyLocked: z.boolean().default(false),
  /** The day of the last copy that was saved by itself. */
  lastDailyOn: z.string().optional(),
  /** Why the last copy of the day could not be saved. */
  failure: z.string().optional(),
  lastCheckOn: z.string().optional(),
  /** What the last check found. */
  damage: z.array(Piece).default([]),
});
export type Upkeep = z.infer<typeof Upkeep>;

const DAY_MS = 86_400_000;
const REMIND_AFTER_DAYS = 31;
export const CHECK_AFTER_DAYS = 7;

export function readUpkeep(store: Store): Upkeep {
  return Upkeep.safeParse(store.readUpkeep() ?? {}).data ?? Upkeep.parse({});
}

export function changeUpkeep(store: Store, change: Partial<Upkeep>): Upkeep {
  const next = { ...readUpkeep(store), ...change };
  store.writeUpkeep(next);
  return next;
}

/** A clock that was put back makes nothing due and nothing young: the distance counts. */
export const daysSince = (then: string, now: string): number => Math.abs(Date.parse(now) - Date.parse(then)) / DAY_MS;

/** Whether the installer should be reminded to save a copy. */
export function isCopyDue({ lastCopyOn, firstUsedOn }: Upkeep, now: string): boolean {
  const since = lastCopyOn ?? firstUsedOn;
  return since !== undefined && daysSince(since, now) > REMIND_AFTER_DAYS;
}

/** Damage that was mended, or whose household was erased, is no longer told. */
export const forgetDamage = (store: Store, isGone: (damage: Damage) => boolean): void => {
  const { damage } = readUpkeep(store);
  const left = damage.filter((one) => !isGone(one));
  if (left.length < damage.length) changeUpkeep(store, { damage: left });
};

/** Between two pieces others get their turn after this long. */
const TURN_MS = 40;

interface CheckOptions {
  readonly onProgress?: ((share: number) => void) | undefined;
  /** Breaks it off; it counts as not made. */
  readonly isEnding?: () => boolean;
}

/** Holds every stored piece against its hash, in turns, and keeps what was found. */
export async function checkPieces(
  store: Store,
  now: string,
  { onProgress, isEnding }: CheckOptions = {},
): Promise<Upkeep> {
  const damage: Damage[] = [];
  let begun = performance.now();
  for (const looked of store.findDamage()) {
    if (isEnding?.()) return readUpkeep(store);
    if (looked.damage) damage.push(looked.damage);
    onProgress?.(looked.share);
    if (performance.now() - begun < TURN_MS) continue;
    await new Promise((resolve) => setImmediate(resolve));
    begun = performance.now();
  }
  return changeUpkeep(store, { lastCheckOn: now, damage });
}
