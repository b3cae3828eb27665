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
  'The clock is right now: save': 'Die Uhr geht jetzt richtig: speichern',
  'It is undamaged again.': 'Es ist wieder unbeschädigt.',
  'Rebuild them from the saved file': 'Aus der gespeicherten Datei neu aufbauen',
  'Choose the same file once more …': 'Dieselbe Datei noch einmal wählen …',
  'Copies of your data': 'Kopien Ihrer Daten',
  Damaged: 'Beschädigt',
  Copies: 'Kopien',
  'Bring everything back from a copy': 'Alles aus einer Kopie wiederherstellen',
  'Exported without a part. {remark}': 'Ohne einen Teil exportiert. {remark}',
  'What is stored': 'Was gespeichert ist',
  'All your data fits into one file. Keep it somewhere other than this computer.':
    'Alle Ihre Daten passen in eine Datei. Bewahren Sie sie anderswo auf als diesen Computer.',
  'Is everything still as it was saved?': 'Ist noch alles, wie es gespeichert wurde?',
  'Each piece is checked against its checksum when it is read, and all of them every week.':
    'Jedes Stück wird beim Lesen mit seiner Prüfsumme verglichen, alle zusammen jede Woche.',
  'All pieces were checked on {date}, and are again every week.':
    'Alle Stücke wurden am {date} geprüft und werden es jede Woche wieder.',
  'Nothing was damaged.': 'Nichts war beschädigt.',
  'Check now': 'Jetzt prüfen',
  'Checking, {percent} %': 'Prüfe, {percent} %',
  'The weekly check found {count, plural, one {a damaged piece} other {# damaged pieces}}.':
    'Die wöchentliche Prüfung fand {count, plural, one {ein beschädigtes Stück} other {# beschädigte Stücke}}.',
  'The last copy of the day failed. {reason}': 'Die letzte Tageskopie ist gescheitert. {reason}',
  'No copy was saved for over a month.': 'Seit über einem Monat wurde keine Kopie gespeichert.',
  '{size} MB': '{size} MB',
  Folder: 'Ordner',
  'Type a path and press Enter, or go there below.':
    'Tippen Sie einen Pfad und drücken Sie die Eingabetaste, oder gehen Sie unten dorthin.',
  'Sticks and usual places': 'Sticks und übliche Orte',
  'Folders in {name}': 'Ordner in {name}',
  'One up': 'Eins höher',
  'Use this folder': 'Diesen Ordner verwenden',
  'Copies here': 'Kopien hier',
  'There is no copy in this folder.': 'In diesem Ordner liegt keine Kopie.',
  Passphrase: 'Passwort',
  'Your data stays on this computer until you copy it elsewhere.':
    'Ihre Daten bleiben auf diesem Computer, bis Sie sie woandershin kopieren.',
  'Of each household: name, place, job number, notes, and all that was typed about the home.':
    'Von jedem Haushalt: Name, Ort, Auftragsnummer, Notizen und alle Angaben zum Haus.',
  'Every meter file that was imported, as it was, and its readings. Half-hourly readings show when people are at home.':
    'Jede importierte Zählerdatei, wie sie war, und ihre Messwerte. Halbstündliche Messwerte zeigen, wann jemand zu Hause ist.',
  'Of a bill on paper what was read, without names and numbers; the paper only where you say so.':
    'Von einer Rechnung auf Papier das Gelesene, ohne Namen und Nummern; das Papier nur, wenn Sie es sagen.',
  'An exported household holds all this without the files, unless you tick them; papers never leave in it. Names, addresses and long numbers that came from files are masked where they were recognised. A copy of your data holds everything.':
    'Ein exportierter Haushalt enthält dies ohne die Dateien, außer Sie haken sie an; Papiere gehen nie mit. Namen, Anschriften und lange Nummern aus Dateien sind verdeckt, wo sie erkannt wurden. Eine Kopie Ihrer Daten enthält alles.',
  'Every written estimate and bill check, with all that went into it.':
    'Jede Kostenschätzung und jede Rechnungsprüfung, mit allem, was darin steckt.',
  'Your own name, address and logo, saved tariffs, and how files of one kind are read.':
    'Ihr eigener Name, Ihre Anschrift und Ihr Logo, gespeicherte Tarife und wie Dateien einer Art gelesen werden.',
  'Nothing is sent anywhere, nothing is counted, and no account is needed. Nothing here is encrypted on the disk: protect the computer with a password and its disk with the system’s own encryption.':
    'Nichts wird irgendwohin gesendet, nichts gezählt, und ein Konto braucht es nicht. Auf der Platte ist nichts davon verschlüsselt: Schützen Sie den Computer mit einem Kennwort und seine Platte mit der Verschlüsselung des Systems.',
  Where: 'Wo',
  'The data file and its log': 'Die Datendatei und ihr Protokoll',
  'How to erase it': 'Wie man es löscht',
  'A household: in the list, “More”, then “Erase for good”. Its bills, readings, estimates and checks go too, and its place in the data file is overwritten.':
    'Einen Haushalt: in der Liste „Mehr“, dann „Endgültig löschen“. Rechnungen, Messwerte, Kostenschätzungen und Prüfungen gehen mit, und ihr Platz in der Datendatei wird überschrieben.',
  'Everything: close Plainwarmth and delete the folder named above. Uninstalling alone leaves it.':
    'Alles: Schließen Sie Plainwarmth und löschen Sie den oben genannten Ordner. Deinstallieren allein lässt ihn stehen.',
  'What erasing cannot reach': 'Was das Löschen nicht erreicht',
  'Copies that were saved elsewhere, exported household files, and papers that were printed or sent.':
    'Anderswo gespeicherte Kopien, exportierte Haushaltsdateien und gedruckte oder verschickte Papiere.',
  'Cells of a solid-state disk that the disk itself has put aside, and backups made by the system.':
    'Zellen einer SSD, die sie selbst beiseitegelegt hat, und Sicherungen des Systems.',
  'Files that the browser downloaded, and what this window’s browser keeps of pages it has shown.':
    'Dateien, die der Browser heruntergeladen hat, und was der Browser dieses Fensters von gezeigten Seiten behält.',
  'The latter lies in {path}. To erase it too, close Plainwarmth and delete that folder.':
    'Letzteres liegt in {path}. Um auch das zu löschen, schließen Sie Plainwarmth und löschen Sie diesen Ordner.',
  'These older files beside the data; delete them in the folder when they are no longer wanted:':
    'Diese älteren Dateien neben den Daten; löschen Sie sie im Ordner, wenn sie nicht mehr gebraucht werden:',
  'Restored: {count, plural, one {# household} other {# households}}.':
    'Zurückgeholt: {count, plural, one {# Haushalt} other {# Haushalte}}.',
  'What was here before is saved as {path}.': 'Was vorher hier war, ist gespeichert in {path}.',
  Restore: 'Wiederherstellen',
  'Choose a copy, see what is inside, then restore everything or one household. Copies of any earlier version work, and so does the file plainwarmth.sqlite with its log beside it.':
    'Wählen Sie eine Kopie, sehen Sie hinein, und stellen Sie alles oder einen Haushalt wieder her. Kopien jeder früheren Version gehen, auch die Datei plainwarmth.sqlite mit ihrem Protokoll daneben.',
  'Choose a copy …': 'Kopie wählen …',
  'Reading the copy …': 'Die Kopie wird gelesen …',
  '{file} is locked with a passphrase.': '{file} ist mit einem Passwort verschlüsselt.',
  'Open it': 'Öffnen',
  'Inside {file}': 'In {file}',
  'Restore {name} only': 'Nur {name} wiederherstellen',
  'Restore this one': 'Diesen wiederherstellen',
  'Restore everything': 'Alles wiederherstellen',
  'There is nothing here to be replaced.': 'Hier ist nichts, was ersetzt würde.',
  'The {count, plural, one {household} other {# households}} here will be replaced, and saved as a copy first.':
    '{count, plural, one {Der Haushalt} other {Die # Haushalte}} hier {count, plural, one {wird} other {werden}} ersetzt und vorher als Kopie gespeichert.',
  'Which copy?': 'Welche Kopie?',
  'Saved and read back: {path}, {size}, {count, plural, one {# household} other {# households}}.':
    'Gespeichert und zurückgelesen: {path}, {size}, {count, plural, one {# Haushalt} other {# Haushalte}}.',
  'Save a copy': 'Kopie speichern',
  'No copy has been saved yet.': 'Es wurde noch keine Kopie gespeichert.',
  'The last copy was saved on {date}: {path}': 'Die letzte Kopie wurde am {date} gespeichert: {path}',
  'Lock it with a passphrase': 'Mit einem Passwort verschlüsseln',
  'At least 8 letters; four words are better. Without it nobody can open the copy, you neither.':
    'Mindestens 8 Zeichen; vier Wörter sind besser. Ohne ihn kann niemand die Kopie öffnen, auch Sie nicht.',
  'The passphrase once more': 'Das Passwort noch einmal',
  'This differs from the passphrase above.': 'Das ist nicht dasselbe Passwort wie darüber.',
  'Saving …': 'Wird gespeichert …',
  'Save a copy …': 'Kopie speichern …',
  'Save to {folder} again': 'Wieder nach {folder} speichern',
  'A copy every day into {folder}': 'Jeden Tag eine Kopie nach {folder}',
  'A copy every day into a folder': 'Jeden Tag eine Kopie in einen Ordner',
  'On days when Plainwarmth is used. The last 14 copies stay.':
    'An Tagen, an denen Plainwarmth benutzt wird. Die letzten 14 Kopien bleiben.',
  'Each opens with the passphrase you typed. Its key lies beside the data, never in a copy.':
    'Jede öffnet sich mit dem eingegebenen Passwort. Ihr Schlüssel liegt bei den Daten, nie in einer Kopie.',
  'A copy every day into a folder, locked with this passphrase':
    'Jeden Tag eine Kopie in einen Ordner, mit diesem Passwort verschlüsselt',
  'A locked copy every day into {folder}': 'Jeden Tag eine verschlossene Kopie nach {folder}',
  'The key of the locked daily copies is missing, so no copy was saved.':
    'Der Schlüssel der verschlossenen täglichen Kopien fehlt, darum wurde keine Kopie gespeichert.',
  'Switch the daily copy off and on again, with the passphrase.':
    'Die tägliche Kopie aus- und mit dem Passwort wieder einschalten.',
  'Where should the copy go?': 'Wohin soll die Kopie?',
  'What is stored, where, and how to erase it': 'Was gespeichert ist, wo, und wie man es löscht',
  'The copy came back from {path} other than it was written, so it was thrown away.':
    'Die Kopie kam von {path} anders zurück, als sie geschrieben wurde, und wurde verworfen.',
  'Do not trust this stick or disk. Save the copy elsewhere.':
    'Trauen Sie diesem Stick oder dieser Platte nicht. Speichern Sie die Kopie anderswo.',
  'The last changes are missing from this copy: the log beside it was lost or belongs to another file.':
    'In dieser Kopie fehlen die letzten Änderungen: Das Protokoll daneben ging verloren oder gehört zu einer anderen Datei.',
  '{path} is the data file that is open now, and no copy.':
    '{path} ist die jetzt geöffnete Datendatei und keine Kopie.',
  'Choose a copy.': 'Wählen Sie eine Kopie.',
  'Type the passphrase that it was saved with.': 'Geben Sie das Passwort ein, mit dem sie gespeichert wurde.',
  '{file} does not open with this passphrase.': '{file} öffnet sich mit diesem Passwort nicht.',
  'Type it again, capitals and spaces too. If it is right, the copy is damaged: take another.':
    'Tippen Sie ihn noch einmal, auch Großbuchstaben und Leerzeichen. Stimmt er, ist die Kopie beschädigt: Nehmen Sie eine andere.',
  '{file} is no copy of Plainwarmth’s data, or it is damaged.':
    '{file} ist keine Kopie der Daten von Plainwarmth, oder sie ist beschädigt.',
  'Choose a file that “Save a copy” wrote, or the file plainwarmth.sqlite of another computer.':
    'Wählen Sie eine Datei, die „Kopie speichern“ geschrieben hat, oder die Datei plainwarmth.sqlite eines anderen Computers.',
  'Home folder': 'Eigener Ordner',
  Documents: 'Dokumente',
  Desktop: 'Schreibtisch',
  Downloads: 'Heruntergeladenes',
  'Beside the data': 'Neben den Daten',
  'This computer’s clock says {today}, but estimate no. {number} was made on {madeOn}.':
    'Die Uhr dieses Computers zeigt {today}, aber Kostenschätzung Nr. {number} ist vom {madeOn}.',
  'the clock': 'die Uhr',
  'Set the clock and try again. If it is right now and was wrong then, say so and save it.':
    'Stellen Sie die Uhr und versuchen Sie es noch einmal. Geht sie jetzt richtig und ging damals falsch, sagen Sie das und speichern Sie.',
  'The readings of {fileName} do not come out of the saved file exactly as they were, so nothing was changed.':
    'Die Messwerte von {fileName} kommen aus der gespeicherten Datei nicht genau so heraus, wie sie waren; darum wurde nichts geändert.',
  'Restore the household from your last copy, or remove this import and import the file again.':
    'Holen Sie den Haushalt aus Ihrer letzten Kopie zurück, oder entfernen Sie diesen Import und importieren Sie die Datei neu.',
  'Bill {from} to {to}': 'Rechnung {from} bis {to}',
  '{fileName} is not the file that was imported as {kept}: its bytes differ.':
    '{fileName} ist nicht die Datei, die als {kept} importiert wurde: Ihre Bytes sind andere.',
  'Choose the very file that was imported, unchanged.':
    'Wählen Sie genau die Datei, die importiert wurde, unverändert.',
  'Start the newer Plainwarmth. The file was not touched. A copy in the older form lies at {copy}.':
    'Starten Sie das neuere Plainwarmth. Die Datei wurde nicht angerührt. Eine Kopie in der älteren Form liegt in {copy}.',
  'The disk under {path} does not answer, so this was not saved.':
    'Der Datenträger von {path} antwortet nicht, darum wurde dies nicht gespeichert.',
  'If it is a stick, put it in again and start Plainwarmth again. What was saved before is safe.':
    'Ist es ein Stick, stecken Sie ihn wieder ein und starten Sie Plainwarmth neu. Was vorher gespeichert war, ist sicher.',
  'The data file {path} was deleted, moved or emptied while Plainwarmth ran. It was written again with everything saved before.':
    'Die Datendatei {path} wurde gelöscht, verschoben oder geleert, während Plainwarmth lief. Sie wurde mit allem neu geschrieben, was vorher gespeichert war.',
  'The data file {path} is no longer there or was cut short, so this was not saved.':
    'Die Datendatei {path} ist nicht mehr da oder wurde gekürzt, darum wurde dies nicht gespeichert.',
  'Close Plainwarmth and start it again, then make this change once more.':
    'Schließen Sie Plainwarmth und starten Sie es neu, dann machen Sie diese Änderung noch einmal.',
  'If it lies on a stick, put the stick in again. Then close Plainwarmth and start it again.':
    'Liegt sie auf einem Stick, stecken Sie ihn wieder ein. Schließen Sie dann Plainwarmth und starten Sie es neu.',
  'a household whose name is lost': 'einem Haushalt, dessen Name verloren ist',
  'an import whose name is lost': 'einem Import, dessen Name verloren ist',
  'Restore the household from your last copy (Settings, Copies of your data).':
    'Holen Sie den Haushalt aus Ihrer letzten Kopie zurück (Einstellungen, Kopien Ihrer Daten).',
  'The entries of {household} are damaged on the disk: they are no longer what was saved.':
    'Die Angaben zu {household} sind auf der Platte beschädigt: Sie sind nicht mehr, was gespeichert wurde.',
  'What is known of {file} in {household} is damaged on the disk, so it is left out.':
    'Was zu {file} in {household} bekannt ist, ist auf der Platte beschädigt und wird ausgelassen.',
  'The readings of {file} in {household} are damaged on the disk: they are no longer what was saved.':
    'Die Messwerte von {file} in {household} sind auf der Platte beschädigt: Sie sind nicht mehr, was gespeichert wurde.',
  'The file itself is still here. Have them rebuilt from it under “Bills and readings”.':
    'Die Datei selbst ist noch da. Lassen Sie die Messwerte unter „Rechnungen und Messwerte“ daraus neu aufbauen.',
  'The saved file {file} in {household} is damaged on the disk. Its readings are undamaged.':
    'Die gespeicherte Datei {file} in {household} ist auf der Platte beschädigt. Ihre Messwerte sind unbeschädigt.',
  'Choose the same file once more under “Bills and readings”; it replaces the damaged one.':
    'Wählen Sie dieselbe Datei unter „Rechnungen und Messwerte“ noch einmal; sie ersetzt die beschädigte.',
  'Estimate no. {number} of {household} is damaged on the disk: it is no longer what was handed over.':
    'Kostenschätzung Nr. {number} von {household} ist auf der Platte beschädigt: Sie ist nicht mehr, was übergeben wurde.',
  'A bill check of {household} is damaged on the disk, so it is left out.':
    'Eine Rechnungsprüfung von {household} ist auf der Platte beschädigt und wird ausgelassen.',
  'Make it again from the bill.': 'Machen Sie sie anhand der Rechnung noch einmal.',
  'A setting is damaged on the disk, so the usual one counts.':
    'Eine Einstellung ist auf der Platte beschädigt, darum gilt die übliche.',
  'Set it again.': 'Stellen Sie sie neu ein.',
  'A saved tariff is damaged on the disk, so it is left out.':
    'Ein gespeicherter Tarif ist auf der Platte beschädigt und wird ausgelassen.',
  'Save it again.': 'Speichern Sie ihn noch einmal.',
  'The data file was damaged. It was set aside as {path}, nothing in it was changed, and an empty one was begun. Restore your last copy in the settings, and keep that file: somebody who knows databases may get more out of it.':
    'Die Datendatei war beschädigt. Sie wurde als {path} beiseitegelegt, nichts darin wurde geändert, und eine leere wurde begonnen. Holen Sie in den Einstellungen Ihre letzte Kopie zurück, und heben Sie jene Datei auf: Wer Datenbanken kennt, holt vielleicht mehr heraus.',
  'The data file belonged to another program. It was set aside as {path}, nothing in it was changed, and an empty one was begun.':
    'Die Datendatei gehörte einem anderen Programm. Sie wurde als {path} beiseitegelegt, nichts darin wurde geändert, und eine leere wurde begonnen.',
  '{count, plural, one {# household} other {# households}} had been saved here before. Restore your last copy in the settings.':
    'Hier {count, plural, one {war # Haushalt} other {waren # Haushalte}} gespeichert. Holen Sie in den Einstellungen Ihre letzte Kopie zurück.',
  'The data file is gone or empty; {count, plural, =0 {households} one {# household} other {# households}} had been saved in it. An empty one was begun. Restore your last copy in the settings.':
    'Die Datendatei ist weg oder leer, wo {count, plural, =0 {Haushalte} one {# Haushalt} other {# Haushalte}} gespeichert {count, plural, one {war} other {waren}}. Eine leere wurde begonnen. Holen Sie in den Einstellungen Ihre letzte Kopie zurück.',
  'What was left of it lies at {path}.': 'Was davon übrig war, liegt in {path}.',
  'Another data file was put in the place of the one used last. Its changes are not mixed: the log of the earlier one was set aside as {path}.':
    'An die Stelle der zuletzt benutzten Datendatei wurde eine andere gelegt. Nichts wurde vermischt: Das Protokoll der früheren wurde als {path} beiseitegelegt.',
  'The last {count, plural, one {saved change is} other {# saved changes are}} missing from the data file: its log was lost, or an older file was put in its place. It was opened as it is; what was found is untouched at {path}. Compare with your last copy in the settings.':
    'In der Datendatei {count, plural, one {fehlt die letzte gespeicherte Änderung} other {fehlen die letzten # gespeicherten Änderungen}}: Ihr Protokoll ging verloren, oder eine ältere Datei wurde an ihre Stelle gelegt. Sie wurde geöffnet, wie sie ist; was gefunden wurde, liegt unberührt in {path}. Vergleichen Sie in den Einstellungen mit Ihrer letzten Kopie.',
};
