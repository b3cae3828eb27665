/** The walk-through: full window, one idea a page, for reading across a table. */

import { type ReactNode, useCallback, useMemo, useRef, useState } from 'react';
import { appraise } from '../../model/appraise.ts';
import { reckonLifetime } from '../../model/lifetime/reckon-lifetime.ts';
import type { Household } from '../../model/shapes/household.ts';
import { referenceOf } from '../../reference/index.ts';
import { sayWhatIf } from '../cost/knobs.ts';
import { useWhatIf } from '../cost/use-what-if.ts';
import { WhatIfRow } from '../cost/what-if-row.tsx';
import { useHousehold } from '../household-context.tsx';
import { GlossaryPage, Glossed } from '../shared/glossary-page.tsx';
import { HowWeKnow } from '../shared/how-we-know.tsx';
import { Bore } from './bore.tsx';
import { ChooseHalf } from './choose/choose-half.tsx';
import { InsideMachine } from './inside/inside-machine.tsx';
import { PagePicture } from './page-picture.tsx';
import { inOrder, shownPages, walkPages } from './pages.ts';
import { PagesShown } from './pages-shown.tsx';
import { reckonChanges } from './reckon-changes.ts';
import { useFill } from './use-fill.ts';
import { usePageTurn } from './use-page-turn.ts';
import './walk.css';
import { say } from '../../words/say.ts';

/** Single changes need the middle only. */
const NO_RANGES = 0;
const AS_IT_IS: NonNullable<Household['walk']> = { leaveOut: [] };

function WalkThrough(props: { readonly onClose: () => void }) {
  const { onClose } = props;
  const { household, appraisal: asItIs, change } = useHousehold();
  const state = useWhatIf(false);
  const { appraisal, followed } = state;
  const { all, still } = usePages(state);
  const [showsKnobs, setShowsKnobs] = useState(false);
  const [showsNotes, setShowsNotes] = useState(false);
  const [choosing, setChoosing] = useState(false);
  const [showsInside, setShowsInside] = useState(false);
  const toggleNotes = useCallback(() => setShowsNotes((before) => !before), []);

  const walk = household.walk ?? AS_IT_IS;
  const pages = shownPages(all, walk);
  const turn = usePageTurn(pages.length, { onClose, onNotes: toggleNotes });
  const turned = pages[turn.page]!;
  const page = turned.knobs.length > 0 ? turned : still.find(({ name }) => name === turned.name)!;
  const choosesNow = choosing && page.choices === true;
  const place = useRef<HTMLDivElement>(null);
  const height = useFill(place);
  const whatIf = state.changed && page.knobs.length > 0 ? sayWhatIf(state.knobs, state.whatIf) : '';

  return (
    <div className="walk" onPointerDown={turn.onPointerDown} onPointerUp={turn.onPointerUp}>
      <nav className="walk-bore" aria-label={say('Pages')}>
        <Bore page={turn.page + 1} pages={pages.length} />
      </nav>
      <main className="walk-page" aria-live="polite">
        <GlossaryPage key={page.name}>
          {choosesNow ? (
            <ChooseHalf />
          ) : (
            <>
              <h1 className="voice">
                <Glossed text={page.sentence} />
              </h1>
              {whatIf ? (
                <p className="walk-what-if">{say('What if: {whatIf}. These are not today’s figures.', { whatIf })}</p>
              ) : null}
              <div className="walk-fill" ref={place}>
                <PagePicture
                  picture={page.picture}
                  appraisal={page === turned ? appraisal : asItIs}
                  household={household}
                  height={height}
                />
              </div>
              {showsKnobs && page.knobs.length > 0 ? (
                <WhatIfRow state={state} only={page.knobs} />
              ) : (
                <p className="walk-say voice">
                  <Glossed text={page.say} />
                </p>
              )}
            </>
          )}
        </GlossaryPage>
        {showsNotes ? (
          <InstallerNotes notes={page.notes}>
            {turn.page === 0 ? (
              <PagesShown
                names={inOrder(all, walk.order ?? []).map(({ name }) => name)}
                leaveOut={walk.leaveOut}
                onChange={(shown) => change((before) => ({ ...before, walk: shown }))}
              />
            ) : null}
          </InstallerNotes>
        ) : null}
        <footer className="walk-foot">
          <span className="quiet walk-home">{choosesNow ? household.name : page.foot}</span>
          <span className="walk-actions screen-only">
            {page.choices ? (
              <button type="button" onClick={() => setChoosing(!choosing)}>
                {choosing ? say('What changes it') : say('What you can choose')}
              </button>
            ) : null}
            {page.knobs.length > 0 && !choosesNow ? (
              <button type="button" aria-pressed={showsKnobs} onClick={() => setShowsKnobs(!showsKnobs)}>
                {say('What if …')}
              </button>
            ) : null}
            {page.inside ? (
              <button type="button" onClick={() => setShowsInside(true)}>
                {say('Inside the machine')}
              </button>
            ) : null}
            {page.workings.length > 0 && !choosesNow ? <HowWeKnow find={() => page.workings} key={page.name} /> : null}
            <button type="button" disabled={turn.page === 0} onClick={() => turn.goTo(turn.page - 1)}>
              {say('Back')}
            </button>
            {turn.page === pages.length - 1 ? (
              <button type="button" className="main" onClick={onClose}>
                {say('Overview')}
              </button>
            ) : (
              <button type="button" className="main" onClick={() => turn.goTo(turn.page + 1)}>
                {say('Next')}
              </button>
            )}
          </span>
        </footer>
      </main>
      <button type="button" className="plain walk-close screen-only" onClick={onClose}>
        {say('Close')}
      </button>
      {showsInside ? <InsideMachine whatIf={followed} onClose={() => setShowsInside(false)} /> : null}
    </div>
  );
}

