/** The catalogue of a language, fetched only when it is spoken; English is its own. */
import type { Catalogue, Language } from './say.ts';

export async function catalogueOf(language: Language): Promise<Catalogue | null> {
  return language === 'de-DE' ? (await import('./german/german.ts')).german : null;
}
