import { describe, expect, test } from 'vitest';
import { appraise } from '../../../src/model/appraise.ts';
import { yearSlots } from '../../../src/model/calendar/zone.ts';
import { reckonFullMachine } from '../../../src/model/heat-pump/full/spf-by-half-hour.ts';
import { USES } from '../../../src/model/heat-pump/full/year.ts';
import type { WhatIf } from '../../../src/model/shapes/appraisal.ts';
import { type FullMachine, Household } from '../../../src/model/shapes/household.ts';
import { reference } from '../../../src/reference/index.ts';
import { sayTold } from '../../../src/words/say-told.ts';
import { makeHousehold, makeTariff, typed } from '../appraisal/make-household.ts';
import { fullHousehold, settleInput } from './make-year.ts';

const SHEET: FullMachine = {
  ratedPoints: typed([
    { sourceC: 0, flowC: 35, cop: 4.6 },
    { sourceC: 0, flowC: 55, cop: 3 },
  ]),
  capacityKW: typed(7),
  control: 'variable',
};
const NIGHT_DAY = makeTariff('two-rate', [
  { name: 'night', pencePerKWh: 12, times: [{ from: '00:30', to: '07:30' }] },
  { name: 'day', pencePerKWh: 31, times: 'rest' },
]);
const home = fullHousehold(SHEET, { prices: { electricityTariffId: 'two-rate' }, tariffs: [NIGHT_DAY] });
const look = (household: Household, whatIf?: WhatIf, draws = 0) =>
  appraise({ household, series: [], reference, asOf: '2026-11-25', draws, ...(whatIf ? { whatIf } : {}) });
const pump = (household: Household, whatIf?: WhatIf) => look(household, whatIf).systems[0]!;

describe('an appraisal the full way', () => {
  test('the household document keeps its fields', () => expect(Household.parse(home)).toEqual(home));

  test('electricity is bought in its own half-hours', () => {
    const { full } = reckonFullMachine(settleInput(home));
    const slots = yearSlots(2026, home.zone);
    let pence = 0;
    for (let slot = 0; slot < slots.count; slot++) {
      const minute = slots.minute[slot]!;
      const price = minute >= 30 && minute < 450 ? 12 : 31;
      for (const use of USES) pence += full.bySlot[use][slot]! * price;
    }
    const found = pump(home);
    expect(found.split.unitsPence).toBeCloseTo(pence, 4);
    expect(found.bought.value).toBeCloseTo(full.electricityKWh, 6);
    found.monthly.boughtKWh.forEach((kWh, month) => {
      const used = Object.values(full.monthly[month]!.electricityKWh).reduce((sum, part) => sum + part, 0);
      expect(kWh).toBeCloseTo(used, 6);
    });
  });

  test('the whole factor is H4, and its working leads to the data sheet', () => {
    const { machine } = look(home);
    expect(machine.boundary).toBe('H1');
    expect(machine.whole.working.result.value).toBe(machine.whole.value);
    const inputs = machine.space.working.inputs.map(({ name }) => sayTold(name));
    expect(inputs).toEqual(expect.arrayContaining(['Rated points', 'Depth', 'Design flow temperature', 'Emitters']));
    expect(machine.space.working.inputs.find(({ name }) => sayTold(name) === 'Rated points')?.value).toBe(
      'B0/W35 4.6, B0/W55 3',
    );
  });

  test.each<[string, WhatIf, WhatIf]>([
    ['a cooler flow', { flowC: 38 }, { flowC: 52 }],
    ['cooler rooms', { roomC: 19 }, { roomC: 22 }],
    ['a mild winter', { winter: 'mild' }, { winter: 'cold' }],
    ['less hot water', { waterShare: 0.5 }, { waterShare: 1.5 }],
  ])('%s costs less', (_, less, more) => expect(pump(home, less).cost.value).toBeLessThan(pump(home, more).cost.value));

  test('warmer rooms worsen the factor as well as asking for more heat', () => {
    const factor = (roomC: number) => look(home, { roomC }).machine.space.value;
    expect(factor(19)).toBeGreaterThan(factor(22));
  });

  test('a change of flow is a plan, not the present, where a heat pump stands already', () => {
    const already = { ...home, present: { system: 'heat-pump' as const } };
    const present = (whatIf?: WhatIf) => look(already, whatIf).systems.find(({ id }) => id === 'present')!;
    expect(present({ flowC: 35 }).cost.value).toBeCloseTo(present().cost.value, 9);
  });

  test('the same answer twice, and ranges in order with draws', () => {
    const ranged = look(home, undefined, 500);
    expect(look(home, undefined, 500)).toEqual(ranged);
    for (const { cost } of ranged.systems) {
      expect(cost.low).toBeLessThanOrEqual(cost.value);
      expect(cost.high).toBeGreaterThanOrEqual(cost.value);
    }
  });

  test('the quick way does not look at what the full way is told', () => {
    const quick = makeHousehold();
    const beside = makeHousehold({ machine: { full: SHEET } });
    expect(look(beside)).toEqual(look(quick));
  });
});
