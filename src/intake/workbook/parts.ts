/** Sheets, shared words and date formats of a workbook (Office Open XML, ECMA-376). */
import { walkXml } from '../text/walk-xml.ts';

export interface SheetPart {
  readonly name: string;
  /** Name of the part in the archive, in small letters. */
  readonly part: string;
}

/** How a number is shown: as itself, as a day, as a time of day, or as both. */
export type CellForm = 'number' | 'date' | 'time' | 'date and time';

export interface WorkbookParts {
  readonly sheets: readonly SheetPart[];
  readonly words: readonly string[];
  readonly forms: readonly CellForm[];
  /** Days are counted from 1904 rather than 1900. */
  readonly from1904: boolean;
}

const MOST_SHEETS = 200;
const LONGEST_WORDS = 400;

export function readParts(parts: ReadonlyMap<string, Uint8Array>): WorkbookParts | { readonly fault: string } {
  const workbook = parts.get('xl/workbook.xml');
  if (!workbook) return { fault: '' };
  const links = readLinks(parts.get('xl/_rels/workbook.xml.rels'));
  const sheets: SheetPart[] = [];
  let from1904 = false;
  const isSound = walkXml(workbook, {
    open(name, attribute) {
      if (name === 'workbookPr') from1904 = /^(1|true)$/.test(attribute('date1904') ?? '');
      if (name !== 'sheet' || sheets.length >= MOST_SHEETS) return;
      const part = links.get(attribute('r:id') ?? '') ?? `xl/worksheets/sheet${sheets.length + 1}.xml`;
      sheets.push({ name: (attribute('name') ?? `Sheet ${sheets.length + 1}`).slice(0, 200), part });
    },
  });
  if (!isSound) return { fault: 'its list of sheets cannot be read' };
  return {
    sheets,
    words: readWords(parts.get('xl/sharedstrings.xml')),
    forms: readForms(parts.get('xl/styles.xml')),
    from1904,
  };
}

function readLinks(bytes: Uint8Array | undefined): Map<string, string> {
  const links = new Map<string, string>();
  if (bytes)
    walkXml(bytes, {
      open(name, attribute) {
        const id = attribute('Id');
        const target = attribute('Target');
        if (name !== 'Relationship' || !id || !target) return;
        const path = target.startsWith('/') ? target.slice(1) : `xl/${target.replace(/^\.\//, '')}`;
        links.set(id, path.toLowerCase());
      },
    });
  return links;
}

function readWords(bytes: Uint8Array | undefined): string[] {
  const words: string[] = [];
  let item = '';
  let inSound = 0;
  if (bytes)
    walkXml(bytes, {
      open(name) {
        if (name === 'si') item = '';
        if (name === 'rPh') inSound++;
      },
      close(name, text) {
        // Reading aids for Japanese names are no part of the words.
        if (name === 'rPh') inSound--;
        else if (name === 't' && inSound === 0 && item.length < LONGEST_WORDS) item += text;
        else if (name === 'si') words.push(item.slice(0, LONGEST_WORDS));
      },
    });
  return words;
}

/** Numbers of the built-in formats that show days and times. */
const BUILT_IN: Record<number, CellForm> = {
  14: 'date',
  15: 'date',
  16: 'date',
  17: 'date',
  18: 'time',
  19: 'time',
  20: 'time',
  21: 'time',
  22: 'date and time',
  45: 'time',
  46: 'time',
  47: 'time',
};

function readForms(bytes: Uint8Array | undefined): CellForm[] {
  const own = new Map<number, CellForm>();
  const forms: CellForm[] = [];
  let inCells = false;
  if (bytes)
    walkXml(bytes, {
      open(name, attribute) {
        if (name === 'numFmt') own.set(Number(attribute('numFmtId')), formOf(attribute('formatCode') ?? ''));
        if (name === 'cellXfs') inCells = true;
        if (name !== 'xf' || !inCells) return;
        const id = Number(attribute('numFmtId') ?? 0);
        const asian = (id >= 27 && id <= 36) || (id >= 50 && id <= 58) ? 'date' : 'number';
        forms.push(own.get(id) ?? BUILT_IN[id] ?? asian);
      },
      close(name) {
        if (name === 'cellXfs') inCells = false;
      },
    });
  return forms;
}

/** "dd/mm/yyyy hh:mm" shows both; words in quotes, colours in brackets and escaped letters show nothing. */
function formOf(code: string): CellForm {
  const bare = code
    .slice(0, 200)
    .split(';')[0]!
    .replaceAll(/"[^"]*"|\\.|_.|\*./g, '')
    .replaceAll(/\[(?!h+\]|m+\]|s+\])[^\]]*\]/gi, '')
    .replaceAll(/general|am\/pm|a\/p/gi, '');
  const hasTime = /[hs]/i.test(bare);
  const hasDate = /[yd]/i.test(bare) || (!hasTime && /m/i.test(bare));
  return hasDate ? (hasTime ? 'date and time' : 'date') : hasTime ? 'time' : 'number';
}
