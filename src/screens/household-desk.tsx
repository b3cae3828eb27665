/** The desk of one household: the thread at the left edge, the open stage beside it, the working panel over it. */

import { useCallback, useEffect, useMemo, useRef, useState, useSyncExternalStore } from 'react';
import { WorkingView } from '../charts/working-view.tsx';
import type { Settings } from '../desk/contract.ts';
import { appraise } from '../model/appraise.ts';
import type { Appraisal } from '../model/shapes/appraisal.ts';
import { countryOf, currencyOf } from '../model/shapes/country.ts';
import type { CivilDate } from '../model/shapes/dates.ts';
import { referenceOf } from '../reference/index.ts';
import { say, speakMoney } from '../words/say.ts';
import { sayTold } from '../words/say-told.ts';
import type { ShownWorking } from '../words/working.ts';
import { onMenuCommand } from './desk.ts';
import { HouseholdContext, type OpenDesk } from './household-context.tsx';
import { Questions } from './questions/questions.tsx';
import type { Stage } from './routes.ts';
import { Dialog } from './shared/dialog.tsx';
import { ExportDialog, exportHousehold } from './shared/export-dialog.tsx';
import { GlossaryPage } from './shared/glossary-page.tsx';
import { StageView } from './stage-view.tsx';
import { describeFailure } from './state/describe-failure.ts';
import type { HouseholdBeingEdited } from './state/open-household.ts';
import { Stopped } from './stopped.tsx';
import { KeepLine } from './thread/keep-line.tsx';
import { Thread } from './thread/thread.tsx';
import { go } from './use-route.ts';

export function HouseholdDesk(props: {
  readonly edited: HouseholdBeingEdited;
  readonly stage: Stage;
  readonly today: CivilDate;
  readonly settings: Settings;
}) {
  const { edited, stage, today, settings } = props;
  const { open, status } = useSyncExternalStore(edited.watch, edited.read);
  useEffect(() => edited.leave, [edited]);
  const { household, evidence, series, undone, damage, estimates, checks } = open;
  // Before anything below is said.
  speakMoney(currencyOf(household));
  const [working, setWorking] = useState<ShownWorking | null>(null);
  const [said, tell] = useSaid();

  const reckoned = useMemo(
    () => reckon(() => appraise({ household, series, reference: referenceOf(household), asOf: today })),
    [household, series, today],
  );
  const goTo = useCallback((to: Stage) => go({ screen: 'household', id: household.id, stage: to }), [household.id]);
  const { change, reload } = edited;
  const desk = useMemo<OpenDesk | null>(
    () =>
      reckoned.appraisal && {
        household,
        evidence,
        series,
        undone,
        damage,
        estimates,
        checks,
        appraisal: reckoned.appraisal,
        today,
        settings,
        change,
        reload,
        openWorking: setWorking,
        tell,
        goTo,
      },
    [
      household,
      evidence,
      series,
      undone,
      damage,
      estimates,
      checks,
      reckoned,
      today,
      settings,
      change,
      reload,
      tell,
      goTo,
    ],
  );

  if (desk === null) {
    return (
      <>
        <CannotReckon name={household.name} failure={reckoned.failure} said={said} />
        <ExportByMenu id={household.id} name={household.name} tell={tell} />
      </>
    );
  }
  return (
    <HouseholdContext value={desk} key={countryOf(household)}>
      {stage === 'walk' ? (
        <>
          <StageView stage={stage} />
          <Questions />
        </>
      ) : (
        <div className="desk">
          <button type="button" className="skip" onClick={skipToPage}>
            {say('Skip to the page')}
          </button>
          <Thread stage={stage}>
            <KeepLine status={status} edited={edited} said={said} />
            <Questions />
          </Thread>
          <main className="page" id="page" tabIndex={-1} key={stage}>
            <GlossaryPage>
              <StageView stage={stage} />
            </GlossaryPage>
          </main>
        </div>
      )}
      {working === null ? null : (
        <Dialog title={sayTold(working.title)} onClose={() => setWorking(null)} side>
          <WorkingView working={working} />
        </Dialog>
      )}
      <ExportByMenu id={household.id} name={household.name} tell={tell} />
    </HouseholdContext>
  );
}

/** The shell's menu asks for a file of this household; what goes along is shown first. */
function ExportByMenu(props: { readonly id: string; readonly name: string; readonly tell: (said: string) => void }) {
  const { id, name, tell } = props;
  const [isOpen, setOpen] = useState(false);
  useEffect(() => onMenuCommand((command) => command === 'export' && setOpen(true)), []);
  if (!isOpen) return null;
  return (
    <ExportDialog
      name={name}
      onExport={(withFiles) =>
        exportHousehold(id, withFiles).then(
          (stayedOut) => stayedOut !== null && tell(stayedOut),
          (reason) => tell(describeFailure(reason)),
        )
      }
      onClose={() => setOpen(false)}
    />
  );
}

/** A button and no link: the address after # belongs to the routes. */
function skipToPage(): void {
  document.getElementById('page')?.focus();
}

function CannotReckon(props: { readonly name: string; readonly failure: string; readonly said: string }) {
  return (
    <Stopped
      sentence={say('We could not work out {name}.', { name: props.name })}
      detail={say('What was saved is safe. The fault was ours: {failure}', { failure: props.failure })}
      remedy={say('Export the household from the list and send it to us with this line.')}
    >
      <a className="btn" href="#/">
        {say('All households')}
      </a>
      <p role="status">{props.said}</p>
    </Stopped>
  );
}

type Reckoned =
  | { readonly appraisal: Appraisal; readonly failure: '' }
  | { readonly appraisal: null; readonly failure: string };

/** Runs the model; a fault of ours becomes a sentence instead of a blank window. */
function reckon(run: () => Appraisal): Reckoned {
  try {
    return { appraisal: run(), failure: '' };
  } catch (reason) {
    console.error(reason);
    return { appraisal: null, failure: reason instanceof Error ? reason.message : String(reason) };
  }
}

const SHOWN_MS = 8000;

/** A message that stands for a while and then makes room. */
function useSaid(): readonly [string, (message: string) => void] {
  const [said, setSaid] = useState('');
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  useEffect(() => () => clearTimeout(timer.current), []);
  const tell = useCallback((message: string) => {
    clearTimeout(timer.current);
    setSaid(message);
    timer.current = setTimeout(() => setSaid(''), SHOWN_MS);
  }, []);
  return [said, tell];
}
