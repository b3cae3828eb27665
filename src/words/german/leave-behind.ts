import type { Catalogue } from '../say.ts';

/** Words of the document that stays with the household. */
export const LEAVE_BEHIND: Catalogue = {
  'Paid in total, purchase and running costs, in today’s money. 8 in 10 homes like yours lie inside the bands.':
    'Insgesamt bezahlt, Anschaffung und Betrieb, in heutigem Geld. 8 von 10 Häusern wie Ihrem liegen in den Bändern.',
  'Paid in total, running costs alone, in today’s money. 8 in 10 homes like yours lie inside the bands.':
    'Insgesamt bezahlt, nur der Betrieb, in heutigem Geld. 8 von 10 Häusern wie Ihrem liegen in den Bändern.',
  'Paid in all after': 'Insgesamt bezahlt nach',
  '8 in 10 homes inside': '8 von 10 Häusern darin',
  'putting it in': 'dem Einbau',
  '{year, plural, one {# year} other {# years}}': '{year, plural, one {# Jahr} other {# Jahren}}',
  'The years to come': 'Die kommenden Jahre',
  'Each further sum rests on the inputs of the first and on those that stand with it.':
    'Jede weitere Berechnung beruht auf den Angaben der ersten und auf denen, die bei ihr stehen.',
  // The document
  'The heat': 'Die Wärme',
  'A year with the heat pump': 'Ein Jahr mit der Wärmepumpe',
  'A year with {other}': 'Ein Jahr, Vergleich: {other}',
  'The difference': 'Der Unterschied',
  'page {page} of {pages}': 'Seite {page} von {pages}',
  'What it would cost to heat {name} with a heat pump': '{name}: Was das Heizen mit einer Wärmepumpe kosten würde',
  'Logo of the installer': 'Logo des Fachbetriebs',
  'About {amount} for rooms and hot water, at today’s electricity price.':
    'Etwa {amount} für Heizung und Warmwasser, zum heutigen Strompreis.',
  '{amount} a year': '{amount} im Jahr',
  'So the heat pump costs about {amount} a year more to run.':
    'Die Wärmepumpe kostet im Betrieb also etwa {amount} im Jahr mehr.',
  'A year, at prices that are not all of today': 'Ein Jahr, zu Preisen, die nicht alle von heute sind',
  'About {amount} for rooms and hot water, at the electricity price of {months}.':
    'Etwa {amount} für Heizung und Warmwasser, zum Strompreis von {months}.',
  'Electricity by day and night': 'Strom bei Tag und Nacht',
  'A year, at today’s prices': 'Ein Jahr, zu heutigen Preisen',
  'kWh bought': 'gekauft (kWh)',
  'for energy': 'Verbrauch',
  together: 'zusammen',
  'carbon (kg)': 'CO₂ (kg)',
  'heat: worked out without bills': 'Wärme: ohne Rechnungen ermittelt',
  'hot water for {people, plural, one {# person} other {# people}}':
    'Warmwasser für {people, plural, one {# Person} other {# Personen}}',
  'hot water, people not counted': 'Warmwasser, Zahl der Personen nicht bekannt',
  'heat from the {source, select, air {air} other {ground}}, water to the {emitters, select, floor {floor} other {radiators}} at {flow}':
    '{source, select, air {Luft/Wasser} other {Sole/Wasser}}-Wärmepumpe, {emitters, select, floor {Fußbodenheizung} other {Heizkörper}}, Vorlauf {flow}',
  'heat from the {source, select, air {air} other {ground}}':
    '{source, select, air {Luft/Wasser} other {Sole/Wasser}}-Wärmepumpe',
  '{price} per kWh of electricity': '{price} je kWh Strom',
  'If electricity rises by {step} per kWh, add about {amount} a year.':
    'Steigt der Strompreis um {step} je kWh, kommen etwa {amount} im Jahr dazu.',
  'A cold winter, met about 1 year in 10, adds about {amount}.':
    'Ein kalter Winter kommt etwa alle 10 Jahre. Er kostet etwa {amount} mehr.',
  'Every way of heating, side by side': 'Alle Heizungen nebeneinander',
  'How sure, and in another winter': 'Wie sicher, und in einem anderen Winter',
  'mild winter': 'milder Winter',
  'cold winter': 'kalter Winter',
  'per kWh of heat': 'je kWh Wärme',
  'Mild and cold are winters met about 1 year in 10.': 'Milde und kalte Winter kommen jeweils etwa in 1 von 10 Jahren.',
  'Typical year': 'Normales Jahr',
  '{name}, cost': '{name}, Kosten',
  'Standing charge and service are shared out over the months. Real months differ with the weather.':
    'Grundpreis und Wartung sind verteilt. Wirkliche Monate weichen mit dem Wetter ab.',
  'Worst to best for the heat pump, a year: {list}.': 'Vom schlechtesten zum besten, im Jahr: {list}.',
  'Your first winter': 'Ihr erster Winter',
  'What to expect': 'Was zu erwarten ist',
  'Your electricity bill also holds everything else you use at home.':
    'Ihre Stromrechnung enthält auch alles andere, was Sie im Haus verbrauchen.',
  'A new house or a new floor dries out in its first winter and can need more heat than later.':
    'Neue Häuser oder Fußböden trocknen im ersten Winter und können mehr Wärme brauchen.',
  'What to do': 'Was zu tun ist',
  'When to call': 'Wann Sie anrufen sollten',
  'Before anybody opens or changes anything': 'Bevor jemand etwas öffnet oder ändert',
  'Electricity.': 'Strom.',
  'Refrigerant.': 'Kältemittel.',
  'Hot water that scalds.': 'Heißes Wasser, das verbrüht.',
  'Legionella.': 'Legionellen.',
  'The fluid in the ground loop.': 'Die Sole im Erdreich.',
  'The outdoor unit.': 'Das Außengerät.',
  'Pressure.': 'Druck.',
  'What went into it': 'Alle Angaben',
  'The other ways of heating': 'Die anderen Heizungen',
  'For the same heat': 'Für dieselbe Wärme',
  'efficiency, rooms': 'Nutzungsgrad, Räume',
  'price per kWh': 'Preis je kWh',
  Sources: 'Quellen',
  // A price and where it comes from.
  'Words in this paper': 'Wörter in diesem Papier',
  '{name}, prices of {from} to {to}. {origin}.': '{name}, Preise vom {from} bis {to}. {origin}.',
  '{name}, without a date, used for {from}. {origin}.': '{name}, ohne Datum, verwendet für den {from}. {origin}.',
  '{name}, prices from {from} on. {origin}.': '{name}, Preise ab {from}. {origin}.',
  'They had ended {days, plural, one {# day} other {# days}} before this paper was made.':
    'Sie waren {days, plural, one {# Tag} other {# Tage}} vor diesem Papier abgelaufen.',
  Note: 'Notiz',
  'typical year of {region}, {days} degree days to {base}':
    'normales Jahr ({region}), {days} Gradtage, Heizgrenze {base}',
  'Plainwarmth, model {version}, as of {date}': 'Plainwarmth, Modell {version}, Stand {date}',
  'So the two cost about the same to run.': 'Im Betrieb kosten beide also etwa gleich viel.',
  'factor as designed (H4)': 'Arbeitszahl wie ausgelegt (H4)',
  'What it costs to put the heating in is not part of these figures.':
    'Was der Einbau der Heizung kostet, steht nicht in diesen Zahlen.',
  'The sums': 'Die Berechnungen',
  '{title}: {result}, worked out above.': '{title}: {result}, oben berechnet.',
  // Figures as CSV
  part: 'Teil',
  system: 'Heizung',
  time: 'Zeit',
  what: 'Größe',
  value: 'Wert',
  '{of, select, other {unit}}': '{of, select, other {Einheit}}',
  grade: 'Sicherheit',
  origin: 'Herkunft',
  year: 'Jahr',
  'together, mild winter': 'zusammen, milder Winter',
  'together, cold winter': 'zusammen, kalter Winter',
  energy: 'Energie',
  carbon: 'CO₂',
  '{years} years': '{years} Jahre',
  'year {year}': 'Jahr {year}',
  'paid in all': 'insgesamt bezahlt',
  'paid to run it': 'für den Betrieb bezahlt',
  'saved with the heat pump': 'mit der Wärmepumpe gespart',
  'share of futures in which the heat pump costs less': 'Anteil der Verläufe, in denen die Wärmepumpe weniger kostet',
  'years until paid back': 'Jahre, bis es sich bezahlt macht',
  'years until paid back, discounted': 'Jahre, bis es sich bezahlt macht, abgezinst',
  'worth today of what is saved': 'heutiger Wert der Ersparnis',
  'level cost a year': 'gleichmäßige Kosten im Jahr',
  number: 'Nummer',
  'made on': 'gemacht am',
  id: 'Kennung',
  household: 'Haushalt',
  'electricity prices': 'Strompreise',
  machine: 'Wärmepumpe',
  'factor, heat and hot water (H4)': 'Arbeitszahl, Heizung und Warmwasser (H4)',
  futures: 'Verläufe',
  'difference {index} of 20': 'Unterschied {index} von 20',
  input: 'Angabe',
  // The letter
  'What we know': 'Was wir wissen',
  'What happens next': 'Wie es weitergeht',
  'Please tell us: {questions}': 'Bitte sagen Sie uns: {questions}',
  'What to read from now on': 'Was von jetzt an abzulesen ist',
  'kWh by month.': 'kWh nach Monat.',
  'Heat pump’s meter': 'Zähler der Wärmepumpe',
  'Meter of the home': 'Zähler des Hauses',
  'Heater’s hours': 'Stunden des Heizstabs',
  'kWh to expect': 'kWh zu erwarten',
  'Ring us above': 'Anruf, wenn über',
  'Working, for the installer': 'Rechenweg, für den Fachbetrieb',
  'Bill of {days}: {units} at {price}.': 'Rechnung vom {days}: {units} zu {price}.',
  'From an even share of the year to the bill': 'Vom gleichmäßigen Anteil am Jahr zur Rechnung',
  'Estimated, an even share of the year': 'Geschätzt, gleichmäßiger Anteil am Jahr',
  ', joined: {causes}': ', zusammen: {causes}',
  'The bill': 'Die Rechnung',
  'Estimated for these days and this price': 'Geschätzt für diese Tage und diesen Preis',
  'Estimated for these days, this price and weather': 'Geschätzt für diese Tage, diesen Preis und dieses Wetter',
  'Check: {steps}': 'Prüfen: {steps}',
  'Local codes and the maker’s instructions come first.':
    'Örtliche Vorschriften und die Anleitung des Herstellers gehen vor.',
  'At the plant on {date}': 'An der Anlage am {date}',
  'What it can mean, likeliest first. The order is a judgement, not a diagnosis.':
    'Was es heißen kann, das Wahrscheinlichste zuerst. Die Reihenfolge ist eine Einschätzung, keine Diagnose.',
  'What it would cost to heat {name}: {estimate}': '{name}: Was das Heizen kosten würde. {estimate}',
  'Estimate no. {number} of {date}': 'Kostenschätzung Nr. {number} vom {date}',
  'our own assumption': 'unsere eigene Annahme',
  'not checked, so our own assumption': 'nicht nachgeschlagen, daher unsere eigene Annahme',
  'Worked out by': 'Berechnet mit',
  'A kilowatt-hour (kWh) is the unit on your bill. The seasonal factor is the heat from each kWh of electricity.':
    'Die Jahresarbeitszahl sagt, wie viel Wärme aus 1 kWh Strom wird. Alle Pumpen sind mitgezählt.',
  'Cost of a year. The dot is the sum with the figures below. 8 in 10 homes like yours lie inside the band.':
    'Kosten eines Jahres. Der Punkt ist unser Ergebnis, im Band liegen 8 von 10 Häusern wie Ihrem.',
  'Beside the other ways of heating': 'Im Vergleich mit anderen Heizungen',
  'The heat pump causes about {pump} kg of CO₂ a year, {other} {otherKg} kg.':
    'CO₂ im Jahr: die Wärmepumpe etwa {pump} kg, {other} {otherKg} kg.',
  'How often it costs less': 'Wie oft sie weniger kostet',
  'In another winter, and where both cost the same': 'In einem anderen Winter, und ab wann beide gleich viel kosten',
  'Putting it in, and the years to come': 'Einbau und kommende Jahre',
  'The machine and its heaters run on mains voltage.': 'Wärmepumpe und Heizstäbe laufen mit Netzspannung.',
  'Only a qualified electrician works on the wiring: switched off, locked off and proved dead.':
    'Nur eine Elektrofachkraft arbeitet daran: abgeschaltet, gegen Wiedereinschalten gesichert, Spannungsfreiheit geprüft.',
  'It is under pressure, and some kinds burn. Only certified people open that circuit.':
    'Es steht unter Druck, und manche Sorten brennen. Nur Leute mit Sachkundenachweis öffnen den Kältekreis.',
  'If you smell or hear a leak: air the room, no flames or switches, leave and call.':
    'Riechen oder hören Sie ein Leck: lüften, keine Flammen, keine Schalter, hinausgehen und anrufen.',
  'Above about 50 °C water burns skin in seconds, children’s and old people’s soonest.':
    'Über etwa 50 °C verbrüht Wasser die Haut in Sekunden, am schnellsten bei Kindern und alten Menschen.',
  'Keep the mixing valves that were fitted.': 'Lassen Sie eingebaute Mischventile, wie sie sind.',
  'Lukewarm water lets it grow. Do not set the cylinder lower than your installer did.':
    'In lauwarmem Wasser vermehren sie sich. Stellen Sie den Speicher nicht kühler als Ihr Fachbetrieb.',
  'Leave its weekly heating to 60 °C on.': 'Lassen Sie das wöchentliche Aufheizen auf 60 °C an.',
  'It holds antifreeze (glycol). Do not drink, drain or top it up yourself.':
    'Sie enthält Frostschutz (Glykol). Nicht trinken, nicht selbst ablassen oder nachfüllen.',
  'Keep spills out of drains and water.': 'Nichts davon darf in Abfluss oder Gewässer.',
  'Keep its fan and grille clear and keep hands out.': 'Halten Sie Ventilator und Gitter frei und die Hände draußen.',
  'Ice or a noise that is new is for your installer.':
    'Neues Eis oder ein neues Geräusch ist Sache Ihres Fachbetriebs.',
  'Leave safety valves and expansion vessels alone: the systems are closed and hot.':
    'Lassen Sie Sicherheitsventile und Ausdehnungsgefäße in Ruhe: Die Anlage ist geschlossen und heiß.',
  'Rules of your country and the maker’s instructions come first.':
    'Die Vorschriften Ihres Landes und die Anleitung des Herstellers gehen vor.',
  'Work that needs a licence is done by those who hold one.':
    'Arbeiten, die eine Zulassung verlangen, machen nur zugelassene Fachleute.',
  'All of them give the same heat in a typical year: {count} kWh. A standing charge counts only where that heating brings it into the home.':
    'Alle liefern in einem normalen Jahr dieselbe Wärme: {count} kWh. Ein Grundpreis zählt nur, wo ihn diese Heizung ins Haus bringt.',
  'The warmth is steady. Radiators feel warm, not hot, and the machine runs for long hours.':
    'Die Wärme ist gleichmäßig. Heizkörper sind warm, nicht heiß, und die Wärmepumpe läuft viele Stunden.',
  'After the winter we compare your bill with this paper. We show what the weather and the price did.':
    'Nach dem Winter vergleichen wir Ihre Stromrechnung mit dieser Schätzung. Wir zeigen, was Wetter und Preis ausgemacht haben.',
  'When to call, and whom': 'Wann und wen Sie anrufen',
  'Call:': 'Anrufen:',
  'Your reading': 'Ihr Zählerstand',
  'This paper is about “{name}”, as worked out on {date}.': 'Hier geht es um „{name}“, berechnet am {date}.',
  'What this rests on': 'Worauf das beruht',
  'What it costs to put the heating in is not part of the yearly cost.':
    'Der Preis für den Einbau steckt nicht in den jährlichen Kosten.',
  '{more, plural, one {One more stands} other {# more stand}} in the working.':
    '{more, plural, one {Ein weiterer steht} other {# weitere stehen}} in der Berechnung.',
  'Every sum stands in a second paper, the working. Ask us for it.':
    'Jede Berechnung steht in einem zweiten Papier. Fragen Sie uns danach.',
  'Your own records of {from} to {to}, adjusted to a typical winter.':
    'Ihr eigener Verbrauch vom {from} bis {to}, umgerechnet auf einen normalen Winter.',
  'Your own records, adjusted to a typical winter.': 'Ihr eigener Verbrauch, umgerechnet auf einen normalen Winter.',
  'We had no bills of yours, so this is less sure.': 'Wir hatten keine Rechnungen von Ihnen. Das macht es unsicherer.',
  'Also used: {ways}.': 'Dazu genommen: {ways}.',
  'Used: {ways}.': 'Genommen: {ways}.',
  'From the litres a day that you told us.': 'Nach den Litern am Tag, die Sie uns genannt haben.',
  'For {people, plural, one {# person} other {# people}}, by a published method (SAP 10.2, Appendix J).':
    'Für {people, plural, one {# Person} other {# Personen}}, nach einem veröffentlichten Verfahren (SAP 10.2, Appendix J).',
  'Nobody told us how many people live here, so it is our own assumption.':
    'Niemand hat uns gesagt, wie viele Personen hier wohnen. Es ist unsere eigene Annahme.',
  'One kWh of electricity gives {factor} kWh of heat, with hot water and pumps counted.':
    'Aus 1 kWh Strom werden {factor} kWh Wärme, Warmwasser und Pumpen mitgezählt.',
  'By its design it would be {design}. We take the middle of what measured homes reach.':
    'Nach der Auslegung wären es {design}. Wir nehmen die Mitte dessen, was gemessene Häuser erreichen.',
  'That comes from the design of this machine.': 'Das kommt aus der Auslegung dieser Wärmepumpe.',
  'No figure of the machine is known, so this is what measured homes reach.':
    'Von der Wärmepumpe ist kein Wert bekannt. Wir nehmen, was gemessene Häuser erreichen.',
  'Measured homes: {source}.': 'Gemessene Häuser: {source}.',
  '{price} per kWh.': '{price} je kWh.',
  '{price} per kWh: {short}.': '{price} je kWh: {short}.',
  'These prices hold from {from} to {to}.': 'Die Preise gelten vom {from} bis {to}.',
  'It was typed without a date and is used for {from}.': 'Er wurde ohne Datum eingegeben und gilt hier für den {from}.',
  'These prices hold from {from} on.': 'Die Preise gelten ab {from}.',
  'Yearly service': 'Wartung',
  '{amount} a year for the heat pump, as offered.': '{amount} im Jahr für die Wärmepumpe, wie angeboten.',
  'No price for the service was given, so none is counted.':
    'Für die Wartung wurde kein Preis genannt. Sie ist nicht mitgezählt.',
  '{amount} a year for the heat pump. That is our own assumption.':
    '{amount} im Jahr für die Wärmepumpe. Das ist unsere eigene Annahme.',
  'heat: your own record, adjusted to a typical winter': 'Wärme, aus Ihrem Verbrauch',
  'seasonal factor {factor}, all pumps counted': 'Jahresarbeitszahl (JAZ) {factor}',
  'What the figures are': 'Die wichtigsten Werte',
  'Twenty futures': 'Zwanzig mögliche Verläufe',
  '{name}: the working of {estimate}': '{name}: die Berechnung zu {estimate}',
  'Working · {estimate} · {name}': 'Berechnung · {estimate} · {name}',
  'The working behind the estimate for {name}': '{name}: Berechnung zur Kostenschätzung',
  'This paper is for whoever wants to check every sum. The household has a shorter paper of its own.':
    'Dieses Papier ist für alle, die jede Berechnung prüfen wollen. Der Haushalt hat ein kürzeres eigenes Papier.',
  'All of them give the same heat in a typical year, {count} kWh.':
    'Alle liefern in einem normalen Jahr dieselbe Wärme: {count} kWh.',
  '{count} kWh a year, {low} to {high}': '{count} kWh im Jahr, {low} bis {high}',
  '{count} kWh of that heat': '{count} kWh davon',
  '{count} kWh a year, or {low} to {high}.': '{count} kWh im Jahr, vielleicht {low} bis {high}.',
  '{count} kWh of that heat.': '{count} kWh dieser Wärme.',
  'A typical year ({region}). Source: {source}.': 'Ein normales Jahr ({region}). Quelle: {source}.',
  'Your own price: {name}, {source}.': 'Ihr eigener Preis: {name}, {source}.',
  'Not your tariff, but {source}.': 'Nicht Ihr Tarif, sondern: {source}.',
  'These figures were made by an earlier rule (model {version}). It used the factor of the design, not the middle of what homes get.':
    'Diese Zahlen stammen aus einer früheren Regel (Modell {version}). Sie nahm die Jahresarbeitszahl der Auslegung, nicht die Mitte dessen, was Häuser erreichen.',
};
