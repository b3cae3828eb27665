import { useHousehold } from '../household-context.tsx';
import { WalkThrough } from './walk-through.tsx';

/** The walk-through at its own address; closing it goes back to the running cost. */
export function Walk() {
  const { goTo } = useHousehold();
  return <WalkThrough onClose={() => goTo('cost')} />;
}
