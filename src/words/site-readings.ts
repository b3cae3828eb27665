/** What the plant shows, in words: what was found, what it can mean, what to look at first. Never a certain diagnosis. */

import type {
  Band,
  ExpectedFrom,
  Misreading,
  PressureBasis,
  SiteField,
  SiteGap,
  SiteQuantity,
  SiteRemark,
  SiteUnit,
  SiteValue,
} from '../model/shapes/site-readings.ts';
import { isRefused } from '../model/shapes/site-readings.ts';
import type { BrineFall } from '../model/site-readings/brine-course.ts';
import type { Caution } from '../model/site-readings/cautions.ts';
import type { SiteCheck } from '../model/site-readings/check-site.ts';
import type { CauseId, Level, LikelyCause, NamedCause } from '../model/site-readings/likely-causes.ts';
import type { Trade } from '../model/site-readings/signs.ts';
import { capitalised, grouped, listed, listedOr, longDate } from './numbers.ts';
import { phrase, say } from './say.ts';
import { sayTold } from './say-told.ts';

const QUANTITIES: Readonly<Record<SiteQuantity, string>> = {
  'brine-in': phrase('brine coming in'),
  'brine-drop': phrase('brine in less brine out'),
  'brine-heat': phrase('heat taken from the brine'),
  flow: phrase('flow temperature'),
  'water-spread': phrase('flow less return'),
  'water-heat': phrase('heat given to the water'),
  'heat-balance': phrase('heat by the water against heat by the brine'),
  cop: phrase('heat for each unit of electricity just now (COP)'),
  evaporating: phrase('boiling point at the suction pressure'),
  condensing: phrase('condensing point at the discharge pressure'),
  'evaporator-approach': phrase('brine out less boiling point'),
  'condenser-approach': phrase('condensing point less flow'),
  superheat: phrase('suction gas above its boiling point (superheat)'),
  subcooling: phrase('liquid below its condensing point (subcooling)'),
  discharge: phrase('hot gas temperature'),
  'pressure-ratio': phrase('discharge pressure over suction pressure'),
  current: phrase('compressor current against its usual one'),
  'valve-opening': phrase('opening of the expansion valve'),
  'at-rest': phrase('at rest: boiling point at the pressure less temperature'),
  'glycol-share': phrase('glycol by weight'),
  freezing: phrase('freezing point of the brine'),
  'frost-margin': phrase('freezing point below the coldest brine'),
};
export const quantityName = (quantity: SiteQuantity): string => say(QUANTITIES[quantity]);

const FIELDS: Readonly<Record<SiteField, string>> = {
  brineInC: phrase('brine in'),
  brineOutC: phrase('brine out'),
  brineFlowLPerMin: phrase('flow rate of the brine'),
  coldestBrineC: phrase('coldest brine of the season'),
  glycol: phrase('kind and share of glycol'),
  flowC: phrase('flow temperature'),
  returnC: phrase('return temperature'),
  waterFlowLPerMin: phrase('flow rate of the water'),
  inputKW: phrase('input power'),
  refrigerant: phrase('refrigerant'),
  suction: phrase('suction pressure'),
  discharge: phrase('discharge pressure'),
  suctionC: phrase('suction pipe temperature'),
  dischargeC: phrase('discharge pipe temperature'),
  liquidC: phrase('liquid pipe temperature'),
  currentA: phrase('compressor current'),
  usualCurrentA: phrase('usual current'),
  valveOpenPercent: phrase('opening of the expansion valve'),
  restPressure: phrase('pressure at rest'),
  restC: phrase('temperature at rest'),
};
const siteFieldName = (field: SiteField): string => say(FIELDS[field]);

/** "4.2 K", "−3.1 °C", "3.62". A difference of temperatures is in K, which are the same steps as °C. */
export function siteNumber(value: number, unit: SiteUnit): string {
  const text = grouped(value, unit === '' ? 2 : 1);
  return unit === '' ? text : unit === '%' ? say('{count}%', { count: text }) : `${text} ${unit}`;
}

