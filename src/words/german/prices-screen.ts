import type { Catalogue } from '../say.ts';

/** The fields of the prices: tariffs, fuels, service, purchase. */
export const PRICES_SCREEN: Catalogue = {
  'Published average price': 'Veröffentlichter Durchschnittspreis',
  'Which tariff': 'Welcher Tarif',
  '“{first}” and “{second}” come out about the same, at about {amount} a year for all electricity.':
    '„{first}“ und „{second}“ kosten etwa gleich viel: rund {amount} im Jahr für allen Strom.',
  'Of {count} tariffs, “{first}” costs this home least: about {amount} a year for all its electricity.':
    'Von {count} Tarifen ist „{first}“ für dieses Haus der günstigste: rund {amount} im Jahr für allen Strom.',
  'That is about {amount} a year less than on “{used}”, which the estimate rests on now.':
    'Das sind rund {amount} im Jahr weniger als mit „{used}“, dem Tarif dieser Schätzung.',
  'With the heat pump it counts {kWh} of other electricity, at the hours that your meter shows.':
    'Neben der Wärmepumpe sind {kWh} übriger Strom gezählt, zu den Stunden, die Ihr Zähler zeigt.',
  'With the heat pump it counts {kWh} of other electricity, as usual for such a home. That is assumed.':
    'Neben der Wärmepumpe sind {kWh} übriger Strom gezählt, wie in solchen Häusern üblich. Das ist angenommen.',
  'With the heat pump it counts {kWh} of other electricity. Its hours are those of a usual home.':
    'Neben der Wärmepumpe sind {kWh} übriger Strom gezählt, zu den Stunden eines üblichen Haushalts.',
  '“{name}” is the cheapest in {count} of 20 futures. One tariff may rise and another not: that is not in this count.':
    '„{name}“ ist in {count} von 20 Fällen der günstigste. Dass ein Tarif steigt und ein anderer nicht, ist nicht mitgezählt.',
  'With hot water made in its cheap hours, “{name}” would come to about {amount}, and be the cheapest.':
    'Wird das Warmwasser in den günstigen Stunden bereitet, kostet „{name}“ rund {amount} und ist der günstigste.',
  'With the tariff that suits each best, fuel counted in: about {pump} with the heat pump, about {present} as now.':
    'Mit dem jeweils günstigsten Tarif, Brennstoff mitgezählt: rund {pump} mit Wärmepumpe, rund {present} wie jetzt.',
  'On “{name}”, hot water made in the cheap hours saves about {amount}. The tank must hold a day’s need.':
    'Mit „{name}“ spart Warmwasser aus den günstigen Stunden rund {amount}. Der Speicher muss einen Tag reichen.',
  'On “{name}”, hot water made in the cheap hours costs about {amount} more.':
    'Mit „{name}“ kostet Warmwasser aus den günstigen Stunden rund {amount} mehr.',
  '“{name}” follows the market. Its prices are known a day before, and a dear winter costs more.':
    '„{name}“ folgt dem Markt. Die Preise stehen erst am Vortag fest; ein teurer Winter kostet mehr.',
  '“{name}” is left out: it does not give every hour one price. Its faults are named above.':
    '„{name}“ fehlt: Er nennt nicht für jede Stunde einen Preis. Seine Fehler stehen oben.',
  '“{name}” is left out: it charges for the highest half-hour. Only half-hourly readings of the home show that.':
    '„{name}“ fehlt: Er berechnet die höchste halbe Stunde. Die zeigen nur Halbstundenwerte des Hauses.',
  'The heat pump runs at its usual hours on each. What moving its hours would save is not counted.':
    'Die Wärmepumpe läuft überall zu ihren üblichen Zeiten. Was ein Verschieben spart, ist nicht gezählt.',
  Tariff: 'Tarif',
  'All electricity of the home in a year, heat pump included, on each tariff.':
    'Aller Strom des Hauses im Jahr, mit Wärmepumpe, in jedem Tarif.',
  'all electricity, a year': 'aller Strom im Jahr',
  'other use': 'übriger Strom',
  Name: 'Name',
  'Price of a unit': 'Arbeitspreis',
  'at all other times': 'zu allen anderen Zeiten',
  'this price': 'dieser Preis',
  'Add a time': 'Zeit hinzufügen',
  'Take this price out': 'Diesen Preis herausnehmen',
  'each day': 'jeden Tag',
  'each month': 'jeden Monat',
  'The first units cost another price': 'Die ersten Kilowattstunden kosten anders',
  'Steps of {name}': 'Mengenstufen von {name}',
  'Counted anew': 'Neu gezählt',
  'The first': 'Die ersten',
  'Then up to': 'Dann bis',
  'Price of these': 'Preis dafür',
  'The price above holds for all units beyond.': 'Für alle weiteren Kilowattstunden gilt der Preis darüber.',
  'Add a step': 'Mengenstufe hinzufügen',
  'Take the last step out': 'Letzte Mengenstufe herausnehmen',
  '{months}, your own tariff': '{months}, Ihr eigener Tarif',
  'your own price': 'Ihr eigener Preis',
  '{months}, price cap average, not your tariff': '{months}, Mittel der britischen Preisgrenze, nicht Ihr Tarif',
  '{months}, average, not your tariff': '{months}, Mittelwert, nicht Ihr Tarif',
  '{months}, guide page': '{months}, Ratgeberseite',
  'assumed price': 'angenommener Preis',
  'from {month}': 'ab {month}',
  '{price}, old': '{price}, alt',
  'electricity by day and night': 'Strom bei Tag und Nacht',
  '{name}: nobody publishes this price; it is assumed.':
    '{name}: diesen Preis veröffentlicht niemand; er ist angenommen.',
  '{name}: the price is of {months} and ended {days, plural, one {# day} other {# days}} ago.':
    '{name}: der Preis ist von {months} und endete vor {days, plural, one {# Tag} other {# Tagen}}.',
  'It stands as assumed, as was said on {date}.': 'Er gilt als angenommen, so gesagt am {date}.',
  'Prices to settle first': 'Erst diese Preise klären',
  'Why a price stands, if you like': 'Warum ein Preis gilt, wenn Sie mögen',
  'It stands as assumed': 'Gilt als angenommen',
  'Type it': 'Eingeben',
  'Type the price of today, leave that way of heating out, or say that this price stands as assumed: on this screen, or in the household file as {key}.':
    'Geben Sie den heutigen Preis ein, lassen Sie diese Heizungsart weg, oder sagen Sie, dass dieser Preis als angenommen gilt: auf dieser Seite, oder in der Haushaltsdatei mit {key}.',
  Service: 'Wartung',
  'usual price of one visit a year': 'üblicher Preis eines Besuchs im Jahr',
  'no published price found': 'kein veröffentlichter Preis gefunden',
  'public guide page, {0}': 'öffentliche Ratgeberseite, {0}',
  'Ofgem price cap, {0}, average for Great Britain, as quoted alike in two public files':
    'Ofgem price cap, {0}, Mittel für Großbritannien, gleich angegeben in zwei öffentlichen Dateien',
  'UK Treasury Green Book, real rate, from memory': 'UK Treasury Green Book, realer Satz, aus dem Gedächtnis',
  '{sign} a year': '{sign}/Jahr',
  Gas: 'Gas',
  'Electricity by day and night, for storage heaters': 'Strom bei Tag und Nacht, für Nachtspeicherheizungen',
  'New boiler instead': 'Stattdessen neuer Kessel',
  'Heat pump again, pipes kept': 'Neue Wärmepumpe, Rohre bleiben',
  'Only where the years outlast the machine.': 'Nur wenn die Jahre länger reichen als das Gerät.',
  'Look ahead': 'Vorausschau',
  'Heat pump lasts': 'Wärmepumpe hält',
  'New boiler lasts': 'Neuer Kessel hält',
  'Present heating still lasts': 'Heutige Heizung hält noch',
  'Electricity grows': 'Strompreis steigt',
  'Fuel grows': 'Brennstoffpreis steigt',
  'Doubt of both': 'Unsicherheit bei beiden',
  Discount: 'Abzinsung',
  'What it costs to put in': 'Was der Einbau kostet',
  'Only for the years to come. No price is assumed: they become a page once the heat pump’s own and the grant are typed, 0 where there is none.':
    'Nur für die kommenden Jahre. Kein Preis wird angenommen: Eine Seite werden sie, wenn der Preis der Wärmepumpe und der Zuschuss eingetippt sind, 0 wo es keinen gibt.',
  'Instalments run': 'Raten laufen',
  'Interest on them': 'Zins darauf',
  'Growth and discount are beyond general inflation. Nobody knows them.':
    'Anstieg und Abzinsung verstehen sich über die allgemeine Teuerung hinaus. Niemand kennt sie.',
  '% a year': '%/Jahr',
  'Give the tariff a name, as it stands on the bill.':
    'Geben Sie dem Tarif einen Namen, wie er auf der Rechnung steht.',
  'Say where the prices were taken from, such as the bill of March.':
    'Geben Sie an, woher die Preise stammen, etwa von der Rechnung vom März.',
  'Say from which day these prices hold, as in 31/12/2025.':
    'Geben Sie an, ab welchem Tag diese Preise gelten, etwa 31.12.2025.',
  'The standing charge is missing.': 'Der Grundpreis fehlt.',
  'Each price needs a name, such as day or night.': 'Jeder Preis braucht einen Namen, etwa Tag oder Nacht.',
  'The price for {name} is missing.': 'Der Preis fehlt für: {name}.',
  'one of the times': 'eine der Zeiten',
  'The times of {name} are not complete.': 'Die Zeiten sind nicht vollständig für: {name}.',
  'one of the prices': 'einen der Preise',
  'The steps of {name} are not complete.': 'Die Mengenstufen sind nicht vollständig für: {name}.',
  'The price of a kW is missing.': 'Der Preis für ein kW fehlt.',
  'measured: read from a bill or letter': 'gemessen: aus Rechnung oder Brief',
  'Tariff for {fuel, select, gas {gas} other {electricity}}': 'Tarif für {fuel, select, gas {Gas} other {Strom}}',
  'Name of the tariff': 'Name des Tarifs',
  'Taken from': 'Herkunft',
  'bill of March 2026': 'Rechnung vom März 2026',
  'How sure': 'Wie sicher',
  'Add prices from a later day': 'Preise ab einem späteren Tag hinzufügen',
  'Keep this tariff': 'Diesen Tarif behalten',
  '{price} a month': '{price} im Monat',
  '{price} a day': '{price} am Tag',
  '{dated, select, no {} other {Half-hourly prices for {days}; beside them }}{bands}{steps, select, no {} other {, after the first units}}, standing charge {standing}{sent, select, no {} other {, export {paid}}}.':
    '{dated, select, no {} other {Halbstündliche Preise ({days}), daneben }}{bands}{steps, select, no {} other {, nach den ersten Kilowattstunden}}, Grundpreis {standing}{sent, select, no {} other {, Einspeisung {paid}}}.',
  'Taken from: {origin}': 'Herkunft: {origin}',
  '{name} holds a tariff for {fuel, select, gas {gas} other {electricity}}. Bring it in under {fuel, select, gas {gas} other {electricity}}.':
    '{name} enthält einen Tarif für {fuel, select, gas {Gas} other {Strom}}. Holen Sie ihn bei {fuel, select, gas {Gas} other {Strom}} herein.',
  'Storage heaters need a cheap night. They are reckoned on these prices, the other ways of heating are not.':
    'Eine Nachtspeicherheizung braucht eine billige Nacht. Nur sie wird mit diesen Preisen gerechnet, keine andere Heizung.',
  '{name} is on the shelf, for other households too.': '{name} liegt in der Ablage, auch für andere Haushalte.',
  'Prices used': 'Benutzte Preise',
  'built-in day and night prices': 'eingebaute Preise für Tag und Nacht',
  'the published average': 'der veröffentlichte Durchschnitt',
  'Type a tariff': 'Tarif eingeben',
  'Bring in a tariff file': 'Tarifdatei hereinholen',
  'Change it': 'Ändern',
  'Keep on the shelf': 'In die Ablage legen',
  'Save as a file': 'Als Datei speichern',
  'Take it out': 'Herausnehmen',
  '{name} holds now.': '{name} gilt jetzt.',
  'The shelf: tariffs for any household': 'Ablage: Tarife für alle Haushalte',
  'The shelf: tariffs for any household, {count, plural, =0 {none yet} other {#}}':
    'Ablage: Tarife für alle Haushalte, {count, plural, =0 {noch keine} other {#}}',
  'Use a tariff above, then keep it on the shelf. It is then here for the next home.':
    'Benutzen Sie oben einen Tarif, dann legen Sie ihn in die Ablage. So ist er für das nächste Haus da.',
  'Use it here': 'Hier benutzen',
  'Off the shelf': 'Aus der Ablage nehmen',
  'one price': 'ein Preis',
  'day and night': 'Tag und Nacht',
  'more prices': 'mehr Preise',
  'with VAT in them': 'mit Mehrwertsteuer',
  'without VAT': 'ohne Mehrwertsteuer',
  '{sign} a month': '{sign}/Monat',
  'Prices from {day}': 'Preise ab {day}',
  'a day not said yet': 'einem noch nicht genannten Tag',
  'Prices from': 'Preise ab',
  'Standing charge in': 'Grundpreis in',
  'Prices are': 'Preise sind',
  'By the clock': 'Nach der Uhr',
  'Add a price': 'Preis hinzufügen',
  'Take these prices out': 'Diese Preise herausnehmen',
  'England and Wales': 'England und Wales',
  Scotland: 'Schottland',
  'Northern Ireland': 'Nordirland',
  'Bank holidays, the meter’s clock, export, a charge on power':
    'Feiertage, Uhr des Zählers, Einspeisung, Leistungspreis',
  'cheap hours three times a day': 'dreimal am Tag günstige Stunden',
  'other hours': 'übrige Stunden',
  'heating hours': 'Heizstunden',
  'In summer its meter': 'Im Sommer wird sein Zähler',
  'is put forward an hour': 'eine Stunde vorgestellt',
  'stays on winter time': 'nicht vorgestellt (Winterzeit)',
  'Many older two-rate meters stay. Look at the meter or ask the supplier.':
    'Viele ältere Zweitarifzähler bleiben auf Winterzeit. Am Zähler nachsehen oder beim Versorger fragen.',
  'Bank holidays priced apart': 'Eigener Preis an Feiertagen',
  'no, like any weekday': 'nein, wie an jedem Wochentag',
  'Then tick “bank holidays” among the days of a price.':
    'Kreuzen Sie dann bei den Tagen eines Preises „an Feiertagen“ an.',
  'Paid for export': 'Vergütung für Einspeisung',
  'Kept with the tariff. The comparison does not count what is sent out.':
    'Bleibt beim Tarif stehen. Der Vergleich zählt Eingespeistes nicht.',
  '{sign} a kW': '{sign}/kW',
  'For each kW and month.': 'Je kW und Monat.',
  'Power agreed': 'Vereinbarte Leistung',
  'Left empty, the largest half-hour of the month counts.':
    'Bleibt es leer, zählt die höchste halbe Stunde des Monats.',
  'A price for each half-hour of {days}, {from} to {to}. Other days take the prices above.':
    'Ein Preis für jede halbe Stunde ({days}, {from} bis {to}). An anderen Tagen gelten die Preise darüber.',
  'Take the half-hours out': 'Die halben Stunden herausnehmen',
  '{tariff}. VAT is in the price.': '{tariff}. Die Mehrwertsteuer ist im Preis enthalten.',
  'Bank holidays are not in this week.': 'Feiertage gibt es in dieser Woche nicht.',
  'The first units of each day or month cost another price.':
    'Die ersten Kilowattstunden jedes Tages oder Monats kosten einen anderen Preis.',
  'The mean of the same half-hours, weekday by weekday.':
    'Der Durchschnitt derselben halben Stunden, Wochentag für Wochentag.',
  from: 'von',
  to: 'bis',
  'Days, {about}': 'Tage, {about}',
  'Months, {about}': 'Monate, {about}',
  '{weekdays} days a week': '{weekdays} Tage in der Woche',
  'every day': 'jeden Tag',
  '{week} and bank holidays': '{week} und an Feiertagen',
  'all year': 'das ganze Jahr',
  '{months} months': '{months} Monate',
};
