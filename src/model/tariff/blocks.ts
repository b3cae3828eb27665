/** Stepped blocks: units sorted into the steps of a day or calendar month. */
import { addDays, daysBetween, daysInMonth, monthOf, yearOf } from '../calendar/civil.ts';
import type { CivilDate } from '../shapes/dates.ts';
import type { PricedBand } from '../shapes/tariff.ts';
import { tell, type Wording } from '../shapes/told.ts';

/** A step of a band: its name, its price as the tariff states it, and where it begins [kWh a day or month]. */
export interface Block {
  readonly name: Wording;
  readonly pencePerKWh: number;
  readonly fromKWh: number;
}

/** The steps of a band in order, the last without end; one step where the band has no blocks. */
export function blocksOf(band: PricedBand): Block[] {
  const { name, blocks, pencePerKWh } = band;
  if (!blocks) return [{ name, pencePerKWh, fromKWh: 0 }];
  const { steps, per } = blocks;
  const last = steps.at(-1)!.upToKWh;
  return [
    ...steps.map((step, i) => ({
      name: tell(i === 0 ? `first-a-${per}` : `up-to-a-${per}`, { when: name, kWh: step.upToKWh }),
      pencePerKWh: step.pencePerKWh,
      fromKWh: i === 0 ? 0 : steps[i - 1]!.upToKWh,
    })),
    { name: tell(`above-a-${per}`, { when: name, kWh: last }), pencePerKWh, fromKWh: last },
  ];
}

/** Units in each step [kWh] of what is used in one day or month [kWh]. */
export function splitIntoBlocks(kWh: number, blocks: readonly Block[]): number[] {
  return blocks.map(({ fromKWh }, i) => {
    const to = i + 1 < blocks.length ? blocks[i + 1]!.fromKWh : Number.POSITIVE_INFINITY;
    return Math.max(0, Math.min(kWh, to) - fromKWh);
  });
}

/** Months from `from` to `to` (exclusive), each day the part of its own calendar month: a whole year is 12. */
export function monthsBetween(from: CivilDate, to: CivilDate): number {
  return monthPieces(from, to).reduce((sum, { share }) => sum + share, 0);
}

export interface MonthPiece {
  readonly from: CivilDate;
  readonly to: CivilDate;
  readonly days: number;
  /** Part of the calendar month, 0 to 1. */
  readonly share: number;
}

/** The days from `from` to `to` (exclusive) cut at the ends of calendar months. */
export function monthPieces(from: CivilDate, to: CivilDate): MonthPiece[] {
  const pieces: MonthPiece[] = [];
  for (let start = from; start < to; ) {
    const ofMonth = daysInMonth(yearOf(start), monthOf(start));
    const next = addDays(`${start.slice(0, 8)}01`, ofMonth);
    const end = next < to ? next : to;
    const days = daysBetween(start, end);
    pieces.push({ from: start, to: end, days, share: days / ofMonth });
    start = end;
  }
  return pieces;
}
