/** The name of a time zone, known to the platform's tables: a name that is not would leave every hour without a place. */
import { tzOffset } from '@date-fns/tz';
import { z } from 'zod';

const isKnown = (zone: string): boolean => zone !== '' && !Number.isNaN(tzOffset(zone, new Date(0)));

export const TimeZone = z.string().refine(isKnown, 'the name of a time zone, such as Europe/London');
