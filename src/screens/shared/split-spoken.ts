export interface SpokenPart {
  /** Where in the sentence the part begins. */
  readonly at: number;
  readonly text: string;
  /** Which figure the part is, or null for plain words. */
  readonly figure: number | null;
}

/** What ends within a word goes to its end: "20 Jahre" stands in "in 20 Jahren". */
const endOfWord = (sentence: string, end: number): number =>
  /\p{L}/u.test(sentence[end - 1] ?? '') ? end + /^\p{L}*/u.exec(sentence.slice(end))![0].length : end;

/** Cuts a sentence at the first standing of each figure, in the order given; a figure that does not stand in it is left out. */
export function splitSpoken(sentence: string, figures: readonly string[]): SpokenPart[] {
  const spans: { at: number; end: number; figure: number }[] = [];
  figures.forEach((text, figure) => {
    if (text === '') return;
    let at = sentence.indexOf(text);
    while (at >= 0 && spans.some((span) => at < span.end && at + text.length > span.at)) {
      at = sentence.indexOf(text, at + 1);
    }
    if (at >= 0) spans.push({ at, end: endOfWord(sentence, at + text.length), figure });
  });
  spans.sort((a, b) => a.at - b.at);
  const parts: SpokenPart[] = [];
  let done = 0;
  for (const span of spans) {
    if (span.at > done) parts.push({ at: done, text: sentence.slice(done, span.at), figure: null });
    parts.push({ at: span.at, text: sentence.slice(span.at, span.end), figure: span.figure });
    done = span.end;
  }
  if (done < sentence.length) parts.push({ at: done, text: sentence.slice(done), figure: null });
  return parts;
}

/** The marks that close what stands before a text: "." of ". These are prices". A line must not begin with them. */
export const closingMarks = (text: string): string => /^[.,;:)”“…]*/.exec(text)![0];
