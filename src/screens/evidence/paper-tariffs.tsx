import type { Household } from '../../model/shapes/household.ts';
import type { Tariff } from '../../model/shapes/tariff.ts';
import { longDate } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { carrierName } from '../../words/systems.ts';
import { useHousehold } from '../household-context.tsx';
import { placeTariff } from '../prices/use-tariffs.ts';

/** The prices of a bill, kept as the household's own tariff. Where the bill does not say a night rate's hours, that is said. */
export function PaperTariffs(props: { readonly tariffs: readonly Tariff[] }) {
  const { household, change, tell } = useHousehold();
  const keep = (tariff: Tariff) => {
    const from = longDate(tariff.versions[0]!.from);
    const own = { ...tariff, id: '', name: say('Prices of the bill from {day}', { day: from }) };
    change((now) =>
      placeTariff(keptOf(now, tariff) ?? own, tariff.fuel === 'gas' ? 'gasTariffId' : 'electricityTariffId')(now),
    );
    tell(
      tariff.grade === 'assumed'
        ? say(
            'The tariff is saved. We did not read when the night rate applies, so we used 00:00 to 07:00. Correct it under Prices.',
          )
        : say('The tariff is saved, and used under Prices.'),
    );
  };
  // Of several bills of one fuel the last one's prices hold now.
  return [...new Map(props.tariffs.map((tariff) => [tariff.fuel, tariff])).values()].map((tariff) => (
    <button key={tariff.id} type="button" onClick={() => keep(tariff)}>
      {keptOf(household, tariff)
        ? say('Its tariff for {fuel} is saved', { fuel: carrierName(tariff.fuel) })
        : say('Save its tariff for {fuel} too', { fuel: carrierName(tariff.fuel) })}
    </button>
  ));
}

/** The same prices of the same bill, so that a second press makes no second tariff. */
const keptOf = ({ tariffs }: Household, { fuel, origin, versions }: Tariff): Tariff | undefined => {
  const sameAs = JSON.stringify([fuel, origin, versions]);
  return tariffs.find((one) => JSON.stringify([one.fuel, one.origin, one.versions]) === sameAs);
};
