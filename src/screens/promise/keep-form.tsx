import { useState } from 'react';
import { findSideBySide } from '../../model/appraisal/beside.ts';
import { longDate, pence, poundsRange, spokenCount, spokenPounds } from '../../words/numbers.ts';
import { systemInSentence } from '../../words/systems.ts';
import { call } from '../desk.ts';
import { useHousehold } from '../household-context.tsx';
import { FigureButton } from '../shared/spoken.tsx';
import { TextField } from '../shared/text-field.tsx';
import { describeFailure } from '../state/describe-failure.ts';

/** What would be kept, the note beside it, and the button that keeps it. */
export function KeepForm() {
  const { household, appraisal, series, reload, tell, today, openWorking } = useHousehold();
  const [note, setNote] = useState('');
  const [keeping, setKeeping] = useState(false);
  const [failure, setFailure] = useState<string | null>(null);
  const { pump, beside } = findSideBySide(appraisal);
  const { electricity } = appraisal.prices;
  const open = appraisal.questions.filter(({ weight }) => weight !== 'note').length;

  const keep = async () => {
    setKeeping(true);
    setFailure(null);
    try {
      // What is still on its way to the store belongs into the promise.
      await reload();
      const promise = await call('promise.keep', { householdId: household.id, note: note.trim() });
      setNote('');
      await reload();
      tell(`Promise ${promise.number} is kept.`);
    } catch (reason) {
      setFailure(describeFailure(reason));
    } finally {
      setKeeping(false);
    }
  };

  return (
    <section className="stack" aria-labelledby="keep-head">
      <h3 id="keep-head">What would be kept</h3>
      <dl className="facts">
        <dt>Heat pump</dt>
        <dd>
          <FigureButton text={spokenPounds(pump.cost.value)} working={pump.cost.working} onOpen={openWorking} /> a year,{' '}
          {poundsRange(pump.cost.low, pump.cost.high)} in 8 years out of 10
        </dd>
        {beside ? (
          <>
            <dt>Beside it</dt>
            <dd>
              {systemInSentence(beside.id, beside.kind)}, about{' '}
              <FigureButton text={spokenPounds(beside.cost.value)} working={beside.cost.working} onOpen={openWorking} />{' '}
              a year
            </dd>
          </>
        ) : null}
        <dt>Heat</dt>
        <dd>
          <FigureButton
            text={`${spokenCount(appraisal.demand.total.value)} kWh`}
            working={appraisal.demand.total.working}
            onOpen={openWorking}
          />{' '}
          a year,{' '}
          {series.length === 0
            ? 'without any record of this home'
            : `from ${series.length === 1 ? 'one record' : `${series.length} records`}`}
        </dd>
        <dt>Electricity</dt>
        <dd>
          {pence(appraisal.prices.electricityPencePerKWh)} a unit, {electricity.name}
        </dd>
        <dt>Date</dt>
        <dd>{longDate(today)}</dd>
      </dl>
      {open > 0 ? (
        <p>
          {open === 1 ? 'One question is' : `${open} questions are`} still open. They go into the promise as they stand.
        </p>
      ) : null}
      <TextField
        label="A note to it, if you like"
        value={note}
        onChange={setNote}
        maxLength={2000}
        lines={2}
        note="It stands in the household’s paper."
      />
      <div className="actions">
        <button type="button" className="main" disabled={keeping} onClick={keep}>
          {keeping ? 'Keeping …' : 'Keep as a promise'}
        </button>
        <span className="quiet small">A promise never changes. A new reckoning gets a new number.</span>
      </div>
      {failure === null ? null : (
        <p className="refusal" role="alert">
          {failure}
        </p>
      )}
    </section>
  );
}
