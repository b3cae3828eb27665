/** A later bill held against a written estimate: what is typed, and what the check says. */

import { z } from 'zod';
import { codeOf } from './code.ts';
import { CivilDate } from './dates.ts';
import { RecordAccount } from './evidence.ts';
import { Finding } from './finding.ts';
import { SearchAnswer } from './guided-search.ts';
import { Grade, Working } from './working.ts';

/** A later electricity bill of the heat pump, whole periods; typed or from evidence. */
export const BillCheckInput = z.object({
  estimateId: z.string(),
  from: CivilDate,
  /** Exclusive. */
  to: CivilDate,
  boughtKWh: z
    .number()
    .min(0)
    .describe(
      'Net, in kWh: units that heating and hot water used. With "meter": "heat-pump" those of the heat pump\'s own meter; with "whole-house" the units of the bill less "otherKWh". Where "otherKWh" is not there, all units of the bill (gross).',
    ),
  otherKWh: z
    .number()
    .min(0)
    .optional()
    .describe(
      'In kWh for the same days: what went into other things than heating and hot water, already taken off "boughtKWh". Not there with "whole-house": nobody knows, so "boughtKWh" holds it. 0 with "heat-pump".',
    ),
  meter: z.enum(['heat-pump', 'whole-house']),
  pencePerKWh: z.number().min(0),
  /** Name of the household's tariff that gave the price, where nobody said what the bill has. */
  priceTariff: z.string().optional(),
  /**
   * What the bill charges for those units together, if it says it otherwise than units × price. Standing charge and
   * yearly service stay out on both sides: the household pays the one anyway, and the other is not on this bill.
   */
  totalPence: z.number().optional(),
  /** Degree days of those days to the estimate's base temperature, if the household's own weather gives them. */
  degreeDays: z.number().min(0).optional(),
  readings: z.enum(['actual', 'estimated', 'unknown']),
  // What separates the causes of a difference; each for the same days, absent where nobody knows it.
  /** Series of readings that the fields below were taken from. */
  seriesIds: z.array(z.string()).optional(),
  /** Standing charge on the bill for these days; it counts on both sides once the estimated one is known too. */
  billedStandingPence: z.number().min(0).optional(),
  /** Standing charge that the household was told of; without it that of the written estimate's own tariff. */
  estimatedStandingPencePerDay: z.number().min(0).optional(),
  /** `boughtKWh` again by readings somebody took, where the bill rests on an estimate. */
  readKWh: z.number().min(0).optional(),
  /** What the sub-meter on the heat pump says, where the bill is that of the whole house. */
  heatPumpKWh: z.number().min(0).optional(),
  /** Heat that the machine made for rooms and hot water, and the hot water's part of it; without the immersion heater's. */
  heatKWh: z.number().min(0).optional(),
  waterHeatKWh: z.number().min(0).optional(),
  /** Units that rose with the cold, by the line through the daily readings. */
  spaceKWh: z.number().min(0).optional(),
  /** Units that panels at home gave it in these days, made less sent out: used, and on no bill. Only of a bill of the whole home. */
  ownUseKWh: z.number().min(0).optional(),
  /** Units of the immersion or backup heater. */
  immersionKWh: z.number().min(0).optional(),
  /** Units by price, VAT included. */
  ratesKWh: z.array(z.object({ name: z.string(), kWh: z.number().min(0), pencePerKWh: z.number() })).optional(),
  /** Another tariff than that of the estimate, taken since it or within these days. */
  tariffChange: z
    .object({
      /** First day on it; on or before `from` where the whole bill is on it. */
      on: CivilDate,
      /** The tariff taken, of the household's own; without it the one in use today. */
      tariffId: z.string().optional(),
      /**
       * What a kWh of this bill would have cost on the tariff before, VAT included. Without it both tariffs have to be
       * known: then it is worked out from them at the hours of use.
       */
      beforePencePerKWh: z.number().positive().max(500).optional(),
    })
    .optional(),
  /** What the guided search has been told, in the order of asking. */
  answers: z.array(SearchAnswer).max(40).optional(),
});
export type BillCheckInput = z.infer<typeof BillCheckInput>;

/** Why a bill is not what the estimate said. */
export type BillCause =
  | 'days'
  | 'price'
  | 'tariff'
  | 'when'
  | 'standing-charge'
  | 'weather'
  | 'heat-used'
  | 'hot-water'
  | 'efficiency'
  | 'backup'
  | 'other-electricity'
  | 'own-generation'
  | 'metering'
  | 'rooms'
  | 'steady'
  | 'rest';

export const BillCheckPart = z.object({
  /**
   * "days": these days of the year against an equal share of the year; "price"; "tariff" (another one taken); "when" (dear or cheap hours);
   * "standing-charge"; "weather", absent where no weather of the bill's days is known; "heat-used" by degree day;
   * "hot-water"; "efficiency"; "backup" or immersion heater; "other-electricity"; "own-generation" (used at home, on no bill); "metering".
   * What the evidence cannot tell apart: "rooms" (rose with the cold), "steady" (did not), "rest" (all of it).
   */
  cause: codeOf<BillCause>(),
  /** Causes that may be inside this part, where it stands for more than its own. */
  joined: z.array(codeOf<BillCause>()).optional(),
  pence: z.number(),
  grade: Grade,
  working: Working,
});
export type BillCheckPart = z.infer<typeof BillCheckPart>;

/** Mean use of a day by the clock [kWh each reading], with what was seen and on days as cold without it. */
export const TypicalDay = z.object({
  minutes: z.number(),
  seen: z.array(z.number()),
  seenDays: z.int(),
  /** Absent where every day has it. */
  otherwise: z.array(z.number()).optional(),
});
export type TypicalDay = z.infer<typeof TypicalDay>;

