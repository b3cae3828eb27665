import { beforeEach, describe, expect, test } from 'vitest';
import { layOutBridge } from '../../../src/charts/bridge/layout.ts';
import { bridgeSeries } from '../../../src/charts/bridge/series.ts';
import { layOutDriver } from '../../../src/charts/drivers/layout.ts';
import { textWidth, wrapText } from '../../../src/charts/frame/text.ts';
import { layOutUnits } from '../../../src/charts/units/layout.ts';
import { german } from '../../../src/words/german/german.ts';
import { speak } from '../../../src/words/say.ts';

beforeEach(() => speak({ language: 'de-DE', currency: 'EUR' }, german));

describe('longer words find their room', () => {
  test.each([
    [1180, 470],
    [850, 400],
    [850, 300],
    [700, 330],
  ])('tiles on a page of %i by %i', (width, height) => {
    const input = { meterKWh: 4310, heatKWh: 14_200, meterPence: 113_000, source: 'ground' } as const;
    const laid = layOutUnits(input, 'table', { width, height });
    expect(laid.width).toBeLessThanOrEqual(width);
    expect(laid.height).toBeLessThanOrEqual(height);
  });

  test('the word before the factors of a driver', () => {
    const point = (at: number) => ({ at, costPence: 500, factor: 3 });
    const { left, faint } = layOutDriver(
      { name: 'flow', now: 45, points: [35, 45, 55].map(point), effects: [] } as never,
      'desk',
      { width: 350 },
    );
    expect(left - 8).toBeGreaterThanOrEqual(textWidth('JAZ', faint));
  });

  test.each([
    'days',
    'price',
    'weather',
    'when',
    'standing-charge',
    'heat-used',
    'hot-water',
    'efficiency',
    'backup',
    'other-electricity',
    'rooms',
    'steady',
    'metering',
    'rest',
  ])('%s under its step of the bridge', (cause) => {
    const part = (pence: number) => ({ cause, pence, grade: 'estimated' }) as never;
    for (const size of ['desk', 'paper'] as const) {
      const series = bridgeSeries({
        estimatedPence: 50_000,
        actualPence: 50_000,
        parts: [part(4000), part(-4000), part(2000), part(-2000), part(1000), part(-1000)],
        expected: { low: 45_000, high: 55_000 } as never,
      });
      const { marks } = layOutBridge(series, size, { width: size === 'desk' ? 760 : 650 });
      expect(marks.flatMap(({ nameLines }) => nameLines).join(' ')).not.toContain('…');
    }
  });

  test('a figure stays on the line of its unit', () => {
    expect(wrapText('Heizkörper, 45\u00a0°C', 16, 105)).toEqual(['Heizkörper,', '45\u00a0°C']);
  });
});
