import { ChartFigure } from '../../charts/figure.tsx';
import { extrasWorking, fieldWorking } from '../../model/explained/field.ts';
import { rangedWorking } from '../../model/explained/ranged.ts';
import type { MachineResult } from '../../model/shapes/appraisal.ts';
import { fieldSentence, leanSentence } from '../../words/machine.ts';
import { factor, grouped } from '../../words/numbers.ts';
import { reword, say } from '../../words/say.ts';
import { useHousehold } from '../household-context.tsx';
import { HowWeKnow } from '../shared/how-we-know.tsx';
import type { RangeRow } from '../shared/ranges/layout.ts';
import { RangesPicture } from '../shared/ranges/picture.tsx';

export function factorRows(machine: MachineResult): RangeRow[] {
  const { whole, fieldSpread } = machine;
  const range = (low: number, high: number) => say('{low} to {high}', { low: factor(low), high: factor(high) });
  return [
    {
      name: say('This machine, all counted'),
      kind: 'pump',
      grade: whole.grade,
      low: whole.low,
      middle: whole.value,
      high: whole.high,
      label: factor(whole.value),
      range: range(whole.low, whole.high),
    },
    {
      name: say('Measured in other homes'),
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
      name={say('Seasonal factor beside field trials')}
      sentence={fieldSentence(machine)}
      picture={<RangesPicture rows={rows} tickLabel={(value) => factor(value)} smallestStep={0.5} />}
      known={
        <HowWeKnow
          find={() => [rangedWorking(machine.whole), fieldWorking(machine), extrasWorking(machine)]}
          about={say('Seasonal factor')}
          plain
        />
      }
      note={[
        leanSentence(machine),
        say('Units of heat for each unit bought, over a year, at {boundary}.', { boundary: fieldSpread.boundary }),
        say('Source: {source}', { source: `${reword(fieldSpread.source)}.` }),
      ].join(' ')}
      table={{
        caption: say('Seasonal factor at {boundary}. 8 cases in 10 lie between low and high.', {
          boundary: fieldSpread.boundary,
        }),
        columns: [
          { name: say('What') },
          { name: say('As reckoned'), number: true },
          { name: say('Low'), number: true },
          { name: say('High'), number: true },
        ],
        rows: rows.map((row) => ({
          cells: [row.name, ...[row.middle, row.low, row.high].map((value) => grouped(value, 2))],
          ours: row.kind === 'pump',
        })),
      }}
    />
  );
}
