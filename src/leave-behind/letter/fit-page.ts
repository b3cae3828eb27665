/** How much of the letter stands on the household's page, so that it stays one page whatever the names and the parts. */

import { textWidth, wrapText } from '../../charts/frame/text.ts';
import { sumOf } from '../../model/units/sums.ts';
import type { SentenceRoom } from '../../words/letter.ts';
import { language } from '../../words/say.ts';
import { PAPER_WIDTH } from '../paper.ts';
import type { DocumentSettings } from '../parts.ts';

export interface LetterRoom extends SentenceRoom {
  readonly unknown: number;
}

/** The texts of a page as they would stand there. */
export interface PageTexts {
  readonly sender: string;
  readonly greeting: string;
  readonly heading: string;
  /** A danger at the machine, a paragraph of its own; empty where there is none. */
  readonly urgent: string;
  /** One paragraph: thanks, the headline in bold, and what stands behind it. */
  readonly opening: { readonly thanks: string; readonly headline: string; readonly verdict: string };
  /** Lists under a heading each; an empty one has none. */
  readonly lists: readonly (readonly string[])[];
  readonly steps: readonly { readonly who: string; readonly what: string; readonly by: string }[];
  readonly endings: readonly string[];
  readonly signature: string;
}

/** From the fullest page on; what goes is on the installer's sheet. */
const ROOMS: readonly LetterRoom[] = [
  { parts: 4, findings: 2, unknown: 5, steps: 3, asks: 3 },
  { parts: 4, findings: 2, unknown: 2, steps: 2, asks: 2 },
  { parts: 3, findings: 1, unknown: 1, steps: 2, asks: 2 },
  { parts: 3, findings: 1, unknown: 1, steps: 1, asks: 1 },
  { parts: 2, findings: 0, unknown: 1, steps: 1, asks: 1 },
  { parts: 2, findings: 0, unknown: 0, steps: 1, asks: 0 },
];

/** Height between the margins [CSS pixels], less 14 for what the measure of a text may be out. */
const PAGE_HEIGHT = { A4: 990 - 14, Letter: 946 - 14 } as const;
/** How large a document is set in a language, as in `document.css`. */
const SET_AT = { 'en-GB': 1, 'de-DE': 0.95 } as const;

interface Type {
  readonly font: number;
  readonly line: number;
  readonly round: number;
}

/** Sizes of `letter.css` [CSS pixels]: type, height of a line, and what stands round it. The serif runs a little wider. */
const TYPE = {
  greeting: { font: 16, line: 22, round: 14 },
  heading: { font: 22.6, line: 26, round: 12 },
  urgent: { font: 18, line: 23.1, round: 6 },
  opening: { font: 17.2, line: 23.1, round: 6 },
  item: { font: 16, line: 20.5, round: 2 },
  cell: { font: 16, line: 20.5, round: 5 },
  ending: { font: 16, line: 20.5, round: 7 },
} as const satisfies Readonly<Record<string, Type>>;
const SENDER_LINE = 23.2;
const SENDER_WIDTH = 330;
const MOST_SENDER_LINES = 4;
const LEAST_SENDER = 44;
const LIST_HEAD = 32;
const LIST_INDENT = 20;
/** Width of the middle column of what happens next, with the space beside it left out. */
const WHAT_WIDTH = PAPER_WIDTH - 52 - 156 - 14;
const TABLE_HEAD = 26;
const SIGNATURE_GAP = 10;

function heightOf(text: string, { font, line, round }: Type, width = PAPER_WIDTH): number {
  // A word longer than the line is broken on paper, which the second sum knows.
  const lines = Math.max(wrapText(text, font, width, 99).length, Math.ceil(textWidth(text, font) / width));
  return lines * line + round;
}

/** Height that these texts take [CSS pixels]. */
function pageHeight(texts: PageTexts): number {
  const { opening } = texts;
  const lists = texts.lists.filter((list) => list.length > 0);
  return (
    Math.max(LEAST_SENDER, senderLines(texts.sender) * SENDER_LINE) +
    heightOf(texts.greeting, TYPE.greeting) +
    heightOf(texts.heading, TYPE.heading) +
    (texts.urgent === '' ? 0 : heightOf(texts.urgent, TYPE.urgent)) +
    heightOf(`${opening.thanks} ${opening.headline} ${opening.verdict}`, TYPE.opening) +
    sumOf(lists.flat().map((text) => heightOf(text, TYPE.item, PAPER_WIDTH - LIST_INDENT))) +
    (lists.length + 1) * LIST_HEAD +
    TABLE_HEAD +
    sumOf(texts.steps.map(({ what }) => heightOf(what, TYPE.cell, WHAT_WIDTH))) +
    sumOf(texts.endings.map((text) => heightOf(text, TYPE.ending))) +
    sumOf(texts.signature.split('\n').map((text) => heightOf(text, { ...TYPE.item, round: 0 }))) +
    SIGNATURE_GAP
  );
}

/** What goes into the space that a room leaves, first what the readings show. */
const FILLING = ['findings', 'unknown', 'asks', 'steps'] as const;

function fillUp(room: LetterRoom, fits: (room: LetterRoom) => boolean): LetterRoom {
  let filled = room;
  for (const list of FILLING)
    for (let most = room[list] + 1; most <= ROOMS[0]![list]; most++)
      if (fits({ ...filled, [list]: most })) filled = { ...filled, [list]: most };
  return filled;
}

/** The fullest page that fits the paper, one sentence after the other; the emptiest where none does. */
export function fitPage(textsFor: (room: LetterRoom) => PageTexts, paper: DocumentSettings['paper']): LetterRoom {
  const fits = (room: LetterRoom) => pageHeight(textsFor(room)) <= PAGE_HEIGHT[paper] / SET_AT[language()];
  return fillUp(ROOMS.find(fits) ?? ROOMS.at(-1)!, fits);
}

/** Name and contact, as lines where they are few and else run on; the style cuts what is over four lines. */
export function senderText({ installerName, installerContact }: DocumentSettings): string {
  const given = [installerName, ...installerContact.split('\n')].map((line) => line.trim()).filter(Boolean);
  return given.length > MOST_SENDER_LINES ? `${given[0]}\n${given.slice(1).join(' · ')}` : given.join('\n');
}

/** Lines of the sender beside the logo and the date. */
function senderLines(sender: string): number {
  const lines = sender.split('\n').map((line) => heightOf(line, { ...TYPE.item, line: 1, round: 0 }, SENDER_WIDTH));
  return Math.min(MOST_SENDER_LINES, sumOf(lines));
}
