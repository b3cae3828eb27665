/** The refrigerant's round of a household's own machine, on a day as cold as the heating is designed for. */
import { type AirSide, compressorCop, FAN_W_PER_KW, frostShare, reckonAirSide } from '../../cycle/air-side.ts';
import {
  type HeatFrom,
  type LoopResult,
  reckonLoop,
  USUAL_EFFICIENCY,
  USUAL_EXCHANGE,
} from '../../cycle/household-loop.ts';
import type { Household } from '../../shapes/household.ts';
import type { RefrigerantName, Refrigerants } from '../../shapes/refrigerant.ts';
import { isCode, type Told, type ToldCode, tell, type Wording } from '../../shapes/told.ts';
import type { Grade, WorkingInput } from '../../shapes/working.ts';
import { flowTable } from './heating-curve.ts';
import { runDays } from './run-days.ts';
import { type SettleInput, settleFull } from './settle.ts';
import { readSurface } from './surface.ts';

/** In many ground-source machines of the last twenty years, and in many new air machines. Common practice, no source. */
const USUAL_REFRIGERANTS: Readonly<Record<HeatFrom, RefrigerantName>> = { ground: 'R407C', air: 'R290' };
export const usualRefrigerant = (from: HeatFrom): RefrigerantName => USUAL_REFRIGERANTS[from];
/** Brine in less brine out, K: EN 14511 rates at 0 °C in and −3 °C out, from memory. */
const USUAL_BRINE_DROP_K = 3;
/** Air in less air out, K; with the approach it boils 8 K under the air. Common practice, no source. */
const USUAL_AIR_DROP_K = 5;
const CUSTOM = tell('custom');

export interface DesignLoop {
  readonly from: HeatFrom;
  readonly result: LoopResult;
  /** Of an air machine, what it uses beside its compressor. */
  readonly air: AirSide | null;
  /** Everything that was taken, typed or assumed. */
  readonly inputs: readonly WorkingInput[];
  readonly designOutdoorC: number;
}

/**
 * The loop [°C, bar, kW] at the coldest brine of a typical year, or the design outdoor air between two defrosts, and the
 * design flow temperature. A machine worked out the full way gives its own COP there, less fan and frost where it has
 * them in it, else a usual compressor is taken. A fixed-speed machine gives its output while it runs, a variable one what the design day asks. Source: `reckonLoop`.
 */
export function designLoop(settle: SettleInput, refrigerants: Refrigerants): DesignLoop {
  const { machine } = settle.household;
  const from = machine.source;
  const dropK = from === 'air' ? USUAL_AIR_DROP_K : USUAL_BRINE_DROP_K;
  const { input, inputs: settled } = settleFull(settle);
  const { curve } = input;
  const refrigerant = machine.refrigerant?.value ?? usualRefrigerant(from);
  const coldestBrineC = () => runDays(input, flowTable(curve)).sourceC.reduce((least, c) => Math.min(least, c));
  const brineInC = from === 'air' ? curve.designOutdoorC : coldestBrineC();
  // As designed: only a shift that somebody typed is known of.
  const flowC = curve.designFlowC + (machine.full?.curveShiftK?.value ?? 0);
  const mostKW = readSurface(input.outputKW, brineInC, flowC);
  const heatKW = input.leastShare === 1 ? mostKW : Math.min(mostKW, input.designKW);
  const asked = {
    refrigerant: refrigerants[refrigerant],
    brineInC,
    brineOutC: brineInC - dropK,
    flowC,
    returnC: flowC - curve.spreadK,
    heatKW,
  };
  const usual = () => reckonLoop({ ...asked, compression: { kind: 'efficiency', isentropic: USUAL_EFFICIENCY } });
  const known = machine.way === 'full';
  const cop = 1 / readSurface(input.perHeat, brineInC, flowC);
  const ofCompressor = from === 'air' ? compressorCop(cop, brineInC) : cop;
  const own = known ? reckonLoop({ ...asked, compression: { kind: 'cop', cop: ofCompressor } }) : usual();
  const outOfReach = !own.ok && own.fault.code === 'cop-out-of-reach';
  const result = outOfReach ? usual() : own;
  const line = (name: Told, value: number | string, unit: Wording, grade: Grade, origin: Wording): WorkingInput => ({
    name,
    value,
    unit,
    grade,
    origin,
  });
  const taken = (code: ToldCode) => settled.filter(({ name }) => isCode(name, code));
  return {
    from,
    result,
    air: from === 'air' && result.ok ? reckonAirSide(heatKW, result.loop.meterKW, brineInC) : null,
    designOutdoorC: curve.designOutdoorC,
    inputs: [
      ...(from === 'air'
        ? [
            line(tell('design-air'), brineInC, '°C', 'estimated', tell('region-of-home')),
            line(tell('air-drop'), dropK, 'K', 'assumed', CUSTOM),
          ]
        : [
            line(tell('coldest-brine'), brineInC, '°C', gradeOfBrine(machine), tell('source-of-machine')),
            line(tell('brine-in-less-out'), dropK, 'K', 'assumed', tell('rating-from-memory')),
          ]),
      ...taken('design-flow'),
      ...taken('flow-spread'),
      line(tell('heat-while-running'), heatKW, 'kW', taken('output')[0]?.grade ?? 'assumed', tell('output-of-machine')),
      line(
        tell('refrigerant'),
        refrigerant,
        '',
        machine.refrigerant?.grade ?? 'assumed',
        machine.refrigerant?.origin ?? tell(`usual-in-${from}`),
      ),
      known && !outOfReach
        ? line(
            tell('cop-at-these'),
            cop,
            '',
            taken('rated-points')[0]?.grade ?? 'assumed',
            tell(from === 'air' ? 'points-installed-air' : 'points-installed'),
          )
        : line(tell('ideal-over-real'), USUAL_EFFICIENCY, '', 'assumed', tell('compressors-from-memory')),
      ...(from === 'air'
        ? [
            line(tell('fan-per-kw'), FAN_W_PER_KW, 'W', 'assumed', CUSTOM),
            line(tell('melting-frost'), frostShare(brineInC), tell('of-all-electricity'), 'assumed', CUSTOM),
          ]
        : []),
      line(
        tell(from === 'air' ? 'below-air-out' : 'below-brine-out'),
        USUAL_EXCHANGE.evaporatorApproachK,
        'K',
        'assumed',
        CUSTOM,
      ),
      line(tell('above-flow'), USUAL_EXCHANGE.condenserApproachK, 'K', 'assumed', CUSTOM),
      line(tell('superheat'), USUAL_EXCHANGE.superheatK, 'K', 'assumed', CUSTOM),
      line(tell('subcooling'), USUAL_EXCHANGE.subcoolingK, 'K', 'assumed', CUSTOM),
    ],
  };
}

function gradeOfBrine({ full }: Household['machine']): Grade {
  if (full?.brineMonthlyC) return full.brineMonthlyC.grade;
  return full?.ground?.depthM && full.ground.dropK ? 'estimated' : 'assumed';
}
