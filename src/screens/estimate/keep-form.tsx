import { useState } from 'react';
import { Said } from '../../charts/said.tsx';
import { DeskError } from '../../desk/desk-error.ts';
import { findSideBySide } from '../../model/comparison/beside.ts';
import { openPrices } from '../../model/shapes/appraisal.ts';
import { electricityPriceWorking } from '../../words/explained/prices.ts';
import { rangedWorking } from '../../words/explained/ranged.ts';
import { longDate, pence, poundsRange, spokenCount, spokenPounds } from '../../words/numbers.ts';
import { nameOfPrice, openPriceSentence } from '../../words/prices.ts';
import { say } from '../../words/say.ts';
import { sayTold } from '../../words/say-told.ts';
import { systemInSentence } from '../../words/systems.ts';
import { call } from '../desk.ts';
import { useHousehold } from '../household-context.tsx';
import { Refused } from '../shared/refused.tsx';
import { FigureButton } from '../shared/spoken.tsx';
import { TextField } from '../shared/text-field.tsx';
import { describeFailure } from '../state/describe-failure.ts';
import { isAllKept } from '../state/keeper.ts';

/** Prices that are old or nobody's: each is typed, or somebody says that it stands. */
function OpenPrices() {
  const { appraisal, today, change, goTo } = useHousehold();
  const [said, setSaid] = useState('');
  const open = openPrices(appraisal);
  if (open.length === 0) return null;
  const stand = (price: (typeof open)[number]['price']) =>
    change((before) => ({
      ...before,
      prices: {
        ...before.prices,
        stand: [...(before.prices.stand ?? []), { price, on: today, ...(said.trim() ? { said: said.trim() } : {}) }],
      },
    }));
  return (
    <section className="stack" aria-labelledby="open-prices">
      <h4 id="open-prices">{say('Prices to settle first')}</h4>
      <TextField
        label={say('Why this price is right (optional)')}
        value={said}
        onChange={setSaid}
        maxLength={400}
        note={say('It is printed in the household’s estimate.')}
      />
      {open.map((one) => (
        <div className="actions" key={one.price}>
          <span>{openPriceSentence(one)}</span>
          <button type="button" onClick={() => stand(one.price)}>
            {say('Use it as assumed')}
          </button>
          <button type="button" onClick={() => goTo('prices')}>
            {say('Type the price')}
          </button>
        </div>
      ))}
    </section>
  );
}

/** The figures as they would be kept, each with its sum. */
function WhatIsKept() {
  const { appraisal, series, today, openWorking } = useHousehold();
  const { pump, beside } = findSideBySide(appraisal);
  const { electricity } = appraisal.prices;
  return (
    <dl className="facts">
      <dt>{say('Heat pump')}</dt>
      <dd>
        <Said
          text="{amount} a year; 8 in 10 homes like yours: {range}"
          with={{
            range: poundsRange(pump.cost.low, pump.cost.high),
            amount: (
              <FigureButton
                text={spokenPounds(pump.cost.value)}
                working={rangedWorking(pump.cost)}
                onOpen={openWorking}
              />
            ),
          }}
        />
      </dd>
      {beside ? (
        <>
          <dt>{say('Beside it')}</dt>
          <dd>
            <Said
              text="{other}, about {amount} a year"
              with={{
                other: systemInSentence(beside.id, beside.kind),
                amount: (
                  <FigureButton
                    text={spokenPounds(beside.cost.value)}
                    working={beside.cost.working}
                    onOpen={openWorking}
                  />
                ),
              }}
            />
          </dd>
        </>
      ) : null}
      <dt>{say('Heat')}</dt>
      <dd>
        <Said
          text="{heat} a year, {count, plural, =0 {without any record of this home} one {from one record} other {from # records}}"
          with={{
            count: series.length,
            heat: (
              <FigureButton
                text={`${spokenCount(appraisal.demand.total.value)} kWh`}
                working={appraisal.demand.total.working}
                onOpen={openWorking}
              />
            ),
          }}
        />
      </dd>
      <dt>{say('Electricity')}</dt>
      <dd>
        <Said
          text="{price} per kWh, {tariff}"
          with={{
            tariff: sayTold(nameOfPrice(electricity)),
            price: (
              <FigureButton
                text={pence(appraisal.prices.electricityPencePerKWh)}
                working={electricityPriceWorking(appraisal)}
                onOpen={openWorking}
              />
            ),
          }}
        />
      </dd>
      <dt>{say('Date')}</dt>
      <dd>{longDate(today)}</dd>
    </dl>
  );
}

/** What would be kept, the note beside it, and the button that keeps it. */
export function KeepForm() {
  const { household, appraisal, reload, tell } = useHousehold();
  const [note, setNote] = useState('');
  const [keeping, setKeeping] = useState(false);
  const [failure, setFailure] = useState<string | null>(null);
  const [isBehind, setIsBehind] = useState(false);
  const open = appraisal.questions.filter(({ weight }) => weight !== 'note').length;

  const keep = async (clockIsRight = false) => {
    setKeeping(true);
    setFailure(null);
    setIsBehind(false);
    try {
      // What is still on its way to the store belongs into the written estimate.
      await reload();
      if (!isAllKept())
        throw new Error(say('The last change is not saved yet, so it would be missing. Save it first.'));
      const estimate = await call('estimate.keep', { householdId: household.id, note: note.trim(), clockIsRight });
      setNote('');
      await reload();
      tell(say('Estimate no. {number} is saved.', { number: String(estimate.number) }));
    } catch (reason) {
      setFailure(describeFailure(reason));
      setIsBehind(reason instanceof DeskError && reason.code === 'clock-behind');
    } finally {
      setKeeping(false);
    }
  };

  return (
    <section className="stack" aria-labelledby="keep-head">
      <h3 id="keep-head">{say('What will be saved')}</h3>
      <WhatIsKept />
      {open > 0 ? (
        <p>
          {say(
            '{count, plural, one {One question is still open. The estimate prints it.} other {# questions are still open. The estimate prints them.}}',
            { count: open },
          )}
        </p>
      ) : null}
      <TextField
        label={say('Note (optional)')}
        value={note}
        onChange={setNote}
        maxLength={2000}
        lines={2}
        note={say('It is printed in the household’s estimate.')}
      />
      <OpenPrices />
      <div className="actions">
        <button type="button" className="main" disabled={keeping} onClick={() => void keep()}>
          {keeping ? say('Saving …') : say('Save the written estimate')}
        </button>
        <span className="quiet small">{say('A written estimate never changes. New figures get a new number.')}</span>
      </div>
      <Refused text={failure} />
      {isBehind ? (
        <div className="actions">
          <button type="button" disabled={keeping} onClick={() => void keep(true)}>
            {say('The clock is right now: save')}
          </button>
        </div>
      ) : null}
    </section>
  );
}
