import { ChartFigure } from '../../charts/figure.tsx';
import { MonthlyPicture } from '../../charts/monthly/picture.tsx';
import { monthlyName, monthlySentence } from '../../charts/monthly/sentence.ts';
import { monthlySeries } from '../../charts/monthly/series.ts';
import { monthlyTable } from '../../charts/monthly/table.ts';
import { findSideBySide } from '../../model/comparison/beside.ts';
import type { Appraisal } from '../../model/shapes/appraisal.ts';
import { paymentSentence, yearToYearSentence } from '../../words/cost.ts';
import { costByMonth } from '../../words/explained/months.ts';
import { inWords, sayTold } from '../../words/say-told.ts';
import { HowWeKnow } from '../shared/how-we-know.tsx';
import { costWorking } from '../shared/name-working.ts';

export function MonthsFigure({ appraisal }: { readonly appraisal: Appraisal }) {
  const series = monthlySeries(appraisal);
  const { pump, beside } = findSideBySide(appraisal);
  const find = () => [
    ...[pump, ...(beside ? [beside] : [])].map((system) =>
      costByMonth(system, inWords('By the month. {title}', { title: sayTold(costWorking(system).title) })),
    ),
    costWorking(pump),
  ];
  return (
    <section>
      <ChartFigure
        name={monthlyName()}
        sentence={monthlySentence(series)}
        picture={<MonthlyPicture series={series} size="desk" />}
        table={monthlyTable(series)}
        known={<HowWeKnow find={find} about={monthlyName()} plain />}
        note={`${yearToYearSentence(pump)} ${paymentSentence(pump)}`.trim()}
      />
    </section>
  );
}
