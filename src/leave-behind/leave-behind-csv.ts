/**
 * The figures of an estimate as comma-separated text: one line a figure, so that any sheet can sort and sum them.
 * Lines end as RFC 4180 asks; the byte-order mark lets spreadsheets read "°" and "²".
 */

import { quoted } from '../charts/frame/csv.ts';
import { yearsSeries } from '../charts/years/series.ts';
import type { Figure, SystemResult } from '../model/shapes/appraisal.ts';
import type { Payback } from '../model/shapes/lifetime.ts';
import type { Wording } from '../model/shapes/told.ts';
import type { WrittenEstimate } from '../model/shapes/written-estimate.ts';
import { gradeName } from '../words/grades.ts';
import { moneySign, monthNames, penceSign } from '../words/numbers.ts';
import { nameOfPrice } from '../words/prices.ts';
import { currency, phrase, say } from '../words/say.ts';
import { sayTold } from '../words/say-told.ts';
import { systemName } from '../words/systems.ts';
import { listAssumptions } from './list-assumptions.ts';
import { type EstimateParts, readEstimate } from './parts.ts';

const HEADS = {
  part: phrase('part'),
  system: phrase('system'),
  time: phrase('time'),
  what: phrase('what'),
  value: phrase('value'),
  // A unit elsewhere is a kilowatt-hour, which other languages call by another word.
  unit: phrase('{of, select, other {unit}}'),
  low: phrase('low'),
  high: phrase('high'),
  grade: phrase('grade'),
  origin: phrase('origin'),
} as const;
const COLUMNS = Object.keys(HEADS) as readonly (keyof typeof HEADS)[];
type Line = Partial<Record<keyof typeof HEADS, string | number>>;

/** At most four decimals, no grouping, no exponent; an unknown stays empty, never 0. */
function numberText(value: number): string {
  return Number.isFinite(value) ? String(Number(value.toFixed(4))) : '';
}

function cell(value: string | number | undefined): string {
  if (value === undefined) return '';
  if (typeof value === 'number') return numberText(value);
  // What a spreadsheet would take for a formula gets an apostrophe.
  const safe = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
  return quoted(safe);
}

/** The model calls the money of the written estimate p, £ and GBP, whatever it is. */
const unitText = (unit: Wording): string =>
  typeof unit !== 'string'
    ? sayTold(unit)
    : unit === 'GBP'
      ? currency()
      : sayTold(unit.replace(/^p(?=$|\/)/, penceSign()).replace('£', moneySign()));

const figureLine = (figure: Figure, scale = 1) => ({
  value: figure.value * scale,
  low: figure.low * scale,
  high: figure.high * scale,
  grade: gradeName(figure.grade),
});

function systemLines(system: SystemResult, name: string): Line[] {
  const { split, monthly } = system;
  const year = (what: string, pence: number): Line => ({
    part: say('cost'),
    system: name,
    time: say('year'),
    what,
    value: pence / 100,
    unit: currency(),
  });
  return [
    {
      part: say('cost'),
      system: name,
      time: say('year'),
      what: say('together'),
      unit: currency(),
      ...figureLine(system.cost, 0.01),
    },
    year(say('energy'), split.unitsPence),
    year(say('standing charge'), split.standingPence),
    year(say('service'), split.servicePence),
    year(say('together, mild winter'), system.mildYearPence),
    year(say('together, cold winter'), system.coldYearPence),
    {
      part: say('energy'),
      system: name,
      time: say('year'),
      what: say('kWh bought'),
      unit: 'kWh',
      ...figureLine(system.bought),
    },
    {
      part: say('carbon'),
      system: name,
      time: say('year'),
      what: say('carbon'),
      unit: 'kg',
      ...figureLine(system.carbonKg),
    },
    ...monthNames().flatMap((time, month): Line[] => [
      {
        part: say('energy'),
        system: name,
        time,
        what: say('kWh bought'),
        value: monthly.boughtKWh[month]!,
        unit: 'kWh',
      },
      {
        part: say('cost'),
        system: name,
        time,
        what: say('energy'),
        value: monthly.unitsPence[month]! / 100,
        unit: currency(),
      },
      {
        part: say('cost'),
        system: name,
        time,
        what: say('standing charge'),
        value: monthly.standingPence[month]! / 100,
        unit: currency(),
      },
      {
        part: say('cost'),
        system: name,
        time,
        what: say('service'),
        value: monthly.servicePence[month]! / 100,
        unit: currency(),
      },
    ]),
  ];
}

