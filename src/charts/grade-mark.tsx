/** Grades are shapes before they are words: filled circle measured, half-filled estimated, open assumed, dashed not there yet. */
import { gradeName, type ShownGrade } from '../words/grades.ts';

export function GradeMark(props: {
  readonly grade: ShownGrade;
  /** Height in pixels; 16 beside text. */
  readonly size?: number;
  /** True where the word stands beside the mark, so that it is not read twice. */
  readonly silent?: boolean;
}) {
  const { grade, size = 16, silent = false } = props;
  const said = silent ? { 'aria-hidden': true } : { role: 'img', 'aria-label': gradeName(grade) };
  return (
    // biome-ignore lint/a11y/noSvgWithoutTitle: its name is the aria-label, or the word beside it.
    <svg className={`grade-mark grade-${grade}`} width={size} height={size} viewBox="0 0 16 16" {...said}>
      <GradeShape grade={grade} />
    </svg>
  );
}

/** The shape alone, about (x, y), for use inside a chart. */
export function GradeShape(props: {
  readonly grade: ShownGrade;
  readonly x?: number;
  readonly y?: number;
  readonly radius?: number;
}) {
  const { grade, x = 8, y = 8, radius = 6.5 } = props;
  if (grade === 'missing') {
    return (
      <circle cx={x} cy={y} r={radius} fill="none" stroke="var(--quiet)" strokeWidth={1.5} strokeDasharray="3 3" />
    );
  }
  return (
    <>
      <circle
        cx={x}
        cy={y}
        r={radius}
        fill={grade === 'measured' ? 'var(--ink)' : 'none'}
        stroke="var(--ink)"
        strokeWidth={1.75}
      />
      {grade === 'estimated' ? (
        <path d={`M${x} ${y - radius}a${radius} ${radius} 0 0 0 0 ${2 * radius}z`} fill="var(--ink)" />
      ) : null}
    </>
  );
}
