import { ChartFigure } from '../../charts/figure.tsx';
import { FlowPicture } from '../../charts/flow/picture.tsx';
import { flowName, flowSentence } from '../../charts/flow/sentence.ts';
import { flowInput } from '../../charts/flow/series.ts';
import { flowTable } from '../../charts/flow/table.ts';
import { sourceWorking } from '../../words/explained/flow.ts';
import { say } from '../../words/say.ts';
import { useHousehold } from '../household-context.tsx';
import { HowWeKnow } from '../shared/how-we-know.tsx';

/** What comes in from ground and meter, and what goes out to rooms and taps. */
export function FlowFigure() {
  const { appraisal } = useHousehold();
  const input = flowInput(appraisal);
  return (
    <ChartFigure
      name={flowName()}
      sentence={flowSentence(input)}
      picture={<FlowPicture input={input} size="desk" />}
      table={flowTable(input)}
      known={<HowWeKnow find={() => [sourceWorking(appraisal)]} about={flowName()} plain />}
      note={say('Units of a typical year. Pumps and standby are counted in what the meter shows.')}
    />
  );
}
