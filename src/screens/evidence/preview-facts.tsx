import type { IntakePreview } from '../../intake/intake.ts';
import { isTemperature, type Remark } from '../../model/evidence/evidence.ts';
import { counted, degrees, exactKWh, grouped, longDate } from '../../words/numbers.ts';
import { completenessOf } from './completeness.ts';
import { lastDayOf } from './day-words.ts';

/** The figures of the preview, one line for each series. */
export function PreviewFacts(props: { readonly preview: IntakePreview }) {
  const { preview } = props;
  if (preview.series.length === 0) return null;
  return (
    <table className="preview-facts">
      <caption>
        {counted(preview.dataRows, 'row')} of data, read as {choiceWords(preview)}
      </caption>
      <thead>
        <tr>
          <th scope="col">Record</th>
          <th scope="col">First day</th>
          <th scope="col">Last day</th>
          <th scope="col" className="number">
            Together
          </th>
          <th scope="col" className="number">
            Days there
          </th>
          <th scope="col" className="number">
            Gaps
          </th>
          <th scope="col" className="number">
            Twice
          </th>
          <th scope="col" className="number">
            Estimated
          </th>
        </tr>
      </thead>
      <tbody>
        {preview.series.map((series) => {
          const whole = completenessOf(series);
          return (
            <tr key={series.id}>
              <th scope="row">{series.name}</th>
              <td>{longDate(series.from)}</td>
              <td>{longDate(lastDayOf(series.to))}</td>
              <td className="number">
                {isTemperature(series.carrier) ? degrees(series.total) : exactKWh(series.total)}
              </td>
              <td className="number">
                {grouped(whole.daysHave)} of {grouped(whole.daysSpan)}
              </td>
              <td className="number">{grouped(Math.max(0, series.expected - series.present))}</td>
              <td className="number">{grouped(countOf(preview.remarks, /duplicate|repeat|twice/))}</td>
              <td className="number">{grouped(series.estimatedCount)}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

const countOf = (remarks: readonly Remark[], code: RegExp): number =>
  remarks.filter((remark) => code.test(remark.code)).reduce((sum, remark) => sum + (remark.count ?? 1), 0);

function choiceWords(preview: IntakePreview): string {
  const { unit, clock, stamp } = preview.choices;
  const parts = [
    preview.shape ?? 'nothing that we know',
    ...(unit ? [`in ${unit}`] : []),
    ...(clock ? [CLOCK_WORDS[clock]] : []),
    ...(stamp ? [`stamps name the ${stamp}`] : []),
  ];
  return parts.join(', ');
}

const CLOCK_WORDS = { local: 'local time', utc: 'UTC', standard: 'winter time all year' } as const;
