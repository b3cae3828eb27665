import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isUnchanged, listKnobs, sayWhatIf } from '../../../src/screens/cost/knobs.ts';
import { listSteps } from '../../../src/screens/walk/reckon-changes.ts';
import { larchRise, larchRiseHousehold } from '../leave-behind/larch-rise.ts';

const knobs = listKnobs(larchRiseHousehold(), larchRise());
const knob = (name: string) => knobs.find((one) => one.name === name)!;

describe('sliders', () => {
  test.each([
    ['flow', 50, '50 °C'],
    ['room', 20, '20 °C'],
    ['water', 100, '100% of today’s'],
    ['electricity', 26.3, '26.3 p'],
    ['winter', 1, 'typical'],
  ])('%s stands at %d today, said "%s"', (name, today, said) => {
    expect(knob(name).today).toBe(today);
    expect(knob(name).read({})).toBe(today);
    expect(knob(name).say(today)).toBe(said);
  });

  test('what is written is read again, and today’s value leaves nothing behind', () => {
    fc.assert(
      fc.property(fc.constantFrom(...knobs), fc.double({ min: 0, max: 1, noNaN: true }), (one, share) => {
        const steps = Math.round((share * (one.max - one.min)) / one.step);
        const value = Number((one.min + steps * one.step).toFixed(4));
        const whatIf = one.write({}, value);
        expect(one.read(whatIf)).toBeCloseTo(value, 3);
        expect(one.write(whatIf, one.today)).toEqual({});
      }),
    );
  });

  test('a price of 31.3 p is 31.3 / 26.3 of today’s', () => {
    expect(knob('electricity').write({}, 31.3).electricityShare).toBeCloseTo(31.3 / 26.3, 9);
  });

  test('only what stands changed is said', () => {
    const whatIf = knob('winter').write(knob('flow').write({}, 55), 2);
    expect(sayWhatIf(knobs, whatIf)).toBe('flow temperature 55 °C, winter cold');
    expect(isUnchanged(whatIf)).toBe(false);
    expect(isUnchanged({})).toBe(true);
  });
});

describe('single changes', () => {
  const now = { household: larchRiseHousehold(), appraisal: larchRise(), whatIf: {} };
  test('five steps, each by itself', () => {
    expect(Object.fromEntries(listSteps(now))).toEqual({
      'winter-cold': { winter: 'cold' },
      'electricity-up': { electricityShare: (26.3 + 5) / 26.3 },
      'room-up': { roomC: 21 },
      'water-up': { waterShare: 1.5 },
      'flow-up': { flowC: 55 },
    });
  });
  test('on top of what the sliders have', () => {
    const steps = Object.fromEntries(listSteps({ ...now, whatIf: { waterShare: 1.2, flowC: 60 } }));
    expect(steps['water-up']!.waterShare).toBeCloseTo(1.8, 9);
    expect(steps['flow-up']).toEqual({ flowC: 65 });
  });
  test('no step beyond what a what-if may be', () => {
    const steps = listSteps({ ...now, whatIf: { flowC: 75 } }).map(([code]) => code);
    expect(steps).not.toContain('flow-up');
  });
});
