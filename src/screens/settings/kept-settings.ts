/** The installer's settings in the window: changed at once, kept a moment later, whatever screen is open. */
import type { Call, Settings } from '../../desk/contract.ts';
import { createKeeper, type KeepStatus } from '../state/keeper.ts';

const KEEP_DELAY_MS = 400;

export interface SettingsState {
  readonly settings: Settings;
  readonly status: KeepStatus;
}

export interface KeptSettings {
  readonly read: () => SettingsState;
  /** Answers how to stop listening. */
  readonly watch: (listener: () => void) => () => void;
  readonly change: (part: Partial<Settings>) => void;
  readonly flush: () => Promise<void>;
  /** Keeps a logo at once, since the desk may refuse it, and answers it as kept; an empty one takes it away. */
  readonly keepLogo: (address: string) => Promise<string>;
}

export function keepSettings(first: Settings, call: Call): KeptSettings {
  let state: SettingsState = { settings: first, status: { kind: 'kept' } };
  const listeners = new Set<() => void>();
  const show = (part: Partial<SettingsState>) => {
    state = { ...state, ...part };
    for (const listener of listeners) listener();
  };
  /** Only what was chosen here is laid over what is kept: another window may have chosen something else. */
  async function write(part: Partial<Settings>): Promise<void> {
    const kept = await call('settings.write', { ...(await call('settings.read', {})), ...part });
    show({ settings: { ...kept, ...keeper.waiting() } });
  }
  const keeper = createKeeper<Partial<Settings>>({
    save: write,
    join: (earlier, later) => ({ ...earlier, ...later }),
    isConflict: () => false,
    onStatus: (status) => show({ status }),
    delayMs: KEEP_DELAY_MS,
  });
  return {
    read: () => state,
    watch(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    change(part) {
      keeper.change(part);
      show({ settings: { ...state.settings, ...part } });
    },
    flush: keeper.flush,
    async keepLogo(logo) {
      await keeper.alone(() => write({ logo }));
      return state.settings.logo;
    },
  };
}
