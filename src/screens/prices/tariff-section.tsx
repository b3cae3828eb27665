import { useState } from 'react';
import { Reworded } from '../../charts/reworded.tsx';
import { Said } from '../../charts/said.tsx';
import { COUNTRIES, countryOf } from '../../model/shapes/country.ts';
import type { Tariff } from '../../model/shapes/tariff.ts';
import { versionOn } from '../../model/tariff/slot-price.ts';
import { tariffWorking } from '../../words/explained/prices.ts';
import { remarkSentence } from '../../words/remarks.ts';
import { phrase, say } from '../../words/say.ts';
import { sayTold } from '../../words/say-told.ts';
import { call, saveFile } from '../desk.ts';
import { useHousehold } from '../household-context.tsx';
import { ChoiceField } from '../shared/choice-field.tsx';
import { FileButton } from '../shared/file-button.tsx';
import { sentenceOf } from '../shared/given.ts';
import { HowWeKnow } from '../shared/how-we-know.tsx';
import { offerFile } from '../shared/offer-file.ts';
import { Refused } from '../shared/refused.tsx';
import { describeFailure } from '../state/describe-failure.ts';
import { draftOf, newDraft, type TariffDraft, tariffFile } from './tariff-draft.ts';
import { TariffEditor } from './tariff-editor.tsx';
import { tariffInShort } from './tariff-in-short.ts';
import { dropTariff, pickTariff, placeTariff, type TariffUse } from './use-tariffs.ts';

const OTHER_FUEL = phrase(
  '{name} is a tariff for {fuel, select, gas {gas} other {electricity}}. Open it under {fuel, select, gas {gas} other {electricity}}.',
);

/** Which tariff holds for one fuel, and the ways to get another. */
export function TariffSection(props: {
  readonly fuel: Tariff['fuel'];
  readonly use: TariffUse;
  readonly title: string;
}) {
  const { fuel, use } = props;
  const { household, appraisal, today, change, tell } = useHousehold();
  const [draft, setDraft] = useState<TariffDraft | null>(null);
  const [guesses, setGuesses] = useState<readonly string[]>([]);
  const [failure, setFailure] = useState<string | null>(null);
  const fitting = household.tariffs.filter((tariff) => tariff.fuel === fuel);
  const used = fitting.find((tariff) => tariff.id === household.prices[use]);
  const builtIn = appraisal.prices[fuel];
  const note = used ? (
    <>
      {tariffInShort(versionOn(used, today))}{' '}
      <Said text="Source: {origin}" with={{ origin: <Reworded text={used.origin} as={sentenceOf} /> }} />
    </>
  ) : use === 'storageTariffId' ? (
    say('Storage heaters need a cheap night rate. These prices are used for them only, not for other heating.')
  ) : (
    `${sentenceOf(sayTold(builtIn.name))} ${say('Source: {source}', { source: sentenceOf(sayTold(builtIn.origin)) })}`
  );

  const readFile = async (file: File) => {
    setFailure(null);
    try {
      const { fileId } = await offerFile(file);
      const { tariff: read, remarks } = await call('tariff.read', { fileId, householdId: household.id });
      // A file that names no fuel is of the fuel it was brought in under.
      const isGuessed = remarks.some(({ code }) => code === 'tariff-fuel-guessed');
      const tariff = isGuessed ? { ...read, fuel } : read;
      setGuesses(remarks.filter(({ code }) => code !== 'tariff-fuel-guessed').map(remarkSentence));
      if (tariff.fuel !== fuel) {
        throw new Error(say(OTHER_FUEL, { name: file.name, fuel: tariff.fuel }));
      }
      // Shown in the editor first: nothing is taken over unseen.
      setDraft({ ...draftOf(tariff), id: '' });
    } catch (reason) {
      setFailure(describeFailure(reason));
    }
  };
  return (
    <section>
      <h3>{props.title}</h3>
      <div className="tariff-row">
        <ChoiceField
          label={say('Prices used')}
          value={used?.id}
          emptyLabel={use === 'storageTariffId' ? say('built-in day and night prices') : say('the published average')}
          choices={fitting.map((tariff) => ({ value: tariff.id, label: tariff.name }))}
          onChange={(id) => change(pickTariff(id, use))}
        />
        {draft === null ? (
          <div className="actions">
            <button
              type="button"
              onClick={() => {
                setGuesses([]);
                setDraft(newDraft(fuel, today, COUNTRIES[countryOf(household)].vatRates[0]));
              }}
            >
              {say('Type a tariff')}
            </button>
            <FileButton
              label={say('Open a tariff file')}
              accept=".json,.csv,application/json,text/csv"
              onFile={readFile}
            />
            {used ? (
              <UsedTariff
                tariff={used}
                onEdit={() => {
                  setGuesses([]);
                  setDraft(draftOf(used));
                }}
                onFailure={setFailure}
              />
            ) : null}
          </div>
        ) : null}
      </div>
      <p className="quiet small explain">
        {note}{' '}
        {used ? <HowWeKnow find={() => [tariffWorking(versionOn(used, today), used)]} about={used.name} plain /> : null}
      </p>
      {draft === null ? null : (
        <TariffEditor
          key={draft.id}
          start={draft}
          guesses={guesses}
          onLeave={() => setDraft(null)}
          onKeep={(tariff) => {
            change(placeTariff(tariff, use));
            setDraft(null);
            tell(say('{name} is used now.', { name: tariff.name }));
          }}
        />
      )}
      <Refused text={failure} />
    </section>
  );
}

/** What can be done with the tariff that is used. */
function UsedTariff(props: {
  readonly tariff: Tariff;
  readonly onEdit: () => void;
  readonly onFailure: (sentence: string | null) => void;
}) {
  const { tariff, onEdit, onFailure } = props;
  const { household, change, tell } = useHousehold();
  const shelve = async () => {
    onFailure(null);
    try {
      await call('tariff.keep', { tariff: { ...tariff, id: `${tariff.id}-${household.id}`.slice(0, 64) } });
      tell(say('{name} is saved for other households too.', { name: tariff.name }));
    } catch (reason) {
      onFailure(describeFailure(reason));
    }
  };

  const save = async () => {
    const file = tariffFile(tariff);
    if (await saveFile(file)) tell(say('{fileName} is saved.', { fileName: file.fileName }));
  };

  return (
    <>
      <button type="button" className="plain" onClick={onEdit}>
        {say('Edit')}
      </button>
      <button type="button" className="plain" onClick={() => shelve()}>
        {say('Save for other households')}
      </button>
      <button type="button" className="plain" onClick={() => save()}>
        {say('Save as a file')}
      </button>
      <button type="button" className="plain" onClick={() => change(dropTariff(tariff.id))}>
        {say('Remove')}
      </button>
    </>
  );
}
