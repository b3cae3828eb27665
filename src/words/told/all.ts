/** The English of every code that the model tells. */
import type { ToldCode } from '../../model/shapes/told.ts';
import { HEAT } from './heat.ts';

export const TOLD: Readonly<Record<ToldCode, string>> = { ...HEAT };
