import { GradeMark } from '../../charts/grade-mark.tsx';
import { gradeMeaning, gradeName } from '../../words/grades.ts';
import { workingValue } from '../../words/working.ts';
import { listAssumptions } from '../assumptions.ts';
import type { PromiseParts } from '../parts.ts';

export function AssumptionsPart({ parts }: { readonly parts: PromiseParts }) {
  const inputs = listAssumptions(parts);
  return (
    <section>
      <h2>What went into it</h2>
      <p className="plain">
        {(['measured', 'estimated', 'assumed'] as const).map((grade) => (
          <span key={grade}>
            <GradeMark grade={grade} size={13} silent /> <strong>{gradeName(grade)}</strong>: {gradeMeaning(grade)}{' '}
          </span>
        ))}
      </p>
      <div className="wide">
        <table className="assumptions">
          <thead>
            <tr>
              <th scope="col">What</th>
              <th scope="col" className="number">
                Value
              </th>
              <th scope="col">Where it comes from</th>
            </tr>
          </thead>
          <tbody>
            {inputs.map((input) => (
              <tr key={`${input.name}|${input.value}|${input.unit ?? ''}|${input.origin}`}>
                <td>
                  <GradeMark grade={input.grade} size={13} /> {input.name}
                </td>
                <td className="number">{workingValue(input.value, input.unit)}</td>
                <td>{input.origin}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}
