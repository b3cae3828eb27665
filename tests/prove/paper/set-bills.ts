/** Bills as suppliers set them, each in a layout of its own and with what must not be taken; suppliers and people are invented. */
import { PLAIN_BILLS } from './plain-bills.ts';
import { type SetBill, type SetPeriod, setBill } from './set-page.ts';

const round = (value: number): number => Math.floor(value + 0.5 + 1e-9);
const times = (count: number, pence: number): number => round(count * pence);
const share = (percent: number, pence: number): number => round((pence * percent) / 100);
const grouped = (digits: string, by: string): string => digits.replace(/\B(?=(\d{3})+$)/g, by);
const sum = (...pence: readonly number[]): number => pence.reduce((a, b) => a + b, 0);
/** 1,234.56 and 1.234,56 without a sign of money. */
const en = (pence: number): string => {
  const [front = '', back] = (Math.abs(pence) / 100).toFixed(2).split('.');
  return `${grouped(front, ',')}.${back}`;
};
const de = (pence: number): string => {
  const [front = '', back] = (Math.abs(pence) / 100).toFixed(2).split('.');
  return `${grouped(front, '.')},${back}`;
};
const gb = (pence: number): string => `${pence < 0 ? '-' : ''}£${en(pence)}`;

const UK = 'Europe/London';
const DE = 'Europe/Berlin';
const bills: SetBill[] = [];
const add = (name: string, zone: string, text: string, ...truth: SetPeriod[]) => {
  bills.push(setBill(name, zone, text, truth));
};

