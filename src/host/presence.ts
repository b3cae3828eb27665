/** Whether the host is still wanted: it stays while a page is open or a call is at work, and a while after the last. */
export interface Presence {
  /** A page or a call comes; answers what to call, once or more often, when it has gone. */
  enter(): () => void;
  /** Counts as long as the work takes: an import, a copy or a print is never cut off. */
  work<T>(task: Promise<T>): Promise<T>;
  /** Resolves when no such work is running; from now on nobody is waited for. */
  settled(): Promise<void>;
}

/** How long the host stays after its last page: a reload or a second look costs no new start. */
export const STAY_MS = 5 * 60_000;

/** A timer so late was held up by the sleep of the computer, after which the pages need a moment to come back. */
const ASLEEP_MS = 30_000;

/** Calls `end` when nobody has been there for `stayMs`, which also runs before the first page; null never ends. */
export function watchPresence(stayMs: number | null, end: () => void): Presence {
  let here = 0;
  let stopped = false;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const running = new Set<Promise<unknown>>();

  function wait(): void {
    if (stayMs === null || stopped) return;
    const due = Date.now() + stayMs;
    timer = setTimeout(() => (Date.now() > due + ASLEEP_MS ? wait() : end()), stayMs);
  }
  function enter(): () => void {
    here += 1;
    clearTimeout(timer);
    let gone = false;
    return () => {
      if (gone) return;
      gone = true;
      here -= 1;
      if (here === 0) wait();
    };
  }
  wait();
  return {
    enter,
    async work(task) {
      const leave = enter();
      running.add(task);
      try {
        return await task;
      } finally {
        running.delete(task);
        leave();
      }
    },
    async settled() {
      stopped = true;
      clearTimeout(timer);
      while (running.size > 0) await Promise.allSettled(running);
    },
  };
}
