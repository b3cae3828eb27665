/** How wide a text will be, near enough to lay out a picture without a screen. Widths by eye from Source Sans 3. */

const WIDTHS: readonly (readonly [RegExp, number])[] = [
  [/[ilI.,:;'|!]/, 0.26],
  [/[fjrt()\s-]/, 0.33],
  [/[mwMW]/, 0.83],
  [/[A-ZÄÖÜ£€$]/, 0.58],
];

export function textWidth(text: string, fontSize: number, bold = false): number {
  let width = 0;
  for (const letter of text) width += WIDTHS.find(([letters]) => letters.test(letter))?.[1] ?? 0.5;
  return width * fontSize * (bold ? 1.06 : 1.02);
}

/** The widest of the words between which these texts can break. */
export const widestWord = (texts: readonly string[], fontSize: number, bold = false): number =>
  Math.max(0, ...texts.flatMap((text) => text.split(/[^\S\u00a0]+/)).map((word) => textWidth(word, fontSize, bold)));

/** Breaks a text into at most `most` lines no wider than `width`; what is left over is cut with an ellipsis. */
export function wrapText(text: string, fontSize: number, width: number, most = 2): string[] {
  const lines: string[] = [];
  // A space that holds together, as in "45 °C", is no place to break.
  for (const word of text.split(/[^\S\u00a0]+/).filter(Boolean)) {
    // A word too wide for its line breaks behind its hyphens: "Ground-" and "source".
    const parts = textWidth(word, fontSize) > width ? word.split(/(?<=\p{L}-)(?=\p{L})/u) : [word];
    for (const [at, part] of parts.entries()) {
      const last = lines.at(-1);
      const joined = `${last}${at > 0 ? '' : ' '}${part}`;
      if (last !== undefined && textWidth(joined, fontSize) <= width) lines[lines.length - 1] = joined;
      else lines.push(part);
    }
  }
  const kept = lines.slice(0, most);
  if (lines.length > most) kept[most - 1] = `${kept[most - 1]} …`;
  return kept.map((line) => shorten(line, fontSize, width));
}

function shorten(line: string, fontSize: number, width: number): string {
  if (textWidth(line, fontSize) <= width) return line;
  let text = line.replace(/ …$/, '');
  while (text.length > 1 && textWidth(`${text}…`, fontSize) > width) text = text.slice(0, -1);
  return `${text.trimEnd()}…`;
}
