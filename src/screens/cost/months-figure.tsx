import { ChartFigure } from '../../charts/figure.tsx';
import { MonthlyPicture } from '../../charts/monthly/picture.tsx';
import { MONTHLY_NAME, monthlySentence } from '../../charts/monthly/sentence.ts';
import { monthlySeries } from '../../charts/monthly/series.ts';
import { monthlyTable } from '../../charts/monthly/table.ts';
import type { Appraisal } from '../../model/appraisal/appraisal.ts';

export function MonthsFigure({ appraisal }: { readonly appraisal: Appraisal }) {
  const series = monthlySeries(appraisal);
  return (
    <section>
      <ChartFigure
        name={MONTHLY_NAME}
        sentence={monthlySentence(series)}
        picture={<MonthlyPicture series={series} size="desk" />}
        table={monthlyTable(series)}
      />
    </section>
  );
}
