import type { Catalogue } from '../say.ts';

/** The thread, the prices, the written estimate, what to watch, and the glossary. */
export const THREAD: Catalogue = {
  'Bills and readings': 'Rechnungen und Messwerte',
  'Heat needed': 'Wärmebedarf',
  'Heat pump': 'Wärmepumpe',
  Prices: 'Preise',
  'Running cost': 'Verbrauchskosten',
  'Written estimate': 'Kostenschätzung',
  'Bill check': 'Rechnungsprüfung',
  'nothing to show yet': 'noch nichts zu zeigen',
  day: 'Tag',
  days: 'Tage',
  month: 'Monat',
  months: 'Monate',
  '{name} {there} days in {days}': '{name} {there} von {days} Tagen',
  'needs a bill or a meter file': 'braucht eine Rechnung oder eine Zählerdatei',
  '{shown} and {count} more': '{shown} und {count} weitere',
  'needs a record, a heat loss or a floor area': 'braucht Messwerte, eine Heizlast oder eine Wohnfläche',
  '{count} kWh a year, give or take {spread}': '{count} kWh im Jahr, plus oder minus {spread}',
  '{count} kWh a year': '{count} kWh im Jahr',
  'needs a seasonal factor': 'braucht eine Arbeitszahl',
  'factor {factor} for heat and hot water (H4)': 'Arbeitszahl {factor} für Heizung und Warmwasser (H4)',
  'needs a tariff': 'braucht einen Tarif',
  'from {month}': 'ab {month}',
  old: 'alt',
  'needs heat, a machine and prices': 'braucht Wärmebedarf, Gerät und Preise',
  'none yet': 'noch keine',
  '{amount} a year, no. {number} of {date}': '{amount} im Jahr, Nr. {number} vom {date}',
  '{amount}, inside the estimate’s range': '{amount}, in der geschätzten Spanne',
  '{amount}, above the estimate’s range': '{amount}, über der geschätzten Spanne',
  '{amount}, below the estimate’s range': '{amount}, unter der geschätzten Spanne',
  '{amount}, for the whole home': '{amount}, für das ganze Haus',
  'needs a later bill': 'braucht eine spätere Rechnung',
  'needs a written estimate and a later bill': 'braucht eine Kostenschätzung und eine spätere Rechnung',
  // Prices
  'Electricity is reckoned at {price} a unit.': 'Strom ist mit {price} je Kilowattstunde gerechnet.',
  'Electricity is reckoned at {price} a unit and {fuel} at {fuelPrice}.':
    'Strom ist mit {price} je Kilowattstunde gerechnet, {fuel} mit {fuelPrice}.',
  'These prices hold from {month} on.': 'Diese Preise gelten ab {month}.',
  'These are prices of {months}.': 'Das sind Preise von {months}.',
  'prices from {month} on': 'Preise ab {month}',
  'prices of {months}': 'Preise von {months}',
  'The {fuel} prices ended {days, plural, one {# day} other {# days}} ago. Type today’s prices before you give an estimate.':
    'Die Preise für {fuel} sind vor {days, plural, one {# Tag} other {# Tagen}} abgelaufen. Geben Sie die heutigen ein, bevor Sie eine Kostenschätzung abgeben.',
  'The {fuel} price comes from {origin}.': 'Woher der Preis für {fuel} kommt: {origin}.',
  'Nobody has given the {fuel} price, so a published one stands in. Its source is named in the working.':
    'Niemand hat den Preis für {fuel} genannt, darum steht hier ein veröffentlichter. Seine Quelle nennt der Rechenweg.',
  'A unit of electricity costs {times} times as much as a unit of {fuel}.':
    'Eine Kilowattstunde Strom kostet {times}-mal so viel wie eine Kilowattstunde {fuel}.',
  'At {times} times, a unit of heat would cost the same from both.':
    'Beim {times}-Fachen würde die Wärme aus beiden gleich viel kosten.',
  '{price} a unit': '{price} je Kilowattstunde',
  // Written estimate
  'Estimate no. {number} of {date}: about {amount} a year.':
    'Kostenschätzung Nr. {number} vom {date}: etwa {amount} im Jahr.',
  'The written estimate is a copy of these figures, with a number and a date. It stays the same, whatever you change here later.':
    'Die Kostenschätzung ist eine Kopie dieser Zahlen mit Nummer und Datum. Sie bleibt gleich, was immer Sie hier später ändern.',
  'There is no written estimate yet. Save one when you hand the figures over.':
    'Noch gibt es keine Kostenschätzung. Speichern Sie eine, wenn Sie die Zahlen übergeben.',
  'The figures hold for heating and hot water in a typical year, at the prices named.':
    'Die Zahlen gelten für Heizung und Warmwasser in einem üblichen Jahr, zu den genannten Preisen.',
  'What other things in the home use is not counted.': 'Was andere Geräte im Haus brauchen, ist nicht mitgezählt.',
  // What to watch
  'Expect about {winter} of the year’s {year} from October to March.':
    'Rechnen Sie von Oktober bis März mit etwa {winter}, im ganzen Jahr mit {year}.',
  '{month} is likely to be the dearest month, at about {amount}.':
    '{month} wird wohl der teuerste Monat, mit etwa {amount}.',
  'Read the meter on the first day of each month and write it down.':
    'Lesen Sie am Ersten jedes Monats den Zähler ab und schreiben Sie es auf.',
  'Keep the paper we gave you beside your bills.': 'Heben Sie unsere Unterlage bei Ihren Rechnungen auf.',
  'Change one setting at a time, and wait two days before the next.':
    'Ändern Sie immer nur eine Einstellung und warten Sie zwei Tage bis zur nächsten.',
  'Call us if a month uses more than stands under “Call us above”.':
    'Rufen Sie uns an, wenn ein Monat mehr braucht, als unter „Anrufen ab“ steht.',
  '1 usual month in {months} lies above it with nothing wrong.':
    '1 üblicher Monat von {months} liegt darüber, ohne dass etwas nicht stimmt.',
  'With nothing wrong 1 usual month in {months} lies above it, and 1 year in {years} above {units}.':
    'Ohne dass etwas nicht stimmt, liegt 1 üblicher Monat von {months} darüber und 1 Jahr von {years} über {units}.',
  'Call us if the rooms stay cold or the hot water runs out.':
    'Rufen Sie uns an, wenn die Räume kalt bleiben oder das Warmwasser ausgeht.',
  'Call us if the backup heater comes on day after day.': 'Rufen Sie uns an, wenn der Heizstab Tag für Tag anspringt.',
  'Do not open the machine. It holds pressure, very hot water and live wires.':
    'Öffnen Sie das Gerät nicht. Es steht unter Druck, enthält sehr heißes Wasser und führt Spannung.',
  'If you smell burning or a safety switch trips again, turn the machine off and call.':
    'Riecht es verbrannt oder löst eine Sicherung wieder aus, schalten Sie das Gerät ab und rufen Sie an.',
  'Work on wiring and on the cooling circuit is for certified people only.':
    'An Elektrik und Kältekreis arbeiten nur zugelassene Fachleute.',
  // Glossary
  unit: 'Kilowattstunde',
  'What your meter counts: one kilowatt-hour, or kWh. It runs a small electric fire for one hour.':
    'Was Ihr Zähler zählt, kurz kWh. Damit läuft ein kleiner Heizlüfter eine Stunde.',
  'unit rate': 'Arbeitspreis',
  'What you pay for one unit of gas or electricity.': 'Was Sie für eine Kilowattstunde Gas oder Strom zahlen.',
  'standing charge': 'Grundpreis',
  'What you pay each day for being connected, even if you use nothing.':
    'Was Sie jeden Tag für den Anschluss zahlen, auch wenn Sie nichts verbrauchen.',
  tariff: 'Tarif',
  'The list of prices you have agreed with your supplier.': 'Die Preise, die Sie mit Ihrem Versorger vereinbart haben.',
  'two-rate tariff': 'Tag-und-Nacht-Tarif',
  'A tariff with one price by day and a lower one by night.':
    'Ein Tarif mit einem Preis am Tag und einem niedrigeren in der Nacht.',
  'time of use': 'Preis nach Uhrzeit',
  'A tariff whose price depends on the hour of the day.': 'Ein Tarif, dessen Preis von der Tageszeit abhängt.',
  'estimated reading': 'geschätzter Zählerstand',
  'A reading that the supplier guessed because nobody read the meter.':
    'Ein Stand, den der Versorger geschätzt hat, weil niemand abgelesen hat.',
  'A machine that takes heat from the ground or the air and brings it indoors at a useful warmth.':
    'Ein Gerät, das Wärme aus Erde oder Luft holt und sie warm genug ins Haus bringt.',
  'ground array': 'Erdkollektor',
  'Pipes in the ground that fetch heat, laid flat in a field or put down a deep hole.':
    'Rohre im Boden, die Wärme holen, flach verlegt oder in einer tiefen Bohrung.',
  brine: 'Sole',
  'Water with frost protection that runs through the pipes in the ground.':
    'Wasser mit Frostschutz, das durch die Rohre im Boden läuft.',
  'How hot the water is on its way to the radiators or the floor. Cooler water costs less.':
    'Wie heiß das Wasser zu Heizkörpern oder Fußboden fließt. Kühleres Wasser kostet weniger.',
  'How warm the water is when it comes back from the radiators.':
    'Wie warm das Wasser von den Heizkörpern zurückkommt.',
  'weather compensation': 'Witterungsführung',
  'The machine sends cooler water to the radiators when it is mild outside.':
    'Das Gerät schickt kühleres Wasser zu den Heizkörpern, wenn es draußen mild ist.',
  factor: 'Arbeitszahl',
  'Units of heat you get for one unit of electricity, over a whole year. It is also called the seasonal performance factor, or SPF.':
    'Wie viele Kilowattstunden Wärme eine Kilowattstunde Strom bringt, über ein ganzes Jahr. Auch Jahresarbeitszahl oder SPF genannt.',
  boundary: 'Bilanzgrenze',
  'What a factor counts. H1 is the machine alone, H4 has all pumps and the backup heater in it.':
    'Was eine Arbeitszahl mitzählt. H1 ist das Gerät allein, H4 zählt alle Pumpen und den Heizstab mit.',
  SCOP: 'SCOP',
  'A factor from a test in a laboratory. A home seldom reaches it.':
    'Eine Arbeitszahl aus dem Labor. Ein Haus erreicht sie selten.',
  COP: 'COP',
  'Units of heat for one unit of electricity at one moment.':
    'Kilowattstunden Wärme je Kilowattstunde Strom in einem Augenblick.',
  'heat loss': 'Heizlast',
  'How fast the home loses heat on a very cold day. It sets the size of the machine.':
    'Wie schnell das Haus an einem sehr kalten Tag Wärme verliert. Danach richtet sich die Größe des Geräts.',
  'heat needed': 'Wärmebedarf',
  'All the heat that rooms and hot water take in a year, whatever makes it.':
    'Alle Wärme, die Räume und Warmwasser im Jahr brauchen, woher sie auch kommt.',
  'degree days': 'Gradtage',
  'A count of how cold a spell was. Each day adds the degrees it was below a set warmth.':
    'Ein Maß, wie kalt eine Zeit war. Jeder Tag zählt die Grade, um die er unter einer festen Wärme lag.',
  'base temperature': 'Heizgrenze',
  'The warmth outside above which your home needs no heating.':
    'Die Wärme draußen, ab der Ihr Haus keine Heizung braucht.',
  'typical year': 'übliches Jahr',
  'A year with the usual weather of your region, neither cold nor mild.':
    'Ein Jahr mit dem üblichen Wetter Ihrer Gegend, weder kalt noch mild.',
  'backup heater': 'Heizstab',
  'A plain electric heater that helps on the coldest days. It costs more to run.':
    'Eine einfache Elektroheizung, die an den kältesten Tagen hilft. Sie kostet im Betrieb mehr.',
  'immersion heater': 'Heizstab im Speicher',
  'A plain electric heater inside the hot water tank.': 'Eine einfache Elektroheizung im Warmwasserspeicher.',
  'boiler efficiency': 'Nutzungsgrad',
  'How much of the fuel becomes useful heat. The rest goes up the flue.':
    'Wie viel vom Brennstoff nutzbare Wärme wird. Der Rest geht durch den Schornstein.',
  'energy certificate': 'Energieausweis',
  'A paper that says how much heat a home like yours should need.':
    'Ein Papier, das sagt, wie viel Wärme ein Haus wie Ihres brauchen sollte.',
  refrigerant: 'Kältemittel',
  'A liquid that boils when it is cold. It goes round inside the machine and carries the heat.':
    'Eine Flüssigkeit, die schon kalt siedet. Sie kreist im Gerät und trägt die Wärme.',
  evaporator: 'Verdampfer',
  'The part where the liquid in the machine boils and takes up heat from outside.':
    'Der Teil, in dem die Flüssigkeit im Gerät siedet und Wärme von draußen aufnimmt.',
  compressor: 'Verdichter',
  'The pump in the machine. It squeezes the vapour until it is hot, and uses most of the power.':
    'Die Pumpe im Gerät. Sie presst den Dampf zusammen, bis er heiß ist, und braucht den meisten Strom.',
  condenser: 'Verflüssiger',
  'The part where the hot vapour turns back into liquid and warms your water.':
    'Der Teil, in dem der heiße Dampf wieder flüssig wird und Ihr Wasser wärmt.',
  'expansion valve': 'Expansionsventil',
  'A narrow gap that lets the pressure go, so that the liquid turns cold again.':
    'Eine enge Stelle, hinter der der Druck fällt, so dass die Flüssigkeit wieder kalt wird.',
  'saturation temperature': 'Siedetemperatur',
  'Where a liquid boils at the pressure it is under. More pressure, hotter.':
    'Wo eine Flüssigkeit bei ihrem Druck siedet. Mehr Druck, heißer.',
  superheat: 'Überhitzung',
  'How much warmer the vapour is than it was when it boiled. It shows the part is fed right.':
    'Wie viel wärmer der Dampf ist als beim Sieden. Sie zeigt, ob der Verdampfer richtig versorgt wird.',
  subcooling: 'Unterkühlung',
  'How much cooler the liquid is than it was when it formed from vapour.':
    'Wie viel kühler die Flüssigkeit ist als beim Verflüssigen.',
  'gauge pressure': 'Überdruck',
  'Pressure counted from the air around us, as the dials on site show it.':
    'Druck über dem der Luft um uns, wie ihn die Manometer zeigen.',
  glycol: 'Frostschutz (Glykol)',
  'What keeps the water in the ground pipes from freezing. It is mixed in as a share.':
    'Was das Wasser in den Erdrohren vor dem Gefrieren schützt. Es wird als Anteil beigemischt.',
  pasteurisation: 'Legionellenschutz',
  'Making the hot water tank very hot now and then, so that no germs grow in it.':
    'Der Warmwasserspeicher wird ab und zu sehr heiß gemacht, damit keine Keime wachsen.',
  'written estimate': 'Kostenschätzung',
  'A copy of our figures, with number and date. It does not change later, and it is no guarantee.':
    'Eine Kopie unserer Zahlen mit Nummer und Datum. Sie ändert sich später nicht und ist keine Garantie.',
  'bill check': 'Rechnungsprüfung',
  'A later bill beside the written estimate, to see why they differ.':
    'Eine spätere Rechnung neben der Kostenschätzung, um zu sehen, warum sie abweicht.',
  range: 'Spanne',
  'Two figures: 8 in 10 homes like yours lie between them, 2 outside.':
    'Zwei Zahlen: 8 von 10 Häusern wie Ihrem liegen dazwischen, 2 außerhalb.',
  'measured, estimated, assumed': 'gemessen, geschätzt, angenommen',
  'How far to trust a figure: read from a meter, worked out, or taken from a table.':
    'Wie weit man einer Zahl trauen darf: abgelesen, errechnet oder aus einer Tabelle.',
};
