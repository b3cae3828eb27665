/** What readings show, in words: what was seen, when, how sure, what it costs, what to ask and what to check. */
import { addDays } from '../model/calendar/civil.ts';
import type { AskCode, CautionCode, Finding, FindingCheckCode, FindingCode } from '../model/findings/finding.ts';
import { counted, grouped, longDate, percent, spokenKWh, spokenPounds } from './numbers.ts';

type Seen = Pick<Finding, 'code' | 'seen'>;

const NAMES: Readonly<Record<FindingCode, string>> = {
  'heater-running': 'Immersion or backup heater',
  'weekly-pasteurisation': 'Weekly hot tank',
  'water-often': 'Hot water made often',
  'night-setback': 'Cold nights, hard mornings',
  'base-load-rose': 'More use all night',
  'large-load': 'A large load that is not the heating',
  'dear-hours': 'Used at dearer hours',
  'behaviour-changed': 'More used in the same weather',
  'estimate-corrected': 'An estimate put right',
  'registers-swapped': 'Day and night exchanged',
};

/** Short name of a finding, by its direction. */
export function findingName({ code, kWh }: Pick<Finding, 'code' | 'kWh'>): string {
  return code === 'behaviour-changed' && kWh < 0 ? 'Less used in the same weather' : NAMES[code];
}

