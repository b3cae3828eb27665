import { expect, test } from 'vitest';
import { OPEN_CAUSES } from '../../../src/model/shapes/finding.ts';
import { notSeenWords } from '../../../src/words/findings-worth.ts';

const words = (...names: string[]) => notSeenWords({ code: 'not-ruled-out', names });
test('causes that are left open stand by what would tell them, three groups at once and each cause once', () => {
  const open = [
    'machine-works-less',
    'more-heat',
    'rooms-warmer',
    'more-water',
    'heater',
    'meter-wrong',
    'night-setback',
  ];
  const { shown, more } = words(...open, 'home-empty', 'summer-heating', 'base-load', 'dear-hours');
  expect(shown).toEqual([
    'A heat pump that works less well, more heat asked for, warmer rooms and more hot water. Read for a week the heat that the heat pump has made, and the kWh that it took.',
    'An electric heater. Read the heater’s hours on the control.',
    'Something that runs day and night. Read the heat pump for a week on a meter of its own.',
  ]);
  expect(more).toHaveLength(4);
});
test('where a heat meter has settled one side, another thing tells', () => {
  expect(words('machine-works-less').shown).toEqual([
    'A heat pump that works less well. See how hot the water to the radiators is, against what was planned.',
  ]);
  expect(words('rooms-warmer', 'more-heat').shown).toEqual([
    'More heat asked for and warmer rooms. Measure the warmth of the rooms for a week, and ask about hot water.',
  ]);
});
test('no cause that may be left open is lost', () => {
  const told = OPEN_CAUSES.filter((cause) => words(cause).shown.length === 1);
  // Eight always, two in warm days, one in cold ones, three beside heating, and the hours.
  expect(told).toHaveLength(15);
});
