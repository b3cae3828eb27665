/** Bills on paper of invented suppliers, as PDF: sums worked out here, words set line under line. */
import { encodePng } from '../src/intake/paper/png.ts';
import { asJpeg, drawPage, flatView } from './draw-page.ts';
import { seeded } from './made-weather.ts';
import { A4, type PlacedText, widthOf, writePdf } from './write-pdf.ts';

type Line = readonly [label: string, amount?: string];
const SIZE = 10;

function setPage(lines: readonly Line[]): PlacedText[] {
  return lines.flatMap(([label, amount], i): PlacedText[] => {
    const y = 60 + i * SIZE * 1.9;
    const bold = i === 0;
    return [
      { text: label, x: 60, y, size: SIZE, bold },
      ...(amount === undefined
        ? []
        : [{ text: amount, x: A4.width - 90 - widthOf(amount, SIZE), y, size: SIZE, bold }]),
    ];
  });
}

const pounds = (pence: number): string =>
  `${pence < 0 ? '-' : ''}£${(Math.abs(pence) / 100).toLocaleString('en-GB', { minimumFractionDigits: 2 })}`;
const euro = (cents: number): string => `${(cents / 100).toLocaleString('de-DE', { minimumFractionDigits: 2 })} €`;
const count = (value: number, locale = 'en-GB'): string => value.toLocaleString(locale);
/** Hundredths for so many at a price given in thousandths of a hundredth. */
const at = (units: number, thousandths: number): number => Math.floor((units * thousandths + 500) / 1000);
const share = (sum: number, percent: number): number => Math.floor((sum * percent + 50) / 100);

const HEAD: readonly Line[] = [
  ['Mr and Mrs A. Sample'],
  ['12 Orchard Row, Little Wending'],
  ['Account number 88123456'],
  [''],
];

/** Two rates, and new prices from 1 October on. */
function twoRates(): Line[] {
  const parts = [
    ['Day units 1 August to 30 September 2026: 212 kWh at 31.20 p', at(212, 31_200)],
    ['Night units 1 August to 30 September 2026: 148 kWh at 12.90 p', at(148, 12_900)],
    ['Day units 1 October to 31 October 2026: 655 kWh at 29.85 p', at(655, 29_850)],
    ['Night units 1 October to 31 October 2026: 431 kWh at 13.40 p', at(431, 13_400)],
    ['Standing charge 1 August to 30 September 2026: 61 days at 54.20 p', at(61, 54_200)],
    ['Standing charge 1 October to 31 October 2026: 31 days at 56.10 p', at(31, 56_100)],
  ] as const;
  const net = parts.reduce((sum, [, pence]) => sum + pence, 0);
  const vat = share(net, 5);
  return [
    ['Marrow & Tine Energy'],
    ...HEAD,
    ['Statement from 1 August 2026 to 31 October 2026'],
    ['Electricity, two rates'],
    ['Day, earlier reading, actual', count(41_902)],
    ['Day, later reading, actual', count(42_769)],
    ['Day, used', '867 kWh'],
    ['Night, earlier reading, actual', count(18_330)],
    ['Night, later reading, actual', count(18_909)],
    ['Night, used', '579 kWh'],
    ...parts.map(([label, pence]): Line => [label, pounds(pence)]),
    ['Total before VAT', pounds(net)],
    [`VAT at 5 % on ${pounds(net)}`, pounds(vat)],
    ['Charges of this statement', pounds(net + vat)],
    ['Your monthly payments, 3 of £95.00', pounds(-28_500)],
  ];
}

/** Gas by volume: 1.02264 and the calorific value make energy of it. */
function gasBill(): Line[] {
  const kWh = Math.round((318 * 1.02264 * 39.4) / 3.6);
  const [use, standing] = [at(kWh, 6340), at(92, 31_430)];
  const net = use + standing;
  const vat = share(net, 5);
  return [
    ['Fennel Supply'],
    ...HEAD,
    ['Gas bill for the period 1 March 2026 to 31 May 2026'],
    ['Gas meter reading at the start, estimated', count(20_318)],
    ['Gas meter reading at the end, actual', count(20_636)],
    ['Gas volume used', '318 m³'],
    ['Volume correction factor', '1.02264'],
    ['Calorific value', '39.4 MJ/m³'],
    [`Gas used: ${count(kWh)} kWh at 6.34 p`, pounds(use)],
    ['Standing charge: 92 days at 31.43 p', pounds(standing)],
    ['Subtotal', pounds(net)],
    ['VAT at 5 %', pounds(vat)],
    ['Total charges for this bill', pounds(net + vat)],
  ];
}

