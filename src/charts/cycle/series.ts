/** The six places of the round with this household's numbers, ready to be drawn or listed. */
import type { AirSide } from '../../model/cycle/air-side.ts';
import type { HeatFrom, HouseholdLoop } from '../../model/cycle/household-loop.ts';
import {
  barText,
  CYCLE_STEPS,
  type CycleStep,
  cycleStepName,
  cycleStepSentence,
  type HeatedBy,
  psiText,
  unitsAnHour,
  wholeDegrees,
} from '../../words/cycle.ts';
import { say } from '../../words/say.ts';

export interface CycleReading {
  readonly name: string;
  readonly text: string;
}
export interface CyclePlace {
  readonly step: CycleStep;
  /** 1 to 6, as in the picture. */
  readonly number: number;
  readonly name: string;
  readonly sentence: string;
  readonly readings: readonly CycleReading[];
}
export interface CycleSeries {
  readonly places: readonly CyclePlace[];
  /** Shares of the heat in the house, together 1. */
  readonly groundShare: number;
  readonly meterShare: number;
  readonly loop: HouseholdLoop;
  readonly heatedBy: HeatedBy;
  readonly from: HeatFrom;
  /** Of an air machine, what it uses beside its compressor. */
  readonly air: AirSide | null;
}

function readingsOf(step: CycleStep, loop: HouseholdLoop, from: HeatFrom, air: AirSide | null): CycleReading[] {
  const warm = (name: string, celsius: number) => ({ name, text: wholeDegrees(celsius) });
  const heat = (name: string, kW: number) => ({ name, text: unitsAnHour(kW) });
  switch (step) {
    case 'ground':
      return [
        warm(from === 'air' ? say('Air in') : say('From the ground'), loop.brineInC),
        warm(from === 'air' ? say('Air out') : say('Back to the ground'), loop.brineOutC),
        heat(say('Heat taken'), loop.groundKW),
        ...(air ? [heat(say('Fan'), air.fanKW), heat(say('Defrost, on average'), air.frostKW)] : []),
      ];
    case 'evaporator':
      return [
        warm(say('Boils at'), loop.evaporatingC),
        {
          name: say('Low pressure on the gauge'),
          text: `${barText(loop.low.barGauge)}, ${psiText(loop.low.psiGauge)}`,
        },
        warm(say('Gas on its way out'), loop.suctionC),
      ];
    case 'compressor':
      return [
        warm(say('Gas after cooling the motor'), loop.afterMotorC),
        warm(say('Hot gas'), loop.dischargeC),
        heat(say('From the meter'), loop.meterKW),
      ];
    case 'condenser':
      return [
        warm(say('Turns to liquid at'), loop.condensingC),
        {
          name: say('High pressure on the gauge'),
          text: `${barText(loop.high.barGauge)}, ${psiText(loop.high.psiGauge)}`,
        },
      ];
    case 'house':
      return [warm(say('Flow'), loop.flowC), warm(say('Return'), loop.returnC), heat(say('Heat given'), loop.houseKW)];
    case 'valve':
      return [warm(say('Liquid before'), loop.liquidC), warm(say('Cold mixture after'), loop.afterValveC)];
  }
}

export function cycleSeries(
  loop: HouseholdLoop,
  heatedBy: HeatedBy,
  from: HeatFrom = 'ground',
  air: AirSide | null = null,
): CycleSeries {
  return {
    places: CYCLE_STEPS.map((step, index) => ({
      step,
      number: index + 1,
      name: cycleStepName(step, from),
      sentence: cycleStepSentence(step, loop, heatedBy, from),
      readings: readingsOf(step, loop, from, air),
    })),
    groundShare: loop.groundKW / loop.houseKW,
    meterShare: loop.meterKW / loop.houseKW,
    loop,
    heatedBy,
    from,
    air,
  };
}
