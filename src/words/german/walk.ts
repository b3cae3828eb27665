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
  '{price} a unit, {tariff}': '{price} je kWh, {tariff}',
  Date: 'Datum',
  '{count, plural, one {One question is} other {# questions are}} still open, and will be printed in the estimate as they are.':
    '{count, plural, one {Eine Frage ist} other {# Fragen sind}} noch offen. So {count, plural, one {kommt sie} other {kommen sie}} in die Kostenschätzung.',
  'Note (optional)': 'Notiz (freiwillig)',
  'It is printed in the household’s estimate.': 'Sie wird in der Kostenschätzung mitgedruckt.',
  'Saving …': 'Wird gespeichert …',
  'Save the written estimate': 'Kostenschätzung speichern',
  'A written estimate never changes. New figures get a new number.':
    'Eine gespeicherte Kostenschätzung ändert sich nie. Neue Zahlen bekommen eine neue Nummer.',
  'as HTML': 'als HTML',
  'figures as CSV': 'Zahlen als CSV',
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
  'The heat it needs': 'Die Wärme, die es braucht',
  'Where the heat comes from': 'Woher die Wärme kommt',
  'What it costs': 'Was es kostet',
  'How sure we are': 'Wie sicher wir sind',
  'What could change it': 'Was es ändern könnte',
  'What the next years may bring': 'Was die nächsten Jahre bringen können',
  'What to watch, and when to call': 'Worauf zu achten ist und wann Sie anrufen',
  'What was agreed, and what comes next': 'Was vereinbart ist und was nun kommt',
  'Pages shown: {shown} of {all}': 'Gezeigte Seiten: {shown} von {all}',
  'We cannot say yet what would change your cost.': 'Wir können noch nicht sagen, was Ihre Kosten ändern würde.',
  'The price and the winter nobody can choose. The rooms, the hot water and the settings are yours.':
    'Preis und Winter kann niemand wählen. Räume, Warmwasser und Einstellungen liegen bei Ihnen.',
  '{name} · each change by itself, all else as it is': '{name} · jede Änderung für sich, alles andere wie jetzt',
  'Move a slider while they watch, then take it back. Leave the reckoning as it was found.':
    'Bewegen Sie einen Schieber, während man zusieht, und stellen Sie ihn zurück. Lassen Sie die Rechnung, wie sie war.',
  'Your heating and hot water would cost about {cost} a year.':
    'Heizung und Warmwasser würden Sie etwa {cost} im Jahr kosten.',
  'By the month: about {amount} against {otherAmount}.': 'Im Monat: etwa {amount} gegen {otherAmount}.',
  'By the month: about {amount}.': 'Im Monat: etwa {amount}.',
  'That is about the same.': 'Das ist etwa gleich viel.',
  'That is about {apart} a year {way, select, less {less} other {more}}.':
    'Das sind etwa {apart} im Jahr {way, select, less {weniger} other {mehr}}.',
  '{name} · {prices} · the dot is the sum with the figures given':
    '{name} · {prices} · der Punkt ist die Rechnung mit den genannten Zahlen',
  'It costs more to run here. Say it plainly; do not move on until they have heard it.':
    'Hier kostet sie im Betrieb mehr. Sagen Sie es offen; gehen Sie erst weiter, wenn es angekommen ist.',
  'The electricity prices ended {days, plural, one {# day} other {# days}} ago. Say so.':
    'Die Strompreise endeten vor {days, plural, one {# Tag} other {# Tagen}}. Sagen Sie das.',
  'Standing charges and yearly service are in these figures; the price of putting it in is not.':
    'Grundpreise und jährliche Wartung sind in diesen Zahlen, der Preis des Einbaus nicht.',
  'With {other} it would be about {amount}.': 'Zum Vergleich: {other}, etwa {amount}.',
  'With what you have now it would be about {amount}.': 'Mit dem, was Sie jetzt haben, wären es etwa {amount}.',
  'Today they cost about {amount}.': 'Heute kosten sie etwa {amount}.',
  'It comes from your record, put right for the weather.': 'Das kommt aus Ihren Messwerten, um das Wetter bereinigt.',
  'It comes from the home itself, not from bills, so it is less sure.':
    'Das kommt aus dem Haus selbst, nicht aus Rechnungen, und ist darum weniger sicher.',
  'Your home needs about {heat} of heat in a typical year.':
    'Ihr Haus braucht in einem normalen Jahr etwa {heat} Wärme.',
  'About {water} of it is hot water.': 'Etwa {water} davon sind für Warmwasser.',
  'It could be as low as {low} or as high as {high}.': 'Es können auch nur {low} sein oder bis zu {high}.',
  '{name} · typical winter, {region} · a unit is one kWh on your bill':
    '{name} · üblicher Winter, {region} · Kilowattstunden wie auf Ihrer Rechnung',
  'Any boiler or heat pump must make this heat. Only what is bought to make it differs.':
    'Jede Heizung muss diese Wärme liefern. Nur was dafür gekauft wird, ist verschieden.',
  '{count} ways of working it out stand behind this figure.': 'Hinter dieser Zahl stehen {count} Rechenwege.',
  '{name}: we have no bills of yours yet, so we start from the home itself.':
    '{name}: Wir haben noch keine Rechnungen von Ihnen, darum gehen wir vom Haus selbst aus.',
  'Its size, age and place tell us roughly how much heat it needs. Your own bills would make the answer surer.':
    'Größe, Alter und Ort sagen ungefähr, wie viel Wärme es braucht. Ihre Rechnungen machen die Antwort sicherer.',
  'Ask for a year of bills or meter readings before any figure is promised.':
    'Bitten Sie um Rechnungen oder Zählerstände eines Jahres, bevor Sie etwas zusagen.',
  '{name}: heating and hot water cost about {cost} a year today.':
    '{name}: Heizung und Warmwasser kosten heute etwa {cost} im Jahr.',
  '{name}: we have no bills of yours yet. A home like it pays about {cost} a year.':
    '{name}: Wir haben noch keine Rechnungen von Ihnen. Ein solches Haus zahlt etwa {cost} im Jahr.',
  'That is for {bought} a year through {now}, in a typical winter.':
    'Das sind {bought} im Jahr für {now}, in einem üblichen Winter.',
  'It comes from your own records of {from} to {to}.': 'Das kommt aus Ihren Messwerten vom {from} bis {to}.',
  'It comes from your own records.': 'Das kommt aus Ihren Messwerten.',
  'That is worked out from the home itself.': 'Das ist aus dem Haus selbst errechnet.',
  'Nothing is known of this home yet, so a typical one stands in.':
    'Von diesem Haus ist noch nichts bekannt, darum steht ein übliches da.',
  'It could be {range}. Your own bills would make it surer.':
    'Es können {range} sein. Ihre Rechnungen machen es sicherer.',
  'Ask: does that sound like your bills? If not, stop here and look at them together.':
    'Fragen Sie: Klingt das nach Ihren Rechnungen? Wenn nicht, sehen Sie hier zuerst gemeinsam nach.',
  'No record was given. Ask for a year of bills or readings before any figure is promised.':
    'Es gibt keine Messwerte. Bitten Sie um Rechnungen oder Stände eines Jahres, bevor Sie etwas zusagen.',
  'The paper you keep has the number {number}. Put it where you will find it.':
    'Ihre Unterlage hat die Nummer {number}. Legen Sie sie dahin, wo Sie sie finden.',
  'We write all this down with a number and a date, and you keep the paper.':
    'Wir schreiben das alles mit Nummer und Datum auf, und Sie behalten das Papier.',
  'You look for a year of bills or readings, and we work it out again.':
    'Sie suchen Rechnungen oder Stände eines Jahres, und wir rechnen noch einmal.',
  'We settle {count, plural, one {one open question} other {# open questions}} first.':
    'Wir klären zuerst {count, plural, one {eine offene Frage} other {# offene Fragen}}.',
  'When the first winter’s bills are in, we hold them against the paper together.':
    'Sind die Rechnungen des ersten Winters da, legen wir sie gemeinsam neben das Papier.',
  'If they differ, we show how much is weather, how much is price and what is left.':
    'Weichen sie ab, zeigen wir, wie viel am Wetter liegt, wie viel am Preis, und was übrig bleibt.',
  'We have put it in writing: about {amount} a year, promise {number} of {date}.':
    'Wir haben es aufgeschrieben: etwa {amount} im Jahr, Zusage {number} vom {date}.',
  'Nothing is promised yet. If you agree, we put these figures in writing.':
    'Noch ist nichts zugesagt. Wenn Sie einverstanden sind, schreiben wir diese Zahlen auf.',
  'The paper never changes afterwards.': 'Das Papier ändert sich danach nie.',
  'Today’s figure is about {amount} a year, with the range you saw.':
    'Die Zahl von heute ist etwa {amount} im Jahr, mit der Spanne, die Sie gesehen haben.',
  'Ask what they will do first, and write it into the notes.':
    'Fragen Sie, was man zuerst tun wird, und schreiben Sie es in die Notizen.',
  'Keep the promise before you leave.': 'Bewahren Sie die Zusage auf, bevor Sie gehen.',
  'Hot water, pumps and standby are included.': 'Warmwasser, Pumpen und Stand-by sind enthalten.',
  'Hot water, pumps and standby are counted; for the rooms alone the factor is {factor}.':
    'Warmwasser, Pumpen und Bereitschaft sind mitgezählt; für die Räume allein ist die Arbeitszahl {factor}.',
  '{name} · factor {factor} for heat and hot water together, pumps included':
    '{name} · Arbeitszahl {factor} für Heizung und Warmwasser zusammen, mit Pumpen',
  'A factor for the rooms alone is not the household’s factor. Say so now, before the first bill does.':
    'Eine Arbeitszahl nur für die Räume ist nicht die des Haushalts. Sagen Sie es jetzt, bevor es die erste Rechnung tut.',
  'We have nothing yet to hold the heat pump against.': 'Wir haben noch nichts, womit wir die Wärmepumpe vergleichen.',
  'Once we know what you pay now, this page counts how often the heat pump comes out dearer.':
    'Sobald wir wissen, was Sie jetzt zahlen, zählt diese Seite, wie oft die Wärmepumpe teurer ist.',
  '{name} · against {other}': '{name} · gegen {other}',
  'Ask: how would you put that to somebody who was not here? It shows whether the page was clear.':
    'Fragen Sie: Wie würden Sie das jemandem sagen, der nicht dabei war? Das zeigt, ob die Seite klar war.',
  'Read the meter on the first of each month, and call us if it runs high.':
    'Lesen Sie am Ersten jedes Monats den Zähler ab, und rufen Sie an, wenn er hoch läuft.',
  'Show where the meter is and how it is read.': 'Zeigen Sie, wo der Zähler ist und wie man ihn abliest.',
  '{name} · purchase and running costs, in the money of today · the bands hold 8 in 10 homes like yours':
    '{name} · Anschaffung und Betrieb, in heutigem Geld · die Bänder halten 8 von 10 Häusern wie Ihrem',
  '{name} · running costs only, in the money of today · the bands hold 8 cases in 10':
    '{name} · nur Betrieb, in heutigem Geld · die Bänder halten 8 von 10 Fällen',
  'Do not sell this page. The prices of the years to come are anybody’s guess.':
    'Verkaufen Sie diese Seite nicht. Die Preise der kommenden Jahre kennt niemand.',
  'By the month. {title}': 'Nach Monaten. {title}',
  'Cost of each month': 'Kosten jedes Monats',
  Pages: 'Seiten',
  'What if: {whatIf}. These are not today’s figures.': 'Was wäre, wenn: {whatIf}. Das sind nicht die Zahlen von heute.',
  'What if …': 'Was wäre, wenn …',
  'Inside the machine': 'Im Inneren des Geräts',
  Back: 'Zurück',
  'To the desk': 'Zum Schreibtisch',
  Next: 'Weiter',
  Month: 'Monat',
  'Units we expect': 'Erwartete Kilowattstunden',
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
  ', estimate {number}': ', Kostenschätzung {number}',
  'Other forms': 'Andere Formate',
};
