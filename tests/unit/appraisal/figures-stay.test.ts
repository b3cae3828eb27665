/**
 * What the sample households come to, every figure of it: a change that moves one shows it in `figures.txt`. These are the
 * program's own values, right or wrong; `tests/outside/` holds the model against published ones. After a change that was
 * meant, raise `MODEL_VERSION`, run this file with `-u`, and read the difference line by line.
 */
import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';
import { reckonHousehold } from '../../../src/host/reckon-household.ts';
import { appraise, MODEL_VERSION } from '../../../src/model/appraise.ts';
import type { WhatIf } from '../../../src/model/shapes/appraisal.ts';
import { stepWhatDrives } from '../../../src/model/what-drives/what-drives.ts';
import { reference } from '../../../src/reference/index.ts';
import { makeHousehold, typed } from './make-household.ts';

const samples = resolve(import.meta.dirname, '../../../sample-bills');
const ASIDE = new Set(['household', 'evidence']);

/** A list of numbers or a sum with its steps as two numbers that no single change leaves alone: the sum, and each times its place. */
const fold = (values: readonly number[]) => [
  values.reduce((sum, value) => sum + value, 0),
  values.reduce((sum, value, i) => sum + value * (i + 1), 0),
];
const numbersIn = (value: unknown): number[] =>
  typeof value === 'number'
    ? [value]
    : typeof value === 'object' && value !== null
      ? Object.values(value).flatMap(numbersIn)
      : [];

/** A bare value, or a point of a line: nothing below it has a line of its own. */
const isRow = (one: unknown) =>
  typeof one !== 'object' || one === null || Object.values(one).every((part) => typeof part !== 'object');

/** One line an object: its numbers, its codes, and its lists folded. */
function figuresOf(path: string, value: object): string[] {
  const own: string[] = [];
  const below: string[] = [];
  for (const [key, part] of Object.entries(value)) {
    if (ASIDE.has(key)) continue;
    const isFolded = key === 'working' || (Array.isArray(part) && part.every(isRow));
    const numbers = isFolded ? numbersIn(part) : [];
    if (numbers.length > 0) own.push(`${key} ${fold(numbers).map(short).join('/')}`);
    else if (typeof part === 'number') own.push(`${key} ${short(part)}`);
    else if (typeof part === 'boolean' || key === 'code' || key === 'grade' || key === 'cause')
      own.push(`${key} ${part}`);
    else if (typeof part === 'object' && part !== null) below.push(...figuresOf(`${path}.${key}`, part));
  }
  return own.length > 0 ? [`${path}: ${own.join(', ')}`, ...below] : below;
}
const short = (value: number) => `${Number(value.toPrecision(9))}`;

function drive(whatIf: WhatIf, change: Parameters<typeof makeHousehold>[0] = {}) {
  const steps = stepWhatDrives({ household: makeHousehold(change), series: [], reference, asOf: '2026-11-25', whatIf });
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}

test('the figures stay as they are', async () => {
  const reckoned = ['beacon-view', 'holm-farm', 'larch-rise', 'mill-lane', 'quay-flat'].flatMap((name) => {
    const path = join(samples, name, 'household.json');
    const withCheck = 'check' in JSON.parse(readFileSync(path, 'utf8'));
    const { estimate, check, series } = reckonHousehold(path, '2026-11-25', { withCheck, withDocument: false });
    const full = { ...estimate.household, machine: { ...estimate.household.machine, way: 'full' as const } };
    const common = { series, reference, asOf: '2026-11-25', draws: 256 };
    const asGiven = figuresOf('', { ...estimate, check });
    const others = (appraisal: object) => figuresOf('', { appraisal }).filter((line) => !asGiven.includes(line));
    return [
      `${name}, as given`,
      ...asGiven,
      `${name}, what is else by the half-hour`,
      ...others(appraise({ ...common, household: full })),
      `${name}, what is else if`,
      ...others(
        appraise({
          ...common,
          household: estimate.household,
          whatIf: { flowC: 52, roomC: 19.5, waterShare: 1.2, electricityShare: 0.9, fuelShare: 1.1, winter: 'cold' },
        }),
      ),
    ];
  });
  const driven = [
    ...figuresOf('what drives', drive({})),
    ...figuresOf('what drives, by the half-hour', drive({}, { machine: { way: 'full' } })),
    ...figuresOf('what drives, air', drive({ roomC: 20 }, { machine: { source: 'air', spaceFactor: typed(3) } })),
  ];
  await expect([`model ${MODEL_VERSION}`, ...reckoned, ...driven, ''].join('\n')).toMatchFileSnapshot(
    join(import.meta.dirname, 'figures.txt'),
  );
});
