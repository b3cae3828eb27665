/** The lines that one version of a tariff charges for its days of a bill. */
import { monthOf, yearOf } from '../calendar/civil.ts';
import type { CivilDate } from '../shapes/dates.ts';
import type { TariffBand } from '../shapes/tariff.ts';
import { roundToPenny } from '../units/money.ts';
import type { BillSpan } from './bill-use.ts';
import { type Block, blocksOf, monthPieces, monthsBetween, splitIntoBlocks } from './blocks.ts';
import type { SpanUse } from './span-use.ts';

export interface BillLine {
  readonly kind: 'units' | 'standing' | 'demand' | 'export';
  /** Name of the band or block; for the standing charge the days or months. */
  readonly name: string;
  /** Exclusive end. */
  readonly from: CivilDate;
  readonly to: CivilDate;
  readonly quantity: number;
  readonly unit: 'kWh' | 'day' | 'month' | 'kW';
  /** As the tariff states it, with or without VAT; pence a unit. */
  readonly price: number;
  /** Rounded to the penny, VAT as in `price`. */
  readonly pence: number;
}

/** Lines of a span: units by band or block, dated units, standing charge, demand. */
export function linesOf(span: BillSpan, use: SpanUse): BillLine[] {
  return [...unitLines(span, use), standingLine(span), ...demandLines(span, use)];
}

function unitLines({ version, from, to }: BillSpan, use: SpanUse): BillLine[] {
  const line = (name: string, quantity: number, price: number): BillLine => ({
    kind: 'units',
    name,
    from,
    to,
    quantity,
    unit: 'kWh',
    price,
    pence: roundToPenny(quantity * price),
  });
  const byBand = version.bands.flatMap((band, place) => {
    // A band beside a series prices only the days that the series does not reach; often there are none.
    if (version.series && use.kWh[place] === 0) return [];
    const blocks = blocksOf(band);
    const kWh = band.blocks ? kWhByBlock(band, blocks, place, use, { from, to }) : [use.kWh[place]!];
    return blocks.map(({ name, pencePerKWh }, i) => line(name, kWh[i]!, pencePerKWh));
  });
  const { dated } = use;
  if (!dated) return byBand;
  const mean = dated.kWh > 0 ? dated.pence / dated.kWh : 0;
  return [{ ...line('half-hourly prices', dated.kWh, mean), pence: roundToPenny(dated.pence) }, ...byBand];
}

/** By the day or month where readings tell; else the units are taken to be alike on all days. */
function kWhByBlock(
  band: TariffBand,
  blocks: readonly Block[],
  place: number,
  use: SpanUse,
  span: { readonly from: CivilDate; readonly to: CivilDate },
): number[] {
  const pieces = monthPieces(span.from, span.to);
  const allDays = pieces.reduce((sum, { days }) => sum + days, 0);
  const kWhFrom = (from: CivilDate, to: CivilDate) =>
    (use.days ?? []).reduce((sum, day) => sum + (day.date >= from && day.date < to ? day.kWh[place]! : 0), 0);
  const parts =
    band.blocks!.per === 'day' && use.days
      ? use.days.map((day) => splitIntoBlocks(day.kWh[place]!, blocks))
      : pieces.map(({ from, to, days, share }) => {
          const kWh = use.days ? kWhFrom(from, to) : (use.kWh[place]! * days) / allDays;
          return splitIntoBlocks(kWh, blocks, band.blocks!.per === 'day' ? days : share);
        });
  return blocks.map((_, i) => parts.reduce((sum, part) => sum + part[i]!, 0));
}

function standingLine({ version, from, to, days }: BillSpan): BillLine {
  const byMonth = version.standingPencePerMonth;
  if (byMonth !== undefined && byMonth > 0) {
    const months = monthsBetween(from, to);
    const name = `${Number(months.toFixed(3))} months`;
    const pence = roundToPenny(months * byMonth);
    return { kind: 'standing', name, from, to, quantity: months, unit: 'month', price: byMonth, pence };
  }
  const price = version.standingPencePerDay;
  const pence = roundToPenny(days * price);
  return { kind: 'standing', name: `${days} days`, from, to, quantity: days, unit: 'day', price, pence };
}

function demandLines({ version, from, to }: BillSpan, use: SpanUse): BillLine[] {
  const { demand } = version;
  if (!demand) return [];
  const price = demand.pencePerKWPerMonth;
  const line = (name: string, kW: number, months: number, days: Pick<BillLine, 'from' | 'to'>): BillLine => ({
    kind: 'demand',
    name,
    ...days,
    quantity: kW * months,
    unit: 'kW',
    price,
    pence: roundToPenny(kW * months * price),
  });
  if (demand.agreedKW !== undefined) {
    return [line(`${demand.agreedKW} kW agreed`, demand.agreedKW, monthsBetween(from, to), { from, to })];
  }
  const { peakKW } = use;
  if (!peakKW) throw new RangeError('a charge on the largest half-hour needs half-hourly readings');
  return monthPieces(from, to).map((piece) => {
    const kW = peakKW.get(piece.from.slice(0, 7)) ?? 0;
    return line(`largest half-hour of ${monthOf(piece.from)}/${yearOf(piece.from)}`, kW, piece.share, piece);
  });
}
