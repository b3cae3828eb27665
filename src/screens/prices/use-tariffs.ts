import type { Household } from '../../model/shapes/household.ts';
import type { Tariff } from '../../model/shapes/tariff.ts';

export type TariffUse = 'electricityTariffId' | 'gasTariffId' | 'storageTariffId';

/**
 * Puts a tariff into the household, in place of one with the same id, and uses it. One without an id gets its own only
 * here: two editors may be open at once.
 */
export function placeTariff(tariff: Tariff, use: TariffUse): (household: Household) => Household {
  return (household) => {
    const id = tariff.id || freeTariffId(household.tariffs, tariff.fuel);
    const others = household.tariffs.filter((one) => one.id !== id);
    return {
      ...household,
      tariffs: [...others, { ...tariff, id }],
      prices: { ...household.prices, [use]: id },
    };
  };
}

/** Uses another tariff, or the built-in price when none is named. */
export function pickTariff(id: string | undefined, use: TariffUse): (household: Household) => Household {
  return (household) => {
    const { [use]: _before, ...rest } = household.prices;
    return { ...household, prices: id === undefined ? rest : { ...rest, [use]: id } };
  };
}

/** Takes a tariff out of the household, and out of every use of it. */
export function dropTariff(id: string): (household: Household) => Household {
  return (household) => {
    const prices = { ...household.prices };
    for (const use of ['electricityTariffId', 'gasTariffId', 'storageTariffId'] as const) {
      if (prices[use] === id) delete prices[use];
    }
    return { ...household, prices, tariffs: household.tariffs.filter((one) => one.id !== id) };
  };
}

function freeTariffId(tariffs: readonly Tariff[], fuel: Tariff['fuel']): string {
  let count = tariffs.length + 1;
  while (tariffs.some((tariff) => tariff.id === `${fuel}-${count}`)) count += 1;
  return `${fuel}-${count}`;
}
