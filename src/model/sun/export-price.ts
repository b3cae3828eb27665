/** What is paid for electricity that a roof sends out. */
import type { Roof } from '../shapes/choices.ts';
import type { CivilDate } from '../shapes/dates.ts';
import type { Given } from '../shapes/given.ts';
import type { FeedInLaw, SunFacts } from '../shapes/reference.ts';

const MONTHS_PER_HALF_YEAR = 6;

/**
 * Pence (cents) for a kWh sent out: as typed; else the country's mean, assumed; else by law for the day on which the panels
 * first run, today where nobody has said it. Null where no rule is known for that day or size: then it is to be asked.
 */
export function exportPrice(roof: Roof, sun: SunFacts, asOf: CivilDate): Given<number> | null {
  if (roof.exportPencePerKWh) return roof.exportPencePerKWh;
  const { exportPay } = sun;
  if ('value' in exportPay) return { value: exportPay.value, grade: 'assumed', origin: exportPay.source };
  const kWp = roof.panels.reduce((sum, panels) => sum + panels.kWp, 0);
  const value = centsByLaw(exportPay, kWp, roof.exportedOn ?? asOf);
  return value === null ? null : { value, grade: roof.exportedOn ? 'estimated' : 'assumed', origin: exportPay.source };
}

/** Cents for a kWh of surplus: each size's rate, falling by the half-year and rounded to 0.01, less the deduction; mixed by the share of each. */
function centsByLaw(law: FeedInLaw, kWp: number, on: CivilDate): number | null {
  if (on < law.from || on > law.until || kWp > law.largeKWp) return null;
  const [year, month] = law.countsFrom.split('-').map(Number) as [number, number];
  const months = (Number(on.slice(0, 4)) - year) * 12 + Number(on.slice(5, 7)) - month;
  const halfYears = months < 0 ? 0 : 1 + Math.floor(months / MONTHS_PER_HALF_YEAR);
  const rate = (cents: number) => Math.round(cents * law.keptPerHalfYear ** halfYears * 100) / 100 - law.lessCents;
  const smallShare = Math.min(kWp, law.smallKWp) / kWp;
  return smallShare * rate(law.smallCents) + (1 - smallShare) * rate(law.largeCents);
}
