/** The deliberate changes that can be made to one source text, and the text with some of them woven in, each behind a switch. */
import { parseSync } from 'vite';

export interface Change {
  readonly kind: string;
  /** Place of an expression, or of a statement where `text` is undefined: that statement is left out. */
  readonly start: number;
  readonly end: number;
  readonly text: string | undefined;
}

/** A node of the ESTree that Vite's parser gives; only the fields read here. */
interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly [field: string]: unknown;
}

const TURNED: Readonly<Record<string, readonly (readonly [kind: string, operator: string])[]>> = {
  '+': [['arithmetic', '-']],
  '-': [['arithmetic', '+']],
  '*': [['arithmetic', '/']],
  '/': [['arithmetic', '*']],
  '%': [['arithmetic', '*']],
  '**': [['arithmetic', '*']],
  '<': [
    ['boundary', '<='],
    ['comparison', '>='],
  ],
  '<=': [
    ['boundary', '<'],
    ['comparison', '>'],
  ],
  '>': [
    ['boundary', '>='],
    ['comparison', '<='],
  ],
  '>=': [
    ['boundary', '>'],
    ['comparison', '<'],
  ],
  '===': [['comparison', '!==']],
  '!==': [['comparison', '===']],
  '&&': [['logical', '||']],
  '||': [['logical', '&&']],
  '+=': [['arithmetic', '-=']],
  '-=': [['arithmetic', '+=']],
  '*=': [['arithmetic', '/=']],
  '/=': [['arithmetic', '*=']],
  '++': [['arithmetic', '--']],
  '--': [['arithmetic', '++']],
};
const METHODS: Readonly<Record<string, string>> = {
  some: 'every',
  every: 'some',
  find: 'findLast',
  findLast: 'find',
  findIndex: 'findLastIndex',
  findLastIndex: 'findIndex',
  indexOf: 'lastIndexOf',
  push: 'unshift',
};
/** Calls whose change is their own list, unchanged. */
const LEFT_OUT_METHODS = new Set(['filter', 'slice', 'toSorted', 'toReversed', 'sort', 'reverse']);
const MATHS: Readonly<Record<string, string>> = {
  min: 'max',
  max: 'min',
  floor: 'ceil',
  ceil: 'floor',
  round: 'floor',
};
const LEFT_OUT_MATHS = new Set(['sqrt', 'abs', 'exp', 'log', 'sign', 'trunc']);
/** TypeScript's marks around an expression; every other TS node is a type and has nothing that runs. */
const MARKS = new Set(['TSAsExpression', 'TSSatisfiesExpression', 'TSNonNullExpression']);

const isNode = (value: unknown): value is Node => typeof (value as Node | null)?.type === 'string';