export function bandText({ band, unit }: Pick<SiteValue, 'band' | 'unit'>): string {
  if (band === null || (band.low === null && band.high === null)) return say('no usual band');
  if (band.high === null) return say('{value} or more', { value: siteNumber(band.low!, unit) });
  if (band.low === null) return say('{value} or less', { value: siteNumber(band.high, unit) });
  return say('{low} to {high}', {
    low: siteNumber(band.low, unit).replace(/\s?(°C|K|kW|%)$/, ''),
    high: siteNumber(band.high, unit),
  });
}

/** One result and where it stands. */
export function standingSentence(value: SiteValue): string {
  const quantity = capitalised(quantityName(value.quantity));
  const found = siteNumber(value.value, value.unit);
  if (value.standing === 'no band') return say('{quantity}: {found}.', { quantity, found });
  const stands = say(
    '{quantity}: {found}, {standing, select, inside {inside} above {above} other {below}} the usual {band}.',
    { quantity, found, standing: value.standing, band: bandText(value) },
  );
  if (value.expected === undefined) return stands;
  return `${stands} ${expectedSentence(value.expected, value)}`;
}

/** What is worth saying of a visit: the COP, and each result outside its usual band. */
export const worthSaying = ({ values }: Pick<SiteCheck, 'values'>): SiteValue[] =>
  values.filter(({ quantity, standing }) => quantity === 'cop' || standing === 'above' || standing === 'below');

function expectedSentence(expected: number, { unit, expectedFrom }: SiteValue): string {
  const value = siteNumber(expected, unit);
  if (expectedFrom === 'rated-points')
    return say('At these temperatures we expect about {value}, from the rated points of this machine.', { value });
  if (expectedFrom === 'usual-machine')
    return say('At these temperatures we expect about {value}, from the points of a usual machine.', { value });
  return say('We expect about {value}.', { value });
}

const EXPECTED: Readonly<Record<ExpectedFrom, string>> = {
  'rated-points': phrase('we expect {value}, from its rated points'),
  'usual-machine': phrase('we expect {value}, from a usual machine’s points'),
  'any-machine': phrase('we expect {value}'),
};
/** What is expected, for a cell of a table: "we expect 4.32, from its rated points". */
export const expectedText = ({ expected, expectedFrom = 'any-machine', unit }: SiteValue): string | null =>
  expected === undefined ? null : say(EXPECTED[expectedFrom], { value: siteNumber(expected, unit) });

const DANGERS: Readonly<Partial<Record<CauseId, string>>> = {
  'glycol-weak': phrase('Urgent: the brine could freeze in the machine.'),
  'liquid-to-compressor': phrase('Urgent: liquid refrigerant may be reaching the compressor.'),
  'gas-too-hot': phrase('Urgent: the hot gas is so hot that it can harm the compressor.'),
};

/** What comes first: a danger; what cannot be; else how many readings stand outside. Never a diagnosis. */
export function siteSummary({ values, remarks, causes }: SiteCheck): string {
  const danger = causes.find(({ level }) => level === 'danger');
  if (danger) return say(DANGERS[danger.cause]!);
  const refused = remarks.filter(isRefused).length;
  if (refused > 0)
    return say(
      '{refused, plural, one {One reading cannot be} other {# readings cannot be}}. Read again before looking for a fault.',
      { refused },
    );
  const judged = values.filter((value) => value.standing !== 'no band');
  const outside = judged.filter((value) => value.standing !== 'inside').length;
  const all = judged.length;
  if (all === 0) return say('There is too little to judge by yet. Read more at the plant.');
  if (outside === 0)
    return say(
      '{all, plural, one {The one result lies in its usual band} other {All # results lie in their usual band}}. That does not rule out a fault at other times.',
      { all },
    );
  if (causes.length === 0)
    return say(
      '{outside} of {all} results {outside, plural, one {lies} other {lie}} outside the usual band, and no fault known here shows just this. Read again.',
      { outside, all },
    );
  return say(
    '{outside} of {all} results {outside, plural, one {lies} other {lie}} outside the usual band. These are hints, not a diagnosis.',
    { outside, all },
  );
}

