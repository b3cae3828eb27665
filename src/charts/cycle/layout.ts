/**
 * Where everything stands: ground at the left, house at the right, the refrigerant's round between them. Heat is drawn
 * as bands whose thickness is its amount, so that what the house gets is the ground's band and the meter's, stacked.
 * Where the line is too narrow for words beside the marks, they stand below as a list with the same numbers.
 */
import type { AirSide } from '../../model/cycle/air-side.ts';
import { barText, type CycleStep, psiText, unitsAnHour, wholeDegrees } from '../../words/cycle.ts';
import { say } from '../../words/say.ts';
import { measuresOf, type PictureSize } from '../frame/size.ts';
import { textWidth, wrapText } from '../frame/text.ts';
import type { CycleSeries } from './series.ts';

export interface Point {
  readonly x: number;
  readonly y: number;
}
export interface Label extends Point {
  readonly text: string;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly weight: 'name' | 'figure' | 'quiet';
  /** Belongs to this step, and stands out with it. */
  readonly step: CycleStep;
}
export interface Badge extends Point {
  readonly step: CycleStep;
  readonly number: number;
}
export interface Box extends Point {
  readonly width: number;
  readonly height: number;
}
export interface CycleLayout {
  readonly width: number;
  readonly height: number;
  readonly font: number;
  readonly faint: number;
  /** True where the words stand in a list below. */
  readonly listed: boolean;
  readonly badgeRadius: number;
  readonly loop: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };
  readonly evaporator: Box;
  readonly condenser: Box;
  readonly compressor: Point & { readonly radius: number };
  readonly valve: Point & { readonly half: number };
  readonly ground: Box;
  readonly house: Box;
  /** Brine above and below the band from the ground; water above and below the band to the house. */
  readonly brine: { readonly left: number; readonly right: number; readonly inY: number; readonly outY: number };
  readonly water: { readonly left: number; readonly right: number; readonly flowY: number; readonly returnY: number };
  /** Bands: middle line and thickness. The meter's comes from above. */
  readonly groundBand: Box;
  readonly meterBand: Box;
  readonly houseBand: { readonly ground: Box; readonly meter: Box };
  readonly labels: readonly Label[];
  readonly badges: readonly Badge[];
}

const besideText = ({ fanKW, frostKW }: AirSide) =>
  say('fan and defrost: {amount}', { amount: unitsAnHour(fanKW + frostKW) });

const MOST_BAND = 2.6;
const LEAST_BAND = 2;

type Drawing = Omit<CycleLayout, 'labels' | 'badges' | 'height'>;
type Words = Pick<CycleLayout, 'labels' | 'badges' | 'height'>;

export function layOutCycle(series: CycleSeries, size: PictureSize, place: { width?: number } = {}): CycleLayout {
  const measures = measuresOf(size, place.width);
  const listed = measures.width < 43 * measures.font;
  const unit = listed ? Math.min(measures.font, measures.width / 30) : measures.font;
  const drawing = placeParts(series, { ...measures, listed }, unit);
  return { ...drawing, ...(listed ? listLabels(series, drawing, unit) : labelParts(series, drawing)) };
}

/** Where the parts and the bands of heat stand. `unit` is what they are measured in, in pixels. */
function placeParts(
  series: CycleSeries,
  { width, font, faint, listed }: Pick<Drawing, 'width' | 'font' | 'faint' | 'listed'>,
  unit: number,
): Drawing {
  const middle = 12.4 * unit;
  const [top, bottom] = [7 * unit, 17.8 * unit];
  const [left, right] = [width * 0.345, width * 0.655];
  const exchanger = { width: 2.6 * unit, height: 6.4 * unit };
  const evaporator = { x: left - exchanger.width / 2, y: middle - exchanger.height / 2, ...exchanger };
  const condenser = { x: right - exchanger.width / 2, y: middle - exchanger.height / 2, ...exchanger };
  const compressor = { x: (left + right) / 2, y: top, radius: 1.75 * unit };
  const valve = { x: (left + right) / 2, y: bottom, half: 1.1 * unit };
  const blockWidth = width * 0.15;
  const blockHeight = 9.2 * unit;
  const ground = { x: 1, y: middle - blockHeight / 2, width: blockWidth, height: blockHeight };
  const house = { x: width - 1 - blockWidth, y: middle - blockHeight / 2, width: blockWidth, height: blockHeight };

  const thickness = (share: number) => Math.max(LEAST_BAND, Math.min(1, Math.max(0, share)) * MOST_BAND * unit);
  const groundThick = thickness(series.groundShare);
  const meterThick = thickness(series.meterShare);
  const brine = {
    left: ground.x + ground.width * 0.62,
    right: evaporator.x,
    inY: middle - 2.3 * unit,
    outY: middle + 2.3 * unit,
  };
  const water = {
    left: condenser.x + condenser.width,
    right: house.x + house.width * 0.2,
    flowY: middle - 2.3 * unit,
    returnY: middle + 2.3 * unit,
  };
  const bandLeft = ground.x + ground.width + 4;
  const houseFrom = condenser.x + condenser.width;
  const houseTop = middle - (groundThick + meterThick) / 2;
  const houseWidth = house.x - houseFrom - 4;
  const meterTop = 0.4 * unit;

  return {
    width,
    font,
    faint,
    listed,
    badgeRadius: 0.78 * unit,
    loop: { left, right, top, bottom },
    evaporator,
    condenser,
    compressor,
    valve,
    ground,
    house,
    brine,
    water,
    groundBand: { x: bandLeft, y: middle - groundThick / 2, width: evaporator.x - bandLeft, height: groundThick },
    meterBand: {
      x: compressor.x - meterThick / 2,
      y: meterTop,
      width: meterThick,
      height: compressor.y - compressor.radius - meterTop,
    },
    houseBand: {
      ground: { x: houseFrom, y: houseTop, width: houseWidth, height: groundThick },
      meter: { x: houseFrom, y: houseTop + groundThick, width: houseWidth, height: meterThick },
    },
  };
}

