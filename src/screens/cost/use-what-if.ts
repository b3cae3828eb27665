/** A what-if over the open household: the sliders' state, and the appraisal that follows them. */
import { useCallback, useDeferredValue, useMemo, useState } from 'react';
import { appraise } from '../../model/appraise.ts';
import type { Appraisal, WhatIf } from '../../model/shapes/appraisal.ts';
import { referenceOf } from '../../reference/index.ts';
import { useHousehold } from '../household-context.tsx';
import { isUnchanged, type Knob, listKnobs } from './knobs.ts';

export interface WhatIfState {
  readonly whatIf: WhatIf;
  /** The what-if that `appraisal` was reckoned with; a frame behind the sliders on a slow machine. */
  readonly followed: WhatIf;
  readonly knobs: readonly Knob[];
  /** The household as it is, or as the sliders have it. */
  readonly appraisal: Appraisal;
  readonly changed: boolean;
  readonly turn: (knob: Knob, value: number) => void;
  readonly reset: () => void;
}

const NOTHING: WhatIf = {};

/**
 * With `atOnce` the appraisal changes with the slider, before anything is painted in between; else, where more hangs on
 * each step, the slider moves first.
 */
export function useWhatIf(atOnce: boolean): WhatIfState {
  const { household, series, today, appraisal } = useHousehold();
  const [whatIf, setWhatIf] = useState<WhatIf>(NOTHING);
  const after = useDeferredValue(atOnce ? NOTHING : whatIf);
  const followed = atOnce ? whatIf : after;
  const shown = useMemo(
    () =>
      isUnchanged(followed)
        ? appraisal
        : appraise({ household, series, reference: referenceOf(household), asOf: today, whatIf: followed }),
    [household, series, today, appraisal, followed],
  );
  const knobs = useMemo(() => listKnobs(household, appraisal), [household, appraisal]);
  const turn = useCallback((knob: Knob, value: number) => setWhatIf((before) => knob.write(before, value)), []);
  const reset = useCallback(() => setWhatIf(NOTHING), []);
  return { whatIf, followed, knobs, appraisal: shown, changed: !isUnchanged(whatIf), turn, reset };
}