{
  const [d1, n1, d2, n2] = [times(412, 29.8), times(233, 13.1), times(268, 31.2), times(141, 14.4)];
  const [s1, s2] = [times(55, 51.3), times(36, 53.9)];
  const net = sum(d1, n1, d2, n2, s1, s2);
  const vat = share(5, net);
  add(
    'day and night, price change inside, totals before the lines',
    UK,
    `
Bracken & Loam Power                                             Bill date 4 October 2026
Your bill in short
Electricity 2 July 2026 to 30 September 2026
What your electricity cost                                                   ${gb(net)}
VAT at 5 %                                                                   ${gb(vat)}
Total of this bill                                                           ${gb(net + vat)}

How it is made up
2 July 2026 to 25 August 2026
Day units                     412 kWh    at 29.80p                           ${gb(d1)}
Night units                   233 kWh    at 13.10p                           ${gb(n1)}
Standing charge               55 days    at 51.30p                           ${gb(s1)}
26 August 2026 to 30 September 2026
Day units                     268 kWh    at 31.20p                           ${gb(d2)}
Night units                   141 kWh    at 14.40p                           ${gb(n2)}
Standing charge               36 days    at 53.90p                           ${gb(s2)}
`,
    ['electricity', '2026-07-02', '2026-10-01', 1054, net + vat],
  );
}
{
  const [use, standing] = [times(702, 27.4), times(92, 48)];
  const net = use + standing;
  const vat = share(5, net);
  add(
    'comparison with the same days last year, and a projection',
    UK,
    `
Fennel & Rush Energy
Electricity bill                      Period: 1 Apr 2026 to 30 Jun 2026 (91 days)
!Same period last year 811 kWh × 24.10p = £195.45 (1 Apr 2025 to 30 Jun 2025)
!Your estimated use over the next year: 3,100 kWh at 27.40p = £849.40

Usage                         702 kWh      27.40p                          ${gb(use)}
Standing charge               92 days      48.00p                           ${gb(standing)}
Net                                                                        ${gb(net)}
VAT                           5 %                                            ${gb(vat)}
Total charges this period                                                   ${gb(net + vat)}

!Could you pay less? On our Hearth Fix you would pay 24.90p a kWh: 702 kWh × 24.90p = £174.80
!                                              Standing charge 91 days × 44.00p = £40.04
`,
    ['electricity', '2026-04-01', '2026-07-01', 702, net + vat],
  );
}
{
  const [use, standing] = [times(702, 27.4), times(91, 48)];
  const net = use + standing;
  const vat = share(5, net);
  add(
    'tariff comparison and projection with sums of their own',
    UK,
    `
Fennel & Rush Energy
Electricity bill                      Period: 1 Apr 2026 to 30 Jun 2026 (91 days)
!Same period last year 811 kWh × 24.10p = £195.45 (1 Apr 2025 to 30 Jun 2025)
!Your estimated use over the next year: 3,100 kWh at 27.40p = £849.40

Usage                         702 kWh      27.40p                          ${gb(use)}
Standing charge               91 days      48.00p                           ${gb(standing)}
Net                                                                        ${gb(net)}
VAT                           5 %                                            ${gb(vat)}
Total charges this period                                                   ${gb(net + vat)}

!Could you pay less? On our Hearth Fix you would pay 24.90p a kWh: 702 kWh × 24.90p = £174.80
!                                              Standing charge 91 days × 44.00p = £40.04
`,
    ['electricity', '2026-04-01', '2026-07-01', 702, net + vat],
  );
}
{
  const [dom, bus] = [times(930, 26.5), times(310, 26.5)];
  const standing = times(30, 60);
  const [vat5, vat20] = [share(5, dom + standing), share(20, bus)];
  const total = sum(dom, bus, standing, vat5, vat20);
  add(
    'VAT split at 5 % and 20 %',
    UK,
    `
Hollow Lane Power
Electricity          1 June 2026 to 30 June 2026
Units for the home, 75 %      930 kWh      26.50 p/kWh                     ${gb(dom)}
Units for the workshop, 25 %  310 kWh      26.50 p/kWh                      ${gb(bus)}
Standing charge               30 days      60.00 p/day                      ${gb(standing)}
VAT at 5 % on ${gb(dom + standing)}                                                      ${gb(vat5)}
VAT at 20 % on ${gb(bus)}                                                      ${gb(vat20)}
Total of this bill                                                          ${gb(total)}
`,
    ['electricity', '2026-06-01', '2026-07-01', 1240, total],
  );
}
{
  const old = times(900, 28);
  const now = times(640, 28);
  const oldS = times(91, 50);
  const net = sum(now, oldS) - sum(old, oldS);
  const vat = share(5, Math.abs(net));
  add(
    'a credit bill: the estimated charges taken back, charged anew',
    UK,
    `
Marrow & Tine Energy                                   Corrected bill
Electricity, 1 January 2026 to 1 April 2026
We take back what we charged on an estimated reading
Units                 900 kWh     at 28.00 p                          ${gb(old)} CR
Standing charge       90 days     at 50.00 p                           ${gb(times(90, 50))} CR
And charge you by your own reading
Units                 640 kWh     at 28.00 p                          ${gb(now)}
Standing charge       90 days     at 50.00 p                           ${gb(times(90, 50))}
Net                                                                   ${gb(now - old)}
VAT at 5 %                                                              ${gb(-share(5, old - now))}
Total of this bill                                                     ${gb(now - old - share(5, old - now))}
`,
    [
      'electricity',
      '2026-01-01',
      '2026-04-01',
      640,
      times(640, 28) + times(90, 50) + share(5, times(640, 28) + times(90, 50)),
    ],
  );
  void net;
  void vat;
}
{
  const [e, s] = [times(415, 30.12), times(61, 47.2)];
  const credit = times(120, 30.12);
  const net = e + s - credit;
  const vat = share(5, net);
  add(
    'an estimated reading put right later, the units given back as a line',
    UK,
    `
Quill Energy
Statement 1 March 2026 to 30 April 2026                  Electricity
Reading 28 Feb 2026   14,280 E         Reading 30 Apr 2026   14,575 A
Units charged             415 kWh        30.12p                         ${gb(e)}
Less units over-estimated 120 kWh        30.12p                         -${gb(credit)}
Standing charge           61 days        47.20p                          ${gb(s)}
Subtotal                                                                 ${gb(net)}
VAT @ 5%                                                                  ${gb(vat)}
Total for this period                                                    ${gb(net + vat)}
`,
    ['electricity', '2026-03-01', '2026-05-01', 295, net + vat],
  );
}
{
  const kWh = round((182 * 1.02264 * 39.4) / 3.6);
  const [g, s] = [times(kWh, 6.83), times(92, 29.1)];
  const net = g + s;
  const vat = share(5, net);
  add(
    'gas in cubic metres, working in one line',
    UK,
    `
Thistle Gas & Light                         Gas bill
1 Jul 2026 - 30 Sep 2026
Meter G4 00184213 7   Previous reading 03127 (actual)   Present reading 03309 (actual)
Gas used 182 m³ x 1.02264 volume correction x 39.4 calorific value / 3.6 = ${kWh} kWh
Gas                      ${kWh} kWh at 6.830p                               ${gb(g)}
Standing charge          92 days at 29.100p                                ${gb(s)}
Total before VAT                                                          ${gb(net)}
VAT at 5.00%                                                               ${gb(vat)}
Amount for this bill                                                      ${gb(net + vat)}
`,
    ['gas', '2026-07-01', '2026-10-01', kWh, net + vat],
  );
}
{
  const kWh = round((64 * 2.83 * 1.02264 * 39.5) / 3.6);
  const [g, s] = [times(kWh, 7.1), times(31, 30)];
  const net = g + s;
  const vat = share(5, net);
  add(
    'gas in hundreds of cubic feet',
    UK,
    `
Hearth & Field                                   Your gas statement
Billing period 1 December 2025 to 31 December 2025 (31 days)
Meter serial 4412903                      Imperial meter, units of hundreds of cubic feet
Opening reading    4412   Closing reading   4476       Units used      64
Convert: 64 x 2.83 x 1.02264 (correction) x 39.5 (calorific value) ÷ 3.6 = ${grouped(String(kWh), ',')} kWh
Energy used        ${grouped(String(kWh), ',')} kWh  x  7.10p                               ${gb(g)}
Standing charge    31 days  x  30.00p                                     ${gb(s)}
Subtotal                                                                 ${gb(net)}
VAT 5%                                                                     ${gb(vat)}
Total                                                                    ${gb(net + vat)}
`,
    ['gas', '2025-12-01', '2026-01-01', kWh, net + vat],
  );
}
{
  const ap = times(3112, 27.31);
  const gp = 12_000;
  const net = ap + gp;
  const ust = share(19, net);
  const paid = 11 * 9500;
  const list = Array.from(
    { length: 11 },
    (_, i) =>
      `Abschlag fällig ${String((i % 12) + 2).padStart(2, '0')}.2025                                                      95,00 €`,
  ).join('\n');
  add(
    'Jahresabrechnung mit elf Abschlägen und Nachzahlung',
    DE,
    `
Stadtwerke Tannfurt                                       Stromrechnung
Abrechnungszeitraum 01.01.2025 bis 31.12.2025 (365 Tage)
Zähler 1EMH0041902211     Stand alt 41.902     Stand neu 45.014     Verbrauch 3.112 kWh
Arbeitspreis         3.112 kWh     27,31 ct/kWh                            ${de(ap)} €
Grundpreis           12 Monate     10,00 €/Monat                             ${de(gp)} €
Nettobetrag                                                                ${de(net)} €
Umsatzsteuer 19 %                                                           ${de(ust)} €
Rechnungsbetrag                                                            ${de(net + ust)} €
Ihre Zahlungen
${list}
Summe der Abschläge                                                     ${de(paid)} €
Nachzahlung                                                                 ${de(net + ust - paid)} €
`,
    ['electricity', '2025-01-01', '2026-01-01', 3112, net + ust],
  );
}
{
  const ap = times(2480, 29.4);
  const gp = round((14_280 * 365) / 365);
  const bonus = 10_000;
  const net = ap + gp;
  const ust = share(19, net);
  const total = net + ust;
  add(
    'Jahresabrechnung mit Bonus nach Steuer und Guthaben',
    DE,
    `
Energie Moorbach GmbH
Rechnung für Strom                         Lieferzeitraum 15.03.2025 – 14.03.2026
Verbrauch (Arbeitspreis)   2.480 kWh     29,40 ct/kWh                ${de(ap)}
Grundpreis 142,80 €/Jahr   365 Tage                                  ${de(gp)}
Summe netto                                                          ${de(net)}
MwSt. 19,00 %                                                        ${de(ust)}
Summe brutto                                                       ${de(total)}
Neukundenbonus                                                      -${de(bonus)}
Rechnungsbetrag                                                      ${de(total - bonus)}
Geleistete Abschlagszahlungen                                       -${de(110_000)}
Guthaben                                                             ${de(110_000 - total + bonus)}
`,
    ['electricity', '2025-03-15', '2026-03-15', 2480, total],
  );
}
{
  const g = times(3650, 24.8);
  const s = round((19_800 * 365) / 365);
  const net = g + s;
  const vat = share(9, net);
  add(
    'Irish: PSO levy, standing charge per year, VAT at 9 %',
    'Europe/Dublin',
    `
Corrib Vale Electric                          MPRN 10 012 345 678
Electricity bill    Billing period 01/01/2025 - 31/12/2025
Meter readings      Previous 22,140 (A)     Present 25,790 (A)     Units 3,650 kWh
24 hour units       3,650 kWh at €0.2480                             €${en(g)}
Urban standing charge 365 days at €198.00 per year                    €${en(s)}
PSO levy            12 months at €2.01                                 €24.12
Total before VAT                                                    €${en(net + 2412)}
VAT at 9%                                                             €${en(share(9, net + 2412))}
Total charges for this period                                       €${en(net + 2412 + share(9, net + 2412))}
`,
    ['electricity', '2025-01-01', '2026-01-01', 3650, net + 2412 + share(9, net + 2412)],
  );
  void vat;
}
{
  const [hp, hc] = [times(1240, 20.68), times(860, 15.79)];
  const abo = 6 * 1547;
  const ht = hp + hc + abo;
  add(
    'French: heures pleines and creuses, two rates of TVA',
    'Europe/Paris',
    `
Lumière du Vallon                                     Facture d'électricité
Période du 01/02/2026 au 31/07/2026
Abonnement                          6 mois       15,47 €                    ${de(abo)} €
Consommation heures pleines      1 240 kWh      0,2068 €/kWh               ${de(hp)} €
Consommation heures creuses        860 kWh      0,1579 €/kWh               ${de(hc)} €
Total hors TVA                                                             ${de(ht)} €
TVA à 5,5 % sur ${de(abo)} €                                                      ${de(share(5.5, abo))} €
TVA à 20 % sur ${de(hp + hc)} €                                                    ${de(share(20, hp + hc))} €
Total TTC                                                                  ${de(ht + share(5.5, abo) + share(20, hp + hc))} €
`,
    ['electricity', '2026-02-01', '2026-08-01', 2100, ht + share(5.5, abo) + share(20, hp + hc)],
  );
}
{
  const [n, d, tax] = [times(1210, 24.5), times(1840, 26.1), times(3050, 10.154)];
  const vast = times(365, 21);
  const net = n + d + vast + tax - 52_000;
  const btw = share(21, net);
  add(
    'Dutch: levering, vastrecht, energiebelasting, vermindering',
    'Europe/Amsterdam',
    `
Polderlicht                          Jaarafrekening elektriciteit
Periode 1 januari 2025 t/m 31 december 2025
Levering normaal           1.840 kWh    € 0,26100                         € ${de(d)}
Levering dal               1.210 kWh    € 0,24500                         € ${de(n)}
Vastrecht                    365 dagen  € 0,21000                          € ${de(vast)}
Energiebelasting           3.050 kWh    € 0,10154                         € ${de(tax)}
Vermindering energiebelasting                                            € -${de(52_000)}
Subtotaal                                                                 € ${de(net)}
btw 21 %                                                                  € ${de(btw)}
Totaal                                                                  € ${de(net + btw)}
Reeds betaald                                                           € -${de(110_000)}
Te ontvangen                                                              € ${de(110_000 - net - btw)}
`,
    ['electricity', '2025-01-01', '2026-01-01', 3050, net + btw],
  );
}
{
  const [e, s] = [times(611, 27.9), times(31, 55)];
  const net = e + s;
  const vat = share(5, net);
  const out = times(214, 15);
  add(
    'electricity with an export payment beside it',
    UK,
    `
Gorse & Sky Energy
Electricity 1 May 2026 to 31 May 2026
Import           611 kWh      27.90p                                  ${gb(e)}
Standing charge  31 days      55.00p                                   ${gb(s)}
VAT              5%                                                     ${gb(vat)}
Total charges                                                         ${gb(net + vat)}
Your export 1 May 2026 to 31 May 2026
Export           214 kWh      15.00p                                   ${gb(out)} CR
Balance to pay                                                        ${gb(net + vat - out)}
`,
    ['electricity', '2026-05-01', '2026-06-01', 611, net + vat],
  );
}
{
  const ap = times(4020, 26.9);
  const gp = times(365, 35);
  const ein = times(2900, 8.2);
  const net = ap + gp;
  const ust = share(19, net);
  add(
    'Einspeisung auf derselben Rechnung',
    DE,
    `
Licht und Wärme Nord                      Strom Bezug und Einspeisung
Abrechnungszeitraum 01.01.2025 - 31.12.2025, 365 Tage
Bezug              4.020 kWh     26,90 ct/kWh                       ${de(ap)} €
Grundpreis           365 Tage    35,00 ct/Tag                        ${de(gp)} €
Netto                                                              ${de(net)} €
USt 19 %                                                            ${de(ust)} €
Brutto                                                            ${de(net + ust)} €
Einspeisevergütung 2.900 kWh      8,20 ct/kWh                       -${de(ein)} €
Zahlbetrag                                                        ${de(net + ust - ein)} €
`,
    ['electricity', '2025-01-01', '2026-01-01', 4020, net + ust],
  );
}
{
  const e = times(530, 28.6);
  const s = times(92, 50.5);
  const net = e + s;
  const vat = share(5, net);
  add(
    'a meter exchanged inside the period',
    UK,
    `
Hollow Lane Power                          Electricity
Bill for 1 July 2026 to 30 September 2026 (92 days)
Old meter K82 1140    31,207 on 1 July (actual)     31,498 on 12 August (actual)     291 kWh
New meter L11 2093         0 on 12 August (actual)     239 on 30 September (actual)     239 kWh
Units used          530 kWh    at 28.60p                             ${gb(e)}
Standing charge     92 days    at 50.50p                              ${gb(s)}
Subtotal                                                             ${gb(net)}
VAT at 5 %                                                             ${gb(vat)}
Total for this bill                                                  ${gb(net + vat)}
`,
    ['electricity', '2026-07-01', '2026-10-01', 530, net + vat],
  );
}
{
  const k1 = round(410 * 0.9512 * 11.214);
  const k2 = round(655 * 0.9512 * 11.318);
  const a1 = times(k1, 9.12);
  const a2 = times(k2, 10.44);
  const gp = times(365, 42);
  const net = a1 + a2 + gp;
  const ust = share(7, net);
  add(
    'Erdgas in zwei Zeitscheiben mit eigenem Brennwert',
    DE,
    `
Gasversorgung Auental                               Erdgasabrechnung
Abrechnungszeitraum 01.07.2024 bis 30.06.2025
                           m³      Zustandszahl     Brennwert         kWh
01.07.2024 - 31.12.2024    410     0,9512           11,214          ${grouped(String(k1), '.')} kWh
01.01.2025 - 30.06.2025    655     0,9512           11,318          ${grouped(String(k2), '.')} kWh
Arbeitspreis 01.07.2024 - 31.12.2024   ${grouped(String(k1), '.')} kWh    9,12 ct/kWh        ${de(a1)} €
Arbeitspreis 01.01.2025 - 30.06.2025   ${grouped(String(k2), '.')} kWh   10,44 ct/kWh        ${de(a2)} €
Grundpreis   365 Tage                              42,00 ct/Tag        ${de(gp)} €
Summe netto                                                            ${de(net)} €
Umsatzsteuer 7 %                                                        ${de(ust)} €
Rechnungsbetrag                                                      ${de(net + ust)} €
`,
    ['gas', '2024-07-01', '2025-07-01', k1 + k2, net + ust],
  );
}
{
  const [s1, s2] = [times(2810, 30.1), times(365, 28)];
  const kg = round(1240 * 0.9621 * 11.402);
  const [g1, g2] = [times(kg, 10.9), times(365, 41)];
  const [w1, w2] = [times(96, 215), times(96, 288)];
  const [sn, gn] = [s1 + s2, g1 + g2];
  const [su, gu, wu] = [share(19, sn), share(19, gn), share(7, w1)];
  add(
    'Stadtwerke: Strom, Gas, Wasser und Abwasser',
    DE,
    `
Stadtwerke Birkenau                                  Jahresverbrauchsabrechnung
Abrechnungszeitraum 01.01.2025 bis 31.12.2025
Strom
Arbeitspreis         2.810 kWh     30,10 ct/kWh                      ${de(s1)} €
Grundpreis             365 Tage    28,00 ct/Tag                      ${de(s2)} €
Nettobetrag Strom                                                    ${de(sn)} €
19 % USt                                                             ${de(su)} €
Bruttobetrag Strom                                                 ${de(sn + su)} €
Erdgas
Gasmenge 1.240 m³    Zustandszahl 0,9621     Brennwert 11,402 kWh/m³     ${grouped(String(kg), '.')} kWh
Arbeitspreis        ${grouped(String(kg), '.')} kWh     10,90 ct/kWh                    ${de(g1)} €
Grundpreis             365 Tage    41,00 ct/Tag                      ${de(g2)} €
Nettobetrag Gas                                                    ${de(gn)} €
19 % USt                                                             ${de(gu)} €
Bruttobetrag Gas                                                   ${de(gn + gu)} €
Trinkwasser
!Wasserpreis            96 m³       2,15 €/m³                         ${de(w1)} €
!7 % USt                                                              ${de(wu)} €
Abwasser
!Schmutzwasser          96 m³       2,88 €/m³                         ${de(w2)} €
Gesamtbetrag                                                      ${de(sum(sn, su, gn, gu, w1, wu, w2))} €
`,
    ['electricity', '2025-01-01', '2026-01-01', 2810, sn + su],
    ['gas', '2025-01-01', '2026-01-01', kg, gn + gu],
  );
}
{
  const [h, w] = [times(2400, 31.5), times(5100, 23.8)];
  const [gh, gw] = [times(365, 27), times(365, 19)];
  const [nh, nw] = [h + gh, w + gw];
  const [uh, uw] = [share(19, nh), share(19, nw)];
  add(
    'zwei Stromlieferungen: Haushalt und Wärmepumpe',
    DE,
    `
Energie Moorbach                     Stromrechnung 2025
Zeitraum 01.01.2025 bis 31.12.2025
Haushaltsstrom    Zähler 882710
Arbeitspreis      2.400 kWh      31,50 ct/kWh                    ${de(h)} €
Grundpreis          365 Tage     27,00 ct/Tag                     ${de(gh)} €
Netto                                                            ${de(nh)} €
Umsatzsteuer 19 %                                                ${de(uh)} €
Brutto                                                         ${de(nh + uh)} €
Wärmestrom        Zähler 882711
Arbeitspreis      5.100 kWh      23,80 ct/kWh                  ${de(w)} €
Grundpreis          365 Tage     19,00 ct/Tag                     ${de(gw)} €
Netto                                                          ${de(nw)} €
Umsatzsteuer 19 %                                                ${de(uw)} €
Brutto                                                         ${de(nw + uw)} €
Rechnungsbetrag                                                ${de(nh + uh + nw + uw)} €
`,
    ['electricity', '2025-01-01', '2026-01-01', 7500, nh + uh + nw + uw],
  );
}
{
  const [a, b, s] = [times(225, 35.2), times(477, 26.4), times(92, 40)];
  const net = a + b + s;
  const vat = share(5, net);
  add(
    'two tiers of one rate',
    UK,
    `
Yarrow Electric                        Electricity
Billing period: 3 Feb 2026 to 5 May 2026 (92 days)
Reading 5 May 2026  8,104     Reading 3 Feb 2026  7,402     Used 702 kWh
First 225 kWh         at 35.20p each                                    ${gb(a)}
Next 477 kWh          at 26.40p each                                   ${gb(b)}
Standing charge       92 days at 40.00p                                 ${gb(s)}
Sub-total                                                              ${gb(net)}
VAT 5%                                                                  ${gb(vat)}
Total                                                                  ${gb(net + vat)}
`,
    ['electricity', '2026-02-03', '2026-05-06', 702, net + vat],
  );
}
{
  const months: readonly (readonly [string, number, number])[] = [
    ['January', 402, 26.1],
    ['February', 371, 24.8],
    ['March', 333, 23.9],
  ];
  const costs = months.map(([, kWh, p]) => times(kWh, p));
  const s = times(90, 52);
  const net = sum(...costs, s);
  const vat = share(5, net);
  add(
    'month by month at a price of its own',
    UK,
    `
Sedge Power           Electricity bill 1 January 2026 to 31 March 2026
Month                 kWh       Price p/kWh                         £
${months.map(([m, kWh, p], i) => `${m.padEnd(20)}  ${kWh}       ${p.toFixed(2)}                              ${en(costs[i]!)}`).join('\n')}
Standing charge, 90 days at 52.00 p                                ${en(s)}
Total without VAT                                                 ${en(net)}
VAT 5 %                                                            ${en(vat)}
Total with VAT                                                    ${en(net + vat)}
`,
    ['electricity', '2026-01-01', '2026-04-01', 1106, net + vat],
  );
}
{
  const one = (kWh: number, days: number) => {
    const [e, s] = [times(kWh, 29), times(days, 50)];
    const vat = share(5, e + s);
    return { e, s, vat, total: e + s + vat };
  };
  const [a, b] = [one(402, 31), one(371, 28)];
  const lay = (from: string, to: string, kWh: number, days: number, m: ReturnType<typeof one>) => `
Statement ${from} to ${to}
Electricity units      ${kWh} kWh     29.00p                          ${gb(m.e)}
Standing charge        ${days} days     50.00p                           ${gb(m.s)}
VAT at 5%                                                              ${gb(m.vat)}
Total for this statement                                              ${gb(m.total)}`;
  add(
    'two statements on one page',
    UK,
    `
Sedge Power                          Two statements of your account
${lay('1 January 2026', '31 January 2026', 402, 31, a)}
${lay('1 February 2026', '28 February 2026', 371, 28, b)}
Total of both                                                         ${gb(a.total + b.total)}
`,
    ['electricity', '2026-01-01', '2026-02-01', 402, a.total],
    ['electricity', '2026-02-01', '2026-03-01', 371, b.total],
  );
}
{
  const f = times(8200, 9.85);
  const gp = 24_000;
  const net = f + gp;
  const ust = share(7, net);
  add(
    'Fernwärme in kWh',
    DE,
    `
Wärmenetz Talheim                             Abrechnung Fernwärme
Abrechnungszeitraum 01.01.2025 bis 31.12.2025
Arbeitspreis Wärme     8.200 kWh     9,85 ct/kWh                    ${de(f)} €
Grundpreis             12 Monate     20,00 €/Monat                  ${de(gp)} €
Netto                                                             ${de(net)} €
USt 7 %                                                             ${de(ust)} €
Rechnungsbetrag                                                   ${de(net + ust)} €
`,
  );
}
{
  const o = times(2310, 94.2);
  const vat = share(5, o);
  add(
    'heating oil by the litre',
    UK,
    `
Tinder & Sons Fuels                         Invoice 11 November 2025
Kerosene heating oil delivered   2310 litres at 94.20 pence per litre            ${gb(o)}
VAT at 5 %                                                                       ${gb(vat)}
Invoice total                                                                   ${gb(o + vat)}
`,
  );
}
{
  const [e, s, ccl] = [times(9400, 24.2), times(31, 120), times(9400, 0.801)];
  const net = e + s + ccl + 4200;
  const vat = share(20, net);
  add(
    'small business: climate change levy and a capacity charge in kVA',
    UK,
    `
Hollow Lane Power for Business
Electricity invoice   01/05/2026 to 31/05/2026
Energy               9,400 kWh     24.200 p/kWh                    ${gb(e)}
Standing charge      31 days       120.00 p/day                       ${gb(s)}
Availability charge  60 kVA                                           £42.00
Climate change levy  9,400 kWh     0.801 p/kWh                        ${gb(ccl)}
Total excl. VAT                                                    ${gb(net)}
VAT at 20 %                                                          ${gb(vat)}
Total incl. VAT                                                    ${gb(net + vat)}
`,
    ['electricity', '2026-05-01', '2026-06-01', 9400, net + vat],
  );
}
{
  const ap = times(3000, 36.4);
  const gp = times(365, 33);
  const ent = times(2400, 4.1);
  const net = ap + gp;
  const ust = share(19, net);
  add(
    'Entlastung nach Brutto und Anteile, die schon darin stecken',
    DE,
    `
Stadtwerke Tannfurt                                Ihre Stromrechnung
Abrechnungszeitraum 01.01.2023 – 31.12.2023
Verbrauch            3.000 kWh       36,40 ct/kWh             ${de(ap)} €
Grundpreis             365 Tage      33,00 ct/Tag               ${de(gp)} €
Nettosumme                                                  ${de(net)} €
zzgl. 19 % Umsatzsteuer                                       ${de(ust)} €
Bruttosumme                                                 ${de(net + ust)} €
abzgl. Entlastung Strompreisbremse 2.400 kWh × 4,10 ct/kWh     -${de(ent)} €
Rechnungsbetrag                                             ${de(net + ust - ent)} €
Im Nettobetrag sind enthalten:
!Stromsteuer          3.000 kWh        2,05 ct/kWh                ${de(6150)} €
!Netzentgelt          3.000 kWh        8,10 ct/kWh               ${de(24_300)} €
!Konzessionsabgabe    3.000 kWh        1,59 ct/kWh                ${de(4770)} €
`,
    ['electricity', '2023-01-01', '2024-01-01', 3000, net + ust],
  );
}
{
  const [e, s] = [times(780, 27.1), times(91, 49)];
  const off = round((e * 10) / 100);
  const net = e + s - off;
  const vat = share(5, net);
  add(
    'ten per cent off, and signs behind the number',
    UK,
    `
Quill Energy                 Electricity 1 July 2026 to 29 September 2026
Units              780 kWh at 27.10p                              ${en(e)}
Discount, 10 % of units                                             ${en(off)}-
Standing charge    91 days at 49.00p                               ${en(s)}
Net                                                               ${en(net)}
VAT 5%                                                             ${en(vat)}
Total                                                             ${en(net + vat)}
Paid                                                              ${en(15_000)}-
Balance                                                            ${en(net + vat - 15_000)}
`,
    ['electricity', '2026-07-01', '2026-09-30', 780, net + vat],
  );
}
{
  const e = times(1210, 28);
  const q = 4550;
  const net = e + q;
  const vat = share(5, net);
  add(
    'standing charge by the quarter',
    UK,
    `
Fennel Supply        Electricity       Quarter from 1 April 2026 to 30 June 2026
Units           1,210 kWh x 28.00p                                 ${gb(e)}
Quarterly charge                                                    ${gb(q)}
Total before VAT                                                   ${gb(net)}
VAT 5 %                                                             ${gb(vat)}
Total charges                                                      ${gb(net + vat)}
`,
    ['electricity', '2026-04-01', '2026-07-01', 1210, net + vat],
  );
}
{
  const [e, s] = [times(618, 28.41), times(30, 53)];
  const net = e + s;
  const vat = share(5, net);
  add(
    'pounds and pence mixed; meter numbers like readings',
    UK,
    `
Clover Power
Electricity       Bill 06-2026: 2026-06-01 to 2026-06-30
Meter 41902        Opening 42318        Closing 42936
Usage          618 kWh @ £0.2841/kWh                               ${gb(e)}
Standing       30 days @ 53p/day                                    ${gb(s)}
Net total                                                          ${gb(net)}
VAT @ 5%                                                             ${round(vat)}p
Bill total                                                         ${gb(net + vat)}
`,
    ['electricity', '2026-06-01', '2026-07-01', 618, net + vat],
  );
}
{
  const rows: readonly (readonly [string, number, number])[] = [
    ['1 Oct 2025', 40_110, 480],
    ['1 Jan 2026', 40_590, 702],
    ['1 Apr 2026', 41_292, 611],
  ];
  const [e, s] = [times(411, 28.8), times(91, 51)];
  const net = e + s;
  const vat = share(5, net);
  add(
    'a history of readings, each with its difference',
    UK,
    `
Bracken & Loam Power         Electricity
This bill: 1 July 2026 to 29 September 2026
Reading on 1 July 2026  41,903 (actual)    Reading on 30 September 2026  42,314 (actual)
Units               411 kWh at 28.80p                                ${gb(e)}
Standing charge     91 days at 51.00p                                 ${gb(s)}
Net                                                                  ${gb(net)}
VAT at 5%                                                              ${gb(vat)}
Total for this bill                                                  ${gb(net + vat)}
Your readings before
${rows.map(([d, r, u]) => `!${d}          ${grouped(String(r), ',')}           ${grouped(String(r + u), ',')}            ${u} kWh`).join('\n')}
`,
    ['electricity', '2026-07-01', '2026-09-30', 411, net + vat],
  );
}
{
  const [e, s] = [times(502, 27.7), times(31, 54)];
  const net = e + s;
  const vat = share(5, net);
  add(
    'direct debits, a debt that is paid off, top-ups',
    UK,
    `
Gorse & Sky Energy              Prepayment statement
Electricity 01.08.2026 - 31.08.2026
Balance brought forward                                  ${gb(1210)} CR
Top-up 3 Aug 2026                                        ${gb(4000)} CR
Top-up 14 Aug 2026                                       ${gb(6000)} CR
Top-up 27 Aug 2026                                       ${gb(5000)} CR
Units used         502 kWh at 27.70p                     ${gb(e)}
Standing charge    31 days at 54.00p                      ${gb(s)}
VAT at 5 %                                                 ${gb(vat)}
Total used                                               ${gb(net + vat)}
Debt repaid                                                ${gb(2500)}
Balance left                                              ${gb(1210 + 15_000 - net - vat - 2500)} CR
`,
    ['electricity', '2026-08-01', '2026-09-01', 502, net + vat],
  );
}
{
  const [e, s] = [times(702, 29.3), times(61, 44)];
  const net = e + s;
  const vat = share(5, net);
  const lines = `Units             702 kWh      29.30p                        ${gb(e)}
Standing charge   61 days      44.00p                         ${gb(s)}`;
  add(
    'the charges once in short and again in detail',
    UK,
    `
Yarrow Electric            Electricity       1 May 2026 to 30 June 2026
${lines}
VAT at 5%                                                      ${gb(vat)}
Total                                                        ${gb(net + vat)}
\f
Your charges in detail      1 May 2026 to 30 June 2026
Meter 7719    Opening 11,040    Closing 11,742    Units 702 kWh
${lines}
Net                                                          ${gb(net)}
VAT at 5%                                                      ${gb(vat)}
Total                                                        ${gb(net + vat)}
`,
    ['electricity', '2026-05-01', '2026-07-01', 702, net + vat],
  );
}
{
  const [e, s] = [times(384, 30.6), times(30, 58)];
  const kWh = round((77 * 1.02264 * 39.1) / 3.6);
  const [g, gs] = [times(kWh, 6.4), times(30, 31)];
  const net = e + s + g + gs;
  const vat = share(5, net);
  add(
    'two fuels in two columns, VAT on both together',
    UK,
    `
Hollow Lane Power                              Statement 1 Nov 2025 to 30 Nov 2025
Electricity                                         Gas
384 kWh at 30.60p                   ${gb(e)}         ${kWh} kWh at 6.40p                       ${gb(g)}
30 days at 58.00p                    ${gb(s)}         30 days at 31.00p                         ${gb(gs)}
                                                    77 m³ x 1.02264 x 39.1 calorific value / 3.6 = ${kWh} kWh
Electricity before VAT              ${gb(e + s)}         Gas before VAT                          ${gb(g + gs)}
Total before VAT                                                                          ${gb(net)}
VAT at 5%                                                                                 ${gb(vat)}
Total charges                                                                             ${gb(net + vat)}
`,
    ['electricity', '2025-11-01', '2025-12-01', 384, e + s + share(5, e + s)],
    ['gas', '2025-11-01', '2025-12-01', kWh, g + gs + share(5, g + gs)],
  );
}
{
  const [e, s] = [times(1388, 26.35), times(92, 47.5)];
  const net = e + s;
  const vat = share(5, net);
  add(
    'wrapped cells in a table with rules',
    UK,
    `
Sedge Power
Invoice                                              Supply period
Electricity for your home                            01 Jul 2026 – 30 Sep 2026
Description                 Quantity       Rate             Amount (£)
Energy supplied to your
home, single rate tariff    1,388 kWh      26.35p           ${en(e)}
Standing charge, paid for
every day of the period     92 days        47.50p            ${en(s)}
Total excluding VAT                                         ${en(net)}
VAT at 5%                                                    ${en(vat)}
Total including VAT                                         ${en(net + vat)}
`,
    ['electricity', '2026-07-01', '2026-10-01', 1388, net + vat],
  );
}
{
  const [e, s] = [times(1388, 26.35), times(92, 47.5)];
  const net = e + s;
  const vat = share(5, net);
  add(
    'wrapped cells whose numbers stand in the first line',
    UK,
    `
Sedge Power
Electricity for your home                            01 Jul 2026 – 30 Sep 2026
Description                 Quantity       Rate             Amount (£)
Energy supplied to your     1,388          26.35            ${en(e)}
home, single rate tariff    kWh            p/kWh
Standing charge, paid for   92             47.50             ${en(s)}
every day of the period     days           p/day
Total excluding VAT                                         ${en(net)}
VAT at 5%                                                    ${en(vat)}
Total including VAT                                         ${en(net + vat)}
`,
    ['electricity', '2026-07-01', '2026-10-01', 1388, net + vat],
  );
}
{
  const [h1, h2] = [times(1300, 25.21), times(1350, 25.21)];
  const gp = round((9600 * 366) / 366);
  const [n1, n2] = [h1 + round((9600 * 182) / 366), h2 + round((9600 * 184) / 366)];
  const [u1, u2] = [share(19, n1), share(16, n2)];
  add(
    'zwei Steuersätze in einem Jahr',
    DE,
    `
Licht und Wärme Nord             Stromabrechnung 01.01.2020 bis 31.12.2020
01.01.2020 bis 30.06.2020
Arbeitspreis    1.300 kWh     25,21 ct/kWh                       ${de(h1)} €
Grundpreis        182 Tage    96,00 €/Jahr                        ${de(round((9600 * 182) / 366))} €
Netto                                                            ${de(n1)} €
Umsatzsteuer 19 %                                                 ${de(u1)} €
01.07.2020 bis 31.12.2020
Arbeitspreis    1.350 kWh     25,21 ct/kWh                       ${de(h2)} €
Grundpreis        184 Tage    96,00 €/Jahr                        ${de(round((9600 * 184) / 366))} €
Netto                                                            ${de(n2)} €
Umsatzsteuer 16 %                                                 ${de(u2)} €
Rechnungsbetrag                                                  ${de(n1 + u1 + n2 + u2)} €
`,
    ['electricity', '2020-01-01', '2021-01-01', 2650, n1 + u1 + n2 + u2],
  );
  void gp;
}
{
  const [e, s] = [times(655, 28.2), times(60, 51)];
  const net = e + s;
  const vat = share(5, net);
  add(
    'free units and a loyalty credit laid on after VAT',
    UK,
    `
Quill Energy                Electricity      1 March 2026 to 29 April 2026
Reading 28 Feb 2026 51,200    Reading 29 Apr 2026 51,903    Used 703 kWh
Units             655 kWh       28.20p                           ${gb(e)}
Free weekend units 48 kWh        0.00p                            £0.00
Standing charge    60 days      51.00p                            ${gb(s)}
Net                                                              ${gb(net)}
VAT at 5 %                                                         ${gb(vat)}
Charges with VAT                                                 ${gb(net + vat)}
Warm home credit                                                -£150.00
Total of this bill                                                ${gb(net + vat - 15_000)}
`,
    ['electricity', '2026-03-01', '2026-04-30', 703, net + vat],
  );
}
{
  const [e, s] = [times(811.37, 26.99), times(31, 50)];
  const net = e + s;
  const vat = share(5, net);
  add(
    'units to the hundredth; the last day said as not counted',
    UK,
    `
Clover Power           Electricity from 1st January 2026 up to (not including) 1st February 2026
Your use       811.37 kWh    26.99 pence per kWh                  ${gb(e)}
Daily charge   31 days       50.00 pence per day                   ${gb(s)}
Total before VAT                                                  ${gb(net)}
VAT (5%)                                                           ${gb(vat)}
Total                                                             ${gb(net + vat)}
`,
    ['electricity', '2026-01-01', '2026-02-01', 811.37, net + vat],
  );
}
{
  const [e, s] = [times(811, 26.9), times(30, 50)];
  const net = e + s;
  const vat = share(5, net);
  add(
    'an American date that cannot be told from a British one',
    UK,
    `
Clover Power           Electricity         05/06/2026 - 06/06/2026
Your use       811 kWh       26.90p                               ${gb(e)}
Daily charge   Standing 30 days at 50.00p                          ${gb(s)}
Net                                                               ${gb(net)}
VAT 5%                                                             ${gb(vat)}
Total                                                             ${gb(net + vat)}
`,
  );
}
{
  const ap = times(2950, 33.82);
  const gp = 13_560;
  const brutto = ap + gp;
  const ust = round((brutto * 19) / 119);
  add(
    'Preise mit Steuer, Steuer nur ausgewiesen',
    DE,
    `
Stromhaus Lindenried                        Verbrauchsabrechnung Strom
Verbrauchszeitraum: 12. Mai 2024 bis 11. Mai 2025
Zählernummer 60011947   Anfangsstand 18.204 (abgelesen)   Endstand 21.154 (rechnerisch ermittelt)
Arbeitspreis brutto     2.950 kWh × 33,82 Cent/kWh                  ${de(ap)} €
Grundpreis brutto       12 Monate × 11,30 €                           ${de(gp)} €
Gesamtbetrag brutto                                                ${de(brutto)} €
darin enthaltene Umsatzsteuer 19 %                                   ${de(ust)} €
abzüglich Abschläge                                                -${de(99_600)} €
Nachzahlung                                                          ${de(brutto - 99_600)} €
Ihr neuer Abschlag ab 01.07.2025: 102,00 € monatlich
`,
    ['electricity', '2024-05-12', '2025-05-12', 2950, brutto],
  );
}
{
  const [a, b, c] = [times(210, 41.2), times(530, 29.9), times(160, 12.5)];
  const s = times(30, 61);
  const net = a + b + c + s;
  const vat = share(5, net);
  add(
    'peak, shoulder and off-peak',
    UK,
    `
Gorse & Sky Energy         Electricity 1 September 2026 to 30 September 2026
Peak            210 kWh     41.20p                             ${gb(a)}
Shoulder        530 kWh     29.90p                            ${gb(b)}
Off-peak        160 kWh     12.50p                              ${gb(c)}
Standing charge  30 days    61.00p                              ${gb(s)}
Net                                                            ${gb(net)}
VAT 5%                                                          ${gb(vat)}
Total                                                          ${gb(net + vat)}
`,
    ['electricity', '2026-09-01', '2026-10-01', 900, net + vat],
  );
}
{
  const [e, s] = [times(455, 29), times(31, 45)];
  const net = e + s;
  const vat = share(5, net);
  add(
    'a fee and a repair that are no energy',
    UK,
    `
Thistle Gas & Light             Electricity 1 October 2025 to 31 October 2025
Units            455 kWh at 29.00p                              ${gb(e)}
Standing charge  31 days at 45.00p                               ${gb(s)}
Late payment fee                                                 £12.00
Call-out, replaced fuse                                          £65.00
Net                                                             ${gb(net + 7700)}
VAT at 5%                                                         ${gb(share(5, net + 7700))}
Total                                                           ${gb(net + 7700 + share(5, net + 7700))}
`,
    ['electricity', '2025-10-01', '2025-11-01', 455, net + 7700 + share(5, net + 7700)],
  );
  void vat;
}
{
  const kWh = round((330 * 1.02264 * 39.8) / 3.6);
  const [g, s] = [times(kWh, 5.95), times(90, 27)];
  const net = g + s;
  const vat = share(5, net);
  const lastKWh = round((401 * 1.02264 * 39.2) / 3.6);
  add(
    'gas beside the working of last winter',
    UK,
    `
Hearth & Field              Gas bill 1 January 2026 to 31 March 2026
Opening 5,120   Closing 5,450   330 m³ × 1.02264 × calorific value 39.8 ÷ 3.6 = ${grouped(String(kWh), ',')} kWh
Gas used          ${grouped(String(kWh), ',')} kWh       5.95p                     ${gb(g)}
Standing charge   90 days         27.00p                     ${gb(s)}
Net                                                         ${gb(net)}
VAT 5%                                                        ${gb(vat)}
Total                                                       ${gb(net + vat)}
The same days last winter
!Opening 4,102   Closing 4,503   401 m³ × 1.02264 × calorific value 39.2 ÷ 3.6 = ${grouped(String(lastKWh), ',')} kWh
!Gas used          ${grouped(String(lastKWh), ',')} kWh       5.10p                     ${gb(times(lastKWh, 5.1))}
`,
    ['gas', '2026-01-01', '2026-04-01', kWh, net + vat],
  );
}
{
  const [e, s] = [times(920, 27.5), times(91, 46)];
  const net = e + s;
  const vat = share(5, net);
  const [pe, ps] = [times(3680, 27.5), times(365, 46)];
  add(
    'annual summary with its own VAT and total',
    UK,
    `
Bracken & Loam Power           Electricity bill
1 July 2026 to 29 September 2026
Units           920 kWh at 27.50p                                  ${gb(e)}
Standing charge  91 days at 46.00p                                  ${gb(s)}
VAT at 5%                                                            ${gb(vat)}
Total charges                                                      ${gb(net + vat)}
Annual summary 30 September 2025 to 29 September 2026
!Units         3,680 kWh at 27.50p                                ${gb(pe)}
!Standing charge 365 days at 46.00p                                 ${gb(ps)}
!VAT at 5%                                                           ${gb(share(5, pe + ps))}
!Total for the year                                               ${gb(pe + ps + share(5, pe + ps))}
`,
    ['electricity', '2026-07-01', '2026-09-30', 920, net + vat],
  );
}
{
  const [e, s] = [times(612, 27.4), times(91, 48)];
  const net = e + s;
  const vat = share(5, net);
  add(
    'a panel beside the charges with another price of the same words',
    UK,
    `
Fennel & Rush Energy
Electricity           2 Jul 2026 to 30 Sep 2026                 ~Other tariffs of ours
Units        612 kWh at 27.40p       ${gb(e)}            ~Units  612 kWh at 25.10p    ${gb(times(612, 25.1))}
Standing      91 days at 48.00p       ${gb(s)}            ~Standing 91 days at 52.00p   ${gb(times(91, 52))}
Net                                  ${gb(net)}
VAT 5%                                 ${gb(vat)}
Total                                ${gb(net + vat)}
`,
    ['electricity', '2026-07-02', '2026-10-01', 612, net + vat],
  );
}
{
  const ap = times(1980, 31.2);
  const gp = times(245, 40);
  const net = ap + gp;
  const ust = share(19, net);
  add(
    'Schlussrechnung mit Minus hinter der Zahl',
    DE,
    `
Energie Moorbach                        Schlussrechnung Strom
Lieferzeitraum 01.01.2026 - 02.09.2026
Arbeitspreis    1.980 kWh      31,20 ct/kWh                ${de(ap)}
Grundpreis        245 Tage     40,00 ct/Tag                 ${de(gp)}
Nettobetrag                                                ${de(net)}
19 % Umsatzsteuer                                          ${de(ust)}
Bruttobetrag                                               ${de(net + ust)}
Abschläge 8 x 100,00                                       ${de(80_000)}-
Forderung                                                   ${de(net + ust - 80_000)}
`,
    ['electricity', '2026-01-01', '2026-09-03', 1980, net + ust],
  );
}
{
  const [e, s] = [times(440, 28.1), times(31, 50)];
  const net = e + s;
  const vat = share(5, net);
  const [g, gs] = [times(1210, 6.9), times(31, 29)];
  const gvat = share(5, g + gs);
  add(
    'two fuels; gas in kWh only, no working',
    UK,
    `
Quill Energy               Dual fuel statement 1 January 2026 to 31 January 2026
Electricity
Units              440 kWh at 28.10p                              ${gb(e)}
Standing charge    31 days at 50.00p                               ${gb(s)}
VAT at 5 %                                                          ${gb(vat)}
Electricity total                                                 ${gb(net + vat)}
Gas
Units            1,210 kWh at 6.90p                                ${gb(g)}
Standing charge    31 days at 29.00p                                ${gb(gs)}
VAT at 5 %                                                          ${gb(gvat)}
Gas total                                                          ${gb(g + gs + gvat)}
Total                                                             ${gb(net + vat + g + gs + gvat)}
`,
    ['electricity', '2026-01-01', '2026-02-01', 440, net + vat],
    ['gas', '2026-01-01', '2026-02-01', 1210, g + gs + gvat],
  );
}
{
  const [e, s] = [times(440, 28.1), times(31, 50)];
  const net = e + s;
  const vat = share(5, net);
  const gas = 9400;
  add(
    'two fuels, of which one without any working at all',
    UK,
    `
Quill Energy               Dual fuel statement 1 January 2026 to 31 January 2026
Electricity
Units              440 kWh at 28.10p                              ${gb(e)}
Standing charge    31 days at 50.00p                               ${gb(s)}
VAT at 5 %                                                          ${gb(vat)}
Electricity total                                                 ${gb(net + vat)}
Gas, as per your plan                                              ${gb(gas)}
Total                                                             ${gb(net + vat + gas)}
`,
  );
}
{
  const one = (kWh: number, p: number, days: number) => {
    const [e, s] = [times(kWh, p), times(days, 50)];
    const vat = share(5, e + s);
    return { e, s, net: e + s, vat, total: e + s + vat };
  };
  const [a, b] = [one(402, 29, 31), one(371, 30, 28)];
  add(
    'two months beside each other in columns',
    UK,
    `
Sedge Power            Electricity
                          1 Jan 2026 to 31 Jan 2026             1 Feb 2026 to 28 Feb 2026
Units                     402 kWh at 29.00p   ${gb(a.e)}        371 kWh at 30.00p   ${gb(b.e)}
Standing charge           31 days at 50.00p    ${gb(a.s)}        28 days at 50.00p    ${gb(b.s)}
Net                                           ${gb(a.net)}                            ${gb(b.net)}
VAT 5%                                          ${gb(a.vat)}                              ${gb(b.vat)}
Total                                         ${gb(a.total)}                            ${gb(b.total)}
Both months                                                                           ${gb(a.total + b.total)}
`,
    ['electricity', '2026-01-01', '2026-02-01', 402, a.total],
    ['electricity', '2026-02-01', '2026-03-01', 371, b.total],
  );
}
{
  const [e, s] = [times(655, 28.2), times(60, 51)];
  const net = e + s;
  const vat = share(5, net);
  add(
    'half a bill: the first page, its total on another',
    UK,
    `
Quill Energy                Electricity      1 March 2026 to 29 April 2026          Page 1 of 2
Units             655 kWh       28.20p                           ${gb(e)}
Standing charge    60 days      51.00p                            ${gb(s)}
Continued on page 2
`,
  );
  void vat;
  void net;
}

