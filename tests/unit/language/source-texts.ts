/** Reads the texts out of the sources: what is said, and English that is written past `say`. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { type ESTree, parseSync } from 'vite';

type Node = ESTree.Node & { readonly [key: string]: unknown };

export interface SourceText {
  readonly file: string;
  readonly line: number;
  readonly text: string;
}
export interface SaidText extends SourceText {
  /** Names of the gaps that the call fills; null where they cannot be read off the source. */
  readonly gaps: readonly string[] | null;
  /** Said while the module loads, when nobody knows the language yet. */
  readonly tooEarly: boolean;
}
export interface SourceTexts {
  readonly said: readonly SaidText[];
  readonly unsaid: readonly SourceText[];
}

const root = resolve(import.meta.dirname, '../../..');
const SAYING = new Set(['say', 'inWords', 'sayParts', 'phrase']);
/** Attributes and fields whose text a person reads, even a single word. */
const SHOWN =
  /^(label|title|heading|head|note|sentence|text|caption|why|remedy|message|term|meaning|question|answer|summary|alt|placeholder|what|aria-label|aria-description|aria-roledescription|aria-valuetext|legend|said|formula)$/;
const WORDS = /[A-Za-z]{2,}[,;:.]? [A-Za-z]{2,}/;
/** Signs of units and of date patterns, the same in every language. */
const SIGNS = /\b(MWh|kWh|Wh|kW|MW|kB|MB|GB|psi|bar|kPa|MPa|mm|cm|km|kg|min|CO₂e|d?\.? ?M{3,4} y{4})\b/g;
const LETTERS = /[A-Za-z]{2,}/;

export function sourceFiles(folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name) && !name.startsWith('german'))
    .map((name) => join(folder, name))
    .toSorted();
}

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null && 'type' in value;
const literal = (node: unknown): string | null =>
  isNode(node) && node.type === 'Literal' && typeof node.value === 'string'
    ? node.value
    : isNode(node) && node.type === 'TemplateLiteral' && (node.quasis as ESTree.TemplateElement[]).length === 1
      ? ((node.quasis as ESTree.TemplateElement[])[0]!.value.cooked ?? null)
      : null;

/** The literals that an expression may come to: `busy ? 'Wait' : 'Go'` gives both. */
function literalsOf(node: unknown): string[] {
  const own = literal(node);
  if (own !== null) return [own];
  if (isNode(node) && node.type === 'ConditionalExpression')
    return [...literalsOf(node.consequent), ...literalsOf(node.alternate)];
  if (isNode(node) && node.type === 'LogicalExpression') return [...literalsOf(node.left), ...literalsOf(node.right)];
  return [];
}

function gapsOf(node: unknown): string[] | null {
  if (node === undefined) return [];
  if (!isNode(node) || node.type !== 'ObjectExpression') return null;
  const names = (node.properties as Node[]).map((property) => {
    const key = property.key as Node | undefined;
    return property.type === 'Property' && key?.type === 'Identifier' ? String(key.name) : null;
  });
  return names.every((name) => name !== null) ? names : null;
}

const COMMENT = /\/\*[\s\S]*?\*\/|(?<=^|\s)\/\/.*/gm;
const QUOTED = /'((?:[^'\\\n]|\\.)*)'|"((?:[^"\\\n]|\\.)*)"|`((?:[^`\\$\n]|\\.)*)`|(\w+)(?=\??:)/g;

/** Whatever stands in quotes in a source, and the name of each field: what a table of texts may hold. */
export const quotedIn = (file: string): string[] =>
  [...readFileSync(join(root, file), 'utf8').replace(COMMENT, '').matchAll(QUOTED)].map(([, ...groups]) =>
    groups.find((one) => one !== undefined)!.replaceAll(/\\(.)/g, '$1'),
  );

