import { useMemo } from 'react';
import { ChartFigure } from '../../charts/figure.tsx';
import { ReadingsPicture } from '../../charts/readings/picture.tsx';
import { readingsSeries } from '../../charts/readings/series.ts';
import { readingsTable } from '../../charts/readings/table.ts';
import type { Series } from '../../model/shapes/evidence.ts';
import { recordWorking } from '../../words/explained/record.ts';
import { say } from '../../words/say.ts';
import { sayTold } from '../../words/say-told.ts';
import { useHousehold } from '../household-context.tsx';
import { HowWeKnow } from '../shared/how-we-know.tsx';
import { recordPoints } from './record-points.ts';
import { recordSentence } from './record-sentence.ts';

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
      note={series.periods ? say('kWh a day, each bill spread evenly over its days.') : say('kWh a day.')}
    />
  );
}