{
  const [e, s] = [times(3100, 24.9), times(365, 44)];
  const vat = share(5, e + s);
  add(
    'an offer, which is no bill',
    UK,
    `
Gorse & Sky Energy                       Your quote for electricity
Fixed from 1 January 2026 to 31 December 2026
Estimated units     3,100 kWh at 24.90p                          ${gb(e)}
Standing charge      365 days at 44.00p                           ${gb(s)}
Total before VAT                                                 ${gb(e + s)}
VAT at 5%                                                         ${gb(vat)}
Estimated total for the year                                     ${gb(e + s + vat)}
`,
  );
}
{
  const [ap, gp] = [times(3500, 29.9), 13_200];
  const ust = share(19, ap + gp);
  add(
    'eine Vertragsbestätigung mit Prognose',
    DE,
    `
Licht und Wärme Nord                 Auftragsbestätigung Strom
Belieferung vom 01.03.2026 bis 28.02.2027
Voraussichtlicher Verbrauch   3.500 kWh     29,90 ct/kWh         ${de(ap)} €
Grundpreis                    12 Monate     11,00 €/Monat          ${de(gp)} €
Netto                                                            ${de(ap + gp)} €
USt 19 %                                                          ${de(ust)} €
Voraussichtliche Jahreskosten brutto                             ${de(ap + gp + ust)} €
Ihr Abschlag: 12 x 118,00 €                                      1.416,00 €
`,
  );
}
{
  const [ap, gp] = [times(2700, 31), times(365, 36)];
  const net = ap + gp;
  const ust = share(19, net);
  add(
    'neuer Abschlagsplan als Produkt hinter der Rechnung',
    DE,
    `
Stadtwerke Birkenau                    Stromrechnung
Rechnungszeitraum 01.01.2025 bis 31.12.2025
Arbeitspreis        2.700 kWh x 31,00 ct/kWh                       ${de(ap)} €
Grundpreis            365 Tage x 36,00 ct/Tag                      ${de(gp)} €
Summe netto                                                        ${de(net)} €
19 % Umsatzsteuer                                                  ${de(ust)} €
Rechnungsbetrag brutto                                            ${de(net + ust)} €
bereits gezahlt                                                  - ${de(99_000)} €
Nachzahlung                                                        ${de(net + ust - 99_000)} €
Künftige Abschläge
!11 Abschläge zu je 105,00 €                                       1.155,00 €
!Erwarteter Verbrauch 2.700 kWh x 33,00 ct/kWh                     ${de(times(2700, 33))} €
`,
    ['electricity', '2025-01-01', '2026-01-01', 2700, net + ust],
  );
}
{
  const [a, b, s] = [times(402, 28), times(611, 28), times(31, 52)];
  const net = a + b + s;
  const vat = share(5, net);
  add(
    'two meters of one fuel',
    UK,
    `
Clover Power                Electricity     1 August 2026 to 31 August 2026
Meter A 11,204    11,606    402 kWh    28.00p                    ${gb(a)}
Meter B 80,110    80,721    611 kWh    28.00p                    ${gb(b)}
Standing charge    31 days   52.00p                               ${gb(s)}
Net                                                              ${gb(net)}
VAT 5%                                                            ${gb(vat)}
Total                                                            ${gb(net + vat)}
`,
    ['electricity', '2026-08-01', '2026-09-01', 1013, net + vat],
  );
}
{
  const [e, s] = [times(377, 29.1), times(30, 51)];
  const net = e + s;
  const vat = share(5, net);
  add(
    'the last bill again in full beside this one',
    UK,
    `
Bracken & Loam Power                 Electricity
This bill, 1 June 2026 to 30 June 2026
Units           377 kWh at 29.10p                                ${gb(e)}
Standing charge  30 days at 51.00p                                ${gb(s)}
VAT at 5%                                                          ${gb(vat)}
Total                                                            ${gb(net + vat)}
Last bill, 1 May 2026 to 31 May 2026
!Units           420 kWh at 29.10p                                ${gb(times(420, 29.1))}
!Standing charge  31 days at 51.00p                                ${gb(times(31, 51))}
!VAT at 5%                                                          ${gb(share(5, times(420, 29.1) + times(31, 51)))}
!Total                                                            ${gb(times(420, 29.1) + times(31, 51) + share(5, times(420, 29.1) + times(31, 51)))}
`,
    ['electricity', '2026-06-01', '2026-07-01', 377, net + vat],
  );
}
{
  const [e, s] = [times(512, 27.35), times(30, 49)];
  const net = e + s;
  const vat = share(5, net);
  add(
    'a reminder of an earlier bill with a fee',
    UK,
    `
Quill Energy                 Electricity      1 April 2026 to 30 April 2026
Balance of your last bill                                        £212.40
Units            512 kWh      27.35p                             ${gb(e)}
Standing charge   30 days     49.00p                              ${gb(s)}
VAT 5%                                                             ${gb(vat)}
Charges this month                                               ${gb(net + vat)}
Reminder fee, no VAT                                               £5.00
Please pay                                                       ${gb(21_240 + net + vat + 500)}
`,
    ['electricity', '2026-04-01', '2026-05-01', 512, net + vat],
  );
}
{
  const [e, s] = [times(512, 27.35), times(30, 49)];
  const net = e + s;
  const vat = share(5, net);
  add(
    'a pro forma copy marked as cancelled',
    UK,
    `
Quill Energy                 Electricity      1 April 2026 to 30 April 2026
CANCELLED: this bill is replaced by another
Units            512 kWh      27.35p                             ${gb(e)}
Standing charge   30 days     49.00p                              ${gb(s)}
Net                                                              ${gb(net)}
VAT 5%                                                             ${gb(vat)}
Total                                                            ${gb(net + vat)}
Pro forma, not for payment
`,
  );
}
{
  const [d, n] = [times(410, 31.5), times(905, 11.2)];
  const s = times(31, 55);
  const net = d + n + s;
  const vat = share(5, net);
  add(
    'night before day, register numbers in front',
    UK,
    `
Sedge Power      Electricity supply      01-DEC-25 TO 31-DEC-25
Rate 1 night     00:30-04:30     905 kWh     11.200    ${en(n)}
Rate 2 day       04:30-00:30     410 kWh     31.500    ${en(d)}
Daily charge      31 days         55.000              ${en(s)}
Sub total                                            ${en(net)}
VAT 5.00%                                             ${en(vat)}
Total due for this period                            ${en(net + vat)}
`,
    ['electricity', '2025-12-01', '2026-01-01', 1315, net + vat],
  );
}
{
  const kWh = round(288 * 0.9541 * 11.153);
  const [ap, gp] = [times(kWh, 9.87), round((14_400 * 365) / 365)];
  const co2 = times(kWh, 1.001);
  const net = ap + gp + co2;
  const ust = share(19, net);
  add(
    'Gas mit CO2-Preis und Aufteilung zwischen Mieter und Vermieter',
    DE,
    `
Gasversorgung Auental             Gasabrechnung 2025
Lieferzeitraum 01.01.2025 - 31.12.2025
Zähler 7711204  alt 4.102 m³  neu 4.390 m³  Differenz 288 m³
288 m³ x 0,9541 Zustandszahl x 11,153 Brennwert kWh/m³ = ${grouped(String(kWh), '.')} kWh
Arbeitspreis       ${grouped(String(kWh), '.')} kWh      9,87 ct/kWh                ${de(ap)} €
CO2-Preis          ${grouped(String(kWh), '.')} kWh      1,001 ct/kWh                ${de(co2)} €
Grundpreis 144,00 €/Jahr   365 Tage                             ${de(gp)} €
Nettobetrag                                                     ${de(net)} €
Umsatzsteuer 19 %                                               ${de(ust)} €
Bruttobetrag                                                    ${de(net + ust)} €
Aufteilung der CO2-Kosten: Mieter 60 %                          ${de(round(co2 * 0.6))} €
`,
    ['gas', '2025-01-01', '2026-01-01', kWh, net + ust],
  );
}
{
  const [e, s] = [times(690, 26.4), times(92, 47)];
  const vat = share(5, e + s);
  add(
    'the total on the last line only, in words and figures',
    UK,
    `
Fennel Supply
Dear customer, between 1 July 2026 and 30 September 2026 (92 days) you used 690 kWh of electricity.
At 26.40p for each kWh this comes to ${gb(e)}. The standing charge of 47.00p a day for 92 days is ${gb(s)}.
With VAT at 5 % (${gb(vat)}) the total of this bill is ${gb(e + s + vat)}.
`,
    ['electricity', '2026-07-01', '2026-10-01', 690, e + s + vat],
  );
}
{
  const rows = [
    ['January', 412, 27.9, 31],
    ['February', 388, 27.9, 28],
    ['March', 351, 25.6, 31],
  ] as const;
  const energy = rows.map(([, kWh, pence]) => times(kWh, pence));
  const standing = rows.map(([, , , days]) => times(days, 52.3));
  const net = sum(...energy, ...standing);
  const lines = rows.map(
    ([month, kWh, pence, days], i) => `
${month} energy                ${kWh} kWh     ${pence.toFixed(2)}p      ${gb(energy[i]!)}
Standing charge               ${days} days     52.30p      ${gb(standing[i]!)}`,
  );
  add(
    'months of equal length repeat their standing charge',
    UK,
    `
Wold and Fen Power, electricity for 1 January 2026 to 31 March 2026${lines.join('')}
Subtotal                                               ${gb(net)}
VAT 5 %                                                ${gb(share(5, net))}
Total charges                                          ${gb(net + share(5, net))}
`,
    ['electricity', '2026-01-01', '2026-04-01', 1151, net + share(5, net)],
  );
}
{
  const parts = [
    ['Beschaffung und Vertrieb', 12.41],
    ['Netznutzung Arbeitspreis', 8.93],
    ['Besonderer Aufschlag', 1.559],
    ['Stromsteuer', 2.05],
  ] as const;
  const pence = parts.map(([, ct]) => times(2875, ct));
  const base = times(365, 29.31);
  const net = sum(...pence, base);
  const lines = parts.map(
    ([name, ct], i) => `
${name.padEnd(30)}2.875 kWh      ${String(ct).replace('.', ',')} ct/kWh      ${de(pence[i]!)}`,
  );
  add(
    'each part of the price is a line for the same units',
    DE,
    `
Bürgerstrom Lindental eG
Rechnung für Strom, Lieferzeitraum 15.02.2025 bis 14.02.2026
Zählerstand alt 19.002      neu 21.877      Verbrauch 2.875 kWh${lines.join('')}
Grundpreis                    365 Tage       29,31 ct/Tag      ${de(base)}
Nettosumme                                                     ${de(net)}
zzgl. 19 % Umsatzsteuer                                        ${de(share(19, net))}
Rechnungssumme                                                 ${de(net + share(19, net))}
`,
    ['electricity', '2025-02-15', '2026-02-15', 2875, net + share(19, net)],
  );
}
{
  const [day, night, standing] = [times(640, 30.5), times(410, 13.5), times(92, 52)];
  const net = sum(day, night, standing);
  add(
    'registers as columns, quantity, rate and amount below each other',
    UK,
    `
Electricity from 1 July 2026 to 30 September 2026 (92 days)
                         Day          Night      Standing charge
Earlier reading        14000           9100
Later reading          14640           9510
Quantity             640 kWh        410 kWh      92 days
Rate                  30.50p         13.50p       52.00p
Amount               ${gb(day)}         ${gb(night)}       ${gb(standing)}
Total before VAT: ${gb(net)}    VAT at 5 %: ${gb(share(5, net))}    Total: ${gb(net + share(5, net))}
`,
    ['electricity', '2026-07-01', '2026-10-01', 1050, net + share(5, net)],
  );
}
{
  const [use, cta, tax, base] = [times(2218, 16.94), 612, times(2218, 2.998), times(3, 1512)];
  const [reduced, full] = [round((base + cta) * 0.055), share(20, use + tax)];
  const all = sum(use, cta, tax, base, reduced, full);
  add(
    'facture : deux taux de TVA, une contribution sans calcul',
    'Europe/Paris',
    `
Lumières du Vallon, votre facture d’électricité
Période du 01/04/2026 au 30/06/2026
Relevé    27 140    29 358    2 218 kWh
Abonnement                  3 mois × 15,12 €/mois            ${de(base)} €
Consommation                2 218 kWh × 0,1694 €/kWh         ${de(use)} €
Contribution d’acheminement                                  ${de(cta)} €
Accise sur l’électricité    2 218 kWh × 0,02998 €/kWh        ${de(tax)} €
TVA à 5,5 %                                                  ${de(reduced)} €
TVA à 20 %                                                   ${de(full)} €
Total TTC                                                    ${de(all)} €
`,
    ['electricity', '2026-04-01', '2026-07-01', 2218, all],
  );
}
{
  const [use, standing] = [times(900, 25), times(91, 50)];
  const net = use + standing;
  add(
    'rates without and with VAT side by side, a unit in a cell of its own',
    UK,
    `
Electricity, period 1 April to 30 June 2026
                    Quantity           Rate ex VAT    Rate inc VAT    Cost ex VAT    Cost inc VAT
Units               900      kWh       25.00p         26.25p          ${gb(use)}        ${gb(round(use * 1.05))}
Standing charge     91       days      50.00p         52.50p          ${gb(standing)}         ${gb(round(standing * 1.05))}
Total                                                                 ${gb(net)}        ${gb(net + share(5, net))}
VAT is charged at 5 % and comes to ${gb(share(5, net))}.
`,
    ['electricity', '2026-04-01', '2026-07-01', 900, net + share(5, net)],
  );
}
{
  const [use, yearly] = [times(1177, 26.1), round((18_250 * 92) / 365)];
  const vat = share(5, use + yearly);
  add(
    'dots that lead to the numbers, a yearly charge by days',
    UK,
    `
MOORLAND POWER CO-OPERATIVE
ELECTRICITY ACCOUNT   01.07.-30.09.2026   92 DAYS
READING 30.06.2026 (A)............................................44100
READING 30.09.2026 (A)............................................45277
UNITS SUPPLIED.....................................................1177
1177 UNITS AT 26.10P.............................................${en(use)}
STANDING CHARGE £182.50 x 92 / 365................................${en(yearly)}
VALUE ADDED TAX 5.00% ON ${en(use + yearly)}..............................${en(vat)}
TO PAY...........................................................${en(use + yearly + vat)}
`,
    ['electricity', '2026-07-01', '2026-10-01', 1177, use + yearly + vat],
  );
}
{
  const [use, standing] = [times(1204, 29.04), times(92, 46.5)];
  const off = share(3, use + standing);
  const net = use + standing - off;
  add(
    'a discount for paying soon, its sum said before and after',
    UK,
    `
Sedge & Rush Energy
Electricity, 1 April 2026 to 1 July 2026
Units used                   1204 kWh at 29.04p        ${gb(use)}
Standing charge              92 days at 46.50p         ${gb(standing)}
Charges                                                ${gb(use + standing)}
Prompt payment discount 3%                             -${gb(off)}
Charges after discount                                 ${gb(net)}
VAT 5% on ${gb(net)}                                      ${gb(share(5, net))}
Total                                                  ${gb(net + share(5, net))}
`,
    ['electricity', '2026-04-01', '2026-07-02', 1204, net + share(5, net)],
  );
}
{
  const [before, after] = [times(388, 24.9), times(291, 27.35)];
  const [days, more] = [times(41, 48.2), times(50, 51.9)];
  const net = sum(before, after, days, more);
  add(
    'a reading estimated at the change of price, between two others',
    UK,
    `
Electricity, 12 February 2026 to 13 May 2026
Date           Reading    How
12 Feb 2026    50 112     we read it
25 Mar 2026    50 500     estimated
13 May 2026    50 791     smart
Until 24 March 2026
388 kWh x 24.90p         ${gb(before)}
41 days x 48.20p         ${gb(days)}
From 25 March 2026
291 kWh x 27.35p         ${gb(after)}
50 days x 51.90p         ${gb(more)}
Before VAT               ${gb(net)}
VAT at 5%                ${gb(share(5, net))}
Your electricity         ${gb(net + share(5, net))}
`,
    ['electricity', '2026-02-12', '2026-05-14', 679, net + share(5, net)],
  );
}
{
  const [energy, base, paid] = [times(3010, 30.2), times(12, 1100), 110_924];
  const net = energy + base;
  add(
    'Netto, USt und Brutto als Spalten, auch der Abschläge',
    DE,
    `
Stromabrechnung, Zeitraum 01.01.2025 bis 31.12.2025
                   Netto €    USt 19 % €    Brutto €
Rechnungsbetrag    ${de(net)}    ${de(share(19, net))}    ${de(net + share(19, net))}
Abschläge          ${de(paid)}    ${de(share(19, paid))}    ${de(paid + share(19, paid))}
Berechnung
Arbeitspreis    3.010 kWh × 30,20 ct/kWh    ${de(energy)}
Grundpreis      12 Monate × 11,00 €/Monat    ${de(base)}
Summe                                       ${de(net)}
`,
    ['electricity', '2025-01-01', '2026-01-01', 3010, net + share(19, net)],
  );
}
{
  const [use, night, days] = [times(967, 27.31), times(418, 13.66), times(89, 52.71)];
  const net = sum(use, night, days);
  add(
    'a second table right below the first, no signs of money',
    UK,
    `
Whinchat Electric Ltd, account period 3 December 2025 to 1 March 2026
                   kWh      pence per kWh      £
Day                967      27.31              ${en(use)}
Night              418      13.66              ${en(night)}
                   days     pence per day      £
Standing charge    89       52.71              ${en(days)}
Charges excluding VAT       ${en(net)}
VAT at 5.0%                 ${en(share(5, net))}
Charges including VAT       ${en(net + share(5, net))}
`,
    ['electricity', '2025-12-03', '2026-03-02', 1385, net + share(5, net)],
  );
}
{
  const [use, standing] = [times(4.21, 6340), times(90, 31.2)];
  const net = use + standing;
  const vat = share(5, net);
  add(
    'used and priced by the MWh',
    UK,
    `
Cinder Path Gas
Gas bill, 1 January 2026 to 31 March 2026
Gas used 4.210 MWh at £63.40 per MWh                          ${gb(use)}
Standing charge 90 days at 31.20p                             ${gb(standing)}
VAT at 5%                                                     ${gb(vat)}
Total                                                         ${gb(net + vat)}
`,
    ['gas', '2026-01-01', '2026-04-01', 4210, net + vat],
  );
}
{
  const [use, standing] = [times(812, 31), times(90, 30)];
  const net = use + standing;
  const vat = share(19, net);
  add(
    'kWh at a price for the MWh',
    DE,
    `
Stadtwerke Unterbach
Stromrechnung, Zeitraum 01.01.2026 bis 31.03.2026
Verbrauch 812 kWh zu 310,00 €/MWh                             ${de(use)} €
Grundpreis 90 Tage zu 30,00 ct/Tag                            ${de(standing)} €
Netto                                                         ${de(net)} €
19 % USt                                                      ${de(vat)} €
Brutto                                                        ${de(net + vat)} €
`,
    ['electricity', '2026-01-01', '2026-04-01', 812, net + vat],
  );
}

