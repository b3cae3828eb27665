/** Reading ease of running text by published formulae; the libraries count syllables and apply Flesch's. */
import { flesch } from 'flesch';
import { syllable } from 'syllable';

export function sentencesOf(text: string): string[] {
  return text
    .split(/(?<=[.?])[”)]?\s+(?=[A-ZÄÖÜ“„£0-9])/)
    .map((sentence) => sentence.trim())
    .filter(Boolean);
}

export const wordsOf = (sentence: string): string[] =>
  sentence.split(/\s+/).filter((word) => /[\p{L}\p{N}£]/u.test(word));

/** A number, symbol or abbreviation counts as one word of one syllable. */
const syllablesOf = (word: string): number =>
  /[\d£°]/.test(word) || /^[A-Z]{2,}/.test(word) ? 1 : Math.max(1, syllable(word));

export function readingEase(text: string): { ease: number; grade: number; longest: string; words: number } {
  const sentences = sentencesOf(text);
  const words = sentences.flatMap(wordsOf);
  const syllables = words.reduce((sum, word) => sum + syllablesOf(word), 0);
  const ease = flesch({ sentence: sentences.length, word: words.length, syllable: syllables });
  // Flesch-Kincaid grade: Kincaid and others, US Navy Research Branch Report 8-75 (1975).
  const grade = 0.39 * (words.length / sentences.length) + 11.8 * (syllables / words.length) - 15.59;
  const longest = sentences.toSorted((a, b) => wordsOf(b).length - wordsOf(a).length)[0] ?? '';
  return { ease, grade, longest, words: words.length };
}

/** Vowels that follow one another are one syllable: "Haus", "Öl", "viel"; "ue" of two words is rare enough. */
const germanSyllablesOf = (word: string): number =>
  /[\d£€°]/.test(word) || /^(kWh|[A-ZÄÖÜ]{2,})/.test(word) ? 1 : Math.max(1, word.match(/[aeiouyäöü]+/gi)?.length ?? 1);

/** Flesch's reading ease for German: T. Amstad, Wie verständlich sind unsere Zeitungen?, Zürich 1978; 60 is plain language. */
export function germanEase(text: string): number {
  const sentences = sentencesOf(text);
  const words = sentences.flatMap(wordsOf);
  const syllables = words.reduce((sum, word) => sum + germanSyllablesOf(word), 0);
  return 180 - words.length / sentences.length - (58.5 * syllables) / words.length;
}
