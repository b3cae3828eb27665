/** Sums of the same kind stand under each other on a page, so each says whose it is. */

import type { SystemResult } from '../../model/shapes/appraisal.ts';
import { rangedCostWorking } from '../../words/explained/ranged.ts';
import { sayTold } from '../../words/say-told.ts';
import { systemInSentence } from '../../words/systems.ts';
import type { ShownWorking } from '../../words/working.ts';

export function costWorking(system: SystemResult): ShownWorking {
  const title = `${sayTold(system.cost.working.title)}: ${systemInSentence(system.id, system.kind)}`;
  return { ...rangedCostWorking(system), title: { said: title } };
}
