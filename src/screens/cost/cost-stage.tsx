/** What heating costs: the sentence, the spread, what would move it, and what it is made of. */
import { useMemo, useState } from 'react';
import { say } from '../../words/say.ts';
import { useHousehold } from '../household-context.tsx';
import { later, useLater } from '../shared/later.ts';
import { QuestionList } from '../shared/question-list.tsx';
import { StageHead } from '../shared/stage-head.tsx';
import { BesideChoice } from './beside-choice.tsx';
import { SpreadFigure } from './spread-figure.tsx';
import { SystemsTable } from './systems-table.tsx';
import { useCostVoice } from './use-cost-voice.ts';
import { useWhatIf } from './use-what-if.ts';
import { WhatIfRow } from './what-if-row.tsx';
import './cost.css';

/** Fetched once what is seen first is painted. */
const BELOW = later(async () => (await import('./cost-below.tsx')).CostBelow);
const QUESTIONS = <QuestionList stage="cost" />;

export function CostStage() {
  const { goTo, household } = useHousehold();
  const state = useWhatIf(true);
  const { appraisal, followed, knobs } = state;
  const voice = useCostVoice(state);
  const [asTable, setAsTable] = useState(false);
  const Below = useLater(BELOW);
  const first = useMemo(
    () => (
      <>
        <StageHead {...voice} />
        {asTable ? (
          <SystemsTable appraisal={appraisal} />
        ) : (
          <SpreadFigure appraisal={appraisal} household={household} />
        )}
      </>
    ),
    [voice, appraisal, household, asTable],
  );
  const below = useMemo(
    () => (Below ? <Below state={{ appraisal, followed, knobs }} asTable={asTable} /> : <div aria-busy="true" />),
    [Below, appraisal, followed, knobs, asTable],
  );
  return (
    <>
      {first}
      <BesideChoice />
      <div className="cost-low screen-only">
        <WhatIfRow state={state} />
        <div className="actions">
          <button type="button" className="main" onClick={() => goTo('walk')}>
            {say('Show the customer')}
          </button>
          <button type="button" onClick={() => goTo('estimate')}>
            {say('Save the written estimate')}
          </button>
          <button type="button" aria-pressed={asTable} onClick={() => setAsTable(!asTable)}>
            {asTable ? say('As a picture') : say('All as a table')}
          </button>
          <span className="quiet small push">{say('underlined figures show how they were worked out')}</span>
        </div>
      </div>
      {QUESTIONS}
      {below}
    </>
  );
}
