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
import { figuresOf } from './figures-of.ts';
import { makeHousehold, typed } from './make-household.ts';

const samples = resolve(import.meta.dirname, '../../../sample-bills');
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
