import type { Store } from '../store/store.ts';
import { Settings } from './contract.ts';

/** The installer's settings; what was never set, or can no longer be read, has its default. */
export function readSettings(store: Store): Settings {
  const stored = Settings.safeParse(store.readSettings() ?? {});
  return stored.success ? stored.data : Settings.parse({});
}
