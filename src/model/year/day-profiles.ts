/**
 * At which hours of the day a system buys its energy: 48 weights, one a half-hour of the clock, in any unit.
 * Common practice, no source, except where named. They matter only where the price changes over the day.
 */

type Profile = readonly number[];

/** Hours as [from, to, weight]; later ones overwrite earlier ones, the rest is 0. */
function byHours(...hours: readonly (readonly [from: number, to: number, weight: number])[]): Profile {
  const weights = new Array<number>(48).fill(0);
  for (const [from, to, weight] of hours) weights.fill(weight, from * 2, to * 2);
  return weights;
}

/** Every half-hour alike: standby. */
export const ALL_DAY: Profile = byHours([0, 24, 1]);
/** A heat pump runs long and steadily, a little less while the house sleeps. */
export const STEADY_HEATING: Profile = byHours([0, 6, 0.75], [6, 22, 1.1], [22, 24, 0.9]);
/** Two fixed windows in which a heat pump heats its cylinder. */
export const CYLINDER_WINDOWS: Profile = byHours([4, 6, 1], [13, 15, 1]);
/** Panel heaters, and boilers, heat while somebody is up. */
export const WAKING_HOURS: Profile = byHours([6, 9, 1.5], [9, 16, 0.7], [16, 22.5, 1.3]);
/** A cylinder heated when it is drawn from, or a boiler that makes hot water on demand. */
export const DRAWN_WATER: Profile = byHours([6, 9, 1], [17, 21, 1]);
/** 00:30 to 07:30, where the tariff has no cheap night of its own. */
export const NIGHT: Profile = byHours([0.5, 7.5, 1]);
/** The boost of storage heaters, in the evening when they are spent. */
export const EVENING: Profile = byHours([16, 22, 1]);

/** Share of the heat of storage heaters bought outside the night: SAP's secondary heating of 10 to 15 %. */
export const STORAGE_BOOST_SHARE = 0.1;
/** Share of the hot water of a night cylinder heated by day. Common practice, no source. */
export const CYLINDER_BOOST_SHARE = 0.2;
