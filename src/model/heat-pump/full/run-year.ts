/** The machine's year by the half-hour. */
import { CYLINDER_WINDOWS, STEADY_HEATING } from '../../year/day-profiles.ts';
import { CIRCULATING_PER_FULL_HOUR } from '../extras.ts';
import { balanceYear, fanInCop } from './balance.ts';
import { flowTable, readFlow } from './heating-curve.ts';
import { partLoadShare } from './part-load.ts';
import { runDays } from './run-days.ts';
import { readSurface } from './surface.ts';
import type { BySlot, FullYear, OutdoorHours, YearInput } from './year.ts';

const SUNDAY = 6;
const HOURS = 0.5;

/**
 * Electricity [kWh] of every use in every half-hour, with heat, source heat and factors by month and year.
 * For each half-hour: source and flow temperature, electricity a unit of heat = 1 / (fraction × Carnot COP), part load
 * by EN 14825 below the least output, resistance where output falls short; hot water at its own flow and full load in
 * its hours; source pump by full-load hours. Valid for −30 to 40 °C source and 15 to 80 °C flow.
 */
export function runYear(input: YearInput): FullYear {
  const { slots, perHeat, outputKW, leastShare, degradation, waterHours } = input;
  const flow = flowTable(input.curve);
  const days = runDays(input, flow);
  const lines = (): Float64Array => new Float64Array(slots.count);
  const bySlot: BySlot = {
    space: lines(),
    water: lines(),
    'source-pump': lines(),
    backup: lines(),
    pasteurisation: lines(),
    circulator: lines(),
    standby: lines().fill((input.standbyW / 1000) * HOURS),
  };
  const { space, water, backup, circulator } = bySlot;
  const sourcePump = bySlot['source-pump'];
  const heatOfMonth = { space: new Float64Array(12), water: new Float64Array(12) };
  const air = input.source.kind === 'air';
  const pumpKWh = (input.sourcePumpW / 1000) * HOURS;
  const circulatorKWh = (input.circulatorW / 1000) * HOURS;
  const heatBySlot = { space: new Float64Array(slots.count), water: new Float64Array(slots.count) };
  const seen = { heat: 0, flow: 0, source: 0, whole: 0, used: 0 };

  for (let day = 0; day < days.sourceC.length; day++) {
    const start = slots.dayStart[day]!;
    const end = slots.dayStart[day + 1]!;
    const spaceDay = days.spaceKWh[day]!;
    const waterDay = input.waterByDayKWh[day]!;
    if (spaceDay === 0 && waterDay === 0) continue;
    const share = days.backupShare[day]!;
    const month = slots.month[start]!;
    heatOfMonth.space[month]! += spaceDay * (1 - share);
    heatOfMonth.water[month]! += waterDay * (1 - share);
    let spaceWeight = 0;
    let waterWeight = 0;
    for (let slot = start; slot < end; slot++) {
      spaceWeight += STEADY_HEATING[(slots.minute[slot]! / 30) | 0]!;
      waterWeight += waterHours[(slots.minute[slot]! / 30) | 0]!;
    }
    const spacePerWeight = spaceDay / spaceWeight;
    // Days that miss its hours, as in a made-up calendar, heat their water evenly.
    const waterPerWeight = waterWeight > 0 ? waterDay / waterWeight : 0;
    const waterEven = waterWeight > 0 ? 0 : waterDay / (end - start);
    for (let slot = start; slot < end; slot++) {
      const half = (slots.minute[slot]! / 30) | 0;
      const sourceC = air ? input.outdoorC[slot]! : days.sourceC[day]!;
      const asked = spacePerWeight * STEADY_HEATING[half]!;
      const drawn = waterPerWeight * waterHours[half]! + waterEven;
      backup[slot] = (asked + drawn) * share;
      let fullLoad = 0;
      if (asked > 0) {
        const heat = asked * (1 - share);
        const flowC = readFlow(flow, input.outdoorC[slot]!);
        const most = readSurface(outputKW, sourceC, flowC) * HOURS;
        const loadRatio = asked / most;
        const running = heat / (most * leastShare);
        const left = partLoadShare(running, degradation);
        const whole = heat * readSurface(perHeat, sourceC, flowC);
        const used = left > 0 ? Math.min(heat, whole / left) : 0;
        space[slot] = used;
        heatBySlot.space[slot] = heat;
        fullLoad = heat / most;
        circulator[slot] = circulatorKWh * Math.min(1, CIRCULATING_PER_FULL_HOUR * loadRatio);
        seen.heat += heat;
        seen.flow += heat * flowC;
        seen.source += heat * sourceC;
        seen.whole += whole;
        seen.used += used;
      }
      if (drawn > 0) {
        const heat = drawn * (1 - share);
        heatBySlot.water[slot] = heat;
        water[slot] = heat * readSurface(perHeat, sourceC, input.waterFlowC);
        fullLoad += heat / (readSurface(outputKW, sourceC, input.waterFlowC) * HOURS);
      }
      sourcePump[slot] = pumpKWh * fullLoad;
    }
  }
  pasteurise(bySlot.pasteurisation, input);
  const balances = balanceYear(bySlot, heatOfMonth, slots, fanInCop(input.source.kind));
  const { year } = balances;
  const electricityKWh = Object.values(year.electricityKWh).reduce((sum, kWh) => sum + kWh, 0);
  const heatKWh = year.spaceHeatKWh + year.waterHeatKWh + year.electricityKWh.backup;
  return {
    bySlot,
    byOutdoor: gatherByOutdoor(input.outdoorC, heatBySlot, bySlot),
    ...balances,
    electricityKWh,
    means: {
      flowC: seen.heat > 0 ? seen.flow / seen.heat : input.curve.designFlowC,
      sourceC: seen.heat > 0 ? seen.source / seen.heat : days.sourceC[0]!,
      partLoad: seen.used > 0 ? seen.whole / seen.used : 1,
    },
    coldestSourceC: days.sourceC.reduce((least, c) => Math.min(least, c)),
    backupShare: heatKWh > 0 ? year.electricityKWh.backup / heatKWh : 0,
    sourceByDayC: days.sourceC,
  };
}

