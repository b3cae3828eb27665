/** What the written estimate's sums rest on: each input once, in the chapter that needs it first, the surest first. */
import type { Lifetime } from '../model/shapes/lifetime.ts';
import type { ToldCode, Wording } from '../model/shapes/told.ts';
import type { Working, WorkingInput } from '../model/shapes/working.ts';
import { say } from '../words/say.ts';
import { sayTold } from '../words/say-told.ts';
import { systemInSentence } from '../words/systems.ts';
import { inputKey } from '../words/working.ts';
import type { EstimateParts } from './parts.ts';

const ORDER = { measured: 0, estimated: 1, assumed: 2 } as const;

export interface Chapter {
  readonly title: string;
  readonly note?: string;
  readonly workings: readonly Working[];
}
export interface AssumptionChapter {
  readonly title: string;
  readonly inputs: readonly WorkingInput[];
}

/** The sums behind what the document says: heat, machine, then a year of the heat pump and of what stands beside it. */
export function listChapters({ estimate, appraisal, pump, beside, versus }: EstimateParts): Chapter[] {
  const { demand, machine } = appraisal;
  const costs = [pump, ...(beside ? [beside] : [])].map(({ cost }) => cost.working);
  return [
    { title: say('The heat'), workings: [demand.total.working] },
    { title: say('Heat pump'), workings: [machine.whole.working] },
    { title: say('A year with the heat pump'), workings: [pump.cost.working, pump.carbonKg.working] },
    ...(beside
      ? [
          {
            title: say('A year with {other}', { other: systemInSentence(beside.id, beside.kind) }),
            workings: [beside.cost.working],
          },
        ]
      : []),
    ...(versus ? [{ title: say('The difference'), workings: [versus.saving.working] }] : []),
    ...(estimate.lifetime
      ? [
          {
            title: say('The years to come'),
            note: say('Each further sum rests on the inputs of the first and on those that stand with it.'),
            workings: yearsWorkings(estimate.lifetime, costs),
          },
        ]
      : []),
  ];
}

/** The sums of the years to come rest on nearly the same inputs: what stood with the first is not written out again. */
function yearsWorkings(lifetime: Lifetime, costs: readonly Working[]): Working[] {
  const { saved, payback, instalments, netPresentValue, annual } = lifetime;
  const first = { ...saved.working, steps: costs };
  const others = [
    ...(payback ? [payback.simple, payback.discounted] : []),
    ...(instalments ? [instalments] : []),
    ...(netPresentValue ? [netPresentValue] : []),
    ...(annual ? [annual.pump, annual.beside] : []),
  ].map(({ working }) => working);
  const told = new Set(first.inputs.map(inputKey));
  return [
    first,
    ...others.map(({ steps: _, ...working }) => {
      const inputs = working.inputs.filter((input) => !told.has(inputKey(input)));
      for (const input of inputs) told.add(inputKey(input));
      return { ...working, inputs };
    }),
  ];
}

/** Six digits tell two results apart whatever their units are called; whole numbers may meet by chance and are kept. */
const resultKey = (value: number) => (Number.isInteger(value) ? null : value.toPrecision(6));
/** Origins of values that a sum has worked out on the way, though without steps of their own; as text in older estimates. */
const WORKED_OUT: ReadonlySet<string> = new Set<ToldCode>([
  'sum-below',
  'energy-bought-origin',
  'by-factor-or-efficiency',
  'from-cost-of-year',
  'from-cost-of-year-below',
  'straight-line',
  'sum-below-with-error',
  'heat-needed-origin',
  'rooms-by-factor',
  'water-by-factor',
  'heat-by-factor',
  'power-by-year',
  'power-by-running',
  'power-by-full-load',
  'power-by-season',
  'power-by-circulating',
]);
const WORKED_OUT_TEXT =
  /^(sum below|energy bought|heat needed|heat \/|heat for [a-z ]+ \/|power ×|cost of a year|price × years left)/;

const isWorkedOut = (origin: Wording): boolean =>
  typeof origin === 'string' ? WORKED_OUT_TEXT.test(origin) : WORKED_OUT.has(origin.code);

/** Every result that some sum works out: where it comes back as an input it is no assumption of its own. */
function collectResults(working: Working, into: Set<string>): void {
  const key = resultKey(working.result.value);
  if (key !== null) into.add(key);
  for (const step of working.steps ?? []) collectResults(step, into);
}

function collectInputs(working: Working, into: Map<string, WorkingInput>, results: ReadonlySet<string>): void {
  for (const input of working.inputs) {
    const key = typeof input.value === 'number' ? resultKey(input.value) : null;
    if ((key !== null && results.has(key)) || isWorkedOut(input.origin)) continue;
    if (!into.has(inputKey(input))) into.set(inputKey(input), input);
  }
  for (const step of working.steps ?? []) collectInputs(step, into, results);
}

export function listAssumptions(parts: EstimateParts): AssumptionChapter[] {
  const chapters = listChapters(parts);
  const results = new Set<string>();
  for (const { workings } of chapters) for (const working of workings) collectResults(working, results);
  const told = new Set<string>();
  return chapters
    .map(({ title, workings }) => {
      const found = new Map<string, WorkingInput>();
      for (const working of workings) collectInputs(working, found, results);
      const inputs = [...found].filter(([key]) => !told.has(key)).map(([, input]) => input);
      for (const key of found.keys()) told.add(key);
      return { title, inputs: inputs.toSorted((a, b) => ORDER[a.grade] - ORDER[b.grade]) };
    })
    .filter(({ inputs }) => inputs.length > 0);
}

/** Publications named by any sum, once each, in the order of first mention. */
export function listSources(parts: EstimateParts): Wording[] {
  const { climate, machine, systems } = parts.appraisal;
  const sources = new Map<string, Wording>();
  const add = (source: Wording) => {
    const key = sayTold(source);
    if (key !== '' && !sources.has(key)) sources.set(key, source);
  };
  add(climate.source);
  add(machine.fieldSpread.source);
  const visit = (working: Working) => {
    if (working.source) add(working.source);
    for (const step of working.steps ?? []) visit(step);
  };
  for (const { workings } of listChapters(parts)) for (const working of workings) visit(working);
  for (const system of systems) visit(system.cost.working);
  return [...sources.values()];
}
