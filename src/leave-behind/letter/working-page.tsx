import { Fragment } from 'react';
import { GradeMark } from '../../charts/grade-mark.tsx';
import { Reworded } from '../../charts/reworded.tsx';
import { DayPicture } from '../../charts/typical-day/picture.tsx';
import { daySentence } from '../../charts/typical-day/sentence.ts';
import { daySeries } from '../../charts/typical-day/series.ts';
import { guidedSearch } from '../../model/guided-search/guided-search.ts';
import type { BillCheck, CheckFinding } from '../../model/shapes/bill-check.ts';
import type { RecordAccount } from '../../model/shapes/evidence.ts';
import {
  causeName,
  checkCaution,
  insideOf,
  insidePart,
  knowsWeather,
  partsWithRow,
  priceSentence,
} from '../../words/check.ts';
import {
  askSentence,
  costOfFinding,
  findingCaution,
  findingCheckSentence,
  findingName,
  noFindingsSentence,
  noReadingsSentence,
  seenSentence,
  sureShort,
  whenSentence,
} from '../../words/findings.ts';
import { heatersSeen, notSeenWords, sureMeaning, worthOf } from '../../words/findings-worth.ts';
import { gradeName } from '../../words/grades.ts';
import {
  answerSentence,
  effortSentence,
  leadSentence,
  likelySentences,
  questionTask,
  searchSentence,
  twentiethsMeaning,
} from '../../words/guided-search.ts';
import { daysOfBill } from '../../words/letter.ts';
import { longDate, poundsAndPence } from '../../words/numbers.ts';
import { recordUseSentence } from '../../words/record-uses.ts';
import { say } from '../../words/say.ts';
import { sayTold } from '../../words/say-told.ts';
import { workingValue } from '../../words/working.ts';
import { NumberHead } from '../number-head.tsx';
import { PAPER_WIDTH } from '../paper.ts';
import type { LetterParts } from './letter-parts.ts';
import { dangerAtPlant, PlantSection } from './plant-section.tsx';

const DAY_HEIGHT = 88;

