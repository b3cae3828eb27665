import { readTariff } from '../../intake/read-tariff.ts';
import { refuseFaultyTariffs } from '../check-tariffs.ts';
import { findHousehold } from '../find.ts';
import type { DeskContext, Handlers } from '../ports.ts';
import { refuseRemarks } from '../refuse-remarks.ts';
import { contextOf } from '../take-in.ts';

export function tariffHandlers({
  ports,
  store,
  files,
}: DeskContext): Pick<Handlers, 'tariff.read' | 'tariff.shelf' | 'tariff.keep' | 'tariff.drop'> {
  return {
    'tariff.read'({ fileId, householdId }) {
      const { fileName, bytes } = files.take(fileId);
      const context = contextOf(findHousehold(store, householdId).household, ports.today());
      const { tariff, remarks } = readTariff(fileName, bytes, context);
      refuseRemarks(remarks, fileName, tariff !== null);
      refuseFaultyTariffs([tariff!]);
      files.drop(fileId);
      return { tariff: tariff!, remarks };
    },
    'tariff.shelf': () => store.listShelf(),
    'tariff.keep'({ tariff }) {
      refuseFaultyTariffs([tariff]);
      store.keepOnShelf(tariff);
      return {};
    },
    'tariff.drop'({ tariffId }) {
      store.dropFromShelf(tariffId);
      return {};
    },
  };
}
