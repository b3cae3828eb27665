/**
 * Keeps a household a moment after its last change: one save at a time, the newest state wins,
 * and a save that is refused is never dropped silently.
 */
import type { Household } from '../../model/shapes/household.ts';

export type KeepStatus =
  | { readonly kind: 'kept' }
  | { readonly kind: 'waiting' }
  | { readonly kind: 'keeping' }
  /** Somebody else kept a newer state of the same household. */
  | { readonly kind: 'conflict' }
  | { readonly kind: 'failed'; readonly reason: unknown };

export interface KeeperPorts {
  readonly save: (household: Household, revision: number) => Promise<{ revision: number }>;
  readonly isConflict: (reason: unknown) => boolean;
  readonly onStatus: (status: KeepStatus) => void;
  readonly delayMs: number;
}

export interface Keeper {
  /** Notes a new state; it is kept after the delay unless another follows. */
  readonly change: (household: Household) => void;
  /** Keeps at once what is waiting; resolves when nothing is left to keep or keeping has failed. */
  readonly flush: () => Promise<void>;
  /** Continues from another revision: after the household was read again. */
  readonly restart: (revision: number) => void;
  readonly isSettled: () => boolean;
}

export function createKeeper(revisionAtStart: number, ports: KeeperPorts): Keeper {
  let revision = revisionAtStart;
  let pending: Household | null = null;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let running: Promise<void> | null = null;

  async function keepAll(): Promise<void> {
    while (pending) {
      const household = pending;
      pending = null;
      ports.onStatus({ kind: 'keeping' });
      try {
        revision = (await ports.save(household, revision)).revision;
      } catch (reason) {
        pending ??= household;
        ports.onStatus(ports.isConflict(reason) ? { kind: 'conflict' } : { kind: 'failed', reason });
        return;
      }
    }
    ports.onStatus({ kind: 'kept' });
  }

  function flush(): Promise<void> {
    clearTimeout(timer);
    if (running) return running;
    if (!pending) return Promise.resolve();
    running = keepAll().finally(() => {
      running = null;
    });
    return running;
  }

  return {
    change(household) {
      pending = household;
      ports.onStatus({ kind: 'waiting' });
      clearTimeout(timer);
      timer = setTimeout(flush, ports.delayMs);
    },
    flush,
    restart(next) {
      clearTimeout(timer);
      pending = null;
      revision = next;
      ports.onStatus({ kind: 'kept' });
    },
    isSettled: () => pending === null && running === null,
  };
}
