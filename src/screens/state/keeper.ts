/**
 * Keeps changes a moment after the last one: one piece of work with the desk at a time, in the order made,
 * and what is refused is never dropped silently. "Kept" is said only after the desk has answered for everything.
 */

export type KeepStatus =
  | { readonly kind: 'kept' }
  | { readonly kind: 'waiting' }
  | { readonly kind: 'keeping' }
  /** Somebody else kept a newer state of the same household. */
  | { readonly kind: 'conflict' }
  | { readonly kind: 'failed'; readonly reason: unknown };

export interface KeeperPorts<Change extends object> {
  readonly save: (change: Change) => Promise<void>;
  /** Two changes, neither of them kept yet, as one. */
  readonly join: (earlier: Change, later: Change) => Change;
  readonly isConflict: (reason: unknown) => boolean;
  readonly onStatus: (status: KeepStatus) => void;
  readonly delayMs: number;
}

export interface Keeper<Change extends object> {
  /** Notes a change; it is kept after the delay unless another follows. */
  readonly change: (change: Change) => void;
  /** Keeps at once what is waiting; resolves when nothing is left to keep or keeping has failed. */
  readonly flush: () => Promise<void>;
  /** Does other work with the desk while no save is under way; changes made meanwhile wait for its end. */
  readonly alone: <T>(work: () => Promise<T>) => Promise<T>;
  /** What is not kept and not on its way. */
  readonly waiting: () => Change | null;
  /** Forgets what is waiting. */
  readonly drop: () => void;
  readonly isSettled: () => boolean;
}

/** Every keeper in the window that has something left to keep. */
const unsettled = new Set<Pick<Keeper<object>, 'flush'>>();

/** Keeps at once whatever waits anywhere in the window; resolves when it is kept or keeping has failed. */
export async function keepAll(): Promise<void> {
  await Promise.all([...unsettled].map((keeper) => keeper.flush()));
}

export const isAllKept = (): boolean => unsettled.size === 0;

export function createKeeper<Change extends object>(ports: KeeperPorts<Change>): Keeper<Change> {
  let pending: Change | null = null;
  let failure: KeepStatus | null = null;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let atWork = 0;
  let lane: Promise<unknown> = Promise.resolve();

  function tellStatus(): void {
    if (keeper.isSettled()) unsettled.delete(keeper);
    else unsettled.add(keeper);
    ports.onStatus(atWork > 0 ? { kind: 'keeping' } : (failure ?? { kind: pending === null ? 'kept' : 'waiting' }));
  }

  async function keepPending(): Promise<void> {
    failure = null;
    while (pending !== null) {
      const change = pending;
      pending = null;
      try {
        await ports.save(change);
      } catch (reason) {
        pending = pending === null ? change : ports.join(change, pending);
        failure = ports.isConflict(reason) ? { kind: 'conflict' } : { kind: 'failed', reason };
        return;
      }
    }
  }

  const keeper: Keeper<Change> = {
    change(change) {
      pending = pending === null ? change : ports.join(pending, change);
      failure = null;
      clearTimeout(timer);
      timer = setTimeout(keeper.flush, ports.delayMs);
      tellStatus();
    },
    flush: () => {
      clearTimeout(timer);
      return keeper.isSettled() ? Promise.resolve() : keeper.alone(keepPending);
    },
    alone(work) {
      atWork += 1;
      tellStatus();
      const done = lane.then(work).finally(() => {
        atWork -= 1;
        tellStatus();
      });
      lane = done.catch(() => undefined);
      return done;
    },
    waiting: () => pending,
    drop() {
      clearTimeout(timer);
      pending = null;
      failure = null;
      tellStatus();
    },
    isSettled: () => pending === null && atWork === 0,
  };
  return keeper;
}
