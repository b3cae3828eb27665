import { isUse } from '../../model/shapes/evidence.ts';
import { useHousehold } from '../household-context.tsx';
import { RecordFigure } from './record-figure.tsx';

/** The longest fuel record, day by day or bill by bill; nothing while there is none. */
export function RecordPicture() {
  const { series } = useHousehold();
  const fuel = series.filter(isUse);
  const longest = [...fuel].sort((a, b) => b.total - a.total)[0];
  return longest ? <RecordFigure series={longest} /> : null;
}
