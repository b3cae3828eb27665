/** What a machine's water was while it made heat: standing still it cools, which would hide how it is run. */
import type { Series } from '../../model/shapes/evidence.ts';
import type { IntervalDays } from '../terms/preview.ts';

/** Below this share of its most a reading of heat is a start, an end or a rest. Common practice, no source. */
const RUNS_FROM = 0.1;

interface Logged {
  readonly series: Series;
  readonly intervals: IntervalDays;
}

/** Gives each temperature of the machine its mean over the readings in which the machine made heat. */
export function withRunningMeans(logged: readonly Logged[]): Series[] {
  const heat = logged.filter(({ series }) => series.carrier === 'heat');
  if (heat.length === 0) return logged.map(({ series }) => series);
  const heatOfDay = new Map<string, Float64Array>();
  for (const { intervals } of heat)
    for (const { date, values } of intervals.days) {
      const known = heatOfDay.get(date);
      heatOfDay.set(date, known ? known.map((kWh, slot) => kWh + values[slot]!) : values);
    }
  let most = 0;
  for (const values of heatOfDay.values()) for (const kWh of values) if (kWh > most) most = kWh;
  return logged.map(({ series, intervals }) => {
    if (series.role !== 'machine') return series;
    let sum = 0;
    let readings = 0;
    for (const { date, values } of intervals.days) {
      const made = heatOfDay.get(date);
      for (let slot = 0; made && slot < values.length; slot++) {
        if (Number.isNaN(values[slot]!) || !(made[slot]! > most * RUNS_FROM)) continue;
        sum += values[slot]!;
        readings++;
      }
    }
    return readings === 0 ? series : { ...series, whileRunning: { meanC: sum / readings, readings } };
  });
}
