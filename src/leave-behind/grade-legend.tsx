import { GradeMark } from '../charts/grade-mark.tsx';
import { gradeName } from '../words/grades.ts';

export function GradeLegend() {
  return (
    <p className="legend">
      {(['measured', 'estimated', 'assumed'] as const).map((grade) => (
        <span key={grade}>
          <GradeMark grade={grade} size={13} silent /> {gradeName(grade)}
        </span>
      ))}
    </p>
  );
}
