/** Which screen is open, and what all screens share: the day, the settings, the theme. */
import { useCallback, useEffect, useState } from 'react';
import type { Output, Settings } from '../desk/contract.ts';
import { catalogueOf } from '../words/catalogues.ts';
import { say, speak } from '../words/say.ts';
import { call } from './desk.ts';
import { HelpScreen } from './help/help-screen.tsx';
import { HouseholdScreen } from './household-screen.tsx';
import { ListScreen } from './list/list-screen.tsx';
import { SettingsScreen } from './settings/settings-screen.tsx';
import { describeFailure } from './state/describe-failure.ts';
import { Stopped } from './stopped.tsx';
import { useMenu } from './use-menu.ts';
import { useRoute } from './use-route.ts';

interface Begun {
  readonly app: Output<'app.read'>;
  readonly settings: Settings;
}

async function speakAs({ language, currency }: Settings): Promise<void> {
  speak({ language, currency }, await catalogueOf(language));
  document.documentElement.lang = language;
}

function applyTheme(theme: Settings['theme']): void {
  if (theme === 'as the system') delete document.documentElement.dataset.theme;
  else document.documentElement.dataset.theme = theme;
}

export function App() {
  const [begun, setBegun] = useState<Begun | null>(null);
  const [failure, setFailure] = useState<string | null>(null);
  const [making, setMaking] = useState(false);
  const route = useRoute();
  const setTheme = useCallback(
    (theme: Settings['theme']) => {
      if (!begun) return;
      const settings = { ...begun.settings, theme };
      setBegun({ ...begun, settings });
      call('settings.write', settings).catch(console.error);
    },
    [begun],
  );
  useMenu(
    useCallback(() => setMaking(true), []),
    setTheme,
  );

  useEffect(() => {
    Promise.all([call('app.read', {}), call('settings.read', {})])
      .then(async ([app, settings]) => {
        await speakAs(settings);
        setBegun({ app, settings });
      })
      .catch((reason) => setFailure(describeFailure(reason)));
  }, []);
  const theme = begun?.settings.theme;
  useEffect(() => {
    if (theme) applyTheme(theme);
  }, [theme]);
  const keepSettings = useCallback((settings: Settings) => {
    // All words on the screen are said anew, so the language has to be known first.
    void speakAs(settings).then(() => setBegun((before) => (before ? { ...before, settings } : before)));
  }, []);

  if (failure !== null) {
    return (
      <Stopped sentence={say('Plainwarmth cannot reach its desk.')} detail={failure} remedy={say('Start it anew.')} />
    );
  }
  if (begun === null) return <p className="opening quiet">{say('Opening …')}</p>;
  if (route.screen === 'settings') {
    return <SettingsScreen app={begun.app} settings={begun.settings} onKept={keepSettings} />;
  }
  if (route.screen === 'help') return <HelpScreen app={begun.app} />;
  if (route.screen === 'household') {
    return (
      <HouseholdScreen
        key={route.id}
        id={route.id}
        stage={route.stage}
        today={begun.app.today}
        settings={begun.settings}
      />
    );
  }
  return <ListScreen notice={begun.app.notice} making={making} onMaking={setMaking} />;
}