{
  const [use, standing] = [times(486, 26.6483), times(31, 50.6825)];
  const [taxUse, taxStanding] = [share(5, use), share(5, standing)];
  const tax = taxUse + taxStanding;
  const net = use + standing;
  add(
    'VAT reckoned charge by charge',
    UK,
    `
Larch Court Utilities
Electricity        Invoice period 1 Aug 2026 to 31 Aug 2026
Description                Qty     Unit price (p)     Net £     VAT %     VAT £     Gross £
Electricity used           486 kWh        26.6483     ${en(use)}      5.00      ${en(taxUse)}      ${en(use + taxUse)}
Standing charge            31 days        50.6825      ${en(standing)}      5.00      ${en(taxStanding)}       ${en(standing + taxStanding)}
Totals                                                ${en(net)}                ${en(tax)}      ${en(net + tax)}
`,
    ['electricity', '2026-08-01', '2026-09-01', 486, net + tax],
  );
}
{
  const [e, s, g, d] = [times(399, 28.79), times(91, 55.31), times(1878, 6.29), times(91, 29.11)];
  const [vatE, vatG] = [share(5, e + s), share(5, g + d)];
  const [allE, allG] = [e + s + vatE, g + d + vatG];
  add(
    'a column for each fuel, set flush right under its name',
    UK,
    `
Twofold Supply
Statement for 12 September 2025 to 11 December 2025
                                   Electricity                Gas
Used (kWh)                                 399              1,878
Unit rate (p/kWh)                        28.79               6.29
Usage cost                             ${gb(e)}            ${gb(g)}
Days                                        91                 91
Standing charge (p/day)                  55.31              29.11
Standing charge cost                    ${gb(s)}             ${gb(d)}
VAT (5%)                                 ${gb(vatE)}              ${gb(vatG)}
Total                                  ${gb(allE)}            ${gb(allG)}
Electricity and gas together                              ${gb(allE + allG)}
`,
    ['electricity', '2025-09-12', '2025-12-12', 399, allE],
    ['gas', '2025-09-12', '2025-12-12', 1878, allG],
  );
}
{
  const [use, standing] = [times(399, 28.79), times(91, 55.31)];
  const net = use + standing;
  const vat = share(5, net);
  add(
    'a receipt with its units in front, paid in cash',
    UK,
    `
Skerry Electric
Receipt 4514
From 12/09/2025
To   12/12/2025
Units           399
@ 28.79p        ${gb(use)}
91 days @ 55.31p   ${gb(standing)}
VAT 5%          ${gb(vat)}
Total           ${gb(net + vat)}
Cash            £200.00
!Change           ${gb(20_000 - net - vat)}
`,
    ['electricity', '2025-09-12', '2025-12-12', 399, net + vat],
  );
}
{
  const [use, standing] = [times(812, 27.33), times(91, 49.2)];
  const net = use + standing;
  const vat = share(5, net);
  add(
    'the rate of VAT small under its sum, payments of the coming year',
    UK,
    `
Samphire Energy
Electricity charges 12 Sep 2025 - 11 Dec 2025
Electricity usage                               ${gb(use)}
812 kWh @ 27.33p
Standing charge                                 ${gb(standing)}
91 days @ 49.20p
VAT                                             ${gb(vat)}
5%
Total charges                                   ${gb(net + vat)}

Your payments from now on: £87.00 each month
!Total over 12 months £1,044.00
`,
    ['electricity', '2025-09-12', '2025-12-12', 812, net + vat],
  );
}
{
  const kWh = [125, 78, 171].map((count, i) => times(count, [16.8411, 11.6382, 8.2119][i]!));
  const power = [7.3777, 0.1911].map((price) => times(4.6 * 31, price));
  const meter = times(31, 2.6667);
  const before = sum(...kWh, ...power);
  const levy = share(5.11269632, before);
  const net = before + levy + meter;
  const vat = share(21, net);
  add(
    'power kept ready by the day, a levy in per cent',
    'Europe/Madrid',
    `
Luz del Cerro
Factura de electricidad
Periodo de facturación: del 14/04/2025 al 15/05/2025 (31 días)
Potencia punta      4,6 kW × 31 días × 0,073777 €/kW día          ${de(power[0]!)} €
Potencia valle      4,6 kW × 31 días × 0,001911 €/kW día           ${de(power[1]!)} €
Energía punta       125 kWh × 0,168411 €/kWh                      ${de(kWh[0]!)} €
Energía llano       78 kWh × 0,116382 €/kWh                        ${de(kWh[1]!)} €
Energía valle       171 kWh × 0,082119 €/kWh                      ${de(kWh[2]!)} €
Impuesto sobre la electricidad   5,11269632 %                      ${de(levy)} €
Alquiler de contador             31 días × 0,026667 €/día          ${de(meter)} €
Importe antes de IVA                                              ${de(net)} €
IVA 21 %                                                          ${de(vat)} €
Total importe factura                                             ${de(net + vat)} €
`,
    ['electricity', '2025-04-14', '2025-05-15', 374, net + vat],
  );
}
{
  const [use, levy, fixed, grid] = [times(1613, 13.812), times(1613, 10.154), 12 * 599, 41_230];
  const back = 52_495;
  const net = sum(use, levy, fixed, grid) - back;
  const vat = share(21, net);
  add(
    'the last day in december in small letters',
    'Europe/Amsterdam',
    `
Polderstroom
Jaarnota elektriciteit
Periode 1 januari 2025 t/m 31 december 2025
Verbruik                           1613 kWh × € 0,13812            ${de(use)}
Energiebelasting                   1613 kWh × € 0,10154            ${de(levy)}
Vaste leveringskosten              12 maanden × € 5,99              ${de(fixed)}
Vermindering energiebelasting      365 dagen                      -${de(back)}
Netbeheer                          365 dagen                       ${de(grid)}
Subtotaal excl. btw                                                ${de(net)}
Btw 21%                                                             ${de(vat)}
Totaal incl. btw                                                   ${de(net + vat)}
`,
    ['electricity', '2025-01-01', '2026-01-01', 1613, net + vat],
  );
}
{
  const [use, basic] = [times(4741, 29.96), 13_190];
  const net = use + basic;
  const vat = share(19, net);
  const paid = 11 * 10_100;
  const paidNet = round(paid / 1.19);
  add(
    'payments split into net and tax, network charges that the prices hold',
    DE,
    `
Stadtwerke Haselbach
Stromrechnung, Abrechnungszeitraum 01.01.2025 – 31.12.2025 (365 Tage)
Position                 Menge          Preis              Betrag
Arbeitspreis         4.741 kWh    29,96 ct/kWh        ${de(use)} €
Grundpreis            365 Tage   131,90 €/Jahr          ${de(basic)} €
Nettosumme                                            ${de(net)} €
Umsatzsteuer 19 %                                       ${de(vat)} €
Rechnungsbetrag brutto                                ${de(net + vat)} €

abzüglich geleisteter Abschläge (netto ${de(paidNet)} €, USt ${de(paid - paidNet)} €): 11 × 101,00 € = ${de(paid)} €
Nachzahlung: ${de(net + vat - paid)} €

!Darin enthalten
!Netzentgelte                       8,91 ct/kWh          ${de(times(4741, 8.91))} €
!Stromsteuer                        2,05 ct/kWh           ${de(times(4741, 2.05))} €
!Konzessionsabgabe                  1,32 ct/kWh           ${de(times(4741, 1.32))} €
!Entgelt Messstellenbetrieb                               13,45 €
`,
    ['electricity', '2025-01-01', '2026-01-01', 4741, net + vat],
  );
}

