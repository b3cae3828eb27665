/** Where the balance tips and what a winter does: the sums behind figures that come out of two systems. */
import type { Appraisal, SystemResult, Versus } from '../../model/shapes/appraisal.ts';
import { inWords, type Said } from '../say-told.ts';
import type { ShownInput, ShownWorking } from '../working.ts';

/** The factor and the price ratio at which both cost the same [1]; empty where there is none. */
export function breakEvenWorkings(
  appraisal: Appraisal,
  pump: SystemResult,
  beside: SystemResult,
  versus: Versus,
): ShownWorking[] {
  const { whole } = appraisal.machine;
  const { grade } = versus.saving;
  const price = (name: Said, { pencePerKWhHeat }: SystemResult): ShownInput => ({
    name,
    value: pencePerKWhHeat.value,
    unit: 'p/kWh',
    grade: pencePerKWhHeat.grade,
    origin: inWords('cost of the energy / heat'),
  });
  const factor: ShownInput = {
    name: inWords('Factor as the meter sees it'),
    value: whole.value,
    unit: 'factor',
    grade: whole.grade,
    origin: whole.working.title,
  };
  const lines = [
    factor,
    price(inWords('A kWh of heat, heat pump'), pump),
    price(inWords('A kWh of heat, the other'), beside),
  ];
  const sum = (title: Said, formula: Said, value: number | null | undefined, inputs: ShownInput[]): ShownWorking[] =>
    typeof value === 'number' && Number.isFinite(value)
      ? [{ title, formula, inputs, result: { value, unit: 'factor' } }]
      : [];
  return [
    ...sum(
      inWords('Factor at which a kWh of heat costs the same'),
      inWords('electricity price / other price × other efficiency'),
      versus.breakEvenFactor,
      lines,
    ),
    ...sum(
      inWords('Factor at which the whole year costs the same'),
      inWords(
        'factor × cost of the heat pump’s energy / (cost of the other − standing charge and service of the heat pump)',
      ),
      versus.breakEvenFactorAllCosts,
      [factor, ...costLines(pump, beside)],
    ),
    ...sum(
      inWords('Electricity price over the other price'),
      inWords('price per kWh / price per kWh'),
      versus.priceRatio,
      lines,
    ),
    ...sum(
      inWords('Price ratio at which a kWh of heat costs the same'),
      inWords('factor as the meter sees it / efficiency of the other'),
      versus.breakEvenPriceRatio,
      [
        factor,
        {
          name: inWords('Efficiency of the other'),
          value: beside.spaceEfficiency,
          grade,
          origin: inWords('as in its own sum'),
        },
      ],
    ),
  ];
}

const costLines = (pump: SystemResult, beside: SystemResult): ShownInput[] => [
  {
    name: inWords('kWh of the heat pump'),
    value: pump.split.unitsPence,
    unit: 'p',
    grade: pump.cost.grade,
    origin: inWords('cost of a year'),
  },
  {
    name: inWords('Cost of the other'),
    value: beside.cost.value,
    unit: 'p',
    grade: beside.cost.grade,
    origin: inWords('cost of a year'),
  },
];

/** Price of heat for the rooms alone [p/kWh]: unit price / factor or efficiency for rooms, pumps left out. */
export function roomHeatWorking(
  { pencePerKWhSpaceHeat, spaceEfficiency, grade }: SystemResult,
  title: Said,
): ShownWorking[] {
  if (!pencePerKWhSpaceHeat) return [];
  return [
    {
      title,
      formula: inWords('unit price / factor or efficiency for the rooms, pumps left out'),
      inputs: [
        {
          name: inWords('Unit price over its hours'),
          value: pencePerKWhSpaceHeat * spaceEfficiency,
          unit: 'p/kWh',
          grade,
          origin: inWords('prices'),
        },
        {
          name: inWords('Factor or efficiency for the rooms'),
          value: spaceEfficiency,
          unit: 'factor',
          grade,
          origin: inWords('as in its own sum'),
        },
      ],
      result: { value: pencePerKWhSpaceHeat, unit: 'p/kWh' },
    },
  ];
}

/** What the heat pump costs once gas has left the house [p a year], and what its standing charge comes to; empty where it pays none. */
export function leavingGasWorking(
  { prices: { gasStandingPence } }: Appraisal,
  { cost, split }: SystemResult,
): ShownWorking[] {
  if (!gasStandingPence || split.standingPence < gasStandingPence - 1) return [];
  return [
    {
      title: inWords('The heat pump without gas in the house'),
      formula: inWords('cost of a year − standing charge of gas'),
      inputs: [
        {
          name: inWords('Cost of a typical year'),
          value: cost.value,
          unit: 'p',
          grade: cost.grade,
          origin: inWords('cost of a year'),
        },
        {
          name: inWords('Standing charge of gas'),
          value: gasStandingPence,
          unit: 'p',
          grade: cost.grade,
          origin: inWords('prices'),
        },
      ],
      result: { value: cost.value - gasStandingPence, unit: 'p' },
    },
  ];
}

/** The same year with a winter met 1 time in 10 on either side [p]. */
export function winterWorkings({ cost, coldYearPence, mildYearPence }: SystemResult): ShownWorking[] {
  const sum = (title: Said, value: number, formula: Said): ShownWorking => ({
    title,
    formula,
    inputs: [
      {
        name: inWords('Cost of a typical year'),
        value: cost.value,
        unit: 'p',
        grade: cost.grade,
        origin: inWords('cost of a year'),
      },
      {
        name: inWords('The winter’s part'),
        value: value - cost.value,
        unit: 'p',
        grade: 'estimated',
        origin: inWords('degree days of 1 winter in 10'),
      },
    ],
    result: { value, unit: 'p' },
  });
  return [
    sum(
      inWords('A cold winter, 1 in 10'),
      coldYearPence,
      inWords('cost of a typical year + 1.2816 × spread of winters × kWh for the rooms'),
    ),
    sum(
      inWords('A mild winter, 1 in 10'),
      mildYearPence,
      inWords('cost of a typical year − 1.2816 × spread of winters × kWh for the rooms'),
    ),
  ];
}
