import type { Catalogue } from '../say.ts';

/** What customers ask, and the answers. */
export const ASKED: Catalogue = {
  'Will it be warm enough?': 'Wird es warm genug?',
  'Looked up on {date}: old. Look it up again before you rely on it.':
    'Nachgeschlagen am {date}: veraltet. Schlagen Sie es noch einmal nach.',
  'Looked up on {date}.': 'Nachgeschlagen am {date}.',
  'Worked out on {date}.': 'Berechnet am {date}.',
  'Our own assumption of {date}, not checked.': 'Unsere eigene Annahme vom {date}, nicht nachgeschlagen.',
  'Yes, if it can give {kW} kW at {outdoor} outside, and the rooms can take that up.':
    'Ja, wenn die Wärmepumpe bei {outdoor} draußen {kW} kW liefert und die Räume das aufnehmen.',
  'Yes, if the machine and the rooms are sized for the coldest day of your area.':
    'Ja, wenn Wärmepumpe und Räume auf den kältesten Tag Ihrer Gegend ausgelegt sind.',
  'In a German trial of 56 older homes, heat pumps gave the heat that was wanted.':
    'In einem Feldtest mit 56 älteren Häusern lieferten Wärmepumpen die gewünschte Wärme.',
  'Heat loss room by room, and what the machine gives on the coldest day.':
    'Heizlast Raum für Raum und die Leistung der Wärmepumpe am kältesten Tag.',
  'A room temperature on days colder than that.': 'Eine Raumtemperatur an Tagen, die noch kälter sind.',
  'Is the floor heating good enough?': 'Reicht die Fußbodenheizung?',
  'Floor heating works with cool water, here {flow} on the coldest day.':
    'Eine Fußbodenheizung kommt mit kühlem Wasser aus, hier Vorlauf {flow} am kältesten Tag.',
  'Each room is checked before anything is changed.': 'Jeder Raum wird geprüft, bevor etwas geändert wird.',
  'Pipe spacing and heat loss of each room.': 'Rohrabstand und Heizlast jedes Raums.',
  'That no room needs more, before each is checked.': 'Dass kein Raum mehr braucht, bevor jeder geprüft ist.',
  'Do I need new radiators?': 'Brauche ich neue Heizkörper?',
  'At a flow of {flow} a radiator gives about {share} of the heat on its label.':
    'Bei Vorlauf {flow} gibt ein Heizkörper etwa {share} seiner Nennleistung.',
  'So each room is checked, and some may need a larger one.':
    'Darum wird jeder Raum geprüft. Mancher braucht vielleicht einen größeren.',
  'Watts on each label, heat loss of each room, flow and return temperature.':
    'Nennleistung jedes Heizkörpers, Heizlast jedes Raums, Vorlauf und Rücklauf.',
  '“No new radiators” before each room is checked.': '„Keine neuen Heizkörper“, bevor jeder Raum geprüft ist.',
  'Is there enough hot water?': 'Reicht das Warmwasser?',
  'How long it takes to heat depends on the machine.': 'Wie lange das Aufheizen dauert, hängt von der Wärmepumpe ab.',
  'Size of the tank, its temperature, and what the machine gives for hot water.':
    'Größe und Temperatur des Speichers, Leistung der Wärmepumpe für Warmwasser.',
  'Endless hot water, or a time for a half-full tank.':
    'Endloses Warmwasser oder eine Zeit für den halb vollen Speicher.',
  'Water above about 50 °C scalds. A mixing valve protects children and old people.':
    'Wasser über etwa 50 °C verbrüht. Ein Mischventil schützt Kinder und alte Menschen.',
  'Is the water safe from legionella?': 'Ist das Wasser sicher vor Legionellen?',
  'Germs grow in still, lukewarm water, so the tank must get hot enough for long enough.':
    'Keime wachsen in stehendem, lauwarmem Wasser. Der Speicher muss lange genug heiß genug werden.',
  'The British safety body says: store at 60 °C, and 50 °C at the tap within a minute.':
    'Die britische Behörde sagt: 60 °C im Speicher, nach einer Minute 50 °C an der Zapfstelle.',
  'Temperature of the tank, the weekly heating, and who in the home is at risk.':
    'Temperatur des Speichers, wöchentliches Aufheizen und wer im Haus gefährdet ist.',
  'That there is no risk.': 'Dass es kein Risiko gibt.',
  'Water at 60 °C scalds. A mixing valve protects children and old people.':
    '60 °C heißes Wasser verbrüht. Ein Mischventil schützt Kinder und alte Menschen.',
  'How loud is it?': 'Wie laut ist sie?',
  'The machine stands indoors and has no fan outside.':
    'Die Wärmepumpe steht im Haus und hat draußen keinen Ventilator.',
  'You hear a hum in the room where it stands, so choose that room with care.':
    'In ihrem Raum hört man ein Brummen. Wählen Sie diesen Raum mit Bedacht.',
  'By a simple sum, a unit labelled 60 dB gives about 41 dB five metres away.':
    'Nach einfacher Berechnung bleiben von 60 dB am Außengerät in fünf Metern etwa 41 dB.',
  'At night 35 to 40 dB are allowed outside the neighbour’s window, by kind of area.':
    'Nachts sind vor dem Fenster der Nachbarn 35 bis 40 dB erlaubt, je nach Gebiet.',
  'In England a set sum for the neighbour’s window decides. It changed on 29 May 2025.':
    'In England entscheidet ein festes Verfahren für das Fenster der Nachbarn. Es gilt neu seit 29. Mai 2025.',
  'Sound power on the label, metres to the next window, walls nearby.':
    'Schallleistung auf dem Schild, Meter bis zum nächsten Fenster, Wände in der Nähe.',
  '“Silent”, or that nobody will complain.': '„Lautlos“, oder dass sich niemand beschwert.',
  'What happens in a power cut?': 'Was ist bei Stromausfall?',
  'The heat pump stops, as a gas boiler does, and usually starts again by itself.':
    'Die Wärmepumpe steht still, wie eine Gasheizung. Meist läuft sie danach von selbst an.',
  'The tank stays hot for some hours.': 'Der Speicher bleibt einige Stunden heiß.',
  'The tank stays hot for some hours. Call 105, and ask for priority help if someone is frail.':
    'Der Speicher bleibt einige Stunden heiß. In Großbritannien hilft die Nummer 105.',
  'How it starts again, frost protection outside, and any other heat.':
    'Wie sie wieder anläuft, Frostschutz draußen und andere Wärmequellen.',
  'Heat in a power cut, or that solar panels keep it running.':
    'Wärme bei Stromausfall, oder dass Solarstrom sie weiterlaufen lässt.',
  'What does the state pay?': 'Was zahlt der Staat?',
  'The state pays {base} of up to {ceiling}, and extras lift that to at most {most}.':
    'Der Staat zahlt {base} von bis zu {ceiling}. Zuschläge heben das auf höchstens {most}.',
  'You ask for it before the work starts, and nobody has a right to it.':
    'Beantragen Sie es vor Beginn der Arbeiten. Einen Anspruch darauf gibt es nicht.',
  'In England and Wales the grant is {grant}, and the installer takes it off the price.':
    'In England und Wales sind es {grant}. Der Fachbetrieb zieht sie vom Preis ab.',
  'Some homes on oil or LPG off the gas grid can get {more}. Scotland has its own scheme.':
    'Manche Häuser mit Öl oder Flüssiggas ohne Gasnetz bekommen {more}. Schottland hat eigene Regeln.',
  'Scotland has a scheme of its own.': 'Schottland hat eigene Regeln.',
  'Fuel until now, gas grid, owner, energy certificate, and the rules on the day.':
    'Bisheriger Brennstoff, Gasnetz, Eigentümer, Energieausweis und die Regeln des Tages.',
  'That the money is certain, or how long the scheme runs.':
    'Dass das Geld sicher ist, oder wie lange es die Förderung gibt.',
  'How long does it last?': 'Wie lange hält sie?',
  'Plan for about 15 to 20 years for the machine, and far longer for pipes in the ground.':
    'Rechnen Sie mit etwa 15 bis 20 Jahren für die Wärmepumpe. Rohre im Erdreich halten viel länger.',
  'What the maker stands for is in the warranty.': 'Wofür der Hersteller einsteht, steht in der Garantie.',
  'Years and conditions of the warranty.': 'Jahre und Bedingungen der Garantie.',
  'A lifetime, or a warranty without its yearly service.':
    'Eine Lebensdauer, oder eine Garantie ohne jährliche Wartung.',
  'What does it need every year?': 'Was braucht sie jedes Jahr?',
  'It is serviced once a year, and {amount} for that is in the yearly cost here.':
    'Sie wird einmal im Jahr gewartet. Dafür sind {amount} in den Kosten enthalten.',
  'Machines with much refrigerant also need a leak check by law.':
    'Bei viel Kältemittel ist auch eine Dichtheitsprüfung Pflicht.',
  'Kind and kilograms of refrigerant, and the price of a service.':
    'Art und Kilogramm des Kältemittels, Preis einer Wartung.',
  'Only certified people open the refrigerant circuit.': 'Nur Leute mit Sachkundenachweis öffnen den Kältekreis.',
  'What happens to the garden?': 'Was geschieht mit dem Garten?',
  'An air-source unit needs no digging, only a firm base and free air around it.':
    'Ein Außengerät braucht keine Grabung, nur einen festen Sockel und freie Luft ringsum.',
  'Water drips from it in winter and freezes, so it needs a drain.':
    'Im Winter tropft Wasser und gefriert. Darum braucht es einen Ablauf.',
  'Where it stands, its drain, and the way of the pipes.': 'Wo es steht, sein Ablauf und der Weg der Leitungen.',
  'On the coldest day about {ground} of {heat} kW comes from the ground.':
    'Am kältesten Tag kommen etwa {ground} von {heat} kW aus dem Erdreich.',
  'As a rough guide that is {low} to {high} m of borehole, or {from} to {to} m² of trenches.':
    'Grob sind das {low} bis {high} m Erdsonde oder {from} bis {to} m² Erdkollektor.',
  'Trenches need much open ground, and a borehole needs room for a drill rig.':
    'Ein Erdkollektor braucht viel freie Fläche, eine Erdsonde Platz für das Bohrgerät.',
  'A borehole is often 75 to 200 metres deep.': 'Eine Erdsonde ist oft 75 bis 200 Meter tief.',
  'The ground under the house. A designer sizes boreholes and trenches.':
    'Der Untergrund. Ein Fachplaner legt Sonden und Kollektoren aus.',
  'A depth before the ground is known, or a lawn without a mark.':
    'Eine Tiefe, bevor der Untergrund bekannt ist, oder ein unversehrter Rasen.',
  'Cables, pipes and mines are looked for before anybody digs.':
    'Vor dem Graben wird nach Leitungen und alten Bergwerken gesucht.',
  'Do I need permission to drill?': 'Brauche ich eine Erlaubnis zum Bohren?',
  'Do I need permission for the unit outside?': 'Brauche ich eine Erlaubnis für das Außengerät?',
  'The water authority is told at least a month before, and it can say no.':
    'Die Wasserbehörde erfährt es mindestens einen Monat vorher. Sie kann es ablehnen.',
  'Deeper than 100 metres the mining authority is asked too.':
    'Tiefer als 100 Meter wird auch die Bergbehörde gefragt.',
  'What else is asked for differs from Land to Land.': 'Alles Weitere ist je nach Bundesland verschieden.',
  'In England a closed loop for one house is usually allowed if set rules are met.':
    'In England ist ein geschlossener Kreis für ein Haus meist erlaubt, wenn feste Regeln erfüllt sind.',
  'Zones for drinking water are checked first. Scotland and Wales have their own rules.':
    'Zuerst werden Trinkwasserzonen geprüft. Schottland und Wales haben eigene Regeln.',
  'In England a unit of up to 1.5 m³ is usually allowed if its noise passes the set sum.':
    'In England ist ein Außengerät bis 1,5 m³ meist erlaubt, wenn es das Verfahren für den Schall besteht.',
  'Wales, Scotland and Northern Ireland have their own rules.': 'Wales, Schottland und Nordirland haben eigene Regeln.',
  'Protected zones, listed building, old mines, and what the council says.':
    'Schutzzonen, Denkmalschutz, alte Bergwerke und was die Gemeinde sagt.',
  '“No permission needed”.': '„Es braucht keine Erlaubnis“.',
  'Can I keep my gas hob?': 'Kann ich meinen Gasherd behalten?',
  'Usually yes, but it keeps the standing charge for gas, {amount} a year here.':
    'Meist ja, aber dann bleibt der Grundpreis für Gas, hier {amount} im Jahr.',
  'Usually yes, but gas for cooking keeps its standing charge.': 'Meist ja, aber dann bleibt der Grundpreis für Gas.',
  'The British grant does not pay for a gas boiler beside a heat pump.':
    'Die britische Förderung zahlt keine Gasheizung neben der Wärmepumpe.',
  'What stays on gas, and what the grant says of it.': 'Was am Gas bleibt und was die Förderung dazu sagt.',
  'A grant with any gas or oil heating left in.': 'Eine Förderung, wenn eine Gas- oder Ölheizung bleibt.',
  'Only a registered gas engineer works on gas.': 'An Gas arbeitet nur ein eingetragener Fachbetrieb.',
  'Can I keep my wood stove or solar hot water?': 'Kann ich Holzofen oder Solarwärme behalten?',
  'A wood stove can usually stay, if the room sensor does not stand beside it.':
    'Ein Holzofen kann meist bleiben, wenn der Raumfühler nicht daneben hängt.',
  'Solar hot water can stay if the tank has a second coil.':
    'Solarwärme kann bleiben, wenn der Speicher einen zweiten Wärmetauscher hat.',
  'Where the sensor is, and what the tank has.': 'Wo der Fühler hängt und was der Speicher hat.',
  'A stove needs its own air and an alarm for carbon monoxide.':
    'Ein Ofen braucht eigene Luft und einen Warner für Kohlenmonoxid.',
  'Do solar panels run it?': 'Läuft sie mit Solarstrom?',
  'Solar panels help most from spring to autumn, and the heat pump works most in winter.':
    'Solarstrom hilft vor allem von Frühling bis Herbst. Die Wärmepumpe arbeitet vor allem im Winter.',
  'Here it takes {winter} of its {year} kWh from October to March.':
    'Hier braucht sie {winter} von {year} kWh von Oktober bis März.',
  'Panels, battery, and what they give in December.': 'Module, Stromspeicher und ihr Ertrag im Dezember.',
  '“Free heating from the roof”.': '„Gratis heizen vom Dach“.',
  'What about charging a car?': 'Und wenn ich ein Auto lade?',
  'A charger and a heat pump together can be too much for the main fuse of the house.':
    'Ladestation und Wärmepumpe zusammen können für die Hauptsicherung zu viel sein.',
  'The network is told of both, and asked first where it may not be enough.':
    'Der Netzbetreiber erfährt von beiden. Wo es knapp wird, fragt man ihn vorher.',
  'Size of the main fuse, a shared supply, and the answer of the network.':
    'Größe der Hauptsicherung, gemeinsamer Anschluss, Antwort des Netzbetreibers.',
  'That the fuse need not be changed.': 'Dass die Sicherung bleiben kann.',
  'Only the network or an electrician opens the main fuse.':
    'An die Hauptsicherung darf nur der Netzbetreiber oder eine Elektrofachkraft.',
  'Can I turn it off when I am away?': 'Kann ich sie ausschalten, wenn ich verreise?',
  'Turn it down, not off, while it may freeze, so that the frost guard can work.':
    'Stellen Sie sie kleiner, nicht aus, solange es frieren kann. So wirkt der Frostschutz.',
  'After a long break let the tank get hot and run the taps before you use them.':
    'Lassen Sie nach langer Pause den Speicher heiß werden und das Wasser vorher laufen.',
  'Setting for holidays, setting for frost, and hours to warm up again.':
    'Einstellung für Urlaub und Frost, Stunden zum Aufwärmen.',
  'A saving for a few days away.': 'Eine Ersparnis bei wenigen Tagen.',
  'Run the taps gently: germs are breathed in with the spray.':
    'Lassen Sie das Wasser sanft laufen: Keime atmet man mit dem Sprühnebel ein.',
  'Does it work at ten below zero?': 'Geht sie bei zehn Grad Frost?',
  'Yes: the ground feels a cold day little, but the house needs more heat.':
    'Ja: Das Erdreich spürt einen kalten Tag kaum, aber das Haus braucht mehr Wärme.',
  'Here {outdoor} is the day it is sized for.': 'Hier ist sie auf {outdoor} ausgelegt.',
  'It is sized for the coldest day of your area.': 'Sie wird auf den kältesten Tag Ihrer Gegend ausgelegt.',
  'Yes: in tests near −10 °C, air-source machines still gave about twice the electricity as heat.':
    'Ja: In Tests um −10 °C wurde aus 1 kWh Strom noch etwa die doppelte Wärme.',
  'In a British trial the factor was {cold} on cold days, against {year} over the year.':
    'In einem britischen Feldtest war die Arbeitszahl an kalten Tagen {cold}, im Jahr {year}.',
  'What the machine gives on the coldest day, and when the backup heater starts.':
    'Leistung am kältesten Tag und ab wann der Heizstab läuft.',
  'The factor of the year on a cold day.': 'Die Jahresarbeitszahl an einem kalten Tag.',
  'Does the house gain value?': 'Gewinnt das Haus an Wert?',
  'In a large English study, homes with a better energy label sold for more.':
    'In einer großen englischen Studie brachten Häuser mit besserem Energieausweis mehr.',
  'That does not prove it of a heat pump, and a label may go up or down.':
    'Das beweist nichts für eine Wärmepumpe. Der Ausweis kann besser oder schlechter werden.',
  'The label now, and the label after, worked out by an assessor.':
    'Der Energieausweis jetzt und danach, von einem Fachmann berechnet.',
  'Any rise in price or label.': 'Ein höherer Preis oder ein besserer Ausweis.',
  'Can I cancel?': 'Kann ich widerrufen?',
  'If you sign at home you normally have 14 days to cancel, without a reason.':
    'Unterschreiben Sie zu Hause, können Sie meist 14 Tage lang ohne Grund widerrufen.',
  'If nobody told you of it, you have longer.': 'Hat Ihnen das niemand gesagt, haben Sie länger Zeit.',
  'The form for cancelling, with its date.': 'Das Formular für den Widerruf, mit Datum.',
  'That starting early takes the right away.': 'Dass ein früher Beginn das Recht nimmt.',
  'Who helps if something goes wrong?': 'Wer hilft, wenn etwas schiefgeht?',
  'First tell your installer, in writing.': 'Schreiben Sie zuerst Ihrem Fachbetrieb.',
  'If that does not help, the consumer centre of your Land can advise you.':
    'Hilft das nicht, berät Sie die Verbraucherzentrale Ihres Bundeslandes.',
  'If that does not help, turn to the certification or dispute body named in your papers.':
    'Hilft das nicht, wenden Sie sich an die Schlichtungsstelle in Ihren Papieren.',
  'Name and address of that body.': 'Name und Anschrift dieser Stelle.',
  'How a dispute ends.': 'Wie ein Streit ausgeht.',
  'What if it costs more than you say?': 'Und wenn es mehr kostet, als Sie sagen?',
  'After the winter we compare the bill with it, and show what made the difference.':
    'Nach dem Winter vergleichen wir die Stromrechnung damit und zeigen, woran es lag.',
  'Whom to call, and which reading to take now.': 'Wen Sie anrufen und welchen Zählerstand Sie jetzt ablesen.',
  'That it will cost less.': 'Dass es weniger kostet.',
  '{name}: questions and answers': '{name}: Fragen und Antworten',
  'Questions and answers · {date} · {name}': 'Fragen und Antworten · {date} · {name}',
  '{name}, questions and answers': '{name}, Fragen und Antworten',
  'What you asked': 'Was Sie gefragt haben',
  '{more, plural, one {One more answer is} other {# more answers are}} on the sheet of questions.':
    '{more, plural, one {Eine weitere Antwort steht} other {# weitere Antworten stehen}} auf dem Fragenblatt.',
  'Questions (Q)': 'Fragen (Q)',
  'What customers ask': 'Was Kunden fragen',
  'Asked at the table: print it in the household’s paper': 'Am Tisch gefragt: in der Kostenschätzung mitdrucken',
  'All questions': 'Alle Fragen',
  '(asked)': '(gefragt)',
  '(old: look it up)': '(veraltet: nachschlagen)',
  'The installer adds': 'Der Fachbetrieb ergänzt',
  'Nobody can say for certain': 'Niemand kann sicher sagen',
  'Print what was asked': 'Gefragtes drucken',
  'Print all answers': 'Alle Antworten drucken',
};
