/** How much heat the home needs: up to four estimates side by side, and what they rest on. */
import { useHousehold } from '../household-context.tsx';
import { QuestionList } from '../shared/question-list.tsx';
import { StageHead } from '../shared/stage-head.tsx';
import { EstimatesFigure } from './estimates-figure.tsx';
import { HeatFields } from './heat-fields.tsx';
import { HomeFields } from './home-fields.tsx';
import { MonthsFigure } from './months-figure.tsx';
import { PresentFields } from './present-fields.tsx';
import { RestOn } from './rest-on.tsx';
import { SignatureFigure } from './signature-figure.tsx';
import { useHeatVoice } from './use-heat-voice.ts';
import { WaterFields } from './water-fields.tsx';

export function HeatStage() {
  const { demand } = useHousehold().appraisal;
  const voice = useHeatVoice();
  return (
    <>
      <StageHead {...voice} />
      <EstimatesFigure />
      <RestOn />
      <QuestionList stage="heat" />
      <HomeFields />
      <HeatFields />
      <PresentFields />
      <WaterFields />
      <MonthsFigure />
      {demand.signature ? <SignatureFigure signature={demand.signature} demand={demand} /> : null}
    </>
  );
}
