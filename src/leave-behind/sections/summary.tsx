import { SpreadPicture } from '../../charts/spread/picture.tsx';
import { spreadSentence } from '../../charts/spread/sentence.ts';
import { spreadSeries } from '../../charts/spread/series.ts';
import { pickForPicture } from '../../model/appraisal/beside.ts';
import { capitalised, longDate, poundsRange, spokenPounds } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { systemInSentence, systemNumber } from '../../words/systems.ts';
import { GradeLegend } from '../grade-legend.tsx';
import { PAPER_WIDTH, ROWS_IN_PICTURE } from '../paper.ts';
import type { PromiseParts } from '../parts.ts';
import { whatIfSentences } from '../what-ifs.ts';
import { CostTable } from './cost-table.tsx';
import { StandsOn } from './stands-on.tsx';

/** From here on the heading is set smaller, so that the first page stays one page. */
const LONG_NAME = 36;

/** The first page: what it costs, beside what, how sure, and what that stands on. */
export function SummaryPart({ parts }: { readonly parts: PromiseParts }) {
  const { promise, settings, madeOn, pump, present, beside } = parts;
  const more = beside ? pump.cost.value - beside.cost.value : 0;
  return (
    <section className="first">
      <div className="letterhead">
        <span className="sender">
          {/* Beside the name it says nothing more; alone it stands for it. */}
          {settings.logo ? (
            <img src={settings.logo} alt={settings.installerName ? '' : 'Logo of the installer'} />
          ) : null}
          {settings.installerName}
        </span>
        <span>
          Promise {promise.number} · {longDate(madeOn)}
        </span>
      </div>
      <h1 className={promise.household.name.length > LONG_NAME ? 'long' : undefined}>
        What it would cost to heat {promise.household.name} with a heat pump
      </h1>
      <p className="say">
        About <strong>{spokenPounds(pump.cost.value)} a year</strong> for rooms and hot water, at the electricity price
        of today. In 8 years out of 10 it should lie between{' '}
        {poundsRange(pump.cost.low, pump.cost.high).replace(' to ', ' and ')}.{' '}
        {present
          ? say('{other} {number, select, many {cost} other {costs}} about {amount}.', {
              other: capitalised(systemInSentence(present.id, present.kind)),
              number: systemNumber(present.id, present.kind),
              amount: spokenPounds(present.cost.value),
            })
          : beside
            ? `With ${systemInSentence(beside.id, beside.kind)} it would be about ${spokenPounds(beside.cost.value)}.`
            : ''}{' '}
        {more >= 1000 ? `So the heat pump costs about ${spokenPounds(more)} a year more to run.` : ''}
      </p>
      <SpreadFigure parts={parts} />
      <CostTable parts={parts} short />
      <StandsOn parts={parts} />
      <p className="say">{whatIfSentences(parts).join(' ')}</p>
      <GradeLegend />
    </section>
  );
}

function SpreadFigure({ parts }: { readonly parts: PromiseParts }) {
  const rows = spreadSeries({
    ...parts.appraisal,
    systems: pickForPicture(parts.appraisal, ROWS_IN_PICTURE),
  });
  return (
    <figure>
      <div role="img" aria-label={spreadSentence(rows)}>
        <SpreadPicture rows={rows} size="paper" width={PAPER_WIDTH} height={44 + 42 * rows.length} />
      </div>
      <figcaption>
        Cost of a year. The dot is the sum with the figures given here; 8 homes like yours in 10 lie inside the band.
      </figcaption>
    </figure>
  );
}
