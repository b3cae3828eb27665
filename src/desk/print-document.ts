/** A document handed out as it is, or printed by whichever browser is at hand. */
import { say } from '../words/say.ts';
import type { FileOut } from './contract.ts';
import { DeskError } from './desk-error.ts';
import { toFileOut } from './file-out.ts';
import type { DeskPorts } from './ports.ts';

const noPrinter = () =>
  new DeskError({
    code: 'no-printer',
    message: say('No browser that can write a PDF was found on this computer.'),
    remedy: say('Save the document as HTML instead, open it in a browser and print it from there.'),
  });

export interface PrintTask {
  readonly html: string;
  /** With its ending. */
  readonly fileName: string;
  readonly format: 'pdf' | 'html';
  readonly paper: 'A4' | 'Letter';
}

export async function printDocument(
  { printPdf }: Pick<DeskPorts, 'printPdf'>,
  { html, fileName, format, paper }: PrintTask,
): Promise<FileOut> {
  if (format === 'html') return toFileOut(fileName, 'text/html', html);
  const pdf = await printPdf?.(html, paper);
  if (!pdf) throw noPrinter();
  return toFileOut(fileName, 'application/pdf', pdf);
}
