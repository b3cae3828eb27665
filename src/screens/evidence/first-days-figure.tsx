import { ChartFigure } from '../../charts/figure.tsx';
import { ReadingsPicture } from '../../charts/readings/picture.tsx';
import { readingsSentence } from '../../charts/readings/sentence.ts';
import { readingsSeries } from '../../charts/readings/series.ts';
import { readingsTable } from '../../charts/readings/table.ts';
import type { IntakePreview } from '../../intake/intake.ts';
import { isTemperature, type Series } from '../../model/shapes/evidence.ts';
import { say } from '../../words/say.ts';
import { RecordFigure } from './record-figure.tsx';

/** The first days of the file as a picture: a day that peaks at night says that the clock is wrong. */
export function FirstDaysFigure(props: { readonly preview: IntakePreview }) {
  const first = props.preview.series[0];
  // Water is no energy that a picture of kWh could show.
  if (!first || first.carrier === 'water' || props.preview.firstDays.length < 2) return null;
  // Bills differ in length and may leave holes, so they are shown by their days, as they will stand among the evidence.
  if (first.resolution === 'period') return <RecordFigure series={first} savable={false} />;
  const readings = readingsSeries(props.preview.firstDays, first.carrier);
  return (
    <ChartFigure
      name={say('The first days')}
      sentence={readingsSentence(readings)}
      picture={<ReadingsPicture series={readings} size="desk" height={220} />}
      table={readingsTable(readings)}
      note={noteOf(first)}
      savable={false}
    />
  );
}

/** Only what a home uses within the day tells by its hours whether the clock is right. */
function noteOf({ carrier, resolution }: Series): string {
  if (resolution !== 'interval') return say('One value a day.');
  return isTemperature(carrier)
    ? say('By local clock time.')
    : say('By local clock time. Does the home wake when it should?');
}
