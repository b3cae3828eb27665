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
  'your own record': 'Ihr eigener Verbrauch',
  'the heat loss of the home': 'die Heizlast des Hauses',
  'the energy certificate': 'der Energieausweis',
  'floor area and age': 'Wohnfläche und Baujahr',
  '{way} {number, select, many {say} other {says}} {units} for the rooms, give or take {spread}.':
    '{way} {number, select, many {ergeben} other {ergibt}} {units} für die Räume, plus oder minus {spread}.',
  '{way} {number, select, many {say} other {says}} {units} for the rooms.':
    '{way} {number, select, many {ergeben} other {ergibt}} {units} für die Räume.',
  'Nothing is known of this home yet. A typical one stands in.':
    'Von diesem Haus ist noch nichts bekannt. Gerechnet ist mit einem üblichen.',
  'The figure stands on {way} alone, as was chosen.': 'Die Zahl ruht, wie gewählt, allein hierauf: {way}.',
  'The figure stands on {way}.': 'Die Zahl ruht hierauf: {way}.',
  'The figure stands on {ways} together. The surest counts most.':
    'Die Zahl ruht auf mehrerem zusammen: {ways}. Das Sicherste zählt am meisten.',
  'Import a bill or a meter file, or type your bills.':
    'Lesen Sie eine Rechnung oder eine Zählerdatei ein, oder tippen Sie Ihre Rechnungen ein.',
  'Type the heat loss at the design temperature.': 'Tippen Sie die Heizlast bei der Auslegungstemperatur ein.',
  'Type the outdoor temperature that the heat loss was worked out for.':
    'Geben Sie die Außentemperatur ein, für die die Heizlast gilt.',
  'Type the heat figure from the energy certificate.': 'Tippen Sie den Wärmewert aus dem Energieausweis ein.',
  'The record is too short to tell heating from the rest. Add bills or readings of the cold months and the warm ones.':
    'Die Messwerte sind zu kurz, um das Heizen vom Rest zu trennen. Fügen Sie Rechnungen oder Ablesungen der kalten und der warmen Monate hinzu.',
  'Type the floor area and the age of the home.': 'Tippen Sie die Wohnfläche und das Baujahr ein.',
  'Nothing yet from {way}.': 'Noch nichts da: {way}.',
  'Your record was put right with its own weather, then set to a typical year of your region ({regionName}).':
    'Ihre Messwerte sind um ihr eigenes Wetter bereinigt. Dann sind sie auf ein übliches Jahr Ihrer Region ({regionName}) umgerechnet.',
  'We have no weather of those days, so a typical year of your region ({regionName}) stands in.':
    'Das Wetter jener Tage haben wir nicht. Darum steht ein übliches Jahr Ihrer Region ({regionName}) dafür.',
  'The weather is that of a typical year in your region ({regionName}).':
    'Das Wetter ist das eines üblichen Jahres Ihrer Region ({regionName}).',
  'The weather explains nothing of this home’s {carrier} use.':
    'Das Wetter erklärt nichts vom Verbrauch dieses Hauses ({carrier}).',
  'The weather explains nearly all of this home’s {carrier} use.':
    'Das Wetter erklärt fast den ganzen Verbrauch dieses Hauses ({carrier}).',
  'The weather explains {share} of this home’s {carrier} use.':
    'Das Wetter erklärt {share} vom Verbrauch dieses Hauses ({carrier}).',
  'A single {period, select, day {day} month {month} other {bill}} is missed by about {share}; over a year that evens out.':
    '{period, select, day {Ein einzelner Tag} month {Ein einzelner Monat} other {Eine einzelne Rechnung}} wird um etwa {share} verfehlt; über ein Jahr gleicht sich das aus.',
  'Most of the rest is how the home is lived in.': 'Der Rest kommt meist davon, wie im Haus gelebt wird.',
  'By this record the home loses about {watts} W for each degree colder, {low} to {high}.':
    'Nach diesen Messwerten verliert das Haus etwa {watts} W je Grad kälter, {low} bis {high}.',
  'The typed heat loss comes to {watts} W.': 'Die eingegebene Heizlast ergibt {watts} W.',
  'That is more: rooms may be left cool, or the survey is on the safe side.':
    'Das ist mehr: Vielleicht bleiben Räume kühl, oder es wurde vorsichtig gerechnet.',
  'That is less: something the survey did not see may lose heat.':
    'Das ist weniger: Vielleicht geht irgendwo Wärme verloren, wo es niemand gesehen hat.',
  'The two agree.': 'Beides passt zusammen.',
  'Before about {date} each degree colder took {before} units of {carrier} a day, since then {after}.':
    'Bis etwa {date} brauchte jedes Grad kälter {before} Kilowattstunden {carrier} am Tag, seither {after}.',
  'This record does not rise when it gets colder, so it says little about heating.':
    'Diese Messwerte steigen nicht, wenn es kälter wird. Über das Heizen sagen sie darum wenig.',
  'Below {base} outside, each degree colder adds {per} units a day. About {always} a day are used in any weather. The line explains {share} of the ups and downs.':
    'Unter {base} draußen kommen mit jedem Grad kälter {per} Kilowattstunden am Tag dazu. Etwa {always} am Tag werden bei jedem Wetter verbraucht. Die Linie erklärt {share} des Auf und Ab.',
};
