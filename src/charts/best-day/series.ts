/** A cold day of the cheapest tariff on which hours can be moved. */
import type { ColdDay, TariffChoice } from '../../model/shapes/tariff-choice.ts';
import { tariffName } from '../../words/which-tariff.ts';

export interface BestDaySeries extends ColdDay {
  /** Name of the tariff. */
  readonly name: string;
}

/** Null where on the cheapest tariff nothing can be moved. */
export function bestDaySeries({ costs }: Pick<TariffChoice, 'costs'>): BestDaySeries | null {
  const [first] = costs;
  return first?.bestHours ? { ...first.bestHours.day, name: tariffName(first) } : null;
}
