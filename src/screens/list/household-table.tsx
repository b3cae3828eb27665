import { Fragment, useId, useState } from 'react';
import type { HouseholdSummary } from '../../desk/contract.ts';
import { longDate } from '../../words/numbers.ts';
import { formatRoute } from '../routes.ts';
import { EraseDialog } from './erase-dialog.tsx';
import type { HouseholdList } from './use-household-list.ts';

const countWords = (count: number, one: string, many: string) =>
  count === 0 ? 'none' : count === 1 ? `1 ${one}` : `${count} ${many}`;

export function HouseholdTable(props: { readonly rows: readonly HouseholdSummary[]; readonly list: HouseholdList }) {
  const [opened, setOpened] = useState<string | null>(null);
  const [erasing, setErasing] = useState<HouseholdSummary | null>(null);
  const base = useId();
  return (
    <>
      <table className="households">
        <thead>
          <tr>
            <th scope="col">Home</th>
            <th scope="col">Place</th>
            <th scope="col">Evidence</th>
            <th scope="col">Promises</th>
            <th scope="col">Changed</th>
            <th scope="col">
              <span className="unseen">More</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {props.rows.map((row) => (
            <Fragment key={row.id}>
              <tr>
                <th scope="row">
                  <a
                    className="voice household-name"
                    href={formatRoute({
                      screen: 'household',
                      id: row.id,
                      stage: row.evidenceCount > 0 ? 'cost' : 'evidence',
                    })}
                  >
                    {row.name}
                  </a>
                  {row.jobNumber ? <span className="quiet job">job {row.jobNumber}</span> : null}
                </th>
                <td>{row.place || <span className="quiet">not given</span>}</td>
                <td>{countWords(row.evidenceCount, 'piece', 'pieces')}</td>
                <td>{countWords(row.promiseCount, 'kept', 'kept')}</td>
                <td>{longDate(row.changedOn.slice(0, 10))}</td>
                <td className="more">
                  <button
                    type="button"
                    className="plain"
                    aria-expanded={opened === row.id}
                    aria-controls={`${base}-${row.id}`}
                    aria-label={`More for ${row.name}`}
                    onClick={() => setOpened(opened === row.id ? null : row.id)}
                  >
                    {opened === row.id ? 'Less' : 'More'}
                  </button>
                </td>
              </tr>
              <tr className="row-actions" id={`${base}-${row.id}`} hidden={opened !== row.id}>
                <td colSpan={6}>
                  <div className="actions">
                    <button type="button" onClick={() => props.list.duplicate(row)}>
                      Duplicate
                    </button>
                    <button type="button" onClick={() => props.list.exportFile(row)}>
                      Export as a file
                    </button>
                    <button type="button" onClick={() => props.list.archive(row, !row.archived)}>
                      {row.archived ? 'Bring back' : 'Archive'}
                    </button>
                    <button type="button" className="danger" onClick={() => setErasing(row)}>
                      Erase for good
                    </button>
                  </div>
                </td>
              </tr>
            </Fragment>
          ))}
        </tbody>
      </table>
      {erasing === null ? null : (
        <EraseDialog row={erasing} onErase={props.list.erase} onClose={() => setErasing(null)} />
      )}
    </>
  );
}
