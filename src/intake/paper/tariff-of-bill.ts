/** The prices of a bill as a tariff of the household's own. */

import { toCivilDate, toDayNumber } from '../../model/calendar/civil.ts';
import type { Bill } from '../../model/shapes/bill.ts';
import type { Tariff, TariffBand, TariffVersion } from '../../model/shapes/tariff.ts';
import { tell } from '../../model/shapes/told.ts';
import type { RowFacts } from './figures.ts';
import { registerNamed } from './lines.ts';

type Hours = readonly { readonly from: string; readonly to: string }[];

/** Where a bill names its night rate and not its hours; common practice, no source. The person is told to put them right. */
const NIGHT: Hours = [{ from: '00:00', to: '07:00' }];
const CLOCK = String.raw`(\d{1,2})[:.](\d{2})(?:\s?([ap])\.?m\b\.?)?`;
const STRETCH = new RegExp(
  String.raw`(?<![\d.:,£€$])${CLOCK}\s?(?:h|Uhr)?\s?(?:[-–—]|to|until|bis)\s?${CLOCK}(?![.:,]?\d)`,
  'giu',
);
/** Hours of some days only, or of a clock that is never put forward, are more than two times of day. */
const MORE_THAN_HOURS = /GMT|UTC|week|(?<!\p{L})(?:mon|sat|sun|mo|sa|so)(?!\p{L})|werktag|winter|summer|sommer/iu;

/** When a register counts, as the rows that name it say; undefined where they say nothing, or not the same. */
function hoursOf(register: string, rows: readonly RowFacts[]): Hours | undefined {
  const said = rows
    .filter(({ text, words }) => /\d[:.]\d\d/.test(text) && registerNamed(words.split('\t').join(' ')) === register)
    .map(({ text }) => ({ text, hours: [...text.matchAll(STRETCH)].map(stretchOf) }))
    .filter(({ hours }) => hours.length > 0);
  const [first] = said;
  const isSame = said.every(
    ({ text, hours }) => !MORE_THAN_HOURS.test(text) && JSON.stringify(hours) === JSON.stringify(first!.hours),
  );
  const hours = first?.hours.flatMap((one) => one ?? []) ?? [];
  return isSame && hours.length > 0 && hours.length === first!.hours.length ? hours : undefined;
}

function stretchOf([, h1, m1, half1, h2, m2, half2]: RegExpMatchArray): Hours[number] | undefined {
  if ((half1 === undefined) !== (half2 === undefined)) return undefined;
  const [from, to] = [clockOf(h1!, m1!, half1), clockOf(h2!, m2!, half2)];
  return from && to && from !== to ? { from, to } : undefined;
}

function clockOf(hour: string, minute: string, half: string | undefined): string | undefined {
  const isTwelve = half !== undefined;
  const read = isTwelve ? (Number(hour) % 12) + (half.toLowerCase() === 'p' ? 12 : 0) : Number(hour) % 24;
  if (Number(hour) > (isTwelve ? 12 : 24) || Number(minute) > 59) return undefined;
  return `${String(read).padStart(2, '0')}:${minute}`;
}

/** One version for each day on which some price of the bill begins; undefined where a price or the VAT is not known. */
export function tariffOfBill(bill: Bill, vatRate: number, rows: readonly RowFacts[]): Tariff | undefined {
  const { charges, meters, standing, fuel, vat, adjustments } = bill;
  const names = meters.map(({ name }) => name);
  const cheap = names.filter((name) => /night|off peak/.test(name));
  const isTwo = names.length === 2 && cheap.length === 1 && fuel === 'electricity';
  if (!isTwo && names.length !== 1) return undefined;
  // A levy on each unit belongs to its price; the bill gives it as a sum.
  if (adjustments.some(({ kind, vat: when }) => kind === 'charge' && when === 'before')) return undefined;
  const night = isTwo ? hoursOf(cheap[0]!, rows) : undefined;
  const begins = [...new Set([bill.from, ...[...charges, ...standing].flatMap(({ from }) => from ?? [])])].toSorted();
  const holds = (from: string, line: { from?: string | undefined; to?: string | undefined }) =>
    (line.from ?? bill.from) <= from && (line.to ?? bill.to) > from;
  const versions = begins.map((from): TariffVersion | undefined => {
    const day = standing.filter((line) => holds(from, line)).at(-1);
    const bands = names.map((name): TariffBand | undefined => {
      const prices = new Set(
        charges.filter((line) => line.meter === name && holds(from, line)).map((line) => line.pencePerKWh),
      );
      // Steps by amount, or months whose days nothing says, are no price of one band.
      const price = prices.size === 1 ? [...prices][0] : undefined;
      const times = isTwo && cheap.includes(name) ? [...(night ?? NIGHT)] : ('rest' as const);
      return price === undefined ? undefined : { name, pencePerKWh: price, times };
    });
    const pencePerDay = standing.length === 0 ? 0 : day?.pencePerDay;
    if (pencePerDay === undefined || !bands.every((band) => band !== undefined)) return undefined;
    return { from, standingPencePerDay: pencePerDay, vat: { rate: vatRate, included: vat.included }, bands };
  });
  if (!versions.every((version) => version !== undefined)) return undefined;
  // People call the file by their name; the tariff has the days of the bill instead.
  const name = `${bill.from} – ${toCivilDate(toDayNumber(bill.to) - 1)}`;
  return {
    id: `tariff-${fuel}`,
    name,
    fuel,
    origin: tell('from-bill', { file: name }),
    grade: isTwo && !night ? 'assumed' : 'measured',
    versions,
  };
}
