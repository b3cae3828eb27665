/** How a question of intake is answered outside the window: the key of the household file, or the option of the command line. */
import { type BesideChoice, ENERGY_UNITS, type IntakeChoices, type IntakePreview } from '../intake/intake.ts';
import { isUnitOf } from '../intake/terms/units.ts';
import type { Remark } from '../model/shapes/evidence.ts';
import { FUEL_IDS } from '../model/shapes/heating.ts';
import { say } from './say.ts';

type Key = keyof IntakeChoices;

/** By the beginning of the remark's code; what a code of another name is answered with is a choice of columns. */
const KEYS: readonly (readonly [code: RegExp, key: Key])[] = [
  [/^(unit-|degrees-|espi-type)/, 'unit'],
  [/^(carrier-|title-energy-)/, 'carrier'],
  [/^calorific-/, 'calorificMJPerM3'],
  [/^pulses-/, 'pulsesPerKWh'],
  [/^decimal-/, 'decimal'],
  [/^date-order/, 'dayFirst'],
  [/^(clock-|espi-clock)/, 'clock'],
  [/^(stamp-side|period-side|period-bought)/, 'stamp'],
  [/^to-inclusive/, 'toInclusive'],
  [/^register-/, 'shape'],
  [/^sheet-/, 'sheet'],
  [/^(direction-|title-way-|made-|part-|word-)/, 'role'],
  [/^net-/, 'net'],
  [/^own-use-/, 'ownUse'],
  [/^records-/, 'beside'],
  [/^weather-/, 'weatherMeasured'],
  [/^unread-/, 'leaveUnread'],
  [/^short-month-/, 'shortMonths'],
];

const OTHER_VALUES: Readonly<Partial<Record<Key, readonly string[]>>> = {
  clock: ['local', 'utc', 'standard'],
  stamp: ['start', 'end'],
  dayFirst: ['true', 'false'],
  toInclusive: ['true', 'false'],
  net: ['true', 'false'],
  ownUse: ['within', 'apart'],
  weatherMeasured: ['true', 'false'],
  leaveUnread: ['true'],
  shortMonths: ['whole', 'parts'],
  role: ['import', 'export', 'generation', 'heat-pump'],
  decimal: ['.', ','],
  shape: ['bills', 'counter'],
  carrier: ['electricity', ...FUEL_IDS, 'heat', 'water', 'outdoor-temperature'],
};

/** What each question about records of one kind can be answered with; the first is shown as the example. */
export const BESIDE_ANSWERS: Readonly<Record<string, readonly BesideChoice[]>> = {
  'records-asked': ['added', 'aside', 'instead'],
  'records-weather-asked': ['aside', 'instead'],
  'records-station-asked': ['goes-on', 'aside'],
  'records-register-asked': ['added', 'goes-on', 'aside'],
  'records-number-asked': ['goes-on', 'added', 'aside'],
  'records-counter-asked': ['goes-on', 'added', 'aside'],
  'records-level-asked': ['goes-on', 'added', 'aside'],
};

/** Units that fit what the record is of. */
export function unitsFor({ column, carrier }: Remark, { series }: Pick<IntakePreview, 'series'>): readonly string[] {
  const of =
    carrier ?? (series.find(({ name }) => name === column) ?? (series.length === 1 ? series[0] : undefined))?.carrier;
  return ENERGY_UNITS.filter((unit) => of === undefined || isUnitOf(of, unit));
}

/** What is taken until it is answered: as settled, else as the remark says. */
function taken(key: Key, { code, expected }: Remark, choices: IntakeChoices): unknown {
  if (/^(net|weatherMeasured|leaveUnread|dayFirst|toInclusive)$/.test(key)) return choices[key] ?? true;
  if (code === 'direction-of-name-asked' || code === 'title-way-asked') return expected;
  if (key === 'role') return choices.role ?? 'import';
  if (key === 'shortMonths') return 'parts';
  // Amounts that only rise are a counter's far more often, and as amounts they come to many times the use.
  if (code === 'register-rising-asked') return 'counter';
  if (key === 'ownUse') return choices.ownUse ?? 'within';
  if (key === 'beside') return BESIDE_ANSWERS[code]?.[0];
  const number = Number(expected);
  return choices[key] ?? (expected !== undefined && Number.isFinite(number) ? number : expected);
}

