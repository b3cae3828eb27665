/** Random sequences of choices against a desk that is slow and refuses at random: nothing is lost, "kept" is never said early. */
import fc from 'fast-check';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { type Call, type OpenHousehold, Settings } from '../../../src/desk/contract.ts';
import { DeskError } from '../../../src/desk/desk-error.ts';
import { emptyHousehold, type Household } from '../../../src/model/shapes/household.ts';
import { keepSettings } from '../../../src/screens/settings/kept-settings.ts';
import { isAllKept, keepAll } from '../../../src/screens/state/keeper.ts';
import {
  editHousehold,
  fetchAhead,
  namesOfUnkept,
  takeUpHousehold,
} from '../../../src/screens/state/open-household.ts';

beforeEach(() => void vi.useFakeTimers());

const wait = (ms: number) => new Promise<void>((resolve) => setTimeout(resolve, ms));

/** How each call goes, one after the other, and well when there are no more: how long on the way there and back, and whether it is refused. */
const answers = fc.array(
  fc.record({
    thereMs: fc.integer({ max: 700, min: 0 }),
    backMs: fc.integer({ max: 700, min: 0 }),
    refused: fc.boolean(),
  }),
  { maxLength: 12 },
);
type Answers = typeof answers extends fc.Arbitrary<infer T> ? T : never;

function slowly(desk: (name: string, input: unknown) => unknown, answers: Answers): Call {
  const coming = [...answers];
  return (async (name: string, input: unknown) => {
    const { thereMs, backMs, refused } = coming.shift() ?? { thereMs: 1, backMs: 1, refused: false };
    await wait(thereMs);
    if (refused) throw new DeskError({ code: 'store-full', message: 'The disk is full.' });
    const result = structuredClone(desk(name, structuredClone(input)));
    await wait(backMs);
    return result;
  }) as Call;
}

/** Lets everything come to rest on a desk that answers again. */
async function settle(): Promise<void> {
  for (let tries = 0; !isAllKept(); tries++) {
    if (tries > 20) throw new Error('nothing comes to rest');
    void keepAll();
    await vi.advanceTimersByTimeAsync(2000);
  }
}

describe('settings', () => {
  const choice = fc.oneof(
    fc.record({ language: fc.constantFrom('en-GB', 'de-DE') }),
    fc.record({ country: fc.constantFrom('GB', 'DE') }),
    fc.record({ theme: fc.constantFrom('light', 'dark') }),
    fc.record({ paper: fc.constantFrom('A4', 'Letter') }),
    fc.record({ installerName: fc.string({ maxLength: 5 }) }),
  ) as fc.Arbitrary<Partial<Settings>>;
  const step = fc.oneof(
    { weight: 4, arbitrary: fc.record({ kind: fc.constant('choose' as const), part: choice }) },
    fc.record({ kind: fc.constant('pause' as const), ms: fc.integer({ min: 0, max: 900 }) }),
    fc.record({ kind: fc.constant('leave' as const) }),
    fc.record({ kind: fc.constant('logo' as const), logo: fc.constantFrom('', 'data:one', 'data:two') }),
    fc.record({ kind: fc.constant('elsewhere' as const), text: fc.string({ maxLength: 3 }) }),
  );

  test('every choice is on the desk in the end, and whenever the screen says so', () =>
    fc.assert(
      fc.asyncProperty(fc.array(step, { maxLength: 15 }), answers, async (steps, answers) => {
        let stored = Settings.parse({});
        const kept = keepSettings(
          stored,
          slowly((name, input) => {
            if (name === 'settings.write') stored = Settings.parse(input);
            return stored;
          }, answers),
        );
        let chosen: Partial<Settings> = {};
        let logo = '';
        const saidKept: [Settings, Partial<Settings>][] = [];
        kept.watch(() => {
          if (kept.read().status.kind === 'kept') saidKept.push([stored, chosen]);
        });
        for (const step of steps) {
          if (step.kind === 'pause') await vi.advanceTimersByTimeAsync(step.ms);
          else if (step.kind === 'leave') void kept.flush();
          else if (step.kind === 'elsewhere') {
            // Settings have no revision: between the reading and the writing of a save another window is not seen.
            if (kept.read().status.kind === 'keeping') continue;
            stored = { ...stored, installerContact: step.text };
            chosen = { ...chosen, installerContact: step.text };
          } else if (step.kind === 'logo') {
            kept.keepLogo(step.logo).then(
              (kept) => {
                logo = kept;
              },
              (reason) => expect(reason).toBeInstanceOf(DeskError),
            );
          } else {
            chosen = { ...chosen, ...step.part };
            kept.change(step.part);
            expect(kept.read().settings).toMatchObject(step.part);
            expect(kept.read().status.kind).not.toBe('kept');
          }
        }
        await vi.advanceTimersByTimeAsync(60_000);
        await settle();
        expect(stored).toMatchObject({ ...chosen, logo });
        expect(kept.read().status).toEqual({ kind: 'kept' });
        expect({ ...kept.read().settings, installerContact: stored.installerContact }).toEqual(stored);
        for (const [then, by] of saidKept) expect(then).toMatchObject(by);
      }),
      { numRuns: 400 },
    ));
});

