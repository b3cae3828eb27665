/** An open household: changed at once, kept a moment later, read again on demand. It outlives the screen that shows it. */
import type { Call, OpenHousehold } from '../../desk/contract.ts';
import { DeskError } from '../../desk/desk-error.ts';
import type { Household } from '../../model/shapes/household.ts';
import { joinChanges } from './join-changes.ts';
import { createKeeper, type KeepStatus } from './keeper.ts';

const KEEP_DELAY_MS = 400;

type Patch = (household: Household) => Household;

export interface OpenState {
  readonly open: OpenHousehold;
  readonly status: KeepStatus;
}

export interface HouseholdBeingEdited {
  readonly read: () => OpenState;
  /** Answers how to stop listening. */
  readonly watch: (listener: () => void) => () => void;
  readonly change: (patch: Patch) => void;
  /** Keeps what is waiting, then reads all again. What could not be kept stays as it is here. */
  readonly reload: () => Promise<void>;
  /** After a conflict: what is on this screen replaces what was kept elsewhere. */
  readonly keepMine: () => Promise<void>;
  /** After a conflict: what was kept elsewhere replaces what was on this screen. */
  readonly takeTheirs: () => Promise<void>;
  readonly tryAgain: () => Promise<void>;
  /** The screen goes away: keeps what is waiting, and stays to be taken up again where that fails. */
  readonly leave: () => void;
  /** The household was erased: nothing of it is to be kept any more. */
  readonly forget: () => void;
}

/** Those left with something not kept, by the household's id. */
const left = new Map<string, HouseholdBeingEdited>();

/** Names of the households that were left with something that could not be kept. */
export const namesOfUnkept = (): string[] => [...left.values()].map((one) => one.read().open.household.name);

let ahead: { readonly id: string; readonly open: Promise<OpenHousehold> } | null = null;

/** Asks for a household that was chosen, before its screen is there to take it up. */
export function fetchAhead(id: string, call: Call): void {
  if (left.has(id)) return;
  ahead = { id, open: call('household.open', { id }) };
  // Whoever takes it up hears of it.
  ahead.open.catch(() => undefined);
}

/** Opens a household, with what could not be kept of it when it was left. */
export async function takeUpHousehold(id: string, call: Call): Promise<HouseholdBeingEdited> {
  const before = left.get(id);
  const fetched = ahead?.id === id ? ahead.open : null;
  ahead = null;
  if (!before) return editHousehold(await (fetched ?? call('household.open', { id })), call);
  await before.reload();
  left.delete(id);
  return before;
}

/** After a household was erased. */
export function forgetUnkept(id: string): void {
  left.get(id)?.forget();
  left.delete(id);
}

const isStale = (reason: unknown): boolean => reason instanceof DeskError && reason.code === 'stale';

export function editHousehold(first: OpenHousehold, call: Call): HouseholdBeingEdited {
  const { id } = first.household;
  let state: OpenState = { open: first, status: { kind: 'kept' } };
  let revision = first.revision;
  /** As it was kept last, as far as this window knows. */
  let base = first.household;
  /** Changes made since "take theirs" was pressed. */
  let since: Patch[] | null = null;
  const listeners = new Set<() => void>();
  const show = (part: Partial<OpenState>) => {
    state = { ...state, ...part };
    for (const listener of listeners) listener();
  };
  const keeper = createKeeper<Household>({
    async save(household) {
      try {
        revision = (await call('household.save', { household, revision })).revision;
        base = household;
      } catch (reason) {
        if (!isStale(reason) || !(await saveJoined(household))) throw reason;
      }
    },
    join: (_earlier, later) => later,
    isConflict: isStale,
    onStatus: (status) => show({ status }),
    delayMs: KEEP_DELAY_MS,
  });
  const take = (theirs: OpenHousehold, household: Household) => {
    revision = theirs.revision;
    base = theirs.household;
    show({ open: { ...theirs, household } });
  };
  /** After another window kept its own: both together, where they touch different things; else nothing is kept. */
  async function saveJoined(household: Household): Promise<boolean> {
    const theirs = await call('household.open', { id });
    const joined = joinChanges(base, household, theirs.household);
    if (joined === null) return false;
    try {
      const kept = await call('household.save', { household: joined, revision: theirs.revision });
      // What was changed here meanwhile goes on from both; where it touches theirs, the next save asks.
      const shown = joinChanges(household, state.open.household, joined);
      if (shown === null) return true;
      take({ ...theirs, household: joined, revision: kept.revision }, shown);
      if (keeper.waiting() !== null) keeper.change(shown);
      return true;
    } catch (reason) {
      // Kept by the other window again since it was read.
      if (isStale(reason)) return saveJoined(household);
      throw reason;
    }
  }

  const edited: HouseholdBeingEdited = {
    read: () => state,
    watch(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    change(patch) {
      const next = patch(state.open.household);
      if (next === state.open.household) return;
      since?.push(patch);
      keeper.change(next);
      show({ open: { ...state.open, household: next } });
    },
    async reload() {
      await keeper.flush();
      await keeper.alone(async () => {
        const theirs = await call('household.open', { id });
        if (keeper.waiting() === null) take(theirs, theirs.household);
        // Not kept, or changed while it was read: that stays, and so does the revision that it began from.
        else show({ open: { ...theirs, household: state.open.household } });
      });
    },
    keepMine() {
      return keeper
        .alone(async () => {
          take(await call('household.open', { id }), state.open.household);
          keeper.change(state.open.household);
        })
        .then(keeper.flush);
    },
    takeTheirs() {
      since = [];
      return keeper
        .alone(async () => {
          const theirs = await call('household.open', { id });
          const household = since!.reduce((before, patch) => patch(before), theirs.household);
          keeper.drop();
          take(theirs, household);
          if (household !== theirs.household) keeper.change(household);
        })
        .finally(() => {
          since = null;
        });
    },
    tryAgain: keeper.flush,
    leave() {
      left.set(id, edited);
      void keeper.flush().then(() => {
        if (keeper.isSettled()) left.delete(id);
      });
    },
    forget: keeper.drop,
  };
  return edited;
}
