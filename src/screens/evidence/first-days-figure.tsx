import { ChartFigure } from '../../charts/figure.tsx';
import { ReadingsPicture } from '../../charts/readings/picture.tsx';
import { readingsSentence } from '../../charts/readings/sentence.ts';
import { readingsSeries } from '../../charts/readings/series.ts';
import { readingsTable } from '../../charts/readings/table.ts';
import type { IntakePreview } from '../../intake/intake.ts';

/** The first days of the file as a picture: a day that peaks at night says that the clock is wrong. */
export function FirstDaysFigure(props: { readonly preview: IntakePreview }) {
  const first = props.preview.series[0];
  if (!first || props.preview.firstDays.length < 2) return null;
  const isPeriods = first.resolution === 'period';
  const readings = readingsSeries(props.preview.firstDays, first.carrier);
  return (
    <ChartFigure
      name={isPeriods ? 'The bills' : 'The first days'}
      sentence={readingsSentence(readings)}
      picture={<ReadingsPicture series={readings} size="desk" height={220} />}
      table={readingsTable(readings)}
      note={isPeriods ? 'One step for each bill.' : 'By local clock time. Does the home wake when it should?'}
      savable={false}
    />
  );
}
