/** What readings show, in words: what was seen, when, how sure, what it costs, what to ask and what to check. */

import { addDays, clockTimeOf, daysBetween } from '../model/calendar/civil.ts';
import { NEARLY_A_YEAR_DAYS } from '../model/findings/behaviour.ts';
import type { CheckFinding } from '../model/shapes/bill-check.ts';
import type {
  AskCode,
  CautionCode,
  Finding,
  FindingCheckCode,
  FindingCode,
  OpenCause,
} from '../model/shapes/finding.ts';
import { tell } from '../model/shapes/told.ts';
import { grouped, listed, longDate, percent, spokenKWh, spokenPounds } from './numbers.ts';
import { phrase, say } from './say.ts';
import { sayTold } from './say-told.ts';

type Seen = Pick<Finding, 'code' | 'seen'>;

/** Short name of a finding, by its direction. */
export function findingName({ code, kWh }: Pick<Finding, 'code' | 'kWh'>): string {
  return sayTold(tell(code === 'behaviour-changed' && kWh < 0 ? 'found-less-used' : `found-${code}`));
}

const numberOf = ({ seen }: Seen, name: string): number => {
  const value = seen[name];
  return typeof value === 'number' ? value : Number.NaN;
};
/** "02:00" from 2, "13:30" from 13.5. */
const clock = (hour: number): string => {
  const minutes = Math.round((((hour % 24) + 24) % 24) * 60) % 1440;
  return clockTimeOf(minutes);
};
/** For a gap at the end of a sentence: when in the day, if that is known. */
const about = (hour: number): string =>
  Number.isFinite(hour) ? say(', mostly from about {time}', { time: clock(hour) }) : '';
const watts = (value: number): string => `${grouped(Math.round(value / 10) * 10)} W`;

/** Only what the days show of a change; nothing where they do not tell. */
const HOW_IT_CHANGED: Readonly<Record<string, string>> = {
  'with-the-cold': phrase('The colder the day, the larger the difference.'),
  'while-heated': phrase('The difference is there only while the home is heated.'),
  steady: phrase('The difference is the same on cold days and on mild ones.'),
  unclear: phrase('These days do not show whether the difference follows the cold.'),
};

const MAY: Readonly<Record<OpenCause, string>> = {
  'machine-works-less': phrase('a heat pump that works less well'),
  'more-heat': phrase('more heat asked for'),
  'rooms-warmer': phrase('warmer rooms'),
  'backup-heater': phrase('the backup heater'),
  'plug-in-heaters': phrase('plug-in heaters'),
  'more-water': phrase('more hot water'),
  'water-often': phrase('a tank that is heated often'),
  'summer-heating': phrase('heating left on in summer'),
  heater: phrase('an electric heater'),
  'other-use': phrase('other things in the home'),
  'base-load': phrase('something that runs day and night'),
  'large-load': phrase('a car or another large load'),
  'machine-works-better': phrase('a heat pump that works better'),
  'less-heat': phrase('less heat asked for'),
  'less-water': phrase('less hot water'),
  'heater-off': phrase('a heater that is off again'),
  'less-other-use': phrase('less use of other things'),
  'own-generation': phrase('electricity made at home'),
  'home-empty': phrase('days with nobody at home'),
  'newly-occupied': phrase('people who moved in or came back'),
  'meter-wrong': phrase('a meter that counts differently'),
  'night-setback': phrase('rooms that are let cool at night'),
  'dear-hours': phrase('use at expensive hours'),
};
export const mayCause = (cause: OpenCause): string => say(MAY[cause]);

/** What looks alike in these readings, as one question; empty for one cause. The first check tells them apart. */
function maySentence({ may }: Pick<Finding, 'may'>): string {
  if (!may || may.length < 2) return '';
  return say('These look alike on this meter: {causes}.', { causes: listed(may.map(mayCause)) });
}

/** What was seen, for the installer. */
export function seenSentence(finding: Pick<Finding, 'code' | 'seen' | 'kWh' | 'may'>): string {
  return [shownSentence(finding), maySentence(finding)].filter(Boolean).join(' ');
}

