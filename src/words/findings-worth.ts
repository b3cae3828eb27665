/** What findings are worth: how often they are true, what can be missed, and what was not looked for. */

import { SEEN_KW } from '../model/findings/heater.ts';
import { DETECTOR_RATES, HEATER_FOUND, TRUE_FINDINGS } from '../model/findings/measured.ts';
import type { NotSeen } from '../model/shapes/bill-check.ts';
import { type FindingCode, OPEN_CAUSES, type OpenCause } from '../model/shapes/finding.ts';
import { mayCause, noReadingsSentence } from './findings.ts';
import { capitalised, listed } from './numbers.ts';
import { say } from './say.ts';

const inHundred = (share: number): number => Math.round(share * 100);

/** What "about 15 in 20 sure" stands for. */
export function sureMeaning(): string {
  const [little, middle, much] = TRUE_FINDINGS;
  return say(
    'What “sure” is worth, on 1,000 example homes: of findings under {middle} in 20 sure at least {littleTrue} in 100 were true, from {middle} in 20 on {middleTrue}, from {much} in 20 on {muchTrue}. A real home may differ.',
    {
      middle: middle.sure * 20,
      much: much.sure * 20,
      littleTrue: inHundred(little.leastTrue),
      middleTrue: inHundred(middle.leastTrue),
      muchTrue: inHundred(much.leastTrue),
    },
  );
}

/** How often a finding of this kind is wrong or missed. */
export function worthOf(code: FindingCode): string {
  const { mostFalse, leastFound } = DETECTOR_RATES[code];
  return say('On example homes: named without cause in at most {wrong} of 100, found in at least {found} of 100.', {
    wrong: Math.ceil(mostFalse * 100),
    found: inHundred(leastFound),
  });
}

/** Which electric heaters can be seen at all, and how many are missed. */
export function heatersSeen(): string {
  return say(
    'Electric heaters of {machine} kW are seen on the machine’s own meter and of {house} kW on the house’s. Smaller ones run at powers that the machine has too, so they are not named. Of 100 heaters in half-hours at least {found} were found, by the hour {hourly}, on the house’s meter alone {houseOnly}.',
    {
      machine: listed(SEEN_KW['heat-pump'].map(String)),
      house: listed(SEEN_KW['whole-house'].map(String)),
      found: inHundred(DETECTOR_RATES['heater-running'].leastFound),
      hourly: inHundred(HEATER_FOUND.byTheHour),
      houseOnly: inHundred(HEATER_FOUND.houseOnly),
    },
  );
}

/**
 * Causes that readings leave open with what would tell them, the likelier and dearer first; last what only makes a bill lower.
 * Where a heat meter has said whether it is the heat or the machine, only one of the two is open, and another thing tells.
 */
function whatWouldTell(open: readonly OpenCause[]): readonly (readonly [string, readonly OpenCause[]])[] {
  const ofHeat = ['more-heat', 'rooms-warmer', 'more-water'] as const;
  const ofMachine = ['machine-works-less'] as const;
  const isOpen = (causes: readonly OpenCause[]) => causes.some((cause) => open.includes(cause));
  const apart = !(isOpen(ofHeat) && isOpen(ofMachine));
  return [
    ...(apart
      ? ([
          [say('See how hot the water to the radiators is, against what was planned.'), ofMachine],
          [say('Measure the warmth of the rooms for a week, and ask about hot water.'), ofHeat],
        ] as const)
      : ([
          [
            say('Read for a week the heat that the heat pump has made, and the kWh that it took.'),
            [...ofMachine, ...ofHeat],
          ],
        ] as const)),
    [say('Read the heater’s hours on the control.'), ['heater', 'backup-heater']],
    [say('Read the heat pump for a week on a meter of its own.'), ['base-load', 'other-use', 'large-load']],
    [
      say('On a warm day feel the pipes to the radiators while the tank is not being heated.'),
      ['summer-heating', 'water-often'],
    ],
    [
      say('See on the control at which hours it heats, and how cool the nights may get.'),
      ['dear-hours', 'night-setback'],
    ],
    [say('Run a load of known power for an hour, and see what the meter counts.'), ['meter-wrong']],
    [say('Ask whether the home was empty for some weeks.'), ['home-empty']],
  ];
}

/** So many groups are read; the others are less likely, or worth less. */
const GROUPS_SHOWN = 3;

/** Why something may be missing, and the causes left open by what would tell them: those that are shown, and the rest. */
export interface NotSeenWords {
  readonly sentence: string;
  readonly shown: readonly string[];
  readonly more: readonly string[];
}

export function notSeenWords({ code, names }: NotSeen): NotSeenWords {
  if (code !== 'not-ruled-out') return { sentence: notSeenSentence(code, names), shown: [], more: [] };
  const open = OPEN_CAUSES.filter((cause) => names.includes(cause));
  const lines = whatWouldTell(open).flatMap(([tell, causes]) => {
    const named = causes.filter((cause) => open.includes(cause)).map(mayCause);
    return named.length > 0 ? [`${capitalised(listed(named))}. ${tell}`] : [];
  });
  const sentence = say('These readings cannot rule out everything. Here is what they leave open, and what would tell.');
  return { sentence, shown: lines.slice(0, GROUPS_SHOWN), more: lines.slice(GROUPS_SHOWN) };
}

/** Above what is not shown at once. */
export const moreLeftOpen = (more: readonly string[]): string =>
  say('{count, plural, one {# more, less likely or worth less} other {# more, less likely or worth less}}', {
    count: more.length,
  });

function notSeenSentence(code: Exclude<NotSeen['code'], 'not-ruled-out'>, names: readonly string[]): string {
  const [first = '', ...others] = names;
  switch (code) {
    case 'prices-by-amount':
      return say(
        'Use at expensive hours cannot be judged: under “{first}” the price per kWh depends on the amount too.',
        {
          first,
        },
      );
    case 'registers-left-out':
      return say(
        'Only “{first}” was looked through. There is {others} beside it, and nobody says whether the same units count in both.',
        { first, others: listed(others.map((text) => say('“{text}”', { text }))) },
      );
    case 'no-readings':
      return noReadingsSentence();
  }
}
