import { expect, test } from 'vitest';
import { layOutBestDay } from '../../../src/charts/best-day/layout.ts';
import { bestDaySentence } from '../../../src/charts/best-day/sentence.ts';

const halves = (at: (half: number) => number) => Array.from({ length: 48 }, (_, half) => at(half));
const day = {
  name: 'Peak',
  pencePerKWh: halves((half) => (half >= 32 && half < 38 ? 41.5 : 24)),
  usualKW: halves(() => 3),
  bestKW: halves((half) => (half >= 32 && half < 38 ? 1.5 : 3.2)),
  roomC: halves((half) => 20 - (half >= 32 ? 0.4 : 0)),
};

test('with a peak the sentence says when a kWh costs most, and the strips their ranges', () => {
  expect(bestDaySentence(day)).toBe(
    'On a cold day on “Peak”, a kWh costs most from 16:00. The heat pump then gives 1.5 kW of heat, at its usual hours 3.0 kW. The rooms stay between 19.6 and 20.0 °C.',
  );
  const rests = { ...day, bestKW: halves(() => 0) };
  expect(bestDaySentence(rests)).toContain('The heat pump then rests; at its usual hours it gives 3.0 kW of heat.');
  const { price, rooms } = layOutBestDay(day, 'desk');
  expect([price.name, rooms.name]).toEqual(['price on a cold day, 24.0 p to 41.5 p', 'rooms, 19.6 to 20.0 °C']);
});

test('one price all day has no dearest hour, and what stays the same is no range', () => {
  const flat = { ...day, pencePerKWh: halves(() => 26.3), roomC: halves(() => 20.01) };
  expect(bestDaySentence(flat)).toBe(
    'On a cold day on “Peak”, a kWh costs the same at every hour. The rooms stay at 20.0 °C.',
  );
  const { price, rooms } = layOutBestDay(flat, 'desk');
  expect([price.name, rooms.name]).toEqual(['price on a cold day, 26.3 p', 'rooms, 20.0 °C']);
});
