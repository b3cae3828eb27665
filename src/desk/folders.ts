/** Folders to choose from where the window has no picker of its own: the usual places, sticks, and what is in a folder. */
import { existsSync, readdirSync, statSync } from 'node:fs';
import { homedir, userInfo } from 'node:os';
import { basename, dirname, join, resolve } from 'node:path';
import { say } from '../words/say.ts';
import { listCopies } from './copies.ts';

export interface Place {
  readonly name: string;
  readonly path: string;
}

const MOST = 500;
const isFolder = (path: string): boolean => statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false;

/** Where each system shows sticks and other disks. */
function mounted(): Place[] {
  if (process.platform === 'win32') {
    const letters = [...'DEFGHIJKLMNOPQRSTUVWXYZ'].map((letter) => `${letter}:\\`);
    return letters.filter((path) => existsSync(path)).map((path) => ({ name: path, path }));
  }
  const roots =
    process.platform === 'darwin'
      ? ['/Volumes']
      : [join('/media', userInfo().username), join('/run/media', userInfo().username), '/mnt'];
  return roots.filter(isFolder).flatMap((root) => subfolders(root));
}

function subfolders(path: string): Place[] {
  return readdirSync(path, { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && !entry.name.startsWith('.'))
    .slice(0, MOST)
    .map(({ name }) => ({ name, path: join(path, name) }))
    .sort((a, b) => a.name.localeCompare(b.name));
}

/** Throws the system's reason where the folder cannot be read. */
export function lookIntoFolder(path: string | undefined, dataFolder: string) {
  const home = homedir();
  const usual = [
    { name: say('Home folder'), path: home },
    { name: say('Documents'), path: join(home, 'Documents') },
    { name: say('Desktop'), path: join(home, 'Desktop') },
    { name: say('Downloads'), path: join(home, 'Downloads') },
    { name: say('Beside the data'), path: dataFolder },
  ].filter((place) => isFolder(place.path));
  const folder = resolve(path ?? usual[0]?.path ?? dataFolder);
  const parent = dirname(folder);
  return {
    path: folder,
    name: basename(folder) || folder,
    parent: parent === folder ? null : parent,
    places: [...mounted(), ...usual],
    folders: subfolders(folder),
    copies: listCopies(folder).slice(0, MOST),
  };
}
