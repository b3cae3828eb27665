/** The sums behind the numbers of a household's loop. */
import { type Grade, type Working, type WorkingInput, weakestGrade } from '../shapes/working.ts';
import type { AirSide } from './air-side.ts';
import type { HeatFrom, HouseholdLoop } from './household-loop.ts';

const HANDBOOK = 'single-stage cycle of any handbook, such as ASHRAE Fundamentals';

/**
 * Units of heat for one of the compressor's electricity [1] at the temperatures of a loop, with the sums of its temperatures [°C],
 * pressures [bar on the gauge] and flows of heat [kW] as steps. `inputs` are what the loop was reckoned from; `source`
 * names the saturation table. COP = (h2 − h3) / (h2 − h1), h at the compressor's inlet 1, its outlet 2 and the valve 3.
 */
export function loopWorking(
  loop: HouseholdLoop,
  design: { readonly inputs: readonly WorkingInput[]; readonly from: HeatFrom; readonly air: AirSide | null },
  source: string,
): Working {
  const { inputs, from, air } = design;
  const fluid = from === 'air' ? 'air' : 'brine';
  const Fluid = from === 'air' ? 'Air' : 'Brine';
  const grade: Grade = weakestGrade(inputs.map((input) => input.grade));
  const { kJPerKg } = loop.cycle;
  const of = (name: string, value: number, unit: string, origin: string): WorkingInput => ({
    name,
    value,
    unit,
    grade,
    origin,
  });
  const step = (title: string, value: number, unit: string, formula: string, steps: WorkingInput[]): Working => ({
    title,
    formula,
    inputs: steps,
    result: { value, unit },
    source,
  });
  const compressor = air ? 'Compressor, from the meter' : 'From the meter';
  const meterStep = ({ fanKW, frostKW }: AirSide) =>
    step('All from the meter', loop.meterKW + fanKW + frostKW, 'kW', 'compressor + fan + frost', [
      of(compressor, loop.meterKW, 'kW', 'above'),
      of('Fan', fanKW, 'kW', 'heat to the house × power for each kW'),
      of('Melting frost', frostKW, 'kW', '(compressor + fan) × share / (1 − share), spread over the time of running'),
    ]);
  const evaporating = of('Boiling point', loop.evaporatingC, '°C', `${fluid} out less the approach`);
  const condensing = of('Condensing point', loop.condensingC, '°C', 'flow plus the approach');
  const suction = of('Heat content at suction', kJPerKg.suction, 'kJ/kg', 'table');
  const discharge = of('Heat content at discharge', kJPerKg.discharge, 'kJ/kg', 'table');
  const liquid = of('Heat content of the liquid', kJPerKg.liquid, 'kJ/kg', 'table');
  const round = of('Refrigerant going round', loop.refrigerantGPerS, 'g/s', 'heat to the house / heat of a kilogram');
  return {
    title: air
      ? 'Heat for each unit of the compressor’s electricity at this moment (COP)'
      : 'Heat for each unit of electricity at this moment (COP)',
    formula: '(heat content at discharge − of the liquid) / (at discharge − at suction)',
    inputs: [...inputs, suction, discharge, liquid],
    result: { value: loop.cop, unit: '' },
    source: `${HANDBOOK}; ${source}`,
    steps: [
      step('Boiling point', loop.evaporatingC, '°C', `${fluid} out − approach`, [
        of(`${Fluid} out`, loop.brineOutC, '°C', `${fluid} in less its drop`),
      ]),
      step('Low pressure on the gauge', loop.low.barGauge, 'bar', 'saturation table − 1.01325 bar', [evaporating]),
      step('Condensing point', loop.condensingC, '°C', 'flow + approach', [
        of('Flow', loop.flowC, '°C', 'design flow'),
      ]),
      step('High pressure on the gauge', loop.high.barGauge, 'bar', 'saturation table − 1.01325 bar', [condensing]),
      step('Hot gas', loop.dischargeC, '°C', 'suction + ideal work / efficiency, read back in the table', [
        suction,
        of('Ideal work', kJPerKg.idealDischarge - kJPerKg.suction, 'kJ/kg', 'table, same entropy'),
        of('Ideal over real work', loop.isentropicEfficiency, '', 'compressor'),
      ]),
      step(`Heat from the ${from}`, loop.groundKW, 'kW', 'refrigerant × (suction − liquid)', [round, suction, liquid]),
      step(compressor, loop.meterKW, 'kW', 'refrigerant × (discharge − suction)', [round, suction, discharge]),
      step('Heat to the house', loop.houseKW, 'kW', `from the ${from} + from the meter`, [
        of(`From the ${from}`, loop.groundKW, 'kW', 'above'),
        of(compressor, loop.meterKW, 'kW', 'above'),
      ]),
      ...(air ? [meterStep(air)] : []),
    ],
  };
}
