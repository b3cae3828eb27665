import type { Working } from '../../model/working.ts';
import { gradeName } from '../../words/grades.ts';
import { workingValue } from '../../words/working.ts';
import type { PromiseParts } from '../parts.ts';

/** The sums as an appendix: heat, machine, then what each way of heating costs. */
export function WorkingsPart({ parts }: { readonly parts: PromiseParts }) {
  const { demand, machine, systems } = parts.appraisal;
  const chapters: readonly (readonly [string, readonly Working[]])[] = [
    ['The heat', [demand.total.working]],
    ['The machine', [machine.whole.working]],
    ['The cost of a year', systems.map((system) => system.cost.working)],
  ];
  return (
    <section>
      <h2>The sums</h2>
      {chapters.map(([title, workings]) => (
        <div key={title}>
          <h3>{title}</h3>
          {workings.map((working) => (
            <WorkingBlock key={working.title} working={working} />
          ))}
        </div>
      ))}
    </section>
  );
}

function WorkingBlock({ working }: { readonly working: Working }) {
  return (
    <div className="working">
      <h4>{working.title}</h4>
      <p className="quiet">{working.formula}</p>
      {working.inputs.length > 0 ? (
        <table>
          <tbody>
            {working.inputs.map((input) => (
              <tr key={`${input.name}|${input.value}|${input.origin}`}>
                <td>{input.name}</td>
                <td className="number">{workingValue(input.value, input.unit)}</td>
                <td>
                  {gradeName(input.grade)}, {input.origin}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      ) : null}
      <p className="result">= {workingValue(working.result.value, working.result.unit)}</p>
      {working.source ? <p className="quiet">Source: {working.source}</p> : null}
      {working.steps?.map((step) => (
        <WorkingBlock key={step.title} working={step} />
      ))}
    </div>
  );
}