/** A German yearly bill with its instalments. */
function yearlyBill(): Line[] {
  const [use, standing] = [at(3412, 33_250), at(365, 38_900)];
  const net = use + standing;
  const vat = share(net, 19);
  const paid = 11 * 11_800;
  return [
    ['Stadtwerke Tannfurt'],
    ['Frau Ilse Beispiel'],
    ['Birkenweg 7, 99111 Musterstadt'],
    ['Kundennummer 40117733'],
    [''],
    ['Jahresabrechnung Strom'],
    ['Abrechnungszeitraum 01.01.2025 bis 31.12.2025'],
    ['Zählerstand alt, abgelesen', count(28_114, 'de-DE')],
    ['Zählerstand neu, abgelesen', count(31_526, 'de-DE')],
    ['Verbrauch', `${count(3412, 'de-DE')} kWh`],
    [`Arbeitspreis: ${count(3412, 'de-DE')} kWh zu 33,250 ct/kWh`, euro(use)],
    ['Grundpreis: 365 Tage zu 38,900 ct/Tag', euro(standing)],
    ['Nettobetrag', euro(net)],
    ['Umsatzsteuer 19 %', euro(vat)],
    ['Bruttobetrag', euro(net + vat)],
    ['Geleistete Abschläge', `-${euro(paid)}`],
    [net + vat < paid ? 'Guthaben' : 'Nachzahlung', euro(Math.abs(net + vat - paid))],
    ['Neuer Abschlag ab Februar 2026, monatlich', euro(11_500)],
  ];
}

/** An estimated reading, and the bill after it that begins where the estimate stood and ends with a reading. */
function estimatedBill(
  from: string,
  to: string,
  days: number,
  readings: readonly [number, string, number, string],
): Line[] {
  const [opening, openingKind, closing, closingKind] = readings;
  const used = closing - opening;
  const [use, standing] = [at(used, 26_700), at(days, 51_000)];
  const net = use + standing;
  const vat = share(net, 5);
  return [
    ['Hollow Lane Power'],
    ...HEAD,
    [`Electricity bill for ${from} to ${to}`],
    [`Earlier reading, ${openingKind}`, count(opening)],
    [`Later reading, ${closingKind}`, count(closing)],
    ['Units used', `${count(used)} kWh`],
    [`Units: ${count(used)} kWh at 26.70 p per kWh`, pounds(use)],
    [`Standing charge: ${days} days at 51.00 p per day`, pounds(standing)],
    [`VAT at 5 % on ${pounds(net)}`, pounds(vat)],
    ['Total of this bill', pounds(net + vat)],
  ];
}

/** A discount before VAT, a credit after it, and an account that was in credit. */
function creditBill(): Line[] {
  const [use, standing] = [at(702, 24_910), at(91, 48_370)];
  const net = use + standing - 1500;
  const vat = share(net, 5);
  const total = net + vat - 6700;
  return [
    ['Marrow & Tine Energy'],
    ...HEAD,
    ['Statement from 1 April 2026 to 30 June 2026'],
    ['Electricity'],
    ['Units: 702 kWh at 24.91 p per kWh', pounds(use)],
    ['Standing charge: 91 days at 48.37 p per day', pounds(standing)],
    ['Loyalty discount', pounds(-1500)],
    ['Subtotal', pounds(net)],
    ['VAT at 5 %', pounds(vat)],
    ['Cold weather credit', pounds(-6700)],
    ['Total charges for this statement', pounds(total)],
    ['Balance from your last bill, in credit', pounds(-12_040)],
    [total < 12_040 ? 'Still in credit' : 'Amount due', pounds(Math.abs(total - 12_040))],
  ];
}

/** Name and bytes of each. */
export const PAPERS: readonly (readonly [name: string, bytes: Uint8Array])[] = [
  ['two-rates-new-price.pdf', writePdf([setPage(twoRates())])],
  ['gas.pdf', writePdf([setPage(gasBill())])],
  ['jahresabrechnung.pdf', writePdf([setPage(yearlyBill())])],
  [
    'estimated-autumn.pdf',
    writePdf([setPage(estimatedBill('1 September 2025', '30 November 2025', 91, [6120, 'actual', 6890, 'estimated']))]),
  ],
  [
    'put-right-winter.pdf',
    writePdf([setPage(estimatedBill('1 December 2025', '28 February 2026', 90, [6890, 'estimated', 7713, 'actual']))]),
  ],
  ['credit.pdf', writePdf([setPage(creditBill())])],
];

/** Bills as a scanner and a telephone see them: the gas bill laid on a scanner a little askew, the other on a table in slanting light. */
export function drawPictures(): (readonly [name: string, bytes: Uint8Array])[] {
  const random = seeded(20_261_129);
  const flat = flatView(150, random);
  const askew = [
    [14, -9],
    [flat.width + 9, 13],
    [flat.width - 14, flat.height + 9],
    [-9, flat.height - 13],
  ] as const;
  const scan = drawPage(setPage(gasBill()), { ...flat, corners: askew, noise: 3 });
  const photo = drawPage(setPage(twoRates()), {
    width: 1500,
    height: 2000,
    corners: [
      [170, 160],
      [1330, 110],
      [1400, 1850],
      [95, 1880],
    ],
    shade: 0.4,
    light: 0.8,
    noise: 6,
    blur: 0,
    random,
  });
  return [
    ['gas-scan.png', encodePng(scan)],
    ['two-rates-photo.jpg', asJpeg(photo, 75)],
  ];
}