/** Words and badges beside the marks. */
function labelParts(series: CycleSeries, drawing: Drawing): Words {
  const { loop } = series;
  const { font, ground, house, brine, water, evaporator, condenser, compressor, valve } = drawing;
  const { left, right, top, bottom } = drawing.loop;
  const middle = ground.y + ground.height / 2;
  const gap = 0.6 * font;
  const nameY = ground.y - 0.9 * font;
  const badge = (step: CycleStep, x: number, y: number): Badge => ({
    step,
    number: series.places.findIndex((each) => each.step === step) + 1,
    x,
    y: y - 0.33 * font,
  });
  const label = (
    step: CycleStep,
    x: number,
    y: number,
    text: string,
    weight: Label['weight'] = 'figure',
    anchor: Label['anchor'] = 'start',
  ): Label => ({ step, x, y, text, weight, anchor });
  const name = (step: CycleStep) => series.places.find((each) => each.step === step)!.name;
  const past = drawing.badgeRadius * 2 + 0.4 * font;
  const beside = 0.9 * font;
  const evaporatorNameX = left - beside - textWidth(name('evaporator'), font, true);
  const belowEvaporator = evaporator.y + evaporator.height + 1.7 * font;
  const aboveCondenser = condenser.y - 1.1 * font;
  const innerLeft = evaporator.x + evaporator.width + gap;
  const innerRight = condenser.x - gap;
  // Where what the ground gives would reach the evaporator's number, both ends are named a line lower.
  const reachesNumber = ground.x + textWidth(unitsAnHour(loop.groundKW), font) + gap > evaporatorNameX - past;
  const lower = reachesNumber ? 1.25 * font : 0;
  const belowBlock = ground.y + ground.height + 1.4 * font + lower;
  const houseEnd = house.x + house.width;
  const houseX = Math.min(house.x, houseEnd - past - textWidth(name('house'), font, true));
  const valveNameWidth = textWidth(name('valve'), font, true) + past;
  const compressorName = textWidth(name('compressor'), font, true);
  const compressorX = compressor.x - compressor.radius - gap - compressorName - 0.3 * font;
  const valveX = valve.x - valveNameWidth / 2;
  const nearBrine = (brine.right + drawing.groundBand.x) / 2;
  const nearWater = (drawing.houseBand.ground.x + house.x) / 2;
  const meterRight = drawing.meterBand.x + drawing.meterBand.width + gap;
  const meterTop = drawing.meterBand.y;
  const labels: Label[] = [
    label('ground', ground.x + past, nameY, name('ground'), 'name'),
    label('ground', nearBrine, brine.inY - 0.5 * font, wholeDegrees(loop.brineInC), 'figure', 'middle'),
    label('ground', nearBrine, brine.outY + 1.2 * font, wholeDegrees(loop.brineOutC), 'figure', 'middle'),
    label('ground', ground.x, belowBlock, unitsAnHour(loop.groundKW), 'figure'),
    label(
      'ground',
      ground.x,
      belowBlock + 1.25 * font,
      say('from the {source, select, air {air} other {ground}}', { source: series.from }),
      'quiet',
    ),
    ...(series.air ? [label('ground', ground.x, belowBlock + 2.8 * font, besideText(series.air), 'quiet')] : []),
    label('evaporator', evaporatorNameX, belowEvaporator, name('evaporator'), 'name'),
    label('evaporator', innerLeft, middle - 1.1 * font, wholeDegrees(loop.evaporatingC)),
    label('evaporator', innerLeft, middle + 0.35 * font, barText(loop.low.barGauge), 'quiet'),
    label('evaporator', innerLeft, middle + 1.7 * font, psiText(loop.low.psiGauge), 'quiet'),
    label('compressor', compressorX, top - 0.9 * font, name('compressor'), 'name'),
    label('compressor', meterRight, meterTop + 1.2 * font, unitsAnHour(loop.meterKW)),
    label('compressor', meterRight, meterTop + 2.45 * font, say('from the meter'), 'quiet'),
    label('compressor', compressor.x + compressor.radius + gap, top - 0.9 * font, wholeDegrees(loop.dischargeC)),
    label('condenser', right + beside + past, aboveCondenser, name('condenser'), 'name'),
    label('condenser', innerRight, middle - 1.1 * font, wholeDegrees(loop.condensingC), 'figure', 'end'),
    label('condenser', innerRight, middle + 0.35 * font, barText(loop.high.barGauge), 'quiet', 'end'),
    label('condenser', innerRight, middle + 1.7 * font, psiText(loop.high.psiGauge), 'quiet', 'end'),
    label('house', houseX + past, nameY, name('house'), 'name'),
    label('house', nearWater, water.flowY - 0.5 * font, wholeDegrees(loop.flowC), 'figure', 'middle'),
    label('house', nearWater, water.returnY + 1.2 * font, wholeDegrees(loop.returnC), 'figure', 'middle'),
    label('house', houseEnd, belowBlock, unitsAnHour(loop.houseKW), 'figure', 'end'),
    label('house', houseEnd, belowBlock + 1.25 * font, say('to the house'), 'quiet', 'end'),
    label('valve', valveX + past, bottom + 2.7 * font, name('valve'), 'name'),
    label('valve', valve.x + valve.half + gap, bottom - 0.6 * font, wholeDegrees(loop.liquidC)),
    label('valve', valve.x - valve.half - gap, bottom - 0.6 * font, wholeDegrees(loop.afterValveC), 'figure', 'end'),
  ];
  const badges = [
    badge('ground', ground.x + drawing.badgeRadius, nameY),
    badge('evaporator', evaporatorNameX - past + drawing.badgeRadius, belowEvaporator),
    badge('compressor', compressorX - drawing.badgeRadius - 0.4 * font, top - 0.9 * font),
    badge('condenser', right + beside + drawing.badgeRadius, aboveCondenser),
    badge('house', houseX + drawing.badgeRadius, nameY),
    badge('valve', valveX + drawing.badgeRadius, bottom + 2.7 * font),
  ];
  return { height: bottom + 3.6 * font + lower, labels, badges };
}

