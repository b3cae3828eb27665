/** The household's tariffs beside each other, each with all the electricity of the home; nothing where it has none of its own. */
import { useDeferredValue, useMemo } from 'react';
import { ChartFigure } from '../../charts/figure.tsx';
import { SpreadPicture } from '../../charts/spread/picture.tsx';
import { compareTariffs } from '../../model/choices/compare-tariffs.ts';
import { referenceOf } from '../../reference/index.ts';
import { tariffWorkings } from '../../words/explained/tariffs.ts';
import { say } from '../../words/say.ts';
import { tariffCells, tariffHeadline, tariffHeads, tariffName, tariffNotes } from '../../words/tariff-choice.ts';
import { useHousehold } from '../household-context.tsx';
import { HowWeKnow } from '../shared/how-we-know.tsx';

export function TariffChoiceFigure() {
  const { household, series, today } = useHousehold();
  // Typing in a field never waits for it.
  const shown = useDeferredValue(household);
  const choice = useMemo(
    () => compareTariffs({ household: shown, series, reference: referenceOf(shown), asOf: today }),
    [shown, series, today],
  );
  if (!choice) return null;
  const { costs, inUse } = choice;
  const name = say('Which tariff');
  const rows = costs.map((cost) => ({
    id: cost.tariffId ?? 'published',
    name: tariffName(cost),
    ours: cost.tariffId === inUse,
    grade: cost.whole.grade,
    cost: { low: cost.whole.low, middle: cost.whole.value, high: cost.whole.high },
  }));
  const columns = tariffHeads(choice).map((head, i) => (i === 0 ? { name: head } : { name: head, number: true }));
  return (
    <section aria-busy={shown !== household}>
      <h3>{name}</h3>
      <ChartFigure
        name={name}
        sentence={tariffHeadline(choice)}
        picture={<SpreadPicture rows={rows} size="desk" height={80 + 56 * rows.length} />}
        table={{
          caption: say('All electricity of the home in a year, heat pump included, on each tariff.'),
          columns,
          rows: costs.map((cost) => ({ cells: [...tariffCells(cost)], ours: cost.tariffId === inUse })),
        }}
        known={<HowWeKnow find={() => tariffWorkings(choice)} about={name} plain />}
        note={tariffNotes(choice).join(' ')}
      />
    </section>
  );
}
