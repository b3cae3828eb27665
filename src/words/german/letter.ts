import type { Catalogue } from '../say.ts';

/** The two papers of a bill check: the household's letter and the installer's sheet. */
export const LETTER: Catalogue = {
  'Dear {to},': 'Guten Tag {to},',
  'Your electricity bill, {days}': 'Ihre Stromrechnung, {days}',
  'Thank you for telling us about your bill. We put it beside the written estimate of {date} that you have.':
    'Danke, dass Sie uns Ihre Rechnung gezeigt haben. Wir haben sie neben unsere Kostenschätzung vom {date} gelegt.',
  'A year’s cost is not spread evenly. In a usual year these days are {season, select, cold {colder} other {milder}} than the others. They cost about {amount} then, where an even share is {slice}.':
    'Die Kosten eines Jahres fallen nicht gleichmäßig an. In einem normalen Jahr sind diese Tage {season, select, cold {kälter} other {milder}} als die anderen. Sie kosten dann etwa {amount}, bei gleichen Teilen wären es {slice}.',
  'After that the bill is about {amount} {way, select, more {more} other {less}} than expected.':
    'Danach ist die Rechnung noch etwa {amount} {way, select, more {höher} other {niedriger}} als erwartet.',
  'What your meter shows may explain much of it.': 'Was Ihr Zähler zeigt, erklärt vielleicht viel davon.',
  'We do not know yet why.': 'Warum, wissen wir noch nicht.',
  'In the days of this bill it took about {units}, for about {amount}.':
    'In den Tagen dieser Rechnung nahm es etwa {units}, für etwa {amount}.',
  'First of all, from our visit on {date}. {danger} Please ring us today, so that we can come.':
    'Zuerst das, was wir am {date} bei Ihnen gesehen haben. {danger} Bitte rufen Sie uns noch heute an, damit wir kommen können.',
  'Together {parts} {way, select, added {added} other {took away}} about {amount}.':
    'Zusammen {way, select, added {kamen} other {fielen}} durch {parts} etwa {amount} {way, select, added {hinzu} other {weg}}.',
  'After that the bill is about {amount} {way, select, more {more} other {less}} than expected. So much differs from one home to another, and from year to year.':
    'Danach ist die Rechnung noch etwa {amount} {way, select, more {höher} other {niedriger}} als erwartet. So viel macht schon der Unterschied von Haus zu Haus und von Jahr zu Jahr aus.',
  'We have no readings of the meter for the days of this bill.':
    'Für die Tage dieser Rechnung haben wir keine Messwerte des Zählers.',
  'Our readings of the meter cover {daysRead} of the bill’s {days} days.':
    'Unsere Messwerte des Zählers reichen für {daysRead} der {days} Tage der Rechnung.',
  'Please ask your supplier for the meter’s readings of all the days of the bill, and send them to us.':
    'Bitte fragen Sie Ihren Versorger nach den Messwerten des Zählers für alle Tage der Rechnung und schicken Sie sie uns.',
  'Please look on a bill from before the heat pump: how many kWh of electricity did the home use?':
    'Bitte sehen Sie auf einer Rechnung aus der Zeit vor der Wärmepumpe nach: Wie viele kWh Strom brauchte das Haus?',
  'We take off what else the home used, and compare again.':
    'Wir ziehen ab, was das Haus sonst brauchte, und vergleichen noch einmal.',
  'We come and see to what cannot wait at the machine.':
    'Wir kommen und kümmern uns um das, was an der Wärmepumpe nicht warten kann.',
  'We are {sure}.': 'Das ist {sure}.',
  'Only the heat pump’s part of your bill is compared: {part} of {all}. The rest went into other things at home.':
    'Verglichen wird nur der Anteil der Wärmepumpe an Ihrer Rechnung: {part} von {all}. Der Rest ging an anderes im Haus.',
  'This is the heat pump alone.': 'Das ist nur die Wärmepumpe.',
  'This is the rest of the home, without the heat pump.': 'Das ist das übrige Haus ohne die Wärmepumpe.',
  'We cannot tell apart yet: {parts}.': 'Noch nicht zu trennen sind: {parts}.',
  'We see why the electric heater came on, and correct it if you wish.':
    'Wir sehen nach, warum der Heizstab anging, und stellen es richtig, wenn Sie möchten.',
  'We write again, with what we have learned by then.': 'Wir schreiben wieder, mit dem, was wir bis dahin wissen.',
  'Please read all figures on the meter, write down the day, and ask your supplier to check the bill.':
    'Bitte lesen Sie alle Zahlen am Zähler ab, schreiben Sie den Tag dazu und bitten Sie Ihren Versorger, die Rechnung zu prüfen.',
  'About {amount} is left for what else the home used, and for any difference of the heating.':
    'Etwa {amount} bleiben für den übrigen Strom des Haushalts und für einen Unterschied der Heizung.',
  'Nothing needs to be done. Please read the meter each month.':
    'Es ist nichts zu tun. Bitte lesen Sie jeden Monat den Zähler ab.',
  You: 'Sie',
  We: 'Wir',
  Who: 'Wer',
  What: 'Was',
  'By when': 'Bis wann',
  'from now on': 'von jetzt an',
  'Please leave the machine as it is set, and do not open it. It holds pressure, hot water and live wires.':
    'Bitte lassen Sie die Wärmepumpe eingestellt, wie sie ist, und öffnen Sie sie nicht. Sie steht unter Druck, enthält heißes Wasser und führt Spannung.',
  'For anything that is not clear, ring {name} on {telephone}. Ring at once if the rooms stay cold or the hot water runs out.':
    'Ist etwas unklar, rufen Sie {name} an, Telefon {telephone}. Bleiben die Räume kalt oder geht das warme Wasser aus, rufen Sie sofort an.',
  'With kind regards': 'Mit freundlichen Grüßen',
  'Read the meter on the first day of each month and write it here. Ring us if a month takes more than the last column says.':
    'Lesen Sie am Ersten jedes Monats den Zähler ab und schreiben Sie es hier auf. Rufen Sie uns an, wenn ein Monat mehr braucht, als in der letzten Spalte steht.',
  'These are the kWh of a normal year for the whole home. About {other} a month go into other things, {told, select, told {as we took for this bill} before {as in the records from before} other {as is usual}}. In a cold month it may be more.':
    'Die Werte sind die eines normalen Jahres für das ganze Haus. Davon sind etwa {other} im Monat anderer Strom, {told, select, told {wie für diese Rechnung angenommen} before {wie in den Daten von vorher} other {wie es üblich ist}}. In einem kalten Monat kann es mehr sein.',
  'These are the kWh of a normal year. In a cold month it may be more. {often}':
    'Die Werte sind die eines normalen Jahres. In einem kalten Monat kann es mehr sein. {often}',
  'Once a week: the outdoor temperature, and how hot the water to the radiators is at that hour.':
    'Einmal in der Woche: die Außentemperatur und wie heiß das Wasser zu den Heizkörpern dann ist.',
  'Once a month: the hours of the electric heater, if the control shows them.':
    'Einmal im Monat: die Stunden des Heizstabs, wenn die Regelung sie zeigt.',
  'Once a month: the heat made, from the heat meter or the machine’s own display.':
    'Einmal im Monat: die erzeugte Wärme, vom Wärmemengenzähler oder der Anzeige der Wärmepumpe.',
  'On the day itself: any change of settings, people staying, or a window left open for long.':
    'Am selben Tag: jede geänderte Einstellung, Besuch über Nacht oder ein lange offenes Fenster.',
  'Letter of {date} · {name}': 'Brief vom {date} · {name}',
  // The installer's sheet
  '{name}: working of a bill check, written estimate {number}':
    '{name}: Rechenweg einer Rechnungsprüfung, Kostenschätzung {number}',
  'Installer’s sheet of {date} · written estimate {number} · {name}':
    'Blatt des Fachbetriebs vom {date} · Kostenschätzung {number} · {name}',
  '{name}: written estimate {number} of {date}.': '{name}: Kostenschätzung {number} vom {date}.',
  // The buttons
  'Write the letter': 'Brief schreiben',
  'The letter as HTML': 'Brief als HTML',
  'Installer’s sheet': 'Blatt für den Fachbetrieb',
  'The sheet as HTML': 'Blatt als HTML',
  'Names in the letter': 'Namen im Brief',
  'Before the letter is written': 'Bevor der Brief geschrieben wird',
  'Whom the letter greets, such as Mrs Miller': 'Wen der Brief begrüßt, etwa Frau Müller',
  'Whom they may ring': 'Wen der Haushalt anrufen kann',
  'On which telephone number': 'Unter welcher Telefonnummer',
  'Take “{text}”': '„{text}“ übernehmen',
  'Write the letter now': 'Jetzt schreiben',
  'Not now': 'Nicht jetzt',
  'The letter needs a name to greet, such as Mrs Miller.':
    'Der Brief braucht einen Namen für die Anrede, etwa Frau Müller.',
  'The letter needs the name of somebody whom the household may ring.':
    'Der Brief braucht den Namen von jemandem, den der Haushalt anrufen kann.',
  'The letter needs a telephone number on which to ring.': 'Der Brief braucht eine Telefonnummer für Rückfragen.',
  'Type it beside the letter’s button, or write “{key}” under “letter” in the household file.':
    'Geben Sie es neben dem Knopf für den Brief ein, oder schreiben Sie „{key}“ unter „letter“ in die Haushaltsdatei.',
  '{name}, installer’s sheet of {date}': '{name}, Blatt des Fachbetriebs vom {date}',
};
