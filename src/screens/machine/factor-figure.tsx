import { ChartFigure } from '../../charts/figure.tsx';
import type { MachineResult } from '../../model/appraisal/appraisal.ts';
import { extrasWorking, fieldWorking } from '../../model/explained/field.ts';
import { rangedWorking } from '../../model/explained/ranged.ts';
import { fieldSentence, leanSentence } from '../../words/machine.ts';
import { factor } from '../../words/numbers.ts';
import { useHousehold } from '../household-context.tsx';
import { HowWeKnow } from '../shared/how-we-know.tsx';
import type { RangeRow } from '../shared/ranges/layout.ts';
import { RangesPicture } from '../shared/ranges/picture.tsx';

export function factorRows(machine: MachineResult): RangeRow[] {
  const { whole, fieldSpread } = machine;
  const range = (low: number, high: number) => `${factor(low)} to ${factor(high)}`;
  return [
    {
      name: 'This machine, all counted',
      kind: 'pump',
      grade: whole.grade,
      low: whole.low,
      middle: whole.value,
      high: whole.high,
      label: factor(whole.value),
      range: range(whole.low, whole.high),
    },
    {
      name: 'Measured in other homes',
      kind: 'beside',
      grade: 'measured',
      low: fieldSpread.low,
      middle: fieldSpread.middle,
      high: fieldSpread.high,
      label: factor(fieldSpread.middle),
      range: range(fieldSpread.low, fieldSpread.high),
    },
  ];
}

/** The figure of this machine inside what was measured elsewhere. */
export function FactorFigure() {
  const { machine } = useHousehold().appraisal;
  const rows = factorRows(machine);
  const { fieldSpread } = machine;
  return (
    <ChartFigure
      name="Seasonal factor beside field trials"
      sentence={fieldSentence(machine)}
      picture={<RangesPicture rows={rows} tickLabel={(value) => factor(value)} smallestStep={0.5} />}
      known={
        <HowWeKnow
          find={() => [rangedWorking(machine.whole), fieldWorking(machine), extrasWorking(machine)]}
          about="Seasonal factor"
          plain
        />
      }
      note={`${leanSentence(machine)} Units of heat for each unit bought, over a year, at ${fieldSpread.boundary}. Source: ${fieldSpread.source}.`}
      table={{
        caption: `Seasonal factor at ${fieldSpread.boundary}. 8 cases in 10 lie between low and high.`,
        columns: [
          { name: 'What' },
          { name: 'As reckoned', number: true },
          { name: 'Low', number: true },
          { name: 'High', number: true },
        ],
        rows: rows.map((row) => ({
          cells: [row.name, ...[row.middle, row.low, row.high].map((value) => value.toFixed(2))],
          ours: row.kind === 'pump',
        })),
      }}
    />
  );
}
