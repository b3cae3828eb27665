/** What heating costs: the sentence, the spread, what would move it, and what it is made of. */
import { useMemo, useState } from 'react';
import { ChartFigure } from '../../charts/figure.tsx';
import { SpreadPicture } from '../../charts/spread/picture.tsx';
import { spreadName, spreadSentence } from '../../charts/spread/sentence.ts';
import { spreadSeries } from '../../charts/spread/series.ts';
import { spreadTable } from '../../charts/spread/table.ts';
import { pickForPicture } from '../../model/comparison/beside.ts';
import { say } from '../../words/say.ts';
import { type OpenDesk, useHousehold } from '../household-context.tsx';
import { HowWeKnow } from '../shared/how-we-know.tsx';
import { later, useLater } from '../shared/later.ts';
import { costWorking } from '../shared/name-working.ts';
import { QuestionList } from '../shared/question-list.tsx';
import { StageHead } from '../shared/stage-head.tsx';
import { BesideChoice } from './beside-choice.tsx';
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

/** Five in one picture; the table below holds every way of heating. */
const MOST_ROWS = 5;

function SpreadFigure({ appraisal, household }: Pick<OpenDesk, 'appraisal' | 'household'>) {
  const rows = spreadSeries({ ...appraisal, systems: pickForPicture(appraisal, household, MOST_ROWS) });
  return (
    <ChartFigure
      name={spreadName()}
      sentence={spreadSentence(rows)}
      sentenceSaid
      picture={<SpreadPicture rows={rows} size="desk" height={44 + 64 * rows.length} />}
      table={spreadTable(spreadSeries(appraisal))}
      known={<HowWeKnow find={() => appraisal.systems.map(costWorking)} about={spreadName()} plain />}
    />
  );
}
