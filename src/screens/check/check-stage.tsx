/** A written estimate held against a later bill: the verdict first, then where the difference comes from. */

import { useMemo, useState } from 'react';
import { compareDates, daysBetween } from '../../model/calendar/civil.ts';
import { civilDateOf } from '../../model/calendar/instant.ts';
import { judgePlant } from '../../model/judge-plant.ts';
import type { BillCheck, BillCheckInput } from '../../model/shapes/bill-check.ts';
import { referenceOf } from '../../reference/index.ts';
import { siteTables } from '../../reference/site-tables.ts';
import { checkSentence, doubtSentences, fairSentence } from '../../words/check.ts';
import { longDate } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { siteSummary } from '../../words/site-readings.ts';
import { call } from '../desk.ts';
import { useHousehold } from '../household-context.tsx';
import { HowWeKnow } from '../shared/how-we-know.tsx';
import { StageHead } from '../shared/stage-head.tsx';
import { newestFirst } from '../site/visits.ts';
import { describeFailure } from '../state/describe-failure.ts';
import { BillForm } from './bill-form.tsx';
import { dayBefore, estimateInForce } from './bills.ts';
import { CheckResult } from './check-result.tsx';
import { checkWorking } from './check-working.ts';
import { FollowingFigure } from './following-figure.tsx';
import { KeptChecks } from './kept-checks.tsx';
import { LetterButtons } from './letter-buttons.tsx';
import './check.css';
import { Refused } from '../shared/refused.tsx';

/** What the newest visit to the plant found that cannot wait stands before any bill. */
function PlantDanger() {
  const { household, series, today } = useHousehold();
  const said = useMemo(() => {
    const [visit] = newestFirst(household.siteReadings ?? []);
    if (!visit) return null;
    const check = judgePlant({ household, series, reference: referenceOf(household), asOf: today }, siteTables).judge(
      visit,
    );
    const isDanger = check.causes.some(({ level }) => level === 'danger');
    return isDanger ? `${longDate(visit.date)}: ${siteSummary(check)}` : null;
  }, [household, series, today]);
  return said === null ? null : (
    <p className="refusal" role="alert">
      {said}
    </p>
  );
}

export function CheckStage() {
  const { household, estimates, checks, reload, tell, goTo } = useHousehold();
  const newest = checks.toSorted((a, b) => compareDates(b.madeOn, a.madeOn))[0];
  const [chosen, setChosen] = useState<string | null>(null);
  const [busy, setBusy] = useState(false);
  const [failure, setFailure] = useState<string | null>(null);

  const toSite = (
    <button type="button" onClick={() => goTo('site')}>
      {say('Site readings')}
    </button>
  );
  if (estimates.length === 0) {
    return (
      <>
        <StageHead sentence={say('A bill check compares a bill with a written estimate. There is none yet.')}>
          {say(
            'Save a written estimate first. When a bill comes, we first allow for its days, its price and the weather.',
          )}
        </StageHead>
        <div className="actions">
          <button type="button" className="main" onClick={() => goTo('estimate')}>
            {say('To the written estimate')}
          </button>
          {toSite}
        </div>
      </>
    );
  }

  const run = async (input: BillCheckInput) => {
    setBusy(true);
    setFailure(null);
    try {
      const check = await call('check.run', input);
      await reload();
      setChosen(check.id);
      tell(say('The check is saved.'));
    } catch (reason) {
      setFailure(describeFailure(reason));
    } finally {
      setBusy(false);
    }
  };
  const shown = checks.find(({ id }) => id === chosen) ?? newest;
  return (
    <>
      <PlantDanger />
      {shown ? (
        <>
          <StageHead sentence={checkSentence(shown)}>
            {fairSentence(shown)} {sayBill(shown)}{' '}
            <HowWeKnow find={() => [checkWorking(shown)]} about={say('this check')} plain />
          </StageHead>
          {doubtSentences(shown).map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
          <CheckResult check={shown} key={shown.id}>
            <LetterButtons checkId={shown.id} />
            {toSite}
          </CheckResult>
        </>
      ) : (
        <StageHead sentence={say('Has a bill come? Type it, and we compare it with the estimate.')}>
          {say(
            'We first allow for its days, its price and the weather. What is left is compared with the estimated range.',
          )}
        </StageHead>
      )}
      {shown ? null : <div className="actions">{toSite}</div>}
      <FollowingFigure
        estimateId={shown?.estimateId ?? estimateInForce(estimates, household).id}
        pencePerKWh={shown?.input.pencePerKWh}
      />
      <BillForm busy={busy} onRun={run} />
      <Refused text={failure} />
      <KeptChecks shown={shown?.id ?? null} onShow={setChosen} />
    </>
  );

  function sayBill({ input, estimateId }: BillCheck): string {
    const estimate = estimates.find(({ id }) => id === estimateId);
    const days = daysBetween(input.from, input.to);
    const values = { from: longDate(input.from), to: longDate(dayBefore(input.to)), days };
    return estimate
      ? say('Estimate no. {number} of {date}, bill of {from} to {to}, {days, plural, one {# day} other {# days}}.', {
          ...values,
          number: String(estimate.number),
          date: longDate(civilDateOf(estimate.madeOn, household.zone)),
        })
      : say('Bill of {from} to {to}, {days, plural, one {# day} other {# days}}.', values);
  }
}
