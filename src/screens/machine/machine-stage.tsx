/** The machine: what it gives for each unit bought, at which boundary, and beside what was measured in other homes. */
import { useHousehold } from '../household-context.tsx';
import { QuestionList } from '../shared/question-list.tsx';
import { StageHead } from '../shared/stage-head.tsx';
import { FactorFigure } from './factor-figure.tsx';
import { MachineFields } from './machine-fields.tsx';
import { machineVoice } from './machine-voice.ts';
import { MeterSees } from './meter-sees.tsx';

export function MachineStage() {
  const { appraisal } = useHousehold();
  const voice = machineVoice(appraisal.machine);
  return (
    <>
      <StageHead sentence={voice.sentence} figures={voice.figures}>
        {voice.remainder}
      </StageHead>
      <FactorFigure />
      <MeterSees />
      <QuestionList stage="machine" />
      <MachineFields />
    </>
  );
}