const numberOf = ({ seen }: Seen, name: string): number => {
  const value = seen[name];
  return typeof value === 'number' ? value : Number.NaN;
};
/** "02:00" from 2, "13:30" from 13.5. */
const clock = (hour: number): string => {
  const minutes = Math.round((((hour % 24) + 24) % 24) * 60) % 1440;
  return `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
};
const about = (hour: number): string => (Number.isFinite(hour) ? `, mostly from about ${clock(hour)}` : '');
const watts = (value: number): string => `${grouped(Math.round(value / 10) * 10)} W`;

/** What was seen, for the installer. */
export function seenSentence(finding: Pick<Finding, 'code' | 'seen' | 'kWh'>): string {
  const n = (name: string) => numberOf(finding, name);
  switch (finding.code) {
    case 'heater-running':
      return `A steady ${grouped(n('powerKW'), 1)} kW ran on ${counted(n('days'), 'day')}, ${grouped(n('hours'))} hours in all${about(n('hour'))}. That is what an immersion or backup heater looks like.`;
    case 'weekly-pasteurisation':
      return `A steady ${grouped(n('powerKW'), 1)} kW ran once a week, ${counted(n('days'), 'time')}${about(n('hour'))}. That is most likely the weekly heating of the tank against germs.`;
    case 'water-often':
      return `On warm days the tank was heated ${grouped(n('cyclesPerDay'), 1)} times a day, with ${grouped(n('kWhPerDay'), 1)} units a day.`;
    case 'night-setback':
      return `On ${counted(n('days'), 'cold day')} the machine rested at night at ${percent(n('nightShare'))} of the day’s power. Each morning it ran at ${percent(n('morningShare'))}.`;
    case 'base-load-rose':
      return `What runs all night rose from ${watts(n('beforeW'))} to ${watts(n('afterW'))}, and not with the cold.`;
    case 'large-load':
      return `A steady ${grouped(n('powerKW'), 1)} kW ran on ${counted(n('days'), 'day')}, ${grouped(n('hoursEach'), 1)} hours each${about(n('hour'))}. It is not the heating.`;
    case 'dear-hours':
      return `Since then a unit has cost ${percent(n('share'))} more on average, since more is used at dear hours.`;
    case 'behaviour-changed':
      return `Since then ${grouped(Math.abs(n('kWhPerDay')), 1)} units a day ${finding.kWh < 0 ? 'less' : 'more'} are used in the same weather. ${
        finding.seen.kind === 'with-the-cold'
          ? 'It grows with the cold, so it is the rooms.'
          : 'It does not follow the cold.'
      }`;
    case 'estimate-corrected':
      return `The estimate said ${spokenKWh(n('estimatedKWh'))}, where ${spokenKWh(n('likelyKWh'))} are likely. The next reading put it right.`;
    case 'registers-swapped':
      return `The bill has ${spokenKWh(n('billedDearKWh'))} at the dear rate. By the clock it was ${spokenKWh(n('dearKWh'))}.`;
  }
}

/** The same for the household: no powers, no shares. */
export function homeSentence(finding: Pick<Finding, 'code' | 'seen' | 'kWh' | 'from' | 'to'>): string {
  const days = numberOf(finding, 'days');
  const when = `from ${longDate(finding.from)} to ${longDate(addDays(finding.to, -1))}`;
  switch (finding.code) {
    case 'heater-running':
      return `A plain electric heater in the tank or the machine seems to have run ${when}, on ${counted(days, 'day')}.`;
    case 'weekly-pasteurisation':
      return 'The tank is made very hot once a week, to keep it clean. That is usual.';
    case 'water-often':
      return `The hot water tank is heated about ${grouped(numberOf(finding, 'cyclesPerDay'))} times a day.`;
    case 'night-setback':
      return 'The rooms go cool at night, and the machine has to work hard in the morning.';
    case 'base-load-rose':
      return `Something has run day and night since ${longDate(finding.from)}.`;
    case 'large-load':
      return 'Something large that is not the heating runs on your meter, such as a car on charge.';
    case 'dear-hours':
      return `Since ${longDate(finding.from)} more is used at the hours that cost more.`;
    case 'behaviour-changed':
      return `Since ${longDate(finding.from)} you have used ${finding.kWh < 0 ? 'less' : 'more'} in the same weather.`;
    case 'estimate-corrected':
      return 'One bill was a guess, and the next one put it right.';
    case 'registers-swapped':
      return 'The day and the night figures of the meter may have been mixed up.';
  }
}

/** First and last day. */
export function whenSentence({ from, to }: Pick<Finding, 'from' | 'to'>): string {
  return `${longDate(from)} to ${longDate(addDays(to, -1))}`;
}

/** "about 19 in 20 sure". */
export function sureShort({ sure }: Pick<Finding, 'sure'>): string {
  return `about ${Math.min(19, Math.max(10, Math.round(sure * 20)))} in 20 sure`;
}

/** A pound is the least that is spoken of. */
const LEAST_PENCE = 100;

/** Cost of these days and of a year of such days. */
export function costOfFinding({ pence: cost, penceYear, kWh }: Pick<Finding, 'pence' | 'penceYear' | 'kWh'>): string {
  if (Math.abs(cost) < LEAST_PENCE && Math.abs(penceYear) < LEAST_PENCE) return 'It makes no lasting cost.';
  const way = (amount: number) => (amount < 0 ? 'less' : 'more');
  const units = Math.abs(kWh) < 1 ? 'it cost' : `it took ${spokenKWh(Math.abs(kWh))} ${way(kWh)} and cost`;
  const these = `In these days ${units} about ${spokenPounds(Math.abs(cost))} ${way(cost)}.`;
  const year =
    Math.abs(penceYear) < LEAST_PENCE
      ? 'Over a year it evens out.'
      : `If it ran like that all year, it would cost about ${spokenPounds(Math.abs(penceYear))} ${way(penceYear)}.`;
  return `${these} ${year}`;
}

const ASKS: Readonly<Record<AskCode, string>> = {
  'heater-switch': 'Is there a switch for an electric heater, and is it on?',
  'water-times': 'At what hours is the hot water made, and who set them?',
  baths: 'Are there more baths or longer showers than before?',
  'night-setting': 'Are the rooms set cooler at night, or is the heating off?',
  'new-appliance': 'Is there something new that runs day and night?',
  vehicle: 'Is a car charged at home?',
  'tub-or-pool': 'Is there a hot tub, a pool or a heated shed?',
  'timer-changed': 'Was a timer or a clock changed, or did the power fail?',
  'tariff-changed': 'Did you change your supplier or your rates?',
  'more-people': 'Are more people at home than before?',
  'rooms-warmer': 'Are the rooms kept warmer than before?',
  'rooms-added': 'Are rooms heated now that were not before?',
  away: 'Were you away?',
  'settings-changed': 'Did anybody change the settings at that time?',
  'meter-exchanged': 'Was the meter changed?',
};
export const askSentence = (code: AskCode): string => ASKS[code];

const CHECKS: Readonly<Record<FindingCheckCode, string>> = {
  'heater-hours': 'Read the heater’s hours on the control.',
  'heater-control': 'See when the control lets the heater on, and whether it is on by hand.',
  'water-setpoint': 'Note how hot the tank is set.',
  'pasteurisation-setting': 'Note day, hour and heat of the weekly hot tank, and what heats it.',
  'cylinder-loss': 'Feel whether the tank and its pipes lose heat, and whether water is pumped round.',
  'heating-curve': 'Hold the heating curve against the one promised.',
  'night-setting': 'Try an even night for a week, and read the meter before and after.',
  'pump-always-on': 'See whether a pump runs when nothing is asked of it.',
  'sub-meter': 'Read this load on a meter of its own.',
  timer: 'Hold the timer’s clock against the true time.',
  'meter-clock': 'Hold the hours of the rates against the meter’s own clock.',
  'own-reading': 'Read the meter yourself and give it to the supplier.',
  'register-labels': 'See which figure of the meter counts up by night.',
  'supplier-bill': 'Ask the supplier to work out the bill again.',
};
export const findingCheckSentence = (code: FindingCheckCode): string => CHECKS[code];

const CAUTIONS: Readonly<Record<CautionCode, string>> = {
  electrical: 'Switch off, lock off and prove dead before a cover is opened. Mains wiring is for an electrician.',
  scalding: 'Water of the tank can scald.',
  legionella: 'Do not turn the weekly hot tank off without other care against germs; local codes come first.',
  refrigerant: 'Work on the cooling circuit is for certified people only.',
};
export const findingCaution = (code: CautionCode): string => CAUTIONS[code];

/** Nothing in the readings: what that does and does not mean. */
export function noFindingsSentence(): string {
  return 'The readings of these days show none of the ten things that we look for. That does not rule them out.';
}
/** No readings finer than a day. */
export function noReadingsSentence(): string {
  return 'There are no readings by the hour for these days. They would show heaters, timers and changes with their dates.';
}
