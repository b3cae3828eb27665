import { CARRIERS, type Carrier, isTemperature, type Series } from '../../model/shapes/evidence.ts';
import { isDelivered } from '../../model/shapes/heating.ts';
import type { Grade } from '../../model/shapes/working.ts';
import { capitalised, degrees, exactKWh, grouped, spokenKWh } from '../../words/numbers.ts';
import { phrase, say } from '../../words/say.ts';
import { carrierInFull } from '../../words/systems.ts';

/** In English, named in full as among files and meters: "heating oil". */
export const CARRIER_WORDS = Object.fromEntries(CARRIERS.map((carrier) => [carrier, carrierInFull(carrier)])) as {
  readonly [carrier in Carrier]: string;
};

const ROLE_WORDS: { readonly [role in Series['role']]: string } = {
  import: '{carrier}',
  export: phrase('{carrier} sent out'),
  generation: phrase('{carrier} made at the home'),
  'heat-pump': phrase('{carrier} of the heat pump'),
  'heat-output': phrase('{carrier} given out'),
  weather: '{carrier}',
  machine: phrase('{carrier} of the machine'),
};

export function resolutionWords(series: Series): string {
  if (series.resolution === 'day') return say('by the day');
  if (series.resolution === 'interval') {
    return series.intervalMinutes === 60
      ? say('by the hour')
      : series.intervalMinutes === 30
        ? say('by the half-hour')
        : say('by the minute');
  }
  const count = series.periods?.length ?? series.present;
  return isDelivered(series.carrier)
    ? say('{count, plural, one {# delivery} other {# deliveries}}', { count })
    : say('{count, plural, one {# bill or reading} other {# bills or readings}}', { count });
}

/** "electricity sent out", "flow temperature of the machine". */
export const whatWords = ({ carrier, role }: Pick<Series, 'carrier' | 'role'>): string =>
  say(ROLE_WORDS[role], { carrier: say(CARRIER_WORDS[carrier]) });

export function seriesWords(series: Series): string {
  return `${capitalised(whatWords(series))}, ${resolutionWords(series)}`;
}

/** All that a record tells: water by its volume, degrees on the mean. */
export function amountOfSeries({ carrier, total }: Series, isSpoken = false): string {
  if (isTemperature(carrier)) return degrees(total);
  if (carrier === 'water') return `${grouped(total, 1)} m³`;
  return isSpoken ? spokenKWh(total) : exactKWh(total);
}

/** Readings are measured; a record of which more than half is estimated is estimated. */
export function gradeOfSeries(series: Series): Grade {
  return series.present > 0 && series.estimatedCount * 2 > series.present ? 'estimated' : 'measured';
}
