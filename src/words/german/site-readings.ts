import type { Catalogue } from '../say.ts';

/** What was read at the plant, and what it can mean. */
export const SITE_READINGS: Catalogue = {
  'brine coming in': 'Sole am Eintritt',
  'brine in less brine out': 'Abkühlung der Sole',
  'heat taken from the brine': 'der Sole entzogene Wärme',
  'flow less return': 'Vorlauf minus Rücklauf',
  'heat given to the water': 'an das Heizwasser abgegebene Wärme',
  'heat by the water against heat by the brine': 'Wärme im Heizwasser gegen Wärme aus der Sole',
  'heat for each unit of electricity just now (COP)': 'Wärme je Kilowattstunde Strom im Augenblick (COP)',
  'boiling point at the suction pressure': 'Siedepunkt beim Druck der Saugseite',
  'condensing point at the discharge pressure': 'Verflüssigungspunkt beim Druck der Druckseite',
  'brine out less boiling point': 'Soleaustritt minus Siedepunkt',
  'condensing point less flow': 'Verflüssigungspunkt minus Vorlauf',
  'suction gas above its boiling point (superheat)': 'Sauggas über seinem Siedepunkt (Überhitzung)',
  'liquid below its condensing point (subcooling)': 'Flüssigkeit unter ihrem Verflüssigungspunkt (Unterkühlung)',
  'hot gas temperature': 'Heißgastemperatur',
  'discharge pressure over suction pressure': 'Druckverhältnis von Druckseite zu Saugseite',
  'glycol by weight': 'Glykol nach Gewicht',
  'freezing point of the brine': 'Gefrierpunkt der Sole',
  'freezing point below the coldest brine': 'Abstand des Gefrierpunkts zur kältesten Sole',
  'brine in': 'Soleeintritt',
  'brine out': 'Soleaustritt',
  'flow rate of the brine': 'Durchfluss der Sole',
  'coldest brine of the season': 'kälteste Sole der Heizzeit',
  'kind and share of glycol': 'Art und Anteil des Glykols',
  'flow rate of the water': 'Durchfluss des Heizwassers',
  'input power': 'aufgenommene Leistung',
  'suction pressure': 'Druck der Saugseite',
  'discharge pressure': 'Druck der Druckseite',
  'suction pipe temperature': 'Temperatur der Saugleitung',
  'discharge pipe temperature': 'Temperatur der Druckleitung',
  'liquid pipe temperature': 'Temperatur der Flüssigkeitsleitung',
  'no usual band': 'kein üblicher Bereich',
  '{value} or more': '{value} oder mehr',
  '{value} or less': '{value} oder weniger',
  '{quantity}: {found}.': '{quantity}: {found}.',
  '{quantity}: {found}, {standing, select, inside {inside} above {above} other {below}} the usual {band}.':
    '{quantity}: {found}, {standing, select, inside {im} above {über dem} other {unter dem}} üblichen Bereich ({band}).',
  'At these temperatures we expect about {value}, from the rated points of this machine.':
    'Bei diesen Temperaturen sind nach den Nennpunkten dieser Wärmepumpe etwa {value} zu erwarten.',
  'At these temperatures we expect about {value}, from the points of a usual machine.':
    'Bei diesen Temperaturen sind nach den Nennpunkten einer üblichen Wärmepumpe etwa {value} zu erwarten.',
  'We expect about {value}.': 'Zu erwarten sind etwa {value}.',
  'we expect {value}, from its rated points': 'wir erwarten {value}, nach seinen Nennpunkten',
  'we expect {value}, from a usual machine’s points': 'wir erwarten {value}, nach einer üblichen Wärmepumpe',
  'There is too little to judge by yet. Read more at the plant.':
    'Für ein Urteil ist es noch zu wenig. Lesen Sie an der Anlage mehr ab.',
  '{all, plural, one {The one result lies in its usual band} other {All # results lie in their usual band}}. That does not rule out a fault at other times.':
    '{all, plural, one {Das eine Ergebnis liegt im üblichen Bereich} other {Alle # Ergebnisse liegen im üblichen Bereich}}. Einen Fehler zu anderer Zeit schließt das nicht aus.',
  '{outside} of {all} results {outside, plural, one {lies} other {lie}} outside the usual band, and no fault known here shows just this. Read again.':
    '{outside} von {all} Ergebnissen {outside, plural, one {liegt} other {liegen}} außerhalb des üblichen Bereichs, und kein hier bekannter Fehler zeigt genau das. Lesen Sie noch einmal ab.',
  '{outside} of {all} results {outside, plural, one {lies} other {lie}} outside the usual band. These are hints, not a diagnosis.':
    '{outside} von {all} Ergebnissen {outside, plural, one {liegt} other {liegen}} außerhalb des üblichen Bereichs. Das sind Hinweise, keine Diagnose.',
  'Too little to judge by.': 'Zu wenig für ein Urteil.',
  '{count, plural, =0 {Nothing} one {# result} other {# results}} outside the usual band.':
    '{count, plural, =0 {Nichts} one {# Ergebnis} other {# Ergebnisse}} außerhalb des üblichen Bereichs.',
  'COP {cop}. {outside}': 'COP {cop}. {outside}',
  // Causes, and what to look at first
  'The readings may not belong together: taken at different moments, or one meter or sensor is off.':
    'Die Ablesungen gehören vielleicht nicht zusammen: zu verschiedener Zeit abgelesen, oder ein Zähler oder Fühler zeigt falsch.',
  'Let it run steadily for ten minutes and read all again. Check the flow meter and how the sensors sit.':
    'Lassen Sie die Anlage zehn Minuten ruhig laufen und lesen Sie alles neu ab. Prüfen Sie Durchflussmesser und Sitz der Fühler.',
  'Too little brine may be going round: a dirty filter, air in the loop, or the pump set too low.':
    'Vielleicht fließt zu wenig Sole: Filter verschmutzt, Luft im Kreis oder Pumpe zu niedrig eingestellt.',
  'Look at the brine filter, the pump setting and the loop pressure. Listen for air.':
    'Sehen Sie nach Solefilter, Pumpeneinstellung und Druck im Kreis. Horchen Sie auf Luft.',
  'The ground loop may be giving all it can: too small, too hard worked, or at the end of a cold winter.':
    'Der Solekreis gibt vielleicht alles her: zu klein, zu stark beansprucht oder am Ende eines kalten Winters.',
  'Set today’s brine beside last year’s at the same time. Ask about more heating or hot water.':
    'Vergleichen Sie die Sole mit der vom Vorjahr zur gleichen Zeit. Fragen Sie, ob mehr geheizt oder Warmwasser gebraucht wird.',
  'The brine may be too weak and could freeze in the machine, even if it costs nothing yet.':
    'Die Sole ist vielleicht zu schwach und könnte in der Wärmepumpe gefrieren, auch wenn es noch nichts kostet.',
  'Test the brine with a refractometer, twice. Stop the machine if the brine may reach its freezing point.':
    'Prüfen Sie die Sole zweimal mit dem Refraktometer. Halten Sie die Wärmepumpe an, wenn die Sole ihren Gefrierpunkt erreichen kann.',
  'The brine may be stronger than it needs to be. It then carries less heat and is harder to pump.':
    'Die Sole ist vielleicht stärker als nötig. Dann trägt sie weniger Wärme und ist schwerer zu pumpen.',
  'Test the brine with a refractometer, and ask whether the share was given by weight or by volume.':
    'Prüfen Sie die Sole mit dem Refraktometer. Fragen Sie, ob der Anteil nach Gewicht oder nach Volumen angegeben war.',
  'Too little water may be going round: a dirty strainer, closed valves, or the pump set too low.':
    'Vielleicht fließt zu wenig Heizwasser: Schmutzfänger voll, Ventile zu oder Pumpe zu niedrig eingestellt.',
  'Look at the strainer, once shut off and cool, then at valves, thermostats and the pump setting.':
    'Sehen Sie nach dem Schmutzfänger, abgesperrt und abgekühlt, dann nach Ventilen, Thermostaten und Pumpeneinstellung.',
  'More water may be going round than is needed, or the machine may be running at part power.':
    'Vielleicht fließt mehr Heizwasser als nötig, oder die Wärmepumpe läuft mit Teillast.',
  'Check the pump setting and a bypass, and whether the machine was at full power.':
    'Prüfen Sie Pumpeneinstellung und Überströmventil, und ob die Wärmepumpe mit voller Leistung lief.',
  'The water may be hotter than the rooms need. It may also just have been heating the hot water tank.':
    'Das Heizwasser ist vielleicht heißer, als die Räume brauchen. Oder es wurde gerade der Warmwasserspeicher geladen.',
  'Ask whether hot water was being made. Then check the heating curve against the weather outside.':
    'Fragen Sie, ob gerade Warmwasser bereitet wurde. Prüfen Sie dann die Heizkurve am Wetter draußen.',
  'An electric heater may be running beside the machine, or be counted in the input power.':
    'Vielleicht läuft ein Heizstab mit, oder er ist in der aufgenommenen Leistung mitgezählt.',
  'Look at the heater’s hours and its switch in the controls. Measure the machine’s own supply.':
    'Sehen Sie nach den Stunden des Heizstabs und seinem Schalter in der Regelung. Messen Sie die Zuleitung der Wärmepumpe allein.',
  'Check the water flow first. Then compare both sides of the strainer and ask about water treatment.':
    'Prüfen Sie zuerst den Durchfluss. Vergleichen Sie dann beide Seiten des Schmutzfängers und fragen Sie nach der Wasseraufbereitung.',
  'The machine may be short of refrigerant, which can mean a leak.':
    'Der Wärmepumpe fehlt vielleicht Kältemittel, was ein Leck bedeuten kann.',
  'Rule out low brine flow first. Then have a certified person look for traces of oil and test for leaks.':
    'Schließen Sie zuerst zu wenig Sole aus. Lassen Sie dann eine zertifizierte Fachkraft nach Ölspuren und Lecks suchen.',
  'Rule out low brine flow first. Then have a certified person check the valve, its sensor and the filter.':
    'Schließen Sie zuerst zu wenig Sole aus. Lassen Sie dann eine zertifizierte Fachkraft Ventil, Fühler und Filter prüfen.',
  'The expansion valve may be letting too much through. Liquid can then reach the compressor and harm it.':
    'Das Expansionsventil lässt vielleicht zu viel durch. Dann kann Flüssigkeit in den Verdichter gelangen und ihn schädigen.',
  'Check first how the suction sensor sits. Then have a certified person check the valve and its sensor.':
    'Prüfen Sie zuerst den Sitz des Saugfühlers. Lassen Sie dann eine zertifizierte Fachkraft Ventil und Fühler prüfen.',
  'The compressor may be worn. This is seldom so, and all else should be ruled out first.':
    'Der Verdichter ist vielleicht verschlissen. Das ist selten; alles andere sollte zuerst ausgeschlossen sein.',
  'A heating installer may look into this.': 'Das darf ein Heizungsfachbetrieb prüfen.',
  'Only an electrician, or a person competent in electrics, may open this.':
    'Das darf nur eine Elektrofachkraft öffnen.',
  'Only a person certified for refrigerant may open this.':
    'Das darf nur öffnen, wer für Kältemittel zertifiziert ist.',
  'What points to it: {names}.': 'Was dafür spricht: {names}.',
  'What speaks against it: {names}.': 'Was dagegen spricht: {names}.',
  'Not known yet: {names}.': 'Noch nicht bekannt: {names}.',
  'For “{quantity}” we also need: {needs}.': 'Für „{quantity}“ fehlt noch: {needs}.',
  // Cautions
  'Only people certified for it may open, fill or test the refrigerant circuit. Fitting gauges is such work.':
    'Nur wer dafür zertifiziert ist, darf den Kältekreis öffnen, füllen oder prüfen. Manometer anzuschließen gehört dazu.',
  'This refrigerant can burn. Keep sparks and flames away, air the room, and leave it to trained people.':
    'Dieses Kältemittel ist brennbar. Halten Sie Funken und Flammen fern, lüften Sie und überlassen Sie es Geschulten.',
  'Switch off, lock off and prove dead before a panel is opened. Parts can stay charged for minutes.':
    'Vor dem Öffnen freischalten, gegen Einschalten sichern und Spannungsfreiheit prüfen. Teile können noch Minuten geladen sein.',
  'Water and pipes can scald. Let them cool, shut off and let the pressure down before a joint is opened.':
    'An Wasser und Rohren kann man sich verbrühen. Vor dem Öffnen abkühlen lassen, absperren und Druck ablassen.',
  'The hot gas pipe can pass 100 °C. Do not touch it, and clip sensors on only when it is cool.':
    'Die Heißgasleitung kann über 100 °C heiß sein. Nicht berühren; Fühler nur anklemmen, wenn sie kalt ist.',
  'Glycol can harm people, animals and water. Wear gloves and goggles, and never pour it down a drain.':
    'Glykol kann Menschen, Tieren und Gewässern schaden. Tragen Sie Handschuhe und Schutzbrille; nie in den Abfluss gießen.',
  'Never bridge a pressure switch or another safety device.':
    'Überbrücken Sie nie einen Druckschalter oder eine andere Sicherheitseinrichtung.',
  'Local codes, the maker’s instructions and permits come before anything said here.':
    'Örtliche Vorschriften, Herstellerangaben und Genehmigungen gehen allem vor, was hier steht.',
  // Readings that cannot be
  'The brine leaves no colder than it came. Check whether in and out were exchanged.':
    'Die Sole verlässt die Wärmepumpe nicht kälter, als sie kam. Prüfen Sie, ob Eintritt und Austritt vertauscht sind.',
  'The flow is no warmer than the return. Check whether the two were exchanged.':
    'Der Vorlauf ist nicht wärmer als der Rücklauf. Prüfen Sie, ob beide vertauscht sind.',
  'This pressure lies outside our table. Check the unit, and gauge or absolute.':
    'Dieser Druck liegt außerhalb unserer Tabelle. Prüfen Sie die Einheit, und ob Überdruck oder absolut.',
  'The discharge pressure is not above the suction pressure. Check whether they were exchanged.':
    'Der Druck der Druckseite liegt nicht über dem der Saugseite. Prüfen Sie, ob beide vertauscht sind.',
  'The hot gas is no hotter than the suction gas. Check both sensors.':
    'Das Heißgas ist nicht heißer als das Sauggas. Prüfen Sie beide Fühler.',
  'This share of glycol lies outside our table. Check it, and whether it is by weight or volume.':
    'Dieser Glykolanteil liegt außerhalb unserer Tabelle. Prüfen Sie ihn, und ob er nach Gewicht oder Volumen gilt.',
  'This water temperature lies outside our table. Check it.':
    'Diese Wassertemperatur liegt außerhalb unserer Tabelle. Prüfen Sie sie.',
  'A pressure says nothing without its refrigerant. Read the name from the plate.':
    'Ein Druck sagt ohne das Kältemittel nichts. Lesen Sie den Namen vom Typenschild ab.',
  '{field}: {found}; expected {expected}.': '{field}: {found}; erwartet wird: {expected}.',
  'its name, from the plate': 'sein Name, vom Typenschild',
  'above the suction pressure': 'über dem Druck der Saugseite',
  // What is expected of a reading
  'below {celsius, number, ::.##} °C': 'unter {celsius, number, ::.##} °C',
  'above {celsius, number, ::.##} °C': 'über {celsius, number, ::.##} °C',
  'above {celsius, number, ::.##} °C, so that pressure rises':
    'über {celsius, number, ::.##} °C, damit der Druck steigt',
  '{low, number} to {high, number} °C': '{low, number} bis {high, number} °C',
  '{low, number} to {high, number} K': '{low, number} bis {high, number} K',
  'at most {kelvin, number} K over the dew temperature': 'höchstens {kelvin, number} K über der Tautemperatur',
  'a liquid inside the table': 'eine Flüssigkeit, die in der Tabelle steht',
  'above 0, at most 1': 'über 0, höchstens 1',
  'below {cop, number, ::.0} at these temperatures': 'unter {cop, number, ::.0} bei diesen Temperaturen',
  '{low, number, ::.0} to {high, number, ::.0} bar absolute':
    '{low, number, ::.0} bis {high, number, ::.0} bar absolut',
  '{low, number} to {high, number} % by mass': '{low, number} bis {high, number} % nach Gewicht',
  'COP: from the rated points of this machine, brought down to what installed machines reach; its width is a judgement':
    'COP: nach den Nennpunkten dieser Wärmepumpe, gemindert auf das, was eingebaute Wärmepumpen erreichen; die Breite ist eine Einschätzung',
  'COP: from the points of a usual machine, brought down to what installed machines reach; its width is a judgement':
    'COP: nach den Nennpunkten einer üblichen Wärmepumpe, gemindert auf das, was eingebaute Wärmepumpen erreichen; die Breite ist eine Einschätzung',
  // Questions, slips in reading, what comes first
  'compressor current against its usual one': 'Verdichterstrom gegen seinen üblichen',
  'opening of the expansion valve': 'Öffnung des Expansionsventils',
  'at rest: boiling point at the pressure less temperature': 'im Stillstand: Siedepunkt beim Druck minus Temperatur',
  'compressor current': 'Verdichterstrom',
  'usual current': 'üblicher Strom',
  'pressure at rest': 'Druck im Stillstand',
  'temperature at rest': 'Temperatur im Stillstand',
  'Urgent: the brine could freeze in the machine.': 'Dringend: Die Sole könnte in der Wärmepumpe gefrieren.',
  'Urgent: liquid refrigerant may be reaching the compressor.':
    'Dringend: In den Verdichter gelangt vielleicht flüssiges Kältemittel.',
  'Urgent: the hot gas is so hot that it can harm the compressor.':
    'Dringend: Das Heißgas ist so heiß, dass es dem Verdichter schaden kann.',
  '{refused, plural, one {One reading cannot be} other {# readings cannot be}}. Read again before looking for a fault.':
    '{refused, plural, one {Eine Ablesung kann} other {# Ablesungen können}} nicht stimmen. Lesen Sie neu ab, bevor Sie einen Fehler suchen.',
  'readings that do not belong together': 'Ablesungen, die nicht zusammengehören',
  'too little brine going round': 'zu wenig Sole im Umlauf',
  'a ground loop that gives all it can': 'ein Solekreis, der alles hergibt',
  'brine that is too weak': 'zu schwache Sole',
  'brine that is too strong': 'zu starke Sole',
  'too little water going round': 'zu wenig Heizwasser im Umlauf',
  'more water than needed, or part power': 'mehr Heizwasser als nötig, oder Teillast',
  'water hotter than needed': 'Heizwasser heißer als nötig',
  'an electric heater that runs too': 'ein Heizstab, der mitläuft',
  'Heat may be passing badly to the water: scale or sludge in the condenser.':
    'Die Wärme geht vielleicht schlecht ins Heizwasser über: Kalk oder Schlamm im Verflüssiger.',
  'scale or sludge in the condenser': 'Kalk oder Schlamm im Verflüssiger',
  'too little refrigerant': 'zu wenig Kältemittel',
  'Too little liquid may be getting through: a blocked filter, or a valve that sticks shut.':
    'Vielleicht kommt zu wenig Flüssigkeit durch: Filter verstopft, oder ein Ventil klemmt zu.',
  'a blocked filter or valve in the liquid line': 'Filter oder Ventil der Flüssigkeitsleitung verstopft',
  'a valve that lets too much through': 'ein Ventil, das zu viel durchlässt',
  'Check first that it ran at full power. Then have a certified person compare it with the maker’s sheet.':
    'Prüfen Sie zuerst, ob es mit voller Leistung lief. Lassen Sie dann eine zertifizierte Fachkraft mit dem Datenblatt vergleichen.',
  'a worn compressor': 'ein verschlissener Verdichter',
  'A pressure or the refrigerant may have been read or chosen wrongly.':
    'Vielleicht ist ein Druck falsch abgelesen oder das falsche Kältemittel gewählt.',
  'Read the plate for the refrigerant, and the gauge for its unit. A gauge open to the air shows nought.':
    'Lesen Sie das Kältemittel vom Typenschild ab und die Einheit vom Manometer. Ein Manometer an freier Luft zeigt null.',
  'a reading that is wrong': 'eine falsche Ablesung',
  'Liquid refrigerant may be reaching the compressor, which can break it.':
    'In den Verdichter gelangt vielleicht flüssiges Kältemittel, und das kann ihn zerstören.',
  'Check how the suction sensor sits and read again. If it stays, stop the machine and have it looked into.':
    'Prüfen Sie den Sitz des Saugfühlers und lesen Sie neu ab. Bleibt es dabei, halten Sie die Wärmepumpe an und lassen Sie nachsehen.',
  'liquid in the compressor': 'Flüssigkeit im Verdichter',
  'The hot gas may be so hot that oil and compressor suffer.':
    'Das Heißgas ist vielleicht so heiß, dass Öl und Verdichter leiden.',
  'Stop the machine. Let a certified person find out why before it runs again.':
    'Halten Sie die Wärmepumpe an. Eine zertifizierte Fachkraft muss die Ursache finden, bevor sie wieder läuft.',
  'hot gas that is too hot': 'zu heißes Heißgas',
  'Heat may be passing badly from the brine: dirt in the evaporator.':
    'Die Wärme geht vielleicht schlecht aus der Sole über: Schmutz im Verdampfer.',
  'Check the brine flow first. Then look at the brine filter and at how clean the brine is.':
    'Prüfen Sie zuerst den Durchfluss der Sole. Sehen Sie dann nach dem Solefilter und ob die Sole sauber ist.',
  'dirt in the evaporator': 'Schmutz im Verdampfer',
  'Something may be narrowing the pipe between evaporator and compressor.':
    'Vielleicht ist die Leitung zwischen Verdampfer und Verdichter verengt.',
  'Have a certified person compare pressure and temperature on both sides of filters and valves.':
    'Lassen Sie eine zertifizierte Fachkraft Druck und Temperatur vor und hinter Filtern und Ventilen vergleichen.',
  'a narrowed suction line': 'eine verengte Saugleitung',
  'There may be too much refrigerant in the machine.': 'In der Wärmepumpe ist vielleicht zu viel Kältemittel.',
  'Ask who filled it last. Have a certified person weigh it against the plate; nothing may be let off.':
    'Fragen Sie, wer zuletzt gefüllt hat. Eine zertifizierte Fachkraft vergleicht die Füllmenge mit dem Typenschild; abgelassen werden darf nichts.',
  'too much refrigerant': 'zu viel Kältemittel',
  'There may be air or another foreign gas in the refrigerant circuit.':
    'Im Kältekreis ist vielleicht Luft oder ein anderes fremdes Gas.',
  'Ask whether the circuit was opened. Only a certified person may measure at rest and mend it.':
    'Fragen Sie, ob der Kältekreis offen war. Nur eine zertifizierte Fachkraft darf im Stillstand messen und es beheben.',
  'air in the circuit': 'Luft im Kältekreis',
  gauge: 'Überdruck',
  absolute: 'absolut',
  'the refrigerant is {name}': 'das Kältemittel {name} ist',
  'the pressures are {basis}': 'die Drücke {basis} gemeint sind',
  'the pressures are in {unit}': 'die Drücke in {unit} gemeint sind',
  'suction and discharge were exchanged': 'Saug- und Druckseite vertauscht sind',
  'The hot gas fits {names} better, and the pressures fit as well. Read the name on the plate.':
    'Das Heißgas passt besser zu {names}, und die Drücke passen ebenso. Lesen Sie den Namen auf dem Typenschild.',
  'The pressures fit {names} too; only the name on the plate or the hot gas can tell.':
    'Die Drücke passen auch zu {names}; das kann nur der Name auf dem Typenschild oder das Heißgas entscheiden.',
  'A reading may be wrong rather than the machine: all would fit if {meant}.':
    'Vielleicht ist nicht die Wärmepumpe falsch, sondern eine Ablesung: Alles würde passen, wenn {meant}.',
  'Urgent:': 'Dringend:',
  'Before anything else:': 'Vor allem anderen:',
  'Or: {cause}': 'Oder: {cause}',
  'Nothing more to be read would tell these apart; it takes a look inside.':
    'Mit weiteren Ablesungen lässt sich das nicht unterscheiden; dazu muss jemand hineinsehen.',
  'Above the usual: {causes}.': 'Über dem üblichen Bereich: {causes}.',
  'In the usual band: {causes}.': 'Im üblichen Bereich: {causes}.',
  'Below the usual: {causes}.': 'Unter dem üblichen Bereich: {causes}.',
  'To tell these apart, stop the machine, wait until both pressures are even, and read pressure and temperature.':
    'Zum Unterscheiden: Wärmepumpe anhalten, warten, bis beide Drücke gleich sind, dann Druck und Temperatur ablesen.',
  'To tell these apart, read in the controls how far the expansion valve is open.':
    'Zum Unterscheiden: In der Regelung ablesen, wie weit das Expansionsventil offen ist.',
  'To tell these apart, read what “{quantity}” needs.': 'Zum Unterscheiden: ablesen, was für „{quantity}“ nötig ist.',
  'A running machine has more pressure than that. Check the unit, and gauge or absolute.':
    'Eine laufende Wärmepumpe hat mehr Druck. Prüfen Sie die Einheit, und ob Überdruck oder absolut.',
  'This refrigerant cannot condense at such a pressure. Check unit and refrigerant.':
    'Bei diesem Druck kann sich dieses Kältemittel nicht verflüssigen. Prüfen Sie Einheit und Kältemittel.',
  'Refrigerant cannot heat water above its own condensing point. Check the refrigerant, and gauge or absolute.':
    'Kältemittel kann Wasser nicht über seinen Verflüssigungspunkt erwärmen. Prüfen Sie das Kältemittel, und ob Überdruck oder absolut.',
  'Brine cannot boil a refrigerant that is warmer than itself. Check the refrigerant, and gauge or absolute.':
    'Sole kann kein Kältemittel verdampfen, das wärmer ist als sie. Prüfen Sie das Kältemittel, und ob Überdruck oder absolut.',
  'The suction pipe cannot be colder than what boils in it. Check how its sensor sits, and the suction pressure.':
    'Die Saugleitung kann nicht kälter sein als das, was in ihr siedet. Prüfen Sie den Sitz des Fühlers und den Druck der Saugseite.',
  'The liquid cannot be warmer than where it condensed. Check the sensor, and the discharge pressure.':
    'Die Flüssigkeit kann nicht wärmer sein als ihr Verflüssigungspunkt. Prüfen Sie den Fühler und den Druck der Druckseite.',
  'The hot gas cannot be colder than its condensing point. Check the sensor, and the discharge pressure.':
    'Das Heißgas kann nicht kälter sein als sein Verflüssigungspunkt. Prüfen Sie den Fühler und den Druck der Druckseite.',
  'No machine can give so much heat. Check the flow meter and the input power.':
    'So viel Wärme kann keine Wärmepumpe liefern. Prüfen Sie den Durchflussmesser und die aufgenommene Leistung.',
  'This cannot be.': 'Das kann nicht sein.',
  'All would fit if {meant}.': 'Alles würde passen, wenn {meant}.',
  'a condensing point above {celsius, number, ::.0} °C (it would be {found, number, ::.0} °C)':
    'ein Verflüssigungspunkt über {celsius, number, ::.0} °C (er läge bei {found, number, ::.0} °C)',
  'a boiling point below {celsius, number, ::.0} °C (it would be {found, number, ::.0} °C)':
    'ein Siedepunkt unter {celsius, number, ::.0} °C (er läge bei {found, number, ::.0} °C)',
  'Compressor current': 'Verdichterstrom',
  'Usual current': 'Üblicher Strom',
  'Read earlier or from the data sheet, at like temperatures.':
    'Früher abgelesen oder vom Datenblatt, bei ähnlichen Temperaturen.',
  'Expansion valve open': 'Expansionsventil offen',
  'Where the controls show it.': 'Wo die Regelung es zeigt.',
  'Pressure at rest': 'Druck im Stillstand',
  'Machine stopped until both pressures are even.': 'Wärmepumpe angehalten, bis beide Drücke gleich sind.',
  'Temperature at rest': 'Temperatur im Stillstand',
  'Of the pipes, once they no longer change.': 'Der Rohre, wenn sie sich nicht mehr ändert.',
  'What comes first': 'Was vorgeht',
  // Brine over the visits
  '{refused, plural, one {One reading cannot be} other {# readings cannot be}}.':
    '{refused, plural, one {Eine Ablesung kann} other {# Ablesungen können}} nicht stimmen.',
  'The ground may not get back in summer what is taken in winter: the loop may be too small or too hard worked.':
    'Das Erdreich bekommt im Sommer vielleicht nicht zurück, was ihm im Winter entzogen wird: Der Solekreis ist dafür vielleicht zu klein oder zu stark beansprucht.',
  'Ask about more heating or hot water, and read it again in the same week next year.':
    'Fragen Sie, ob mehr geheizt oder Warmwasser gebraucht wird, und lesen Sie nächstes Jahr in der gleichen Woche wieder ab.',
  'At the same time of the year the brine is {fall} colder: {before} on {since}, {now} on {on}.':
    'Zur gleichen Zeit im Jahr ist die Sole um {fall} kälter: {before} am {since}, {now} am {on}.',
  'The brine has fallen by {fall}: {before} on {since}, {now} on {on}.':
    'Die Sole ist um {fall} gefallen: {before} am {since}, {now} am {on}.',
  'It falls every winter. What counts is the same week of another year.':
    'Sie fällt jeden Winter. Entscheidend ist die gleiche Woche eines anderen Jahres.',
  'Brine from visit to visit': 'Sole von Besuch zu Besuch',
  'Brine of {count} visits: it does not fall.': 'Sole bei {count} Besuchen: Sie fällt nicht.',
  'Brine at each visit.': 'Sole bei jedem Besuch.',
  'Brine at each visit. It freezes at {freezing}.': 'Sole bei jedem Besuch. Sie gefriert bei {freezing}.',
  'brine freezes': 'Sole gefriert',
  'Read at the machine in steady running. Brine is usually coldest in February and March.':
    'An der Wärmepumpe im ruhigen Betrieb abgelesen. Am kältesten ist die Sole meist im Februar und März.',
};
