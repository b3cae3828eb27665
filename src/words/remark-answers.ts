/** What can be answered to a question of intake: each answer is a choice with which the file is read again. */

import {
  type BesideChoice,
  type ChoicesOfColumn,
  ENERGY_UNITS,
  type EnergyUnit,
  type IntakeChoices,
  type IntakePreview,
  isUnitOf,
} from '../intake/intake.ts';
import { type Carrier, type Remark, type Series, standsBeside } from '../model/shapes/evidence.ts';
import { isDelivered, PRICED_CARRIERS, SALE_UNIT_IDS } from '../model/shapes/heating.ts';
import { MJ_PER_KWH } from '../model/units/gas-volume.ts';
import { columnNames } from './remarks.ts';
import { phrase, say } from './say.ts';
import { sayTold } from './say-told.ts';
import { carrierInFull } from './systems.ts';

export interface Answer {
  readonly label: string;
  readonly choice: IntakeChoices;
  /** Whether the file is read this way now. */
  readonly holds: boolean;
}

const UNITS: readonly EnergyUnit[] = [
  'kWh',
  'Wh',
  'MWh',
  'kW',
  'W',
  'MJ',
  'm³',
  'ft³',
  'hundred ft³',
  'therm',
  ...SALE_UNIT_IDS,
];

/** Units that fit what the record is of. */
export function unitsFor(
  { column, carrier }: Remark,
  { series }: Pick<IntakePreview, 'series'>,
): readonly EnergyUnit[] {
  const of = carrier ?? recordOf(column, series)?.carrier;
  return ENERGY_UNITS.filter((unit) => of === undefined || isUnitOf(of, unit));
}

/** The record of a column: of a further sheet it bears the sheet's name too, without a heading the name of what it is. */
function recordOf(column: string | undefined, series: readonly Series[]): Series | undefined {
  if (series.length === 1) return series[0];
  const nameless = /^column \d+$/.test(column ?? '') ? series.filter(({ name, carrier }) => name === carrier) : [];
  return (
    series.find(({ name }) => name === column || name.endsWith(`: ${column}`)) ??
    (nameless.length === 1 ? nameless[0] : undefined)
  );
}

const OF_ONE_COLUMN = /^(unit-(?!s)|degrees-|carrier-|pulses-|direction-|title-|made-|part-|word-|net-|own-use-)/;
const OF_SEVERAL = /^(readings|days|counter|bills)/;

/** Whether a question is about one record of several, so that its answer must not touch the others. */
export const isOfOneColumn = (
  { code, column }: Remark,
  { series, shape }: Pick<IntakePreview, 'series' | 'shape'>,
): boolean => series.length > 1 && column !== undefined && OF_ONE_COLUMN.test(code) && OF_SEVERAL.test(shape ?? '');

/** What each question about records of one kind can be answered with. */
export const BESIDE_ANSWERS: Readonly<Record<string, readonly BesideChoice[]>> = {
  'records-asked': ['added', 'aside', 'instead'],
  'records-weather-asked': ['aside', 'instead'],
  'records-station-asked': ['goes-on', 'aside'],
  'records-register-asked': ['added', 'goes-on', 'aside'],
  'records-number-asked': ['goes-on', 'added', 'aside'],
  'records-counter-asked': ['goes-on', 'added', 'aside'],
  'records-level-asked': ['goes-on', 'added', 'aside'],
};

const DEGREES = ENERGY_UNITS.filter((unit) => isUnitOf('outdoor-temperature', unit));
/** Units that may be meant where one was taken: those that the kind of energy has, and gas where its kind is asked too. */
function unitsLike(remark: Remark, preview: IntakePreview): readonly EnergyUnit[] {
  const { code, expected, carrier } = remark;
  const { remarks } = preview;
  if (DEGREES.some((unit) => unit === expected)) return DEGREES;
  // A meter counts in no bags.
  if (code === 'espi-type-missing') return UNITS.filter((unit) => !SALE_UNIT_IDS.some((one) => one === unit));
  // The unit that it says would only be asked about again.
  if (code === 'unit-not-of-carrier') return UNITS.filter((unit) => unitsFor(remark, preview).includes(unit));
  if (carrier === undefined) return UNITS;
  const isGuessed = remarks.some((one) => one.code === 'carrier-guessed');
  // Nobody delivers power.
  const isPower = (unit: EnergyUnit) => unit === 'W' || unit === 'kW';
  return UNITS.filter((unit) => isUnitOf(carrier, unit) || (isGuessed && isUnitOf('gas', unit))).filter(
    (unit) => !(isDelivered(carrier) && isPower(unit)),
  );
}

