/** Month names of the languages that meter files come in, known by their first letters, accents left off. */

const STEMS: readonly (readonly [RegExp, number])[] = [
  [/^(jan|gen|ene|sty(cz|$)|ion|leden|ledna)/, 1],
  [/^(feb|fev|luty|luteg|lut$|chwe|unor)/, 2],
  [/^(mar|maa|mrt|mrz|mae|maw|brez)/, 3],
  [/^(apr|avr|abr|kwi|ebr|duben|dubna)/, 4],
  [/^(may|mai|mei|mag|maj|kvet)/, 5],
  [/^(jun|juin|giu|cze|meh|cerv(en$|na))/, 6],
  [/^(jul|juil|lug|lip|gor|cerven[ec])/, 7],
  [/^(aug|aou|ago|sie(r|$)|aws|srpen|srpna)/, 8],
  [/^(sep|set|wrz|med|zari)/, 9],
  [/^(oct|okt|ott|out|paz|hyd|rijen|rijna)/, 10],
  [/^(nov|lis|tach)/, 11],
  [/^(dec|dez|dic|gru|rha|prosin)/, 12],
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
