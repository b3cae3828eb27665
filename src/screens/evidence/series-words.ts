import type { Carrier, Series } from '../../model/evidence/evidence.ts';
import type { Grade } from '../../model/working.ts';

export const CARRIER_WORDS: { readonly [carrier in Carrier]: string } = {
  electricity: 'electricity',
  gas: 'gas',
  oil: 'heating oil',
  lpg: 'LPG',
  heat: 'heat',
  'outdoor-temperature': 'outdoor temperature',
  'flow-temperature': 'flow temperature',
  'return-temperature': 'return temperature',
  'source-temperature': 'source temperature',
};

const ROLE_WORDS: { readonly [role in Series['role']]: string } = {
  import: '',
  export: ' sent out',
  'heat-pump': ' of the heat pump',
  'heat-output': ' given out',
  weather: '',
  machine: ' of the machine',
};

export function resolutionWords(series: Series): string {
  if (series.resolution === 'day') return 'by the day';
  if (series.resolution === 'interval') {
    return series.intervalMinutes === 60
      ? 'by the hour'
      : series.intervalMinutes === 30
        ? 'by the half-hour'
        : 'by the minute';
  }
  const count = series.periods?.length ?? series.present;
  const noun =
    series.carrier === 'oil' || series.carrier === 'lpg'
      ? ['delivery', 'deliveries']
      : ['bill or reading', 'bills or readings'];
  return `${count} ${count === 1 ? noun[0] : noun[1]}`;
}

/** "electricity sent out", "flow temperature of the machine". */
export const whatWords = ({ carrier, role }: Pick<Series, 'carrier' | 'role'>): string =>
  CARRIER_WORDS[carrier] + ROLE_WORDS[role];

export function seriesWords(series: Series): string {
  const what = whatWords(series);
  return `${what.charAt(0).toUpperCase()}${what.slice(1)}, ${resolutionWords(series)}`;
}

/** Readings are measured; a record of which more than half is estimated is estimated. */
export function gradeOfSeries(series: Series): Grade {
  return series.present > 0 && series.estimatedCount * 2 > series.present ? 'estimated' : 'measured';
}
