/** Inside the machine: the round of the heat with this household's own numbers, place by place, for reading across a table. */
import { type KeyboardEvent, useEffect, useId, useMemo, useRef, useState } from 'react';
import { CyclePicture } from '../../../charts/cycle/picture.tsx';
import { cycleName, cycleSentence } from '../../../charts/cycle/sentence.ts';
import { cycleSeries } from '../../../charts/cycle/series.ts';
import { cycleTable } from '../../../charts/cycle/table.ts';
import { ChartFigure } from '../../../charts/figure.tsx';
import { loopWorking } from '../../../model/cycle/loop-working.ts';
import { heatOfHousehold } from '../../../model/heat-of-household.ts';
import { designLoop } from '../../../model/heat-pump/full/design-loop.ts';
import type { WhatIf } from '../../../model/shapes/appraisal.ts';
import { referenceOf } from '../../../reference/index.ts';
import { refrigerants } from '../../../reference/refrigerants.ts';
import { CYCLE_STEPS, type CycleStep, cycleFaultSentence, cycleStepName, insideFoot } from '../../../words/cycle.ts';
import { keepTogether } from '../../../words/keep-together.ts';
import { useHousehold } from '../../household-context.tsx';
import { HowWeKnow } from '../../shared/how-we-know.tsx';
import '../../../charts/cycle/cycle.css';
import './inside.css';
import { say } from '../../../words/say.ts';

export function InsideMachine(props: { readonly onClose: () => void; readonly whatIf?: WhatIf | undefined }) {
  const { onClose, whatIf } = props;
  const { household, series, today } = useHousehold();
  const { dialog, shown, setShown, onKeyDown } = useSteps();
  const titleId = useId();
  const design = useMemo(
    () =>
      designLoop(
        heatOfHousehold({
          household,
          series,
          reference: referenceOf(household),
          asOf: today,
          ...(whatIf ? { whatIf } : {}),
        }),
        refrigerants,
      ),
    [household, series, today, whatIf],
  );
  const made = design.result.ok
    ? cycleSeries(
        design.result.loop,
        household.machine.emitters === 'floor' ? 'floor' : 'radiators',
        design.from,
        design.air,
      )
    : null;
  const loopWorkings = design.result.ok
    ? [loopWorking(design.result.loop, design, refrigerants[design.result.loop.refrigerant].source)]
    : [];
  const at = SHOWN.indexOf(shown);
  return (
    <dialog
      ref={dialog}
      className="inside"
      tabIndex={-1}
      aria-labelledby={titleId}
      onKeyDown={onKeyDown}
      onCancel={(event) => {
        if (event.target !== dialog.current) return;
        event.preventDefault();
        onClose();
      }}
    >
      <h1 className="voice" id={titleId} aria-live="polite">
        {made ? keepTogether(cycleSentence(made, shown)) : say('The cycle cannot be shown with these temperatures.')}
      </h1>
      {made ? (
        <>
          <div className="inside-fill">
            <ChartFigure
              sentenceSaid
              savable={false}
              name={cycleName()}
              sentence={cycleSentence(made, shown)}
              picture={<CyclePicture series={made} size="table" lit={shown} moving />}
              table={cycleTable(made)}
            />
          </div>
          <nav className="inside-steps screen-only" aria-label={say('Places on the cycle')}>
            {SHOWN.map((step, index) => (
              <button
                key={step ?? 'whole'}
                type="button"
                aria-current={step === shown ? 'step' : undefined}
                onClick={() => setShown(step)}
              >
                {step === null ? say('All of it') : `${index} ${cycleStepName(step, design.from)}`}
              </button>
            ))}
          </nav>
        </>
      ) : (
        <p className="walk-say voice">{design.result.ok ? '' : cycleFaultSentence(design.result.fault)}</p>
      )}
      <footer className="walk-foot">
        <span className="quiet walk-home">{made ? insideFoot(household, design.designOutdoorC) : household.name}</span>
        <span className="walk-actions screen-only">
          {design.result.ok ? <HowWeKnow find={() => loopWorkings} /> : null}
          {made ? (
            <>
              <button type="button" disabled={at === 0} onClick={() => setShown(SHOWN[at - 1]!)}>
                {say('Step back')}
              </button>
              <button
                type="button"
                className="main"
                disabled={at === SHOWN.length - 1}
                onClick={() => setShown(SHOWN[at + 1]!)}
              >
                {say('Next step')}
              </button>
            </>
          ) : null}
          <button type="button" onClick={onClose}>
            {say('Close')}
          </button>
        </span>
      </footer>
    </dialog>
  );
}

/** The open dialog, and the place that the arrows have come to in it. */
function useSteps() {
  const [shown, setShown] = useState<Shown>(null);
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const element = dialog.current;
    if (element && !element.open) element.showModal();
    // So that the arrows and T work at once, wherever the focus would have gone.
    element?.focus();
    return () => element?.close();
  }, []);
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    // The working opened over it has its own keys.
    if (event.target instanceof Element && event.target.closest('dialog') !== dialog.current) return;
    if (event.key.toLowerCase() === 't') {
      dialog.current?.querySelector<HTMLElement>('.chart-tools button')?.click();
      return;
    }
    const to = stepOf(event.key, shown);
    if (to === 'stay') return;
    event.preventDefault();
    setShown(to);
  };
  return { dialog, shown, setShown, onKeyDown };
}

export type Shown = CycleStep | null;
export const SHOWN: readonly Shown[] = [null, ...CYCLE_STEPS];

/** Where a key leads from a place, or null where it leads nowhere; the round ends at both ends. */
export function stepOf(key: string, shown: Shown): Shown | 'stay' {
  const at = SHOWN.indexOf(shown);
  const to = (index: number): Shown => SHOWN[Math.max(0, Math.min(SHOWN.length - 1, index))]!;
  switch (key) {
    case 'ArrowRight':
    case 'ArrowDown':
    case 'PageDown':
      return to(at + 1);
    case 'ArrowLeft':
    case 'ArrowUp':
    case 'PageUp':
      return to(at - 1);
    case 'Home':
      return to(0);
    case 'End':
      return to(SHOWN.length - 1);
    default:
      return 'stay';
  }
}
