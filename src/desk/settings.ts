import type { Store } from '../store/store.ts';
import { catalogueOf } from '../words/catalogues.ts';
import { speak } from '../words/say.ts';
import { Settings } from './contract.ts';

/** The installer's settings; what was never set, or can no longer be read, has its default. */
export function readSettings(store: Store): Settings {
  const stored = Settings.safeParse(store.readSettings() ?? {});
  return stored.success ? stored.data : Settings.parse({});
}

/** Sentences that the desk writes, refusals and documents, are in the installer's language. */
export async function speakAsSet({ language, currency }: Settings): Promise<void> {
  speak({ language, currency }, await catalogueOf(language));
}
