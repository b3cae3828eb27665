/** What readings show, as data: what was seen, when, how sure, what it costs, what to ask and what to check. */
import { z } from 'zod';
import { CivilDate } from './dates.ts';
import { Grade } from './working.ts';

export const FindingCode = z.enum([
  /** An immersion or backup heater: steps of even power near a rated one. */
  'heater-running',
  /** The same once a week: most likely the cylinder's weekly heating against germs. */
  'weekly-pasteurisation',
  /** The cylinder is brought up many times a day. */
  'water-often',
  /** Nights let go cold, with a peak every morning. */
  'night-setback',
  /** What runs all night rose. */
  'base-load-rose',
  /** A large load of even power on the meter of the house that is not the heating. */
  'large-load',
  /** Use moved into dear hours. */
  'dear-hours',
  /** More or less is used in the same weather from a day on. */
  'behaviour-changed',
  /** An estimated reading was put right by the next one. */
  'estimate-corrected',
  /** Day and night registers stand the wrong way round. */
  'registers-swapped',
  /** Use rises much faster on the coldest days: an electric heater helps. */
  'backup-in-cold',
  /** Everything that the meter counts is so many times what it was. */
  'meter-scale',
  /** By day less is bought than what always runs: electricity is made at home. */
  'own-generation',
  /** Weeks without the ups and downs of people. */
  'home-empty',
]);
export type FindingCode = z.infer<typeof FindingCode>;

/** What a finding may come from, where its readings cannot tell several apart. */
const LIKELY_CAUSES = [
  'machine-works-less',
  'more-heat',
  'rooms-warmer',
  'backup-heater',
  'plug-in-heaters',
  'more-water',
  'water-often',
  'summer-heating',
  'heater',
  'other-use',
  'base-load',
  'large-load',
  'machine-works-better',
  'less-heat',
  'less-water',
  'heater-off',
  'less-other-use',
  'own-generation',
  'home-empty',
  'newly-occupied',
  'meter-wrong',
] as const;
export const LikelyCause = z.enum(LIKELY_CAUSES);
export type LikelyCause = z.infer<typeof LikelyCause>;

/** What readings may leave open: those, and what is always found by itself or not at all. */
export const OPEN_CAUSES = [...LIKELY_CAUSES, 'night-setback', 'dear-hours'] as const;
export const OpenCause = z.enum(OPEN_CAUSES);
export type OpenCause = z.infer<typeof OpenCause>;

export const AskCode = z.enum([
  'heater-switch',
  'water-times',
  'baths',
  'night-setting',
  'new-appliance',
  'vehicle',
  'tub-or-pool',
  'timer-changed',
  'tariff-changed',
  'more-people',
  'rooms-warmer',
  'rooms-added',
  'away',
  'settings-changed',
  'meter-exchanged',
  'panels',
  'plug-in-heaters',
  'heating-in-summer',
]);
export type AskCode = z.infer<typeof AskCode>;

export const FindingCheckCode = z.enum([
  'heater-hours',
  'heater-control',
  'water-setpoint',
  'pasteurisation-setting',
  'cylinder-loss',
  'heating-curve',
  'night-setting',
  'pump-always-on',
  'sub-meter',
  'timer',
  'meter-clock',
  'own-reading',
  'register-labels',
  'supplier-bill',
  'heat-made',
  'meter-test',
  'panel-meter',
  'pipes-warm',
]);
export type FindingCheckCode = z.infer<typeof FindingCheckCode>;

export const CautionCode = z.enum(['electrical', 'scalding', 'legionella', 'refrigerant']);
export type CautionCode = z.infer<typeof CautionCode>;

export const Finding = z.object({
  code: FindingCode,
  /** Meter on which it was seen. */
  meter: z.enum(['heat-pump', 'whole-house', 'bills']),
  from: CivilDate,
  /** Exclusive. */
  to: CivilDate,
  /** How likely it is what its name says, 0 to 1; never 1. */
  sure: z.number().min(0).max(1),
  /** How its energy is known: seen as it is on the meter, worked out, or a share taken from practice. */
  grade: Grade,
  /** What was seen, by name with the unit: { powerKW: 3, hours: 86 }. */
  seen: z.record(z.string(), z.union([z.number(), z.string()])),
  /** Causes that these readings cannot tell apart, one question together; the first of `check` is what tells them. */
  may: z.array(LikelyCause).optional(),
  /** In the days from `from` to `to`; less used is negative. */
  kWh: z.number(),
  pence: z.number(),
  /** If a whole year went like these days. */
  kWhYear: z.number(),
  penceYear: z.number(),
  ask: z.array(AskCode),
  check: z.array(FindingCheckCode),
  cautions: z.array(CautionCode),
});
export type Finding = z.infer<typeof Finding>;

/** No finding from readings alone is certain. */
const MOST_SURE = 0.97;

/** Keeps a likelihood between a coin's toss and what readings can ever show. */
export const sureOf = (value: number): number => Math.min(MOST_SURE, Math.max(0.5, value));

const YEAR_DAYS = 365;
/** What was seen in so many days [kWh], as a year [kWh]. */
export const yearOfDays = (kWh: number, days: number): number => (days > 0 ? (kWh * YEAR_DAYS) / days : 0);
