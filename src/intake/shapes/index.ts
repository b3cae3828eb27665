/** Every shape that intake knows. A new one is a new file, named here. */

import type { IntakeShape } from '../importer/shape.ts';
import { bills } from './bills.ts';
import { daily } from './daily.ts';
import { deliveries } from './deliveries.ts';
import { longInterval } from './long-interval.ts';
import { register } from './register.ts';
import { wideDays } from './wide-days.ts';

export const SHAPES: readonly IntakeShape[] = [longInterval, wideDays, daily, bills, deliveries, register];
