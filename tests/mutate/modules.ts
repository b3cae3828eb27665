/** Loads the project's modules afresh as often as wanted: each is read and compiled once, then only run again. */
import { createServer } from 'vite';
import { type Change, weave } from './changes.ts';
import * as frame from './test-frame.ts';

type Exports = Record<string, unknown>;
type Body = (...names: unknown[]) => Promise<void>;
type Source = { readonly external: Exports } | { readonly id: string; readonly file: string; readonly body: Body };

const BODY_NAMES = ['exports', 'import_meta', 'import', 'dynamic_import', 'exportAll', 'exportName'];
const AsyncFunction = (async () => {}).constructor as new (...words: string[]) => Body;

/** `numbered`: the changes to weave in, by file. `watch` hears which module, or which test, reads from which module. */
export async function openModules(numbered: ReadonlyMap<string, ReadonlyMap<number, Change>>) {
  const root = new URL('../..', import.meta.url).pathname;
  const server = await createServer({
    configFile: `${root}build/vitest.config.ts`,
    logLevel: 'error',
    appType: 'custom',
    server: { middlewareMode: true, hmr: false, ws: false, watch: null },
    optimizeDeps: { noDiscovery: true },
    plugins: [
      {
        name: 'weave-changes',
        enforce: 'pre',
        transform: (code, id) =>
          id.startsWith(`${root}src/`) && /\.tsx?$/.test(id)
            ? weave(id, code, numbered.get(id) ?? new Map())
            : undefined,
      },
    ],
  });
  const sources = new Map<string, Promise<Source>>();

  async function read(url: string, importer: string | undefined): Promise<Source> {
    if (url === 'vitest') return { external: frame as unknown as Exports };
    const found = await server.environments.ssr.fetchModule(url, importer, { inlineSourceMap: false } as object);
    if ('externalize' in found) {
      const external = (await import(found.externalize)) as Exports;
      if (found.type !== 'commonjs') return { external };
      const own = external.default as Exports;
      return { external: new Proxy(external, { get: (it, name: string) => it[name] ?? own[name] }) };
    }
    if (!('code' in found)) throw new Error(`${url} has no code`);
    const body = new AsyncFunction(...BODY_NAMES.map((name) => `__vite_ssr_${name}__`), `"use strict";${found.code}`);
    return { id: found.id, file: found.file ?? found.id, body };
  }

  /** A new graph of modules in which nothing has run yet. */
  function freshGraph(watch: {
    reads(module: string): void;
    loads<T>(module: string, run: () => Promise<T>): Promise<T>;
  }) {
    const loaded = new Map<string, { exports: Exports; whole: Promise<unknown> | undefined }>();

    async function load(url: string, importer?: string, waits = false): Promise<Exports> {
      const key = url.startsWith('.') ? `${importer} ${url}` : url;
      const source = await (sources.get(key) ?? sources.set(key, read(url, importer)).get(key)!);
      if ('external' in source) return source.external;
      const { id, file, body } = source;
      const known = loaded.get(id);
      if (known) {
        if (waits) await known.whole;
        return known.exports;
      }
      const exports: Exports = {};
      const module: { exports: Exports; whole: Promise<unknown> | undefined } = { exports, whole: undefined };
      loaded.set(id, module);
      const show = (name: string, get: () => unknown) =>
        Object.defineProperty(exports, name, {
          enumerable: true,
          configurable: true,
          get: () => {
            watch.reads(id);
            return get();
          },
        });
      const showAll = (from: Exports) => {
        for (const name of Object.keys(from))
          if (name !== 'default' && !(name in exports)) show(name, () => from[name]);
      };
      const meta = {
        url: `file://${file}`,
        dirname: file.replace(/\/[^/]*$/, ''),
        filename: file,
        env: { MODE: 'test' },
      };
      module.whole = watch.loads(id, () =>
        body(
          exports,
          meta,
          (name: string) => load(name, file),
          (name: string) => load(name, file, true),
          showAll,
          show,
        ),
      );
      await module.whole;
      return exports;
    }
    return { load };
  }
  return { freshGraph, close: () => server.close() };
}
