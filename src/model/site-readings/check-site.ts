/** Readings at the plant put through the sums, and each result held against its usual band. */
import { toBarAbsolute } from '../cycle/pressure.ts';
import { temperatureAt } from '../cycle/saturation.ts';
import { reckonCycle } from '../cycle/single-stage.ts';
import type { Refrigerant, Refrigerants } from '../shapes/refrigerant.ts';
import type {
  Band,
  FixedBand,
  SiteBands,
  SiteField,
  SiteGap,
  SiteQuantity,
  SiteReadings,
  SiteRemark,
  SiteUnit,
  SiteValue,
  Standing,
} from '../shapes/site-readings.ts';
import { type Told, tell } from '../shapes/told.ts';
import {
  brineProperties,
  type FluidTables,
  freezingPoint,
  heatOfFlowKW,
  massPercent,
  waterProperties,
} from './brine.ts';
import { type ExpectedCop, expectedCop, type OwnMachine } from './expected-cop.ts';
import { type Caution, cautionsFor, type LikelyCause, likelyCauses } from './likely-causes.ts';

export interface SiteTables {
  readonly refrigerants: Refrigerants;
  readonly fluids: FluidTables;
  readonly bands: SiteBands;
}
export interface SiteCheck {
  readonly values: readonly SiteValue[];
  readonly remarks: readonly SiteRemark[];
  readonly gaps: readonly SiteGap[];
  /** Likeliest first; never a diagnosis. */
  readonly causes: readonly LikelyCause[];
  readonly cautions: readonly Caution[];
}

/** Of a blend's glide, the part below the dew point at which its evaporation has its mean, 0.3 having flashed. */
const MEAN_BELOW_DEW = 0.35;
/** Superheat taken where the suction pipe was not measured, as in the discharge to be expected. Common practice. */
const USUAL_SUPERHEAT_K = 5;

const below = (celsius: number): Told => tell('below-celsius', { celsius });

function stand(value: number, band: Band | null): Standing {
  if (band === null) return 'no band';
  if (band.low !== null && value < band.low) return 'below';
  return band.high !== null && value > band.high ? 'above' : 'inside';
}

/** Which readings each result needs; a result of which at least one reading is there but not all is a gap. */
const NEEDS: Readonly<Partial<Record<SiteQuantity, readonly SiteField[]>>> = {
  'brine-drop': ['brineInC', 'brineOutC'],
  'brine-heat': ['brineInC', 'brineOutC', 'brineFlowLPerMin', 'glycol'],
  'water-spread': ['flowC', 'returnC'],
  'water-heat': ['flowC', 'returnC', 'waterFlowLPerMin'],
  cop: ['flowC', 'returnC', 'waterFlowLPerMin', 'inputKW'],
  superheat: ['refrigerant', 'suction', 'suctionC'],
  subcooling: ['refrigerant', 'discharge', 'liquidC'],
  'frost-margin': ['glycol', 'brineOutC'],
};

/**
 * Heat output [kW] by the water and by the brine, COP of the moment, saturation temperatures [°C], superheat and
 * subcooling [K], approaches [K], freezing point [°C], each with its band. COP to be expected: `expectedCop`, of the
 * household's own machine where it is given. Valid in steady running, readings of the same minutes. Source: each band
 * names its own.
 */
