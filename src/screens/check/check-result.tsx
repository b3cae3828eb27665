/** What a check found: the bridge from estimated to paid, what is not known, the search for its cause. */

import type { ReactNode } from 'react';
import { BridgePicture } from '../../charts/bridge/picture.tsx';
import { bridgeName, bridgeSentence } from '../../charts/bridge/sentence.ts';
import { bridgeSeries } from '../../charts/bridge/series.ts';
import { bridgeTable } from '../../charts/bridge/table.ts';
import { ChartFigure } from '../../charts/figure.tsx';
import { GradeMark } from '../../charts/grade-mark.tsx';
import type { BillCheck } from '../../model/shapes/bill-check.ts';
import {
  causeName,
  checkCaution,
  estimatedForDaysPence,
  insideOf,
  insidePart,
  partsForDays,
  partsWithRow,
  seasonSentence,
  unknownSentences,
} from '../../words/check.ts';
import { gradeName } from '../../words/grades.ts';
import { poundsAndPence } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { useHousehold } from '../household-context.tsx';
import { HowWeKnow } from '../shared/how-we-know.tsx';
import { FigureButton } from '../shared/spoken.tsx';
import { checkWorking } from './check-working.ts';
import { FindingsList } from './findings-list.tsx';
import { SearchPanel } from './search-panel.tsx';

export function CheckResult(props: { readonly check: BillCheck; readonly children: ReactNode }) {
  const { check } = props;
  const { openWorking } = useHousehold();
  const series = bridgeSeries(check);
  const unknown = unknownSentences(check);
  return (
    <>
      <div className="check-two">
        <div className="stack">
          <ChartFigure
            name={bridgeName()}
            sentence={bridgeSentence(series)}
            sentenceSaid
            picture={<BridgePicture series={series} size="desk" height={380} />}
            table={bridgeTable(series)}
            note={seasonSentence(check)}
            known={<HowWeKnow find={() => [checkWorking(check)]} about={bridgeName()} plain />}
          />
          <div className="actions">{props.children}</div>
        </div>
        <div className="check-next">
          <h3>{say('What we do not know yet')}</h3>
          {unknown.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
          {unknown.length === 0 ? <p>{say('Every part was metered or read, so nothing is joined.')}</p> : null}
          <p className="quiet small">
            {checkCaution()} {say('Mains wiring is for a qualified electrician.')}
          </p>
        </div>
      </div>
      <SearchPanel check={check} />
      <FindingsList findings={check.findings} notSeen={check.notSeen} />
      <table>
        <caption>{say('Where the difference comes from. Each amount opens its sum.')}</caption>
        <tbody>
          {partsWithRow(check, partsForDays(check)).flatMap((part) => [
            <tr key={part.cause}>
              <th scope="row">
                {causeName(part.cause, part.pence)}
                {insideOf(part) ? (
                  <span className="quiet small check-inside">{say('joined: {parts}', { parts: insideOf(part) })}</span>
                ) : null}
              </th>
              <td className="number">
                <FigureButton text={signed(part.pence)} working={part.working} onOpen={openWorking} />
              </td>
              <td className="quiet">
                <GradeMark grade={part.grade} silent /> {gradeName(part.grade)}
              </td>
            </tr>,
            ...insidePart(part, check.findings).map(({ name, pence }) => (
              <tr key={`${part.cause}|${name}`} className="quiet small">
                <th scope="row">{name}</th>
                <td className="number">{signed(pence)}</td>
                <td />
              </tr>
            )),
          ])}
          <tr className="ours">
            <th scope="row">{say('Together')}</th>
            <td className="number">
              <FigureButton
                text={signed(check.actualPence - estimatedForDaysPence(check))}
                working={checkWorking(check)}
                onOpen={openWorking}
              />
            </td>
            <td />
          </tr>
        </tbody>
      </table>
    </>
  );
}

const signed = (pence: number): string => (pence > 0 ? `+${poundsAndPence(pence)}` : poundsAndPence(pence));
