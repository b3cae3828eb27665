/** Which climate region a home lies in: named by the installer, found from its postcode, else the UK average. */
import type { Household } from '../shapes/household.ts';
import type { ClimateRegion, PostcodeRule, Reference } from '../shapes/reference.ts';
import { tell, type Wording } from '../shapes/told.ts';
import type { Grade } from '../shapes/working.ts';

export type Home = Household['home'];

export interface FoundRegion {
  readonly region: ClimateRegion;
  readonly grade: Grade;
  readonly origin: Wording;
}

/** Area letters and district number of a postcode: whole, outward part, or the letters alone; null where it is none. */
export function readPostcode(postcode: string): { area: string; district?: number } | null {
  const plain = postcode.toUpperCase().replace(/\s+/g, '');
  // A whole postcode ends in a digit and two letters; what stands before them is the outward part.
  const outward = /^[A-Z]{1,2}\d[A-Z\d]?\d[A-Z]{2}$/.test(plain) ? plain.slice(0, -3) : plain;
  const parts = /^([A-Z]{1,2})(?:(\d{1,2})[A-Z]?)?$/.exec(outward);
  if (!parts) return null;
  return parts[2] === undefined ? { area: parts[1]! } : { area: parts[1]!, district: Number(parts[2]) };
}

/**
 * Climate region of a home: the region typed, else the postcode's (district row before area row), else region 0,
 * the UK average, or the reference climate of another country, graded assumed. Source: SAP 2012 Appendix U.
 */
export function findRegion(home: Home, reference: Reference): FoundRegion {
  const byId = (id: number) => reference.regions.find((region) => region.id === id);
  const average = byId(0) ?? reference.regions[0];
  if (!average) throw new Error('the reference tables name no climate region');
  if (home.regionId !== undefined) {
    const region = byId(home.regionId);
    if (region)
      return { region, grade: 'estimated', origin: tell('region-by-hand', { region: String(home.regionId) }) };
  }
  if (reference.country !== 'GB') return { region: average, grade: 'assumed', origin: tell('no-region-said') };
  if (!home.postcode?.trim()) return { region: average, grade: 'assumed', origin: tell('no-postcode') };
  const read = readPostcode(home.postcode);
  if (!read) return { region: average, grade: 'assumed', origin: tell('not-a-postcode', { postcode: home.postcode }) };
  const rows = reference.postcodes.filter((row) => row.area === read.area);
  const { area, district } = read;
  const row = rows.find((r) => inDistricts(r, district)) ?? rows.find((r) => r.districtFrom === undefined);
  const region = row && byId(row.regionId);
  if (!region) return { region: average, grade: 'assumed', origin: tell('postcode-not-listed', { area }) };
  return { region, grade: 'estimated', origin: tell('postcode-of-region', { postcode: `${area}${district ?? ''}` }) };
}

function inDistricts(rule: PostcodeRule, district: number | undefined): boolean {
  if (district === undefined || rule.districtFrom === undefined) return false;
  return district >= rule.districtFrom && district <= (rule.districtTo ?? rule.districtFrom);
}
