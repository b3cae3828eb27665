/**
 * What the window has as zod. Under its content security policy nothing may build functions from text, so that schemas
 * are walked instead; this is said here, since it must be said before the first of them is made.
 */
import { config } from 'zod/v4';

config({ jitless: true });

export * from 'zod/v4';
