import { toDayNumber } from '../../model/calendar/civil.ts';
import { withNext } from '../../model/guided-search/guided-search.ts';
import { inMoneyOf, say } from '../../words/say.ts';
import { DeskError } from '../desk-error.ts';
import { fileNameOf } from '../file-out.ts';
import { findEstimate, findHousehold } from '../find.ts';
import { storedReadings } from '../join/meter-readings.ts';
import { storedSeries } from '../join/stored-series.ts';
import { letterNames } from '../letter-names.ts';
import { printedWithoutPeople } from '../mask-people.ts';
import type { DeskContext, Handlers } from '../ports.ts';
import { prefillBill } from '../prefill-bill.ts';
import { printDocument } from '../print-document.ts';
import { type KnownSince, runCheck } from '../run-check.ts';
import { readSettings } from '../settings.ts';

type CheckHandlers = Pick<Handlers, 'check.run' | 'check.answer' | 'check.prefill' | 'check.print' | 'check.drop'>;

const noCheck = () =>
  new DeskError({
    code: 'not-there',
    message: say('This bill check is not there any more.'),
    remedy: say('Check the bill again.'),
  });

export function checkHandlers({ ports, store }: DeskContext): CheckHandlers {
  const known = (householdId: string): KnownSince => ({
    household: findHousehold(store, householdId).household,
    series: storedSeries(store, householdId),
    readings: storedReadings(store, householdId),
  });
  const findCheck = (checkId: string) => {
    const check = store.readCheck(checkId);
    if (!check) throw noCheck();
    return check;
  };
  return {
    'check.run'(bill) {
      const estimate = findEstimate(store, bill.estimateId);
      const check = inMoneyOf(estimate, () =>
        runCheck({ id: ports.newId(), madeOn: ports.now(), estimate, bill, ...known(estimate.householdId) }),
      );
      store.addCheck(check, estimate.householdId);
      return check;
    },
    'check.answer'({ checkId, answers }) {
      const check = findCheck(checkId);
      const told = withNext({ ...check, input: { ...check.input, answers } });
      store.saveCheck(told);
      return told;
    },
    'check.prefill'({ estimateId, from, to }) {
      const estimate = findEstimate(store, estimateId);
      const span = from !== undefined && to !== undefined ? { from: toDayNumber(from), to: toDayNumber(to) } : null;
      return prefillBill({ estimate, span, ...known(estimate.householdId) });
    },
    async 'check.print'({ checkId, paper, format }) {
      const kept = findCheck(checkId);
      const printed = printedWithoutPeople(store, findEstimate(store, kept.estimateId), [kept]);
      const [estimate, check] = [printed.estimates[0]!, printed.checks[0]!];
      const { household } = findHousehold(store, estimate.householdId);
      const settings = readSettings(store);
      const { renderLetter, renderSheet } = await import('../../leave-behind/letter.tsx');
      const parts = { check, estimate, household, settings };
      const values = { name: household.name, date: check.madeOn.slice(0, 10) };
      const isLetter = paper === 'letter';
      const names = isLetter ? letterNames(household) : null;
      return printDocument(ports, {
        html: inMoneyOf(estimate, () => (names ? renderLetter(parts, names) : renderSheet(parts))),
        fileName: fileNameOf(
          isLetter ? say('{name}, letter of {date}', values) : say('{name}, installer’s sheet of {date}', values),
          format,
        ),
        format,
        paper: settings.paper,
      });
    },
    'check.drop'({ checkId }) {
      store.dropCheck(checkId);
      return {};
    },
  };
}
