/** Day and night registers of one meter are one use: they are added before a record is laid through it. */
import { toCivilDate, toDayNumber } from '../calendar/civil.ts';
import type { EvidencePeriod, Series } from './evidence.ts';
import { registersOfSomeHours, seriesByMeter } from './register-hours.ts';

/**
 * The series, with the registers of one import that count different hours of one meter put together [kWh].
 * A register that counts all hours stands for itself, and those of some hours beside it are left out of the sum.
 * A day or a period counts only where every register has it.
 */
export function sumRegisters(series: readonly Series[]): Series[] {
  return seriesByMeter(series).flatMap((ofMeter) => {
    const some = registersOfSomeHours(ofMeter);
    if (some.length === 0) return ofMeter;
    return some.length < ofMeter.length ? ofMeter.filter((one) => !some.includes(one)) : [addUp(some)];
  });
}

function addUp(registers: readonly Series[]): Series {
  const from = registers.map((one) => one.from).sort()[0]!;
  const to = registers
    .map((one) => one.to)
    .sort()
    .at(-1)!;
  const { dayShape: _, dayPeaks: __, filled: ___, ...one } = registers[0]!;
  const whole = {
    ...one,
    name: registers.map(({ name }) => name).join(' and '),
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
