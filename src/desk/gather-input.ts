/** A written household file with the raw files beside it, read through intake exactly as the window would import them. */
import { bundle, otherThanPage } from '../intake/intake.ts';
import type { BillCheckInput } from '../model/shapes/bill-check.ts';
import type { Evidence } from '../model/shapes/evidence.ts';
import { say } from '../words/say.ts';
import { refuseFaultyTariffs } from './check-tariffs.ts';
import { DeskError } from './desk-error.ts';
import type { WholeHousehold } from './household-file.ts';
import type { InputCheck } from './household-input.ts';
import { type HouseholdInput, toHousehold } from './household-input.ts';
import { askOtherMeters } from './join/find-other-meter.ts';
import { findOverlaps, withOverlaps } from './join/find-overlaps.ts';
import { askLoneParts } from './join/lone-parts.ts';
import { remarkRivals } from './join/remark-rivals.ts';
import { seriesInMemory } from './join/stored-series.ts';
import { refuseTakenLater } from './parse-household.ts';
import type { ReadEvidence } from './ports.ts';
import { priceByTariff } from './prefill-bill.ts';
import { refuseQuestions } from './refuse-remarks.ts';
import { heatPumpUnits, type KnownSince } from './run-check.ts';
import { isSamePart } from './same-part.ts';
import { contextOf, namedByDays, takeIn } from './take-in.ts';
import { typeEvidence } from './typed-evidence.ts';

export interface GatherInput {
  readonly input: HouseholdInput;
  /** Reads a file that lies beside the household file; undefined when it is not there. */
  readonly readBeside: (fileName: string) => Uint8Array | undefined;
  readonly today: string;
  readonly now: string;
  readonly newId: () => string;
  readonly readEvidence: ReadEvidence;
}

export async function gatherInput(given: GatherInput): Promise<WholeHousehold> {
  const { input, readBeside, today, now, newId, readEvidence } = given;
  const household = toHousehold(input, newId());
  refuseTakenLater(input.taken, today, 'taken.on');
  refuseFaultyTariffs(household.tariffs);
  const seen: Evidence[] = [];
  const fromFiles: WholeHousehold['evidence'][number][] = [];
  const named = (fileName: string) => {
    const bytes = readBeside(fileName);
    if (bytes) return [fileName, bytes] as const;
    throw new DeskError({
      code: 'no-such-file',
      message: say('The household file names {fileName}, which does not lie beside it.', { fileName }),
      where: fileName,
      remedy: say('Put the file into the same folder, or correct its name.'),
    });
  };
  for (const { file, pages = [], choices } of input.files ?? []) {
    const noPage = otherThanPage([file, ...pages]);
    if (noPage !== undefined)
      throw new DeskError({
        code: 'no-page',
        message: say('{fileName} is named as a page of a bill, and is neither a PDF nor a picture.', {
          fileName: noPage,
        }),
        where: noPage,
        remedy: say('Name it as a file of its own.'),
      });
    const taken = await takeIn({
      file: await bundle([file, ...pages].map(named)),
      choices: choices ?? {},
      context: contextOf(household, today),
      householdId: household.id,
      importedOn: now,
      newId,
      readEvidence,
    });
    refuseTwice(seen, taken.evidence);
    const kept = taken.preview.paper ? namedByDays(taken.evidence) : taken.evidence;
    fromFiles.push({ import: kept, rawFile: taken.rawFile, intervals: taken.intervals });
  }
  const typed = (input.typed ?? []).map((one) => {
    const evidence = typeEvidence({ ...one, householdId: household.id }, now, newId);
    refuseTwice(seen, evidence);
    return { import: evidence, rawFile: null, intervals: [] };
  });
  const brought = [...fromFiles, ...typed];
  const readings = new Map(brought.flatMap(({ intervals }) => intervals.map((one) => [one.seriesId, one] as const)));
  const imports = brought.map(({ import: one }) => one);
  // What each says again that one before it said, as the window tells it when it comes.
  const evidence = brought.map((one, i) => ({
    ...one,
    import: withOverlaps(
      one.import,
      findOverlaps(imports.slice(0, i + 1), (seriesId) => readings.get(seriesId)),
    ),
  }));
  const whole = { household, evidence, estimates: [], checks: [] };
  // The answer stands at a file of the household file, so that a bill is asked about by the name that it has there.
  const rivals = remarkRivals(seriesInMemory(whole), seen, () => true);
  const parts = [...askLoneParts(seen).values()].flat();
  refuseQuestions([...rivals, ...askOtherMeters(seen), ...parts]);
  return whole;
}

function refuseTwice(seen: Evidence[], evidence: Evidence): void {
  const { fileName } = evidence;
  const earlier = seen.find((one) => isSamePart(one, evidence))?.fileName;
  if (earlier !== undefined) {
    throw new DeskError({
      code: 'file-twice',
      message: say('{fileName} holds exactly the same as {earlier}, so it would count twice.', { fileName, earlier }),
      where: fileName,
      remedy: say('Take one of the two out of the household file.'),
    });
  }
  seen.push(evidence);
}

/**
 * The bill to check; its units come from the heat pump's own readings where the file does not say them. What a bill of the
 * whole home holds beside heating stays unknown where the file does not say it. Without a price it is that of the tariff.
 */
export function billOf(check: InputCheck, estimateId: string, known: KnownSince): BillCheckInput {
  const readKWh = check.boughtKWh === undefined ? heatPumpUnits(known.series, check.from, check.to) : undefined;
  const boughtKWh = check.boughtKWh ?? readKWh;
  if (boughtKWh === undefined) {
    throw new DeskError({
      code: 'no-units',
      message: say(
        'The kWh bought from {from} to {to} are not given, and no readings of the heat pump cover all those days.',
        { from: check.from, to: check.to },
      ),
      where: 'check.boughtKWh',
      remedy: say('Write the kWh of the bill, or name a file with the heat pump’s own readings for those days.'),
    });
  }
  const nothingElse = check.meter === 'heat-pump' || readKWh !== undefined ? { otherKWh: 0 } : {};
  return { ...nothingElse, ...check, ...priceOf({ ...check, boughtKWh }, estimateId, known), estimateId, boughtKWh };
}

/** What the bill says of its price, else what the household's tariff says. */
function priceOf(check: InputCheck & { readonly boughtKWh: number }, estimateId: string, known: KnownSince) {
  const { pencePerKWh, totalPence, boughtKWh, meter } = check;
  if (pencePerKWh !== undefined) return { pencePerKWh };
  if (totalPence !== undefined && boughtKWh > 0) return { pencePerKWh: totalPence / boughtKWh };
  const price = priceByTariff(known, estimateId, meter === 'heat-pump', check);
  if (price) return { pencePerKWh: price.pencePerKWh, priceTariff: price.tariffName };
  throw new DeskError({
    code: 'no-price',
    message: say('The price of the bill is not given, and no tariff of the household says it for these days.'),
    where: 'check.pencePerKWh',
    remedy: say('Write the price per kWh of the bill, VAT included, or what it charges in all as “totalPence”.'),
  });
}
