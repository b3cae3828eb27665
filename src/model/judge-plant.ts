/** How readings at one household's plant are judged: with its own machine and with the coldest brine of its year. */
import { addDays } from './calendar/civil.ts';
import { heatOfHousehold } from './heat-of-household.ts';
import { designLoop } from './heat-pump/full/design-loop.ts';
import type { CivilDate } from './shapes/dates.ts';
import type { Series } from './shapes/evidence.ts';
import type { Household } from './shapes/household.ts';
import type { Reference } from './shapes/reference.ts';
import type { SiteVisit } from './shapes/site-readings.ts';
import { type BrineCourse, brineCourse } from './site-readings/brine-course.ts';
import { checkSite, type SiteCheck, type SiteTables } from './site-readings/check-site.ts';
import { ownMachine } from './site-readings/expected-cop.ts';
import { colderBrine, toJudge } from './site-readings/to-judge.ts';

export interface PlantJudge {
  /** Worked out from the ground; null where the machine draws on air, or nothing can be worked out. */
  readonly coldestBrineOutC: number | null;
  readonly judge: (visit: SiteVisit) => SiteCheck;
  /** Brine over all visits; where it falls, that is the one finding, and no visit is told of cold ground for itself. */
  readonly course: BrineCourse;
}

/** Frost is judged by the coldest brine known [°C]: typed, worked out, or read on any visit of the year before. */
export function judgePlant(
  given: {
    readonly household: Household;
    readonly series: readonly Series[];
    readonly reference: Reference;
    readonly asOf: CivilDate;
  },
  tables: SiteTables,
): PlantJudge {
  const { household, reference } = given;
  const design = household.machine.source === 'ground' ? designLoop(heatOfHousehold(given), tables.refrigerants) : null;
  const coldestBrineOutC = design?.result.ok ? design.result.loop.brineOutC : null;
  const own = ownMachine(household, reference);
  const course = brineCourse(household.siteReadings ?? [], tables.fluids);
  return {
    coldestBrineOutC,
    course,
    judge: ({ date, readings }) => {
      const from = addDays(date, -365);
      const read = (household.siteReadings ?? [])
        .filter((one) => one.date >= from && one.date <= date)
        .map((one) => colderBrine(one.readings))
        .filter((one) => one !== undefined);
      const known = [...(coldestBrineOutC === null ? [] : [coldestBrineOutC]), ...read];
      const check = checkSite(toJudge(readings, known.length > 0 ? Math.min(...known) : null), tables, own);
      return course.fall ? { ...check, causes: check.causes.filter(({ cause }) => cause !== 'ground-cold') } : check;
    },
  };
}
