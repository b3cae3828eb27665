import type { Catalogue } from '../say.ts';

/** The guided search for what a bill's difference comes from. */
export const GUIDED_SEARCH: Catalogue = {
  'a reading on the bill that the meter did not show': 'ein Stand auf der Rechnung, den der Zähler nicht gezeigt hat',
  'a meter that counts wrongly': 'ein Zähler, der falsch zählt',
  'weather that we do not know': 'das Wetter, das wir nicht kennen',
  'other electricity on the same meter': 'anderer Strom am selben Zähler',
  'solar panels or a battery': 'eine Solaranlage oder ein Stromspeicher',
  'an electric heater that ran': 'ein Heizstab, der gelaufen ist',
  'water to the radiators hotter than planned': 'ein höherer Vorlauf als geplant',
  'a machine that works less well than it should': 'eine Wärmepumpe, die schlechter arbeitet, als sie sollte',
  'more warmth in the rooms': 'mehr Wärme in den Räumen',
  'more hot water': 'mehr Warmwasser',
  'heating that stayed on in summer': 'eine Heizung, die im Sommer anblieb',
  'less other electricity on the same meter': 'weniger anderer Strom am selben Zähler',
  'a machine that works better than estimated': 'eine Wärmepumpe, die besser arbeitet als geschätzt',
  'less warmth in the rooms': 'weniger Wärme in den Räumen',
  'less hot water': 'weniger Warmwasser',
  'days when nobody was at home': 'Tage, an denen niemand zu Hause war',
  'something else': 'etwas anderes',
  'something at home that we can only ask you about': 'etwas im Haus, nach dem wir nur fragen können',
  '{name}: {chance}.': '{name}: {chance}.',
  'Most of the difference may come from one of these.': 'Eines davon kann den größten Teil des Unterschieds ausmachen.',
  'less likely causes and anything else': 'weniger Wahrscheinliches und alles andere',
  'less than 1 in 20': 'weniger als 1 von 20',
  '{count} in 20': '{count} von 20',
  'Nobody knows yet whether there is a difference that needs a cause.':
    'Noch weiß niemand, ob es eine Abweichung gibt, für die eine Ursache zu suchen wäre.',
  'There is no difference that needs a cause.': 'Es gibt keine Abweichung, für die eine Ursache zu suchen wäre.',
  'Likeliest is something that is not listed here, {other}; of what is listed it is {cause}, {chance}. {open, select, open {The next question would tell more.} other {No question that we have would tell the causes further apart.}}':
    'Am wahrscheinlichsten ist etwas, das hier nicht steht, {other}; von dem, was hier steht: {cause}, {chance}. {open, select, open {Die nächste Frage sagt mehr.} other {Keine unserer Fragen würde die Ursachen weiter trennen.}}',
  'One cause stands out: {cause}, {chance}. It is likely, not proven.':
    'Eine Ursache ragt heraus: {cause}, {chance}. Sie ist wahrscheinlich, nicht bewiesen.',
  'Likeliest is {cause}, {chance}. No question that we have would tell the causes further apart.':
    'Am wahrscheinlichsten ist {cause}, {chance}. Keine unserer Fragen würde die Ursachen weiter trennen.',
  'Likeliest so far is {cause}, {chance}. The next question would tell more.':
    'Am wahrscheinlichsten ist bisher {cause}, {chance}. Die nächste Frage sagt mehr.',
  'Chances among the causes considered, 20 in all. They rest on judgement and on the answers so far; they prove nothing.':
    'Wahrscheinlichkeiten unter den betrachteten Ursachen, zusammen 20. Sie beruhen auf Einschätzung und den bisherigen Antworten und beweisen nichts.',
  'Compare the meter’s reading today with the last reading on the bill, and count the days between.':
    'Vergleichen Sie den heutigen Zählerstand mit dem letzten Stand auf der Rechnung und zählen Sie die Tage dazwischen.',
  'Please read all figures on the meter, and then the last reading printed on your bill.':
    'Bitte lesen Sie alle Ziffern des Zählers ab, dann den letzten Stand auf Ihrer Rechnung.',
  'The reading fits the bill': 'Der Stand passt zur Rechnung',
  'The meter shows less than was billed': 'Der Zähler zeigt weniger, als berechnet wurde',
  'The meter shows more than was billed': 'Der Zähler zeigt mehr, als berechnet wurde',
  'Compare the number of the meter with the number on the bill, and ask whether the meter was changed.':
    'Vergleichen Sie die Zählernummer mit der auf der Rechnung und fragen Sie, ob der Zähler getauscht wurde.',
  'Which number stands on the meter itself, and which meter number stands on the bill?':
    'Welche Nummer steht auf dem Zähler selbst, und welche Zählernummer steht auf der Rechnung?',
  'The same number, no change': 'Dieselbe Nummer, kein Tausch',
  'Another number, or a new meter': 'Eine andere Nummer oder ein neuer Zähler',
  'Run a heater of known power for ten minutes with everything else off. The meter must add a sixth of its kW.':
    'Lassen Sie ein Heizgerät bekannter Leistung zehn Minuten laufen, alles andere aus. Der Zähler muss um ein Sechstel seiner kW steigen.',
  'Please switch off what you can, read the meter, run a plug-in heater for 10 minutes, and read again.':
    'Bitte schalten Sie aus, was Sie können, und lesen Sie den Zähler ab. Lassen Sie ein Heizgerät 10 Minuten laufen und lesen Sie noch einmal ab.',
  'Have the current to the heat pump measured for ten minutes. Its meter must add the same kWh.':
    'Lassen Sie zehn Minuten lang den Strom der Wärmepumpe messen. Ihr Zähler muss um dieselben kWh steigen.',
  'An electrician measures for ten minutes what the heat pump takes. We compare that with its meter.':
    'Ein Elektriker misst zehn Minuten lang, was die Wärmepumpe braucht. Das vergleichen wir mit ihrem Zähler.',
  'It counts what it should': 'Er zählt, was er soll',
  'It counts too much': 'Er zählt zu viel',
  'It counts too little': 'Er zählt zu wenig',
  'Bring in outdoor temperatures of the bill’s days from a place near the home.':
    'Laden Sie Außentemperaturen der Rechnungstage von einem Ort in der Nähe.',
  'We look up how cold it was in those weeks.': 'Wir sehen nach, wie kalt es in diesen Wochen war.',
  'As cold as usual': 'So kalt wie normal',
  'The weather would explain the bill': 'Das Wetter würde die Rechnung erklären',
  'Read the machine’s own meter and the meter of the home over a week, or have a meter fitted on the machine.':
    'Lesen Sie eine Woche lang den eigenen Zähler der Wärmepumpe und den des Hauses ab. Oder lassen Sie einen Zähler an der Wärmepumpe einbauen.',
  'For one week we would like to count the heating apart from everything else.':
    'Eine Woche lang möchten wir die Heizung getrennt von allem anderen zählen.',
  'The machine takes most of it': 'Das meiste nimmt die Wärmepumpe',
  'Other things make the difference': 'Anderes macht den Unterschied',
  'Ask what else hangs on this meter and what is new or gone: a car, a hot tub, a freezer, a heater.':
    'Fragen Sie, was noch an diesem Zähler hängt und was neu ist oder fehlt: Auto, Whirlpool, Gefriertruhe, Heizlüfter.',
  'Is there anything new that runs on electricity, or anything that you no longer use?':
    'Gibt es etwas Neues, das mit Strom läuft, oder etwas, das Sie nicht mehr benutzen?',
  'Nothing has changed': 'Nichts hat sich geändert',
  'Something is new or gone': 'Etwas ist neu oder fehlt',
  'Ask whether there are solar panels or a battery, and since when.':
    'Fragen Sie, ob es eine Solaranlage oder einen Stromspeicher gibt und seit wann.',
  'Do you have solar panels or a battery, and since when?':
    'Haben Sie eine Solaranlage oder einen Stromspeicher, und seit wann?',
  'None, or unchanged': 'Keine, oder unverändert',
  'New, changed or out of order': 'Neu, geändert oder gestört',
  'Read the hours of the backup and immersion heater on the control, twice with a week between.':
    'Lesen Sie an der Regelung die Stunden des Heizstabs ab, zweimal im Abstand einer Woche.',
  'On our next visit we read how long the electric heater has run.':
    'Beim nächsten Besuch lesen wir ab, wie lange der Heizstab gelaufen ist.',
  'Few hours or none': 'Wenige oder keine Stunden',
  'Many hours': 'Viele Stunden',
  'The control does not show it': 'Die Regelung zeigt es nicht',
  'Read flow and outdoor temperature after 15 minutes of running, and compare with the planned heating curve.':
    'Lesen Sie nach 15 Minuten Lauf Vorlauf- und Außentemperatur ab und vergleichen Sie mit der geplanten Heizkurve.',
  'On our next visit we read how hot the heating water is, and whether it needs to be.':
    'Beim nächsten Besuch lesen wir ab, wie heiß das Wasser zu den Heizkörpern ist und ob es das sein muss.',
  'As planned': 'Wie geplant',
  '5 °C or more hotter': '5 °C oder mehr darüber',
  'Cooler than planned': 'Kühler als geplant',
  'Read heat made and electricity used on the heat meter or the display, and divide one by the other.':
    'Lesen Sie am Wärmemengenzähler oder am Display erzeugte Wärme und Strom ab und teilen Sie das eine durch das andere.',
  'On our next visit we read how much heat the machine has made.':
    'Beim nächsten Besuch lesen wir ab, wie viel Wärme die Wärmepumpe erzeugt hat.',
  'The factor is about as estimated': 'Die JAZ ist etwa wie geschätzt',
  'The factor is not as estimated': 'Die JAZ ist anders als geschätzt',
  'Nothing shows the heat': 'Die Wärme wird nirgends gezeigt',
  'Look at brine in and out, filters, flow and pressures, without opening the cooling circuit.':
    'Prüfen Sie Sole ein und aus, Filter, Durchfluss und Drücke, ohne den Kältekreis zu öffnen.',
  'On our next visit we look at the ground loop, the filters and the flow.':
    'Beim nächsten Besuch sehen wir nach Erdkreis, Filtern und Durchfluss.',
  'All in order': 'Alles in Ordnung',
  'Something is not in order': 'Etwas ist nicht in Ordnung',
  'Have a thermometer read in the living room for a week, mornings and evenings.':
    'Lassen Sie eine Woche lang morgens und abends ein Thermometer im Wohnzimmer ablesen.',
  'Could you note for a week, morning and evening, what a thermometer in the living room shows?':
    'Könnten Sie eine Woche lang morgens und abends notieren, was ein Thermometer im Wohnzimmer zeigt?',
  'About as agreed': 'Etwa wie vereinbart',
  '1 °C or more warmer': '1 °C oder mehr wärmer',
  '1 °C or more cooler': '1 °C oder mehr kühler',
  'Ask whether as many people live there as before, and whether baths and showers are the same.':
    'Fragen Sie, ob so viele Personen dort wohnen wie zuvor und ob gleich viel gebadet und geduscht wird.',
  'Are as many people at home as when we did the estimate, with about as many baths and showers?':
    'Sind so viele Personen zu Hause wie bei unserer Schätzung, und wird etwa gleich viel gebadet und geduscht?',
  'As before': 'Wie zuvor',
  Changed: 'Geändert',
  'Ask whether the pipes to the radiators are warm on a warm day, and see how the summer setting stands.':
    'Fragen Sie, ob die Rohre zu den Heizkörpern an einem warmen Tag warm sind, und prüfen Sie den eingestellten Sommerbetrieb.',
  'On warm days, and in summer, are the radiators or the pipes to them warm?':
    'Sind an warmen Tagen und im Sommer die Heizkörper oder die Rohre zu ihnen warm?',
  'Cold: the heating is off': 'Kalt: Die Heizung ist aus',
  'Warm: the heating is on': 'Warm: Die Heizung ist an',
  'Ask whether the home stood empty for some of these days.':
    'Fragen Sie, ob das Haus an einigen dieser Tage leer stand.',
  'Were you away for a week or more in that time?': 'Waren Sie in dieser Zeit eine Woche oder länger verreist?',
  'Somebody was at home': 'Jemand war zu Hause',
  'It stood empty': 'Es stand leer',
  'the household': 'der Haushalt',
  'the installer': 'der Fachbetrieb',
  'an electrician': 'eine Elektrofachkraft',
  'Done by {who}; it takes {days} days.': 'Das macht {who}; es dauert {days} Tage.',
  'Done by {who}, in about {minutes} minutes.': 'Das macht {who}, in etwa {minutes} Minuten.',
  '{name}.': '{name}.',
  '{name}: then likeliest is {cause}, {chance}.': '{name}: Dann ist am wahrscheinlichsten {cause}, {chance}.',
  '{task} {outcome} ({read}).': '{task} {outcome} ({read}).',
  '{task} {outcome}.': '{task} {outcome}.',
  // The screen
  'Guided search': 'Geführte Suche',
  'Likely causes': 'Wahrscheinliche Ursachen',
  'Next question': 'Nächste Frage',
  'Say to the customer: “{words}”': 'Sagen Sie dem Kunden: „{words}“',
  'What was read or told, if you like': 'Was abgelesen oder gesagt wurde, wenn Sie möchten',
  'What came out of it?': 'Was kam heraus?',
  'Answered so far': 'Bisher beantwortet',
  'Remove this answer': 'Diese Antwort entfernen',
  'Or this one': 'Oder diese',
};