function shownSentence(finding: Pick<Finding, 'code' | 'seen' | 'kWh' | 'may'>): string {
  const n = (name: string) => numberOf(finding, name);
  switch (finding.code) {
    case 'heater-running':
      return say(
        'A steady {power} kW ran on {days, plural, one {# day} other {# days}}, {hours} hours in all{about}. That is what an immersion or backup heater looks like.',
        {
          power: grouped(n('powerKW'), 1),
          days: n('days'),
          hours: grouped(n('hours')),
          about: about(n('hour')),
        },
      );
    case 'weekly-pasteurisation':
      return say(
        'A steady {power} kW ran once a week, {times, plural, one {# time} other {# times}}{about}. That is most likely the weekly heating of the tank against germs.',
        { power: grouped(n('powerKW'), 1), times: n('days'), about: about(n('hour')) },
      );
    case 'water-often':
      return say('On warm days the heat pump started {times} times a day, with {units} kWh a day.', {
        times: grouped(n('cyclesPerDay'), 1),
        units: grouped(n('kWhPerDay'), 1),
      });
    case 'night-setback':
      return say(
        'On {days, plural, one {# cold day} other {# cold days}} the machine rested at night at {night} of the day’s power. Each morning it ran at {morning}.',
        { days: n('days'), night: percent(n('nightShare')), morning: percent(n('morningShare')) },
      );
    case 'base-load-rose':
      return say('What runs all night rose from {before} to {after}, and not with the cold.', {
        before: watts(n('beforeW')),
        after: watts(n('afterW')),
      });
    case 'large-load':
      return say(
        'A steady {power} kW ran on {days, plural, one {# day} other {# days}}, {hours} hours each{about}.{heater, select, yes {} other { It does not look like heating.}}',
        {
          power: grouped(n('powerKW'), 1),
          days: n('days'),
          hours: grouped(n('hoursEach'), 1),
          about: about(n('hour')),
          heater: finding.may?.includes('heater') ? 'yes' : 'no',
        },
      );
    case 'dear-hours':
      return say('Since then a kWh has cost {share} more on average, because more are used at expensive hours.', {
        share: percent(n('share')),
      });
    case 'behaviour-changed': {
      const units = say(
        'Since then the meter counts {units} kWh a day {way, select, less {less} other {more}} in the same weather.',
        {
          units: grouped(Math.abs(n('kWhPerDay')), 1),
          way: finding.kWh < 0 ? 'less' : 'more',
        },
      );
      const how = typeof finding.seen.kind === 'string' ? HOW_IT_CHANGED[finding.seen.kind] : undefined;
      return how === undefined ? units : `${units} ${say(how)}`;
    }
    case 'backup-in-cold':
      return say(
        'On {days, plural, one {# day} other {# days}} colder than {below} °C the meter counted {units} kWh a day beyond what the milder days lead to.',
        { days: n('days'), below: grouped(n('belowC'), 1), units: grouped(n('kWhPerDay')) },
      );
    case 'meter-scale':
      return say(
        'From then on the least, the usual and the largest readings are all {times} times what they were. That is the meter.',
        { times: grouped(n('times'), 2) },
      );
    case 'own-generation':
      return say(
        'On {days, plural, one {# day} other {# days}} less was bought about noon than always runs. So electricity is made at home, which this meter does not show.',
        { days: n('days') },
      );
    case 'home-empty':
      if (finding.kWh < 0) {
        return say(
          'For {days, plural, one {# day} other {# days}} the meter counted {share} of what days as cold took before and after.',
          { days: n('days'), share: percent(n('share')) },
        );
      }
      return say(
        'For {days, plural, one {# day} other {# days}} the meter shows none of the ups and downs of people.',
        {
          days: n('days'),
        },
      );
    case 'estimate-corrected':
      return say('The estimate said {estimated}, where {likely} are likely. The next reading corrected it.', {
        estimated: spokenKWh(n('estimatedKWh')),
        likely: spokenKWh(n('likelyKWh')),
      });
    case 'registers-swapped':
      return say('The bill has {billed} at the high rate. By the clock it was {dear}.', {
        billed: spokenKWh(n('billedDearKWh')),
        dear: spokenKWh(n('dearKWh')),
      });
  }
}

