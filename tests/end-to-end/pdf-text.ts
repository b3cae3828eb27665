/** The text of a PDF, page after page, read back by a library that has no part in making it. */
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

export async function pagesOfPdf(bytes: Uint8Array): Promise<string[]> {
  const reading = getDocument({ data: new Uint8Array(bytes), verbosity: 0 });
  const document = await reading.promise;
  const pages: string[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const content = await (await document.getPage(number)).getTextContent();
    const text = content.items.map((item) => ('str' in item ? item.str : '')).join(' ');
    pages.push(text.replace(/\s+/g, ' '));
  }
  await reading.destroy();
  return pages;
}

export const textOfPdf = async (bytes: Uint8Array): Promise<string> => (await pagesOfPdf(bytes)).join(' ');
