/** What heating costs: the sentence, the spread, what would move it, and what it is made of. */
import { useMemo, useState } from 'react';
import { useHousehold } from '../household-context.tsx';
import { QuestionList } from '../shared/question-list.tsx';
import { StageHead } from '../shared/stage-head.tsx';
import { BalanceLines } from './balance-lines.tsx';
import { DriversSection } from './drivers-section.tsx';
import { LifetimeSection } from './lifetime-section.tsx';
import { MonthsFigure } from './months-figure.tsx';
import { SpreadFigure } from './spread-figure.tsx';
import { SystemsTable } from './systems-table.tsx';
import { TwentyFigure } from './twenty-figure.tsx';
import { useCostVoice } from './use-cost-voice.ts';
import { useFollowing } from './use-following.ts';
import { useWhatIf } from './use-what-if.ts';
import { WhatIfRow } from './what-if-row.tsx';
import './cost.css';
import { say } from '../../words/say.ts';

export function CostStage() {
  const { goTo, household } = useHousehold();
  const state = useWhatIf();
  const { appraisal } = state;
  const voice = useCostVoice(state);
  const [asTable, setAsTable] = useState(false);
  // What is beside the sliders follows them first; what lies further down comes when that is painted.
  const below = useFollowing(appraisal);
  const first = useMemo(
    () =>
      asTable ? <SystemsTable appraisal={appraisal} /> : <SpreadFigure appraisal={appraisal} household={household} />,
    [appraisal, household, asTable],
  );
  const rest = useMemo(
    () => (
      <>
        <TwentyFigure appraisal={below} />
        <MonthsFigure appraisal={below} />
        {asTable ? null : (
          <section aria-labelledby="made-of">
            <h3 id="made-of">{say('What it is made of')}</h3>
            <SystemsTable appraisal={below} />
          </section>
        )}
        <BalanceLines appraisal={below} />
      </>
    ),
    [below, asTable],
  );
  const years = useMemo(() => <LifetimeSection appraisal={below} />, [below]);
  return (
    <>
      <StageHead {...voice} />
      {first}
      <div className="cost-low screen-only">
        <WhatIfRow state={state} />
        <div className="actions">
          <button type="button" className="main" onClick={() => goTo('walk')}>
            {say('Show it at the table')}
          </button>
          <button type="button" onClick={() => goTo('estimate')}>
            {say('Keep as a promise')}
          </button>
          <button type="button" aria-pressed={asTable} onClick={() => setAsTable(!asTable)}>
            {asTable ? say('As a picture') : say('All as a table')}
          </button>
          <span className="quiet small push">{say('underlined figures open their working')}</span>
        </div>
      </div>
      <QuestionList stage="cost" />
      {rest}
      <DriversSection state={state} />
      {years}
    </>
  );
}