/** The same for the household: no powers, no shares. */
export function homeSentence(finding: Pick<Finding, 'code' | 'seen' | 'kWh' | 'from' | 'to' | 'may'>): string {
  const since = longDate(finding.from);
  switch (finding.code) {
    case 'heater-running':
      return say(
        'An electric heater in the tank or the heat pump seems to have run on {days, plural, one {# day} other {# days}}. That was from {from} to {to}.',
        { from: since, to: longDate(addDays(finding.to, -1)), days: numberOf(finding, 'days') },
      );
    case 'weekly-pasteurisation':
      return say('Once a week the meter shows a steady run, as where a tank is made very hot to keep it clean.');
    case 'water-often':
      return say('On warm days the heat pump starts about {times} times a day, for hot water or for the rooms.', {
        times: grouped(numberOf(finding, 'cyclesPerDay')),
      });
    case 'night-setback':
      return numberOf(finding, 'morningShare') < HARD_MORNING
        ? say('The heat pump rests at night and catches up by day.')
        : say('The heat pump rests at night and works hard in the morning.');
    case 'base-load-rose':
      return say('Since {since} the meter counts more at every hour, at night too.', { since });
    case 'large-load':
      return finding.may?.includes('heater')
        ? say('Your meter shows something large and steady. It may be an electric heater, a car or something else.')
        : say('Your meter shows something large and steady that does not look like heating.');
    case 'dear-hours':
      return say('Since {since} the meter counts more at the hours that cost more.', { since });
    case 'behaviour-changed':
      return say('Since {since} the meter counts {way, select, less {less} other {more}} in the same weather.', {
        since,
        way: finding.kWh < 0 ? 'less' : 'more',
      });
    case 'backup-in-cold':
      return say(
        'On the coldest days the meter counted more than the cold explains. An electric heater may have helped.',
      );
    case 'meter-scale':
      return say('Since {since} the meter counts everything {times} times as before. So the meter must be tested.', {
        since,
        times: grouped(numberOf(finding, 'times'), 1),
      });
    case 'own-generation':
      return say('The meter shows that electricity is made at your home, for example by solar panels.');
    case 'home-empty':
      if (finding.kWh < 0) {
        return say('From {from} to {to} the meter counted much less than before and after, in the same weather.', {
          from: since,
          to: longDate(addDays(finding.to, -1)),
        });
      }
      return say('From {from} to {to} the meter shows hardly any ups and downs.', {
        from: since,
        to: longDate(addDays(finding.to, -1)),
      });
    case 'estimate-corrected':
      return say('One bill was estimated, and the next one corrected it.');
    case 'registers-swapped':
      return say('The day and the night figures of the meter may have been mixed up.');
  }
}

/** First and last day. */
export function whenSentence({ from, to }: Pick<Finding, 'from' | 'to'>): string {
  return say('{low} to {high}', { low: longDate(from), high: longDate(addDays(to, -1)) });
}

/** "about 19 in 20 sure". */
export function sureShort({ sure }: Pick<Finding, 'sure'>): string {
  return say('about {count} in 20 sure', { count: Math.min(19, Math.max(10, Math.round(sure * 20))) });
}

/** So many times the day's power in the morning is hard work. Common practice, no source. */
const HARD_MORNING = 1.3;
/** A pound is the least that is spoken of. */
const LEAST_PENCE = 100;

/** Their units are all that the heater took, whose heat is wanted nonetheless. */
const OF_HEATER: ReadonlySet<FindingCode> = new Set(['heater-running', 'weekly-pasteurisation']);

type Costed = Pick<CheckFinding, 'code' | 'pence' | 'splitPence' | 'penceYear' | 'kWh' | 'from' | 'to' | 'part'>;

/** Units and cost in the days of the bill, and of the season that it was seen in; whether it is a part of the difference. */
export function costOfFinding(finding: Costed): string {
  const { code, pence: cost, penceYear, kWh, part } = finding;
  if (code === 'own-generation' || (code === 'home-empty' && kWh === 0))
    return say('How much it comes to is not known.');
  if (code === 'night-setback')
    return say('The cooler night saves heat, and catching up costs some. Only a trial shows which is more.');
  if (Math.abs(cost) < LEAST_PENCE && Math.abs(penceYear) < LEAST_PENCE) return say('It makes no lasting cost.');
  const amount = spokenPounds(Math.abs(cost));
  const gross = OF_HEATER.has(code)
    ? say('Without the heater the heat pump has to make part of this heat, so less than that would be saved.')
    : '';
  if (part === undefined) {
    const was = say(
      'In the days of the bill that was {units}, about {amount}. It is not counted as a part of the difference.',
      { units: spokenKWh(Math.abs(kWh)), amount },
    );
    return [was, gross].filter(Boolean).join(' ');
  }
  const these =
    Math.abs(kWh) < 1
      ? say('In the days of the bill that is about {amount} {way, select, less {less} other {more}}.', {
          amount,
          way: way(cost),
        })
      : say(
          'In the days of the bill that is {units} {unitsWay, select, less {less} other {more}}, about {amount} {way, select, less {less} other {more}}.',
          { units: spokenKWh(Math.abs(kWh)), unitsWay: way(kWh), amount, way: way(cost) },
        );
  return [these, atOnePrice(finding), yearOfFinding(finding), gross].filter(Boolean).join(' ');
}

/** Where its hours are cheaper or dearer than the mean, so that the split has another amount for the same units. */
function atOnePrice({ pence, splitPence = pence }: Costed): string {
  return Math.abs(splitPence - pence) < LEAST_PENCE
    ? ''
    : say(
        'That is at the prices of its own hours. At the mean price, as the parts of the difference have it, it is {amount}.',
        {
          amount: spokenPounds(Math.abs(splitPence)),
        },
      );
}

const way = (amount: number) => (amount < 0 ? 'less' : 'more');

