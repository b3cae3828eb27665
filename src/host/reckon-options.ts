/** Options of the command line that reckons without a window. */
import { parseArgs } from 'node:util';
import { z } from 'zod';
import { DeskError } from '../desk/desk-error.ts';
import { IntakeChoices, otherThanPage } from '../intake/intake.ts';
import { TimeZone } from '../model/shapes/dates.ts';
import type { Language } from '../words/say.ts';
import { fromHere } from './data-folder.ts';

export interface ReckonOptions {
  readonly task: 'compare' | 'read' | 'help';
  /** The household file, or with `read` one raw file. */
  readonly file: string;
  /** With `read`: further pages of the same bill, in any order. */
  readonly pages: readonly string[];
  readonly json: boolean;
  readonly html: string | null;
  readonly pdf: string | null;
  /** Where the working goes; PDF or HTML by its ending. */
  readonly working: string | null;
  readonly check: boolean;
  /** Where the letter of the bill check goes; PDF or HTML by its ending. */
  readonly letter: string | null;
  /** The same for the installer's sheet with the working. */
  readonly sheet: string | null;
  /** Name of the offer to be in hand, where the file has several. */
  readonly offer: string | null;
  /** A signed file of prices and reference values to reckon with. */
  readonly values: string | null;
  /** Of the text and the documents; usage and faults of the command line itself stay English. */
  readonly language: Language;
  /** Clock of the home for `read`; null where none is named. */
  readonly zone: string | null;
  /** Answers for `read`, as in a household file. */
  readonly choices: IntakeChoices;
}

export const RECKON_USAGE = `plainwarmth reckon FILE [options]   (in the project's folder: npm run reckon -- FILE [options])
  FILE          a household file (JSON), with its raw files beside it
  --json        the whole reckoning as JSON
  --check       hold the bill in the file against the written estimate in the file
  --pdf OUT     write the paper for the household
  --html OUT    the same as a page
  --working OUT write the working behind it, every sum, PDF or HTML by the ending
  --letter OUT  check the bill and write the household's letter, PDF or HTML by the ending
  --sheet OUT   check the bill and write the installer's sheet with the working, PDF or HTML by the ending
  --offer NAME  reckon with that offer in hand, where the file has several
  --language L  write the text and the documents in en (English) or de (German)
  --values FILE reckon with the prices and reference values of a signed file
  --read FILE   say what is understood of one raw file, and stop; PDFs and pictures after it are pages of the same bill
  --zone Z      with --read: the clock of the home, such as Europe/Berlin
  --choose K=V  with --read: an answer or a correction, such as unit=kWh or columns.value=2; may be given several times
  --help        this text
Exit code 0: done. 2: the input was refused, or a question is open, with the reasons and the answers. 1: our own failure.`;

const LANGUAGE_NAMES: Readonly<Record<string, Language>> = { en: 'en-GB', de: 'de-DE' };

const refuse = (message: string) =>
  new DeskError({ code: 'bad-option', message, where: 'the command line', remedy: RECKON_USAGE });

