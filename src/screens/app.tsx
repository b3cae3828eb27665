/** Which screen is open, and what all screens share: the day, the settings, the theme. */
import { useCallback, useEffect, useState, useSyncExternalStore } from 'react';
import type { Output, Settings } from '../desk/contract.ts';
import { catalogueOf } from '../words/catalogues.ts';
import { currency, language, say, speak } from '../words/say.ts';
import { call, callAtOnce } from './desk.ts';
import { HelpScreen } from './help/help-screen.tsx';
import { HouseholdScreen } from './household-screen.tsx';
import { ListScreen } from './list/list-screen.tsx';
import { CopiesScreen } from './safety/copies-screen.tsx';
import { PrivacyScreen } from './safety/privacy-screen.tsx';
import { type KeptSettings, keepSettings } from './settings/kept-settings.ts';
import { SettingsScreen } from './settings/settings-screen.tsx';
import { describeFailure } from './state/describe-failure.ts';
import { isAllKept, keepAll } from './state/keeper.ts';
import { Stopped } from './stopped.tsx';
import { useMenu } from './use-menu.ts';
import { useRoute } from './use-route.ts';

export interface Begun {
  readonly app: Output<'app.read'>;
  readonly kept: KeptSettings;
}

/** What every screen needs to know of the desk. */
export async function begin(): Promise<Begun> {
  const [app, settings] = await Promise.all([call('app.read', {}), call('settings.read', {})]);
  return { app, kept: keepSettings(settings, callAtOnce) };
}

function applyTheme(theme: Settings['theme']): void {
  if (theme === 'as the system') delete document.documentElement.dataset.theme;
  else document.documentElement.dataset.theme = theme;
}

/** Speaks as set. Answers the settings that the screen is said in, which follow once their language is fetched. */
function useSpoken(settings: Settings): Settings | null {
  const [spoken, setSpoken] = useState(settings.language === language() ? settings : null);
  useEffect(() => {
    let overtaken = false;
    catalogueOf(settings.language).then((catalogue) => {
      if (overtaken) return;
      speak({ language: settings.language, currency: currency() }, catalogue);
      document.documentElement.lang = settings.language;
      setSpoken(settings);
    }, console.error);
    return () => {
      overtaken = true;
    };
  }, [settings]);
  return spoken;
}

/** What waits is kept when the window is put aside; a window that closes first asks. */
function useKeptOnLeaving(): void {
  useEffect(() => {
    const keepNow = () => void keepAll();
    const warn = (event: BeforeUnloadEvent) => {
      if (isAllKept()) return;
      keepNow();
      event.preventDefault();
    };
    window.addEventListener('beforeunload', warn);
    document.addEventListener('visibilitychange', keepNow);
    return () => {
      window.removeEventListener('beforeunload', warn);
      document.removeEventListener('visibilitychange', keepNow);
    };
  }, []);
}

/** @param beginning under way before anything is drawn */
export function App({ beginning }: { readonly beginning: Promise<Begun> }) {
  const [begun, setBegun] = useState<Begun | null>(null);
  const [failure, setFailure] = useState<string | null>(null);
  const show = useCallback(
    (coming: Promise<Begun>) => coming.then(setBegun, (reason) => setFailure(describeFailure(reason))),
    [],
  );
  useEffect(() => void show(beginning), [show, beginning]);

  if (failure !== null) {
    return (
      <Stopped
        sentence={say('Plainwarmth cannot reach its data service.')}
        detail={failure}
        remedy={say('Start it again.')}
      />
    );
  }
  return begun === null ? <Opening /> : <Screens {...begun} onRestored={() => show(begin())} />;
}

const Opening = () => <p className="opening quiet">{say('Opening …')}</p>;

/** @param onRestored reads anew what a copy may have brought: language, theme, name */
function Screens({ app, kept, onRestored }: Begun & { readonly onRestored: () => Promise<void> }) {
  const { settings } = useSyncExternalStore(kept.watch, kept.read);
  const spoken = useSpoken(settings);
  const [making, setMaking] = useState(false);
  const route = useRoute();
  useMenu(
    useCallback(() => setMaking(true), []),
    useCallback((theme: Settings['theme']) => kept.change({ theme }), [kept]),
  );
  useKeptOnLeaving();
  useEffect(() => applyTheme(settings.theme), [settings.theme]);

  if (spoken === null) return <Opening />;
  if (route.screen === 'settings') return <SettingsScreen app={app} kept={kept} />;
  if (route.screen === 'copies') return <CopiesScreen onRestored={onRestored} />;
  if (route.screen === 'privacy') return <PrivacyScreen app={app} />;
  if (route.screen === 'help') return <HelpScreen app={app} />;
  if (route.screen === 'household') {
    return <HouseholdScreen key={route.id} id={route.id} stage={route.stage} today={app.today} settings={spoken} />;
  }
  return <ListScreen notice={app.notice} making={making} onMaking={setMaking} />;
}
