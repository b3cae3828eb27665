import type { Catalogue } from '../say.ts';

/** What the computer refuses, what is damaged, and how it is brought back. */
export const SAFETY: Catalogue = {
  'what was to be written': 'was geschrieben werden sollte',
  'There is no file {path}.': 'Es gibt keine Datei {path}.',
  'Correct the path.': 'Berichtigen Sie den Pfad.',
  '{path} is a pipe or a device, where a file is needed.':
    '{path} ist eine Leitung oder ein Gerät; gebraucht wird eine Datei.',
  'Name a file.': 'Nennen Sie eine Datei.',
  '{fileName} does not lie in the folder of the household file.':
    '{fileName} liegt nicht im Ordner der Haushaltsdatei.',
  '{path} lies on a disk that can only be read.': '{path} liegt auf einem Datenträger, der nur gelesen werden kann.',
  'Choose a place that can be written to, or take the write protection off.':
    'Wählen Sie einen beschreibbaren Ort, oder heben Sie den Schreibschutz auf.',
  '{path} may not be opened or written by you.': '{path} dürfen Sie nicht öffnen oder schreiben.',
  'Choose another place, or ask for the right to write there.':
    'Wählen Sie einen anderen Ort, oder lassen Sie sich das Schreiben dort erlauben.',
  '{path} is a file, or leads through one, where a folder is needed.':
    '{path} ist eine Datei oder führt durch eine; gebraucht wird ein Ordner.',
  'Name a folder, or another place.': 'Nennen Sie einen Ordner oder einen anderen Ort.',
  '{path} is a folder, where a file is needed.': '{path} ist ein Ordner; gebraucht wird eine Datei.',
  'Name a file in it.': 'Nennen Sie eine Datei darin.',
  '{path} is not there.': '{path} ist nicht da.',
  'Correct the path. If it lies on a stick, put the stick in again.':
    'Berichtigen Sie den Pfad. Liegt er auf einem Stick, stecken Sie den Stick wieder ein.',
  'The disk under {path} does not answer.': 'Der Datenträger von {path} antwortet nicht.',
  'If it is a stick, put it in again. If it is the computer’s own disk, save a copy elsewhere at once.':
    'Ist es ein Stick, stecken Sie ihn wieder ein. Ist es die Platte des Computers, speichern Sie sofort anderswo eine Kopie.',
  'The name {path} is too long.': 'Der Name {path} ist zu lang.',
  'Choose a shorter one.': 'Wählen Sie einen kürzeren.',
  'This computer has too many files open.': 'Dieser Computer hat zu viele Dateien offen.',
  'Close other programs and try again.': 'Schließen Sie andere Programme und versuchen Sie es noch einmal.',
  'There is no room left on the disk of {path}, so this was not saved.':
    'Auf dem Datenträger von {path} ist kein Platz mehr, darum wurde dies nicht gespeichert.',
  'Make room, then try again. What was saved before is safe.':
    'Schaffen Sie Platz und versuchen Sie es noch einmal. Was vorher gespeichert war, ist sicher.',
  'This computer has too little free memory for this.': 'Dieser Computer hat dafür zu wenig freien Speicher.',
  'Close other programs and try again, or take a file of a shorter span. What was saved before is safe.':
    'Schließen Sie andere Programme und versuchen Sie es noch einmal, oder nehmen Sie eine Datei über kürzere Zeit. Was vorher gespeichert war, ist sicher.',
};