{
  const [use, standing] = [times(671, 29.1), times(91, 47.5)];
  const net = use + standing;
  const vat = share(5, net);
  add(
    'the bill of a whole house, of which a share is charged',
    UK,
    `
Alder Court Management
Recharge of electricity, 1 April 2026 to 30 June 2026
Whole house: 671 kWh at 29.10p                                ${gb(use)}
Standing charge 91 days at 47.50p                             ${gb(standing)}
VAT 5%                                                        ${gb(vat)}
Total for the house                                           ${gb(net + vat)}
Your share, 25 %                                              ${gb(share(25, net + vat))}
`,
  );
}

{
  const [first, second] = [times(276, 33.25), times(135, 16.908)];
  const [s1, s2] = [times(58, 34.06), times(34, 36.463)];
  const net = sum(first, s1, second, s2);
  const vat = share(5, net);
  add(
    'readings of five digits with their days, close below an address',
    UK,
    `
Mrs Imelda Farrow
56 Cinder Row
Upper Marsh
ZX3 8LN
For 1 Mar 2021 to 31 May 2021 (92 days)
Electricity bill
Meter K9186153           Reading      Type
1 Mar 2021                 33907      Actual
28 Apr 2021                34183      Estimated
31 May 2021                34318      Actual
1 Mar 2021 to 27 Apr 2021     276 kWh at 33.250p per kWh       ${gb(first)}
Standing charge               58 days at 34.060p per day       ${gb(s1)}
28 Apr 2021 to 31 May 2021    135 kWh at 16.908p per kWh       ${gb(second)}
Standing charge               34 days at 36.463p per day       ${gb(s2)}
Total excluding VAT                                            ${gb(net)}
VAT at 5.0%                                                    ${gb(vat)}
Total charges                                                  ${gb(net + vat)}
`,
    ['electricity', '2021-03-01', '2021-06-01', 411, net + vat],
  );
}
{
  const [use, standing, before] = [times(881, 16.14), times(91, 32.95), times(1106, 16.14)];
  const vat = share(5, use + standing);
  const total = use + standing + vat;
  const old = before + standing + share(5, before + standing);
  add(
    'an earlier bill is taken back, and the difference makes its total again',
    UK,
    `
Your electricity bill, put right
4 April 2026 to 3 July 2026 (91 days)
The earlier bill of ~${gb(old)}  is cancelled.
Start, actual                           23175
End, as estimated                      ~24281
End, your own reading                   24056
Earlier bill, taken back                                    ~-${gb(old)}
Electricity used        881 kWh at 16.14p                     ${gb(use)}
Standing charge         91 days at 32.95p                     ${gb(standing)}
VAT at 5%                                                     ${gb(vat)}
New total for these days                                      ${gb(total)}
Difference in your favour                                     ~${gb(old - total)}
`,
    ['electricity', '2026-04-04', '2026-07-04', 881, total],
  );
}
{
  const uses = [6.1, 10.5, 8.8, 6.1, 10.5, 9.4, 7.2, 6.1, 11.3, 8.8];
  const prices = [11.57, 21.03, 23.61, 15.21, 18.3, 26.72, 11.57, 12.07, 25.52, 16.1];
  const sums = uses.map((use, i) => times(use, prices[i]!));
  const standing = times(10, 47.2);
  const net = sum(...sums, standing);
  const vat = share(5, net);
  const kWh = Number(uses.reduce((a, b) => a + b, 0).toFixed(1));
  const rows = uses.map(
    (use, i) => `${String(6 + i).padStart(2, '0')}/08/2025      ${use} kWh      ${prices[i]}p      ${gb(sums[i]!)}`,
  );
  add(
    'a price of its own for each day, on several the same use',
    UK,
    `
Electricity, 6 August 2025 to 15 August 2025
Energy, each day below       ${kWh} kWh               ${gb(sum(...sums))}
Standing charge              10 days at 47.20p        ${gb(standing)}
VAT at 5%                                             ${gb(vat)}
Total                                                 ${gb(net + vat)}

Day             Used          Price       Cost
${rows.join('\n')}
`,
    ['electricity', '2025-08-06', '2025-08-16', kWh, net + vat],
  );
}
{
  const [use, standing] = [times(626, 13.92), times(31, 89.13)];
  const vat = share(5, use + standing);
  add(
    'heat that is sold, from boilers that burn gas',
    UK,
    `
Ropewalk House, warmth and hot water
9 January 2024 to 8 February 2024
Consumption             626 kWh at 13.92p                  ${gb(use)}
Daily charge            31 days at 89.13p                  ${gb(standing)}
VAT at 5%                                                  ${gb(vat)}
Total                                                      ${gb(use + standing + vat)}
Your home is kept warm from the gas boilers in the cellar, and the small meter in your flat counts it.
`,
  );
}
{
  const [e, f] = [times(6204, 22.41), times(1815, 14.06)];
  const [kva, fixed] = [times(80 * 31, 6.25), times(31, 148.5)];
  const net = sum(e, f, kva, fixed);
  const vat = share(20, net);
  add(
    'a business whose connection is paid by its kVA',
    UK,
    `
Electricity invoice, 1 May 2025 to 31 May 2025 (31 days)
Day units                 6,204 kWh      22.41 p/kWh              ${gb(e)}
Night units               1,815 kWh      14.06 p/kWh              ${gb(f)}
Availability 80 kVA       31 days        6.25 p/kVA/day           ${gb(kva)}
Fixed charge              31 days        148.50 p/day             ${gb(fixed)}
Net                                                               ${gb(net)}
VAT 20%                                                           ${gb(vat)}
Total                                                             ${gb(net + vat)}
`,
    ['electricity', '2025-05-01', '2025-06-01', 8019, net + vat],
  );
}
{
  const [normal, low, standing] = [times(419, 32.55), times(501, 11.7), times(91, 20.74)];
  const net = sum(normal, low, standing);
  const vat = share(5, net);
  add(
    'one column of quantities, the days among them',
    UK,
    `
Electricity 1 September 2021 to 30 November 2021
                         Quantity    Pence each    Charge £
Normal units                  419         32.55      ${en(normal)}
Low units                     501         11.70       ${en(low)}
Standing charge (days)         91         20.74       ${en(standing)}
Net                                                  ${en(net)}
VAT 5%                                                ${en(vat)}
Total £                                              ${en(net + vat)}
`,
    ['electricity', '2021-09-01', '2021-12-01', 920, net + vat],
  );
}
{
  const months = [
    ['1 July 2025 – 31 July 2025', 323, 31],
    ['1 August 2025 – 31 August 2025', 457, 31],
    ['1 September 2025 – 30 September 2025', 264, 30],
  ] as const;
  const sums = months.map(([, use, days]) => [times(use, 25.71), times(days, 46)] as const);
  const net = sum(...sums.flat());
  const vat = share(5, net);
  add(
    'three months at prices that stand once',
    UK,
    `
Electricity 1 July 2025 to 30 September 2025
Unit rate 25.71p per kWh
Standing charge 46.00p per day

Month                                  kWh     Energy    Days    Standing
${months.map(([name, use, days], i) => `${name.padEnd(38)}${use}    ${gb(sums[i]![0])}      ${days}      ${gb(sums[i]![1])}`).join('\n')}
Quarter                                                          ${gb(net)}
VAT 5%                                                            ${gb(vat)}
Total                                                            ${gb(net + vat)}
`,
    ['electricity', '2025-07-01', '2025-10-01', 1044, net + vat],
  );
}
{
  const [use, standing, carbon] = [times(2308, 11.64), times(61, 28.208), times(2308, 1.0167)];
  const net = sum(use, standing, carbon);
  const vat = share(9, net);
  const eur = (pence: number) => `€${en(pence)}`;
  add(
    'gas by one factor from m³ to kWh, prices in cents by a small c',
    'Europe/Dublin',
    `
Natural gas bill 1 Mar 2024 - 30 Apr 2024 (61 days)
Previous (A)     Present (A)     m3     Conversion factor     kWh
6630             6833            203    11.3712               2308
Gas                   2308 kWh @ 11.640c                  ${eur(use)}
Standing charge       61 days @ 28.208c                   ${eur(standing)}
Carbon tax            2308 kWh @ 1.0167c                  ${eur(carbon)}
Subtotal                                                  ${eur(net)}
VAT 9%                                                    ${eur(vat)}
Total                                                     ${eur(net + vat)}
`,
    ['gas', '2024-03-01', '2024-05-01', 2308, net + vat],
  );
}

