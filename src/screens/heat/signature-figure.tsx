import { ChartFigure } from '../../charts/figure.tsx';
import { ChartTableView } from '../../charts/frame/chart-table.tsx';
import { SignaturePicture } from '../../charts/signature/picture.tsx';
import { signatureChartSentence, signatureName } from '../../charts/signature/sentence.ts';
import { signatureSeries } from '../../charts/signature/series.ts';
import { signatureTable, yearsAheadTable } from '../../charts/signature/table.ts';
import type { Demand, Signature } from '../../model/shapes/appraisal.ts';
import { heatLossWorkings, signatureWorking, yearsAheadWorking } from '../../words/explained/signature.ts';
import { changeSentence, fitSentence, heatLossSentence, yearsAheadSentence } from '../../words/heat.ts';
import { counted, daySpan } from '../../words/numbers.ts';
import { lastDayOf } from '../evidence/day-words.ts';
import { HowWeKnow } from '../shared/how-we-know.tsx';

const PERIOD_WORDS: { readonly [period in Signature['period']]: readonly [string, string] } = {
  day: ['day', 'days'],
  month: ['month', 'months'],
  period: ['bill', 'bills'],
};

/** The line laid through the record: use against the weather. */
export function SignatureFigure(props: { readonly signature: Signature; readonly demand: Demand }) {
  const { signature, demand } = props;
  const series = signatureSeries(signature, demand.change);
  const [one, many] = PERIOD_WORDS[signature.period];
  const said = [
    fitSentence(signature),
    changeSentence(demand),
    heatLossSentence(demand),
    yearsAheadSentence(demand),
  ].filter((sentence) => sentence !== '');
  return (
    <section>
      <ChartFigure
        name={signatureName()}
        sentence={signatureChartSentence(series)}
        picture={<SignaturePicture series={series} size="desk" />}
        table={signatureTable(series)}
        known={
          <HowWeKnow
            find={() => [
              signatureWorking(signature, demand.change),
              ...yearsAheadWorking(demand),
              ...heatLossWorkings(demand),
            ]}
            about={signatureName()}
            plain
          />
        }
        note={`${counted(signature.count, one, many)}, ${daySpan(signature.from, lastDayOf(signature.to))}.`}
      />
      {said.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {demand.yearsAhead ? <ChartTableView table={yearsAheadTable(demand.yearsAhead)} /> : null}
    </section>
  );
}
