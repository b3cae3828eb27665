import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { type Label, layOutCycle } from '../../../src/charts/cycle/layout.ts';
import { CyclePicture } from '../../../src/charts/cycle/picture.tsx';
import { cycleName, cycleSentence } from '../../../src/charts/cycle/sentence.ts';
import { cycleSeries } from '../../../src/charts/cycle/series.ts';
import { cycleTable } from '../../../src/charts/cycle/table.ts';
import type { PictureSize } from '../../../src/charts/frame/size.ts';
import { textWidth } from '../../../src/charts/frame/text.ts';
import { reckonAirSide } from '../../../src/model/cycle/air-side.ts';
import { type HeatFrom, type LoopInput, reckonLoop } from '../../../src/model/cycle/household-loop.ts';
import { refrigerants } from '../../../src/reference/refrigerants.ts';
import { CYCLE_STEPS } from '../../../src/words/cycle.ts';
import { german } from '../../../src/words/german/german.ts';
import { speak } from '../../../src/words/say.ts';
import { readingEase, sentencesOf, wordsOf } from '../words/reading-ease.ts';

function seriesOf(change: Partial<LoopInput> = {}, from: HeatFrom = 'ground') {
  const result = reckonLoop({
    refrigerant: refrigerants.R407C,
    brineInC: 5,
    brineOutC: 0,
    flowC: 38,
    returnC: 33,
    heatKW: 8,
    compression: { kind: 'efficiency', isentropic: 0.7 },
    ...change,
  });
  if (!result.ok) throw new Error(JSON.stringify(result.fault));
  const beside = from === 'air' ? reckonAirSide(result.loop.houseKW, result.loop.meterKW, 2) : null;
  return cycleSeries(result.loop, 'floor', from, beside);
}
const series = seriesOf();
const BIG = [
  { refrigerant: refrigerants.R32, heatKW: 23.4, brineInC: -1, brineOutC: -5, flowC: 55, returnC: 47 },
] as const;
const AIR = [{ refrigerant: refrigerants.R290, brineInC: -13, brineOutC: -18, flowC: 55, returnC: 47 }, 'air'] as const;
const big = seriesOf(...BIG);
const air = seriesOf(...AIR);

describe('layout', () => {
  test.each([
    ['desk', 900, 'en-GB'],
    ['desk', 700, 'en-GB'],
    ['table', 1080, 'en-GB'],
    ['table', 956, 'de-DE'],
    ['paper', 650, 'de-DE'],
    ['desk', 380, 'en-GB'],
    ['desk', 300, 'de-DE'],
  ] as const)(
    '%s at %d, %s: no words over other words or numbers, none outside',
    (size: PictureSize, width, language) => {
      speak({ language, currency: 'GBP' }, language === 'de-DE' ? german : undefined);
      for (const each of [seriesOf(), seriesOf(...BIG), seriesOf(...AIR)]) {
        const layout = layOutCycle(each, size, { width });
        const boxOf = (label: Label) => {
          const height = label.weight === 'quiet' ? layout.faint : layout.font;
          const long = textWidth(label.text, height, label.weight === 'name');
          const x = label.anchor === 'start' ? label.x : label.anchor === 'end' ? label.x - long : label.x - long / 2;
          return { text: label.text, x, right: x + long, y: label.y - 0.72 * height, bottom: label.y };
        };
        const round = layout.badges.map(({ x, y, number }) => {
          const r = layout.badgeRadius;
          return { text: `(${number})`, x: x - r, right: x + r, y: y - r, bottom: y + r };
        });
        // In a list the numbers stand on the drawing, by themselves.
        const boxes = [...layout.labels.map(boxOf), ...(layout.listed ? [] : round)];
        for (const [index, a] of boxes.entries()) {
          expect(a.x, a.text).toBeGreaterThanOrEqual(-1);
          expect(a.right, a.text).toBeLessThanOrEqual(layout.width + 1);
          expect(a.bottom, a.text).toBeLessThan(layout.height);
          for (const b of boxes.slice(index + 1)) {
            const over = a.x < b.right && b.x < a.right && a.y < b.bottom && b.y < a.bottom;
            expect(over, `“${a.text}” over “${b.text}” at ${size} ${width}`).toBe(false);
          }
        }
        expect(layout.badges.map((badge) => badge.number).toSorted()).toEqual([1, 2, 3, 4, 5, 6]);
      }
    },
  );
  test('bands are as thick as their share: ground and meter make the house', () => {
    const { groundBand, meterBand, houseBand } = layOutCycle(series, 'desk');
    expect(houseBand.ground.height).toBeCloseTo(groundBand.height, 9);
    expect(houseBand.meter.height).toBeCloseTo(meterBand.width, 9);
    expect(groundBand.height / meterBand.width).toBeCloseTo(series.loop.groundKW / series.loop.meterKW, 6);
    expect(houseBand.meter.y).toBeCloseTo(houseBand.ground.y + houseBand.ground.height, 9);
  });
});

