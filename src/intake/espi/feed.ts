/**
 * The parts of a feed of the open meter data standard (NAESB ESPI in Atom), as read and before they are tied together.
 * Codes of the standard: structure from published sample feeds, lists of codes from memory where the samples show none.
 */
import type { Wording } from '../../model/shapes/told.ts';

/** Readings of one block as columns, so that years of them cost little. */
export interface Block {
  readonly entry: number;
  /** Seconds since 1970; NaN where unreadable. */
  readonly start: number[];
  /** Seconds; NaN where not said. */
  readonly duration: number[];
  readonly value: number[];
  /** Hundred-thousandths of a currency unit; NaN where not said. */
  readonly cost: number[];
  readonly estimated: boolean[];
  readonly line: number[];
}

export interface ReadingType {
  readonly accumulation: number | undefined;
  readonly commodity: number | undefined;
  readonly currency: number | undefined;
  readonly flow: number | undefined;
  readonly intervalLength: number | undefined;
  readonly powerOfTen: number;
  readonly uom: number | undefined;
}

export interface LocalTime {
  /** Seconds east of UTC in standard time. */
  readonly offset: number;
  readonly dstOffset: number;
  readonly dstStart: string;
  readonly dstEnd: string;
}

/** One resource of the feed: its links and what it holds. */
export interface Entry {
  self: string;
  up: string;
  readonly related: string[];
  title: string;
  /** Kind of service where this is a usage point; NaN where it does not say. */
  serviceKind?: number;
  isMeterReading?: boolean;
  readingType?: ReadingType;
  localTime?: LocalTime;
}

export interface Feed {
  readonly entries: readonly Entry[];
  readonly blocks: readonly Block[];
  /** Billing summaries, which are counted and left out. */
  readonly summaries: number;
  /** Whether anything of the standard's namespace was met. */
  readonly isMeterData: boolean;
}

export type FeedFault =
  | { readonly fault: 'broken' | 'doctype' | 'too-deep'; readonly line: number; readonly found: Wording }
  | { readonly fault: 'none' };

/** Qualities that mean "not as read": estimated by another day or a line, questionable, projected, mixed, weather-normalised. */
const ESTIMATED_QUALITIES = new Set([8, 9, 10, 12, 13, 15]);
export const isEstimatedQuality = (code: number): boolean => ESTIMATED_QUALITIES.has(code);
