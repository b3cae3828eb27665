import type { Catalogue } from '../say.ts';

/** The walk-through and the written estimate. */
export const WALK: Catalogue = {
  // Written estimate
  'Estimate no. {number} is saved.': 'Kostenschätzung Nr. {number} ist gespeichert.',
  'What will be saved': 'Was gespeichert wird',
  '{amount} a year; 8 in 10 homes like yours: {range}': '{amount} im Jahr; 8 von 10 Häusern wie Ihrem: {range}',
  'Beside it': 'Daneben',
  '{other}, about {amount} a year': '{other}, etwa {amount} im Jahr',
  Heat: 'Wärme',
  '{heat} a year, {count, plural, =0 {without any record of this home} one {from one record} other {from # records}}':
    '{heat} im Jahr, {count, plural, =0 {ohne Messwerte dieses Hauses} one {aus einer Messreihe} other {aus # Messreihen}}',
  Electricity: 'Strom',
  '{price} per kWh, {tariff}': '{price} je kWh, {tariff}',
  Date: 'Datum',
  '{count, plural, one {One question is still open. The estimate prints it.} other {# questions are still open. The estimate prints them.}}':
    '{count, plural, one {Eine Frage ist noch offen. So kommt sie in die Kostenschätzung.} other {# Fragen sind noch offen. So kommen sie in die Kostenschätzung.}}',
  'Note (optional)': 'Notiz (freiwillig)',
  'It is printed in the household’s estimate.': 'Sie wird in der Kostenschätzung mitgedruckt.',
  'Saving …': 'Wird gespeichert …',
  'Save the written estimate': 'Kostenschätzung speichern',
  'A written estimate never changes. New figures get a new number.':
    'Eine gespeicherte Kostenschätzung ändert sich nie. Neue Zahlen bekommen eine neue Nummer.',
  '{fileName} is saved.': '{fileName} ist gespeichert.',
  'Estimate no. {number} · {date}': 'Kostenschätzung Nr. {number} · {date}',
  'Reading the estimate …': 'Die Kostenschätzung wird gelesen …',
  'Writing …': 'Wird geschrieben …',
  'Estimate no. {number}': 'Kostenschätzung Nr. {number}',
  ', estimate no. {number}': ', Kostenschätzung Nr. {number}',
  'Our estimate of {date} is about {amount} a year.': 'Unsere Kostenschätzung vom {date} nennt etwa {amount} im Jahr.',
  'There is no written estimate yet. It would say about {cost} a year.':
    'Noch gibt es keine Kostenschätzung. Sie würde etwa {cost} im Jahr nennen.',
  'The written estimate stores every figure with its date and its sums. Later you can compare a bill with it.':
    'Die Kostenschätzung speichert jede Zahl mit Datum und Rechenweg. So lässt sich später eine Rechnung damit vergleichen.',
  'Saved estimates': 'Gespeicherte Kostenschätzungen',
  '{count, plural, one {# older estimate} other {# older estimates}}':
    '{count, plural, one {# ältere Kostenschätzung} other {# ältere Kostenschätzungen}}',
  '{name} {before} then, {after} now': '{name}: damals {before}, jetzt {after}',
  records: 'Messreihen',
  model: 'Modell',
  'Nothing has changed since it was made.': 'Seither hat sich nichts geändert.',
  'The same sums give about {after} a year now, because the date is a later one.':
    'Dieselbe Berechnung ergibt jetzt etwa {after} im Jahr, weil das Datum ein späteres ist.',
  'The cost comes out the same, about {after} a year.': 'Die Kosten bleiben gleich, etwa {after} im Jahr.',
  'Today it would be about {after} a year.': 'Heute wären es etwa {after} im Jahr.',
  'Since it was made: {changes}. {cost}': 'Seither geändert: {changes}. {cost}',
  // Walk-through
  'Page {page} of {pages}': 'Seite {page} von {pages}',
  '{page} of {pages}': '{page} von {pages}',
  'Notes for the installer': 'Notizen für den Fachbetrieb',
  'No notes on this page.': 'Keine Notizen zu dieser Seite.',
  '(N hides this)': '(N blendet dies aus)',
  'The home and its bills now': 'Das Haus und seine Rechnungen jetzt',
  'Where the heat comes from': 'Woher die Wärme kommt',
  'How sure we are': 'Wie sicher wir sind',
  'What the next years may bring': 'Was die nächsten Jahre bringen können',
  'Pages shown: {shown} of {all}': 'Gezeigte Seiten: {shown} von {all}',
  'We cannot say yet what would change your cost.': 'Wir können noch nicht sagen, was Ihre Kosten ändern würde.',
  '{name} · each change by itself, all else as it is': '{name} · jede Änderung für sich, alles andere wie jetzt',
  'Your heating and hot water would cost about {cost} a year.':
    'Heizung und Warmwasser würden Sie etwa {cost} im Jahr kosten.',
  'By the month: about {amount}, compared with {otherAmount}.':
    'Im Monat: etwa {amount}, verglichen mit {otherAmount}.',
  'By the month: about {amount}.': 'Im Monat: etwa {amount}.',
  'That is about the same.': 'Das ist etwa gleich viel.',
  'That is about {apart} a year {way, select, less {less} other {more}}.':
    'Das sind etwa {apart} im Jahr {way, select, less {weniger} other {mehr}}.',
  'Prices for {fuel} ended {days, plural, one {# day} other {# days}} ago. Say so.':
    'Preise für {fuel} endeten vor {days, plural, one {# Tag} other {# Tagen}}. Sagen Sie das.',
  'With {other} it would be about {amount}.': 'Zum Vergleich: {other}, etwa {amount}.',
  'With what you have now it would be about {amount}.': 'Mit dem, was Sie jetzt haben, wären es etwa {amount}.',
  'Today they cost about {amount}.': 'Heute kosten sie etwa {amount}.',
  '{name}: we have no bills of yours yet, so we start from the home itself.':
    '{name}: Wir haben noch keine Rechnungen von Ihnen, darum gehen wir vom Haus selbst aus.',
  '{name}: heating and hot water cost about {cost} a year today.':
    '{name}: Heizung und Warmwasser kosten heute etwa {cost} im Jahr.',
  '{name}: we have no bills of yours yet. A home like it pays about {cost} a year.':
    '{name}: Wir haben noch keine Rechnungen von Ihnen. Ein solches Haus zahlt etwa {cost} im Jahr.',
  'It comes from your own records of {from} to {to}.': 'Das kommt aus Ihren Messwerten vom {from} bis {to}.',
  'It comes from your own records.': 'Das kommt aus Ihren Messwerten.',
  'That is worked out from the home itself.': 'Das ist aus dem Haus selbst errechnet.',
  'You look for a year of bills or readings, and we work it out again.':
    'Sie suchen Rechnungen oder Stände eines Jahres, und wir rechnen noch einmal.',
  'Ask what they will do first, and write it into the notes.':
    'Fragen Sie, was man zuerst tun wird, und schreiben Sie es in die Notizen.',
  'Hot water, pumps and standby are counted; for the rooms alone the factor is {factor}.':
    'Warmwasser, Pumpen und Stand-by sind mitgezählt; für die Räume allein ist die Arbeitszahl {factor}.',
  '{name} · seasonal factor {factor} for heat and hot water, pumps included':
    '{name} · Jahresarbeitszahl {factor}, Heizung, Warmwasser und Pumpen zusammen',
  'Ask: how would you put that to somebody who was not here? It shows whether the page was clear.':
    'Fragen Sie: Wie würden Sie das jemandem sagen, der nicht dabei war? Das zeigt, ob die Seite klar war.',
  'Show where the meter is and how it is read.': 'Zeigen Sie, wo der Zähler ist und wie man ihn abliest.',
  'By the month. {title}': 'Nach Monaten. {title}',
  'Cost of each month': 'Kosten jedes Monats',
  Pages: 'Seiten',
  'What if: {whatIf}. These are not today’s figures.': 'Was wäre, wenn: {whatIf}. Das sind nicht die Zahlen von heute.',
  'What if …': 'Was wäre, wenn …',
  'Inside the machine': 'Blick in die Wärmepumpe',
  'What you can choose': 'Was Sie wählen können',
  'What changes it': 'Was die Kosten ändert',
  'solar panels': 'Solarmodule',
  battery: 'Stromspeicher',
  'electric car': 'Elektroauto',
  'On “{name}” all electricity of the home comes to about {amount} a year.':
    'Mit „{name}“ kostet aller Strom des Hauses etwa {amount} im Jahr.',
  'the best hours': 'die besten Stunden',
  'hot water at night': 'Warmwasser bei Nacht',
  'Use this for the estimate': 'Für die Kostenschätzung übernehmen',
  'Tariff of the estimate': 'Tarif der Kostenschätzung',
  'You can choose your tariff. We know none of yours yet.':
    'Ihren Tarif können Sie wählen. Noch kennen wir keinen davon.',
  'Type the tariffs that you could have under Prices. Then they stand here beside each other.':
    'Geben Sie unter „Preise“ ein, welche Tarife Sie haben könnten. Dann stehen sie hier nebeneinander.',
  'These are still the bars from before. The new ones are on their way.':
    'Das sind noch die Balken von vorhin. Die neuen kommen gleich.',
  '“{name}” costs you least: about {amount} a year less than now.':
    '„{name}“ ist am günstigsten: rund {amount} im Jahr weniger als jetzt.',
  'The tariff on top costs you least: about {amount} a year less than now.':
    'Der oberste Tarif ist am günstigsten: rund {amount} im Jahr weniger als jetzt.',
  'The tariff on top costs about {amount} a year less than now, but that is not sure.':
    'Der oberste Tarif kostet rund {amount} im Jahr weniger als jetzt. Sicher ist das nicht.',
  'Your tariff hardly matters: the cheapest is only a little below the present one.':
    'Der Tarif macht wenig aus: Der günstigste liegt nur wenig unter dem jetzigen.',
  'The tariff on top costs you least of these.': 'Der oberste Tarif ist von diesen der günstigste.',
  'Keep the present tariff: of these it is the cheapest.':
    'Bleiben Sie beim jetzigen Tarif: Von diesen ist er der günstigste.',
  'Keep the present tariff: none costs less, though others cost about the same.':
    'Bleiben Sie beim jetzigen Tarif: Keiner ist günstiger, andere kosten etwa gleich viel.',
  'None of your tariffs costs less than the published average price.':
    'Keiner Ihrer Tarife ist günstiger als der veröffentlichte Durchschnittspreis.',
  Back: 'Zurück',
  Overview: 'Übersicht',
  Next: 'Weiter',
  Month: 'Monat',
  Cost: 'Kosten',
  'Call us above': 'Anrufen ab',
  'How we know': 'Woher wir das wissen',
  'This is an estimate, not a guarantee: about 2 in 10 homes like yours will fall outside its range.':
    'Das ist eine Schätzung, keine Garantie: Etwa 2 von 10 Häusern wie Ihrem liegen außerhalb der Spanne.',
  'Paper for the household': 'Papier für den Haushalt',
  'Working, every sum': 'Berechnung im Einzelnen',
  'Paper as a page': 'Papier als Webseite',
  'Working as a page': 'Berechnung als Webseite',
  'Figures as CSV': 'Zahlen als CSV',
  'Other forms': 'Andere Formate',
  'A tank of {litres} litres at {store} gives up to {mixed} litres for showers.':
    'Ein Speicher mit {litres} Litern bei {store} gibt bis zu {mixed} Liter zum Duschen.',
  'Showers from one tank': 'Duschwasser aus einem Speicher',
  'tank × (store temperature − 10 °C) / (40 °C − 10 °C), rounded down to ten litres':
    'Speicher × (Speichertemperatur − 10 °C) / (40 °C − 10 °C), auf zehn Liter abgerundet',
  Tank: 'Speicher',
  minutes: 'Minuten',
  'Store temperature': 'Speichertemperatur',
  'the tank of this home': 'der Speicher dieses Hauses',
  'a usual tank, our own assumption': 'ein üblicher Speicher, eigene Annahme',
  'Time to heat it from cold': 'Zeit bis er aus kaltem Zustand warm ist',
  'tank × (store temperature − 10 °C) × 4.18 kJ / output, to five minutes':
    'Speicher × (Speichertemperatur − 10 °C) × 4,18 kJ / Leistung, auf fünf Minuten',
  'Output of the heat pump': 'Leistung der Wärmepumpe',
  'as typed, else as large as the heat loss': 'wie eingegeben, sonst so groß wie die Heizlast',
  'A usual tank of {litres} litres at {store} gives up to {mixed} litres for showers.':
    'Ein üblicher Speicher mit {litres} Litern bei {store} gibt bis zu {mixed} Liter zum Duschen.',
  'What it would cost, and how sure that is': 'Was es kosten würde und wie sicher das ist',
  'What changes it, and what you can choose': 'Was es ändert und was Sie wählen können',
  'Living with it': 'Der Alltag damit',
  'What happens next': 'Wie es weitergeht',
  Earlier: 'Früher',
  'You choose your tariff, how warm the rooms are, the hot water and the settings. The winter nobody can choose.':
    'Sie wählen den Tarif, die Wärme der Räume, das Warmwasser und die Einstellungen. Den Winter wählt niemand.',
  'Move a slider while they watch, then reset it.':
    'Bewegen Sie einen Schieber, während man zusieht, und stellen Sie ihn zurück.',
  '{name} · {prices} · kWh is the unit on your bill': '{name} · {prices}',
  'It costs more to run here. Say it plainly, and do not move on until they have heard it.':
    'Hier kostet sie im Betrieb mehr. Sagen Sie es offen, und gehen Sie erst weiter, wenn es angekommen ist.',
  'Standing charges and yearly service are in these figures. The installation price is not.':
    'Grundpreise und Wartung sind in diesen Zahlen, der Preis des Einbaus nicht.',
  'Any heating must give it about {heat} of heat, {water} of it for hot water.':
    'Jede Heizung muss etwa {heat} Wärme liefern, {water} davon für Warmwasser.',
  'Your own bills would make that more certain. Do you have a year of them?':
    'Ihre eigenen Rechnungen machen das sicherer. Haben Sie die eines Jahres?',
  'Ask for a year of bills or meter readings before any figure goes into writing.':
    'Bitten Sie um Rechnungen oder Zählerstände eines Jahres, bevor Sie eine Zahl aufschreiben.',
  'For 8 in 10 homes like it, it is {range}. Your own bills would make that more certain.':
    'Bei 8 von 10 solchen Häusern sind es {range}. Ihre eigenen Rechnungen machen das sicherer.',
  'In a typical year that is {bought} through {now}.': 'In einem normalen Jahr braucht {now} dafür {bought}.',
  'Nothing is known of this home yet, so a typical one is used instead.':
    'Von diesem Haus ist noch nichts bekannt. Wir rechnen mit einem normalen Haus.',
  'Does that sound like your bills?': 'Klingt das nach Ihren Rechnungen?',
  'What do your bills say?': 'Was steht auf Ihren Rechnungen?',
  'If it does not sound like their bills, stop here and look at them together.':
    'Klingt es nicht nach ihren Rechnungen, sehen Sie hier zuerst gemeinsam nach.',
  Warm: 'Warm',
  '{room} all day. {emitters, select, floor {The floor is mild} other {Radiators are warm, not hot}}: {flow} water on the coldest day.':
    '{room} den ganzen Tag. {emitters, select, floor {Der Fußboden ist mild warm} other {Heizkörper sind warm, nicht heiß}}: Vorlauf {flow} am kältesten Tag.',
  Quiet: 'Leise',
  'The machine stands indoors. There is no fan outside.':
    'Die Wärmepumpe steht im Haus. Draußen läuft kein Ventilator.',
  'There is a fan outside. How loud it is at the neighbour’s window has to be worked out.':
    'Draußen läuft ein Ventilator. Wie laut er am Fenster der Nachbarn ist, muss berechnet werden.',
  'Living with it: steady warmth, and one look at the meter each month.':
    'Der Alltag: gleichmäßige Wärme und ein Blick im Monat auf den Zähler.',
  'It is in writing: about {amount} a year, estimate no. {number} of {date}.':
    'Sie haben es schriftlich: etwa {amount} im Jahr, Kostenschätzung Nr. {number} vom {date}.',
  'If you agree, we put this in writing: about {amount} a year.':
    'Wenn Sie einverstanden sind, schreiben wir es auf: etwa {amount} im Jahr.',
  'Save the written estimate before you leave.': 'Speichern Sie die Kostenschätzung, bevor Sie gehen.',
  'Installation price {price}, less the grant of {grant}: you pay {rest}. The grant is not certain.':
    'Der Einbau kostet {price}, abzüglich Förderung von {grant} zahlen Sie {rest}. Die Förderung ist nicht sicher.',
  'Installation price {price}. We tell you which grant you may ask for.':
    'Der Einbau kostet {price}. Wir sagen Ihnen, welche Förderung Sie beantragen können.',
  'We send you a quotation with the installation price, and say which grant you may ask for.':
    'Sie bekommen ein Angebot mit dem Preis des Einbaus. Darin steht, welche Förderung Sie beantragen können.',
  'First we settle {count, plural, one {one open question} other {# open questions}}.':
    'Zuerst klären wir {count, plural, one {eine offene Frage} other {# offene Fragen}}.',
  'You get the written estimate, with a number and a date.': 'Sie bekommen die Kostenschätzung, mit Nummer und Datum.',
  'Put estimate no. {number} where you will find it. It never changes.':
    'Legen Sie die Kostenschätzung Nr. {number} dahin, wo Sie sie finden. Sie ändert sich nie.',
  'After the first winter we compare your bills with it. We show what was weather, price and the rest.':
    'Nach dem ersten Winter vergleichen wir Ihre Rechnungen damit. Wir zeigen, was am Wetter lag, am Preis und am Rest.',
  'Questions? Ask {contact}.': 'Fragen? Wenden Sie sich an {contact}.',
  'Questions? Ask us. Our number stands on the paper.': 'Fragen? Rufen Sie uns an. Unsere Nummer steht auf dem Papier.',
  'The factor for the rooms alone is not the one behind the bill. Say so now.':
    'Die Arbeitszahl nur für die Räume ist nicht die der Stromrechnung. Sagen Sie es jetzt, bevor es die erste Rechnung tut.',
  'Call us if rooms stay cold, hot water runs out, or the backup heater runs day after day.':
    'Rufen Sie an, wenn Räume kalt bleiben, das Warmwasser ausgeht oder der Heizstab Tag für Tag läuft.',
  'At {kW} kW it takes about {hours} hours to heat from cold.':
    'Mit {kW} kW braucht er kalt etwa {hours} Stunden zum Aufheizen.',
  'At {kW} kW it takes about {minutes} minutes to heat from cold.':
    'Mit {kW} kW braucht er kalt etwa {minutes} Minuten zum Aufheizen.',
};
