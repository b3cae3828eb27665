/** What was read of a bill on paper, as the screens and the command line show it before anything is kept. */
import { z } from 'zod';
import { CivilDate } from '../../model/shapes/dates.ts';
import { Tariff } from '../../model/shapes/tariff.ts';

/** Places in points from the left and from the top. */
export const Word = z.object({
  text: z.string(),
  x: z.number(),
  y: z.number(),
  width: z.number(),
  height: z.number(),
  /** Of a word in a picture of paper that did not lie flat: how far down its middle would stand if it did. */
  level: z.number().optional(),
});
export type Word = z.infer<typeof Word>;
export const Page = z.object({
  width: z.number(),
  height: z.number(),
  words: z.array(Word),
  /** The page itself as a data address, where its words were recognised in a picture. */
  picture: z.string().optional(),
  /** Whether the words of the picture were recognised with certainty, so that a better one would say no more. */
  isClear: z.boolean().optional(),
  /** How far its rows fall for each point to the right, in a picture of a page that did not lie flat. */
  lean: z.number().optional(),
});
export type Page = z.infer<typeof Page>;

/** A picture in grey, one byte a point, white is 255. */
export interface Grey {
  readonly width: number;
  readonly height: number;
  readonly points: Uint8Array;
}

/** Unpacks a picture as telephones keep it (HEIC), upright; `large` above so many points, undefined where it is damaged. */
export type UnpackHeic = (bytes: Uint8Array, mostPoints: number) => Grey | 'large' | undefined;

/** A word that was recognised in a picture: its box in points of the picture, and how sure the recogniser is, 0 to 100. */
export interface SeenWord extends Word {
  readonly sure: number;
  /** Words of one line bear one number. */
  readonly line: number;
}
/** Whether the picture is one block of lines, or text here and there. */
export type PageMode = 'block' | 'sparse';
/** Finds words in a flat, upright picture. */
export type Recognise = (
  picture: Grey,
  how: { readonly mode: PageMode; readonly language: 'eng' | 'deu' },
  onProgress?: (share: number) => void,
) => Promise<readonly SeenWord[]>;

/** The name of the shape under which a bill on paper is kept. */
export const PAPER_SHAPE = 'paper bill';

const Box = z.object({ page: z.int(), x: z.number(), y: z.number(), width: z.number(), height: z.number() });

export const PaperValueKind = z.enum([
  'fuel',
  'period',
  'opening',
  'closing',
  'volume',
  'factor',
  'calorific',
  'use',
  'price',
  'charge',
  'days',
  'standing-price',
  'standing-charge',
  'levy',
  'extra',
  'net',
  'vat-rate',
  'vat',
  'total',
  'payment',
  'balance',
  'due',
  'next-payment',
]);
export type PaperValueKind = z.infer<typeof PaperValueKind>;

export const PaperValue = z.object({
  key: z.string(),
  kind: PaperValueKind,
  fuel: z.enum(['electricity', 'gas']).optional(),
  /** Register, or what the paper calls a discount or charge. */
  name: z.string().optional(),
  /** As printed. */
  text: z.string(),
  /** `proved` by a sum with others, only `read`, `contradicted` by a sum, or typed by the person. */
  state: z.enum(['proved', 'read', 'contradicted', 'typed']),
  /** Whether the person typed it, contradicted or not. */
  isTyped: z.boolean().optional(),
  /** The sums, as printed. */
  sums: z.array(z.string()),
  /** Whether a word on the paper says what it is, or it was guessed from its place. */
  meaning: z.enum(['said', 'guessed']),
  boxes: z.array(Box),
  reading: z.enum(['actual', 'estimated', 'customer', 'unknown']).optional(),
});
export type PaperValue = z.infer<typeof PaperValue>;

/** A number of a picture that may have been misread: its word, and what would make a sum come out. */
export const PaperRepair = z.object({
  page: z.int(),
  at: z.int(),
  read: z.string(),
  text: z.string(),
  sum: z.string(),
});
export type PaperRepair = z.infer<typeof PaperRepair>;

export const PaperReading = z.object({
  /** Words with their places, for the picture of the page; never kept, never exported. */
  pages: z.array(Page),
  values: z.array(PaperValue),
  /** Whether nothing is left to ask: every value proved, no meaning guessed, the bill recomputed to the penny. */
  isWhole: z.boolean(),
  /** After a first look at its pictures, with another to come. */
  isGlance: z.boolean().optional(),
  /** Offered to the person beside the place, never taken. */
  repairs: z.array(PaperRepair).optional(),
  /** The prices of the bill, by fuel, where it says them all. */
  tariffs: z.array(Tariff),
});
export type PaperReading = z.infer<typeof PaperReading>;

/** What a person said about a paper. */
export const PaperChoices = z.object({
  /** Words as they stand on the paper in truth. */
  words: z.array(z.object({ page: z.int().min(0), at: z.int().min(0), text: z.string().max(60) })).optional(),
  from: CivilDate.optional(),
  /** Exclusive. */
  to: CivilDate.optional(),
  vat: z.enum(['included', 'none']).optional(),
  /** Whether pages that state other days are one bill or several. */
  bills: z.enum(['one', 'several']).optional(),
  /** What is only read was looked at and is right. */
  looked: z.boolean().optional(),
  /** All charges are there, though no sum says so. */
  complete: z.boolean().optional(),
  /** What was guessed of what a value stands for is right. */
  meant: z.boolean().optional(),
  /** It is a bill, though a word on it or its days say otherwise. */
  isBill: z.boolean().optional(),
  /** Dollars are kept as they are printed. */
  money: z.boolean().optional(),
  /** Charges that no total of the paper holds are left out. */
  leftOut: z.boolean().optional(),
  /** What belongs to no charge that was read is left out. */
  leftOver: z.boolean().optional(),
  /** Units that were billed before are not counted here. */
  billedBefore: z.boolean().optional(),
  /** What contradicts itself is kept as it is printed. */
  asPrinted: z.boolean().optional(),
  /** Answer after the first look at a picture. */
  glance: z.boolean().optional(),
  /** The paper itself is kept too, with the names and numbers on it. */
  keepPaper: z.boolean().optional(),
});
export type PaperChoices = z.infer<typeof PaperChoices>;
