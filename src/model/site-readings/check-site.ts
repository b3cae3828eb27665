/** Readings at the plant put through the sums, and each result held against its usual band. */
import type {
  Band,
  SiteBands,
  SiteField,
  SiteGap,
  SiteQuantity,
  SiteReadings,
  SiteRemark,
  SiteUnit,
  SiteValue,
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
import { type Caution, cautionsFor } from './cautions.ts';
import { expectedCop, type OwnMachine } from './expected-cop.ts';
import { type LikelyCause, likelyCauses } from './likely-causes.ts';
import { type Alike, alikeRefrigerants, likelyMeant, outsideOf, waysMeant } from './misreadings.ts';
import { type CircuitTables, readCircuit } from './refrigerant-side.ts';
import { siteValue } from './site-value.ts';
import { colderBrine } from './to-judge.ts';

export interface SiteTables extends CircuitTables {
  readonly fluids: FluidTables;
}
export interface SiteCheck {
  readonly values: readonly SiteValue[];
  readonly remarks: readonly SiteRemark[];
  readonly gaps: readonly SiteGap[];
  /** Dangers, then contradictions, then causes with the likeliest first; never a diagnosis. */
  readonly causes: readonly LikelyCause[];
  readonly cautions: readonly Caution[];
  /** Refrigerants that may be in the machine in place of the one chosen; null where nothing speaks for that. */
  readonly alike: Alike | null;
}

const KELVIN = 273.15;

const below = (celsius: number): Told => tell('below-celsius', { celsius });

/** Remarks on the circuit that a slip in reading its pressures may explain. */
const PRESSURES = /^(no-pressure|above-critical|pressure|condensing|boiling|suction|liquid|gas)/;

/** Which readings each result needs; a result of which at least one reading is there but not all is a gap. */
const NEEDS: Readonly<Partial<Record<SiteQuantity, readonly SiteField[]>>> = {
  'brine-drop': ['brineInC', 'brineOutC'],
  'brine-heat': ['brineInC', 'brineOutC', 'brineFlowLPerMin', 'glycol'],
  'water-spread': ['flowC', 'returnC'],
  'water-heat': ['flowC', 'returnC', 'waterFlowLPerMin'],
  cop: ['flowC', 'returnC', 'waterFlowLPerMin', 'inputKW'],
  superheat: ['refrigerant', 'suction', 'suctionC'],
  subcooling: ['refrigerant', 'discharge', 'liquidC'],
  current: ['currentA', 'usualCurrentA'],
  'at-rest': ['restPressure', 'restC'],
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
  const add = (quantity: SiteQuantity, value: number | null, unit: SiteUnit, band?: Band | null) => {
    if (value !== null && Number.isFinite(value)) values.push(siteValue(bands, quantity, value, unit, band));
  };
  const paired = pairsThatCanBe(readings, remarks);
  const { brineInC, brineOutC, flowC, returnC, inputKW, glycol } = paired;

  // Brine side.
  const drop = brineInC === undefined || brineOutC === undefined ? null : brineInC - brineOutC;
  if (brineInC !== undefined) add('brine-in', brineInC, '°C');
  add('brine-drop', drop, 'K');
  const percent =
    glycol && (glycol.basis === 'mass' ? glycol.percent : massPercent(fluids, glycol.kind, glycol.percent));
  const brine =
    glycol && percent !== undefined && brineInC !== undefined && brineOutC !== undefined
      ? brineProperties(fluids, glycol.kind, percent, (brineInC + brineOutC) / 2)
      : null;
  const brineKW =
    brine && drop !== null && readings.brineFlowLPerMin !== undefined
      ? heatOfFlowKW(readings.brineFlowLPerMin, brine, drop)
      : null;
  add('brine-heat', brineKW, 'kW');

  // Water side.
  const spread = flowC === undefined || returnC === undefined ? null : flowC - returnC;
  if (flowC !== undefined) add('flow', flowC, '°C');
  if (spread !== null) add('water-spread', spread, 'K', spreadBand(flowC!, bands));
  const water = spread === null ? null : waterProperties(fluids, (flowC! + returnC!) / 2);
  if (spread !== null && water === null)
    remarks.push({
      code: 'water-outside-table',
      where: 'flowC',
      found: flowC!,
      expected: tell('celsius-between', { low: 5, high: 75 }),
    });
  const waterKW =
    water && spread !== null && readings.waterFlowLPerMin !== undefined
      ? heatOfFlowKW(readings.waterFlowLPerMin, water, spread)
      : null;
  add('water-heat', waterKW, 'kW');
  const fromBrineKW = brineKW !== null && inputKW !== undefined ? brineKW + inputKW : null;
  if (waterKW !== null && fromBrineKW !== null) add('heat-balance', (waterKW / fromBrineKW - 1) * 100, '%');

  // COP of the moment: by the water where its flow is known, else by the brine.
  const houseKW = waterKW ?? fromBrineKW;
  if (houseKW !== null && inputKW !== undefined) {
    const cop = houseKW / inputKW;
    const ideal = brineInC === undefined || flowC === undefined ? null : idealCop(brineInC, flowC);
    if (ideal !== null && cop > ideal) {
      remarks.push({
        code: 'cop-above-ideal',
        where: 'inputKW',
        found: inputKW,
        expected: tell('below-cop', { cop: ideal }),
      });
    } else {
      const expected = ideal === null ? null : expectedCop(brineInC!, flowC!, own, bands.carnotFraction);
      const value = siteValue(bands, 'cop', cop, '', expected?.band);
      values.push(expected ? { ...value, expected: expected.value, expectedFrom: expected.from } : value);
    }
  }

  const circuit = readCircuit(paired, tables);
  values.push(...circuit.values);
  const fits = circuit.remarks.length === 0 && outsideOf(circuit.values).length === 0;
  // What cannot be needs less to speak for a slip than what only lies outside its band.
  const ways = fits ? [] : waysMeant(paired, tables, circuit.remarks.length > 0 ? 1 : 2);
  const likely = likelyMeant(ways);
  const explained = circuit.remarks.findIndex(({ code }) => PRESSURES.test(code));
  remarks.push(...circuit.remarks.map((one, i) => (i === explained && likely.length > 0 ? { ...one, likely } : one)));

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
    const coldest = readings.coldestBrineC ?? colderBrine(readings);
    if (freezing !== null && coldest !== undefined) add('frost-margin', coldest - freezing, 'K');
  }

  const { refrigerant, dischargeC } = readings;
  const alarmC = refrigerant ? bands.hotGas[refrigerant] : Math.min(...Object.values(bands.hotGas));
  const gasTooHot = dischargeC !== undefined && dischargeC >= alarmC;
  const causes = likelyCauses(values, { ways: circuit.remarks.length === 0 ? ways : [], gasTooHot });
  // A cause says it already.
  const isNamed = causes.some(({ meant }) => meant?.kind === 'refrigerant');
  const alike = isNamed ? null : alikeRefrigerants(paired, circuit, tables);
  return { values, remarks, gaps: findGaps(readings, values), causes, cautions: cautionsFor(readings, causes), alike };
}