export function checkSite(readings: SiteReadings, tables: SiteTables, own: OwnMachine | null = null): SiteCheck {
  const { fluids, bands } = tables;
  const values: SiteValue[] = [];
  const remarks: SiteRemark[] = [];
  const add = (
    quantity: SiteQuantity,
    value: number | null,
    unit: SiteUnit,
    band: Band | null = bands.fixed[quantity as FixedBand] ?? null,
    expected?: ExpectedCop,
  ) => {
    if (value === null || !Number.isFinite(value)) return;
    values.push({
      quantity,
      value,
      unit,
      band,
      standing: stand(value, band),
      ...(expected ? { expected: expected.value, expectedFrom: expected.from } : {}),
    });
  };
  const { brineInC, brineOutC, flowC, returnC, inputKW, glycol } = readings;

  // Brine side.
  const drop = brineInC === undefined || brineOutC === undefined ? null : brineInC - brineOutC;
  if (drop !== null && drop <= 0)
    remarks.push({ code: 'brine-not-cooled', where: 'brineOutC', found: brineOutC!, expected: below(brineInC!) });
  if (brineInC !== undefined) add('brine-in', brineInC, '°C');
  add('brine-drop', drop, 'K');
  const percent =
    glycol && (glycol.basis === 'mass' ? glycol.percent : massPercent(fluids, glycol.kind, glycol.percent));
  const brine =
    glycol && percent !== undefined && brineInC !== undefined && brineOutC !== undefined
      ? brineProperties(fluids, glycol.kind, percent, (brineInC + brineOutC) / 2)
      : null;
  const brineKW =
    brine && drop !== null && drop > 0 && readings.brineFlowLPerMin !== undefined
      ? heatOfFlowKW(readings.brineFlowLPerMin, brine, drop)
      : null;
  add('brine-heat', brineKW, 'kW');

  // Water side.
  const spread = flowC === undefined || returnC === undefined ? null : flowC - returnC;
  if (spread !== null && spread <= 0)
    remarks.push({ code: 'flow-not-warmer', where: 'returnC', found: returnC!, expected: below(flowC!) });
  if (flowC !== undefined) add('flow', flowC, '°C');
  add('water-spread', spread, 'K');
  const water = spread === null ? null : waterProperties(fluids, (flowC! + returnC!) / 2);
  if (spread !== null && water === null)
    remarks.push({
      code: 'water-outside-table',
      where: 'flowC',
      found: flowC!,
      expected: tell('celsius-between', { low: 5, high: 75 }),
    });
  const waterKW =
    water && spread !== null && spread > 0 && readings.waterFlowLPerMin !== undefined
      ? heatOfFlowKW(readings.waterFlowLPerMin, water, spread)
      : null;
  add('water-heat', waterKW, 'kW');
  const fromBrineKW = brineKW !== null && inputKW !== undefined ? brineKW + inputKW : null;
  if (waterKW !== null && fromBrineKW !== null) add('heat-balance', (waterKW / fromBrineKW - 1) * 100, '%');

  // COP of the moment: by the water where its flow is known, else by the brine.
  const houseKW = waterKW ?? fromBrineKW;
  if (houseKW !== null && inputKW !== undefined) {
    const expected =
      brineInC === undefined || flowC === undefined ? null : expectedCop(brineInC, flowC, own, bands.carnotFraction);
    add('cop', houseKW / inputKW, '', expected?.band ?? null, expected ?? undefined);
  }

  addRefrigerant(readings, tables, add, remarks);

  // Frost.
  if (glycol && percent !== undefined) {
    const freezing = freezingPoint(fluids, glycol.kind, percent);
    if (freezing === null)
      remarks.push({
        code: 'glycol-outside-table',
        where: 'glycol',
        found: percent,
        expected: tell('mass-between', { low: 0, high: 40 }),
      });
    add('glycol-share', percent, '%');
    add('freezing', freezing, '°C');
    const coldest = readings.coldestBrineC ?? brineOutC;
    if (freezing !== null && coldest !== undefined) add('frost-margin', coldest - freezing, 'K');
  }

  const causes = likelyCauses(values);
  return { values, remarks, gaps: findGaps(readings, values), causes, cautions: cautionsFor(readings, causes) };
}

type Add = (quantity: SiteQuantity, value: number | null, unit: SiteUnit, band?: Band | null) => void;

