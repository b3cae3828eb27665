import { NumberHead } from './number-head.tsx';

interface Row {
  readonly key: string | number;
  /** What the row is of, then its numbers in words. */
  readonly cells: readonly string[];
  /** The row that the paper is about stands out. */
  readonly ours?: boolean;
}

/** Rows of numbers, each under a name of its own. */
export function NumberTable(props: {
  readonly heads: readonly string[];
  readonly rows: readonly Row[];
  readonly className?: string;
}) {
  const [name, ...heads] = props.heads;
  return (
    <div className="wide">
      <table className={props.className}>
        <thead>
          <tr>
            <th scope="col">{name}</th>
            {heads.map((head, column) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: the columns are fixed, and heads may be alike.
              <NumberHead key={column}>{head}</NumberHead>
            ))}
          </tr>
        </thead>
        <tbody>
          {props.rows.map(({ key, cells: [label, ...cells], ours }) => (
            <tr key={key} className={ours ? 'ours' : undefined}>
              <th scope="row">{label}</th>
              {cells.map((cell, column) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: the columns are fixed, and cells may be alike.
                <td key={column} className="number">
                  {cell}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
