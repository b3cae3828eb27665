import type { Incident, Opening } from '../store/open-database.ts';
import { say } from '../words/say.ts';

/** What the installer should know of how the store opened; undefined when all is as usual. */
export function describeOpening({ incident, backup }: Opening): string | undefined {
  if (incident !== null) return describeIncident(incident);
  if (backup === null) return undefined;
  return say('The data file was brought to the newest form. A copy of it as it was lies at {path}.', { path: backup });
}

function describeIncident({ kind, setAside, missing, households }: Incident): string {
  const path = setAside ?? '';
  switch (kind) {
    case 'damaged':
      return say(
        'The data file was damaged. It was set aside as {path}, nothing in it was changed, and an empty one was begun. Restore your last copy in the settings, and keep that file: somebody who knows databases may get more out of it.',
        { path },
      );
    case 'foreign': {
      const found = say(
        'The data file belonged to another program. It was set aside as {path}, nothing in it was changed, and an empty one was begun.',
        { path },
      );
      if (!households) return found;
      const lost = say(
        '{count, plural, one {# household} other {# households}} had been saved here before. Restore your last copy in the settings.',
        { count: households },
      );
      return `${found} ${lost}`;
    }
    case 'emptied': {
      const lost = say(
        'The data file is gone or empty; {count, plural, =0 {households} one {# household} other {# households}} had been saved in it. An empty one was begun. Restore your last copy in the settings.',
        { count: households ?? 0 },
      );
      return setAside === null ? lost : `${lost} ${say('What was left of it lies at {path}.', { path })}`;
    }
    case 'other-log':
      return say(
        'Another data file was put in the place of the one used last. Its changes are not mixed: the log of the earlier one was set aside as {path}.',
        { path },
      );
    case 'lost-changes':
      return say(
        'The last {count, plural, one {saved change is} other {# saved changes are}} missing from the data file: its log was lost, or an older file was put in its place. It was opened as it is; what was found is untouched at {path}. Compare with your last copy in the settings.',
        { count: missing ?? 0, path },
      );
  }
}
