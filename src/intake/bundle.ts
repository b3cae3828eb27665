/** Pages of one bill that are handed over together, packed into one file in their order. */
/** Pictures are packed already; this only lays them behind each other, always alike. */
export async function bundle(files: readonly (readonly [name: string, bytes: Uint8Array])[]): Promise<Uint8Array> {
  // Every start comes by here, and hardly any packs pages.
  const { zipSync } = await import('fflate');
  return zipSync(
    Object.fromEntries(
      files.map(([name, bytes], i) => [`${i + 1} ${name}`, [bytes, { level: 0, mtime: '1980-01-02' }] as const]),
    ) as Parameters<typeof zipSync>[0],
  );
}
