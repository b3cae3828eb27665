/** Whether the cheapest hours are the cheapest: against all ways to lay the same heat, in small stores at random. */
import { shiftHeat } from '../../src/model/hours/shift-heat.ts';
import { cheapestByTrying, randomStore } from '../unit/hours/try-every-way.ts';
import type { ProofTable } from './table.ts';

const HALF_HOURS = 6;
const LEVELS_TRIED = 10;
/** The most that the hours found may cost over the best tried, as a share. */
const MOST_OVER = 0.005;

export function proveHours(count = 500): ProofTable {
  const over = Float64Array.from({ length: count }, (_, seed) => {
    const store = randomStore(seed + 1, HALF_HOURS);
    return shiftHeat(store).pence / cheapestByTrying(store, LEVELS_TRIED) - 1;
  }).sort();
  const percent = (share: number) => (100 * share).toFixed(3);
  const worst = over[count - 1]!;
  return {
    title: `Hours found against ${LEVELS_TRIED + 1} levels of heat in each of ${HALF_HOURS} half-hours, ${count} stores at random`,
    columns: ['dearer than the best tried, %', 'least', 'middle', 'most', 'limit'],
    rows: [['', percent(over[0]!), percent(over[count >> 1]!), percent(worst), percent(MOST_OVER)]],
    within: worst <= MOST_OVER,
  };
}
