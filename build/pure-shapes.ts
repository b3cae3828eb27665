import type { Plugin } from 'vite';

/**
 * A schema that is made does nothing by itself: marked so, it is left out of the window, which asks none. Their library
 * would be compiled before the first chart, and builds functions from text, which the content security policy forbids.
 */
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
          const called = value?.type === 'TSAsExpression' ? value.expression : value;
          if (!value || called?.type !== 'CallExpression') continue;
          const [before, call, after] = [code.slice(0, value.start), code.slice(value.start, value.end), value.end];
          marked = `${before}/* @__PURE__ */ (() => ${call})()${marked.slice(after)}`;
        }
        return { code: marked, map: null };
      },
    },
    generateBundle(_options, bundle) {
      for (const part of Object.values(bundle)) {
        if (part.type !== 'chunk' || !part.moduleIds.some((id) => id.includes('/node_modules/zod/'))) continue;
        throw new Error(`${part.fileName} makes a schema: in the window ask a list or a function in its place.`);
      }
    },
  };
}