/** Every change of the text, in the order of the text. Strings and sentences are left alone. */
export function changesOf(name: string, source: string): Change[] {
  const changes: Change[] = [];
  const at = (node: unknown) => source.slice((node as Node).start, (node as Node).end);
  const isText = (node: unknown): boolean => {
    const { type, value, left, right, operator } = node as Node;
    if (type === 'BinaryExpression' && operator === '+') return isText(left) || isText(right);
    return type === 'TemplateLiteral' || (type === 'Literal' && typeof value === 'string');
  };
  const isComparison = (node: Node) =>
    (node.type === 'BinaryExpression' && /[<>=]/.test(node.operator as string)) ||
    (node.type === 'UnaryExpression' && node.operator === '!');

  function changesAt(node: Node) {
    const change = (kind: string, text: string | undefined, place = node) =>
      changes.push({ kind, start: place.start, end: place.end, text });
    const { left, right, operator, argument, test } = node as unknown as Record<string, Node> & { operator: string };
    switch (node.type) {
      case 'BinaryExpression':
      case 'LogicalExpression':
      case 'AssignmentExpression': {
        if (operator === '+' && isText(node)) break;
        for (const [kind, turned] of TURNED[operator as unknown as string] ?? [])
          change(kind, `${at(left)} ${turned} ${at(right)}`);
        if (/^[-+*/]$/.test(operator)) change('dropped term', at(left));
        if (operator === '??') {
          change('default', at(left));
          change('default', at(right));
        }
        break;
      }
      case 'UpdateExpression': {
        const turned = TURNED[operator]![0]![1];
        change('arithmetic', node.prefix ? turned + at(argument) : at(argument) + turned);
        break;
      }
      case 'UnaryExpression':
        if (operator === '-' || operator === '!') change('unary', at(argument));
        break;
      case 'Literal':
        if (typeof node.value === 'boolean') change('true or false', String(!node.value));
        if (typeof node.value === 'number') {
          // A count is off by one, a measure by a tenth.
          const { value } = node;
          const near = Number.isInteger(value) && value < 100 ? [value + 1, value - 1] : [value * 1.1, value * 0.9];
          for (const other of near) change('number', String(other));
        }
        break;
      case 'ConditionalExpression':
      case 'IfStatement':
      case 'WhileStatement':
      case 'DoWhileStatement':
        if (!isComparison(test!)) change('condition', `!(${at(test)})`, test);
        if (node.type !== 'IfStatement') break;
        for (const branch of [node.consequent, node.alternate] as (Node | null)[]) {
          const [only, ...others] = branch?.type === 'BlockStatement' ? (branch.body as Node[]) : [branch];
          if (only && others.length === 0 && !/^(If|Expression)/.test(only.type)) change('block', undefined, branch!);
        }
        break;
      case 'ReturnStatement':
        if (argument && !isText(argument) && at(argument) !== 'undefined') change('return', 'undefined', argument);
        break;
      case 'ArrowFunctionExpression': {
        const body = node.body as Node;
        if (body.type !== 'BlockStatement' && !isText(body)) change('return', 'undefined', body);
        break;
      }
      case 'ExpressionStatement':
        change('statement', undefined);
        break;
      case 'BlockStatement':
        if ((node.body as Node[]).length > 1) change('block', undefined);
        break;
      case 'CallExpression': {
        const callee = node.callee as Node;
        if (callee.type !== 'MemberExpression' || callee.computed) break;
        const { object, property } = callee as unknown as { object: Node; property: Node };
        const method = property.name as string;
        const given = source.slice(callee.end, node.end);
        if (at(object) === 'Math') {
          if (MATHS[method]) change('Math', `Math.${MATHS[method]}${given}`);
          // Its argument alone: the brackets of a call over several lines may hold a last comma.
          if (LEFT_OUT_MATHS.has(method)) change('Math', at((node.arguments as Node[])[0]));
        } else {
          if (METHODS[method]) change('list', `${at(object)}.${METHODS[method]}${given}`);
          if (LEFT_OUT_METHODS.has(method)) change('list', at(object));
        }
      }
    }
  }

  function walk(node: Node, inChain: boolean) {
    if (node.type.startsWith('TS') && !MARKS.has(node.type)) return;
    if (node.type === 'ImportDeclaration' || node.type === 'TemplateLiteral') return;
    // The links of `a?.b.c` cannot be bracketed one by one: they would no longer stop together.
    if (!inChain) changesAt(node);
    const links = node.type === 'ChainExpression' || inChain;
    for (const [field, value] of Object.entries(node)) {
      if (field === 'key' && !node.computed) continue;
      if (field === 'property' && !node.computed) continue;
      const isLink = links && (field === 'expression' || field === 'object' || field === 'callee');
      for (const child of Array.isArray(value) ? value : [value]) if (isNode(child)) walk(child, isLink);
    }
  }
  walk(parseSync(name, source).program as unknown as Node, false);
  return changes.sort((a, b) => a.start - b.start || b.end - a.end);
}

/** Whether it can be worked out twice without harm: no call but of Math, nothing assigned, nothing made. */
const isPlain = (text: string) =>
  !/[\w\])]\s*\(|=|\+\+|--|\b(await|yield|new)\b/.test(text.replace(/\bMath\.\w+|[=!]==|[<>]=/g, ' '));

/**
 * The text with the numbered changes in it, all asleep: change 7 runs where `__change.on(7)` is true (it is given both
 * forms where they can be compared). In every loop stands
 * a `__change.tick()` that ends it when its time is over.
 */
export function weave(name: string, source: string, numbered: ReadonlyMap<number, Change>): string {
  const places = new Map<string, { start: number; end: number; changes: [number, Change][] }>();
  for (const [number, change] of numbered) {
    const key = `${change.start}-${change.end}`;
    const place = places.get(key) ?? { start: change.start, end: change.end, changes: [] };
    place.changes.push([number, change]);
    places.set(key, place);
  }
  const loops: { start: number; end: number }[] = [];
  const visit = (node: Node) => {
    if (/^(For|While|DoWhile).*Statement$/.test(node.type)) loops.push(node.body as Node);
    for (const value of Object.values(node))
      for (const child of Array.isArray(value) ? value : [value]) if (isNode(child)) visit(child);
  };
  visit(parseSync(name, source).program as unknown as Node);
  const wraps = [
    ...loops.map(({ start, end }) => ({
      start,
      end,
      rank: 0,
      wrap: (inner: string) => `{ __change.tick(); ${inner} }`,
    })),
    ...[...places.values()].map(({ start, end, changes }) => ({
      start,
      end,
      rank: 1,
      wrap: (inner: string, plain: string) =>
        changes.reduce(
          (rest, [number, { text }]) =>
            text === undefined
              ? `{ if (!__change.on(${number})) ${rest} }`
              : `(__change.on(${number}${isPlain(text + plain) ? `, () => (${text}), () => (${plain})` : ''}) ? (${text}) : ${rest})`,
          changes[0]![1].text === undefined ? inner : `(${inner})`,
        ),
    })),
  ].sort((a, b) => a.start - b.start || b.end - a.end || a.rank - b.rank);
  let next = 0;
  const write = (start: number, end: number): string => {
    let written = '';
    let position = start;
    while (next < wraps.length && wraps[next]!.end <= end) {
      const one = wraps[next++]!;
      written +=
        source.slice(position, one.start) + one.wrap(write(one.start, one.end), source.slice(one.start, one.end));
      position = one.end;
    }
    return written + source.slice(position, end);
  };
  return `const __change = globalThis.__change;${write(0, source.length)}`;
}
