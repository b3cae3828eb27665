/** Rated points and brine by month as they are being typed: kept only once they are whole. */

import type { RatedPoint } from '../../model/shapes/household.ts';
import { monthNames } from '../../words/numbers.ts';
import { phrase, say } from '../../words/say.ts';
import { formatPlain, type NumberLimits, readNumber, refuseNumber } from '../shared/number-text.ts';

export interface PointRow {
  readonly sourceC: string;
  readonly flowC: string;
  readonly cop: string;
  readonly outputKW: string;
}
export const EMPTY_POINT: PointRow = { sourceC: '', flowC: '', cop: '', outputKW: '' };

/** The same limits as the household document has. */
export const POINT_LIMITS: { readonly [cell in keyof PointRow]: NumberLimits } = {
  sourceC: { min: -30, max: 40, unit: '°C' },
  flowC: { min: 20, max: 80, unit: '°C' },
  cop: { min: 1, max: 12, unit: '' },
  outputKW: { min: 0.1, max: 200, unit: 'kW' },
};
const CELL_NAMES: { readonly [cell in keyof PointRow]: string } = {
  sourceC: phrase('source'),
  flowC: phrase('water'),
  cop: 'COP',
  outputKW: phrase('output'),
};

export type Typed<T> =
  | { readonly kind: 'whole'; readonly value: T }
  | { readonly kind: 'empty' }
  | { readonly kind: 'wanting'; readonly sentence: string };

export const pointRows = (points: readonly RatedPoint[]): PointRow[] =>
  points.map(({ sourceC, flowC, cop, outputKW }) => ({
    sourceC: formatPlain(sourceC),
    flowC: formatPlain(flowC),
    cop: formatPlain(cop),
    outputKW: outputKW === undefined ? '' : formatPlain(outputKW),
  }));

const cells = ['sourceC', 'flowC', 'cop', 'outputKW'] as const;
const isBlank = (row: PointRow) => cells.every((cell) => row[cell].trim() === '');

/** Points of the rows that hold any; the output may stay open, the other three may not. */
export function readPoints(rows: readonly PointRow[]): Typed<RatedPoint[]> {
  const points: RatedPoint[] = [];
  for (const [index, cellsTyped] of rows.entries()) {
    if (isBlank(cellsTyped)) continue;
    const row = index + 1;
    const value: Partial<Record<keyof PointRow, number>> = {};
    for (const cell of cells) {
      const reading = readNumber(cellsTyped[cell]);
      const refused = refuseNumber(reading, POINT_LIMITS[cell]);
      if (refused !== null)
        return {
          kind: 'wanting',
          sentence: say('Row {row}, {cell}: {refused}', { row, cell: say(CELL_NAMES[cell]), refused }),
        };
      if (reading.kind === 'number') value[cell] = reading.value;
      else if (cell !== 'outputKW') {
        return {
          kind: 'wanting',
          sentence: say('Row {row} still needs its {cell}.', { row, cell: say(CELL_NAMES[cell]) }),
        };
      }
    }
    const same = points.find(({ sourceC, flowC }) => sourceC === value.sourceC && flowC === value.flowC);
    if (same)
      return { kind: 'wanting', sentence: say('Row {row} has the same temperatures as an earlier row.', { row }) };
    // Every limit of it was asked above.
    points.push(value as RatedPoint);
  }
  return points.length === 0 ? { kind: 'empty' } : { kind: 'whole', value: points };
}

const BRINE_LIMITS: NumberLimits = { min: -15, max: 25, unit: '°C' };

/** Twelve temperatures, January first; none of them may be missing once one is typed. */
export function readMonths(texts: readonly string[]): Typed<number[]> {
  const readings = texts.map(readNumber);
  if (readings.every(({ kind }) => kind === 'empty')) return { kind: 'empty' };
  const values: number[] = [];
  for (const [month, reading] of readings.entries()) {
    const refused = refuseNumber(reading, BRINE_LIMITS);
    if (refused !== null) return { kind: 'wanting', sentence: `${monthNames()[month]}: ${refused}` };
    if (reading.kind === 'number') values.push(reading.value);
  }
  const missing = readings.flatMap(({ kind }, month) => (kind === 'empty' ? [monthNames()[month]!] : []));
  if (missing.length > 0) {
    return {
      kind: 'wanting',
      sentence: say('All twelve months are needed. {month} is the first that is missing.', { month: missing[0]! }),
    };
  }
  return { kind: 'whole', value: values };
}
