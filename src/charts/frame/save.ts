/** Hands a file to the person, a picture or its figures without the desk: the window itself has them already. */

const MARGIN = 24;

/** The picture as a document of its own: colour names replaced by the colours in use. `face` is a rule to go with it. */
export function pictureText(svg: SVGElement, face = ''): string {
  const styles = getComputedStyle(svg);
  const copy = svg.cloneNode(true) as SVGElement;
  copy.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
  copy.setAttribute('font-family', "'Source Sans 3 Variable', 'Source Sans 3', 'Segoe UI', sans-serif");
  const letters = document.createElementNS('http://www.w3.org/2000/svg', 'style');
  letters.textContent = `${face}text{fill:var(--ink);font-variant-numeric:tabular-nums} text.faint{fill:var(--quiet)}`;
  // A sheet of its own, so that the letters can be read wherever the picture is pasted; its margin leaves room for
  // letters that come out wider where our face is not installed.
  const width = svg.clientWidth || Number(svg.getAttribute('width'));
  const height = svg.clientHeight || Number(svg.getAttribute('height'));
  const box = { x: -MARGIN, y: -MARGIN, width: width + 2 * MARGIN, height: height + 2 * MARGIN };
  copy.setAttribute('viewBox', `${box.x} ${box.y} ${box.width} ${box.height}`);
  copy.setAttribute('width', String(box.width));
  copy.setAttribute('height', String(box.height));
  const sheet = document.createElementNS('http://www.w3.org/2000/svg', 'rect');
  for (const [name, value] of Object.entries({ ...box, fill: 'var(--paper)' })) sheet.setAttribute(name, String(value));
  copy.prepend(letters, sheet);
  return new XMLSerializer()
    .serializeToString(copy)
    .replace(/var\((--[a-z0-9-]+)\)/g, (_, name: string) => styles.getPropertyValue(name).trim());
}

export function saveInBrowser(file: Blob, fileName: string): void {
  const address = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = address;
  link.download = fileName;
  link.click();
  // The browser reads the bytes after the click; a minute is plenty.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

const PLAIN: Readonly<Record<string, string>> = { ä: 'ae', ö: 'oe', ü: 'ue', ß: 'ss' };

/** A chart's name as a file name: "Cost by month" gives "cost-by-month". */
export function fileNameOf(name: string): string {
  return (
    name
      .toLowerCase()
      .replace(/[äöüß]/g, (letter) => PLAIN[letter]!)
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-|-$/g, '') || 'picture'
  );
}
