import { inMoneyOf, say } from '../../words/say.ts';
import { dayOf } from '../days.ts';
import { DeskError } from '../desk-error.ts';
import { fileNameOf } from '../file-out.ts';
import { findHousehold, findPromise } from '../find.ts';
import { storedReadings } from '../join/meter-readings.ts';
import { storedSeries } from '../join/stored-series.ts';
import type { DeskContext, Handlers } from '../ports.ts';
import { prefillBill } from '../prefill-bill.ts';
import { printDocument } from '../print-document.ts';
import { type KnownSince, runCheck } from '../run-check.ts';
import { readSettings } from '../settings.ts';

type CheckHandlers = Pick<Handlers, 'check.run' | 'check.prefill' | 'check.print' | 'check.drop'>;

const noCheck = () =>
  new DeskError({
    code: 'not-there',
    message: say('This bill check is not there any more.'),
    remedy: say('Hold the bill against the promise again.'),
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
      const promise = findPromise(store, bill.promiseId);
      const check = runCheck({
        id: ports.newId(),
        madeOn: ports.now(),
        promise,
        bill,
        ...known(promise.householdId),
      });
      store.addCheck(check, promise.householdId);
      return check;
    },
    'check.prefill'({ promiseId, from, to }) {
      const promise = findPromise(store, promiseId);
      const span = from !== undefined && to !== undefined ? { from: dayOf(from, 'from'), to: dayOf(to, 'to') } : null;
      return prefillBill({ promise, span, ...known(promise.householdId) });
    },
    async 'check.print'({ checkId, format }) {
      const check = findCheck(checkId);
      const promise = findPromise(store, check.promiseId);
      const { household } = findHousehold(store, promise.householdId);
      const settings = readSettings(store);
      const { renderLetter } = await import('../../leave-behind/letter.tsx');
      return printDocument(ports, {
        html: inMoneyOf(promise, () => renderLetter(check, promise, household, settings)),
        fileName: fileNameOf(
          say('{name}, letter of {date}', { name: household.name, date: check.madeOn.slice(0, 10) }),
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