/** A visit in short: a danger, what cannot be, else "COP 3.17. 3 results outside the usual band." */
export function visitSentence(check: SiteCheck): string {
  const { values, remarks, causes } = check;
  if (causes.some(({ level }) => level === 'danger')) return siteSummary(check);
  const refused = remarks.filter(isRefused).length;
  const cannot =
    refused > 0 ? say('{refused, plural, one {One reading cannot be} other {# readings cannot be}}.', { refused }) : '';
  const cop = values.find(({ quantity }) => quantity === 'cop');
  const judged = values.filter(({ standing }) => standing !== 'no band');
  if (judged.length === 0) return cannot || say('Too little to judge by.');
  const outside = say('{count, plural, =0 {Nothing} one {# result} other {# results}} outside the usual band.', {
    count: judged.filter(({ standing }) => standing !== 'inside').length,
  });
  const rest = cop ? say('COP {cop}. {outside}', { cop: siteNumber(cop.value, cop.unit), outside }) : outside;
  return cannot ? `${cannot} ${rest}` : rest;
}

/** What it may be, what to look at first, and its short name. */
const MEANINGS: Readonly<Record<CauseId, readonly [meaning: string, check: string, name: string]>> = {
  'readings-apart': [
    phrase('The readings may not belong together: taken at different moments, or one meter or sensor is off.'),
    phrase('Let it run steadily for ten minutes and read all again. Check the flow meter and how the sensors sit.'),
    phrase('readings that do not belong together'),
  ],
  'brine-flow-low': [
    phrase('Too little brine may be going round: a dirty filter, air in the loop, or the pump set too low.'),
    phrase('Look at the brine filter, the pump setting and the loop pressure. Listen for air.'),
    phrase('too little brine going round'),
  ],
  'ground-cold': [
    phrase('The ground loop may be giving all it can: too small, too hard worked, or at the end of a cold winter.'),
    phrase('Set today’s brine beside last year’s at the same time. Ask about more heating or hot water.'),
    phrase('a ground loop that gives all it can'),
  ],
  'glycol-weak': [
    phrase('The brine may be too weak and could freeze in the machine, even if it costs nothing yet.'),
    phrase('Test the brine with a refractometer, twice. Stop the machine if the brine may reach its freezing point.'),
    phrase('brine that is too weak'),
  ],
  'glycol-strong': [
    phrase('The brine may be stronger than it needs to be. It then carries less heat and is harder to pump.'),
    phrase('Test the brine with a refractometer, and ask whether the share was given by weight or by volume.'),
    phrase('brine that is too strong'),
  ],
  'water-flow-low': [
    phrase('Too little water may be going round: a dirty strainer, closed valves, or the pump set too low.'),
    phrase('Look at the strainer, once shut off and cool, then at valves, thermostats and the pump setting.'),
    phrase('too little water going round'),
  ],
  'water-flow-high': [
    phrase('More water may be going round than is needed, or the machine may be running at part power.'),
    phrase('Check the pump setting and a bypass, and whether the machine was at full power.'),
    phrase('more water than needed, or part power'),
  ],
  'flow-set-high': [
    phrase('The water may be hotter than the rooms need. It may also just have been heating the hot water tank.'),
    phrase('Ask whether hot water was being made. Then check the heating curve against the weather outside.'),
    phrase('water hotter than needed'),
  ],
  'heater-counted': [
    phrase('An electric heater may be running beside the machine, or be counted in the input power.'),
    phrase('Look at the heater’s hours and its switch in the controls. Measure the machine’s own supply.'),
    phrase('an electric heater that runs too'),
  ],
  'condenser-fouled': [
    phrase('Heat may be passing badly to the water: scale or sludge in the condenser.'),
    phrase('Check the water flow first. Then compare both sides of the strainer and ask about water treatment.'),
    phrase('scale or sludge in the condenser'),
  ],
  undercharge: [
    phrase('The machine may be short of refrigerant, which can mean a leak.'),
    phrase('Rule out low brine flow first. Then have a certified person look for traces of oil and test for leaks.'),
    phrase('too little refrigerant'),
  ],
  'valve-starving': [
    phrase('Too little liquid may be getting through: a blocked filter, or a valve that sticks shut.'),
    phrase('Rule out low brine flow first. Then have a certified person check the valve, its sensor and the filter.'),
    phrase('a blocked filter or valve in the liquid line'),
  ],
  'valve-flooding': [
    phrase('The expansion valve may be letting too much through. Liquid can then reach the compressor and harm it.'),
    phrase('Check first how the suction sensor sits. Then have a certified person check the valve and its sensor.'),
    phrase('a valve that lets too much through'),
  ],
  'compressor-weak': [
    phrase('The compressor may be worn. This is seldom so, and all else should be ruled out first.'),
    phrase('Check first that it ran at full power. Then have a certified person compare it with the maker’s sheet.'),
    phrase('a worn compressor'),
  ],
  misread: [
    phrase('A pressure or the refrigerant may have been read or chosen wrongly.'),
    phrase('Read the plate for the refrigerant, and the gauge for its unit. A gauge open to the air shows nought.'),
    phrase('a reading that is wrong'),
  ],
  'liquid-to-compressor': [
    phrase('Liquid refrigerant may be reaching the compressor, which can break it.'),
    phrase('Check how the suction sensor sits and read again. If it stays, stop the machine and have it looked into.'),
    phrase('liquid in the compressor'),
  ],
  'gas-too-hot': [
    phrase('The hot gas may be so hot that oil and compressor suffer.'),
    phrase('Stop the machine. Let a certified person find out why before it runs again.'),
    phrase('hot gas that is too hot'),
  ],
  'evaporator-fouled': [
    phrase('Heat may be passing badly from the brine: dirt in the evaporator.'),
    phrase('Check the brine flow first. Then look at the brine filter and at how clean the brine is.'),
    phrase('dirt in the evaporator'),
  ],
  'suction-restricted': [
    phrase('Something may be narrowing the pipe between evaporator and compressor.'),
    phrase('Have a certified person compare pressure and temperature on both sides of filters and valves.'),
    phrase('a narrowed suction line'),
  ],
  overcharge: [
    phrase('There may be too much refrigerant in the machine.'),
    phrase('Ask who filled it last. Have a certified person weigh it against the plate; nothing may be let off.'),
    phrase('too much refrigerant'),
  ],
  'air-in-circuit': [
    phrase('There may be air or another foreign gas in the refrigerant circuit.'),
    phrase('Ask whether the circuit was opened. Only a certified person may measure at rest and mend it.'),
    phrase('air in the circuit'),
  ],
};
const BASES: Readonly<Record<PressureBasis, string>> = { gauge: phrase('gauge'), absolute: phrase('absolute') };

