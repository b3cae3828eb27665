import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { emptyHousehold, type Household } from '../../../src/model/shapes/household.ts';
import { createKeeper, type KeepStatus } from '../../../src/screens/state/keeper.ts';

const named = (name: string): Household => emptyHousehold('h1', name);

function setUp(save: (household: Household, revision: number) => Promise<{ revision: number }>) {
  const statuses: KeepStatus['kind'][] = [];
  const keeper = createKeeper(1, {
    save,
    isConflict: (reason) => reason === 'stale',
    onStatus: (status) => statuses.push(status.kind),
    delayMs: 400,
  });
  return { keeper, statuses };
}

/** A desk that keeps what it is given and counts the revision up, as the real one does. */
function keepingDesk() {
  const kept: { name: string; revision: number }[] = [];
  const save = async (household: Household, revision: number) => {
    kept.push({ name: household.name, revision });
    return { revision: revision + 1 };
  };
  return { kept, save };
}

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe('keeping a household', () => {
  test('three quick changes are kept once, the newest', async () => {
    const { kept, save } = keepingDesk();
    const { keeper, statuses } = setUp(save);
    for (const name of ['a', 'b', 'c']) keeper.change(named(name));
    await vi.advanceTimersByTimeAsync(399);
    expect(kept).toEqual([]);
    await vi.advanceTimersByTimeAsync(1);
    expect(kept).toEqual([{ name: 'c', revision: 1 }]);
    expect(statuses.at(-1)).toBe('kept');
    expect(keeper.isSettled()).toBe(true);
  });

  test('a change during a save is kept after it, with the new revision', async () => {
    const { kept, save } = keepingDesk();
    let release = () => {};
    const { keeper } = setUp(async (household, revision) => {
      if (household.name === 'a') await new Promise<void>((resolve) => (release = resolve));
      return save(household, revision);
    });
    keeper.change(named('a'));
    await vi.advanceTimersByTimeAsync(400);
    keeper.change(named('b'));
    release();
    await keeper.flush();
    expect(kept).toEqual([
      { name: 'a', revision: 1 },
      { name: 'b', revision: 2 },
    ]);
  });

  test('a refused save stays waiting and is kept by the next try', async () => {
    const { kept, save } = keepingDesk();
    let down = true;
    const { keeper, statuses } = setUp((household, revision) =>
      down ? Promise.reject(new Error('disk full')) : save(household, revision),
    );
    keeper.change(named('a'));
    await keeper.flush();
    expect(statuses.at(-1)).toBe('failed');
    expect(keeper.isSettled()).toBe(false);
    down = false;
    await keeper.flush();
    expect(kept).toEqual([{ name: 'a', revision: 1 }]);
  });

  test('a newer state elsewhere is a conflict; after a restart the next save names its revision', async () => {
    const { kept, save } = keepingDesk();
    const { keeper, statuses } = setUp((household, revision) =>
      revision < 7 ? Promise.reject('stale') : save(household, revision),
    );
    keeper.change(named('mine'));
    await keeper.flush();
    expect(statuses.at(-1)).toBe('conflict');
    keeper.restart(7);
    keeper.change(named('mine'));
    await keeper.flush();
    expect(kept).toEqual([{ name: 'mine', revision: 7 }]);
  });
});
