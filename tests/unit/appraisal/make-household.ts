/** The one maker of households for tests: an invented home of which everything is known, and what a test changes of it. */
import type { Series } from '../../../src/model/shapes/evidence.ts';
import { OFFERED } from '../../../src/model/shapes/heating.ts';
import { emptyHousehold, type Given, type Household } from '../../../src/model/shapes/household.ts';
import type { Tariff, TariffBand } from '../../../src/model/shapes/tariff.ts';
import type { Grade } from '../../../src/model/shapes/working.ts';

/** Every way of heating beside the heat pump, whatever the home. */
export const EVERY_WAY = Object.fromEntries(OFFERED.map((system) => [system, true]));

/** A value somebody typed. */
export const typed = <T>(value: T, grade: Grade = 'estimated'): Given<T> => ({
  value,
  grade,
  origin: 'typed in a test',
});

/** Parts of a household to lay over the usual one; a section is merged field by field. */
export type HouseholdChange = {
  readonly [Section in keyof Household]?: Household[Section] extends readonly unknown[] | string
    ? Household[Section]
    : Partial<Household[Section]>;
};

/**
 * A gas semi with radiators: 6.1 kW heat loss for 21 °C against −3.4 °C, three people, ground source at H4 with both
 * factors typed. `undefined` in a change takes a field away.
 */
export function makeHousehold(change: HouseholdChange = {}): Household {
  const usual: Household = {
    ...emptyHousehold('household-test', 'Larch Rise'),
    home: {
      kind: 'semi',
      floorAreaM2: typed(96),
      ageBand: typed('1930 to 1966' as const),
      people: typed(3),
      postcode: 'B14 6AA',
    },
    present: { system: 'gas-condensing', hotWaterFrom: 'same' },
    heat: { heatLossKW: typed(6.1), designOutdoorC: typed(-3.4), roomC: typed(21) },
    machine: {
      source: 'ground',
      emitters: 'radiators',
      spaceFactor: typed(3.6),
      waterFactor: typed(2.7),
      boundary: 'H4',
      flowC: typed(45),
    },
  };
  const changed: Record<string, unknown> = { ...usual };
  for (const [section, part] of Object.entries(change)) {
    const before = changed[section];
    const isSection = typeof before === 'object' && before !== null && !Array.isArray(before);
    changed[section] = isSection ? withoutUndefined({ ...before, ...(part as object) }) : part;
  }
  return changed as Household;
}

const withoutUndefined = (section: object) =>
  Object.fromEntries(Object.entries(section).filter(([, value]) => value !== undefined));

/** A tariff with VAT included, one price at all hours unless bands are given. */
export function makeTariff(
  id: string,
  price: number | TariffBand[],
  more: { fuel?: Tariff['fuel']; from?: string; standingPencePerDay?: number } = {},
): Tariff {
  return {
    id,
    name: `Tariff ${id}`,
    fuel: more.fuel ?? 'electricity',
    origin: 'invented for a test',
    grade: 'measured',
    versions: [
      {
        from: more.from ?? '2026-10-01',
        standingPencePerDay: more.standingPencePerDay ?? 50,
        vat: { rate: 0.05, included: true },
        bands: typeof price === 'number' ? [{ name: 'all hours', pencePerKWh: price, times: 'rest' }] : price,
      },
    ],
  };
}

/** Monthly gas bills of a year as one series, kWh a month from January. */
export function makeGasBills(monthlyKWh: readonly number[], year = 2025): Series {
  const first = (month: number) => (month > 12 ? `${year + 1}-01-01` : `${year}-${String(month).padStart(2, '0')}-01`);
  return {
    id: 'series-gas',
    evidenceId: 'evidence-gas',
    name: 'Gas bills',
    carrier: 'gas',
    role: 'import',
    resolution: 'period',
    from: first(1),
    to: first(13),
    total: monthlyKWh.reduce((sum, kWh) => sum + kWh, 0),
    periods: monthlyKWh.map((kWh, i) => ({ from: first(i + 1), to: first(i + 2), kWh, quality: 'actual', row: i + 2 })),
    present: 12,
    expected: 12,
    estimatedCount: 0,
  };
}
