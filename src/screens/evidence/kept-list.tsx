import { useState } from 'react';
import { GradeMark } from '../../charts/grade-mark.tsx';
import { type Evidence, isTemperature } from '../../model/evidence/evidence.ts';
import { recordWorking } from '../../model/explained/record.ts';
import { temperatureTotal } from '../../words/logged-flow.ts';
import { grouped, longDate, spokenKWh } from '../../words/numbers.ts';
import { remarkSentence } from '../../words/remarks.ts';
import type { FiledBillOpened } from '../bill-sums/filed-bill.ts';
import { call } from '../desk.ts';
import { useHousehold } from '../household-context.tsx';
import { HowWeKnow } from '../shared/how-we-know.tsx';
import { describeFailure } from '../state/describe-failure.ts';
import { completenessOf, completenessWords } from './completeness.ts';
import { lastDayOf } from './day-words.ts';
import { FiledBills } from './filed-bills.tsx';
import { gradeOfSeries, seriesWords } from './series-words.ts';

/** Everything kept for this household; each piece can be taken back, and brought again. */
export function KeptList({ onSums }: { readonly onSums: (filed: FiledBillOpened) => void }) {
  const { evidence, undone, reload, tell } = useHousehold();
  const [failure, setFailure] = useState<string | null>(null);

  const attempt = async (work: () => Promise<unknown>, done: string) => {
    setFailure(null);
    try {
      await work();
      await reload();
      tell(done);
    } catch (reason) {
      setFailure(describeFailure(reason));
    }
  };
  const undo = (one: Evidence) =>
    attempt(
      () => call('evidence.undo', { evidenceId: one.id }),
      `${one.fileName} was taken back. It can be brought again below.`,
    );
  const restore = (evidenceId: string, fileName: string) =>
    attempt(() => call('evidence.restore', { evidenceId }), `${fileName} is back.`);

  return (
    <>
      {failure === null ? null : (
        <p className="refusal" role="alert">
          {failure}
        </p>
      )}
      {evidence.length === 0 ? null : (
        <section>
          <h3>What is kept</h3>
          <ul className="kept">
            {evidence.map((one) => (
              <KeptOne key={one.id} one={one} onUndo={() => undo(one)} onSums={onSums} />
            ))}
          </ul>
        </section>
      )}
      {undone.length === 0 ? null : (
        <section>
          <h3>Taken back</h3>
          <ul className="kept">
            {undone.map((one) => (
              <li key={one.id} className="kept-one">
                <span className="quiet">{one.fileName}</span>
                <button type="button" className="plain push" onClick={() => restore(one.id, one.fileName)}>
                  Bring it again
                </button>
              </li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}

function KeptOne(props: {
  readonly one: Evidence;
  readonly onUndo: () => void;
  readonly onSums: (filed: FiledBillOpened) => void;
}) {
  const { one } = props;
  return (
    <li className="kept-one">
      <div className="kept-series">
        {one.series.map((series) => (
          <div key={series.id} className="kept-line">
            <GradeMark grade={gradeOfSeries(series)} />
            <div>
              <p>
                <strong>{seriesWords(series)}</strong>, {longDate(series.from)} to {longDate(lastDayOf(series.to))}
              </p>
              <p className="quiet small">
                {isTemperature(series.carrier) ? temperatureTotal(series) : `${spokenKWh(series.total)} together`},{' '}
                {completenessWords(completenessOf(series))}
                {series.filled
                  ? `, ${grouped(series.filled.reduce((sum, { slots }) => sum + slots, 0))} filled by rule`
                  : ''}
                {series.estimatedCount > 0
                  ? `, ${grouped(series.estimatedCount)} of ${grouped(series.present)} estimated`
                  : ''}
              </p>
            </div>
          </div>
        ))}
        <p className="quiet small kept-source">
          {one.fileName}, kept {longDate(one.importedOn.slice(0, 10))}{' '}
          <HowWeKnow find={() => one.series.map((series) => recordWorking(series, [one]))} about={one.fileName} plain />
        </p>
        <FiledBills one={one} onOpen={props.onSums} />
        {one.remarks.length === 0 ? null : (
          <details className="small">
            <summary>
              {one.remarks.length === 1 ? 'One thing was noted' : `${one.remarks.length} things were noted`}
            </summary>
            <ul>
              {one.remarks.map((remark) => (
                <li key={JSON.stringify(remark)}>{remarkSentence(remark)}</li>
              ))}
            </ul>
          </details>
        )}
      </div>
      <button type="button" className="plain" onClick={props.onUndo} aria-label={`Take back ${one.fileName}`}>
        Take back
      </button>
    </li>
  );
}
