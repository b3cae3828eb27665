/**
 * The document that stays with the household: one HTML text with everything in it and nothing to fetch or run.
 * Dates and identifiers come from the written estimate alone, so the same written estimate gives the same bytes.
 */
import type { WrittenEstimate } from '../model/shapes/written-estimate.ts';
import { longDate } from '../words/numbers.ts';
import { say } from '../words/say.ts';
import { renderDocument, shorten } from './document.tsx';
import { type DocumentSettings, readEstimate } from './parts.ts';
import { AboutPart } from './sections/about.tsx';
import { AssumptionsPart } from './sections/assumptions.tsx';
import { CautionsPart } from './sections/cautions.tsx';
import { ComparisonPart } from './sections/comparison.tsx';
import { FirstWinterPart } from './sections/first-winter.tsx';
import { MonthsPart } from './sections/months.tsx';
import { SourcesPart } from './sections/sources.tsx';
import { SummaryPart } from './sections/summary.tsx';
import { SurePart } from './sections/sure.tsx';
import { WordsPart } from './sections/words.tsx';
import { WorkingsPart } from './sections/workings.tsx';
import { YearsPart } from './sections/years.tsx';

export function renderLeaveBehind(estimate: WrittenEstimate, settings: DocumentSettings): string {
  const parts = readEstimate(estimate, settings);
  const { name } = estimate.household;
  const number = String(estimate.number);
  const forTheHousehold = (
    <>
      <SummaryPart parts={parts} />
      <ComparisonPart parts={parts} />
      <MonthsPart parts={parts} />
      <SurePart parts={parts} />
      <YearsPart parts={parts} />
      <FirstWinterPart parts={parts} />
      <CautionsPart parts={parts} />
    </>
  );
  return renderDocument({
    title: say('What it would cost to heat {name}: promise {number}', { name, number }),
    foot: `${say('Estimate no. {number}', { number })} · ${longDate(parts.madeOn)} · ${shorten(name, 34)}`,
    settings,
    children: (
      <>
        {forTheHousehold}
        <AssumptionsPart parts={parts} />
        <SourcesPart parts={parts} />
        <AboutPart parts={parts} />
        <WordsPart of={forTheHousehold} />
        <WorkingsPart parts={parts} />
      </>
    ),
  });
}