/** For the installer: the parts with their sums, what the readings show, and the cautions. */
export function WorkingPage({ parts }: { readonly parts: LetterParts }) {
  const { check } = parts;
  const danger = dangerAtPlant(parts);
  return (
    <section className="letter-working">
      <h2>{say('Working, for the installer')}</h2>
      <p className="quiet">
        {say('{name}: written estimate {number} of {date}.', {
          name: parts.household.jobNumber
            ? `${parts.household.name} (${parts.household.jobNumber})`
            : parts.household.name,
          number: String(parts.estimate.number),
          date: longDate(parts.estimatedOn),
        })}{' '}
        {say('Bill of {days}: {units} at {price}.', {
          days: daysOfBill(check.input),
          units: workingValue(check.input.boughtKWh, 'kWh'),
          price: workingValue(check.input.pencePerKWh, 'p/kWh'),
        })}{' '}
        {priceSentence(check)}
      </p>
      {danger ? <p className="urgent">{`${longDate(danger.date)}: ${danger.said}`}</p> : null}
      <PartsTable parts={parts} />
      <h3>{say('The sums')}</h3>
      {check.parts.map(({ cause, working, pence }) => (
        <p key={cause} className="sum">
          <strong>
            {sayTold(working.title)}: {poundsAndPence(pence)}.
          </strong>{' '}
          {working.inputs
            .map(
              ({ name, value, unit, grade }) => `${sayTold(name)} ${workingValue(value, unit)} (${gradeName(grade)})`,
            )
            .join('; ')}
          .
        </p>
      ))}
      <p className="quiet">
        <Reworded text={check.parts.find(({ cause }) => cause !== 'days')?.working.formula ?? ''} />
      </p>
      <h3>{say('What the readings show')}</h3>
      {check.findings === undefined ? <p>{noReadingsSentence()}</p> : null}
      {check.findings?.length === 0 ? <p>{noFindingsSentence()}</p> : null}
      {check.findings?.map((finding, index) => (
        <FindingBlock key={`${finding.code}|${finding.from}`} finding={finding} pictured={index === 0} />
      ))}
      {check.notSeen?.map(notSeenWords).map(({ sentence, shown, more }) => (
        <Fragment key={sentence}>
          <p>{sentence}</p>
          {shown.length > 0 ? (
            <ul>
              {[...shown, ...more].map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          ) : null}
        </Fragment>
      ))}
      {check.findings ? (
        <p className="sum quiet">
          {sureMeaning()} {check.findings.some(({ code }) => code === 'heater-running') ? '' : heatersSeen()}
        </p>
      ) : null}
      <RecordsSection records={check.records ?? []} />
      <PlantSection parts={parts} />
      <SearchSection check={check} />
      <Cautions findings={check.findings ?? []} />
    </section>
  );
}

/** Every record that was there, so that nobody wonders whether the check saw it. */
function RecordsSection({ records }: { readonly records: readonly RecordAccount[] }) {
  if (records.length === 0) return null;
  return (
    <>
      <h3>{say('What each record was used for')}</h3>
      <p className="quiet">{records.map(recordUseSentence).join(' ')}</p>
    </>
  );
}

/** Likely causes, what was answered, and the questions that would tell most: who, how long, and where each outcome leads. */
function SearchSection({ check }: { readonly check: BillCheck }) {
  const search = guidedSearch(check);
  return (
    <>
      <h3>{say('Likely causes')}</h3>
      <p>
        {searchSentence(search)} {search.causes.length > 0 ? likelySentences(search).join(' ') : ''}{' '}
        <span className="quiet">{search.causes.length > 0 ? twentiethsMeaning() : ''}</span>
      </p>
      {check.input.answers?.length ? (
        <p>
          {say('Answered so far')}: {check.input.answers.map(answerSentence).join(' ')}
        </p>
      ) : null}
      {search.next.length > 0 ? (
        <ul className="steps">
          {search.next.map((next) => (
            <li key={next.question}>
              {questionTask(next.question, next.who)} {effortSentence(next)}{' '}
              {next.outcomes.map((outcome) => leadSentence(next.question, outcome)).join(' ')}
            </li>
          ))}
        </ul>
      ) : null}
    </>
  );
}

function PartsTable({ parts }: { readonly parts: LetterParts }) {
  const { check } = parts;
  return (
    <table>
      <thead>
        <tr>
          <th scope="col">{say('From an even share of the year to the bill')}</th>
          <NumberHead>{say('Amount')}</NumberHead>
          <th scope="col">{say('How sure it is')}</th>
        </tr>
      </thead>
      <tbody>
        <tr>
          <td>{say('Estimated, an even share of the year')}</td>
          <td className="number">{poundsAndPence(check.estimatedPence)}</td>
          <td />
        </tr>
        {partsWithRow(check, check.parts).map((part) => (
          <Fragment key={part.cause}>
            <tr>
              <td>
                {causeName(part.cause, part.pence)}
                {insideOf(part) ? (
                  <span className="quiet">{say(', joined: {causes}', { causes: insideOf(part) })}</span>
                ) : null}
              </td>
              <td className="number">{poundsAndPence(part.pence)}</td>
              <td>
                <GradeMark grade={part.grade} size={13} silent /> {gradeName(part.grade)}
              </td>
            </tr>
            {insidePart(part, check.findings).map(({ name, pence }) => (
              <tr key={name} className="inside">
                <td>{name}</td>
                <td className="number">{poundsAndPence(pence)}</td>
                <td />
              </tr>
            ))}
          </Fragment>
        ))}
        <tr className="sum">
          <td>{say('The bill')}</td>
          <td className="number">{poundsAndPence(check.actualPence)}</td>
          <td />
        </tr>
        <tr>
          <td>
            {knowsWeather(check)
              ? say('Estimated for these days, this price and weather')
              : say('Estimated for these days and this price')}
          </td>
          <td className="number">{poundsAndPence(check.expected.value)}</td>
          <td>
            {say('{low} to {high}', {
              low: poundsAndPence(check.expected.low),
              high: poundsAndPence(check.expected.high),
            })}
          </td>
        </tr>
      </tbody>
    </table>
  );
}

function FindingBlock({ finding, pictured }: { readonly finding: CheckFinding; readonly pictured: boolean }) {
  const day = pictured && finding.typicalDay ? daySeries(finding, finding.typicalDay) : null;
  return (
    <div className="finding">
      <p>
        <strong>{findingName(finding)}</strong>, {whenSentence(finding)}, {sureShort(finding)}. {seenSentence(finding)}{' '}
        {costOfFinding(finding)}
      </p>
      {day ? (
        <figure>
          <div role="img" aria-label={daySentence(day)}>
            <DayPicture series={day} size="paper" width={PAPER_WIDTH} height={DAY_HEIGHT} />
          </div>
          <figcaption>{daySentence(day)}</figcaption>
        </figure>
      ) : null}
      <p>
        {say('Ask: {questions}', { questions: finding.ask.map(askSentence).join(' ') })}{' '}
        {finding.check.length > 0
          ? say('Check: {steps}', { steps: finding.check.map(findingCheckSentence).join(' ') })
          : null}{' '}
        <span className="quiet">{worthOf(finding.code)}</span>
      </p>
    </div>
  );
}

function Cautions({ findings }: { readonly findings: readonly CheckFinding[] }) {
  const codes = [...new Set(findings.flatMap(({ cautions }) => cautions))];
  return (
    <p className="quiet">
      {[...codes.map(findingCaution), checkCaution(), say('Local codes and the maker’s instructions come first.')].join(
        ' ',
      )}
    </p>
  );
}
