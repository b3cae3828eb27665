import type { SiteVisit } from '../../model/shapes/site-readings.ts';
import type { SiteCheck } from '../../model/site-readings/check-site.ts';
import { longDate } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { visitSentence } from '../../words/site-readings.ts';
import { newestFirst } from './visits.ts';

/** Every visit that was kept, to be opened again or dropped. */
export function EarlierVisits(props: {
  readonly visits: readonly SiteVisit[];
  readonly open: string;
  readonly judge: (visit: SiteVisit) => SiteCheck;
  readonly onOpen: (visit: SiteVisit) => void;
  readonly onDrop: (visit: SiteVisit) => void;
  readonly onNew: () => void;
}) {
  const { visits, open } = props;
  if (visits.length === 0) return null;
  return (
    <section aria-labelledby="visits-head">
      <h3 id="visits-head">{say('Saved visits')}</h3>
      <ul className="visits">
        {newestFirst(visits).map((visit) => (
          <li key={visit.id}>
            <span>
              {longDate(visit.date)}. {visitSentence(props.judge(visit))} {visit.note}
            </span>
            <span className="actions">
              <button
                type="button"
                aria-pressed={visit.id === open}
                disabled={visit.id === open}
                onClick={() => props.onOpen(visit)}
              >
                {visit.id === open ? say('Open above') : say('Open')}
                <span className="unseen">: {say('the visit of {date}', { date: longDate(visit.date) })}</span>
              </button>
              <button type="button" className="plain" onClick={() => props.onDrop(visit)}>
                {say('Remove')}
                <span className="unseen">: {say('the visit of {date}', { date: longDate(visit.date) })}</span>
              </button>
            </span>
          </li>
        ))}
      </ul>
      <div className="actions">
        <button type="button" onClick={props.onNew}>
          {say('Another visit')}
        </button>
      </div>
    </section>
  );
}
