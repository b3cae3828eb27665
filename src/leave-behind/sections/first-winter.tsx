import { monthlyWarnings } from '../../model/bill-gap/expected-range.ts';
import { penceOfMonth } from '../../model/shapes/appraisal.ts';
import { reference } from '../../reference/index.ts';
import { exactPounds, grouped, monthNames, roundedUnits } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { systemName } from '../../words/systems.ts';
import { callSentences, warningSentence, watchSentences, winterBillSentences } from '../../words/watch.ts';
import { NumberHead } from '../number-head.tsx';
import type { EstimateParts } from '../parts.ts';

/** The third page: what each month should bring, what to do, and whom to call when. */
export function FirstWinterPart({ parts }: { readonly parts: EstimateParts }) {
  const { pump, settings } = parts;
  const contact = [settings.installerName, ...settings.installerContact.split('\n')].filter(Boolean).join(', ');
  return (
    <section>
      <h2>{say('Your first winter')}</h2>
      <MonthTable parts={parts} />
      <h3>{say('What to expect')}</h3>
      <ul className="steps">
        {[
          ...winterBillSentences(pump),
          say('Your electricity bill also holds everything else you use at home.'),
          say('The warmth is steady. Radiators feel warm, not hot, and the machine runs for long hours.'),
          say('A new house or a new floor dries out in its first winter and can need more heat than later.'),
        ].map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <h3>{say('What to do')}</h3>
      <ul className="steps">
        {[
          ...watchSentences(),
          say('After the winter we compare your bill with this paper. We show what the weather and the price did.'),
        ].map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <h3>{say('When to call, and whom')}</h3>
      <ul className="steps">
        {[...callSentences(), warningSentence(pump.bought.high)].map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <p className="call">
        <strong>{say('Call:')}</strong> {contact || <span className="blank" />}
      </p>
    </section>
  );
}

function MonthTable({ parts }: { readonly parts: EstimateParts }) {
  const { pump, appraisal } = parts;
  const warnings = monthlyWarnings(appraisal, pump, reference.spread);
  return (
    <div className="wide">
      <table className="months">
        <thead>
          <tr>
            <th scope="col">{systemName(pump.id, pump.kind, appraisal.machine.source)}</th>
            <NumberHead>{say('kWh to expect')}</NumberHead>
            <NumberHead>{say('Cost')}</NumberHead>
            <NumberHead>{say('Call us above')}</NumberHead>
            <NumberHead>{say('Your reading')}</NumberHead>
          </tr>
        </thead>
        <tbody>
          {monthNames().map((month, index) => (
            <tr key={month}>
              <th scope="row">{month}</th>
              <td className="number">{grouped(roundedUnits(pump.monthly.boughtKWh[index]!))}</td>
              <td className="number">{exactPounds(penceOfMonth(pump, index))}</td>
              <td className="number">{grouped(roundedUnits(warnings[index]!))}</td>
              <td />
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
