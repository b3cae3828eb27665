import { useCallback, useEffect, useState } from 'react';
import type { Tariff } from '../../model/shapes/tariff.ts';
import { versionOn } from '../../model/tariff/slot-price.ts';
import { tariffWorking } from '../../words/explained/prices.ts';
import { say } from '../../words/say.ts';
import { call } from '../desk.ts';
import { useHousehold } from '../household-context.tsx';
import { HowWeKnow } from '../shared/how-we-know.tsx';
import { Refused } from '../shared/refused.tsx';
import { describeFailure } from '../state/describe-failure.ts';
import { tariffInShort } from './tariff-in-short.ts';
import { placeTariff } from './use-tariffs.ts';

/** Tariffs kept for other households; a copy is taken, so that a change here changes no estimate there. */
export function TariffShelf() {
  const { household, today, change, tell } = useHousehold();
  const [shelf, setShelf] = useState<readonly Tariff[] | null>(null);
  const [failure, setFailure] = useState<string | null>(null);
  const read = useCallback(
    () =>
      call('tariff.shelf', {}).then(setShelf, (reason) => {
        setShelf([]);
        setFailure(describeFailure(reason));
      }),
    [],
  );
  // biome-ignore lint/correctness/useExhaustiveDependencies: a tariff of this household may just have been put on the shelf.
  useEffect(() => {
    void read();
  }, [read, household.tariffs]);

  const take = (tariff: Tariff) => {
    change(placeTariff({ ...tariff, id: '' }, tariff.fuel === 'gas' ? 'gasTariffId' : 'electricityTariffId'));
    tell(say('{name} is used now.', { name: tariff.name }));
  };
  const drop = async (tariff: Tariff) => {
    try {
      await call('tariff.drop', { tariffId: tariff.id });
      await read();
    } catch (reason) {
      setFailure(describeFailure(reason));
    }
  };
  return (
    <details
      className="shelf"
      aria-busy={shelf === null && failure === null}
      onToggle={(event) => event.currentTarget.open && void read()}
    >
      <summary>
        {shelf === null
          ? say('Saved tariffs')
          : say('Saved tariffs, {count, plural, =0 {none yet} other {#}}', {
              count: shelf.length,
            })}
      </summary>
      <Refused text={failure} />
      {shelf?.length === 0 ? (
        <p className="quiet">
          {say('Use a tariff above, then save it for other households. It will be here for the next home.')}
        </p>
      ) : null}
      <ul className="kept">
        {(shelf ?? []).map((tariff) => (
          <li key={tariff.id} className="kept-one">
            <div className="kept-series">
              <p>
                <strong>{tariff.name}</strong>, {say(tariff.fuel)}
              </p>
              <p className="quiet small">
                {tariffInShort(versionOn(tariff, today))}{' '}
                <HowWeKnow find={() => [tariffWorking(versionOn(tariff, today), tariff)]} about={tariff.name} plain />
              </p>
            </div>
            <button type="button" onClick={() => take(tariff)}>
              {say('Use here')}
              <span className="unseen">: {tariff.name}</span>
            </button>
            <button type="button" className="plain" onClick={() => drop(tariff)}>
              {say('Remove')}
              <span className="unseen">: {tariff.name}</span>
            </button>
          </li>
        ))}
      </ul>
    </details>
  );
}
