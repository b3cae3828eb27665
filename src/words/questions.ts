/** What the numbers cannot settle, as sentences with likely reasons. One catalogue; a test holds the model's codes against it. */
import type { CostQuestionCode, PriceQuestionCode } from '../model/comparison/price-questions.ts';
import type { LikelyReason } from '../model/demand/combine.ts';
import type { DemandQuestionCode } from '../model/demand/heat-questions.ts';
import type { FullQuestionCode } from '../model/heat-pump/full/full-questions.ts';
import type { MachineQuestionCode } from '../model/heat-pump/machine-questions.ts';
import type { Question } from '../model/shapes/appraisal.ts';
import type { TariffFaultCode } from '../model/tariff/check-tariff.ts';
import { numberOfWay, wayName } from './heat.ts';
import {
  capitalised,
  counted,
  degrees,
  factor,
  grouped,
  listed,
  longDate,
  pence,
  percent,
  spokenCount,
  spokenKWh,
  spokenPounds,
} from './numbers.ts';
import { type GapReader, readGaps } from './read-gaps.ts';
import { TARIFF_FAULT_CODES, tariffFaultSentence } from './refusals.ts';
import { phrase, say } from './say.ts';
import { carrierName } from './systems.ts';
import { lookUp, unknownName, unknownSentence } from './unknown.ts';

const kW = (value: number): string => `${grouped(value, 1)} kW`;

type Sentence = (data: GapReader) => string;

/** Reasons why two estimates differ. */
const REASONS: Readonly<Record<LikelyReason, string>> = {
  'unheated-rooms': phrase('rooms that are not heated'),
  'cooler-rooms': phrase('rooms cooler than assumed'),
  'warmer-rooms': phrase('rooms warmer than assumed'),
  'other-heat': phrase('heat that no meter sees, such as a stove'),
  efficiency: phrase('a boiler that works better or worse than assumed'),
  'heat-loss-too-low': phrase('a heat loss that was put too low'),
  'usual-household': phrase('a certificate made for an average household, not for this one'),
  'unlike-its-age': phrase('a home unlike others of its size and age'),
  'estimated-bills': phrase('bills with estimated readings'),
};

function reasonName(code: string): string {
  const name = lookUp(REASONS, code);
  return name === undefined ? unknownName(code) : say(name);
}

const OTHER_HEAT: Readonly<Record<string, string>> = {
  'wood stove': phrase('the wood stove'),
  'open fire': phrase('the open fire'),
  'electric heaters': phrase('the electric heaters'),
  'solar thermal': phrase('the solar panels for hot water'),
};

