/** How much heat the home needs, and how we know. */
import type { Appraisal, Demand, DemandEstimate, DemandWay } from '../model/appraisal/appraisal.ts';
import { capitalised, degrees, grouped, listed, longDate, percent, spokenCount, spokenKWh } from './numbers.ts';
import { say } from './say.ts';
import { carrierName } from './systems.ts';

/** "This home needs about 13,900 units of heat a year, give or take 1,100." */
export function heatSentence({ total }: Pick<Demand, 'total'>): string {
  if (!Number.isFinite(total.value)) return 'We do not know yet how much heat this home needs.';
  if (total.value <= 0) return 'This home needs no heat.';
  const spread = (total.high - total.low) / 2;
  const about = `This home needs about ${spokenKWh(total.value)} of heat a year`;
  return Number.isFinite(spread) && spread >= 1 ? `${about}, give or take ${spokenCount(spread)}.` : `${about}.`;
}

export function waterSentence({ water, total }: Pick<Demand, 'water' | 'total'>): string {
  if (!Number.isFinite(water.value) || !(total.value > 0)) return '';
  if (water.value <= 0) return 'None of it is hot water.';
  return `About ${spokenKWh(water.value)} of it is hot water. The rest warms the rooms.`;
}

const WAYS: Readonly<Record<DemandWay, string>> = {
  record: 'your own record',
  'heat-loss': 'the heat loss of the home',
  certificate: 'the energy certificate',
  'floor-area': 'floor area and age',
};

/** Inside a sentence: "your own record". */
export function wayName(way: DemandWay | string): string {
  return WAYS[way as DemandWay] ?? way;
}

/** One estimate beside the others: "Your own record says 11,600 units for the rooms, give or take 700." */
export function estimateSentence(estimate: Pick<DemandEstimate, 'way' | 'spaceKWh' | 'spaceErrorKWh'>): string {
  const { way, spaceKWh, spaceErrorKWh } = estimate;
  const said = `${capitalised(wayName(way))} ${way === 'floor-area' ? 'say' : 'says'} ${spokenKWh(spaceKWh)} for the rooms`;
  return spaceErrorKWh >= 1 ? `${said}, give or take ${spokenCount(spaceErrorKWh)}.` : `${said}.`;
}

/** Which estimates the figure stands on. */
export function basisSentence({ estimates, chosen }: Pick<Demand, 'estimates' | 'chosen'>): string {
  if (estimates.length === 0) return 'Nothing is known of this home yet. A typical one stands in.';
  if (chosen !== 'together') return `The figure stands on ${wayName(chosen)} alone, as was chosen.`;
  const names = estimates.map((estimate) => wayName(estimate.way));
  if (names.length === 1) return `The figure stands on ${names[0]}.`;
  return `The figure stands on ${listed(names)} together. The surest counts most.`;
}

const MISSING: Readonly<Record<string, string>> = {
  'no-record': 'Import a bill or a meter file, or type your bills.',
  'no-heat-loss': 'Type the heat loss at the design temperature.',
  'no-certificate': 'Type the heat figure from the energy certificate.',
  'record-too-short':
    'The record is too short to tell heating from the rest. Add bills or readings of the cold months and the warm ones.',
  'no-floor-area': 'Type the floor area and the age of the home.',
};

/** What is wanting before an estimate can be made. */
export function missingWaySentence(way: DemandWay, reason: string): string {
  const remedy = MISSING[reason] ?? MISSING[`no-${way}`] ?? '';
  return `Nothing yet from ${wayName(way)}. ${remedy}`.trim();
}

/** The weather behind the figures. */
export function weatherSentence({ recordWeather, regionName }: Appraisal['climate']): string {
  if (recordWeather === 'own')
    return `Your record was put right with its own weather, then set to a typical year of your region (${regionName}).`;
  if (recordWeather === 'typical')
    return `We have no weather of those days, so a typical year of your region (${regionName}) stands in.`;
  return `The weather is that of a typical year in your region (${regionName}).`;
}

const PERIODS: Readonly<Record<NonNullable<Demand['signature']>['period'], string>> = {
  day: 'day',
  month: 'month',
  period: 'bill',
};

