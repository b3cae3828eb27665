import { beforeEach, describe, expect, test, vi } from 'vitest';
import { createKeeper, isAllKept, type KeepStatus, keepAll } from '../../../src/screens/state/keeper.ts';

interface Named {
  readonly name: string;
}

function setUp(save: (change: Named) => Promise<void>) {
  const statuses: KeepStatus['kind'][] = [];
  const keeper = createKeeper<Named>({
    save,
    join: (_earlier, later) => later,
    isConflict: (reason) => reason === 'stale',
    onStatus: (status) => statuses.push(status.kind),
    delayMs: 400,
  });
  return { keeper, statuses };
}

/** A desk that keeps what it is given. */
function keepingDesk() {
  const kept: string[] = [];
  const save = async ({ name }: Named) => void kept.push(name);
  return { kept, save };
}

beforeEach(() => void vi.useFakeTimers());

describe('keeping changes', () => {
  test('three quick changes are kept once, the newest', async () => {
    const { kept, save } = keepingDesk();
    const { keeper, statuses } = setUp(save);
    for (const name of ['a', 'b', 'c']) keeper.change({ name });
    await vi.advanceTimersByTimeAsync(399);
    expect(kept).toEqual([]);
    await vi.advanceTimersByTimeAsync(1);
    expect(kept).toEqual(['c']);
    expect(statuses.at(-1)).toBe('kept');
    expect(keeper.isSettled()).toBe(true);
  });

  test('a change during a save is kept after it', async () => {
    const { kept, save } = keepingDesk();
    let release = () => {};
    const { keeper, statuses } = setUp(async (change) => {
      if (change.name === 'a') await new Promise<void>((resolve) => (release = resolve));
      return save(change);
    });
    keeper.change({ name: 'a' });
    await vi.advanceTimersByTimeAsync(400);
    keeper.change({ name: 'b' });
    release();
    await keeper.flush();
    expect(kept).toEqual(['a', 'b']);
    expect(statuses.filter((kind) => kind === 'kept')).toHaveLength(1);
  });

  test('a refused save stays waiting and is kept by the next try', async () => {
    const { kept, save } = keepingDesk();
    let down = true;
    const { keeper, statuses } = setUp((change) => (down ? Promise.reject(new Error('disk full')) : save(change)));
    keeper.change({ name: 'a' });
    await keeper.flush();
    expect(statuses.at(-1)).toBe('failed');
    expect(keeper.isSettled()).toBe(false);
    down = false;
    await keepAll();
    expect(kept).toEqual(['a']);
    expect(isAllKept()).toBe(true);
  });

  test('what waits is kept only after other work with the desk, and what is dropped is not kept at all', async () => {
    const { kept, save } = keepingDesk();
    const { keeper, statuses } = setUp((change) => (change.name === 'mine' ? Promise.reject('stale') : save(change)));
    keeper.change({ name: 'mine' });
    await keeper.flush();
    expect(statuses.at(-1)).toBe('conflict');
    await keeper.alone(async () => {
      keeper.drop();
      keeper.change({ name: 'theirs' });
      await vi.advanceTimersByTimeAsync(1000);
      expect(kept).toEqual([]);
    });
    await keeper.flush();
    expect(kept).toEqual(['theirs']);
  });
});