function addRefrigerant(readings: SiteReadings, tables: SiteTables, add: Add, remarks: SiteRemark[]): void {
  const { suction, discharge, suctionC, dischargeC, liquidC, brineOutC, flowC } = readings;
  if (readings.refrigerant === undefined) {
    if (suction || discharge)
      remarks.push({
        code: 'refrigerant-missing',
        where: 'refrigerant',
        found: '',
        expected: tell('name-from-plate'),
      });
    return;
  }
  const refrigerant = tables.refrigerants[readings.refrigerant];
  const low = suction ? toBarAbsolute(suction) : null;
  const high = discharge ? toBarAbsolute(discharge) : null;
  if (low !== null && high !== null && high <= low) {
    remarks.push({
      code: 'pressures-swapped',
      where: 'discharge',
      found: discharge!.value,
      expected: tell('above-suction'),
    });
    return;
  }
  const saturation = (bar: number | null, side: 'dew' | 'bubble', where: 'suction' | 'discharge') => {
    if (bar === null) return null;
    const found = temperatureAt(refrigerant, bar, side);
    if (found === null)
      remarks.push({
        code: 'pressure-outside-table',
        where,
        found: readings[where]!.value,
        expected: pressureRange(refrigerant, side),
      });
    return found;
  };
  const dewC = saturation(low, 'dew', 'suction');
  const bubbleC = saturation(high, 'bubble', 'discharge');
  add('evaporating', dewC, '°C');
  add('condensing', bubbleC, '°C');
  if (low !== null && high !== null) add('pressure-ratio', high / low, '');
  if (dewC !== null && suctionC !== undefined) add('superheat', suctionC - dewC, 'K');
  if (bubbleC !== null && liquidC !== undefined) add('subcooling', bubbleC - liquidC, 'K');
  if (dewC !== null && brineOutC !== undefined) {
    const glide = dewC - (temperatureAt(refrigerant, low!, 'bubble') ?? dewC);
    add('evaporator-approach', brineOutC - (dewC - MEAN_BELOW_DEW * glide), 'K');
  }
  if (bubbleC !== null && flowC !== undefined) {
    const glide = (temperatureAt(refrigerant, high!, 'dew') ?? bubbleC) - bubbleC;
    add('condenser-approach', bubbleC + glide / 2 - flowC, 'K');
  }
  if (dischargeC === undefined) return;
  if (suctionC !== undefined && dischargeC <= suctionC)
    remarks.push({
      code: 'discharge-not-hotter',
      where: 'dischargeC',
      found: dischargeC,
      expected: tell('above-celsius', { celsius: suctionC }),
    });
  add('discharge', dischargeC, '°C', dischargeBand(refrigerant, dewC, bubbleC, suctionC, tables.bands));
}

function pressureRange(refrigerant: Refrigerant, side: 'dew' | 'bubble'): Told {
  const read = (row: Refrigerant['rows'][number]) => (side === 'dew' ? row.dewBar : row.bubbleBar);
  return tell('bar-between', { low: read(refrigerant.rows[0]!), high: read(refrigerant.rows.at(-1)!) });
}

/** Discharge temperatures [°C] of a good and of a poor compressor between the pressures measured. */
function dischargeBand(
  refrigerant: Refrigerant,
  evaporatingC: number | null,
  condensingC: number | null,
  suctionC: number | undefined,
  { compression }: SiteBands,
): Band | null {
  if (evaporatingC === null || condensingC === null) return null;
  const superheatK = Math.max(0, suctionC === undefined ? USUAL_SUPERHEAT_K : suctionC - evaporatingC);
  const at = (isentropicEfficiency: number) => {
    const result = reckonCycle({
      refrigerant,
      evaporatingC,
      condensingC,
      superheatK,
      subcoolingK: 0,
      isentropicEfficiency,
    });
    return result.ok ? result.cycle.dischargeC : null;
  };
  return { ...compression, low: at(compression.high), high: at(compression.low) };
}

function findGaps(readings: SiteReadings, values: readonly SiteValue[]): SiteGap[] {
  const found = new Set(values.map((value) => value.quantity));
  return Object.entries(NEEDS).flatMap(([quantity, fields]) => {
    const needs = fields.filter((field) => readings[field] === undefined);
    const begun = needs.length > 0 && needs.length < fields.length;
    return begun && !found.has(quantity as SiteQuantity) ? [{ quantity: quantity as SiteQuantity, needs }] : [];
  });
}
