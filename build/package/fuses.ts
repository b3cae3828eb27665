/** Reads Electron's fuses back out of a program: a mark, the version of the wire, its length, one sign a fuse. */

/** Fixed by Electron (docs: "Electron Fuses"). */
export const SENTINEL = Buffer.from('dL7pKGdnNz796PbbjQWNKmHXBZaB9tsX');

/** In the order of the wire, version 1. */
const NAMES = [
  'runAsNode',
  'cookieEncryption',
  'nodeOptionsEnvironmentVariable',
  'nodeCliInspectArguments',
  'embeddedAsarIntegrityValidation',
  'onlyLoadAppFromAsar',
  'browserProcessSpecificV8Snapshot',
  'grantFileProtocolExtraPrivileges',
] as const;
const STATES: Readonly<Record<string, string>> = { '0': 'off', '1': 'on', r: 'removed' };

/** Throws where the program has no wire of the version that is known here. */
export function readFuses(program: Buffer): Record<string, string> {
  const at = program.indexOf(SENTINEL);
  if (at < 0) throw new Error('The program has no fuses.');
  const [version, length] = [program[at + SENTINEL.length], program[at + SENTINEL.length + 1]!];
  if (version !== 1) throw new Error(`The wire of the fuses has version ${version}; 1 is known.`);
  const wire = program
    .subarray(at + SENTINEL.length + 2)
    .subarray(0, length)
    .toString('latin1');
  return Object.fromEntries(NAMES.slice(0, length).map((name, index) => [name, STATES[wire[index]!] ?? 'unknown']));
}
