/** What the next years may bring: the cumulative cost, and what it comes to. */
import { useMemo } from 'react';
import { ChartFigure } from '../../charts/figure.tsx';
import { YearsPicture } from '../../charts/years/picture.tsx';
import { yearsName, yearsSentence } from '../../charts/years/sentence.ts';
import { yearsSeries } from '../../charts/years/series.ts';
import { yearsTable } from '../../charts/years/table.ts';
import { reckonLifetime } from '../../model/lifetime/reckon-lifetime.ts';
import type { Appraisal } from '../../model/shapes/appraisal.ts';
import { mayLead } from '../../model/shapes/lifetime.ts';
import { referenceOf } from '../../reference/index.ts';
import { rangedWorking } from '../../words/explained/ranged.ts';
import { instalmentWorkings, yearsWorkings } from '../../words/explained/years.ts';
import {
  annualSentence,
  chanceSentence,
  instalmentSentence,
  lifetimeCautions,
  noteSentence,
  notYetSentence,
  pathsSentence,
  paybackSentence,
  roughPence,
  savedSentence,
  sayYears,
  worthSentence,
} from '../../words/lifetime.ts';
import { spokenPounds } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { useHousehold } from '../household-context.tsx';
import { HowWeKnow } from '../shared/how-we-know.tsx';
import { Spoken, type SpokenFigure } from '../shared/spoken.tsx';

export function LifetimeSection({ appraisal }: { readonly appraisal: Appraisal }) {
  const { household, openWorking, goTo } = useHousehold();
  const lifetime = useMemo(
    () => reckonLifetime({ household, appraisal, reference: referenceOf(household) }),
    [household, appraisal],
  );
  if (!lifetime) return null;
  const toPrices = (
    <p className="explain">
      <button type="button" className="plain" onClick={() => goTo('prices')}>
        {lifetime.kind === 'whole' ? say('Change price and grant') : say('Type price and grant')}
      </button>
    </p>
  );
  const known = <HowWeKnow find={() => yearsWorkings(lifetime)} about={yearsName()} plain />;
  if (!mayLead(lifetime)) {
    return (
      <section aria-labelledby="years-to-come">
        <h3 id="years-to-come">{say('What the next years may bring')}</h3>
        <p className="explain">
          {notYetSentence()} {known}
        </p>
        {toPrices}
      </section>
    );
  }
  const { saved, payback, netPresentValue, annual } = lifetime;
  const series = yearsSeries(lifetime);
  const rough = (pence: number) => spokenPounds(roughPence(Math.abs(pence)));
  const lines: [string, SpokenFigure[]][] = [
    [savedSentence(lifetime), [{ text: rough(saved.value), working: rangedWorking(saved) }]],
    [
      paybackSentence(lifetime),
      payback ? [{ text: sayYears(payback.simple.years ?? lifetime.years), working: payback.simple.working }] : [],
    ],
    [
      instalmentSentence(lifetime),
      instalmentWorkings(lifetime).map((working) => ({ text: spokenPounds(working.result.value), working })),
    ],
    [chanceSentence(lifetime), []],
    [
      worthSentence(lifetime),
      netPresentValue ? [{ text: rough(netPresentValue.value), working: rangedWorking(netPresentValue) }] : [],
    ],
    [
      annualSentence(lifetime),
      annual ? [annual.pump, annual.beside].map(({ value, working }) => ({ text: spokenPounds(value), working })) : [],
    ],
    [[pathsSentence(lifetime), ...lifetime.notes.map(noteSentence)].join(' '), []],
  ];
  return (
    <section aria-labelledby="years-to-come">
      <h3 id="years-to-come">{say('What the next years may bring')}</h3>
      <ChartFigure
        name={yearsName()}
        sentence={yearsSentence(lifetime)}
        picture={<YearsPicture series={series} size="desk" />}
        table={yearsTable(series)}
        known={known}
        note={lifetimeCautions().join(' ')}
      />
      {lines
        .filter(([sentence]) => sentence !== '')
        .map(([sentence, figures]) => (
          <p className="explain" key={sentence}>
            <Spoken sentence={sentence} figures={figures} onOpen={openWorking} />
          </p>
        ))}
      {toPrices}
    </section>
  );
}
