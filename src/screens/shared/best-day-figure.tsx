/** The day as people see it: price, when the heat pump runs, how warm the rooms stay; nothing where no hours can be moved. */
import { BestDayPicture } from '../../charts/best-day/picture.tsx';
import { bestDayName, bestDaySentence } from '../../charts/best-day/sentence.ts';
import { bestDaySeries } from '../../charts/best-day/series.ts';
import { bestDayTable } from '../../charts/best-day/table.ts';
import { ChartFigure } from '../../charts/figure.tsx';
import type { PictureSize } from '../../charts/frame/size.ts';
import type { TariffChoice } from '../../model/shapes/tariff-choice.ts';

export function BestDayFigure(props: {
  readonly choice: TariffChoice;
  readonly size: PictureSize;
  readonly height?: number;
  /** True at the table, where nothing is saved. */
  readonly atTable?: boolean;
}) {
  const { choice, size, height, atTable = false } = props;
  const series = bestDaySeries(choice);
  if (!series) return null;
  return (
    <ChartFigure
      name={bestDayName()}
      sentence={bestDaySentence(series)}
      sentenceSaid={atTable}
      savable={!atTable}
      picture={<BestDayPicture series={series} size={size} {...(height === undefined ? {} : { height })} />}
      table={bestDayTable(series)}
    />
  );
}
