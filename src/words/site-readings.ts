/** What the plant shows, in words: what was found, what it can mean, what to look at first. Never a certain diagnosis. */
import type { CauseId, Caution, LikelyCause, Trade } from '../model/site-readings/likely-causes.ts';
import type {
  SiteField,
  SiteGap,
  SiteQuantity,
  SiteRemark,
  SiteUnit,
  SiteValue,
} from '../model/site-readings/site-readings.ts';
import { capitalised, counted, grouped, listed } from './numbers.ts';

const QUANTITIES: Readonly<Record<SiteQuantity, string>> = {
  'brine-in': 'brine coming in',
  'brine-drop': 'brine in less brine out',
  'brine-heat': 'heat taken from the brine',
  flow: 'flow temperature',
  'water-spread': 'flow less return',
  'water-heat': 'heat given to the water',
  'heat-balance': 'heat by the water against heat by the brine',
  cop: 'heat for each unit of electricity just now (COP)',
  evaporating: 'boiling point at the suction pressure',
  condensing: 'condensing point at the discharge pressure',
  'evaporator-approach': 'brine out less boiling point',
  'condenser-approach': 'condensing point less flow',
  superheat: 'suction gas above its boiling point (superheat)',
  subcooling: 'liquid below its condensing point (subcooling)',
  discharge: 'hot gas temperature',
  'pressure-ratio': 'discharge pressure over suction pressure',
  'glycol-share': 'glycol by weight',
  freezing: 'freezing point of the brine',
  'frost-margin': 'freezing point below the coldest brine',
};
export const quantityName = (quantity: SiteQuantity): string => QUANTITIES[quantity];

const FIELDS: Readonly<Record<SiteField, string>> = {
  brineInC: 'brine in',
  brineOutC: 'brine out',
  brineFlowLPerMin: 'flow rate of the brine',
  coldestBrineC: 'coldest brine of the season',
  glycol: 'kind and share of glycol',
  flowC: 'flow temperature',
  returnC: 'return temperature',
  waterFlowLPerMin: 'flow rate of the water',
  inputKW: 'input power',
  refrigerant: 'refrigerant',
  suction: 'suction pressure',
  discharge: 'discharge pressure',
  suctionC: 'suction pipe temperature',
  dischargeC: 'discharge pipe temperature',
  liquidC: 'liquid pipe temperature',
};
export const siteFieldName = (field: SiteField): string => FIELDS[field];

/** "4.2 K", "−3.1 °C", "3.62". A difference of temperatures is in K, which are the same steps as °C. */
export function siteNumber(value: number, unit: SiteUnit): string {
  const text = grouped(value, unit === '' ? 2 : 1);
  return unit === '' ? text : unit === '%' ? `${text}%` : `${text} ${unit}`;
}

export function bandText({ band, unit }: Pick<SiteValue, 'band' | 'unit'>): string {
  if (band === null || (band.low === null && band.high === null)) return 'no usual band';
  if (band.high === null) return `${siteNumber(band.low!, unit)} or more`;
  if (band.low === null) return `${siteNumber(band.high, unit)} or less`;
  return `${siteNumber(band.low, unit).replace(/ ?(°C|K|kW|%)$/, '')} to ${siteNumber(band.high, unit)}`;
}

/** One result and where it stands. */
export function standingSentence(value: SiteValue): string {
  const found = `${capitalised(quantityName(value.quantity))}: ${siteNumber(value.value, value.unit)}`;
  if (value.standing === 'no band') return `${found}.`;
  const expected = value.expected === undefined ? '' : ` We expect about ${siteNumber(value.expected, value.unit)}.`;
  const where = value.standing === 'inside' ? 'inside' : value.standing;
  return `${found}, ${where} the usual ${bandText(value)}.${expected}`;
}

/** What comes first: how many readings stand outside, and that this is no diagnosis. */
export function siteSummary(values: readonly SiteValue[]): string {
  const judged = values.filter((value) => value.standing !== 'no band');
  const outside = judged.filter((value) => value.standing !== 'inside');
  if (judged.length === 0) return 'There is too little to judge by yet. Read more at the plant.';
  if (outside.length === 0)
    return `All ${judged.length} results lie in their usual band. That does not rule out a fault at other times.`;
  return `${outside.length} of ${judged.length} results ${outside.length === 1 ? 'lies' : 'lie'} outside the usual band. These are hints, not a diagnosis.`;
}

/** A visit in short: "COP 3.17. 3 results outside the usual band." */
export function visitSentence(values: readonly SiteValue[]): string {
  const cop = values.find(({ quantity }) => quantity === 'cop');
  const judged = values.filter(({ standing }) => standing !== 'no band');
  if (judged.length === 0) return 'Too little to judge by.';
  const outside = judged.filter(({ standing }) => standing !== 'inside').length;
  const found = outside === 0 ? 'Nothing' : counted(outside, 'result');
  return `${cop ? `COP ${siteNumber(cop.value, cop.unit)}. ` : ''}${found} outside the usual band.`;
}

