/** The shell of every document: one HTML text with its style and both faces inside, and nothing to fetch or run. */

import sans from '@fontsource-variable/source-sans-3/files/source-sans-3-latin-wght-normal.woff2?inline';
import serif from '@fontsource-variable/source-serif-4/files/source-serif-4-latin-wght-normal.woff2?inline';
import type { ReactNode } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import tokens from '../charts/look/tokens.css?raw';
import { language, say } from '../words/say.ts';
import documentStyle from './document.css?raw';
import type { DocumentSettings } from './parts.ts';

const face = (family: string, source: string) =>
  `@font-face{font-family:"${family}";font-weight:200 900;font-style:normal;src:url("${source}") format("woff2")}`;

const FONT_FACES = [face('Source Serif 4 Variable', serif), face('Source Sans 3 Variable', sans)].join('\n');

/** Text inside a quoted CSS string that stands in a style element: no quote, backslash, bracket or line end gets out. */
const cssText = (text: string) => text.replace(/[\\"<>\n\r\f]/g, (char) => `\\${char.codePointAt(0)!.toString(16)} `);

/** A name as it fits the foot of a page. */
export const shorten = (text: string, most: number) =>
  text.length > most ? `${text.slice(0, most - 1).trimEnd()}…` : text;

/** "page 2 of 9", with the counters of the style in its gaps. */
const pageOf = () =>
  `"${say('page {page} of {pages}', { page: '" counter(page) "', pages: '" counter(pages) "' })}"`.replace(/ ""$/, '');

function pageRule(paper: DocumentSettings['paper'], foot: string): string {
  const letter = paper === 'Letter';
  const size = letter ? '8.5in 11in' : '210mm 297mm';
  // Letter is 18 mm lower: smaller margins and type a fortieth smaller, so that both papers break at the same places.
  const margin = letter ? '9mm 20mm 15mm' : '15mm 19mm 20mm';
  const zoom = letter ? ' body { zoom: 0.975; }' : '';
  const type =
    'font: 14px "Source Sans 3 Variable", sans-serif; color: #55605f; vertical-align: top; padding-top: 8px; border-top: 1.5px solid #1d2528;';
  return `@page { size: ${size}; margin: ${margin}; @bottom-left { content: "${cssText(foot)}"; width: 80%; ${type} } @bottom-center { content: ""; width: 0; } @bottom-right { content: ${pageOf()}; ${type} } }${zoom}`;
}

export function renderDocument(document: {
  readonly title: string;
  /** Left in the foot of every page. */
  readonly foot: string;
  readonly settings: DocumentSettings;
  /** Style of this document alone. */
  readonly style?: string;
  readonly children: ReactNode;
}): string {
  const { title, foot, settings, style, children } = document;
  const styles = [FONT_FACES, tokens, documentStyle, ...(style ? [style] : []), pageRule(settings.paper, foot)];
  const body = renderToStaticMarkup(
    <html lang={language()} data-theme="light">
      <head>
        <meta charSet="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <title>{title}</title>
        {settings.installerName ? <meta name="author" content={settings.installerName} /> : null}
        {/* The style is our own text; what comes from outside is escaped in pageRule. */}
        <style
          // biome-ignore lint/security/noDangerouslySetInnerHtml: React would escape quotes inside a style element.
          dangerouslySetInnerHTML={{ __html: styles.join('\n') }}
        />
      </head>
      <body>
        <main>{children}</main>
      </body>
    </html>,
  );
  return `<!doctype html>${body}\n`;
}
