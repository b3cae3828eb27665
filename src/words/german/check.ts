import type { Catalogue } from '../say.ts';

/** A bill held against a written estimate: verdict, causes, findings, the months followed, the letter. */
export const CHECK: Catalogue = {
  'The bill of {amount} lies inside the range of our estimate.':
    'Die Rechnung über {amount} liegt in der Spanne unserer Kostenschätzung.',
  'The bill of {amount} is for the whole home, so it does not show yet what heating took.':
    'Die Rechnung über {amount} gilt für das ganze Haus und zeigt darum noch nicht, was die Heizung brauchte.',
  'The bill of {amount} lies just {verdict, select, above {above} other {below}} the range of our estimate.':
    'Die Rechnung über {amount} liegt knapp {verdict, select, above {über} other {unter}} der Spanne unserer Kostenschätzung.',
  'The bill lies {amount} {verdict, select, above {above} other {below}} the range of our estimate.':
    'Die Rechnung liegt {amount} {verdict, select, above {über} other {unter}} der Spanne unserer Kostenschätzung.',
  'The bill charges about {amount} {way, select, more {more} other {less}} than the meter’s readings of the same days come to.':
    'Die Rechnung verlangt etwa {amount} {way, select, more {mehr} other {weniger}}, als der Zähler an denselben Tagen zeigt.',
  'For {weather, select, known {these days, this price and this weather} other {these days and this price}} our estimate for heating and hot water alone is {range}.':
    'Für {weather, select, known {diese Tage, diesen Preis und dieses Wetter} other {diese Tage und diesen Preis}} liegt unsere Kostenschätzung allein für Heizung und Warmwasser bei {range}.',
  'For {weather, select, known {these days, this price and this weather} other {these days and this price}} our estimate is {range} for 8 in 10 homes like yours.':
    'Für {weather, select, known {diese Tage, diesen Preis und dieses Wetter} other {diese Tage und diesen Preis}} schätzen wir {range} bei 8 von 10 solchen Häusern.',
  'The bill is {amount}.': 'Die Rechnung beträgt {amount}.',
  'The bill has {bill}. For the same days “{meter}” shows {read}.':
    'Auf der Rechnung stehen {bill}. Für dieselben Tage zeigt „{meter}“ {read}.',
  'The kWh given for heating are all that “{meter}” shows, so other things are still in them.':
    'Die für die Heizung genannten kWh sind alles, was „{meter}“ zeigt; anderes steckt also noch darin.',
  'The heat pump’s own meter shows {read}, and the bill of the whole home only {bill}.':
    'Der eigene Zähler der Wärmepumpe zeigt {read}, die Rechnung des ganzen Hauses nur {bill}.',
  '“{meter}” has no readings for the days of this bill, so nothing confirms its {bill}.':
    '„{meter}“ hat für die Tage dieser Rechnung keine Messwerte, also bestätigt nichts ihre {bill}.',
  'The heat pump’s own meter shows {more} more than the bill of the whole home.':
    'Der eigene Zähler der Wärmepumpe zeigt {more} mehr als die Rechnung des ganzen Hauses.',
  '“{meter}” has readings for {daysRead} of the bill’s {days} days, {read} in all. {missing, plural, one {The other day} other {The other days}} would have to hold {rest}.':
    '„{meter}“ hat Messwerte für {daysRead} der {days} Tage der Rechnung, zusammen {read}. Auf {missing, plural, one {den übrigen Tag} other {die übrigen Tage}} müssten {rest} fallen.',
  'Nobody has said how much of this bill went into other things. By its records from before, this home took about {units} for them in as many days.':
    'Niemand hat gesagt, wie viel dieser Rechnung in anderes ging. Nach seinen Daten von vorher brauchte dieses Haus in ebenso vielen Tagen etwa {units} dafür.',
  'Nobody has said how much of this bill went into other things. In a home like this it is usually about {usual}.':
    'Niemand hat gesagt, wie viel dieser Rechnung in anderes ging. In einem Haus wie diesem sind es meist etwa {usual}.',
  'Before anybody looks for a cause: read the meter today, and ask the supplier to check the bill.':
    'Bevor jemand nach einer Ursache sucht: Lesen Sie heute den Zähler ab, und bitten Sie den Versorger, die Rechnung zu prüfen.',
  'Give the kWh without other things, or leave out what went into them.':
    'Nennen Sie die kWh ohne anderes, oder lassen Sie weg, was in anderes ging.',
  'Compare the numbers of both meters and the days of their readings.':
    'Vergleichen Sie die Nummern beider Zähler und die Tage ihrer Ablesungen.',
  'That is {rest} a day, against {read} on the days with readings. Bring in the missing days.':
    'Das sind {rest} am Tag, gegen {read} an den Tagen mit Messwerten. Ergänzen Sie die fehlenden Tage.',
  'Bring in readings of these days, or compare the meter with the bill’s last reading.':
    'Ergänzen Sie Messwerte dieser Tage, oder vergleichen Sie den Zähler mit dem letzten Stand der Rechnung.',
  'This bill has {bill}. A saved bill of the same days, “{meter}”, has {read}.':
    'Diese Rechnung hat {bill}. Eine gespeicherte Rechnung für dieselben Tage, „{meter}“, hat {read}.',
  'This bill ended before the estimate was written, so another heating may have warmed the home then.':
    'Diese Rechnung endet vor dem Tag der Schätzung. Vielleicht wärmte damals noch eine andere Heizung das Haus.',
  'Compare its dates with the day on which the heat pump began. Earlier days say nothing of it.':
    'Vergleichen Sie ihre Tage mit dem Tag, an dem die Wärmepumpe anfing. Frühere Tage sagen nichts über sie.',
  'Compare both with the paper, and correct the one that is wrong.':
    'Vergleichen Sie beide mit dem Papier, und berichtigen Sie, was nicht stimmt.',
  'Until somebody says it, it stays in one part with the heating.':
    'Solange es niemand sagt, steht es mit der Heizung in einem Teil.',
  'Type it as “otherKWh” under “check” in the household file, and take it off “boughtKWh” there.':
    'Tragen Sie es in der Haushaltsdatei unter „check“ als „otherKWh“ ein, und ziehen Sie es dort von „boughtKWh“ ab.',
  '{file} holds no bill to check.': '{file} enthält keine Rechnung, die sich prüfen ließe.',
  'Add “check” with the dates, the kWh and the price of the bill.':
    'Ergänzen Sie „check“ mit den Tagen, den kWh und dem Preis der Rechnung.',
  'This bill cannot be judged yet.': 'Diese Rechnung lässt sich noch nicht beurteilen.',
  'An even slice of the year would be {slice}. In a usual year these days are {season, select, cold {colder} other {milder}} than the others, so the estimate for them is {season, select, cold {more} other {less}}: {amount}.':
    'Ein gleicher Teil des Jahres wären {slice}. In einem üblichen Jahr sind diese Tage {season, select, cold {kälter} other {milder}} als die anderen, darum ist die Kostenschätzung dafür {season, select, cold {mehr} other {weniger}}: {amount}.',
  'Days of winter': 'Wintertage',
  'Days of summer': 'Sommertage',
  'Higher electricity price': 'Höherer Strompreis',
  'Lower electricity price': 'Niedrigerer Strompreis',
  'Colder weather': 'Kälteres Wetter',
  'Milder weather': 'Milderes Wetter',
  'Another tariff': 'Anderer Tarif',
  'More at high-price hours': 'Mehr zu teuren Stunden',
  'More at low-price hours': 'Mehr zu günstigen Stunden',
  'Higher standing charge': 'Höherer Grundpreis',
  'Lower standing charge': 'Niedrigerer Grundpreis',
  'More heat made': 'Mehr Wärme erzeugt',
  'Less heat made': 'Weniger Wärme erzeugt',
  'More for hot water': 'Mehr für Warmwasser',
  'Less for hot water': 'Weniger für Warmwasser',
  'More kWh for the heat': 'Mehr Strom je Wärme',
  'Fewer kWh for the heat': 'Weniger Strom je Wärme',
  'Backup heater': 'Heizstab',
  'More in the cold': 'Mehr bei Kälte',
  'Less in the cold': 'Weniger bei Kälte',
  'More in any weather': 'Mehr bei jedem Wetter',
  'Less in any weather': 'Weniger bei jedem Wetter',
  'More billed than read': 'Über den Messwerten',
  'Less billed than read': 'Unter den Messwerten',
  'All the rest': 'Alles Übrige',
  'A higher electricity price': 'Ein höherer Strompreis',
  'A lower electricity price': 'Ein niedrigerer Strompreis',
  'A higher standing charge': 'Ein höherer Grundpreis',
  'A lower standing charge': 'Ein niedrigerer Grundpreis',
  'The backup heater': 'Der Heizstab',
  '{name}: not known.': '{name}: nicht bekannt.',
  '{name} made no difference.': '{name} machte keinen Unterschied.',
  '{name} {way, select, added {added} other {took away}} about {amount}.':
    '{name} {way, select, added {brachte etwa {amount} dazu} other {nahm etwa {amount} weg}}.',
  'of it: {name}': 'davon: {name}',
  'of it: all else': 'davon: alles andere',
  '{name}, joined': '{name}, zusammen',
  'the price': 'der Preis',
  'the hours of use': 'die Stunden des Verbrauchs',
  'heat used': 'verbrauchte Wärme',
  'how well the machine works': 'wie gut die Wärmepumpe arbeitet',
  'the backup heater': 'der Heizstab',
  'other electricity': 'anderer Strom',
  'a wrong reading': 'ein falscher Zählerstand',
  'the weather': 'das Wetter',
  '“{name}” holds {parts}. They cannot be told apart yet, so they are shown as one.':
    '„{name}“ enthält: {parts}. Das lässt sich noch nicht trennen und steht darum als eines da.',
  'We have no weather of these days, so the weather is in that part too.':
    'Für diese Tage haben wir kein Wetter, darum steckt auch das Wetter darin.',
  'The bill is based on an estimated reading. The next one may correct it.':
    'Der Rechnung liegt ein geschätzter Zählerstand zugrunde. Der nächste kann ihn berichtigen.',
  'The price of {price} a kWh is that of the tariff “{tariff}”: the price on the bill is not known.':
    'Der Preis von {price} je kWh stammt aus dem Tarif „{tariff}“: Der Preis auf der Rechnung ist nicht bekannt.',
  'The bill does not say whether the meter was read.': 'Die Rechnung sagt nicht, ob der Zähler abgelesen wurde.',
  'How much of the bill went into other things was told, not metered.':
    'Wie viel der Rechnung in anderes ging, wurde gesagt, nicht gemessen.',
  'Work on the cooling circuit is for certified people only. Isolate the unit before opening it.':
    'Am Kältekreis arbeiten nur zugelassene Fachleute. Trennen Sie die Wärmepumpe vom Netz, bevor sie geöffnet wird.',
  // Findings
  'Weekly hot tank': 'Wöchentlich heißer Speicher',
  'Many starts on warm days': 'Viele Starts an warmen Tagen',
  'Rest at night': 'Nachts Ruhe',
  'More at every hour': 'Zu jeder Stunde mehr',
  'A large, even load': 'Ein großer, gleichmäßiger Verbraucher',
  'More counted in the same weather': 'Bei gleichem Wetter mehr gezählt',
  'Less counted in the same weather': 'Bei gleichem Wetter weniger gezählt',
  'More use at expensive hours': 'Mehr Verbrauch zu teuren Stunden',
  'Electric heat on the coldest days': 'Strom zum Heizen an den kältesten Tagen',
  'A meter that counts differently': 'Ein Zähler, der anders zählt',
  'Electricity made at home': 'Eigener Strom',
  'Weeks with little used': 'Wochen mit wenig Verbrauch',
  'An estimate corrected': 'Eine berichtigte Schätzung',
  'Day and night exchanged': 'Tag und Nacht vertauscht',
  ', mostly from about {time}': ', meist ab etwa {time}',
  'A steady {power} kW ran on {days, plural, one {# day} other {# days}}, {hours} hours in all{about}. That is what an immersion or backup heater looks like.':
    'An {days, plural, one {# Tag} other {# Tagen}} liefen gleichmäßig {power} kW, zusammen {hours} Stunden{about}. So sieht ein Heizstab aus.',
  'A steady {power} kW ran once a week, {times, plural, one {# time} other {# times}}{about}. That is most likely the weekly heating of the tank against germs.':
    'Einmal in der Woche liefen gleichmäßig {power} kW, {times, plural, one {# Mal} other {# Mal}}{about}. Das ist wohl das wöchentliche Aufheizen des Speichers gegen Keime.',
  'On warm days the heat pump started {times} times a day, with {units} kWh a day.':
    'An warmen Tagen lief die Wärmepumpe {times}-mal am Tag an, mit {units} kWh am Tag.',
  'On {days, plural, one {# cold day} other {# cold days}} the machine rested at night at {night} of the day’s power. Each morning it ran at {morning}.':
    'An {days, plural, one {# kalten Tag} other {# kalten Tagen}} ruhte die Wärmepumpe nachts bei {night} der Tagesleistung. Jeden Morgen lief sie mit {morning}.',
  'What runs all night rose from {before} to {after}, and not with the cold.':
    'Was die ganze Nacht läuft, stieg von {before} auf {after}, und nicht mit der Kälte.',
  'A steady {power} kW ran on {days, plural, one {# day} other {# days}}, {hours} hours each{about}.{heater, select, yes {} other { It does not look like heating.}}':
    'An {days, plural, one {# Tag} other {# Tagen}} liefen gleichmäßig {power} kW, je {hours} Stunden{about}.{heater, select, yes {} other { Wie Heizung sieht das nicht aus.}}',
  'Since then a kWh has cost {share} more on average, because more are used at expensive hours.':
    'Seither kostet eine kWh im Mittel {share} mehr, weil mehr zu teuren Stunden verbraucht wird.',
  'Since then the meter counts {units} kWh a day {way, select, less {less} other {more}} in the same weather.':
    'Seither zählt der Zähler bei gleichem Wetter am Tag {units} kWh {way, select, less {weniger} other {mehr}}.',
  'The colder the day, the larger the difference.': 'Je kälter der Tag, desto größer der Unterschied.',
  'The difference is there only while the home is heated.': 'Der Unterschied besteht nur, solange geheizt wird.',
  'The difference is the same on cold days and on mild ones.':
    'Der Unterschied ist an kalten und an milden Tagen gleich.',
  'These days do not show whether the difference follows the cold.':
    'Diese Tage zeigen nicht, ob der Unterschied der Kälte folgt.',
  'On {days, plural, one {# day} other {# days}} colder than {below} °C the meter counted {units} kWh a day beyond what the milder days lead to.':
    'An {days, plural, one {# Tag} other {# Tagen}} unter {below} °C zählte der Zähler am Tag {units} kWh mehr, als die milderen Tage erwarten lassen.',
  'From then on the least, the usual and the largest readings are all {times} times what they were. That is the meter.':
    'Von da an sind die kleinsten, die üblichen und die größten Messwerte alle das {times}-Fache. Das ist der Zähler.',
  'On {days, plural, one {# day} other {# days}} less was bought about noon than always runs. So electricity is made at home, which this meter does not show.':
    'An {days, plural, one {# Tag} other {# Tagen}} wurde mittags weniger bezogen, als immer läuft. Also wird im Haus Strom erzeugt, den dieser Zähler nicht zeigt.',
  'For {days, plural, one {# day} other {# days}} the meter shows none of the ups and downs of people.':
    '{days, plural, one {# Tag} other {# Tage}} lang zeigt der Zähler nichts vom Auf und Ab eines bewohnten Hauses.',
  'a heat pump that works less well': 'eine Wärmepumpe, die schlechter arbeitet',
  'more heat asked for': 'mehr verlangte Wärme',
  'warmer rooms': 'wärmere Räume',
  'plug-in heaters': 'Heizlüfter an der Steckdose',
  'more hot water': 'mehr Warmwasser',
  'a tank that is heated often': 'ein Speicher, der oft erwärmt wird',
  'heating left on in summer': 'eine Heizung, die im Sommer an ist',
  'an electric heater': 'ein Heizstab',
  'other things in the home': 'anderes im Haus',
  'something that runs day and night': 'etwas, das Tag und Nacht läuft',
  'a car or another large load': 'ein Auto oder ein anderer großer Verbraucher',
  'a heat pump that works better': 'eine Wärmepumpe, die besser arbeitet',
  'less heat asked for': 'weniger verlangte Wärme',
  'less hot water': 'weniger Warmwasser',
  'a heater that is off again': 'ein Heizstab, der wieder aus ist',
  'less use of other things': 'weniger Verbrauch durch anderes',
  'electricity made at home': 'im Haus erzeugter Strom',
  'days with nobody at home': 'Tage, an denen niemand zu Hause ist',
  'people who moved in or came back': 'Menschen, die eingezogen oder zurückgekommen sind',
  'a meter that counts differently': 'ein Zähler, der anders zählt',
  'rooms that are let cool at night': 'Räume, die nachts auskühlen',
  'use at expensive hours': 'Verbrauch zu teuren Stunden',
  'These look alike on this meter: {causes}.': 'Das sieht an diesem Zähler gleich aus: {causes}.',
  'The estimate said {estimated}, where {likely} are likely. The next reading corrected it.':
    'Geschätzt waren {estimated}, wahrscheinlich sind {likely}. Die nächste Ablesung hat es berichtigt.',
  'The bill has {billed} at the high rate. By the clock it was {dear}.':
    'Die Rechnung hat {billed} zum hohen Preis. Nach der Uhr waren es {dear}.',
  'An electric heater in the tank or the heat pump seems to have run on {days, plural, one {# day} other {# days}}. That was from {from} to {to}.':
    'Ein Heizstab im Speicher oder in der Wärmepumpe lief wohl an {days, plural, one {# Tag} other {# Tagen}}. Das war vom {from} bis {to}.',
  'Once a week the meter shows a steady run, as where a tank is made very hot to keep it clean.':
    'Einmal in der Woche zeigt der Zähler einen gleichmäßigen Lauf, wie wenn ein Speicher zur Reinhaltung sehr heiß gemacht wird.',
  'On warm days the heat pump starts about {times} times a day, for hot water or for the rooms.':
    'An warmen Tagen läuft die Wärmepumpe etwa {times}-mal am Tag an, für Warmwasser oder für die Räume.',
  'The heat pump rests at night and catches up by day.': 'Die Wärmepumpe ruht nachts und holt es am Tag nach.',
  'The heat pump rests at night and works hard in the morning.':
    'Die Wärmepumpe ruht nachts und arbeitet morgens schwer.',
  'Since {since} the meter counts more at every hour, at night too.':
    'Seit dem {since} zählt der Zähler zu jeder Stunde mehr, auch nachts.',
  'Your meter shows something large and steady. It may be an electric heater, a car or something else.':
    'Ihr Zähler zeigt etwas Großes und Gleichmäßiges. Das kann ein Heizstab, ein Auto oder etwas anderes sein.',
  'Your meter shows something large and steady that does not look like heating.':
    'Ihr Zähler zeigt etwas Großes und Gleichmäßiges, das nicht nach Heizung aussieht.',
  'Since {since} the meter counts more at the hours that cost more.':
    'Seit dem {since} zählt der Zähler mehr zu den Stunden, die mehr kosten.',
  'Since {since} the meter counts {way, select, less {less} other {more}} in the same weather.':
    'Seit dem {since} zählt der Zähler bei gleichem Wetter {way, select, less {weniger} other {mehr}}.',
  'On the coldest days the meter counted more than the cold explains. An electric heater may have helped.':
    'An den kältesten Tagen zählte der Zähler mehr, als die Kälte erklärt. Vielleicht half ein Heizstab.',
  'Since {since} the meter counts everything {times} times as before. So the meter must be tested.':
    'Seit dem {since} zählt der Zähler alles {times}-mal so viel wie zuvor. Darum muss der Zähler geprüft werden.',
  'The meter shows that electricity is made at your home, for example by solar panels.':
    'Der Zähler zeigt, dass bei Ihnen Strom erzeugt wird, etwa mit Solarmodulen.',
  'From {from} to {to} the meter counted much less than before and after, in the same weather.':
    'Vom {from} bis {to} hat der Zähler bei gleichem Wetter viel weniger gezählt als davor und danach.',
  'For {days, plural, one {# day} other {# days}} the meter counted {share} of what days as cold took before and after.':
    '{days, plural, one {# Tag} other {# Tage}} lang hat der Zähler {share} dessen gezählt, was gleich kalte Tage davor und danach gebraucht haben.',
  'From {from} to {to} the meter shows hardly any ups and downs.':
    'Vom {from} bis {to} zeigt der Zähler kaum ein Auf und Ab.',
  'One bill was estimated, and the next one corrected it.':
    'Eine Rechnung war geschätzt, und die nächste hat sie berichtigt.',
  'The day and the night figures of the meter may have been mixed up.':
    'Tag- und Nachtwerte des Zählers sind vielleicht vertauscht worden.',
  'about {count} in 20 sure': 'in etwa {count} von 20 Fällen richtig',
  'Ask whether the home was empty for some weeks.': 'Fragen, ob das Haus einige Wochen leer stand.',
  'See on the control at which hours it heats, and how cool the nights may get.':
    'An der Regelung nachsehen, zu welchen Stunden geheizt wird und wie kühl es nachts werden darf.',
  'Read the heat pump for a week on a meter of its own.':
    'Die Wärmepumpe eine Woche lang an einem eigenen Zähler ablesen.',
  'How much it comes to is not known.': 'Wie viel es ausmacht, ist nicht bekannt.',
  'The cooler night saves heat, and catching up costs some. Only a trial shows which is more.':
    'Die kühlere Nacht spart Wärme, das Nachholen kostet welche. Was überwiegt, zeigt nur ein Versuch.',
  'That is at the prices of its own hours. At the mean price, as the parts of the difference have it, it is {amount}.':
    'Das ist zu den Preisen der Stunden, in denen es lief. Zum mittleren Preis, wie in den Teilen des Unterschieds, sind es {amount}.',
  'Without the heater the heat pump has to make part of this heat, so less than that would be saved.':
    'Ohne den Heizstab muss die Wärmepumpe einen Teil dieser Wärme selbst erzeugen; gespart würde also weniger.',
  'It makes no lasting cost.': 'Auf Dauer kostet es nichts.',
  'In the days of the bill that was {units}, about {amount}. It is not counted as a part of the difference.':
    'In den Tagen der Rechnung waren das {units}, etwa {amount}. Als Teil des Unterschieds zählt es nicht.',
  'In the days of the bill that is about {amount} {way, select, less {less} other {more}}.':
    'In den Tagen der Rechnung sind das etwa {amount} {way, select, less {weniger} other {mehr}}.',
  'In the days of the bill that is {units} {unitsWay, select, less {less} other {more}}, about {amount} {way, select, less {less} other {more}}.':
    'In den Tagen der Rechnung sind das {units} {unitsWay, select, less {weniger} other {mehr}}, etwa {amount} {way, select, less {weniger} other {mehr}}.',
  'Over a year it evens out.': 'Über ein Jahr gleicht es sich aus.',
  'It was seen for a part of the year only, so we give no figure for a year.':
    'Zu sehen war es nur einen Teil des Jahres, darum nennen wir keine Zahl für ein Jahr.',
  'Over a whole year that is about {amount} {way, select, less {less} other {more}}.':
    'Auf ein ganzes Jahr sind das etwa {amount} {way, select, less {weniger} other {mehr}}.',
  'It was seen for a part of the year only; the same days of another year would be about {amount} {way, select, less {less} other {more}}.':
    'Zu sehen war es nur einen Teil des Jahres; die gleichen Tage eines anderen Jahres wären etwa {amount} {way, select, less {weniger} other {mehr}}.',
  'Is there a switch for an electric heater, and is it on?':
    'Gibt es einen Schalter für einen Heizstab, und ist er an?',
  'At what hours is the hot water made, and who set them?':
    'Zu welchen Stunden wird das Wasser erwärmt, und wer hat sie eingestellt?',
  'Are there more baths or longer showers than before?': 'Wird öfter gebadet oder länger geduscht als früher?',
  'Are the rooms set cooler at night, or is the heating off?':
    'Sind die Räume nachts kühler eingestellt, oder ist die Heizung aus?',
  'Is there something new that runs day and night?': 'Gibt es etwas Neues, das Tag und Nacht läuft?',
  'Is a car charged at home?': 'Wird zu Hause ein Auto geladen?',
  'Is there a hot tub, a pool or a heated shed?':
    'Gibt es einen Whirlpool, ein Schwimmbecken oder einen beheizten Schuppen?',
  'Was a timer or a clock changed, or did the power fail?':
    'Wurde eine Schaltuhr verstellt, oder ist der Strom ausgefallen?',
  'Did you change your supplier or your rates?': 'Haben Sie den Versorger oder den Tarif gewechselt?',
  'Are more people at home than before?': 'Sind mehr Personen zu Hause als früher?',
  'Are the rooms warmer than before?': 'Sind die Räume wärmer als früher?',
  'Are rooms heated now that were not before?': 'Werden jetzt Räume geheizt, die es früher nicht wurden?',
  'Were you away?': 'Waren Sie verreist?',
  'Did anybody change the settings at that time?': 'Hat damals jemand die Einstellungen geändert?',
  'Are there solar panels or another source of electricity?': 'Gibt es Solarmodule oder eine andere Stromquelle?',
  'Are plug-in heaters used on cold days?': 'Laufen an kalten Tagen Heizlüfter an der Steckdose?',
  'Is the heating switched off in summer?': 'Ist die Heizung im Sommer ausgeschaltet?',
  'Was the meter changed?': 'Wurde der Zähler getauscht?',
  'Read the heater’s hours on the control.': 'Lesen Sie die Stunden des Heizstabs an der Regelung ab.',
  'See when the control lets the heater on, and whether it is on by hand.':
    'Sehen Sie, wann die Regelung den Heizstab freigibt und ob er von Hand an ist.',
  'Note how hot the tank is set.': 'Notieren Sie, wie heiß der Speicher eingestellt ist.',
  'Note day, hour and heat of the weekly hot tank, and what heats it.':
    'Notieren Sie Tag, Stunde und Temperatur des wöchentlichen Aufheizens und womit aufgeheizt wird.',
  'Feel whether the tank and its pipes lose heat, and whether water is pumped round.':
    'Fühlen Sie, ob Speicher und Rohre Wärme verlieren und ob Wasser umläuft.',
  'Compare the heating curve with the one in the estimate.':
    'Vergleichen Sie die Heizkurve mit der in der Kostenschätzung.',
  'Try an even night for a week, and read the meter before and after.':
    'Versuchen Sie eine Woche ohne Absenkung, und lesen Sie den Zähler vorher und nachher ab.',
  'See whether a pump runs when nothing is asked of it.': 'Sehen Sie, ob eine Pumpe läuft, wenn nichts verlangt wird.',
  'Read this load on a meter of its own.': 'Messen Sie diesen Verbraucher mit einem eigenen Zähler.',
  'Compare the timer’s clock with the real time.': 'Vergleichen Sie die Schaltuhr mit der wirklichen Zeit.',
  'Compare the hours of the rates with the meter’s own clock.':
    'Vergleichen Sie die Stunden des Tarifs mit der Uhr des Zählers.',
  'Read the meter yourself and give it to the supplier.':
    'Lesen Sie den Zähler selbst ab und melden Sie den Stand dem Versorger.',
  'See which figure of the meter counts up by night.': 'Sehen Sie, welches Zählwerk nachts weiterzählt.',
  'Ask the supplier to work out the bill again.': 'Bitten Sie den Versorger, die Rechnung neu zu berechnen.',
  'Read for a week the heat that the heat pump has made, and the kWh that it took.':
    'Lesen Sie eine Woche lang ab, wie viel Wärme die Wärmepumpe erzeugt und wie viele kWh sie braucht.',
  'Run a load of known power for an hour, and see what the meter counts.':
    'Lassen Sie eine Stunde lang etwas mit bekannter Leistung laufen, und sehen Sie, was der Zähler zählt.',
  'Read how much the panels have made.': 'Lesen Sie ab, wie viel die Module erzeugt haben.',
  'On a warm day feel the pipes to the radiators while the tank is not being heated.':
    'Fühlen Sie an einem warmen Tag die Rohre zu den Heizkörpern, während der Speicher nicht erwärmt wird.',
  'Switch off, lock off and prove dead before a cover is opened. Mains wiring is for an electrician.':
    'Abschalten, gegen Wiedereinschalten sichern und Spannungsfreiheit prüfen, bevor etwas geöffnet wird. Netzspannung ist Sache einer Elektrofachkraft.',
  'Water of the tank can scald.': 'Wasser aus dem Speicher kann verbrühen.',
  'Do not turn the weekly hot tank off without other care against germs; local codes come first.':
    'Schalten Sie das wöchentliche Aufheizen nicht ohne anderen Schutz gegen Keime ab; örtliche Vorschriften gehen vor.',
  'Work on the cooling circuit is for certified people only.': 'Am Kältekreis arbeiten nur zugelassene Fachleute.',
  'The readings of these days show none of the things that we look for. That does not rule them out.':
    'Die Messwerte dieser Tage zeigen nichts von den Dingen, nach denen wir suchen. Das schließt sie nicht aus.',
  'There are no readings by the hour for these days. They would show heaters, timers and changes with their dates.':
    'Für diese Tage gibt es keine stündlichen Messwerte. Sie würden Heizstäbe, Schaltuhren und Änderungen mit Datum zeigen.',
  // The months followed
  'No month since the estimate has been read from end to end.':
    'Seit der Kostenschätzung ist noch kein Monat ganz abgelesen.',
  '{month} was {verdict, select, inside {inside} above {above} other {below}} what we estimated.':
    '{month} lag {verdict, select, inside {in} above {über} other {unter}} der geschätzten Spanne.',
  'In {inside} of {count} months the meter was inside what we estimated.':
    'In {inside} von {count} Monaten lag der Zähler in der geschätzten Spanne.',
  'Together they are as we thought, give or take little.': 'Zusammen ist es etwa wie gedacht.',
  'Together they took {units} {way, select, more {more} other {less}} than the middle of it, about {amount}.':
    'Zusammen brauchten sie {units} {way, select, more {mehr} other {weniger}} als deren Mitte, etwa {amount}.',
  'Together they took {units} {way, select, more {more} other {less}} than the middle of it.':
    'Zusammen brauchten sie {units} {way, select, more {mehr} other {weniger}} als deren Mitte.',
  'So we cannot say yet what the next bill will do.':
    'Darum lässt sich noch nicht sagen, was die nächste Rechnung bringt.',
  'The newest month, {month}, was above it. Expect the next bill above the estimate too, unless something changes.':
    'Der neueste Monat, {month}, lag darüber. Auch die nächste Rechnung dürfte über der Kostenschätzung liegen, wenn sich nichts ändert.',
  'The newest month, {month}, was below it. Expect the next bill below the estimate.':
    'Der neueste Monat, {month}, lag darunter. Auch die nächste Rechnung dürfte unter der Kostenschätzung liegen.',
  'If it goes on like this, the next bill should hold no surprise.':
    'Geht es so weiter, dürfte die nächste Rechnung keine Überraschung bringen.',
  '{months, plural, one {The last month} other {The last # months}} ran high. Expect the next bill at the high end of the estimate.':
    '{months, plural, one {Der letzte Monat lag} other {Die letzten # Monate lagen}} hoch. Die nächste Rechnung dürfte am oberen Ende der Schätzung liegen.',
  '{months, plural, one {The last month} other {The last # months}} ran low. Expect the next bill at the low end of the estimate.':
    '{months, plural, one {Der letzte Monat lag} other {Die letzten # Monate lagen}} niedrig. Die nächste Rechnung dürfte am unteren Ende der Schätzung liegen.',
  'The meter of the whole home does not say what the heating took. A meter on the heat pump would let us follow it by month.':
    'Der Zähler des ganzen Hauses sagt nicht, was die Heizung brauchte. Ein Zähler an der Wärmepumpe ließe es uns Monat für Monat verfolgen.',
  'Add the heat pump’s own readings since the estimate, and we follow them by month.':
    'Fügen Sie die eigenen Messwerte der Wärmepumpe seit der Kostenschätzung hinzu, dann verfolgen wir sie Monat für Monat.',
  // What findings are worth
  'What “sure” is worth, on 1,000 example homes: of findings under {middle} in 20 sure at least {littleTrue} in 100 were true, from {middle} in 20 on {middleTrue}, from {much} in 20 on {muchTrue}. A real home may differ.':
    'Was „sicher“ wert ist, an 1.000 erdachten Häusern: Von Befunden unter {middle} von 20 trafen mindestens {littleTrue} von 100 zu, ab {middle} von 20 {middleTrue}, ab {much} von 20 {muchTrue}. Ein wirkliches Haus kann anders sein.',
  'On example homes: named without cause in at most {wrong} of 100, found in at least {found} of 100.':
    'An erdachten Häusern: ohne Grund genannt bei höchstens {wrong} von 100, gefunden bei mindestens {found} von 100.',
  'Electric heaters of {machine} kW are seen on the machine’s own meter and of {house} kW on the house’s. Smaller ones run at powers that the machine has too, so they are not named. Of 100 heaters in half-hours at least {found} were found, by the hour {hourly}, on the house’s meter alone {houseOnly}.':
    'Heizstäbe mit {machine} kW sind am eigenen Zähler der Wärmepumpe zu sehen, solche mit {house} kW am Zähler des Hauses. Kleinere laufen mit Leistungen, die auch die Wärmepumpe hat, und werden darum nicht genannt. Von 100 Heizstäben wurden aus halben Stunden mindestens {found} gefunden, aus Stunden {hourly}, am Hauszähler allein {houseOnly}.',
  'These readings cannot rule out everything. Here is what they leave open, and what would tell.':
    'Diese Messwerte schließen nicht alles aus. Hier steht, was offen bleibt und was es zeigen würde.',
  '{count, plural, one {# more, less likely or worth less} other {# more, less likely or worth less}}':
    '{count, plural, one {# weiteres, weniger wahrscheinlich oder weniger teuer} other {# weitere, weniger wahrscheinlich oder weniger teuer}}',
  'See how hot the water to the radiators is, against what was planned.':
    'Sehen Sie nach, wie heiß das Wasser zu den Heizkörpern ist, verglichen mit dem Geplanten.',
  'Measure the warmth of the rooms for a week, and ask about hot water.':
    'Messen Sie eine Woche lang die Wärme der Räume, und fragen Sie nach dem Warmwasser.',
  'Use at expensive hours cannot be judged: under “{first}” the price per kWh depends on the amount too.':
    'Verbrauch zu teuren Stunden lässt sich nicht beurteilen: Im Tarif „{first}“ hängt der Preis je kWh auch von der Menge ab.',
  'Only “{first}” was looked through. There is {others} beside it, and nobody says whether the same units count in both.':
    'Nur „{first}“ wurde durchgesehen. Daneben gibt es {others}, und niemand sagt, ob beide dieselben kWh zählen.',
};
