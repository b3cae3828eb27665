/** What was handed over: keep what stands now, and print what was kept. */

import { findSideBySide } from '../../model/appraisal/beside.ts';
import { civilDateOf } from '../../model/calendar/instant.ts';
import { promiseWorking } from '../../model/explained/promise.ts';
import { longDate, spokenPounds } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { useHousehold } from '../household-context.tsx';
import { StageHead } from '../shared/stage-head.tsx';
import { KeepForm } from './keep-form.tsx';
import { PromiseRow } from './promise-row.tsx';
import './promise.css';

export function PromiseStage() {
  const { household, promises, appraisal } = useHousehold();
  const kept = promises.toSorted((a, b) => b.number - a.number);
  const newest = kept[0];
  const { pump } = findSideBySide(appraisal);
  const cost = spokenPounds(pump.cost.value);
  return (
    <>
      <StageHead
        sentence={
          newest
            ? say('We promised about {amount} a year on {date}.', {
                amount: spokenPounds(newest.heatPumpPence),
                date: longDate(civilDateOf(newest.madeOn, household.zone)),
              })
            : say('Nothing is promised yet. It would be about {cost} a year.', { cost })
        }
        figures={[
          newest
            ? { text: spokenPounds(newest.heatPumpPence), working: promiseWorking(newest) }
            : { text: cost, working: pump.cost.working },
        ]}
      >
        {newest
          ? say('In 8 years out of 10 it should lie between {low} and {high}.', {
              low: spokenPounds(newest.lowPence),
              high: spokenPounds(newest.highPence),
            })
          : say(
              'A promise keeps every figure with its date and its sums, so that a later bill can be held against it.',
            )}
      </StageHead>
      {kept.length > 0 ? (
        <section aria-labelledby="kept-head">
          <h3 id="kept-head" className="unseen">
            {say('Kept promises')}
          </h3>
          <ol className="promises">
            {kept.map((summary) => (
              <PromiseRow key={summary.id} summary={summary} newest={summary === newest} />
            ))}
          </ol>
        </section>
      ) : null}
      <KeepForm />
    </>
  );
}