function yearOfFinding({ pence, penceYear, from, to }: Costed): string {
  if (Math.abs(penceYear) < LEAST_PENCE) return say('Over a year it evens out.');
  const isPartOfYear = daysBetween(from, to) < NEARLY_A_YEAR_DAYS;
  if (isPartOfYear && Math.abs(penceYear - pence) < LEAST_PENCE)
    return say('It was seen for a part of the year only, so we give no figure for a year.');
  const year = { amount: spokenPounds(Math.abs(penceYear)), way: way(penceYear) };
  return !isPartOfYear
    ? say('Over a whole year that is about {amount} {way, select, less {less} other {more}}.', year)
    : say(
        'It was seen for a part of the year only; the same days of another year would be about {amount} {way, select, less {less} other {more}}.',
        year,
      );
}

const ASKS: Readonly<Record<AskCode, string>> = {
  'heater-switch': phrase('Is there a switch for an electric heater, and is it on?'),
  'water-times': phrase('At what hours is the hot water made, and who set them?'),
  baths: phrase('Are there more baths or longer showers than before?'),
  'night-setting': phrase('Are the rooms set cooler at night, or is the heating off?'),
  'new-appliance': phrase('Is there something new that runs day and night?'),
  vehicle: phrase('Is a car charged at home?'),
  'tub-or-pool': phrase('Is there a hot tub, a pool or a heated shed?'),
  'timer-changed': phrase('Was a timer or a clock changed, or did the power fail?'),
  'tariff-changed': phrase('Did you change your supplier or your rates?'),
  'more-people': phrase('Are more people at home than before?'),
  'rooms-warmer': phrase('Are the rooms warmer than before?'),
  'rooms-added': phrase('Are rooms heated now that were not before?'),
  away: phrase('Were you away?'),
  'settings-changed': phrase('Did anybody change the settings at that time?'),
  'meter-exchanged': phrase('Was the meter changed?'),
  panels: phrase('Are there solar panels or another source of electricity?'),
  'plug-in-heaters': phrase('Are plug-in heaters used on cold days?'),
  'heating-in-summer': phrase('Is the heating switched off in summer?'),
};
export const askSentence = (code: AskCode): string => say(ASKS[code]);

const CHECKS: Readonly<Record<FindingCheckCode, string>> = {
  'heater-hours': phrase('Read the heater’s hours on the control.'),
  'heater-control': phrase('See when the control lets the heater on, and whether it is on by hand.'),
  'water-setpoint': phrase('Note how hot the tank is set.'),
  'pasteurisation-setting': phrase('Note day, hour and heat of the weekly hot tank, and what heats it.'),
  'cylinder-loss': phrase('Feel whether the tank and its pipes lose heat, and whether water is pumped round.'),
  'heating-curve': phrase('Compare the heating curve with the one in the estimate.'),
  'night-setting': phrase('Try an even night for a week, and read the meter before and after.'),
  'pump-always-on': phrase('See whether a pump runs when nothing is asked of it.'),
  'sub-meter': phrase('Read this load on a meter of its own.'),
  timer: phrase('Compare the timer’s clock with the real time.'),
  'meter-clock': phrase('Compare the hours of the rates with the meter’s own clock.'),
  'own-reading': phrase('Read the meter yourself and give it to the supplier.'),
  'register-labels': phrase('See which figure of the meter counts up by night.'),
  'supplier-bill': phrase('Ask the supplier to work out the bill again.'),
  'heat-made': phrase('Read for a week the heat that the heat pump has made, and the kWh that it took.'),
  'meter-test': phrase('Run a load of known power for an hour, and see what the meter counts.'),
  'panel-meter': phrase('Read how much the panels have made.'),
  'pipes-warm': phrase('On a warm day feel the pipes to the radiators while the tank is not being heated.'),
};
export const findingCheckSentence = (code: FindingCheckCode): string => say(CHECKS[code]);

const CAUTIONS: Readonly<Record<CautionCode, string>> = {
  electrical: phrase(
    'Switch off, lock off and prove dead before a cover is opened. Mains wiring is for an electrician.',
  ),
  scalding: phrase('Water of the tank can scald.'),
  legionella: phrase('Do not turn the weekly hot tank off without other care against germs; local codes come first.'),
  refrigerant: phrase('Work on the cooling circuit is for certified people only.'),
};
export const findingCaution = (code: CautionCode): string => say(CAUTIONS[code]);

/** Nothing in the readings: what that does and does not mean. */
export function noFindingsSentence(): string {
  return say('The readings of these days show none of the things that we look for. That does not rule them out.');
}
/** No readings finer than a day. */
export function noReadingsSentence(): string {
  return say(
    'There are no readings by the hour for these days. They would show heaters, timers and changes with their dates.',
  );
}
