import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';

/** The folder rule: arrows go one way. Each folder lists what it may import besides itself. */
const MAY_IMPORT: Record<string, readonly string[]> = {
  'src/model': [],
  'src/reference': ['src/model'],
  'src/intake': ['src/model'],
  'src/words': ['src/model', 'src/intake'],
  'src/charts': ['src/words', 'src/model'],
  'src/leave-behind': ['src/charts', 'src/words', 'src/model', 'src/reference'],
  'src/store': ['src/model', 'src/intake'],
  'src/desk': ['src/store', 'src/intake', 'src/model', 'src/words', 'src/reference', 'src/leave-behind'],
  'src/host': ['src/desk', 'src/store', 'src/intake', 'src/model', 'src/words', 'src/reference', 'src/leave-behind'],
  'src/screens': [
    'src/charts',
    'src/words',
    'src/model',
    'src/reference',
    'src/intake/intake.ts',
    'src/desk/contract.ts',
    'src/desk/desk-error.ts',
    'src/desk/limits.ts',
  ],
  electron: ['src/desk', 'src/store', 'src/host', 'src/leave-behind', 'src/reference'],
};
/** Packages that would make these folders impure. */
const FORBIDDEN_PACKAGES: Record<string, RegExp> = {
  'src/model': /^(node:|react|recharts|better-sqlite3|electron)/,
  'src/reference': /^(node:|react|recharts|better-sqlite3|electron)/,
  'src/intake': /^(node:|react|recharts|better-sqlite3|electron)/,
  'src/words': /^(node:|react|recharts|better-sqlite3|electron)/,
  'src/charts': /^(node:|better-sqlite3|electron)/,
  'src/screens': /^(node:|better-sqlite3|electron)/,
};

const root = resolve(import.meta.dirname, '../..');

function sourceFiles(folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => join(folder, name).replaceAll('\\', '/'));
}

/** Every module named in an import or export of the file, types included. */
function importsOf(file: string): string[] {
  const text = readFileSync(join(root, file), 'utf8');
  const pattern =
    /(?:^|\n)\s*(?:import|export)\s[^;'"]*?from\s*['"]([^'"]+)['"]|(?:^|\n)\s*import\s*['"]([^'"]+)['"]|\bimport\(\s*['"]([^'"]+)['"]/g;
  return [...text.matchAll(pattern)].map((m) => (m[1] ?? m[2] ?? m[3])!);
}

const inProject = (file: string, name: string) =>
  relative(root, resolve(root, dirname(file), name))
    .replaceAll('\\', '/')
    .replace(/\?.*$/, '');

describe('the folder rule', () => {
  for (const [folder, allowed] of Object.entries(MAY_IMPORT)) {
    test(`${folder} imports only ${allowed.join(', ') || 'itself'}`, () => {
      const breaches = sourceFiles(folder).flatMap((file) =>
        importsOf(file)
          .filter((name) => {
            if (!name.startsWith('.')) return FORBIDDEN_PACKAGES[folder]?.test(name) ?? false;
            const target = inProject(file, name);
            return ![folder, ...allowed].some((prefix) => target === prefix || target.startsWith(`${prefix}/`));
          })
          .map((name) => `${file} imports ${name}`),
      );
      expect(breaches).toEqual([]);
    });
  }

  test('what starts the program waits for no sums, words or readers: they are loaded by the desk, in its own thread', () => {
    const loaded = new Set(['src/host/main.ts']);
    for (const file of loaded)
      for (const [, name] of readFileSync(join(root, file), 'utf8').matchAll(
        /(?:^|\n)(?:import|export)(?! type)\s[^;'"]*?from\s*['"](\.[^'"]+)['"]/g,
      ))
        loaded.add(inProject(file, name!));
    expect(loaded.size).toBeGreaterThan(8);
    expect([...loaded].filter((file) => /^src\/(model|intake|words|reference|leave-behind)\//.test(file))).toEqual([]);
  });

  test('no import cycles', () => {
    const files = ['src', 'electron'].flatMap(sourceFiles);
    const graph = new Map(
      files.map((file) => [
        file,
        importsOf(file)
          .filter((name) => name.startsWith('.'))
          .map((name) => inProject(file, name)),
      ]),
    );
    const done = new Set<string>();
    const cycles: string[] = [];
    const visit = (file: string, trail: string[]) => {
      if (trail.includes(file)) cycles.push([...trail.slice(trail.indexOf(file)), file].join(' → '));
      if (done.has(file) || trail.includes(file)) return;
      for (const next of graph.get(file) ?? []) visit(next, [...trail, file]);
      done.add(file);
    };
    for (const file of files) visit(file, []);
    expect(cycles).toEqual([]);
  });

  for (const area of ['src/model', 'src/intake']) {
    test(`the rooms of ${area}: arrows only to rooms above in its README`, () => {
      const rooms = [...readFileSync(join(root, area, 'README.md'), 'utf8').matchAll(/^\d+\. `([^`]+)`/gm)].map(
        (m) => m[1]!,
      );
      const roomOf = (file: string) => dirname(relative(area, file).replaceAll('\\', '/'));
      const breaches = sourceFiles(area).flatMap((file) => {
        if (!rooms.includes(roomOf(file))) return [`${roomOf(file)} is not listed in ${area}/README.md`];
        return importsOf(file)
          .filter((name) => name.startsWith('.'))
          .map((name) => inProject(file, name))
          .filter(
            (target) => target.startsWith(`${area}/`) && rooms.indexOf(roomOf(target)) > rooms.indexOf(roomOf(file)),
          )
          .map((target) => `${file} imports ${target}`);
      });
      expect(breaches).toEqual([]);
      expect(rooms.length).toBe(new Set(sourceFiles(area).map(roomOf)).size);
    });
  }
});

/** The names that an import or export statement takes from a file of the project, types left out. */
function namesTaken(file: string): { from: string; name: string }[] {
  const text = readFileSync(join(root, file), 'utf8');
  return [...text.matchAll(/(?:^|\n)\s*(?:import|export)\s+(?!type\b)\{([^}]*)\}\s*from\s*'(\.[^']+)'/g)].flatMap((m) =>
    m[1]!
      .split(',')
      .map((one) => one.trim())
      .filter((one) => one !== '' && !one.startsWith('type '))
      .map((one) => ({ from: inProject(file, m[2]!), name: one.split(/\s+as\s+/)[0]! })),
  );
}

test('what the outside checks call, the product calls', () => {
  const product = ['src', 'electron', 'build', 'sample-bills'].flatMap(sourceFiles);
  const taken = new Set(product.flatMap((file) => namesTaken(file).map(({ from, name }) => `${from} ${name}`)));
  const onlyTested = sourceFiles('tests/outside')
    .flatMap(namesTaken)
    .filter(({ from, name }) => from.startsWith('src/') && !taken.has(`${from} ${name}`))
    .filter(({ from, name }) => {
      // A name that its own file uses beside its declaration is called as well.
      const code = readFileSync(join(root, from), 'utf8').replace(/\/\*[\s\S]*?\*\/|\/\/[^\n]*/g, '');
      return (code.match(new RegExp(`\\b${name}\\b`, 'g')) ?? []).length < 2;
    })
    .map(({ from, name }) => `${from} ${name}`);
  expect([...new Set(onlyTested)]).toEqual([]);
});