export function readSource(file: string): SourceTexts {
  const source = readFileSync(join(root, file), 'utf8');
  const said: SaidText[] = [];
  const unsaid: SourceText[] = [];
  const at = (node: Node, text: string): SourceText => ({
    file,
    line: source.slice(0, node.start).split('\n').length,
    text: text.replace(/\s+/g, ' ').trim(),
  });

  function visit(node: Node, inFunction: boolean, parent: Node | null, key: string): void {
    switch (node.type) {
      case 'ImportDeclaration':
      case 'ExportAllDeclaration':
        return;
      case 'ThrowStatement':
        // A refusal is shown; any other error is our own failure.
        if (!source.slice(node.start, node.end).includes('DeskError(')) return;
        break;
      case 'CallExpression': {
        const callee = (node.callee as Node).type === 'Identifier' ? String((node.callee as Node).name) : '';
        const target = node.callee as Node;
        const called = target.type === 'MemberExpression' ? String((target.property as Node).name) : callee;
        const given = node.arguments as Node[];
        if (isNode(target) && target.type === 'CallExpression' && (target.callee as Node).name === 'sentences') {
          for (const { value } of (given[0] as Node).properties as { value: Node }[])
            for (const text of literalsOf(value)) said.push({ ...at(value, text), text, gaps: null, tooEarly: false });
          return;
        }
        if (SAYING.has(callee)) {
          const gaps = callee === 'phrase' ? null : gapsOf(given[1]);
          for (const text of literalsOf(given[0]))
            said.push({ ...at(node, text), text, gaps, tooEarly: !inFunction && callee !== 'phrase' });
          for (const one of literalsOf(given[0]).length > 0 ? given.slice(1) : given)
            visit(one, inFunction, node, 'arguments');
          return;
        }
        if (callee === 'counted') {
          const [one] = literalsOf(given[1]);
          const many = literalsOf(given[2])[0] ?? (one === undefined ? undefined : `${one}s`);
          for (const text of [one, many])
            if (text !== undefined) said.push({ ...at(node, text), text, gaps: null, tooEarly: !inFunction });
          visit(given[0]!, inFunction, node, 'arguments');
          return;
        }
        if (/^(querySelector(All)?|closest|matches|matchMedia)$/.test(called)) return;
        break;
      }
      case 'JSXElement': {
        const opening = node.openingElement as Node;
        if ((opening.name as Node).name === 'Said') {
          const attributes = opening.attributes as Node[];
          const value = attributes.find((one) => (one.name as Node)?.name === 'text')?.value;
          const inner = isNode(value) && value.type === 'JSXExpressionContainer' ? value.expression : value;
          for (const text of literalsOf(inner)) said.push({ ...at(node, text), text, gaps: null, tooEarly: false });
          for (const one of attributes)
            if ((one.name as Node)?.name !== 'text') visit(one, inFunction, node, 'attributes');
          return;
        }
        break;
      }
      case 'JSXText':
        if (LETTERS.test(String(node.value))) unsaid.push(at(node, String(node.value)));
        return;
      case 'JSXAttribute': {
        const name = (node.name as Node).type === 'JSXIdentifier' ? String((node.name as Node).name) : '';
        const value = node.value;
        if (
          /^(className|id|key|type|role|name|htmlFor|d|viewBox|href|style|transform|preserveAspectRatio)$/.test(name) ||
          name.startsWith('data-')
        )
          return;
        if (isNode(value) && value.type === 'Literal') {
          const text = String(value.value);
          if (SHOWN.test(name) ? LETTERS.test(text) : WORDS.test(text)) unsaid.push(at(node, text));
          return;
        }
        break;
      }
      case 'TSLiteralType':
      case 'TSEnumDeclaration':
      case 'TSInterfaceDeclaration':
      case 'TSTypeAliasDeclaration':
        return;
      case 'Literal':
        if (typeof node.value === 'string') {
          const field = parent?.type === 'Property' && key === 'value' ? (parent.key as Node) : null;
          // Values that a choice stands for.
          if (field?.type === 'Identifier' && field.name === 'value') return;
          const shown = field?.type === 'Identifier' && SHOWN.test(String(field.name));
          if (parent?.type === 'Property' && key === 'key') return;
          if (parent?.type === 'BinaryExpression' && /^[!=]==?$/.test(String(parent.operator))) return;
          const plain = node.value.replace(SIGNS, '');
          if (shown ? LETTERS.test(plain) : WORDS.test(plain)) unsaid.push(at(node, node.value));
        }
        return;
      case 'TemplateLiteral': {
        const text = (node.quasis as ESTree.TemplateElement[]).map(({ value }) => value.cooked).join('{}');
        const plain = text.replace(SIGNS, '');
        if (WORDS.test(plain) || /[A-Za-z]{3,} \{\}|\{\} [A-Za-z]{3,}/.test(plain)) unsaid.push(at(node, text));
        break;
      }
    }
    const inside =
      inFunction ||
      node.type === 'ArrowFunctionExpression' ||
      node.type === 'FunctionDeclaration' ||
      node.type === 'FunctionExpression';
    for (const [name, child] of Object.entries(node)) {
      if (Array.isArray(child)) for (const one of child) if (isNode(one)) visit(one, inside, node, name);
      if (isNode(child)) visit(child, inside, node, name);
    }
  }
  visit(parseSync(file, source).program as unknown as Node, false, null, '');
  return { said, unsaid };
}