describe('picture', () => {
  test.each([null, ...CYCLE_STEPS])('lit: %s', (lit) => {
    const html = renderToStaticMarkup(<CyclePicture series={series} size="desk" lit={lit} width={900} />);
    expect(html).toContain(`data-lit="${lit ?? 'none'}"`);
    expect(html).not.toMatch(/NaN|undefined|Infinity/);
    expect((html.match(/stroke-width="3.5"/g) ?? []).length).toBe(lit === null ? 0 : 1);
    expect(html).toContain('var(--meter-tint)');
    expect(html).toContain('var(--ground-tint)');
  });
  test('an air machine: a fan and air, no ground anywhere', () => {
    const html = renderToStaticMarkup(<CyclePicture series={air} size="desk" lit={null} width={900} />);
    const words = [html, JSON.stringify(cycleTable(air)), ...air.places.map(({ sentence }) => sentence)].join(' ');
    expect(html).toContain('>Outdoor air<');
    expect(html).toContain('>from the air<');
    expect(html).toContain('<circle');
    expect(words).toContain('frost');
    expect(cycleSentence(air, null)).toMatch(/Fan and defrost take [\d.]+ more\.$/);
    expect(JSON.stringify(cycleTable(air))).toMatch(/"Fan","0\.\d kWh an hour"/);
    expect(words).not.toMatch(/the ground|The ground|frost protection/);
  });
  test('moves only when asked to, and its style only where motion is welcome', async () => {
    const { readFileSync } = await import('node:fs');
    const still = renderToStaticMarkup(<CyclePicture series={series} size="desk" lit={null} width={900} />);
    const moving = renderToStaticMarkup(<CyclePicture series={series} size="desk" lit={null} width={900} moving />);
    expect(still).not.toContain('cycle-moving');
    expect(moving).toContain('cycle-moving');
    const style = readFileSync(new URL('../../../src/charts/cycle/cycle.css', import.meta.url), 'utf8');
    const outside = style.replace(/@media \(prefers-reduced-motion: no-preference\) \{[\s\S]*?\n\}/, '');
    expect(style).toContain('animation: cycle-round');
    expect(outside).not.toContain('animation: cycle-round');
  });
});

test('a sentence a step, short and plain; the whole round when none is lit', () => {
  const texts = [null, ...CYCLE_STEPS].flatMap((lit) => [series, big, air].map((each) => cycleSentence(each, lit)));
  for (const text of texts) {
    expect(wordsOf(text).length, text).toBeLessThanOrEqual(25);
    for (const sentence of sentencesOf(text)) expect(wordsOf(sentence).length).toBeLessThanOrEqual(20);
    expect(text).not.toMatch(/NaN|undefined|not known|refrigerant|superheat|enthalpy/);
  }
  const { ease, grade } = readingEase(texts.join(' '));
  expect(ease >= 70 || grade <= 6, `ease ${ease}, grade ${grade}`).toBe(true);
  expect(cycleName().split(' ').length).toBeLessThanOrEqual(10);
});

test('the table has the same numbers as the picture', () => {
  const cells = cycleTable(series).rows.map((row) => row.cells.join(' | '));
  const html = renderToStaticMarkup(<CyclePicture series={series} size="desk" lit={null} width={900} />);
  for (const place of series.places)
    for (const reading of place.readings)
      expect(cells).toContain(`${place.number} ${place.name} | ${reading.name} | ${reading.text}`);
  for (const text of ['5 °C', '0 °C', '38 °C', '33 °C', '8 kWh an hour', '50 psi']) {
    expect(html).toContain(`>${text}<`);
    expect(cells.some((cell) => cell.includes(text))).toBe(true);
  }
});