/** Badges on the drawing, words as a list below it. */
function listLabels(series: CycleSeries, drawing: Drawing, unit: number): Words {
  const { font, faint, width, ground, house, evaporator, condenser, compressor, valve, badgeRadius } = drawing;
  const onDrawing: Readonly<Record<CycleStep, Point>> = {
    ground: { x: ground.x + badgeRadius + 1, y: ground.y - 1.2 * unit },
    evaporator: { x: evaporator.x + evaporator.width / 2, y: evaporator.y + evaporator.height / 2 },
    compressor: { x: compressor.x + compressor.radius + 1.2 * unit, y: compressor.y - 1.3 * unit },
    condenser: { x: condenser.x + condenser.width / 2, y: condenser.y + condenser.height / 2 },
    house: { x: house.x + house.width - badgeRadius - 1, y: house.y - 1.2 * unit },
    valve: { x: valve.x, y: valve.y - 2.1 * unit },
  };
  const labels: Label[] = [];
  const badges: Badge[] = [];
  let y = drawing.loop.bottom + 2.4 * unit;
  for (const { step, number, name, readings } of series.places) {
    badges.push({ step, number, ...onDrawing[step] });
    y += 1.5 * font;
    labels.push({ step, x: 0, y, text: `${number}  ${name}`, weight: 'name', anchor: 'start' });
    const text = readings.map((reading) => `${reading.name} ${reading.text}`).join(' · ');
    for (const line of wrapText(text, faint, width - 1.4 * font, 3)) {
      y += 1.3 * faint;
      labels.push({ step, x: 1.2 * font, y, text: line, weight: 'quiet', anchor: 'start' });
    }
  }
  return { labels, badges, height: y + font };
}
