/** Calls to the desk through the bridge of the desktop shell. */
import type { Bridge, Call } from '../desk/contract.ts';
import { DeskError } from '../desk/desk-error.ts';

export function callOverBridge(bridge: Bridge): Call {
  const listeners = new Map<number, (share: number) => void>();
  let lastId = 0;
  bridge.onProgress((callId, share) => listeners.get(callId)?.(share));

  async function call(name: string, input: unknown, options: Parameters<Call>[2] = {}): Promise<unknown> {
    options.signal?.throwIfAborted();
    const callId = ++lastId;
    if (options.onProgress) listeners.set(callId, options.onProgress);
    // Like fetch: the caller hears at once, the desk as soon as it looks up.
    const stopped = Promise.withResolvers<never>();
    const stop = () => {
      bridge.cancel(callId);
      stopped.reject(options.signal?.reason);
    };
    options.signal?.addEventListener('abort', stop, { once: true });
    try {
      const answer = await Promise.race([bridge.call(callId, name, input), stopped.promise]);
      if ('refusal' in answer) throw new DeskError(answer.refusal);
      return answer.result;
    } finally {
      listeners.delete(callId);
      options.signal?.removeEventListener('abort', stop);
    }
  }
  return call as Call;
}
