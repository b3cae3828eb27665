/** A record that gives when its values begin and how far apart they are, and then nothing but the values. */
type Value = string | number | boolean | null;

const BEGINS = /start|begin|from|first/i;
const STEP = /interval|resolution|step|period|granularity|length/i;
const IS_MOMENT = /^\d{4}-\d{2}-\d{2}([T ]\d{2}:\d{2}(:\d{2}(\.\d+)?)?(Z|[+-]\d{2}:?\d{2})?)?$/;
const LEAST_VALUES = 3;

/** One row a value, each with its time; undefined where the record is no such thing, or its step cannot be told. */
export function rowsOfSteps(
  record: Readonly<Record<string, unknown>>,
): { rows: Record<string, Value>[]; from: readonly unknown[] } | undefined {
  const entries = Object.entries(record);
  const lists = entries.filter(
    ([, one]) =>
      Array.isArray(one) &&
      one.length >= LEAST_VALUES &&
      one.every((value) => value === null || typeof value === 'number'),
  );
  const starts = entries.filter(([name, one]) => BEGINS.test(name) && typeof one === 'string' && IS_MOMENT.test(one));
  const steps = entries.flatMap(([name, one]) => (STEP.test(name) ? (minutesOf(name, one) ?? []) : []));
  const [list, start, minutes] = [lists[0], starts[0]?.[1] as string | undefined, steps[0]];
  if (!list || lists.length > 1 || start === undefined || starts.length > 1 || minutes === undefined) return undefined;
  const isOfDays = start.length === 10 && minutes % 1440 === 0;
  const hasOffset = /(Z|[+-]\d{2}:?\d{2})$/.test(start) && start.length > 10;
  const first = Date.parse(hasOffset ? start : `${start.length === 10 ? `${start}T00:00` : start}Z`);
  if (Number.isNaN(first)) return undefined;
  const name = /^(data|values|readings|series)$/i.test(list[0]) ? 'value' : list[0];
  const rows = (list[1] as (number | null)[]).map((value, i) => {
    const at = new Date(first + i * minutes * 60_000).toISOString();
    return { time: isOfDays ? at.slice(0, 10) : hasOffset ? at : at.slice(0, 19), [name]: value };
  });
  return { rows, from: [list[1]] };
}

/** Steps that are written as a bare number of minutes or of seconds, as nothing else. */
const BARE: Readonly<Record<number, number>> = { 15: 15, 30: 30, 900: 15, 1800: 30, 3600: 60 };

/** Minutes of "PT30M", of 30 under "intervalMinutes", of "30 min"; undefined where it may be anything. */
function minutesOf(name: string, step: unknown): number | undefined {
  if (typeof step === 'number') {
    const unit = /(min|sec|hour)/i.exec(name)?.[1]?.toLowerCase();
    const minutes = unit === 'min' ? step : unit === 'sec' ? step / 60 : unit === 'hour' ? step * 60 : BARE[step];
    return minutes !== undefined && minutes >= 1 ? minutes : undefined;
  }
  if (typeof step !== 'string') return undefined;
  const [, days, hours, minutes, seconds] = /^P(?:(\d+)D)?(?:T(?:(\d+)H)?(?:(\d+)M)?(?:(\d+)S)?)?$/.exec(step) ?? [];
  const iso = Number(days ?? 0) * 1440 + Number(hours ?? 0) * 60 + Number(minutes ?? 0) + Number(seconds ?? 0) / 60;
  if (iso >= 1) return iso;
  const [, count, unit] = /^(\d+) ?(m|min|mins|minutes?|h|hours?|d|days?)$/i.exec(step) ?? [];
  if (count !== undefined) return Number(count) * (/^m/i.test(unit!) ? 1 : /^h/i.test(unit!) ? 60 : 1440);
  return { hourly: 60, 'half-hourly': 30, halfhourly: 30, daily: 1440 }[step.toLowerCase()];
}
