/** Month names of the languages that meter files come in, known by their first letters, accents left off. */

const STEMS = [
  'jan|jaen|tammi|gen|ene|sty(?:cz|$)|ion|leden|ledna',
  'feb|helmi|fev|luty|luteg|lut$|chwe|unor',
  'mar(?!ras)|maa|mrt|mrz|mae|maw|brez',
  'apr|avr|abr|kwi|huhti|ebr|duben|dubna',
  'may|mai|mei|mag|maj|touko|kvet',
  'jun|juin|giu|cze|kesa|meh|cerv(?:en$|na)',
  'jul|juil|lug|lip|heina|gor|cerven[ec]',
  'aug|aou|ago|elo(?:k|$)|sie(?:r|$)|aws|srpen|srpna',
  'sep|syys|set|wrz|med|zari',
  'oct|okt|loka|ott|out|paz|hyd|rijen|rijna',
  'nov|marras|lis|tach',
  'dec|desem|dez|joulu|dic|gru|rha|prosin',
];
/** One search for all twelve: most words are no month. */
const MONTHS = new RegExp(`^(?:${STEMS.map((stem) => `(${stem})`).join('|')})`);

const LETTERS = /^[a-z]{3,12}$/;
/** Month 1 to 12 of a name or its abbreviation, 0 where it is none. */
export function monthOfName(word: string): number {
  if (word.length < 3) return 0;
  const small = word.toLowerCase();
  const plain = LETTERS.test(small) ? small : small.normalize('NFD').replaceAll(/\p{Mark}/gu, '');
  if (!LETTERS.test(plain)) return 0;
  return MONTHS.exec(plain)?.findIndex((stem, month) => month > 0 && stem !== undefined) ?? 0;
}
