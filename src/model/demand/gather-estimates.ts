/** Goes every way to the heat demand that the household's evidence allows. */
import type {
  Demand,
  DemandEstimate,
  Figure,
  HouseChange,
  Question,
  Signature,
  YearAhead,
} from '../shapes/appraisal.ts';
import type { Series } from '../shapes/evidence.ts';
import type { Household } from '../shapes/household.ts';
import type { Reference } from '../shapes/reference.ts';
import { tell, type Wording } from '../shapes/told.ts';
import { ROOM_C } from '../shapes/usual-home.ts';
import type { Grade } from '../shapes/working.ts';
import type { TypicalYear } from '../year/typical-year.ts';
import { askOfColdElectricity } from './cold-electricity.ts';
import { findContradictions } from './combine.ts';
import { demandFromHeatLoss } from './from-heat-loss.ts';
import { demandFromCertificate, demandFromFloorArea } from './from-papers.ts';
import { demandFromRecord } from './from-record.ts';
import { ask } from './heat-questions.ts';
import type { HotWaterDemand } from './hot-water.ts';
import { otherHeatKWh } from './other-heat.ts';

export interface Gathered {
  readonly estimates: readonly DemandEstimate[];
  readonly missing: Demand['missing'];
  readonly questions: readonly Question[];
  readonly room: { readonly value: number; readonly grade: Grade; readonly origin: Wording };
  readonly recordBaseC?: number;
  readonly heatLossBaseC?: number;
  readonly signature?: Signature;
  readonly change?: HouseChange;
  readonly recordHeatLoss?: Figure;
  readonly typedHeatLossWPerK?: number;
  readonly yearsAhead?: YearAhead[];
  readonly recordWeather: 'own' | 'typical' | 'none';
}

export interface GatherInput {
  readonly household: Household;
  readonly series: readonly Series[];
  readonly reference: Reference;
  readonly year: TypicalYear;
  readonly water: HotWaterDemand;
}

/** All estimates of yearly heat there are, those that are missing with the reason, and the questions they raise. */
export function gatherEstimates(input: GatherInput): Gathered {
  const { household, reference, year } = input;
  const { home, heat } = household;
  const room = heat.roomC ?? { value: ROOM_C, grade: 'assumed' as const, origin: tell('mean-of-rooms') };
  const record = demandFromRecord(input);
  const loss = demandFromHeatLoss(household, room, year, reference);
  const certificate = demandFromCertificate(heat);
  const better = [record.estimate, loss.estimate, certificate].filter((e) => e !== undefined && e !== null);
  const nothing = better.length === 0 && !home.floorAreaM2;
  const floorArea = home.floorAreaM2 || nothing ? demandFromFloorArea(home, year.region, reference) : null;
  const estimates = floorArea ? [...better, floorArea] : better;
  const missing: Demand['missing'] = [
    ...(record.estimate ? [] : [{ way: 'record' as const, reason: record.missing! }]),
    ...(loss.estimate ? [] : [{ way: 'heat-loss' as const, reason: loss.missing! }]),
    ...(certificate ? [] : [{ way: 'certificate' as const, reason: 'no-certificate' }]),
    ...(home.floorAreaM2 ? [] : [{ way: 'floor-area' as const, reason: 'no-floor-area' }]),
  ];
  const questions = [
    ...(nothing && floorArea ? [ask('demand-unknown', 'question', { spaceKWh: floorArea.spaceKWh })] : []),
    ...askOfHousehold(household, record.estimate?.spaceKWh ?? 0),
    ...askOfColdElectricity(household, input.series, year),
    ...record.questions,
    ...loss.questions,
    ...findContradictions(estimates, record.estimatedShare),
  ];
  return {
    estimates,
    missing,
    questions,
    room,
    ...(record.baseC === undefined ? {} : { recordBaseC: record.baseC }),
    ...(loss.baseC === undefined ? {} : { heatLossBaseC: loss.baseC }),
    ...(record.signature ? { signature: record.signature } : {}),
    ...(record.change ? { change: record.change } : {}),
    ...(record.heatLoss ? { recordHeatLoss: record.heatLoss } : {}),
    ...(loss.wPerK === undefined ? {} : { typedHeatLossWPerK: loss.wPerK }),
    ...(record.yearsAhead ? { yearsAhead: record.yearsAhead } : {}),
    recordWeather: record.weather,
  };
}

function askOfHousehold(household: Household, recordKWh: number): Question[] {
  const { otherHeat, efficiency, system } = household.present;
  const questions: Question[] = [];
  if (otherHeat && otherHeat !== 'none') {
    questions.push(
      ask(
        'other-heat',
        'question',
        { kind: otherHeat, perhapsKWh: otherHeatKWh(household, recordKWh) },
        'present.otherHeat',
      ),
    );
  }
  if (efficiency && efficiency.value > 1 && system !== 'heat-pump') {
    questions.push(ask('efficiency-above-one', 'question', { efficiency: efficiency.value }, 'present.efficiency'));
  }
  return questions;
}
