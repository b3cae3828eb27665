/** What the numbers cannot settle, as sentences with likely reasons. One catalogue; a test holds the model's codes against it. */
import type { Question } from '../model/appraisal/appraisal.ts';
import { wayName } from './heat.ts';
import {
  capitalised,
  counted,
  degrees,
  factor,
  grouped,
  listed,
  longDate,
  percent,
  spokenCount,
  spokenKWh,
  spokenPounds,
} from './numbers.ts';
import { TARIFF_FAULT_CODES, tariffFaultSentence } from './refusals.ts';
import { carrierName } from './systems.ts';

const kW = (value: number): string => `${grouped(value, 1)} kW`;

interface Data {
  readonly number: (name: string) => number;
  readonly text: (name: string) => string;
}
type Sentence = (data: Data) => string;

/** Reasons why two estimates differ. */
const REASONS: Readonly<Record<string, string>> = {
  'unheated-rooms': 'rooms that are not heated',
  'cooler-rooms': 'rooms kept cooler than reckoned',
  'warmer-rooms': 'rooms kept warmer than reckoned',
  'other-heat': 'heat that no meter sees, such as a stove',
  efficiency: 'a boiler that works better or worse than reckoned',
  'heat-loss-too-low': 'a heat loss that was put too low',
  'estimated-bills': 'bills with estimated readings',
};

/** Codes of reasons that have words. */
export const REASON_CODES: readonly string[] = Object.keys(REASONS);

export function reasonName(code: string): string {
  return REASONS[code] ?? code.replaceAll('-', ' ');
}

const OTHER_HEAT: Readonly<Record<string, string>> = {
  'wood stove': 'the wood stove',
  'open fire': 'the open fire',
  'electric heaters': 'the electric heaters',
  'solar thermal': 'the solar panels for hot water',
};

