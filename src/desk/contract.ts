/**
 * Every request that the screens may make, with the schema of what goes in and what comes out.
 * Both hosts and the client derive from this one table; nothing else crosses between window and desk.
 */
import { z } from 'zod';
import { IntakeChoices, IntakePreview } from '../intake/intake.ts';
import { BillCheck, BillCheckInput } from '../model/shapes/bill-check.ts';
import { CivilDate } from '../model/shapes/dates.ts';
import { Carrier, Evidence, EvidencePeriod, Remark, Series, SeriesRole } from '../model/shapes/evidence.ts';
import { TypedAnswer } from '../model/shapes/guided-search.ts';
import { Household } from '../model/shapes/household.ts';
import { Tariff } from '../model/shapes/tariff.ts';
import { Grade } from '../model/shapes/working.ts';
import { WrittenEstimate } from '../model/shapes/written-estimate.ts';
import { CURRENCIES } from '../words/say.ts';
import type { DeskRefusal } from './desk-error.ts';
import { PASSPHRASE_LETTERS } from './limits.ts';
import { Id, Nothing, Settings, startInputs } from './start-requests.ts';

export { Settings } from './start-requests.ts';

/** A piece that is no longer what was kept, in words, with the way back. */
export const DamageNote = z.object({
  kind: z.enum(['household', 'import', 'readings', 'raw-file', 'estimate', 'check', 'settings', 'tariff']),
  message: z.string(),
  remedy: z.string(),
  householdId: Id.optional(),
  evidenceId: Id.optional(),
});
export type DamageNote = z.infer<typeof DamageNote>;

/** How safe the data is. Times are ISO instants. */
export const DataState = z.object({
  households: z.int(),
  lastCopyOn: z.string().optional(),
  lastCopyPath: z.string().optional(),
  /** Where copies go. */
  folder: z.string().optional(),
  daily: z.boolean(),
  dailyLocked: z.boolean(),
  /** Why the last copy of the day could not be saved. */
  failure: z.string().optional(),
  isCopyDue: z.boolean(),
  lastCheckOn: z.string().optional(),
  damage: z.array(DamageNote),
  /** Files beside the data in which something older may stand. */
  olderFiles: z.array(z.object({ name: z.string(), size: z.int() })),
  /** What the browser of our own window keeps lies there; absent where none was opened, or where the host does not know. */
  windowFolder: z.string().optional(),
});
export type DataState = z.infer<typeof DataState>;

/** Prices and reference values in use: those of the program, or those of a signed file laid over them. */
export const ValuesState = z.object({
  edition: CivilDate,
  builtInEdition: CivilDate,
  /** What was laid over, whole topics; null where the program's own are in use. */
  laidOver: z.record(z.string(), z.unknown()).nullable(),
});
export type ValuesState = z.infer<typeof ValuesState>;

const Path = z.string().min(1).max(4000);
/** One to open a copy with is tried as it is: whatever does not open it is said to be wrong. */
const TriedPassphrase = z.string().max(PASSPHRASE_LETTERS.most).optional();
const Passphrase = z.string().min(PASSPHRASE_LETTERS.least).max(PASSPHRASE_LETTERS.most).optional();

export const FolderView = z.object({
  path: Path,
  name: z.string(),
  parent: Path.nullable(),
  /** Sticks and the usual places. */
  places: z.array(z.object({ name: z.string(), path: Path })),
  folders: z.array(z.object({ name: z.string(), path: Path })),
  copies: z.array(z.object({ name: z.string(), size: z.int(), changedOn: z.string() })),
});
export type FolderView = z.infer<typeof FolderView>;

export const HouseholdSummary = z.object({
  id: Id,
  name: z.string(),
  jobNumber: z.string(),
  place: z.string(),
  changedOn: z.string(),
  archived: z.boolean(),
  evidenceCount: z.int(),
  estimateCount: z.int(),
  /** It cannot be opened; says why and what to do. */
  damaged: DamageNote.optional(),
});
export type HouseholdSummary = z.infer<typeof HouseholdSummary>;

