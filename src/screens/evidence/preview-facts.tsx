import type { IntakePreview } from '../../intake/intake.ts';
import type { Remark } from '../../model/shapes/evidence.ts';
import { completenessOf } from '../../words/completeness.ts';
import { counted, grouped, longDate } from '../../words/numbers.ts';
import { recordUseSentence } from '../../words/record-uses.ts';
import { columnNames } from '../../words/remarks.ts';
import { phrase, say } from '../../words/say.ts';
import { sayTold } from '../../words/say-told.ts';
import { lastDayOf } from './day-words.ts';
import { amountOfSeries } from './series-words.ts';

/** The figures of the preview, one line for each series. */
export function PreviewFacts(props: { readonly preview: IntakePreview }) {
  const { preview } = props;
  if (preview.series.length === 0) return null;
  return (
    <>
      <table className="preview-facts">
        <caption>
          {say('{rows} of data, read as {choices}', {
            rows: counted(preview.dataRows, 'row'),
            choices: choiceWords(preview),
          })}
        </caption>
        <thead>
          <tr>
            <th scope="col">{say('Record')}</th>
            <th scope="col">{say('First day')}</th>
            <th scope="col">{say('Last day')}</th>
            <th scope="col" className="number">
              {say('Together')}
            </th>
            <th scope="col" className="number">
              {say('Days there')}
            </th>
            <th scope="col" className="number">
              {say('Gaps')}
            </th>
            <th scope="col" className="number">
              {say('Twice')}
            </th>
            <th scope="col" className="number">
              {say('Estimated')}
            </th>
          </tr>
        </thead>
        <tbody>
          {preview.series.map((series) => {
            const whole = completenessOf(series);
            return (
              <tr key={series.id}>
                <th scope="row">{columnNames(sayTold(series.name))}</th>
                <td>{longDate(series.from)}</td>
                <td>{longDate(lastDayOf(series.to))}</td>
                <td className="number">{amountOfSeries(series)}</td>
                <td className="number">
                  {say('{count} of {all}', { count: grouped(whole.daysHave), all: grouped(whole.daysSpan) })}
                </td>
                <td className="number">{grouped(Math.max(0, series.expected - series.present))}</td>
                <td className="number">{grouped(countOf(preview.remarks, /duplicate|repeat|twice/))}</td>
                <td className="number">{grouped(series.estimatedCount)}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
      <ul className="quiet small">
        {(preview.records ?? []).map((record) => (
          <li key={`${record.name} ${record.use}`}>{recordUseSentence(record)}</li>
        ))}
      </ul>
    </>
  );
}

const countOf = (remarks: readonly Remark[], code: RegExp): number =>
  remarks.filter((remark) => code.test(remark.code)).reduce((sum, remark) => sum + (remark.count ?? 1), 0);

function choiceWords(preview: IntakePreview): string {
  const { unit, clock, stamp } = preview.choices;
  const parts = [
    preview.shape ? sayTold(preview.shape) : say('nothing that we know'),
    ...(unit ? [say('in {unit}', { unit: sayTold(unit) })] : []),
    ...(clock ? [say(CLOCK_WORDS[clock])] : []),
    ...(stamp ? [say('each time names the {stamp, select, start {start} other {end}}', { stamp })] : []),
  ];
  return parts.join(', ');
}

const CLOCK_WORDS = {
  local: phrase('local time'),
  utc: phrase('UTC'),
  standard: phrase('winter time all year'),
} as const;
