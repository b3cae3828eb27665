import { CheckStage } from './check/check-stage.tsx';
import { CostStage } from './cost/cost-stage.tsx';
import { EstimateStage } from './estimate/estimate-stage.tsx';
import { EvidenceStage } from './evidence/evidence-stage.tsx';
import { HeatStage } from './heat/heat-stage.tsx';
import { MachineStage } from './machine/machine-stage.tsx';
import { PricesStage } from './prices/prices-stage.tsx';
import type { Stage } from './routes.ts';
import { SiteStage } from './site/site-stage.tsx';
import { Walk } from './walk/walk.tsx';

const VIEWS: { readonly [stage in Stage]: () => React.ReactNode } = {
  evidence: EvidenceStage,
  heat: HeatStage,
  machine: MachineStage,
  prices: PricesStage,
  cost: CostStage,
  estimate: EstimateStage,
  check: CheckStage,
  site: SiteStage,
  walk: Walk,
};

export function StageView(props: { readonly stage: Stage }) {
  const View = VIEWS[props.stage];
  return <View />;
}
