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
  'nothing to show yet': 'noch nichts',
  day: 'Tag',
  days: 'Tage',
  month: 'Monat',
  months: 'Monate',
  '{name} {there} days in {days}': '{name} {there} von {days} Tagen',
  'needs a bill or a meter file': 'braucht eine Rechnung oder Zählerdatei',
  '{shown} and {count} more': '{shown} und {count} weitere',
  'needs bills, a heat loss or a floor area': 'braucht Rechnungen, Heizlast oder Wohnfläche',
  '{count} kWh a year, give or take {spread}': '{count} kWh im Jahr, plus oder minus {spread}',
  '{count} kWh a year': '{count} kWh im Jahr',
  'needs a seasonal factor': 'braucht eine Jahresarbeitszahl',
  'seasonal factor {factor} for heating and hot water (H4)': 'JAZ {factor} für Heizung und Warmwasser (H4)',
  'needs a tariff': 'braucht einen Tarif',
  'from {month}': 'ab {month}',
  old: 'alt',
  'needs heat, heat pump and prices': 'braucht Wärmebedarf, Wärmepumpe und Preise',
  'none yet': 'noch keine',
  '{amount} a year, no. {number} of {date}': '{amount} im Jahr, Nr. {number} vom {date}',
  '{amount}, inside the estimate’s range': '{amount}, in der geschätzten Spanne',
  '{amount}, above the estimate’s range': '{amount}, über der geschätzten Spanne',
  '{amount}, below the estimate’s range': '{amount}, unter der geschätzten Spanne',
  '{amount}, for the whole home': '{amount}, für das ganze Haus',
  'needs a later bill': 'braucht eine spätere Rechnung',
  'needs a written estimate and a later bill': 'braucht eine Kostenschätzung und eine spätere Rechnung',
  // Prices
  'Electricity is priced at {price} per kWh.': 'Strom kostet hier {price} je kWh.',
  'Electricity is priced at {price} per kWh and {fuel} at {fuelPrice}.':
    'Strom kostet hier {price} je kWh, {fuel} {fuelPrice}.',
  'These prices are valid from {month} on.': 'Diese Preise gelten ab {month}.',
  'These are prices of {months}.': 'Das sind Preise für {months}.',
  'prices from {month} on': 'Preise ab {month}',
  'prices of {months}': 'Preise für {months}',
  'prices: electricity {months}, {fuel} {fuelMonths}': 'Preise: Strom {months}, {fuel} {fuelMonths}',
  'The {fuel} prices ended {days, plural, one {# day} other {# days}} ago. Type today’s prices before you give an estimate.':
    'Die Preise für {fuel} sind vor {days, plural, one {# Tag} other {# Tagen}} abgelaufen. Geben Sie die heutigen ein, bevor Sie eine Kostenschätzung abgeben.',
  'The {fuel} price comes from {origin}.': 'Preis für {fuel}, Herkunft: {origin}.',
  'A part of it is assumed, such as the hours of a night rate.':
    'Ein Teil davon ist angenommen, etwa die Stunden eines Nachttarifs.',
  'Electricity: {prices}. {fuel}: {fuelPrices}.': 'Strom: {prices}. {fuel}: {fuelPrices}.',
  'Nobody has given the {fuel} price, so we use a published one. The working names its source.':
    'Den Preis für {fuel} hat niemand angegeben, darum gilt ein veröffentlichter. Der Rechenweg nennt die Quelle.',
  'A kWh of electricity costs {times} times as much as a kWh of {fuel}.':
    'Eine kWh Strom kostet {times}-mal so viel wie eine kWh {fuel}.',
  'At {times} times, heat would cost the same from both.':
    'Beim {times}-Fachen würde die Wärme aus beiden gleich viel kosten.',
  '{price} per kWh': '{price} je kWh',
  // Written estimate
  'The written estimate is a copy of these figures, with a number and a date. It stays the same, whatever you change here later.':
    'Die Kostenschätzung ist eine Kopie dieser Zahlen mit Nummer und Datum. Sie bleibt gleich, was immer Sie hier später ändern.',
  'The figures are for heating and hot water in a typical year, at the prices named.':
    'Die Zahlen gelten für Heizung und Warmwasser in einem normalen Jahr, zu den genannten Preisen.',
  'Whatever else the home uses is not counted.': 'Anderer Verbrauch im Haus ist nicht mitgezählt.',
  // What to watch
  'Expect about {winter} of the year’s {year} from October to March.':
    'Von Oktober bis März fallen etwa {winter} an, im ganzen Jahr {year}.',
  '{month} is likely to be the most expensive month, at about {amount}.':
    'Der {month} wird wohl der teuerste Monat, mit etwa {amount}.',
  'Read the meter on the first day of each month and write it down.':
    'Lesen Sie am Ersten jedes Monats den Zähler ab und notieren Sie den Stand.',
  'Keep this estimate with your bills.': 'Heben Sie diese Kostenschätzung bei Ihren Rechnungen auf.',
  'Change one setting at a time, and wait two days before the next.':
    'Ändern Sie immer nur eine Einstellung und warten Sie zwei Tage bis zur nächsten.',
  'Call us if a month uses more than the figure under “Call us above”.':
    'Rufen Sie an, wenn ein Monat mehr braucht, als unter „Anrufen ab“ steht.',
  '1 normal month in {months} is above it with nothing wrong.':
    '1 von {months} normalen Monaten liegt darüber, obwohl alles in Ordnung ist.',
  'With nothing wrong, 1 normal month in {months} is above it, and 1 year in {years} above {units}.':
    'Auch wenn alles in Ordnung ist, liegt 1 von {months} normalen Monaten darüber. Über {units} liegt 1 Jahr von {years}.',
  'Call us if the rooms stay cold or the hot water runs out.':
    'Rufen Sie an, wenn die Räume kalt bleiben oder das Warmwasser ausgeht.',
  'Call us if the backup heater comes on day after day.': 'Rufen Sie an, wenn der Heizstab Tag für Tag läuft.',
  'Do not open the heat pump. It holds pressure, very hot water and live wires.':
    'Öffnen Sie die Wärmepumpe nicht. Sie steht unter Druck und unter Strom und enthält sehr heißes Wasser.',
  'If you smell burning, or a breaker trips again, turn the heat pump off and call.':
    'Riecht es verbrannt oder löst eine Sicherung wieder aus? Dann schalten Sie die Wärmepumpe ab und rufen an.',
  'Only certified people may work on the wiring and the refrigerant circuit.':
    'An Elektrik und Kältekreis dürfen nur Fachleute mit Zulassung arbeiten.',
  // Glossary
  kWh: 'kWh',
  'Kilowatt-hour: the unit that your meter counts. It runs a small electric fire for one hour.':
    'Kilowattstunde: die Einheit, die Ihr Zähler zählt. Damit läuft ein kleiner Heizlüfter eine Stunde.',
  'unit rate': 'Arbeitspreis',
  'What you pay for one kWh of gas or electricity.': 'Was Sie für eine kWh Gas oder Strom zahlen.',
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
    'Eine Anlage, die dem Erdreich oder der Luft Wärme entzieht und damit Ihr Haus heizt.',
  'ground array': 'Erdkollektor',
  'Pipes in the ground that fetch heat, laid flat in a field or put down a deep hole.':
    'Rohre im Erdreich, die Wärme aufnehmen: flach verlegt, oder als Sonde tief gebohrt.',
  brine: 'Sole',
  'Water with frost protection that runs through the pipes in the ground.':
    'Wasser mit Frostschutz, das durch die Rohre im Erdreich fließt.',
  'How hot the water is on its way to the radiators or the floor. Cooler water costs less.':
    'Wie heiß das Wasser zu den Heizkörpern oder in den Fußboden fließt. Ein kühlerer Vorlauf kostet weniger.',
  'How warm the water is when it comes back from the radiators.':
    'Wie warm das Wasser von den Heizkörpern zurückkommt.',
  'weather compensation': 'witterungsgeführte Regelung',
  'The heat pump sends cooler water to the radiators when it is mild outside.':
    'Ist es draußen mild, schickt die Wärmepumpe kühleres Wasser zu den Heizkörpern.',
  'seasonal factor': 'Jahresarbeitszahl (JAZ)',
  'How many kWh of heat you get for one kWh of electricity, over a full year. Also called SPF.':
    'Wie viele kWh Wärme eine kWh Strom im Lauf eines Jahres bringt. Englisch SPF.',
  boundary: 'Bilanzgrenze',
  'What a seasonal factor counts. H1 is the heat pump alone. H4 adds all pumps and the backup heater.':
    'Was eine JAZ mitzählt. H1 ist die Wärmepumpe allein. H4 zählt alle Pumpen und den Heizstab mit.',
  SCOP: 'SCOP',
  'A seasonal factor from the test laboratory. A home seldom reaches it.':
    'Eine JAZ aus dem Prüflabor. Im Haus wird sie selten erreicht.',
  COP: 'COP',
  'How many kWh of heat for one kWh of electricity at one moment.':
    'Leistungszahl: wie viele kWh Wärme eine kWh Strom in einem Augenblick bringt.',
  'heat loss': 'Heizlast',
  'How fast the home loses heat on a very cold day. It sets the size of the heat pump.':
    'Wie viel Wärme das Haus an einem sehr kalten Tag verliert. Danach richtet sich die Größe der Wärmepumpe.',
  'heat needed': 'Wärmebedarf',
  'All the heat that rooms and hot water take in a year, whatever makes it.':
    'Alle Wärme, die Räume und Warmwasser im Jahr brauchen, woher sie auch kommt.',
  'degree days': 'Gradtage',
  'A count of how cold a spell was. Each day adds the degrees it was below a fixed temperature.':
    'Ein Maß dafür, wie kalt eine Zeit war. Jeder Tag zählt die Grade, die er unter einer festen Temperatur lag.',
  'base temperature': 'Heizgrenze',
  'The outdoor temperature above which your home needs no heating.':
    'Die Außentemperatur, ab der Ihr Haus keine Heizung braucht.',
  'typical year': 'normales Jahr',
  'A year with the usual weather of your region, neither cold nor mild.':
    'Ein Jahr mit dem üblichen Wetter Ihrer Region, weder kalt noch mild.',
  'backup heater': 'Heizstab',
  'A plain electric heater that helps on the coldest days. It costs more to run.':
    'Eine elektrische Heizung in der Wärmepumpe, die an den kältesten Tagen hilft. Ihr Strom bringt weniger Wärme.',
  'immersion heater': 'Heizstab im Speicher',
  'A plain electric heater inside the hot water tank.': 'Eine elektrische Heizung im Warmwasserspeicher.',
  'boiler efficiency': 'Nutzungsgrad',
  'How much of the fuel becomes useful heat. The rest goes up the flue.':
    'Wie viel vom Brennstoff nutzbare Wärme wird. Der Rest geht durch den Schornstein.',
  'energy certificate': 'Energieausweis',
  'A paper that says how much heat a home like yours should need.':
    'Ein Dokument, das sagt, wie viel Wärme ein Haus wie Ihres brauchen sollte.',
  refrigerant: 'Kältemittel',
  'A liquid that boils even when it is cold. It goes round inside the heat pump and carries the heat.':
    'Eine Flüssigkeit, die schon bei Kälte siedet. Sie kreist in der Wärmepumpe und trägt die Wärme.',
  evaporator: 'Verdampfer',
  'The part where the liquid in the heat pump boils and takes up heat from outside.':
    'Der Teil, in dem das Kältemittel siedet und Wärme von draußen aufnimmt.',
  compressor: 'Verdichter',
  'The part that squeezes the vapour until it is hot. It uses most of the electricity.':
    'Er presst den Dampf zusammen, bis er heiß ist, und braucht den meisten Strom.',
  condenser: 'Verflüssiger',
  'The part where the hot vapour turns back into liquid and warms your water.':
    'Der Teil, in dem der heiße Dampf wieder flüssig wird und Ihr Wasser wärmt.',
  'expansion valve': 'Expansionsventil',
  'A narrow gap that lets the pressure drop, so that the liquid turns cold again.':
    'Eine enge Stelle, hinter der der Druck fällt. So wird die Flüssigkeit wieder kalt.',
  'saturation temperature': 'Siedetemperatur',
  'The temperature at which a liquid boils under its pressure. More pressure, hotter.':
    'Die Temperatur, bei der eine Flüssigkeit unter ihrem Druck siedet. Mehr Druck, heißer.',
  superheat: 'Überhitzung',
  'How much warmer the vapour is than when it boiled. It shows whether the evaporator gets the right amount.':
    'Wie viel wärmer der Dampf ist als beim Sieden. Daran sieht man, ob der Verdampfer richtig versorgt wird.',
  subcooling: 'Unterkühlung',
  'How much cooler the liquid is than when it condensed.': 'Wie viel kühler die Flüssigkeit ist als beim Verflüssigen.',
  'gauge pressure': 'Überdruck',
  'Pressure above that of the air around us, as the gauges on site show it.':
    'Druck über dem Luftdruck, wie ihn die Manometer anzeigen.',
  glycol: 'Frostschutz (Glykol)',
  'What keeps the water in the ground pipes from freezing. It is mixed into the water.':
    'Schützt das Wasser in den Rohren vor dem Gefrieren. Er wird dem Wasser beigemischt.',
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
  'How sure a figure is: read from a meter, worked out, or taken from a table.':
    'Wie sicher eine Zahl ist: abgelesen, errechnet oder aus einer Tabelle.',
};
