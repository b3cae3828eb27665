/** Where a line may not break. */
const NO_BREAK_SPACE = '\u00a0';
const NO_BREAK_HYPHEN = '\u2011';

/** A figure never stands on another line than its unit, nor the day's than its month in German. */
export const keepTogether = (text: string): string =>
  text
    .replace(/(\d\.?) (?=\p{Lu}\p{L}+ \d{4})/gu, `$1${NO_BREAK_SPACE}`)
    .replace(/(\d) (p|ct|€|%|kWh|°C|m²|m³)(?![\p{L}])/gu, `$1${NO_BREAK_SPACE}$2`)
    .replaceAll('half-hour', `half${NO_BREAK_HYPHEN}hour`);