const DEMAND: Readonly<Record<DemandQuestionCode, Sentence>> = {
  'demand-unknown': ({ number }) =>
    say(
      'Nothing is known of this home’s heat yet, so we use a typical home of about {heat}. Add bills, the heat loss or the floor area.',
      { heat: spokenKWh(number('spaceKWh')) },
    ),
  'region-asked': ({ text }) =>
    say('The climate region of the home is not given, so we use {region}. Please choose it.', {
      region: text('region'),
    }),
  'region-not-listed': ({ text }) =>
    say('The climate region chosen is none of this country, so we use {region}. Please choose it.', {
      region: text('region'),
    }),
  'postcode-not-listed': ({ text }) =>
    say(
      'No climate region is known for the postcode “{postcode}”, so we use {region}. Check it, or choose the region.',
      {
        postcode: text('postcode'),
        region: text('region'),
      },
    ),
  'british-tables': () =>
    say(
      'Hot water, boilers, heat pumps in use and the spread of prices follow British tables and studies, named in the sums. A yearly service has no price here. Type your own figures where you have them.',
    ),
  'design-temperature-asked': () =>
    say('A heat loss says nothing without the outdoor temperature that it was worked out for. Type it.'),
  'estimates-disagree': ({ number, text }) => {
    const reasons = text('likely')
      .split(',')
      .map((code) => code.trim())
      .filter(Boolean)
      .map(reasonName);
    const apart = say(
      '{way} {number, select, many {give} other {gives}} {heat}, {otherWay} {otherNumber, select, many {give} other {gives}} {otherHeat}. That is too far apart to be chance.',
      {
        way: capitalised(wayName(text('a'))),
        heat: spokenKWh(number('aKWh')),
        otherWay: wayName(text('b')),
        number: numberOfWay(text('a')),
        otherNumber: numberOfWay(text('b')),
        otherHeat: spokenCount(number('bKWh')),
      },
    );
    if (reasons.length === 0) return apart;
    return `${apart} ${say('Likely reasons: {reasons}.', { reasons: listed(reasons.slice(0, 3)) })}`;
  },
  'chosen-way-missing': ({ text }) =>
    say('The heat cannot be taken from {way}, as was chosen. The other ways are used until it is there.', {
      way: wayName(text('way')),
    }),
  'other-heat': ({ number, text }) => {
    const kind = say(OTHER_HEAT[text('kind')] ?? text('kind'));
    const unseen = say('Some heat comes from {kind}, and no meter sees it.', { kind });
    const left = say('It is not counted in. Without it the home needs more from its main heating.');
    if (!(number('perhapsKWh') > 0)) return `${unseen} ${left}`;
    return `${unseen} ${say('A usual one brings about {heat} a year.', { heat: spokenKWh(number('perhapsKWh')) })} ${left}`;
  },
  'electricity-in-the-cold': ({ number }) =>
    say(
      'The electricity rises with the cold, by about {use} a year. Do electric heaters warm some rooms? Their heat is not counted in. Solar panels could look alike, or a heat pump that runs already.',
      { use: spokenKWh(number('inColdKWh')) },
    ),
  'house-changed': ({ number, text }) => {
    const share = number('share');
    const on = text('on');
    const known = !Number.isNaN(Date.parse(on));
    const changed = say(
      'Since {known, select, yes {about {day}} other {some day}} this home takes {share} {way, select, more {more} other {less}} {carrier} in the same weather ({low} to {high}).',
      {
        known: known ? 'yes' : 'no',
        day: known ? longDate(on) : '',
        share: percent(Math.abs(share)),
        way: share > 0 ? 'more' : 'less',
        carrier: carrierName(text('carrier')),
        low: percent(Math.min(Math.abs(number('shareLow')), Math.abs(number('shareHigh')))),
        high: percent(Math.max(Math.abs(number('shareLow')), Math.abs(number('shareHigh')))),
      },
    );
    const sure = say('In {cases} cases out of 100 that is more than habit.', {
      cases: grouped(Math.min(99, Math.floor(100 * number('sure')))),
    });
    const why = say(
      share > 0 ? 'Did more people move in, or was it built on?' : 'Was it insulated, or was the boiler changed?',
    );
    const used = say(
      text('used') === 'after' ? 'The sums use the days since then.' : 'The sums still use all the readings.',
    );
    return `${changed} ${sure} ${why} ${used}`;
  },
  'whole-house-meter': ({ number }) =>
    say(
      'This meter counts the whole home. Of about {base} used in any weather, {water} are taken as hot water. The rest runs lights, appliances and anything else.',
      { base: spokenKWh(number('baseKWh')), water: spokenCount(number('waterKWh')) },
    ),
  'estimated-readings': ({ number }) =>
    say('About {share} of this record are estimated readings. Ask for the meter’s own readings.', {
      share: percent(number('share')),
    }),
  'further-meters-alone': ({ text }) =>
    say(
      'The {carrier} is that of further meters, and no main meter is here. Is it all that the home takes? If not, bring the main meter’s file.',
      { carrier: carrierName(text('carrier')) },
    ),
  'periods-left-out': ({ number }) =>
    say('We left out {bills} with no days or less than no use. Look at their dates and numbers.', {
      bills: counted(number('count'), 'bill or reading', 'bills or readings'),
    }),
  'no-heating-in-record': ({ text }) =>
    say('The {carrier} record does not rise when it gets colder. Was the home heated by something else?', {
      carrier: carrierName(text('carrier')),
    }),
  'record-scatter': ({ number }) =>
    say('The weather explains only {share} of this record. Long absences, a fire or wrong dates may stand behind it.', {
      share: percent(number('r2')),
    }),
  'record-uneven': ({ number, text }) =>
    say(
      '{period, select, month {Months} other {Bills}} stray by about {share} from what the weather explains. Did others live here for a time, or is a number wrong?',
      { period: text('period'), share: percent(number('cvRmse')) },
    ),
  'typical-weather-stands-in': ({ number, text }) =>
    say(
      'We have no weather for {days} of the readings, so we use a typical year in the region ({region}). A weather file would make the answer surer.',
      { days: counted(number('days'), 'day'), region: text('region') },
    ),
  'base-unexplained': ({ number }) =>
    say(
      'In a year about {heat} of heat go in any weather, beyond what the people use as hot water and for cooking. Pipes lose some of it. What else runs on it?',
      { heat: spokenKWh(number('leftoverKWh')) },
    ),
  'base-below-hot-water': ({ number }) =>
    say(
      'The record’s use in warm weather is less than hot water for {people} needs. Is the water heated another way?',
      { people: counted(number('people'), 'person', 'people') },
    ),
  'record-below-hot-water': ({ number }) =>
    say(
      'All that the record shows is less than hot water for {people} needs. Is its unit right, and is all of the fuel in it?',
      { people: counted(number('people'), 'person', 'people') },
    ),
  'total-only': ({ number }) =>
    say(
      'Only the total of {days} is known, so weather and hot water cannot be told apart. More dates would make it surer.',
      { days: counted(number('days'), 'day') },
    ),
  'heat-loss-zero': () => say('A heat loss of 0 cannot be. Type the heat loss in kW at the design temperature.'),
  'heat-loss-unlikely': ({ number }) => {
    const loss = grouped(number('heatLossWPerK'));
    const area = number('floorAreaM2');
    if (!(area > 0))
      return say('A heat loss of {loss} W for each degree is unusual. Check the figure and its unit.', { loss });
    return say('A heat loss of {loss} W for each degree is unusual for {area} m². Check the figure and its unit.', {
      loss,
      area: grouped(area),
    });
  },
  'room-below-design': ({ number }) =>
    say('The rooms are at {room}, not above the design outdoor temperature of {outdoor}. One of the two is wrong.', {
      room: degrees(number('roomC')),
      outdoor: degrees(number('designOutdoorC')),
    }),
  'design-temperature-assumed': ({ number, text }) =>
    say(
      'No design temperature was given, so {outdoor} is taken ({place}, the {rule} set). Two sets are in use, so ask which one the heat loss was made for.',
      { outdoor: degrees(number('outdoorC')), place: text('place'), rule: text('rule') },
    ),
  'efficiency-above-one': ({ number }) =>
    say('A boiler that gives {share} gives more than it burns. Some papers count that way, yet it is rare in a home.', {
      share: percent(number('efficiency')),
    }),
};

