import { ChartFigure } from '../../charts/figure.tsx';
import { HeatMonthsPicture } from '../../charts/heat-months/picture.tsx';
import { HEAT_MONTHS_NAME, heatMonthsSentence } from '../../charts/heat-months/sentence.ts';
import { heatMonthsTable } from '../../charts/heat-months/table.ts';
import { useHousehold } from '../household-context.tsx';

export function MonthsFigure() {
  const { demand } = useHousehold().appraisal;
  const months = { spaceKWh: demand.monthlySpaceKWh, waterKWh: demand.monthlyWaterKWh };
  return (
    <section>
      <ChartFigure
        name={HEAT_MONTHS_NAME}
        sentence={heatMonthsSentence(months)}
        picture={<HeatMonthsPicture months={months} size="desk" />}
        table={heatMonthsTable(months)}
      />
    </section>
  );
}
