/** XML to the parts of a feed, in one pass. Names are told by namespace, never by prefix; no entity is ever expanded. */

import { SaxesParser } from 'saxes';
import { tell, type Wording } from '../../model/shapes/told.ts';
import { type Block, type Entry, type Feed, type FeedFault, isEstimatedQuality } from './feed.ts';

const ESPI = 'http://naesb.org/espi';
const ATOM = 'http://www.w3.org/2005/Atom';
/** The standard nests some ten deep; a file beyond this is made to hurt. */
const DEEPEST = 64;
const LONGEST_TEXT = 400;
const CHUNK = 1 << 16;
/** Blocks and readings we hold at most; ten years of quarter-hours are 350,000. */
const MOST_READINGS = 3_000_000;

interface Reading {
  start: number;
  duration: number;
  value: number;
  cost: number;
  estimated: boolean;
  line: number;
}

export function parseFeed(text: string, onProgress?: (share: number) => void): Feed | FeedFault {
  const parser = new SaxesParser({ xmlns: true, position: true });
  const entries: Entry[] = [];
  const blocks: Block[] = [];
  let summaries = 0;
  let readings = 0;
  let isMeterData = false;
  let fault: FeedFault = { fault: 'none' };
  const fail = (kind: 'broken' | 'doctype' | 'too-deep', found: Wording) => {
    if (fault.fault === 'none') fault = { fault: kind, line: parser.line, found };
  };

  const path: string[] = [];
  let words = '';
  let entry: Entry | undefined;
  let entryDepth = -1;
  let block: Block | undefined;
  let reading: Reading | undefined;
  let fields: Map<string, string> | undefined;
  let fieldsDepth = -1;

  const entryHere = (): number => {
    if (!entry || entries.at(-1) !== entry) {
      entry ??= { self: '', up: '', related: [], title: '' };
      entries.push(entry);
    }
    return entries.length - 1;
  };

  parser.on('error', (error) => fail('broken', plainMessage(error.message).slice(0, 80)));
  parser.on('doctype', () => fail('doctype', 'DOCTYPE'));
  const addText = (piece: string) => {
    if (words.length < LONGEST_TEXT) words += piece.slice(0, LONGEST_TEXT);
  };
  parser.on('text', addText);
  parser.on('cdata', addText);

  parser.on('opentag', (tag) => {
    words = '';
    const name = tag.uri === ESPI ? tag.local : tag.uri === ATOM ? `atom:${tag.local}` : '';
    path.push(name);
    if (path.length > DEEPEST) fail('too-deep', tag.name.slice(0, 80));
    if (tag.uri === ATOM) {
      if (tag.local === 'entry') {
        entry = { self: '', up: '', related: [], title: '' };
        entryDepth = path.length;
        entries.push(entry);
      } else if (tag.local === 'link' && entry && path.length === entryDepth + 1)
        takeLink(entry, tag.attributes.rel?.value ?? '', tag.attributes.href?.value ?? '');
      return;
    }
    if (tag.uri !== ESPI) return;
    isMeterData = true;
    switch (tag.local) {
      case 'IntervalBlock':
        block = { entry: entryHere(), start: [], duration: [], value: [], cost: [], estimated: [], line: [] };
        blocks.push(block);
        break;
      case 'IntervalReading':
        if (block) reading = emptyReading(parser.line);
        break;
      case 'UsagePoint':
        entryHere();
        entry!.serviceKind = Number.NaN;
        break;
      case 'MeterReading':
        entryHere();
        entry!.isMeterReading = true;
        break;
      case 'ReadingType':
      case 'LocalTimeParameters':
        entryHere();
        fields = new Map();
        fieldsDepth = path.length;
        break;
      case 'ElectricPowerUsageSummary':
      case 'UsageSummary':
        summaries++;
        break;
    }
  });

  parser.on('closetag', (tag) => {
    const name = path.pop();
    const parent = path.at(-1);
    if (name === 'atom:entry') {
      entry = undefined;
      entryDepth = -1;
    } else if (name === 'atom:title' && parent === 'atom:entry' && entry) entry.title = plain(words);
    else if (name === 'IntervalBlock') block = undefined;
    else if (name === 'IntervalReading') {
      if (block && reading) {
        keep(block, reading);
        if (++readings > MOST_READINGS) fail('broken', tell('over-readings', { readings: MOST_READINGS }));
      }
      reading = undefined;
    } else if (reading) takeReading(reading, parent, name ?? '', words);
    else if (name === 'kind' && parent === 'ServiceCategory' && entry?.serviceKind !== undefined)
      entry.serviceKind = numberOf(words);
    else if (fields && tag.local !== '' && path.length === fieldsDepth) fields.set(name ?? '', words.trim());
    else if (fields && path.length === fieldsDepth - 1) {
      if (name === 'ReadingType') entry!.readingType = readingTypeOf(fields);
      else entry!.localTime = localTimeOf(fields);
      fields = undefined;
    }
    words = '';
  });

  // Saxes looks for no byte-order mark in text that is already decoded.
  const body = text.replace(/^\uFEFF/, '').trimStart();
  for (let at = 0; at < body.length && fault.fault === 'none'; at += CHUNK) {
    parser.write(body.slice(at, at + CHUNK));
    if ((at & 0xfffff) === 0) onProgress?.(at / body.length);
  }
  if (fault.fault === 'none') parser.close();
  return fault.fault === 'none' ? { entries, blocks, summaries, isMeterData } : fault;
}

