/** Keeps a line to the host while the page is open, by which the host knows that somebody is still there. */
const AGAIN_MS = 5000;
const TRIES = 6;

/** The sleep of a computer breaks the line, so it is tried again; not for ever, since the host may have ended. */
export function holdLine(token: string, tries = TRIES): void {
  const line = new WebSocket(`${window.location.origin.replace(/^http/, 'ws')}/`, [token]);
  let left = tries - 1;
  line.addEventListener('open', () => {
    left = TRIES;
  });
  line.addEventListener('close', () => {
    if (left > 0) setTimeout(() => holdLine(token, left), AGAIN_MS);
  });
}
