/** How much heat the home needs, and how we know. */

import { isUneven } from '../model/demand/heat-questions.ts';
import type { Appraisal, Demand, DemandWay } from '../model/shapes/appraisal.ts';
import { grouped, listed, longDate, percent, spokenCount, spokenKWh } from './numbers.ts';
import { phrase, say } from './say.ts';
import { carrierName } from './systems.ts';

/** "This home needs about 13,900 units of heat a year, give or take 1,100." */
export function heatSentence({ total }: Pick<Demand, 'total'>): string {
  if (!Number.isFinite(total.value)) return say('We do not know yet how much heat this home needs.');
  if (total.value <= 0) return say('This home needs no heat.');
  const spread = (total.high - total.low) / 2;
  const units = spokenKWh(total.value);
  return Number.isFinite(spread) && spread >= 1
    ? say('This home needs about {units} of heat a year, give or take {spread}.', {
        units,
        spread: spokenCount(spread),
      })
    : say('This home needs about {units} of heat a year.', { units });
}

export function waterSentence({ water, total }: Pick<Demand, 'water' | 'total'>): string {
  if (!Number.isFinite(water.value) || !(total.value > 0)) return '';
  if (water.value <= 0) return say('None of it is hot water.');
  return say('About {units} of it is hot water. The rest warms the rooms.', { units: spokenKWh(water.value) });
}

const WAYS: Readonly<Record<DemandWay, string>> = {
  record: phrase('your own bills and readings'),
  'heat-loss': phrase('the heat loss of the home'),
  certificate: phrase('the energy certificate'),
  'floor-area': phrase('floor area and age'),
};

/** Inside a sentence: "your own record". */
export function wayName(way: DemandWay | string): string {
  const name = WAYS[way as DemandWay];
  return name === undefined ? way : say(name);
}

/** Whether the name of a way is of several things, so that its verb stands in the plural. */
export const numberOfWay = (way: DemandWay | string): 'many' | 'one' =>
  way === 'record' || way === 'floor-area' ? 'many' : 'one';

/** Which estimates the figure stands on. */
export function basisSentence({ estimates, chosen }: Pick<Demand, 'estimates' | 'chosen'>): string {
  if (estimates.length === 0) return say('Nothing is known of this home yet, so we use a typical one.');
  if (chosen !== 'together') return say('The figure is based on {way} alone, as you chose.', { way: wayName(chosen) });
  const names = estimates.map((estimate) => wayName(estimate.way));
  if (names.length === 1) return say('The figure is based on {way}.', { way: names[0]! });
  return say('The figure is based on {ways} together. The surest counts most.', { ways: listed(names) });
}

const MISSING: Readonly<Record<string, string>> = {
  'no-record': phrase('Add a bill or a meter file, or type your bills.'),
  'no-heat-loss': phrase('Type the heat loss at the design temperature.'),
  'no-design-outdoor': phrase('Type the outdoor temperature that the heat loss was worked out for.'),
  'no-certificate': phrase('Type the heat figure from the energy certificate.'),
  'record-too-short': phrase(
    'The readings cover too little time to tell heating from the rest. Add bills or readings of cold and warm months.',
  ),
  'no-floor-area': phrase('Type the floor area and the age of the home.'),
};

/** What is wanting before an estimate can be made. */
export function missingWaySentence(way: DemandWay, reason: string): string {
  const nothing = say('Nothing yet from {way}.', { way: wayName(way) });
  const remedy = MISSING[reason] ?? MISSING[`no-${way}`];
  return remedy === undefined ? nothing : `${nothing} ${say(remedy)}`;
}

/** The weather behind the figures. */
export function weatherSentence({ recordWeather, regionName }: Appraisal['climate']): string {
  if (recordWeather === 'own')
    return say('Your use was adjusted for the weather of its days, to a typical year in your region ({regionName}).', {
      regionName,
    });
  if (recordWeather === 'typical')
    return say('We have no weather for those days, so we use a typical year in your region ({regionName}).', {
      regionName,
    });
  return say('The weather is that of a typical year in your region ({regionName}).', { regionName });
}

/** "The weather explains 94 % of this home's gas use." How well the line fits, and how far it misses. */
export function fitSentence(
  signature: Pick<NonNullable<Demand['signature']>, 'carrier' | 'period' | 'r2' | 'cvRmse' | 'slopeKWhPerKDay'>,
): string {
  const { carrier, period, r2, cvRmse, slopeKWhPerKDay } = signature;
  const use = carrierName(carrier);
  if (!(slopeKWhPerKDay > 0))
    return say('The weather explains nothing of this home’s {carrier} use.', { carrier: use });
  // A record of few bills can seem to fit to the last unit; nobody should read 100 %.
  const explained =
    r2 > 0.985
      ? say('The weather explains nearly all of this home’s {carrier} use.', { carrier: use })
      : say('The weather explains {share} of this home’s {carrier} use.', { share: percent(r2), carrier: use });
  if (isUneven({ period, cvRmse }))
    return `${explained} ${say('A single {period, select, month {month} other {bill}} is off by about {share}. The habits of one home seldom do that.', { period, share: percent(cvRmse) })}`;
  const misses = say(
    'A single {period, select, day {day} month {month} other {bill}} is off by about {share}. Over a year that evens out.',
    { period, share: percent(cvRmse) },
  );
  return r2 < 0.5
    ? `${explained} ${say('Most of the rest is how the home is lived in.')} ${misses}`
    : `${explained} ${misses}`;
}

/** Heat loss out of the record beside the one that was typed. */
export function heatLossSentence({
  recordHeatLoss,
  typedHeatLossWPerK,
}: Pick<Demand, 'recordHeatLoss' | 'typedHeatLossWPerK'>): string {
  if (!recordHeatLoss) return '';
  const { value, low, high } = recordHeatLoss;
  const own = say('By these readings the home loses about {watts} W for each degree colder, {low} to {high}.', {
    watts: spokenCount(value),
    low: spokenCount(low),
    high: spokenCount(high),
  });
  if (typedHeatLossWPerK === undefined) return own;
  const typed = say('The typed heat loss comes to {watts} W.', { watts: spokenCount(typedHeatLossWPerK) });
  const judged =
    typedHeatLossWPerK > high
      ? say('That is more: rooms may be left cool, or the survey is on the safe side.')
      : typedHeatLossWPerK < low
        ? say('That is less: something the survey did not see may lose heat.')
        : say('The two agree.');
  return `${own} ${typed} ${judged}`;
}

/** What the meter should show in a year to come: each winter with the range of a single such year. */
export function yearsAheadSentence({ yearsAhead, signature }: Pick<Demand, 'yearsAhead' | 'signature'>): string {
  const of = (winter: 'mild' | 'typical' | 'cold') => yearsAhead?.find((one) => one.winter === winter);
  const [mild, typical, cold] = [of('mild'), of('typical'), of('cold')];
  if (!mild || !typical || !cold || !signature) return '';
  return say(
    'As things are, the meter should show about {typical} of {carrier} in a typical year. A cold year (1 in 10) takes about {cold}, a mild one {mild}. We are not sure: 8 times in 10 a typical year lies between {typicalLow} and {typicalHigh}. A cold one lies between {coldLow} and {coldHigh}, a mild one between {mildLow} and {mildHigh}.',
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
  return say('Before about {date} each degree colder took {before} kWh of {carrier} a day, since then {after}.', {
    date: longDate(change.on),
    before: slope(change.before.slopeKWhPerKDay),
    carrier,
    after: slope(change.after.slopeKWhPerKDay),
  });
}
