/** What the last visit to the plant found: hints in order of likelihood, never a diagnosis. */
import { heatOfHousehold } from '../../model/heat-of-household.ts';
import { designLoop } from '../../model/heat-pump/full/design-loop.ts';
import type { SiteVisit } from '../../model/shapes/site-readings.ts';
import { checkSite } from '../../model/site-readings/check-site.ts';
import { ownMachine } from '../../model/site-readings/expected-cop.ts';
import { toJudge } from '../../model/site-readings/to-judge.ts';
import { referenceOf } from '../../reference/index.ts';
import { siteTables } from '../../reference/site-tables.ts';
import { longDate } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import {
  causeSentence,
  cautionSentence,
  firstCheckSentence,
  siteRemarkSentence,
  siteSummary,
  standingSentence,
  tradeSentence,
} from '../../words/site-readings.ts';
import type { LetterParts } from './letter-parts.ts';

/** As many as can be looked into on one visit. */
const MOST_CAUSES = 3;

/** The newest visit since the first day of the bill; an older one says nothing of these days. */
export function visitOf({ household, check }: LetterParts): SiteVisit | undefined {
  return (household.siteReadings ?? [])
    .filter(({ date }) => date >= check.input.from)
    .toSorted((a, b) => a.date.localeCompare(b.date))
    .at(-1);
}

export function PlantSection({ parts }: { readonly parts: LetterParts }) {
  const visit = visitOf(parts);
  if (!visit) return null;
  const own = ownMachine(parts.household, referenceOf(parts.household));
  const site = checkSite(toJudge(visit.readings, coldestBrine(parts)), siteTables, own);
  const told = site.values.filter(
    ({ quantity, standing }) => quantity === 'cop' || standing === 'above' || standing === 'below',
  );
  return (
    <>
      <h3>{say('At the plant on {date}', { date: longDate(visit.date) })}</h3>
      <p>
        {siteSummary(site.values)} {told.map(standingSentence).join(' ')}{' '}
        {site.remarks.map(siteRemarkSentence).join(' ')} {visit.note}
      </p>
      {site.causes.length > 0 ? (
        <div className="finding">
          <p>{say('What it can mean, likeliest first. The order is a judgement, not a diagnosis.')}</p>
          <ol className="steps">
            {site.causes.slice(0, MOST_CAUSES).map(({ cause, trade }) => (
              <li key={cause}>
                {causeSentence(cause)} {firstCheckSentence(cause)} {tradeSentence(trade)}
              </li>
            ))}
          </ol>
        </div>
      ) : null}
      <p className="quiet">{site.cautions.map(cautionSentence).join(' ')}</p>
    </>
  );
}

function coldestBrine({ household, estimate, writtenOn }: LetterParts): number | null {
  const heat = heatOfHousehold({
    household,
    series: estimate.evidence,
    reference: referenceOf(household),
    asOf: writtenOn,
  });
  const design = designLoop(heat, siteTables.refrigerants);
  return design?.result.ok ? design.result.loop.brineOutC : null;
}
