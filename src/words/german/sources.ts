import type { Catalogue } from '../say.ts';

/** The German of what sources say beside their titles. A title alone stays as it was published. */
export const SOURCES: Catalogue = {
  'SAP 2012 Tables U1 and U4 (two public transcriptions agree); Table U1 regions 0 to 7 also seen labelled SAP 10.2 with the same values':
    'SAP 2012, Tabellen U1 und U4 (zwei öffentliche Abschriften stimmen überein); Tabelle U1, Regionen 0 bis 7, mit denselben Werten auch als SAP 10.2 gesehen',
  'SAP 2012 Appendix U, Tables U3 and U5 (two public transcriptions agree); UK average row and south column give the published results of SAP 10.2 to 9 digits, that the others are unchanged there is from memory':
    'SAP 2012, Anhang U, Tabellen U3 und U5 (zwei öffentliche Abschriften stimmen überein); die Zeile des britischen Mittels und die Spalte Süd ergeben die Ergebnisse von SAP 10.2 auf 9 Stellen, dass die anderen dort gleich sind: aus dem Gedächtnis',
  'CIBSE Guide A Table 2.5, public transcription': 'CIBSE Guide A, Tabelle 2.5, öffentliche Abschrift',
  'values seen in a public list without attribution; MIS 3005 and CIBSE Guide A (2006) Table 2.4 at 99 % from memory':
    'Werte aus einer öffentlichen Liste ohne Herkunft; MIS 3005 und CIBSE Guide A (2006), Tabelle 2.4 bei 99 %, aus dem Gedächtnis',
  'DIN V 18599-10:2018-09, Table E.6, reference climate Potsdam, public transcription; slopes by SAP Appendix U, which was made for Britain':
    'DIN V 18599-10:2018-09, Tabelle E.6, Referenzklima Potsdam, öffentliche Abschrift; Neigungen nach SAP, Anhang U, der für Großbritannien gemacht ist',
  'SAP 10.2 Appendix J, Tables J1 (mains), J2 and J5': 'SAP 10.2, Anhang J, Tabellen J1 (Leitungswasser), J2 und J5',
  'SAP 2012 Table H4, 60 to 80 % of the sky hidden': 'SAP 2012, Tabelle H4, 60 bis 80 % des Himmels verdeckt',
  'SAP 2012 Table H4, more than 80 % of the sky hidden': 'SAP 2012, Tabelle H4, mehr als 80 % des Himmels verdeckt',
  'SAP 10.2 Appendix M1, 20 to 60 % of the sky hidden': 'SAP 10.2, Anhang M1, 20 bis 60 % des Himmels verdeckt',
  'SAP 10.2 Appendix M1, less than 20 % of the sky hidden':
    'SAP 10.2, Anhang M1, weniger als 20 % des Himmels verdeckt',
  'SAP 10.2 Appendix M1, as in a public implementation': 'SAP 10.2, Anhang M1, nach öffentlichem Programmtext',
  'SAP 10.2 Table 4f, heating pump 41 kWh (2013 or later) to 165 kWh (2012 or earlier)':
    'SAP 10.2, Tabelle 4f, Heizungspumpe 41 kWh (ab 2013) bis 165 kWh (bis 2012)',
  'SAP 2012 Table 4f, heating pump 115 kWh and oil boiler 100 kWh':
    'SAP 2012, Tabelle 4f, Heizungspumpe 115 kWh und Ölkessel 100 kWh',
  'SAP 2012 Table 4f, heating pump 115 kWh; feed, fan and ignition about 1 % of the heat, 130 kWh, common practice':
    'SAP 2012, Tabelle 4f, Heizungspumpe 115 kWh; Förderung, Gebläse und Zündung etwa 1 % der Wärme, 130 kWh, eigene Annahme',
  'SAP 2012 Table 4f, heating pump of unknown date 115 kWh and flue fan 45 kWh':
    'SAP 2012, Tabelle 4f, Heizungspumpe unbekannten Alters 115 kWh und Abgasgebläse 45 kWh',
  'SAP Table 4a (2009 edition transcription), code 691': 'SAP-Tabelle 4a (Abschrift der Ausgabe 2009), Nr. 691',
  'SAP Table 4a (2009 edition transcription), code 903': 'SAP-Tabelle 4a (Abschrift der Ausgabe 2009), Nr. 903',
  "SAP Table 4a (2009 edition transcription), code 903; the cylinder's standing loss is in the hot-water demand":
    'SAP-Tabelle 4a (Abschrift der Ausgabe 2009), Nr. 903; der Verlust des Speichers steckt im Warmwasserbedarf',
  'SAP Table 4a (2009 edition transcription), codes 401 to 404: 100 % at the meter, poorer control; 5 % charge losses are a judgement':
    'SAP-Tabelle 4a (Abschrift der Ausgabe 2009), Nr. 401 bis 404: 100 % am Zähler, schlechtere Regelung; 5 % Verlust der Ladung sind eine Einschätzung',
  'SAP Table 4b (2009 edition transcription; that 10.2 has the same codes is from memory), code 104':
    'SAP-Tabelle 4b (Abschrift der Ausgabe 2009; dass 10.2 dieselben Zahlen hat: aus dem Gedächtnis), Nr. 104',
  'SAP Table 4b (2009 edition transcription; that 10.2 has the same codes is from memory), code 127':
    'SAP-Tabelle 4b (Abschrift der Ausgabe 2009; dass 10.2 dieselben Zahlen hat: aus dem Gedächtnis), Nr. 127',
  'SAP Table 4b (2009 edition transcription; that 10.2 has the same codes is from memory), code 127; low and high from codes 126 and 130':
    'SAP-Tabelle 4b (Abschrift der Ausgabe 2009; dass 10.2 dieselben Zahlen hat: aus dem Gedächtnis), Nr. 127; unten und oben aus Nr. 126 und 130',
  'SAP Table 4b (2009 edition transcription; that 10.2 has the same codes is from memory), codes 102 and 104 (gas rows apply to LPG)':
    'SAP-Tabelle 4b (Abschrift der Ausgabe 2009; dass 10.2 dieselben Zahlen hat: aus dem Gedächtnis), Nr. 102 und 104 (die Zeilen für Gas gelten auch für Flüssiggas)',
  'SAP Table 4b (2009 edition transcription; that 10.2 has the same codes is from memory), codes 102 and 104; low and high about the field trial, In-situ monitoring of efficiencies of condensing boilers (for EST and DECC, 2009: means of 82.5 and 85.3 %, from memory)':
    'SAP-Tabelle 4b (Abschrift der Ausgabe 2009; dass 10.2 dieselben Zahlen hat: aus dem Gedächtnis), Nr. 102 und 104; unten und oben um den Feldversuch von 2009 an Brennwertkesseln (für EST und DECC: Mittel 82,5 und 85,3 %, aus dem Gedächtnis)',
  'SAP Table 4b (2009 edition transcription; that 10.2 has the same codes is from memory), middle of codes 101 (64 %) and 105 (60 %)':
    'SAP-Tabelle 4b (Abschrift der Ausgabe 2009; dass 10.2 dieselben Zahlen hat: aus dem Gedächtnis), Mitte von Nr. 101 (64 %) und 105 (60 %)',
  'SAP Table 4b (2009 edition transcription; that 10.2 has the same codes is from memory), middle of codes 101 (74 %) and 105 (70 %), low and high from codes 109 to 117':
    'SAP-Tabelle 4b (Abschrift der Ausgabe 2009; dass 10.2 dieselben Zahlen hat: aus dem Gedächtnis), Mitte von Nr. 101 (74 %) und 105 (70 %), unten und oben aus Nr. 109 bis 117',
  'middle of SAP Table 4a (2009 edition transcription), code 155 (63 % of gross, 68 % of net), and of almost 90 % (Centre for Alternative Technology, page on the price of biomass fuel)':
    'Mitte von SAP-Tabelle 4a (Abschrift der Ausgabe 2009), Nr. 155 (63 % vom Brennwert, 68 % vom Heizwert), und fast 90 % (Centre for Alternative Technology, Seite zum Preis von Biomasse)',
  'UK Government GHG conversion factors (DESNZ) 2025: wood pellets; the carbon that the wood took up is left out':
    'UK Government GHG conversion factors (DESNZ) 2025: Holzpellets; was das Holz aufgenommen hat, ist weggelassen',
  'UK Government GHG conversion factors (DESNZ) 2025: burning oil (kerosene), combustion':
    'UK Government GHG conversion factors (DESNZ) 2025: Heizöl (Kerosin), Verbrennung',
  'UK Government GHG conversion factors (DESNZ) 2025: propane, combustion':
    'UK Government GHG conversion factors (DESNZ) 2025: Propan, Verbrennung',
  'UK Government GHG conversion factors (DESNZ) 2026, second hand: natural gas, combustion':
    'UK Government GHG conversion factors (DESNZ) 2026, aus zweiter Hand: Erdgas, Verbrennung',
  'UK Government GHG conversion factors (DESNZ) 2026, second hand: generation 0.13096; with UK Government GHG conversion factors (DESNZ) 2025: transmission and distribution 0.01853':
    'UK Government GHG conversion factors (DESNZ) 2026, aus zweiter Hand: Erzeugung 0,13096; dazu Ausgabe 2025: Übertragung und Verteilung 0,01853',
  'Set by hand, from memory, around the mean metered gas use of British homes (13,200 kWh a year, NEED 2020 Annex A, read) less hot water at 84 % efficiency over about 94 m²; new homes checked against 125 kWh/m² of all fuels (Energy consumption in new domestic buildings 2015 to 2017, read)':
    'Von Hand gesetzt, aus dem Gedächtnis, um den mittleren gemessenen Gasverbrauch britischer Häuser (13.200 kWh im Jahr, NEED 2020, Anhang A, gelesen) ohne Warmwasser, bei 84 % Nutzungsgrad und etwa 94 m²; neue Häuser verglichen mit 125 kWh/m² aller Brennstoffe (Statistik neuer Wohnhäuser 2015 bis 2017, gelesen)',
  'one metered British home used 12 % less in its second year in the same weather; 0.12 / √2':
    'ein gemessenes britisches Haus brauchte im zweiten Jahr bei gleichem Wetter 12 % weniger; 0,12 / √2',
  'declared EN 14825 certificates of 123 brine units (2024) and mean flow temperatures of Electrification of Heat (for DESNZ, December 2024)':
    'Zertifikate nach EN 14825 von 123 Solegeräten (2024) und mittlere Vorlauftemperaturen aus der Studie Electrification of Heat (für DESNZ, Dezember 2024)',
  'declared certificates of 123 brine units at about B0/W34: 10 % point 0.449, median 0.508, 90 % point 0.537; lower end and middle set below them by judgement, since homes fall short of certificates':
    'Zertifikate von 123 Solegeräten bei etwa B0/W34: 10 % bei 0,449, Median 0,508, 90 % bei 0,537; unteres Ende und Mitte nach Einschätzung darunter, da Häuser die Zertifikate nicht erreichen',
  'degree days of single British heating seasons about their twenty-year mean, about 8 %':
    'Gradtage einzelner britischer Heizzeiten um ihr Mittel aus zwanzig Jahren, etwa 8 %',
  'built-in price quarters from October 2023 on: mean of the next four over the one before, 9 overlapping cases':
    'eingebaute Preisquartale ab Oktober 2023: Mittel der nächsten vier durch das Quartal davor, 9 Fälle, die einander überdecken',
  'price of one visit from region to region and firm to firm':
    'Preis eines Besuchs von Region zu Region und Betrieb zu Betrieb',
  'a pump left on a high speed takes half as much again, one well set a third less; a judgement':
    'eine zu schnell eingestellte Pumpe braucht die Hälfte mehr, eine gut eingestellte ein Drittel weniger; eine Einschätzung',
  'as for rooms less the starts and stops of summer; a judgement, common practice, no source':
    'wie für die Räume, weniger Start und Stopp im Sommer; eine Einschätzung, übliche Praxis, ohne Quelle',
  'no pump: panel heaters and an immersion heater': 'keine Pumpe: Heizkörper mit Strom und ein Heizstab im Speicher',
  'no pump; fans of newer storage heaters are left out': 'keine Pumpe; Gebläse neuerer Nachtspeicher sind weggelassen',
  '5 K rated at 35 °C, 8 K at 55 °C, up to 10 K with radiators: EN 14511, from memory; ends common practice':
    '5 K bei 35 °C, 8 K bei 55 °C, bis 10 K mit Heizkörpern: EN 14511, aus dem Gedächtnis; die Enden sind eine eigene Annahme',
  'middle of 5 to 30 W, from memory: ask the maker':
    'Mitte von 5 bis 30 W, aus dem Gedächtnis: beim Hersteller nachfragen',
  'set so that brine enters at 4 to 9 °C over a season (boreholes) and 0 to 4 °C at the end of winter (trenches), usual in Britain, from memory; a judgement':
    'so gesetzt, dass die Sole über eine Heizzeit mit 4 bis 9 °C (Sonden) und am Ende des Winters mit 0 bis 4 °C (Kollektor) eintritt, in Großbritannien üblich, aus dem Gedächtnis; eine Einschätzung',
  'Busby 2015, UK shallow ground temperatures for ground coupled heat exchangers, QJEGH 48 (abstract): means at 1 m less the monthly air means of the same parts, +1.4 K in the south and about 0 in the north':
    'Busby 2015, QJEGH 48 (Kurzfassung): Mittel in 1 m Tiefe weniger dem Monatsmittel der Luft in denselben Gegenden, +1,4 K im Süden und etwa 0 im Norden',
  'Busby 2015, UK shallow ground temperatures for ground coupled heat exchangers, QJEGH 48 (abstract): seasonal range at 1 m brought to the surface, over that of the monthly air means':
    'Busby 2015, QJEGH 48 (Kurzfassung): jahreszeitliche Spanne in 1 m Tiefe, auf die Oberfläche gerechnet, durch die der Monatsmittel der Luft',
  'Busby, Kingdon and Williams 2011, QJEGH 44 (abstract)': 'Busby, Kingdon und Williams 2011, QJEGH 44 (Kurzfassung)',
  'Constant used on gas bills; the exact one is 2.8316847': 'Zahl, mit der Gasrechnungen rechnen; genau wäre 2,8316847',
  'Bills in Germany multiply by a Zustandszahl of their own, which is in the calorific value here':
    'Rechnungen in Deutschland multiplizieren mit einer eigenen Zustandszahl, die hier im Brennwert steckt',
  'Brennwert 11.3 kWh per m³ × Zustandszahl 0.95, usual values after DVGW G 685, from memory':
    'Brennwert 11,3 kWh je m³ × Zustandszahl 0,95, übliche Werte nach DVGW G 685, aus dem Gedächtnis',
  'Typical gross calorific value on bills, which runs from 37.5 to 43':
    'üblicher Brennwert auf Rechnungen, zwischen 37,5 und 43',
  'Volume correction printed on gas bills; metering to 15 °C and 1013.25 mbar':
    'Umrechnung des Volumens, wie auf Gasrechnungen gedruckt; auf 15 °C und 1013,25 mbar',
  'Heating oil (kerosene), UK Government GHG conversion factors for company reporting (DESNZ) 2025: 0.53078 / 0.05153; the trade prints 10.35':
    'Heizöl (Kerosin), UK Government GHG conversion factors (DESNZ) 2025: 0,53078 / 0,05153; der Handel nennt 10,35',
  'Wood pellets, UK Government GHG conversion factors for company reporting (DESNZ) 2025: 55.19389 / 0.0115 / 1000; by net calorific value':
    'Holzpellets, UK Government GHG conversion factors (DESNZ) 2025: 55,19389 / 0,0115 / 1000; nach Heizwert',
  'set so that own use of the sun is that of British field data (McKenna, Pless and Darby 2019)':
    'so gesetzt, dass der Eigenverbrauch der Sonne dem gemessener britischer Häuser gleicht (McKenna, Pless und Darby 2019)',
  'BDEW, standard load profile H25 for households (2025), as copied in a public package':
    'BDEW, Standardlastprofil H25 für Haushalte (2025), nach öffentlicher Kopie',
  'UK Energy Research Centre, Electricity user load profiles, class 1 (domestic unrestricted), winter weekday, as copied in a public file':
    'UK Energy Research Centre, Lastprofile, Klasse 1 (Haushalt, ein Tarif), Werktag im Winter, nach öffentlicher Kopie',
  'NREL Annual Technology Baseline 2020, alternating current in to alternating current out':
    'NREL, Annual Technology Baseline 2020, von Wechselstrom zu Wechselstrom',
  'NREL Annual Technology Baseline 2023, representative home battery of 5 kW and 12.5 kWh':
    'NREL, Annual Technology Baseline 2023, üblicher Heimspeicher mit 5 kW und 12,5 kWh',
  'RAC Foundation from MOT records 2025, electric cars under three years: 10,054 miles':
    'RAC Foundation, Prüfdaten 2025, Elektroautos unter drei Jahren: 10.054 Meilen',
  'Kraftfahrt-Bundesamt, all cars 2024, second hand': 'Kraftfahrt-Bundesamt, alle Pkw 2024, aus zweiter Hand',
  'Hochschule Trier, mean of 342 models in real use, second hand':
    'Hochschule Trier, Mittel von 342 Modellen im Alltag, aus zweiter Hand',
  'EEG 2023 §§ 48, 49 and 53 as a rule that gives every rate read from February 2025 to February 2026; surplus, paid for 20 years; a reform is announced':
    'EEG 2023, §§ 48, 49 und 53, als Regel, die jeden gelesenen Satz von Februar 2025 bis Februar 2026 ergibt; Überschuss, 20 Jahre lang; eine Reform ist angekündigt',
  'Heizspiegel 2024, second hand: 121 kWh of gas per m² in one-family houses, at 84 % efficiency, less about 20 kWh per m² of hot water; low and high by hand':
    'Heizspiegel 2024, aus zweiter Hand: 121 kWh Gas je m² in Einfamilienhäusern, bei 84 % Nutzungsgrad, weniger etwa 20 kWh je m² für Warmwasser; unten und oben von Hand',
  'Ofgem, Smart Export Guarantee annual report 2022-23: £7,193,527 for 77.3 GWh':
    'Ofgem, Smart Export Guarantee, Jahresbericht 2022-23: 7.193.527 £ für 77,3 GWh',
  'ONS average price quoted by a fuel distributor': 'Mittlerer Preis des ONS, zitiert von einem Händler',
  'Ofgem text reprinted by local news, May 2025': 'Text von Ofgem in einer Lokalzeitung, Mai 2025',
  'Ofgem text reprinted by national press, Aug 2025': 'Text von Ofgem in der Presse, August 2025',
  'Press statement of the Ofgem cap, Dec 2025': 'Presse zur Preisgrenze von Ofgem, Dezember 2025',
  'Public answer page stating the Ofgem cap, 2026; the 1641 GBP typical bill confirmed by Ofgem press notice Feb 2026':
    'Öffentliche Seite zur Preisgrenze von Ofgem, 2026; die übliche Rechnung von 1641 £ von Ofgem im Februar 2026 bestätigt',
  'Public explainer stating the Ofgem cap announced 27 May 2026':
    'Öffentliche Seite zur Preisgrenze von Ofgem vom 27. Mai 2026',
  'brine: Melinder 2010, IIR; water: IAPWS-95; both evaluated with the open library CoolProp 8.0.0':
    'Sole: Melinder 2010, IIR; Wasser: IAPWS-95; beide ausgewertet mit der offenen Bibliothek CoolProp 8.0.0',
  '32 A at 230 V': '32 A bei 230 V',
  'Fraunhofer ISE, WPsmart im Bestand, 56 older houses, 2020 (shk-at-work.de)':
    'Fraunhofer ISE, WPsmart im Bestand, 56 ältere Häuser, 2020 (shk-at-work.de)',
  'EN 442: label at 50 K above the room, exponent 1.3 (from memory), 5 K between flow and return':
    'EN 442: Nennleistung bei 50 K über dem Raum, Exponent 1,3 (aus dem Gedächtnis), 5 K zwischen Vorlauf und Rücklauf',
  'gov.uk, checking F-gas equipment for leaks: yearly from 5 t CO₂e, or 10 t if sealed':
    'gov.uk, Dichtheitsprüfung nach F-Gas-Regeln: jährlich ab 5 t CO₂e, bei geschlossenen ab 10 t',
  'gov.uk, Boiler Upgrade Scheme, what you can get (no grant beside a gas boiler)':
    'gov.uk, Boiler Upgrade Scheme (keine Förderung neben einer Gasheizung)',
  'Energy Networks Association, connecting heat pumps and chargers: above 60 A ask first':
    'Energy Networks Association, Anschluss von Wärmepumpen und Ladestationen: über 60 A vorher fragen',
  'Electrification of Heat, interim, March 2023: median 2.80 over the year, 2.44 on cold days; Joule 2023':
    'Electrification of Heat, Zwischenbericht, März 2023: im Mittel 2,80 übers Jahr, 2,44 an kalten Tagen; Joule 2023',
  'VDI 4640-2 of 2001 as quoted by the survey of Saxony-Anhalt (20 to 60 W a metre); Energy Saving Trust; trenches from memory':
    'VDI 4640-2 von 2001, zitiert vom Landesamt für Geologie Sachsen-Anhalt (20 bis 60 W je Meter); Energy Saving Trust; Kollektoren aus dem Gedächtnis',
  'gov.uk, closed-loop ground source exemption, September 2024; statutory instrument 2025/560':
    'gov.uk, Ausnahme für geschlossene Erdwärmekreise, September 2024; Verordnung 2025/560',
  'Statutory instrument 2025/560, in force on 29 May 2025 (England)':
    'Verordnung 2025/560, in Kraft seit 29. Mai 2025 (England)',
  'TA Lärm as quoted by LAI, August 2023: 35 to 40 dB(A) at night outside the window':
    'TA Lärm, zitiert von der LAI, August 2023: nachts 35 bis 40 dB(A) vor dem Fenster',
  'WHG § 49 as quoted by Schwabach and Potsdam; mining law below 100 m; TA Lärm (LAI, August 2023)':
    'WHG § 49, zitiert von Schwabach und Potsdam; Bergrecht ab 100 m Tiefe; TA Lärm (LAI, August 2023)',
  'KfW 458, copies of 2024 to 2026 (kfw.de, interhyp.de)':
    'KfW 458, Abschriften von 2024 bis 2026 (kfw.de, interhyp.de)',
  'months of this home’s own estimate': 'Monate der eigenen Schätzung dieses Hauses',
  'this program’s own ranges': 'eigene Spannen dieses Programms',
  'litres × kelvins × 4.18 kJ, no losses; mixed with mains water of 10 °C to 40 °C':
    'Liter × Kelvin × 4,18 kJ, ohne Verluste; gemischt mit Leitungswasser von 10 °C auf 40 °C',
  'gov.uk, Boiler Upgrade Scheme; notice of 9 June 2026; for homes without gas £9,000, second hand':
    'gov.uk, Boiler Upgrade Scheme; Bekanntmachung vom 9. Juni 2026; für Häuser ohne Gas 9.000 £, aus zweiter Hand',
  'Lemmon 2003 Int J Thermophys pseudo-pure equation of state; evaluated with the open library CoolProp 8.0.0':
    'Lemmon 2003 Int J Thermophys, Zustandsgleichung wie für einen reinen Stoff; ausgewertet mit der offenen Bibliothek CoolProp 8.0.0',
  'R32 and R1234yf at 68.9 and 31.1 % by mass as one mixture; evaluated with the open library CoolProp 8.0.0':
    'R32 und R1234yf zu 68,9 und 31,1 % der Masse als ein Gemisch; ausgewertet mit der offenen Bibliothek CoolProp 8.0.0',
  'Tillner-Roth and Baehr 1994 J Phys Chem Ref Data; evaluated with the open library CoolProp 8.0.0':
    'Tillner-Roth und Baehr 1994 J Phys Chem Ref Data; ausgewertet mit der offenen Bibliothek CoolProp 8.0.0',
  'Tillner-Roth and Yokozeki 1997 J Phys Chem Ref Data; evaluated with the open library CoolProp 8.0.0':
    'Tillner-Roth und Yokozeki 1997 J Phys Chem Ref Data; ausgewertet mit der offenen Bibliothek CoolProp 8.0.0',
  'Lemmon McLinden Wagner 2009 J Chem Eng Data; evaluated with the open library CoolProp 8.0.0':
    'Lemmon McLinden Wagner 2009 J Chem Eng Data; ausgewertet mit der offenen Bibliothek CoolProp 8.0.0',
  'about 3 to 6 K, from memory; 10 °F in ground-source guides that cite IGSHPA and ASHRAE':
    'etwa 3 bis 6 K, aus dem Gedächtnis; 10 °F in Anleitungen für Erdwärme, die IGSHPA und ASHRAE nennen',
  '10 °F below the coldest brine that leaves: a ground-source guide that cites IGSHPA and ASHRAE, undated':
    '10 °F unter der kältesten austretenden Sole: eine Anleitung für Erdwärme, die IGSHPA und ASHRAE nennt, ohne Datum',
  'about 3 to 8 K, from memory; 6 to 10 °F printed for air-cooled condensers; with a receiver it shows little':
    'etwa 3 bis 8 K, aus dem Gedächtnis; 6 bis 10 °F gedruckt für luftgekühlte Verflüssiger; mit Sammler sagt es wenig',
};
