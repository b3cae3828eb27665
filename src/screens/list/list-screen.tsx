/** All households: find one, make one, bring one in. */
import { say } from '../../words/say.ts';
import { CopyReminder } from '../safety/copy-reminder.tsx';
import { DropZone } from '../shared/drop-zone.tsx';
import { ListPage } from '../shared/list-page.tsx';
import { Refused } from '../shared/refused.tsx';
import { namesOfUnkept } from '../state/open-household.ts';
import { HouseholdTable } from './household-table.tsx';
import { NewHousehold } from './new-household.tsx';
import { useHouseholdList } from './use-household-list.ts';

export function ListScreen(props: {
  /** What the desk found on opening its store, such as a damaged file set aside. */
  readonly notice: string | undefined;
  readonly making: boolean;
  readonly onMaking: (making: boolean) => void;
}) {
  const list = useHouseholdList();
  const isEmpty = list.rows?.length === 0;
  const isFirstStart = isEmpty && list.find === '' && !list.archived;

  return (
    <ListPage
      links={[
        ['#/settings', say('Settings')],
        ['#/copies', say('Copies')],
        ['#/help', say('Help')],
      ]}
      wide
    >
      <h1 className="voice">
        {isFirstStart ? say('There is no household here yet.') : say('Which home are we looking at?')}
      </h1>
      {props.notice ? <p className="refusal">{props.notice}</p> : null}
      <CopyReminder />
      {/* The list comes only after every change was tried to be kept. */}
      {list.rows === null
        ? null
        : namesOfUnkept().map((name) => (
            <p key={name} className="refusal" role="alert">
              {say('The last change to {name} could not be saved. Open it to try again.', { name })}
            </p>
          ))}
      {isFirstStart ? (
        <p className="lead">
          {say(
            'Create one with the name of the home, then add its bills or its meter file. Or open a household file from another computer.',
          )}{' '}
          <a href="#/copies">{say('Bring everything back from a copy')}</a>
        </p>
      ) : null}
      <div className="list-tools">
        <label className="list-find">
          <span className="unseen">{say('Find by name, place or job number')}</span>
          <input
            type="search"
            value={list.find}
            placeholder={say('Find by name, place or job number')}
            onChange={(event) => list.setFind(event.target.value)}
          />
        </label>
        <label className="tick">
          <input type="checkbox" checked={list.archived} onChange={(event) => list.setArchived(event.target.checked)} />
          <span>{say('Show the archive')}</span>
        </label>
        <button type="button" className="main push" onClick={() => props.onMaking(true)}>
          {say('New household')}
        </button>
      </div>
      {props.making ? <NewHousehold onDone={() => props.onMaking(false)} /> : null}
      <Refused text={list.failure} />
      <p className="unseen" role="status">
        {list.rows === null
          ? say('Reading the list')
          : list.rows.length === 1
            ? say('One household listed')
            : say('{count} households listed', { count: list.rows.length })}
      </p>
      {list.rows !== null && !isEmpty ? <HouseholdTable rows={list.rows} list={list} /> : null}
      {isEmpty && !isFirstStart ? (
        <p className="quiet nothing">
          {list.find
            ? say('Nothing here is called “{find}”. Try a shorter word, or look in the archive.', { find: list.find })
            : say('The archive is empty.')}
        </p>
      ) : null}
      <DropZone label={say('Choose a household file')} accept=".json,application/json" onFiles={list.bringIn}>
        <p>{say('Drop a household file here to open it.')}</p>
      </DropZone>
    </ListPage>
  );
}