/** Brine and water without a pair of which one cannot be: brine leaves colder than it came, water warmer. */
function pairsThatCanBe(readings: SiteReadings, remarks: SiteRemark[]): SiteReadings {
  const { brineInC, brineOutC, flowC, returnC, ...rest } = readings;
  const cooled = brineInC === undefined || brineOutC === undefined || brineOutC < brineInC;
  const warmed = flowC === undefined || returnC === undefined || returnC < flowC;
  if (!cooled)
    remarks.push({ code: 'brine-not-cooled', where: 'brineOutC', found: brineOutC, expected: below(brineInC) });
  if (!warmed) remarks.push({ code: 'flow-not-warmer', where: 'returnC', found: returnC, expected: below(flowC) });
  return { ...rest, ...(cooled ? { brineInC, brineOutC } : {}), ...(warmed ? { flowC, returnC } : {}) };
}

/** Heat over work of a machine without any loss between brine and flow [°C]; null where the flow is not above the brine. */
const idealCop = (brineInC: number, flowC: number): number | null =>
  flowC <= brineInC ? null : (flowC + KELVIN) / (flowC - brineInC);

function spreadBand(flowC: number, { fixed, waterSpread }: SiteBands): Band {
  const { hotHigh, coolC, hotC } = waterSpread;
  const band = fixed['water-spread'];
  const share = Math.min(1, Math.max(0, (flowC - coolC) / (hotC - coolC)));
  return { ...band, high: band.high! + share * (hotHigh - band.high!) };
}

function findGaps(readings: SiteReadings, values: readonly SiteValue[]): SiteGap[] {
  const found = new Set(values.map((value) => value.quantity));
  return Object.entries(NEEDS).flatMap(([quantity, fields]) => {
    const needs = fields.filter((field) => readings[field] === undefined);
    const begun = needs.length > 0 && needs.length < fields.length;
    return begun && !found.has(quantity as SiteQuantity) ? [{ quantity: quantity as SiteQuantity, needs }] : [];
  });
}
