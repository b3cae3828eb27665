import type { IntakeChoices, IntakePreview } from '../../intake/intake.ts';
import { columnUse } from '../../words/column-uses.ts';
import { columnNames } from '../../words/remarks.ts';
import { phrase, say } from '../../words/say.ts';

type ColumnRole = keyof NonNullable<IntakeChoices['columns']>;
const ROLE_WORDS: { readonly [role in ColumnRole]: string } = {
  stamp: phrase('date and time'),
  time: phrase('clock time'),
  from: phrase('first day'),
  to: phrase('last day'),
  value: phrase('amount'),
  cost: phrase('cost'),
  quality: phrase('read or estimated'),
};
const ROLES = Object.keys(ROLE_WORDS) as ColumnRole[];
const SHOWN_ROWS = 8;

/** The first rows as they stand in the file; above each column what it was taken for. */
export function ColumnTable(props: {
  readonly preview: IntakePreview;
  readonly onChoose: (part: IntakeChoices) => void;
}) {
  const { preview, onChoose } = props;
  if (preview.columns.length === 0) return null;
  const settled = preview.choices.columns ?? {};
  const takenAs = (index: number) => preview.uses?.find(({ column }) => column === index)?.use;
  const saidUse = (index: number) => {
    const use = takenAs(index);
    return use === undefined ? null : <span className="quiet column-use">{columnUse(use)}</span>;
  };
  const roleOf = (index: number) => ROLES.find((role) => settled[role] === index);
  const pick = (index: number, role: string) => {
    const known = ROLES.find((name) => name === role);
    // What it was before it is no longer; else the first of both would be shown.
    const before = roleOf(index);
    if (known) onChoose({ columns: { ...(before ? { [before]: undefined } : {}), [known]: index } });
  };
  return (
    <section>
      <h3>{say('The first rows of the file')}</h3>
      <div className="scroll-x">
        <table className="columns">
          <thead>
            <tr>
              <th scope="col" className="number">
                {say('Line')}
              </th>
              {preview.columns.map((name, index) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: two columns may bear the same heading.
                <th key={index} scope="col">
                  <span className="column-name">{columnNames(name)}</span>
                  {saidUse(index)}
                  {preview.choices.columns === undefined ? null : (
                    <select
                      aria-label={say('Column {name} is', { name: columnNames(name) })}
                      value={roleOf(index) ?? ''}
                      onChange={(event) => pick(index, event.target.value)}
                    >
                      {/* One of several amounts has no role of its own, and yet it is used: the line above says how. */}
                      {roleOf(index) === undefined ? (
                        <option value="">
                          {takenAs(index) === undefined ? say('not used') : say('as said above')}
                        </option>
                      ) : null}
                      {ROLES.map((role) => (
                        <option key={role} value={role}>
                          {say(ROLE_WORDS[role])}
                        </option>
                      ))}
                    </select>
                  )}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {preview.rows.slice(0, SHOWN_ROWS).map((row) => (
              <tr key={row.line}>
                <td className="number quiet">{row.line}</td>
                {row.cells.map((cell, index) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: cells have no name of their own.
                  <td key={index}>{cell}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}
