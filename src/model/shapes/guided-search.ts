/** The guided search for what a bill's difference comes from: causes, questions with their outcomes, answers. */
import { z } from 'zod';
import { codeOf } from './code.ts';

/** What the bill may differ by, more or less than expected; "something-else" is always among them. */
export const SearchCause = z.enum([
  'reading-wrong',
  'meter-wrong',
  'weather',
  'other-use',
  'own-generation',
  'heater',
  'flow-too-hot',
  'machine-works-less',
  'rooms-warmer',
  'more-water',
  'summer-heating',
  'newly-occupied',
  'less-other-use',
  'machine-works-better',
  'less-heat',
  'less-water',
  'home-empty',
  'something-else',
]);
export type SearchCause = z.infer<typeof SearchCause>;

/** Each question with what can come out of it. */
export const OUTCOMES = {
  'meter-reading': ['fits', 'lower', 'higher'],
  'meter-number': ['same', 'other'],
  'known-load': ['right', 'too-much', 'too-little'],
  'outdoor-record': ['usual', 'as-bill'],
  'machine-meter': ['as-estimated', 'other-differs'],
  'other-loads': ['as-before', 'changed'],
  panels: ['none', 'changed'],
  'heater-hours': ['few', 'many', 'not-shown'],
  'flow-temperature': ['as-planned', 'hotter', 'cooler'],
  'heat-made': ['factor-as-estimated', 'factor-off', 'not-shown'],
  'source-side': ['in-order', 'not-in-order'],
  'room-temperature': ['as-agreed', 'warmer', 'cooler'],
  'people-and-water': ['as-before', 'changed'],
  'heating-off': ['off', 'on'],
  'days-away': ['no', 'yes'],
} as const satisfies Readonly<Record<string, readonly string[]>>;
export type SearchQuestion = keyof typeof OUTCOMES;
export const SEARCH_QUESTIONS = Object.keys(OUTCOMES) as SearchQuestion[];

/** An answer as it is kept; `read` is what was read or told, in anybody's words. */
export const SearchAnswer = z.object({
  question: codeOf<SearchQuestion>(),
  outcome: z.string().max(40),
  read: z.string().max(120).optional(),
});
export type SearchAnswer = z.infer<typeof SearchAnswer>;

/** An answer as it comes in: only a question and an outcome that are known here. */
export const TypedAnswer = z
  .strictObject({
    question: z.enum(SEARCH_QUESTIONS as [SearchQuestion, ...SearchQuestion[]]),
    outcome: z.enum([...new Set(Object.values(OUTCOMES).flat())] as [string, ...string[]]),
    read: z.string().max(120).optional(),
  })
  .refine(({ question, outcome }) => (OUTCOMES[question] as readonly string[]).includes(outcome), {
    path: ['outcome'],
    message: 'one of the outcomes of its own question',
  });

export type TypedAnswer = z.infer<typeof TypedAnswer>;

/** Whoever may answer, how long it takes, and where each outcome would lead. */
export const NextQuestion = z.object({
  question: codeOf<SearchQuestion>(),
  who: z.enum(['household', 'installer', 'electrician']),
  minutes: z.number(),
  /** Bits that its answer is expected to tell among the causes; 0 where it is asked for another reason. */
  bits: z.number(),
  outcomes: z.array(
    z.object({
      outcome: z.string(),
      /** The likeliest cause after it; absent where no causes are weighed. */
      leadsTo: codeOf<SearchCause>().optional(),
      twentieths: z.int().optional(),
    }),
  ),
});
export type NextQuestion = z.infer<typeof NextQuestion>;

/** Likely causes in twentieths that sum to 20, and the one or two questions that would tell most. */
export const GuidedSearch = z.object({
  direction: z.enum(['more', 'less']).nullable(),
  /** "open": a question would tell more; "one-likely": one cause stands out; "nothing-more": no question tells the rest apart; "no-need"; "not-judged": nobody knows whether there is a difference. */
  state: z.enum(['open', 'one-likely', 'nothing-more', 'no-need', 'not-judged']),
  causes: z.array(z.object({ cause: codeOf<SearchCause>(), twentieths: z.int() })),
  next: z.array(NextQuestion),
});
export type GuidedSearch = z.infer<typeof GuidedSearch>;
