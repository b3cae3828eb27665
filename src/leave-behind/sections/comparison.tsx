import { breakEvenSentence, gasStandingSentence, yearToYearSentence } from '../../words/cost.ts';
import { exactPounds, factor, grouped, pence, poundsRange, spokenPounds } from '../../words/numbers.ts';
import { ratioSentence } from '../../words/prices.ts';
import { say } from '../../words/say.ts';
import { leftOutSentence, systemInSentence, systemName } from '../../words/systems.ts';
import { NumberHead } from '../number-head.tsx';
import type { EstimateParts } from '../parts.ts';
import { CostTable } from './cost-table.tsx';

/** Every way of heating beside every other: cost and its parts, range, carbon, and where both would cost the same. */
export function ComparisonPart({ parts }: { readonly parts: EstimateParts }) {
  const { appraisal } = parts;
  return (
    <section>
      <h2>{say('Every way of heating, side by side')}</h2>
      <p className="plain">
        {say(
          'All of them give the same heat in a typical year: {count} kWh. A standing charge counts only where that heating brings it into the home.',
          { count: grouped(appraisal.demand.total.value) },
        )}
      </p>
      <CostTable
        parts={parts}
        systems={appraisal.systems}
        last={say('carbon (kg)')}
        lastOf={({ carbonKg }) => grouped(carbonKg.value)}
      />
      <p className="plain">{gasStandingSentence(appraisal, parts.estimate.household)}</p>
      <p className="plain quiet">{leftOutSentence(appraisal)}</p>
      <h3>{say('How sure, and in another winter')}</h3>
      <div className="wide">
        <table>
          <thead>
            <tr>
              <th scope="col">{say('Cost of a year')}</th>
              <NumberHead>{say('8 in 10 homes inside')}</NumberHead>
              <NumberHead>{say('mild winter')}</NumberHead>
              <NumberHead>{say('cold winter')}</NumberHead>
              <NumberHead>{say('per kWh of heat')}</NumberHead>
            </tr>
          </thead>
          <tbody>
            {appraisal.systems.map((system) => (
              <tr key={system.id} className={system.id === 'heat-pump' ? 'ours' : undefined}>
                <th scope="row">{systemName(system.id, system.kind, appraisal.machine.source)}</th>
                <td className="number">{poundsRange(system.cost.low, system.cost.high)}</td>
                <td className="number">{exactPounds(system.mildYearPence)}</td>
                <td className="number">{exactPounds(system.coldYearPence)}</td>
                <td className="number">{pence(system.pencePerKWhHeat.value)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p className="plain quiet">
        {say('Mild and cold are winters met about 1 year in 10.')} {yearToYearSentence(parts.pump)}
      </p>
      <BreakEven parts={parts} />
    </section>
  );
}

function BreakEven({ parts }: { readonly parts: EstimateParts }) {
  const { versus, beside, appraisal } = parts;
  if (!versus || !beside) return null;
  return (
    <>
      <h3>{say('Where both cost the same')}</h3>
      <p className="plain">
        {breakEvenSentence(versus, beside.kind)}{' '}
        {say('Here it is {factor}.', { factor: factor(appraisal.machine.whole.value) })}{' '}
        {beside.carrier === 'electricity'
          ? ''
          : ratioSentence(versus.priceRatio, versus.breakEvenPriceRatio, beside.carrier)}
      </p>
    </>
  );
}

/** The twenty futures behind the dots, written out. */
export function FuturesPart({ parts }: { readonly parts: EstimateParts }) {
  const { versus, beside } = parts;
  if (!versus || !beside) return null;
  return (
    <section className="follows">
      <h2>{say('Twenty futures')}</h2>
      <p className="plain">
        {say('Compared with {other}.', { other: systemInSentence(beside.id, beside.kind) })}{' '}
        {say('Worst to best for the heat pump, a year: {list}.', {
          list: versus.twenty.map(sayDifference).join(', '),
        })}
      </p>
    </section>
  );
}

function sayDifference(pence: number): string {
  const amount = spokenPounds(Math.abs(pence));
  if (pence === 0) return say('the same');
  return pence < 0 ? say('{amount} more', { amount }) : say('{amount} less', { amount });
}
