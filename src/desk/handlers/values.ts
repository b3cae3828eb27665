import type { Reference } from '../../model/shapes/reference.ts';
import { changesBetween } from '../../reference/fit-values.ts';
import { builtIn, reference } from '../../reference/index.ts';
import type { ValuesState } from '../contract.ts';
import type { DeskContext, Handlers } from '../ports.ts';
import { broughtInValues, readSignedValues, reckonWithValues } from '../signed-values.ts';

export function valuesHandlers({
  ports,
  store,
  files,
}: DeskContext): Pick<Handlers, 'values.read' | 'values.look' | 'values.use'> {
  const state = (): ValuesState => ({
    edition: reference.edition,
    builtInEdition: builtIn.edition,
    laidOver: broughtInValues(store, ports.valuesKey),
  });
  /** An older file is refused though it is genuine: a price of last year is none of today. */
  function readOffered(fileId: string) {
    const { fileName, bytes } = files.take(fileId);
    const text = new TextDecoder().decode(bytes);
    return { text, values: readSignedValues(fileName, text, ports.valuesKey, reference.edition) };
  }

  return {
    'values.read': state,
    'values.look'({ fileId }) {
      const { values } = readOffered(fileId);
      // A topic that the file does not name goes back to the program's own.
      const next: Reference = { ...builtIn, ...values };
      return { edition: values.edition, changes: changesBetween(reference, next) };
    },
    'values.use'({ fileId }) {
      if (fileId === null) store.writeValues(null);
      else {
        store.writeValues(readOffered(fileId).text);
        files.drop(fileId);
      }
      reckonWithValues(store, ports.valuesKey);
      return state();
    },
  };
}