/** The pages as the sliders stand, and as it is today: a page without sliders speaks of today, whatever those of the others say. */
function usePages({ appraisal, followed }: ReturnType<typeof useWhatIf>) {
  const { household, series, estimates, settings, today, appraisal: asItIs } = useHousehold();
  const changed = appraisal !== asItIs;
  const changes = useMemo(
    () =>
      reckonChanges({ household, appraisal, whatIf: followed }, (step) =>
        appraise({ household, series, reference: referenceOf(household), asOf: today, whatIf: step, draws: NO_RANGES }),
      ),
    [household, appraisal, followed, series, today],
  );
  const lifetime = useMemo(
    () => reckonLifetime({ household, appraisal, reference: referenceOf(household) }),
    [household, appraisal],
  );
  const all = useMemo(
    () => walkPages({ household, appraisal, series, estimates, settings, today, changes, changed, lifetime }),
    [household, appraisal, series, estimates, settings, today, changes, changed, lifetime],
  );
  const still = useMemo(
    () =>
      walkPages({
        household,
        appraisal: asItIs,
        series,
        estimates,
        settings,
        today,
        changes,
        changed: false,
        lifetime: reckonLifetime({ household, appraisal: asItIs, reference: referenceOf(household) }),
      }),
    [household, asItIs, series, estimates, settings, today, changes],
  );
  return { all, still };
}

/** For the installer's eyes: hidden until N is pressed, and again by N. */
export function InstallerNotes(props: { readonly notes: readonly string[]; readonly children?: ReactNode }) {
  const { notes, children } = props;
  return (
    <aside className="walk-notes small" aria-label={say('Notes for the installer')}>
      {notes.length > 0 ? notes.join(' ') : say('No notes on this page.')}{' '}
      <span className="quiet">{say('(N hides this)')}</span>
      {children}
    </aside>
  );
}

/** The walk-through at its own address; closing it goes back to the running cost. */
export function Walk() {
  const { goTo } = useHousehold();
  return <WalkThrough onClose={() => goTo('cost')} />;
}
