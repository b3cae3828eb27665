/** How much harder hot water is than heating rooms, where only one factor was given. */
import { seasonMeanFlow } from './flow.ts';

const KELVIN = 273.15;
/** Flow that brings a cylinder to 55 °C, °C. */
const WATER_FLOW_C = 57;
/**
 * Source temperature weighted by heat, °C: brine in the heating season and over the year, outdoor air the same.
 * Brine as in the worked example of an 8 kW house; air for a British climate (a judgement).
 */
const SOURCE_C = { ground: { season: 2.5, year: 4 }, air: { season: 5.5, year: 10 } } as const;

/** Carnot's limit of a heat pump [1]: T_hot / (T_hot − T_cold), temperatures in °C. Valid for hot above cold. */
export function carnotCop(hotC: number, coldC: number): number {
  return (hotC + KELVIN) / (hotC - coldC);
}

/**
 * Factor for hot water over factor for rooms [1], the second-law fraction taken as equal.
 * ratio = Carnot(57 °C, year's source) / Carnot(season's mean flow, season's source); never above 1.
 * Valid for design flows of 30 to 60 °C. Source: the worked example of an 8 kW house with radiators at 45 °C gives
 * 2.8032 / 4.1480 = 0.676.
 */
export function waterToSpaceRatio(
  source: 'ground' | 'air',
  designFlowC: number,
  emitters: 'radiators' | 'floor',
): number {
  const { season, year } = SOURCE_C[source];
  return Math.min(1, carnotCop(WATER_FLOW_C, year) / carnotCop(seasonMeanFlow(designFlowC, emitters), season));
}
