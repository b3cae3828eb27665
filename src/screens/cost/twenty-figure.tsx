import { ChartFigure } from '../../charts/figure.tsx';
import { TwentyPicture } from '../../charts/twenty/picture.tsx';
import { twentyName, twentySentence } from '../../charts/twenty/sentence.ts';
import { twentyTable } from '../../charts/twenty/table.ts';
import { findSideBySide } from '../../model/comparison/beside.ts';
import type { Appraisal } from '../../model/shapes/appraisal.ts';
import { rangedWorking } from '../../words/explained/ranged.ts';
import { say } from '../../words/say.ts';
import { dotsSentence, driversSentence } from '../../words/sure.ts';
import { systemInSentence } from '../../words/systems.ts';
import { HowWeKnow } from '../shared/how-we-know.tsx';

export function TwentyFigure({ appraisal }: { readonly appraisal: Appraisal }) {
  const { versus, beside } = findSideBySide(appraisal);
  if (!versus || !beside) return null;
  return (
    <section>
      <ChartFigure
        name={twentyName()}
        sentence={twentySentence(versus.twenty)}
        picture={<TwentyPicture savingsPence={versus.twenty} size="desk" height={270} />}
        table={twentyTable(versus.twenty)}
        known={<HowWeKnow find={() => [rangedWorking(versus.saving)]} about={twentyName()} plain />}
        note={[
          say('Compared with {other}.', { other: systemInSentence(beside.id, beside.kind) }),
          dotsSentence(),
          driversSentence(appraisal.drivers),
        ].join(' ')}
      />
    </section>
  );
}
