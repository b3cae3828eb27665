/** Every input that the promise's sums rest on, once each, the surest first. */
import type { Working, WorkingInput } from '../model/working.ts';
import type { PromiseParts } from './parts.ts';

const ORDER = { measured: 0, estimated: 1, assumed: 2 } as const;

/** The sums behind what the document says: heat, machine, then the cost of each system. */
export function listWorkings({ appraisal }: PromiseParts): Working[] {
  const { demand, machine, systems, versus } = appraisal;
  return [
    demand.total.working,
    demand.space.working,
    demand.water.working,
    ...demand.estimates.map((estimate) => estimate.working),
    machine.whole.working,
    machine.space.working,
    machine.water.working,
    ...systems.flatMap((system) => [system.cost.working, system.carbonKg.working]),
    ...versus.slice(0, 1).map((one) => one.saving.working),
  ];
}

function collect(working: Working, into: Map<string, WorkingInput>): void {
  const stepTitles = new Set(working.steps?.map((step) => step.title));
  for (const input of working.inputs) {
    // An input that a step works out is not an assumption of its own.
    if (stepTitles.has(input.name)) continue;
    const key = `${input.name}|${input.value}|${input.unit ?? ''}|${input.origin}`;
    if (!into.has(key)) into.set(key, input);
  }
  for (const step of working.steps ?? []) collect(step, into);
}

export function listAssumptions(parts: PromiseParts): WorkingInput[] {
  const found = new Map<string, WorkingInput>();
  for (const working of listWorkings(parts)) collect(working, found);
  return [...found.values()].toSorted((a, b) => ORDER[a.grade] - ORDER[b.grade]);
}

/** Publications named by any sum, once each, in the order of first mention. */
export function listSources(parts: PromiseParts): string[] {
  const { climate, machine } = parts.appraisal;
  const sources = new Set<string>([climate.source, machine.fieldSpread.source]);
  const visit = (working: Working) => {
    if (working.source) sources.add(working.source);
    for (const step of working.steps ?? []) visit(step);
  };
  for (const working of listWorkings(parts)) visit(working);
  sources.delete('');
  return [...sources];
}