describe('a household', () => {
  type Field = 'name' | 'jobNumber' | 'notes';
  const step = fc.oneof(
    {
      weight: 4,
      arbitrary: fc.record({
        kind: fc.constant('change' as const),
        field: fc.constantFrom<Field>('name', 'jobNumber', 'notes'),
        text: fc.string({ minLength: 1, maxLength: 5 }),
      }),
    },
    fc.record({ kind: fc.constant('pause' as const), ms: fc.integer({ min: 0, max: 900 }) }),
    fc.record({ kind: fc.constant('reload' as const) }),
    fc.record({
      kind: fc.constant('leave and come back' as const),
      afterMs: fc.integer({ min: 0, max: 3000 }),
      ahead: fc.boolean(),
    }),
  );

  function deskOf(answers: Answers) {
    const desk = { household: emptyHousehold('h1', 'Larch Rise'), revision: 1 };
    const open = (): OpenHousehold => ({
      ...desk,
      archived: false,
      evidence: [],
      series: [],
      estimates: [],
      checks: [],
      undone: [],
      damage: [],
    });
    const call = slowly((name, input) => {
      if (name === 'household.open') return open();
      const { household, revision } = input as Pick<OpenHousehold, 'household' | 'revision'>;
      if (revision !== desk.revision) throw new DeskError({ code: 'stale', message: 'changed elsewhere' });
      desk.household = household;
      desk.revision += 1;
      return { revision: desk.revision };
    }, answers);
    return { desk, open, call };
  }

  test('every change is on the desk in the end, whatever is read, left and opened again between', () =>
    fc.assert(
      fc.asyncProperty(fc.array(step, { maxLength: 15 }), answers, async (steps, answers) => {
        const { desk, open, call } = deskOf(answers);
        let edited = editHousehold(open(), call);
        let mine: Partial<Record<Field, string>> = {};
        const saidKept: [object, object][] = [];
        const look = () => {
          if (edited.read().status.kind === 'kept') saidKept.push([desk.household, mine]);
        };
        let stop = edited.watch(look);
        for (const step of steps) {
          if (step.kind === 'pause') await vi.advanceTimersByTimeAsync(step.ms);
          else if (step.kind === 'reload') void edited.reload().catch(() => {});
          else if (step.kind === 'change') {
            mine = { ...mine, [step.field]: step.text };
            edited.change((household) => ({ ...household, [step.field]: step.text }));
            expect(edited.read().open.household).toMatchObject(mine);
            expect(edited.read().status.kind).not.toBe('kept');
          } else if (step.kind === 'leave and come back') {
            edited.leave();
            stop();
            await vi.advanceTimersByTimeAsync(step.afterMs);
            let back: typeof edited | null = null;
            while (back === null) {
              if (step.ahead) fetchAhead('h1', call);
              // A refused opening is tried again, as a person does.
              const opening = takeUpHousehold('h1', call).then(
                (one) => {
                  back = one;
                },
                () => {},
              );
              await vi.advanceTimersByTimeAsync(10_000);
              await opening;
            }
            edited = back;
            stop = edited.watch(look);
            expect(edited.read().open.household).toMatchObject(mine);
          }
        }
        await vi.advanceTimersByTimeAsync(60_000);
        await settle();
        expect(desk.household).toMatchObject(mine);
        expect(edited.read().status).toEqual({ kind: 'kept' });
        expect(namesOfUnkept()).toEqual([]);
        stop();
        for (const [then, by] of saidKept) expect(then).toMatchObject(by);
      }),
      { numRuns: 300 },
    ));

  test('one that was asked for ahead is taken up once, and the next time read anew', async () => {
    const { desk, call } = deskOf([]);
    fetchAhead('h1', call);
    await vi.advanceTimersByTimeAsync(10);
    desk.household = { ...desk.household, name: 'Changed since' };
    const take = async () => {
      const taken = takeUpHousehold('h1', call);
      await vi.advanceTimersByTimeAsync(10);
      return (await taken).read().open.household.name;
    };
    expect([await take(), await take()]).toEqual(['Larch Rise', 'Changed since']);
  });

  test('a change made elsewhere is a conflict until one of the two is chosen; what was changed since stays', async () => {
    const { desk, open, call } = deskOf([]);
    const edited = editHousehold(open(), call);
    const choose = async (name: string, way: () => Promise<void>) => {
      desk.household = { ...desk.household, name };
      desk.revision += 1;
      edited.change((household) => ({ ...household, name: 'Mine' }));
      await vi.advanceTimersByTimeAsync(1000);
      expect(edited.read().status.kind).toBe('conflict');
      const chosen = way();
      edited.change((household) => ({ ...household, jobNumber: 'J1' }));
      await vi.advanceTimersByTimeAsync(2000);
      await chosen;
      expect(edited.read().status.kind).toBe('kept');
      expect(desk.household).toEqual(edited.read().open.household);
      return desk.household;
    };
    expect(await choose('Elsewhere', edited.takeTheirs)).toMatchObject({ name: 'Elsewhere', jobNumber: 'J1' });
    expect(await choose('Elsewhere again', edited.keepMine)).toMatchObject({ name: 'Mine', jobNumber: 'J1' });
  });

  /** Each window changes things of its own, in any order and on a slow desk that never refuses. */
  test('two windows that change different things keep all of both', () =>
    fc.assert(
      fc.asyncProperty(
        fc.array(
          fc.record({
            window: fc.constantFrom(0, 1),
            field: fc.constantFrom(0, 1, 2),
            number: fc.integer({ min: 1, max: 9 }),
            ms: fc.integer({ min: 0, max: 900 }),
          }),
          { maxLength: 12 },
        ),
        answers,
        async (steps, answers) => {
          const { desk, open, call } = deskOf(answers.map((one) => ({ ...one, refused: false })));
          const windows = [editHousehold(open(), call), editHousehold(open(), call)];
          const text = (number: number) => String(number);
          const typed = (value: number) => ({ value, grade: 'measured' as const, origin: 'typed' });
          const changes = [
            [
              (n: number, home: Household) => ({ ...home, notes: text(n) }),
              (n: number, home: Household) => ({ ...home, home: { ...home.home, people: typed(n) } }),
              (n: number, home: Household) => ({ ...home, machine: { ...home.machine, flowC: typed(40 + n) } }),
            ],
            [
              (n: number, home: Household) => ({ ...home, jobNumber: text(n) }),
              (n: number, home: Household) => ({ ...home, home: { ...home.home, floorAreaM2: typed(n) } }),
              (n: number, home: Household) => ({ ...home, heat: n % 2 === 0 ? {} : { roomC: typed(15 + n) } }),
            ],
          ] as const;
          let wanted = desk.household;
          for (const { window, field, number, ms } of steps) {
            const change = (home: Household): Household => changes[window]![field]!(number, home);
            wanted = change(wanted);
            windows[window]!.change(change);
            await vi.advanceTimersByTimeAsync(ms);
          }
          await vi.advanceTimersByTimeAsync(60_000);
          expect(windows.map((one) => one.read().status.kind)).toEqual(['kept', 'kept']);
          expect(desk.household).toEqual(wanted);
        },
      ),
      { numRuns: 200 },
    ));

  test.each<[string, (home: Household) => Household]>([
    ['an offer and its machine', (home) => ({ ...home, offer: { id: 'o', name: 'Other' } })],
    ['a tariff and what is paid by it', (home) => ({ ...home, tariffs: [], prices: { electricityTariffId: 't' } })],
    ['one field', (home) => ({ ...home, home: { ...home.home, postcode: 'AB1' } })],
  ])('%s changed in both is asked about, and nothing is lost before that', async (name, theirs) => {
    const { desk, open, call } = deskOf([]);
    const edited = editHousehold(open(), call);
    desk.household = theirs(desk.household);
    desk.revision += 1;
    const elsewhere = desk.household;
    edited.change((home) =>
      name === 'one field'
        ? { ...home, home: { ...home.home, postcode: 'CD2' } }
        : name === 'an offer and its machine'
          ? { ...home, machine: { ...home.machine, source: 'air' } }
          : { ...home, prices: { gasTariffId: 'g' } },
    );
    await vi.advanceTimersByTimeAsync(2000);
    expect(edited.read().status.kind).toBe('conflict');
    expect(desk.household).toEqual(elsewhere);
    await Promise.all([edited.takeTheirs(), vi.advanceTimersByTimeAsync(2000)]);
  });
});
