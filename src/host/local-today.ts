/** Today by this machine's own clock and zone, as an ISO date. */
export function localToday(now: Date = new Date()): string {
  const two = (part: number) => String(part).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
