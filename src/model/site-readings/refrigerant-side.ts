/** The refrigerant circuit as its pressures and pipes show it, and what in them cannot be. */
import { toBarAbsolute } from '../cycle/pressure.ts';
import { type Side, temperatureAt } from '../cycle/saturation.ts';
import { reckonCycle } from '../cycle/single-stage.ts';
import type { Refrigerant, Refrigerants } from '../shapes/refrigerant.ts';
import {
  type Band,
  isRefused,
  type SiteBands,
  type SiteField,
  type SiteReadings,
  type SiteRemark,
  type SiteValue,
} from '../shapes/site-readings.ts';
import { type Told, tell } from '../shapes/told.ts';
import { siteValue } from './site-value.ts';

/** Of a blend's glide, the part below the dew point at which its evaporation has its mean, 0.3 having flashed. */
const MEAN_BELOW_DEW = 0.35;
/** Superheat taken where the suction pipe was not measured, as in the discharge to be expected. Common practice. */
const USUAL_SUPERHEAT_K = 5;
/**
 * How far readings may pass what physics allows before they are refused [K]: gauges and pipe sensors err by a kelvin or
 * two, the hot gas warms the flow a little beyond the condensing point, and its pipe is colder than the gas. A judgement.
 */
const ALLOWED_K = { flow: 2, brine: 1, suction: 2, liquid: 2, gas: 5 } as const;

export interface CircuitTables {
  readonly refrigerants: Refrigerants;
  readonly bands: SiteBands;
}
export interface CircuitSide {
  readonly values: readonly SiteValue[];
  readonly remarks: readonly SiteRemark[];
}
type PressureField = 'suction' | 'discharge' | 'restPressure';

/** Absolute pressure [bar] at the critical point: ln p goes on as a straight line in 1/T beyond the last two rows. */
function criticalBar({ rows, criticalC }: Refrigerant): number {
  const [low, high] = [rows.at(-2)!, rows.at(-1)!];
  const inverse = (celsius: number) => 1 / (celsius + 273.15);
  const slope = Math.log(high.bubbleBar / low.bubbleBar) / (inverse(high.temperatureC) - inverse(low.temperatureC));
  return high.bubbleBar * Math.exp(slope * (inverse(criticalC) - inverse(high.temperatureC)));
}

function pressureRange({ rows }: Refrigerant, side: Side): Told {
  const read = (row: Refrigerant['rows'][number]) => (side === 'dew' ? row.dewBar : row.bubbleBar);
  return tell('bar-between', { low: read(rows[0]!), high: read(rows.at(-1)!) });
}

/**
 * Saturation temperatures [°C], superheat and subcooling [K], approaches [K], hot gas [°C] with what sound compressors
 * would show, share of the usual current and of the valve's opening [%], pressure at rest over that of its temperature [K].
 * Dew points on the suction side, bubble points on the liquid side. Pressures that cannot be give no value at all.
 */
export function readCircuit(readings: SiteReadings, { refrigerants, bands }: CircuitTables): CircuitSide {
  const { suction, discharge, restPressure, restC, currentA, usualCurrentA, valveOpenPercent, dischargeC } = readings;
  const remarks: SiteRemark[] = [];
  const values: SiteValue[] = [];
  const add = (quantity: SiteValue['quantity'], value: number, unit: SiteValue['unit'], band?: Band | null) =>
    values.push(siteValue(bands, quantity, value, unit, band));
  const electric = () => {
    if (currentA !== undefined && usualCurrentA !== undefined) add('current', (100 * currentA) / usualCurrentA, '%');
    if (valveOpenPercent !== undefined) add('valve-opening', valveOpenPercent, '%');
    return { values, remarks };
  };
  if (readings.refrigerant === undefined) {
    if (suction || discharge || restPressure)
      remarks.push({ code: 'refrigerant-missing', where: 'refrigerant', found: '', expected: tell('name-from-plate') });
    if (dischargeC !== undefined) add('discharge', dischargeC, '°C', null);
    return electric();
  }
  const refrigerant = refrigerants[readings.refrigerant];
  const [low, high] = [suction, discharge].map((one) => (one ? toBarAbsolute(one) : null)) as [
    number | null,
    number | null,
  ];
  if (low !== null && high !== null && high <= low) {
    const expected = tell('above-suction');
    remarks.push({ code: 'pressures-swapped', where: 'discharge', found: discharge!.value, expected });
    return electric();
  }
  const saturation = (where: PressureField, side: Side) => {
    const reading = readings[where];
    if (!reading) return null;
    const bar = toBarAbsolute(reading);
    const found = temperatureAt(refrigerant, bar, side);
    if (found === null) {
      const code =
        bar <= 0 ? 'no-pressure' : bar > criticalBar(refrigerant) ? 'above-critical' : 'pressure-outside-table';
      remarks.push({ code, where, found: reading.value, expected: pressureRange(refrigerant, side) });
    }
    return found;
  };
  const boiling = meansOf(refrigerant, saturation('suction', 'dew'), low, 'dew');
  const condensing = meansOf(refrigerant, saturation('discharge', 'bubble'), high, 'bubble');
  const restBubbleC = saturation('restPressure', 'bubble');
  remarks.push(...impossibilities(readings, boiling, condensing));
  if (remarks.some(isRefused)) return electric();

  const { suctionC, liquidC, brineOutC, flowC } = readings;
  if (boiling) add('evaporating', boiling.dewC, '°C', null);
  if (condensing) add('condensing', condensing.bubbleC, '°C', null);
  if (boiling && condensing) add('pressure-ratio', high! / low!, '', null);
  if (boiling && suctionC !== undefined) add('superheat', suctionC - boiling.dewC, 'K');
  if (condensing && liquidC !== undefined) add('subcooling', condensing.bubbleC - liquidC, 'K');
  if (boiling && brineOutC !== undefined) {
    const usual = bands.fixed['evaporator-approach'];
    const error = meanErrorK(boiling);
    const band = { ...usual, low: usual.low! - error, high: usual.high! + error };
    add('evaporator-approach', brineOutC - boiling.meanC, 'K', band);
  }
  if (condensing && flowC !== undefined) {
    // Water leaves past the hot end of a blend, which condenses half its glide above the middle.
    const usual = bands.fixed['condenser-approach'];
    const error = meanErrorK(condensing);
    const low = usual.low! - (condensing.dewC - condensing.meanC) - error;
    add('condenser-approach', condensing.meanC - flowC, 'K', { ...usual, low, high: usual.high! + error });
  }
  if (dischargeC !== undefined)
    add('discharge', dischargeC, '°C', dischargeBand(refrigerant, boiling, condensing, suctionC, bands));
  if (restBubbleC !== null && restC !== undefined)
    add('at-rest', restBubbleC - restC, 'K', restBand(refrigerant, toBarAbsolute(restPressure!), restBubbleC, bands));
  return electric();
}

