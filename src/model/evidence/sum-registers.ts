/** Day and night registers of one meter are one use: they are added before a record is laid through it. */
import { toCivilDate, toDayNumber } from '../calendar/civil.ts';
import { type EvidencePeriod, type Series, withoutHours } from '../shapes/evidence.ts';
import { registersOfSomeHours, seriesByMeter } from './register-hours.ts';

/**
 * The series, with the registers of one import that count different hours of one meter put together [kWh].
 * Beside a register that holds their sum they are left out; any other one is another meter and stands for itself.
 * A day or a period counts only where every register has it.
 */
export function sumRegisters(series: readonly Series[]): Series[] {
  return seriesByMeter(series).flatMap((ofMeter) => {
    const { added, kept } = splitMeter(ofMeter);
    return added.length > 0 ? [addUp(added), ...kept] : kept;
  });
}

/** Of the series of one import, the registers to be added, none where another holds their sum, and those kept as they are. */
export function splitMeter(ofMeter: readonly Series[]): {
  readonly added: readonly Series[];
  readonly kept: readonly Series[];
} {
  const some = registersOfSomeHours(ofMeter);
  const kept = ofMeter.filter((one) => !some.includes(one));
  if (some.length === 0) return { added: [], kept };
  const sum = addUp(some);
  return { added: kept.some((one) => holdsAll(one, sum)) ? [] : some, kept };
}

/** By how much a total may part from the sum of its registers: rounding, a day read at another hour. A judgement. */
const APART = 0.05;

/** Whether a register comes to the same as the sum of others on what both have; with nothing in common it may. */
function holdsAll(whole: Series, sum: Series): boolean {
  const [own, parts] = sharedKWh(whole, sum);
  return Math.abs(own - parts) <= APART * parts;
}

function sharedKWh(whole: Series, sum: Series): [number, number] {
  const pairs = sum.days
    ? sum.days.values.map((kWh, i) => [
        whole.days?.values[toDayNumber(sum.days!.first) + i - toDayNumber(whole.days.first)] ?? null,
        kWh,
      ])
    : (sum.periods ?? []).map(({ from, to, kWh }) => [
        whole.periods?.find((one) => one.from === from && one.to === to)?.kWh ?? null,
        kWh,
      ]);
  return pairs.reduce<[number, number]>(
    ([own, parts], [one, other]) => (one == null || other == null ? [own, parts] : [own + one, parts + other]),
    [0, 0],
  );
}

function addUp(registers: readonly Series[]): Series {
  const from = registers.map((one) => one.from).sort()[0]!;
  const to = registers
    .map((one) => one.to)
    .sort()
    .at(-1)!;
  const { filled: _, ...one } = withoutHours(registers[0]!);
  const whole = {
    ...one,
    name: registers.map(({ name }) => name).join(' + '),
    from,
    to,
    total: registers.reduce((sum, { total }) => sum + total, 0),
    estimatedCount: Math.max(...registers.map(({ estimatedCount }) => estimatedCount)),
  };
  return registers[0]!.days ? { ...whole, days: addDays(registers) } : { ...whole, periods: addPeriods(registers) };
}

function addDays(registers: readonly Series[]): NonNullable<Series['days']> {
  const all = registers.map(({ days }) => days!);
  const first = Math.max(...all.map((days) => toDayNumber(days.first)));
  const end = Math.min(...all.map((days) => toDayNumber(days.first) + days.values.length));
  const values = Array.from({ length: Math.max(0, end - first) }, (_, i) => {
    const ofDay = all.map((days) => days.values[first + i - toDayNumber(days.first)] ?? null);
    return ofDay.includes(null) ? null : ofDay.reduce<number>((sum, kWh) => sum + kWh!, 0);
  });
  return { first: toCivilDate(first), values };
}

function addPeriods(registers: readonly Series[]): EvidencePeriod[] {
  const [first, ...others] = registers.map(({ periods }) => periods ?? []);
  return first!.flatMap((period) => {
    const same = others.map((of) => of.find(({ from, to }) => from === period.from && to === period.to));
    if (same.includes(undefined)) return [];
    const all = [period, ...same.map((one) => one!)];
    const quality = all.some((one) => one.quality === 'estimated') ? 'estimated' : period.quality;
    const { from, to, row } = period;
    const kWh = all.reduce((sum, one) => sum + one.kWh, 0);
    return [{ from, to, kWh, quality, ...(row === undefined ? {} : { row }) }];
  });
}
