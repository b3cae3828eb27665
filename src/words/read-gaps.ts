/** The data of a question, a fault or a cause as its sentence asks for it. */
import type { Wording } from '../model/shapes/told.ts';
import { sayTold } from './say-told.ts';

/** What the model hands over beside a code. */
export type CodeData = Readonly<Record<string, number | Wording>>;
export interface GapReader {
  readonly number: (name: string) => number;
  readonly text: (name: string) => string;
}

export const readGaps = (data: CodeData): GapReader => ({
  number: (name) => Number(data[name] ?? Number.NaN),
  text: (name) => {
    const value = data[name] ?? '';
    return typeof value === 'object' ? sayTold(value) : String(value);
  },
});
