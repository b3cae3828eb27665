/** What the desk needs from the host that it stands in: clock, identifiers, store and printer come in from outside. */

import type { z } from 'zod';
import type { IntakeChoices, IntakeContext, IntakeResult } from '../intake/intake.ts';
import type { CivilDate } from '../model/shapes/dates.ts';
import type { Store } from '../store/store.ts';
import type { Contract, Output, RequestName } from './contract.ts';
import type { WholeHousehold } from './household-file.ts';
import type { OfferedFiles } from './offered-files.ts';

/** Prints a document with whichever Chromium is at hand; null where there is none. */
export type PrintPdf = (html: string, paper: 'A4' | 'Letter') => Promise<Uint8Array | null>;

/** Reads a file of evidence, here or in a thread of its own. */
export type ReadEvidence = (
  fileName: string,
  bytes: Uint8Array,
  choices: IntakeChoices,
  context: IntakeContext,
  signal?: AbortSignal,
) => IntakeResult | Promise<IntakeResult>;

/** What a household file cannot say: the identifier for one written by hand, and the day. */
export interface OnItsWayIn {
  readonly id: string;
  readonly today: CivilDate;
}

/** Reads a household file, here or in a thread of its own. Throws DeskError. */
export type ReadHousehold = (
  fileName: string,
  bytes: Uint8Array,
  own: OnItsWayIn,
  work: Work,
) => WholeHousehold | Promise<WholeHousehold>;

export interface DeskPorts {
  readonly store: Store;
  today(): CivilDate;
  /** ISO instant. */
  now(): string;
  newId(): string;
  readonly printPdf: PrintPdf | null;
  readonly readEvidence: ReadEvidence;
  readonly readHousehold: ReadHousehold;
  readonly host: 'electron' | 'loopback';
  readonly dataFolder: string;
  /** Where the browser of our own window keeps its things, once it was opened. */
  readonly windowFolder?: string | undefined;
  /** Public key (Ed25519, SPKI, base64) that newer prices and reference values must be signed with. */
  readonly valuesKey: string;
  /** Said to the installer at the start, such as a damaged file set aside. */
  readonly notice?: string | undefined;
  /** Ends the program, after the answer. */
  quit(): void;
}

export interface Work {
  readonly signal?: AbortSignal | undefined;
  readonly onProgress?: ((share: number) => void) | undefined;
}

export interface DeskContext {
  readonly ports: DeskPorts;
  readonly store: Store;
  readonly files: OfferedFiles;
}

export type Handlers = {
  readonly [N in RequestName]: (input: z.output<Contract[N]['input']>, work: Work) => Output<N> | Promise<Output<N>>;
};
