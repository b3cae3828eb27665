/** What drives it: the cost against each thing that somebody can settle, one at a time. */
import { useMemo } from 'react';
import { DriverPicture } from '../../charts/drivers/picture.tsx';
import { DRIVER_NAMES, driversSentence } from '../../charts/drivers/sentence.ts';
import { emitterRows, highestPence } from '../../charts/drivers/series.ts';
import { driverTable, emitterTable } from '../../charts/drivers/table.ts';
import { ChartFigure } from '../../charts/figure.tsx';
import { SpreadPicture } from '../../charts/spread/picture.tsx';
import type { Figure } from '../../model/shapes/appraisal.ts';
import type { WhatDrives } from '../../model/what-drives/what-drives.ts';
import {
  driverNote,
  driverValue,
  effectAmount,
  emitterName,
  emitterSentence,
  startsFromSentence,
} from '../../words/drivers.ts';
import { driverWorkings, emitterWorkings } from '../../words/explained/steps.ts';
import { say } from '../../words/say.ts';
import { useHousehold } from '../household-context.tsx';
import { HowWeKnow } from '../shared/how-we-know.tsx';
import { Spoken } from '../shared/spoken.tsx';
import { sayWhatIf } from './knobs.ts';
import { useDrives } from './use-drives.ts';
import type { WhatIfState } from './use-what-if.ts';

export function DriversSection({ followed, knobs }: Pick<WhatIfState, 'followed' | 'knobs'>) {
  const drives = useDrives(followed);
  return (
    <section aria-labelledby="what-drives" aria-busy={drives?.whatIf !== followed}>
      <h3 id="what-drives">{say('What drives it')}</h3>
      <p className="explain">{startsFromSentence(drives ? sayWhatIf(knobs, drives.whatIf) : '')}</p>
      {useMemo(() => (drives ? <DriverFigures drives={drives} /> : null), [drives])}
    </section>
  );
}

function DriverFigures({ drives }: { readonly drives: WhatDrives }) {
  const { openWorking } = useHousehold();
  const spoken = (sentence: string, effects: readonly Figure[]) => (
    <Spoken
      sentence={sentence}
      figures={effects.map((effect) => ({ text: effectAmount(effect), working: effect.working }))}
      onOpen={openWorking}
    />
  );
  const emitters = emitterSentence(drives);
  return (
    <div className="drivers">
      {drives.drivers.map((driver) => (
        <ChartFigure
          key={driver.name}
          name={say(DRIVER_NAMES[driver.name])}
          sentence={driversSentence(driver)}
          spoken={spoken(driversSentence(driver), driver.effects)}
          picture={<DriverPicture driver={driver} size="desk" highestPence={highestPence(drives)} />}
          table={driverTable(driver)}
          note={driverNote(driver)}
          known={
            <HowWeKnow
              find={() =>
                driverWorkings(driver, {
                  title: say(DRIVER_NAMES[driver.name]),
                  name: (at) => driverValue(driver.name, at),
                })
              }
              about={say(DRIVER_NAMES[driver.name])}
              plain
            />
          }
        />
      ))}
      <ChartFigure
        name={say(DRIVER_NAMES.emitters)}
        sentence={emitters}
        spoken={spoken(emitters, [drives.emittersApart])}
        picture={<SpreadPicture rows={emitterRows(drives.emitters)} size="desk" height={200} />}
        table={emitterTable(drives.emitters)}
        known={<HowWeKnow find={() => emitterWorkings(drives, emitterName)} about={say(DRIVER_NAMES.emitters)} plain />}
      />
    </div>
  );
}
