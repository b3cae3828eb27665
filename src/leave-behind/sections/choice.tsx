import { SpreadPicture } from '../../charts/spread/picture.tsx';
import { tariffRows } from '../../charts/spread/series.ts';
import { say } from '../../words/say.ts';
import {
  choiceCountedWith,
  tariffCells,
  tariffHeads,
  tariffNotes,
  tariffNotesInShort,
  waysTable,
} from '../../words/tariff-choice.ts';
import { tariffHeadline } from '../../words/which-tariff.ts';
import { NumberTable } from '../number-table.tsx';
import { PAPER_WIDTH } from '../paper.ts';
import type { EstimateParts } from '../parts.ts';
import { isCrowded } from './beside.tsx';

/** Room of the axis and of one tariff in the picture, CSS pixels. */
const AXIS = 30;
const ROW = 42;
/** More would push the page over its end; the working has all of it. Less fits beside several offers or a purchase. */
const MOST = { rows: 3, notes: 4 };
const MOST_IF_CROWDED = { rows: 3, notes: 2 };

/** On the page of the comparison, where the household has tariffs, a roof, a battery or a car: what it can choose, and what was on. */
export function ChoicePart({ parts }: { readonly parts: EstimateParts }) {
  const { tariffs, household } = parts.estimate;
  if (!tariffs) return null;
  const headline = tariffHeadline(tariffs);
  const rows = tariffRows(tariffs);
  const room = isCrowded(parts) ? MOST_IF_CROWDED : MOST;
  // The one that the estimate rests on stays in the picture, however much it costs.
  const most = rows.slice(0, room.rows).some(({ ours }) => ours) ? room.rows : room.rows - 1;
  const shown = rows.filter(({ ours }, place) => ours || place < most);
  return (
    <section className="follows">
      <h2>{say('What you can choose')}</h2>
      <p className="plain small">{headline}</p>
      <figure>
        <div role="img" aria-label={headline}>
          <SpreadPicture rows={shown} size="paper" width={PAPER_WIDTH} height={AXIS + ROW * shown.length} />
        </div>
        <figcaption>
          {say('All electricity of the home in a year, heat pump included, on each tariff.')}{' '}
          {rows.length > shown.length
            ? say('{more, plural, one {One more stands} other {# more stand}} in the working.', {
                more: rows.length - shown.length,
              })
            : ''}
        </figcaption>
      </figure>
      <ul className="steps small">
        <li>
          {choiceCountedWith(household, tariffs).map(({ what, says }) => (
            <span key={what}>
              <strong>{what}:</strong> {says}{' '}
            </span>
          ))}
        </li>
        {tariffNotesInShort(tariffs)
          .slice(0, room.notes)
          .map((sentences) => (
            <li key={sentences}>{sentences}</li>
          ))}
      </ul>
    </section>
  );
}

/** In the working: every tariff, every way of heating on its own best one, and all that is said of them. */
export function ChoiceInFull({ parts: { estimate } }: { readonly parts: EstimateParts }) {
  const { tariffs } = estimate;
  if (!tariffs) return null;
  const { caption, columns, rows } = waysTable(tariffs);
  return (
    <section>
      <h2>{say('What you can choose')}</h2>
      <p className="plain">{tariffHeadline(tariffs)}</p>
      <NumberTable
        heads={tariffHeads(tariffs)}
        rows={tariffs.costs.map((cost) => ({
          key: cost.tariffId ?? '',
          cells: tariffCells(cost, tariffs),
          ours: cost.tariffId === tariffs.inUse,
        }))}
      />
      <h3>{caption}</h3>
      <NumberTable
        heads={columns.map(({ name }) => name)}
        rows={rows.map(({ cells, ours }) => ({ key: cells[0]!, cells, ours: ours === true }))}
      />
      <ul className="steps">
        {tariffNotes(tariffs).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </section>
  );
}
