/**
 * The questions of the guided search: who can answer, in how many minutes, and how likely each outcome is under each
 * cause. That the pairs of causes need these measurements follows from what each changes on a meter; how often a curve
 * stands too high in homes without need (about 4 in 10) was counted in 410 Swiss visits, "HEAPO", a public data set. All other
 * chances are judgements, common practice, no source.
 */
import type { NextQuestion, SearchCause, SearchQuestion } from '../shapes/guided-search.ts';

/** Chances of the outcomes in the order of `OUTCOMES`; they sum to 1. */
export type Chances = readonly number[];
type ByCause = Readonly<Partial<Record<SearchCause, Chances>>>;

export interface QuestionFacts {
  readonly about: 'meter' | 'evidence' | 'home' | 'machine';
  readonly who: NextQuestion['who'];
  readonly minutes: number;
  /** Where the cause makes no odds. */
  readonly usual: Chances;
  readonly when: ByCause;
  /** What of it is otherwise where the bill is lower than expected; an outcome without a chance is not offered. */
  readonly less?: { readonly usual?: Chances; readonly when?: ByCause };
}

const WEEK_MINUTES = 7 * 24 * 60;

export const QUESTIONS: Readonly<Record<SearchQuestion, QuestionFacts>> = {
  'meter-reading': {
    about: 'meter',
    who: 'household',
    minutes: 5,
    usual: [0.92, 0.05, 0.03],
    when: { 'reading-wrong': [0.05, 0.93, 0.02] },
    less: { usual: [0.92, 0.03, 0.05], when: { 'reading-wrong': [0.05, 0.02, 0.93] } },
  },
  'meter-number': {
    about: 'meter',
    who: 'household',
    minutes: 5,
    usual: [0.97, 0.03],
    when: { 'reading-wrong': [0.75, 0.25], 'meter-wrong': [0.65, 0.35] },
  },
  'known-load': {
    about: 'meter',
    who: 'household',
    minutes: 15,
    usual: [0.95, 0.03, 0.02],
    when: { 'meter-wrong': [0.05, 0.93, 0.02] },
    less: {
      usual: [0.95, 0.02, 0.03],
      when: { 'meter-wrong': [0.05, 0.02, 0.93], 'own-generation': [0.5, 0.02, 0.48] },
    },
  },
  'outdoor-record': {
    about: 'evidence',
    who: 'installer',
    minutes: 15,
    usual: [0.8, 0.2],
    when: { weather: [0.05, 0.95] },
  },
  'machine-meter': {
    about: 'home',
    who: 'electrician',
    minutes: WEEK_MINUTES,
    usual: [0.92, 0.08],
    when: { 'other-use': [0.05, 0.95], 'less-other-use': [0.05, 0.95], 'own-generation': [0.3, 0.7] },
  },
  'other-loads': {
    about: 'home',
    who: 'household',
    minutes: 5,
    usual: [0.8, 0.2],
    when: { 'other-use': [0.15, 0.85], 'less-other-use': [0.15, 0.85] },
  },
  panels: {
    about: 'home',
    who: 'household',
    minutes: 2,
    usual: [0.9, 0.1],
    when: { 'own-generation': [0.04, 0.96] },
  },
  'heater-hours': {
    about: 'machine',
    who: 'installer',
    minutes: 10,
    usual: [0.75, 0.05, 0.2],
    when: { heater: [0.05, 0.75, 0.2] },
  },
  'flow-temperature': {
    about: 'machine',
    who: 'installer',
    minutes: 15,
    usual: [0.55, 0.4, 0.05],
    when: { 'flow-too-hot': [0.05, 0.94, 0.01] },
    less: { when: { 'machine-works-better': [0.4, 0.1, 0.5] } },
  },
  'heat-made': {
    about: 'machine',
    who: 'installer',
    minutes: 15,
    usual: [0.45, 0.3, 0.25],
    when: {
      'reading-wrong': [0.1, 0.65, 0.25],
      'meter-wrong': [0.1, 0.65, 0.25],
      'flow-too-hot': [0.1, 0.65, 0.25],
      'machine-works-less': [0.05, 0.7, 0.25],
      'machine-works-better': [0.05, 0.7, 0.25],
      heater: [0.2, 0.55, 0.25],
      'rooms-warmer': [0.68, 0.07, 0.25],
      'more-water': [0.6, 0.15, 0.25],
      'summer-heating': [0.65, 0.1, 0.25],
      'newly-occupied': [0.65, 0.1, 0.25],
      'less-heat': [0.68, 0.07, 0.25],
      'less-water': [0.65, 0.1, 0.25],
      'home-empty': [0.65, 0.1, 0.25],
    },
  },
  'source-side': {
    about: 'machine',
    who: 'installer',
    minutes: 45,
    usual: [0.85, 0.15],
    when: { 'machine-works-less': [0.25, 0.75] },
  },
  'room-temperature': {
    about: 'home',
    who: 'household',
    minutes: WEEK_MINUTES,
    usual: [0.7, 0.2, 0.1],
    when: { 'rooms-warmer': [0.08, 0.9, 0.02], 'newly-occupied': [0.6, 0.35, 0.05] },
    less: { usual: [0.8, 0, 0.2], when: { 'less-heat': [0.1, 0, 0.9], 'home-empty': [0.4, 0, 0.6] } },
  },
  'people-and-water': {
    about: 'home',
    who: 'household',
    minutes: 2,
    usual: [0.8, 0.2],
    when: {
      'more-water': [0.15, 0.85],
      'newly-occupied': [0.1, 0.9],
      'rooms-warmer': [0.6, 0.4],
      'less-water': [0.15, 0.85],
      'home-empty': [0.3, 0.7],
    },
  },
  'heating-off': {
    about: 'home',
    who: 'household',
    minutes: 5,
    usual: [0.85, 0.15],
    when: { 'summer-heating': [0.04, 0.96] },
  },
  'days-away': {
    about: 'home',
    who: 'household',
    minutes: 2,
    usual: [0.85, 0.15],
    when: { 'home-empty': [0.04, 0.96] },
  },
};

/** Chances of a question's outcomes under a cause. */
export function chancesOf(question: SearchQuestion, cause: SearchCause, direction: 'more' | 'less'): Chances {
  const { usual, when, less } = QUESTIONS[question];
  if (direction === 'less') return less?.when?.[cause] ?? when[cause] ?? less?.usual ?? usual;
  return when[cause] ?? usual;
}
