import { leaveBehindCsv } from '../../leave-behind/leave-behind-csv.ts';
import type { KeptPromise } from '../../model/shapes/promise.ts';
import { inMoneyOf, say } from '../../words/say.ts';
import type { FileOut } from '../contract.ts';
import { fileNameOf, toFileOut } from '../file-out.ts';
import { findHousehold, findPromise } from '../find.ts';
import { storedSeries } from '../join/stored-series.ts';
import { makePromise } from '../keep-promise.ts';
import type { DeskContext, Handlers } from '../ports.ts';
import { printDocument } from '../print-document.ts';
import { readSettings } from '../settings.ts';

type PromiseHandlers = Pick<Handlers, 'promise.keep' | 'promise.read' | 'promise.print'>;

export function promiseHandlers({ ports, store }: DeskContext): PromiseHandlers {
  async function print(promise: KeptPromise, format: 'pdf' | 'html' | 'csv'): Promise<FileOut> {
    const fileName = fileNameOf(
      say('{name}, promise {number}', { name: promise.household.name, number: String(promise.number) }),
      format,
    );
    if (format === 'csv')
      return toFileOut(
        fileName,
        'text/csv',
        inMoneyOf(promise, () => leaveBehindCsv(promise)),
      );
    const settings = readSettings(store);
    // The painter of pages is large, and most days begin without printing.
    const { renderLeaveBehind } = await import('../../leave-behind/leave-behind.tsx');
    return printDocument(ports, {
      html: inMoneyOf(promise, () => renderLeaveBehind(promise, settings)),
      fileName,
      format,
      paper: settings.paper,
    });
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
  };
}
