/** How a page gets into the loopback host, and what each of its requests carries. */
import { DeskError, type DeskRefusal } from '../desk/desk-error.ts';

export interface Line {
  progress?: number;
  result?: unknown;
  refusal?: DeskRefusal;
}

export interface Content {
  readonly body: BodyInit;
  readonly headers: Readonly<Record<string, string>>;
}

export const asJson = (input: unknown): Content => ({
  body: JSON.stringify(input),
  headers: { 'Content-Type': 'application/json' },
});

export const requestOf = (token: string, { body, headers }: Content): RequestInit => ({
  method: 'POST',
  body,
  headers: { ...headers, 'X-Plainwarmth-Token': token },
});

/** The page's own token, for the code that its address brought; the code is worth nothing afterwards. */
export async function takeTokenFor(base: string, code: string): Promise<string> {
  const response = await fetch(`${base}/door`, { method: 'POST', headers: { 'X-Plainwarmth-Code': code } });
  // An answer that brings no progress is one line.
  const { result, refusal } = JSON.parse(await response.text()) as Line;
  if (refusal) throw new DeskError(refusal);
  return (result as { token: string }).token;
}
