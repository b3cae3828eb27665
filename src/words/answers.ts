/** How a question of intake is answered outside the window: a choice in the household file, or an option of the command line. */
import type { IntakeChoices, IntakePreview } from '../intake/intake.ts';
import type { Remark } from '../model/shapes/evidence.ts';
import { type Answer, answersTo, BESIDE_ANSWERS, unitsFor } from './remark-answers.ts';
import { say } from './say.ts';

/** What is typed, beside the answers or where there are none. */
const TYPED: Readonly<Record<string, readonly string[]>> = {
  'calorific-assumed': ['calorificMJPerM3'],
  'pulses-asked': ['pulsesPerKWh'],
  'column-asked': ['columns.value'],
  'paper-period-asked': ['paper.from', 'paper.to'],
};
/** Where a misread word may be the reason, it is put right in the household file. */
const OF_WORDS = /^paper-(unproved|left-out|fuel-left|total|contradicted)-asked$/;

const isEmpty = (value: unknown): boolean => value === undefined || value === null;
const entriesOf = (value: object): [string, unknown][] => Object.entries(value).filter(([, one]) => !isEmpty(one));

/** A choice as options: "role=export", "ofColumns.Used (kWh).unit=Wh". */
export function optionsOf(choice: IntakeChoices, path = ''): string[] {
  return entriesOf(choice).flatMap(([key, value]) =>
    typeof value === 'object'
      ? optionsOf(value as IntakeChoices, `${path}${key}.`)
      : [`${path}${key}=${String(value)}`],
  );
}

/** A terminal takes what stands in quotation marks for one word. */
const asWord = (option: string): string => (/^[\w.,=+-]+$/.test(option) ? option : `"${option}"`);
const typedOf = ({ choice }: Answer): string => optionsOf(choice).map(asWord).join(' --choose ');

const jsonOf = (choice: IntakeChoices): string =>
  `{ ${entriesOf(choice)
    .map(([key, value]) => `${JSON.stringify(key)}: ${JSON.stringify(value)}`)
    .join(', ')} }`;

/** @param preview with the choices as it settled them; none where files are asked about beside each other */
export function answerSentence(remark: Remark, preview?: IntakePreview): string {
  const { code } = remark;
  if (code === 'records-part-asked')
    return say(
      'Name the file with the rest in the household file too. If this one is all: “choices”: {open} "role": "import" {close} in place of "beside".',
      { open: '{', close: '}' },
    );
  if (BESIDE_ANSWERS[code] || !preview) return besideSentence(remark, BESIDE_ANSWERS[code] ?? []);
  // What was said of other columns need not be said again.
  const { ofColumns: _, besideOf: __, ...choices } = preview.choices;
  const answers = answersTo(remark, { ...preview, choices });
  // Amounts that only rise are a counter's far more often, and as amounts they come to many times the use.
  const taken = code === 'register-rising-asked' ? answers[0] : (answers.find(({ holds }) => holds) ?? answers[0]);
  const typed = TYPED[code] ?? [];
  const others = [...answers.map(inShort), ...unitsBeside(remark, preview, answers)].join(', ');
  return [
    ...(code === 'zone-asked'
      ? [say('Answer with “zone”: "{zone}" in the household file, or with --zone {zone}.', { zone: remark.expected! })]
      : []),
    ...(taken
      ? [
          say(
            'Answer with “choices”: {json} at this file in the household file, or with --choose {option} beside --read{count, plural, one {} other { (possible: {others})}}.',
            { json: jsonOf(taken.choice), option: typedOf(taken), others, count: answers.length },
          ),
        ]
      : []),
    ...(typed.length > 0 ? [say('Another value goes into {keys}.', { keys: typed.join(', ') })] : []),
    ...(OF_WORDS.test(code) ? [say('A word that was read wrong is corrected in “choices.paper.words”.')] : []),
  ].join(' ');
}

/** "role=export (Sent out)"; a unit says itself. Of several columns the one that is asked about stands before it. */
function inShort({ choice, label }: Answer): string {
  const options = optionsOf(insideOf(choice));
  const [option] = options;
  return option!.endsWith(`=${label}`) ? option! : `${options.join(' ')} (${label})`;
}
/** What is chosen of one column, without the name of it. */
const insideOf = (choice: IntakeChoices): IntakeChoices => Object.values(choice.ofColumns ?? {})[0] ?? choice;

/** Units that are asked for too seldom for a button of their own. */
function unitsBeside(remark: Remark, preview: IntakePreview, answers: readonly Answer[]): string[] {
  const shown = answers.flatMap(({ choice }) => insideOf(choice).unit ?? []);
  return shown.length === 0
    ? []
    : unitsFor(remark, preview)
        .filter((unit) => !shown.includes(unit))
        .map((unit) => `unit=${unit}`);
}

/** One file by itself is never asked what it is beside others. */
function besideSentence({ code: _, column, carrier }: Remark, possible: readonly string[]): string {
  const [value] = possible;
  return say(
    'Answer with “choices”: {open} "beside": {json} {close} at this file in the household file (possible: {others}). If it has several records: "besideOf": {own}.',
    {
      open: '{',
      close: '}',
      json: JSON.stringify(value),
      others: possible.join(', '),
      // Registers that are added bear the names of all.
      own: JSON.stringify(Object.fromEntries((column ?? carrier ?? '').split(' + ').map((name) => [name, value]))),
    },
  );
}
