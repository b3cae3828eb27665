/**
 * What an engineer needs to follow a reckoning by hand: every range with its middle, every input with its spread and
 * source, the draws, prices by month and band, rooms and hot water apart, the machine's hours by outdoor temperature, the
 * refrigerant's round. `reckoning.schema.json` is made from this schema.
 */
import { z } from 'zod';
import { type AppraisedYears, appraiseYears, USUAL_DRAWS } from '../model/appraise.ts';
import { SEED } from '../model/chance/normals.ts';
import { quantileOf } from '../model/chance/quantiles.ts';
import type { PricedPlan } from '../model/comparison/price-plan.ts';
import { ratesByMonth } from '../model/comparison/uses.ts';
import { savingsOf } from '../model/comparison/versus.ts';
import { heatOfHousehold } from '../model/heat-of-household.ts';
import { designLoop } from '../model/heat-pump/full/design-loop.ts';
import { Appraisal, SystemId, Verdict } from '../model/shapes/appraisal.ts';
import { BillCheck } from '../model/shapes/bill-check.ts';
import { FileAccount } from '../model/shapes/evidence.ts';
import { GuidedSearch } from '../model/shapes/guided-search.ts';
import { Household } from '../model/shapes/household.ts';
import { Lifetime } from '../model/shapes/lifetime.ts';
import { OfferResult } from '../model/shapes/offer-result.ts';
import { TariffChoice } from '../model/shapes/tariff-choice.ts';
import { Wording } from '../model/shapes/told.ts';
import type { WrittenEstimate } from '../model/shapes/written-estimate.ts';
import { referenceOf } from '../reference/index.ts';
import { siteTables } from '../reference/site-tables.ts';
import { AuditInput, inputsOf } from './audit-inputs.ts';
import { BrineOverVisits, PlantVisit } from './plant.ts';

/** 10, 50 and 90 % points over the homes like this one; `reckoned` is the sum at the middles of the inputs, which is shown. */
const Points = z.object({ low: z.number(), reckoned: z.number(), middle: z.number(), high: z.number() });
const Bought = z.object({ kWh: z.number(), pence: z.number() });

const Audit = z.object({
  draws: z.int(),
  seed: z.int(),
  /** Pence a year. */
  costs: z.array(Points.extend({ system: SystemId })),
  savings: z.array(Points.extend({ against: SystemId, chanceLess: z.number(), verdict: Verdict.optional() })),
  inputs: z.array(AuditInput),
  systems: z.array(
    z.object({
      system: SystemId,
      /** What is bought a year for each use, and what of it is paid without being bought. */
      space: Bought,
      water: Bought,
      backup: Bought,
      pumpsAndStandby: Bought,
      ownElectricity: Bought,
      waterByElectricity: Bought,
      fixedPence: z.number(),
      servicePence: z.number(),
      waterHours: z.string(),
      months: z.array(z.object({ month: z.int(), band: Wording, kWh: z.number(), pencePerKWh: z.number() })),
    }),
  ),
  /** The full way alone: hours of the year by outdoor temperature, to the nearest °C. */
  hoursByOutdoor: z
    .array(
      z.object({
        outdoorC: z.number(),
        hours: z.number(),
        spaceHeatKWh: z.number(),
        spaceKWh: z.number(),
        waterHeatKWh: z.number(),
        waterKWh: z.number(),
        backupKWh: z.number(),
        /** Heat over electricity of the compressor; null where it does not run. */
        spaceCop: z.number().nullable(),
        waterCop: z.number().nullable(),
      }),
    )
    .optional(),
  /** The refrigerant's round on the day the heating is designed for: temperatures °C, power kW, COP; the fault where there is none. */
  round: z.record(z.string(), z.unknown()),
});
export type Audit = z.infer<typeof Audit>;

