/** A made file read as a home in Britain has it, unless told otherwise. */
import type { IntakeChoices, IntakePreview } from '../../../src/intake/intake.ts';
import { readFile } from '../../../src/intake/read-file.ts';
import { kWhPerUnit } from '../../../src/reference/fuels.ts';
import { gasVolumeOf } from '../../../src/reference/gas-of-place.ts';

interface Given {
  readonly fileName?: string;
  readonly zone?: string;
  readonly choices?: IntakeChoices;
}

export function previewOf(
  content: string | readonly string[] | Uint8Array,
  { fileName = 'a.csv', zone = 'Europe/London', choices = {} }: Given = {},
): IntakePreview {
  const text = typeof content === 'string' ? content : content instanceof Uint8Array ? undefined : content.join('\n');
  const bytes = text === undefined ? (content as Uint8Array) : new TextEncoder().encode(text);
  return readFile(fileName, bytes, choices, {
    zone,
    today: '2026-11-25',
    kWhPerUnit,
    gasVolume: gasVolumeOf(zone),
  }).preview;
}

/** Codes of the remarks of one weight, or of all. */
export const codesOf = ({ remarks }: IntakePreview, weight?: 'note' | 'question' | 'refusal'): string[] =>
  remarks.filter((one) => weight === undefined || one.weight === weight).map(({ code }) => code);
