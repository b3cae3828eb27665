import { renderLeaveBehind } from '../../leave-behind/leave-behind.tsx';
import { leaveBehindCsv } from '../../leave-behind/leave-behind-csv.ts';
import type { KeptPromise } from '../../model/appraisal/promise.ts';
import { DeskError, type FileOut } from '../contract.ts';
import { fileNameOf, toFileOut } from '../file-out.ts';
import { findHousehold, findPromise } from '../find.ts';
import { storedSeries } from '../join/stored-series.ts';
import { makePromise } from '../keep-promise.ts';
import type { DeskContext, Handlers } from '../ports.ts';
import { runCheck } from '../run-check.ts';
import { readSettings } from '../settings.ts';

type PromiseHandlers = Pick<Handlers, 'promise.keep' | 'promise.read' | 'promise.print' | 'check.run' | 'check.drop'>;

const NO_PRINTER = new DeskError({
  code: 'no-printer',
  message: 'No browser that can write a PDF was found on this computer.',
  remedy: 'Save the document as HTML instead, open it in a browser and print it from there.',
});

export function promiseHandlers({ ports, store }: DeskContext): PromiseHandlers {
  async function print(promise: KeptPromise, format: 'pdf' | 'html' | 'csv'): Promise<FileOut> {
    const fileName = fileNameOf(`${promise.household.name}, promise ${promise.number}`, format);
    if (format === 'csv') return toFileOut(fileName, 'text/csv', leaveBehindCsv(promise));
    const settings = readSettings(store);
    const html = renderLeaveBehind(promise, settings);
    if (format === 'html') return toFileOut(fileName, 'text/html', html);
    const pdf = await ports.printPdf?.(html, settings.paper);
    if (!pdf) throw NO_PRINTER;
    return toFileOut(fileName, 'application/pdf', pdf);
  }

  return {
    'promise.keep'({ householdId, note }) {
      const { household } = findHousehold(store, householdId);
      const promise = makePromise({
        id: ports.newId(),
        number: store.nextPromiseNumber(),
        madeOn: ports.now(),
        asOf: ports.today(),
        note,
        household,
        series: storedSeries(store, householdId),
      });
      store.addPromise(promise);
      return promise;
    },
    'promise.read': ({ promiseId }) => findPromise(store, promiseId),
    'promise.print': ({ promiseId, format }) => print(findPromise(store, promiseId), format),
    'check.run'(bill) {
      const promise = findPromise(store, bill.promiseId);
      const series = storedSeries(store, promise.householdId);
      const check = runCheck({ id: ports.newId(), madeOn: ports.now(), promise, bill, series });
      store.addCheck(check, promise.householdId);
      return check;
    },
    'check.drop'({ checkId }) {
      store.dropCheck(checkId);
      return {};
    },
  };
}
