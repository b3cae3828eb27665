/** The sums behind the factors and lines of a machine's worked-out year. */
import type { Figure } from '../../shapes/appraisal.ts';
import { isCode, type Told, type ToldCode, tell, type Wording } from '../../shapes/told.ts';
import type { Working, WorkingInput } from '../../shapes/working.ts';
import type { ExtraLine, ExtraName } from '../extras.ts';
import type { Settled } from './settle.ts';
import type { FullYear } from './year.ts';

interface Parts {
  readonly settled: Settled;
  readonly full: FullYear;
}

const SEPEMO = 'SEPEMO-Build D4.2, Concept for evaluation of SPF, version 2.2, 2012';
const METHOD = tell('full-method');

const reckoned = (name: Wording, value: number, unit: Wording, origin: Wording): WorkingInput => ({
  name,
  value,
  unit,
  grade: 'estimated',
  origin,
});

export function factorWorking(use: 'rooms' | 'hot water', value: number, { settled, full }: Parts): Working {
  const { year, means } = full;
  const rooms = use === 'rooms';
  const heatKWh = rooms ? year.spaceHeatKWh : year.waterHeatKWh;
  const usedKWh = rooms ? year.electricityKWh.space : year.electricityKWh.water;
  return {
    title: tell(use === 'rooms' ? 'room-factor-by-half-hour' : 'water-factor-by-half-hour'),
    formula: tell('compressor-by-half-hour'),
    inputs: [
      reckoned(tell('heat-from-machine'), heatKWh, 'kWh', tell('sum-of-half-hours')),
      reckoned(tell('electricity-of-compressor'), usedKWh, 'kWh', tell('sum-of-half-hours')),
      ...(rooms
        ? [
            reckoned(tell('mean-flow'), means.flowC, '°C', tell('heating-curve')),
            reckoned(tell('mean-source'), means.sourceC, '°C', tell('source-below')),
            reckoned(tell('left-after-cycling'), means.partLoad, tell('of-the-cop'), tell('part-load-source')),
          ]
        : [reckoned(tell('flow-to-cylinder'), settled.input.waterFlowC, '°C', tell('water-and-rise'))]),
      ...settled.inputs,
    ],
    result: { value, unit: '' },
    source: METHOD,
  };
}

const LINES: readonly {
  readonly name: ExtraName;
  readonly title: Told;
  readonly formula: Told;
  readonly input?: ToldCode;
}[] = [
  { name: 'standby', title: tell('standby-line'), formula: tell('power-by-year'), input: 'standby' },
  {
    name: 'source-pump',
    title: tell('source-pump-line'),
    formula: tell('power-by-full-load'),
    input: 'source-pump',
  },
  {
    name: 'backup',
    title: tell('backup-line'),
    formula: tell('heat-beyond-output'),
    input: 'output',
  },
  {
    name: 'pasteurisation',
    title: tell('pasteurisation-line'),
    formula: tell('litres-to-sixty'),
    input: 'kept-hot-water',
  },
  {
    name: 'circulator',
    title: tell('circulator-line'),
    formula: tell('power-by-circulating'),
    input: 'circulator-line',
  },
];

/** Every use of electricity beside rooms and hot water as a line of its own [kWh a year]. */
export function extraLines({ settled, full }: Parts): ExtraLine[] {
  return LINES.flatMap(({ name, title, formula, input }): ExtraLine[] => {
    const kWh = full.year.electricityKWh[name];
    if (!(kWh > 0)) return [];
    const inputs = settled.inputs.filter((line) => input !== undefined && isCode(line.name, input));
    const grade = inputs[0]?.grade ?? 'assumed';
    return [{ name, kWh, grade, working: { title, formula, inputs, result: { value: kWh, unit: 'kWh' } } }];
  });
}

export function wholeWorking(
  value: number,
  { full }: Parts,
  extras: readonly ExtraLine[],
  space: Figure,
  water: Figure,
): Working {
  const { year } = full;
  const factors = year.factors;
  const kWh = (name: Wording, value: number, origin: Wording) => reckoned(name, value, 'kWh', origin);
  return {
    title: tell('whole-factor'),
    formula: tell('heat-by-electricity-worked-out'),
    inputs: [
      kWh(tell('heat-for-rooms'), year.spaceHeatKWh, tell('from-machine')),
      kWh(tell('heat-for-water'), year.waterHeatKWh, tell('from-machine')),
      kWh(tell('heat-of-source'), year.sourceHeatKWh, tell('less-compressor')),
      kWh(tell('heat-of-resistance'), year.resistanceHeatKWh, tell('its-electricity')),
      kWh(tell('electricity-for-rooms'), year.electricityKWh.space, tell('compressor')),
      kWh(tell('electricity-for-water'), year.electricityKWh.water, tell('compressor')),
      ...extras.map((line) => ({ ...kWh(line.working.title, line.kWh, line.working.formula), grade: line.grade })),
      ...(factors
        ? (['H1', 'H2', 'H3', 'H4'] as const).map((boundary) =>
            reckoned(tell('factor-at', { boundary }), factors[boundary], '', SEPEMO),
          )
        : []),
    ],
    result: { value, unit: '' },
    source: SEPEMO,
    steps: [space.working, water.working, ...extras.map((extra) => extra.working)],
  };
}
