import { leaveBehindCsv } from '../../leave-behind/leave-behind-csv.ts';
import { appraise } from '../../model/appraise.ts';
import { currencyOf } from '../../model/shapes/country.ts';
import type { WrittenEstimate } from '../../model/shapes/written-estimate.ts';
import { customerFacts } from '../../reference/customer-facts.ts';
import { referenceOf } from '../../reference/index.ts';
import { answerQuestions } from '../../words/asked.ts';
import { longDate } from '../../words/numbers.ts';
import { inMoneyOf, say } from '../../words/say.ts';
import type { FileOut } from '../contract.ts';
import { DeskError } from '../desk-error.ts';
import { fileNameOf, toFileOut } from '../file-out.ts';
import { findEstimate, findHousehold } from '../find.ts';
import { storedSeries } from '../join/stored-series.ts';
import { makeEstimate } from '../make-estimate.ts';
import { printedWithoutPeople } from '../mask-people.ts';
import type { DeskContext, Handlers } from '../ports.ts';
import { printDocument } from '../print-document.ts';
import { readSettings } from '../settings.ts';

/** Clocks are put right by minutes all the time. */
const CLOCK_SLACK_MS = 10 * 60_000;

type EstimateHandlers = Pick<Handlers, 'estimate.keep' | 'estimate.read' | 'estimate.print' | 'questions.print'>;

export function estimateHandlers({ ports, store }: DeskContext): EstimateHandlers {
  async function print(
    estimate: WrittenEstimate,
    document: 'paper' | 'working',
    format: 'pdf' | 'html' | 'csv',
  ): Promise<FileOut> {
    const said = { name: estimate.household.name, number: String(estimate.number) };
    const fileName = fileNameOf(
      document === 'working'
        ? say('{name}, working of estimate {number}', said)
        : say('{name}, estimate {number}', said),
      format,
    );
    if (format === 'csv')
      return toFileOut(
        fileName,
        'text/csv',
        inMoneyOf(estimate, () => leaveBehindCsv(estimate)),
      );
    const settings = readSettings(store);
    // The painter of pages is large, and most days begin without printing.
    const render =
      document === 'working'
        ? (await import('../../leave-behind/working.tsx')).renderWorking
        : (await import('../../leave-behind/leave-behind.tsx')).renderLeaveBehind;
    return printDocument(ports, {
      html: inMoneyOf(estimate, () => render(estimate, settings)),
      fileName,
      format,
      paper: settings.paper,
    });
  }

  /** An estimate that bears an earlier time than the one before it would be older than it without a word. */
  function refuseClockBehind(): void {
    const last = store.lastEstimate();
    if (!last || Date.parse(ports.now()) >= Date.parse(last.madeOn) - CLOCK_SLACK_MS) return;
    throw new DeskError({
      code: 'clock-behind',
      message: say('This computer’s clock says {today}, but estimate no. {number} was made on {madeOn}.', {
        today: longDate(ports.today()),
        number: String(last.number),
        madeOn: longDate(last.madeOn.slice(0, 10)),
      }),
      where: say('the clock'),
      remedy: say('Set the clock and try again. If it is right now and was wrong then, say so and save it.'),
    });
  }

  return {
    'estimate.keep'({ householdId, note, clockIsRight }) {
      if (!clockIsRight) refuseClockBehind();
      const { household } = findHousehold(store, householdId);
      const estimate = makeEstimate({
        id: ports.newId(),
        number: store.nextEstimateNumber(),
        madeOn: ports.now(),
        asOf: ports.today(),
        note,
        household,
        imports: store.listEvidence(householdId),
        series: storedSeries(store, householdId),
      });
      store.addEstimate(estimate);
      return estimate;
    },
    'estimate.read': ({ estimateId }) => findEstimate(store, estimateId),
    async 'questions.print'({ householdId, ids, format }) {
      const { household } = findHousehold(store, householdId);
      const [today, settings] = [ports.today(), readSettings(store)];
      const series = storedSeries(store, householdId);
      const appraisal = appraise({ household, series, reference: referenceOf(household), asOf: today, draws: 0 });
      const { renderQuestions } = await import('../../leave-behind/questions.tsx');
      const { name } = household;
      return printDocument(ports, {
        html: inMoneyOf({ currency: currencyOf(household) }, () => {
          const answers = answerQuestions({ household, appraisal }, customerFacts).filter(({ id }) => ids.includes(id));
          return renderQuestions({ name, answers, today, settings });
        }),
        fileName: fileNameOf(say('{name}, questions and answers', { name }), format),
        format,
        paper: settings.paper,
      });
    },
    'estimate.print'({ estimateId, document, format }) {
      const [estimate] = printedWithoutPeople(store, findEstimate(store, estimateId)).estimates;
      return print(estimate!, document, format);
    },
  };
}