function gatherByOutdoor(
  outdoorC: Float64Array,
  heat: { readonly space: Float64Array; readonly water: Float64Array },
  { space, water, backup }: BySlot,
): OutdoorHours[] {
  const bins = new Map<number, { -readonly [key in keyof OutdoorHours]: OutdoorHours[key] }>();
  for (let slot = 0; slot < space.length; slot++) {
    const at = Math.round(outdoorC[slot]!);
    let bin = bins.get(at);
    if (!bin) {
      bin = { outdoorC: at, hours: 0, spaceHeatKWh: 0, spaceKWh: 0, waterHeatKWh: 0, waterKWh: 0, backupKWh: 0 };
      bins.set(at, bin);
    }
    bin.hours += HOURS;
    bin.spaceHeatKWh += heat.space[slot]!;
    bin.spaceKWh += space[slot]!;
    bin.waterHeatKWh += heat.water[slot]!;
    bin.waterKWh += water[slot]!;
    bin.backupKWh += backup[slot]!;
  }
  return [...bins.values()].sort((a, b) => a.outdoorC - b.outdoorC);
}

/** The weekly heating of the cylinder by immersion, in the windows of the Sundays; evenly where there are none. */
function pasteurise(line: Float64Array, { slots, pasteurisationKWh }: YearInput): void {
  if (!(pasteurisationKWh > 0)) return;
  let weights = 0;
  for (let slot = 0; slot < slots.count; slot++) {
    if (slots.weekday[slot] !== SUNDAY) continue;
    line[slot] = CYLINDER_WINDOWS[(slots.minute[slot]! / 30) | 0]!;
    weights += line[slot]!;
  }
  if (weights === 0) {
    line.fill(pasteurisationKWh / slots.count);
    return;
  }
  for (let slot = 0; slot < slots.count; slot++) line[slot]! *= pasteurisationKWh / weights;
}
