/** Which prices a comparison rests on, from when, and whether they are old. */
import { addDays, daysBetween } from '../calendar/civil.ts';
import type { PriceBasis, PriceKind } from '../shapes/appraisal.ts';
import type { CivilDate } from '../shapes/dates.ts';
import type { DeliveredPrice } from '../shapes/reference.ts';
import type { PricedTariff } from '../shapes/tariff.ts';
import { tell } from '../shapes/told.ts';
import { versionOn } from './slot-price.ts';

/**
 * Days from which on a price is old. One with a known end is old the day after it, since the next ones have begun. A
 * month's mean is old after a quarter, within which oil went from 70 to 111 pence in 2022. A tariff typed without an end
 * is taken to run a year, the usual length of a fixed price (common practice, no source).
 */
export const OLD_AFTER_DAYS = { knownEnd: 0, meanOfMonth: 92, openEnd: 365 } as const;

/**
 * The version of a tariff that holds on `asOf`, as the basis of a comparison.
 * `staleDays` counts from the end, by `OLD_AFTER_DAYS`.
 */
export function priceBasis(tariff: PricedTariff, asOf: CivilDate, kind: PriceKind): PriceBasis {
  const version = versionOn(tariff, asOf);
  const next = tariff.versions
    .map(({ from }) => from)
    .filter((from) => from > version.from)
    .sort()[0];
  const to = next ? addDays(next, -1) : tariff.until;
  const end = to ?? addDays(version.from, OLD_AFTER_DAYS.openEnd);
  return {
    name: tariff.name,
    from: version.from,
    ...(to === undefined ? {} : { to }),
    grade: tariff.grade,
    origin: tariff.origin,
    kind,
    ...(end < asOf ? { staleDays: daysBetween(end, asOf) } : {}),
  };
}

/** A built-in price of a delivered fuel as the basis of a comparison: a month's mean is stale once it is older than a quarter. */
export function deliveredPriceBasis(price: DeliveredPrice, asOf: CivilDate): PriceBasis {
  const age = daysBetween(price.to, asOf);
  const { from, to } = price;
  return {
    name: tell(price.kind === 'assumed' ? 'assumed-price-of' : 'published-price-of', {
      carrier: tell(`carrier-${price.fuel}`),
      months: { from, to },
    }),
    from,
    to,
    grade: 'assumed',
    origin: price.source,
    kind: price.kind,
    ...(age > OLD_AFTER_DAYS.meanOfMonth ? { staleDays: age } : {}),
  };
}
