/** The command line that reckons without a window. Prints, and answers the exit code. */
import { statSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { auditOf } from '../desk/audit.ts';
import { Settings } from '../desk/contract.ts';
import { DeskError } from '../desk/desk-error.ts';
import { letterNames } from '../desk/letter-names.ts';
import { previewWithoutPeople } from '../desk/mask-people.ts';
import { plantOf } from '../desk/plant.ts';
import type { ReadEvidence } from '../desk/ports.ts';
import { noRegularFile, readRegularFile } from '../desk/regular-file.ts';
import { readSignedValues } from '../desk/signed-values.ts';
import { contextOf, intakeContext } from '../desk/take-in.ts';
import { VALUES_KEY } from '../desk/values-key.ts';
import { bundle } from '../intake/intake.ts';
import { readEvidence as readHere } from '../intake/read-evidence.ts';
import { renderLeaveBehind } from '../leave-behind/leave-behind.tsx';
import { renderLetter, renderSheet } from '../leave-behind/letter.tsx';
import { renderWorking } from '../leave-behind/working.tsx';
import { guidedSearch } from '../model/guided-search/guided-search.ts';
import { COUNTRIES, countryOfZone, currencyOf } from '../model/shapes/country.ts';
import { isRefused } from '../model/shapes/site-readings.ts';
import { layOver } from '../reference/index.ts';
import { catalogueOf } from '../words/catalogues.ts';
import { checkSentence, doubtSentences, fairSentence } from '../words/check.ts';
import { inEnglish, speak, speakMoney } from '../words/say.ts';
import { isTold, sayTold } from '../words/say-told.ts';
import { siteRemarkSentence } from '../words/site-readings.ts';
import { printWithChromium } from './print-pdf.ts';
import { readText, USUAL_ZONE } from './read-text.ts';
import { type Reckoned, reckonHousehold } from './reckon-household.ts';
import { RECKON_USAGE, type ReckonOptions, readReckonOptions } from './reckon-options.ts';
import { reckonText } from './reckon-text.ts';
import { runCommand, type Terminal } from './terminal.ts';

/** The documented JSON of `--json`; `version` goes up with any change that would break a reader. */
function reckonJson({ whole, estimate, check, plant }: Reckoned) {
  return {
    format: 'plainwarmth.reckoning',
    version: 2,
    household: estimate.household,
    evidence: whole.evidence.map(({ import: { fileName, shape, sha256, series, remarks } }) => ({
      fileName,
      shape,
      sha256,
      series,
      remarks,
    })),
    files: estimate.files ?? [],
    appraisal: estimate.appraisal,
    ...(estimate.offers ? { offers: estimate.offers } : {}),
    ...(estimate.tariffs ? { tariffs: estimate.tariffs } : {}),
    lifetime: estimate.lifetime ?? null,
    audit: auditOf(estimate),
    check,
    ...(check
      ? { checkSaid: { headline: checkSentence(check), before: doubtSentences(check), range: fairSentence(check) } }
      : {}),
    search: check ? guidedSearch(check) : null,
    ...(plant ? { plant: plantOf(plant.visits), brineOverVisits: plant.course } : {}),
  };
}

/** What the model tells becomes its English sentence, whatever language is spoken, with code and values beside it: `title` and `titleTold`. */
export function spellOut(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(spellOut);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).flatMap(([name, one]) =>
      isTold(one)
        ? [
            [name, sayTold(one)],
            [`${name}Told`, one],
          ]
        : [[name, spellOut(one)]],
    ),
  );
}

async function writePdf(path: string, document: string, option: string, { err }: Terminal): Promise<void> {
  const bytes = await printWithChromium(document);
  if (!bytes) {
    throw new DeskError({
      code: 'no-printer',
      message: 'No browser that can write a PDF was found on this computer.',
      where: option,
      remedy: 'Write HTML instead and print the document from a browser, or name one in PLAINWARMTH_CHROMIUM.',
    });
  }
  writeFileSync(path, bytes);
  err(`Wrote ${path}\n`);
}

/** What was read is never written over, by whatever name it is reached; and a pipe that nobody reads takes nothing. */
function refuseTargets(options: ReckonOptions, beside: readonly string[]): void {
  const { file, values, html, pdf, working, letter, sheet } = options;
  const known = (path: string) => statSync(path, { throwIfNoEntry: false, bigint: true });
  const inputs = [file, ...(values === null ? [] : [values]), ...beside].map(known);
  for (const target of [html, pdf, working, letter, sheet]) {
    const facts = target === null ? undefined : known(target);
    if (facts?.isFIFO()) throw noRegularFile(target!, false);
    if (!facts || !inputs.some((one) => one?.ino === facts.ino && one.dev === facts.dev)) continue;
    throw new DeskError({
      code: 'own-input',
      message: `${target} is a file that was read; it would be written over.`,
      where: target!,
      remedy: 'Name another file.',
    });
  }
}

