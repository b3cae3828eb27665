/** Month names of the languages that meter files come in, known by their first letters, accents left off. */

const STEMS: readonly (readonly [RegExp, number])[] = [
  [/^(jan|gen|ene|styc|ion)/, 1],
  [/^(feb|fev|luty|chwe)/, 2],
  [/^(mar|maa|mrt|mrz|mae|maw)/, 3],
  [/^(apr|avr|abr|kwi|ebr)/, 4],
  [/^(may|mai|mei|mag|maj)/, 5],
  [/^(jun|juin|giu|czer|meh)/, 6],
  [/^(jul|juil|lug|lip|gor)/, 7],
  [/^(aug|aou|ago|sier|aws)/, 8],
  [/^(sep|set|wrz|med)/, 9],
  [/^(oct|okt|ott|out|paz|hyd)/, 10],
  [/^(nov|lis|tach)/, 11],
  [/^(dec|dez|dic|gru|rha)/, 12],
];

/** Month 1 to 12 of a name or its abbreviation, 0 where it is none. */
export function monthOfName(word: string): number {
  if (word.length < 3) return 0;
  const plain = word
    .toLowerCase()
    .normalize('NFD')
    .replace(/\p{Mark}/gu, '');
  if (!/^[a-z]{3,12}$/.test(plain)) return 0;
  return STEMS.find(([stem]) => stem.test(plain))?.[1] ?? 0;
}
