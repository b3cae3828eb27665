/** What a reader is given beside the file: the installer's choices and the facts of the household. */
import { z } from 'zod';
import { Beside, Carrier, SeriesRole } from '../../model/shapes/evidence.ts';
import { SALE_UNIT_IDS } from '../../model/shapes/heating.ts';
import type { Reference } from '../../model/shapes/reference.ts';
import { type Page, PaperChoices, type Recognise, type UnpackHeic } from './paper-reading.ts';

export const ENERGY_UNITS = [
  'Wh',
  'kWh',
  'MWh',
  'kJ',
  'MJ',
  'GJ',
  'Gcal',
  'BTU',
  'MMBTU',
  'BTU/h',
  'W',
  'kW',
  'm³',
  'ft³',
  'hundred ft³',
  'US gallon',
  'imperial gallon',
  'therm',
  'pulse',
  ...SALE_UNIT_IDS,
  '°C',
  'tenth of °C',
  '°F',
  'K',
] as const;
export const EnergyUnit = z.enum(ENERGY_UNITS);
export type EnergyUnit = z.infer<typeof EnergyUnit>;

/** What a record is beside others of its kind, or that it goes on in them. */
export const BesideChoice = z.enum([...Beside.options, 'goes-on']);
export type BesideChoice = z.infer<typeof BesideChoice>;

/** What may be said of one record of several in a file. */
const ChoicesOfColumn = z.object({
  unit: EnergyUnit.optional(),
  carrier: Carrier.optional(),
  role: SeriesRole.optional(),
  pulsesPerKWh: z.number().positive().max(1_000_000).optional(),
  /** Whether readings below nought are what was sent out, so that the record is use less export, or what was bought. */
  net: z.union([z.boolean(), z.literal('bought')]).optional(),
  ownUse: z.enum(['within', 'apart']).optional(),
});
export type ChoicesOfColumn = z.infer<typeof ChoicesOfColumn>;

/** What the installer may correct in the preview. Absent means: decide from the file. */
export const IntakeChoices = z.object({
  shape: z.string().optional(),
  /** Sheet of a workbook, by its name. */
  sheet: z.string().max(200).optional(),
  unit: EnergyUnit.optional(),
  /** Whether a stamp names the start or the end of its interval. */
  stamp: z.enum(['start', 'end']).optional(),
  /** Order of day and month in dates like 03/04/2025. */
  dayFirst: z.boolean().optional(),
  /** Whether the year goes before month and day in dates like 23-01-24. */
  yearFirst: z.boolean().optional(),
  /** Clock the file is written in. `local` has both clock changes, `utc` none, `standard` is local winter time all year. */
  clock: z.enum(['local', 'utc', 'standard']).optional(),
  /** Zero-based columns. */
  columns: z
    .object({
      stamp: z.int().min(0).optional(),
      /** Clock time, where date and time stand in two columns. */
      time: z.int().min(0).optional(),
      from: z.int().min(0).optional(),
      to: z.int().min(0).optional(),
      value: z.int().min(0).optional(),
      cost: z.int().min(0).optional(),
      quality: z.int().min(0).optional(),
    })
    .optional(),
  /** Whether columns of one kind are read as a record each, where one would be taken; false where those taken are all. */
  every: z.boolean().optional(),
  decimal: z.enum(['.', ',']).optional(),
  /** Whether the last day written on a bill belongs to it. */
  toInclusive: z.boolean().optional(),
  /** Of bills that lie over each other, whether each day counts once or both stand, as of two meters. */
  overlaps: z.enum(['once', 'both']).optional(),
  /** Whether missing readings stay missing (as they do without this) or are filled by rule and marked. */
  fill: z.enum(['none', 'same weekday mean']).optional(),
  carrier: Carrier.optional(),
  role: SeriesRole.optional(),
  /** MJ per m³ as printed on the gas bill. */
  calorificMJPerM3: z.number().min(30).max(50).optional(),
  /** What a person said about a bill on paper. */
  paper: PaperChoices.optional(),
  /** What its records of use are beside others of their kind. */
  beside: BesideChoice.optional(),
  /** The same of single records of a file that has several, by their names in the preview. */
  besideOf: z.record(z.string().max(200), BesideChoice).optional(),
  /** Pulses that stand for one kWh, as printed on the meter. */
  pulsesPerKWh: z.number().positive().max(1_000_000).optional(),
  net: ChoicesOfColumn.shape.net,
  /** Whether a use holds what the home used of its own making, which is then taken off it. */
  ownUse: ChoicesOfColumn.shape.ownUse,
  /** What holds for one column only, by its name in the preview; of a file that has several. */
  ofColumns: z.record(z.string().max(200), ChoicesOfColumn).optional(),
  /** Whether temperatures are a record of the days that they bear, rather than means or a typical year. */
  weatherMeasured: z.boolean().optional(),
  /** Whether the many rows that could not be read, or that a later one of their time replaced, may be left out. */
  leaveUnread: z.boolean().optional(),
  /** Whether months with far less than their like are whole, or parts, which are left out. */
  shortMonths: z.enum(['whole', 'parts']).optional(),
  /** Sets aside what was chosen for an earlier file with the same headings. */
  anew: z.boolean().optional(),
});
export type IntakeChoices = z.infer<typeof IntakeChoices>;

/** What was chosen for a column, by itself or with the whole file. */
export const choicesFor = (choices: IntakeChoices, column: string): IntakeChoices => ({
  ...choices,
  ...choices.ofColumns?.[column],
});

/** What counts in no sum may be of anything; a record of a further sheet bears its name before its column. */
export const isSetAside = ({ beside, besideOf = {} }: IntakeChoices, column: string): boolean =>
  (Object.entries(besideOf).find(([name]) => name === column || name.endsWith(`: ${column}`))?.[1] ?? beside) ===
  'aside';

export interface IntakeContext {
  /** IANA zone of the household. */
  readonly zone: string;
  /** Money of the household; absent where a file is read by itself. */
  readonly money?: '£' | '€';
  /** Latest day a reading may bear without a remark, "2026-11-25"; the caller's clock, since intake has none. */
  readonly today: string;
  readonly kWhPerUnit: Reference['kWhPerUnit'];
  readonly gasVolume: {
    readonly correction: number;
    readonly calorificMJPerM3: number;
    readonly imperialM3PerHundredCubicFeet: number;
    /** Bills of the place print kWh for a m³, not MJ. */
    readonly isByKWh?: true;
  };
  /** Finds the words of a picture; without it pictures are refused. */
  readonly recognise?: Recognise;
  /** Without it pictures as telephones keep them are refused. */
  readonly unpackHeic?: UnpackHeic;
  /** The pages of this very paper as they were read before. */
  readonly seen?: readonly Page[];
  /** Called now and then with the share done; throw from it to cancel. */
  readonly onProgress?: (share: number) => void;
}
