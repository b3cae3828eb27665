/** A bill while it is typed: any figure may still be missing. */

import type { CheckedBill } from '../../model/bill/check-bill-sums.ts';
import { addDays, daysBetween } from '../../model/calendar/civil.ts';
import type { Bill, BillAdjustment, BillMeter, MeterUnit } from '../../model/shapes/bill.ts';
import type { EvidencePeriod } from '../../model/shapes/evidence.ts';
import { knownNumbers } from '../../model/units/known-numbers.ts';
import { counted, daySpan } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { readDate } from '../shared/date-text.ts';

/** One register with its readings, units and price; `from` is a day inside the bill where a later price begins. */
export interface LineDraft {
  readonly name: string;
  readonly from: string;
  readonly opening?: number | undefined;
  readonly closing?: number | undefined;
  /** In the meter's unit, where no readings are printed. */
  readonly metered?: number | undefined;
  readonly estimated: boolean;
  readonly kWh?: number | undefined;
  readonly pencePerKWh?: number | undefined;
  readonly pounds?: number | undefined;
  readonly ownKWh?: number | undefined;
}
export interface StandingDraft {
  readonly from: string;
  readonly days?: number | undefined;
  readonly pencePerDay?: number | undefined;
  readonly pounds?: number | undefined;
}
export interface AdjustmentDraft {
  readonly kind: BillAdjustment['kind'];
  readonly name: string;
  readonly pounds?: number | undefined;
  readonly vat: BillAdjustment['vat'];
}
export interface BillDraft {
  readonly fuel: Bill['fuel'];
  readonly from: string;
  readonly lastDay: string;
  readonly meterUnit: MeterUnit;
  readonly correction?: number | undefined;
  readonly calorific?: number | undefined;
  readonly lines: readonly LineDraft[];
  readonly standing: readonly StandingDraft[];
  readonly adjustments: readonly AdjustmentDraft[];
  readonly vatIncluded: boolean;
  readonly vatPercent: string;
  readonly vatPounds?: number | undefined;
  readonly netPounds?: number | undefined;
  readonly totalPounds?: number | undefined;
}

export const lineNamed = (name: string): LineDraft => ({ name, from: '', estimated: false });

export function emptyBill(fuel: Bill['fuel']): BillDraft {
  return {
    fuel,
    from: '',
    lastDay: '',
    meterUnit: fuel === 'gas' ? 'm³' : 'kWh',
    lines: [lineNamed(fuel === 'gas' ? 'gas' : 'all hours')],
    standing: [{ from: '' }],
    adjustments: [],
    vatIncluded: false,
    vatPercent: '5',
  };
}

/** A further line on the same register, for the price that holds from a later day on. */
export const laterLine = (line: LineDraft): LineDraft => lineNamed(line.name);

export type BillReading =
  | { readonly kind: 'whole'; readonly bill: Bill; readonly days: number }
  | { readonly kind: 'wanting'; readonly sentences: readonly string[] };

/** The bill for the model, or what is still missing, as sentences. */
export function readBill(draft: BillDraft): BillReading {
  const missing = findMissing(draft);
  if (missing.length > 0) return { kind: 'wanting', sentences: missing };
  const { from } = draft;
  const to = addDays(draft.lastDay, 1);
  const names = [...new Set(draft.lines.map(({ name }) => name.trim()))];
  const bill: Bill = {
    fuel: draft.fuel,
    from,
    to,
    meterUnit: draft.meterUnit,
    ...knownNumbers({ correction: draft.correction, calorificMJPerM3: draft.calorific }),
    meters: names.map((name) => meterOf(name, draft)),
    charges: draft.lines.map((line, i) => ({
      meter: line.name.trim(),
      ...spanOf(
        line.from,
        laterOf(draft.lines, i, (one) => one.name === line.name),
        from,
        to,
      ),
      ...knownNumbers({ kWh: line.kWh, pencePerKWh: line.pencePerKWh, pence: pennies(line.pounds) }),
    })),
    standing: draft.standing
      .filter((line) => line.pencePerDay !== undefined || line.pounds !== undefined)
      .map((line, i) => ({
        ...spanOf(
          line.from,
          laterOf(draft.standing, i, () => true),
          from,
          to,
        ),
        ...knownNumbers({ days: line.days, pencePerDay: line.pencePerDay, pence: pennies(line.pounds) }),
      })),
    adjustments: draft.adjustments.flatMap(({ kind, name, pounds, vat }) =>
      pounds === undefined ? [] : [{ kind, name: name.trim() || say(kind), pence: pennies(pounds)!, vat }],
    ),
    vat: {
      included: draft.vatIncluded,
      rate: Number(draft.vatPercent) / 100,
      ...knownNumbers({ pence: pennies(draft.vatPounds) }),
    },
    ...knownNumbers({ netPence: pennies(draft.netPounds), totalPence: pennies(draft.totalPounds) }),
  };
  return { kind: 'whole', bill, days: daysBetween(from, to) };
}