/** An answer that leaves what was said before about the paper as it is. */
const ofPaper = ({ paper }: IntakeChoices, part: NonNullable<IntakeChoices['paper']>): Omit<Answer, 'label'> => ({
  choice: { paper: { ...paper, ...part } },
  holds: false,
});

/** Of one record of several the answer is kept with its column. */
export function answersTo(remark: Remark, preview: IntakePreview): readonly Answer[] {
  const answers = [...answersOf(remark, preview), ...asideOf(remark, preview)];
  const { column } = remark;
  if (column === undefined || !isOfOneColumn(remark, preview)) return answers;
  const known = preview.choices.ofColumns;
  return answers.map((answer) =>
    // What it is beside others has a place of its own.
    'beside' in answer.choice || 'besideOf' in answer.choice
      ? answer
      : {
          ...answer,
          choice: { ofColumns: { ...known, [column]: { ...known?.[column], ...(answer.choice as ChoicesOfColumn) } } },
        },
  );
}

/** Whatever a record is asked about, it may be left out. What was made or sent out counts in no sum of use. */
const MAY_BE_ASIDE = /^(unit-(?!s)|degrees-|carrier-|direction-|title-|made-by|part-|word-|amount-|net-|weather-)/;
const asideOf = (remark: Remark, preview: IntakePreview): readonly Answer[] =>
  MAY_BE_ASIDE.test(remark.code)
    ? [{ label: say(BESIDE_WORDS.aside), choice: besideOf(remark, preview, 'aside'), holds: false }]
    : [];

function answersOf(remark: Remark, preview: IntakePreview): readonly Answer[] {
  return answersOfForm(remark, preview) ?? answersOfRecord(remark, preview) ?? paperAnswersOf(remark, preview.choices);
}

/** How the file is written: dates, decimals, clock, units, columns, sheets. */
function answersOfForm(remark: Remark, preview: IntakePreview): readonly Answer[] | undefined {
  const { choices } = preview;
  switch (remark.code) {
    case 'date-order-asked':
    case 'date-order-mixed':
      return [
        { label: say('Day first'), choice: { dayFirst: true }, holds: choices.dayFirst === true },
        { label: say('Month first'), choice: { dayFirst: false }, holds: choices.dayFirst === false },
      ];
    case 'year-first-asked':
      return [
        { label: say('The day stands first'), choice: { yearFirst: false }, holds: choices.yearFirst === false },
        { label: say('The year stands first'), choice: { yearFirst: true }, holds: choices.yearFirst === true },
      ];
    case 'decimal-asked':
    case 'decimal-mixed':
      return [
        { label: say('A point is the decimal'), choice: { decimal: '.' }, holds: choices.decimal === '.' },
        { label: say('A comma is the decimal'), choice: { decimal: ',' }, holds: choices.decimal === ',' },
      ];
    case 'short-month-asked':
      return [
        { label: say('Parts: leave them out'), choice: { shortMonths: 'parts' }, holds: false },
        { label: say('Whole months'), choice: { shortMonths: 'whole' }, holds: false },
      ];
    case 'unread-asked':
    case 'unread-lists-asked':
    case 'unread-doubled-asked':
      return [
        { label: say('They may be left out'), choice: { leaveUnread: true }, holds: false },
        ...(choices.shape === 'bills'
          ? [{ label: say('Both stand'), choice: { overlaps: 'both' as const }, holds: false }]
          : []),
      ];
    case 'unread-credit-asked':
    case 'other-fuel-asked':
      return [{ label: say('They may be left out'), choice: { leaveUnread: true }, holds: false }];
    case 'unread-total-asked':
      return [{ label: say('The rows read are all'), choice: { leaveUnread: true }, holds: false }];
    case 'zone-asked':
    case 'clock-asked':
    case 'clock-assumed':
    case 'clock-autumn-asked':
    case 'clock-mixed':
    case 'clock-contradicted':
    case 'espi-clock-asked':
      return [
        { label: say('Local time'), choice: { clock: 'local' }, holds: choices.clock === 'local' },
        { label: say('UTC'), choice: { clock: 'utc' }, holds: choices.clock === 'utc' },
        { label: say('Winter time'), choice: { clock: 'standard' }, holds: choices.clock === 'standard' },
      ];
    case 'stamp-side-asked':
    case 'period-side-asked':
    case 'period-bought-asked':
      return [
        { label: say('The start'), choice: { stamp: 'start' }, holds: choices.stamp === 'start' },
        { label: say('The end'), choice: { stamp: 'end' }, holds: choices.stamp === 'end' },
      ];
    case 'to-inclusive-asked':
      return [
        { label: say('It belongs to the bill'), choice: { toInclusive: true }, holds: choices.toInclusive === true },
        { label: say('It begins the next'), choice: { toInclusive: false }, holds: choices.toInclusive === false },
      ];
    case 'carrier-guessed':
    case 'title-energy-asked':
      return carrierAnswers(remark, preview);
    case 'unit-guessed':
    case 'unit-doubtful':
    case 'unit-price-asked':
    case 'unit-not-of-carrier':
    case 'espi-type-missing':
      return unitsLike(remark, preview).map((unit) => ({
        label: sayTold(unit),
        choice: { unit },
        holds: (choices.unit ?? remark.expected) === unit,
      }));
    case 'degrees-doubtful':
      return DEGREES.map((unit) => ({ label: sayTold(unit), choice: { unit }, holds: choices.unit === unit }));
    case 'pulses-asked':
      return pulseAnswers(remark, choices);
    case 'column-asked':
      return columnAnswers(preview);
    case 'period-overlap-asked':
      return [
        { label: say('Each day counts once'), choice: { overlaps: 'once' }, holds: choices.overlaps === 'once' },
        { label: say('Both stand'), choice: { overlaps: 'both' }, holds: choices.overlaps === 'both' },
      ];
    case 'calorific-assumed':
      return calorificAnswers(remark, choices);
    case 'register-still':
      return stillAnswers(preview);
    case 'register-rising-asked':
      return [
        { label: say('A running meter'), choice: { shape: 'counter' }, holds: false },
        { label: say('Amounts used'), choice: { shape: preview.shape ?? undefined }, holds: true },
      ];
    case 'sheet-asked':
    case 'sheet-tables-asked':
    case 'sheet-homes-asked':
    case 'sheet-packed-asked':
      return sheetChoices(preview);
    default:
      return undefined;
  }
}

