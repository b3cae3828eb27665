/** Where the balance tips and what a winter does: the sums behind figures that come out of two systems. */
import type { Appraisal, SystemResult, Versus } from '../shapes/appraisal.ts';
import type { Working, WorkingInput } from '../shapes/working.ts';

/** The factor and the price ratio at which both cost the same [1]; empty where there is none. */
export function breakEvenWorkings(
  appraisal: Appraisal,
  pump: SystemResult,
  beside: SystemResult,
  versus: Versus,
): Working[] {
  const { whole } = appraisal.machine;
  const { grade } = versus.saving;
  const price = (name: string, { pencePerKWhHeat }: SystemResult): WorkingInput => ({
    name: `A unit of heat, ${name}`,
    value: pencePerKWhHeat.value,
    unit: 'p/kWh',
    grade: pencePerKWhHeat.grade,
    origin: 'cost of the units / heat',
  });
  const factor: WorkingInput = {
    name: 'Factor as the meter sees it',
    value: whole.value,
    unit: 'factor',
    grade: whole.grade,
    origin: whole.working.title,
  };
  const lines = [factor, price('heat pump', pump), price('the other', beside)];
  const sum = (title: string, formula: string, value: number | null | undefined, inputs: WorkingInput[]): Working[] =>
    typeof value === 'number' && Number.isFinite(value)
      ? [{ title, formula, inputs, result: { value, unit: 'factor' } }]
      : [];
  return [
    ...sum(
      'Factor at which a unit of heat costs the same',
      'electricity price / other price × other efficiency',
      versus.breakEvenFactor,
      lines,
    ),
    ...sum(
      'Factor at which the whole year costs the same',
      'factor × cost of the heat pump’s units / (cost of the other − standing charge and service of the heat pump)',
      versus.breakEvenFactorAllCosts,
      [factor, ...costLines(pump, beside)],
    ),
    ...sum('Electricity price over the other price', 'price of a unit / price of a unit', versus.priceRatio, lines),
    ...sum(
      'Price ratio at which a unit of heat costs the same',
      'factor as the meter sees it / efficiency of the other',
      versus.breakEvenPriceRatio,
      [factor, { name: 'Efficiency of the other', value: beside.spaceEfficiency, grade, origin: 'as in its own sum' }],
    ),
  ];
}

const costLines = (pump: SystemResult, beside: SystemResult): WorkingInput[] => [
  {
    name: 'Units of the heat pump',
    value: pump.split.unitsPence,
    unit: 'p',
    grade: pump.cost.grade,
    origin: 'cost of a year',
  },
  {
    name: 'Cost of the other',
    value: beside.cost.value,
    unit: 'p',
    grade: beside.cost.grade,
    origin: 'cost of a year',
  },
];

/** Price of heat for the rooms alone [p/kWh]: unit price / factor or efficiency for rooms, pumps left out. */
export function roomHeatWorking(
  { pencePerKWhSpaceHeat, spaceEfficiency, grade }: SystemResult,
  title: string,
): Working[] {
  if (!pencePerKWhSpaceHeat) return [];
  return [
    {
      title,
      formula: 'unit price / factor or efficiency for the rooms, pumps left out',
      inputs: [
        {
          name: 'Unit price over its hours',
          value: pencePerKWhSpaceHeat * spaceEfficiency,
          unit: 'p/kWh',
          grade,
          origin: 'prices',
        },
        {
          name: 'Factor or efficiency for the rooms',
          value: spaceEfficiency,
          unit: 'factor',
          grade,
          origin: 'as in its own sum',
        },
      ],
      result: { value: pencePerKWhSpaceHeat, unit: 'p/kWh' },
    },
  ];
}

/** The same year with a winter met 1 time in 10 on either side [p]. */
export function winterWorkings({ cost, coldYearPence, mildYearPence }: SystemResult): Working[] {
  const sum = (title: string, value: number, sign: string): Working => ({
    title,
    formula: `cost of a typical year ${sign} 1.2816 × spread of winters × units for the rooms`,
    inputs: [
      { name: 'Cost of a typical year', value: cost.value, unit: 'p', grade: cost.grade, origin: 'cost of a year' },
      {
        name: 'The winter’s part',
        value: value - cost.value,
        unit: 'p',
        grade: 'estimated',
        origin: 'degree days of 1 winter in 10',
      },
    ],
    result: { value, unit: 'p' },
  });
  return [sum('A cold winter, 1 in 10', coldYearPence, '+'), sum('A mild winter, 1 in 10', mildYearPence, '−')];
}
