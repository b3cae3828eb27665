/** Accounts for every record of a household: what the comparison uses it for, or why it does not. */

import { toDayNumber } from '../calendar/civil.ts';
import { besideHeatPump } from '../evidence/beside-heat-pump.ts';
import { seriesByMeter } from '../evidence/register-hours.ts';
import { splitMeter } from '../evidence/sum-registers.ts';
import type { Appraisal } from '../shapes/appraisal.ts';
import { type Evidence, type FileAccount, isTemperature, type RecordUse, type Series } from '../shapes/evidence.ts';
import { carrierOf, isFuel } from '../shapes/heating.ts';
import type { Household } from '../shapes/household.ts';
import { restsOnRecord } from './choose.ts';
import { findRecord } from './record.ts';

/**
 * @param imports files as they were imported @param joined their records as the comparison takes them
 * @param appraisal of this household, which says what came of the record and its weather
 */
export function accountFiles(
  { present, taken }: Household,
  imports: readonly Evidence[],
  joined: readonly Series[],
  appraisal: Pick<Appraisal, 'demand' | 'climate' | 'questions'>,
): FileAccount[] {
  const record = findRecord(present.system, joined);
  const unused = whyUnused(appraisal.demand);
  const followsCold = appraisal.questions.some(({ code }) => code === 'electricity-in-the-cold');
  const beside = besideHeatPump(joined, taken?.on);
  const registers = seriesByMeter(joined).flatMap((ofMeter) => splitMeter(ofMeter).added);
  return imports.map(({ fileName, columns, series }) => ({
    fileName,
    ...(columns ? { columns } : {}),
    records: series.map((one) => ({ name: one.name, ...purposeOf(one) })),
  }));

  function purposeOf(series: Series): { use: RecordUse; days?: number } {
    const { id, carrier, role, beside } = series;
    if (beside === 'added' && !joined.some((one) => one.carrier === carrier && one.role === role))
      return { use: 'added-alone' };
    if (beside !== undefined) return { use: beside };
    if (role === 'export') return { use: 'sent-out' };
    if (role === 'generation') return { use: 'made-here' };
    if (carrier === 'water') return { use: 'water' };
    if (carrier === 'outdoor-temperature') return { use: isOfUse(series) ? 'weather' : 'weather-aside' };
    if (isTemperature(carrier)) return { use: 'machine' };
    const whole = joined.find((one) => one.id === id);
    if (!whole) return { use: 'joined' };
    const days = record?.daysOf?.get(id);
    if (days !== undefined && days > 0)
      return unused ? { use: unused } : { use: isSame(whole, series) ? 'heat' : 'heat-joined', days };
    if (days !== undefined) return { use: 'covered' };
    const isOfRecord = record?.carrier === carrier && record.series[0]?.role === role;
    if (isOfRecord && registers.some((one) => one.id === id)) return { use: unused ?? 'heat-register' };
    if (isOfRecord) return { use: 'covered' };
    const isRest = carrier === 'electricity' && role === 'import' && isFuel(carrierOf(present.system));
    return { use: isRest ? restUse(whole) : 'other-way' };
  }

  /** How far a record of bought electricity tells of other use than a heat pump's. */
  function restUse({ id, evidenceId }: Series): RecordUse {
    if (followsCold) return 'rises-with-cold';
    if (!beside.isCut) return 'rest-of-home';
    // Registers of one meter are told under the first of them.
    const left = beside.imports.filter((one) => one.id === id || one.evidenceId === evidenceId);
    const isKnown = left.some(
      ({ days, periods = [] }) => periods.length > 0 || days?.values.some((kWh) => kWh !== null),
    );
    return isKnown ? 'rest-in-part' : 'holds-heat-pump';
  }

  /** Whether its days are those of the record, and there were enough of them to be taken. */
  function isOfUse({ days, from, to }: Series): boolean {
    const [first, end] = [toDayNumber(from), toDayNumber(to)];
    const meets = record?.spans.some((span) => span.first < end && span.first + span.days > first) ?? false;
    return days !== undefined && meets && appraisal.climate.recordWeather === 'own';
  }
}

/** Whether nothing was joined to it, so that its days are its own. */
const isSame = (whole: Series, { from, to, total }: Series): boolean =>
  whole.from === from && whole.to === to && Math.abs(whole.total - total) < 1e-6;

/** Why the record of what heats the home is not in the heat needed; undefined where it is. */
function whyUnused(demand: Appraisal['demand']): RecordUse | undefined {
  if (restsOnRecord(demand)) return undefined;
  return demand.missing.some(({ way }) => way === 'record') ? 'too-short' : 'other-figure';
}
