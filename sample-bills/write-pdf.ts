/** A PDF of plain text: Helvetica at places, nothing else. The same words give the same bytes. */

export interface PlacedText {
  readonly text: string;
  /** Points from the left, and from the top to the line that letters stand on. */
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly bold?: boolean;
}

export const A4 = { width: 595, height: 842 };

/** Widths of Helvetica's letters, thousandths of its size, from space to tilde; Adobe's font metrics. */
const WIDTHS = [
  278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556, 556,
  556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833,
  722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556,
  556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334,
  260, 334, 584,
];

export const widthOf = (text: string, size: number): number =>
  (Array.from(text).reduce((sum, letter) => sum + (WIDTHS[letter.charCodeAt(0) - 32] ?? 556), 0) * size) / 1000;

/** Letters beyond ASCII that bills use, in the encoding that PDF calls WinAnsi. */
const BEYOND: Readonly<Record<string, number>> = {
  '€': 0x80,
  '–': 0x96,
  '−': 0x96,
  '’': 0x92,
  '‘': 0x91,
  '“': 0x93,
  '”': 0x94,
};

const encoded = (text: string): string =>
  Array.from(text)
    .map((letter) => String.fromCharCode(BEYOND[letter] ?? letter.charCodeAt(0)))
    .map((letter) => (/[\\()]/.test(letter) ? `\\${letter}` : letter))
    .join('');

function turnedAbout(degrees: number): string {
  const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  const [x, y] = [A4.width / 2, A4.height / 2];
  const matrix = [cos, sin, -sin, cos, x - x * cos + y * sin, y - x * sin - y * cos];
  return matrix.map((value) => value.toFixed(5)).join(' ');
}

/** `degrees` turns every page about its middle. */
export function writePdf(pages: readonly (readonly PlacedText[])[], degrees = 0): Uint8Array {
  const objects: string[] = ['<< /Type /Catalog /Pages 2 0 R >>', ''];
  const add = (body: string) => objects.push(body);
  const fonts = ['Helvetica', 'Helvetica-Bold'].map((name) =>
    add(`<< /Type /Font /Subtype /Type1 /BaseFont /${name} /Encoding /WinAnsiEncoding >>`),
  );
  const kids = pages.map((texts) => {
    const turn = degrees === 0 ? '' : `${turnedAbout(degrees)} cm\n`;
    const body = texts
      .map(
        ({ text, x, y, size, bold }) =>
          `BT /F${bold ? 2 : 1} ${size} Tf ${x.toFixed(2)} ${(A4.height - y).toFixed(2)} Td (${encoded(text)}) Tj ET`,
      )
      .join('\n');
    const content = add(`<< /Length ${turn.length + body.length} >>\nstream\n${turn}${body}\nendstream`);
    return add(
      `<< /Type /Page /Parent 2 0 R /MediaBox [0 0 ${A4.width} ${A4.height}] /Contents ${content} 0 R /Resources << /Font << /F1 ${fonts[0]} 0 R /F2 ${fonts[1]} 0 R >> >> >>`,
    );
  });
  objects[1] = `<< /Type /Pages /Kids [${kids.map((kid) => `${kid} 0 R`).join(' ')}] /Count ${kids.length} >>`;
  let file = '%PDF-1.4\n';
  const places = objects.map((body, i) => {
    const at = file.length;
    file += `${i + 1} 0 obj\n${body}\nendobj\n`;
    return at;
  });
  const table = file.length;
  file += `xref\n0 ${objects.length + 1}\n0000000000 65535 f \n`;
  file += places.map((at) => `${String(at).padStart(10, '0')} 00000 n \n`).join('');
  file += `trailer\n<< /Size ${objects.length + 1} /Root 1 0 R >>\nstartxref\n${table}\n%%EOF\n`;
  return Uint8Array.from(file, (letter) => letter.charCodeAt(0));
}
