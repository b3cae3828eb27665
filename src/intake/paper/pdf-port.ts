/** How the two halves of the PDF reader speak to each other within one thread. */

type Listener = (event: { readonly data: unknown }) => void;

/**
 * Gives messages on as the port of a worker does: what is sent is copied, and comes when the sender is done. Nearly all of
 * it is plain data, which is copied by hand in a tenth of the time.
 */
export class PdfPort {
  readonly #listeners = new Set<Listener>();

  postMessage(message: object, transfer?: Transferable[] | null): void {
    const given = transfer ?? [];
    const data = copyOf(message, given) ?? structuredClone(message, { transfer: given });
    void Promise.resolve().then(() => {
      for (const listener of this.#listeners) listener({ data });
    });
  }

  addEventListener(_: 'message', listener: Listener, { signal }: { readonly signal: AbortSignal }): void {
    this.#listeners.add(listener);
    signal.addEventListener('abort', () => this.#listeners.delete(listener));
  }
}

const [tagOf, ORDINARY] = [Object.prototype.toString, '[object Object]'];
/** @returns undefined where it holds more than lists, objects, bytes that are given away, and what is no object; dates, maps and errors of the language are more */
function copyOf(value: object, given: readonly Transferable[]): unknown {
  if (Array.isArray(value)) {
    const copy: unknown[] = value.slice();
    for (let i = 0; i < copy.length; i++) {
      const one = copy[i];
      if (!isObject(one)) continue;
      const inner = copyOf(one, given);
      if (inner === undefined) return undefined;
      copy[i] = inner;
    }
    return copy;
  }
  if (ArrayBuffer.isView(value)) return given.includes(value.buffer as ArrayBuffer) ? value : undefined;
  // Of a class of the reader's own only what it holds comes across, as with any copy of its kind.
  if (Object.getPrototypeOf(value) !== Object.prototype && tagOf.call(value) !== ORDINARY) return undefined;
  const copy: Record<string, unknown> = { ...value };
  for (const name in copy) {
    const one = copy[name];
    if (!isObject(one)) continue;
    const inner = copyOf(one, given);
    if (inner === undefined) return undefined;
    copy[name] = inner;
  }
  return copy;
}

/** What has to be copied itself, or cannot be copied. */
const isObject = (value: unknown): value is object =>
  (typeof value === 'object' && value !== null) || typeof value === 'function';
