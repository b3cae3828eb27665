import type { Tariff } from '../../model/shapes/tariff.ts';
import { say } from '../../words/say.ts';
import { carrierName } from '../../words/systems.ts';
import { useHousehold } from '../household-context.tsx';
import { placeTariff } from '../prices/use-tariffs.ts';

/** The prices of a bill, kept as the household's own tariff. A night rate's hours stand on no bill, and that is said. */
export function PaperTariffs(props: { readonly tariffs: readonly Tariff[] }) {
  const { change, tell } = useHousehold();
  const keep = (tariff: Tariff) => {
    change(placeTariff({ ...tariff, id: '' }, tariff.fuel === 'gas' ? 'gasTariffId' : 'electricityTariffId'));
    tell(
      tariff.grade === 'assumed'
        ? say(
            'The tariff is saved. The bill does not say when the night rate applies, so we used 00:00 to 07:00. Correct it under Prices.',
          )
        : say('The tariff is saved, and used under Prices.'),
    );
  };
  // Of several bills of one fuel the last one's prices hold now.
  return [...new Map(props.tariffs.map((tariff) => [tariff.fuel, tariff])).values()].map((tariff) => (
    <button key={tariff.id} type="button" onClick={() => keep(tariff)}>
      {say('Save its tariff for {fuel} too', { fuel: carrierName(tariff.fuel) })}
    </button>
  ));
}
