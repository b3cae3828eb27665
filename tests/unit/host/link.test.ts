import { MessageChannel } from 'node:worker_threads';
import { describe, expect, test } from 'vitest';
import type { Desk } from '../../../src/desk/desk.ts';
import { DeskError } from '../../../src/desk/desk-error.ts';
import { linkDesk } from '../../../src/host/desk-link.ts';
import type { FromDesk } from '../../../src/host/desk-messages.ts';
import { askToPrint } from '../../../src/host/serve-desk.ts';
import { linkHere } from './link-here.ts';

const deskOf = (handle: Desk['handle']): Desk => ({
  handle,
  keepUp: async () => undefined,
  loadRest: async () => undefined,
});

/** Keeps its thread busy like a long import: no event can come in while it works. */
function busy(ms: number): void {
  const until = performance.now() + ms;
  while (performance.now() < until);
}

describe('a desk behind its channel', () => {
  test('a stop is seen in the middle of work that holds the thread', async () => {
    const seen: number[] = [];
    const stop = new AbortController();
    const link = linkHere({
      desk: deskOf(async (_name, _input, { signal, onProgress }) => {
        for (let step = 1; step <= 50; step++) {
          busy(2);
          // The other side runs in this same thread here, so the stop is sent from within the work.
          if (step === 3) stop.abort();
          seen.push(step);
          onProgress?.(step / 50);
          if (signal?.aborted) throw new DeskError({ code: 'stopped', message: 'Stopped. Nothing was stored.' });
        }
        return 'done';
      }),
      close: () => undefined,
    });
    await expect(link.call('long', {}, { signal: stop.signal })).rejects.toMatchObject({ code: 'stopped' });
    expect(seen).toEqual([1, 2, 3]);
    await link.close();
  });

  test('progress arrives in order, and the result after it', async () => {
    const shares: number[] = [];
    const link = linkHere({
      desk: deskOf(async (_name, input, { onProgress }) => {
        for (const share of [0.25, 0.5, 1]) onProgress?.(share);
        return input;
      }),
      close: () => undefined,
    });
    const bytes = new Uint8Array([1, 2, 3]);
    expect(await link.call('echo', { bytes }, { onProgress: (share) => shares.push(share) })).toEqual({ bytes });
    expect(shares).toEqual([0.25, 0.5, 1]);
    await link.close();
  });

  test('whoever closes it waits for an import that is under way', async () => {
    const order: string[] = [];
    const importing = Promise.withResolvers<string>();
    const link = linkHere({
      desk: deskOf(async (name) => (name === 'app.read' ? 'here' : importing.promise)),
      close: () => void order.push('closed'),
    });
    const answer = link.call('evidence.accept', {}).then(() => order.push('saved'));
    const closing = link.close();
    // By the time that this is answered, a word to close would have come through too.
    await link.call('app.read', {});
    importing.resolve('saved');
    await Promise.all([answer, closing]);
    expect(order).toEqual(['saved', 'closed']);
  });

  test('our own failure is said to be ours, and its details go to the log only', async () => {
    const details: string[] = [];
    const link = linkHere({
      desk: deskOf(async () => {
        throw new TypeError('x is not a function');
      }),
      close: () => undefined,
      onFailure: (detail) => details.push(detail),
    });
    const refusal = await link.call('break', {}).catch((error: DeskError) => error.toRefusal());
    expect(refusal).toMatchObject({ code: 'own-failure', message: 'Plainwarmth itself failed: x is not a function' });
    expect(JSON.stringify(refusal)).not.toContain('link.test.ts');
    expect(details[0]).toContain('link.test.ts');
    await link.close();
  });

  test.each([
    { name: 'a document', printed: new Uint8Array([37, 80, 68, 70]) },
    { name: 'no printer', printed: null },
  ])('the desk asks its host to print: $name', async ({ printed }) => {
    let print: ((html: string, paper: 'A4' | 'Letter') => Promise<Uint8Array | null>) | undefined;
    const asked: string[] = [];
    const link = linkHere({
      desk: deskOf(async () => print?.('<p>hello</p>', 'A4')),
      close: () => undefined,
      printer(port) {
        const printer = askToPrint(port);
        print = printer.printPdf;
        return printer;
      },
      async printPdf(html, paper) {
        asked.push(`${paper} ${html}`);
        return printed;
      },
    });
    expect(await link.call('print', {})).toEqual(printed);
    expect(asked).toEqual(['A4 <p>hello</p>']);
    await link.close();
  });

  test('a store that is ours and cannot be opened answers every call with the reason', async () => {
    const { port1, port2 } = new MessageChannel();
    const link = linkDesk({ port: port1, stops: new MessageChannel().port1 });
    const early = link.call('household.list', {});
    port2.postMessage({ kind: 'ready' } satisfies FromDesk);
    await link.ready;
    const refusal = { code: 'disk-full', message: 'No room.' };
    port2.postMessage({ kind: 'failed', refusal } satisfies FromDesk);
    await expect(early).rejects.toMatchObject(refusal);
    await expect(link.opened).rejects.toMatchObject(refusal);
    await expect(link.call('household.list', {})).rejects.toMatchObject(refusal);
    port1.close();
  });

  test('when the thread ends, everybody waiting hears of it, and whoever calls later', async () => {
    const link = linkHere({ desk: deskOf(() => new Promise(() => undefined)), close: () => undefined });
    const waiting = link.call('forever', {});
    await link.opened;
    setImmediate(() => {
      link.fail('out of memory');
      link.fail('its thread ended');
    });
    const gone = { code: 'desk-gone', message: expect.stringContaining('out of memory') };
    await expect(waiting).rejects.toMatchObject(gone);
    await expect(link.call('household.list', {})).rejects.toMatchObject(gone);
  });
});
