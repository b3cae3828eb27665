/** Taxes at several rates under one total: a rate for the home and one for the workshop, or one for each half of a year. */
import { sumOf } from '../../model/units/sums.ts';
import type { Figure, RowFacts } from './figures.ts';
import { type ChargeGroup, grandTotal } from './groups.ts';
import { type Extra, type PaperLine, signedPence } from './lines.ts';
import { isMoney, type Proof, penceOf, printedAs } from './relations.ts';
import { extrasAbout, subsetsOf, type Totals, type TotalsInput, type VatFound, vatRows } from './totals.ts';
import { NET, TOTAL, VAT } from './vocabulary.ts';

interface TaxOnPart extends VatFound {
  readonly basePence: number;
  readonly proof: Proof;
}

/** Parts of that many charges are tried as what a tax is on. */
const MOST_LINES = 9;

/** Each tax on a part of the charges, the parts together all of them, charges and taxes together a printed total. */
export function findSeveralTaxes({ rows, lines, taken }: TotalsInput): Totals | undefined {
  const byLine = taxesByLine({ rows, lines, taken });
  if (byLine) return byLine;
  const vats = vatRows(rows, taken);
  if (new Set(vats.map(({ rate }) => rate.value)).size < 2) return undefined;
  for (const before of subsetsOf(extrasAbout({ rows, lines, taken }, vats))) {
    const found = taxesOnAll({ rows, lines, taken }, before, vats);
    if (found) return found;
  }
  return undefined;
}

/** Beside each charge its tax, in a table with columns for the rate and the tax; charges and taxes together a printed total. */
function taxesByLine({ rows, lines, taken }: TotalsInput): Totals | undefined {
  const taxes = lines.flatMap((line) => taxBeside(line, rows) ?? []);
  if (lines.length < 2 || taxes.length < lines.length) return undefined;
  const netPence = sumOf(lines.map(signedPence));
  const totalPence = netPence + sumOf(taxes.map(({ tax }) => penceOf(tax)));
  const isTax = new Set(taxes.map(({ tax }) => tax));
  const printed = rows.flatMap(({ figures }) =>
    figures.filter((one) => isMoney(one) && !one.negative && !taken.has(one) && !isTax.has(one)),
  );
  const total = printed.find((one) => penceOf(one) === totalPence);
  const net = printed.find((one) => penceOf(one) === netPence);
  if (!total) return undefined;
  const parts = [...lines.map(({ amount }) => amount), ...taxes.map(({ tax }) => tax)];
  const sum = `${parts.map(({ text }) => text).join(' + ')} = ${total.text}`;
  return {
    netPence,
    ...(net ? { net } : {}),
    taxes,
    total,
    totalPence,
    before: [],
    after: [],
    proofs: [
      ...taxes.map(({ proof }) => proof),
      { figures: [...parts, total], sum, bits: Math.log2(totalPence) },
      ...(net
        ? [
            {
              figures: [...lines.map(({ amount }) => amount), net],
              sum: netSum(lines, net.text),
              bits: Math.log2(netPence),
            },
          ]
        : []),
    ],
    confirmed: 3,
  };
}

const netSum = (lines: readonly PaperLine[], net: string): string =>
  `${lines.map(({ amount }) => amount.text).join(' + ')} = ${net}`;

function taxBeside({ amount }: PaperLine, rows: readonly RowFacts[]): TaxOnPart | undefined {
  const inColumn = rows[amount.row]!.figures.filter((one) => one !== amount && VAT.test(one.heading));
  const rates = inColumn.filter(
    (one) => one.value > 0 && one.value <= 30 && (one.kind === 'percent' || /%/.test(one.heading)),
  );
  const basePence = penceOf(amount);
  const found = rates.flatMap((rate) =>
    inColumn
      .filter((tax) => tax !== rate && isMoney(tax))
      .filter((tax) => Math.abs((basePence * rate.value) / 100 - penceOf(tax)) <= 0.5 + 1e-6)
      .map((tax): TaxOnPart => {
        const sum = `${rate.text} % × ${amount.text} = ${tax.text}`.replace('% %', '%');
        const figures = [rate, amount, tax];
        return { included: false, rate, tax, basePence, proof: { figures, sum, bits: Math.log2(penceOf(tax)) + 4 } };
      }),
  );
  return found.length === 1 && !amount.negative ? found[0] : undefined;
}

