/** Bills of one home go on where the one before left the meter; those of another home or meter seldom do. */
import { compareDates } from '../../model/calendar/civil.ts';
import type { BillMeter } from '../../model/shapes/bill.ts';
import { type Evidence, isUse, type Remark } from '../../model/shapes/evidence.ts';

interface ReadMeter extends BillMeter {
  readonly file: string;
  readonly fuel: string;
  readonly meterUnit: string;
  readonly from: string;
  readonly to: string;
}

/** What stands next to the newest import, before and after it, where the meter did not run on between them. */
export function findOtherMeter(evidence: readonly Evidence[]): Remark[] {
  const newest = evidence.at(-1);
  if (!newest) return [];
  const kept = evidence.slice(0, -1).flatMap(metersOf);
  const steps = metersOf(newest).flatMap((own) => {
    const alike = kept.filter(
      ({ fuel, name, meterUnit }) => fuel === own.fuel && name === own.name && meterUnit === own.meterUnit,
    );
    const before = alike
      .filter(({ to }) => to <= own.from)
      .toSorted((a, b) => compareDates(a.to, b.to))
      .at(-1);
    const after = alike.filter(({ from }) => from >= own.to).toSorted((a, b) => compareDates(a.from, b.from))[0];
    return [
      ...(before ? [{ from: before, to: own, other: before }] : []),
      ...(after ? [{ from: own, to: after, other: after }] : []),
    ];
  });
  return steps
    .filter(({ from, to }) => !runsOn(from, to))
    .slice(0, 1)
    .map(({ from, to, other }) => ({
      code: 'meter-other',
      weight: 'note',
      file: newest.fileName,
      found: other.file,
      expected: `${from.closing} → ${to.opening}`,
    }));
}

/** Records of further meters and those kept aside are of other meters anyway. */
const metersOf = ({ fileName, series }: Evidence): ReadMeter[] =>
  series
    .filter((one) => isUse(one) && one.beside === undefined)
    .flatMap(({ bills = [] }) => bills)
    .flatMap(({ bill: { fuel, meterUnit, from, to, meters } }) =>
      meters.map((meter) => ({ ...meter, file: fileName, fuel, meterUnit, from, to })),
    );

/** Rounding, and a day's use between two bills. A judgement. */
const APART = 0.1;

/** An estimate may be put right downwards, and a counter that is full begins again. */
function runsOn(before: ReadMeter, after: ReadMeter): boolean {
  const { closing, opening: first } = before;
  const { opening } = after;
  if (closing === undefined || opening === undefined) return true;
  if (before.closingKind === 'estimated' || after.openingKind === 'estimated') return true;
  const full = 10 ** Math.ceil(Math.log10(Math.max(10, closing)));
  if (opening < closing) return closing > full * 0.9 && opening < full * 0.1;
  return before.to !== after.from || opening - closing <= APART * (closing - (first ?? closing)) + 1;
}