/** The parser's words without their place, which the line says, and without their full stop. */
const plainMessage = (message: string): string =>
  message
    .replace(/^\d+:\d+:?\s*/, '')
    .replace(/\.$/, '')
    .replace('undefined', 'unknown');

const emptyReading = (line: number): Reading => ({
  start: Number.NaN,
  duration: Number.NaN,
  value: Number.NaN,
  cost: Number.NaN,
  estimated: false,
  line,
});

function takeLink(entry: Entry, rel: string, href: string): void {
  const path = pathOf(href);
  if (rel === 'self') entry.self = path;
  else if (rel === 'up') entry.up = path;
  else if (rel === 'related') entry.related.push(path);
}

/** Links are compared by their path alone; one sender writes them whole, another from the root, a third without. */
const pathOf = (href: string): string =>
  href
    .trim()
    .replace(/^[a-z]+:\/\/[^/]*/i, '')
    .replace(/^\/+|\/+$/g, '')
    .slice(0, 500);

function takeReading(reading: Reading, parent: string | undefined, name: string, words: string): void {
  if (parent === 'timePeriod' && name === 'start') reading.start = numberOf(words);
  else if (parent === 'timePeriod' && name === 'duration') reading.duration = numberOf(words);
  else if (parent === 'IntervalReading' && name === 'value') reading.value = numberOf(words);
  else if (parent === 'IntervalReading' && name === 'cost') reading.cost = numberOf(words);
  else if (name === 'quality' && isEstimatedQuality(numberOf(words))) reading.estimated = true;
}

function keep(block: Block, reading: Reading): void {
  block.start.push(reading.start);
  block.duration.push(reading.duration);
  block.value.push(reading.value);
  block.cost.push(reading.cost);
  block.estimated.push(reading.estimated);
  block.line.push(reading.line);
}

/** Whole or decimal number with white space around it; NaN where it is none. */
function numberOf(words: string): number {
  const text = words.trim();
  return /^[-+]?\d{1,15}(\.\d{1,9})?$/.test(text) ? Number(text) : Number.NaN;
}

const plain = (words: string): string => words.replaceAll(/\s+/g, ' ').trim().slice(0, 80);

function whole(fields: Map<string, string>, name: string): number | undefined {
  const value = numberOf(fields.get(name) ?? '');
  return Number.isInteger(value) ? value : undefined;
}

const readingTypeOf = (fields: Map<string, string>) => ({
  accumulation: whole(fields, 'accumulationBehaviour'),
  commodity: whole(fields, 'commodity'),
  currency: whole(fields, 'currency'),
  flow: whole(fields, 'flowDirection'),
  intervalLength: whole(fields, 'intervalLength'),
  powerOfTen: Math.max(-12, Math.min(12, whole(fields, 'powerOfTenMultiplier') ?? 0)),
  uom: whole(fields, 'uom'),
});

const localTimeOf = (fields: Map<string, string>) => ({
  offset: whole(fields, 'tzOffset') ?? 0,
  dstOffset: whole(fields, 'dstOffset') ?? 0,
  dstStart: fields.get('dstStartRule') ?? '',
  dstEnd: fields.get('dstEndRule') ?? '',
});
