/** What was handed over: keep what stands now, and print what was kept. */

import { useState } from 'react';
import { civilDateOf } from '../../model/calendar/instant.ts';
import { findSideBySide } from '../../model/comparison/beside.ts';
import { writtenEstimateWorking } from '../../words/explained/estimate-workings.ts';
import { longDate, spokenPounds } from '../../words/numbers.ts';
import { inMoneyOf, say } from '../../words/say.ts';
import { homesSentence } from '../../words/sure.ts';
import { estimateInForce } from '../check/bills.ts';
import { useHousehold } from '../household-context.tsx';
import { StageHead } from '../shared/stage-head.tsx';
import { EstimateRow } from './estimate-row.tsx';
import { KeepForm } from './keep-form.tsx';
import { OffersTable } from './offers-table.tsx';
import './estimate.css';

/** So many of the newest written estimates stand open; the form for the next one must not lie below years of them. */
const IN_SIGHT = 3;

export function EstimateStage() {
  const [olderOpen, setOlderOpen] = useState(false);
  const { household, estimates, appraisal } = useHousehold();
  const kept = estimates.toSorted((a, b) => b.number - a.number);
  // The one that the household took speaks for all, else the newest.
  const newest = kept.length > 0 ? estimateInForce(kept, household) : undefined;
  const spokenThen = (pence: number) => inMoneyOf(newest ?? {}, () => spokenPounds(pence));
  const { pump } = findSideBySide(appraisal);
  const cost = spokenPounds(pump.cost.value);
  return (
    <>
      <StageHead
        sentence={
          newest
            ? say('Our estimate of {date} is about {amount} a year.', {
                amount: spokenThen(newest.heatPumpPence),
                date: longDate(civilDateOf(newest.madeOn, household.zone)),
              })
            : say('There is no written estimate yet. It would say about {cost} a year.', { cost })
        }
        figures={[
          newest
            ? { text: spokenThen(newest.heatPumpPence), working: writtenEstimateWorking(newest) }
            : { text: cost, working: pump.cost.working },
        ]}
      >
        {newest
          ? inMoneyOf(newest, () => homesSentence(newest.lowPence, newest.highPence))
          : say(
              'The written estimate stores every figure with its date and its sums. Later you can compare a bill with it.',
            )}
      </StageHead>
      {kept.length > 0 ? (
        <section aria-labelledby="kept-head">
          <h3 id="kept-head" className="unseen">
            {say('Saved estimates')}
          </h3>
          <ol className="estimates">
            {kept.slice(0, IN_SIGHT).map((summary) => (
              <EstimateRow key={summary.id} summary={summary} newest={summary === newest} />
            ))}
          </ol>
          {kept.length > IN_SIGHT ? (
            <details className="older" onToggle={(event) => setOlderOpen(event.currentTarget.open)}>
              <summary>
                {say('{count, plural, one {# older estimate} other {# older estimates}}', {
                  count: kept.length - IN_SIGHT,
                })}
              </summary>
              <ol className="estimates">
                {olderOpen
                  ? kept
                      .slice(IN_SIGHT)
                      .map((summary) => <EstimateRow key={summary.id} summary={summary} newest={false} />)
                  : null}
              </ol>
            </details>
          ) : null}
        </section>
      ) : null}
      <OffersTable />
      <KeepForm />
    </>
  );
}
