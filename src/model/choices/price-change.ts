/** What the tariff before and the one taken in its stead ask for a heat pump's units in the days of a bill. */
import { appraise } from '../appraise.ts';
import { estimateForDays } from '../bill-gap/estimate-for-days.ts';
import type { ChangedTariff, MeanPrice } from '../bill-gap/price-levers.ts';
import { daysBetween } from '../calendar/civil.ts';
import { costOfDays } from '../findings/clock-prices.ts';
import { type MeterReadings, meterDays } from '../findings/meter-days.ts';
import { bandPrices } from '../findings/slot-prices.ts';
import type { BillCheckInput } from '../shapes/bill-check.ts';
import type { Household } from '../shapes/household.ts';
import type { Reference } from '../shapes/reference.ts';
import type { Tariff } from '../shapes/tariff.ts';
import type { WrittenEstimate } from '../shapes/written-estimate.ts';
import { monthPieces } from '../tariff/blocks.ts';
import { onOwnMeter } from '../tariff/own-meter.ts';

export interface ChangeInput {
  readonly estimate: WrittenEstimate;
  readonly bill: BillCheckInput;
  /** As it is known today, with the tariffs since. */
  readonly household: Household;
  readonly readings: readonly MeterReadings[];
  readonly reference: Reference;
}

/** Days of which readings must be there to speak for a bill. Common practice, no source. */
const LEAST_SHARE = 0.95;

/** A stretch of days under one tariff; null for the published average. */
interface Stretch {
  readonly tariff: Tariff | null;
  readonly from: string;
  /** Exclusive. */
  readonly to: string;
}

/** The tariff that the estimate rests on, as it is known today, and the one taken since; null where the latter is not known or the same. */
export function tariffsOfChange(
  { estimate, household }: Pick<ChangeInput, 'estimate' | 'household'>,
  takenId = household.prices.electricityTariffId,
) {
  const find = (tariffs: readonly Tariff[], id: string | undefined) => tariffs.find((one) => one.id === id);
  const id = estimate.household.prices.electricityTariffId;
  const before = find(household.tariffs, id) ?? find(estimate.household.tariffs, id) ?? null;
  const after = find(household.tariffs, takenId);
  return !after || after.id === before?.id || (id !== undefined && !before) ? null : { before, after };
}

/**
 * Mean prices [p/kWh, VAT included] of a heat pump's units in the days of a bill: on the tariff before, and on it until the change
 * and on the other from then on. At the hours of the estimate by pricing it anew on each; at the bill's own hours by the
 * half-hours of the machine's meter, or where all hours of a tariff cost the same. Null without a change, or where a tariff is not known.
 */
export function priceChange(input: ChangeInput): ChangedTariff | null {
  const { from, to, tariffChange } = input.bill;
  const known = tariffChange && tariffsOfChange(input, tariffChange.tariffId);
  if (!known) return null;
  const { on } = tariffChange;
  const kept: Stretch[] = [{ tariff: known.before, from, to }];
  const taken: Stretch[] =
    on > from
      ? [
          { tariff: known.before, from, to: on },
          { tariff: known.after, from: on, to },
        ]
      : [{ tariff: known.after, from, to }];
  const before = meanPrice(kept, input);
  const after = meanPrice(taken, input);
  if (!before || !after) return null;
  return { before, after, grade: known.before ? 'estimated' : 'assumed' };
}

function meanPrice(stretches: readonly Stretch[], input: ChangeInput): MeanPrice | null {
  let [kWh, pence] = [0, 0];
  for (const piece of stretches.flatMap(piecesOf)) {
    const { spaceKWh, otherKWh } = estimateForDays(input.estimate, piece.from, piece.to);
    kWh += spaceKWh + otherKWh;
    pence += (spaceKWh + otherKWh) * priceOfMonth(piece, input);
  }
  if (!(kWh > 0)) return null;
  const used = stretches.every(isFlat) ? pence / kWh : usedPrice(stretches, input);
  return { estimated: pence / kWh, ...(used === undefined ? {} : { used }) };
}

/** Cut where a month or a dated price begins. */
function piecesOf({ tariff, from, to }: Stretch): Stretch[] {
  const cuts = [
    from,
    ...(tariff?.versions.map((version) => version.from) ?? []).filter((day) => day > from && day < to),
  ];
  return cuts
    .toSorted()
    .flatMap((start, i, sorted) => monthPieces(start, sorted[i + 1] ?? to).map((piece) => ({ ...piece, tariff })));
}

/** Mean price of the estimated heat pump's units in the month of a piece, at the prices in force when it begins. */
function priceOfMonth({ tariff, from }: Stretch, { estimate, reference }: ChangeInput): number {
  const { electricityTariffId: _, ...prices } = estimate.household.prices;
  const household = {
    ...estimate.household,
    tariffs: tariff ? [tariff] : [],
    prices: tariff ? { ...prices, electricityTariffId: tariff.id } : prices,
  };
  const { systems } = appraise({ household, series: estimate.evidence, reference, asOf: from, draws: 0 });
  const { boughtKWh, unitsPence } = systems.find(({ id }) => id === 'heat-pump')!.monthly;
  const month = Number(from.slice(5, 7)) - 1;
  return boughtKWh[month]! > 0 ? unitsPence[month]! / boughtKWh[month]! : 0;
}

/** The published average has one price; so has a tariff without times, steps or dated half-hours. */
const isFlat = ({ tariff }: Stretch): boolean =>
  !tariff?.versions.some(
    (version) => version.series || version.bands.some(({ blocks }) => blocks) || new Set(bandPrices(version)).size > 1,
  );

/** By the half-hours of the machine's meter; undefined where days are missing, or a price hangs on more than the hour. */
function usedPrice(stretches: readonly Stretch[], { bill, household, readings }: ChangeInput): number | undefined {
  const machine = readings.find(({ meter }) => meter === 'heat-pump');
  const days = machine && meterDays(machine);
  if (!days) return undefined;
  let [kWh, pence, count] = [0, 0, 0];
  for (const { tariff, from, to } of stretches) {
    const cost =
      tariff && costOfDays(days, { versions: tariff.versions.map(onOwnMeter), zone: household.zone }, from, to);
    if (!cost) return undefined;
    kWh += cost.kWh;
    pence += cost.pence;
    count += cost.days;
  }
  return kWh > 0 && count >= LEAST_SHARE * daysBetween(bill.from, bill.to) ? pence / kWh : undefined;
}
