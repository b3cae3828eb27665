/** Results as lines of figures, for tests that hold them against those of before. */
const ASIDE = new Set(['household', 'evidence', 'line', 'source']);

/** A list of numbers or a sum with its steps as two numbers that no single change leaves alone: the sum, and each times its place. */
export const fold = (values: readonly number[]) => [
  values.reduce((sum, value) => sum + value, 0),
  values.reduce((sum, value, i) => sum + value * (i + 1), 0),
];
export const numbersIn = (value: unknown): number[] =>
  typeof value === 'number'
    ? [value]
    : typeof value === 'object' && value !== null
      ? Object.values(value).flatMap(numbersIn)
      : [];

/** A bare value, or a point of a line: nothing below it has a line of its own. */
const isRow = (one: unknown) =>
  typeof one !== 'object' || one === null || Object.values(one).every((part) => typeof part !== 'object');

/** One line an object: its numbers, its codes, and its lists folded. */
export function figuresOf(path: string, value: object): string[] {
  const own: string[] = [];
  const below: string[] = [];
  for (const [key, part] of Object.entries(value)) {
    if (ASIDE.has(key)) continue;
    const isFolded = key === 'working' || (Array.isArray(part) && part.every(isRow));
    const numbers = isFolded ? numbersIn(part) : [];
    if (numbers.length > 0) own.push(`${key} ${fold(numbers).map(short).join('/')}`);
    else if (typeof part === 'number') own.push(`${key} ${short(part)}`);
    else if (typeof part === 'boolean' || key === 'code' || key === 'grade' || key === 'cause')
      own.push(`${key} ${part}`);
    else if (typeof part === 'object' && part !== null) below.push(...figuresOf(`${path}.${key}`, part));
  }
  return own.length > 0 ? [`${path}: ${own.join(', ')}`, ...below] : below;
}
export const short = (value: number) => `${Number(value.toPrecision(9))}`;