const MEANINGS: Readonly<Record<CauseId, readonly [meaning: string, check: string]>> = {
  'readings-apart': [
    'The readings may not belong together: taken at different moments, or one meter or sensor is off.',
    'Let it run steadily for ten minutes and read all again. Check the flow meter and how the sensors sit.',
  ],
  'brine-flow-low': [
    'Too little brine may be going round: a dirty filter, air in the loop, or the pump set too low.',
    'Look at the brine filter, the pump setting and the loop pressure. Listen for air.',
  ],
  'ground-cold': [
    'The ground loop may be giving all it can: too small, too hard worked, or at the end of a cold winter.',
    'Set today’s brine beside last year’s at the same time. Ask about more heating or hot water.',
  ],
  'glycol-weak': [
    'The brine may be too weak and could freeze in the machine. This is urgent, even if it costs nothing yet.',
    'Test the brine with a refractometer, twice. Stop the machine if the brine may reach its freezing point.',
  ],
  'glycol-strong': [
    'The brine may be stronger than it needs to be. It then carries less heat and is harder to pump.',
    'Test the brine with a refractometer, and ask whether the share was given by weight or by volume.',
  ],
  'water-flow-low': [
    'Too little water may be going round: a dirty strainer, closed valves, or the pump set too low.',
    'Look at the strainer, once shut off and cool, then at valves, thermostats and the pump setting.',
  ],
  'water-flow-high': [
    'More water may be going round than is needed, or the machine may be running at part power.',
    'Check the pump setting and a bypass, and whether the machine was at full power.',
  ],
  'flow-set-high': [
    'The water may be hotter than the rooms need. It may also just have been heating the hot water tank.',
    'Ask whether hot water was being made. Then check the heating curve against the weather outside.',
  ],
  'heater-counted': [
    'An electric heater may be running beside the machine, or be counted in the input power.',
    'Look at the heater’s hours and its switch in the controls. Measure the machine’s own supply.',
  ],
  'condenser-fouled': [
    'Heat may be passing badly to the water: scale or sludge in the condenser, or air in it.',
    'Check the water flow first. Then compare both sides of the strainer and ask about water treatment.',
  ],
  undercharge: [
    'The machine may be short of refrigerant, which can mean a leak.',
    'Rule out low brine flow first. Then have a certified person look for traces of oil and test for leaks.',
  ],
  'valve-starving': [
    'The expansion valve may be letting too little through, or its filter may be blocked.',
    'Rule out low brine flow first. Then have a certified person check the valve, its sensor and the filter.',
  ],
  'valve-flooding': [
    'The expansion valve may be letting too much through. Liquid can then reach the compressor and harm it.',
    'Check first how the suction sensor sits. Then have a certified person check the valve and its sensor.',
  ],
  'compressor-weak': [
    'The compressor may be worn. This is seldom so, and all else should be ruled out first.',
    'Have a certified person compare current and pressures with the maker’s sheet.',
  ],
};
export const causeSentence = (cause: CauseId): string => MEANINGS[cause][0];
export const firstCheckSentence = (cause: CauseId): string => MEANINGS[cause][1];

const TRADES: Readonly<Record<Trade, string>> = {
  installer: 'A heating installer may look into this.',
  electrician: 'Only an electrician, or a person competent in electrics, may open this.',
  refrigerant: 'Only a person certified for refrigerant may open this.',
};
export const tradeSentence = (trade: Trade): string => TRADES[trade];

/** Why a cause is listed, and what would settle it. */
export function evidenceSentence({ signs, against, unread }: LikelyCause): string {
  const names = (list: readonly SiteQuantity[]) => listed(list.map(quantityName));
  const speaks = `What points to it: ${names(signs)}.`;
  const counter = against.length > 0 ? ` What speaks against it: ${names(against)}.` : '';
  const open = unread.length > 0 ? ` Not known yet: ${names(unread)}.` : '';
  return `${speaks}${counter}${open}`;
}

export function gapSentence({ quantity, needs }: SiteGap): string {
  return `For “${quantityName(quantity)}” we also need: ${listed(needs.map(siteFieldName))}.`;
}

const CAUTION_TEXTS: Readonly<Record<Caution, string>> = {
  refrigerant:
    'Only people certified for it may open, fill or test the refrigerant circuit. Fitting gauges is such work.',
  flammable: 'This refrigerant can burn. Keep sparks and flames away, air the room, and leave it to trained people.',
  electric: 'Switch off, lock off and prove dead before a panel is opened. Parts can stay charged for minutes.',
  scald: 'Water and pipes can scald. Let them cool, shut off and let the pressure down before a joint is opened.',
  'hot-pipe': 'The hot gas pipe can pass 100 °C. Do not touch it, and clip sensors on only when it is cool.',
  glycol: 'Glycol can harm people, animals and water. Wear gloves and goggles, and never pour it down a drain.',
  'pressure-switch': 'Never bridge a pressure switch or another safety device.',
  'local-codes': 'Local codes, the maker’s instructions and permits come before anything said here.',
};
export const cautionSentence = (caution: Caution): string => CAUTION_TEXTS[caution];

const REMARKS: Readonly<Record<SiteRemark['code'], string>> = {
  'brine-not-cooled': 'The brine leaves no colder than it came. Check whether in and out were exchanged.',
  'flow-not-warmer': 'The flow is no warmer than the return. Check whether the two were exchanged.',
  'pressure-outside-table': 'This pressure lies outside our table. Check the unit, and gauge or absolute.',
  'pressures-swapped': 'The discharge pressure is not above the suction pressure. Check whether they were exchanged.',
  'discharge-not-hotter': 'The hot gas is no hotter than the suction gas. Check both sensors.',
  'glycol-outside-table':
    'This share of glycol lies outside our table. Check it, and whether it is by weight or volume.',
  'water-outside-table': 'This water temperature lies outside our table. Check it.',
  'refrigerant-missing': 'A pressure says nothing without its refrigerant. Read the name from the plate.',
};

/** Which reading, what was found, what is expected, what to do. */
export function siteRemarkSentence({ code, where, found, expected }: SiteRemark): string {
  const seen = found === '' ? 'not given' : typeof found === 'number' ? grouped(found, 1) : found;
  return `${capitalised(siteFieldName(where))}: ${seen}; expected ${expected}. ${REMARKS[code]}`;
}