const DEMAND: Readonly<Record<string, Sentence>> = {
  'demand-unknown': ({ number }) =>
    `Nothing is known of this home’s heat yet. A typical home of about ${spokenKWh(number('spaceKWh'))} stands in. Add a record, the heat loss or the floor area.`,
  'estimates-disagree': ({ number, text }) => {
    const reasons = text('likely')
      .split(',')
      .map((code) => code.trim())
      .filter(Boolean)
      .map(reasonName);
    const why = reasons.length > 0 ? ` Likely reasons: ${listed(reasons.slice(0, 3))}.` : '';
    return `${capitalised(wayName(text('a')))} says ${spokenKWh(number('aKWh'))}, ${wayName(text('b'))} says ${spokenCount(number('bKWh'))}. That is too far apart for chance.${why}`;
  },
  'chosen-way-missing': ({ text }) =>
    `The heat cannot be taken from ${wayName(text('way'))}, as was chosen. The other ways are used until it is there.`,
  'other-heat': ({ number, text }) => {
    const kind = OTHER_HEAT[text('kind')] ?? text('kind');
    const much = number('perhapsKWh') > 0 ? ` A usual one brings about ${spokenKWh(number('perhapsKWh'))} a year.` : '';
    return `Some heat comes from ${kind}, and no meter sees it.${much} It is not counted in. Without it the home needs more from its main heating.`;
  },
  'house-changed': ({ number, text }) => {
    const share = number('share');
    const on = Number.isNaN(Date.parse(text('on'))) ? 'some day' : `about ${longDate(text('on'))}`;
    const carrier = carrierName(text('carrier'));
    const low = percent(Math.min(Math.abs(number('shareLow')), Math.abs(number('shareHigh'))));
    const high = percent(Math.max(Math.abs(number('shareLow')), Math.abs(number('shareHigh'))));
    const more = share > 0 ? 'more' : 'less';
    const why =
      share > 0 ? 'Did more people move in, or was it built on?' : 'Was it insulated, or was the boiler changed?';
    const rest =
      text('used') === 'after' ? 'The sums use the days since then.' : 'The sums still use the whole record.';
    return `Since ${on} this home takes ${percent(Math.abs(share))} ${more} ${carrier} in the same weather (${low} to ${high}). In ${grouped(Math.min(99, Math.floor(100 * number('sure'))))} cases out of 100 that is more than habit. ${why} ${rest}`;
  },
  'whole-house-meter': ({ number }) =>
    `This meter counts the whole home. Of about ${spokenKWh(number('baseKWh'))} used in any weather, ${spokenCount(number('waterKWh'))} are taken as hot water. The rest runs lights, appliances and anything else.`,
  'estimated-readings': ({ number }) =>
    `About ${percent(number('share'))} of this record are estimated readings. Ask for the meter’s own readings.`,
  'periods-left-out': ({ number }) =>
    `We left out ${counted(number('count'), 'bill or reading', 'bills or readings')} with no days or less than no use. Look at their dates and numbers.`,
  'no-heating-in-record': ({ text }) =>
    `The ${carrierName(text('carrier'))} record does not rise when it gets colder. Was the home heated by something else?`,
  'record-scatter': ({ number }) =>
    `The weather explains only ${percent(number('r2'))} of this record. Long absences, a fire or wrong dates may stand behind it.`,
  'typical-weather-stands-in': ({ number, text }) =>
    `We have no weather for ${counted(number('days'), 'day')} of the record. A typical year of the region (${text('region')}) stands in. A weather file would make the answer surer.`,
  'base-unexplained': ({ number }) =>
    `In a year about ${spokenKWh(number('leftoverKWh'))} of heat go in any weather, beyond what the people use as hot water and for cooking. Pipes lose some of it. What else runs on it?`,
  'base-below-hot-water': ({ number }) =>
    `The record’s use in warm weather is less than hot water for ${counted(number('people'), 'person', 'people')} needs. Is the water heated another way?`,
  'total-only': ({ number }) =>
    `Only the total of ${counted(number('days'), 'day')} is known, so weather and hot water cannot be told apart. More dates would make it surer.`,
  'heat-loss-zero': () => 'A heat loss of 0 cannot be. Type the heat loss in kW at the design temperature.',
  'heat-loss-unlikely': ({ number }) => {
    const area = number('floorAreaM2');
    const size = area > 0 ? ` for ${grouped(area)} m²` : '';
    return `A heat loss of ${grouped(number('heatLossWPerK'))} W for each degree is unusual${size}. Check the figure and its unit.`;
  },
  'room-below-design': ({ number }) =>
    `The rooms are at ${degrees(number('roomC'))}, not above the design outdoor temperature of ${degrees(number('designOutdoorC'))}. One of the two is wrong.`,
  'design-temperature-assumed': ({ number, text }) =>
    `No design temperature was given, so ${degrees(number('outdoorC'))} is taken (${text('place')}, the ${text('rule')} set). Two sets are in use, so ask which one the heat loss was made for.`,
  'efficiency-above-one': ({ number }) =>
    `A boiler that gives ${percent(number('efficiency'))} gives more than it burns. Some papers count that way, yet it is rare in a home.`,
};

const MACHINE: Readonly<Record<string, Sentence>> = {
  'factor-refused': ({ number }) =>
    `A factor of ${factor(number('found'))} cannot be. It must lie between ${grouped(number('low'))} and ${grouped(number('high'))}, so it is left out until you correct it.`,
  'factor-from-field': ({ number }) =>
    `No factor was given, so the middle of metered homes stands in: ${factor(number('middle'))}, most between ${factor(number('low'))} and ${factor(number('high'))}.`,
  'factor-above-field': ({ number }) =>
    `A factor of ${factor(number('typed'))} is above what most metered homes reach, ${factor(number('low'))} to ${factor(number('high'))}. What makes this home better?`,
  'boundary-not-named': ({ text }) =>
    `Nobody said what the factor counts. We take it as ${text('taken')}: pumps for the heat and the backup heater, without the pumps in the home. Ask the maker’s sheet.`,
  'water-factor-derived': ({ number }) =>
    `No factor for hot water was given. From ${factor(number('typed'))} for the rooms we take ${factor(number('derived'))}, with a wider range.`,
  'water-factor-above-space': ({ number }) =>
    `The factor for hot water, ${factor(number('water'))}, is above the one for the rooms, ${factor(number('space'))}. Hot water is hotter, so it is usually below. Are they swapped?`,
  'points-assumed': () =>
    'No points of the data sheet were given, so those of a usual machine stand in. Type two or more from the sheet, such as B0/W35 and B0/W55.',
  'points-bent': () =>
    'In the points of the data sheet a harder task gives a better figure. That cannot be, so the worse of the two is used. Check them.',
  'brine-too-cold': ({ number }) =>
    `The fluid from the ground would come in at ${degrees(number('coldestC'))} on the coldest day. A larger array keeps it above ${degrees(0)}.`,
  'capacity-short': ({ number }) =>
    `The machine is too small for the coldest days. The backup heater gives ${percent(number('share'))} of the heat. Check its output and the heat loss.`,
  'full-above-field': ({ number }) =>
    `The sum gives a factor of ${factor(number('reckoned'))}, above what most metered homes reach, ${factor(number('low'))} to ${factor(number('high'))}. What makes this home better?`,
  'array-depth-refused': ({ number, text }) =>
    `A depth of ${grouped(number('found'))} m does not suit ${text('kind') === 'vertical' ? 'boreholes' : 'pipes in a trench'}. It should lie between ${grouped(number('low'))} and ${grouped(number('high'))} m, so the usual depth is taken.`,
};