/** What `--json` prints. Wordings are English sentences, each with its code and values beside it under `…Told`. */
export const Reckoning = z.object({
  format: z.literal('plainwarmth.reckoning'),
  /** Goes up with any change that would break a reader; more fields do not. */
  version: z.literal(2),
  household: Household,
  evidence: z.array(z.record(z.string(), z.unknown())),
  /** What each column and record of them was used for. */
  files: z.array(FileAccount),
  appraisal: Appraisal,
  offers: z.array(OfferResult).optional(),
  /** The household's electricity tariffs, each on the whole home; absent where it has none of its own. */
  tariffs: TariffChoice.optional(),
  lifetime: Lifetime.nullable(),
  audit: Audit,
  check: BillCheck.nullable(),
  /** The same in sentences: one with one amount, what stands before any cause, the range behind it. */
  checkSaid: z.object({ headline: z.string(), before: z.array(z.string()), range: z.string() }).optional(),
  /** Likely causes of the check's difference, and what to find out next. */
  search: GuidedSearch.nullable(),
  plant: z.array(PlantVisit).optional(),
  brineOverVisits: BrineOverVisits.optional(),
});

/** The audit of a written estimate, reckoned anew from its own household, evidence and day. */
export function auditOf({ household, evidence, appraisal }: WrittenEstimate): Audit {
  const reference = referenceOf(household);
  const given = { household, series: evidence, reference, asOf: appraisal.asOf };
  const years = appraiseYears(given);
  const { priced, machine } = years;
  const loop = designLoop(heatOfHousehold(given), siteTables.refrigerants);
  return {
    draws: USUAL_DRAWS,
    seed: SEED,
    costs: costsOf(years),
    savings: savingsOfYears(years),
    inputs: inputsOf(household, years, reference),
    systems: priced.map(systemOf),
    ...('full' in machine
      ? {
          hoursByOutdoor: machine.full.byOutdoor.map((one) => ({
            ...one,
            spaceCop: one.spaceKWh > 0 ? one.spaceHeatKWh / one.spaceKWh : null,
            waterCop: one.waterKWh > 0 ? one.waterHeatKWh / one.waterKWh : null,
          })),
        }
      : {}),
    round: { from: loop.from, inputs: loop.inputs, ...loop.result, ...(loop.air ? { air: loop.air } : {}) },
  };
}

const middleOf = (values: Float64Array): number => quantileOf(values, 0.5);

function costsOf({ appraisal, yearsPence }: AppraisedYears): Audit['costs'] {
  return appraisal.systems.map(({ id, cost }) => ({
    system: id,
    low: cost.low,
    reckoned: cost.value,
    middle: middleOf(yearsPence!.get(id)!),
    high: cost.high,
  }));
}

function savingsOfYears({ appraisal, yearsPence }: AppraisedYears): Audit['savings'] {
  const pump = yearsPence!.get('heat-pump')!;
  return appraisal.versus.map(({ against, saving, chanceLess, verdict }) => ({
    against,
    low: saving.low,
    reckoned: saving.value,
    middle: middleOf(savingsOf(pump, yearsPence!.get(against)!)),
    high: saving.high,
    chanceLess,
    ...(verdict ? { verdict } : {}),
  }));
}

function systemOf({ plan, terms, waterHours, uses }: PricedPlan): Audit['systems'][number] {
  return {
    system: plan.id,
    space: { kWh: terms.spaceKWh, pence: terms.spacePence },
    water: { kWh: terms.waterKWh, pence: terms.waterPence },
    backup: { kWh: terms.backupKWh, pence: terms.backupPence },
    pumpsAndStandby: { kWh: terms.steadyKWh, pence: terms.steadyPence },
    ownElectricity: { kWh: terms.ownElectricityKWh, pence: terms.ownElectricityPence },
    waterByElectricity: { kWh: terms.electricWaterKWh, pence: terms.electricWaterPence },
    fixedPence: terms.fixedPence,
    servicePence: terms.servicePence,
    waterHours,
    months: ratesByMonth(uses).map(({ month, name, kWh, pencePerKWh }) => ({
      month: month + 1,
      band: name,
      kWh,
      pencePerKWh,
    })),
  };
}
