/** Site readings: what is read at the plant, judged at once, kept with the household visit by visit. */

import { useId, useMemo, useState } from 'react';
import { BrinePicture } from '../../charts/brine/picture.tsx';
import { brineName, brineSentence } from '../../charts/brine/sentence.ts';
import { brineTable } from '../../charts/brine/table.ts';
import { ChartFigure } from '../../charts/figure.tsx';
import { judgePlant } from '../../model/judge-plant.ts';
import type { SiteVisit } from '../../model/shapes/site-readings.ts';
import type { BrineCourse } from '../../model/site-readings/brine-course.ts';
import { referenceOf } from '../../reference/index.ts';
import { siteTables } from '../../reference/site-tables.ts';
import { longDate } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { brineFallText, cautionSentence, siteSummary, visitSentence } from '../../words/site-readings.ts';
import { useHousehold } from '../household-context.tsx';
import { DateEntry } from '../shared/date-entry.tsx';
import { readDate } from '../shared/date-text.ts';
import { Field, fieldIds } from '../shared/field.tsx';
import { StageHead } from '../shared/stage-head.tsx';
import { TextField } from '../shared/text-field.tsx';
import { EarlierVisits } from './earlier-visits.tsx';
import { ReadingsForm } from './readings-form.tsx';
import { SiteResults } from './site-results.tsx';
import { beginVisit, cautionsShown, dropVisit, keepVisit, newestFirst, patchReadings } from './visits.ts';
import './site.css';

const MOST_NOTE = 2000;

export function SiteStage() {
  const { household, series, today, change, tell, goTo } = useHousehold();
  const begin = (): SiteVisit => beginVisit(crypto.randomUUID(), today, household);
  const visits = household.siteReadings ?? [];
  const [visit, setVisit] = useState<SiteVisit>(
    () => newestFirst(visits).find(({ date }) => date === today) ?? begin(),
  );
  const { coldestBrineOutC, judge, course } = useMemo(
    () => judgePlant({ household, series, reference: referenceOf(household), asOf: today }, siteTables),
    [household, series, today],
  );
  const check = judge(visit);
  const lay = (next: SiteVisit) => {
    setVisit(next);
    change((before) => keepVisit(before, next));
  };
  const dateIds = fieldIds(useId());
  const [dateText, setDateText] = useState(visit.date);
  const open = (next: SiteVisit) => {
    setVisit(next);
    setDateText(next.date);
  };

  return (
    <>
      <StageHead
        sentence={
          check.values.length === 0 ? say('Type what you read at the plant. Nothing is a must.') : siteSummary(check)
        }
      >
        {say('Read all of it within the same few minutes, once the machine has run steadily for ten.')}
      </StageHead>
      <div className="site-two">
        <aside className="site-cautions" aria-labelledby="site-cautions">
          {check.values.length > 0 ? (
            <p className="site-so-far" role="status">
              <strong>{say('So far:')}</strong> {visitSentence(check)}
            </p>
          ) : null}
          <h3 id="site-cautions">{say('Before you touch anything')}</h3>
          <ul>
            {cautionsShown(check.cautions).map((caution) => (
              <li key={caution}>{cautionSentence(caution)}</li>
            ))}
          </ul>
        </aside>
        <div className="site-main" key={visit.id}>
          <section>
            <div className="fields fields-tight">
              <Field
                ids={dateIds}
                label={say('Day of the visit')}
                refusal={
                  readDate(dateText).kind === 'day'
                    ? null
                    : say('This is no day. {date} still holds.', { date: longDate(visit.date) })
                }
              >
                <DateEntry
                  id={dateIds.entry}
                  value={dateText}
                  onChange={(text) => {
                    setDateText(text);
                    const read = readDate(text);
                    if (read.kind === 'day') lay({ ...visit, date: read.date });
                  }}
                />
              </Field>
              <TextField
                label={say('What was noticed')}
                value={visit.note ?? ''}
                maxLength={MOST_NOTE}
                onChange={(text) => {
                  const { note: _before, ...rest } = visit;
                  lay(text === '' ? rest : { ...rest, note: text });
                }}
              />
            </div>
          </section>
          <ReadingsForm
            readings={visit.readings}
            coldestBrineOutC={coldestBrineOutC}
            onChange={(part) => lay({ ...visit, readings: patchReadings(visit.readings, part) })}
          />
          <SiteResults check={check} />
          <BrineFigure course={course} />
          <EarlierVisits
            visits={visits}
            open={visit.id}
            judge={judge}
            onOpen={open}
            onDrop={(gone) => {
              change((before) => dropVisit(before, gone.id));
              if (gone.id === visit.id) open(begin());
              tell(say('The visit is removed.'));
            }}
            onNew={() => open(begin())}
          />
          <div className="actions">
            <button type="button" onClick={() => goTo('check')}>
              {say('To the bill check')}
            </button>
          </div>
        </div>
      </div>
    </>
  );
}

/** Brine from visit to visit: one picture, and one finding where it falls. */
function BrineFigure({ course }: { readonly course: BrineCourse }) {
  if (course.readings.length < 2) return null;
  return (
    <section className="stack" aria-labelledby="brine-head">
      <h3 id="brine-head">{brineName()}</h3>
      <ChartFigure
        name={brineName()}
        sentence={brineSentence(course)}
        spoken={course.fall ? brineFallText(course.fall, siteTables.bands.fixed['brine-in']) : undefined}
        picture={<BrinePicture series={course} size="desk" />}
        table={brineTable(course)}
        note={say('Read at the machine in steady running. Brine is usually coldest in February and March.')}
      />
    </section>
  );
}