{
  const [use, standing] = [times(402, 6.31), times(31, 29.4)];
  const vat = share(5, use + standing);
  add(
    'a fee below the tax, which is no cost of gas',
    UK,
    `
Final gas bill. This is about the gas that you used from 2 March 2026 to 1 April 2026.
Used               402 kWh at 6.31p          ${gb(use)}
Standing charge    31 days at 29.40p         ${gb(standing)}
VAT at 5%                                    ${gb(vat)}
Exit fee                                     £25.00
Total                                        ${gb(use + standing + vat + 2500)}
`,
    ['gas', '2026-03-02', '2026-04-02', 402, use + standing + vat],
  );
}

{
  const [use, standing] = [times(831, 27.1), times(91, 53)];
  const vat = share(5, use + standing);
  add(
    'a meter paid in advance, which also pays back a debt week by week',
    UK,
    `
Prepayment statement for electricity, 5 Jan 2026 to 5 Apr 2026
5 Jan 2026           Top-up                       £150.00
16 Feb 2026          Top-up                       £150.00
Used                 831 kWh at 27.10p            ${gb(use)}
Standing charge      91 days at 53.00p            ${gb(standing)}
VAT 5%                                            ${gb(vat)}
Spent                                             ${gb(use + standing + vat)}
!Debt recovery        13 weeks at £5.00            £65.00
`,
    ['electricity', '2026-01-05', '2026-04-06', 831, use + standing + vat],
  );
}

