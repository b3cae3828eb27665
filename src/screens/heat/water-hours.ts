import type { WaterHours } from '../../model/shapes/household.ts';
import { phrase } from '../../words/say.ts';
import type { Choice } from '../shared/choice-field.tsx';

/** When hot water is made; it matters where a unit costs another price at another hour. */
export const WATER_HOURS: readonly Choice<WaterHours>[] = [
  { value: 'schedule', label: phrase('by schedule') },
  { value: 'night', label: phrase('in the cheap night hours') },
  { value: 'drawn', label: phrase('when it is used') },
];
