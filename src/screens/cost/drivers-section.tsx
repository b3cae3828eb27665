/** What drives it: the cost against each thing that somebody can settle, one at a time. */
import { useDeferredValue, useMemo } from 'react';
import { DriverPicture } from '../../charts/drivers/picture.tsx';
import { DRIVER_NAMES, driversSentence } from '../../charts/drivers/sentence.ts';
import { emitterRows, highestPence } from '../../charts/drivers/series.ts';
import { driverTable, emitterTable } from '../../charts/drivers/table.ts';
import { ChartFigure } from '../../charts/figure.tsx';
import { SpreadPicture } from '../../charts/spread/picture.tsx';
import { reckonWhatDrives } from '../../model/what-drives/what-drives.ts';
import { reference } from '../../reference/index.ts';
import { emitterSentence } from '../../words/drivers.ts';
import { useHousehold } from '../household-context.tsx';

export function DriversSection() {
  const { household, series, today } = useHousehold();
  // Some thirty years are reckoned, so what stands above is painted first.
  const settled = useDeferredValue(household, null);
  const drives = useMemo(
    () => settled && reckonWhatDrives({ household: settled, series, reference, asOf: today }),
    [settled, series, today],
  );
  return (
    <section aria-labelledby="what-drives">
      <h3 id="what-drives">What drives it</h3>
      <p className="explain">
        Each thing by itself, all else as it is. Steps are reckoned from this home, not from a rule of thumb.
      </p>
      {drives ? (
        <div className="drivers">
          {drives.drivers.map((driver) => (
            <ChartFigure
              key={driver.name}
              name={DRIVER_NAMES[driver.name]}
              sentence={driversSentence(driver)}
              picture={<DriverPicture driver={driver} size="desk" highestPence={highestPence(drives)} />}
              table={driverTable(driver)}
            />
          ))}
          <ChartFigure
            name={DRIVER_NAMES.emitters}
            sentence={emitterSentence(drives.emitters)}
            picture={<SpreadPicture rows={emitterRows(drives.emitters)} size="desk" height={200} />}
            table={emitterTable(drives.emitters)}
          />
        </div>
      ) : null}
    </section>
  );
}
