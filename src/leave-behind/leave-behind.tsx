/**
 * The paper that stays with the household, four pages: one HTML text with everything in it and nothing to fetch or run.
 * Dates come from the written estimate alone, so the same written estimate gives the same bytes.
 */
import type { WrittenEstimate } from '../model/shapes/written-estimate.ts';
import { say } from '../words/say.ts';
import { renderDocument, shorten } from './document.tsx';
import { estimateName } from './letterhead.tsx';
import { type DocumentSettings, readEstimate } from './parts.ts';
import { AnswerPart } from './sections/answer.tsx';
import { BesidePart } from './sections/beside.tsx';
import { CautionsPart } from './sections/cautions.tsx';
import { ChoicePart } from './sections/choice.tsx';
import { FirstWinterPart } from './sections/first-winter.tsx';
import { RestsOnPart } from './sections/rests-on.tsx';

export function renderLeaveBehind(estimate: WrittenEstimate, settings: DocumentSettings): string {
  const parts = readEstimate(estimate, settings);
  const { name } = estimate.household;
  return renderDocument({
    title: say('What it would cost to heat {name}: {estimate}', { name, estimate: estimateName(parts) }),
    foot: `${estimateName(parts)} · ${shorten(name, 34)}`,
    settings,
    children: (
      <>
        <AnswerPart parts={parts} />
        <BesidePart parts={parts} />
        <ChoicePart parts={parts} />
        <FirstWinterPart parts={parts} />
        <RestsOnPart parts={parts} />
        <CautionsPart parts={parts} />
      </>
    ),
  });
}