async function writeDocuments(options: ReckonOptions, reckoned: Reckoned, terminal: Terminal) {
  const { html, pdf, working, letter, sheet } = options;
  const { estimate, check, whole } = reckoned;
  refuseTargets(
    options,
    whole.evidence.map(({ import: { fileName } }) => join(dirname(options.file), fileName)),
  );
  const settings = Settings.parse({});
  const names = letter === null ? null : letterNames(whole.household, `${basename(options.file)}, `);
  const writeHtml = (path: string, document: string) => {
    writeFileSync(path, document);
    terminal.err(`Wrote ${path}\n`);
  };
  const writeEither = (path: string, document: string, option: string) =>
    /\.pdf$/i.test(path) ? writePdf(path, document, option, terminal) : writeHtml(path, document);
  if (html !== null || pdf !== null) {
    const document = renderLeaveBehind(estimate, settings);
    if (html !== null) writeHtml(html, document);
    if (pdf !== null) await writePdf(pdf, document, '--pdf', terminal);
  }
  if (working !== null) await writeEither(working, renderWorking(estimate, settings), '--working');
  if (!check) return;
  const parts = { check, estimate, household: whole.household, settings };
  if (letter !== null && names) await writeEither(letter, renderLetter(parts, names), '--letter');
  if (sheet !== null) await writeEither(sheet, renderSheet(parts), '--sheet');
}

async function explainFile(
  { file, pages, json, zone, choices }: ReckonOptions,
  terminal: Terminal,
  readEvidence: ReadEvidence,
): Promise<0 | 2> {
  const { fileName, bytes } = await bundle(
    [file, ...pages].map((path) => [basename(path), readRegularFile(path)] as const),
  );
  // Whoever names a clock says in which country the home stands, and with what money it pays.
  const country = zone === null ? undefined : countryOfZone(zone);
  if (country) speakMoney(currencyOf({ country }));
  const context = country
    ? contextOf({ zone: COUNTRIES[country].zone, country }, terminal.today)
    : intakeContext(zone ?? USUAL_ZONE, terminal.today);
  const { preview: whole, people } = await readEvidence(fileName, bytes, choices, context);
  const preview = previewWithoutPeople(whole, people);
  // The words of a paper hold names and account numbers; they are no part of what is handed on.
  const { paper, ...rest } = preview;
  const shown = paper ? { ...rest, paper: { ...paper, pages: undefined } } : rest;
  terminal.out(json ? `${JSON.stringify(shown, null, 2)}\n` : readText(preview, zone));
  return preview.remarks.some(({ weight }) => weight !== 'note') ? 2 : 0;
}

/** @param readEvidence reads files, pictures too where it has eyes for them */
export const reckon = (
  args: readonly string[],
  raw: Terminal,
  readEvidence: ReadEvidence = readHere,
): Promise<0 | 1 | 2> =>
  runCommand(raw, async (terminal) => {
    const options = readReckonOptions(args);
    if (options.task === 'help') {
      terminal.out(`${RECKON_USAGE}\n`);
      return 0;
    }
    speak({ language: options.language, currency: 'GBP' }, await catalogueOf(options.language));
    refuseTargets(options, []);
    if (options.values !== null) {
      const text = new TextDecoder().decode(readRegularFile(options.values));
      layOver(readSignedValues(basename(options.values), text, VALUES_KEY));
    }
    if (options.task === 'read') return explainFile(options, terminal, readEvidence);
    const reckoned = await reckonHousehold(options.file, terminal.today, {
      withCheck: options.check,
      withDocument: options.html !== null || options.pdf !== null || options.working !== null,
      readEvidence,
      ...(options.offer === null ? {} : { offer: options.offer }),
    });
    speakMoney(currencyOf(reckoned.whole.household));
    await writeDocuments(options, reckoned, terminal);
    terminal.out(
      options.json
        ? `${JSON.stringify(
            inEnglish(() => spellOut(reckonJson(reckoned))),
            null,
            2,
          )}\n`
        : reckonText(reckoned),
    );
    return refusePlant(reckoned, terminal);
  });

/** Readings at the plant that cannot be hold back only what is made of them: the rest is printed, then they are refused. */
function refusePlant({ plant }: Reckoned, { err }: Terminal): 0 | 2 {
  const refused = (plant?.visits ?? []).flatMap(({ check, key }) =>
    check.remarks.filter(isRefused).map((remark) => `${key}.${remark.where}: ${siteRemarkSentence(remark)}\n`),
  );
  refused.forEach(err);
  return refused.length > 0 ? 2 : 0;
}
