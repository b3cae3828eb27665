/**
 * The figures of a promise as comma-separated text: one line a figure, so that any sheet can sort and sum them.
 * Lines end as RFC 4180 asks; the byte-order mark lets spreadsheets read "°" and "²".
 */
import { yearsSeries } from '../charts/years/series.ts';
import type { Figure, SystemResult } from '../model/appraisal/appraisal.ts';
import type { KeptPromise } from '../model/appraisal/promise.ts';
import type { Payback } from '../model/lifetime/lifetime.ts';
import { monthNames } from '../words/numbers.ts';
import { systemName } from '../words/systems.ts';
import { listAssumptions } from './assumptions.ts';
import { type PromiseParts, readPromise } from './parts.ts';

const COLUMNS = ['part', 'system', 'time', 'what', 'value', 'unit', 'low', 'high', 'grade', 'origin'] as const;
type Line = Partial<Record<(typeof COLUMNS)[number], string | number>>;

/** At most four decimals, no grouping, no exponent; an unknown stays empty, never 0. */
function numberText(value: number): string {
  return Number.isFinite(value) ? String(Number(value.toFixed(4))) : '';
}

function cell(value: string | number | undefined): string {
  if (value === undefined) return '';
  if (typeof value === 'number') return numberText(value);
  // What a spreadsheet would take for a formula gets an apostrophe.
  const safe = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

const figureLine = (figure: Figure, scale = 1) => ({
  value: figure.value * scale,
  low: figure.low * scale,
  high: figure.high * scale,
  grade: figure.grade,
});

function systemLines(system: SystemResult, name: string): Line[] {
  const { split, monthly } = system;
  const year = (what: string, pence: number): Line => ({
    part: 'cost',
    system: name,
    time: 'year',
    what,
    value: pence / 100,
    unit: 'GBP',
  });
  return [
    { part: 'cost', system: name, time: 'year', what: 'together', unit: 'GBP', ...figureLine(system.cost, 0.01) },
    year('units', split.unitsPence),
    year('standing charge', split.standingPence),
    year('service', split.servicePence),
    year('together, mild winter', system.mildYearPence),
    year('together, cold winter', system.coldYearPence),
    { part: 'energy', system: name, time: 'year', what: 'units bought', unit: 'kWh', ...figureLine(system.bought) },
    { part: 'carbon', system: name, time: 'year', what: 'carbon', unit: 'kg', ...figureLine(system.carbonKg) },
    ...monthNames().flatMap((time, month): Line[] => [
      { part: 'energy', system: name, time, what: 'units bought', value: monthly.boughtKWh[month]!, unit: 'kWh' },
      { part: 'cost', system: name, time, what: 'units', value: monthly.unitsPence[month]! / 100, unit: 'GBP' },
      {
        part: 'cost',
        system: name,
        time,
        what: 'standing charge',
        value: monthly.standingPence[month]! / 100,
        unit: 'GBP',
      },
      { part: 'cost', system: name, time, what: 'service', value: monthly.servicePence[month]! / 100, unit: 'GBP' },
    ]),
  ];
}

/** What the next years may bring, each year and in all; nothing where it was not kept with the promise. */
function yearsLines({ promise }: PromiseParts): Line[] {
  const { lifetime } = promise;
  if (!lifetime) return [];
  const { kind, years, saved, chanceLess, payback, netPresentValue, annual } = lifetime;
  const { pump, beside } = yearsSeries(lifetime);
  const inAll = { part: 'years', time: `${years} years` };
  const pounds = (what: string, found: Figure | null | undefined, system = ''): Line[] =>
    found ? [{ ...inAll, what, system, unit: 'GBP', ...figureLine(found, 0.01) }] : [];
  const until = (what: string, { years: value, low, high }: Payback): Line => ({
    ...inAll,
    what,
    unit: 'years',
    value: value ?? Number.NaN,
    low: low ?? Number.NaN,
    high: high ?? Number.NaN,
  });
  return [
    ...[pump, beside].flatMap(({ name, points }) =>
      points.map(
        ({ year, value, low, high }): Line => ({
          part: 'years',
          system: name,
          time: `year ${year}`,
          what: kind === 'whole' ? 'paid in all' : 'paid to run it',
          value: value / 100,
          unit: 'GBP',
          low: low / 100,
          high: high / 100,
        }),
      ),
    ),
    ...pounds('saved with the heat pump', saved),
    { ...inAll, what: 'share of futures in which the heat pump costs less', value: chanceLess },
    ...(payback
      ? [until('years until paid back', payback.simple), until('years until paid back, discounted', payback.discounted)]
      : []),
    ...pounds('worth today of what is saved', netPresentValue),
    ...pounds('level cost a year', annual?.pump, pump.name),
    ...pounds('level cost a year', annual?.beside, beside.name),
  ];
}

export function leaveBehindCsv(promise: KeptPromise): string {
  const parts = readPromise(promise, { installerName: '', installerContact: '', paper: 'A4' });
  const { appraisal, madeOn } = parts;
  const { demand, machine, prices } = appraisal;
  const lines: Line[] = [
    { part: 'promise', what: 'number', value: promise.number },
    { part: 'promise', what: 'made on', value: madeOn },
    { part: 'promise', what: 'id', value: promise.id },
    { part: 'promise', what: 'household', value: promise.household.name },
    { part: 'promise', what: 'model', value: appraisal.modelVersion },
    { part: 'promise', what: 'electricity prices', value: prices.electricity.name, time: prices.electricity.from },
    { part: 'heat', time: 'year', what: 'rooms', unit: 'kWh', ...figureLine(demand.space) },
    { part: 'heat', time: 'year', what: 'hot water', unit: 'kWh', ...figureLine(demand.water) },
    { part: 'heat', time: 'year', what: 'together', unit: 'kWh', ...figureLine(demand.total) },
    { part: 'machine', time: 'year', what: 'factor, heat and hot water (H4)', ...figureLine(machine.whole) },
    ...appraisal.systems.flatMap((system) => systemLines(system, systemName(system.id, system.kind, machine.source))),
    ...(parts.versus?.twenty.map(
      (pence, index): Line => ({
        part: 'futures',
        system: parts.beside ? systemName(parts.beside.id, parts.beside.kind) : '',
        what: `difference ${index + 1} of 20`,
        value: pence / 100,
        unit: 'GBP',
      }),
    ) ?? []),
    ...yearsLines(parts),
    ...listAssumptions(parts).flatMap(({ title, inputs }) =>
      inputs.map(
        (input): Line => ({
          part: 'input',
          system: title,
          what: input.name,
          value: input.value,
          unit: input.unit ?? '',
          grade: input.grade,
          origin: input.origin,
        }),
      ),
    ),
  ];
  const rows = [[...COLUMNS], ...lines.map((line) => COLUMNS.map((column) => cell(line[column])))];
  return `\uFEFF${rows.map((row) => row.join(',')).join('\r\n')}\r\n`;
}