export function readReckonOptions(args: readonly string[]): ReckonOptions {
  let parsed: ReturnType<typeof parse>;
  try {
    parsed = parse(args);
  } catch (error) {
    throw refuse((error as Error).message);
  }
  const { values, positionals } = parsed;
  const language = LANGUAGE_NAMES[values.language ?? 'en'];
  if (language === undefined) throw refuse(`The languages are en and de, and “${values.language}” was named.`);
  const rest = {
    language,
    zone: values.zone ?? null,
    choices: readChoices(values.choose ?? []),
    json: values.json ?? false,
    offer: values.offer ?? null,
    check: (values.check ?? false) || values.letter !== undefined || values.sheet !== undefined,
    letter: values.letter === undefined ? null : fromHere(values.letter),
    sheet: values.sheet === undefined ? null : fromHere(values.sheet),
    values: values.values === undefined ? null : fromHere(values.values),
    html: values.html === undefined ? null : fromHere(values.html),
    pdf: values.pdf === undefined ? null : fromHere(values.pdf),
    working: values.working === undefined ? null : fromHere(values.working),
  };
  if (rest.zone !== null && !TimeZone.safeParse(rest.zone).success)
    throw refuse(`${rest.zone} is no time zone; name one such as Europe/London.`);
  if (values.read === undefined && (rest.zone !== null || values.choose !== undefined))
    throw refuse('--zone and --choose go with --read; a household file has “zone” and “choices” for them.');
  for (const [name, path] of [
    ['letter', rest.letter],
    ['sheet', rest.sheet],
    ['working', rest.working],
  ] as const)
    if (path !== null && !/\.(pdf|html?)$/i.test(path))
      throw refuse(`The ${name} is written as PDF or HTML, and ${path} ends in neither.`);
  if (values.help) return { task: 'help', file: '', pages: [], ...rest };
  const raw = values.read === undefined ? [] : [...values.read, ...positionals];
  const noPage = otherThanPage(raw);
  if (noPage !== undefined)
    throw refuse(`Several files are read together as pages of one bill, and ${noPage} is neither a PDF nor a picture.`);
  const [file, ...pages] = raw;
  if (file !== undefined) return { task: 'read', file: fromHere(file), pages: pages.map(fromHere), ...rest };
  if (positionals.length !== 1) throw refuse(`One household file is expected, and ${positionals.length} were named.`);
  return { task: 'compare', file: fromHere(positionals[0]!), pages: [], ...rest };
}

function parse(args: readonly string[]) {
  return parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      json: { type: 'boolean' },
      check: { type: 'boolean' },
      html: { type: 'string' },
      pdf: { type: 'string' },
      working: { type: 'string' },
      letter: { type: 'string' },
      sheet: { type: 'string' },
      offer: { type: 'string' },
      language: { type: 'string' },
      values: { type: 'string' },
      read: { type: 'string', multiple: true },
      zone: { type: 'string' },
      choose: { type: 'string', multiple: true },
      help: { type: 'boolean' },
    },
  });
}

/** "unit=kWh", "columns.value=2"; a column or a record may be called anything. */
const PATHS = [
  /^(ofColumns)\.(.+)\.([a-zA-Z]+)=(.*)$/,
  /^(besideOf)\.(.+)=([^=]*)$/,
  /^([a-zA-Z0-9]+)(?:\.([a-zA-Z]+))?=(.*)$/,
];
/** A sheet may be called "2025". */
const valueIn = (name: string, written: string): unknown =>
  name !== 'sheet' && /^(true|false|-?\d+(\.\d+)?)$/.test(written) ? JSON.parse(written) : written;

type Nested = Readonly<Record<string, unknown>>;
const withAt = (given: Nested | undefined, [key, ...rest]: readonly string[], value: unknown): Nested => ({
  ...given,
  [key!]: rest.length === 0 ? value : withAt(given?.[key!] as Nested | undefined, rest, value),
});

/** Options as the choices of a household file. */
function readChoices(pairs: readonly string[]): IntakeChoices {
  let choices: Nested = {};
  for (const pair of pairs) {
    const path = PATHS.find((one) => one.test(pair));
    const found = (path?.exec(pair)?.slice(1) ?? []).filter((part) => part !== undefined);
    const [name] = found;
    if (name === undefined)
      throw refuse(`--choose takes a name and a value, such as unit=kWh, and “${pair}” was given.`);
    choices = withAt(choices, found.slice(0, -1), valueIn(name, found.at(-1)!));
  }
  const parsed = z.strictObject(IntakeChoices.shape).safeParse(choices);
  if (!parsed.success)
    throw refuse(`--choose: ${parsed.error.issues[0]!.path.join('.')} ${parsed.error.issues[0]!.message}`);
  return parsed.data;
}