/** Where a refrigerant boils or condenses at one pressure [°C]. */
interface Change {
  readonly dewC: number;
  readonly bubbleC: number;
  readonly meanC: number;
}

/** How far the mean may lie from where it is taken, by how much had flashed and how much is vapour yet [K]. A judgement. */
const meanErrorK = ({ dewC, bubbleC }: Change): number => 0.1 * (dewC - bubbleC);

function meansOf(refrigerant: Refrigerant, foundC: number | null, bar: number | null, side: Side): Change | null {
  if (foundC === null) return null;
  const otherC = temperatureAt(refrigerant, bar!, side === 'dew' ? 'bubble' : 'dew') ?? foundC;
  return side === 'dew'
    ? { dewC: foundC, bubbleC: otherC, meanC: foundC - MEAN_BELOW_DEW * (foundC - otherC) }
    : { dewC: otherC, bubbleC: foundC, meanC: (foundC + otherC) / 2 };
}

const tenth = (celsius: number): number => Math.round(celsius * 10) / 10;

/** Heat only runs from warm to cold: what in the readings would have it otherwise. */
function impossibilities(readings: SiteReadings, boiling: Change | null, condensing: Change | null): SiteRemark[] {
  const { brineInC, flowC, suctionC, dischargeC, liquidC, suction, discharge } = readings;
  const found: SiteRemark[] = [];
  const refuse = (code: SiteRemark['code'], where: SiteField, value: number, expected: Told) =>
    found.push({ code, where, found: value, expected });
  if (condensing && flowC !== undefined && condensing.dewC < flowC - ALLOWED_K.flow)
    refuse(
      'condensing-below-flow',
      'discharge',
      discharge!.value,
      tell('condensing-above', { celsius: flowC, found: condensing.dewC }),
    );
  if (boiling && brineInC !== undefined && boiling.meanC > brineInC + ALLOWED_K.brine)
    refuse(
      'boiling-above-brine',
      'suction',
      suction!.value,
      tell('boiling-below', { celsius: brineInC, found: boiling.meanC }),
    );
  if (boiling && suctionC !== undefined && suctionC < boiling.bubbleC - ALLOWED_K.suction)
    refuse('suction-below-boiling', 'suctionC', suctionC, tell('above-celsius', { celsius: tenth(boiling.bubbleC) }));
  if (condensing && liquidC !== undefined && liquidC > condensing.dewC + ALLOWED_K.liquid)
    refuse('liquid-above-condensing', 'liquidC', liquidC, tell('below-celsius', { celsius: tenth(condensing.dewC) }));
  if (condensing && dischargeC !== undefined && dischargeC < condensing.dewC - ALLOWED_K.gas)
    refuse(
      'gas-below-condensing',
      'dischargeC',
      dischargeC,
      tell('above-celsius', { celsius: tenth(condensing.dewC) }),
    );
  if (suctionC !== undefined && dischargeC !== undefined && dischargeC <= suctionC)
    refuse('discharge-not-hotter', 'dischargeC', dischargeC, tell('above-celsius', { celsius: suctionC }));
  return found;
}

/** Hot gas pipes of a perfect compressor, less what is lost on the way, and of a poor one [°C], at the pressures measured. */
function dischargeBand(
  refrigerant: Refrigerant,
  boiling: Change | null,
  condensing: Change | null,
  suctionC: number | undefined,
  { compression }: SiteBands,
): Band | null {
  if (!boiling || !condensing) return null;
  const superheatK = Math.max(0, suctionC === undefined ? USUAL_SUPERHEAT_K : suctionC - boiling.dewC);
  const at = (isentropicEfficiency: number) => {
    const result = reckonCycle({
      refrigerant,
      evaporatingC: boiling.dewC,
      condensingC: condensing.bubbleC,
      superheatK,
      subcoolingK: 0,
      isentropicEfficiency,
    });
    return result.ok ? result.cycle.dischargeC : null;
  };
  const perfectC = at(1);
  const { lostK, low, ...rest } = compression;
  return { ...rest, low: perfectC === null ? null : perfectC - lostK, high: at(low) };
}

/** At rest a blend lies between its bubble and its dew pressure; the band is read on the bubble side. */
function restBand(refrigerant: Refrigerant, bar: number, bubbleC: number, { fixed }: SiteBands): Band {
  const glideK = (temperatureAt(refrigerant, bar, 'dew') ?? bubbleC) - bubbleC;
  const band = fixed['at-rest'];
  return { ...band, low: band.low! - glideK };
}
