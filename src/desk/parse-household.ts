/** Reads the JSON of a household file, ours or one written by hand, or refuses it naming the place in it. */
import type { z } from 'zod';
import { DEEPEST, nestsTooDeep } from '../intake/text/nesting.ts';
import { longDate } from '../words/numbers.ts';
import { say } from '../words/say.ts';
import { DeskError, type DeskRefusal } from './desk-error.ts';
import { hashOf } from './hash.ts';
import { HouseholdFile, readHouseholdFile, type WholeHousehold } from './household-file.ts';
import { HouseholdInput, toHousehold } from './household-input.ts';
import { toNamesOfToday } from './old-names.ts';
import type { OnItsWayIn } from './ports.ts';
import { explainIssues } from './refusal.ts';
import { isSamePart } from './same-part.ts';

/** Mostly a bill or readings, dropped on the list. */
function refuseOther(fileName: string): never {
  throw new DeskError({
    code: 'not-json',
    message: say('{fileName} is not a household file.', { fileName }),
    where: fileName,
    remedy: say('Open the household first: bills and readings are given there. Here choose its exported JSON file.'),
  });
}

function parseJson(bytes: Uint8Array, fileName: string): unknown {
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return refuseOther(fileName);
  }
  if (!/^\s*[{[]/.test(text)) return refuseOther(fileName);
  if (nestsTooDeep(text)) {
    throw new DeskError({
      code: 'too-deep',
      message: say('{fileName} has lists or groups in more than {most} others, so it cannot be a household file.', {
        fileName,
        most: String(DEEPEST),
      }),
      where: fileName,
      remedy: say('Choose the JSON file that was exported or written for the household.'),
    });
  }
  try {
    return JSON.parse(text) as unknown;
  } catch (error) {
    throw new DeskError({
      code: 'not-json',
      message: say('{fileName} is not a whole JSON file: {message}.', { fileName, message: (error as Error).message }),
      where: fileName,
      remedy: say('It may have been cut off on the way. Export it again, or correct it at the place named.'),
    });
  }
}

/** Everything that is wrong with a file; as an error it is its first. */
export class ManyRefusals extends DeskError {
  readonly all: readonly DeskRefusal[];
  constructor(all: readonly [DeskRefusal, ...DeskRefusal[]]) {
    super(all[0]);
    this.all = all;
  }
}

/** Parses with the schema or throws what it complains of, each with file and path. */
function parseWith<S extends z.ZodType>(schema: S, value: unknown, fileName: string): z.output<S> {
  const parsed = schema.safeParse(value);
  if (parsed.success) return parsed.data;
  const [first, ...others] = explainIssues(parsed.error.issues, value).map((refusal) => ({
    ...refusal,
    where: `${fileName}, ${refusal.where}`,
  }));
  throw new ManyRefusals([first!, ...others]);
}

const fieldOf = (value: unknown, name: string): unknown =>
  value !== null && typeof value === 'object' ? (value as Record<string, unknown>)[name] : undefined;

const isExported = (value: unknown) => fieldOf(value, 'format') === 'plainwarmth.household-file';

function refuseNewer(value: unknown, fileName: string): void {
  const version = fieldOf(value, 'version');
  const newest = isExported(value) ? 2 : 1;
  if (typeof version !== 'number' || version <= newest) return;
  throw new DeskError({
    code: 'file-newer',
    message: say(
      '{fileName} was written by a newer Plainwarmth: version {version} of the file, and this one reads version {newest}.',
      { fileName, version: String(version), newest: String(newest) },
    ),
    where: `${fileName}, version`,
    remedy: say('Bring this Plainwarmth up to date, or export the file again from the older one.'),
  });
}

export function parseHouseholdInput(bytes: Uint8Array, fileName: string): HouseholdInput {
  const value = toNamesOfToday(parseJson(bytes, fileName));
  refuseNewer(value, fileName);
  return parseWith(HouseholdInput, value, fileName);
}

/** Nobody has taken an offer on a day that has not come. */
export function refuseTakenLater(taken: { readonly on: string } | undefined, today: string, where: string): void {
  if (!taken || taken.on <= today) return;
  throw new DeskError({
    code: 'taken-later',
    message: say('The offer was taken on {date}, and that day has not come yet.', { date: longDate(taken.on) }),
    where,
    remedy: say('Correct the date.'),
  });
}

/** A household file of either kind; the raw files that a written one names are not read here. */
export function parseWholeHousehold(fileName: string, bytes: Uint8Array, { id, today }: OnItsWayIn): WholeHousehold {
  const value = toNamesOfToday(parseJson(bytes, fileName));
  refuseNewer(value, fileName);
  if (!isExported(value)) {
    const input = parseWith(HouseholdInput, value, fileName);
    refuseTakenLater(input.taken, today, `${fileName}, taken.on`);
    const household = toHousehold(input, id);
    return { household, evidence: [], estimates: [], checks: [] };
  }
  const whole = readHouseholdFile(parseWith(HouseholdFile, value, fileName));
  refuseTakenLater(whole.household.taken, today, `${fileName}, household.taken.on`);
  refuseChanged(whole, fileName);
  refuseLoose(whole, fileName);
  return whole;
}

/** What names another part of the file must find it there, and nothing may stand in it twice. */
function refuseLoose({ household, evidence, estimates, checks }: WholeHousehold, fileName: string): void {
  const imports = evidence.map((part) => part.import);
  const seriesIds = imports.flatMap(({ series }) => series.map(({ id }) => id));
  const once = (values: readonly string[]) => new Set(values).size === values.length;
  const estimateIds = new Set(estimates.map(({ id }) => id));
  const faults: readonly (readonly [boolean, string])[] = [
    [imports.every(({ householdId }) => householdId === household.id), 'evidence'],
    [once(imports.map(({ id }) => id)) && once(seriesIds), 'evidence'],
    [imports.every((one, i) => !imports.slice(0, i).some((other) => isSamePart(one, other))), 'evidence'],
    [
      evidence.every(({ intervals }) =>
        intervals.every(({ seriesId, days }) => seriesIds.includes(seriesId) && once(days.map(({ date }) => date))),
      ),
      'evidence',
    ],
    [
      estimates.every(({ householdId }) => householdId === household.id) && estimateIds.size === estimates.length,
      'estimates',
    ],
    [checks.every(({ estimateId }) => estimateIds.has(estimateId)) && once(checks.map(({ id }) => id)), 'checks'],
  ];
  const fault = faults.find(([holds]) => !holds);
  if (!fault) return;
  throw new DeskError({
    code: 'file-does-not-fit',
    message: say(
      'The parts of {fileName} do not fit together: something in “{part}” stands twice or belongs to a part that is not in the file.',
      { fileName, part: fault[1] },
    ),
    where: `${fileName}, ${fault[1]}`,
    remedy: say('Export the household again where it came from.'),
  });
}

/** A raw file that no longer has its own hash was changed on the way. */
function refuseChanged({ evidence }: WholeHousehold, fileName: string): void {
  evidence.forEach(({ import: { sha256, fileName: rawName }, rawFile }, i) => {
    if (!rawFile || hashOf(rawFile) === sha256) return;
    throw new DeskError({
      code: 'raw-file-changed',
      message: say('The file {rawName} inside {fileName} is not the one that was imported: its hash differs.', {
        rawName,
        fileName,
      }),
      where: `${fileName}, evidence.${i}.rawFile`,
      remedy: say('Export the household again where it came from.'),
    });
  });
}
