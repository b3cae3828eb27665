/** The services behind the contract: every request is checked against its schema, then handled. */
import { StoreFault } from '../store/store-fault.ts';
import { say } from '../words/say.ts';
import { contract, type RequestName } from './contract.ts';
import { DeskError } from './desk-error.ts';
import { appHandlers } from './handlers/app.ts';
import { checkHandlers } from './handlers/checks.ts';
import { dataHandlers } from './handlers/data.ts';
import { estimateHandlers } from './handlers/estimates.ts';
import { evidenceHandlers } from './handlers/evidence.ts';
import { householdFileHandlers } from './handlers/household-files.ts';
import { householdHandlers } from './handlers/households.ts';
import { tariffHandlers } from './handlers/tariffs.ts';
import { valuesHandlers } from './handlers/values.ts';
import { keepUp } from './keep-up.ts';
import { keepOfferedFiles } from './offered-files.ts';
import type { DeskContext, DeskPorts, Handlers, Work } from './ports.ts';
import { explainIssue } from './refusal.ts';
import { readSettings, speakAsSet } from './settings.ts';
import { reckonWithValues } from './signed-values.ts';
import { explainStoreFault } from './store-refusal.ts';

export type { DeskPorts, PrintPdf } from './ports.ts';

export interface Desk {
  /** Throws DeskError for what is refused; anything else thrown is our own failure. */
  handle(name: string, input: unknown, options: Work): Promise<unknown>;
  /** Does what is due by itself; to be called now and then. */
  keepUp(): Promise<void>;
}

export function createDesk(ports: DeskPorts): Desk {
  const context: DeskContext = { ports, store: ports.store, files: keepOfferedFiles(ports.now) };
  const handlers: Handlers = {
    ...appHandlers(context),
    ...dataHandlers(context),
    ...valuesHandlers(context),
    ...householdHandlers(context),
    ...householdFileHandlers(context),
    ...evidenceHandlers(context),
    ...tariffHandlers(context),
    ...estimateHandlers(context),
    ...checkHandlers(context),
  };

  return {
    keepUp: () => keepUp(ports),
    async handle(name, input, work) {
      if (!Object.hasOwn(contract, name)) {
        throw new DeskError({
          code: 'unknown-request',
          message: say('There is no request called “{name}”.', { name: name.slice(0, 60) }),
        });
      }
      refuseIfStopped(work.signal);
      await speakAsSet(readSettings(ports.store));
      reckonWithValues(ports.store, ports.valuesKey);
      const known = name as RequestName;
      const checked = contract[known].input.safeParse(input);
      if (!checked.success) throw new DeskError(explainIssue(checked.error.issues[0]!, input));
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
