import type { Catalogue } from '../say.ts';

/** What the next years may bring. */
export const LIFETIME: Catalogue = {
  '{years, plural, one {one year} other {# years}}': '{years, plural, one {ein Jahr} other {# Jahre}}',
  'We cannot say yet what the next years may bring.':
    'Was die nächsten Jahre bringen können, lässt sich noch nicht sagen.',
  'Over {years, plural, one {one year} other {# years}} both would cost about the same to run.':
    'In {years, plural, one {einem Jahr} other {# Jahren}} würden beide im Betrieb etwa gleich viel kosten.',
  'Over {years, plural, one {one year} other {# years}} the heat pump might cost about {amount} {way, select, less {less} other {more}} to run.':
    'In {years, plural, one {einem Jahr} other {# Jahren}} könnte die Wärmepumpe im Betrieb etwa {amount} {way, select, less {weniger} other {mehr}} kosten.',
  'Over {years, plural, one {one year} other {# years}} both would cost about the same, installation included.':
    'In {years, plural, one {einem Jahr} other {# Jahren}} würden beide etwa gleich viel kosten, mit Einbau.',
  'Over {years, plural, one {one year} other {# years}} the heat pump might cost about {amount} more in all.':
    'In {years, plural, one {einem Jahr} other {# Jahren}} könnte die Wärmepumpe insgesamt etwa {amount} mehr kosten.',
  'At first the heat pump costs less. Over {years, plural, one {one year} other {# years}} it might cost about {amount} more in all.':
    'Am Anfang kostet die Wärmepumpe weniger. In {years, plural, one {einem Jahr} other {# Jahren}} könnte sie insgesamt etwa {amount} mehr kosten.',
  'Over {years, plural, one {one year} other {# years}} the heat pump might cost about {amount} less in all, from the first day on.':
    'In {years, plural, one {einem Jahr} other {# Jahren}} könnte die Wärmepumpe insgesamt etwa {amount} weniger kosten, vom ersten Tag an.',
  'Over {years, plural, one {one year} other {# years}} the heat pump might cost about {amount} less in all.':
    'In {years, plural, one {einem Jahr} other {# Jahren}} könnte die Wärmepumpe insgesamt etwa {amount} weniger kosten.',
  'The heat pump costs more to install. It might pay that back after about {paid, plural, one {one year} other {# years}}.':
    'Der Einbau der Wärmepumpe kostet mehr. Nach etwa {paid, plural, one {einem Jahr} other {# Jahren}} könnte sich das ausgeglichen haben.',
  'We are not sure: {range} for 8 in 10 homes like yours.':
    'Sicher ist das nicht: {range} bei 8 von 10 Häusern wie Ihrem.',
  'Compared with {other}, it comes out about the same {kind, select, whole {in total} other {to run}}.':
    'Im Vergleich ({other}): {kind, select, whole {insgesamt} other {im Betrieb}} etwa gleich viel.',
  'Compared with {other}, it comes out about {amount} {way, select, less {less} other {more}} {kind, select, whole {in total} other {to run}}.':
    'Im Vergleich ({other}): {kind, select, whole {insgesamt} other {im Betrieb}} etwa {amount} {way, select, less {weniger} other {mehr}}.',
  'We are not sure. Compared with {other}, it is {range} for 8 in 10 homes like yours.':
    'Sicher ist das nicht. Im Vergleich ({other}): bei 8 von 10 Häusern wie Ihrem {range}.',
  '{range} less': '{range} weniger',
  '{range} more': '{range} mehr',
  '{more} more to {less} less': '{more} mehr bis {less} weniger',
  'After {years, plural, one {one year} other {# years}} it has cost less {kind, select, whole {in all} other {to run}} in at least 19 futures out of 20. Nobody can be certain.':
    'Nach {years, plural, one {einem Jahr} other {# Jahren}} hat sie in mindestens 19 von 20 möglichen Verläufen {kind, select, whole {insgesamt} other {im Betrieb}} weniger gekostet. Sicher sein kann niemand.',
  'After {years, plural, one {one year} other {# years}} it has cost less {kind, select, whole {in all} other {to run}} in fewer than 1 future out of 20.':
    'Nach {years, plural, one {einem Jahr} other {# Jahren}} hat sie in weniger als 1 von 20 möglichen Verläufen {kind, select, whole {insgesamt} other {im Betrieb}} weniger gekostet.',
  'After {years, plural, one {one year} other {# years}} it has cost less {kind, select, whole {in all} other {to run}} in {less, plural, one {# future} other {# futures}} out of {all}, and more in {more}.':
    'Nach {years, plural, one {einem Jahr} other {# Jahren}} hat sie in {less, plural, other {#}} von {all} möglichen Verläufen {kind, select, whole {insgesamt} other {im Betrieb}} weniger gekostet, in {more} mehr.',
  'It costs less to install, but after about {years, plural, one {one year} other {# years}} it has cost more in total.':
    'Der Einbau kostet weniger, aber nach etwa {years, plural, one {einem Jahr} other {# Jahren}} hat sie insgesamt mehr gekostet.',
  'The heat pump costs no more to install, so nothing has to be paid back.':
    'Der Einbau der Wärmepumpe kostet nicht mehr, also muss sich nichts ausgleichen.',
  'The installation price is not paid back within {years, plural, one {one year} other {# years}}.':
    'Der Einbaupreis gleicht sich in {years, plural, one {einem Jahr} other {# Jahren}} nicht aus.',
  'The installation price might be paid back after about {years, plural, one {one year} other {# years}}.':
    'Der Einbaupreis könnte sich nach etwa {years, plural, one {einem Jahr} other {# Jahren}} ausgeglichen haben.',
  'Fewer than 1 in 10 homes like yours would get there.': 'Weniger als 1 von 10 Häusern wie Ihrem käme dahin.',
  'For 8 in 10 homes like yours it is {from} or more, perhaps not within {years, plural, one {one year} other {# years}} at all.':
    'Bei 8 von 10 Häusern wie Ihrem dauert es {from} oder länger, vielleicht gelingt es in {years, plural, one {einem Jahr} other {# Jahren}} gar nicht.',
  'For 8 in 10 homes like yours it is {from} to {to}.': 'Bei 8 von 10 Häusern wie Ihrem dauert es {from} bis {to}.',
  'Money later is worth less than money now, here by {rate} a year.':
    'Geld später ist weniger wert als Geld heute, hier um {rate} im Jahr.',
  'Counted that way, both come out about the same.': 'So gerechnet liegen beide etwa gleich.',
  'For 8 in 10 homes like yours it costs {range}.': 'Bei 8 von 10 Häusern wie Ihrem kostet sie {range}.',
  'Counted that way, the heat pump is about {amount} {side, select, ahead {ahead} other {behind}}.':
    'So gerechnet liegt die Wärmepumpe etwa {amount} {side, select, ahead {vorn} other {zurück}}.',
  'So a price that is paid back can still be a loss.':
    'Ein Preis, der sich ausgleicht, kann also trotzdem ein Verlust sein.',
  'Spread evenly, all that is paid is about {amount} a year with the heat pump. With {other} it is about {otherAmount}. What it is still worth at the end is taken off.':
    'Gleichmäßig verteilt zahlt man mit der Wärmepumpe alles in allem etwa {amount} im Jahr. Zum Vergleich, {other}: etwa {otherAmount}. Der Restwert am Ende ist abgezogen.',
  'In instalments over {years, plural, one {one year} other {# years}}, {interest, select, none {without interest} other {at {rate} interest}}, it is {instalment} a month. With running it that is {together}, compared with {amount} for {other}.':
    'In Raten über {years, plural, one {ein Jahr} other {# Jahre}}, {interest, select, none {ohne Zins} other {zu {rate} Zins}}, sind es {instalment} im Monat. Mit dem Betrieb sind es {together}, verglichen mit {amount} ({other}).',
  'Until price and grant are typed, this is not shown to the customer.':
    'Bis Preis und Förderung eingegeben sind, wird das dem Kunden nicht gezeigt.',
  'We let the price of electricity go its own way: in the middle it {way, select, level {keeps pace with other prices} up {rises {rate} a year against other prices} other {falls {rate} a year against other prices}}.':
    'Den Strompreis lassen wir seinen eigenen Weg gehen: Im Mittel {way, select, level {hält er mit anderen Preisen Schritt} up {steigt er um {rate} im Jahr gegenüber anderen Preisen} other {fällt er um {rate} im Jahr gegenüber anderen Preisen}}.',
  'In the middle, fuel and electricity keep pace with other prices.':
    'Im Mittel halten Brennstoff und Strom mit anderen Preisen Schritt.',
  'In the middle, electricity {way, select, level {keeps pace with other prices} up {rises {rate} a year against other prices} other {falls {rate} a year against other prices}}.':
    'Im Mittel {way, select, level {hält Strom mit anderen Preisen Schritt} up {steigt Strom um {rate} im Jahr gegenüber anderen Preisen} other {fällt Strom um {rate} im Jahr gegenüber anderen Preisen}}.',
  'The other fuel {way, select, level {keeps pace with other prices} up {rises {rate} a year against other prices} other {falls {rate} a year against other prices}}.':
    'Der andere Brennstoff {way, select, level {hält mit anderen Preisen Schritt} up {steigt um {rate} im Jahr gegenüber anderen Preisen} other {fällt um {rate} im Jahr gegenüber anderen Preisen}}.',
  'This is a picture of what may come, not advice.': 'Das ist ein Bild von dem, was kommen kann, und kein Rat.',
  'Nobody knows the prices of the years to come.': 'Niemand kennt die Preise der kommenden Jahre.',
  'All amounts are in today’s money.': 'Alle Beträge sind in heutigem Geld.',
  'The installation price is not counted, as none was given.':
    'Der Einbau ist nicht gezählt, weil kein Preis angegeben ist.',
  'No grant is counted.': 'Eine Förderung ist nicht gezählt.',
  'The grant is more than the heat pump costs. Check both.':
    'Die Förderung ist höher als der Preis der Wärmepumpe. Prüfen Sie beide.',
  'Nothing is counted for a new boiler or heater later, as no price was given.':
    'Für eine spätere neue Heizung ist nichts gezählt, weil kein Preis angegeben ist.',
  'We assume that what you have now would be replaced today.':
    'Wir nehmen an, dass die jetzige Heizung heute ersetzt würde.',
  'At the end of its life the heat pump is bought again at its full price.':
    'Am Ende ihrer Lebensdauer wird die Wärmepumpe zum vollen Preis neu gekauft.',
};