/** What a record is: which way it went, whether it is all, and how it stands beside others. */
function answersOfRecord(remark: Remark, preview: IntakePreview): readonly Answer[] | undefined {
  const { choices } = preview;
  switch (remark.code) {
    case 'direction-asked':
    case 'direction-of-name-asked':
    case 'title-way-asked':
    case 'made-by-day-asked':
      return wayAnswers(['import', 'export', 'generation', 'heat-pump'], remark, choices);
    case 'made-asked':
      return wayAnswers(['export', 'generation'], remark, choices);
    case 'part-asked':
      return [{ label: say('The whole home'), choice: { role: 'import' }, holds: false }];
    case 'part-pump-asked':
      return [
        { label: WAYS['heat-pump'](), choice: { role: 'heat-pump' }, holds: false },
        { label: say('The whole home'), choice: { role: 'import' }, holds: false },
      ];
    case 'part-register-asked':
      return [
        // "HP" is the dear register in France, and a heat pump elsewhere.
        ...(remark.found === 'hp'
          ? [{ label: WAYS['heat-pump'](), choice: { role: 'heat-pump' as const }, holds: false }]
          : []),
        { label: say('The whole home'), choice: { role: 'import' }, holds: false },
        { label: say('Another file has the rest'), choice: besideOf(remark, preview, 'added'), holds: false },
      ];
    case 'amount-asked':
    case 'amount-days-asked':
    case 'title-word-asked':
      return [{ label: say('What the home used'), choice: { role: 'import' }, holds: false }];
    case 'word-asked':
      return wordAnswers(remark, preview);
    case 'weather-indoors-asked':
      return [{ label: say('Outdoors, on these days'), choice: { weatherMeasured: true }, holds: false }];
    case 'weather-asked':
    case 'weather-smooth-asked':
      return [{ label: say('Measured on these days'), choice: { weatherMeasured: true }, holds: false }];
    case 'weather-extreme-asked':
      return [{ label: say('The mean of each day'), choice: { weatherMeasured: true }, holds: false }];
    case 'records-asked':
    case 'records-weather-asked':
    case 'records-register-asked':
    case 'records-number-asked':
    case 'records-station-asked':
    case 'records-counter-asked':
    case 'records-level-asked':
      return BESIDE_ANSWERS[remark.code]!.map((beside) => ({
        label: say(BESIDE_WORDS[beside]),
        choice: besideOf(remark, preview, beside),
        holds: false,
      }));
    case 'own-use-asked':
      return [
        { label: say('All of it was bought'), choice: { ownUse: 'apart' }, holds: true },
        { label: say('Own use is within'), choice: { ownUse: 'within' }, holds: false },
      ];
    case 'net-asked':
      return [
        { label: say('Sent out'), choice: { net: true }, holds: false },
        { label: say('Bought'), choice: { net: 'bought' }, holds: false },
        { label: say('Faults'), choice: { net: false }, holds: false },
      ];
    default:
      return undefined;
  }
}

