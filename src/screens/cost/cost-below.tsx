/** What the running cost is made of, and what would move it: all that stands below the sliders. */
import type { Appraisal } from '../../model/shapes/appraisal.ts';
import { say } from '../../words/say.ts';
import { BalanceLines } from './balance-lines.tsx';
import { DriversSection } from './drivers-section.tsx';
import { Following } from './following.tsx';
import { LifetimeSection } from './lifetime-section.tsx';
import { MonthsFigure } from './months-figure.tsx';
import { SystemsTable } from './systems-table.tsx';
import { TwentyFigure } from './twenty-figure.tsx';
import type { WhatIfState } from './use-what-if.ts';

const drawTwenty = (appraisal: Appraisal) => <TwentyFigure appraisal={appraisal} />;
const drawMonths = (appraisal: Appraisal) => <MonthsFigure appraisal={appraisal} />;
const drawMadeOf = (appraisal: Appraisal) => (
  <section aria-labelledby="made-of">
    <h3 id="made-of">{say('What the cost is made of')}</h3>
    <SystemsTable appraisal={appraisal} />
  </section>
);
const drawBalance = (appraisal: Appraisal) => <BalanceLines appraisal={appraisal} />;
const drawYears = (appraisal: Appraisal) => <LifetimeSection appraisal={appraisal} />;

export function CostBelow(props: {
  readonly state: Pick<WhatIfState, 'appraisal' | 'followed' | 'knobs'>;
  /** True where the table stands above already. */
  readonly asTable: boolean;
}) {
  const { appraisal, followed, knobs } = props.state;
  return (
    <>
      <Following value={appraisal} draw={drawTwenty} />
      <Following value={appraisal} draw={drawMonths} />
      {props.asTable ? null : <Following value={appraisal} draw={drawMadeOf} />}
      <Following value={appraisal} draw={drawBalance} />
      <DriversSection followed={followed} knobs={knobs} />
      <Following value={appraisal} draw={drawYears} />
    </>
  );
}
