/** A made home's use as its meter, its bills or its delivery slips show it. */
import { toCivilDate } from '../../../src/model/calendar/civil.ts';
import type { EvidencePeriod, Series } from '../../../src/model/shapes/evidence.ts';
import type { Kind, MadeDay } from './home.ts';
import type { Random } from './made-weather.ts';

const blank = { evidenceId: 'made', present: 0, expected: 0, estimatedCount: 0, total: 0 };

export function madeSeries(
  random: Random,
  kind: Kind,
  carrier: Series['carrier'],
  record: readonly MadeDay[],
): Series[] {
  const own = kind.endsWith('own weather');
  const weather = own ? [byDay('outdoor-temperature', record, (day) => day.outdoorC)] : [];
  if (kind.includes('by day')) return [byDay(carrier, record, (day) => day.kWh), ...weather];
  if (kind.includes('deliveries')) return [byPeriods(carrier, madeDeliveries(random, record))];
  return [byPeriods(carrier, madeBills(random, record, kind.includes('quarter') ? 91 : 30)), ...weather];
}

export function byDay(carrier: Series['carrier'], days: readonly MadeDay[], pick: (day: MadeDay) => number): Series {
  const weather = carrier === 'outdoor-temperature';
  const from = toCivilDate(days[0]!.day);
  return {
    ...blank,
    id: carrier,
    name: carrier,
    carrier,
    role: weather ? 'weather' : 'import',
    resolution: 'day',
    from,
    to: toCivilDate(days.at(-1)!.day + 1),
    days: { first: from, values: days.map(pick) },
  };
}

export function byPeriods(carrier: Series['carrier'], periods: readonly EvidencePeriod[]): Series {
  const from = periods[0]!.from;
  const to = periods.at(-1)!.to;
  return {
    ...blank,
    id: carrier,
    name: carrier,
    carrier,
    role: 'import',
    resolution: 'period',
    from,
    to,
    periods: [...periods],
  };
}

/** Bills of about so many days; the last is left out where much of it is missing. */
function madeBills(random: Random, record: readonly MadeDay[], days: number): EvidencePeriod[] {
  const bills: EvidencePeriod[] = [];
  for (let from = 0; from + 0.7 * days <= record.length; ) {
    const to = Math.min(record.length, from + days + Math.floor(4 * random()) - 2);
    const kWh = record.slice(from, to).reduce((total, day) => total + day.kWh, 0);
    bills.push(period(record, from, to, kWh));
    from = to;
  }
  return bills;
}

function period(record: readonly MadeDay[], from: number, to: number, kWh: number): EvidencePeriod {
  const first = record[0]!.day;
  return { from: toCivilDate(first + from), to: toCivilDate(first + to), kWh, quality: 'actual' };
}

/** Slips as they come: the tank is filled when it runs low or when oil is cheap, not always to the top. */
function madeDeliveries(random: Random, record: readonly MadeDay[]): EvidencePeriod[] {
  const tank = 1200 * 10.3;
  let left = tank * (0.5 + 0.4 * random());
  let wanted = 0.15 + 0.3 * random();
  const slips: EvidencePeriod[] = [];
  record.forEach(({ kWh }, i) => {
    left -= kWh;
    if (i > 0 && left > wanted * tank) return;
    const delivered = i === 0 ? tank - left : Math.min(tank - left, tank * (0.5 + 0.4 * random()));
    left += delivered;
    wanted = 0.15 + 0.3 * random();
    slips.push(period(record, i, i + 1, delivered));
  });
  return slips;
}
