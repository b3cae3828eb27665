/** The open household in the window: changed at once, kept a moment later, read again on demand. */
import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { DeskError, type OpenHousehold } from '../../desk/contract.ts';
import type { Household } from '../../model/shapes/household.ts';
import { call } from '../desk.ts';
import { createKeeper, type KeepStatus } from './keeper.ts';

const KEEP_DELAY_MS = 400;

export interface OpenState {
  readonly open: OpenHousehold;
  readonly status: KeepStatus;
  readonly change: (patch: (household: Household) => Household) => void;
  readonly reload: () => Promise<void>;
  /** After a conflict: what is on this screen replaces what was kept elsewhere. */
  readonly keepMine: () => Promise<void>;
  /** After a conflict: what was kept elsewhere replaces what is on this screen. */
  readonly takeTheirs: () => Promise<void>;
  readonly tryAgain: () => Promise<void>;
}

export function useOpenHousehold(first: OpenHousehold): OpenState {
  const [open, setOpen] = useState(first);
  const [status, setStatus] = useState<KeepStatus>({ kind: 'kept' });
  const latest = useRef(first.household);
  const [keeper] = useState(() =>
    createKeeper(first.revision, {
      save: (household, revision) => call('household.save', { household, revision }),
      isConflict: (reason) => reason instanceof DeskError && reason.code === 'stale',
      onStatus: setStatus,
      delayMs: KEEP_DELAY_MS,
    }),
  );

  const lay = useCallback((next: OpenHousehold) => {
    latest.current = next.household;
    setOpen(next);
  }, []);
  const change = useCallback(
    (patch: (household: Household) => Household) => {
      const next = patch(latest.current);
      if (next === latest.current) return;
      latest.current = next;
      setOpen((before) => ({ ...before, household: next }));
      keeper.change(next);
    },
    [keeper],
  );
  const takeTheirs = useCallback(async () => {
    const next = await call('household.open', { id: latest.current.id });
    keeper.restart(next.revision);
    lay(next);
  }, [keeper, lay]);
  const keepMine = useCallback(async () => {
    const mine = latest.current;
    const theirs = await call('household.open', { id: mine.id });
    keeper.restart(theirs.revision);
    lay({ ...theirs, household: mine });
    keeper.change(mine);
    await keeper.flush();
  }, [keeper, lay]);
  const reload = useCallback(async () => {
    await keeper.flush();
    if (keeper.isSettled()) return takeTheirs();
    // What could not be kept stays on screen; only what hangs on the household is read again.
    const next = await call('household.open', { id: latest.current.id });
    setOpen((before) => ({ ...next, household: before.household }));
  }, [keeper, takeTheirs]);

  useEffect(() => {
    const keepNow = () => void keeper.flush();
    const warn = (event: BeforeUnloadEvent) => {
      if (keeper.isSettled()) return;
      keepNow();
      event.preventDefault();
    };
    window.addEventListener('beforeunload', warn);
    document.addEventListener('visibilitychange', keepNow);
    return () => {
      window.removeEventListener('beforeunload', warn);
      document.removeEventListener('visibilitychange', keepNow);
      keepNow();
    };
  }, [keeper]);

  return useMemo(
    () => ({ open, status, change, reload, keepMine, takeTheirs, tryAgain: keeper.flush }),
    [open, status, change, reload, keepMine, takeTheirs, keeper],
  );
}
