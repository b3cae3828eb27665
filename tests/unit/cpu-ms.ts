/** Milliseconds that this process has had of the processor: unlike a clock it stands still while other programs have it. */
export function cpuMs(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}