{
  const [use, standing] = [times(412, 27.4), times(91, 48.2)];
  const [useThen, standingThen] = [times(455, 25.4), times(91, 45.2)];
  const [vat, vatThen] = [share(5, use + standing), share(5, useThen + standingThen)];
  add(
    'last year in a column beside this, above what the electricity is made of',
    UK,
    `
Aster & Reed Power
!Wind                                             44%
!Water                                            18%
!Gas                                              11%
Electricity 1 April 2026 to 30 June 2026
                                            This bill     ~Last year
Units                                         412 kWh        ~455 kWh
Unit rate                                      27.40p         ~25.40p
Energy                                   ${gb(use)}       ~${gb(useThen)}
Days                                          91 days        ~91 days
Standing charge a day                          48.20p         ~45.20p
Standing charge                           ${gb(standing)}        ~${gb(standingThen)}
VAT at 5%                                  ${gb(vat)}         ~${gb(vatThen)}
Total                                    ${gb(use + standing + vat)}       ~${gb(useThen + standingThen + vatThen)}
`,
    ['electricity', '2026-04-01', '2026-07-01', 412, use + standing + vat],
  );
}
{
  const [use, standing, useThen] = [times(555, 27.95), times(31, 51.3), times(632, 27.95)];
  const [vat, vatThen] = [share(5, use + standing), share(5, useThen + standing)];
  add(
    'the bill before it on the next page, to compare',
    UK,
    `
Wold & Shingle Energy
Electricity 1 July 2026 to 31 July 2026
555 kWh at 27.95p                          ${gb(use)}
31 days at 51.30p                          ${gb(standing)}
VAT at 5%                                  ${gb(vat)}
Total charges                              ${gb(use + standing + vat)}
\f
!For comparison: your previous bill, 1 June 2026 to 30 June 2026
!632 kWh at 27.95p                          ${gb(useThen)}
!31 days at 51.30p                          ${gb(standing)}
!VAT at 5%                                  ${gb(vatThen)}
!Total charges                              ${gb(useThen + standing + vatThen)}
`,
    ['electricity', '2026-07-01', '2026-08-01', 555, use + standing + vat],
  );
}
{
  const [use, standing, gas, gasStanding] = [times(310, 26.4), times(30, 49.1), times(820, 6.312), times(30, 30.4)];
  const all = sum(use, standing, gas, gasStanding);
  const vat = share(5, all - 420);
  const part = (own: number) => own * 1.05 - round((420 * 1.05 * own) / all);
  add(
    'a discount on both fuels together, each bears its part',
    UK,
    `
Pennant Home Energy
Your energy 1 June 2026 to 30 June 2026
Electricity
310 kWh at 26.40p                          ${gb(use)}
Standing charge 30 days at 49.10p          ${gb(standing)}
Electricity before discount                ${gb(use + standing)}
Gas
820 kWh at 6.312p                          ${gb(gas)}
Standing charge 30 days at 30.40p           ${gb(gasStanding)}
Gas before discount                        ${gb(gas + gasStanding)}
Both fuels
Dual fuel discount                         ${gb(-420)}
Total before VAT                          ${gb(all - 420)}
VAT at 5%                                   ${gb(vat)}
Total                                     ${gb(all - 420 + vat)}
`,
    ['electricity', '2026-06-01', '2026-07-01', 310, round(part(use + standing))],
    ['gas', '2026-06-01', '2026-07-01', 820, round(part(gas + gasStanding))],
  );
}
{
  const [use, standing] = [times(930, 29.47), times(90, 45.46)];
  const vat = share(5, use + standing);
  add(
    'charges, readings and prices each on a page of their own',
    UK,
    `
Larksfoot Electric
Electricity bill 3 February 2026 to 3 May 2026
Usage charge                              ${gb(use)}
Standing charge                            ${gb(standing)}
VAT at 5%                                  ${gb(vat)}
Total                                     ${gb(use + standing + vat)}
\f
Meter             Opening     Closing      Used
E14Z09937           27541       28471   930 kWh
\f
Unit rate                        29.47p per kWh
Standing charge                  45.46p per day
Days in this bill                            90
`,
    ['electricity', '2026-02-03', '2026-05-04', 930, use + standing + vat],
  );
}
{
  const [gas1, gas2, standing1, standing2] = [
    times(1678.8, 5.852),
    times(1522.1, 5.531),
    times(70, 31.92),
    times(20, 32.39),
  ];
  const net = sum(gas1, gas2, standing1, standing2);
  const vat = share(5, net);
  add(
    'gas at an old and a new price, its lines and its title with their days, from an electric company',
    UK,
    `
Skylarking Electric
Gas bill 21 February 2026 to 21 May 2026
Gas at old price, 21 Feb 2026 to 1 May 2026   1678.8 kWh   5.852p       ${gb(gas1)}
Standing charge                                  70 days   31.92p       ${gb(standing1)}
Gas at new price, 2 May 2026 to 21 May 2026   1522.1 kWh   5.531p       ${gb(gas2)}
Standing charge                                  20 days   32.39p        ${gb(standing2)}
Total before VAT                                                       ${gb(net)}
VAT at 5.0%                                                             ${gb(vat)}
Total gas charges                                                      ${gb(net + vat)}
`,
    ['gas', '2026-02-21', '2026-05-22', 3200.9, net + vat],
  );
}