const OF_ONE_COLUMN = /^(unit-(?!s)|degrees-|carrier-|pulses-|direction-|title-|made-|part-|word-|net-|own-use-)/;
const OF_SEVERAL = /^(readings|days|counter|bills)/;

/** Whether a question is about one record of several, so that its answer must not touch the others. */
export const isOfOneColumn = (
  { code, column }: Remark,
  { series, shape }: Pick<IntakePreview, 'series' | 'shape'>,
): boolean => series.length > 1 && column !== undefined && OF_ONE_COLUMN.test(code) && OF_SEVERAL.test(shape ?? '');

/** @param preview with the choices as it settled them */
export function answerSentence(remark: Remark, preview: Pick<IntakePreview, 'choices' | 'series' | 'shape'>): string {
  const { choices } = preview;
  if (remark.code === 'zone-asked') {
    const zone = remark.expected ?? '';
    return say('Answer with “zone”: "{zone}" in the household file, or with --zone {zone}.', { zone });
  }
  const key = KEYS.find(([code]) => code.test(remark.code))?.[1];
  const ofKey =
    key === 'unit'
      ? unitsFor(remark, preview)
      : remark.code === 'register-rising-asked'
        ? [preview.shape ?? 'bills', 'counter']
        : (BESIDE_ANSWERS[remark.code] ?? (key && OTHER_VALUES[key]));
  const possible = remark.code === 'column-asked' ? ['every=true', 'every=false'] : ofKey;
  const others = possible?.join(', ') ?? 'none';
  const value = key === undefined ? choices.columns?.value : taken(key, remark, choices);
  if (key !== undefined && remark.column !== undefined && isOfOneColumn(remark, preview)) {
    return say(
      'Answer with “choices”: {open} "ofColumns": {json} {close} at this file in the household file, or with --choose {option} beside --read{others, select, none {} other { (possible: {others})}}.',
      {
        open: '{',
        close: '}',
        json: JSON.stringify({ [remark.column]: { [key]: value } }),
        option: `"ofColumns.${remark.column}.${key}=${String(value)}"`,
        others,
      },
    );
  }
  if (remark.code === 'records-part-asked')
    return say(
      'Name the file with the rest in the household file too. If this one is all: “choices”: {open} "role": "import" {close} in place of "beside".',
      { open: '{', close: '}' },
    );
  // One file by itself is never asked what it is beside others.
  if (key === 'beside')
    return say(
      'Answer with “choices”: {open} "beside": {json} {close} at this file in the household file (possible: {others}). If it has several records: "besideOf": {own}.',
      {
        open: '{',
        close: '}',
        json: JSON.stringify(value),
        others,
        // Registers that are added bear the names of all.
        own: JSON.stringify(
          Object.fromEntries((remark.column ?? remark.carrier ?? '').split(' + ').map((name) => [name, value])),
        ),
      },
    );
  const [name, json] = key === undefined ? ['columns', JSON.stringify({ value })] : [key, JSON.stringify(value)];
  const option = key === undefined ? `columns.value=${value ?? 1}` : `${key}=${String(value)}`;
  const answer = say(
    'Answer with “choices”: {open} "{name}": {json} {close} at this file in the household file, or with --choose {option} beside --read{others, select, none {} other { (possible: {others})}}.',
    { open: '{', close: '}', name, json: json ?? '""', option, others },
  );
  if (!/^(part-|word-|carrier-guessed)/.test(remark.code)) return answer;
  if (remark.code === 'part-register-asked')
    return `${answer} ${say('Where another file has the other register: “choices”: {open} "beside": "added" {close} at both.', { open: '{', close: '}' })}`;
  const aside = say('Where it is not what the home used: “choices”: {open} "beside": "aside" {close}.', {
    open: '{',
    close: '}',
  });
  return `${answer} ${aside}`;
}