function taxesOnAll(
  { rows, lines, taken }: TotalsInput,
  before: readonly Extra[],
  vats: readonly VatFound[],
): Totals | undefined {
  const charges = [...lines.map(signedPence), ...before.map(({ pence }) => pence)];
  const all = sumOf(charges);
  const taxes = taxesOnParts(rows, charges, vats);
  for (const [i, one] of taxes.entries()) {
    for (const other of taxes.slice(i + 1)) {
      if (one.tax === other.tax || one.rate.value === other.rate.value || one.basePence + other.basePence !== all)
        continue;
      const totalPence = all + penceOf(one.tax) + penceOf(other.tax);
      const total = rows
        .flatMap(({ figures, words }) => figures.map((figure) => ({ figure, isNamed: TOTAL.test(words) })))
        .filter(
          ({ figure }) => isMoney(figure) && !figure.negative && !taken.has(figure) && penceOf(figure) === totalPence,
        )
        .toSorted((a, b) => Number(b.isNamed) - Number(a.isNamed))[0]?.figure;
      if (!total) continue;
      const own = [...lines.map(({ amount }) => amount), ...before.map(({ figure }) => figure)];
      const parts = [...own, one.tax, other.tax];
      const sumOfParts = (some: readonly Figure[], result: Figure): Proof => {
        const sum = `${some.map(({ text }) => text).join(' + ')} = ${result.text}`;
        return { figures: [...some, result], sum, bits: Math.log2(penceOf(result)) };
      };
      const net = rows
        .flatMap(({ figures, words }) => (NET.test(words) ? figures : []))
        .find((figure) => isMoney(figure) && !figure.negative && !parts.includes(figure) && penceOf(figure) === all);
      const proofs = [one.proof, other.proof, sumOfParts(parts, total), ...(net ? [sumOfParts(own, net)] : [])];
      const found = { netPence: all, ...(net ? { net } : {}), taxes: [one, other], total, totalPence };
      return { ...found, before, after: [], proofs, confirmed: 3 };
    }
  }
  return undefined;
}

function taxesOnParts(rows: readonly RowFacts[], charges: readonly number[], vats: readonly VatFound[]): TaxOnPart[] {
  const sums = partsOf(charges.slice(0, MOST_LINES));
  return vats
    .filter(({ included }) => !included)
    .flatMap(({ rate, tax }) => {
      const printed = rows[tax.row]!.figures.filter((one) => isMoney(one) && one !== tax).map(penceOf);
      const fits = (basePence: number) => Math.abs((basePence * rate.value) / 100 - penceOf(tax)) <= 0.5 + 1e-6;
      const bases = (printed.length > 0 ? printed : sums).filter(fits);
      return [...new Set(bases)].map((basePence): TaxOnPart => {
        const sum = `${rate.text} × ${printedAs(basePence, tax)} = ${tax.text}`;
        return {
          included: false,
          rate,
          tax,
          basePence,
          proof: { figures: [rate, tax], sum, bits: Math.log2(penceOf(tax)) },
        };
      });
    });
}

/** What any of the charges come to together, but none and all. */
function partsOf(charges: readonly number[]): number[] {
  const most = 2 ** charges.length - 1;
  return Array.from({ length: Math.max(0, most - 1) }, (_, i) =>
    sumOf(charges.map((pence, at) => (((i + 1) >> at) & 1 ? pence : 0))),
  );
}

/** Groups of the same days under the one sum of their totals. */
export function joinTotals(groups: readonly ChargeGroup[], rows: readonly RowFacts[]): Totals {
  const all = groups.map(({ totals }) => totals);
  const grand = grandTotal(groups, rows);
  const total = grand?.figures.at(-1);
  return {
    netPence: sumOf(all.map(({ netPence, vat }) => netPence - (vat?.included ? penceOf(vat.tax) : 0))),
    taxes: all.flatMap(({ vat }) => vat ?? []),
    ...(total ? { total } : {}),
    totalPence: sumOf(all.map(({ totalPence }) => totalPence)),
    before: all.flatMap(({ before }) => before),
    after: all.flatMap(({ after }) => after),
    proofs: [...all.flatMap(({ proofs }) => proofs), ...(grand ? [grand] : [])],
    confirmed: all.length,
  };
}
