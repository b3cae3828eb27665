/** The sums behind the factors and lines of a machine's worked-out year. */
import type { Figure } from '../../shapes/appraisal.ts';
import type { Wording } from '../../shapes/told.ts';
import type { Working, WorkingInput } from '../../shapes/working.ts';
import type { ExtraLine, ExtraName } from '../extras.ts';
import type { Settled } from './settle.ts';
import type { FullYear } from './year.ts';

interface Parts {
  readonly settled: Settled;
  readonly full: FullYear;
}

const SEPEMO = 'SEPEMO-Build D4.2, Concept for evaluation of SPF, version 2.2, 2012';
const METHOD =
  'Carnot fraction between the rated points of EN 14511; part load by EN 14825; emitters by EN 442 and EN 1264; ground by Kusuda and Achenbach 1965';

const reckoned = (name: Wording, value: number, unit: string, origin: Wording): WorkingInput => ({
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
    title: `Seasonal factor for ${use}, half-hour by half-hour`,
    formula: 'heat from the machine / electricity of its compressor; each half-hour: heat / (fraction × Carnot COP)',
    inputs: [
      reckoned('Heat from the machine', heatKWh, 'kWh', 'sum of 17,520 half-hours'),
      reckoned('Electricity of the compressor', usedKWh, 'kWh', 'sum of 17,520 half-hours'),
      ...(rooms
        ? [
            reckoned('Flow, mean by heat', means.flowC, '°C', 'heating curve'),
            reckoned('Source, mean by heat', means.sourceC, '°C', 'source below'),
            reckoned('Left after stopping and starting', means.partLoad, 'of the COP', 'EN 14825, C = 0.9'),
          ]
        : [reckoned('Flow to the cylinder', settled.input.waterFlowC, '°C', 'hot water + 5 K')]),
      ...settled.inputs,
    ],
    result: { value, unit: '' },
    source: METHOD,
  };
}

const LINES: readonly {
  readonly name: ExtraName;
  readonly title: string;
  readonly formula: string;
  readonly input?: string;
}[] = [
  { name: 'standby', title: 'Standby of the machine', formula: 'power × hours of the year / 1000', input: 'Standby' },
  {
    name: 'source-pump',
    title: 'Pump or fan of the source',
    formula: 'power × hours of full load / 1000, half-hour by half-hour',
    input: 'Source pump or fan',
  },
  {
    name: 'backup',
    title: 'Resistance heater in place of the machine',
    formula: 'heat beyond what the machine gives in a day, and the share that was typed',
    input: 'Output of the machine',
  },
  {
    name: 'pasteurisation',
    title: 'Weekly heating of the cylinder to 60 °C by the immersion heater',
    formula: '52 × litres × 4.18 × (60 − temperature) / 3600',
    input: 'Hot water',
  },
  {
    name: 'circulator',
    title: 'Pump of the heating circuit',
    formula: 'power × hours / 1000; an hour of full load is at most four of circulating',
    input: 'Pump of the heating circuit',
  },
];

/** Every use of electricity beside rooms and hot water as a line of its own [kWh a year]. */
export function extraLines({ settled, full }: Parts): ExtraLine[] {
  return LINES.flatMap(({ name, title, formula, input }): ExtraLine[] => {
    const kWh = full.year.electricityKWh[name];
    if (!(kWh > 0)) return [];
    const inputs = settled.inputs.filter((line) => line.name === input);
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
    title: 'Factor for the whole house, as the meter sees it (H4)',
    formula: '(heat from the machine + heat from resistance) / all electricity',
    inputs: [
      kWh('Heat for rooms', year.spaceHeatKWh, 'from the machine'),
      kWh('Heat for hot water', year.waterHeatKWh, 'from the machine'),
      kWh('Heat from ground or air in them', year.sourceHeatKWh, 'heat less the compressor’s electricity'),
      kWh('Heat from resistance', year.resistanceHeatKWh, 'its electricity'),
      kWh('Electricity for rooms', year.electricityKWh.space, 'compressor'),
      kWh('Electricity for hot water', year.electricityKWh.water, 'compressor'),
      ...extras.map((line) => ({ ...kWh(line.working.title, line.kWh, line.working.formula), grade: line.grade })),
      ...(factors
        ? (['H1', 'H2', 'H3', 'H4'] as const).map((boundary) =>
            reckoned(`Factor at ${boundary}`, factors[boundary], '', SEPEMO),
          )
        : []),
    ],
    result: { value, unit: '' },
    source: SEPEMO,
    steps: [space.working, water.working, ...extras.map((extra) => extra.working)],
  };
}
