/** The order of the round as it is shown: first the whole, then its six places. */
import { CYCLE_STEPS, type CycleStep } from '../../../words/cycle.ts';

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