/** "the pressures were read in psi": what was meant instead of what was typed. */
function meantText(meant: Misreading): string {
  if (meant.kind === 'refrigerant') return say('the refrigerant is {name}', { name: meant.refrigerant });
  if (meant.kind === 'basis') return say('the pressures are {basis}', { basis: say(BASES[meant.basis]) });
  if (meant.kind === 'unit') return say('the pressures are in {unit}', { unit: meant.unit });
  return say('suction and discharge were exchanged');
}
export const causeSentence = ({ cause, meant }: NamedCause): string =>
  meant
    ? say('A reading may be wrong rather than the machine: all would fit if {meant}.', { meant: meantText(meant) })
    : say(MEANINGS[cause][0]);
export const firstCheckSentence = (cause: CauseId): string => say(MEANINGS[cause][1]);
const causeName = ({ cause, meant }: NamedCause): string => (meant ? meantText(meant) : say(MEANINGS[cause][2]));

const LEVEL_NAMES: Readonly<Record<Level, string>> = {
  danger: phrase('Urgent:'),
  balance: phrase('Before anything else:'),
  cause: '',
};
export const levelName = (level: Level): string => (level === 'cause' ? '' : say(LEVEL_NAMES[level]));

/** That another refrigerant may be in the machine; empty where nothing speaks for that. */
export function alikeSentence({ alike }: Pick<SiteCheck, 'alike'>): string {
  if (alike === null) return '';
  const names = { names: listedOr(alike.others) };
  return alike.by === 'hot-gas'
    ? say('The hot gas fits {names} better, and the pressures fit as well. Read the name on the plate.', names)
    : say('The pressures fit {names} too; only the name on the plate or the hot gas can tell.', names);
}

/** What to look at first: where a slip may be all, that, since it is the least work. */
export function firstChecks({ cause, orElse }: LikelyCause): string {
  const slip = cause !== 'misread' && orElse.some((one) => one.cause === 'misread');
  return [...(slip ? [firstCheckSentence('misread')] : []), firstCheckSentence(cause)].join(' ');
}

