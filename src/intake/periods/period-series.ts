/** Bills, meter-reading periods and deliveries as a series of periods, with holes and overlaps named. */

import { compareDates, toCivilDate } from '../../model/calendar/civil.ts';
import { cutPeriod } from '../../model/evidence/cut-periods.ts';
import { type EvidencePeriod, isEnergy, isTemperature, type Series } from '../../model/shapes/evidence.ts';
import { tell } from '../../model/shapes/told.ts';
import type { Quantity } from '../layout/settle-unit.ts';
import { mostKW, refuseDoubled, tellAmount } from '../readings/screen-values.ts';
import type { IntakeChoices } from '../terms/choices.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import { mergeEstimated } from './merge-estimated.ts';
import type { RawPeriod } from './raw-period.ts';

export function periodSeries(
  id: string,
  name: string,
  quantity: Quantity,
  raw: readonly RawPeriod[],
  book: RemarkBook,
  /** What was answered of bills that lie over each other; without it that is not asked. */
  said?: Pick<IntakeChoices, 'overlaps'>,
): Series | undefined {
  const inDegrees = isTemperature(quantity.carrier);
  const inOrder = dropRepeats(
    isEnergy(quantity.carrier) ? dropAbsurd(raw, quantity, book) : raw,
    name,
    inDegrees,
    book,
    said?.overlaps === 'both',
  ).toSorted((a, b) => a.fromDay - b.fromDay || a.toDay - b.toDay);
  const sorted = inDegrees ? inOrder : leaveOutUnfilled(mergeEstimated(inOrder, book), quantity, book);
  const first = sorted[0];
  if (!first) return undefined;
  const { covered, lastDay } = remarkHoles(sorted, inDegrees, name, book, inDegrees ? undefined : said);
  const written = sorted.map(
    (period): EvidencePeriod => ({
      from: toCivilDate(period.fromDay),
      to: toCivilDate(period.toDay),
      kWh: period.kWh,
      ...(quantity.unit === 'kWh' ? {} : { quantity: period.quantity, unit: quantity.unit }),
      ...(period.costPence === undefined ? {} : { costPence: period.costPence }),
      quality: period.quality,
      row: period.line,
    }),
  );
  const periods = said?.overlaps === 'once' && !inDegrees ? eachDayOnce(written) : written;
  const estimatedCount = periods.filter((p) => p.quality === 'estimated').length;
  if (estimatedCount > 0 && !inDegrees)
    book.add('estimated', 'note', {
      count: estimatedCount,
      effectKWh: periods.reduce((sum, p) => sum + (p.quality === 'estimated' ? p.kWh : 0), 0),
    });
  return {
    id,
    evidenceId: '',
    name,
    carrier: quantity.carrier,
    role: quantity.role,
    resolution: 'period',
    from: toCivilDate(first.fromDay),
    to: toCivilDate(lastDay),
    total: inDegrees ? meanOf(sorted) : periods.reduce((sum, p) => sum + p.kWh, 0),
    periods,
    present: covered,
    expected: lastDay - first.fromDay,
    estimatedCount,
  };
}

/** On days of several bills the one that was read counts before an estimate, and the later one before the earlier. */
function eachDayOnce(periods: readonly EvidencePeriod[]): EvidencePeriod[] {
  const isEstimate = ({ quality }: EvidencePeriod) => Number(quality === 'estimated');
  const kept: EvidencePeriod[] = [];
  for (const one of periods.toReversed().toSorted((a, b) => isEstimate(a) - isEstimate(b)))
    kept.push(...cutPeriod(one, kept, { inDegrees: false, agree: false }));
  return kept.toSorted((a, b) => compareDates(a.from, b.from));
}

const LEAST_FILLED = 3;

/** Noughts at the end of what a home drew, of which no period before has one: the list is not filled in any further. */
function leaveOutUnfilled(
  sorted: readonly RawPeriod[],
  { carrier, role }: Quantity,
  book: RemarkBook,
): readonly RawPeriod[] {
  const end = sorted.findLastIndex(({ kWh }) => kWh !== 0) + 1;
  const isLived = carrier === 'electricity' && role === 'import' && end >= LEAST_FILLED;
  if (!isLived || end === sorted.length || sorted.slice(0, end).some(({ kWh }) => kWh === 0)) return sorted;
  const [first, last] = [sorted[end]!, sorted.at(-1)!];
  book.add('not-filled', 'note', {
    row: first.line,
    from: toCivilDate(first.fromDay),
    to: toCivilDate(last.toDay - 1),
    count: sorted.length - end,
  });
  return sorted.slice(0, end);
}

/** Mean over the days [°C]. */
function meanOf(periods: readonly RawPeriod[]): number {
  const days = ({ fromDay, toDay }: RawPeriod) => toDay - fromDay;
  return periods.reduce((sum, p) => sum + p.kWh * days(p), 0) / periods.reduce((sum, p) => sum + days(p), 0);
}

