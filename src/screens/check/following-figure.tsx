/** Month by month since the promise; it needs no bill. */

import { ChartFigure } from '../../charts/figure.tsx';
import { FollowingPicture } from '../../charts/following/picture.tsx';
import { followingName, followingSentence } from '../../charts/following/sentence.ts';
import { followingTable } from '../../charts/following/table.ts';
import { followPromise } from '../../model/bill-gap/follow-months.ts';
import { heatPumpOf } from '../../model/bill-gap/promised-days.ts';
import { sumRegisters } from '../../model/evidence/sum-registers.ts';
import { followingWorking } from '../../model/explained/promise.ts';
import { reference } from '../../reference/index.ts';
import { notFollowedSentence } from '../../words/following.ts';
import { say } from '../../words/say.ts';
import { useHousehold } from '../household-context.tsx';
import { usePromise } from '../promise/use-promise.ts';
import { HowWeKnow } from '../shared/how-we-know.tsx';

export function FollowingFigure(props: { readonly promiseId: string; readonly pencePerKWh: number | undefined }) {
  const series = sumRegisters(useHousehold().series);
  const read = usePromise(props.promiseId);
  if (read.kind !== 'read') return null;
  const { promise } = read;
  const months = followPromise(promise, series, reference);
  const { split, bought } = heatPumpOf(promise);

  const following = {
    months,
    pencePerKWh: props.pencePerKWh ?? (bought.value > 0 ? split.unitsPence / bought.value : Number.NaN),
  };
  const hasHouseMeter = series.some(
    ({ carrier, role, to }) => carrier === 'electricity' && role === 'import' && to > promise.appraisal.asOf,
  );
  return (
    <section className="stack" aria-labelledby="following-head">
      <h3 id="following-head">{say('Month by month since the promise')}</h3>
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
            'Units by month. The box is what 8 months in 10 should take in the weather that came; a diamond lies outside.',
          )}
        />
      ) : (
        <p className="quiet">{notFollowedSentence(hasHouseMeter)}</p>
      )}
    </section>
  );
}
