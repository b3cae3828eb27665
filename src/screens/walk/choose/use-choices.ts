import { useDeferredValue, useMemo, useState } from 'react';
import { compareTariffs } from '../../../model/choices/compare-tariffs.ts';
import type { TariffChoice } from '../../../model/shapes/tariff-choice.ts';
import { referenceOf } from '../../../reference/index.ts';
import { useHousehold } from '../../household-context.tsx';
import { householdWith, type ShownSwitch, type SwitchName, switchesOf, type Turned } from './switches.ts';

export interface Choices {
  /** Null where the household has no tariff of its own to compare. */
  readonly choice: TariffChoice | null;
  readonly switches: readonly ShownSwitch[];
  /** True while the bars are still those of the switches as they stood before. */
  readonly isOld: boolean;
  /** True where hot water stands otherwise than in the household. A roof switched off here stays the household's. */
  readonly mayKeep: boolean;
  readonly turn: (name: SwitchName) => void;
  /** Takes the hours of hot water into the household, and so into the estimate. */
  readonly keep: () => void;
}

/** The tariffs under what is switched on; combinations seen before are kept as long as the household stays as it is. */
export function useChoices(): Choices {
  const { household, series, today, change } = useHousehold();
  const [turned, setTurned] = useState<Turned>([]);
  const shown = useDeferredValue(turned);
  const seen = useMemo(() => {
    const results = new Map<string, TariffChoice | null>();
    return (so: Turned): TariffChoice | null => {
      const key = so.toSorted().join(' ');
      const before = results.get(key);
      if (before !== undefined) return before;
      const switched = householdWith(household, so);
      const made = compareTariffs({ household: switched, series, reference: referenceOf(switched), asOf: today });
      results.set(key, made);
      return made;
    };
  }, [household, series, today]);
  const choice = useMemo(() => seen(shown), [seen, shown]);
  return {
    choice,
    switches: switchesOf(household, turned),
    isOld: shown !== turned,
    mayKeep: turned.includes('night-water'),
    turn: (name) =>
      setTurned((before) => (before.includes(name) ? before.filter((one) => one !== name) : [...before, name])),
    keep: () => {
      change((before) => householdWith(before, ['night-water']));
      setTurned((before) => before.filter((one) => one !== 'night-water'));
    },
  };
}
