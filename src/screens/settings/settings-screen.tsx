import { useEffect, useSyncExternalStore } from 'react';
import type { Output } from '../../desk/contract.ts';
import { phrase, say } from '../../words/say.ts';
import { PickField, sayChoices } from '../shared/choice-field.tsx';
import { COUNTRY_CHOICES } from '../shared/country-choices.ts';
import { ListPage } from '../shared/list-page.tsx';
import { TextField } from '../shared/text-field.tsx';
import { describeFailure } from '../state/describe-failure.ts';
import type { KeptSettings } from './kept-settings.ts';
import { LogoField } from './logo-field.tsx';

const same = <T extends string>(values: readonly T[]) => values.map((value) => ({ value, label: value }));

// Each language is named in itself, so that nobody is locked out of their own.
const LANGUAGE_CHOICES = [
  { value: 'en-GB', label: 'English' },
  { value: 'de-DE', label: 'Deutsch' },
] as const;

const THEMES = [phrase('as the system'), phrase('light'), phrase('dark')] as const;

/** What is printed on the leave-behind, and how the window looks. */
export function SettingsScreen(props: { readonly app: Output<'app.read'>; readonly kept: KeptSettings }) {
  const { change, flush, keepLogo } = props.kept;
  const { settings, status } = useSyncExternalStore(props.kept.watch, props.kept.read);
  useEffect(() => () => void flush(), [flush]);

  return (
    <ListPage links={[['#/', say('All households')]]}>
      <h1 className="voice">{say('Your name is printed on every estimate.')}</h1>
      <section className="fields" aria-label={say('On the printed estimate')}>
        <TextField
          label={say('Installer’s name')}
          value={settings.installerName}
          maxLength={120}
          note={say('Printed at the top of every estimate.')}
          onChange={(installerName) => change({ installerName })}
        />
        <TextField
          label={say('How to reach you')}
          value={settings.installerContact}
          maxLength={400}
          lines={3}
          note={say('Address, telephone, e-mail: as you want it printed.')}
          onChange={(installerContact) => change({ installerContact })}
        />
        <LogoField logo={settings.logo} onKeep={keepLogo} />
        <PickField
          label={say('Paper')}
          value={settings.paper}
          choices={same(['A4', 'Letter'] as const)}
          onChange={(paper) => change({ paper })}
        />
        <PickField
          label={say('Language')}
          value={settings.language}
          choices={LANGUAGE_CHOICES}
          note={say('For the screens, the pages for the customer and everything printed.')}
          onChange={(language) => change({ language })}
        />
        <PickField
          label={say('Country of new households')}
          value={settings.country}
          choices={sayChoices(COUNTRY_CHOICES)}
          note={say('It sets climate, built-in prices, currency and taxes. Each household can have its own.')}
          onChange={(country) => change({ country })}
        />
        <PickField
          label={say('Light or dark')}
          value={settings.theme}
          choices={THEMES.map((value) => ({ value, label: say(value) }))}
          onChange={(theme) => change({ theme })}
        />
      </section>
      {status.kind === 'failed' ? (
        <div className="actions" role="alert">
          <p className="refusal">{say('Not saved. {reason}', { reason: describeFailure(status.reason) })}</p>
          <button type="button" onClick={flush}>
            {say('Try again')}
          </button>
        </div>
      ) : (
        <p className="quiet" role="status">
          {status.kind === 'kept' ? say('Saved') : say('Saving …')}
        </p>
      )}
      <dl className="facts">
        <dt>{say('Saved in')}</dt>
        <dd translate="no">{props.app.dataFolder}</dd>
        <dt>{say('Version')}</dt>
        <dd>{say('{version}, model {model}', { version: props.app.version, model: props.app.modelVersion })}</dd>
      </dl>
      <p>
        <a href="#/copies">{say('Copies of your data')}</a>
      </p>
      <p>
        <a href="#/privacy">{say('What is stored, where, and how to erase it')}</a>
      </p>
      <p className="quiet">
        {say('Nothing leaves this computer. There is no account and no counting of what you do.')}
      </p>
    </ListPage>
  );
}
