/**
 * A chart is never alone: its sentence above, the picture, and the same data as a table one key away.
 * The picture is one stop for the keyboard with the sentence as its name; T shows the table and T the picture again.
 */
import { type KeyboardEvent, type ReactNode, useId, useRef, useState } from 'react';
import { keepTogether } from '../words/keep-together.ts';
import { say } from '../words/say.ts';
import { type ChartTable, ChartTableView } from './frame/chart-table.tsx';
import { tableCsv } from './frame/csv.ts';
import { PictureTools } from './frame/picture-tools.tsx';
import { fileNameOf, saveInBrowser } from './frame/save.ts';

export interface ChartFigureProps {
  /** Short name, for the table's button and the names of saved files. */
  readonly name: string;
  /** What the picture shows, in this household's numbers. */
  readonly sentence: string;
  /** The same sentence with figures that open their working; the text alone where left out. */
  readonly spoken?: ReactNode;
  readonly picture: ReactNode;
  readonly table: ChartTable;
  /** Small print below the picture: measure, place, time, source. */
  readonly note?: ReactNode;
  /** True where the screen has said the sentence already: it is then only read aloud. */
  readonly sentenceSaid?: boolean;
  /** What opens the sums behind the picture; it stands first among the tools. */
  readonly known?: ReactNode;
  /** False where nothing is to be saved, as in the walk-through. */
  readonly savable?: boolean;
}

export function ChartFigure(props: ChartFigureProps) {
  const { name, sentence, table, savable = true } = props;
  const [asTable, setAsTable] = useState(false);
  const [said, setSaid] = useState('');
  const place = useRef<HTMLDivElement>(null);
  const id = useId();
  const tableName = say('{name}, as a table', { name });
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key.toLowerCase() !== 't' || event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.target instanceof HTMLElement && event.target.matches('input, select, textarea')) return;
    event.preventDefault();
    event.stopPropagation();
    setAsTable(!asTable);
    // The stop stays where it was, whichever of the two is shown.
    requestAnimationFrame(() => place.current?.focus());
  };
  const saveFigures = () => saveInBrowser(new Blob([tableCsv(table)], { type: 'text/csv' }), `${fileNameOf(name)}.csv`);
  return (
    <figure className="chart" onKeyDown={onKeyDown}>
      <figcaption className={props.sentenceSaid ? 'unseen' : 'voice'}>
        {props.spoken ?? keepTogether(sentence)}
      </figcaption>
      {asTable ? (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: one stop for the keyboard, and a wide table can be scrolled.
        <section ref={place} className="chart-as-table" id={id} tabIndex={0} aria-label={tableName}>
          <ChartTableView table={table} />
        </section>
      ) : (
        <div
          ref={place}
          className="chart-picture"
          id={id}
          role="img"
          aria-label={sentence}
          aria-keyshortcuts="T"
          // biome-ignore lint/a11y/noNoninteractiveTabindex: a chart is one stop for the keyboard.
          tabIndex={0}
        >
          {/* Groups that the painter listens on would each become a stop of their own. */}
          <div inert>{props.picture}</div>
        </div>
      )}
      {props.note ? <p className="chart-note quiet small">{props.note}</p> : null}
      <div className="chart-tools screen-only">
        {props.known}
        <button type="button" className="plain" aria-controls={id} onClick={() => setAsTable(!asTable)}>
          {asTable ? say('As a picture') : say('As a table')}
          <span className="unseen">: {name}</span>
        </button>
        {savable ? (
          <details className="chart-take">
            <summary>
              {say('Save or copy')}
              <span className="unseen">: {name}</span>
            </summary>
            {asTable ? null : (
              <PictureTools name={name} find={() => place.current?.querySelector('svg') ?? null} tell={setSaid} />
            )}
            <button type="button" className="plain" onClick={saveFigures}>
              {say('Save figures')}
              <span className="unseen">: {name}</span>
            </button>
          </details>
        ) : null}
      </div>
      {savable ? (
        <p className="chart-said quiet small screen-only" role="status">
          {said}
        </p>
      ) : null}
      <p className="chart-print-note small">
        {say('The exact figures stand in the table that belongs to this picture.')}
      </p>
    </figure>
  );
}
