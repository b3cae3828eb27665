import { useState } from 'react';
import { GradeMark } from '../../charts/grade-mark.tsx';
import { Reworded } from '../../charts/reworded.tsx';
import type { CivilDate } from '../../model/shapes/dates.ts';
import type { FullMachine, RatedPoint } from '../../model/shapes/household.ts';
import { reference } from '../../reference/index.ts';
import { phrase, say } from '../../words/say.ts';
import { sayTold } from '../../words/say-told.ts';
import { regrade, sentenceOf, shortSource, typeGiven } from '../shared/given.ts';
import { GradePicker } from '../shared/grade-picker.tsx';
import { EMPTY_POINT, type PointRow, pointRows, readPoints } from './typed-list.ts';

type Points = FullMachine['ratedPoints'];
const HEADS: readonly [keyof PointRow, string, string][] = [
  ['sourceC', phrase('Source'), '°C'],
  ['flowC', phrase('Water'), '°C'],
  ['cop', phrase('COP'), ''],
  ['outputKW', phrase('Output'), 'kW'],
];
const LEAST_ROWS = 2;
const TESTED = phrase(
  'Tested as {point} and so on (EN 14511): two temperatures, then heat for each kWh of electricity.',
);

const padded = (rows: readonly PointRow[]): PointRow[] => [
  ...rows,
  ...Array.from({ length: Math.max(0, LEAST_ROWS - rows.length) }, () => EMPTY_POINT),
];

/** How true the COP is where no point stands; measured on two published sheets, each point left out in turn. */
const rangeNote = (source: 'ground' | 'air') =>
  source === 'ground'
    ? say(
        'Between the points the COP is right to about 3 %; with only one source temperature, to 5 %. Type all points of the sheet.',
      )
    : say(
        'Between the points the COP is right to about 3 %; beyond the coldest or warmest, to 7 %. Type all points of the sheet.',
      );

/** The points of the data sheet, such as B0/W35. Until they are whole, those kept before still hold. */
export function RatedPointsField(props: {
  readonly source: 'ground' | 'air';
  readonly given: Points;
  readonly today: CivilDate;
  readonly onChange: (given: Points) => void;
}) {
  const { source, given, today } = props;
  const [rows, setRows] = useState(() => padded(pointRows(given?.value ?? [])));
  const typed = readPoints(rows);
  const usual = reference.ratedPoints[source];
  const point = source === 'ground' ? 'B0/W35' : 'A7/W35';
  const lay = (next: readonly PointRow[]) => {
    setRows([...next]);
    const read = readPoints(next);
    if (read.kind === 'empty') props.onChange(undefined);
    else if (read.kind === 'whole') props.onChange(typeGiven<RatedPoint[]>(read.value, given, today));
  };
  const set = (index: number, part: Partial<PointRow>) =>
    lay(rows.map((row, at) => (at === index ? { ...row, ...part } : row)));
  const usualRows = pointRows(usual.points);
  return (
    <div className="points">
      <div className="typed">
        <table className="typed-grid points-grid">
          <caption className="unseen">{say('Rated points of the data sheet')}</caption>
          <thead>
            <tr>
              {HEADS.map(([cell, name, unit]) => (
                <th key={cell} scope="col">
                  {unit ? `${say(name)}, ${unit}` : say(name)}
                </th>
              ))}
              <th scope="col">
                <span className="unseen">{say('Remove')}</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a point is its place in the list.
              <tr key={index}>
                {HEADS.map(([cell, name]) => (
                  <td key={cell}>
                    <input
                      type="text"
                      inputMode="decimal"
                      autoComplete="off"
                      aria-label={say('{name}, point {number}', { name: say(name), number: index + 1 })}
                      placeholder={given ? '' : (usualRows[index]?.[cell] ?? '')}
                      value={row[cell]}
                      onChange={(event) => set(index, { [cell]: event.target.value })}
                    />
                  </td>
                ))}
                <td>
                  <button
                    type="button"
                    className="plain"
                    onClick={() => lay(padded(rows.filter((_, at) => at !== index)))}
                  >
                    {say('Remove')}
                    <span className="unseen"> {say('point {number}', { number: index + 1 })}</span>
                  </button>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
        <div className="actions">
          <button type="button" className="plain" onClick={() => setRows([...rows, EMPTY_POINT])}>
            {say('One more point')}
          </button>
          {given ? (
            <GradePicker
              about={say('Rated points')}
              value={given.grade}
              onChange={(grade) => props.onChange(regrade(given, grade))}
            />
          ) : (
            <GradeMark grade="assumed" />
          )}
        </div>
      </div>
      {typed.kind === 'wanting' ? (
        <p className="field-refusal" role="alert">
          {typed.sentence}{' '}
          {given ? say('The points saved before are still used.') : say('Until then the usual points are used.')}
        </p>
      ) : null}
      <p className="field-note">
        {say(TESTED, { point })} {rangeNote(source)}{' '}
        {given ? (
          <Reworded text={given.origin} as={sentenceOf} />
        ) : (
          say('Assumed: {source}', { source: shortSource(sayTold(usual.source)) })
        )}
      </p>
    </div>
  );
}
