import { ChartFigure } from '../../charts/figure.tsx';
import { MonthPartsPicture } from '../../charts/month-parts/picture.tsx';
import { monthPartsName, monthPartsSentence } from '../../charts/month-parts/sentence.ts';
import { heatParts } from '../../charts/month-parts/series.ts';
import { monthPartsTable } from '../../charts/month-parts/table.ts';
import { heatByMonth } from '../../words/explained/months.ts';
import { useHousehold } from '../household-context.tsx';
import { HowWeKnow } from '../shared/how-we-know.tsx';

export function MonthsFigure() {
  const { appraisal } = useHousehold();
  const parts = heatParts(appraisal);
  return (
    <section>
      <ChartFigure
        name={monthPartsName('heat')}
        sentence={monthPartsSentence(parts)}
        picture={<MonthPartsPicture parts={parts} size="desk" />}
        table={monthPartsTable(parts)}
        known={<HowWeKnow find={() => [heatByMonth(appraisal.demand)]} about={monthPartsName('heat')} plain />}
      />
    </section>
  );
}
