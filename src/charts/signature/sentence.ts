import { degrees, grouped, spokenCount } from '../../words/numbers.ts';
import { carrierName } from '../../words/systems.ts';
import type { SignatureSeries } from './series.ts';

export const SIGNATURE_NAME = 'Use against the weather';

export function signatureChartSentence(series: SignatureSeries): string {
  const { slopeKWhPerKDay: slope, basePerDayKWh, baseC, points } = series;
  if (points.length === 0) return 'There are no days to show yet.';
  const carrier = carrierName(series.carrier);
  if (!(slope > 0)) return `The use of ${carrier} does not rise when it gets colder.`;
  const per = grouped(slope, slope >= 10 ? 0 : 1);
  return `Below ${degrees(baseC)} outside, each degree colder takes ${per} more units of ${carrier} a day. About ${spokenCount(basePerDayKWh)} a day are used in any weather.`;
}