/** "The weather explains 94 % of this home's gas use." How well the line fits, and how far it misses. */
export function fitSentence(
  signature: Pick<NonNullable<Demand['signature']>, 'carrier' | 'period' | 'r2' | 'cvRmse' | 'slopeKWhPerKDay'>,
): string {
  const { carrier, period, r2, cvRmse, slopeKWhPerKDay } = signature;
  const use = `this home’s ${carrierName(carrier)} use`;
  if (!(slopeKWhPerKDay > 0)) return `The weather explains nothing of ${use}.`;
  // A record of few bills can seem to fit to the last unit; nobody should read 100 %.
  const explained = `The weather explains ${r2 > 0.985 ? 'nearly all' : percent(r2)} of ${use}.`;
  const misses = `A single ${PERIODS[period]} is missed by about ${percent(cvRmse)}; over a year that evens out.`;
  return r2 < 0.5 ? `${explained} Most of the rest is how the home is lived in. ${misses}` : `${explained} ${misses}`;
}

/** Heat loss out of the record beside the one that was typed. */
export function heatLossSentence({
  recordHeatLoss,
  typedHeatLossWPerK,
}: Pick<Demand, 'recordHeatLoss' | 'typedHeatLossWPerK'>): string {
  if (!recordHeatLoss) return '';
  const { value, low, high } = recordHeatLoss;
  const own = `By this record the home loses about ${spokenCount(value)} W for each degree colder, ${spokenCount(low)} to ${spokenCount(high)}.`;
  if (typedHeatLossWPerK === undefined) return own;
  const typed = `The typed heat loss comes to ${spokenCount(typedHeatLossWPerK)} W.`;
  if (typedHeatLossWPerK > high)
    return `${own} ${typed} That is more: rooms may be left cool, or the survey is on the safe side.`;
  if (typedHeatLossWPerK < low) return `${own} ${typed} That is less: something the survey did not see may lose heat.`;
  return `${own} ${typed} The two agree.`;
}

/** What the meter should show in a year to come: each winter with the range of a single such year. */
export function yearsAheadSentence({ yearsAhead, signature }: Pick<Demand, 'yearsAhead' | 'signature'>): string {
  const of = (winter: 'mild' | 'typical' | 'cold') => yearsAhead?.find((one) => one.winter === winter);
  const [mild, typical, cold] = [of('mild'), of('typical'), of('cold')];
  if (!mild || !typical || !cold || !signature) return '';
  return say(
    'As it is, the meter should show about {typical} of {carrier} in a typical year. A cold year (1 in 10) takes about {cold}, a mild one {mild}. We are not sure: 8 times in 10 a typical year lies between {typicalLow} and {typicalHigh}. A cold one lies between {coldLow} and {coldHigh}, a mild one between {mildLow} and {mildHigh}.',
    {
      carrier: carrierName(signature.carrier),
      typical: spokenKWh(typical.kWh),
      cold: spokenCount(cold.kWh),
      mild: spokenCount(mild.kWh),
      typicalLow: spokenCount(typical.low),
      typicalHigh: spokenCount(typical.high),
      coldLow: spokenCount(cold.low),
      coldHigh: spokenCount(cold.high),
      mildLow: spokenCount(mild.low),
      mildHigh: spokenCount(mild.high),
    },
  );
}

/** The line before and after a change in the house. */
export function changeSentence({ change, signature }: Pick<Demand, 'change' | 'signature'>): string {
  if (!change || !signature) return '';
  const slope = (value: number) => grouped(value, value >= 10 ? 0 : 1);
  const carrier = carrierName(signature.carrier);
  return `Before about ${longDate(change.on)} each degree colder took ${slope(change.before.slopeKWhPerKDay)} units of ${carrier} a day, since then ${slope(change.after.slopeKWhPerKDay)}.`;
}

/** What the line through the record says. */
export function signatureSentence(signature: NonNullable<Demand['signature']>): string {
  const { slopeKWhPerKDay: slope, basePerDayKWh: base, baseC, r2 } = signature;
  if (!(slope > 0)) return 'This record does not rise when it gets colder, so it says little about heating.';
  const per = slope >= 10 ? grouped(slope) : grouped(slope, 1);
  return `Below ${degrees(baseC)} outside, each degree colder adds ${per} units a day. About ${spokenCount(base)} a day are used in any weather. The line explains ${percent(r2)} of the ups and downs.`;
}
