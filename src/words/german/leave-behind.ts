import type { Catalogue } from '../say.ts';

/** Words of the document that stays with the household. */
export const LEAVE_BEHIND: Catalogue = {
  'Paid in all, purchase and running costs, in the money of today. 8 in 10 homes like yours lie inside the bands.':
    'Insgesamt bezahlt, Anschaffung und Betrieb, in heutigem Geld. 8 von 10 Häusern wie Ihrem liegen in den Bändern.',
  'Paid in all, running costs alone, in the money of today. 8 cases in 10 lie inside the bands.':
    'Insgesamt bezahlt, nur der Betrieb, in heutigem Geld. 8 von 10 Fällen liegen in den Bändern.',
  'Paid in all after': 'Insgesamt bezahlt nach',
  '8 in 10 homes inside': '8 von 10 Häusern darin',
  'putting it in': 'dem Einbau',
  '{year, plural, one {# year} other {# years}}': '{year, plural, one {# Jahr} other {# Jahren}}',
  'The years to come': 'Die kommenden Jahre',
  'Each further sum rests on the inputs of the first and on those that stand with it.':
    'Jede weitere Rechnung ruht auf den Angaben der ersten und auf denen, die bei ihr stehen.',
  // The document
  'The heat': 'Die Wärme',
  'A year with the heat pump': 'Ein Jahr mit der Wärmepumpe',
  'A year with {other}': 'Ein Jahr, Vergleich: {other}',
  'The difference': 'Der Unterschied',
  'page {page} of {pages}': 'Seite {page} von {pages}',
  'What it would cost to heat {name}: promise {number}': '{name}: Was das Heizen kosten würde, Zusage {number}',
  'What it would cost to heat {name} with a heat pump': '{name}: Was das Heizen mit einer Wärmepumpe kosten würde',
  'Logo of the installer': 'Logo des Fachbetriebs',
  'About {amount} for rooms and hot water, at the electricity price of today.':
    'Etwa {amount} für Räume und Warmwasser, zum heutigen Strompreis.',
  '{amount} a year': '{amount} im Jahr',
  'So the heat pump costs about {amount} a year more to run.':
    'Die Wärmepumpe kostet im Betrieb also etwa {amount} im Jahr mehr.',
  'Cost of a year. The dot is the sum with the figures given here; 8 in 10 homes like yours lie inside the band.':
    'Kosten eines Jahres. Punkt: mit den hier genannten Zahlen. 8 von 10 Häusern wie Ihrem liegen im Band.',
  'A year, at prices that are not all of today': 'Ein Jahr, zu Preisen, die nicht alle von heute sind',
  'About {amount} for rooms and hot water, at the electricity price of {months}.':
    'Etwa {amount} für Räume und Warmwasser, zum Strompreis von {months}.',
  'Electricity by day and night': 'Strom bei Tag und Nacht',
  'A year, at today’s prices': 'Ein Jahr, zu heutigen Preisen',
  'units bought': 'gekauft',
  'units bought (kWh)': 'gekauft (kWh)',
  'for units': 'Arbeitspreis',
  together: 'zusammen',
  'carbon (kg)': 'CO₂ (kg)',
  'What this stands on': 'Worauf das beruht',
  'heat: your record, put right for weather': 'Wärme: Ihr Verbrauch bei üblichem Wetter',
  'heat: worked out without bills': 'Wärme: ohne Rechnungen ermittelt',
  '{count} kWh a year, {low} to {high}': '{count} kWh im Jahr, {low} bis {high}',
  'hot water for {people, plural, one {# person} other {# people}}':
    'Warmwasser für {people, plural, one {# Person} other {# Personen}}',
  'hot water, people not counted': 'Warmwasser, Personen nicht gezählt',
  '{count} kWh of that heat': '{count} kWh dieser Wärme',
  'heat from the {source, select, air {air} other {ground}}, water to the {emitters, select, floor {floor} other {radiators}} at {flow}':
    'Wärme aus {source, select, air {der Luft} other {dem Boden}}, {emitters, select, floor {Fußboden} other {Heizkörper}} mit {flow}',
  'heat from the {source, select, air {air} other {ground}}':
    'Wärme aus {source, select, air {der Luft} other {dem Boden}}',
  'factor {factor}, pumps included (H4)': 'Arbeitszahl {factor}, mit Pumpen (H4)',
  '{price} a unit of electricity': '{price} je kWh Strom',
  'If electricity rises by {step} a unit, add about {amount} a year.':
    'Steigt Strom um {step} je Kilowattstunde, kommen etwa {amount} im Jahr dazu.',
  'A cold winter, met about 1 year in 10, adds about {amount}.':
    'Ein kalter Winter, wie er etwa in 1 von 10 Jahren kommt, kostet etwa {amount} mehr.',
  'Every way of heating, side by side': 'Alle Heizungen nebeneinander',
  'All of them make the same heat for the same home in a typical winter: {count} kWh. A standing charge is counted only where that way of heating brings it into the home.':
    'Alle erzeugen dieselbe Wärme für dasselbe Haus in einem durchschnittlichen Winter: {count} kWh. Ein Grundpreis zählt nur, wo ihn diese Heizung ins Haus bringt.',
  'How sure, and in another winter': 'Wie sicher, und in einem anderen Winter',
  'mild winter': 'milder Winter',
  'cold winter': 'kalter Winter',
  'a unit of heat': 'je kWh Wärme',
  'Mild and cold are winters met about 1 year in 10.': 'Milde und kalte Winter kommen jeweils etwa in 1 von 10 Jahren.',
  'Typical year': 'Durchschnittliches Jahr',
  '{name}, cost': '{name}, Kosten',
  'Standing charge and service are shared out over the months. Real months differ with the weather.':
    'Grundpreis und Wartung sind verteilt. Wirkliche Monate weichen mit dem Wetter ab.',
  'Each dot is one future, as likely as any other: a different winter, price, factor and way of living.':
    'Jeder Punkt ist ein möglicher Verlauf, alle gleich wahrscheinlich: mit anderem Winter, Preis, Gerät und Alltag.',
  'Worst to best for the heat pump, a year: {list}.': 'Vom schlechtesten zum besten, im Jahr: {list}.',
  'We had nothing to hold the heat pump against.': 'Wir hatten nichts, womit sich die Wärmepumpe vergleichen ließe.',
  'Your first winter': 'Ihr erster Winter',
  'What to expect': 'Was zu erwarten ist',
  'Your electricity bill also holds everything else you use at home.':
    'Ihre Stromrechnung enthält auch alles andere, was Sie im Haus verbrauchen.',
  'The warmth is steady. Radiators feel warm, not hot, and the machine runs for long hours. That is how it should be.':
    'Die Wärme ist gleichmäßig. Heizkörper fühlen sich warm an, nicht heiß, und das Gerät läuft viele Stunden. So soll es sein.',
  'A new house or a new floor dries out in its first winter and can need more heat than later.':
    'Neue Häuser oder Fußböden trocknen im ersten Winter und können mehr Wärme brauchen.',
  'What to do': 'Was zu tun ist',
  'After the winter we hold your bill against this paper, and show what the weather, the price and the rest did.':
    'Nach dem Winter halten wir Ihre Rechnung neben dieses Papier und zeigen, was Wetter, Preis und der Rest ausmachten.',
  'When to call': 'Wann Sie anrufen sollten',
  'Before anybody opens or changes anything': 'Bevor jemand etwas öffnet oder ändert',
  'Electricity.': 'Strom.',
  'The machine and its heaters run on mains voltage. Only a qualified electrician works on the wiring, after switching off, locking off and proving dead.':
    'Gerät und Heizstäbe laufen mit Netzspannung. Nur eine Elektrofachkraft arbeitet daran: abschalten, gegen Wiedereinschalten sichern, Spannungsfreiheit prüfen.',
  'Refrigerant.': 'Kältemittel.',
  'It is under pressure, and some kinds burn. Only people certified for it open that circuit. If you smell or hear a leak, air the room, keep flames and switches away, leave and call.':
    'Es steht unter Druck, und manche Sorten brennen. Diesen Kreis öffnen nur Leute, die dafür zugelassen sind. Riechen oder hören Sie ein Leck, dann lüften Sie, meiden Sie Flammen und Schalter, gehen Sie hinaus und rufen Sie an.',
  'Hot water that scalds.': 'Heißes Wasser, das verbrüht.',
  'Above about 50 °C water burns skin in seconds, children’s and old people’s soonest. Keep the mixing valves that were fitted.':
    'Über etwa 50 °C verbrennt Wasser die Haut in Sekunden, am schnellsten bei Kindern und Alten. Lassen Sie eingebaute Mischventile, wie sie sind.',
  'Legionella.': 'Legionellen.',
  'Water kept lukewarm lets it grow. Do not turn the cylinder below what your installer set, and leave the weekly heating to 60 °C on.':
    'In lauwarmem Wasser vermehren sie sich. Stellen Sie den Speicher nicht kühler, als Ihr Fachbetrieb ihn eingestellt hat. Lassen Sie das wöchentliche Aufheizen auf 60 °C an.',
  'The fluid in the ground loop.': 'Die Flüssigkeit in den Erdrohren.',
  'It holds antifreeze (glycol) and other additives. Do not drink, drain or top it up yourself; keep spills out of drains and water.':
    'Sie enthält Frostschutz (Glykol) und andere Zusätze. Nicht trinken, nicht selbst ablassen oder nachfüllen. Nichts davon darf in Abfluss oder Gewässer.',
  'The outdoor unit.': 'Das Außengerät.',
  'Keep its fan and grille clear and keep hands out. Ice or a noise that is new is for your installer.':
    'Halten Sie Gebläse und Gitter frei und die Hände draußen. Neues Eis oder ein neues Geräusch ist Sache Ihres Fachbetriebs.',
  'Pressure.': 'Druck.',
  'Leave safety valves and expansion vessels alone; the systems are closed and hot.':
    'Sicherheitsventile und Ausdehnungsgefäße in Ruhe lassen: alles ist geschlossen und heiß.',
  'National and local rules and the maker’s instructions come first wherever this paper says something else. Work that needs a licence is done by those who hold it.':
    'Landesweite und örtliche Vorschriften und die Anleitung des Herstellers gehen vor, wo dieses Papier etwas anderes sagt. Arbeiten, für die man zugelassen sein muss, machen nur Zugelassene.',
  'What went into it': 'Was hineinging',
  'The other ways of heating': 'Die anderen Heizungen',
  'For the same heat': 'Für dieselbe Wärme',
  'efficiency, rooms': 'Nutzungsgrad, Räume',
  'price a unit': 'Preis je kWh',
  Sources: 'Quellen',
  // A price and where it comes from.
  'Published average price, {0}: {1}': 'Veröffentlichter Durchschnittspreis, {0}: {1}',
  'Assumed day and night prices, {0}: {1}': 'Angenommene Preise für Tag und Nacht, {0}: {1}',
  'Typed {0} price: {1}': 'Eingegebener Preis für {0}: {1}',
  'illustrative pair, not published; derived from the cap of {0} and a 58/42 split':
    'beispielhaftes Paar, nicht veröffentlicht; aus der Preisgrenze für {0} und einer Teilung 58/42 abgeleitet',
  'Words in this paper': 'Wörter in diesem Papier',
  'About this paper': 'Über dieses Papier',
  '{name}, prices of {from} to {to}. {origin}.': '{name}, Preise vom {from} bis {to}. {origin}.',
  '{name}, prices from {from} on. {origin}.': '{name}, Preise ab {from}. {origin}.',
  'They had ended {days, plural, one {# day} other {# days}} before this paper was made.':
    'Sie waren {days, plural, one {# Tag} other {# Tage}} vor diesem Papier abgelaufen.',
  'number {number}': 'Nummer {number}',
  Note: 'Notiz',
  'typical year of {region}, {days} degree days to {base}':
    'übliches Jahr ({region}), {days} Gradtage, Heizgrenze {base}',
  'Reckoned by': 'Gerechnet mit',
  'Plainwarmth, model {version}, as of {date}': 'Plainwarmth, Modell {version}, Stand {date}',
  'So the two cost about the same to run.': 'Im Betrieb kosten beide also etwa gleich viel.',
  'factor as designed (H4)': 'Arbeitszahl wie ausgelegt (H4)',
  'These figures were made by an earlier rule (model {version}): it reckoned with the factor of the design, not with the middle of what homes get.':
    'Diese Zahlen stammen aus einer früheren Regel (Modell {version}): Sie rechnete mit der Arbeitszahl der Auslegung, nicht mit der Mitte dessen, was Häuser erreichen.',
  'What it costs to put the heating in is not part of these figures.':
    'Was der Einbau der Heizung kostet, steht nicht in diesen Zahlen.',
  'The sums': 'Die Rechnungen',
  '{title}: {result}, worked out above.': '{title}: {result}, oben ausgerechnet.',
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
  machine: 'Gerät',
  'factor, heat and hot water (H4)': 'Arbeitszahl, Heizung und Warmwasser (H4)',
  futures: 'Verläufe',
  'difference {index} of 20': 'Unterschied {index} von 20',
  input: 'Angabe',
  // The letter
  '{name}: a bill held against promise {number}': '{name}: eine Rechnung neben Zusage {number}',
  'Letter of {date} · promise {number} · {name}': 'Brief vom {date} · Zusage {number} · {name}',
  '{name}: your bill and our promise {number} of {date}': '{name}: Ihre Rechnung und unsere Zusage {number} vom {date}',
  'What we know': 'Was wir wissen',
  'What happens next': 'Wie es weitergeht',
  'Please tell us: {questions}': 'Bitte sagen Sie uns: {questions}',
  'What to read from now on': 'Was von jetzt an abzulesen ist',
  'Units by month.': 'Kilowattstunden nach Monat.',
  'Heat pump’s meter': 'Zähler der Wärmepumpe',
  'Heater’s hours': 'Stunden des Heizstabs',
  'Units to expect': 'Zu erwarten',
  'Ring us above': 'Anruf, wenn über',
  'Working, for the installer': 'Rechenweg, für den Fachbetrieb',
  'Bill of {days}: {units} at {price}.': 'Rechnung vom {days}: {units} zu {price}.',
  'From an even share of the year to the bill': 'Vom gleichmäßigen Anteil am Jahr zur Rechnung',
  'Promised, an even share of the year': 'Zugesagt, gleichmäßiger Anteil am Jahr',
  ', joined: {causes}': ', zusammen: {causes}',
  'The bill': 'Die Rechnung',
  'Promised for these days, this price and weather': 'Zugesagt für diese Tage, diesen Preis und dieses Wetter',
  'Check: {steps}': 'Prüfen: {steps}',
  'Local codes and the maker’s instructions come first.':
    'Örtliche Vorschriften und die Anleitung des Herstellers gehen vor.',
  'At the plant on {date}': 'An der Anlage am {date}',
  'What it can mean, likeliest first. The order is a judgement, not a diagnosis.':
    'Was es heißen kann, das Wahrscheinlichste zuerst. Die Reihenfolge ist eine Einschätzung, keine Diagnose.',
};