const MACHINE: Readonly<Record<MachineQuestionCode | FullQuestionCode, Sentence>> = {
  'factor-refused': ({ number }) =>
    say(
      'A factor of {found} cannot be. It must lie between {low} and {high}, so it is left out until you correct it.',
      {
        found: factor(number('found')),
        low: grouped(number('low')),
        high: grouped(number('high')),
      },
    ),
  'factor-from-field': ({ number }) =>
    say(
      'No seasonal factor was given, so we use the middle of metered homes: {middle}, most between {low} and {high}.',
      {
        middle: factor(number('middle')),
        low: factor(number('low')),
        high: factor(number('high')),
      },
    ),
  'factor-above-field': ({ number }) =>
    say('A factor of {typed} is above what most metered homes reach, {low} to {high}. What makes this home better?', {
      typed: factor(number('typed')),
      low: factor(number('low')),
      high: factor(number('high')),
    }),
  'factor-above-flow': ({ number }) =>
    say(
      'A factor of {typed} with water at {flow} is above what most metered homes would reach at that flow, {high}. Is it for cooler water?',
      { typed: factor(number('typed')), flow: degrees(number('flowC')), high: factor(number('high')) },
    ),
  'boundary-not-named': ({ text }) =>
    say(
      'It is not given what the seasonal factor counts. We take it as {taken}: with brine pump and backup heater, without the pumps in the home. Look in the data sheet.',
      { taken: text('taken') },
    ),
  'water-factor-derived': ({ number }) =>
    say('No factor for hot water was given. From {typed} for the rooms we take {derived}, with a wider range.', {
      typed: factor(number('typed')),
      derived: factor(number('derived')),
    }),
  'water-factor-above-space': ({ number }) =>
    say(
      'The factor for hot water, {water}, is above the one for the rooms, {space}. Hot water is hotter, so it is usually below. Are they swapped?',
      { water: factor(number('water')), space: factor(number('space')) },
    ),
  'points-assumed': () =>
    say(
      'No points of the data sheet were given, so we use those of a usual heat pump. Type two or more from the sheet, such as B0/W35 and B0/W55.',
    ),
  'points-bent': () =>
    say(
      'In the points of the data sheet a harder task gives a better figure. That cannot be, so the worse of the two is used. Check them.',
    ),
  'brine-too-cold': ({ number }) =>
    say(
      'The brine from the ground would come in at {coldest} on the coldest day. A larger array keeps it above {frost}.',
      { coldest: degrees(number('coldestC')), frost: degrees(0) },
    ),
  'capacity-short': ({ number }) =>
    say(
      'The heat pump is too small for the coldest days. The backup heater gives {share} of the heat. Check its output and the heat loss.',
      { share: percent(number('share')) },
    ),
  'full-above-field': ({ number }) =>
    say(
      'The sum gives a seasonal factor of {reckoned}, above what most metered homes reach, {low} to {high}. What makes this home better?',
      { reckoned: factor(number('reckoned')), low: factor(number('low')), high: factor(number('high')) },
    ),
  'array-depth-refused': ({ number, text }) =>
    say(
      'A depth of {found} m does not suit {kind, select, vertical {boreholes} other {pipes in a trench}}. It should lie between {low} and {high} m, so the usual depth is taken.',
      {
        found: grouped(number('found')),
        kind: text('kind'),
        low: grouped(number('low')),
        high: grouped(number('high')),
      },
    ),
};

