/** Day and night registers of a two-rate meter, held against the readings by the clock. */
import { toDayNumber } from '../calendar/civil.ts';
import { type Finding, sureOf, yearOfDays } from '../shapes/finding.ts';
import { versionOn } from '../tariff/slot-price.ts';
import type { MeterDays, Prices } from './meter-days.ts';
import { bandPrices, bandsOf } from './slot-prices.ts';
import type { TwoRegisters } from './two-registers.ts';

const LEAST_SHARE_KNOWN = 0.9;
/** Misfit as a share of the units: as billed at least this, exchanged at most that. */
const LEAST_STRAIGHT = 0.2;
const MOST_SWAPPED = 0.12;

/** Bills whose two registers fit the readings the wrong way round; their cost [pence] is what was charged too much. */
export function findRegistersSwapped(
  registers: readonly TwoRegisters[],
  days: MeterDays,
  { versions = [], zone }: Prices,
): Finding[] {
  if (versions.length === 0) return [];
  return registers.flatMap((bill): Finding[] => {
    const version = versionOn({ versions }, bill.from);
    if (version.bands.length !== 2 || version.series || version.bands.some(({ blocks }) => blocks)) return [];
    const prices = bandPrices(version);
    const dear = prices[0]! > prices[1]! ? 0 : 1;
    const bands = bandsOf(days, version, zone);
    const read = readRegisters(days, bands, dear, bill);
    const total = bill.dearKWh + bill.cheapKWh;
    if (!read || !(total > 0)) return [];
    const straight = (Math.abs(bill.dearKWh - read.dearKWh) + Math.abs(bill.cheapKWh - read.cheapKWh)) / total;
    const swapped = (Math.abs(bill.dearKWh - read.cheapKWh) + Math.abs(bill.cheapKWh - read.dearKWh)) / total;
    if (straight < LEAST_STRAIGHT || swapped > MOST_SWAPPED || swapped * 2 > straight) return [];
    const pence = (bill.dearKWh - read.dearKWh) * prices[dear]! + (bill.cheapKWh - read.cheapKWh) * prices[1 - dear]!;
    return [
      {
        code: 'registers-swapped',
        meter: 'bills',
        from: bill.from,
        to: bill.to,
        sure: sureOf(1 - swapped / straight),
        grade: 'measured',
        seen: { billedDearKWh: bill.dearKWh, billedCheapKWh: bill.cheapKWh, ...read },
        kWh: 0,
        pence,
        kWhYear: 0,
        penceYear: yearOfDays(pence, toDayNumber(bill.to) - toDayNumber(bill.from)),
        ask: ['meter-exchanged', 'tariff-changed'],
        check: ['register-labels', 'meter-clock', 'supplier-bill'],
        cautions: [],
      },
    ];
  });
}

function readRegisters(days: MeterDays, bands: Int8Array, dear: number, { from, to }: TwoRegisters) {
  const [first, end] = [toDayNumber(from), toDayNumber(to)];
  let dearKWh = 0;
  let cheapKWh = 0;
  let known = 0;
  for (let day = 0; day < days.count; day++) {
    if (days.dayNumber[day]! < first || days.dayNumber[day]! >= end) continue;
    known++;
    for (let i = day * days.perDay; i < (day + 1) * days.perDay; i++) {
      if (bands[i] === dear) dearKWh += days.kWh[i]!;
      else cheapKWh += days.kWh[i]!;
    }
  }
  // A few days without readings stand at the mean of the others.
  const scale = (end - first) / known;
  return known >= LEAST_SHARE_KNOWN * (end - first) ? { dearKWh: dearKWh * scale, cheapKWh: cheapKWh * scale } : null;
}
