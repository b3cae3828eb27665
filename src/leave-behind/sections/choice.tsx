import { SpreadPicture } from '../../charts/spread/picture.tsx';
import { tariffRows } from '../../charts/spread/series.ts';
import { say } from '../../words/say.ts';
import { choiceCountedWith, tariffHeadline, tariffPaperNotes, waysTable } from '../../words/tariff-choice.ts';
import { NumberTable } from '../number-table.tsx';
import { PAPER_WIDTH } from '../paper.ts';
import type { EstimateParts } from '../parts.ts';

/** Room of the axis and of one tariff in the picture, CSS pixels. */
const AXIS = 36;
const ROW = 42;

/** A page of its own where the household has tariffs, a roof, a battery or a car: what it can choose, and what was counted. */
export function ChoicePart({ parts: { estimate } }: { readonly parts: EstimateParts }) {
  const { tariffs, household } = estimate;
  if (!tariffs) return null;
  const headline = tariffHeadline(tariffs);
  const { caption, columns, rows } = waysTable(tariffs);
  return (
    <section>
      <h2>{say('What you can choose')}</h2>
      <p className="plain">{headline}</p>
      <figure>
        <div role="img" aria-label={headline}>
          <SpreadPicture
            rows={tariffRows(tariffs)}
            size="paper"
            width={PAPER_WIDTH}
            height={AXIS + ROW * tariffs.costs.length}
          />
        </div>
        <figcaption>{say('All electricity of the home in a year, heat pump included, on each tariff.')}</figcaption>
      </figure>
      <table className="rests">
        <tbody>
          {choiceCountedWith(household, tariffs).map(({ what, says }) => (
            <tr key={what}>
              <th scope="row">{what}</th>
              <td>{says}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <h3>{caption}</h3>
      <NumberTable
        heads={columns.map(({ name }) => name)}
        rows={rows.map(({ cells, ours }) => ({ key: cells[0]!, cells, ours: ours === true }))}
      />
      <ul className="steps small">
        {tariffPaperNotes(tariffs).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </section>
  );
}
