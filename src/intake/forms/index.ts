/** Every form that is read as a whole. */
import { meterXml } from '../espi/read-meter-xml.ts';
import type { IntakeForm } from '../importer/form.ts';
import { recordRows } from '../records/read-record-rows.ts';
import { weatherFile } from '../weather/read-epw.ts';

export const FORMS: readonly IntakeForm[] = [meterXml, weatherFile, recordRows];
