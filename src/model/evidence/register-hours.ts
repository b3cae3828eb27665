/** Which hours a register of a meter counts, by its name: the one list for all who add registers or hold them apart. */
import { isTemperature } from '../shapes/carrier.ts';
import type { Series } from '../shapes/evidence.ts';

/** All hours of the day; the dear or the cheap ones; some, where the name does not say which. */
export type RegisterHours = 'all' | 'dear' | 'cheap' | 'some';

/** Words in the names of registers, the first that fits counts. Common practice, no source. */
const HOURS: readonly (readonly [RegExp, RegisterHours])[] = [
  [/\b(evening|weekend|weekday)\b/i, 'some'],
  [/\b(night|off[- ]?peak|low|cheap|nt)\b/i, 'cheap'],
  [/\b(day|peak|high|normal|standard|dear|ht)\b/i, 'dear'],
  [/\b(rate ?\d|register ?\d|tariff ?\d|[rt]0?\d)\b/i, 'some'],
];

export const registerHours = (name: string): RegisterHours => HOURS.find(([words]) => words.test(name))?.[1] ?? 'all';

/** The registers of some hours that make up one meter; fewer than two are no parts of anything. */
export function registersOfSomeHours(ofMeter: readonly Series[]): Series[] {
  const some = ofMeter.filter(({ carrier, name }) => !isTemperature(carrier) && registerHours(name) !== 'all');
  return some.length < 2 ? [] : some;
}

/** Series by the meter they belong to: one import, one carrier, one role, readings and bills apart. */
export function seriesByMeter(series: readonly Series[]): Series[][] {
  const meters = Map.groupBy(series, ({ evidenceId, carrier, role, days }) =>
    [evidenceId, carrier, role, days ? 'days' : 'periods'].join('|'),
  );
  return [...meters.values()];
}
