import type { Catalogue } from '../say.ts';

/** How much heat the home needs, and how we know. */
export const HEAT: Catalogue = {
  'We do not know yet how much heat this home needs.': 'Wie viel Wärme dieses Haus braucht, wissen wir noch nicht.',
  'This home needs no heat.': 'Dieses Haus braucht keine Wärme.',
  'This home needs about {units} of heat a year, give or take {spread}.':
    'Dieses Haus braucht im Jahr etwa {units} Wärme, plus oder minus {spread}.',
  'This home needs about {units} of heat a year.': 'Dieses Haus braucht im Jahr etwa {units} Wärme.',
  'None of it is hot water.': 'Warmwasser ist nicht dabei.',
  'About {units} of it is hot water. The rest warms the rooms.':
    'Davon sind etwa {units} Warmwasser. Der Rest wärmt die Räume.',
  'your own bills and readings': 'Ihr eigener Verbrauch',
  'the heat loss of the home': 'die Heizlast des Hauses',
  'the energy certificate': 'der Energieausweis',
  'floor area and age': 'Wohnfläche und Baujahr',
  'Nothing is known of this home yet, so we use a typical one.':
    'Von diesem Haus ist noch nichts bekannt. Darum rechnen wir mit einem durchschnittlichen.',
  'The figure is based on {way} alone, as you chose.': 'Grundlage ist, wie gewählt, nur: {way}.',
  'The figure is based on {way}.': 'Grundlage: {way}.',
  'The figure is based on {ways} together. The surest counts most.':
    'Grundlage ist mehreres zusammen: {ways}. Das Sicherste zählt am meisten.',
  'Add a bill or a meter file, or type your bills.':
    'Fügen Sie eine Rechnung oder Zählerdatei hinzu, oder geben Sie Ihre Rechnungen ein.',
  'Type the heat loss at the design temperature.': 'Geben Sie die Heizlast bei der Norm-Außentemperatur ein.',
  'Type the outdoor temperature that the heat loss was worked out for.':
    'Geben Sie die Norm-Außentemperatur ein, für die die Heizlast gilt.',
  'Type the heat figure from the energy certificate.': 'Geben Sie den Wärmewert aus dem Energieausweis ein.',
  'The readings cover too little time to tell heating from the rest. Add bills or readings of cold and warm months.':
    'Die Messwerte umfassen zu wenig Zeit, um das Heizen vom Rest zu trennen. Fügen Sie kalte und warme Monate hinzu.',
  'Type the floor area and the age of the home.': 'Geben Sie Wohnfläche und Baujahr ein.',
  'Nothing yet from {way}.': 'Noch nichts da: {way}.',
  'Your use was adjusted for the weather of its days, to a typical year in your region ({regionName}).':
    'Ihr Verbrauch ist um das Wetter jener Tage bereinigt und auf ein normales Jahr Ihrer Region ({regionName}) umgerechnet.',
  'We have no weather for those days, so we use a typical year in your region ({regionName}).':
    'Das Wetter jener Tage fehlt. Darum rechnen wir mit einem normalen Jahr Ihrer Region ({regionName}).',
  'The weather is that of a typical year in your region ({regionName}).':
    'Das Wetter ist das eines normalen Jahres Ihrer Region ({regionName}).',
  'The weather explains nothing of this home’s {carrier} use.':
    'Das Wetter erklärt nichts vom Verbrauch dieses Hauses ({carrier}).',
  'The weather explains nearly all of this home’s {carrier} use.':
    'Das Wetter erklärt fast den ganzen Verbrauch dieses Hauses ({carrier}).',
  'The weather explains {share} of this home’s {carrier} use.':
    'Das Wetter erklärt {share} vom Verbrauch dieses Hauses ({carrier}).',
  'A single {period, select, day {day} month {month} other {bill}} is off by about {share}. Over a year that evens out.':
    '{period, select, day {Ein einzelner Tag} month {Ein einzelner Monat} other {Eine einzelne Rechnung}} weicht um etwa {share} ab. Über ein Jahr gleicht sich das aus.',
  'A single {period, select, month {month} other {bill}} is off by about {share}. The habits of one home seldom do that.':
    '{period, select, month {Ein einzelner Monat} other {Eine einzelne Rechnung}} weicht um etwa {share} ab. Die Gewohnheiten eines Hauses tun das selten.',
  'Most of the rest is how the home is lived in.': 'Der Rest kommt meist davon, wie im Haus gelebt wird.',
  'By these readings the home loses about {watts} W for each degree colder, {low} to {high}.':
    'Nach diesen Messwerten verliert das Haus etwa {watts} W je Grad kälter, {low} bis {high}.',
  'The typed heat loss comes to {watts} W.': 'Die eingegebene Heizlast ergibt {watts} W.',
  'That is more: rooms may be left cool, or the survey is on the safe side.':
    'Das ist mehr: Vielleicht bleiben Räume kühl, oder die Heizlast ist vorsichtig berechnet.',
  'That is less: something the survey did not see may lose heat.':
    'Das ist weniger: Vielleicht geht irgendwo Wärme verloren, wo es niemand gesehen hat.',
  'The two agree.': 'Beides passt zusammen.',
  'Before about {date} each degree colder took {before} kWh of {carrier} a day, since then {after}.':
    'Bis etwa {date} kostete jedes Grad kälter {before} kWh {carrier} am Tag, seither {after}.',
};