{
  const [use, standing] = [times(402, 26.31), times(30, 49.4)];
  const vat = share(5, use + standing);
  const bill = (title: string) => `
Wintle Power
${title}
Energy             402 kWh at 26.31p         ${gb(use)}
Standing charge    30 days at 49.40p         ${gb(standing)}
VAT at 5%                                    ${gb(vat)}
Total                                       ${gb(use + standing + vat)}`;
  const then = 'Electricity, 1 June 2026 to 30 June 2026';
  add(
    'a deposit is no cost, though it is to be paid',
    UK,
    `${bill(then)}
Security deposit                             £50.00
To pay                                      ${gb(use + standing + vat + 5000)}
`,
    ['electricity', '2026-06-01', '2026-07-01', 402, use + standing + vat],
  );
  add(
    'what would have been paid with another supplier',
    UK,
    bill(`Your projection\nIf you had been with us:\n${then}`),
  );
}
{
  const [use, useThen, standing] = [times(412, 28.18), times(548, 28.18), times(89, 59.35)];
  const [vat, vatThen] = [share(5, use + standing), share(5, useThen + standing)];
  const table = (mark: string, units: number, charge: number, tax: number) => `
${mark}Energy              ${units} kWh   28.18p   ${gb(charge)}
${mark}Standing charge      89 days   59.35p    ${gb(standing)}
${mark}VAT at 5%                               ${gb(tax)}
${mark}Total                                  ${gb(charge + standing + tax)}`;
  add(
    'the same quarter of last year above this one, its standing charge alike',
    UK,
    `
Wintersedge Power
Electricity 1 February 2026 to 30 April 2026
!Same quarter last year${table('!', 548, useThen, vatThen)}
This quarter${table('', 412, use, vat)}
`,
    ['electricity', '2026-02-01', '2026-05-01', 412, use + standing + vat],
  );
}
{
  const [use, standing, back] = [times(402, 26.31), times(30, 44.35), times(3, 44.35)];
  const vat = share(5, use + standing - back);
  add(
    'days given back after a power cut, under a word about last year',
    UK,
    `
Pebblegate Supply
Electricity 1 June 2026 to 30 June 2026
You used less than last year.
Energy                             402 kWh   26.31p   ${gb(use)}
Standing charge                    30 days   44.35p    ${gb(standing)}
Standing charge given back          3 days   44.35p    ${gb(-back)}
Total before VAT                                      ${gb(use + standing - back)}
VAT at 5%                                               ${gb(vat)}
Total                                                 ${gb(use + standing - back + vat)}
`,
    ['electricity', '2026-06-01', '2026-07-01', 402, use + standing - back + vat],
  );
}
{
  const [use, standing, normal, low, fixed] = [times(521, 31.28), times(92, 52.97), 29_504, 15_829, 8092];
  const vat = share(5, use + standing);
  const all = normal + low + fixed;
  add(
    'two bills on two pages, in two languages with two decimal signs',
    UK,
    `
Final electricity bill
Supply from 23 May 2025 until 22 August 2025 (92 days)
First rate: 521 kWh at 31.28 pence        ${gb(use)}
Fixed charge: 92 days at 52.97 pence       ${gb(standing)}
VAT at 5 per cent                          ${gb(vat)}
Total of this final bill                  ${gb(use + standing + vat)}
\f
Jaarnota stroom 1 september 2025 t/m 31 augustus 2026
Stroom normaaltarief     1.058 kWh    € 0,278867    € ${de(normal)}
Stroom daltarief           739 kWh    € 0,214196    € ${de(low)}
Vaste leveringskosten   365 dagen     € 0,221709     € ${de(fixed)}
Totaal inclusief btw                                € ${de(all)}
Waarvan btw 21%                                      € ${de(round((all * 21) / 121))}
`,
    ['electricity', '2025-05-23', '2025-08-23', 521, use + standing + vat],
    ['electricity', '2025-09-01', '2026-09-01', 1797, all],
  );
}
{
  const use = times(2242, 30.59);
  const tax = share(19, use + 9500);
  add(
    'Grundpreis für ein ganzes Schaltjahr ohne Tage',
    DE,
    `
Rotbach Strom
Stromrechnung
Abrechnungszeitraum 01.01.2024 – 31.12.2024
Arbeitspreis   2.242 kWh   30,59 ct/kWh   ${de(use)} €
Grundpreis                 95,00 €/Jahr    95,00 €
Nettobetrag                               ${de(use + 9500)} €
Umsatzsteuer 19 %                         ${de(tax)} €
Rechnungsbetrag                           ${de(use + 9500 + tax)} €
`,
    ['electricity', '2024-01-01', '2025-01-01', 2242, use + 9500 + tax],
  );
}

{
  const [e1, e2, e3] = [times(284, 29.88), times(153, 22.14), times(59, 30.38)];
  const [s1, s2, s3] = [times(21, 59.78), times(21, 41.76), times(50, 49.58)];
  const net = sum(e1, e2, e3, s1, s2, s3);
  add(
    'three stretches of prices, none of them the days of the bill',
    UK,
    `
Hazelfold Power
Electricity
1 August 2024 to 21 August 2024
284 kWh @ 29.88p                            ${gb(e1)}
21 days @ 59.78p                            ${gb(s1)}
22 August 2024 to 11 September 2024
153 kWh @ 22.14p                            ${gb(e2)}
21 days @ 41.76p                            ${gb(s2)}
12 September 2024 to 31 October 2024
59 kWh @ 30.38p                             ${gb(e3)}
50 days @ 49.58p                            ${gb(s3)}
Sub-total                                   ${gb(net)}
VAT @ 5%                                    ${gb(share(5, net))}
Total                                       ${gb(net + share(5, net))}
`,
    ['electricity', '2024-08-01', '2024-11-01', 496, net + share(5, net)],
  );
}
{
  const month = (name: string, days: string, count: number, kWh: number) => {
    const [use, standing] = [times(kWh, 26.39), times(count, 59.18)];
    const tax = share(5, use + standing);
    return {
      all: use + standing + tax,
      text: `${name} 2025: ${days}
Electricity         ${kWh} kWh     26.39p      ${gb(use)}
Standing charge     ${count} days     59.18p      ${gb(standing)}
VAT                 5%                   ${gb(tax)}
${name} total                            ${gb(use + standing + tax)}`,
    };
  };
  const [one, two, three] = [
    month('January', '1 Jan 2025 to 31 Jan 2025', 31, 137),
    month('February', '1 Feb 2025 to 28 Feb 2025', 28, 145),
    month('March', '1 Mar 2025 to 31 Mar 2025', 31, 486),
  ];
  add(
    'three months of a total each, whose standing charges are alike',
    UK,
    `
Lintel & Lowe
${one.text}
${two.text}
${three.text}
Quarter total                              ${gb(sum(one.all, two.all, three.all))}
`,
    ['electricity', '2025-01-01', '2025-02-01', 137, one.all],
    ['electricity', '2025-02-01', '2025-03-01', 145, two.all],
    ['electricity', '2025-03-01', '2025-04-01', 486, three.all],
  );
}
{
  const [use, standing] = [times(1851, 26.25), 9662];
  const net = use + standing;
  const tax = share(19, net);
  add(
    'netto und brutto nebeneinander',
    DE,
    `
Fliederhof Strom
Jahresrechnung Strom
Zeitraum vom 01.01.2023 bis zum 31.12.2023
                  Menge        Preis netto (brutto)                  Netto         Brutto
Arbeitspreis      1.851 kWh    26,25 ct (31,24 ct)            ${de(use)} €    ${de(share(119, use))} €
Grundpreis        365 Tage     96,62 €/Jahr (114,98 €/Jahr)      ${de(standing)} €      ${de(share(119, standing))} €
Summen                                                        ${de(net)} €    ${de(net + tax)} €
enthaltene USt 19 %                                                           ${de(tax)} €
Rechnungsbetrag                                                               ${de(net + tax)} €
`,
    ['electricity', '2023-01-01', '2024-01-01', 1851, net + tax],
  );
}
{
  const [e1, e2] = [times(4348, 6.44), times(4117, 9.6)];
  const [s1, s2] = [round((17128 * 273) / 365), round((13230 * 92) / 365)];
  const net = sum(e1, e2, s1, s2);
  add(
    'Grundpreis im Jahr, der sich ändert, unter einer Tabelle der Stände',
    DE,
    `
Stadtwerke Uhlenbek
Erdgas-Jahresabrechnung
Abrechnungszeitraum: 01.01.2025 - 31.12.2025
von           bis           Stand alt   Stand neu   m³    Zustandszahl   Brennwert   kWh
01.01.2025    30.09.2025        2.590       2.984   394         0,9661      11,424   4.348
01.10.2025    31.12.2025        2.984       3.357   373         0,9661      11,424   4.117
Arbeitspreis ab 01.01.2025      4.348 kWh     6,44 ct/kWh      ${de(e1)} €
Arbeitspreis ab 01.10.2025      4.117 kWh     9,60 ct/kWh      ${de(e2)} €
Grundpreis ab 01.01.2025         273 Tage   171,28 €/Jahr      ${de(s1)} €
Grundpreis ab 01.10.2025          92 Tage   132,30 €/Jahr      ${de(s2)} €
Summe netto                                                    ${de(net)} €
Umsatzsteuer 19 %                                              ${de(share(19, net))} €
Summe brutto                                                   ${de(net + share(19, net))} €
`,
    ['gas', '2025-01-01', '2026-01-01', 8465, net + share(19, net)],
  );
}
{
  const [day, night, fixed] = [times(363, 28.67), times(410, 18.52), times(61, 79.44)];
  const net = sum(day, night, fixed, 646);
  add(
    'days counted right before the first of them, and a levy by the month',
    'Europe/Dublin',
    `
Sliabh Power
Electricity: 61 days, 08 May 2025 to 07 Jul 2025
Day energy               363 kWh     €0.2867      €${en(day)}
Night energy             410 kWh     €0.1852      €${en(night)}
Urban standing charge    61 days     €0.7944      €${en(fixed)}
PSO levy                 2 months      €3.23        €6.46
Net charges                                       €${en(net)}
VAT                      9%                       €${en(share(9, net))}
Total this bill                                   €${en(net + share(9, net))}
`,
    ['electricity', '2025-05-08', '2025-07-08', 773, net + share(9, net)],
  );
}

{
  const [e1, e2] = [times(1289, 23.02), times(1787, 21.2)];
  const [s1, s2] = [times(153, 44.1), times(212, 51.6)];
  const net = sum(e1, e2, s1, s2);
  add(
    'until and from a day, under a name that is another fuel, with shares beside the days',
    UK,
    `
Merlewick Gas & Power
Electricity, 1 May 2024 to 30 April 2025; 60% home, 40% workshop
Until 30 Sep 2024               1289 kWh   23.02p     ${gb(e1)}
From 1 Oct 2024                 1787 kWh   21.20p     ${gb(e2)}
All energy                      3076 kWh              ${gb(e1 + e2)}
Standing charge until 30 Sep 2024   153 days   44.10p      ${gb(s1)}
Standing charge from 1 Oct 2024     212 days   51.60p     ${gb(s2)}
Net                                                   ${gb(net)}
VAT                             5%                    ${gb(share(5, net))}
Total                                                 ${gb(net + share(5, net))}
`,
    ['electricity', '2024-05-01', '2025-05-01', 3076, net + share(5, net)],
  );
}

{
  const [use, fixed] = [times(1137, 20.06), times(30, 59.36)];
  const net = use + fixed;
  add(
    'a column for each charge, for the sum before tax, the tax and the total',
    UK,
    `
Ashgill Electric
Electricity bill, 03/06/2026 - 02/07/2026
              Usage     Standing charge         Net        VAT       Total
How much   1137 kWh             30 days                     5%
Price        20.06p              59.36p
Amount      ${gb(use)}              ${gb(fixed)}     ${gb(net)}     ${gb(share(5, net))}     ${gb(net + share(5, net))}
`,
    ['electricity', '2026-06-03', '2026-07-03', 1137, net + share(5, net)],
  );
}
{
  const [use, fixed] = [times(656, 29.78), times(31, 45.4)];
  const gross = (pence: number) => en(pence + share(5, pence));
  add(
    'tax and gross beside each charge, the rate below',
    UK,
    `
Ashgill Electricity
Electricity bill, 21 May 2024 to 20 June 2024
Charge             Quantity      Price      Excl VAT         VAT      Incl VAT
Electricity         656 kWh     29.78p      ${en(use)}        ${en(share(5, use))}        ${gross(use)}
Standing charge     31 days     45.40p       ${en(fixed)}        ${en(share(5, fixed))}         ${gross(fixed)}
Total                                       ${en(use + fixed)}       ${en(share(5, use + fixed))}        ${gross(use + fixed)}
VAT rate 5%
`,
    ['electricity', '2024-05-21', '2024-06-21', 656, use + fixed + share(5, use + fixed)],
  );
}
{
  const [use, fixed] = [times(1551, 26.06), times(92, 60.46)];
  const net = use + fixed;
  add(
    'sums without a sign of money right below a column of kWh, and a credit named before them',
    UK,
    `
Cobblemoor Energy
Your electricity bill for 3 July 2024 to 2 October 2024
Register                Then      Now   kWh used
All day                 5426     6977       1551
Day units           1551 kWh   26.06p     ${en(use)}
Standing charge      92 days   60.46p      ${en(fixed)}
Before VAT                                ${en(net)}
VAT                       5%               ${en(share(5, net))}
Total for the quarter                     ${en(net + share(5, net))}
Your credit before this bill              600.00 CR
`,
    ['electricity', '2024-07-03', '2024-10-03', 1551, net + share(5, net)],
  );
}

export const SET_BILLS: readonly SetBill[] = [...bills, ...PLAIN_BILLS];
