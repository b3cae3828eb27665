/** What the last visit to the plant found: hints in order of likelihood, never a diagnosis. */
import { compareDates } from '../../model/calendar/civil.ts';
import { judgePlant } from '../../model/judge-plant.ts';
import type { CivilDate } from '../../model/shapes/dates.ts';
import type { SiteVisit } from '../../model/shapes/site-readings.ts';
import { referenceOf } from '../../reference/index.ts';
import { siteTables } from '../../reference/site-tables.ts';
import { longDate } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import {
  alikeSentence,
  brineFallText,
  cautionSentence,
  plantCauseText,
  siteRemarkSentence,
  siteSummary,
  standingSentence,
  worthSaying,
} from '../../words/site-readings.ts';
import type { LetterParts } from './letter-parts.ts';

/** As many as can be looked into on one visit. */
const MOST_CAUSES = 3;

/** The newest visit since the first day of the bill; an older one says nothing of these days. */
function visitOf({ household, check }: LetterParts): SiteVisit | undefined {
  return (household.siteReadings ?? [])
    .filter(({ date }) => date >= check.input.from)
    .toSorted((a, b) => compareDates(a.date, b.date))
    .at(-1);
}

/** The visit as it is judged for this paper; null where there was none. */
function judgedVisit(parts: LetterParts) {
  const visit = visitOf(parts);
  if (!visit) return null;
  const { household, estimate, writtenOn } = parts;
  const given = { household, series: estimate.evidence, reference: referenceOf(household), asOf: writtenOn };
  const { judge, course } = judgePlant(given, siteTables);
  return { visit, site: judge(visit), course };
}

/** What endangers plant or people, by the same visit; null where nothing does. */
export function dangerAtPlant(parts: LetterParts): { readonly date: CivilDate; readonly said: string } | null {
  const judged = judgedVisit(parts);
  const isDanger = judged?.site.causes.some(({ level }) => level === 'danger');
  return judged && isDanger ? { date: judged.visit.date, said: siteSummary(judged.site) } : null;
}

export function PlantSection({ parts }: { readonly parts: LetterParts }) {
  const judged = judgedVisit(parts);
  if (!judged) return null;
  const { visit, site, course } = judged;
  return (
    <>
      <h3>{say('At the plant on {date}', { date: longDate(visit.date) })}</h3>
      <p>
        {siteSummary(site)} {worthSaying(site).map(standingSentence).join(' ')}{' '}
        {site.remarks.map(siteRemarkSentence).join(' ')} {alikeSentence(site)} {visit.note}{' '}
        {course.fall ? brineFallText(course.fall, siteTables.bands.fixed['brine-in']) : null}
      </p>
      {site.causes.length > 0 ? (
        <div className="finding">
          <p>{say('What it can mean, likeliest first. The order is a judgement, not a diagnosis.')}</p>
          <ol className="steps">
            {site.causes.slice(0, MOST_CAUSES).map((one) => (
              <li key={one.cause}>{plantCauseText(one)}</li>
            ))}
          </ol>
        </div>
      ) : null}
      <p className="quiet">{site.cautions.map(cautionSentence).join(' ')}</p>
    </>
  );
}
