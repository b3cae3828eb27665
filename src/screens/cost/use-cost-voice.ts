/** The opening sentence of the running cost and the line below it, for what is shown. */
import { useMemo } from 'react';
import { findSideBySide } from '../../model/comparison/beside.ts';
import type { Appraisal, WhatIf } from '../../model/shapes/appraisal.ts';
import { isFuel } from '../../model/shapes/heating.ts';
import { costSentence, designSentence, rangeSentence, usualHomeSentence } from '../../words/cost.ts';
import { rangedCostWorking } from '../../words/explained/ranged.ts';
import { spokenPounds } from '../../words/numbers.ts';
import { ageSentence, datesApart, datesSentence } from '../../words/prices.ts';
import { say } from '../../words/say.ts';
import { futuresSentence } from '../../words/sure.ts';
import type { SpokenFigure } from '../shared/spoken.tsx';
import { isUnchanged, type Knob, sayWhatIf } from './knobs.ts';
import type { WhatIfState } from './use-what-if.ts';

export interface CostVoice {
  readonly sentence: string;
  readonly figures: readonly SpokenFigure[];
  readonly remainder: string;
  readonly remainderFigures: readonly SpokenFigure[];
}

export function useCostVoice({ appraisal, knobs, followed }: WhatIfState): CostVoice {
  return useMemo(() => costVoice(appraisal, knobs, followed), [appraisal, knobs, followed]);
}

function costVoice(appraisal: Appraisal, knobs: readonly Knob[], followed: WhatIf): CostVoice {
  const { pump, beside, versus } = findSideBySide(appraisal);
  const { electricity } = appraisal.prices;
  const burnt = beside && isFuel(beside.carrier) ? beside.carrier : null;
  const futures = versus ? futuresSentence(versus.twenty) : '';
  const parts = [
    isUnchanged(followed) ? '' : say('What if: {changes}.', { changes: sayWhatIf(knobs, followed) }),
    usualHomeSentence(appraisal),
    futures,
    rangeSentence(pump),
    designSentence(pump),
    datesApart(appraisal.prices, burnt) || datesSentence(electricity),
    ageSentence(electricity, 'electricity'),
  ];
  return {
    sentence: costSentence(appraisal),
    figures: [
      { text: spokenPounds(pump.cost.value), working: rangedCostWorking(pump) },
      ...(beside ? [{ text: spokenPounds(beside.cost.value), working: rangedCostWorking(beside) }] : []),
    ],
    remainder: parts.filter(Boolean).join(' '),
    remainderFigures: versus
      ? [{ text: futures.slice(0, futures.indexOf(say(' the heat pump'))), working: versus.saving.working }]
      : [],
  };
}
