/** The services behind the contract: every request is checked against its schema, then handled. */
import type { z } from 'zod';
import { StoreFault } from '../store/store-fault.ts';
import { say } from '../words/say.ts';
import type { RequestName } from './contract.ts';
import { DeskError } from './desk-error.ts';
import { appHandlers } from './handlers/app.ts';
import { householdHandlers } from './handlers/households.ts';
import { valuesHandlers } from './handlers/values.ts';
import { keepOfferedFiles } from './offered-files.ts';
import type { DeskContext, DeskPorts, Handlers, Work } from './ports.ts';
import { readSettings, speakAsSet } from './settings.ts';
import { reckonWithValues } from './signed-values.ts';
import { startInputs } from './start-requests.ts';
import { explainStoreFault } from './store-refusal.ts';

export type { DeskPorts, PrintPdf } from './ports.ts';

export interface Desk {
  /** Throws DeskError for what is refused; anything else thrown is our own failure. */
  handle(name: string, input: unknown, options: Work): Promise<unknown>;
  /** Does what is due by itself; to be called now and then. Once `isEnding`, a copy under way is finished and nothing else. */
  keepUp(isEnding: () => boolean): Promise<void>;
  /** Loads what a start does not ask for, so that the first request for it need not wait. */
  loadRest(): Promise<void>;
}

/** Of a request that no start makes the schemas of the whole contract are loaded. Undefined where there is no such request. */
async function schemaOf(name: string): Promise<z.ZodType | undefined> {
  if (Object.hasOwn(startInputs, name)) return startInputs[name as keyof typeof startInputs];
  const { contract } = await import('./contract.ts');
  return Object.hasOwn(contract, name) ? contract[name as RequestName].input : undefined;
}

/** What it takes to open a household stands at the start; the rest of the desk is loaded after it. */
async function handlersOfRest(context: DeskContext): Promise<Partial<Handlers>> {
  const [data, files, evidence, tariffs, estimates, checks] = await Promise.all([
    import('./handlers/data.ts'),
    import('./handlers/household-files.ts'),
    import('./handlers/evidence.ts'),
    import('./handlers/tariffs.ts'),
    import('./handlers/estimates.ts'),
    import('./handlers/checks.ts'),
    import('./contract.ts'),
  ]);
  return {
    ...data.dataHandlers(context),
    ...files.householdFileHandlers(context),
    ...evidence.evidenceHandlers(context),
    ...tariffs.tariffHandlers(context),
    ...estimates.estimateHandlers(context),
    ...checks.checkHandlers(context),
  };
}

export function createDesk(ports: DeskPorts): Desk {
  const context: DeskContext = { ports, store: ports.store, files: keepOfferedFiles(ports.now) };
  const handlers: Partial<Handlers> = {
    ...appHandlers(context),
    ...valuesHandlers(context),
    ...householdHandlers(context),
  };
  let rest: Promise<void> | null = null;
  const loadRest = () => {
    rest ??= handlersOfRest(context).then((loaded) => void Object.assign(handlers, loaded));
    return rest;
  };

  return {
    keepUp: async (isEnding) => (await import('./keep-up.ts')).keepUp(ports, isEnding),
    loadRest,
    async handle(name, input, work) {
      const schema = await schemaOf(name);
      if (schema === undefined) {
        throw new DeskError({
          code: 'unknown-request',
          message: say('There is no request called “{name}”.', { name: name.slice(0, 60) }),
        });
      }
      refuseIfStopped(work.signal);
      await speakAsSet(readSettings(ports.store));
      reckonWithValues(ports.store, ports.valuesKey);
      const known = name as RequestName;
      const checked = schema.safeParse(input);
      if (!checked.success) {
        const { explainIssue } = await import('./refusal.ts');
        throw new DeskError(explainIssue(checked.error.issues[0]!, input));
      }
      if (handlers[known] === undefined) await loadRest();
      const handle = handlers[known] as (input: unknown, work: Work) => unknown;
      try {
        return await handle(checked.data, {
          ...work,
          onProgress: (share) => {
            work.onProgress?.(share);
            // The progress may have brought word of a cancellation.
            refuseIfStopped(work.signal);
          },
        });
      } catch (error) {
        throw error instanceof StoreFault ? new DeskError(explainStoreFault(error.data)) : error;
      }
    },
  };
}

function refuseIfStopped(signal: AbortSignal | undefined): void {
  if (signal?.aborted) throw new DeskError({ code: 'stopped', message: say('Stopped. Nothing was stored.') });
}
