/** What goes wrong in the store, in words with the remedy; damage names the household, the import and the way back. */
import type { Damage, StoreFaultData } from '../store/store-fault.ts';
import { say } from '../words/say.ts';
import type { DeskRefusal } from './desk-error.ts';
import { diskFull } from './system-fault.ts';

export function explainStoreFault({ code, path, found, expected, damage, copy, rescued }: StoreFaultData): DeskRefusal {
  switch (code) {
    case 'in-use':
      return {
        code: 'store-in-use',
        message: say('The data in {path} is open in another Plainwarmth.', { path }),
        where: path,
        remedy: say('Close the other one first, or start this one with another data folder (--data DIR).'),
      };
    case 'newer':
      return {
        code: 'store-newer',
        message: say(
          'The data in {path} was written by a newer Plainwarmth (version {found} of the file; this one knows {expected}).',
          { path, found: String(found), expected: String(expected) },
        ),
        where: path,
        remedy: copy
          ? say('Start the newer Plainwarmth. The file was not touched. A copy in the older form lies at {copy}.', {
              copy,
            })
          : say('Start the newer Plainwarmth. The file was not touched.'),
      };
    case 'old-runtime':
      return {
        code,
        message: say('Plainwarmth needs Node 22.15 or newer; this is Node {version}. The data was not touched.', {
          version: process.versions.node,
        }),
        where: path,
        remedy: say('Start it from its package, which brings the one that it needs.'),
      };
    case 'already-there':
      return {
        code: 'already-there',
        message: say('The same file has been imported again since, so that it would count twice.'),
        remedy: say('Remove the newer import first.'),
      };
    case 'damaged':
      return explainDamage(damage!);
    case 'disk-full':
      return diskFull(path);
    case 'read-only':
      return {
        code,
        message: say('{path} lies on a disk that can only be read.', { path }),
        where: path,
        remedy: say('Choose a place that can be written to, or take the write protection off.'),
      };
    case 'disk-failed':
      return {
        code,
        message: say('The disk under {path} does not answer, so this was not saved.', { path }),
        where: path,
        remedy: say('If it is a stick, put it in again and start Plainwarmth again. What was saved before is safe.'),
      };
    case 'gone':
      return {
        code: 'store-gone',
        message: rescued
          ? say(
              'The data file {path} was deleted, moved or emptied while Plainwarmth ran. It was written again with everything saved before.',
              { path },
            )
          : say('The data file {path} is no longer there or was cut short, so this was not saved.', { path }),
        where: path,
        remedy: rescued
          ? say('Close Plainwarmth and start it again, then make this change once more.')
          : say('If it lies on a stick, put the stick in again. Then close Plainwarmth and start it again.'),
      };
    case 'unreadable':
      return {
        code: 'store-unreadable',
        message: say('The data file {path} cannot be opened or written.', { path }),
        where: path,
        remedy: say('Look whether the folder exists, is yours to write to and has room left.'),
      };
  }
}

/** A piece that is no longer what was stored. */
export function explainDamage(damage: Damage): DeskRefusal {
  const { kind, number } = damage;
  const household = damage.household ?? say('a household whose name is lost');
  const file = damage.fileName ?? say('an import whose name is lost');
  const refuse = (message: string, remedy: string): DeskRefusal => ({
    code: 'damaged',
    message,
    where: household,
    remedy,
  });
  const fromCopy = say('Restore the household from your last copy (Settings, Copies of your data).');
  switch (kind) {
    case 'household':
      return refuse(
        say('The entries of {household} are damaged on the disk: they are no longer what was saved.', { household }),
        fromCopy,
      );
    case 'import':
      return refuse(
        say('What is known of {file} in {household} is damaged on the disk, so it is left out.', { file, household }),
        fromCopy,
      );
    case 'readings':
      return refuse(
        say('The readings of {file} in {household} are damaged on the disk: they are no longer what was saved.', {
          file,
          household,
        }),
        say('The file itself is still here. Have them rebuilt from it under “Bills and readings”.'),
      );
    case 'raw-file':
      return refuse(
        say('The saved file {file} in {household} is damaged on the disk. Its readings are undamaged.', {
          file,
          household,
        }),
        say('Choose the same file once more under “Bills and readings”; it replaces the damaged one.'),
      );
    case 'estimate':
      return refuse(
        say('Estimate no. {number} of {household} is damaged on the disk: it is no longer what was handed over.', {
          number: String(number ?? '?'),
          household,
        }),
        fromCopy,
      );
    case 'check':
      return refuse(
        say('A bill check of {household} is damaged on the disk, so it is left out.', { household }),
        say('Make it again from the bill.'),
      );
    case 'settings':
      return {
        code: 'damaged',
        message: say('A setting is damaged on the disk, so the usual one counts.'),
        remedy: say('Set it again.'),
      };
    case 'tariff':
      return {
        code: 'damaged',
        message: say('A saved tariff is damaged on the disk, so it is left out.'),
        remedy: say('Save it again.'),
      };
  }
}
