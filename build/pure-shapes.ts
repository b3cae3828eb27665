import type { Plugin } from 'vite';

/** A schema that is made does nothing by itself: marked so, those that the window never asks are left out of it. */
export function pureShapes(): Plugin {
  return {
    name: 'pure-shapes',
    transform: {
      order: 'pre',
      filter: { id: /\/src\/.*\.ts$/, code: /import \{[^}]*\} from 'zod'/ },
      handler(code) {
        let marked = code;
        for (const statement of this.parse(code, { lang: 'ts' }).body.toReversed()) {
          const made = statement.type === 'ExportNamedDeclaration' ? statement.declaration : statement;
          if (made?.type !== 'VariableDeclaration') continue;
          const value = made.declarations[0]?.init;
          if (value?.type !== 'CallExpression') continue;
          const [before, call, after] = [code.slice(0, value.start), code.slice(value.start, value.end), value.end];
          marked = `${before}/* @__PURE__ */ (() => ${call})()${marked.slice(after)}`;
        }
        return { code: marked, map: null };
      },
    },
  };
}
