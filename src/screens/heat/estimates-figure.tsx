import { ChartFigure } from '../../charts/figure.tsx';
import { rangeOf } from '../../model/demand/figure.ts';
import { rangedWorking } from '../../model/explained/ranged.ts';
import type { Demand } from '../../model/shapes/appraisal.ts';
import { exactKWh, spokenCount, spokenKWh } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { useHousehold } from '../household-context.tsx';
import { HowWeKnow } from '../shared/how-we-know.tsx';
import type { RangeRow } from '../shared/ranges/layout.ts';
import { RangesPicture } from '../shared/ranges/picture.tsx';
import { WAY_WORDS } from './way-words.ts';

/** Heat for rooms a year, one row for each way it can be worked out, and what the sums rest on. */
export function estimateRows(demand: Demand): RangeRow[] {
  const rows = demand.estimates.map((estimate): RangeRow => {
    const { low, high } = rangeOf(estimate.spaceKWh, estimate.spaceErrorKWh);
    return {
      name: say(WAY_WORDS[estimate.way].from),
      kind: 'beside',
      grade: estimate.grade,
      low,
      middle: estimate.spaceKWh,
      high,
      label: spokenCount(estimate.spaceKWh),
      range: say('{low} to {high}', { low: spokenCount(low), high: spokenCount(high) }),
    };
  });
  const { value, low, high, grade } = demand.space;
  return [
    ...rows,
    {
      name: say('What the sums rest on'),
      kind: 'sum',
      grade,
      low: Math.max(0, low),
      middle: value,
      high,
      label: spokenCount(value),
      range: say('{low} to {high}', { low: spokenCount(Math.max(0, low)), high: spokenCount(high) }),
    },
  ];
}

/** Each way's sum with its range, then what the sums rest on. */
const estimateWorkings = ({ estimates, space }: Demand, rows: readonly RangeRow[]) =>
  [...estimates, space].map(({ working }, index) =>
    rangedWorking({ working, value: rows[index]!.middle, low: rows[index]!.low, high: rows[index]!.high, unit: 'kWh' }),
  );

export function EstimatesFigure() {
  const { appraisal, openWorking } = useHousehold();
  const { demand } = appraisal;
  const rows = estimateRows(demand);
  return (
    <>
      <ChartFigure
        name={say('Heat for the rooms')}
        sentence={say(
          'Heat for the rooms, units a year, worked out {count, plural, one {one way} other {# ways}}. We are not sure: each band holds 8 cases in 10.',
          { count: demand.estimates.length },
        )}
        picture={<RangesPicture rows={rows} tickLabel={spokenCount} smallestStep={500} />}
        known={<HowWeKnow find={() => estimateWorkings(demand, rows)} about={say('Heat for the rooms')} plain />}
        table={{
          caption: say('Heat for the rooms in a typical year. 8 cases in 10 lie between low and high.'),
          columns: [
            { name: say('Way') },
            { name: say('Most likely'), number: true },
            { name: say('Low'), number: true },
            { name: say('High'), number: true },
          ],
          rows: rows.map((row) => ({
            cells: [row.name, exactKWh(row.middle), exactKWh(row.low), exactKWh(row.high)],
            ours: row.kind === 'sum',
          })),
        }}
      />
      <ul className="ways">
        {demand.estimates.map((estimate) => (
          <li key={estimate.way}>
            {say(WAY_WORDS[estimate.way].from)}:{' '}
            <button type="button" className="figure-link" onClick={() => openWorking(estimate.working)}>
              {spokenKWh(estimate.spaceKWh)}
            </button>
          </li>
        ))}
        {demand.missing.map(({ way }) => (
          <li key={way} className="quiet">
            {say(WAY_WORDS[way].wanting)}
          </li>
        ))}
      </ul>
    </>
  );
}
