/** How much heat the home needs: up to four estimates side by side, and what they rest on. */

import { ChartFigure } from '../../charts/figure.tsx';
import { MonthPartsPicture } from '../../charts/month-parts/picture.tsx';
import { monthPartsName, monthPartsSentence } from '../../charts/month-parts/sentence.ts';
import { heatParts } from '../../charts/month-parts/series.ts';
import { monthPartsTable } from '../../charts/month-parts/table.ts';
import type { DemandChoice } from '../../model/shapes/household.ts';
import { heatByMonth } from '../../words/explained/months.ts';
import { rangedWorking } from '../../words/explained/ranged.ts';
import { basisSentence, heatSentence, waterSentence, weatherSentence } from '../../words/heat.ts';
import { spokenKWh } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { WAY_WORDS } from '../../words/ways.ts';
import { useHousehold } from '../household-context.tsx';
import { PickField } from '../shared/choice-field.tsx';
import { HowWeKnow } from '../shared/how-we-know.tsx';
import { patchSection } from '../shared/patch.ts';
import { QuestionList } from '../shared/question-list.tsx';
import type { SpokenFigure } from '../shared/spoken.tsx';
import { StageHead } from '../shared/stage-head.tsx';
import { EstimatesFigure } from './estimates-figure.tsx';
import { HeatFields } from './heat-fields.tsx';
import { HomeFields } from './home-fields.tsx';
import { PresentFields } from './present-fields.tsx';
import { SignatureFigure } from './signature-figure.tsx';
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

/** The sentence of the stage with the figures that open their workings. */
function useHeatVoice(): {
  readonly sentence: string;
  readonly figures: readonly SpokenFigure[];
  readonly remainder: string;
  readonly remainderFigures: readonly SpokenFigure[];
} {
  const { demand, climate } = useHousehold().appraisal;
  return {
    sentence: heatSentence(demand),
    figures: [{ text: spokenKWh(demand.total.value), working: rangedWorking(demand.total) }],
    remainderFigures: [{ text: spokenKWh(demand.water.value), working: demand.water.working }],
    remainder: [waterSentence(demand), basisSentence(demand), weatherSentence(climate)].join(' '),
  };
}

function MonthsFigure() {
  const { appraisal } = useHousehold();
  const parts = heatParts(appraisal);
  return (
    <section>
      <ChartFigure
        name={monthPartsName('heat')}
        sentence={monthPartsSentence(parts)}
        picture={<MonthPartsPicture parts={parts} size="desk" />}
        table={monthPartsTable(parts)}
        known={<HowWeKnow find={() => [heatByMonth(appraisal.demand)]} about={monthPartsName('heat')} plain />}
      />
    </section>
  );
}

/** Which estimate the comparison rests on; only ways that could be gone are offered. */
function RestOn() {
  const { household, appraisal, change } = useHousehold();
  const { demand } = appraisal;
  const ways = demand.estimates.map((estimate) => estimate.way);
  const options: DemandChoice[] = ways.length > 1 ? ['together', ...ways] : ways;
  if (options.length < 2) return null;
  return (
    <PickField
      label={say('The sums are based on')}
      value={demand.chosen}
      choices={options.map((value) => ({
        value,
        label: value === 'together' ? say('all together') : say(WAY_WORDS[value].name),
      }))}
      note={demand.chosen === 'together' ? say('The surer one counts more.') : say('One alone, chosen by you.')}
      onChange={(use) =>
        change(patchSection('heat', { use: use === 'together' && !household.heat.use ? undefined : use }))
      }
    />
  );
}
