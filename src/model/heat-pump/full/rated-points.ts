/** What a machine does between the points of its data sheet: Carnot fraction and output over source and flow. */
import { meanOf } from '../../units/sums.ts';
import { carnotCop } from '../water-ratio.ts';

/** No machine lifts by less inside, however near source and flow lie, K. A judgement. */
export const LEAST_LIFT_K = 15;

/** Carnot's limit [1] between source and flow [°C]; below a lift of 15 K the machine condenses warmer than it need. */
export const carnotLimit = (sourceC: number, flowC: number): number =>
  carnotCop(Math.max(flowC, sourceC + LEAST_LIFT_K), sourceC);

/** A value known at some points of source and flow. */
export interface KnownValue {
  readonly sourceC: number;
  readonly flowC: number;
  readonly value: number;
}

interface Row {
  readonly flowC: number;
  readonly sourceC: readonly number[];
  readonly value: readonly number[];
}

/**
 * A value [same unit] over source and flow [°C] through every known point.
 * The flow with most points gives the run over the source; the other flows follow that run, lifted or lowered to pass
 * through their own points; between flows it goes straight, beyond the outer points it stays.
 */
export function throughPoints(points: readonly KnownValue[]): (sourceC: number, flowC: number) => number {
  const rows = rowsOf(points);
  const base = rows.reduce((most, row) => (row.sourceC.length > most.sourceC.length ? row : most));
  const shifts = rows.map((row) => ({
    ...row,
    value: row.value.map((value, i) => value / alongRow(base, row.sourceC[i]!)),
  }));
  const flows = rows.map(({ flowC }) => flowC);
  return (sourceC, flowC) => {
    const shift = between(flows, (i) => alongRow(shifts[i]!, sourceC), flowC);
    return alongRow(base, sourceC) * shift;
  };
}

function rowsOf(points: readonly KnownValue[]): Row[] {
  const flows = [...new Set(points.map(({ flowC }) => flowC))].sort((a, b) => a - b);
  return flows.map((flowC) => {
    const same = points.filter((point) => point.flowC === flowC);
    const sources = [...new Set(same.map(({ sourceC }) => sourceC))].sort((a, b) => a - b);
    const meanAt = (sourceC: number) =>
      meanOf(same.filter((point) => point.sourceC === sourceC).map(({ value }) => value));
    return { flowC, sourceC: sources, value: sources.map(meanAt) };
  });
}

const alongRow = (row: Row, sourceC: number) => between(row.sourceC, (i) => row.value[i]!, sourceC);

/** Straight between the places, the end value beyond them. */
function between(places: readonly number[], value: (i: number) => number, at: number): number {
  const last = places.length - 1;
  if (at <= places[0]!) return value(0);
  if (at >= places[last]!) return value(last);
  let i = 0;
  while (at > places[i + 1]!) i++;
  const share = (at - places[i]!) / (places[i + 1]! - places[i]!);
  return value(i) + share * (value(i + 1) - value(i));
}
