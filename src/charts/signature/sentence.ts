import { degrees, grouped, spokenCount } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { carrierName } from '../../words/systems.ts';
import type { SignatureSeries } from './series.ts';

export const signatureName = () => say('Use and weather');

export function signatureChartSentence(series: SignatureSeries): string {
  const { slopeKWhPerKDay: slope, basePerDayKWh, baseC, points } = series;
  if (points.length === 0) return say('There are no days to show yet.');
  const carrier = carrierName(series.carrier);
  if (!(slope > 0)) return say('The use of {carrier} does not rise when it gets colder.', { carrier });
  const per = grouped(slope, slope >= 10 ? 0 : 1);
  return say(
    'Below {base} outside, each degree colder takes {per} more kWh of {carrier} a day. About {always} a day are used in any weather.',
    { base: degrees(baseC), per, carrier, always: spokenCount(basePerDayKWh) },
  );
}
