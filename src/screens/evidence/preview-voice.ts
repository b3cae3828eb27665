import type { IntakePreview, PaperReading } from '../../intake/intake.ts';
import { isTemperature, type Series } from '../../model/shapes/evidence.ts';
import { capitalised, degrees, exactKWh, listed } from '../../words/numbers.ts';
import { phrase, say } from '../../words/say.ts';
import { daysWords } from './day-words.ts';
import { amountOfSeries, CARRIER_WORDS, resolutionWords, whatWords } from './series-words.ts';

/** Whether nothing was read while something is asked that may be why, such as a wrong unit. */
export const mayBeAnswered = ({ remarks, paper }: IntakePreview): boolean =>
  paper === undefined &&
  remarks.some(({ weight }) => weight === 'question') &&
  remarks.every(({ code, weight }) => weight !== 'refusal' || code === 'no-readable-rows');

/** One sentence that says what was understood, with the total, so that a wrong unit is heard at once. */
export function previewVoice(preview: IntakePreview): string {
  if (preview.series.length === 0) {
    if (preview.tariff) return say('This is a tariff, “{name}”, and no record of use.', { name: preview.tariff.name });
    if (mayBeAnswered(preview)) return say('An answer is still missing to read this file.');
    if (preview.remarks.some(({ weight }) => weight === 'refusal')) return say('This file cannot be used as it is.');
    if (preview.paper) return say('A bill on paper. An answer is still missing.');
    return say('We could not find readings or bills in this file.');
  }
  if (preview.paper) return `${capitalised(paperWords(preview.series, preview.paper))}.`;
  const [first] = preview.series;
  const alike = preview.series.every(
    ({ from, to, resolution }) => from === first!.from && to === first!.to && resolution === first!.resolution,
  );
  const withDegrees = preview.series.some(({ carrier }) => isTemperature(carrier));
  const said =
    alike && preview.series.length > 1 && (first!.resolution !== 'period' || withDegrees)
      ? `${amountsWords(preview.series)}, ${resolutionWords(first!)}, ${daysWords(first!)}`
      : listed(preview.series.map(describeSeries));
  return `${capitalised(said)}.`;
}

/** Of a bill to the unit, with its total as printed; days that all fuels share are said once. */
function paperWords(series: readonly Series[], { values }: PaperReading): string {
  const amounts = series.map((one) => {
    const totals = values.filter(({ kind, fuel }) => kind === 'total' && fuel === one.carrier);
    const parts = { amount: exactKWh(one.total), what: whatWords(one), total: totals[0]?.text ?? '' };
    return totals.length === 1 ? say('{amount} of {what} for {total}', parts) : say('{amount} of {what}', parts);
  });
  const days = [...new Set(series.map(daysWords))];
  return days.length === 1
    ? `${listed(amounts)}, ${days[0]}`
    : listed(amounts.map((amount, i) => `${amount}, ${daysWords(series[i]!)}`));
}

const amountWords = (series: Series): string =>
  say('{amount} of {what}', { amount: amountOfSeries(series, true), what: whatWords(series) });

const MEANS = phrase('{of, select, outdoor {outdoor} flow {flow} return {return} other {source}} {mean}');

/** Energies first, then the temperatures beside them. */
function amountsWords(series: readonly Series[]): string {
  const energies = series.filter(({ carrier }) => !isTemperature(carrier)).map(amountWords);
  const warmths = series
    .filter(({ carrier }) => isTemperature(carrier))
    .map(({ carrier, total }) => say(MEANS, { of: carrier.replace('-temperature', ''), mean: degrees(total) }));
  const mean = warmths.length === 0 ? [] : [say('on average {means}', { means: listed(warmths) })];
  return [...(energies.length === 0 ? [] : [listed(energies)]), ...mean].join(', ');
}

function describeSeries(series: Series): string {
  const days = daysWords(series);
  if (isTemperature(series.carrier)) {
    return say('{carrier} {how} from {days}, {mean} on average', {
      carrier: say(CARRIER_WORDS[series.carrier]),
      how: resolutionWords(series),
      days,
      mean: degrees(series.total),
    });
  }
  const parts = { amount: amountWords(series), how: resolutionWords(series), days };
  return series.resolution === 'period'
    ? say('{amount} in {how}, {days}', parts)
    : say('{amount} {how}, {days}', parts);
}
