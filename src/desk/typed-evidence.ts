/** Bills, readings or deliveries typed at the table, as evidence. */

import { toDayNumber } from '../model/calendar/civil.ts';
import type { Carrier, Evidence, EvidencePeriod, SeriesRole } from '../model/shapes/evidence.ts';
import { sumOf } from '../model/units/sums.ts';
import { say } from '../words/say.ts';
import { DeskError } from './desk-error.ts';
import { hashOf } from './hash.ts';

export interface TypedInput {
  readonly householdId: string;
  readonly name: string;
  readonly carrier: Carrier;
  readonly role: SeriesRole;
  readonly periods: readonly EvidencePeriod[];
}

const rowName = (row: number) => say('row {row}', { row: String(row) });

/** Refuses periods that end before they begin or that count a day twice. */
function refuseImpossible(periods: readonly EvidencePeriod[]): void {
  const spans = periods.map((period, i) => ({
    ...period,
    row: i + 1,
    start: toDayNumber(period.from),
    end: toDayNumber(period.to),
  }));
  for (const { row, from, to, start, end } of spans) {
    if (end > start) continue;
    throw new DeskError({
      code: 'period-backwards',
      message: say('The period from {from} to {to} has no days; the second date is the first day after it.', {
        from,
        to,
      }),
      where: rowName(row),
      remedy: say('Correct one of the two dates.'),
    });
  }
  const inOrder = spans.toSorted((a, b) => a.start - b.start);
  for (let i = 1; i < inOrder.length; i++) {
    const [before, after] = [inOrder[i - 1]!, inOrder[i]!];
    if (after.start >= before.end) continue;
    throw new DeskError({
      code: 'periods-overlap',
      message: say(
        'The days from {from} on would count twice: they are in the period from {earlier} to {earlierEnd} and in the one from {from} to {to}.',
        { from: after.from, to: after.to, earlier: before.from, earlierEnd: before.to },
      ),
      where: rowName(after.row),
      remedy: say('Correct the dates. The end of a period is the first day after it.'),
    });
  }
}

export function typeEvidence(input: TypedInput, importedOn: string, newId: () => string): Evidence {
  refuseImpossible(input.periods);
  const periods = input.periods.toSorted((a, b) => (a.from < b.from ? -1 : 1));
  const isTemperature = input.carrier === 'outdoor-temperature';
  const days = periods.map(({ from, to }) => toDayNumber(to) - toDayNumber(from));
  const sum = periods.reduce((total, { kWh }, i) => total + kWh * (isTemperature ? days[i]! : 1), 0);
  const evidenceId = newId();
  return {
    id: evidenceId,
    householdId: input.householdId,
    fileName: input.name,
    importedOn,
    sha256: hashOf(new TextEncoder().encode(JSON.stringify({ ...input, householdId: undefined, periods }))),
    shape: 'typed',
    remarks: [],
    series: [
      {
        id: newId(),
        evidenceId,
        name: input.name,
        carrier: input.carrier,
        role: input.role,
        resolution: 'period',
        from: periods[0]!.from,
        to: periods.at(-1)!.to,
        total: isTemperature ? sum / sumOf(days) : sum,
        periods,
        present: periods.length,
        expected: periods.length,
        estimatedCount: periods.filter(({ quality }) => quality === 'estimated').length,
      },
    ],
  };
}