export const EstimateSummary = z.object({
  id: Id,
  number: z.int(),
  madeOn: z.string(),
  note: z.string(),
  heatPumpPence: z.number(),
  lowPence: z.number(),
  highPence: z.number(),
  /** How well the yearly cost was known. */
  grade: Grade,
  /** The offer that it is for, where there were several. */
  offer: z.object({ id: z.string(), name: z.string() }).optional(),
  /** Money of these amounts; absent means pounds. */
  currency: z.enum(CURRENCIES).optional(),
});
export type EstimateSummary = z.infer<typeof EstimateSummary>;

export const OpenHousehold = z.object({
  household: Household,
  /** Counts up with every change stored; a save that names an older one is refused, never merged silently. */
  revision: z.int(),
  archived: z.boolean(),
  evidence: z.array(Evidence),
  /** What the model takes: the series of all imports, each day of a register counted once, the newest import of it first. */
  series: z.array(Series),
  estimates: z.array(EstimateSummary),
  checks: z.array(BillCheck),
  /** Imports that were taken back; `evidence.restore` brings them again. */
  undone: z.array(z.object({ id: Id, fileName: z.string(), importedOn: z.string() })),
  /** Pieces that are no longer what was kept. */
  damage: z.array(DamageNote),
});
export type OpenHousehold = z.infer<typeof OpenHousehold>;

/** A document or data file handed out. */
export const FileOut = z.object({
  fileName: z.string(),
  mediaType: z.string(),
  base64: z.string(),
  /** What had to be left out of it. */
  remark: z.string().optional(),
});
export type FileOut = z.infer<typeof FileOut>;

/** The fields of a bill that kept readings and the tariff fill in; what they do not say is left to be asked. */
export const BillPrefill = z.object({
  from: CivilDate,
  /** Exclusive. */
  to: CivilDate,
  meter: z.enum(['heat-pump', 'whole-house']),
  kWh: z.number(),
  /** VAT included; where the price hangs on the hour, the mean over the units used. */
  pencePerKWh: z.number().optional(),
  readings: z.enum(['actual', 'estimated', 'unknown']),
  meterName: z.string(),
  tariffName: z.string().optional(),
  /** Another tariff than the estimate's is in use today; its first day where that lies after the estimate. */
  changed: z.object({ tariffName: z.string(), on: CivilDate.optional() }).optional(),
});
export type BillPrefill = z.infer<typeof BillPrefill>;

const request = <I extends z.ZodType, O extends z.ZodType>(input: I, output: O) => ({ input, output });

