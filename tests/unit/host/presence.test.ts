import { beforeEach, expect, test, vi } from 'vitest';
import { watchPresence } from '../../../src/host/presence.ts';

const STAY = 5 * 60_000;
const end = vi.fn();
beforeEach(() => {
  vi.useFakeTimers();
  end.mockClear();
});

test('the host ends five minutes after its last page, and not while one of two is open', () => {
  const presence = watchPresence(STAY, end);
  const [first, second] = [presence.enter(), presence.enter()];
  first();
  first();
  vi.advanceTimersByTime(10 * STAY);
  expect(end).not.toHaveBeenCalled();
  second();
  vi.advanceTimersByTime(STAY - 1);
  expect(end).not.toHaveBeenCalled();
  vi.advanceTimersByTime(1);
  expect(end).toHaveBeenCalledOnce();
});

test('a page that never comes is waited for as long', () => {
  watchPresence(STAY, end);
  vi.advanceTimersByTime(STAY);
  expect(end).toHaveBeenCalledOnce();
});

test('a page that comes back in time keeps it', () => {
  const presence = watchPresence(STAY, end);
  presence.enter()();
  vi.advanceTimersByTime(STAY - 1);
  presence.enter();
  vi.advanceTimersByTime(STAY);
  expect(end).not.toHaveBeenCalled();
});

test('an import, a copy or a print is never cut off, whether it ends well or badly', async () => {
  const presence = watchPresence(STAY, end);
  const [good, bad] = [Promise.withResolvers<string>(), Promise.withResolvers<string>()];
  const [goodWork, badWork] = [presence.work(good.promise), presence.work(bad.promise)];
  vi.advanceTimersByTime(3 * STAY);
  good.resolve('done');
  expect(await goodWork).toBe('done');
  bad.reject(new Error('no paper'));
  await expect(badWork).rejects.toThrow('no paper');
  expect(end).not.toHaveBeenCalled();
  vi.advanceTimersByTime(STAY);
  expect(end).toHaveBeenCalledOnce();
});

test('whoever ends it waits for the work, and nothing ends it a second time', async () => {
  const presence = watchPresence(STAY, end);
  const print = Promise.withResolvers<void>();
  const work = presence.work(print.promise);
  const told: string[] = [];
  const settled = presence.settled().then(() => told.push('settled'));
  expect(told).toEqual([]);
  print.resolve();
  await Promise.all([work, settled]);
  expect(told).toEqual(['settled']);
  vi.advanceTimersByTime(2 * STAY);
  expect(end).not.toHaveBeenCalled();
});

test('after the sleep of the computer the pages get their time anew', () => {
  const presence = watchPresence(STAY, end);
  presence.enter()();
  vi.setSystemTime(Date.now() + 8 * 3_600_000);
  vi.advanceTimersByTime(STAY);
  expect(end).not.toHaveBeenCalled();
  vi.advanceTimersByTime(STAY);
  expect(end).toHaveBeenCalledOnce();
});

test('a host whose address is opened by hand is ended by hand', () => {
  const presence = watchPresence(null, end);
  presence.enter()();
  vi.advanceTimersByTime(100 * STAY);
  expect(end).not.toHaveBeenCalled();
});