const BESIDE_WORDS: Readonly<Record<BesideChoice, string>> = {
  added: phrase('Add it to the other'),
  aside: phrase('Do not use it'),
  instead: phrase('Use it instead'),
  'goes-on': phrase('It goes on here'),
};

const WAYS = {
  import: () => say('Bought'),
  export: () => say('Sent out'),
  generation: () => say('All that is made at home'),
  'heat-pump': () => say('The heat pump alone'),
};

/** What its name says comes first; what is taken until somebody says is what the remark or the choices say. */
function wayAnswers(
  ways: readonly (keyof typeof WAYS)[],
  { code, expected }: Remark,
  { role }: IntakeChoices,
): readonly Answer[] {
  const isNamed = code === 'direction-of-name-asked';
  return ways
    .toSorted((a, b) => (isNamed ? Number(b === expected) - Number(a === expected) : 0))
    .map((way) => ({ label: WAYS[way](), choice: { role: way }, holds: !isNamed && (expected ?? role) === way }));
}

/** What a heading of which one word is not known may stand for; only electricity goes more than one way. */
function wordAnswers(remark: Remark, { series }: IntakePreview): readonly Answer[] {
  const isElectric = recordOf(remark.column, series)?.carrier === 'electricity';
  return [
    { label: say('What the home used'), choice: { role: 'import' }, holds: true },
    ...(isElectric ? wayAnswers(['heat-pump', 'export', 'generation'], remark, {}) : []),
    { label: say('Heat given out'), choice: { carrier: 'heat' }, holds: false },
  ];
}

/** Of one record of several the answer leaves the others as they are: a bill may be for two kinds of energy. */
function besideOf(
  { column, carrier }: Remark,
  { series, choices }: IntakePreview,
  beside: BesideChoice,
): IntakeChoices {
  const all = beside === 'aside' ? series : series.filter(standsBeside);
  // Registers that are added bear the names of all.
  const names = column?.split(' + ') ?? [];
  const one = recordOf(column, all);
  const own = all.filter((each) =>
    column === undefined ? each.carrier === carrier : each === one || names.includes(each.name),
  );
  if (own.length === 0 || own.length === all.length) return { beside };
  const answered = Object.fromEntries(own.map(({ name }) => [name, beside]));
  return { besideOf: { ...choices.besideOf, ...answered } };
}

/** What is asked of a bill on paper. */
function paperAnswersOf(remark: Remark, choices: IntakeChoices): readonly Answer[] {
  switch (remark.code) {
    case 'paper-fuel-asked':
      return (['electricity', 'gas'] as const).map((carrier) => ({
        label: say(carrierInFull(carrier)),
        choice: { carrier },
        holds: choices.carrier === carrier,
      }));
    case 'paper-vat-asked':
      return [
        { label: say('The prices hold VAT'), ...ofPaper(choices, { vat: 'included' }) },
        { label: say('No VAT is in them'), ...ofPaper(choices, { vat: 'none' }) },
      ];
    case 'paper-several-asked':
      return [
        { label: say('One bill'), ...ofPaper(choices, { bills: 'one' }) },
        { label: say('Several bills'), ...ofPaper(choices, { bills: 'several' }) },
      ];
    case 'paper-total-asked':
      return [{ label: say('All its charges are here'), ...ofPaper(choices, { complete: true }) }];
    case 'paper-unproved-asked':
      return [
        {
          label: say('{count, plural, one {The value is right} other {These values are right}}', {
            count: remark.count ?? 1,
          }),
          ...ofPaper(choices, { looked: true }),
        },
      ];
    case 'paper-meaning-asked':
      return [{ label: say('The guess is right'), ...ofPaper(choices, { meant: true }) }];
    case 'paper-no-bill-asked':
      return [{ label: say('It is a bill'), ...ofPaper(choices, { isBill: true }) }];
    case 'paper-left-out-asked':
      return [{ label: say('Save without it'), ...ofPaper(choices, { leftOut: true }) }];
    case 'paper-fuel-left-asked':
      return [{ label: say('Save without it'), ...ofPaper(choices, { leftOver: true }) }];
    case 'paper-billed-before-asked':
      return [{ label: say('Save what is charged now'), ...ofPaper(choices, { billedBefore: true }) }];
    case 'paper-money-asked':
      return [{ label: say('Save it as printed'), ...ofPaper(choices, { money: true }) }];
    case 'paper-contradicted-asked':
      return [{ label: say('Save it as printed'), ...ofPaper(choices, { asPrinted: true }) }];
    default:
      return [];
  }
}

