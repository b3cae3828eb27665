import { useState } from 'react';
import { Said } from '../../charts/said.tsx';
import type { EstimateSummary, Input } from '../../desk/contract.ts';
import { civilDateOf } from '../../model/calendar/instant.ts';
import { takeInHand } from '../../model/offers.ts';
import { rangedCostWorking } from '../../words/explained/ranged.ts';
import { longDate, poundsRange, spokenPounds } from '../../words/numbers.ts';
import { inMoneyOf, phrase, say } from '../../words/say.ts';
import { call, saveFile } from '../desk.ts';
import { useHousehold } from '../household-context.tsx';
import { HowWeKnow } from '../shared/how-we-know.tsx';
import { Refused } from '../shared/refused.tsx';
import { describeFailure } from '../state/describe-failure.ts';
import { sayChanges, sinceWorkings } from './since-made.ts';
import { useEstimate } from './use-estimate.ts';

type Print = Pick<Input<'estimate.print'>, 'document' | 'format'>;
const PAPERS: readonly (readonly [Print, string])[] = [
  [{ document: 'paper', format: 'pdf' }, phrase('Paper for the household')],
  [{ document: 'working', format: 'pdf' }, phrase('Working, every sum')],
];
const OTHER_FORMS: readonly (readonly [Print, string])[] = [
  [{ document: 'paper', format: 'html' }, phrase('Paper as a page')],
  [{ document: 'working', format: 'html' }, phrase('Working as a page')],
  [{ document: 'paper', format: 'csv' }, phrase('Figures as CSV')],
];

/** The estimate that the household took, with its date; one of them at most. */
function Taken({ summary }: { readonly summary: EstimateSummary }) {
  const { household, today, change } = useHousehold();
  const { taken } = household;
  if (taken?.estimateId === summary.id)
    return (
      <p className="taken">
        {say('accepted on {date}', { date: longDate(taken.on) })}{' '}
        <button type="button" className="plain" onClick={() => change(({ taken: _, ...before }) => before)}>
          {say('Undo')}
        </button>
      </p>
    );
  return (
    <button
      type="button"
      className="plain"
      onClick={() =>
        change((before) => ({
          ...(summary.offer ? takeInHand(before, summary.offer.id) : before),
          taken: { estimateId: summary.id, on: today },
        }))
      }
    >
      {say('Mark as accepted by the household')}
    </button>
  );
}

/** One kept written estimate: what it says, what has moved since, and its papers. */
export function EstimateRow(props: { readonly summary: EstimateSummary; readonly newest: boolean }) {
  const { summary, newest } = props;
  const { household, appraisal, series, tell, openWorking } = useHousehold();
  const read = useEstimate(summary.id);
  const [busy, setBusy] = useState<Print | null>(null);
  const [failure, setFailure] = useState<string | null>(null);

  const print = async (what: Print) => {
    setBusy(what);
    setFailure(null);
    try {
      const file = await call('estimate.print', { estimateId: summary.id, ...what });
      if (await saveFile(file)) tell(say('{fileName} is saved.', { fileName: file.fileName }));
    } catch (reason) {
      setFailure(describeFailure(reason));
    } finally {
      setBusy(null);
    }
  };

  const ofThis = say(', estimate no. {number}', { number: String(summary.number) });
  const button = ([what, label]: (typeof PAPERS)[number], main = false) => (
    <button
      key={label}
      type="button"
      className={main ? 'main' : undefined}
      disabled={busy !== null}
      onClick={() => print(what)}
    >
      {busy === what ? say('Writing …') : say(label)}
      <span className="unseen">{ofThis}</span>
    </button>
  );
  const range = inMoneyOf(summary, () => poundsRange(summary.lowPence, summary.highPence));
  const amount = inMoneyOf(summary, () => spokenPounds(summary.heatPumpPence));
  const pump = read.kind === 'read' ? read.estimate.appraisal.systems.find(({ id }) => id === 'heat-pump') : undefined;
  return (
    <li className="estimate">
      <div className="estimate-head">
        <h4>
          {say('Estimate no. {number} · {date}', {
            number: String(summary.number),
            date: longDate(civilDateOf(summary.madeOn, household.zone)),
          })}
          {summary.offer ? ` · ${summary.offer.name}` : ''}
        </h4>
        <Taken summary={summary} />
        <p>
          <Said
            text="{amount} a year; 8 in 10 homes like yours: {range}"
            with={{
              range,
              amount: pump ? (
                <button
                  type="button"
                  className="figure-link strong"
                  onClick={() => openWorking(rangedCostWorking(pump))}
                >
                  {amount}
                </button>
              ) : (
                <span className="strong">{amount}</span>
              ),
            }}
          />
        </p>
      </div>
      {summary.note ? <p className="estimate-note">{summary.note}</p> : null}
      <p className="quiet small">
        {read.kind === 'read'
          ? sayChanges(read.estimate, { appraisal, series })
          : read.kind === 'failed'
            ? read.sentence
            : say('Reading the estimate …')}{' '}
        {read.kind === 'read' ? (
          <HowWeKnow
            find={() => sinceWorkings(read.estimate.appraisal, appraisal)}
            about={say('Estimate no. {number}', { number: String(summary.number) })}
            plain
          />
        ) : null}
      </p>
      <div className="actions">
        {PAPERS.map((paper) => button(paper, newest && paper === PAPERS[0]))}
        <details className="other-forms">
          <summary>
            {say('Other forms')}
            <span className="unseen">{ofThis}</span>
          </summary>
          {OTHER_FORMS.map((form) => button(form))}
        </details>
      </div>
      <Refused text={failure} />
    </li>
  );
}