const COST: Readonly<Record<string, Sentence>> = {
  'prices-old': ({ number, text }) =>
    `The ${carrierName(text('fuel'))} prices used here ended ${counted(number('days'), 'day')} ago. Put in today’s before anything is promised.`,
  'tariff-missing': ({ text }) =>
    `The ${carrierName(text('fuel'))} tariff chosen for this home is not there any more. The built-in price stands in, so choose a tariff again.`,
  'blocks-other-use': ({ number, text }) => {
    const much = `“${text('tariff')}” has steps. About ${spokenKWh(number('kWh'))} a year of other electricity fill the first ones, and the heating pays what comes on top.`;
    if (text('grade') !== 'assumed') return `${much} That is taken from this home’s own record.`;
    return `${much} That is the usual use of such a home. A year of its electricity bills would make it surer.`;
  },
  'power-charge-counted': ({ number, text }) =>
    `“${text('tariff')}” charges for the highest half-hour of each month. The home alone reaches ${kW(number('homeKW'))}, with the heat pump about ${kW(number('withKW'))} if it runs evenly. That adds ${spokenPounds(number('pence'))} a year, counted with the standing charge.`,
  'power-charge-unknown': ({ number, text }) => {
    const each = `Each kW more costs ${spokenPounds(number('pence'))} a year.`;
    if (text('why') === 'no-half-hours') {
      return `“${text('tariff')}” charges for the highest half-hour of each month. Nobody can know that without half-hourly readings, so it is not counted. ${each} Ask for the meter’s half-hourly record.`;
    }
    return `“${text('tariff')}” charges for the highest half-hour of each month. This meter counts the old heating too, so what a new one adds cannot be known. It is not counted. ${each} Ask what power the home uses without heating.`;
  },
  'power-agreed': ({ number, text }) =>
    `“${text('tariff')}” charges for ${kW(number('kW'))} agreed, ${spokenPounds(number('pence'))} a year whatever heats the home, so it is not in the comparison. Ask whether the heat pump needs more.`,
  'tariff-other-fuel': ({ text }) =>
    `The tariff chosen for ${carrierName(text('fuel'))} is one for another fuel. The built-in price stands in, so choose a tariff again.`,
  'present-not-priced': () =>
    'We cannot say what heating costs now, since its kind is not one we can price. Choose the nearest kind, or leave it out.',
  'efficiency-refused': ({ number }) =>
    `An efficiency of ${percent(number('found'))} cannot be. It must lie above 0 and be at most ${percent(number('high'))}, so it is left out until you correct it.`,
};

const CATALOGUE: Readonly<Record<string, Sentence>> = { ...DEMAND, ...MACHINE, ...COST };

/** Codes that have a sentence. */
export const QUESTION_CODES: readonly string[] = Object.keys(CATALOGUE);

export function questionSentence(question: Pick<Question, 'code' | 'data'>): string {
  const sentence = CATALOGUE[question.code];
  const fault = question.code.replace(/^tariff-/, '');
  if (!sentence && TARIFF_FAULT_CODES.includes(fault)) {
    return `“${question.data.tariff}”: ${tariffFaultSentence({ code: fault, data: question.data })}`;
  }
  if (!sentence) return `${capitalised(question.code.replaceAll('-', ' '))}.`;
  return sentence({
    number: (name) => Number(question.data[name] ?? Number.NaN),
    text: (name) => String(question.data[name] ?? ''),
  });
}