/** More a day than a house can draw is a slip of the pen or the unit. */
function dropAbsurd(raw: readonly RawPeriod[], { carrier }: Quantity, book: RemarkBook): RawPeriod[] {
  return raw.filter((period) => {
    const most = mostKW(carrier) * 24 * (period.toDay - period.fromDay);
    if (period.kWh <= most) return true;
    book.tally('spike', 'note', {
      row: period.line,
      foundTold: tellAmount(period.kWh),
      expectedTold: tell('at-most-kwh', { kWh: most }),
      effectKWh: period.kWh,
    });
    return false;
  });
}

/** The same period twice counts once; with another value, the later row counts, or both where they were said to stand. */
function dropRepeats(
  raw: readonly RawPeriod[],
  name: string,
  inDegrees: boolean,
  book: RemarkBook,
  bothStand: boolean,
): RawPeriod[] {
  const kept = new Map<string, RawPeriod>();
  let doubled = 0;
  for (const period of raw) {
    const key = `${period.fromDay} ${period.toDay}`;
    const known = kept.get(key);
    if (known?.kWh === period.kWh) book.tally('duplicate-same', 'note', { row: period.line, count: 1 });
    else if (known && bothStand && !inDegrees) {
      book.tally('period-overlap-asked', 'note', {
        row: period.line,
        from: toCivilDate(period.fromDay),
        to: toCivilDate(period.toDay - 1),
        count: period.toDay - period.fromDay,
        effectKWh: period.kWh,
        found: 'both',
      });
      kept.set(key, bothOf(known, period));
      continue;
    } else if (known) {
      doubled++;
      book.tally('duplicate-different', 'note', {
        row: period.line,
        count: 1,
        ...(inDegrees ? {} : { effectKWh: period.kWh - known.kWh }),
      });
    }
    kept.set(key, period);
  }
  if (doubled > 0) refuseDoubled(doubled, kept.size, raw[0]!.line, name, book);
  return [...kept.values()];
}

/** One period of two that stand for parts of what its days used. */
function bothOf(one: RawPeriod, other: RawPeriod): RawPeriod {
  const { costPence: first, ...rest } = one;
  const costPence = first === undefined || other.costPence === undefined ? {} : { costPence: first + other.costPence };
  const quality = one.quality === other.quality ? one.quality : 'unknown';
  return { ...rest, ...costPence, quality, quantity: one.quantity + other.quantity, kWh: one.kWh + other.kWh };
}

function remarkHoles(
  sorted: readonly RawPeriod[],
  inDegrees: boolean,
  name: string,
  book: RemarkBook,
  said: Pick<IntakeChoices, 'overlaps'> | undefined,
): { covered: number; lastDay: number } {
  const effect = (kWh: number) => (inDegrees ? {} : { effectKWh: Math.round(kWh * 10) / 10 });
  const kWh = sorted.reduce((sum, period) => sum + period.kWh, 0);
  const perDayKWh = kWh / sorted.reduce((days, period) => days + period.toDay - period.fromDay, 0);
  let covered = 0;
  let overlaps = 0;
  let lastDay = sorted[0]!.fromDay;
  for (const period of sorted) {
    if (period.fromDay > lastDay)
      book.tally('period-hole', 'note', {
        row: period.line,
        from: toCivilDate(lastDay),
        to: toCivilDate(period.fromDay - 1),
        count: period.fromDay - lastDay,
        ...effect((period.fromDay - lastDay) * perDayKWh),
      });
    const [days, length] = [Math.min(lastDay, period.toDay) - period.fromDay, period.toDay - period.fromDay];
    const isLong = lastDay - period.fromDay > OVERLAPS * length;
    if (days > 0) {
      const isOpen = said !== undefined && (days > FEW_DAYS || (isLong && days > 2));
      book.tally(isOpen ? 'period-overlap-asked' : 'period-overlap', isOpen && !said.overlaps ? 'question' : 'note', {
        row: period.line,
        from: toCivilDate(period.fromDay),
        to: toCivilDate(period.fromDay + days - 1),
        count: days,
        ...(isOpen && said.overlaps ? { found: said.overlaps } : {}),
        ...effect((days / length) * period.kWh),
      });
    }
    if (isLong) overlaps++;
    covered += Math.max(0, period.toDay - Math.max(lastDay, period.fromDay));
    lastDay = Math.max(lastDay, period.toDay);
  }
  // Bills that lie over each other again and again are those of two meters or homes.
  refuseDoubled(overlaps, sorted.length, sorted[0]!.line, name, book);
  return { covered, lastDay };
}

/** So much of a bill that lies in the one before is no slip of a day. A judgement. */
const OVERLAPS = 0.25;
/** Bills of months that share more days were not read late: one of them stands for the other. A judgement. */
const FEW_DAYS = 7;

/** Periods of a series for the picture in the preview: kWh at the first day of each. */
export const periodPicture = (series: Series): { at: string; value: number | null }[] =>
  (series.periods ?? []).slice(0, 60).map((p) => ({ at: `${p.from}T00:00`, value: p.kWh }));
