import { ChartFigure } from '../../charts/figure.tsx';
import { RangesPicture } from '../../charts/ranges/picture.tsx';
import { estimatesName, estimatesSentence } from '../../charts/ranges/sentence.ts';
import { estimateRows, HEAT_SCALE, type RangeRow } from '../../charts/ranges/series.ts';
import { estimatesTable } from '../../charts/ranges/table.ts';
import type { Demand } from '../../model/shapes/appraisal.ts';
import { rangedWorking } from '../../words/explained/ranged.ts';
import { spokenKWh } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { WAY_WORDS } from '../../words/ways.ts';
import { useHousehold } from '../household-context.tsx';
import { HowWeKnow } from '../shared/how-we-know.tsx';

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
        name={estimatesName()}
        sentence={estimatesSentence(demand)}
        picture={<RangesPicture rows={rows} scale={HEAT_SCALE} size="desk" />}
        known={<HowWeKnow find={() => estimateWorkings(demand, rows)} about={say('Heat for the rooms')} plain />}
        table={estimatesTable(demand)}
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
