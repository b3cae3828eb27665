/** What the readings show: each with when, how sure, what it costs; its day, its questions and its checks one key away. */

import { ChartFigure } from '../../charts/figure.tsx';
import { DayPicture } from '../../charts/typical-day/picture.tsx';
import { dayName, daySentence } from '../../charts/typical-day/sentence.ts';
import { daySeries } from '../../charts/typical-day/series.ts';
import { dayTable } from '../../charts/typical-day/table.ts';
import type { BillCheck, CheckFinding, NotSeen } from '../../model/shapes/bill-check.ts';
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
import { heatersSeen, moreLeftOpen, notSeenWords, sureMeaning, worthOf } from '../../words/findings-worth.ts';
import { say } from '../../words/say.ts';
import { useHousehold } from '../household-context.tsx';
import { FigureButton } from '../shared/spoken.tsx';

export function FindingsList({ findings, notSeen }: Pick<BillCheck, 'findings' | 'notSeen'>) {
  return (
    <section className="stack" aria-labelledby="findings-head">
      <h3 id="findings-head">{say('What the readings show')}</h3>
      {findings && findings.length > 0 ? (
        <ul className="findings">
          {findings.map((finding) => (
            <FindingItem key={`${finding.code}|${finding.meter}|${finding.from}`} finding={finding} />
          ))}
        </ul>
      ) : (
        <p className="quiet">{findings ? noFindingsSentence() : noReadingsSentence()}</p>
      )}
      {notSeen?.map((one) => (
        <LeftOpen key={one.code} one={one} />
      ))}
      {findings ? (
        <details>
          <summary>{say('What “sure” means, and what can be seen')}</summary>
          <p className="quiet">{sureMeaning()}</p>
          <p className="quiet">{heatersSeen()}</p>
        </details>
      ) : null}
    </section>
  );
}

/** Why something may be missing, and what would tell the causes that are left open. */
function LeftOpen({ one }: { readonly one: NotSeen }) {
  const { sentence, shown, more } = notSeenWords(one);
  const list = (lines: readonly string[]) => (
    <ul className="quiet">
      {lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
  return (
    <>
      <p className="quiet">{sentence}</p>
      {shown.length > 0 ? list(shown) : null}
      {more.length > 0 ? (
        <details>
          <summary>{moreLeftOpen(more)}</summary>
          {list(more)}
        </details>
      ) : null}
    </>
  );
}

function FindingItem({ finding }: { readonly finding: CheckFinding }) {
  const { openWorking } = useHousehold();
  const day = finding.typicalDay ? daySeries(finding, finding.typicalDay) : null;
  return (
    <li className="finding">
      <h4>{findingName(finding)}</h4>
      <p className="quiet small">
        {whenSentence(finding)} · {sureShort(finding)}
      </p>
      <p>{seenSentence(finding)}</p>
      <p>
        <FigureButton text={costOfFinding(finding)} working={finding.working} onOpen={openWorking} />
      </p>
      <details>
        <summary>
          {day ? say('Its day by the clock, what to ask, what to check') : say('What to ask, what to check')}
          <span className="unseen">: {findingName(finding)}</span>
        </summary>
        <div className="finding-more">
          {day ? (
            <ChartFigure
              name={dayName(findingName(finding))}
              sentence={daySentence(day)}
              picture={<DayPicture series={day} size="desk" />}
              table={dayTable(day)}
            />
          ) : null}
          <h5>{say('Ask')}</h5>
          <ul>
            {finding.ask.map((code) => (
              <li key={code}>{askSentence(code)}</li>
            ))}
          </ul>
          <h5>{say('Check')}</h5>
          <ul>
            {finding.check.map((code) => (
              <li key={code}>{findingCheckSentence(code)}</li>
            ))}
          </ul>
          <p className="quiet small">{finding.cautions.map(findingCaution).join(' ')}</p>
          <p className="quiet small">{worthOf(finding.code)}</p>
        </div>
      </details>
    </li>
  );
}