const COST: Readonly<Record<Exclude<PriceQuestionCode | CostQuestionCode, `tariff-${TariffFaultCode}`>, Sentence>> = {
  'prices-old': ({ number, text }) =>
    say('The {fuel} prices used here ended {days} ago. Type today’s prices before you give an estimate.', {
      fuel: carrierName(text('fuel')),
      days: counted(number('days'), 'day'),
    }),
  'prices-not-yet': ({ text }) =>
    say('The {fuel} prices used here begin only on {date}. Type the prices of the day itself.', {
      fuel: carrierName(text('fuel')),
      date: Number.isNaN(Date.parse(text('from'))) ? text('from') : longDate(text('from')),
    }),
  'tariff-missing': ({ text }) =>
    say(
      'The {fuel} tariff chosen for this home is no longer there. The built-in price is used, so choose a tariff again.',
      { fuel: carrierName(text('fuel')) },
    ),
  'blocks-other-use': ({ number, text }) => {
    const much = say(
      '“{tariff}” has steps. About {use} a year of other electricity fill the first ones, and the heating pays what comes on top.',
      { tariff: text('tariff'), use: spokenKWh(number('kWh')) },
    );
    if (text('grade') !== 'assumed') return `${much} ${say('That is taken from this home’s own record.')}`;
    const usual = say('That is the usual use of such a home. A year of its electricity bills would make it surer.');
    return `${much} ${usual}`;
  },
  'power-charge-counted': ({ number, text }) =>
    say(
      '“{tariff}” charges for the highest half-hour of each month. The home alone reaches {home}, with the heat pump about {together} if it runs evenly. That adds {amount} a year, counted with the standing charge.',
      {
        tariff: text('tariff'),
        home: kW(number('homeKW')),
        together: kW(number('withKW')),
        amount: spokenPounds(number('pence')),
      },
    ),
  'power-charge-unknown': ({ number, text }) => {
    const gaps = { tariff: text('tariff'), amount: spokenPounds(number('pence')) };
    if (text('why') === 'no-half-hours') {
      return say(
        '“{tariff}” charges for the highest half-hour of each month. Nobody can know that without half-hourly readings, so it is not counted. Each kW more costs {amount} a year. Ask for the meter’s half-hourly record.',
        gaps,
      );
    }
    return say(
      '“{tariff}” charges for the highest half-hour of each month. This meter counts heating too, so what the heat pump adds cannot be known. It is not counted. Each kW more costs {amount} a year. Ask what power the home uses without heating.',
      gaps,
    );
  },
  'power-agreed': ({ number, text }) =>
    say(
      '“{tariff}” charges for {power} agreed, {amount} a year whatever heats the home, so it is not in the comparison. Ask whether the heat pump needs more.',
      { tariff: text('tariff'), power: kW(number('kW')), amount: spokenPounds(number('pence')) },
    ),
  'tariff-other-fuel': ({ text }) =>
    say('The tariff chosen for {fuel} is one for another fuel. The built-in price is used, so choose a tariff again.', {
      fuel: carrierName(text('fuel')),
    }),
  'fuel-price-unusual': ({ number, text }) =>
    say('The price of {fuel}, {price}, is unusual. Most lie between {low} and {high}. Is it in pence?', {
      fuel: carrierName(text('fuel')),
      price: pence(number('pence')),
      low: pence(number('low'), 0),
      high: pence(number('high'), 0),
    }),
  'present-price-asked': ({ text }) =>
    say(
      'What heating costs now cannot be said: nobody has typed the price of {fuel}, and none is built in here. Type it.',
      {
        fuel: carrierName(text('fuel')),
      },
    ),
  'present-not-priced': () =>
    say(
      'We cannot say what heating costs now, since we have no price for its kind. Choose the nearest kind, or leave the comparison out.',
    ),
  'present-assumed': () =>
    say('What heats the home now is not given, so we assume a gas boiler. Choose it under “Heat needed”.'),
  'efficiency-refused': ({ number }) =>
    say(
      'An efficiency of {found} cannot be. It must lie above 0 and be at most {high}, so it is left out until you correct it.',
      { found: percent(number('found')), high: percent(number('high')) },
    ),
};

const CATALOGUE = { ...DEMAND, ...MACHINE, ...COST };

export function questionSentence(question: Pick<Question, 'code' | 'data'>): string {
  const sentence = lookUp(CATALOGUE, question.code);
  const fault = question.code.replace(/^tariff-/, '');
  if (!sentence && TARIFF_FAULT_CODES.includes(fault)) {
    return say('“{tariff}”: {fault}', {
      tariff: readGaps(question.data).text('tariff'),
      fault: tariffFaultSentence({ code: fault, data: question.data }),
    });
  }
  return sentence ? sentence(readGaps(question.data)) : unknownSentence(question.code);
}
