/**
 * Points of a period as market documents write them (the pattern of IEC 62325): a start, a resolution, and for each point
 * its position and its quantity. Laid out as records, each with the moment at which it starts.
 */

/** Minutes, hours or days of a point. */
const RESOLUTION = /^P(?:T(\d{1,3})M|T(\d{1,2})H|(\d)D)$/;

interface Names {
  readonly resolution?: unknown;
  readonly timeInterval?: unknown;
  readonly start?: unknown;
  readonly end?: unknown;
  readonly Point?: unknown;
  readonly point?: unknown;
  readonly points?: unknown;
  readonly position?: unknown;
}
/** Blocks of one height: a position that is not written goes on as the one before it. */
const BLOCKS = 'A03';
const MOST_POINTS = 600_000;
/** The year 9999, in milliseconds. */
const LATEST = 253_370_764_800_000;

const isNames = (value: unknown): value is Names =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const pointsOf = (period: Names): unknown => period.Point ?? period.point ?? period.points;

export const isPeriodOfPoints = (value: unknown): value is Names =>
  isNames(value) && typeof value.resolution === 'string' && pointsOf(value) !== undefined;

/** Undefined where it does not say when it starts, how long a point is, or which position each has. */
export function recordsOfPeriod(period: Names, curve: unknown): Record<string, unknown>[] | undefined {
  const { resolution, timeInterval } = period;
  const [, minutes, hours, days] = RESOLUTION.exec(String(resolution)) ?? [];
  const step = (Number(minutes ?? 0) + Number(hours ?? 0) * 60 + Number(days ?? 0) * 1440) * 60_000;
  const [start, end] = isNames(timeInterval) ? [timeInterval.start, timeInterval.end] : String(timeInterval).split('/');
  const from = Date.parse(String(start));
  const listed = pointsOf(period);
  const points = Array.isArray(listed) ? listed : [listed];
  if (!(Math.abs(from) < LATEST) || !(step > 0) || points.length > MOST_POINTS) return undefined;
  const records: Record<string, unknown>[] = [];
  const last = curve === BLOCKS ? (Date.parse(String(end)) - from) / step : 0;
  for (const [i, point] of points.entries()) {
    if (!isNames(point)) return undefined;
    const { position, ...rest } = point;
    const next = curve === BLOCKS ? (positionOf(points[i + 1]) ?? last + 1) : Number(position) + 1;
    if (!(Number(position) >= 1) || !(next <= MOST_POINTS + 1) || records.length > MOST_POINTS) return undefined;
    for (let at = Number(position); at < next; at++)
      records.push({ start: new Date(from + (at - 1) * step).toISOString().replace(/(:00)?\.000Z$/, 'Z'), ...rest });
  }
  return records;
}

const positionOf = (point: unknown): number | undefined => (isNames(point) ? Number(point.position) : undefined);
