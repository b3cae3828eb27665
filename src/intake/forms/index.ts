/** Every form that is read as a whole. */
import { meterXml } from '../espi/read-meter-xml.ts';
import { weatherFile } from '../weather/read-epw.ts';
import type { IntakeForm } from './form.ts';

export const FORMS: readonly IntakeForm[] = [meterXml, weatherFile];
