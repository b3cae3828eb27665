/** What the visits to the plant come to, as `--json` gives it. */
import { z } from 'zod';
import { judgePlant } from '../model/judge-plant.ts';
import type { CivilDate } from '../model/shapes/dates.ts';
import { CivilDate as Day } from '../model/shapes/dates.ts';
import { isRefused, type SiteVisit, STANDINGS } from '../model/shapes/site-readings.ts';
import { Wording } from '../model/shapes/told.ts';
import type { WrittenEstimate } from '../model/shapes/written-estimate.ts';
import { type BrineCourse, FALLS } from '../model/site-readings/brine-course.ts';
import type { SiteCheck } from '../model/site-readings/check-site.ts';
import { LEVELS, type NamedCause } from '../model/site-readings/likely-causes.ts';
import { referenceOf } from '../reference/index.ts';
import { siteTables } from '../reference/site-tables.ts';

const Name = z.object({ cause: z.string(), meant: z.record(z.string(), z.string()).optional() });
const Outcome = z.array(Name);

export const PlantVisit = z.object({
  date: Day,
  values: z.array(
    z.object({
      quantity: z.string(),
      value: z.number(),
      unit: z.string(),
      /** The usual band; null where an end is open or there is none. */
      low: z.number().nullable(),
      high: z.number().nullable(),
      standing: z.enum(STANDINGS),
      expected: z.number().optional(),
    }),
  ),
  /** Readings that cannot be (`refused`: nothing is worked out from them) or that are not known here. */
  remarks: z.array(
    z.object({
      code: z.string(),
      refused: z.boolean(),
      /** Key of the reading in the household file. */
      where: z.string(),
      found: z.union([z.number(), z.string()]),
      expected: Wording,
      /** With which all would fit. */
      likely: z.array(z.record(z.string(), z.string())),
    }),
  ),
  /** Dangers, then contradictions, then causes with the likeliest first; those of one question stand together. */
  causes: z.array(
    Name.extend({
      level: z.enum(LEVELS),
      trade: z.string(),
      orElse: Outcome,
      settling: z.object({ by: z.string(), above: Outcome, inside: Outcome, below: Outcome }).nullable(),
      signs: z.array(z.string()),
      against: z.array(z.string()),
      unread: z.array(z.string()),
    }),
  ),
  cautions: z.array(z.string()),
  /** Refrigerants that these readings fit as well (`by` "pressures") or better (`by` "hot-gas") than the one chosen. */
  alike: z.object({ others: z.array(z.string()), by: z.enum(['pressures', 'hot-gas']) }).nullable(),
});
export type PlantVisit = z.infer<typeof PlantVisit>;

const BrineAt = z.object({ date: Day, inC: z.number(), outC: z.number().nullable() });
/** Brine over the visits; its fall is the one finding that is made of them. */
export const BrineOverVisits = z.object({
  readings: z.array(BrineAt),
  freezingC: z.number().nullable(),
  fall: z.object({ kind: z.enum(FALLS), from: BrineAt, to: BrineAt, fallK: z.number() }).nullable(),
});

export interface JudgedVisit {
  readonly visit: SiteVisit;
  readonly check: SiteCheck;
  /** Where the readings stand in the household file. */
  readonly key: string;
}

export interface JudgedPlant {
  /** In the order of the file. */
  readonly visits: readonly JudgedVisit[];
  readonly course: BrineCourse;
}

/** Every visit, judged as of the estimate's day; null where there was none. */
export function judgeVisits({ household, evidence, appraisal }: WrittenEstimate): JudgedPlant | null {
  const visits = household.siteReadings ?? [];
  if (visits.length === 0) return null;
  const asOf: CivilDate = appraisal.asOf;
  const given = { household, series: evidence, reference: referenceOf(household), asOf };
  const { judge, course } = judgePlant(given, siteTables);
  return {
    visits: visits.map((visit, i) => ({ visit, check: judge(visit), key: `siteReadings[${i}].readings` })),
    course,
  };
}

const nameOf = ({ cause, meant }: NamedCause): z.infer<typeof Name> => ({
  cause,
  ...(meant ? { meant: { ...meant } } : {}),
});

export function plantOf(visits: readonly JudgedVisit[]): PlantVisit[] {
  return visits.map(({ visit, check, key }) => ({
    date: visit.date,
    values: check.values.map(({ quantity, value, unit, band, standing, expected }) => ({
      quantity,
      value,
      unit,
      low: band?.low ?? null,
      high: band?.high ?? null,
      standing,
      ...(expected === undefined ? {} : { expected }),
    })),
    remarks: check.remarks.map((remark) => ({
      code: remark.code,
      refused: isRefused(remark),
      where: `${key}.${remark.where}`,
      found: remark.found,
      expected: remark.expected,
      likely: (remark.likely ?? []).map((one) => ({ ...one })),
    })),
    causes: check.causes.map((cause) => ({
      ...nameOf(cause),
      level: cause.level,
      trade: cause.trade,
      orElse: cause.orElse.map(nameOf),
      settling: cause.settling && {
        by: cause.settling.by,
        above: cause.settling.above.map(nameOf),
        inside: cause.settling.inside.map(nameOf),
        below: cause.settling.below.map(nameOf),
      },
      signs: [...cause.signs],
      against: [...cause.against],
      unread: [...cause.unread],
    })),
    cautions: [...check.cautions],
    alike: check.alike && { others: [...check.alike.others], by: check.alike.by },
  }));
}
