import { YearsPicture } from '../../charts/years/picture.tsx';
import { yearsName, yearsSentence } from '../../charts/years/sentence.ts';
import { type YearsSeries, yearsSeries } from '../../charts/years/series.ts';
import { type Lifetime, mayLead, type YearPoint } from '../../model/shapes/lifetime.ts';
import {
  annualSentence,
  chanceSentence,
  instalmentSentence,
  lifetimeCautions,
  noteSentence,
  pathsSentence,
  paybackSentence,
  savedSentence,
  worthSentence,
} from '../../words/lifetime.ts';
import { exactPounds, poundsRange } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { NumberTable } from '../number-table.tsx';
import { PAPER_WIDTH } from '../paper.ts';
import type { EstimateParts } from '../parts.ts';

/** What the next years may bring, as kept with the estimate; an estimate without price and grant, and one from before it was kept, have no such page. */
export function YearsPart({ parts }: { readonly parts: EstimateParts }) {
  const { lifetime } = parts.estimate;
  if (!lifetime || !mayLead(lifetime)) return null;
  const series = yearsSeries(lifetime);
  const told = [savedSentence, paybackSentence, instalmentSentence, chanceSentence, worthSentence, annualSentence].map(
    (tell) => tell(lifetime),
  );
  return (
    <section>
      <h2>{say('What the next years may bring')}</h2>
      <p className="say">{yearsSentence(lifetime)}</p>
      <figure>
        <div role="img" aria-label={`${yearsName()}. ${yearsSentence(lifetime)}`}>
          <YearsPicture series={series} size="paper" width={PAPER_WIDTH} />
        </div>
        <figcaption>
          {lifetime.kind === 'whole'
            ? say(
                'Paid in total, purchase and running costs, in today’s money. 8 in 10 homes like yours lie inside the bands.',
              )
            : say(
                'Paid in total, running costs alone, in today’s money. 8 in 10 homes like yours lie inside the bands.',
              )}
        </figcaption>
      </figure>
      <p className="plain">
        <strong>{lifetimeCautions().join(' ')}</strong>
      </p>
      <p className="plain">{told.filter(Boolean).join(' ')}</p>
      <YearsTable lifetime={lifetime} series={series} />
      <p className="plain quiet">{[pathsSentence(lifetime), ...lifetime.notes.map(noteSentence)].join(' ')}</p>
    </section>
  );
}

/** More rows make no page clearer. */
const ROWS_MOST = 8;

/** The years that stand on paper: evenly apart, the last one, and each in which equipment is paid. */
export function printedYears({ kind, pump, beside, years }: Lifetime): number[] {
  const step = [1, 2, 5].find((apart) => years / apart + 1 <= ROWS_MOST) ?? 10;
  return pump
    .map(({ year }) => year)
    .filter((year) => year > 0 || kind === 'whole')
    .filter((year) => year % step === 0 || year === years || pump[year]!.outlay !== 0 || beside[year]!.outlay !== 0);
}

function YearsTable({ lifetime, series }: { readonly lifetime: Lifetime; readonly series: YearsSeries }) {
  const { pump, beside } = series;
  const cells = ({ value, low, high }: YearPoint) => [exactPounds(value), poundsRange(low, high)];
  const inside = say('8 in 10 homes inside');
  return (
    <NumberTable
      className="years"
      heads={[say('Paid in all after'), pump.name, inside, beside.name, inside]}
      rows={printedYears(lifetime).map((year) => ({
        key: year,
        cells: [
          year === 0 ? say('putting it in') : say('{year, plural, one {# year} other {# years}}', { year }),
          ...cells(pump.points[year]!),
          ...cells(beside.points[year]!),
        ],
      }))}
    />
  );
}
