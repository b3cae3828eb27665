import { leaveBehindCsv } from '../../leave-behind/leave-behind-csv.ts';
import type { WrittenEstimate } from '../../model/shapes/written-estimate.ts';
import { inMoneyOf, say } from '../../words/say.ts';
import type { FileOut } from '../contract.ts';
import { fileNameOf, toFileOut } from '../file-out.ts';
import { findEstimate, findHousehold } from '../find.ts';
import { storedSeries } from '../join/stored-series.ts';
import { makeEstimate } from '../make-estimate.ts';
import type { DeskContext, Handlers } from '../ports.ts';
import { printDocument } from '../print-document.ts';
import { readSettings } from '../settings.ts';

type EstimateHandlers = Pick<Handlers, 'estimate.keep' | 'estimate.read' | 'estimate.print'>;

export function estimateHandlers({ ports, store }: DeskContext): EstimateHandlers {
  async function print(estimate: WrittenEstimate, format: 'pdf' | 'html' | 'csv'): Promise<FileOut> {
    const fileName = fileNameOf(
      say('{name}, promise {number}', { name: estimate.household.name, number: String(estimate.number) }),
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
    const { renderLeaveBehind } = await import('../../leave-behind/leave-behind.tsx');
    return printDocument(ports, {
      html: inMoneyOf(estimate, () => renderLeaveBehind(estimate, settings)),
      fileName,
      format,
      paper: settings.paper,
    });
  }

  return {
    'estimate.keep'({ householdId, note }) {
      const { household } = findHousehold(store, householdId);
      const estimate = makeEstimate({
        id: ports.newId(),
        number: store.nextEstimateNumber(),
        madeOn: ports.now(),
        asOf: ports.today(),
        note,
        household,
        series: storedSeries(store, householdId),
      });
      store.addEstimate(estimate);
      return estimate;
    },
    'estimate.read': ({ estimateId }) => findEstimate(store, estimateId),
    'estimate.print': ({ estimateId, format }) => print(findEstimate(store, estimateId), format),
  };
}
