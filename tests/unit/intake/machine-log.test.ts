import { describe, expect, test } from 'vitest';
import type { IntakeContext } from '../../../src/intake/intake.ts';
import { readFile } from '../../../src/intake/read-file.ts';
import type { Evidence, Series } from '../../../src/model/shapes/evidence.ts';
import { kWhPerUnit } from '../../../src/reference/fuels.ts';
import { loggedFlowSentence } from '../../../src/words/logged-flow.ts';

const context: IntakeContext = {
  zone: 'Europe/London',
  today: '2026-11-25',
  kWhPerUnit,
  gasVolume: { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 },
};

const rows = (hours: number, row: (hour: number) => string) =>
  Array.from({ length: hours }, (_, hour) => `2025-01-14 ${String(hour).padStart(2, '0')}:00,${row(hour)}`).join('\n');
const seriesOf = (text: string): Series[] =>
  readFile('heat pump.csv', new TextEncoder().encode(text), {}, context).preview.series;
const carriers = (text: string) => seriesOf(text).map(({ carrier, role }) => `${carrier} ${role}`);

describe('temperatures of a machine', () => {
  test.each([
    ['Flow °C', 'flow-temperature machine'],
    ['LWT', 'flow-temperature machine'],
    ['Return temp', 'return-temperature machine'],
    ['Brine in °C', 'source-temperature machine'],
    ['Ground source temperature (°C)', 'source-temperature machine'],
    ['Outdoor °C', 'outdoor-temperature weather'],
    ['Flow set point °C', null],
    ['Hot water tank °C', null],
    ['Room °C', null],
    ['Flow l/min', null],
  ])('%s is %s', (heading, expected) => {
    const found = carriers(
      `Time,Electricity in (kWh),Heat out (kWh),${heading}\n${rows(24, (h) => `1,3,${30 + h / 10}`)}`,
    );
    expect(found).toEqual(['electricity heat-pump', 'heat heat-output', ...(expected ? [expected] : [])]);
  });

  test.each(['Compressor Energy (kWh),Heating Output (kWh)', 'Verdichter kWh,Wärmemenge kWh'])(
    '%s: what a compressor takes, the heat is made with',
    (headings) => {
      expect(carriers(`Time,${headings}\n${rows(24, () => '1,3')}`)).toEqual([
        'electricity heat-pump',
        'heat heat-output',
      ]);
    },
  );

  // Six hours of 3 kWh at 45 °C, eighteen of standing still at 20 °C.
  const log = `Time,Electricity in (kWh),Heat out (kWh),Flow °C\n${rows(24, (h) => (h < 6 ? '1,3,45' : '0.05,0.1,20'))}`;

  test('the mean of the hours in which it ran, beside that of them all', () => {
    const flow = seriesOf(log).find(({ carrier }) => carrier === 'flow-temperature');
    expect(flow?.total).toBeCloseTo((6 * 45 + 18 * 20) / 24, 9);
    expect(flow?.whileRunning).toEqual({ meanC: 45, readings: 6 });
  });

  test('hot water of 65 °C is kept, 120 °C is not', () => {
    const text = log.replace('1,3,45', '1,3,65').replace('1,3,45', '1,3,120');
    const flow = seriesOf(text).find(({ carrier }) => carrier === 'flow-temperature');
    expect(flow?.whileRunning).toEqual({ meanC: (65 + 4 * 45) / 5, readings: 5 });
  });

  test('said beside what is typed', () => {
    expect(loggedFlowSentence([{ series: seriesOf(log) } as unknown as Evidence])).toBe(
      'The log shows 45 °C on average while the heat pump was heating, hot water included, in 6 readings. The coldest day usually needs more.',
    );
    expect(loggedFlowSentence([])).toBeNull();
  });
});