/** Every energy that is counted in the unit; numbers without a word or a unit may be weather too. */
function carrierAnswers(remark: Remark, preview: IntakePreview): readonly Answer[] {
  const { choices, remarks, series } = preview;
  const isBare = remarks.some(({ code, column }) => code === 'unit-guessed' && column === remark.column);
  const unit = series.length === 1 && !isBare ? choices.unit : undefined;
  const carriers: readonly Carrier[] = [
    ...PRICED_CARRIERS,
    'heat',
    ...(['gas', 'water'].includes(remark.expected ?? '') ? (['water'] as const) : []),
    ...(isBare ? (['outdoor-temperature'] as const) : []),
  ];
  const fitting = carriers.filter((carrier) => unit === undefined || isUnitOf(carrier, unit));
  return [
    ...fitting.map((carrier) => ({
      label: say(carrierInFull(carrier)),
      choice: { carrier },
      holds: (choices.carrier ?? remark.expected) === carrier,
    })),
    ...(fitting.includes('electricity')
      ? (['heat-pump', 'generation', 'export'] as const).map((role) => ({
          label: WAYS[role](),
          choice: { carrier: 'electricity' as const, role },
          holds: false,
        }))
      : []),
  ];
}

/** The number taken can be confirmed; another is typed in its field below. */
function pulseAnswers(remark: Remark, choices: IntakeChoices): readonly Answer[] {
  const pulsesPerKWh = Number(remark.expected);
  const holds = choices.pulsesPerKWh === pulsesPerKWh;
  return [{ label: isRight(remark), choice: { pulsesPerKWh }, holds }];
}
const isRight = ({ expected = '', expectedTold }: Remark): string =>
  say('{value} is right', { value: sayTold(expectedTold ?? expected) });

/** The column that was taken can be confirmed, or one that it was taken before. */
function columnAnswers({ choices, columns, uses = [] }: IntakePreview): readonly Answer[] {
  const value = choices.columns?.value;
  const name = value === undefined ? undefined : columns[value];
  const own =
    value === undefined || name === undefined
      ? [{ label: say('Leave the others out'), choice: { every: false }, holds: true }]
      : [{ label: say('{value} is right', { value: columnNames(name) }), choice: { columns: { value } }, holds: true }];
  return [
    ...own,
    ...uses
      .filter(({ use }) => use === 'other-amount')
      .slice(0, MOST_OTHERS)
      .map(({ column }) => ({
        label: columnNames(columns[column]),
        choice: { columns: { value: column } },
        holds: false,
      })),
    { label: say('All of them, each by itself'), choice: { every: true }, holds: false },
  ];
}

/** Of more the choice stands above the rows below. */
const MOST_OTHERS = 4;

/** Amounts are of the shape that fits best after the counter. */
function stillAnswers({ candidates, shape }: IntakePreview): readonly Answer[] {
  const amounts = candidates.find((one) => one.shape !== shape)?.shape;
  return [
    { label: say('A running meter'), choice: { shape: shape ?? undefined }, holds: true },
    { label: say('Amounts used'), choice: { shape: amounts }, holds: false },
  ];
}

/** The value taken can be confirmed; another is typed in its field below. */
function calorificAnswers(remark: Remark, choices: IntakeChoices): readonly Answer[] {
  const calorificMJPerM3 = Number((Number(remark.expected) * (remark.found === 'kWh' ? MJ_PER_KWH : 1)).toFixed(6));
  if (!(calorificMJPerM3 >= 30 && calorificMJPerM3 <= 50)) return [];
  const holds = choices.calorificMJPerM3 === calorificMJPerM3;
  return [{ label: isRight(remark), choice: { calorificMJPerM3 }, holds }];
}

/** Another sheet is another table: what was chosen for the first one's columns does not hold for it. */
export const sheetChoice = (sheet: string): IntakeChoices => ({
  sheet,
  shape: undefined,
  columns: undefined,
  unit: undefined,
  carrier: undefined,
  role: undefined,
  stamp: undefined,
  toInclusive: undefined,
});

const sheetChoices = (preview: IntakePreview): readonly Answer[] =>
  (preview.sheets ?? []).map((sheet) => ({
    label: sheet,
    choice: sheetChoice(sheet),
    holds: preview.choices.sheet === sheet,
  }));
