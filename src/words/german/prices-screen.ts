import type { Catalogue } from '../say.ts';

/** The fields of the prices: tariffs, fuels, service, purchase. */
export const PRICES_SCREEN: Catalogue = {
  'Published average price': 'Durchschnittspreis',
  'Which tariff': 'Welcher Tarif',
  'Other electricity, kWh a year': 'Übriger Strom, kWh im Jahr',
  'Saved by hot water in the cheap hours': 'Ersparnis durch Warmwasser in den günstigen Stunden',
  'the same sum with hot water made in the cheap hours': 'dieselbe Berechnung mit Warmwasser aus den günstigen Stunden',
  '{names} come out about the same, at about {amount} a year for all electricity.':
    '{names} kosten etwa gleich viel: rund {amount} im Jahr für allen Strom.',
  'The cheapest is only a little below the others, so take the one that asks or risks less.':
    'Der günstigste liegt nur wenig unter den anderen. Nehmen Sie darum den mit weniger Aufwand oder Risiko.',
  'Of {count} tariffs, “{name}” costs this home least: about {amount} a year for all its electricity.':
    'Von {count} Tarifen ist „{name}“ für dieses Haus der günstigste: rund {amount} im Jahr für allen Strom.',
  'On “{name}” this home pays less than at the published average: about {amount} a year in all.':
    'Mit „{name}“ zahlt dieses Haus weniger als zum veröffentlichten Durchschnittspreis: insgesamt rund {amount} im Jahr.',
  '{count, plural, one {This tariff does} other {These tariffs do}} not beat the published average price, which comes to about {amount} a year for all electricity.':
    '{count, plural, one {Dieser Tarif ist} other {Diese Tarife sind}} nicht günstiger als der veröffentlichte Durchschnittspreis, der rund {amount} im Jahr für allen Strom ergibt.',
  'Of your own, “{name}” costs least: about {amount}.': 'Von Ihren eigenen ist „{name}“ der günstigste: rund {amount}.',
  'In 8 of 10 homes like yours it is {range}.': 'In 8 von 10 Häusern wie Ihrem sind es {range}.',
  'That is not sure: in {count} of 20 futures “{name}” is the cheapest.':
    'Sicher ist das nicht: In {count} von 20 Fällen ist „{name}“ der günstigste.',
  'The estimate rests on “{used}”, so there is no need to change.':
    'Die Kostenschätzung beruht auf „{used}“, ein Wechsel ist also nicht nötig.',
  'On “{name}” a kWh costs nothing or less on average, so what uses more does not look more expensive. Check its prices, and choose no machine by it.':
    'Mit „{name}“ kostet die kWh im Mittel nichts oder weniger; was mehr braucht, wirkt dann nicht teurer. Prüfen Sie seine Preise, und wählen Sie danach kein Gerät.',
  'a control for the heat pump’s hours': 'eine Regelung für die Laufzeiten der Wärmepumpe',
  'car and battery charging in the cheap hours': 'das Laden von Auto und Speicher in den günstigen Stunden',
  'car charging in the cheap hours': 'das Laden des Autos in den günstigen Stunden',
  'battery charging in the cheap hours': 'das Laden des Speichers in den günstigen Stunden',
  'It needs {things}.': 'Dafür braucht es {things}.',
  'It asks nothing of you: every hour costs the same.': 'Er verlangt nichts von Ihnen: Jede Stunde kostet gleich viel.',
  'It asks nothing new of you: your use is counted at its present hours.':
    'Er verlangt nichts Neues von Ihnen: Gezählt ist Ihr Verbrauch zu den jetzigen Stunden.',
  'Its risk: it follows the market, and an expensive winter costs more.':
    'Sein Risiko: Er folgt dem Markt, und ein teurer Winter kostet mehr.',
  'Its risk: a kWh costs up to {price}.': 'Sein Risiko: Die kWh kostet bis zu {price}.',
  'With the same roof, battery and car, each on its best tariff: about {pump} with the heat pump, about {present} as now.':
    'Mit gleichem Dach, Speicher und Auto, je im besten Tarif: rund {pump} mit Wärmepumpe, rund {present} wie jetzt.',
  'That is about {amount} a year less than on “{used}”, which the estimate rests on now.':
    'Das sind rund {amount} im Jahr weniger als mit „{used}“, dem Tarif dieser Schätzung.',
  'With the heat pump it counts {kWh} of other electricity, at the hours that your meter shows.':
    'Neben der Wärmepumpe sind {kWh} übriger Strom gezählt, zu den Stunden, die Ihr Zähler zeigt.',
  'With the heat pump it counts {kWh} of other electricity, as usual for such a home. That is assumed.':
    'Neben der Wärmepumpe sind {kWh} übriger Strom gezählt, wie in solchen Häusern üblich. Das ist angenommen.',
  'With the heat pump it counts {kWh} of other electricity. Its hours are those of a usual home.':
    'Neben der Wärmepumpe sind {kWh} übriger Strom gezählt, zu den Stunden eines üblichen Haushalts.',
  '“{name}” is the cheapest in {atLeast, select, true {at least {count}} other {{count}}} of 20 futures.':
    '„{name}“ ist in {atLeast, select, true {mindestens {count}} other {{count}}} von 20 Fällen der günstigste.',
  'how often the cheapest': 'wie oft der günstigste',
  'hardly ever the cheapest': 'kaum je der günstigste',
  'cheapest in {atLeast, select, true {at least {count}} other {{count}}} of 20':
    'vorn in {atLeast, select, true {mindestens {count}} other {{count}}} von 20',
  'Share of futures in which it is the cheapest': 'Anteil der Fälle, in denen er der günstigste ist',
  'the possible years in which no other of these tariffs costs less':
    'die möglichen Jahre, in denen kein anderer dieser Tarife weniger kostet',
  'In the count of 20 futures all prices rise and fall together: one supplier alone may raise its own.':
    'In den 20 Fällen steigen und fallen alle Preise gemeinsam: Ein Anbieter kann seine auch allein erhöhen.',
  'With hot water made in its cheap hours, “{name}” would come to about {amount}, and be the cheapest.':
    'Wird das Warmwasser in den günstigen Stunden bereitet, kostet „{name}“ rund {amount} und ist der günstigste.',
  'With the tariff that suits each best, fuel counted in: about {pump} with the heat pump, about {present} as now.':
    'Mit dem jeweils günstigsten Tarif, Brennstoff mitgezählt: rund {pump} mit Wärmepumpe, rund {present} wie jetzt.',
  'With the tariff that suits each best, fuel counted in: about {pump} with the heat pump.':
    'Mit dem jeweils günstigsten Tarif, Brennstoff mitgezählt: rund {pump} mit Wärmepumpe.',
  'Of the other ways to heat, the cheapest would be {way}, at about {amount}.':
    'Von den anderen Heizungen wäre {way} mit rund {amount} die günstigste.',
  'Each way of heating on the tariff that suits it best, with the same roof, battery and car.':
    'Jede Heizung mit dem Tarif, der zu ihr am besten passt, mit demselben Dach, Speicher und Auto.',
  'Each way of heating on the tariff that suits it best.': 'Jede Heizung mit dem Tarif, der zu ihr am besten passt.',
  'on the tariff': 'mit dem Tarif',
  'all energy, a year': 'alle Energie, im Jahr',
  'what is made, needed and stored, half-hour by half-hour':
    'was erzeugt, gebraucht und gespeichert wird, halbe Stunde für halbe Stunde',
  'Made by the panels': 'Ertrag der Module',
  'Of it from November to February': 'davon von November bis Februar',
  'Of it used at home': 'davon im Haus genutzt',
  'The same by the monthly rule': 'dasselbe nach der Monatsregel',
  'SAP 10.2 Appendix M1: the share by made over needed, and by the battery':
    'SAP 10.2 Anhang M1: der Anteil nach Ertrag durch Bedarf und nach dem Speicher',
  'Paid for a kWh sent out': 'Vergütung einer eingespeisten kWh',
  'Lost in the battery': 'Verlust im Speicher',
  'Filled into it from the grid': 'aus dem Netz geladen',
  'Charged into the car': 'ins Auto geladen',
  'Cheapest unit of the year': 'günstigste kWh des Jahres',
  'Most expensive unit of the year': 'teuerste kWh des Jahres',
  'The whole home with: {way}': 'Das ganze Haus mit: {way}',
  'the same sum with this way of heating': 'dieselbe Berechnung mit dieser Heizung',
  'On “{name}”, hot water made in the cheap hours saves about {amount}. The tank must hold a day’s need.':
    'Mit „{name}“ spart Warmwasser aus den günstigen Stunden rund {amount}. Der Speicher muss einen Tag reichen.',
  'On “{name}”, hot water made in the cheap hours costs about {amount} more.':
    'Mit „{name}“ kostet Warmwasser aus den günstigen Stunden rund {amount} mehr.',
  '“{name}” follows the market. Its prices are known a day before, and an expensive winter costs more.':
    '„{name}“ folgt dem Markt. Die Preise stehen erst am Vortag fest; ein teurer Winter kostet mehr.',
  '“{name}” is left out: its prices do not reach every day of a year.':
    '„{name}“ fehlt: Seine Preise reichen nicht für jeden Tag eines Jahres.',
  '“{name}” is left out: it does not give every hour one price. Its faults are named above.':
    '„{name}“ fehlt: Er nennt nicht für jede Stunde einen Preis. Seine Fehler stehen oben.',
  '“{name}” is left out: it charges for the highest half-hour. Only half-hourly readings of the home show that.':
    '„{name}“ fehlt: Er berechnet die höchste halbe Stunde. Die zeigen nur Halbstundenwerte des Hauses.',
  'The heat pump runs in the best hours of each tariff. That is counted above.':
    'Die Wärmepumpe läuft in den besten Stunden jedes Tarifs. Das ist oben mitgerechnet.',
  'The heat pump runs at its usual hours on each.': 'Die Wärmepumpe läuft bei jedem Tarif zu ihren üblichen Stunden.',
  'On “{name}”, the best hours save about {amount} a year. In 8 of 10 homes like yours it is {range}. Rooms: {rooms} °C.':
    'Mit „{name}“ sparen die besten Stunden etwa {amount} im Jahr. In 8 von 10 Häusern wie Ihrem sind es {range}. Räume: {rooms} °C.',
  'That needs a control that can choose the hours. Once a week the hot water is still heated through, against germs.':
    'Dafür braucht es eine Regelung, die die Stunden wählen kann. Das Warmwasser wird weiterhin jede Woche durchgeheizt, gegen Keime.',
  'How long the home stays warm is assumed: without heat it cools by {drop} K in three winter hours.':
    'Wie lange das Haus warm bleibt, ist angenommen: Ohne Heizung kühlt es in drei Winterstunden um {drop} K aus.',
  'How fast the home really cools is not in that range. A home that cools half as fast saves up to twice as much, one twice as fast about half.':
    'Wie schnell das Haus wirklich auskühlt, ist darin nicht enthalten. Kühlt es halb so schnell aus, spart es bis zum Doppelten, doppelt so schnell etwa die Hälfte.',
  'Best hours of the heat pump': 'Beste Stunden der Wärmepumpe',
  'Count the best hours of each tariff': 'Die besten Stunden jedes Tarifs zählen',
  'Only with a control that can choose them by price.': 'Nur mit einer Regelung, die sie nach dem Preis wählen kann.',
  'Rooms may be cooler by': 'Räume dürfen kühler sein um',
  'Never below 18 °C.': 'Nie unter 18 °C.',
  'Rooms may be warmer by': 'Räume dürfen wärmer sein um',
  'Built of': 'Bauweise',
  'Counts where the floor area is known.': 'Zählt, wo die Wohnfläche bekannt ist.',
  'timber or steel frame, carpets': 'Holz- oder Stahlrahmen, Teppiche',
  'timber frame, some masonry': 'Holzrahmen, etwas Mauerwerk',
  'masonry outside, light inside': 'Mauerwerk außen, innen leicht',
  'masonry and concrete': 'Mauerwerk und Beton',
  'thick stone or concrete throughout': 'durchgehend dicker Stein oder Beton',
  'Saved by the best hours': 'Ersparnis durch die besten Stunden',
  'The least of 8 in 10 homes': 'Die kleinste in 8 von 10 Häusern',
  'The most of 8 in 10 homes': 'Die größte in 8 von 10 Häusern',
  'Coldest room in the best hours': 'Kühlster Raum in den besten Stunden',
  'Cheapest half-hour of the cold day': 'Günstigste halbe Stunde des kalten Tages',
  'Most expensive half-hour of the cold day': 'Teuerste halbe Stunde des kalten Tages',
  'Most heat at once on it': 'Meiste Wärme auf einmal an diesem Tag',
  'Warmest room in the best hours': 'Wärmster Raum in den besten Stunden',
  'Cooling in three hours without heat': 'Abkühlung in drei Stunden ohne Heizung',
  'the home as one store of heat, at the mean outdoor temperature of the coldest month':
    'das Haus als ein Wärmespeicher, bei der mittleren Außentemperatur des kältesten Monats',
  'heat moved half-hour by half-hour within the room temperatures accepted':
    'Wärme halbstundenweise verschoben, innerhalb der gewünschten Raumtemperaturen',
  'The hours go by the usual sun of each month: nobody knows it ahead.':
    'Die Stunden richten sich nach der üblichen Sonne jedes Monats: im Voraus kennt sie niemand.',
  'The hours are chosen first and the battery after them. Both together could save a little more.':
    'Erst werden die Stunden gewählt, dann der Stromspeicher. Beides zusammen könnte noch etwas mehr sparen.',
  'Your own half-hours show how slowly the home cools: a time constant of {hours} hours. It may be {low} to {high}, and the low end is counted.':
    'Ihre eigenen Halbstundenwerte zeigen, wie langsam das Haus auskühlt: Zeitkonstante {hours} Stunden. Es können {low} bis {high} sein, gezählt wird mit dem unteren Ende.',
  typed: 'eingegeben',
  'the half-hours of your own heating: what a night without heat takes to make good':
    'die Halbstundenwerte der eigenen Heizung: was nach einer Nacht ohne Heizung nachzuholen ist',
  'how heavily the home is built, by its floor area and heat loss':
    'wie schwer das Haus gebaut ist, mit Wohnfläche und Wärmeverlust',
  'assumed: the low end of what 10,000 thermostats in North America showed':
    'angenommen: das untere Ende dessen, was 10.000 Thermostate in Nordamerika gezeigt haben',
  'Time constant of the home': 'Zeitkonstante des Hauses',
  'The same, middle of what the half-hours show': 'Dasselbe, Mitte dessen, was die Halbstunden zeigen',
  'The same, shortest of 8 in 10': 'Dasselbe, am kürzesten von 8 in 10',
  'The same, longest of 8 in 10': 'Dasselbe, am längsten von 8 in 10',
  'In hours, where a calculation or a measurement gives it. It stands above “Built of”.':
    'In Stunden, wenn eine Berechnung oder Messung sie ergibt. Sie gilt vor „Bauweise“.',
  'All that is counted, and how': 'Was alles gezählt ist, und wie',
  'In the range, what roof, battery and car move is that of a usual year; only its price varies.':
    'In der Spanne gilt für Dach, Speicher und Auto ein normales Jahr; nur der Preis schwankt.',
  'Other hours of the heat pump would save next to nothing.': 'Andere Stunden der Wärmepumpe würden kaum etwas sparen.',
  'The best hours are counted: the usual ones would cost about {amount} more.':
    'Gezählt sind die besten Stunden: Die üblichen würden etwa {amount} mehr kosten.',
  'The usual hours of the heat pump are counted: the best ones would cost about {amount} less.':
    'Gezählt sind die üblichen Stunden: Die besten würden etwa {amount} weniger kosten.',
  'On one price all day, moving the hours of the heat pump saves nothing.':
    'Kostet der Strom den ganzen Tag gleich viel, spart es nichts, die Wärmepumpe zu anderen Zeiten laufen zu lassen.',
  Tariff: 'Tarif',
  'All electricity of the home in a year, heat pump included, on each tariff.':
    'Aller Strom des Hauses im Jahr, mit Wärmepumpe, in jedem Tarif.',
  north: 'Norden',
  'north-east': 'Nordosten',
  east: 'Osten',
  'south-east': 'Südosten',
  south: 'Süden',
  'south-west': 'Südwesten',
  west: 'Westen',
  'north-west': 'Nordwesten',
  'little, under 20 % of the sky': 'wenig, unter 20 % des Himmels',
  'some, 20 to 60 %': 'etwas, 20 bis 60 %',
  'much, 60 to 80 %': 'viel, 60 bis 80 %',
  'heavy, over 80 %': 'sehr viel, über 80 %',
  'What is typed here is counted in “Which tariff”, for each way of heating alike. Leave empty what there is not.':
    'Was hier steht, zählt bei „Welcher Tarif“ mit, für jede Heizung gleich. Was es nicht gibt, bleibt leer.',
  'Panels, batteries and chargers are connected by a qualified electrician only.':
    'Module, Speicher und Ladestationen schließt nur eine Elektrofachkraft an.',
  'Panels on another slope': 'Module auf einer weiteren Fläche',
  '{label}, slope {number}': '{label}, Fläche {number}',
  'Solar panels': 'Solarmodule',
  'Peak power of the panels on one slope, as the offer says.':
    'Spitzenleistung der Module auf einer Fläche, wie im Angebot.',
  'They face': 'Sie zeigen nach',
  Slope: 'Neigung',
  '0° lies flat, 90° hangs on a wall.': '0° liegt flach, 90° hängt an der Wand.',
  Shade: 'Schatten',
  'Paid for electricity sent out': 'Vergütung für eingespeisten Strom',
  'No rule is known for these panels. Until it is typed, nothing is counted.':
    'Für diese Module ist keine Regel bekannt. Ohne Eingabe zählt nichts.',
  'First day of the panels': 'Erster Tag der Module',
  'What the law pays hangs on that day. Empty: today.': 'Von diesem Tag hängt ab, was das Gesetz zahlt. Leer: heute.',
  Battery: 'Stromspeicher',
  'A battery that holds nothing is left empty here.': 'Wo kein Speicher ist, bleibt das Feld leer.',
  'What it gives from full to empty, as the offer says.': 'Was er von voll bis leer abgibt, wie im Angebot.',
  'Power of the battery': 'Leistung des Speichers',
  'Comes out of what goes in': 'Kommt vom Geladenen wieder heraus',
  'Draws itself': 'Braucht selbst',
  'May be filled from the grid in cheap hours': 'Darf in günstigen Stunden aus dem Netz laden',
  'Its control and the contract must allow it.': 'Steuerung und Vertrag müssen es zulassen.',
  'An electric car is charged at home': 'Ein Elektroauto lädt zu Hause',
  Driven: 'Fahrleistung',
  'miles a year': 'Meilen im Jahr',
  'km a year': 'km im Jahr',
  'It takes': 'Verbrauch',
  'kWh per 100 km': 'kWh je 100 km',
  'Measured at the plug. The car’s own display leaves out what charging loses.':
    'Gemessen an der Steckdose. Die Anzeige im Auto lässt die Ladeverluste weg.',
  'Charged at home': 'Zu Hause geladen',
  'all of it': 'alles',
  'Power of the charger': 'Leistung der Ladestation',
  'Plugged in from': 'Angesteckt ab',
  'Plugged in until': 'Angesteckt bis',
  'roof, battery, car': 'Dach, Speicher, Auto',
  'The panels make about {kWh} in a usual year, {share} of it from November to February: little of it heats.':
    'Die Module liefern in einem üblichen Jahr etwa {kWh}, davon {share} von November bis Februar: Zum Heizen bleibt wenig.',
  'On “{name}” the home uses about {used} of it itself; the standard’s monthly rule says {rule}.':
    'Mit „{name}“ verbraucht das Haus etwa {used} davon selbst; nach der Monatsregel der Norm sind es {rule}.',
  'On “{name}” the home uses about {used} of it itself. The standard’s monthly rule says {rule}, but it knows no battery filled from the grid.':
    'Mit „{name}“ verbraucht das Haus etwa {used} davon selbst. Die Monatsregel der Norm sagt {rule}, kennt aber keinen Speicher, der aus dem Netz lädt.',
  'That is less than a tenth of what the panels make. Check their kWp: a home has seldom more than 20.':
    'Das ist weniger als ein Zehntel dessen, was die Module liefern. Prüfen Sie die kWp: Mehr als 20 hat ein Haus selten.',
  'On “{name}” more is paid for a kWh sent out than any kWh costs. Check that price.':
    'Mit „{name}“ bringt eine eingespeiste kWh mehr, als jede bezogene kostet. Prüfen Sie diesen Preis.',
  'Tariff of this estimate': 'Tarif dieser Schätzung',
  '“{name}”.': '„{name}“.',
  'The published average price.': 'Der veröffentlichte Durchschnittspreis.',
  'Hours of the heat pump': 'Laufzeiten der Wärmepumpe',
  'On this page the best hours of each tariff. The estimate itself runs at the usual hours.':
    'Auf dieser Seite die besten Stunden jedes Tarifs. Die Schätzung selbst rechnet mit den üblichen Stunden.',
  'The usual hours on each tariff.': 'Bei jedem Tarif die üblichen Stunden.',
  'Hot water is made in the cheap hours of the night.': 'Das Warmwasser entsteht in den günstigen Nachtstunden.',
  '{kWp} kWp facing {facing}, at a slope of {degrees}°.': '{kWp} kWp nach {facing}, {degrees}° geneigt.',
  '{kWh} kWh usable.': '{kWh} kWh nutzbar.',
  'It is also filled from the grid in cheap hours.': 'Er wird in günstigen Stunden auch aus dem Netz geladen.',
  'Electric car': 'Elektroauto',
  '{kWh} a year charged at home.': '{kWh} im Jahr zu Hause geladen.',
  'What the battery loses of it is left out.': 'Was der Speicher davon verliert, ist abgezogen.',
  '{others, select, yes {On the other tariffs a} other {A}} kWh sent out is counted at {price}: {source}.':
    '{others, select, yes {Bei den anderen Tarifen zählt eine eingespeiste kWh} other {Eine eingespeiste kWh zählt}} mit {price}: {source}.',
  'Nobody has said what is paid for electricity sent out. It is counted as nothing: type it.':
    'Was für eingespeisten Strom gezahlt wird, ist nicht bekannt. Er zählt darum nichts: Tragen Sie es ein.',
  'Months of sun are the standard’s; which days of them are sunny is made up, always the same.':
    'Die Monate der Sonne stehen in der Norm; welche Tage sonnig sind, ist angenommen und immer gleich.',
  'The battery loses about {lost} a year; {filled} go into it from the grid. It is set again each month and does not know the weather.':
    'Der Speicher verliert im Jahr etwa {lost}; {filled} lädt er aus dem Netz. Er wird jeden Monat neu eingestellt und kennt das Wetter nicht.',
  'Of that, {kWh} do not fit into its hours at home and are counted in the hours after. Check the hours and the charger.':
    'Davon passen {kWh} nicht in seine Stunden zu Hause und sind in den Stunden danach gerechnet. Bitte Stunden und Ladeleistung prüfen.',
  'The car takes {kWh} a year at home, in the cheapest hours of its stand.':
    'Das Auto lädt zu Hause {kWh} im Jahr, in den günstigsten Stunden seiner Standzeit.',
  'It would need {kWh} more than its charger can give. That is not counted.':
    'Es bräuchte {kWh} mehr, als sein Ladepunkt geben kann. Das ist nicht gezählt.',
  'Each way of heating is counted with the same roof, battery and car: what they save is no merit of the heat pump.':
    'Jede Heizung ist mit demselben Dach, Speicher und Auto gerechnet: Was sie sparen, ist kein Verdienst der Wärmepumpe.',
  '“{name}” is left out: it charges for the highest half-hour, which a battery or a car would move.':
    '„{name}“ fehlt: Der Tarif berechnet die höchste halbe Stunde, und die würden Speicher oder Auto verschieben.',
  'all electricity, a year': 'aller Strom im Jahr',
  'other use': 'übriger Strom',
  Name: 'Name',
  'Price per kWh': 'Preis je kWh',
  'at all other times': 'zu allen anderen Zeiten',
  'this price': 'dieser Preis',
  'Add a time': 'Zeit hinzufügen',
  'Remove this price': 'Diesen Preis entfernen',
  'each day': 'jeden Tag',
  'each month': 'jeden Monat',
  'The first kWh cost another price': 'Die ersten kWh kosten anders',
  'Steps of {name}': 'Mengenstufen von {name}',
  'Count starts again': 'Zählung beginnt neu',
  'The first': 'Die ersten',
  'Then up to': 'Dann bis',
  'Price of these': 'Preis dafür',
  'The price above is for all kWh beyond.': 'Für alle weiteren kWh gilt der Preis darüber.',
  'Add a step': 'Mengenstufe hinzufügen',
  'Remove the last step': 'Letzte Mengenstufe entfernen',
  '{months}, your own tariff': '{months}, Ihr eigener Tarif',
  'your own price': 'Ihr eigener Preis',
  '{months}, not your tariff': '{months}, nicht Ihr Tarif',
  '{months}, guide page': '{months}, Ratgeberseite',
  'assumed price': 'angenommener Preis',
  'from {month}': 'ab {month}',
  '{price}, old': '{price}, alt',
  'electricity by day and night': 'Strom bei Tag und Nacht',
  '{name}: nobody publishes this price; it is assumed.':
    '{name}: diesen Preis veröffentlicht niemand; er ist angenommen.',
  '{name}: the price is of {months} and ended {days, plural, one {# day} other {# days}} ago.':
    '{name}: der Preis ist von {months} und endete vor {days, plural, one {# Tag} other {# Tagen}}.',
  '“{said}”': '„{said}“',
  'It is used as assumed, as confirmed on {date}.': 'Diese Annahme wurde am {date} bestätigt.',
  'Prices to settle first': 'Diese Preise zuerst klären',
  'Why this price is right (optional)': 'Warum dieser Preis gilt (freiwillig)',
  'Use it as assumed': 'Als angenommen verwenden',
  'Type the price': 'Preis eingeben',
  'Type today’s price, leave out that kind of heating, or confirm the assumed price: on this screen, or in the household file as {key}.':
    'Geben Sie den heutigen Preis ein, lassen Sie diese Heizungsart weg, oder bestätigen Sie den angenommenen Preis: auf dieser Seite oder in der Haushaltsdatei mit {key}.',
  Service: 'Wartung',
  'usual price of one visit a year': 'üblicher Preis eines Besuchs im Jahr',
  'BDEW Strompreisanalyse 2026, mean of households, basic price and taxes in it, second hand':
    'BDEW Strompreisanalyse 2026, Mittel der Haushalte mit Grundpreis und Steuern, aus zweiter Hand',
  'BDEW Gaspreisanalyse 2025, one-family house at 20,000 kWh a year, basic price and taxes in it':
    'BDEW Gaspreisanalyse 2025, Einfamilienhaus mit 20.000 kWh im Jahr, mit Grundpreis und Steuern',
  'DIN V 18599-10, reference climate by region: monthly means, public transcription in code':
    'DIN V 18599-10, Referenzklima nach Region: Monatsmittel, öffentliche Abschrift',
  'Umweltbundesamt, announcement for 2025: 124 kg CO2e per GJ of electricity, second hand':
    'Umweltbundesamt, Bekanntmachung für 2025: 124 kg CO2e je GJ Strom, aus zweiter Hand',
  'no German price of a visit is built in: type your own':
    'kein deutscher Preis einer Wartung eingebaut: bitte eingeben',
  'UK Treasury Green Book, real rate, from memory': 'UK Treasury Green Book, realer Satz, aus dem Gedächtnis',
  '{sign} a year': '{sign}/Jahr',
  Gas: 'Gas',
  'Electricity by day and night, for storage heaters': 'Strom bei Tag und Nacht, für Nachtspeicherheizungen',
  'New boiler instead': 'Stattdessen neue Heizung',
  'New heat pump, same pipes': 'Neue Wärmepumpe, Rohre bleiben',
  'Only if you look further ahead than the heat pump lasts.':
    'Nur wenn die Vorausschau länger reicht als die Wärmepumpe hält.',
  'Look ahead': 'Vorausschau',
  'Heat pump lasts': 'Wärmepumpe hält',
  'New boiler lasts': 'Neue Heizung hält',
  'Present heating still lasts': 'Heutige Heizung hält noch',
  'Electricity price rises': 'Strompreis steigt',
  'Fuel price rises': 'Brennstoffpreis steigt',
  'Uncertainty of both': 'Unsicherheit bei beiden',
  Discount: 'Abzinsung',
  'Installation price and grant': 'Einbaupreis und Förderung',
  'Needed only for the years to come. No price is assumed. The page appears once price and grant are typed; type 0 where there is none.':
    'Nur für die kommenden Jahre nötig. Kein Preis wird angenommen. Die Seite erscheint, sobald Preis und Förderung eingegeben sind; ohne Förderung geben Sie 0 ein.',
  'Instalments over': 'Laufzeit der Raten',
  'Interest rate': 'Zinssatz',
  'Growth and discount are on top of general inflation. Nobody knows them.':
    'Anstieg und Abzinsung kommen zur allgemeinen Teuerung hinzu. Niemand kennt sie.',
  '% a year': '%/Jahr',
  'Give the tariff a name, as it stands on the bill.':
    'Geben Sie dem Tarif einen Namen, wie er auf der Rechnung steht.',
  'Say where the prices come from, such as the bill of March.':
    'Geben Sie an, woher die Preise stammen, etwa von der Rechnung vom März.',
  'Say from which day these prices are valid, as in 31/12/2025.':
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
  'Price source': 'Herkunft der Preise',
  'such as: bill of March 2026': 'etwa: Rechnung vom März 2026',
  'How sure': 'Wie sicher',
  'Add prices from a later day': 'Preise ab einem späteren Tag hinzufügen',
  'Save this tariff': 'Diesen Tarif speichern',
  '{price} a month': '{price} im Monat',
  '{price} a day': '{price} am Tag',
  '{dated, select, no {} other {Half-hourly prices for {days}; otherwise }}{bands}{steps, select, no {} other {, after the first kWh}}, standing charge {standing}{sent, select, no {} other {, export {paid}}}.':
    '{dated, select, no {} other {Halbstündliche Preise ({days}), sonst }}{bands}{steps, select, no {} other {, nach den ersten kWh}}, Grundpreis {standing}{sent, select, no {} other {, Einspeisung {paid}}}.',
  'Source: {origin}': 'Herkunft: {origin}',
  '{name} is a tariff for {fuel, select, gas {gas} other {electricity}}. Open it under {fuel, select, gas {gas} other {electricity}}.':
    '{name} enthält einen Tarif für {fuel, select, gas {Gas} other {Strom}}. Öffnen Sie ihn bei {fuel, select, gas {Gas} other {Strom}}.',
  'Storage heaters need a cheap night rate. These prices are used for them only, not for other heating.':
    'Eine Nachtspeicherheizung braucht einen günstigen Nachttarif. Diese Preise gelten nur für sie.',
  '{name} is saved for other households too.': '{name} ist auch für andere Haushalte gespeichert.',
  'Prices used': 'Verwendete Preise',
  'built-in day and night prices': 'eingebaute Preise für Tag und Nacht',
  'the published average': 'der veröffentlichte Durchschnitt',
  'Type a tariff': 'Tarif eingeben',
  'Open a tariff file': 'Tarifdatei öffnen',
  Edit: 'Bearbeiten',
  'Save for other households': 'Für andere Haushalte speichern',
  'Save as a file': 'Als Datei speichern',
  '{name} is used now.': '{name} gilt jetzt.',
  'Saved tariffs': 'Gespeicherte Tarife',
  'Saved tariffs, {count, plural, =0 {none yet} other {#}}':
    'Gespeicherte Tarife, {count, plural, =0 {noch keine} other {#}}',
  'Use a tariff above, then save it for other households. It will be here for the next home.':
    'Verwenden Sie oben einen Tarif und speichern Sie ihn für andere Haushalte. Dann steht er hier für das nächste Haus.',
  'Use here': 'Hier verwenden',
  Remove: 'Entfernen',
  'one price': 'ein Preis',
  'day and night': 'Tag und Nacht',
  'more prices': 'mehr Preise',
  'with VAT in them': 'mit Mehrwertsteuer',
  'without VAT': 'ohne Mehrwertsteuer',
  '{sign} a month': '{sign}/Monat',
  '{sign} a quarter': '{sign}/Quartal',
  'Prices from {day}': 'Preise ab {day}',
  'a day not given yet': 'einem noch nicht angegebenen Tag',
  'Prices from': 'Preise ab',
  'Standing charge in': 'Grundpreis in',
  'Prices are': 'Preise sind',
  'By the clock': 'Nach der Uhr',
  'Add a price': 'Preis hinzufügen',
  'Remove these prices': 'Diese Preise entfernen',
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
  'Taken off by the year': 'Ermäßigung im Jahr',
  'Taken off by the year for a heat pump': 'Ermäßigung im Jahr für eine Wärmepumpe',
  'By § 14a EnWG, module 1, for a heat pump that the grid may slow down. The grid’s price sheet says it.':
    'Nach § 14a EnWG, Modul 1, für eine Wärmepumpe, die das Netz drosseln darf. Sie steht im Preisblatt des Netzes.',
  'Counted on this tariff where the home has panels, in place of what is typed there.':
    'Zählt bei diesem Tarif, wenn Module auf dem Dach sind, statt der dort eingegebenen Vergütung.',
  'A half-hour costs at most': 'Eine halbe Stunde kostet höchstens',
  'Some tariffs have a highest price. Empty: none.': 'Manche Tarife sagen einen Höchstpreis zu. Leer: keiner.',
  'cheap overnight for a car': 'nachts günstig für ein Auto',
  'three prices with a peak': 'drei Preise mit Spitze',
  'by month': 'nach Monat',
  'network price by hours': 'Netzentgelt nach Stunden',
  'each half-hour its own': 'jede halbe Stunde ein eigener',
  'charging hours': 'Ladestunden',
  'cheap hours': 'günstige Stunden',
  summer: 'Sommer',
  winter: 'Winter',
  'usual hours': 'übliche Stunden',
  'low network hours': 'Stunden mit niedrigem Netzentgelt',
  'high network hours': 'Stunden mit hohem Netzentgelt',
  'Cheap nights often come with days that cost more. The comparison counts the whole home, not the car alone.':
    'Günstige Nächte gehen oft mit teureren Tagen einher. Der Vergleich zählt das ganze Haus, nicht nur das Auto.',
  'Tick the months of the winter price as your tariff has them.':
    'Die Monate des Winterpreises ankreuzen, wie sie im Tarif stehen.',
  'Hours and months stand in the price sheet of the network operator, module 3 of § 14a EnWG.':
    'Stunden und Monate stehen im Preisblatt des Netzbetreibers, Modul 3 nach § 14a EnWG.',
  'Module 3 goes with module 1, whose sum by the year is typed below.':
    'Modul 3 gibt es nur mit Modul 1; dessen Betrag im Jahr wird unten eingetragen.',
  'own meter of the heat pump': 'eigener Zähler der Wärmepumpe',
  'The price of the home stands here; what the heat pump pays less for each kWh is typed below.':
    'Hier steht der Preis des Haushalts; was die Wärmepumpe je kWh weniger zahlt, wird unten eingetragen.',
  'Taken off each kWh of the heat pump': 'Ermäßigung je kWh der Wärmepumpe',
  'Its own meter, by the year': 'Eigener Zähler, im Jahr',
  'By § 14a EnWG, module 2, on a meter of its own: 60 % of the network price.':
    'Nach § 14a EnWG, Modul 2, mit eigenem Zähler: 60 % des Netzentgelts.',
  'That meter costs by the year': 'Dieser Zähler kostet im Jahr',
  'No sun and no battery reach what is behind it. Module 1 cannot be had beside it.':
    'Strom vom Dach oder aus dem Speicher kommt dort nicht an. Modul 2 und Modul 1 schließen sich aus.',
  'What is taken off each kWh of the heat pump is missing.': 'Die Ermäßigung je kWh der Wärmepumpe fehlt.',
  'Open the file of half-hours with “Open a tariff file”; it fills this form.':
    'Die Datei der halben Stunden mit „Tarifdatei öffnen“ einlesen; sie füllt dieses Formular.',
  'The price typed here is used on days that the file does not reach.':
    'Der hier eingegebene Preis gilt an Tagen, die in der Datei fehlen.',
  'On “{name}” a kWh sent out is counted at {price}, as that tariff pays.':
    'Mit „{name}“ zählt eine eingespeiste kWh mit {price}, wie dieser Tarif sie vergütet.',
  'this tariff': 'dieser Tarif',
  '{sign} a kW': '{sign}/kW',
  'For each kW and month.': 'Je kW und Monat.',
  'Agreed power': 'Vereinbarte Leistung',
  'Left empty, the largest half-hour of the month counts.':
    'Bleibt es leer, zählt die höchste halbe Stunde des Monats.',
  'A price for each half-hour of {days}, {from} to {to}. On other days the prices above are used.':
    'Ein Preis für jede halbe Stunde ({days}, {from} bis {to}). An anderen Tagen gelten die Preise darüber.',
  'Remove the half-hours': 'Halbe Stunden entfernen',
  '{tariff}. VAT is in the price.': '{tariff}. Die Mehrwertsteuer ist im Preis enthalten.',
  'Bank holidays are not in this week.': 'Feiertage gibt es in dieser Woche nicht.',
  'The first kWh of each day or month cost another price.':
    'Die ersten kWh jedes Tages oder Monats kosten einen anderen Preis.',
  'The average of the same half-hours, weekday by weekday.':
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
