import type { Catalogue } from '../say.ts';

/** What the desk refuses, and what it hands out. */
export const DESK: Catalogue = {
  'The size of the battery': 'Die Größe des Stromspeichers',
  'A battery that holds nothing is left out.': 'Ein Speicher, der nichts fasst, wird weggelassen.',
  'What comes out of the battery': 'Der Wirkungsgrad des Stromspeichers',
  'It is written as a fraction of what goes in, 0.85 for 85 %.': 'Geschrieben als Anteil des Geladenen: 0,85 für 85 %.',
  'What the car is driven': 'Die Fahrleistung des Autos',
  'The share charged at home': 'Der zu Hause geladene Anteil',
  'It is written as a fraction, 0.8 for 80 %.': 'Geschrieben als Anteil: 0,8 für 80 %.',
  'The price of electricity sent out': 'Die Vergütung für eingespeisten Strom',
  'Where nothing is paid for it, write 0.': 'Wird nichts dafür gezahlt, schreiben Sie 0.',
  'The list of solar panels': 'Die Liste der Solarmodule',
  'A home without panels has no “roof” in its file.': 'In der Datei eines Hauses ohne Module fehlt „roof“ ganz.',
  'The peak power of the solar panels': 'Die Spitzenleistung der Solarmodule',
  'A slope without panels is left out. A home has seldom more than 20 kWp.':
    'Eine Fläche ohne Module wird weggelassen. Mehr als 20 kWp hat ein Haus selten.',
  'The direction of the solar panels': 'Die Richtung der Solarmodule',
  'The slope of the solar panels': 'Die Neigung der Solarmodule',
  'The shade on the solar panels': 'Der Schatten auf den Solarmodulen',
  'The light that shade leaves': 'Der Anteil des Lichts trotz Schatten',
  'The first day of the solar panels': 'Der erste Tag der Solarmodule',
  'The power of the battery': 'Die Leistung des Stromspeichers',
  'What the battery draws itself': 'Der Eigenverbrauch des Stromspeichers',
  'A home without an electric car has no “car” in its file.':
    'In der Datei eines Hauses ohne Elektroauto fehlt „car“ ganz.',
  'What the car takes for 100 km': 'Der Verbrauch des Autos auf 100 km',
  'The power of the charger': 'Die Leistung der Ladestation',
  'The time from which the car is plugged in': 'Der Beginn der Ladezeit des Autos',
  'The time until which the car is plugged in': 'Das Ende der Ladezeit des Autos',
  'How much cooler the rooms may be': 'Die erlaubte Abkühlung der Räume',
  'How much warmer the rooms may be': 'Die erlaubte Erwärmung der Räume',
  'It is counted from the usual room temperature, downwards or upwards, and never below 0.':
    'Gezählt von der üblichen Raumtemperatur nach unten oder nach oben, nie unter 0.',
  'The time constant of the home': 'Die Zeitkonstante des Hauses',
  'tariff {name}': 'Tarif {name}',
  '{fileName} has {size}; files up to {limit} are taken.':
    '{fileName} hat {size}; Dateien bis {limit} werden angenommen.',
  'Ten years of half-hours need 5 to 14 MB. Export a shorter span, or only the meter that is wanted.':
    'Zehn Jahre in halben Stunden brauchen 5 bis 14 MB. Exportieren Sie eine kürzere Zeit oder nur den gewünschten Zähler.',
  'Save the picture smaller, or print only the pages of the bill to a new PDF.':
    'Speichern Sie das Bild kleiner oder drucken Sie nur die Seiten der Rechnung in ein neues PDF.',
  'This logo has {size} kB; up to {limit} kB are taken.':
    'Dieses Logo hat {size} kB; bis {limit} kB werden angenommen.',
  'Save it smaller: 800 pixels across are plenty for paper.':
    'Speichern Sie es kleiner: 800 Pixel Breite reichen für Papier gut.',
  'There is no request called “{name}”.': 'Eine Anfrage „{name}“ gibt es nicht.',
  'Stopped. Nothing was stored.': 'Abgebrochen. Nichts wurde gespeichert.',
  '{fileName} is no file of prices and reference values.': '{fileName} ist keine Datei mit Preisen und Richtwerten.',
  '{fileName} is not signed by the makers of this program, or was changed since.':
    '{fileName} ist nicht vom Hersteller dieses Programms signiert oder wurde seither verändert.',
  'Get the file again from where you got Plainwarmth.':
    'Holen Sie die Datei noch einmal von dort, woher Sie Plainwarmth haben.',
  'This program cannot take the values of {fileName}: “{place}” is not in the form that it knows.':
    'Dieses Programm kann die Werte von {fileName} nicht übernehmen: „{place}“ hat nicht die Form, die es kennt.',
  'Install the newest Plainwarmth, which brings its own values.':
    'Installieren Sie das neueste Plainwarmth; es bringt eigene Werte mit.',
  'The values of {fileName} are of {edition}; those in use, of {own}, are as new or newer.':
    'Die Werte von {fileName} sind vom {edition}; die benutzten, vom {own}, sind ebenso neu oder neuer.',
  'Nothing has to be done.': 'Es ist nichts zu tun.',
  // Fields
  'Below 1 a heat pump would give less heat than a plain electric heater; above 8 is far beyond what field trials have measured.':
    'Unter 1 gäbe eine Wärmepumpe weniger Wärme als eine einfache Elektroheizung; über 8 liegt weit jenseits aller Messungen in Häusern.',
  'The name of the household': 'Der Name des Haushalts',
  'The time zone': 'Die Zeitzone',
  'The floor area': 'Die Wohnfläche',
  'The number of people': 'Die Zahl der Personen',
  'The postcode': 'Die Postleitzahl',
  'The climate region': 'Die Klimaregion',
  'The present heating': 'Die jetzige Heizung',
  'The efficiency of the present heating': 'Der Nutzungsgrad der jetzigen Heizung',
  'It is written as a fraction, 0.84 for 84 %. No boiler gives out more than 110 % of the energy in its fuel.':
    'Er wird als Bruchteil geschrieben, 0.84 für 84 %. Keine Heizung gibt mehr als 110 % der Energie ihres Brennstoffs ab.',
  'The heat loss': 'Die Heizlast',
  'Every home loses heat in winter; without a figure the field stays empty.':
    'Jedes Haus verliert im Winter Wärme; ohne Zahl bleibt das Feld leer.',
  'The outdoor temperature of the heat loss': 'Die Außentemperatur der Heizlast',
  'The room temperature': 'Die Raumtemperatur',
  'The base temperature': 'Die Heizgrenze',
  'The certificate’s figure for heating the rooms': 'Die Zahl des Energieausweises für die Räume',
  'The certificate’s figure for hot water': 'Die Zahl des Energieausweises für Warmwasser',
  'The hot water a day': 'Das Warmwasser am Tag',
  'The hot water temperature': 'Die Warmwassertemperatur',
  'The size of the cylinder': 'Die Größe des Speichers',
  'The heat lost from the cylinder': 'Der Wärmeverlust des Speichers',
  'The source of the heat pump': 'Die Quelle der Wärmepumpe',
  'The seasonal factor for heating the rooms': 'Die JAZ für die Räume',
  'The seasonal factor for hot water': 'Die JAZ für Warmwasser',
  'The flow temperature': 'Die Vorlauftemperatur',
  'The share of the backup heater': 'Der Anteil des Heizstabs',
  'The kWh on the bill': 'Der Verbrauch auf der Rechnung',
  'The other electricity': 'Der andere Strom',
  'The unit price': 'Der Arbeitspreis',
  'The file': 'Die Datei',
  'The field {field}': 'Das Feld {field}',
  // What a field holds, and what it must
  missing: 'nicht angegeben',
  empty: 'leer',
  '“{text}”': '„{text}“',
  'an empty list': 'eine leere Liste',
  'a list': 'eine Liste',
  'a group of fields': 'eine Gruppe von Feldern',
  '{name} is {found}{unit}; it must be {expected}.': '{name} ist {found}{unit}; verlangt ist: {expected}.',
  '“{key}” is not a field that is known here.': '„{key}“ ist hier kein bekanntes Feld.',
  '“{key}” is not a field that is known here. Is “{nearest}” meant?':
    '„{key}“ ist hier kein bekanntes Feld. Ist „{nearest}“ gemeint?',
  'Correct the spelling or take the field out.': 'Berichtigen Sie die Schreibweise, oder nehmen Sie das Feld heraus.',
  'the request': 'die Anfrage',
  'Fill it in.': 'Füllen Sie es aus.',
  'Correct it, or leave it empty if it may stay unknown.':
    'Berichtigen Sie es, oder lassen Sie es leer, wenn es unbekannt bleiben darf.',
  'filled in': 'eine Angabe',
  text: 'Text',
  'an id that no tariff before it has': 'eine Kennung, die kein Tarif davor hat',
  'a name that no offer before it has': 'ein Name, den kein Angebot davor hat',
  'a day of the calendar from 1900 to 2199': 'ein Tag des Kalenders von 1900 bis 2199',
  'a date written as year-month-day': 'ein Datum, geschrieben als Jahr-Monat-Tag',
  'a time written as 07:30': 'eine Uhrzeit, geschrieben wie 07:30',
  'the name of a time zone, such as Europe/London': 'der Name einer Zeitzone, etwa Europe/London',
  'the name of a file beside the household file': 'der Name einer Datei neben der Haushaltsdatei',
  'written in the household file': 'in der Haushaltsdatei angegeben',
  // What is not there any more
  'This household is not there any more.': 'Diesen Haushalt gibt es nicht mehr.',
  'This import is not there any more.': 'Diesen Import gibt es nicht mehr.',
  'This estimate is no longer there.': 'Diese Kostenschätzung gibt es nicht mehr.',
  'This series of readings is not there any more.': 'Diese Messreihe gibt es nicht mehr.',
  'Go back to the list of households; it may have been erased in the meantime.':
    'Gehen Sie zurück zur Liste der Haushalte; vielleicht wurde inzwischen gelöscht.',
  'This bill check is not there any more.': 'Diese Rechnungsprüfung gibt es nicht mehr.',
  'Check the bill again.': 'Prüfen Sie die Rechnung noch einmal.',
  '{fileName} could not be opened.': '{fileName} ließ sich nicht öffnen.',
  'Of a folder choose the files in it. A file that was moved or changed has to be chosen again.':
    'Wählen Sie aus einem Ordner die Dateien darin. Eine verschobene oder geänderte Datei muss neu gewählt werden.',
  'This file is no longer here; files wait for two hours only.':
    'Diese Datei ist nicht mehr da; Dateien warten hier nur zwei Stunden.',
  'Choose the file again.': 'Wählen Sie die Datei noch einmal.',
  'Choose the file again, and answer there.': 'Wählen Sie die Datei noch einmal, und antworten Sie dort.',
  // Household files
  'The household file names {fileName}, which does not lie beside it.':
    'Die Haushaltsdatei nennt {fileName}, doch diese Datei liegt nicht daneben.',
  '{fileName} is named as a page of a bill, and is neither a PDF nor a picture.':
    '{fileName} ist als Seite einer Rechnung genannt und ist weder PDF noch Bild.',
  'Name it as a file of its own.': 'Nennen Sie sie als eigene Datei.',
  'Put the file into the same folder, or correct its name.':
    'Legen Sie die Datei in denselben Ordner, oder berichtigen Sie ihren Namen.',
  '{fileName} holds exactly the same as {earlier}, so it would count twice.':
    '{fileName} enthält genau dasselbe wie {earlier} und würde doppelt zählen.',
  'Take one of the two out of the household file.': 'Nehmen Sie eine der beiden aus der Haushaltsdatei.',
  'What the tariff before would have cost is not known, so what the change did cannot be said.':
    'Was der alte Tarif gekostet hätte, ist nicht bekannt; darum lässt sich nicht sagen, was der Wechsel bewirkt hat.',
  'Type the price per kWh on the tariff before, or keep both tariffs with this home.':
    'Tragen Sie den Preis je kWh im alten Tarif ein, oder speichern Sie beide Tarife zu diesem Haushalt.',
  'The price of the bill is not given, and no tariff of the household says it for these days.':
    'Der Preis der Rechnung fehlt, und kein Tarif des Haushalts nennt ihn für diese Tage.',
  'Write the price per kWh of the bill, VAT included, or what it charges in all as “totalPence”.':
    'Tragen Sie den Preis je kWh der Rechnung mit Mehrwertsteuer ein, oder ihren ganzen Betrag als „totalPence“.',
  'The kWh bought from {from} to {to} are not given, and no readings of the heat pump cover all those days.':
    'Der Verbrauch von {from} bis {to} ist nicht angegeben, und keine Messwerte der Wärmepumpe decken alle diese Tage.',
  'Write the kWh of the bill, or name a file with the heat pump’s own readings for those days.':
    'Tragen Sie den Verbrauch der Rechnung ein, oder nennen Sie eine Datei mit Messwerten der Wärmepumpe für diese Tage.',
  '{fileName} is not a household file.': '{fileName} ist keine Haushaltsdatei.',
  'Open the household first: bills and readings are given there. Here choose its exported JSON file.':
    'Öffnen Sie zuerst den Haushalt: Rechnungen und Messwerte gehören dorthin. Wählen Sie hier seine exportierte JSON-Datei.',
  'Choose the JSON file that was exported or written for the household.':
    'Wählen Sie die JSON-Datei, die für den Haushalt exportiert oder geschrieben wurde.',
  '{fileName} has lists or groups in more than {most} others, so it cannot be a household file.':
    'In {fileName} stecken Listen oder Gruppen in mehr als {most} anderen, es kann also keine Haushaltsdatei sein.',
  '{fileName} is not a whole JSON file: {message}.': '{fileName} ist keine vollständige JSON-Datei: {message}.',
  'It may have been cut off on the way. Export it again, or correct it at the place named.':
    'Vielleicht wurde sie unterwegs abgeschnitten. Exportieren Sie sie neu, oder berichtigen Sie die genannte Stelle.',
  '{fileName} was written by a newer Plainwarmth: version {version} of the file, and this one reads version {newest}.':
    '{fileName} stammt von einem neueren Plainwarmth: Version {version} der Datei, dieses liest Version {newest}.',
  'Bring this Plainwarmth up to date, or export the file again from the older one.':
    'Bringen Sie dieses Plainwarmth auf den neuesten Stand, oder exportieren Sie die Datei aus dem älteren.',
  'The parts of {fileName} do not fit together: something in “{part}” stands twice or belongs to a part that is not in the file.':
    'Die Teile von {fileName} passen nicht zusammen: Etwas in „{part}“ steht zweimal da oder gehört zu einem Teil, der fehlt.',
  'Export the household again where it came from.': 'Exportieren Sie den Haushalt dort, woher er kam, noch einmal.',
  'The file {rawName} inside {fileName} is not the one that was imported: its hash differs.':
    'Die Datei {rawName} in {fileName} ist nicht die, die importiert wurde: Ihre Prüfsumme weicht ab.',
  // Requests
  '{name} was saved elsewhere after it was opened here, so this change was not stored over it.':
    '{name} wurde anderswo gespeichert, nachdem es hier geöffnet war. Diese Änderung wurde nicht darübergeschrieben.',
  'Open the household again and make the change once more.':
    'Öffnen Sie den Haushalt neu und machen Sie die Änderung noch einmal.',
  'The name typed is not the name of this household, so nothing was erased.':
    'Der eingegebene Name ist nicht der dieses Haushalts. Nichts wurde gelöscht.',
  'the name': 'der Name',
  'Type {name} to erase it with all its bills, readings and estimates.':
    'Geben Sie {name} ein, um den Haushalt mit allen Rechnungen, Messwerten und Kostenschätzungen zu löschen.',
  'Exactly these figures have been typed for this household before.':
    'Genau diese Zahlen wurden für diesen Haushalt schon eingegeben.',
  'Change the name or a figure if they are meant to count twice.':
    'Ändern Sie den Namen oder eine Zahl, wenn sie doppelt zählen sollen.',
  'row {row}': 'Zeile {row}',
  'The period from {from} to {to} has no days; the second date is the first day after it.':
    'Die Zeit von {from} bis {to} hat keine Tage; das zweite Datum ist der erste Tag danach.',
  'Correct one of the two dates.': 'Berichtigen Sie eines der beiden Daten.',
  'The days from {from} on would count twice: they are in the period from {earlier} to {earlierEnd} and in the one from {from} to {to}.':
    'Die Tage ab {from} würden doppelt zählen: Sie liegen in der Zeit von {earlier} bis {earlierEnd} und in der von {from} bis {to}.',
  'The offer was taken on {date}, and that day has not come yet.':
    'Das Angebot wurde laut Datei am {date} angenommen; dieser Tag liegt noch in der Zukunft.',
  'Correct the date.': 'Berichtigen Sie das Datum.',
  'Correct the dates. The end of a period is the first day after it.':
    'Berichtigen Sie die Daten. Das Ende einer Zeit ist der erste Tag danach.',
  '{file} and {count} others': '{file} und {count} andere',
  'Settle this first.': 'Klären Sie das zuerst.',
  'Nothing is known yet of how much heat this home needs, so there can be no written estimate.':
    'Noch ist nicht bekannt, wie viel Wärme dieses Haus braucht. Darum ist noch keine Kostenschätzung möglich.',
  'Import bills or readings, or give the heat loss, the figure of the certificate, or floor area and age.':
    'Importieren Sie Rechnungen oder Messwerte. Oder nennen Sie Heizlast, Energieausweis oder Wohnfläche und Alter.',
  'column {column}': 'Spalte {column}',
  'Nothing in {fileName} could be read as readings, bills, weather or a tariff.':
    'Nichts in {fileName} ließ sich als Messwerte, Rechnungen, Wetter oder Tarif lesen.',
  'Look at the columns in the preview, and choose the type of file, the unit or the columns there.':
    'Sehen Sie in der Vorschau die Spalten an und wählen Sie dort Art, Einheit oder Spalten.',
  // Documents and logos
  '{name}, letter of {date}': '{name}, Brief vom {date}',
  'No browser that can write a PDF was found on this computer.':
    'Auf diesem Computer wurde kein Browser gefunden, der PDF schreiben kann.',
  'Save the document as HTML instead, open it in a browser and print it from there.':
    'Speichern Sie das Dokument als HTML, öffnen Sie es in einem Browser und drucken Sie von dort.',
  'This logo is a drawing (SVG), which can carry programs; only PNG and JPEG pictures are taken.':
    'Dieses Logo ist eine Zeichnung (SVG), die Programme enthalten kann; nur PNG und JPEG werden angenommen.',
  'This logo is neither a PNG nor a JPEG picture.': 'Dieses Logo ist weder PNG noch JPEG.',
  'Save the logo as PNG and choose that file.': 'Speichern Sie das Logo als PNG und wählen Sie diese Datei.',
  'This logo is {width} by {height} pixels; up to {most} a side are taken.':
    'Dieses Logo hat {width} mal {height} Pixel; bis {most} je Seite werden angenommen.',
  // The store
  'The data in {path} is open in another Plainwarmth.':
    'Die Daten in {path} sind in einem anderen Plainwarmth geöffnet.',
  'Close the other one first, or start this one with another data folder (--data DIR).':
    'Schließen Sie zuerst das andere, oder starten Sie dieses mit einem anderen Datenordner (--data DIR).',
  'The data in {path} was written by a newer Plainwarmth (version {found} of the file; this one knows {expected}).':
    'Die Daten in {path} stammen von einem neueren Plainwarmth (Version {found} der Datei; dieses kennt {expected}).',
  'Plainwarmth needs Node 22.15 or newer; this is Node {version}. The data was not touched.':
    'Plainwarmth braucht Node 22.15 oder neuer; hier läuft Node {version}. An den Daten wurde nichts geändert.',
  'Start it from its package, which brings the one that it needs.':
    'Starten Sie es aus seinem Paket; es bringt das nötige mit.',
  'Start the newer Plainwarmth. The file was not touched.':
    'Starten Sie das neuere Plainwarmth. Die Datei wurde nicht angerührt.',
  'The same file has been imported again since, so that it would count twice.':
    'Dieselbe Datei wurde seither noch einmal importiert und würde doppelt zählen.',
  'Remove the newer import first.': 'Entfernen Sie zuerst den neueren Import.',
  '{fileName} was cut into days by the clock of {zone}; the home now goes by {zoneOfHome}.':
    'Die Tage von {fileName} sind nach der Uhr von {zone} geschnitten; das Haus geht jetzt nach {zoneOfHome}.',
  'Choose the file again, or set the clock of the home back in “Heat needed”.':
    'Wählen Sie die Datei noch einmal, oder stellen Sie die Uhr des Hauses unter „Wärmebedarf“ zurück.',
  'The data file {path} cannot be opened or written.': 'Die Datendatei {path} lässt sich nicht öffnen oder schreiben.',
  'Look whether the folder exists, is yours to write to and has room left.':
    'Prüfen Sie, ob es den Ordner gibt, ob Sie darin schreiben dürfen und ob Platz frei ist.',
  'Plainwarmth itself failed: {detail}': 'Plainwarmth selbst ist gescheitert: {detail}',
  'What was saved before is safe. Try again; if it fails again, report it with this sentence.':
    'Was vorher gespeichert war, ist sicher. Versuchen Sie es noch einmal; scheitert es wieder, melden Sie es mit diesem Satz.',
  '{name}, working of estimate {number}': '{name}, Berechnung zur Kostenschätzung {number}',
  '{name}, estimate {number}': '{name}, Kostenschätzung {number}',
};
