/** What single changes do to the heat pump's year: each is reckoned by the model, none is a rule of thumb. */
import type { Change } from '../../charts/changes/series.ts';
import { findSideBySide } from '../../model/comparison/beside.ts';
import { designFlow } from '../../model/heat-pump/flow.ts';
import type { Appraisal, WhatIf } from '../../model/shapes/appraisal.ts';
import type { Household } from '../../model/shapes/household.ts';
import type { ChangeCode } from '../../words/change.ts';

const PRICE_STEP_PENCE = 5;
const FLOW_STEP_C = 5;
const HOTTEST_FLOW_C = 75;
const LARGEST_SHARE = 5;

interface Now {
  readonly household: Household;
  /** As the sliders have it. */
  readonly appraisal: Appraisal;
  readonly whatIf: WhatIf;
}

/** Steps that people can picture, each on top of the what-if that stands. */
export function listSteps({ household, appraisal, whatIf }: Now): readonly (readonly [ChangeCode, WhatIf])[] {
  const price = appraisal.prices.electricityPencePerKWh;
  const flowC = whatIf.flowC ?? designFlow(household.machine).flowC;
  const share = price > 0 ? ((whatIf.electricityShare ?? 1) * (price + PRICE_STEP_PENCE)) / price : LARGEST_SHARE + 1;
  const steps: (readonly [ChangeCode, WhatIf])[] = [['winter-cold', { winter: 'cold' }]];
  if (share <= LARGEST_SHARE) steps.push(['electricity-up', { electricityShare: share }]);
  if (appraisal.demand.roomC < 29) steps.push(['room-up', { roomC: appraisal.demand.roomC + 1 }]);
  if (appraisal.demand.water.value > 0) steps.push(['water-up', { waterShare: (whatIf.waterShare ?? 1) * 1.5 }]);
  if (flowC + FLOW_STEP_C <= HOTTEST_FLOW_C) steps.push(['flow-up', { flowC: flowC + FLOW_STEP_C }]);
  return steps;
}

export function reckonChanges(now: Now, appraiseWith: (whatIf: WhatIf) => Appraisal): Change[] {
  const today = findSideBySide(now.appraisal).pump.cost.value;
  return listSteps(now).map(([code, step]) => ({
    code,
    pence: findSideBySide(appraiseWith({ ...now.whatIf, ...step })).pump.cost.value - today,
  }));
}
