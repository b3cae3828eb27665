import type { IntakePreview } from '../../intake/intake.ts';
import { isTemperature, type Series } from '../../model/evidence/evidence.ts';
import { degrees, listed, longDate, spokenKWh } from '../../words/numbers.ts';
import { lastDayOf } from './day-words.ts';
import { CARRIER_WORDS, resolutionWords, whatWords } from './series-words.ts';

/** One sentence that says what was understood, with the total, so that a wrong unit is heard at once. */
export function previewVoice(preview: IntakePreview): string {
  if (preview.series.length === 0) {
    if (preview.tariff) return `This is a tariff, “${preview.tariff.name}”, and no record of use.`;
    return 'We could not find readings or bills in this file.';
  }
  const [first] = preview.series;
  const alike = preview.series.every(
    ({ from, to, resolution }) => from === first!.from && to === first!.to && resolution === first!.resolution,
  );
  const said =
    alike && preview.series.length > 1 && first!.resolution !== 'period'
      ? `${amountsWords(preview.series)}, ${resolutionWords(first!)}, ${daysOf(first!)}`
      : listed(preview.series.map(describeSeries));
  return `${said.replace(/^./, (letter) => letter.toUpperCase())}.`;
}

const daysOf = ({ from, to }: Series): string => `${longDate(from)} to ${longDate(lastDayOf(to))}`;

const amountWords = (series: Series): string => `${spokenKWh(series.total)} of ${whatWords(series)}`;

/** Energies first, then the temperatures beside them. */
function amountsWords(series: readonly Series[]): string {
  const energies = series.filter(({ carrier }) => !isTemperature(carrier)).map(amountWords);
  const warmths = series
    .filter(({ carrier }) => isTemperature(carrier))
    .map(({ carrier, total }) => `${CARRIER_WORDS[carrier].replace(' temperature', '')} ${degrees(total)}`);
  const mean = warmths.length === 0 ? [] : [`on average ${listed(warmths)}`];
  return [...(energies.length === 0 ? [] : [listed(energies)]), ...mean].join(', ');
}

function describeSeries(series: Series): string {
  const days = daysOf(series);
  if (isTemperature(series.carrier)) {
    return `${CARRIER_WORDS[series.carrier]} ${resolutionWords(series)} from ${days}, ${degrees(series.total)} on average`;
  }
  const how = series.resolution === 'period' ? `in ${resolutionWords(series)}` : resolutionWords(series);
  return `${amountWords(series)} ${how}, ${days}`;
}
