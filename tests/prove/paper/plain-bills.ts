/** Bills on which nothing is left to ask, each set as one kind of supplier does; suppliers and people are invented. */
import { type SetBill, type SetPeriod, setBill } from './set-page.ts';

const UK = 'Europe/London';
const IE = 'Europe/Dublin';
const DE = 'Europe/Berlin';

const bill = (name: string, zone: string, text: string, ...truth: SetPeriod[]): SetBill =>
  setBill(name, zone, text, truth);

export const PLAIN_BILLS: readonly SetBill[] = [
  bill(
    'days of the bill from its first day, those of the readings from the day before',
    UK,
    `
Hollowmead Energy
Your energy statement
15 January 2026 – 14 April 2026

Your electricity charges in detail
Start date            Start reading       End date            End reading       Energy used
14 January 2026       20411 Actual        14 April 2026       21183 Actual          772 kWh
Energy used           772 kWh at 27.03p                                             £208.67
Standing charge       90 days at 60.10p                                              £54.09
Subtotal of charges before VAT                                                      £262.76
VAT @ 5.00%                                                                          £13.14
Total electricity charges                                                           £275.90
`,
    ['electricity', '2026-01-15', '2026-04-15', 772, 27590],
  ),
  bill(
    'the sum from volume to energy in running text, and a price by blocks',
    UK,
    `
Quillgas
Your gas bill 3 Nov 2025 to 1 Feb 2026, 91 days
20802 - 20417 = 385 cubic metres. 385 x 1.02264 x 39.3 / 3.6 = 4,298.07 kWh.
First 670.00 kWh at 9.140p                            £61.24
Next 3,628.07 kWh at 5.877p                          £213.22
Standing charge at 0.00p per day                       £0.00
Subtotal                                             £274.46
VAT at 5.0%                                           £13.72
Total gas charges including VAT                      £288.18
`,
    ['gas', '2025-11-03', '2026-02-02', 4298.07, 28818],
  ),
  bill(
    'charges that are rounded only where they are printed',
    UK,
    `
Brightwater Utilities
Electricity bill   From 09/01/2026   To 08/02/2026   31 days
Charge           kWh / days          p           £
Peak                  188.3     33.017       62.17
Off-peak              402.9     14.208       57.24
Standing                 31     51.333       15.91
Charges before VAT                         £135.33
VAT (5%)                                     £6.77
Charges including VAT                      £142.09
`,
    ['electricity', '2026-01-09', '2026-02-09', 591.2, 14209],
  ),
  bill(
    'a standing charge for the year, by its days, and a levy',
    IE,
    `
Inishfree Electric
Billing period 08/01/2026 – 08/03/2026 (60 days)
Your electricity charges
24hr energy                      887 kWh x €0.2947          €261.40
Standing charge                  60 days x €261.38 / 365     €42.97
Public Service Obligation levy   2 months                     €3.23
Subtotal before VAT                                         €307.60
VAT at 9%                                                    €27.68
Total                                                       €335.28
`,
    ['electricity', '2026-01-08', '2026-03-09', 887, 33528],
  ),
  bill(
    'electricity in the name of the supplier alone, and a counter of kWh',
    UK,
    `
Weald & Downs Electric
Period of account 4 October 2025 to 3 January 2026
Meter reading    Meter reading        kWh      Price      Charge
previous         present             used          p           £
8811             10099               1288     24.050      309.76
92 days quarterly charge                      46.360       42.65
VAT exclusive                                             352.41
VAT 5.0%                                                   17.62
To pay                                                    370.03
`,
    ['electricity', '2025-10-04', '2026-01-04', 1288, 37003],
  ),
  bill(
    'the rate of the tax under its name, beside a panel about the tariff',
    UK,
    `
Larkbridge
Your bill: 20 January 2026 to 19 April 2026
Electricity
Energy used                                       ~About your tariff
812 kWh at 25.94p per kWh            £210.63      ~Exit fee £75.00
Standing charge
90 days at 57.21p per day             £51.49      ~Ends 30 Sep 2026
VAT                                               ~Estimated use 3,100 kWh
5% of £262.12                         £13.11      ~Estimated cost £1,012.96 a year
Total electricity                    £275.23
`,
    ['electricity', '2026-01-20', '2026-04-20', 812, 27523],
  ),
  bill(
    'a charge for each month of two fuels, of which two months cost the same',
    UK,
    `
Mossend Energy
Bill period 01 January 2026 to 31 March 2026
Electricity
January energy                310.2 kWh      26.01p      £80.68
January standing charge         31 days      55.20p      £17.11
February energy               288.1 kWh      26.01p      £74.93
February standing charge        28 days      55.20p      £15.46
March energy                  251.9 kWh      26.01p      £65.52
March standing charge           31 days      55.20p      £17.11
Total before VAT                                        £270.81
VAT 5%                                                   £13.54
Total electricity                                       £284.35
Gas
January energy              1,811.0 kWh       6.03p     £109.20
January standing charge         31 days      30.80p       £9.55
February energy             1,602.5 kWh       6.03p      £96.63
February standing charge        28 days      30.80p       £8.62
March energy                1,188.8 kWh       6.03p      £71.68
March standing charge           31 days      30.80p       £9.55
Total before VAT                                        £305.23
VAT 5%                                                   £15.26
Total gas                                               £320.49
`,
    ['electricity', '2026-01-01', '2026-04-01', 850.2, 28435],
    ['gas', '2026-01-01', '2026-04-01', 4602.3, 32049],
  ),
  bill(
    'what is charged before what it is for, with the price in brackets',
    UK,
    `
Silverbirch Supply
Period: 11 Feb 2026 – 10 May 2026; electricity
£241.47      for 988 kWh (24.44 pence each)
£44.51       for 89 days’ standing charge (50.01 pence each)
£14.30       VAT at 5 per cent
£300.28      is what this bill costs
`,
    ['electricity', '2026-02-11', '2026-05-11', 988, 30028],
  ),
  bill(
    'electricity, gas and water on one paper, water with a tax of its own',
    DE,
    `
Stadtwerke Mittelau
Verbrauchsabrechnung 2025
Abrechnungszeitraum: 01.01.2025 - 31.12.2025
Strom netto                                            1.047,19 €
Erdgas netto                                           1.419,54 €
Wasser netto                                             308,32 €
19 % USt auf 2.466,73 €                                  468,68 €
7 % USt auf 308,32 €                                      21,58 €
Gesamtbetrag                                           3.265,31 €
\f
Strom
Zählerstand 31.12.2024                                     41.220
Zählerstand 31.12.2025                                     44.340
Verbrauch                                               3.120 kWh
Arbeitspreis        3.120 kWh      29,410 ct/kWh         917,59 €
Grundpreis           365 Tage      129,60 €/Jahr         129,60 €
Strom netto                                            1.047,19 €
Erdgas
Zählerstand 31.12.2024                                      8.002
Zählerstand 31.12.2025                                      9.290
Verbrauch                                                1.288 m³
Zustandszahl                                               0,9581
Brennwert                                           11,311 kWh/m³
Verbrauch                                              13.958 kWh
Arbeitspreis       13.958 kWh      9,1040 ct/kWh       1.270,74 €
Grundpreis           365 Tage      148,80 €/Jahr         148,80 €
Erdgas netto                                           1.419,54 €
Wasser
Verbrauch              112 m³          2,11 €/m³         236,32 €
Grundpreis           365 Tage       72,00 €/Jahr          72,00 €
`,
    ['electricity', '2025-01-01', '2026-01-01', 3120, 124616],
    ['gas', '2025-01-01', '2026-01-01', 13958, 168925],
  ),
  bill(
    'a list of payments with its own sum, before tax and with it',
    DE,
    `
Eichental Energie GmbH
Jahresrechnung Strom
Zeitraum 01.03.2025 bis 28.02.2026
Arbeitspreis       3.334 kWh      31,40 ct/kWh                    1.046,88 €
Grundpreis         12 Monate      12,40 €/Monat                     148,80 €
Summe netto                                                       1.195,68 €
Umsatzsteuer 19,0 %                                                 227,18 €
Summe brutto                                                      1.422,86 €
Gezahlte Abschläge
Fällig                   netto €           USt €            brutto €
!01.05.2025               378,15           71,85              450,00
!01.09.2025               378,15           71,85              450,00
!01.01.2026               378,15           71,85              450,00
!Summe                  1.134,45          215,55            1.350,00
Nachzahlung: 72,86 €
`,
    ['electricity', '2025-03-01', '2026-03-01', 3334, 142286],
  ),
  bill(
    'a column before a change of price and one after it',
    UK,
    `
Whimbrel
Electricity bill for 12 March 2026 – 11 June 2026
                              Before 1 April 2026      From 1 April 2026
Units used (kWh)                              211                    688
Unit rate (p)                               27.69                  24.67
Cost of units                              £58.43                £169.73
Days                                           20                     72
Standing charge (p a day)                   54.75                  57.21
Cost of standing charge                    £10.95                 £41.19
Total before VAT                                                 £280.30
VAT at 5%                                                         £14.02
Total                                                            £294.32
`,
    ['electricity', '2026-03-12', '2026-06-12', 899, 29432],
  ),
  bill(
    'a charge once a year, whose price is said beside it, and parts of the price of gas',
    DE,
    `
Gaswerk Rotfelden
Abrechnung Erdgas 01.01.2025 – 31.12.2025
Gaslieferung            14.250 kWh      5,912 ct/kWh        842,46 €
Netznutzung             14.250 kWh      1,844 ct/kWh        262,77 €
Konzessionsabgabe       14.250 kWh      0,030 ct/kWh          4,28 €
Grundpreis               12 Monate      8,20 €/Monat         98,40 €
Messung                     1 Jahr           14,20 €         14,20 €
Nettobetrag                                               1.222,11 €
19 % Umsatzsteuer                                           232,20 €
Bruttobetrag                                              1.454,31 €
`,
    ['gas', '2025-01-01', '2026-01-01', 14250, 145431],
  ),
  bill(
    'the working of the next instalments, with a total of its own',
    DE,
    `
Stadtwerke Wiesental
Stromabrechnung 01.01.2025 bis 31.12.2025
Arbeitspreis 3.120 kWh × 31,20 ct/kWh                     973,44 €
Grundpreis 12 Monate × 11,90 €                            142,80 €
Netto                                                   1.116,24 €
USt 19 %                                                  212,09 €
Brutto                                                  1.328,33 €

Berechnung Ihres neuen Abschlags
!Arbeitspreis 3.100 kWh × 33,00 ct/kWh                  1.023,00 €
!Grundpreis 12 Monate × 12,40 €                           148,80 €
!Netto                                                  1.171,80 €
!USt 19 %                                                 222,64 €
!Brutto                                                 1.394,44 €
`,
    ['electricity', '2025-01-01', '2026-01-01', 3120, 132833],
  ),
  bill(
    'two papers in one file, of as many days each',
    UK,
    `
Merlin
Electricity bill 6 January 2026 to 5 April 2026
811 kWh at 26.40p                                          £214.10
Standing charge 90 days at 55.10p                           £49.59
Total before VAT                                           £263.69
VAT 5%                                                      £13.18
Total electricity                                          £276.87
Merlin
Gas bill 20 January 2026 to 19 April 2026
3120 kWh at 6.02p                                          £187.82
Standing charge 90 days at 30.11p                           £27.10
Total before VAT                                           £214.92
VAT 5%                                                      £10.75
Total gas                                                  £225.67
`,
    ['electricity', '2026-01-06', '2026-04-06', 811, 27687],
    ['gas', '2026-01-20', '2026-04-20', 3120, 22567],
  ),
  bill(
    'what the roof saved, in running text',
    UK,
    `
Sunmere
Electricity bill 6 January 2026 to 5 April 2026
811 kWh at 26.40p                                          £214.10
Standing charge 90 days at 55.10p                           £49.59
Total before VAT                                           £263.69
VAT 5%                                                      £13.18
Total                                                      £276.87
!You used 402 kWh of your own: 402 kWh at 26.40p = £106.13 saved.
`,
    ['electricity', '2026-01-06', '2026-04-06', 811, 27687],
  ),
  bill(
    'a column for each fuel, its name not quite over its numbers',
    UK,
    `
Razorbill
Bill for 11 January 2026 to 10 April 2026
                             Electricity             Gas
Previous reading                20,114            8,118
Latest reading                  21,135            8,530
Units used                       1,021              412
Volume correction                               1.02264
Calorific value                                    39.4
Energy used                  1,021 kWh        4,611 kWh
Unit rate                       24.67p            6.18p
Energy cost                    £251.88          £284.96
Days                                90               90
Standing charge a day           57.21p           31.44p
Standing charge                 £51.49           £28.30
Total before VAT               £303.37          £313.26
VAT at 5%                       £15.17           £15.66
Total                          £318.54          £328.92
`,
    ['electricity', '2026-01-11', '2026-04-11', 1021, 31854],
    ['gas', '2026-01-11', '2026-04-11', 4611, 32892],
  ),
  bill(
    'what a business is charged for beside its units, by the same units',
    UK,
    `
Anvil Business Energy
Electricity invoice, supply period 01/03/2026 - 31/03/2026
Day energy                  9,211.4 kWh      14.210 p/kWh      £1,308.94
Night energy                3,104.8 kWh       9.820 p/kWh        £304.89
DUoS red                      811.2 kWh       9.118 p/kWh         £73.97
DUoS amber                  5,210.7 kWh       1.204 p/kWh         £62.74
DUoS green                  6,294.3 kWh       0.091 p/kWh          £5.73
Renewables Obligation      12,316.2 kWh       3.180 p/kWh        £391.66
Contracts for Difference   12,316.2 kWh       0.911 p/kWh        £112.20
Climate Change Levy        12,316.2 kWh       0.801 p/kWh         £98.65
Standing charge                 31 days      142.00 p/day         £44.02
Net total                                                      £2,402.80
VAT 20%                                                          £480.56
Invoice total                                                  £2,883.36
`,
    ['electricity', '2026-03-01', '2026-04-01', 12316.2, 288336],
  ),
  bill(
    'a counter behind a transformer',
    DE,
    `
Bergstrom eG
Stromrechnung 01.01.2025–31.12.2025
Zähler      Stand alt     Stand neu     Differenz     Wandlerfaktor      Verbrauch
1EMH774        11.204        11.408           204                30      6.120 kWh
Arbeitspreis    6.120 kWh      28,40 ct/kWh                          1.738,08 €
Grundpreis      12 Monate      10,95 €/Monat                           131,40 €
Netto                                                                1.869,48 €
19 % USt                                                               355,20 €
Brutto                                                               2.224,68 €
`,
    ['electricity', '2025-01-01', '2026-01-01', 6120, 222468],
  ),
  bill(
    'prices so close before their sums that both look like one number',
    UK,
    `
Shearwater
Electricity bill 11 January 2026 to 10 April 2026
                          kWh        pence £
Energy                    1,021      24.670 251.88
Standing charge           90 days    57.210 51.49
Net                                  303.37
VAT 5%                               15.17
Gross                                318.54
`,
    ['electricity', '2026-01-11', '2026-04-11', 1021, 31854],
  ),
  bill(
    'the rate of the tax in a line below its name, before the tax',
    UK,
    `
Quillmark Energy
Electricity bill 11 January 2026 to 10 April 2026
Electricity
1,172 kWh at 27.03p                                        £316.79
Standing charge
90 days at 60.10p                                           £54.09
Total before VAT                                           £370.88
VAT
at 5%                                                       £18.54
Total of this bill                                         £389.42
`,
    ['electricity', '2026-01-11', '2026-04-11', 1172, 38942],
  ),
];
