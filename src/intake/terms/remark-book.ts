/** Collects what there is to say about one file. Rows alike are named one by one up to five, then counted. */
import type { Remark } from '../../model/shapes/evidence.ts';
import { tell } from '../../model/shapes/told.ts';
import { type IntakeChoices, isSetAside } from './choices.ts';
import type { RemarkCode } from './remark-codes.ts';

type Weight = Remark['weight'];
type Details = Omit<Remark, 'code' | 'weight' | 'file'>;

const NAMED_ROWS = 5;

export interface RemarkBook {
  add(code: RemarkCode, weight: Weight, details?: Details): void;
  /** One remark of many alike: named while there are few, counted after that. */
  tally(code: RemarkCode, weight: Weight, details: Details): void;
  /** How often a tally was made of a column. */
  counted(code: RemarkCode, column: string): number;
  /** @param column only where it is said of this one */
  has(code: RemarkCode, column?: string): boolean;
  refused(): boolean;
  /** Refusals first, then questions, then notes, each in the order they arose. */
  list(): Remark[];
}

const RANK: Record<Weight, number> = { refusal: 0, question: 1, note: 2 };

/** Several meters in one file may give rise to one and the same remark. */
function onceEach(remarks: readonly Remark[]): Remark[] {
  const seen = new Set<string>();
  return remarks.filter((remark) => {
    const key = JSON.stringify(remark);
    return !seen.has(key) && seen.add(key);
  });
}

const LONGEST_LIST = 120;

/** Names for a remark: as many whole ones as there is room for, and how many more there are. */
export function listNames(names: readonly string[], longest = LONGEST_LIST): string {
  // A name may hold a comma.
  const apart = names.some((name) => name.includes(',')) ? '; ' : ', ';
  let shown = names.length;
  while (shown > 1 && names.slice(0, shown).join(apart).length > longest) shown--;
  const listed = names.slice(0, shown).join(apart).slice(0, longest);
  return shown === names.length ? listed : `${listed} … (+${names.length - shown})`;
}

/** A number that was taken, for an answer and as it is said. */
export const tellNumber = (figure: number): Pick<Remark, 'expected' | 'expectedTold'> => ({
  expected: String(figure),
  expectedTold: tell('figure', { figure }),
});

/** Questions about what one record is. */
const OF_A_RECORD =
  /^(unit|degrees|carrier|pulses|direction|title|made|part|word|amount|net|own-use|weather)-|^register-(rising|still)/;

/** @param choices of what they set aside nothing is asked */
export function openRemarkBook(file: string, choices: IntakeChoices = {}): RemarkBook {
  const remarks: Remark[] = [];
  const tallies = new Map<string, { count: number; first: Remark | undefined; effectKWh: number }>();
  const ofColumns = new Map<string, number>();
  const write = (code: RemarkCode, weight: Weight, details: Details = {}): Remark => {
    const remark: Remark = { code, weight, file, ...details };
    // A number beyond all bounds has no effect that could be told.
    if (remark.effectKWh !== undefined && !Number.isFinite(remark.effectKWh)) delete remark.effectKWh;
    remarks.push(remark);
    return remark;
  };
  const isOfNoMatter = (code: RemarkCode, weight: Weight, column: string | undefined) =>
    weight === 'question' && column !== undefined && OF_A_RECORD.test(code) && isSetAside(choices, column);
  return {
    add(code, weight, details) {
      if (!isOfNoMatter(code, weight, details?.column)) write(code, weight, details);
    },
    tally(code, weight, details) {
      const key = `${code}\u0000${details.column}`;
      ofColumns.set(key, (ofColumns.get(key) ?? 0) + 1);
      const known = tallies.get(code);
      if (!known) {
        tallies.set(code, { count: 1, first: undefined, effectKWh: 0 });
        write(code, weight, details);
        return;
      }
      known.count++;
      if (known.count <= NAMED_ROWS) {
        write(code, weight, details);
        return;
      }
      known.effectKWh += details.effectKWh ?? 0;
      if (known.first) {
        known.first.count = (known.first.count ?? 0) + (details.count ?? 1);
        if (details.effectKWh !== undefined && Number.isFinite(known.effectKWh))
          known.first.effectKWh = known.effectKWh;
      } else known.first = write(code, weight, { ...details, count: details.count ?? 1 });
    },
    counted: (code, column) => ofColumns.get(`${code}\u0000${column}`) ?? 0,
    has: (code, column) => remarks.some((r) => r.code === code && (column === undefined || r.column === column)),
    refused: () => remarks.some((r) => r.weight === 'refusal'),
    list: () => onceEach(remarks).toSorted((a, b) => RANK[a.weight] - RANK[b.weight]),
  };
}
