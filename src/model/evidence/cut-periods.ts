/** What is left of bills where others tell of the same days. */
import { toCivilDate, toDayNumber } from '../calendar/civil.ts';
import type { EvidencePeriod } from '../shapes/evidence.ts';

interface Cut {
  /** Temperatures are the same on every day of a period [°C]; of energy a part of the days has a part [kWh]. */
  readonly inDegrees: boolean;
  /** Whether the others tell of the same use, so that what they say is taken off; else they put it right. */
  readonly agree: boolean;
}

const lengthOf = ({ from, to }: EvidencePeriod): number => toDayNumber(to) - toDayNumber(from);

/**
 * The parts of a bill that no other covers. Where the others lie within it, what they leave of its energy is that of the
 * other days; else a part has its share by days. It is an estimate unless nothing but one part is left of a difference.
 */
export function cutPeriod(period: EvidencePeriod, others: readonly EvidencePeriod[], cut: Cut): EvidencePeriod[] {
  const meeting = others.filter((one) => one.from < period.to && period.from < one.to);
  if (meeting.length === 0) return [period];
  const [from, to] = [toDayNumber(period.from), toDayNumber(period.to)];
  const covered = new Set<number>();
  for (const one of meeting)
    for (let day = toDayNumber(one.from); day < toDayNumber(one.to); day++)
      if (day >= from && day < to) covered.add(day);
  const runs: [number, number][] = [];
  for (let day = from; day < to; day++) {
    if (covered.has(day)) continue;
    const run = runs.at(-1);
    if (run && run[1] === day) run[1]++;
    else runs.push([day, day + 1]);
  }
  const left = to - from - covered.size;
  // Each day once and none beyond, so that the difference is known.
  const areWithin = meeting.reduce((sum, one) => sum + lengthOf(one), 0) === covered.size;
  const rest = period.kWh - meeting.reduce((sum, { kWh }) => sum + kWh, 0);
  const isDifference = cut.agree && !cut.inDegrees && areWithin && rest >= 0;
  const all = isDifference ? rest : (period.kWh * left) / (to - from);
  return runs.map(([start, end]) => {
    const kWh = cut.inDegrees ? period.kWh : (all * (end - start)) / left;
    const share = !cut.inDegrees && period.kWh > 0 ? kWh / period.kWh : (end - start) / (to - from);
    return {
      ...period,
      from: toCivilDate(start),
      to: toCivilDate(end),
      kWh,
      ...(period.quantity === undefined ? {} : { quantity: period.quantity * share }),
      ...(period.costPence === undefined ? {} : { costPence: period.costPence * share }),
      quality: isDifference && runs.length === 1 ? period.quality : 'estimated',
    };
  });
}
