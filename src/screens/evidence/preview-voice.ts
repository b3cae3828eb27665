import type { IntakePreview } from '../../intake/intake.ts';
import { isTemperature } from '../../model/evidence/evidence.ts';
import { degrees, listed, longDate, spokenKWh } from '../../words/numbers.ts';
import { lastDayOf } from './day-words.ts';
import { CARRIER_WORDS, resolutionWords } from './series-words.ts';

/** One sentence that says what was understood, with the total, so that a wrong unit is heard at once. */
export function previewVoice(preview: IntakePreview): string {
  if (preview.series.length === 0) {
    if (preview.tariff) return `This is a tariff, “${preview.tariff.name}”, and no record of use.`;
    return 'We could not find readings or bills in this file.';
  }
  return `${listed(preview.series.map(describeSeries)).replace(/^./, (first) => first.toUpperCase())}.`;
}

function describeSeries(series: IntakePreview['series'][number]): string {
  const days = `${longDate(series.from)} to ${longDate(lastDayOf(series.to))}`;
  if (isTemperature(series.carrier)) {
    return `${CARRIER_WORDS[series.carrier]} ${resolutionWords(series)} from ${days}, ${degrees(series.total)} on average`;
  }
  const how = series.resolution === 'period' ? `in ${resolutionWords(series)}` : resolutionWords(series);
  return `${spokenKWh(series.total)} of ${CARRIER_WORDS[series.carrier]} ${how}, ${days}`;
}
