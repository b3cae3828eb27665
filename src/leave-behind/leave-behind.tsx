/**
 * The document that stays with the household: one HTML text with everything in it and nothing to fetch or run.
 * Dates and identifiers come from the promise alone, so the same promise gives the same bytes.
 */
import { renderToStaticMarkup } from 'react-dom/server';
import tokens from '../charts/look/tokens.css?raw';
import type { KeptPromise } from '../model/appraisal/promise.ts';
import { longDate } from '../words/numbers.ts';
import documentStyle from './document.css?raw';
import { FONT_FACES } from './fonts.ts';
import { type DocumentSettings, type PromiseParts, readPromise } from './parts.ts';
import { AboutPart } from './sections/about.tsx';
import { AssumptionsPart } from './sections/assumptions.tsx';
import { CautionsPart } from './sections/cautions.tsx';
import { ComparisonPart } from './sections/comparison.tsx';
import { FirstWinterPart } from './sections/first-winter.tsx';
import { MonthsPart } from './sections/months.tsx';
import { SourcesPart } from './sections/sources.tsx';
import { SummaryPart } from './sections/summary.tsx';
import { SurePart } from './sections/sure.tsx';
import { WorkingsPart } from './sections/workings.tsx';

/** Text inside a quoted CSS string that stands in a style element: no quote, backslash, bracket or line end gets out. */
const cssText = (text: string) => text.replace(/[\\"<>\n\r\f]/g, (char) => `\\${char.codePointAt(0)!.toString(16)} `);

const shorten = (text: string, most: number) => (text.length > most ? `${text.slice(0, most - 1).trimEnd()}…` : text);

function pageRule({ promise, settings, madeOn }: PromiseParts): string {
  const letter = settings.paper === 'Letter';
  const size = letter ? '8.5in 11in' : '210mm 297mm';
  // Letter is 18 mm lower: it gives up some of its margins, so that both papers break at the same places.
  const margin = letter ? '12mm 22mm 17mm' : '15mm 19mm 20mm';
  const foot = cssText(`Promise ${promise.number} · ${longDate(madeOn)} · ${shorten(promise.household.name, 34)}`);
  const type =
    'font: 14px "Source Sans 3 Variable", sans-serif; color: #55605f; vertical-align: top; padding-top: 8px; border-top: 1.5px solid #1d2528;';
  return `@page { size: ${size}; margin: ${margin}; @bottom-left { content: "${foot}"; ${type} } @bottom-center { content: ""; width: 0; } @bottom-right { content: "page " counter(page) " of " counter(pages); ${type} } }`;
}

export function renderLeaveBehind(promise: KeptPromise, settings: DocumentSettings): string {
  const parts = readPromise(promise, settings);
  const title = `What it would cost to heat ${promise.household.name}: promise ${promise.number}`;
  const body = renderToStaticMarkup(
    <html lang="en-GB" data-theme="light">
      <head>
        <meta charSet="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <title>{title}</title>
        {settings.installerName ? <meta name="author" content={settings.installerName} /> : null}
        {/* The style is our own text; what comes from outside is escaped in pageRule. */}
        <style
          // biome-ignore lint/security/noDangerouslySetInnerHtml: React would escape quotes inside a style element.
          dangerouslySetInnerHTML={{ __html: [FONT_FACES, tokens, documentStyle, pageRule(parts)].join('\n') }}
        />
      </head>
      <body>
        <main>
          <SummaryPart parts={parts} />
          <ComparisonPart parts={parts} />
          <MonthsPart parts={parts} />
          <SurePart parts={parts} />
          <FirstWinterPart parts={parts} />
          <CautionsPart parts={parts} />
          <AssumptionsPart parts={parts} />
          <SourcesPart parts={parts} />
          <AboutPart parts={parts} />
          <WorkingsPart parts={parts} />
        </main>
      </body>
    </html>,
  );
  return `<!doctype html>${body}\n`;
}
