/** Month by month since the written estimate; it needs no bill. */

import { ChartFigure } from '../../charts/figure.tsx';
import { FollowingPicture } from '../../charts/following/picture.tsx';
import { followingName, followingSentence } from '../../charts/following/sentence.ts';
import { followingTable } from '../../charts/following/table.ts';
import { heatPumpOf } from '../../model/bill-gap/estimate-for-days.ts';
import { followEstimate } from '../../model/bill-gap/follow-months.ts';
import { sumRegisters } from '../../model/evidence/sum-registers.ts';
import { referenceOf } from '../../reference/index.ts';
import { followingWorking } from '../../words/explained/estimate-workings.ts';
import { notFollowedSentence } from '../../words/following.ts';
import { say } from '../../words/say.ts';
import { useEstimate } from '../estimate/use-estimate.ts';
import { useHousehold } from '../household-context.tsx';
import { HowWeKnow } from '../shared/how-we-know.tsx';

export function FollowingFigure(props: { readonly estimateId: string; readonly pencePerKWh: number | undefined }) {
  const series = sumRegisters(useHousehold().series);
  const read = useEstimate(props.estimateId);
  if (read.kind !== 'read') return null;
  const { estimate } = read;
  const months = followEstimate(estimate, series, referenceOf(estimate.household));
  const { split, bought } = heatPumpOf(estimate);

  const following = {
    months,
    pencePerKWh: props.pencePerKWh ?? (bought.value > 0 ? split.unitsPence / bought.value : Number.NaN),
  };
  const hasHouseMeter = series.some(
    ({ carrier, role, to }) => carrier === 'electricity' && role === 'import' && to > estimate.appraisal.asOf,
  );
  return (
    <section className="stack" aria-labelledby="following-head">
      <h3 id="following-head">{say('Month by month since the estimate')}</h3>
      {months.length > 0 ? (
        <ChartFigure
          name={followingName()}
          sentence={followingSentence(following)}
          picture={<FollowingPicture series={following} size="desk" />}
          table={followingTable(following)}
          known={
            <HowWeKnow find={() => [followingWorking(months, following.pencePerKWh)]} about={followingName()} plain />
          }
          note={say(
            'kWh by month. The box is what 8 months in 10 should take in the weather that came; a diamond is outside it.',
          )}
        />
      ) : (
        <p className="quiet">{notFollowedSentence(hasHouseMeter)}</p>
      )}
    </section>
  );
}