/** The other causes of one question: "Or: …". */
export const orElseSentences = ({ orElse }: LikelyCause): string[] =>
  orElse.map((one) => say('Or: {cause}', { cause: causeSentence(one) }));

/** What would tell the causes of a question apart; an empty text where there is only one cause. */
export function settlingSentence({ cause, orElse, settling }: LikelyCause): string {
  if (orElse.length === 0) return '';
  // How a gauge was read is told by looking at it, which is what is said first of a slip.
  if (settling === null && [cause, ...orElse.map((one) => one.cause)].includes('misread')) return '';
  if (settling === null) return say('Nothing more to be read would tell these apart; it takes a look inside.');
  const { by, above, inside, below } = settling;
  const causes = (list: readonly NamedCause[]) => ({ causes: listedOr(list.map(causeName)) });
  return [
    readNext(by),
    ...(above.length > 0 ? [say('Above the usual: {causes}.', causes(above))] : []),
    ...(inside.length > 0 ? [say('In the usual band: {causes}.', causes(inside))] : []),
    ...(below.length > 0 ? [say('Below the usual: {causes}.', causes(below))] : []),
  ].join(' ');
}

function readNext(quantity: SiteQuantity): string {
  if (quantity === 'at-rest')
    return say(
      'To tell these apart, stop the machine, wait until both pressures are even, and read pressure and temperature.',
    );
  if (quantity === 'valve-opening')
    return say('To tell these apart, read in the controls how far the expansion valve is open.');
  return say('To tell these apart, read what “{quantity}” needs.', { quantity: quantityName(quantity) });
}

/** One cause or question in full, for paper and terminal: what it may be, what would tell, what to look at first, and who. */
export const plantCauseText = (cause: LikelyCause): string =>
  [
    levelName(cause.level),
    causeSentence(cause),
    ...orElseSentences(cause),
    settlingSentence(cause),
    firstChecks(cause),
    tradeSentence(cause.trade),
  ]
    .filter(Boolean)
    .join(' ');

/** Brine that falls over the visits: what was seen, and where a winter alone may bring it, that. */
export function brineFallSentence({ kind, from, to, fallK }: BrineFall): string {
  const gaps = {
    fall: siteNumber(fallK, 'K'),
    before: siteNumber(from.inC, '°C'),
    since: longDate(from.date),
    now: siteNumber(to.inC, '°C'),
    on: longDate(to.date),
  };
  return kind === 'years'
    ? say('At the same time of the year the brine is {fall} colder: {before} on {since}, {now} on {on}.', gaps)
    : say('The brine has fallen by {fall}: {before} on {since}, {now} on {on}.', gaps);
}

/** What falling brine can mean, and what to look at. */
const brineMeaningSentences = ({ kind, to }: BrineFall, { low }: Pick<Band, 'low'>): string[] => {
  if (kind === 'years')
    return [
      say(
        'The ground may not get back in summer what is taken in winter: the loop may be too small or too hard worked.',
      ),
      say('Ask about more heating or hot water, and read it again in the same week next year.'),
    ];
  const season = say('It falls every winter. What counts is the same week of another year.');
  const isCold = low !== null && to.inC < low;
  return isCold ? [season, causeSentence({ cause: 'ground-cold' }), firstCheckSentence('ground-cold')] : [season];
};

export const brineFallText = (fall: BrineFall, band: Pick<Band, 'low'>): string =>
  [brineFallSentence(fall), ...brineMeaningSentences(fall, band)].join(' ');

const TRADES: Readonly<Record<Trade, string>> = {
  installer: phrase('A heating installer may look into this.'),
  electrician: phrase('Only an electrician, or a person competent in electrics, may open this.'),
  refrigerant: phrase('Only a person certified for refrigerant may open this.'),
};
export const tradeSentence = (trade: Trade): string => say(TRADES[trade]);

/** Why a cause is listed, and what would settle it. */
export function evidenceSentence({ signs, against, unread }: LikelyCause): string {
  const names = (list: readonly SiteQuantity[]) => listed(list.map(quantityName));
  return [
    say('What points to it: {names}.', { names: names(signs) }),
    ...(against.length > 0 ? [say('What speaks against it: {names}.', { names: names(against) })] : []),
    ...(unread.length > 0 ? [say('Not known yet: {names}.', { names: names(unread) })] : []),
  ].join(' ');
}

