import { type KeyboardEvent, useRef } from 'react';
import { flushSync } from 'react-dom';
import { addDays } from '../../model/calendar/civil.ts';
import { isCivilDate } from '../../model/shapes/dates.ts';
import { moneySign } from '../../words/numbers.ts';
import { currency, say } from '../../words/say.ts';
import { sayTold } from '../../words/say-told.ts';
import { DateEntry } from '../shared/date-entry.tsx';
import { EMPTY_ROW, type RowFault, type TypedKind, type TypedRow } from './typed-rows.ts';

/** A small grid; Enter goes to the next row and makes one where there is none. */
export function TypedGrid(props: {
  readonly kind: TypedKind;
  readonly unit: string;
  readonly rows: readonly TypedRow[];
  readonly faults: readonly RowFault[];
  readonly onRows: (rows: readonly TypedRow[]) => void;
}) {
  const { kind, rows, onRows } = props;
  const body = useRef<HTMLTableSectionElement>(null);
  const isBills = kind === 'bills';
  const heads = [
    isBills ? say('First day') : kind === 'readings' ? say('Day of the reading') : say('Day of the delivery'),
    ...(isBills ? [say('Last day')] : []),
    kind === 'readings'
      ? say('Reading, {unit}', { unit: sayTold(props.unit) })
      : say('Amount, {unit}', { unit: sayTold(props.unit) }),
    ...(kind === 'readings' ? [] : [say('Cost, {sign}', { sign: moneySign() })]),
    say('Estimated'),
  ];
  const set = (index: number, part: Partial<TypedRow>) =>
    onRows(rows.map((row, at) => (at === index ? { ...row, ...part } : row)));
  const focusRow = (index: number) => body.current?.rows[index]?.querySelector('input')?.focus();
  const add = () => {
    const last = rows.at(-1);
    // Laid at once, so that the next key already goes to the new row. The next bill begins where the last one ended.
    flushSync(() =>
      onRows([...rows, { ...EMPTY_ROW, from: isBills && last && isCivilDate(last.to) ? addDays(last.to, 1) : '' }]),
    );
    focusRow(rows.length);
  };
  const onKeyDown = (event: KeyboardEvent, index: number) => {
    if (event.key !== 'Enter') return;
    event.preventDefault();
    if (index === rows.length - 1) add();
    else focusRow(index + 1);
  };
  const isFaulty = (index: number, cell: keyof TypedRow) =>
    props.faults.some((fault) => fault.row === index + 1 && fault.cell === cell) || undefined;
  const cell = (index: number, name: 'from' | 'to' | 'amount' | 'costPounds', head: string) => (
    <td>
      {name === 'from' || name === 'to' ? (
        <DateEntry
          label={say('{head}, row {row}', { head, row: index + 1 })}
          invalid={isFaulty(index, name)}
          value={rows[index]![name]}
          onChange={(date) => set(index, { [name]: date })}
          onKeyDown={(event) => onKeyDown(event, index)}
        />
      ) : (
        <input
          type="text"
          inputMode="decimal"
          autoComplete="off"
          aria-label={say('{head}, row {row}', { head, row: index + 1 })}
          aria-invalid={isFaulty(index, name)}
          value={rows[index]![name]}
          onChange={(event) => set(index, { [name]: event.target.value })}
          onKeyDown={(event) => onKeyDown(event, index)}
        />
      )}
    </td>
  );
  return (
    <div className="typed">
      <table className="typed-grid">
        <thead>
          <tr>
            <th scope="col" className="number">
              {say('Row')}
            </th>
            {heads.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody ref={body}>
          {rows.map((row, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a row is its place in the list.
            <tr key={index}>
              <td className="number quiet">{index + 1}</td>
              {cell(index, 'from', heads[0]!)}
              {isBills ? cell(index, 'to', say('Last day')) : null}
              {cell(index, 'amount', kind === 'readings' ? say('Reading') : say('Amount'))}
              {kind === 'readings'
                ? null
                : cell(
                    index,
                    'costPounds',
                    say('Cost in {money, select, EUR {euros} USD {dollars} other {pounds}}', { money: currency() }),
                  )}
              <td>
                <input
                  type="checkbox"
                  aria-label={say('{head}, row {row}', { head: say('Estimated'), row: index + 1 })}
                  checked={row.estimated}
                  onChange={(event) => set(index, { estimated: event.target.checked })}
                  onKeyDown={(event) => onKeyDown(event, index)}
                />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <button type="button" className="plain" onClick={add}>
        {say('One more row (Enter)')}
      </button>
    </div>
  );
}
