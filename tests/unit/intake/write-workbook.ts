/** Writes a small workbook (Office Open XML, ECMA-376), as spreadsheet programs save them. */
import { strToU8, zipSync } from 'fflate';

/** A date or time is a number with a form; `shared` words stand in the list of shared strings. */
export type Cell = string | number | { readonly serial: number; readonly form: 'date' | 'time' | 'both' } | null;

export interface WrittenSheet {
  readonly name: string;
  readonly rows: readonly (readonly Cell[])[];
}

const STYLE = { date: 1, time: 2, both: 3 } as const;
const escapeXml = (text: string) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');

function letters(column: number): string {
  const last = String.fromCharCode(65 + (column % 26));
  return column < 26 ? last : letters(Math.floor(column / 26) - 1) + last;
}

export function writeWorkbook(
  sheets: readonly WrittenSheet[],
  options: { inline?: boolean; from1904?: boolean } = {},
): Uint8Array {
  const shared: string[] = [];
  const cell = (value: Cell, reference: string): string => {
    if (value === null) return '';
    if (typeof value === 'number') return `<c r="${reference}"><v>${value}</v></c>`;
    if (typeof value === 'object') return `<c r="${reference}" s="${STYLE[value.form]}"><v>${value.serial}</v></c>`;
    if (options.inline) return `<c r="${reference}" t="inlineStr"><is><t>${escapeXml(value)}</t></is></c>`;
    if (!shared.includes(value)) shared.push(value);
    return `<c r="${reference}" t="s"><v>${shared.indexOf(value)}</v></c>`;
  };
  const files: Record<string, Uint8Array> = {};
  sheets.forEach((sheet, s) => {
    const rows = sheet.rows.map(
      (row, r) => `<row r="${r + 1}">${row.map((value, c) => cell(value, `${letters(c)}${r + 1}`)).join('')}</row>`,
    );
    files[`xl/worksheets/sheet${s + 1}.xml`] = strToU8(
      `<?xml version="1.0"?><worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>${rows.join('')}</sheetData></worksheet>`,
    );
  });
  files['xl/workbook.xml'] = strToU8(
    `<?xml version="1.0"?><workbook xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"><workbookPr${options.from1904 ? ' date1904="1"' : ''}/><sheets>${sheets
      .map((s, i) => `<sheet name="${escapeXml(s.name)}" sheetId="${i + 1}" r:id="rId${i + 1}"/>`)
      .join('')}</sheets></workbook>`,
  );
  files['xl/_rels/workbook.xml.rels'] = strToU8(
    `<?xml version="1.0"?><Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${sheets
      .map((_, i) => `<Relationship Id="rId${i + 1}" Type="worksheet" Target="worksheets/sheet${i + 1}.xml"/>`)
      .join('')}</Relationships>`,
  );
  files['xl/styles.xml'] = strToU8(
    '<?xml version="1.0"?><styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><numFmts count="1"><numFmt numFmtId="164" formatCode="dd/mm/yyyy\\ hh:mm"/></numFmts><cellXfs count="4"><xf numFmtId="0"/><xf numFmtId="14"/><xf numFmtId="20"/><xf numFmtId="164"/></cellXfs></styleSheet>',
  );
  files['xl/sharedStrings.xml'] = strToU8(
    `<?xml version="1.0"?><sst xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main">${shared.map((text) => `<si><t>${escapeXml(text)}</t></si>`).join('')}</sst>`,
  );
  files['[Content_Types].xml'] = strToU8(
    '<?xml version="1.0"?><Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"/>',
  );
  return zipSync(files, { mtime: new Date('2025-01-01T12:00:00') });
}

/** Days since the end of 1899 of a local stamp, "2025-01-14 00:30". */
export const serialOf = (stamp: string): number =>
  Date.parse(`${stamp.replace(' ', 'T').slice(0, 16)}Z`.replace(/^(.{10})Z$/, '$1T00:00Z')) / 86_400_000 + 25_569;
