/** The machine: what it gives for each unit bought, at which boundary, and beside what was measured in other homes. */
import { addsSentence, factorSentence } from '../../words/machine.ts';
import { factor, spokenRatio } from '../../words/numbers.ts';
import { useHousehold } from '../household-context.tsx';
import { QuestionList } from '../shared/question-list.tsx';
import { StageHead } from '../shared/stage-head.tsx';
import { FactorFigure } from './factor-figure.tsx';
import { MachineFields } from './machine-fields.tsx';
import { MeterSees } from './meter-sees.tsx';

export function MachineStage() {
  const { machine } = useHousehold().appraisal;
  const { whole } = machine;
  return (
    <>
      <StageHead
        sentence={addsSentence(machine)}
        figures={[{ text: spokenRatio(whole.value - 1), working: whole.working }]}
        remainder={factorSentence(machine)}
        remainderFigures={[{ text: factor(whole.value), working: whole.working }]}
      />
      <FactorFigure />
      <MeterSees />
      <QuestionList stage="machine" />
      <MachineFields />
    </>
  );
}
