/** Every shape that intake knows. A new one is a new file, named here. */
import { longInterval } from './long-interval.ts';
import type { IntakeShape } from './shape.ts';

export const SHAPES: readonly IntakeShape[] = [longInterval];
