import { useId } from 'react';
import { GradeMark } from '../../charts/grade-mark.tsx';
import type { Grade } from '../../model/shapes/working.ts';
import { gradeName } from '../../words/grades.ts';
import { say } from '../../words/say.ts';

const GRADES: readonly Grade[] = ['measured', 'estimated', 'assumed'];

/** How far a typed value can be trusted, chosen among the three shapes. */
export function GradePicker(props: {
  readonly about: string;
  readonly value: Grade;
  readonly onChange: (grade: Grade) => void;
}) {
  const name = useId();
  return (
    <fieldset className="grade-picker">
      <legend className="unseen">{say('How sure: {about}', { about: props.about })}</legend>
      {GRADES.map((grade) => (
        <label key={grade} title={gradeName(grade)}>
          <input
            type="radio"
            name={name}
            value={grade}
            checked={props.value === grade}
            onChange={() => props.onChange(grade)}
          />
          <GradeMark grade={grade} silent />
          <span className="unseen">{gradeName(grade)}</span>
        </label>
      ))}
    </fieldset>
  );
}
