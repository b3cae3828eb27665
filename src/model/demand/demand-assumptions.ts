/** What the demand part assumes where nobody has said anything, each with where it comes from. */

/** Gas burnt for cooking in a year, kWh: 481 + 96 N. BREDEM 2012 Table 5, from memory. */
export const cookingGasKWh = (people: number): number => 481 + 96 * people;
/** One standard error of it, as a share. Common practice, no source. */
export const COOKING_ERROR = 0.4;

/** Share of the rooms' heat that a second heater brings where there is one: SAP 10.2 Table 11, from memory. */
export const OTHER_HEAT_SHARE = { 'wood stove': 0.1, 'open fire': 0.1, 'electric heaters': 0.1 } as const;

/** One relative standard error of what was typed, by how it was come by. Common practice, no source. */
export const HEAT_LOSS_ERROR = { measured: 0.08, estimated: 0.15, assumed: 0.25 } as const;
/** Certificates are worked out for a standard household; this one is not it. Common practice, no source. */
export const CERTIFICATE_ERROR = 0.25;
export const WATER_ERROR = { litresMeasured: 0.1, litres: 0.2, people: 0.3, peopleGuessed: 0.4 } as const;
/** A typed efficiency is a rating, not a reading. Common practice, no source. */
export const EFFICIENCY_ERROR = { measured: 0.03, estimated: 0.05, assumed: 0.07 } as const;
/** Standard error of the oil in the tank at either end of a span of deliveries, as a share of one delivery. Common practice, no source. */
export const TANK_ERROR = 0.25;

/**
 * How far a home that needs more heat for its rooms than thought needs more hot water too: a larger household, and one that
 * likes it warm, needs more of both. Our own assumption, no source; nothing where a record knows both together.
 */
export const WATER_FOLLOWS = 0.3;

/**
 * Months differ by more than their days and their year explain: visitors, weeks away, a room given up. Relative standard
 * deviation of a month in the same weather: 0.12 puts 8 months in 10 of the one open household record inside its range.
 */
export const MONTH_HABITS = 0.12;

/** Standard deviations from the middle to the 10 and 90 % points of a normal distribution. */
export const TEN_PERCENT = 1.2816;
