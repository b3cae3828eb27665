import { ChartFigure } from '../../charts/figure.tsx';
import { TwentyPicture } from '../../charts/twenty/picture.tsx';
import { TWENTY_NAME, twentySentence } from '../../charts/twenty/sentence.ts';
import { twentyTable } from '../../charts/twenty/table.ts';
import type { Appraisal } from '../../model/appraisal/appraisal.ts';
import { findSideBySide } from '../../model/appraisal/beside.ts';
import { dotsSentence, driversSentence } from '../../words/sure.ts';
import { systemInSentence } from '../../words/systems.ts';

export function TwentyFigure({ appraisal }: { readonly appraisal: Appraisal }) {
  const { versus, beside } = findSideBySide(appraisal);
  if (!versus || !beside) return null;
  return (
    <section>
      <ChartFigure
        name={TWENTY_NAME}
        sentence={twentySentence(versus.twenty)}
        picture={<TwentyPicture savingsPence={versus.twenty} size="desk" height={270} />}
        table={twentyTable(versus.twenty)}
        note={`Against ${systemInSentence(beside.id, beside.kind)}. ${dotsSentence()} ${driversSentence(appraisal.drivers)}`}
      />
    </section>
  );
}
