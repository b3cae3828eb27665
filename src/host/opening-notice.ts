import type { Opening } from '../store/open-database.ts';
import { say } from '../words/say.ts';

/** What the installer should know of how the store opened; undefined when all is as usual. */
export function describeOpening({ setAside, backup }: Opening): string | undefined {
  if (setAside !== null) {
    return say(
      'The data file was damaged. It was set aside as {path}, nothing in it was changed, and an empty one was begun. Keep it: somebody who knows databases may get the households out of it.',
      { path: setAside },
    );
  }
  if (backup !== null)
    return say('The data file was brought to the newest form. A copy of it as it was lies at {path}.', {
      path: backup,
    });
  return undefined;
}
