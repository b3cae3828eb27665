/** The sum behind a figure: in words, with its inputs, their grades and origins, the source, and the sums before it. */
import { gradeName } from '../words/grades.ts';
import { keyOf } from '../words/say-told.ts';
import { inputKey, type ShownInput, type ShownWorking, workingValue } from '../words/working.ts';
import { GradeMark } from './grade-mark.tsx';
import { Reworded } from './reworded.tsx';
import { Said } from './said.tsx';

function InputRow({ input }: { readonly input: ShownInput }) {
  return (
    <li className="working-input">
      <span className="working-grade">
        <GradeMark grade={input.grade} silent />
        <span className="unseen">{gradeName(input.grade)}: </span>
      </span>
      <span className="working-name">
        <Reworded text={input.name} />
      </span>
      <span className="working-value">{workingValue(input.value, input.unit)}</span>
      <span className="working-origin quiet small">
        {gradeName(input.grade)} · <Reworded text={input.origin} />
      </span>
    </li>
  );
}

export function WorkingView(props: { readonly working: ShownWorking; readonly withTitle?: boolean }) {
  const { working, withTitle = false } = props;
  return (
    <div className="working">
      {withTitle ? (
        <h3>
          <Reworded text={working.title} />
        </h3>
      ) : null}
      <p className="working-result">
        <strong>{workingValue(working.result.value, working.result.unit)}</strong>
      </p>
      <p className="working-formula voice">
        <Reworded text={working.formula} />
      </p>
      {working.inputs.length > 0 ? (
        <ul className="working-inputs">
          {working.inputs.map((input) => (
            <InputRow key={inputKey(input)} input={input} />
          ))}
        </ul>
      ) : null}
      {working.source ? (
        <p className="working-source quiet small">
          <Said text="Source: {source}" with={{ source: <Reworded text={working.source} /> }} />
        </p>
      ) : null}
      {(working.steps ?? []).map((step) => (
        <details key={`${keyOf(step.title)}|${step.result.value}`} className="working-step">
          <summary>
            <Reworded text={step.title} />: {workingValue(step.result.value, step.result.unit)}
          </summary>
          <WorkingView working={step} />
        </details>
      ))}
    </div>
  );
}
