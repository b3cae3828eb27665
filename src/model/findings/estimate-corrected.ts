/** An estimated reading that the next reading put right. */
import { compareDates, toDayNumber } from '../calendar/civil.ts';
import { fitLine } from '../demand/least-squares.ts';
import type { EvidencePeriod } from '../shapes/evidence.ts';
import { type Finding, sureOf } from '../shapes/finding.ts';
import { heatingDegrees, type OutdoorDays, type Prices } from './meter-days.ts';

/** Periods with readings, for the line that says what the estimated one should have been. */
const LEAST_OTHERS = 4;
/** An estimate nearer than this to the line is a good estimate. */
const LEAST_SHARE = 0.2;
/** What the next period gives back may miss the estimate's error by this share of it. */
const MOST_MISS = 0.5;

interface Span {
  readonly period: EvidencePeriod;
  readonly days: number;
  /** Mean degrees below 15.5 °C, K. */
  readonly below: number;
}

/**
 * Estimated periods whose error [kWh] against the line of the other periods comes back, opposite, in the next one.
 * Together the two are right: a cost of the year it is not, unless the price changed in between.
 */
export function findEstimateCorrected(
  periods: readonly EvidencePeriod[],
  outdoor: OutdoorDays | undefined,
  prices: Prices,
): Finding[] {
  if (!outdoor) return [];
  const spans = periods.toSorted((a, b) => compareDates(a.from, b.from)).flatMap((period) => spanOf(period, outdoor));
  return spans.flatMap((span, i) => {
    const next = spans[i + 1];
    if (!next || span.period.quality !== 'estimated' || next.period.quality === 'estimated') return [];
    if (next.period.from !== span.period.to) return [];
    const others = spans.filter((other) => other !== span && other !== next && other.period.quality !== 'estimated');
    if (others.length < LEAST_OTHERS) return [];
    const line = fitLine(
      others.map(({ below }) => below),
      others.map(({ period, days }) => period.kWh / days),
      others.map(({ days }) => days),
      { notNegative: true },
    );
    const expected = ({ below, days }: Span) => days * (line.intercept + line.slope * below);
    const error = span.period.kWh - expected(span);
    const back = next.period.kWh - expected(next);
    const noise = Math.sqrt(line.variance * span.days);
    const isWrong = Math.abs(error) >= Math.max(LEAST_SHARE * expected(span), 2 * noise);
    const isBack = Math.sign(back) === -Math.sign(error) && Math.abs(error + back) <= MOST_MISS * Math.abs(error);
    if (!isWrong || !isBack) return [];
    return [correction(span, next, error, back, prices)];
  });
}

function correction(span: Span, next: Span, error: number, back: number, prices: Prices): Finding {
  return {
    code: 'estimate-corrected',
    meter: 'bills',
    from: span.period.from,
    to: next.period.to,
    sure: sureOf(0.9 - Math.abs((error + back) / error) / 2),
    grade: 'estimated',
    seen: { estimatedKWh: span.period.kWh, likelyKWh: span.period.kWh - error, backKWh: back, until: span.period.to },
    kWh: error,
    pence: error * prices.pencePerKWh,
    kWhYear: 0,
    penceYear: 0,
    ask: ['meter-exchanged'],
    check: ['own-reading', 'supplier-bill'],
    cautions: [],
  };
}

/** A period with its weather; none where a day's temperature is missing. */
function spanOf(period: EvidencePeriod, { first, values }: OutdoorDays): Span[] {
  const offset = toDayNumber(period.from) - toDayNumber(first);
  const days = toDayNumber(period.to) - toDayNumber(period.from);
  let below = 0;
  for (let i = 0; i < days; i++) {
    const mean = values[offset + i];
    if (mean === null || mean === undefined || !Number.isFinite(mean)) return [];
    below += heatingDegrees(mean) / days;
  }
  return days > 0 ? [{ period, days, below }] : [];
}