/**
 * What the readings of the bill's days show, with the sum of its cost and the picture of its day. `kWh` and `pence` are those
 * of the bill's days that were read, and lie inside the part of the bridge that `part` names; a year is the season that it
 * was seen in.
 */
export const CheckFinding = Finding.extend({
  /** Absent where it is no part of the difference: the estimate has it, or another meter counts it. */
  part: codeOf<BillCause>().optional(),
  /** Its units at the one price that the split gives all units [pence]; `pence` is at the prices of its own hours. */
  splitPence: z.number().optional(),
  working: Working,
  typicalDay: TypicalDay.optional(),
});
export type CheckFinding = z.infer<typeof CheckFinding>;

/**
 * What was not looked for, and why. "prices-by-amount": dear hours, under a tariff whose units cost by their number too;
 * its name. "registers-left-out": the register that was looked through, then those beside it that were not.
 * "no-readings": all that needs readings by the hour, where the findings are from bills alone. "not-ruled-out": likely
 * causes, by their codes, that these readings could not have shown.
 */
export const NotSeen = z.object({
  code: z.enum(['prices-by-amount', 'registers-left-out', 'no-readings', 'not-ruled-out']),
  names: z.array(z.string()),
});
export type NotSeen = z.infer<typeof NotSeen>;

/**
 * What is said before any cause, since it decides whether there is one. "bill-above-readings", "bill-below-readings": the
 * bill's units against the readings of the same meter; "units-hold-other": the units given are those of the whole meter
 * although other electricity was taken off them; "machine-above-home": the heat pump's meter shows more than the bill of
 * the whole home; "readings-cover-part": days of the bill are not read; "other-unknown": nobody has said what a bill of the
 * whole home holds beside heating, `readKWh` is what is usual, or what the home itself took before.
 */
export const BillDoubt = z.object({
  code: z.enum([
    'bill-above-readings',
    'bill-below-readings',
    'units-hold-other',
    'machine-above-home',
    'readings-cover-part',
    'other-unknown',
    'other-bill',
    'before-estimate',
  ]),
  meterName: z.string().optional(),
  /** All units of the bill's meter, and those by the readings. */
  billKWh: z.number(),
  readKWh: z.number(),
  daysRead: z.int().optional(),
  days: z.int().optional(),
  /** Of "other-unknown": `readKWh` is by the home's own records from before the estimate, and no usual figure. */
  fromRecord: z.boolean().optional(),
  /** What the bill charges beyond the readings; 0 where that cannot be said. */
  pence: z.number(),
});
export type BillDoubt = z.infer<typeof BillDoubt>;

/** One month after the written estimate, kWh. */
export const FollowedMonth = z.object({
  /** "2026-01". */
  month: z.string(),
  /** Days of the month that the series has; `to` exclusive. */
  from: CivilDate,
  to: CivilDate,
  days: z.int(),
  /** For these days in a typical year, and in the weather that came with its 10 and 90 % points. */
  estimatedKWh: z.number(),
  expectedKWh: z.number(),
  lowKWh: z.number(),
  highKWh: z.number(),
  /** Null where days in between are missing. */
  actualKWh: z.number().nullable(),
  weatherKnown: z.boolean(),
  verdict: z.enum(['inside', 'above', 'below', 'unknown']),
  /** Actual less expected since the first month, months that are not known left out. */
  gapSoFarKWh: z.number(),
});
export type FollowedMonth = z.infer<typeof FollowedMonth>;

export const BillCheck = z.object({
  id: z.string(),
  estimateId: z.string(),
  madeOn: z.string(),
  input: BillCheckInput,
  /** An equal share of the estimated year's units for as many days: what somebody expects who divides the year. */
  estimatedPence: z.number(),
  /** What the estimate says for exactly those calendar days at its own prices and typical weather; estimated + "days". */
  seasonPence: z.number().optional(),
  /** Units for exactly those days: as estimated, and as expected in the weather that came (the same where it is unknown). */
  estimatedKWh: z.number().optional(),
  expectedKWh: z.number().optional(),
  /** The estimate for exactly those days put right for the actual price and weather, with its 10 and 90 % points. */
  expected: z.object({ value: z.number(), low: z.number(), high: z.number() }),
  /** The bill's units; with its standing charge where `standing` is there. */
  actualPence: z.number(),
  /** Standing charge of these days inside `estimatedPence` and `seasonPence`, and inside `expected` and `actualPence`. */
  standing: z.object({ estimatedPence: z.number(), billedPence: z.number() }).optional(),
  /** Against `expected`; "unknown" where nobody knows how much of a whole home's bill heated. */
  verdict: z.enum(['inside', 'above', 'below', 'unknown']),
  /** Absent where bill and readings agree and nothing is unknown, and in checks from before it was kept. */
  doubts: z.array(BillDoubt).optional(),
  /** Sum to actual − estimated, exactly. */
  parts: z.array(BillCheckPart),
  /** Codes of what to find out next (`SearchQuestion`), as when the check was last asked or told. */
  next: z.array(z.string()),
  /** What readings finer than a day show in the days of the bill, in the order in which it is said; absent without such readings. */
  findings: z.array(CheckFinding).optional(),
  /** Month by month since the written estimate, as far as a meter on the machine was read on the day of the check. */
  months: z.array(FollowedMonth).optional(),
  /** Absent in checks from before it was kept, and where all was looked for. */
  notSeen: z.array(NotSeen).optional(),
  /** Every record that was there on the day of the check; absent in checks from before it was kept. */
  records: z.array(RecordAccount).optional(),
});
export type BillCheck = z.infer<typeof BillCheck>;
