/** Which prices a comparison rests on, from when, and whether they are old. */
import { addDays, daysBetween } from '../calendar/civil.ts';
import type { PriceBasis } from '../shapes/appraisal.ts';
import type { CivilDate } from '../shapes/dates.ts';
import type { DeliveredPrice } from '../shapes/reference.ts';
import type { PricedTariff } from '../shapes/tariff.ts';
import { tell } from '../shapes/told.ts';
import { versionOn } from './slot-price.ts';

const QUARTER_DAYS = 92;
/** A tariff typed without an end is taken to run a year, the usual length of a fixed price; common practice, no source. */
const OPEN_END_DAYS = 365;

/**
 * The version of a tariff that holds on `asOf`, as the basis of a comparison.
 * Prices with a known end are stale from the day after it, since the next quarter's have then begun; prices with no
 * end a year after they began. `staleDays` counts from that end.
 */
export function priceBasis(tariff: PricedTariff, asOf: CivilDate): PriceBasis {
  const version = versionOn(tariff, asOf);
  const next = tariff.versions
    .map(({ from }) => from)
    .filter((from) => from > version.from)
    .sort()[0];
  const to = next ? addDays(next, -1) : tariff.until;
  const end = to ?? addDays(version.from, OPEN_END_DAYS);
  return {
    name: tariff.name,
    from: version.from,
    ...(to === undefined ? {} : { to }),
    grade: tariff.grade,
    origin: tariff.origin,
    ...(end < asOf ? { staleDays: daysBetween(end, asOf) } : {}),
  };
}

/** A built-in price of a delivered fuel as the basis of a comparison: a month's mean is stale once it is older than a quarter. */
export function deliveredPriceBasis(price: DeliveredPrice, asOf: CivilDate): PriceBasis {
  const age = daysBetween(price.to, asOf);
  const { from, to } = price;
  return {
    name: tell(price.kind === 'published' ? 'published-price-of' : 'assumed-price-of', {
      carrier: tell(`carrier-${price.fuel}`),
      months: { from, to },
    }),
    from,
    to,
    grade: 'assumed',
    origin: price.source,
    ...(age > QUARTER_DAYS ? { staleDays: age } : {}),
  };
}