export const contract = {
  'app.read': request(
    startInputs['app.read'],
    z.object({
      version: z.string(),
      versionDate: CivilDate,
      modelVersion: z.string(),
      host: z.enum(['electron', 'loopback']),
      today: CivilDate,
      dataFolder: z.string(),
      /** What happened on opening the store that the installer should know, such as a damaged file set aside. */
      notice: z.string().optional(),
    }),
  ),
  /** Ends the program: its data is closed, its pages do not answer any more. Work under way comes to its end first. */
  'app.quit': request(Nothing, Nothing),
  'data.read': request(startInputs['data.read'], DataState),
  /** A folder of this computer to save to or restore from; the home folder without a path. */
  'data.folder': request(z.object({ path: Path.optional() }), FolderView),
  /** Writes everything into one file there, locked where a passphrase is given, and reads it back. */
  'data.save': request(
    z.object({ folder: Path, passphrase: Passphrase }),
    z.object({ path: Path, size: z.int(), households: z.int(), damage: z.array(DamageNote) }),
  ),
  /** A copy every day into a folder, locked where a passphrase is given; null for none. */
  'data.daily': request(z.object({ folder: Path.nullable(), passphrase: Passphrase }), DataState),
  /** Holds every stored piece against its hash. */
  'data.check': request(Nothing, DataState),
  /** What is inside a copy; nothing is changed. */
  'data.look': request(
    z.object({ path: Path, passphrase: TriedPassphrase }),
    z.object({
      households: z.array(
        z.object({ id: Id, name: z.string(), changedOn: z.string(), evidenceCount: z.int(), estimateCount: z.int() }),
      ),
      remark: z.string().optional(),
      damage: z.array(DamageNote),
    }),
  ),
  /** Puts everything in the copy in the place of what is here, which is kept as a copy first. */
  'data.restore': request(
    z.object({ path: Path, passphrase: TriedPassphrase }),
    z.object({ households: z.int(), keptAs: Path.optional() }),
  ),
  /** One household of a copy, beside what is here. */
  'data.bring-in': request(
    z.object({ path: Path, passphrase: TriedPassphrase, householdId: Id }),
    z.object({ id: Id }),
  ),
  'values.read': request(startInputs['values.read'], ValuesState),
  /** What a signed file of prices and reference values would change; nothing is changed. */
  'values.look': request(
    z.object({ fileId: Id }),
    z.object({
      edition: CivilDate,
      changes: z.array(
        z.object({
          path: z.array(z.string()),
          before: z.union([z.string(), z.number()]).optional(),
          after: z.union([z.string(), z.number()]).optional(),
        }),
      ),
    }),
  ),
  /** Reckons with the values of that file from here on; null goes back to the program's own. Written estimates keep theirs. */
  'values.use': request(z.object({ fileId: Id.nullable() }), ValuesState),
  'settings.read': request(startInputs['settings.read'], Settings),
  'settings.write': request(Settings, Settings),

  'household.list': request(startInputs['household.list'], z.array(HouseholdSummary)),
  'household.create': request(z.object({ name: z.string().min(1).max(120) }), OpenHousehold),
  'household.open': request(startInputs['household.open'], OpenHousehold),
  'household.save': request(z.object({ household: Household, revision: z.int() }), z.object({ revision: z.int() })),
  'household.duplicate': request(z.object({ id: Id, name: z.string().min(1).max(120) }), OpenHousehold),
  'household.archive': request(z.object({ id: Id, archived: z.boolean() }), Nothing),
  /** Erases the household with all evidence, written estimates and checks, for good. */
  'household.erase': request(z.object({ id: Id, confirmName: z.string() }), Nothing),
  /** Imported files, with whom they name, go along only `withFiles`; papers never do. */
  'household.export': request(z.object({ id: Id, withFiles: z.boolean().default(false) }), FileOut),
  /** A household file: our own export, or a written one that names its raw files (those are then not read here). */
  'household.import': request(z.object({ fileId: Id }), OpenHousehold),

  /** Hands a file to the desk; it is kept for the session only, until `evidence.accept` or another import takes it. */
  'file.offer': request(
    z.object({ fileName: z.string().min(1).max(255), bytes: z.instanceof(Uint8Array) }),
    z.object({ fileId: Id, fileName: z.string(), size: z.int() }),
  ),
  'evidence.preview': request(z.object({ fileId: Id, householdId: Id, choices: IntakeChoices }), IntakePreview),
  /** Stores what the preview with the same choices showed, in one transaction. `duplicateOf` names an earlier import of the same part of the same file. */
  'evidence.accept': request(
    z.object({ fileId: Id, householdId: Id, choices: IntakeChoices }),
    z.object({ evidence: Evidence.nullable(), duplicateOf: Id.nullable() }),
  ),
  /** Bills, readings or deliveries typed at the table. */
  'evidence.type': request(
    z.object({
      householdId: Id,
      name: z.string().min(1).max(120),
      carrier: Carrier,
      role: SeriesRole,
      periods: z.array(EvidencePeriod).min(1).max(2000),
    }),
    Evidence,
  ),
  /** Takes an import back; the raw file stays, so that `evidence.restore` can bring it again. */
  'evidence.undo': request(z.object({ evidenceId: Id }), Nothing),
  /** Brings back damaged readings from the kept file; with a file, the kept file itself. */
  'evidence.mend': request(z.object({ evidenceId: Id, fileId: Id.optional() }), Nothing),
  'evidence.restore': request(z.object({ evidenceId: Id }), Evidence),
  /** Readings of one series between two local days (`to` exclusive), thinned to at most 2,000 points without losing peaks. */
  'evidence.readings': request(
    z.object({ seriesId: Id, from: CivilDate, to: CivilDate }),
    z.array(z.object({ at: z.string(), value: z.number().nullable() })),
  ),
  /** Reads a tariff file (JSON or CSV) for a home, and answers the tariff with what had to be guessed; nothing is stored. */
  'tariff.read': request(
    z.object({ fileId: Id, householdId: Id }),
    z.object({ tariff: Tariff, remarks: z.array(Remark) }),
  ),
  /** Tariffs kept for use in other households. */
  'tariff.shelf': request(Nothing, z.array(Tariff)),
  'tariff.keep': request(z.object({ tariff: Tariff }), Nothing),
  'tariff.drop': request(z.object({ tariffId: Id }), Nothing),

  'estimate.keep': request(
    /** `clockIsRight` goes on although an earlier estimate bears a later time. */
    z.object({ householdId: Id, note: z.string().max(2000), clockIsRight: z.boolean().optional() }),
    WrittenEstimate,
  ),
  'estimate.read': request(z.object({ estimateId: Id }), WrittenEstimate),
  /** The household's paper or the working behind it; the figures as CSV are one file for both. */
  'estimate.print': request(
    z.object({
      estimateId: Id,
      document: z.enum(['paper', 'working']).default('paper'),
      format: z.enum(['pdf', 'html', 'csv']),
    }),
    FileOut,
  ),

  'check.run': request(BillCheckInput, BillCheck),
  /** All that the guided search has been told, in the order of asking; answers the check as it stands then. */
  'check.answer': request(z.object({ checkId: Id, answers: z.array(TypedAnswer).max(40) }), BillCheck),
  /** What the evidence says of a bill's days; without days, the newest whole months since the estimate. Null where it says nothing. */
  'check.prefill': request(
    z.object({ estimateId: Id, from: CivilDate.optional(), to: CivilDate.optional() }),
    BillPrefill.nullable(),
  ),
  /** The household's letter of a check, or the installer's sheet with its working. The letter needs the names of the household. */
  'check.print': request(
    z.object({ checkId: Id, paper: z.enum(['letter', 'sheet']).default('letter'), format: z.enum(['pdf', 'html']) }),
    FileOut,
  ),
  /** Answers to customer's questions by name, in this home's figures of today. */
  'questions.print': request(
    z.object({ householdId: Id, ids: z.array(z.string().max(20)).min(1).max(40), format: z.enum(['pdf', 'html']) }),
    FileOut,
  ),
  'check.drop': request(z.object({ checkId: Id }), Nothing),
} as const;

