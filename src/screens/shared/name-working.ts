/** Sums of the same kind stand under each other on a page, so each says whose it is. */

import type { SystemResult } from '../../model/shapes/appraisal.ts';
import { rangedWorking } from '../../words/explained/ranged.ts';
import { sayTold } from '../../words/say-told.ts';
import { systemInSentence } from '../../words/systems.ts';
import type { ShownWorking } from '../../words/working.ts';

export function costWorking({ id, kind, cost }: SystemResult): ShownWorking {
  return { ...rangedWorking(cost), title: { said: `${sayTold(cost.working.title)}: ${systemInSentence(id, kind)}` } };
}
