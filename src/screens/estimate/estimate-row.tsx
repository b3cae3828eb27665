import { useState } from 'react';
import { Said } from '../../charts/said.tsx';
import type { EstimateSummary } from '../../desk/contract.ts';
import { civilDateOf } from '../../model/calendar/instant.ts';
import { takeInHand } from '../../model/offers.ts';
import { rangedCostWorking } from '../../words/explained/ranged.ts';
import { longDate, poundsRange, spokenPounds } from '../../words/numbers.ts';
import { inMoneyOf, phrase, say } from '../../words/say.ts';
import { call, saveFile } from '../desk.ts';
import { useHousehold } from '../household-context.tsx';
import { HowWeKnow } from '../shared/how-we-know.tsx';
import { describeFailure } from '../state/describe-failure.ts';
import { sayChanges, sinceWorkings } from './since-made.ts';
import { useEstimate } from './use-estimate.ts';

type Format = 'pdf' | 'html' | 'csv';
const FORMATS: readonly (readonly [Format, string])[] = [
  ['pdf', phrase('Estimate as PDF')],
  ['html', phrase('as HTML')],
  ['csv', phrase('figures as CSV')],
];

/** The estimate that the household took, with its date; one of them at most. */
function Taken({ summary }: { readonly summary: EstimateSummary }) {
  const { household, today, change } = useHousehold();
  const { taken } = household;
  if (taken?.estimateId === summary.id)
    return (
      <p className="taken">
        {say('taken on {date}', { date: longDate(taken.on) })}{' '}
        <button type="button" className="plain" onClick={() => change(({ taken: _, ...before }) => before)}>
          {say('not taken')}
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
      {say('The household took this one')}
    </button>
  );
}

/** One kept written estimate: what it says, what has moved since, and its papers. */
export function EstimateRow(props: { readonly summary: EstimateSummary; readonly newest: boolean }) {
  const { summary, newest } = props;
  const { household, appraisal, series, tell, openWorking } = useHousehold();
  const read = useEstimate(summary.id);
  const [busy, setBusy] = useState<Format | null>(null);
  const [failure, setFailure] = useState<string | null>(null);

  const print = async (format: Format) => {
    setBusy(format);
    setFailure(null);
    try {
      const file = await call('estimate.print', { estimateId: summary.id, format });
      if (await saveFile(file)) tell(say('{fileName} is saved.', { fileName: file.fileName }));
    } catch (reason) {
      setFailure(describeFailure(reason));
    } finally {
      setBusy(null);
    }
  };

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
        {FORMATS.map(([format, label]) => (
          <button
            key={format}
            type="button"
            className={newest && format === 'pdf' ? 'main' : undefined}
            disabled={busy !== null}
            onClick={() => print(format)}
          >
            {busy === format ? say('Writing …') : say(label)}
            <span className="unseen">{say(', estimate no. {number}', { number: String(summary.number) })}</span>
          </button>
        ))}
      </div>
      {failure === null ? null : (
        <p className="refusal" role="alert">
          {failure}
        </p>
      )}
    </li>
  );
}
