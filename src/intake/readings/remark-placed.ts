/** Says what did not fit while readings were put in their places: repeats, and stamps between the steps. */

import { localStamp } from '../../model/calendar/zone.ts';
import { tell } from '../../model/shapes/told.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import type { Placed } from './place-readings.ts';

/** @param rows lines of the file stand in `placed` @param inKWh whether values are energies rather than degrees */
export function remarkPlaced(placed: Placed, zone: string, inKWh: boolean, book: RemarkBook): void {
  const { sameAgain, different, offGrid, intervalMinutes } = placed;
  const where = (first: { readonly row: number; readonly at: number; readonly count: number }) => ({
    row: first.row,
    count: first.count,
    from: localStamp(zone, first.at * 60_000).replace('T', ' '),
  });
  if (sameAgain.count > 0) book.add('duplicate-same', 'note', where(sameAgain));
  if (different.count > 0)
    book.add('duplicate-different', 'note', {
      ...where(different),
      ...(inKWh ? { effectKWh: different.effect } : {}),
    });
  if (offGrid.count > 0)
    book.add('stamp-off-grid', 'note', {
      ...where(offGrid),
      expectedTold: tell('so-many-minutes', { minutes: intervalMinutes }),
    });
}