export function gapSentence({ quantity, needs }: SiteGap): string {
  return say('For “{quantity}” we also need: {needs}.', {
    quantity: quantityName(quantity),
    needs: listed(needs.map(siteFieldName)),
  });
}

const CAUTION_TEXTS: Readonly<Record<Caution, string>> = {
  refrigerant: phrase(
    'Only people certified for it may open, fill or test the refrigerant circuit. Fitting gauges is such work.',
  ),
  flammable: phrase(
    'This refrigerant can burn. Keep sparks and flames away, air the room, and leave it to trained people.',
  ),
  electric: phrase('Switch off, lock off and prove dead before a panel is opened. Parts can stay charged for minutes.'),
  scald: phrase(
    'Water and pipes can scald. Let them cool, shut off and let the pressure down before a joint is opened.',
  ),
  'hot-pipe': phrase('The hot gas pipe can pass 100 °C. Do not touch it, and clip sensors on only when it is cool.'),
  glycol: phrase('Glycol can harm people, animals and water. Wear gloves and goggles, and never pour it down a drain.'),
  'pressure-switch': phrase('Never bridge a pressure switch or another safety device.'),
  'local-codes': phrase('Local codes, the maker’s instructions and permits come before anything said here.'),
};
export const cautionSentence = (caution: Caution): string => say(CAUTION_TEXTS[caution]);

const REMARKS: Readonly<Record<SiteRemark['code'], string>> = {
  'brine-not-cooled': phrase('The brine leaves no colder than it came. Check whether in and out were exchanged.'),
  'flow-not-warmer': phrase('The flow is no warmer than the return. Check whether the two were exchanged.'),
  'pressure-outside-table': phrase('This pressure lies outside our table. Check the unit, and gauge or absolute.'),
  'pressures-swapped': phrase(
    'The discharge pressure is not above the suction pressure. Check whether they were exchanged.',
  ),
  'discharge-not-hotter': phrase('The hot gas is no hotter than the suction gas. Check both sensors.'),
  'glycol-outside-table': phrase(
    'This share of glycol lies outside our table. Check it, and whether it is by weight or volume.',
  ),
  'no-pressure': phrase('A running machine has more pressure than that. Check the unit, and gauge or absolute.'),
  'above-critical': phrase('This refrigerant cannot condense at such a pressure. Check unit and refrigerant.'),
  'condensing-below-flow': phrase(
    'Refrigerant cannot heat water above its own condensing point. Check the refrigerant, and gauge or absolute.',
  ),
  'boiling-above-brine': phrase(
    'Brine cannot boil a refrigerant that is warmer than itself. Check the refrigerant, and gauge or absolute.',
  ),
  'suction-below-boiling': phrase(
    'The suction pipe cannot be colder than what boils in it. Check how its sensor sits, and the suction pressure.',
  ),
  'liquid-above-condensing': phrase(
    'The liquid cannot be warmer than where it condensed. Check the sensor, and the discharge pressure.',
  ),
  'gas-below-condensing': phrase(
    'The hot gas cannot be colder than its condensing point. Check the sensor, and the discharge pressure.',
  ),
  'cop-above-ideal': phrase('No machine can give so much heat. Check the flow meter and the input power.'),
  'water-outside-table': phrase('This water temperature lies outside our table. Check it.'),
  'refrigerant-missing': phrase('A pressure says nothing without its refrigerant. Read the name from the plate.'),
};

/** Which reading, what was found, what is expected, what to do, and with what all would fit. */
export function siteRemarkSentence({ code, where, found, expected, likely = [] }: SiteRemark): string {
  const seen = typeof found === 'number' ? grouped(found, 1) : found || say('not given');
  const reading = say('{field}: {found}; expected {expected}.', {
    field: capitalised(siteFieldName(where)),
    found: seen,
    expected: sayTold(expected),
  });
  return [
    isRefused({ code }) ? say('This cannot be.') : '',
    reading,
    say(REMARKS[code]),
    ...likely.map((meant) => say('All would fit if {meant}.', { meant: meantText(meant) })),
  ]
    .filter(Boolean)
    .join(' ');
}