export type Contract = typeof contract;
export type RequestName = keyof Contract;
export type Input<N extends RequestName> = z.input<Contract[N]['input']>;
export type Output<N extends RequestName> = z.output<Contract[N]['output']>;

export interface CallOptions {
  readonly signal?: AbortSignal;
  readonly onProgress?: (share: number) => void;
}
export type Call = <N extends RequestName>(name: N, input: Input<N>, options?: CallOptions) => Promise<Output<N>>;

/** What the menu of the desktop shell asks of the window. */
export const MenuCommand = z.enum([
  'new-household',
  'import',
  'export',
  'print',
  'list',
  'settings',
  'theme-system',
  'theme-light',
  'theme-dark',
]);
export type MenuCommand = z.infer<typeof MenuCommand>;

/** How an answer comes over the bridge: errors lose their class between processes, so a refusal travels as data. */
export type BridgeAnswer = { readonly result: unknown } | { readonly refusal: DeskRefusal };

/** What the preload of the desktop shell puts on the window as `plainwarmth`, and nothing more. */
export interface Bridge {
  call(callId: number, name: string, input: unknown): Promise<BridgeAnswer>;
  cancel(callId: number): void;
  onProgress(listener: (callId: number, share: number) => void): void;
  /** Asks where to save; false when the installer thought better of it. */
  saveFile(file: FileOut): Promise<boolean>;
  onMenu(listener: (command: MenuCommand) => void): () => void;
}
