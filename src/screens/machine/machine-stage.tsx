/** The machine: what it gives for each unit bought, at which boundary, and beside what was measured in other homes. */

import { useDeferredValue, useMemo } from 'react';
import { addedWorking } from '../../model/heat-pump/added-working.ts';
import { rangedWorking } from '../../words/explained/ranged.ts';
import { wayExplained } from '../../words/full-year.ts';
import { addsSentence, factorSentence } from '../../words/machine.ts';
import { factor, spokenRatio } from '../../words/numbers.ts';
import { phrase, say } from '../../words/say.ts';
import { type Choice, PickField, sayChoices } from '../shared/choice-field.tsx';
import { patchSection } from '../shared/patch.ts';
import { QuestionList } from '../shared/question-list.tsx';
import { StageHead } from '../shared/stage-head.tsx';
import { FactorFigure } from './factor-figure.tsx';
import { FullFields } from './full-fields.tsx';
import { FullResult } from './full-result.tsx';
import { workOutYear } from './full-year.ts';
import { MachineFields } from './machine-fields.tsx';
import { MeterSees } from './meter-sees.tsx';
import { OffersBar } from './offers-bar.tsx';
import { QuickFields } from './quick-fields.tsx';
import './machine.css';
import { ChartFigure } from '../../charts/figure.tsx';
import { FlowPicture } from '../../charts/flow/picture.tsx';
import { flowName, flowSentence } from '../../charts/flow/sentence.ts';
import { flowInput } from '../../charts/flow/series.ts';
import { flowTable } from '../../charts/flow/table.ts';
import { sourceWorking } from '../../words/explained/flow.ts';
import { useHousehold } from '../household-context.tsx';
import { HowWeKnow } from '../shared/how-we-know.tsx';

type Way = 'quick' | 'full';
const WAYS: readonly Choice<Way>[] = [
  { value: 'quick', label: phrase('Quick: type the seasonal factors') },
  { value: 'full', label: phrase('Full: worked out by the half-hour') },
];

export function MachineStage() {
  const { appraisal, household, change } = useHousehold();
  const { machine } = appraisal;
  const { whole } = machine;
  const way = household.machine.way ?? 'quick';
  return (
    <>
      <StageHead
        sentence={addsSentence(machine)}
        figures={[{ text: spokenRatio(whole.value - 1), working: addedWorking(whole) }]}
        remainder={factorSentence(machine)}
        remainderFigures={[{ text: factor(whole.value), working: rangedWorking(whole) }]}
      />
      <OffersBar />
      <FlowFigure />
      <FactorFigure />
      <PickField
        label={say('How the year is worked out')}
        value={way}
        choices={sayChoices(WAYS)}
        note={wayExplained(way)}
        onChange={(next) => change(patchSection('machine', { way: next }))}
      />
      {way === 'full' ? <Full /> : <Quick />}
    </>
  );
}

function Quick() {
  return (
    <>
      <MeterSees />
      <QuestionList stage="machine" />
      <MachineFields />
      <QuickFields />
    </>
  );
}

function Full() {
  const { household: typed, series, today, appraisal } = useHousehold();
  // Several years are run here, so typing goes first.
  const household = useDeferredValue(typed);
  const pencePerKWh = appraisal.prices.electricityPencePerKWh;
  const worked = useMemo(
    () => workOutYear({ household, series, today, pencePerKWh }),
    [household, series, today, pencePerKWh],
  );
  return (
    <>
      <FullResult worked={worked} />
      <QuestionList stage="machine" />
      <MachineFields />
      <FullFields worked={worked} key={typed.machine.source} />
    </>
  );
}

/** What comes in from ground and meter, and what goes out to rooms and taps. */
function FlowFigure() {
  const { appraisal } = useHousehold();
  const input = flowInput(appraisal);
  return (
    <ChartFigure
      name={flowName()}
      sentence={flowSentence(input)}
      picture={<FlowPicture input={input} size="desk" />}
      table={flowTable(input)}
      known={<HowWeKnow find={() => [sourceWorking(appraisal)]} about={flowName()} plain />}
      note={say('kWh in a typical year. Pumps and standby are included in what the meter shows.')}
    />
  );
}
