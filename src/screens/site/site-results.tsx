/** What the readings come to: each result with its usual band, then what it can mean and what to look at first. */

import { Reworded } from '../../charts/reworded.tsx';
import type { SiteCheck } from '../../model/site-readings/check-site.ts';
import type { LikelyCause } from '../../model/site-readings/likely-causes.ts';
import { capitalised } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { keyOf, sayTold } from '../../words/say-told.ts';
import {
  alikeSentence,
  bandText,
  causeSentence,
  evidenceSentence,
  expectedText,
  firstChecks,
  gapSentence,
  levelName,
  orElseSentences,
  quantityName,
  settlingSentence,
  siteNumber,
  siteRemarkSentence,
  tradeSentence,
} from '../../words/site-readings.ts';
import { sentenceOf } from '../shared/given.ts';
import { StandingMark } from './standing-mark.tsx';

/** As many as can be looked into on one visit; the rest is folded. */
const SHOWN_CAUSES = 3;

/** What endangers plant or people, and what contradicts itself, stands before all that was worked out. */
export function SiteResults({ check }: { readonly check: SiteCheck }) {
  const first = check.causes.filter(({ level }) => level !== 'cause');
  const causes = check.causes.filter(({ level }) => level === 'cause');
  return (
    <>
      {first.length > 0 ? (
        <section className="site-urgent" aria-label={say('What comes first')} role="status">
          <Causes causes={first} from={1} />
        </section>
      ) : null}
      {check.remarks.length > 0 ? (
        <ul className="refusal" role="alert">
          {check.remarks.map((remark) => (
            <li key={remark.code + remark.where}>{siteRemarkSentence(remark)}</li>
          ))}
        </ul>
      ) : null}
      <section aria-labelledby="site-found">
        <h3 id="site-found">{say('What they come to')}</h3>
        {check.values.length > 0 ? <ValuesTable check={check} /> : <p className="quiet">{say('Nothing typed yet.')}</p>}
        {check.alike ? <p>{alikeSentence(check)}</p> : null}
        {check.gaps.length > 0 ? (
          <details className="notes">
            <summary>{say('More could be worked out with more readings')}</summary>
            <ul>
              {check.gaps.map((gap) => (
                <li key={gap.quantity}>{gapSentence(gap)}</li>
              ))}
            </ul>
          </details>
        ) : null}
      </section>
      {causes.length > 0 ? (
        <section aria-labelledby="site-causes">
          <h3 id="site-causes">{say('What it can mean, likeliest first')}</h3>
          <p className="quiet">
            {say('The order is a judgement, not a diagnosis. Rule out one before you turn to the next.')}
          </p>
          <Causes causes={causes.slice(0, SHOWN_CAUSES)} from={1} />
          {causes.length > SHOWN_CAUSES ? (
            <details className="notes">
              <summary>{say('Less likely')}</summary>
              <Causes causes={causes.slice(SHOWN_CAUSES)} from={SHOWN_CAUSES + 1} />
            </details>
          ) : null}
        </section>
      ) : null}
    </>
  );
}

function ValuesTable({ check }: { readonly check: SiteCheck }) {
  return (
    <div className="scroll-x">
      <table className="site-values">
        <caption className="unseen">{say('Results of the readings against their usual bands')}</caption>
        <thead>
          <tr>
            <th scope="col">{say('What')}</th>
            <th scope="col" className="number">
              {say('Found')}
            </th>
            <th scope="col" className="number">
              {say('Usual')}
            </th>
            <th scope="col">{say('Where it stands')}</th>
          </tr>
        </thead>
        <tbody>
          {check.values.map((value) => (
            <tr key={value.quantity} title={value.band ? sayTold(value.band.source) : undefined}>
              <th scope="row">{capitalised(quantityName(value.quantity))}</th>
              <td className="number">{siteNumber(value.value, value.unit)}</td>
              <td className="number quiet">
                {value.band === null ? '' : bandText(value)}
                <span className="site-expected">{expectedText(value)}</span>
              </td>
              <td>
                <StandingMark standing={value.standing} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <SiteSources check={check} />
    </div>
  );
}

/** Where the bands come from, each once. */
function SiteSources({ check }: { readonly check: SiteCheck }) {
  const sources = new Map(
    check.values.flatMap(({ band }) => (band ? [[keyOf(band.source), band.source] as const] : [])),
  );
  if (sources.size === 0) return null;
  return (
    <details className="notes">
      <summary>{say('Where the usual bands come from')}</summary>
      <ul>
        {[...sources].map(([key, source]) => (
          <li key={key}>
            <Reworded text={source} as={sentenceOf} />
          </li>
        ))}
      </ul>
    </details>
  );
}

function Causes(props: { readonly causes: readonly LikelyCause[]; readonly from: number }) {
  return (
    <ol className="site-causes" start={props.from}>
      {props.causes.map((cause) => (
        <li key={cause.cause + JSON.stringify(cause.meant)}>
          <p>
            {cause.level === 'cause' ? null : <strong>{levelName(cause.level)} </strong>}
            {causeSentence(cause)}
          </p>
          {orElseSentences(cause).map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
          {cause.orElse.length > 0 ? <p className="site-settle">{settlingSentence(cause)}</p> : null}
          <p>
            <strong>{say('First:')}</strong> {firstChecks(cause)}
          </p>
          <p className="quiet small">
            {evidenceSentence(cause)} {tradeSentence(cause.trade)}
          </p>
        </li>
      ))}
    </ol>
  );
}
