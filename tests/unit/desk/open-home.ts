/** A desk with one household, and files brought in as the screens do. */
import type { OpenHousehold } from '../../../src/desk/contract.ts';
import type { IntakeChoices } from '../../../src/intake/intake.ts';
import type { Evidence } from '../../../src/model/shapes/evidence.ts';
import { openDesk } from './open-desk.ts';

const bytesOf = (text: string) => new TextEncoder().encode(text);

export function openHome() {
  const { desk, store } = openDesk();
  const call = async <T>(name: string, input: unknown): Promise<T> => (await desk.handle(name, input, {})) as T;
  let householdId = '';
  return {
    store,
    call,
    async create() {
      householdId = (await call<OpenHousehold>('household.create', { name: 'Larch Rise' })).household.id;
      return householdId;
    },
    async bring(fileName: string, text: string, choices: IntakeChoices = {}): Promise<Evidence> {
      const { fileId } = await call<{ fileId: string }>('file.offer', { fileName, bytes: bytesOf(text) });
      const { evidence } = await call<{ evidence: Evidence | null }>('evidence.accept', {
        fileId,
        householdId,
        choices,
      });
      if (!evidence) throw new Error(`${fileName} was taken for a file that is here already`);
      return evidence;
    },
    open: () => call<OpenHousehold>('household.open', { id: householdId }),
  };
}
