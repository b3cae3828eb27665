import { ChartFigure } from '../../charts/figure.tsx';
import { SpreadPicture } from '../../charts/spread/picture.tsx';
import { spreadName, spreadSentence } from '../../charts/spread/sentence.ts';
import { spreadSeries } from '../../charts/spread/series.ts';
import { spreadTable } from '../../charts/spread/table.ts';
import { pickForPicture } from '../../model/comparison/beside.ts';
import type { OpenDesk } from '../household-context.tsx';
import { HowWeKnow } from '../shared/how-we-know.tsx';
import { costWorking } from '../shared/name-working.ts';

/** Five in one picture; the table below holds every way of heating. */
const MOST_ROWS = 5;

export function SpreadFigure({ appraisal, household }: Pick<OpenDesk, 'appraisal' | 'household'>) {
  const rows = spreadSeries({ ...appraisal, systems: pickForPicture(appraisal, household, MOST_ROWS) });
  return (
    <ChartFigure
      name={spreadName()}
      sentence={spreadSentence(rows)}
      sentenceSaid
      picture={<SpreadPicture rows={rows} size="desk" height={44 + 64 * rows.length} />}
      table={spreadTable(spreadSeries(appraisal))}
      known={<HowWeKnow find={() => appraisal.systems.map(costWorking)} about={spreadName()} plain />}
    />
  );
}
