/** Tariffs as bars, the cheapest on top: all the electricity of the home in a year on each. */
import type { ReactNode } from 'react';
import { ChartFigure } from '../../charts/figure.tsx';
import type { PictureSize } from '../../charts/frame/size.ts';
import { SpreadPicture } from '../../charts/spread/picture.tsx';
import { tariffRows } from '../../charts/spread/series.ts';
import type { TariffChoice } from '../../model/shapes/tariff-choice.ts';
import { say } from '../../words/say.ts';
import { tariffCells, tariffHeads } from '../../words/tariff-choice.ts';
import { tariffHeadline } from '../../words/which-tariff.ts';

export const tariffBarsName = () => say('Which tariff');

export function TariffBars(props: {
  readonly choice: TariffChoice;
  readonly size: PictureSize;
  readonly height?: number;
  readonly known?: ReactNode;
  readonly note?: ReactNode;
  /** True at the table, where the page has said it and nothing is saved. */
  readonly atTable?: boolean;
}) {
  const { choice, size, known, note, atTable = false } = props;
  const { costs, inUse } = choice;
  const rows = tariffRows(choice);
  return (
    <ChartFigure
      name={tariffBarsName()}
      sentence={tariffHeadline(choice)}
      sentenceSaid={atTable}
      savable={!atTable}
      picture={<SpreadPicture rows={rows} size={size} height={props.height ?? 80 + 56 * rows.length} />}
      table={{
        caption: say('All electricity of the home in a year, heat pump included, on each tariff.'),
        columns: tariffHeads(choice).map((head, i) => (i === 0 ? { name: head } : { name: head, number: true })),
        rows: costs.map((cost) => ({ cells: [...tariffCells(cost, choice)], ours: cost.tariffId === inUse })),
      }}
      known={known}
      note={note}
    />
  );
}
