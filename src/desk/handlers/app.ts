import { MODEL_VERSION } from '../../model/shapes/model-version.ts';
import { readDataState } from '../data-state.ts';
import { settleLogo } from '../logo.ts';
import type { DeskContext, Handlers } from '../ports.ts';
import { readSettings } from '../settings.ts';
import { Settings } from '../start-requests.ts';
import { VERSION, VERSION_DATE } from '../version.ts';

type AppHandlers = Pick<Handlers, 'app.read' | 'app.quit' | 'data.read' | 'settings.read' | 'settings.write'>;

export function appHandlers(context: DeskContext): AppHandlers {
  const { ports, store } = context;
  return {
    'app.read': () => ({
      version: VERSION,
      versionDate: VERSION_DATE,
      modelVersion: MODEL_VERSION,
      host: ports.host,
      today: ports.today(),
      dataFolder: ports.dataFolder,
      ...(ports.notice === undefined ? {} : { notice: ports.notice }),
    }),
    'app.quit'() {
      ports.quit();
      return {};
    },
    'data.read': () => readDataState(context),
    'settings.read': () => readSettings(store),
    'settings.write'(settings) {
      const parsed = Settings.parse(settings);
      const kept = { ...parsed, logo: settleLogo(parsed.logo) };
      store.writeSettings(kept);
      return kept;
    },
  };
}