/** What the next years may bring, each year and in all; nothing where it was not kept with the written estimate. */
function yearsLines({ estimate }: EstimateParts): Line[] {
  const { lifetime } = estimate;
  if (!lifetime) return [];
  const { kind, years, saved, chanceLess, payback, netPresentValue, annual } = lifetime;
  const { pump, beside } = yearsSeries(lifetime);
  const inAll = { part: say('years'), time: say('{years} years', { years: String(years) }) };
  const pounds = (what: string, found: Figure | null | undefined, system = ''): Line[] =>
    found ? [{ ...inAll, what, system, unit: currency(), ...figureLine(found, 0.01) }] : [];
  const until = (what: string, { years: value, low, high }: Payback): Line => ({
    ...inAll,
    what,
    unit: say('years'),
    value: value ?? Number.NaN,
    low: low ?? Number.NaN,
    high: high ?? Number.NaN,
  });
  return [
    ...[pump, beside].flatMap(({ name, points }) =>
      points.map(
        ({ year, value, low, high }): Line => ({
          part: say('years'),
          system: name,
          time: say('year {year}', { year: String(year) }),
          what: kind === 'whole' ? say('paid in all') : say('paid to run it'),
          value: value / 100,
          unit: currency(),
          low: low / 100,
          high: high / 100,
        }),
      ),
    ),
    ...pounds(say('saved with the heat pump'), saved),
    { ...inAll, what: say('share of futures in which the heat pump costs less'), value: chanceLess },
    ...(payback
      ? [
          until(say('years until paid back'), payback.simple),
          until(say('years until paid back, discounted'), payback.discounted),
        ]
      : []),
    ...pounds(say('worth today of what is saved'), netPresentValue),
    ...pounds(say('level cost a year'), annual?.pump, pump.name),
    ...pounds(say('level cost a year'), annual?.beside, beside.name),
  ];
}

export function leaveBehindCsv(estimate: WrittenEstimate): string {
  const parts = readEstimate(estimate, { installerName: '', installerContact: '', paper: 'A4' });
  const { appraisal, madeOn } = parts;
  const { demand, machine, prices } = appraisal;
  const lines: Line[] = [
    { part: say('written estimate'), what: say('number'), value: estimate.number },
    { part: say('written estimate'), what: say('made on'), value: madeOn },
    { part: say('written estimate'), what: say('id'), value: estimate.id },
    { part: say('written estimate'), what: say('household'), value: estimate.household.name },
    { part: say('written estimate'), what: say('model'), value: appraisal.modelVersion },
    {
      part: say('written estimate'),
      what: say('electricity prices'),
      value: sayTold(nameOfPrice(prices.electricity)),
      time: prices.electricity.from,
    },
    { part: say('heat'), time: say('year'), what: say('rooms'), unit: 'kWh', ...figureLine(demand.space) },
    { part: say('heat'), time: say('year'), what: say('hot water'), unit: 'kWh', ...figureLine(demand.water) },
    { part: say('heat'), time: say('year'), what: say('together'), unit: 'kWh', ...figureLine(demand.total) },
    {
      part: say('machine'),
      time: say('year'),
      what: say('factor, heat and hot water (H4)'),
      ...figureLine(machine.whole),
    },
    ...(machine.asDesigned
      ? [
          {
            part: say('machine'),
            time: say('year'),
            what: say('factor as designed (H4)'),
            value: machine.asDesigned.whole,
          },
        ]
      : []),
    ...appraisal.systems.flatMap((system) => systemLines(system, systemName(system.id, system.kind, machine.source))),
    ...(parts.versus?.twenty.map(
      (pence, index): Line => ({
        part: say('futures'),
        system: parts.beside ? systemName(parts.beside.id, parts.beside.kind) : '',
        what: say('difference {index} of 20', { index: index + 1 }),
        value: pence / 100,
        unit: currency(),
      }),
    ) ?? []),
    ...yearsLines(parts),
    ...listAssumptions(parts).flatMap(({ title, inputs }) =>
      inputs.map(
        (input): Line => ({
          part: say('input'),
          system: title,
          what: sayTold(input.name),
          value: typeof input.value === 'number' ? input.value : sayTold(input.value),
          unit: unitText(input.unit ?? ''),
          grade: gradeName(input.grade),
          origin: sayTold(input.origin),
        }),
      ),
    ),
  ];
  const rows = [
    COLUMNS.map((column) => say(HEADS[column], { of: 'measure' })),
    ...lines.map((line) => COLUMNS.map((column) => cell(line[column]))),
  ];
  return `\uFEFF${rows.map((row) => row.join(',')).join('\r\n')}\r\n`;
}