function meterOf(name: string, { lines }: BillDraft): BillMeter {
  const own = lines.filter((line) => line.name.trim() === name);
  const first = own[0]!;
  const printed = own.map(({ kWh }) => kWh);
  const whole = printed.every((kWh) => kWh !== undefined);
  return {
    name,
    ...knownNumbers({
      opening: first.opening,
      closing: first.closing,
      metered: first.metered,
      kWh: whole ? printed.reduce((sum: number, kWh) => sum + kWh!, 0) : undefined,
      ownKWh: first.ownKWh,
    }),
    closingKind: first.estimated ? 'estimated' : 'actual',
  };
}

/** The first day of the next line of the same kind that has one. */
function laterOf<T extends { readonly from: string }>(lines: readonly T[], at: number, isSame: (line: T) => boolean) {
  return lines.slice(at + 1).find((line) => line.from !== '' && isSame(line))?.from;
}

function spanOf(begins: string, ends: string | undefined, from: string, to: string) {
  if (begins === '' && ends === undefined) return {};
  return { from: begins === '' ? from : begins, to: ends ?? to };
}

function findMissing(draft: BillDraft): string[] {
  const missing: string[] = [];
  const isDay = (text: string) => readDate(text).kind === 'day';
  if (!isDay(draft.from)) missing.push(say('Type the first day of the bill.'));
  if (!isDay(draft.lastDay)) missing.push(say('Type the last day of the bill.'));
  if (isDay(draft.from) && isDay(draft.lastDay)) {
    const days = daysBetween(draft.from, draft.lastDay) + 1;
    if (days <= 0) missing.push(say('The last day is before the first. Correct one of them.'));
    if (days > MOST_DAYS)
      missing.push(say('This is {days}. Take a long bill in parts.', { days: counted(days, 'day') }));
    for (const { from } of [...draft.lines, ...draft.standing]) {
      if (from !== '' && !(isDay(from) && from > draft.from && from <= draft.lastDay)) {
        missing.push(say('A later price must begin on a day inside the bill.'));
      }
    }
  }
  for (const name of new Set(draft.lines.map((line) => line.name.trim()))) {
    const own = draft.lines.filter((line) => line.name.trim() === name);
    const said = { lines: draft.lines.length > 1 ? 'several' : 'one', name };
    if (name === '') missing.push(say('Give each register a name, as it stands on the bill.'));
    const [first] = own;
    const read = (first!.opening !== undefined && first!.closing !== undefined) || first!.metered !== undefined;
    const units = own.every(({ kWh }) => kWh !== undefined) || first!.ownKWh !== undefined;
    if (!read && !units)
      missing.push(say('Type both readings, or the kWh{lines, select, one {} other { of {name}}}.', said));
    if (own.some(({ pencePerKWh }) => pencePerKWh === undefined))
      missing.push(say('Type the price per kWh{lines, select, one {} other { of {name}}}.', said));
  }
  return [...new Set(missing)];
}
const MOST_DAYS = 800;

const pennies = (pounds: number | undefined) => (pounds === undefined ? undefined : Math.round(pounds * 100));

/** The bill as typed evidence: the units that it should have charged, and the money that it asks. */
export function periodOf(bill: Bill, checked: CheckedBill) {
  const kWh = checked.rows.reduce((sum, { kind, reckoned }) => sum + (kind === 'energy' ? reckoned : 0), 0);
  const isEstimated = bill.meters.some(
    ({ closingKind, ownKWh }) => closingKind === 'estimated' && ownKWh === undefined,
  );
  const period: EvidencePeriod = {
    from: bill.from,
    to: bill.to,
    kWh,
    costPence: checked.printedPence ?? checked.reckonedPence,
    quality: isEstimated ? 'estimated' : 'actual',
  };
  const name = say('{fuel, select, gas {Gas} other {Electricity}} bill, {days}', {
    fuel: bill.fuel,
    days: daySpan(bill.from, addDays(bill.to, -1)),
  });
  return { name, carrier: bill.fuel, role: 'import' as const, periods: [period] };
}
