import { ChartFigure } from '../../charts/figure.tsx';
import { RangesPicture } from '../../charts/ranges/picture.tsx';
import { factorsName } from '../../charts/ranges/sentence.ts';
import { FACTOR_SCALE, factorRows } from '../../charts/ranges/series.ts';
import { factorTable } from '../../charts/ranges/table.ts';
import { extrasWorking, fieldWorking } from '../../words/explained/field.ts';
import { rangedWorking } from '../../words/explained/ranged.ts';
import { designedSentence, fieldSentence } from '../../words/machine.ts';
import { say } from '../../words/say.ts';
import { sayTold } from '../../words/say-told.ts';
import { useHousehold } from '../household-context.tsx';
import { HowWeKnow } from '../shared/how-we-know.tsx';

/** The figure of this machine inside what was measured elsewhere. */
export function FactorFigure() {
  const { machine } = useHousehold().appraisal;
  const { fieldSpread } = machine;
  return (
    <ChartFigure
      name={factorsName()}
      sentence={fieldSentence(machine)}
      picture={<RangesPicture rows={factorRows(machine)} scale={FACTOR_SCALE} size="desk" />}
      known={
        <HowWeKnow
          find={() => [rangedWorking(machine.whole), fieldWorking(machine), extrasWorking(machine)]}
          about={say('Seasonal factor')}
          plain
        />
      }
      note={[
        designedSentence(machine),
        say('kWh of heat for each kWh bought, over a year, at {boundary}.', { boundary: fieldSpread.boundary }),
        say('Source: {source}', { source: `${sayTold(fieldSpread.source)}.` }),
      ].join(' ')}
      table={factorTable(machine)}
    />
  );
}
