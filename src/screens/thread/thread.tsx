/** The left edge: the sum itself. Somebody who reads down it has read the whole case. */

import type { ReactNode } from 'react';
import { GradeMark } from '../../charts/grade-mark.tsx';
import type { Household } from '../../model/shapes/household.ts';
import { gradeName } from '../../words/grades.ts';
import { counted, grouped } from '../../words/numbers.ts';
import { phrase, say } from '../../words/say.ts';
import { threadLines } from '../../words/thread.ts';
import { useHousehold } from '../household-context.tsx';
import { formatRoute, type Stage } from '../routes.ts';
import { HowWeKnow } from '../shared/how-we-know.tsx';
import { threadWorkings } from './thread-workings.ts';

/** Letters from which a name is set smaller, so that it does not push the stages down. */
const LONG_NAME = 48;

export function Thread(props: { readonly stage: Stage; readonly children: ReactNode }) {
  const desk = useHousehold();
  const { household, series, appraisal, estimates, checks } = desk;
  const find = () => threadWorkings(desk);
  // The readings at the plant stand behind the bill check and have no line of their own.
  const behind = props.stage === 'site' ? 'check' : null;
  const lines = threadLines({ evidence: [{ series: [...series] }], appraisal, estimates, checks });
  return (
    <aside className="thread" aria-label={say('The household')}>
      <header className="thread-head">
        <a className="back" href="#/">
          {say('All households')}
        </a>
        <h1 className={household.name.length > LONG_NAME ? 'long' : undefined}>{household.name}</h1>
        <p className="quiet">{placeLine(household, appraisal.climate.regionName)}</p>
      </header>
      <nav aria-label={say('Stages')}>
        <ol>
          {lines.map((line) => (
            <li key={line.stage} className={line.grade === 'missing' ? 'later' : undefined}>
              <a
                href={formatRoute({ screen: 'household', id: household.id, stage: line.stage })}
                aria-current={line.stage === props.stage ? 'page' : line.stage === behind ? 'true' : undefined}
              >
                <span className="grade-place">
                  <GradeMark grade={line.grade} silent />
                </span>
                <span className="thread-name">{line.name}</span>
                <span className="thread-result">{line.result}</span>
                <span className="unseen">, {gradeName(line.grade)}</span>
              </a>
            </li>
          ))}
        </ol>
      </nav>
      <div className="thread-foot">
        {props.children}
        <HowWeKnow find={find} about={say('all of these lines')} plain />
        <p className="legend">
          {(['measured', 'estimated', 'assumed'] as const).map((grade) => (
            <span key={grade} className="legend-one">
              <GradeMark grade={grade} size={12} silent /> {gradeName(grade)}
            </span>
          ))}
        </p>
      </div>
    </aside>
  );
}

const KINDS: { readonly [kind in NonNullable<Household['home']['kind']>]: string } = {
  detached: phrase('Detached'),
  semi: phrase('Semi'),
  terrace: phrase('Terrace'),
  bungalow: phrase('Bungalow'),
  flat: phrase('Flat'),
  other: phrase('Home'),
};

/** "Semi, 96 m², 3 people · Midlands"; what is not known is left out. */
export function placeLine(household: Pick<Household, 'home'>, regionName: string): string {
  const { kind, floorAreaM2, people } = household.home;
  const home = [
    ...(kind ? [say(KINDS[kind])] : []),
    ...(floorAreaM2 ? [`${grouped(floorAreaM2.value)} m²`] : []),
    ...(people ? [counted(people.value, 'person', 'people')] : []),
  ].join(', ');
  return home === '' ? regionName : `${home} · ${regionName}`;
}
