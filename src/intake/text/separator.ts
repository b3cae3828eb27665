/** Finds what stands between the cells: the sign that splits the most lines into the same number of cells. */

const SEPARATORS = [';', '\t', '|', ','] as const;
export type Separator = (typeof SEPARATORS)[number];

const SAMPLE_CHARACTERS = 64_000;
const SAMPLE_LINES = 200;

export interface SeparatorFound {
  readonly separator: Separator;
  /** Where the table begins: after a `sep=` line, else 0. */
  readonly start: number;
  /** Whether it splits most lines alike. */
  readonly isClear: boolean;
}

/** Decimal commas stand in most lines of a table of two columns too. A judgement. */
const LEAST_AGREEMENT = 0.5;

export function findSeparator(text: string): SeparatorFound {
  const told = /^\uFEFF?"?sep=([;,|\t])"?[^\S\r\n]*(?:\r\n|\n|\r)/i.exec(text.slice(0, 40));
  if (told) return { separator: told[1] as Separator, start: told[0].length, isClear: true };
  const start = text.charCodeAt(0) === 0xfeff ? 1 : 0;
  const lines = sampleLines(text, start);
  let best: Separator = ',';
  let bestScore = 0;
  for (const separator of SEPARATORS) {
    const score = agreement(lines, separator);
    // A comma inside numbers or words must not outvote a semicolon, tab or bar that splits as well.
    if (score > bestScore * (separator === ',' ? 1.25 : 1)) {
      bestScore = score;
      best = separator;
    }
  }
  return { separator: best, start, isClear: bestScore >= LEAST_AGREEMENT };
}

function sampleLines(text: string, start: number): string[] {
  const sample = text.slice(start, start + SAMPLE_CHARACTERS);
  const lines = sample.split(/\r\n|\n|\r/, SAMPLE_LINES + 1).filter((line) => line.trim() !== '');
  if (sample.length === SAMPLE_CHARACTERS && lines.length <= SAMPLE_LINES && lines.length > 1) lines.pop();
  return lines.slice(0, SAMPLE_LINES).map(withoutQuoted);
}

const withoutQuoted = (line: string): string => (line.includes('"') ? line.replace(/"[^"]*"/g, '') : line);

/** Share of lines with the commonest count of the sign (at least one). */
function agreement(lines: readonly string[], separator: string): number {
  const counts = new Map<number, number>();
  for (const line of lines) {
    const count = line.split(separator).length - 1;
    if (count > 0) counts.set(count, (counts.get(count) ?? 0) + 1);
  }
  return Math.max(0, ...counts.values()) / Math.max(1, lines.length);
}
