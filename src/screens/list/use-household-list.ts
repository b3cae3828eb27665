import { useCallback, useEffect, useState } from 'react';
import type { HouseholdSummary } from '../../desk/contract.ts';
import { say } from '../../words/say.ts';
import { call, callAtOnce } from '../desk.ts';
import { WHOLE_LIST } from '../first.ts';
import { exportHousehold } from '../shared/export-dialog.tsx';
import { offerFile } from '../shared/offer-file.ts';
import { describeFailure } from '../state/describe-failure.ts';
import { forgetUnkept } from '../state/open-household.ts';
import { go } from '../use-route.ts';

const FIND_DELAY_MS = 120;

export interface HouseholdList {
  readonly rows: readonly HouseholdSummary[] | null;
  readonly failure: string | null;
  readonly find: string;
  readonly archived: boolean;
  readonly setFind: (find: string) => void;
  readonly setArchived: (archived: boolean) => void;
  readonly bringIn: (files: readonly File[]) => void;
  readonly duplicate: (row: HouseholdSummary) => void;
  readonly archive: (row: HouseholdSummary, archived: boolean) => void;
  readonly exportFile: (row: HouseholdSummary, withFiles: boolean) => void;
  readonly erase: (row: HouseholdSummary, confirmName: string) => Promise<void>;
}

/** The whole list, fetched before any screen is there; the first list that is shown takes it. */
let ahead: readonly HouseholdSummary[] | null = null;

/** One that cannot be had is asked for again by the list itself, which says why. */
export async function fetchListAhead(): Promise<void> {
  ahead = await callAtOnce('household.list', WHOLE_LIST).catch(() => null);
}

export function useHouseholdList(): HouseholdList {
  const [rows, setRows] = useState(ahead);
  const [failure, setFailure] = useState<string | null>(null);
  const [find, setFind] = useState('');
  const [archived, setArchived] = useState(false);
  const [turn, setTurn] = useState(0);
  const again = useCallback(() => setTurn((before) => before + 1), []);

  // biome-ignore lint/correctness/useExhaustiveDependencies: `turn` asks for the list again after a change.
  useEffect(() => {
    if (ahead !== null) {
      ahead = null;
      return;
    }
    const stop = new AbortController();
    const timer = setTimeout(
      () =>
        call('household.list', { find, archived }, { signal: stop.signal }).then(
          (next) => stop.signal.aborted || setRows(next),
          (reason) => stop.signal.aborted || setFailure(describeFailure(reason)),
        ),
      find === '' ? 0 : FIND_DELAY_MS,
    );
    return () => {
      clearTimeout(timer);
      stop.abort();
    };
  }, [find, archived, turn]);

  const attempt = useCallback((work: () => Promise<unknown>) => {
    setFailure(null);
    work().catch((reason) => setFailure(describeFailure(reason)));
  }, []);

  return {
    rows,
    failure,
    find,
    archived,
    setFind,
    setArchived,
    bringIn: (files) =>
      attempt(async () => {
        const file = files[0];
        if (!file) return;
        const { fileId } = await offerFile(file);
        const open = await call('household.import', { fileId });
        go({ screen: 'household', id: open.household.id, stage: 'cost' });
      }),
    duplicate: (row) =>
      attempt(async () => {
        await call('household.duplicate', { id: row.id, name: say('{name}, copy', { name: row.name }).slice(0, 120) });
        again();
      }),
    archive: (row, to) =>
      attempt(async () => {
        await call('household.archive', { id: row.id, archived: to });
        again();
      }),
    exportFile: (row, withFiles) =>
      attempt(async () => {
        const stayedOut = await exportHousehold(row.id, withFiles);
        if (stayedOut !== null) setFailure(stayedOut);
      }),
    async erase(row, confirmName) {
      await call('household.erase', { id: row.id, confirmName });
      forgetUnkept(row.id);
      again();
    },
  };
}
