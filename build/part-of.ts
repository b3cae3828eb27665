import { fileURLToPath } from 'node:url';

interface Modules {
  getModuleInfo(id: string): { readonly importedIds: readonly string[] } | null;
}

/** All modules that a file of the sources needs at once, itself among them. */
function neededBy(file: string, modules: Modules): Set<string> {
  const needed = new Set([fileURLToPath(new URL(`../src/${file}`, import.meta.url))]);
  for (const one of needed) for (const next of modules.getModuleInfo(one)?.importedIds ?? []) needed.add(next);
  return needed;
}

/**
 * The modules that `file` needs at once as one file of their own, but for those of a part of higher priority and those
 * that one of `others` needs too.
 */
export function partOf(name: string, file: string, priority: number, ...others: readonly string[]) {
  let own: Set<string> | null = null;
  const nameOf = (id: string, modules: Modules) => {
    if (own === null) {
      own = neededBy(file, modules);
      for (const other of others) for (const shared of neededBy(other, modules)) own.delete(shared);
    }
    return own.has(id) ? name : null;
  };
  return { debugName: name, name: nameOf, priority, includeDependenciesRecursively: false };
}
