/** What drives the cost, from what the sliders show: reckoned once they rest, in pieces that hold nothing up. */
import { startTransition, useEffect, useState } from 'react';
import type { WhatIf } from '../../model/shapes/appraisal.ts';
import { stepWhatDrives, type WhatDrives } from '../../model/what-drives/what-drives.ts';
import { referenceOf } from '../../reference/index.ts';
import { useHousehold } from '../household-context.tsx';
import { REST_MS } from './following.tsx';

/** Half a frame: then whatever waits comes first. */
const SLICE_MS = 8;

export function useDrives(whatIf: WhatIf): WhatDrives | null {
  const { household, series, today } = useHousehold();
  const [drives, setDrives] = useState<WhatDrives | null>(null);
  useEffect(() => {
    const steps = stepWhatDrives({ household, series, reference: referenceOf(household), asOf: today, whatIf });
    const work = () => {
      const until = performance.now() + SLICE_MS;
      while (performance.now() < until) {
        const next = steps.next();
        if (next.done) {
          startTransition(() => setDrives(next.value));
          return;
        }
      }
      timer = setTimeout(work, 0);
    };
    let timer = setTimeout(work, REST_MS);
    return () => clearTimeout(timer);
  }, [household, series, today, whatIf]);
  return drives;
}
