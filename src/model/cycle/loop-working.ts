/** The sums behind the numbers of a household's loop. */

import { type Told, tell } from '../shapes/told.ts';
import { type Grade, type Working, type WorkingInput, weakestGrade } from '../shapes/working.ts';
import type { AirSide } from './air-side.ts';
import type { HeatFrom, HouseholdLoop } from './household-loop.ts';

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
  const grade: Grade = weakestGrade(inputs.map((input) => input.grade));
  const { kJPerKg } = loop.cycle;
  const of = (name: Told, value: number, unit: string, origin: Told): WorkingInput => ({
    name,
    value,
    unit,
    grade,
    origin,
  });
  const step = (title: Told, value: number, unit: string, formula: Told, steps: WorkingInput[]): Working => ({
    title,
    formula,
    inputs: steps,
    result: { value, unit },
    source,
  });
  const compressor = tell(air ? 'compressor-from-meter' : 'from-meter');
  const meterStep = ({ fanKW, frostKW }: AirSide) =>
    step(tell('all-from-meter'), loop.meterKW + fanKW + frostKW, 'kW', tell('compressor-fan-frost'), [
      of(compressor, loop.meterKW, 'kW', tell('above')),
      of(tell('fan'), fanKW, 'kW', tell('fan-by-heat')),
      of(tell('melting-frost'), frostKW, 'kW', tell('frost-by-share')),
    ]);
  const evaporating = of(tell('boiling-point'), loop.evaporatingC, '°C', tell(`${fluid}-out-less`));
  const condensing = of(tell('condensing-point'), loop.condensingC, '°C', tell('flow-plus'));
  const suction = of(tell('suction-heat'), kJPerKg.suction, 'kJ/kg', tell('table'));
  const discharge = of(tell('discharge-heat'), kJPerKg.discharge, 'kJ/kg', tell('table'));
  const liquid = of(tell('liquid-heat'), kJPerKg.liquid, 'kJ/kg', tell('table'));
  const round = of(tell('going-round'), loop.refrigerantGPerS, 'g/s', tell('heat-by-kilogram'));
  return {
    title: tell(air ? 'compressor-cop-of-moment' : 'cop-of-moment'),
    formula: tell('cop-formula'),
    inputs: [...inputs, suction, discharge, liquid],
    result: { value: loop.cop, unit: '' },
    source: tell('handbook-and-table', { table: source }),
    steps: [
      step(tell('boiling-point'), loop.evaporatingC, '°C', tell(`${fluid}-less-approach`), [
        of(tell(`${fluid}-out`), loop.brineOutC, '°C', tell(`${fluid}-in-less-drop`)),
      ]),
      step(tell('low-pressure'), loop.low.barGauge, 'bar', tell('table-less-air'), [evaporating]),
      step(tell('condensing-point'), loop.condensingC, '°C', tell('flow-and-approach'), [
        of(tell('flow-of-round'), loop.flowC, '°C', tell('from-design-flow')),
      ]),
      step(tell('high-pressure'), loop.high.barGauge, 'bar', tell('table-less-air'), [condensing]),
      step(tell('hot-gas'), loop.dischargeC, '°C', tell('ideal-by-efficiency'), [
        suction,
        of(tell('ideal-work'), kJPerKg.idealDischarge - kJPerKg.suction, 'kJ/kg', tell('table-same-entropy')),
        of(tell('ideal-share'), loop.isentropicEfficiency, '', tell('compressor')),
      ]),
      step(tell(`heat-from-${from}`), loop.groundKW, 'kW', tell('round-by-suction'), [round, suction, liquid]),
      step(compressor, loop.meterKW, 'kW', tell('round-by-discharge'), [round, suction, discharge]),
      step(tell('heat-to-house'), loop.houseKW, 'kW', tell(`${from}-and-meter`), [
        of(tell(`from-${from}`), loop.groundKW, 'kW', tell('above')),
        of(compressor, loop.meterKW, 'kW', tell('above')),
      ]),
      ...(air ? [meterStep(air)] : []),
    ],
  };
}
