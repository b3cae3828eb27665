import { memo, useEffect } from 'react';
import { say } from '../words/say.ts';
import { CostStage } from './cost/cost-stage.tsx';
import type { Stage } from './routes.ts';
import { type Later, later, useLater } from './shared/later.ts';

type View = () => React.ReactNode;

/** The running cost is what a household opens with; the others are fetched after it. */
const VIEWS: { readonly [stage in Exclude<Stage, 'cost'>]: Later<View> } = {
  evidence: later(async () => (await import('./evidence/evidence-stage.tsx')).EvidenceStage),
  heat: later(async () => (await import('./heat/heat-stage.tsx')).HeatStage),
  machine: later(async () => (await import('./machine/machine-stage.tsx')).MachineStage),
  prices: later(async () => (await import('./prices/prices-stage.tsx')).PricesStage),
  estimate: later(async () => (await import('./estimate/estimate-stage.tsx')).EstimateStage),
  check: later(async () => (await import('./check/check-stage.tsx')).CheckStage),
  site: later(async () => (await import('./site/site-stage.tsx')).SiteStage),
  walk: later(async () => (await import('./walk/walk-through.tsx')).Walk),
};

/** Long enough for the stage that is open to be painted. */
const AFTER_MS = 300;

/** Not drawn again with what stands around it: a working that opens, a line that says what was kept. */
export const StageView = memo(function StageView(props: { readonly stage: Stage }) {
  useEffect(() => {
    const timer = setTimeout(() => {
      for (const view of Object.values(VIEWS)) void view.fetch();
    }, AFTER_MS);
    return () => clearTimeout(timer);
  }, []);
  return props.stage === 'cost' ? <CostStage /> : <LaterStage key={props.stage} view={VIEWS[props.stage]} />;
});

function LaterStage({ view }: { readonly view: Later<View> }) {
  const View = useLater(view);
  if (View === null) {
    return (
      <p className="opening quiet" aria-busy="true">
        {say('Opening …')}
      </p>
    );
  }
  return <View />;
}
