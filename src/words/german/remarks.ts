import type { Catalogue } from '../say.ts';

/** What intake remarks of a file. */
export const REMARKS: Catalogue = {
  'column {number}': 'Spalte {number}',
  nothing: 'nichts',
  '"{text}"': '„{text}“',
  '{text} (with a letter O)': '{text} (mit einem Buchstaben O)',
  '{text} (with a letter l)': '{text} (mit einem Buchstaben l)',
  'on days not named': 'an nicht genannten Tagen',
  'between {low} and {high}': 'zwischen {low} und {high}',
  'Line {row} of {file}': 'Zeile {row} von {file}',
  'the column': 'Spalte ohne Namen',
  'column "{name}"': 'Spalte „{name}“',
  'the tariff': 'der Tarif',
  'a record': 'eine Messreihe',
  'There are {count} lines like it.': 'Solche Zeilen gibt es {count}.',
  '{file} is a spreadsheet workbook. Open it and save the sheet as CSV, then import that.':
    '{file} ist eine Tabellenmappe. Öffnen Sie sie, speichern Sie das Blatt als CSV und importieren Sie das.',
  '{file} is a workbook of an older office program. Open it and save it as CSV, then import that.':
    '{file} ist eine Mappe eines älteren Büroprogramms. Öffnen Sie sie, speichern Sie sie als CSV und importieren Sie das.',
  '{file} is a document of a writing program. Print a bill to a PDF, and choose that. A table can be copied and pasted here.':
    '{file} ist ein Dokument eines Schreibprogramms. Drucken Sie eine Rechnung als PDF und wählen Sie das. Eine Tabelle lässt sich kopieren und hier einfügen.',
  '{file} is an e-mail. Open it, save the bill or file that comes with it, and choose that. If its text is the bill, print it to a PDF.':
    '{file} ist eine E-Mail. Öffnen Sie sie, speichern Sie die angehängte Rechnung oder Datei und wählen Sie diese. Steht die Rechnung im Text, drucken Sie ihn als PDF.',
  '{file} is only a link to something. Open it, download the bill or the readings, and choose that.':
    '{file} ist nur eine Verknüpfung. Öffnen Sie sie, laden Sie die Rechnung oder die Messwerte herunter und wählen Sie das.',
  '{file} is a packed archive. Unpack it first, then import the file inside.':
    '{file} ist ein gepacktes Archiv. Entpacken Sie es zuerst und importieren Sie die Datei darin.',
  '{file} is a PDF. Add it under Bills and readings, as a bill.':
    '{file} ist ein PDF. Fügen Sie es unter „Rechnungen und Messwerte“ als Rechnung hinzu.',
  '{file} is a picture, and we do not read pictures. Ask for the bill as a PDF, or type the figures in.':
    '{file} ist ein Bild, und Bilder lesen wir nicht. Bitten Sie um die Rechnung als PDF oder geben Sie die Zahlen ein.',
  '{file} is a web page. Look there for a download as CSV, or print the bill to a PDF.':
    '{file} ist eine Webseite. Suchen Sie dort nach den Daten als CSV, oder drucken Sie die Rechnung als PDF.',
  '{file} is an XML file, but not of the open standard for meter data. Ask for the data as CSV.':
    '{file} ist eine XML-Datei, aber nicht nach dem offenen Standard für Zählerdaten. Bitten Sie um die Daten als CSV.',
  '{file} is a database. Export the table as CSV, then import that.':
    '{file} ist eine Datenbank. Exportieren Sie die Tabelle als CSV und importieren Sie das.',
  '{file} is empty: nothing stands in it. Download it again, or take the picture again.':
    '{file} ist leer, darin steht nichts. Laden Sie die Datei noch einmal herunter, oder fotografieren Sie noch einmal.',
  '{file} has {words}; we read {expected}. Export each year by itself, half-hours instead of minutes, or one meter at a time.':
    '{file} hat {words}; wir lesen {expected}. Exportieren Sie jedes Jahr für sich, halbe Stunden statt Minuten oder nur einen Zähler.',
  '{file} has more cells than we can hold. Export a shorter span, or fewer columns.':
    '{file} hat mehr Zellen, als wir fassen. Exportieren Sie eine kürzere Zeit oder weniger Spalten.',
  '{at} could not be read ({found}){count, plural, one {, of {expectedNames} rows} other {, nor could others: {count} of {expectedNames} rows in all}}. Correct the file, or confirm that {count, plural, one {it} other {they}} may be left out.':
    '{at} war nicht zu lesen ({found}){count, plural, one {, von {expectedNames} Zeilen} other {, und andere auch nicht: insgesamt {count} von {expectedNames} Zeilen}}. Berichtigen Sie die Datei, oder bestätigen Sie, dass sie {count, plural, one {wegbleiben darf} other {wegbleiben dürfen}}.',
  '{file} is not a text file. Save the data as CSV.': '{file} ist keine Textdatei. Speichern Sie die Daten als CSV.',
  '{file} is not text, nor a picture or PDF that is read here. Save readings as CSV, and a bill as PDF, JPEG or PNG.':
    '{file} ist kein Text, auch kein Bild oder PDF, das hier gelesen wird. Speichern Sie Messwerte als CSV, eine Rechnung als PDF, JPEG oder PNG.',
  '{file} fits no layout we know ({expected}). Its columns are {names}. Choose the layout and the columns yourself, or export the data another way.':
    '{file} hat keinen Aufbau, den wir kennen ({expected}). Die Spalten sind {names}. Wählen Sie Aufbau und Spalten selbst, oder exportieren Sie die Daten anders.',
  '{file} has prices or costs ({names}) and no amounts that were used. A tariff is opened under “Prices”, with “Open a tariff file”. If amounts stand here, name their column, such as “kWh used”.':
    '{file} hat Preise oder Kosten ({names}) und keine verbrauchten Mengen. Einen Tarif öffnen Sie unter „Preise“ mit „Tarifdatei öffnen“. Stehen hier doch Mengen, benennen Sie ihre Spalte, etwa „kWh verbraucht“.',
  '{file} has headings ({names}) and no row below them. Export it again, for days with readings.':
    '{file} hat Überschriften ({names}) und keine Zeile darunter. Exportieren Sie die Datei neu, für Tage mit Messwerten.',
  '{file} is no table: we find only one column in it. Export the readings as CSV or as a spreadsheet, with a date and an amount in each row.':
    '{file} ist keine Tabelle: Wir finden darin nur eine Spalte. Exportieren Sie die Messwerte als CSV oder als Tabelle, mit einem Datum und einer Menge in jeder Zeile.',
  '{file} has no column of dates. Its columns are {names}. Each row needs a date, such as 2025-03-01 or 01/03/2025.':
    '{file} hat keine Spalte mit Daten. Die Spalten sind {names}. Jede Zeile braucht ein Datum, etwa 2025-03-01 oder 01/03/2025.',
  '{column} of {file} stays as warm as a room from day to day. Confirm that it was measured outdoors on those days, or do not use it.':
    '{column} in {file} bleibt Tag für Tag so warm wie ein Zimmer. Bestätigen Sie, dass draußen gemessen wurde, oder verwenden Sie es nicht.',
  '{column} of {file} starts again every month and only rises in between. We took it for a running total: each use is the difference of two days.':
    '{column} in {file} beginnt jeden Monat von vorn und steigt dazwischen nur. Wir nahmen es als laufende Summe: Jeder Verbrauch ist der Unterschied zweier Tage.',
  '{column} of {file} starts again every year and only rises in between. We took it for a running total: each use is the difference of two rows.':
    '{column} in {file} beginnt jedes Jahr von vorn und steigt dazwischen nur. Wir nahmen es als laufende Summe: Jeder Verbrauch ist der Unterschied zweier Zeilen.',
  '{column} of {file} goes on over {count, plural, one {# missing reading} other {# missing readings}}. What it rose by meanwhile was shared out evenly{effect, select, none {} other {, about {energy}}}.':
    '{column} von {file} läuft über {count, plural, one {# fehlenden Wert} other {# fehlende Werte}} hinweg weiter. Der Anstieg wurde gleichmäßig verteilt{effect, select, none {} other {, etwa {energy}}}.',
  '{column} of {file} was read at uneven times. What it rose between two readings was shared out over the hours between.':
    '{column} in {file} wurde in ungleichen Abständen abgelesen. Was zwischen zwei Ablesungen dazukam, wurde auf die Stunden dazwischen verteilt.',
  '{column} of {file} is what was bought less what was sent out, over a day or more. The two cannot be told apart. Ask for both, or for readings by the hour.':
    '{column} in {file} ist Bezug minus Einspeisung über einen Tag oder länger. Beides lässt sich nicht mehr trennen. Fragen Sie nach beiden Werten oder nach Stundenwerten.',
  '{column} of {file} has nothing at night and most about noon, as solar panels do. We took it as bought. Confirm it, or choose what it is.':
    '{column} in {file} hat nachts nichts und um Mittag am meisten, wie Solarmodule. Wir nahmen es als Bezug. Bestätigen Sie das oder wählen Sie, was es ist.',
  '{column} of {file} says something that we do not know ({names}). We took it as what the home used. Confirm it, say what it is, or choose another column.':
    '{column} von {file} sagt etwas, das wir nicht kennen ({names}). Wir haben es als Verbrauch des Hauses genommen. Bestätigen Sie das, sagen Sie, was es ist, oder wählen Sie eine andere Spalte.',
  '{column} of {file} may be money, or the fuel that came. We took it for the fuel. Confirm it, choose another column, or do not use it.':
    '{column} von {file} kann Geld sein oder der gelieferte Brennstoff. Wir haben es als Brennstoff genommen. Bestätigen Sie das, wählen Sie eine andere Spalte, oder verwenden Sie es nicht.',
  'The numbers in {column} of {file} are the days of their rows. They may count those days, or be what was used. We took them for what was used. Confirm it, or choose another column.':
    'Die Zahlen in {column} von {file} sind die Tage ihrer Zeilen. Sie können diese Tage zählen oder der Verbrauch sein. Wir haben sie als Verbrauch genommen. Bestätigen Sie das, oder wählen Sie eine andere Spalte.',
  '{file} has lists without dates ({names}), the first of {count} values. They may be what was used, so the record may not be all. Give them dates, or confirm that they may be left out.':
    '{file} hat Listen ohne Datum ({names}), die erste mit {count} Werten. Sie können Verbrauch sein, dann ist das Gelesene nicht alles. Geben Sie ihnen ein Datum, oder bestätigen Sie, dass sie wegbleiben dürfen.',
  '{file} has lists without dates ({names}). They were left out.':
    '{file} hat Listen ohne Datum ({names}). Sie wurden weggelassen.',
  '{column} of {file} was not read for long {count, plural, one {once} other {# times}}, first from {from} to {to}. It rose by {energy} meanwhile. {said, select, yes {That is saved by itself, as {names}.} other {That is not in its total.}}':
    '{column} von {file} wurde {count, plural, one {einmal} other {#-mal}} lange nicht abgelesen, zuerst vom {from} bis {to}. Dabei stieg der Zähler um {energy}. {said, select, yes {Das wird für sich gespeichert, als {names}.} other {Das ist nicht in der Summe.}}',
  '{file} gives one direction a reading, by {column}. Each reading is what was bought less what was sent out, so the other direction counts as nought there.':
    '{file} nennt je Ablesung nur eine Richtung ({column}). Jede Ablesung ist der Bezug abzüglich der Einspeisung, darum zählt die andere Richtung dort als null.',
  '{column} of {file} sounds like one appliance. Confirm that it is what the whole home uses, or do not use it.':
    '{column} in {file} klingt nach einem einzelnen Gerät. Bestätigen Sie, dass es der Verbrauch des ganzen Hauses ist, oder verwenden Sie es nicht.',
  '{column} of {file} stands beside what a heat pump logs. It may be what the whole home uses, or the heat pump alone. Say which it is.':
    '{column} in {file} steht neben dem, was eine Wärmepumpe aufzeichnet. Es kann der Verbrauch des ganzen Hauses sein oder der Wärmepumpe allein. Sagen Sie, was es ist.',
  '{column} of {file} counts one rate of the meter at a time ({names}). A second rate is not there for the same days. Confirm that it is all the home used. If another file has the rest, say so.':
    '{column} in {file} zählt immer nur einen Tarif des Zählers ({names}). Ein zweiter Tarif fehlt für dieselben Tage. Bestätigen Sie, dass es der ganze Verbrauch des Hauses ist. Steht der Rest in einer anderen Datei, sagen Sie es.',
  '{file} lists {count, plural, one {# home} other {# homes}} ({names}). We read "{expectedNames}". Confirm it, or choose the home that is meant.':
    '{file} nennt {count, plural, one {# Wohnung} other {# Wohnungen}} ({names}). Wir lesen „{expectedNames}“. Bestätigen Sie das, oder wählen Sie die gemeinte Wohnung.',
  '{file} has amounts in another currency than this home’s ({names}). They were left out.':
    '{file} hat Beträge in einer anderen Währung als dieses Haus ({names}). Sie wurden weggelassen.',
  '{file} names months or weeks without their year. Add a column “Year” with the year of each row.':
    '{file} nennt Monate oder Wochen ohne ihr Jahr. Fügen Sie eine Spalte „Jahr“ mit dem Jahr jeder Zeile ein.',
  '{column} of {file} is a fuel that is not compared here. Use a record of electricity, gas, oil, LPG, pellets or heat, or type the heat loss.':
    '{column} in {file} ist ein Brennstoff, der hier nicht verglichen wird. Nehmen Sie Daten zu Strom, Gas, Heizöl, Flüssiggas, Pellets oder Wärme, oder geben Sie die Heizlast ein.',
  '{file} holds degree days, which are neither temperatures nor energy. Use a file of measured outdoor temperatures.':
    '{file} enthält Gradtage. Das sind weder Temperaturen noch Energie. Nehmen Sie eine Datei mit gemessenen Außentemperaturen.',
  '{file} does not name its clock. We took its times as {expectedCode, select, local {local time} utc {UTC} other {winter time}}. An hour or two hardly changes the mean of a day.':
    '{file} nennt keine Uhr. Wir nahmen die Zeiten als {expectedCode, select, local {Ortszeit} utc {UTC} other {Winterzeit}}. Ein, zwei Stunden ändern das Tagesmittel kaum.',
  '{file} has dates but no column of numbers beside them. Choose the column that holds the readings.':
    '{file} hat Daten, aber daneben keine Spalte mit Zahlen. Wählen Sie die Spalte mit den Messwerten.',
  'No row of {file} gave a usable reading. Look at the rows below and choose the right columns.':
    'Keine Zeile von {file} ergab einen brauchbaren Messwert. Sehen Sie die Zeilen unten an und wählen Sie die richtigen Spalten.',
  '{count} rows of {file} have numbers but no date, too many to leave out. Give each row its own date.':
    '{count} Zeilen von {file} haben Zahlen, aber kein Datum; das sind zu viele zum Weglassen. Geben Sie jeder Zeile ihr eigenes Datum.',
  '{file} has two tables side by side, each with its own dates. Save each table as a file of its own.':
    '{file} hat zwei Tabellen nebeneinander, jede mit eigenen Daten. Speichern Sie jede Tabelle als eigene Datei.',
  '{file} has a column for each day of the week, and no dates that say which week. Write the date of its first day before each week, or give each day a row.':
    '{file} hat für jeden Wochentag eine Spalte, aber kein Datum, das die Woche nennt. Schreiben Sie vor jede Woche das Datum ihres ersten Tages, oder geben Sie jedem Tag eine Zeile.',
  '{file} names its rows by seasons or by years such as “{found}”, and no first and last day of them. Write the first day of each row in a column “From” and its last in a column “To”.':
    '{file} nennt seine Zeilen nach Saisons oder Jahren wie „{found}“, aber nicht deren ersten und letzten Tag. Schreiben Sie den ersten Tag jeder Zeile in eine Spalte „Von“ und den letzten in eine Spalte „Bis“.',
  '{file} has {count, plural, one {# table} other {# tables}} with data ({names}). We read "{expectedNames}". Choose another if that is wrong; add {file} again for each of them.':
    '{file} hat {count, plural, one {# Tabelle} other {# Tabellen}} mit Daten ({names}). Wir lesen „{expectedNames}“. Wählen Sie eine andere, falls das falsch ist; fügen Sie {file} für jede davon noch einmal hinzu.',
  '{at} reads {found}: a comma separates both the columns and the decimals. Export the file with semicolons, or with decimal points.':
    '{at} lautet {found}: Ein Komma trennt sowohl die Spalten als auch die Dezimalen. Exportieren Sie mit Strichpunkten oder mit Dezimalpunkten.',
  '{file} is not in UTF-8. It was read as Latin-1; check any accents and signs.':
    '{file} ist nicht in UTF-8. Es wurde als Latin-1 gelesen; prüfen Sie Akzente und Zeichen.',
  '{file} has the headings of an earlier file, so what you chose for that was taken here too: {names}. Look whether it holds for this file.':
    '{file} hat die Überschriften einer früheren Datei. Darum gilt auch hier, was Sie dort gewählt haben: {names}. Prüfen Sie, ob es für diese Datei stimmt.',
  '{file} has no headings, but its columns are written as in an earlier file, so what you chose for that was taken here too: {names}. Look whether it holds for this file.':
    '{file} hat keine Überschriften, aber Spalten wie eine frühere Datei. Darum gilt auch hier, was Sie dort gewählt haben: {names}. Prüfen Sie, ob es für diese Datei stimmt.',
  '{file} begins with {count, plural, one {# title line ({found}), which was} other {# title lines ({found}), which were}} skipped.':
    '{file} beginnt mit {count, plural, one {# Titelzeile ({found}). Sie wurde} other {# Titelzeilen ({found}). Sie wurden}} übersprungen.',
  '{at} is a row of totals ({found}) and was skipped.{alike}':
    '{at} ist eine Summenzeile ({found}) und wurde übersprungen.{alike}',
  '{at} repeats the headings and was skipped.{alike}':
    '{at} wiederholt die Überschriften und wurde übersprungen.{alike}',
  '{at} has no date ({found}) and was skipped. Add a date if the row matters.{alike}':
    '{at} hat kein Datum ({found}) und wurde übersprungen. Fügen Sie eines hinzu, wenn die Zeile wichtig ist.{alike}',
  '{at} is cut off ({found}). The row was left out. Download the file again if it should go on.':
    '{at} ist abgeschnitten ({found}). Die Zeile wurde weggelassen. Laden Sie die Datei neu herunter, wenn sie weitergehen sollte.',
  '{file} has the newest row first. The rows were put in order of time.':
    '{file} hat die neueste Zeile zuerst. Die Zeilen wurden nach der Zeit geordnet.',
  '{file} is not in order of time in {count, plural, one {# place} other {# places}}. The rows were sorted.':
    '{file} ist an {count, plural, one {# Stelle} other {# Stellen}} nicht nach der Zeit geordnet. Die Zeilen wurden sortiert.',
  '{at}: {found} in {column} is no day of the calendar. The row was left out. Correct the date in the file.{alike}':
    '{at}: {found} ({column}) ist kein Tag des Kalenders. Die Zeile wurde weggelassen. Berichtigen Sie das Datum in der Datei.{alike}',
  '{at}: {count, plural, one {# row} other {# rows}} from before 1990 {count, plural, one {was} other {were}} left out. They are older than any bill here could be.':
    '{at}: {count, plural, one {# Zeile} other {# Zeilen}} aus der Zeit vor 1990 {count, plural, one {wurde} other {wurden}} weggelassen. Sie sind älter, als hier eine Rechnung sein kann.',
  '{at}: {found} in {column} is not a date we can read. The row was left out. Write it as 2025-03-01.{alike}':
    '{at}: {found} ({column}) können wir nicht als Datum lesen. Die Zeile wurde weggelassen. Schreiben Sie es wie 2025-03-01.{alike}',
  '{at}: {found} may be {expectedCode, select, day {day first or month first} other {month first or day first}}, and no date in {column} tells. We took it as {expected}. Choose the other if the dates look wrong.':
    '{at}: {found} kann {expectedCode, select, day {Tag zuerst oder Monat zuerst} other {Monat zuerst oder Tag zuerst}} heißen, und kein Datum verrät es ({column}). Wir lesen es so: {expected}. Wählen Sie das andere, wenn die Daten falsch aussehen.',
  '{at}: {found} does not fit the other dates in {column}, which are {expected}. {count, plural, one {# row} other {# rows}} of this kind. Correct the file or choose the order.':
    '{at}: {found} passt nicht zu den anderen Daten ({column}), sonst gilt: {expected}. {count, plural, one {# Zeile} other {# Zeilen}} dieser Art. Berichtigen Sie die Datei, oder wählen Sie die Reihenfolge.',
  '{file} has dates as day numbers of a spreadsheet. They were turned into dates.':
    '{file} hat Daten als Tagesnummern einer Tabelle. Sie wurden in Daten umgerechnet.',
  '{at}: a spreadsheet has changed day and month about in {count} dates, here to {found}. They were changed back, since the rows are in order so.':
    '{at}: Eine Tabellenkalkulation hat in {count} Daten Tag und Monat vertauscht, hier zu {found}. Sie wurden zurückgetauscht, denn so stehen die Zeilen in der Reihe.',
  '{at}: a spreadsheet may have changed day and month about in {count} dates, as here in {found}. Download the file again, and import it before a spreadsheet opens it.':
    '{at}: Eine Tabellenkalkulation hat vielleicht in {count} Daten Tag und Monat vertauscht, so hier in {found}. Laden Sie die Datei noch einmal herunter und lesen Sie sie ein, bevor eine Tabellenkalkulation sie öffnet.',
  '{at}: {found} is later than today, {expected}. {count, plural, one {# row that is} other {# rows that are}} later {count, plural, one {was} other {were}} left out. If nothing in the file lies ahead, check the order of day and month, and the date of this computer.':
    '{at}: {found} liegt nach dem heutigen Tag, {expected}. {count, plural, one {# spätere Zeile wurde} other {# spätere Zeilen wurden}} ausgelassen. Wenn in der Datei nichts bevorsteht, prüfen Sie die Reihenfolge von Tag und Monat und das Datum dieses Rechners.',
  '{at} holds far less than its like: {energy} in {column}. It may be a part of a month: one that was not over when the file was made, or the first in this home. Say whether it stands for a whole month.{alike}':
    '{at} hat viel weniger als vergleichbare: {energy} in {column}. Vielleicht ist es nur ein Teil eines Monats: Er war noch nicht vorbei, als die Datei entstand, oder ist der erste in dieser Wohnung. Sagen Sie, ob die Zeile für einen ganzen Monat steht.{alike}',
  '{at} is a part of a month, as you said, and was left out: {energy}.{alike}':
    '{at} ist, wie Sie sagen, ein Teil eines Monats und wurde ausgelassen: {energy}.{alike}',
  '{at} goes on to {to}, and today is {from}: what is written there is of a part of that time, and was left out.{alike}':
    '{at} reicht bis {to}, und heute ist {from}: Was dort steht, gilt für einen Teil dieser Zeit und wurde ausgelassen.{alike}',
  '{at}: the reading is {number}; {expected} is expected. It counts as missing. Correct the file or leave the row out.{alike}':
    '{at}: Der Messwert ist {number}; erwartet wird {expected}. Er gilt als fehlend. Berichtigen Sie die Datei, oder lassen Sie die Zeile weg.{alike}',
  '{at}: {found} in {column} may have a decimal sign or a thousands sign. We took "{expectedNames}" for the decimal sign. Choose the other if the total looks wrong.':
    '{at}: {found} ({column}) kann ein Dezimalzeichen oder ein Tausenderzeichen haben. Wir nehmen „{expectedNames}“ als Dezimalzeichen. Wählen Sie das andere, wenn die Summe falsch aussieht.',
  '{at}: {found} is written unlike the other numbers in {column}, whose decimal sign is "{expectedNames}". Correct the file or choose the sign.':
    '{at}: {found} ist anders geschrieben als die anderen Zahlen ({column}); deren Dezimalzeichen ist „{expectedNames}“. Berichtigen Sie die Datei, oder wählen Sie das Zeichen.',
  '{file} writes decimals with a comma ({column}). They were read so.':
    '{file} schreibt Dezimalen mit Komma ({column}). So wurden sie gelesen.',
  '{file} does not say the unit of {column}. It has {said, select, yes {{words}} other {amounts}}, so we took {expected}. {carrier, select, electricity {A home uses 5 to 60 kWh of electricity a day. } gas {A home seldom uses more than 300 kWh of gas a day. } other {}}Confirm or choose the unit.':
    '{file} nennt die Einheit nicht ({column}). Dort stehen {said, select, yes {{words}} other {Mengen}}, darum nehmen wir {expected}. {carrier, select, electricity {Ein Haus braucht 5 bis 60 kWh Strom am Tag. } gas {Ein Haus braucht selten mehr als 300 kWh Gas am Tag. } other {}}Bestätigen oder wählen Sie die Einheit.',
  '{column} of {file} says {expected}, which makes {words}. {carrier, select, electricity {A home uses 5 to 60 kWh of electricity a day. } gas {A home seldom uses more than 300 kWh of gas a day. } other {}}Confirm or choose the unit.':
    '{column} von {file} nennt {expected}, das ergibt {words}. {carrier, select, electricity {Ein Haus braucht 5 bis 60 kWh Strom am Tag. } gas {Ein Haus braucht selten mehr als 300 kWh Gas am Tag. } other {}}Bestätigen oder wählen Sie die Einheit.',
  '{at}: {column} reads {names}, where the column is in {expectedNames}. It counts as missing. Write it in {expectedNames} too.{alike}':
    '{at}: {column} lautet {names}, die Spalte ist aber in {expectedNames}. Der Wert gilt als fehlend. Schreiben Sie auch ihn in {expectedNames}.{alike}',
  '{at}: {column} reads {names}, where the column is in {expectedNames}. It was converted.{alike}':
    '{at}: {column} lautet {names}, die Spalte ist aber in {expectedNames}. Der Wert wurde umgerechnet.{alike}',
  '{file}: {record} holds {names} already, so {count, plural, one {it was} other {they were}} left out and nothing counts twice.':
    '{file}: {record} enthält {names} schon, also {count, plural, one {wurde es} other {wurden sie}} weggelassen, und nichts zählt doppelt.',
  '{file}: {record} is the sum of {names}, so it was left out and nothing counts twice.':
    '{file}: {record} ist die Summe aus {names} und wurde weggelassen, damit nichts doppelt zählt.',
  '{column} of {file} may hold more than the home bought: what it made itself and used ({names}). We took it all as bought. Say whether it was.':
    '{column} von {file} kann neben dem Netzbezug auch selbst Erzeugtes enthalten ({names}). Wir nehmen alles als Netzbezug. Sagen Sie, ob es so ist.',
  '{file} has each phase of the supply by itself ({names}). They were added.':
    '{file} enthält jeden Leiter des Anschlusses für sich ({names}). Sie wurden addiert.',
  '{column} of {file} says {words}, which does not go with what it is of. We took {expected}. Choose what the file is of, or its unit.':
    '{column} von {file} nennt {words}, was nicht zu dem passt, was gemessen wurde. Wir nehmen {expected}. Wählen Sie, was die Datei misst, oder die Einheit.',
  '{file} does not say what was metered. We took it for {expected}. Confirm it, or choose what it is.':
    '{file} sagt nicht, was gemessen wurde. Wir nehmen {expected} an. Bestätigen Sie das, oder wählen Sie, was es ist.',
  '{file}: we read {expectedNames} and left out {names}. Choose another column if that is wrong.':
    '{file}: Gelesen wurde {expectedNames}, weggelassen {names}. Wählen Sie eine andere Spalte, wenn das falsch ist.',
  '{file}: we left out {names}. We do not know what {count, plural, one {it means} other {they mean}}. Nothing else is missing.':
    '{file}: Wir haben {names} weggelassen. Was {count, plural, one {es bedeutet} other {sie bedeuten}}, wissen wir nicht. Sonst fehlt nichts.',
  '{file}: {column} does not say its unit. We took {expected}. Compare it with the paper.':
    '{file}: {column} nennt keine Einheit. Wir nehmen {expected}. Vergleichen Sie es mit dem Papier.',
  '{file} holds {count} meters or registers ({names}). Each is saved by itself.':
    '{file} enthält {count} Zähler oder Zählwerke ({names}). Jedes wird für sich behalten.',
  '{foundCode, select, kWh {{file} gives gas by volume without all that makes kWh of it. We took {expected} kWh per m³. Bills print it as one factor, or as a calorific value and a correction (“Brennwert”, “Zustandszahl”) to multiply.} other {{file} gives gas by volume without its calorific value. We took {expected} MJ per m³. Give the value printed on the bill.}}{foundCode, select, therms { Where it prints therms for a CCF, multiply them by 37.26.} other {}}':
    '{foundCode, select, kWh {{file} nennt Gas nach Volumen ohne alles, was kWh daraus macht. Wir nehmen {expected} kWh je m³. Rechnungen drucken Brennwert und Zustandszahl: Multiplizieren Sie beide. Manche drucken einen Umrechnungsfaktor.} other {{file} nennt Gas nach Volumen ohne Brennwert. Wir nehmen {expected} MJ je m³. Geben Sie den Wert auf der Rechnung an.}}{foundCode, select, therms { Nennt sie Therm je 100 Kubikfuß, multiplizieren Sie mit 37,26.} other {}}',
  '{foundCode, select, utc {{file} writes its times in UTC. They were turned into local time.} other {{file} writes the offset from UTC beside its times. It was used as written.}}':
    '{foundCode, select, utc {{file} schreibt die Zeiten in UTC. Sie wurden in Ortszeit umgerechnet.} other {{file} schreibt den Abstand zu UTC neben die Zeiten. Er wurde so übernommen.}}',
  '{foundCode, select, heading {{file} says that its times are in UTC.} other {{file} does not change its clocks in spring and autumn, so its times are UTC.}} They were turned into local time.':
    '{foundCode, select, heading {{file} sagt, dass die Zeiten in UTC sind.} other {{file} stellt die Uhr im März und Oktober nicht um, also sind die Zeiten UTC.}} Sie wurden in Ortszeit umgerechnet.',
  '{file} does not say whether its times are local or UTC, and no change of the clocks lies in it. We took local time.{ofWeather, select, yes {} other { Choose UTC if the evening peak comes too early.}}':
    '{file} sagt nicht, ob die Zeiten Ortszeit oder UTC sind, und keine Zeitumstellung liegt darin. Wir nehmen Ortszeit.{ofWeather, select, yes {} other { Wählen Sie UTC, wenn die Abendspitze zu früh kommt.}}',
  '{file} does not change its clocks in spring and autumn. It may be in winter time or in UTC; we took winter time. Choose the other if that is wrong.':
    '{file} stellt die Uhr im Frühling und Herbst nicht um. Es kann Winterzeit oder UTC sein; wir nehmen Winterzeit. Wählen Sie das andere, wenn das falsch ist.',
  '{file} changes its clocks on some of the {count} change days and not on others. We took {expectedCode, select, local {local time} other {UTC}}. Look at those days and choose.':
    '{file} stellt die Uhr nur an einigen der {count} Umstellungstage um. Wir nehmen {expectedCode, select, local {Ortszeit} other {UTC}}. Sehen Sie diese Tage an und wählen Sie.',
  '{file} has the hour that autumn doubles only once. Its times may be UTC, or local with an hour lost. We took UTC. Choose local time if that is wrong.':
    '{file} hat die doppelte Stunde im Oktober nur einmal. Die Zeiten können UTC sein oder Ortszeit, der eine Stunde fehlt. Wir nehmen UTC. Wählen Sie Ortszeit, wenn das falsch ist.',
  '{file} has readings in the hour that the clocks skip in March. They were left out, since that hour did not exist.':
    '{file} hat Messwerte in der Stunde, die im März übersprungen wird. Sie wurden weggelassen, denn diese Stunde gab es nicht.',
  '{file} has the doubled hour of autumn only once. The second hour counts as missing.':
    '{file} hat die doppelte Stunde im Oktober nur einmal. Die zweite gilt als fehlend.',
  '{file} does not say whether {column} names the start or the end of each reading. We took the {expectedCode, select, end {end} other {start}}. Choose the other if that is wrong.':
    '{file} sagt nicht, ob {column} den Beginn oder das Ende jedes Messwerts nennt. Wir nehmen {expectedCode, select, end {das Ende} other {den Beginn}}. Wählen Sie das andere, wenn das falsch ist.',
  '{column} of {file} names the end of each reading. It was read so.':
    '{column} von {file} nennt das Ende jedes Messwerts. So wurde es gelesen.',
  '{file} has most rows {words} apart, which does not divide a day. Readings every 5, 10, 15, 30 or 60 minutes are expected. Export the data again, or as daily values.':
    '{file}: Die meisten Zeilen haben einen Abstand von {words}, der einen Tag nicht teilt. Erwartet werden Messwerte alle 5, 10, 15, 30 oder 60 Minuten. Exportieren Sie die Daten neu oder als Tageswerte.',
  '{at}: readings change their length, {words} here and {expected} elsewhere. The shorter ones were joined to the longer.':
    '{at}: Die Messwerte wechseln ihre Länge, hier {words} und sonst {expected}. Die kürzeren wurden zu den längeren zusammengefasst.',
  '{at} does not stand on a step of {expected}. {count, plural, one {# reading} other {# readings}} went into the step they fall in.':
    '{at} liegt nicht auf einem Schritt von {expected}. {count, plural, one {# Messwert kam} other {# Messwerte kamen}} in den Schritt, in den sie fallen.',
  '{file} has nothing from {from} to {to}: {count, plural, one {# reading} other {# readings}} missing{effect, select, none {} other {, about {energy}}}. They are not taken for nought.':
    '{file} hat nichts vom {from} bis {to}: {count, plural, one {# Messwert fehlt} other {# Messwerte fehlen}}{effect, select, none {} other {, etwa {energy}}}. Das zählt nicht als null.',
  '{file} has {count, plural, one {# more gap} other {# more gaps}}, none longer than those listed{effect, select, none {} other {, about {energy}}} in all.':
    '{file} hat {count, plural, one {# weitere Lücke} other {# weitere Lücken}}, keine länger als die genannten{effect, select, none {} other {, zusammen etwa {energy}}}.',
  '{at}{when} repeats a reading with the same value. It counts once. {count, plural, one {# row} other {# rows}} of this kind.':
    '{at}{when} wiederholt einen Messwert mit demselben Wert. Er zählt einmal. {count, plural, one {# Zeile} other {# Zeilen}} dieser Art.',
  '{at}{when} gives another value for a time that had one. The later row counts. {count, plural, one {# row} other {# rows}} of this kind{effect, select, none {} other {, about {energy}}} of difference. Check which is right.':
    '{at}{when} nennt einen anderen Wert für eine Zeit, die schon einen hatte. Die spätere Zeile zählt. {count, plural, one {# Zeile} other {# Zeilen}} dieser Art{effect, select, none {} other {, Unterschied etwa {energy}}}. Prüfen Sie, was stimmt.',
  '{file} marks {count, plural, one {# row} other {# rows}} as estimated{span, select, day { on {firstDay}} days { between {firstDay} and {lastDay}} other {}}{effect, select, none {} other {, about {energy}}}. They are saved with that mark. Actual readings would make the answer surer.':
    '{file} nennt {count, plural, one {# Zeile} other {# Zeilen}} geschätzt{span, select, day { am {firstDay}} days { zwischen {firstDay} und {lastDay}} other {}}{effect, select, none {} other {, etwa {energy}}}. Das bleibt vermerkt. Abgelesene Werte machen die Antwort sicherer.',
  '{at}{when}: {column} reads {names}, as heat does while a heat pump defrosts. It is taken off the heat beside it.{alike}':
    '{at}{when}: {column} zeigt {names}, wie Wärme es tut, während eine Wärmepumpe abtaut. Wir ziehen es von der Wärme daneben ab.{alike}',
  '{at}: {names} stands behind a number in {column}, and the file does not say what it means. The number was read as it is.{alike}':
    '{at}: {names} steht hinter einer Zahl in {column}, und die Datei sagt nicht, was es bedeutet. Die Zahl wurde gelesen, wie sie ist.{alike}',
  '{at} gives back {energy} of the days from {from} to {to}. It is taken off the rows of those days.{alike}':
    '{at} gibt {energy} der Tage vom {from} bis {to} zurück. Das wird von den Zeilen dieser Tage abgezogen.{alike}',
  '{at} gives money back and holds no use. It is no reading of its days.{alike}':
    '{at} gibt Geld zurück und enthält keinen Verbrauch. Die Zeile ist keine Ablesung ihrer Tage.{alike}',
  '{column} of {file} changes between {expectedNames} and {names} from row to row. Each row was read in its own unit.':
    '{column} in {file} wechselt von Zeile zu Zeile zwischen {expectedNames} und {names}. Jede Zeile wurde in ihrer eigenen Einheit gelesen.',
  '{at}{when}: {column} reads {names}, and use cannot be negative. It counts as missing. If this is export, choose that in the preview.{alike}':
    '{at}{when}: {column} lautet {names}, doch Verbrauch kann nicht negativ sein. Der Wert gilt als fehlend. Ist es Einspeisung, wählen Sie das in der Vorschau.{alike}',
  '{at}{when}: {column} reads {names}; {expected} is what a house can draw. It counts as missing. Check the unit and the row.{alike}':
    '{at}{when}: {column} lautet {names}; ein Haus kann {expected} ziehen. Der Wert gilt als fehlend. Prüfen Sie Einheit und Zeile.{alike}',
  '{file} shows the same value, {names}, in {count, plural, one {# reading} other {# readings}} from {from} to {to}{effect, select, none {} other {, about {energy}}} in all. The meter may have stood still. Check those days.':
    '{file} zeigt denselben Wert, {names}, in {count, plural, one {# Messwert} other {# Messwerten}} vom {from} bis {to}{effect, select, none {} other {, zusammen etwa {energy}}}. Der Zähler stand vielleicht still. Prüfen Sie diese Tage.',
  '{file} shows nought in {count, plural, one {# reading} other {# readings}} from {from} to {to}{effect, select, none {} other {, where {energy} would be usual}}. The supply or the meter may have been off. Check those days.':
    '{file} zeigt null in {count, plural, one {# Messwert} other {# Messwerten}} vom {from} bis {to}{effect, select, none {} other {, wo {energy} üblich wären}}. Versorgung oder Zähler waren vielleicht aus. Prüfen Sie diese Tage.',
  '{at}{when}: {column} reads {names}, which no weather here reaches. It counts as missing. Check the unit.{alike}':
    '{at}{when}: {column} lautet {names}, so wird das Wetter hier nie. Der Wert gilt als fehlend. Prüfen Sie die Einheit.{alike}',
  '{file}: {count, plural, one {# reading} other {# readings}} missing from {from} to {to} were filled with the mean of the same weekday, {energy} in all. They count as estimated.':
    '{file}: {count, plural, one {# fehlender Messwert} other {# fehlende Messwerte}} vom {from} bis {to} mit dem Mittel desselben Wochentags gefüllt, zusammen {energy}. Das gilt als geschätzt.',
  '{file}: {count, plural, one {# missing reading} other {# missing readings}} could not be filled, since {expected}. They stay missing.':
    '{file}: {count, plural, one {# fehlender Messwert ließ} other {# fehlende Messwerte ließen}} sich nicht füllen. Der Grund: {expected}. Sie fehlen weiter.',
  '{said, select, yes {“{names}” of {file}} other {{file}}} is saved already, and counts once. To read it otherwise, remove it first.':
    '{said, select, yes {„{names}“ aus {file}} other {{file}}} ist schon gespeichert und zählt einmal. Um sie anders zu lesen, entfernen Sie sie zuerst.',
  '{names} is added to {expectedNames}. {count, plural, one {# day} other {# days}} that only one of them has {count, plural, one {is} other {are}} left out of the sum, {days}. Bring the other’s readings of those days, or write 0 for them in its file if it used nothing.':
    '{names} wird zu {expectedNames} gezählt. {count, plural, one {# Tag, den} other {# Tage, die}} nur eine von beiden hat, {count, plural, one {bleibt} other {bleiben}} in der Summe weg, {days}. Bringen Sie die anderen Werte dieser Tage, oder schreiben Sie dort 0, wenn nichts verbraucht wurde.',
  '{file} and {names} both tell the weather of {count, plural, one {# day} other {# days}}, and differ by {expectedNames} °C on average. They may be of two places. Keep the one of this home, and the other aside.':
    '{file} und {names} nennen beide das Wetter von {count, plural, one {# Tag} other {# Tagen}} und unterscheiden sich im Mittel um {expectedNames} °C. Sie können von zwei Orten sein. Nehmen Sie die von diesem Haus, und die andere nicht.',
  '{file} counts another rate of a meter than {names} does ({expectedNames}). Two rates of one meter are added. If both names mean the same rate, it goes on. If {names} is the wrong one, remove that instead.':
    '{file} zählt einen anderen Tarif eines Zählers als {names} ({expectedNames}). Zwei Tarife eines Zählers werden zusammengezählt. Meinen beide Namen denselben Tarif, so geht es weiter. Ist {names} falsch, entfernen Sie stattdessen diese Datei.',
  '{file} names another meter or supply than {names} does{says, select, yes { ({expectedNames})} other {}}. If the meter of this home was changed, it goes on. If not, it is a further meter or of another home. If {names} is the wrong one, remove that instead.':
    '{file} nennt einen anderen Zähler oder Anschluss als {names}{says, select, yes { ({expectedNames})} other {}}. Wurde der Zähler dieses Hauses getauscht, so geht es damit weiter. Sonst ist es ein weiterer Zähler oder ein anderes Haus. Ist {names} die falsche, so entfernen Sie diese.',
  '{file} is of another weather station than {names} ({expectedNames}). If both are near this home, it goes on. If {names} is the wrong one, remove that instead.':
    '{file} ist von einer anderen Wetterstation als {names} ({expectedNames}). Liegen beide nahe bei diesem Haus, so geht es damit weiter. Ist {names} die falsche, so entfernen Sie diese.',
  'The meter readings of {file} do not fit those of {names} ({expectedNames}). If the meter of this home was changed, it goes on. If not, it is a further meter or of another home. If {names} is the wrong one, remove that instead.':
    'Die Zählerstände in {file} passen nicht zu denen in {names} ({expectedNames}). Wurde der Zähler dieses Hauses getauscht, so geht es damit weiter. Sonst ist es ein weiterer Zähler oder ein anderes Haus. Ist {names} die falsche, so entfernen Sie diese.',
  'Where {file} and {names} meet, the use of a day changes too much ({expectedNames} kWh). Check the units first. If this home did change so much, it goes on. If not, it is a further meter or of another home.':
    'Wo {file} und {names} aneinandergrenzen, ändert sich der Verbrauch eines Tages zu sehr ({expectedNames} kWh). Prüfen Sie zuerst die Einheiten. Hat sich dieses Haus so geändert, so geht es damit weiter. Sonst ist es ein weiterer Zähler oder ein anderes Haus.',
  '{file} repeats {count, plural, one {# day} other {# days}} that {names} had, {days}, with the same values. They count once.':
    '{file} wiederholt {count, plural, one {# Tag} other {# Tage}} aus {names}, {days}, mit denselben Werten. Sie zählen einmal.',
  '{file} says something else than {names} of {count, plural, one {# day} other {# days}}, {days}{effect, select, none {} less {: {energy} less} other {: {energy} more}}. There {expectedNames} counts. Remove it if the other is right.':
    '{file} sagt über {count, plural, one {# Tag} other {# Tage}} etwas anderes als {names}, {days}{effect, select, none {} less {: {energy} weniger} other {: {energy} mehr}}. Dort zählt {expectedNames}. Entfernen Sie sie, wenn die andere stimmt.',
  '{at}: does the row include its last day, {names}? We counted it in. Choose the other if rows overlap by a day.':
    '{at}: Gehört der letzte Tag, {names}, zur Zeile? Wir haben ihn mitgezählt. Wählen Sie die andere Antwort, wenn sich Zeilen um einen Tag überschneiden.',
  '{at} overlaps the bill before it from {from} to {to}, {count, plural, one {# day} other {# days}}{effect, select, none {} other {, about {energy}}}. Correct a date, or leave one of the bills out.':
    '{at} überschneidet sich mit der Rechnung davor vom {from} bis {to}, {count, plural, one {# Tag} other {# Tage}}{effect, select, none {} other {, etwa {energy}}}. Berichtigen Sie ein Datum, oder lassen Sie eine der Rechnungen weg.',
  '{at} is for days of the bill before it too, {from} to {to}, {count, plural, one {# day} other {# days}}{effect, select, none {} other {, about {energy}}}. {foundCode, select, both {Both were counted.} once {Each day was counted once.} other {Does one bill replace the other, or do both stand, as those of two meters? So far both are counted.}}':
    '{at} gilt auch für Tage der Rechnung davor, {from} bis {to}, {count, plural, one {# Tag} other {# Tage}}{effect, select, none {} other {, etwa {energy}}}. {foundCode, select, both {Beide wurden gezählt.} once {Jeder Tag wurde einmal gezählt.} other {Ersetzt eine Rechnung die andere, oder gelten beide, wie die zweier Zähler? Bisher zählen beide.}}',
  '{file} has no bill from {from} to {to}, {count, plural, one {# day} other {# days}}{effect, select, none {} other {, about {energy}}}. Add the missing bill if you have it.':
    '{file} hat keine Rechnung vom {from} bis {to}, {count, plural, one {# Tag} other {# Tage}}{effect, select, none {} other {, etwa {energy}}}. Fügen Sie die fehlende hinzu, wenn Sie sie haben.',
  '{at} ends ({to}) before it begins ({from}). The row was left out. Correct its dates.{alike}':
    '{at} endet ({to}), bevor sie beginnt ({from}). Die Zeile wurde weggelassen. Berichtigen Sie die Daten.{alike}',
  '{file} names each month by its {expectedCode, select, ends {last} other {first}} day. Each row was read as that whole month.':
    '{file} nennt jeden Monat mit seinem {expectedCode, select, ends {letzten} other {ersten}} Tag. Jede Zeile wurde als dieser ganze Monat gelesen.',
  '{at} ({found}) has no date {expectedCode, select, end {before} other {after}} it, so its period is not known. The row was left out.':
    '{at} ({found}) hat kein Datum {expectedCode, select, end {davor} other {danach}}, darum ist die Zeitspanne nicht bekannt. Die Zeile wurde weggelassen.',
  '{file} has one date a row. We took {column} for the {expectedCode, select, end {end} other {start}} of each period. Choose the other if that is wrong.':
    '{file} hat ein Datum je Zeile. {column} gilt als {expectedCode, select, end {Ende} other {Beginn}} jeder Zeitspanne. Wählen Sie das andere, wenn das falsch ist.',
  '{file} lists units bought in advance, and nothing says when they were used. We took {column} for the {expectedCode, select, end {end} other {start}} of the days in which they were. Choose the other if that is wrong, or bring readings of the meter instead.':
    '{file} nennt im Voraus gekaufte Einheiten, und nichts sagt, wann sie verbraucht wurden. {column} gilt als {expectedCode, select, end {Ende} other {Beginn}} der Tage, in denen es geschah. Wählen Sie das andere, wenn das falsch ist, oder nehmen Sie Ablesungen des Zählers.',
  '{file}: each delivery is taken to replace what was burnt since the one before. So the first, {words} on {from}, only starts the count.':
    '{file}: Jede Lieferung ersetzt, was seit der vorigen verbrannt wurde. Mit der ersten, {words} am {from}, beginnt nur die Zählung.',
  '{column} of {file} is how full the tank is. The use is not worked out from that, since each filling hides what was used. Bring the deliveries instead, or type them: the date and the amount of each.':
    '{column} in {file} ist der Füllstand des Tanks. Daraus wird der Verbrauch nicht errechnet, denn jede Füllung verdeckt, was verbraucht wurde. Nehmen Sie die Lieferungen, oder geben Sie sie ein: Datum und Menge von jeder.',
  '{file} has {hasDays, select, yes {one delivery only} other {no delivery}}. Two are needed to know how long the fuel lasted. Add the delivery before it.':
    '{file} hat {hasDays, select, yes {nur eine Lieferung} other {keine Lieferung}}. Zwei sind nötig, um zu wissen, wie lange der Brennstoff reichte. Fügen Sie die vorige hinzu.',
  '{at}: the counter went past its end ({words}) and began again at nought. The use between is counted{effect, select, none {} other {, about {energy}}}.{alike}':
    '{at}: Das Zählwerk lief über sein Ende ({words}) und begann wieder bei null. Der Verbrauch dazwischen ist erhalten{effect, select, none {} other {, etwa {energy}}}.{alike}',
  '{at}: the counter fell a little ({words}) and was above it again later, so a figure is wrong. The lower one was left out. Correct it if you know better.{alike}':
    '{at}: Das Zählwerk fiel ein wenig ({words}) und stand später wieder darüber. Eine Zahl ist also falsch. Die kleinere blieb weg. Berichtigen Sie sie, wenn Sie es besser wissen.{alike}',
  '{at}: the counter fell ({words}){hasDays, select, yes { between {from} and {to}} other {}}, so the meter was changed or a figure is wrong. The use between is not known. Add the last reading of the old meter.{alike}':
    '{at}: Das Zählwerk fiel ({words}){hasDays, select, yes { zwischen dem {from} und dem {to}} other {}}. Der Zähler wurde getauscht, oder eine Zahl ist falsch. Der Verbrauch dazwischen ist nicht bekannt. Fügen Sie den letzten Stand des alten Zählers hinzu.{alike}',
  '{at}{when}: the counter shows nought and later goes on from where it was. Such readings were left out.{alike}':
    '{at}{when}: Das Zählwerk zeigt null und läuft später weiter, wo es war. Solche Stände wurden weggelassen.{alike}',
  '{column} of {file} starts again every day and only rises in between. We took it for a counter of the day: each use is the difference of two readings.':
    '{column} in {file} beginnt jeden Tag neu und steigt dazwischen nur. Wir lesen die Spalte als Tageszähler: Jeder Verbrauch ist der Unterschied zweier Stände.',
  '{column} of {file} is in different units from row to row ({words}). Export one unit at a time, or change the rows to one unit.':
    '{column} in {file} hat von Zeile zu Zeile verschiedene Einheiten ({words}). Exportieren Sie jede Einheit einzeln, oder rechnen Sie die Zeilen auf eine Einheit um.',
  '{file} numbers its weeks. We took them from Monday to Sunday. The week with the fourth of January is the first.':
    '{file} nummeriert die Wochen. Wir zählen sie von Montag bis Sonntag. Die Woche mit dem vierten Januar ist die erste.',
  '{column} of {file} is the mean of a day. We took it times the days of each period.':
    '{column} in {file} ist das Mittel eines Tages. Wir haben es mit den Tagen jedes Zeitraums malgenommen.',
  '{at}: the meter was changed on {from} ({words}), and the last reading of the old one is given. No use is lost.{alike}':
    '{at}: Der Zähler wurde am {from} getauscht ({words}), und der letzte Stand des alten liegt vor. Kein Verbrauch geht verloren.{alike}',
  '{file}: {record} says the same as {names} day by day, so it was left out and nothing counts twice.':
    '{file}: {record} sagt Tag für Tag dasselbe wie {names}. Es bleibt weg, damit nichts doppelt zählt.',
  '{file} has temperatures of several places or kinds ({names}). Keep the rows or columns of one of them, then add the file again.':
    '{file} hat Temperaturen mehrerer Orte oder Arten ({names}). Behalten Sie die Zeilen oder Spalten von einer davon und fügen Sie die Datei dann noch einmal hinzu.',
  '{file} says that readings are multiplied by {found}. Multiply them in the file and take that factor out, or give the use instead.':
    'Nach {file} sind die Stände mit {found} malzunehmen. Nehmen Sie sie in der Datei mal und den Faktor heraus, oder geben Sie den Verbrauch an.',
  '{file} has too few readings of the counter. Two are needed to know what was used.':
    '{file} hat zu wenige Zählerstände. Zwei sind nötig, um den Verbrauch zu kennen.',
  '{file} shows {found} in each of {count, plural, one {# row} other {# rows}} of {column}. We took it for a counter that stood still, so that nothing was used. If each row is an amount used, choose that.':
    '{file} zeigt {found} in {count, plural, one {# Zeile} other {jeder von # Zeilen}} ({column}). Wir nehmen einen Zähler an, der stillstand; dann wurde nichts verbraucht. Ist jede Zeile ein Verbrauch, wählen Sie das.',
  '{at} was estimated, and a later actual reading corrected it. The rows from {from} to {to} are read as one period, {energy} in all.{alike}':
    '{at} war geschätzt, und eine spätere Ablesung stellte es richtig. Die Zeilen vom {from} bis {to} gelten als eine Zeitspanne, zusammen {energy}.{alike}',
  '{file}: {column} is one amount for several registers, {names} in all. It cannot be shared out, so it was left out.':
    '{file}: {column} ist ein Betrag für mehrere Zählwerke, zusammen {names}. Er lässt sich nicht aufteilen und wurde weggelassen.',
  '{at} is no valid XML ({said, select, yes {{words}} other {it ends too early}}). Download the file again.':
    '{at} ist kein gültiges XML ({said, select, yes {{words}} other {es endet zu früh}}). Laden Sie die Datei noch einmal herunter.',
  '{at} declares a document type, which meter data has no need of and which can do harm. The file was not read. Download it again from the source.':
    '{at} nennt einen Dokumenttyp, den Zählerdaten nicht brauchen und der schaden kann. Die Datei wurde nicht gelesen. Laden Sie sie noch einmal von der Quelle.',
  '{file} is meter data in the open XML standard, but none of its {count, plural, one {# reading} other {# readings}} could be used. Ask for electricity or gas in energy or volume.':
    '{file} enthält Zählerdaten nach dem offenen XML-Standard, aber {count, plural, one {# Messwert war nicht} other {keiner der # Messwerte war}} brauchbar. Bitten Sie um Strom oder Gas als Energie oder Volumen.',
  '{file} has {count, plural, one {# block} other {# blocks}} of readings that no link ties to a meter. They are saved as a record of their own. Check its name.':
    '{file} hat {count, plural, one {# Block} other {# Blöcke}} mit Messwerten ohne Verweis auf einen Zähler. Sie werden als eigene Messreihe behalten. Prüfen Sie den Namen.',
  '{file} does not say the unit of {hasName, select, yes {{record}} other {its readings}}, since its reading type is missing. We took {expected}. Choose the unit.':
    '{file} nennt keine Einheit für {hasName, select, yes {{record}} other {die Messwerte}}, weil die Art der Messung fehlt. Wir nehmen {expected}. Wählen Sie die Einheit.',
  '{file}: we left out {record}, since it is no energy we can use ({words}).{alike}':
    '{file}: {record} wurde weggelassen, weil es keine Energie ist, die wir brauchen können ({words}).{alike}',
  '{file} gives {record} as power. Each value was taken as the mean over its interval.{alike}':
    '{file} nennt {record} als Leistung. Jeder Wert gilt als Mittel über seine Zeitspanne.{alike}',
  '{file} gives use less export in one record. We keep what was bought and what was sent out apart.':
    '{file} nennt Verbrauch minus Einspeisung in einer Messreihe. Wir halten Gekauftes und Abgegebenes getrennt.',
  '{file} gives the same meter twice: {record} repeats {found} in longer steps. The finer one is used.{alike}':
    '{file} nennt denselben Zähler zweimal: {record} wiederholt {found} in längeren Schritten. Die feinere Messreihe bleibt.{alike}',
  '{at}: the reading spans no time (its value is {words}), as happens when clocks change. It was left out.{alike}':
    '{at}: Der Messwert umfasst keine Zeit (sein Wert ist {words}), wie es bei der Zeitumstellung vorkommt. Er wurde weggelassen.{alike}',
  '{at}: the reading spans {words} where the others span {expected}. It was shared out evenly.{alike}':
    '{at}: Der Messwert umfasst {words}, die anderen {expected}. Er wurde gleichmäßig verteilt.{alike}',
  '{file} should count in UTC, yet it skips the hours that local clocks skip. We took local time. Choose UTC if the evening peak comes an hour late.':
    '{file} sollte in UTC zählen, überspringt aber die Stunden der Zeitumstellung. Wir nehmen Ortszeit. Wählen Sie UTC, wenn die Abendspitze eine Stunde zu spät kommt.',
  "{file} cuts its days by {names}, not by the home's ({expectedZone}). The days stay as they were cut.":
    '{file} teilt die Tage nach {names}, nicht nach der Zeit des Hauses ({expectedZone}). Die Tage blieben, wie sie sind.',
  '{file} has costs ({names}) that are not said to be in this home’s currency. They were left out.':
    '{file} hat Kosten ({names}), bei denen nicht steht, dass sie in der Währung dieses Hauses sind. Sie wurden weggelassen.',
  '{file} has a cost beside each reading, {names} in all. Costs are saved for bills only, so they were left out.':
    '{file} hat Kosten neben jedem Messwert, zusammen {names}. Kosten werden nur bei Rechnungen behalten, darum fallen sie hier weg.',
  '{file} also holds {count, plural, one {# billing summary} other {# billing summaries}}, which we do not read. Type the bill in if you need it.':
    '{file} enthält auch {count, plural, one {# Abrechnung, die} other {# Abrechnungen, die}} wir nicht lesen. Geben Sie die Rechnung ein, wenn Sie sie brauchen.',
  '{file} is a damaged workbook ({words}). Open it, save it again, or save the sheet as CSV.':
    '{file} ist eine beschädigte Tabellenmappe ({words}). Öffnen Sie sie und speichern Sie sie neu, oder das Blatt als CSV.',
  '{file} unpacks to {words}; we read {expected}. Save the sheet you need as CSV.':
    '{file} hat entpackt {words}; wir lesen {expected}. Speichern Sie das nötige Blatt als CSV.',
  '{file} is locked or not an XLSX workbook. Save it without a password, or as CSV.':
    '{file} ist gesperrt oder keine XLSX-Mappe. Speichern Sie sie ohne Kennwort oder als CSV.',
  '{file} has no sheet with rows in it. Save the data as CSV, or choose another file.':
    '{file} hat kein Blatt mit Zeilen. Speichern Sie die Daten als CSV, oder wählen Sie eine andere Datei.',
  '{file} has {count, plural, one {# sheet} other {# sheets}} with data ({names}). We read "{expectedNames}". Choose another if that is wrong.':
    '{file} hat {count, plural, one {# Blatt} other {# Blätter}} mit Daten ({names}). Gelesen wurde „{expectedNames}“. Wählen Sie ein anderes, wenn das falsch ist.',
  '{file} packs {count, plural, one {# file} other {# files}} with data ({names}). We read "{expectedNames}". Choose another if that is wrong; add {file} again for each of them.':
    '{file} enthält gepackt {count, plural, one {# Datei} other {# Dateien}} mit Daten ({names}). Gelesen wird „{expectedNames}“. Wählen Sie eine andere, falls das falsch ist; fügen Sie {file} für jede weitere noch einmal hinzu.',
  'We read "{expectedNames}" out of {file}.': 'Aus {file} wurde „{expectedNames}“ gelesen.',
  'We read the sheet "{expectedNames}" of {file}.': 'Gelesen wurde das Blatt „{expectedNames}“ von {file}.',
  '{at} should end with the place and its clock; {found} is no number of {expected}. Download the weather file again.':
    '{at} sollte mit dem Ort und seiner Uhrzeit enden; {found} ist keine Zahl der {expected}. Laden Sie die Wetterdatei noch einmal herunter.',
  '{file} joins months of {count, plural, one {# year} other {# years}} ({names}) into one typical year. It is no record of real days, so it cannot be set beside meter readings. Use a file of measured weather.':
    '{file} fügt Monate aus {count, plural, one {# Jahr} other {# Jahren}} ({names}) zu einem typischen Jahr zusammen. Das sind keine wirklichen Tage und passt nicht neben Messwerte. Nehmen Sie gemessenes Wetter.',
  '{file} is the weather of {names}, written in {expected} all year. It was turned into local time.':
    '{file} ist das Wetter von {names}, das ganze Jahr in {expected}. Es wurde in Ortszeit umgerechnet.',
  '{file} tells its registers apart in {column} ({names}). Each is saved by itself, and export is never added to import.':
    '{file} unterscheidet die Zählwerke durch {column} ({names}). Jedes wird für sich behalten; Einspeisung wird nie zum Bezug gezählt.',
  "{file} has heat beside electricity, so {column} was taken for the heat pump's own meter. Choose another role if it is the whole house.":
    '{file} hat Wärme neben Strom, darum gilt {column} als eigener Zähler der Wärmepumpe. Wählen Sie etwas anderes, wenn es das ganze Haus ist.',
  '{at} breaks the rules of JSON at “{names}” or just before it. Look for a comma, bracket or quotation mark too many or too few, or save the tariff as CSV.':
    '{at} verletzt die Regeln von JSON bei „{names}“ oder kurz davor. Suchen Sie ein Komma, eine Klammer oder ein Anführungszeichen zu viel oder zu wenig, oder speichern Sie den Tarif als CSV.',
  '{at}: {field} is {said, select, yes {{found}} other {missing}}; it must be {expected}. Correct the file.':
    '{at}: {field}: {said, select, yes {{found}} other {fehlt}}; verlangt ist {expected}. Berichtigen Sie die Datei.',
  '{file} has {count} {foundCode, select, days {days of prices} other {prices}}, and at most {expectedNames} are read. {foundCode, select, days {Keep those of the last years.} other {Give all hours of one price the same name in the column “band”.}}':
    '{file} hat {count} {foundCode, select, days {Tage mit Preisen} other {Preise}}; gelesen werden höchstens {expectedNames}. {foundCode, select, days {Behalten Sie die der letzten Jahre.} other {Geben Sie allen Stunden mit demselben Preis denselben Namen in der Spalte „band“.}}',
  '{file} has no column "{expectedNames}". A tariff file has the columns band, from, to, days, months and {expectedNames}.':
    '{file} hat keine Spalte „{expectedNames}“. Eine Tarifdatei hat die Spalten band, from, to, days, months und {expectedNames}.',
  '{at}: {column} is {found}; {expected} is expected. Correct the row.':
    '{at}: {column} lautet {found}; erwartet wird {expected}. Berichtigen Sie die Zeile.',
  '{at}: {column} does not name the unit of its prices. We took them as {expectedNames} per kWh. Confirm it.':
    '{at}: {column} nennt keine Einheit der Preise. Wir nehmen {expectedNames} je kWh an. Bestätigen Sie das.',
  '{at}: {found} may be {expectedCode, select, day {day first or month first} other {month first or day first}}. We took it as {expected}. Correct it if that is wrong.':
    '{at}: {found} kann {expectedCode, select, day {Tag zuerst oder Monat zuerst} other {Monat zuerst oder Tag zuerst}} sein. Angenommen ist {expected}. Berichtigen Sie es, wenn das falsch ist.',
  '{at}: {found} is no line of a tariff file. It was left out; type it if it matters.':
    '{at}: {found} ist keine Zeile einer Tarifdatei. Sie ist weggelassen; tragen Sie sie ein, wenn es darauf ankommt.',
  '{file} has the hours across and the days down. Bring a row for each time and its price, with the date and the time in the first column.':
    '{file} hat die Stunden nebeneinander und die Tage untereinander. Nehmen Sie eine Zeile je Zeit mit ihrem Preis, Datum und Uhrzeit in der ersten Spalte.',
  '{file} has a price every {expectedNames} minutes. We count by half-hours, each at the mean of its prices.':
    '{file} hat alle {expectedNames} Minuten einen Preis. Wir rechnen in halben Stunden, jede mit dem Mittel ihrer Preise.',
  '{at}: {names} is not known in a tariff file. It was left out; type it if it matters.':
    '{at}: {names} ist in einer Tarifdatei nicht bekannt. Es ist weggelassen; tragen Sie es ein, wenn es darauf ankommt.',
  '{at}: {column} is paid for electricity sent out. Type it beside the roof, and choose a file of prices paid.':
    '{at}: {column} wird für eingespeisten Strom gezahlt. Tragen Sie das beim Dach ein, und wählen Sie eine Datei mit Bezugspreisen.',
  '{at}: several columns hold prices: {names}. Keep one of them, and open the file again.':
    '{at}: Mehrere Spalten enthalten Preise: {names}. Behalten Sie eine davon, und öffnen Sie die Datei erneut.',
  '{at}: {column} is in another currency than this home’s. Convert its prices, and open the file again.':
    '{at}: {column} ist in einer anderen Währung als der dieses Haushalts. Rechnen Sie die Preise um, und öffnen Sie die Datei erneut.',
  '{file} does not say which fuel it prices. We took {expected}. Confirm it.':
    '{file} sagt nicht, für welchen Energieträger die Preise gelten. Wir nehmen {expected} an. Bestätigen Sie das.',
  '{file} does not say whether its prices include VAT. We took them as including {expectedNames} % VAT. Confirm it.':
    '{file} sagt nicht, ob die Preise Mehrwertsteuer enthalten. Wir nehmen an: mit {expectedNames} % Mehrwertsteuer. Bestätigen Sie das.',
  // What intake finds or expects, in its own words
  '{amount, number, ::.######} {unit}': '{amount, number, ::.######} {unit}',
  'at most {kWh, number} kWh': 'höchstens {kWh, number} kWh',
  'at most {megabytes, number} MB': 'höchstens {megabytes, number} MB',
  'over {megabytes, number} MB': 'über {megabytes, number} MB',
  'over {readings, number} readings': 'über {readings, number} Messwerte',
  '{amount, number} a day': '{amount, number} am Tag',
  '{amount, number} on the mean': '{amount, number} im Mittel',
  '{kWh, number} kWh a day': '{kWh, number} kWh am Tag',
  'a price of {price} for a kWh': 'einen Preis von {price} für eine kWh',
  '{figure, number, ::.######}': '{figure, number, ::.######}',
  '{amount, number, ::currency/GBP}': '{amount, number, ::currency/GBP}',
  '{amount, number, ::currency/EUR}': '{amount, number, ::currency/EUR}',
  '{unit} a day': '{unit} am Tag',
  '{unit} for the whole bill': '{unit} für die ganze Rechnung',
  '{name} {sum}': '{name} {sum}',
  '{parts}': '{parts}',
  '{on}': '{on}',
  'its own clock': 'ihrer eigenen Uhr',
  'whole units of its currency': 'ganze Einheiten ihrer Währung',
  'hundredths of its currency': 'Hundertstel ihrer Währung',
  '{minutes, number} minutes': '{minutes, number} Minuten',
  '{days, number} days': '{days, number} Tage',
  '1 day': '1 Tag',
  '{first, number} then {next, number}': '{first, number}, dann {next, number}',
  'a gap is longer than {days, number} days, or too few days of the same weekday are near':
    'eine Lücke länger als {days, number} Tage ist oder zu wenige gleiche Wochentage in der Nähe liegen',
  'readings every {minutes, number} minutes': 'Messwerte alle {minutes, number} Minuten',
  'unit code {number}': 'Einheit mit Code {number}',
  'service kind {number}': 'Art der Versorgung {number}',
  'commodity {number}': 'Ware {number}',
  'litres of another liquid': 'Liter einer anderen Flüssigkeit',
  'it unpacks to over {times, number} times its size': 'sie wird entpackt über {times, number}-mal so groß',
  'a number': 'eine Zahl',
  'a number in {unit}': 'eine Zahl in {unit}',
  'a whole number': 'eine ganze Zahl',
  'a reading of the counter': 'ein Zählerstand',
  'a meter reading': 'ein Zählerstand',
  'an amount': 'ein Betrag',
  'an amount of fuel': 'eine Menge Brennstoff',
  'an amount of money': 'ein Geldbetrag',
  'a calorific value in MJ per m³': 'ein Brennwert in MJ je m³',
  '{pence, number}, as in the other row of {band}': '{pence, number}, wie in der anderen Zeile von {band}',
  'one price; {pence, number} stands there already': 'ein Preis; {pence, number} steht dort schon',
  'a time such as {time}': 'eine Zeit wie {time}',
  'at least {least, number}': 'mindestens {least, number}',
  'at least {least, number} {unit}': 'mindestens {least, number} {unit}',
  'more than {bound, number}': 'mehr als {bound, number}',
  'more than {bound, number} {unit}': 'mehr als {bound, number} {unit}',
  'at most {most, number}': 'höchstens {most, number}',
  'at most {most, number} {unit}': 'höchstens {most, number} {unit}',
  'less than {bound, number}': 'weniger als {bound, number}',
  'less than {bound, number} {unit}': 'weniger als {bound, number} {unit}',
  'at most {most, number} characters long': 'höchstens {most, number} Zeichen lang',
  'a list of at least {least, number}': 'eine Liste mit mindestens {least, number}',
  'a list of at most {most, number}': 'eine Liste mit höchstens {most, number}',
  'of the kind {kind}': 'von der Art {kind}',
  'one of {values}': 'eines von {values}',
  '{one} or {other}': '{one} oder {other}',
  'written as {format}': 'geschrieben als {format}',
  'a time and a number every {minutes, number} minutes': 'eine Zeit und eine Zahl alle {minutes, number} Minuten',
  'a date and {columns, number} columns of {minutes, number} minutes':
    'ein Datum und {columns, number} Spalten zu {minutes, number} Minuten',
  '"{column}" is named a reading': '„{column}“ heißt Zählerstand',
  '"{column}" never goes down': '„{column}“ fällt nie',
  'typed by the installer, {on}': 'vom Fachbetrieb eingegeben, {on}',
  'file {file}': 'Datei {file}',
  'bill {file}': 'Rechnung {file}',
  therm: 'Therm',
  'hundred ft³': 'hundert ft³',
  'tenth of °C': 'Zehntel °C',
  'US gallon': 'US-Gallone',
  'imperial gallon': 'britische Gallone',
  included: 'enthalten',
  'its sheet cannot be read': 'ihr Blatt lässt sich nicht lesen',
  'it is cut off': 'sie ist abgeschnitten',
  'its list of sheets cannot be read': 'ihr Verzeichnis der Blätter lässt sich nicht lesen',
  'its packing is damaged': 'ihre Packung ist beschädigt',
  'hours east of Greenwich': 'Stunden östlich von Greenwich',
  'what each week or month used': 'was jede Woche oder jeder Monat verbraucht hat',
  'a date and an amount of fuel in each row': 'ein Datum und eine Menge Brennstoff in jeder Zeile',
  'the file speaks of a fuel that is delivered': 'die Datei spricht von einem gelieferten Brennstoff',
  'no amount of fuel': 'keine Menge Brennstoff',
  'a date with its time': 'ein Datum mit Uhrzeit',
  'the beginning of a half-hour': 'der Beginn einer halben Stunde',
  'a half-hour that the clock has on this day': 'eine halbe Stunde, die es an diesem Tag gibt',
  'the standing charge in {unit} a day (0 was taken)': 'der Grundpreis in {unit} am Tag (0 wurde angenommen)',
  'the first day of these prices': 'der erste Tag dieser Preise',
  'electricity or gas': 'electricity oder gas',
  'a date such as 2026-10-01': 'ein Datum wie 2026-10-01',
  '"5 % included" or "5 % not included"': '„5 % included“ oder „5 % not included“',
  'days such as mon-fri': 'Tage wie mon-fri',
  'months such as oct-mar': 'Monate wie oct-mar',
  // Why a layout fits a file, or does not
  'the open XML standard for meter data': 'der offene XML-Standard für Zählerdaten',
  'begins with LOCATION, as EPW weather files do': 'beginnt mit LOCATION, wie EPW-Wetterdateien',
  'no column of dates': 'keine Spalte mit Daten',
  'no column of numbers': 'keine Spalte mit Zahlen',
  'no column of amounts used': 'keine Spalte mit Verbrauch',
  'a reading before and after in each row': 'alter und neuer Zählerstand in jeder Zeile',
  'times of day, as readings have': 'Uhrzeiten, wie Messwerte sie haben',
  'a week and an amount in each row': 'eine Woche und eine Menge in jeder Zeile',
  'a month and an amount in each row': 'ein Monat und eine Menge in jeder Zeile',
  'a quarter and an amount in each row': 'ein Quartal und eine Menge in jeder Zeile',
  'two dates and an amount in each row': 'zwei Daten und eine Menge in jeder Zeile',
  'one date and an amount in each row, days apart': 'ein Datum und eine Menge in jeder Zeile, Tage auseinander',
  'dates day by day': 'Daten Tag für Tag',
  'dates without a time of day': 'Daten ohne Uhrzeit',
  'times of day, but at no even distance': 'Uhrzeiten, aber in ungleichem Abstand',
  'many columns of numbers': 'viele Spalten mit Zahlen',
  'months rather than days': 'Monate statt Tage',
  'periods longer than a day': 'Zeitspannen länger als ein Tag',
  'a date and a number for each day': 'ein Datum und eine Zahl für jeden Tag',
  'dates that are not a day apart': 'Daten, die nicht einen Tag auseinanderliegen',
  'no 24, 48, 96 or 288 columns of readings': 'nicht 24, 48, 96 oder 288 Spalten mit Messwerten',
  'periods rather than single dates': 'Zeitspannen statt einzelner Daten',
  'rows too close in time': 'Zeilen zu dicht beieinander',
  'begins with the row types of an open market format':
    'beginnt mit den Zeilenarten eines offenen Formats der Strommärkte',
  'a date and an amount delivered in each row': 'ein Datum und eine gelieferte Menge in jeder Zeile',
  'no column that only goes up': 'keine Spalte, die nur steigt',
  'a counter, but a column of amounts used as well': 'ein Zählwerk, aber auch eine Spalte mit Verbrauch',
  '{at}: another version of Plainwarmth noted “{code}”, which is not known here.':
    '{at}: eine andere Fassung von Plainwarmth hat „{code}“ vermerkt, das hier nicht bekannt ist.',
  // Bills on paper
  '{file} holds {count} bills of different days. Each is saved with its own days.':
    '{file} enthält {count} Rechnungen über verschiedene Tage. Jede wird mit ihren eigenen Tagen gespeichert.',
  'The pages of {file} state different days: {names}. Say whether they are one bill or several.':
    'Die Seiten von {file} nennen verschiedene Tage: {names}. Sagen Sie, ob sie eine Rechnung sind oder mehrere.',
  'The amounts on {file} are in {names}. They are saved as they are printed. The country in “Heat needed” settles the currency of a home.':
    'Die Beträge auf {file} sind in {names}. Sie werden wie gedruckt gespeichert. Die Währung eines Hauses folgt seinem Land unter „Wärmebedarf“.',
  'No sum on {file} confirms that its charges are all here: {names}. A charge or the page with the total may be missing. Compare with the paper.':
    'Keine Summe auf {file} bestätigt, dass alle Beträge da sind: {names}. Ein Betrag oder die Seite mit der Summe kann fehlen. Vergleichen Sie mit dem Papier.',
  '{file} is locked with a password. Open it with the password, print it to a new PDF without one, and choose that.':
    '{file} ist mit einem Passwort gesperrt. Öffnen Sie die Datei damit, drucken Sie sie ohne Passwort in ein neues PDF und wählen Sie dieses.',
  '{file} is a damaged PDF. Download it again, or ask the supplier for it again.':
    '{file} ist ein beschädigtes PDF. Laden Sie es noch einmal herunter oder bitten Sie den Versorger darum.',
  '{file} has more than {expectedNames} pages, more than a bill has. Print only the pages of the bill to a new PDF, and choose that.':
    '{file} hat mehr als {expectedNames} Seiten, mehr als eine Rechnung hat. Drucken Sie nur die Seiten der Rechnung in ein neues PDF und wählen Sie dieses.',
  '{file} unpacks to more than any bill holds, so it was not opened. Ask the supplier for the bill again, or type the figures.':
    '{file} wird entpackt größer als jede Rechnung und wurde nicht geöffnet. Bitten Sie den Versorger um die Rechnung oder tippen Sie die Zahlen ein.',
  '{file} holds no words and no picture of a page. Ask the supplier for the bill again, or type the figures.':
    '{file} enthält weder Wörter noch das Bild einer Seite. Bitten Sie den Versorger um die Rechnung oder tippen Sie die Zahlen ein.',
  '{file} is a picture of a kind that is not read here. Take a screenshot of it, or save it as JPEG or PNG, and choose that.':
    '{file} ist ein Bild einer Art, die hier nicht gelesen wird. Machen Sie davon ein Bildschirmfoto oder speichern Sie es als JPEG oder PNG, und wählen Sie dieses.',
  '{file} is a damaged picture. Fetch it again from the telephone or scanner.':
    '{file} ist ein beschädigtes Bild. Holen Sie es noch einmal vom Telefon oder Scanner.',
  '{file} has more than {expectedNames} million points, so it was not opened. Save it smaller, and choose that.':
    '{file} hat mehr als {expectedNames} Millionen Bildpunkte und wurde nicht geöffnet. Speichern Sie es kleiner und wählen Sie dieses.',
  '{file} is too small to read. Take the picture closer, one page at a time.':
    '{file} ist zu klein zum Lesen. Fotografieren Sie näher, Seite für Seite.',
  'We could not read a bill in the picture {file}. Take it again: all of the page, flat, in even light, from closer. Or type the figures in.':
    'Im Bild {file} war keine Rechnung zu lesen. Nehmen Sie es neu auf: die ganze Seite, flach, in gleichmäßigem Licht, aus der Nähe. Oder tippen Sie die Zahlen ein.',
  '{file} could not be read for certain everywhere. A better picture helps: all of the page, flat, in even light, from closer.':
    '{file} war nicht überall sicher zu lesen. Ein besseres Bild hilft: die ganze Seite, flach, in gleichmäßigem Licht, aus der Nähe.',
  'We read {file}, and found no use of electricity or gas with its price. If it is a bill, show all of the page, or choose its other pages too. Or type the figures.':
    'Wir haben {file} gelesen und keinen Verbrauch von Strom oder Gas mit seinem Preis gefunden. Ist es eine Rechnung, so zeigen Sie die ganze Seite, oder wählen Sie auch ihre anderen Seiten. Oder tippen Sie die Zahlen ein.',
  'We found no use of electricity or gas with its price in {file}. If it is a bill, perhaps a page is missing: choose the complete bill, or type the figures.':
    'In {file} fanden wir keinen Verbrauch von Strom oder Gas mit seinem Preis. Ist es eine Rechnung, so fehlt vielleicht eine Seite: Wählen Sie die ganze Rechnung oder tippen Sie die Zahlen ein.',
  '{file} is a bill for water, and nothing of it is needed here. Choose the bill for electricity or gas.':
    '{file} ist eine Rechnung für Wasser; davon wird hier nichts gebraucht. Wählen Sie die Rechnung für Strom oder Gas.',
  '{file} names water or sewage too. That was left out.':
    '{file} nennt auch Wasser oder Abwasser. Das wurde weggelassen.',
  '{file} is a bill for heat from a network. Only bills for electricity or gas are read here.':
    '{file} ist eine Rechnung für Fernwärme. Gelesen werden hier nur Rechnungen für Strom oder Gas.',
  '{file} charges for gas by volume and says nowhere how many kWh that is. Type the figures: there m³ can be chosen.':
    '{file} rechnet Gas nach Volumen ab und sagt nirgends, wie viele kWh das sind. Tippen Sie die Zahlen ein: Dort lassen sich m³ wählen.',
  '{file} seems to charge for two fuels, and no heading says which is which. Choose a copy with its headings, or type the figures.':
    '{file} rechnet wohl zwei Energieträger ab, und keine Überschrift sagt, welche Zahlen zu welchem gehören. Nehmen Sie ein Exemplar mit Überschriften, oder tippen Sie die Zahlen ein.',
  '{file} seems to be for something else: it says {names}. Only bills for electricity or gas are read here; a delivery of fuel can be typed in.':
    '{file} ist wohl für etwas anderes, denn dort steht: {names}. Gelesen werden hier nur Rechnungen für Strom oder Gas; eine Lieferung von Brennstoff lässt sich eintippen.',
  'The amounts on {file} are in another currency: it says {names}. Bills are read in pounds, euros or dollars.':
    'Die Beträge auf {file} haben eine andere Währung, denn dort steht: {names}. Gelesen werden Rechnungen in Pfund, Euro oder Dollar.',
  '{file} lays {names} on both fuels together. Each fuel bears its part, by what it was charged.':
    '{file} legt {names} auf beide Energien zusammen. Jede trägt ihren Teil, nach dem, was für sie berechnet wurde.',
  'The amounts on {file} are in {names}. They would count as the money of the household. Set its country in “Heat needed”, type in what they come to, or save them as printed.':
    'Die Beträge auf {file} sind in {names}. Sie würden als Geld des Haushalts zählen. Wählen Sie sein Land unter „Wärmebedarf“, geben Sie ein, was sie umgerechnet ergeben, oder speichern Sie sie wie gedruckt.',
  '{file} also charges for what is no energy: {names}. That was left out of the cost.':
    '{file} berechnet auch, was keine Energie ist: {names}. Das zählt nicht zu den Kosten.',
  '{file} holds two bills for the same days ({names}) with different use. Choose only the one that stands.':
    '{file} enthält zwei Rechnungen für dieselben Tage ({names}) mit verschiedenem Verbrauch. Wählen Sie nur die gültige.',
  '{file} names heat from a network too. That was left out.': '{file} nennt auch Fernwärme. Das wurde weggelassen.',
  '{file} may be an offer, a forecast, a cancelled bill or pay for electricity sent out: it says {names}. Only what was used and charged belongs here.':
    '{file} ist vielleicht ein Angebot, eine Prognose, eine stornierte Rechnung oder eine Gutschrift für Einspeisung, denn dort steht: {names}. Hierher gehört nur, was verbraucht und berechnet wurde.',
  '{file} gives back more than it charges, so it corrects an earlier bill. Choose the bill that stands now, or type the figures.':
    '{file} erstattet mehr, als es berechnet, und berichtigt also eine frühere Rechnung. Wählen Sie die Rechnung, die jetzt gilt, oder tippen Sie die Zahlen ein.',
  '{file} also names electricity that was sent out. That is no use, and was left out.':
    '{file} nennt auch eingespeisten Strom. Das ist kein Verbrauch und wurde weggelassen.',
  '{file} also works out sums that are not this home’s bill of these days, so they were left out: {names}.':
    '{file} rechnet auch Beträge vor, die nicht die Rechnung dieses Haushalts für diese Tage sind; sie wurden weggelassen: {names}.',
  'The only charges that {file} works out are not this home’s bill of these days: {names}. Choose the bill with its own charges, or type the figures.':
    'Was {file} an Kosten vorrechnet, ist nicht die Rechnung dieses Haushalts für diese Tage: {names}. Wählen Sie die Rechnung mit ihren eigenen Posten oder tippen Sie die Zahlen ein.',
  'No total of this bill holds these sums, so they were left out: {names}.':
    'Diese Beträge stecken in keiner Summe der Rechnung und wurden weggelassen: {names}.',
  'No total of this bill holds these sums on {file}, so they were left out: {names}. They may be another offer, a forecast or another bill. Compare with the paper.':
    'Diese Beträge auf {file} stecken in keiner Summe der Rechnung und wurden weggelassen: {names}. Vielleicht sind es ein anderes Angebot, eine Prognose oder eine andere Rechnung. Vergleichen Sie mit dem Papier.',
  '{count, plural, one {An amount} other {# amounts}} on {file} {count, plural, one {belongs} other {belong}} to no charge we read, and {count, plural, one {was} other {were}} left out: {names}.':
    '{count, plural, one {Ein Betrag} other {# Beträge}} auf {file} {count, plural, one {gehört} other {gehören}} zu keinem gelesenen Posten und {count, plural, one {wurde} other {wurden}} weggelassen: {names}.',
  '{file} has more that belongs to no charge we read: {names}. Without it the bill may not be complete. Compare with the paper.':
    'Auf {file} steht noch etwas, das zu keinem gelesenen Posten gehört: {names}. Ohne das ist die Rechnung vielleicht nicht vollständig. Vergleichen Sie mit dem Papier.',
  '{file} subtracts units that another bill was for: {found}. We used {expected}, what is charged now. Add the other bill too, or the home seems to use less than it did.':
    '{file} zieht Einheiten ab, die schon eine andere Rechnung nannte: {found}. Wir haben {expected} übernommen, was jetzt berechnet wird. Fügen Sie auch die andere Rechnung hinzu, sonst scheint das Haus weniger zu verbrauchen, als es verbraucht hat.',
  'Names, addresses and the numbers of accounts and meters on {file} are not saved, nor the paper itself.':
    'Namen, Anschriften sowie Konto- und Zählernummern auf {file} werden nicht gespeichert, auch das Papier selbst nicht.',
  '{file} does not say whether it is for electricity or for gas. Choose which.':
    '{file} sagt nicht, ob es um Strom oder um Gas geht. Wählen Sie.',
  '{said, select, yes {The last day of {file} is before its first. Type both again below.} other {We found no first and last day of the bill on {file}. Type them below.}}':
    '{said, select, yes {Der letzte Tag von {file} liegt vor dem ersten. Tippen Sie beide unten noch einmal ein.} other {Auf {file} fanden wir weder den ersten noch den letzten Tag der Rechnung. Tippen Sie beide unten ein.}}',
  '{said, select, yes {{file} says that its prices hold VAT, but no sum on it shows how much.} other {{file} shows no VAT that fits its sums.}} Say whether the prices hold it.':
    '{said, select, yes {{file} sagt, dass die Preise die Mehrwertsteuer enthalten, doch keine Summe zeigt, wie viel.} other {{file} zeigt keine Mehrwertsteuer, die zu den Summen passt.}} Sagen Sie, ob die Preise sie enthalten.',
  '{count, plural, one {One value is read, and no sum on the page proves it} other {# values are read, and no sum on the page proves them}}: {names}. Compare with the paper, and correct what is wrong by a click on the page.':
    '{count, plural, one {Ein Wert ist nur gelesen, keine Summe auf der Seite bestätigt ihn} other {# Werte sind nur gelesen, keine Summe auf der Seite bestätigt sie}}: {names}. Vergleichen Sie mit dem Papier und berichtigen Sie durch einen Klick auf die Seite, was falsch ist.',
  'What {names} {count, plural, one {stands} other {stand}} for was guessed from the place, since no word says it. Compare with the paper. Where a guess is wrong, type the bill instead.':
    'Wofür {names} {count, plural, one {steht} other {stehen}}, haben wir aus der Stelle erraten, denn es steht nicht dabei. Vergleichen Sie mit dem Papier. Stimmt es nicht, tippen Sie die Rechnung stattdessen ein.',
  '{count, plural, one {A sum on the paper does not come out} other {# sums on the paper do not come out}}: {names}. A number may be misread, rounded, or wrong on the paper. Correct it by a click on the page, or save the bill as printed.':
    '{count, plural, one {Eine Summe auf dem Papier geht nicht auf} other {# Summen auf dem Papier gehen nicht auf}}: {names}. Vielleicht ist eine Zahl falsch gelesen, gerundet oder falsch gedruckt. Berichtigen Sie sie durch einen Klick auf die Seite, oder speichern Sie die Rechnung wie gedruckt.',
  '{column} of {file}, taken as {expected}, makes {words}, which nobody pays. Choose the unit. Of bottles or loads, write what they hold.':
    '{column} von {file}, als {expected} genommen, ergibt {words}, was niemand bezahlt. Wählen Sie die Einheit. Bei Flaschen oder Fuhren schreiben Sie, was sie enthalten.',
  '{column} of {file} says {expected}, but its mean is {words} {expected}, which would be no weather of a home. Confirm or choose the unit.':
    '{column} von {file} nennt {expected}, aber der Mittelwert ist {words} {expected}; das wäre kein Wetter einer Wohnung. Bestätigen oder wählen Sie die Einheit.',
  '{column} of {file} counts pulses. We took {expected} of them for one kWh. Give the number printed on the meter.':
    '{column} von {file} zählt Impulse. Wir haben {expected} davon für eine kWh genommen. Geben Sie die Zahl an, die auf dem Zähler steht.',
  '{file} has {count, plural, one {another column} other {# other columns}} of the same kind as {column}: {names}. We took {column}. Confirm it, or choose the column that is meant.':
    '{file} hat {count, plural, one {noch eine Spalte} other {noch # Spalten}} derselben Art wie {column}: {names}. Wir haben {column} genommen. Bestätigen Sie das oder wählen Sie die gemeinte Spalte.',
  '{file} does not say whether {column} is all that is made at home or only what is sent out. We took it as sent out. Confirm it, or choose.':
    '{file} sagt nicht, ob {column} alles ist, was im Haus erzeugt wird, oder nur, was eingespeist wird. Wir haben es als eingespeist genommen. Bestätigen Sie das oder wählen Sie.',
  '{file} does not say clearly whether {column} was bought or sent out. We took it as bought. Confirm it, or choose what it is.':
    '{file} sagt nicht klar, ob {column} gekauft oder eingespeist wurde. Wir haben es als gekauft genommen. Bestätigen Sie das, oder wählen Sie, was es ist.',
  '{column} of {file} names one energy, and its name or title ({names}) names another. We took the one of the heading. Confirm it, or choose.':
    '{column} von {file} nennt eine Energie, der Name oder Titel ({names}) eine andere. Wir nahmen die der Überschrift. Bestätigen Sie das, oder wählen Sie.',
  'The name or title of {file} says “{names}”. We took {column} as all that this home used. Confirm it, or do not use it.':
    'Name oder Titel von {file} sagt „{names}“. Wir haben {column} als den ganzen Verbrauch dieses Hauses genommen. Bestätigen Sie das, oder verwenden Sie es nicht.',
  '{file} has {names} as well. Such fuel is not compared here, so its heat is in no record. Confirm that it may be left out.':
    '{file} enthält auch {names}. Solcher Brennstoff wird hier nicht verglichen, seine Wärme steht also in keinem Datensatz. Bestätigen Sie, dass er wegbleiben darf.',
  '{column} of {file} says where the energy went, and its name or title ({names}) says otherwise. We took the heading. Confirm it, or choose.':
    '{column} von {file} sagt, wohin die Energie ging, der Name oder Titel ({names}) sagt es anders. Wir nahmen die Überschrift. Bestätigen Sie das, oder wählen Sie.',
  '{column} of {file} does not say where it went. By its name it was sent out, made at home or used by the heat pump. Choose.':
    '{column} von {file} sagt nicht, wohin der Strom ging. Dem Namen nach wurde er eingespeist, im Haus erzeugt oder von der Wärmepumpe verbraucht. Wählen Sie.',
  '{column} of {file} has {count, plural, one {# reading} other {# readings}} below nought. They may be what was sent out into the grid, what was bought, or faults. {said, select, yes {If they are no faults, this file cannot be used: over a day or more the two cannot be told apart. } other {}}Say which.':
    '{column} von {file} hat {count, plural, one {# Messwert} other {# Messwerte}} unter null. Das kann Einspeisung sein oder Bezug, oder es sind Fehler. {said, select, yes {Sind es keine Fehler, lässt sich die Datei nicht nehmen: Über einen Tag oder länger sind Bezug und Einspeisung nicht zu trennen. } other {}}Sagen Sie, was davon.',
  '{file} changes its clocks as in {expectedZone} and not as in {foundZone}, which is taken for the clock of this home. If the home stands elsewhere, set its country in “Heat needed”. Else choose the clock of the file.':
    '{file} stellt die Uhr um wie in {expectedZone} und nicht wie in {foundZone}; das gilt als die Uhr dieses Hauses. Steht das Haus woanders, wählen Sie sein Land unter „Wärmebedarf“. Sonst wählen Sie die Uhr der Datei.',
  'The rows of {file} are seconds apart. We read steps of a minute and longer. Export the file by minutes, half-hours or days.':
    'Die Zeilen in {file} liegen Sekunden auseinander. Wir lesen Schritte von einer Minute und mehr. Exportieren Sie die Datei nach Minuten, halben Stunden oder Tagen.',
  '{at}: {count, plural, one {# time stands} other {# times stand}} there twice with different values, and no column says which is which. Export one meter or direction at a time, or with a column that names it.':
    '{at}: {count, plural, one {# Zeitpunkt steht} other {# Zeitpunkte stehen}} dort doppelt mit verschiedenen Werten, und keine Spalte sagt, welcher was ist. Exportieren Sie einen Zähler oder eine Richtung nach der anderen, oder mit einer Spalte, die sie nennt.',
  '{file} speaks of {found}. Its temperatures may be means of many years, a typical year or a model. Confirm that they were measured on the days beside them, or do not use them.':
    '{file} nennt {found}. Die Temperaturen können Mittel vieler Jahre, ein typisches Jahr oder ein Modell sein. Bestätigen Sie, dass sie an den genannten Tagen gemessen wurden, oder verwenden Sie sie nicht.',
  '{file}: from one day to the next the temperature mostly changes by {words} °C. Real weather mostly changes by one to three. It may be a mean of many years. Confirm that it was measured on those days, or do not use it.':
    '{file}: Von einem Tag zum nächsten ändert sich die Temperatur meist um {words} °C. Bei wirklichem Wetter sind es meist ein bis drei. Es kann ein Mittel vieler Jahre sein. Bestätigen Sie, dass an diesen Tagen gemessen wurde, oder verwenden Sie sie nicht.',
  'By its name or the title of {file}, {column} is the warmest or the coldest of each day. Confirm that it is the mean, or do not use it. A file of daily means would serve.':
    'Nach ihrem Namen oder dem Titel von {file} ist {column} der höchste oder der tiefste Wert jedes Tages. Bestätigen Sie, dass es das Mittel ist, oder verwenden Sie es nicht. Eine Datei mit Tagesmitteln hilft.',
  '{file} has {count} sheets that go on in each other ({names}). They were read as one record.':
    '{file} hat {count} Blätter, die einander fortsetzen ({names}). Sie wurden wie ein Blatt gelesen.',
  '{file} is JSON in which we found no list of readings, or several that may hold the same. Export it as a table (CSV), one energy at a time.':
    '{file} ist JSON, in dem wir keine Liste von Messwerten fanden, oder mehrere, die dasselbe enthalten können. Exportieren Sie es als Tabelle (CSV), eine Energie nach der anderen.',
  '{column} of {file} is the warmest or the coldest of each day, and its mean is not there. Use a file of daily means, or of both.':
    '{column} von {file} ist der höchste oder der tiefste Wert jedes Tages, und das Mittel fehlt. Nehmen Sie eine Datei mit Tagesmitteln oder mit beidem.',
  '{at}: the counter stood above what it shows later ({words}), so a figure is wrong. The higher one was left out. Correct it if you know better.{alike}':
    '{at}: Der Zähler stand über dem, was er später zeigt ({words}), also ist eine Zahl falsch. Die höhere wurde weggelassen. Berichtigen Sie sie, wenn Sie es besser wissen.{alike}',
  '{at}: {found} in {column} was read as year, month and day. Only then are the rows in order, or the years recent enough.':
    '{at}: {found} in {column} wurde als Jahr, Monat und Tag gelesen. Nur so sind die Zeilen geordnet oder die Jahre jung genug.',
  '{at}: {found} in {column} may begin with the day or with the year, and the rows are in order either way. Say which it is.':
    '{at}: {found} in {column} kann mit dem Tag oder mit dem Jahr beginnen, und die Zeilen sind so oder so geordnet. Sagen Sie, was gilt.',
  '{at}: {column} gives back {names}, and no row of the file bears it: none lies in its days, or they used less. Take it off the row that it corrects, in the file, or confirm that it may be left out.{alike}':
    '{at}: {column} gibt {names} zurück, und keine Zeile der Datei trägt das: In ihren Tagen liegt keine, oder sie brauchten weniger. Ziehen Sie es in der Datei von der Zeile ab, die berichtigt wird, oder bestätigen Sie, dass es wegbleiben darf.{alike}',
  '{at} says that {column} comes to {found}, and the rows that were read come to {expectedNames}. A row may be missing or misread. Correct the file, or confirm that the rows read are all.':
    '{at} nennt als Summe von {column} {found}, und die gelesenen Zeilen ergeben {expectedNames}. Eine Zeile kann fehlen oder falsch gelesen sein. Berichtigen Sie die Datei, oder bestätigen Sie, dass die gelesenen Zeilen alle sind.',
  '{at}{when} gives another value for a time that had one, which comes to {energy} in all. We took the later. Correct the file, or confirm that the earlier ones may be left out.':
    '{at}{when} gibt einer Zeit, die schon einen Wert hatte, einen anderen; im Ganzen macht das {energy} aus. Wir haben den späteren genommen. Berichtigen Sie die Datei, oder bestätigen Sie, dass die früheren wegbleiben dürfen.',
  '{at} has nought from {from} to {to}, where every row before has a use. We took it as not filled in yet and left it out. Fill it in, or leave those rows away.':
    '{at} hat null vom {from} bis {to}, wo jede Zeile davor einen Verbrauch hat. Wir haben das als noch nicht ausgefüllt weggelassen. Füllen Sie es aus, oder lassen Sie diese Zeilen weg.',
  '{file} is no record of real days, so it cannot be set beside meter readings. Use a file of measured weather.':
    '{file} ist keine Messung wirklicher Tage und kann deshalb nicht neben Zählerwerten stehen. Nehmen Sie eine Datei mit gemessenem Wetter.',
  '{at} begins rows of several types ({words}), which we do not read. Ask for interval data, or for a table with one reading a row.':
    '{at} beginnt Zeilen mehrerer Arten ({words}), die wir nicht lesen. Bitten Sie um Intervalldaten oder um eine Tabelle mit einem Messwert je Zeile.',
  '{file}: {series} is to be added to what another file has, and no such file is here for its days. It is not used until then. Bring that file. If it is all that the home took, remove it, choose it again and say so.':
    '{file}: {series} kommt zu dem dazu, was eine andere Datei hat, und keine hier hat etwas für diese Tage. Bis dahin zählt das nicht. Bringen Sie diese Datei. Ist es der ganze Verbrauch des Hauses, entfernen Sie es, wählen Sie es noch einmal und sagen Sie es.',
  '{file}: {series} and {names} are of one kind. On {count, plural, one {# day} other {# days}} that both have they differ by {energy}. Two meters of this home are added, and so are two registers of one meter. Where one repeats or holds the other, keep one aside. One that puts the other right counts instead. Choose.':
    '{file}: {series} und {names} sind von einer Art. An {count, plural, one {# Tag} other {# Tagen}}, die beide haben, unterscheiden sie sich um {energy}. Zwei Zähler dieses Hauses werden zusammengezählt, ebenso zwei Zählwerke eines Zählers. Wiederholt oder enthält einer den anderen, so bleibt einer beiseite. Berichtigt einer den anderen, so zählt er stattdessen. Wählen Sie.',
  '{file}: in each of {count, plural, one {# row} other {# rows}} {column} is larger than in the one before, as a counter is. We took each for an amount used. Confirm it, or choose the counter.':
    '{file}: In jeder von {count, plural, one {# Zeile} other {# Zeilen}} ist {column} größer als in der davor, wie bei einem Zählerstand. Wir haben jede für eine verbrauchte Menge genommen. Bestätigen Sie das, oder wählen Sie den Zählerstand.',
  '{file} says that its times are in UTC, but it changes its clocks in spring and autumn as local time does. We took local time. Choose.':
    '{file} nennt ihre Zeiten UTC, stellt aber im Frühling und im Herbst die Uhr um, wie es die Ortszeit tut. Wir nahmen Ortszeit. Bitte wählen.',
  'Every reading in {column} of {file} is below nought, as what is sent out is sometimes written. We took the amounts without the sign.':
    'Jeder Wert in {column} von {file} liegt unter null, wie Eingespeistes manchmal geschrieben wird. Wir nahmen die Mengen ohne Vorzeichen.',
};
