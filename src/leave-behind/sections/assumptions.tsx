import { GradeMark } from '../../charts/grade-mark.tsx';
import { gradeMeaning, gradeName } from '../../words/grades.ts';
import { capitalised } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { keyOf, sayTold } from '../../words/say-told.ts';
import { inputKey, workingValue } from '../../words/working.ts';
import { listAssumptions, listSources } from '../list-assumptions.ts';
import { Origin } from '../origin.tsx';
import type { EstimateParts } from '../parts.ts';
import { OtherWays } from './other-ways.tsx';

/** Every input with its grade and where it comes from, chapter by chapter. */
export function AssumptionsPart({ parts }: { readonly parts: EstimateParts }) {
  return (
    <section>
      <h2>{say('What went into it')}</h2>
      <p className="plain">
        {(['measured', 'estimated', 'assumed'] as const).map((grade) => (
          <span key={grade}>
            <GradeMark grade={grade} size={13} silent /> <strong>{gradeName(grade)}</strong>: {gradeMeaning(grade)}{' '}
          </span>
        ))}
      </p>
      {listAssumptions(parts).map(({ title, inputs }) => (
        <div key={title}>
          <h3>{title}</h3>
          <div className="wide">
            <table className="assumptions">
              <tbody>
                {inputs.map((input) => (
                  <tr key={inputKey(input)}>
                    <td>
                      <GradeMark grade={input.grade} size={13} /> {capitalised(sayTold(input.name))}
                    </td>
                    <td className="number">{workingValue(input.value, input.unit)}</td>
                    <td>
                      <Origin text={input.origin} />
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
        </div>
      ))}
      <OtherWays parts={parts} />
    </section>
  );
}

export function SourcesPart({ parts }: { readonly parts: EstimateParts }) {
  return (
    <section className="follows">
      <h2>{say('Sources')}</h2>
      <ol className="steps">
        {listSources(parts).map((source) => (
          <li key={keyOf(source)}>
            <Origin text={source} />
          </li>
        ))}
      </ol>
    </section>
  );
}
