import { useMemo } from 'react';
import { ChartFigure } from '../../charts/figure.tsx';
import { ReadingsPicture } from '../../charts/readings/picture.tsx';
import { readingsSeries } from '../../charts/readings/series.ts';
import { readingsTable } from '../../charts/readings/table.ts';
import { isUse, type Series } from '../../model/shapes/evidence.ts';
import { recordWorking } from '../../words/explained/record.ts';
import { longDate, spokenCount, spokenKWh } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { sayTold } from '../../words/say-told.ts';
import { useHousehold } from '../household-context.tsx';
import { HowWeKnow } from '../shared/how-we-know.tsx';
import { lastDayOf } from './day-words.ts';
import { CARRIER_WORDS } from './series-words.ts';

/** The whole of a record, day by day. */
export function RecordFigure(props: { readonly series: Series; readonly savable?: boolean }) {
  const { series, savable = true } = props;
  const { evidence } = useHousehold();
  const readings = useMemo(() => readingsSeries(recordPoints(series), series.carrier), [series]);
  return (
    <ChartFigure
      name={say('{name}, day by day', { name: sayTold(series.name) })}
      sentence={recordSentence(series, readings.readings)}
      picture={<ReadingsPicture series={readings} size="desk" height={230} />}
      table={readingsTable(readings)}
      savable={savable}
      known={<HowWeKnow find={() => [recordWorking(series, evidence)]} about={sayTold(series.name)} plain />}
      note={series.periods ? say('kWh a day, each amount spread evenly over its days.') : say('kWh a day.')}
    />
  );
}

interface DayPoint {
  readonly at: string;
  readonly value: number | null;
}

const MS_PER_DAY = 86_400_000;
const dayOf = (ms: number): string => new Date(ms).toISOString().slice(0, 10);

function recordPoints(series: Series): DayPoint[] {
  if (series.days) {
    const first = Date.parse(series.days.first);
    return series.days.values.map((value, index) => ({ at: dayOf(first + index * MS_PER_DAY), value }));
  }
  const points: DayPoint[] = [];
  let at = Date.parse(series.from);
  for (const period of series.periods ?? []) {
    const from = Date.parse(period.from);
    const to = Date.parse(period.to);
    for (; at < from; at += MS_PER_DAY) points.push({ at: dayOf(at), value: null });
    const perDay = period.kWh / Math.max(1, Math.round((to - from) / MS_PER_DAY));
    for (; at < to; at += MS_PER_DAY) points.push({ at: dayOf(at), value: perDay });
  }
  return points;
}

/** "From 1 October 2025 to 30 September 2026 this home used 12 to 100 units of gas a day." */
function recordSentence(series: Series, days: readonly { readonly value: number | null }[]): string {
  const known = days.flatMap(({ value }) => (value === null ? [] : [value]));
  if (known.length === 0) return say('No day of this record could be shown.');
  const low = known.reduce((a, b) => Math.min(a, b));
  const high = known.reduce((a, b) => Math.max(a, b));
  const range =
    spokenCount(low) === spokenCount(high)
      ? spokenKWh(high)
      : say('{low} to {high}', { low: spokenCount(low), high: spokenKWh(high) });
  return say(
    'From {from} to {to} {who, select, pump {the heat pump} other {this home}} used {range} of {carrier} a day.',
    {
      from: longDate(series.from),
      to: longDate(lastDayOf(series.to)),
      who: series.role === 'heat-pump' ? 'pump' : 'home',
      range,
      carrier: say(CARRIER_WORDS[series.carrier]),
    },
  );
}

/** The longest fuel record, day by day or bill by bill; nothing while there is none. */
export function RecordPicture() {
  const { series } = useHousehold();
  const fuel = series.filter(isUse);
  const longest = [...fuel].sort((a, b) => b.total - a.total)[0];
  return longest ? <RecordFigure series={longest} /> : null;
}
