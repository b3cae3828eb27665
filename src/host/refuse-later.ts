/** What went wrong, in the host's threads: the sentences for it are loaded only when there is something to say. */
import { DeskError, type DeskRefusal } from '../desk/desk-error.ts';

export async function refusalOf(error: unknown): Promise<DeskRefusal> {
  if (error instanceof DeskError) return error.toRefusal();
  const { toRefusal } = await import('../desk/refusal.ts');
  return toRefusal(error);
}
