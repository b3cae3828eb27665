import { ChartFigure } from '../../charts/figure.tsx';
import { SignaturePicture } from '../../charts/signature/picture.tsx';
import { SIGNATURE_NAME, signatureChartSentence } from '../../charts/signature/sentence.ts';
import { signatureSeries } from '../../charts/signature/series.ts';
import { signatureTable } from '../../charts/signature/table.ts';
import type { Signature } from '../../model/appraisal/appraisal.ts';
import { counted, longDate, percent } from '../../words/numbers.ts';
import { lastDayOf } from '../evidence/day-words.ts';

const PERIOD_WORDS: { readonly [period in Signature['period']]: readonly [string, string] } = {
  day: ['day', 'days'],
  month: ['month', 'months'],
  period: ['bill', 'bills'],
};

/** The line laid through the record: use against the weather. */
export function SignatureFigure(props: { readonly signature: Signature }) {
  const { signature } = props;
  const series = signatureSeries(signature);
  const [one, many] = PERIOD_WORDS[signature.period];
  return (
    <section>
      <ChartFigure
        name={SIGNATURE_NAME}
        sentence={signatureChartSentence(series)}
        picture={<SignaturePicture series={series} size="desk" />}
        table={signatureTable(series)}
        note={`${counted(signature.count, one, many)}, ${longDate(signature.from)} to ${longDate(lastDayOf(signature.to))}. The line explains ${percent(signature.r2)} of the ups and downs.`}
      />
    </section>
  );
}
