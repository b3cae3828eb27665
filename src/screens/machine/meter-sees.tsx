import { factor, spokenCount } from '../../words/numbers.ts';
import { useHousehold } from '../household-context.tsx';
import { FigureButton } from '../shared/spoken.tsx';

/** Why the meter sees a lower factor than the data sheet says. */
export function MeterSees() {
  const { appraisal, openWorking } = useHousehold();
  const { machine } = appraisal;
  const { space, water, whole, boundary, extraKWh } = machine;
  return (
    <section>
      <h3>What the meter will see</h3>
      <p className="explain">
        Rooms alone: <FigureButton text={factor(space.value)} working={space.working} onOpen={openWorking} />. Hot water
        alone: <FigureButton text={factor(water.value)} working={water.working} onOpen={openWorking} />, since it must
        be hotter. {boundary === 'H4' ? '' : `Both are given at ${boundary}. `}
        {extraKWh > 0
          ? `Pumps, standby and the weekly hot cylinder take about ${spokenCount(extraKWh)} units a year more. `
          : ''}
        Together the meter sees <FigureButton text={factor(whole.value)} working={whole.working} onOpen={openWorking} />
        . Say this before the first bill does.
      </p>
    </section>
  );
}
