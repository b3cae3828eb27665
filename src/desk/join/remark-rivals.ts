/** Asks about records of one kind that tell of the same days and do not agree. */
import { findRivals } from '../../model/evidence/rivals.ts';
import { type Evidence, isTemperature, type Remark, type Series } from '../../model/shapes/evidence.ts';
import { tell } from '../../model/shapes/told.ts';

/**
 * @param series joined over all imports @param evidence the imports, the last of which is on its way in
 * @param isOwn whether a record belongs to those that are asked about
 */
export function remarkRivals(
  series: readonly Series[],
  evidence: readonly Evidence[],
  isOwn: (series: Series) => boolean,
): Remark[] {
  const fileOf = ({ id }: Series) => evidence.find((one) => one.series.some((own) => own.id === id))?.fileName ?? '';
  return findRivals(series).flatMap(({ one, other, days, apart }): Remark[] => {
    if (!isOwn(one) && !isOwn(other)) return [];
    const [own, beside] = isOwn(other) ? [other, one] : [one, other];
    const file = fileOf(beside);
    // What a bill is about has no name but its kind of energy.
    const isNamed = (which: Series) => which.name !== which.carrier;
    const isWeather = isTemperature(own.carrier);
    return [
      {
        code: isWeather ? 'records-weather-asked' : 'records-asked',
        weight: 'question',
        file: fileOf(own),
        ...(isNamed(own) ? { column: own.name } : { carrier: own.carrier }),
        found: file === fileOf(own) ? beside.name : isNamed(beside) ? `${file}, ${beside.name}` : file,
        count: days,
        ...(isWeather
          ? { expectedTold: tell('figure', { figure: Math.round((10 * apart) / days) / 10 }) }
          : { effectKWh: apart }),
      },
    ];
  });
}
