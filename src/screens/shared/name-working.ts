/** Sums of the same kind stand under each other on a page, so each says whose it is. */

import { rangedWorking } from '../../model/explained/ranged.ts';
import type { SystemResult } from '../../model/shapes/appraisal.ts';
import type { Working } from '../../model/shapes/working.ts';
import { reword } from '../../words/say.ts';
import { systemInSentence } from '../../words/systems.ts';

export function costWorking({ id, kind, cost }: SystemResult): Working {
  return { ...rangedWorking(cost), title: `${reword(cost.working.title)}: ${systemInSentence(id, kind)}` };
}
