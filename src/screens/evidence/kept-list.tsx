import { useState } from 'react';
import { GradeMark } from '../../charts/grade-mark.tsx';
import { accountFiles } from '../../model/demand/account-records.ts';
import { type Evidence, isTemperature, type Remark, type Series } from '../../model/shapes/evidence.ts';
import { completenessOf, completenessWords } from '../../words/completeness.ts';
import { recordWorking } from '../../words/explained/record.ts';
import { temperatureTotal } from '../../words/logged-flow.ts';
import { grouped, longDate } from '../../words/numbers.ts';
import { fileAccountLines } from '../../words/record-uses.ts';
import { remarkSentence } from '../../words/remarks.ts';
import { say } from '../../words/say.ts';
import { sayTold } from '../../words/say-told.ts';
import type { FiledBillOpened } from '../bill-sums/filed-bill.ts';
import { call } from '../desk.ts';
import { useHousehold } from '../household-context.tsx';
import { HowWeKnow } from '../shared/how-we-know.tsx';
import { Refused } from '../shared/refused.tsx';
import { describeFailure } from '../state/describe-failure.ts';
import { daysWords } from './day-words.ts';
import { FiledBills } from './filed-bills.tsx';
import { amountOfSeries, gradeOfSeries, seriesWords } from './series-words.ts';

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
      say('{fileName} was removed. You can restore it below.', { fileName: sayTold(one.fileName) }),
    );
  const restore = (evidenceId: string, fileName: string) =>
    attempt(
      () => call('evidence.restore', { evidenceId }),
      say('{fileName} is back.', { fileName: sayTold(fileName) }),
    );

  return (
    <>
      <Refused text={failure} />
      {evidence.length === 0 ? null : (
        <section>
          <h3>{say('Saved files')}</h3>
          <ul className="kept">
            {evidence.map((one) => (
              <KeptOne key={one.id} one={one} onUndo={() => undo(one)} onSums={onSums} />
            ))}
          </ul>
        </section>
      )}
      {undone.length === 0 ? null : (
        <section>
          <h3>{say('Removed')}</h3>
          <ul className="kept">
            {undone.map((one) => (
              <li key={one.id} className="kept-one">
                <span className="quiet">{sayTold(one.fileName)}</span>
                <button type="button" className="plain push" onClick={() => restore(one.id, one.fileName)}>
                  {say('Restore')}
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
  const { household, series, appraisal } = useHousehold();
  const fileName = sayTold(one.fileName);
  const [asked, noted] = [true, false].map((isOpen) =>
    one.remarks.filter(({ code }) => (code === 'records-part-asked') === isOpen),
  ) as [Remark[], Remark[]];
  const date = longDate(one.importedOn.slice(0, 10));
  return (
    <li className="kept-one">
      <div className="kept-series">
        {one.series.map((own) => (
          <div key={own.id} className="kept-line">
            <GradeMark grade={gradeOfSeries(own)} />
            <div>
              <p>
                <strong>{seriesWords(own)}</strong>, {daysWords(own)}
              </p>
              <p className="quiet small">{standingOf(own).join(', ')}</p>
            </div>
          </div>
        ))}
        <p className="quiet small kept-source">
          {one.part?.sheet === undefined
            ? say('{fileName}, saved {date}', { fileName, date })
            : say('{fileName}, sheet {sheet}, saved {date}', { fileName, sheet: one.part.sheet, date })}{' '}
          <HowWeKnow find={() => one.series.map((own) => recordWorking(own, [one]))} about={fileName} plain />
        </p>
        <FiledBills one={one} onOpen={props.onSums} />
        <details className="small">
          <summary>{say('What it is used for')}</summary>
          <ul>
            {accountFiles(household, [one], series, appraisal)
              .flatMap(fileAccountLines)
              .map((line) => (
                // It begins with a heading of the file, in whatever language that is.
                <li key={line} translate="no">
                  {line}
                </li>
              ))}
          </ul>
        </details>
        {asked.map((remark) => (
          <p key={JSON.stringify(remark)} className="refusal">
            {remarkSentence(remark)}
          </p>
        ))}
        {noted.length === 0 ? null : (
          <details className="small">
            <summary>
              {say('{count, plural, one {One thing was noted} other {# things were noted}}', {
                count: noted.length,
              })}
            </summary>
            <ul>
              {noted.map((remark) => (
                <li key={JSON.stringify(remark)}>{remarkSentence(remark)}</li>
              ))}
            </ul>
          </details>
        )}
      </div>
      <button
        type="button"
        className="plain"
        onClick={props.onUndo}
        aria-label={say('Remove {fileName}', { fileName })}
      >
        {say('Remove')}
      </button>
    </li>
  );
}

/** How much a record holds, how whole it is, and what of it was not read. */
function standingOf(series: Series): string[] {
  const filled = series.filled?.reduce((sum, { slots }) => sum + slots, 0);
  const { estimatedCount, present } = series;
  return [
    isTemperature(series.carrier)
      ? temperatureTotal(series)
      : say('{total} together', { total: amountOfSeries(series, true) }),
    completenessWords(completenessOf(series)),
    ...(filled === undefined ? [] : [say('{count} filled by rule', { count: grouped(filled) })]),
    ...(estimatedCount > 0
      ? [say('{count} of {all} estimated', { count: grouped(estimatedCount), all: grouped(present) })]
      : []),
  ];
}
