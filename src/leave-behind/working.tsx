/** The second document: every value, source and sum behind a written estimate, for whoever wants to check it. */
import type { WrittenEstimate } from '../model/shapes/written-estimate.ts';
import { say } from '../words/say.ts';
import { renderDocument, shorten } from './document.tsx';
import { GradeLegend } from './grade-legend.tsx';
import { estimateName, Letterhead } from './letterhead.tsx';
import { type DocumentSettings, readEstimate } from './parts.ts';
import { AboutPart } from './sections/about.tsx';
import { AssumptionsPart, SourcesPart } from './sections/assumptions.tsx';
import { ChoiceInFull } from './sections/choice.tsx';
import { ComparisonPart, FuturesPart } from './sections/comparison.tsx';
import { MonthsPart } from './sections/months.tsx';
import { WordsPart } from './sections/words.tsx';
import { WorkingsPart } from './sections/workings.tsx';
import { YearsPart } from './sections/years.tsx';

export function renderWorking(estimate: WrittenEstimate, settings: DocumentSettings): string {
  const parts = readEstimate(estimate, settings);
  const { name } = estimate.household;
  const said = { name, estimate: estimateName(parts) };
  const toRead = (
    <>
      <ComparisonPart parts={parts} />
      <ChoiceInFull parts={parts} />
      <MonthsPart parts={parts} />
      <FuturesPart parts={parts} />
      <YearsPart parts={parts} />
    </>
  );
  return renderDocument({
    title: say('{name}: the working of {estimate}', said),
    foot: say('Working · {estimate} · {name}', { ...said, name: shorten(name, 28) }),
    settings,
    children: (
      <>
        <section className="first">
          <Letterhead parts={parts} />
          <h1 className={name.length > 36 ? 'long' : undefined}>
            {say('The working behind the estimate for {name}', { name })}
          </h1>
          <p className="plain">
            {say('This paper is for whoever wants to check every sum. The household has a shorter paper of its own.')}
          </p>
          <GradeLegend />
          <AboutPart parts={parts} />
        </section>
        {toRead}
        <AssumptionsPart parts={parts} />
        <SourcesPart parts={parts} />
        <WordsPart of={toRead} />
        <WorkingsPart parts={parts} />
      </>
    ),
  });
}
