/** The household's tariffs beside each other, each with all the electricity of the home; nothing where it has none of its own. */
import { useDeferredValue, useMemo } from 'react';
import { ChartTableView } from '../../charts/frame/chart-table.tsx';
import { compareTariffs } from '../../model/choices/compare-tariffs.ts';
import { referenceOf } from '../../reference/index.ts';
import { tariffWorkings } from '../../words/explained/tariffs.ts';
import { say } from '../../words/say.ts';
import { tariffNotes, tariffNotesInShort, waysTable } from '../../words/tariff-choice.ts';
import { useHousehold } from '../household-context.tsx';
import { BestDayFigure } from '../shared/best-day-figure.tsx';
import { HowWeKnow } from '../shared/how-we-know.tsx';
import { TariffBars, tariffBarsName } from '../shared/tariff-bars.tsx';

export function TariffChoiceFigure() {
  const { household, series, today } = useHousehold();
  // Typing in a field never waits for it.
  const shown = useDeferredValue(household);
  const choice = useMemo(
    () => compareTariffs({ household: shown, series, reference: referenceOf(shown), asOf: today }),
    [shown, series, today],
  );
  if (!choice) return null;
  return (
    <section aria-busy={shown !== household}>
      <h3>{tariffBarsName()}</h3>
      <TariffBars
        choice={choice}
        size="desk"
        known={<HowWeKnow find={() => tariffWorkings(choice)} about={tariffBarsName()} plain />}
        note={tariffNotesInShort(choice).join(' ')}
      />
      <details className="notes">
        <summary>{say('All that is counted, and how')}</summary>
        <ul>
          {tariffNotes(choice).map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      </details>
      <ChartTableView table={waysTable(choice)} />
      <BestDayFigure choice={choice} size="desk" />
    </section>
  );
}
