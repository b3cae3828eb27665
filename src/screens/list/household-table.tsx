import { Fragment, useDeferredValue, useId, useState } from 'react';
import type { HouseholdSummary } from '../../desk/contract.ts';
import { longDate } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { chooseHousehold } from '../household-screen.tsx';
import { formatRoute } from '../routes.ts';
import { ExportDialog } from '../shared/export-dialog.tsx';
import { EraseDialog } from './erase-dialog.tsx';
import type { HouseholdList } from './use-household-list.ts';

/** No row is lower [CSS pixels]. Those that fill the window are drawn at once, those below it after them. */
const LOWEST_ROW = 48;

export function HouseholdTable(props: { readonly rows: readonly HouseholdSummary[]; readonly list: HouseholdList }) {
  const [opened, setOpened] = useState<string | null>(null);
  const [erasing, setErasing] = useState<HouseholdSummary | null>(null);
  const [exporting, setExporting] = useState<HouseholdSummary | null>(null);
  const base = useId();
  const rows = useDeferredValue(props.rows, props.rows.slice(0, Math.ceil(window.innerHeight / LOWEST_ROW)));
  return (
    <>
      <table className="households">
        <thead>
          <tr>
            <th scope="col">{say('Home')}</th>
            <th scope="col">{say('Place')}</th>
            <th scope="col">{say('Bills and readings')}</th>
            <th scope="col">{say('Estimates')}</th>
            <th scope="col">{say('Changed')}</th>
            <th scope="col">
              <span className="unseen">{say('More')}</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <Fragment key={row.id}>
              <tr>
                <th scope="row">
                  {row.damaged ? (
                    <p className="refusal">
                      {row.damaged.message} {row.damaged.remedy} <a href="#/copies">{say('Copies of your data')}</a>
                    </p>
                  ) : null}
                  <a
                    className="voice household-name"
                    href={formatRoute({
                      screen: 'household',
                      id: row.id,
                      stage: row.evidenceCount > 0 ? 'cost' : 'evidence',
                    })}
                    onClick={({ ctrlKey, metaKey, shiftKey, altKey }) => {
                      // With a key held, it opens elsewhere.
                      if (!ctrlKey && !metaKey && !shiftKey && !altKey) chooseHousehold(row.id);
                    }}
                  >
                    {row.name}
                  </a>
                  {row.jobNumber ? (
                    <span className="quiet job">{say('job {number}', { number: row.jobNumber })}</span>
                  ) : null}
                </th>
                <td>{row.place || <span className="quiet">{say('not given')}</span>}</td>
                <td>
                  {say('{count, plural, =0 {none} one {1 piece} other {# pieces}}', { count: row.evidenceCount })}
                </td>
                <td>{say('{count, plural, =0 {none} other {# saved}}', { count: row.estimateCount })}</td>
                <td>{row.damaged ? null : longDate(row.changedOn.slice(0, 10))}</td>
                <td className="more">
                  <button
                    type="button"
                    className="plain"
                    aria-expanded={opened === row.id}
                    aria-controls={opened === row.id ? `${base}-${row.id}` : undefined}
                    aria-label={say('More for {name}', { name: row.name })}
                    onClick={() => setOpened(opened === row.id ? null : row.id)}
                  >
                    {say(opened === row.id ? 'Less' : 'More')}
                  </button>
                </td>
              </tr>
              {opened === row.id ? (
                <tr className="row-actions" id={`${base}-${row.id}`}>
                  <td colSpan={6}>
                    <div className="actions">
                      <button type="button" onClick={() => props.list.duplicate(row)}>
                        {say('Duplicate')}
                      </button>
                      <button type="button" onClick={() => setExporting(row)}>
                        {say('Export as a file')}
                      </button>
                      <button type="button" onClick={() => props.list.archive(row, !row.archived)}>
                        {row.archived ? say('Restore') : say('Archive')}
                      </button>
                      <button type="button" className="danger" onClick={() => setErasing(row)}>
                        {say('Erase for good')}
                      </button>
                    </div>
                  </td>
                </tr>
              ) : null}
            </Fragment>
          ))}
        </tbody>
      </table>
      {exporting === null ? null : (
        <ExportDialog
          name={exporting.name}
          onExport={(withFiles) => props.list.exportFile(exporting, withFiles)}
          onClose={() => setExporting(null)}
        />
      )}
      {erasing === null ? null : (
        <EraseDialog row={erasing} onErase={props.list.erase} onClose={() => setErasing(null)} />
      )}
    </>
  );
}
