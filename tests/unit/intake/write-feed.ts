/** Writes a small feed of the open XML standard for meter data (NAESB ESPI in Atom). */

export interface FeedReading {
  /** Seconds since 1970. */
  readonly start: number;
  readonly duration: number;
  readonly value: number;
  readonly quality?: number;
  readonly cost?: number;
}

export interface FeedRecord {
  readonly point: string;
  readonly record: string;
  readonly title: string;
  readonly kind: number;
  /** Elements of the reading type; null leaves the reading type out. */
  readonly type: Readonly<Record<string, number>> | null;
  readonly readings: readonly FeedReading[];
}

export interface FeedOptions {
  /** Prefix of each namespace; none makes it the default of its elements. */
  readonly prefixes?: { readonly atom: string; readonly espi: string };
  readonly localTime?: Readonly<Record<string, string>>;
  readonly before?: string;
  /** Blocks before the entries that explain them. */
  readonly backwards?: boolean;
}

export function writeFeed(records: readonly FeedRecord[], options: FeedOptions = {}): string {
  const { atom, espi } = options.prefixes ?? { atom: '', espi: '' };
  const a = (name: string) => (atom === '' ? name : `${atom}:${name}`);
  const e = (name: string) => (espi === '' ? name : `${espi}:${name}`);
  const own = espi === '' ? ' xmlns="http://naesb.org/espi"' : ` xmlns:${espi}="http://naesb.org/espi"`;
  const leaf = (name: string, value: number | string) => `<${e(name)}> ${value} </${e(name)}>`;
  const open = (name: string) => `<${e(name)}${own}>`;
  const entry = (self: string, up: string, related: readonly string[], title: string, content: string) =>
    `<${a('entry')}>\n<${a('link')} rel="self" href="${self}"/><${a('link')} rel="up" href="${up}"/>${related
      .map((href) => `<${a('link')} rel="related" href="${href}"/>`)
      .join(
        '',
      )}<${a('title')}>${title}</${a('title')}>\n<${a('content')}>${content}</${a('content')}>\n</${a('entry')}>`;
  const entries: string[] = [];
  const seen = new Set<string>();
  records.forEach((r, i) => {
    const point = `Customer/1/UsagePoint/${r.point}`;
    const reading = `${point}/MeterReading/${r.record}`;
    if (!seen.has(point)) {
      seen.add(point);
      entries.push(
        entry(
          point,
          'Customer/1/UsagePoint',
          [`${point}/MeterReading`],
          `Meter ${r.point}`,
          `${open('UsagePoint')}<${e('ServiceCategory')}>${leaf('kind', r.kind)}</${e('ServiceCategory')}></${e('UsagePoint')}>`,
        ),
      );
    }
    const type = `ReadingType/${i + 1}`;
    entries.push(
      entry(
        reading,
        `${point}/MeterReading`,
        [`${reading}/IntervalBlock`, ...(r.type ? [type] : [])],
        r.title,
        `${open('MeterReading')}</${e('MeterReading')}>`,
      ),
    );
    const rows = r.readings.map(
      (one) =>
        `\n<${e('IntervalReading')}>${one.cost === undefined ? '' : leaf('cost', one.cost)}${one.quality === undefined ? '' : `<${e('ReadingQuality')}>${leaf('quality', one.quality)}</${e('ReadingQuality')}>`}<${e('timePeriod')}>${leaf('duration', one.duration)}${leaf('start', one.start)}</${e('timePeriod')}>${leaf('value', one.value)}</${e('IntervalReading')}>`,
    );
    entries.push(
      entry(
        `${reading}/IntervalBlock/1`,
        `${reading}/IntervalBlock`,
        [],
        '',
        `${open('IntervalBlock')}${rows.join('')}\n</${e('IntervalBlock')}>`,
      ),
    );
    if (r.type)
      entries.push(
        entry(
          type,
          'ReadingType',
          [],
          '',
          `${open('ReadingType')}${Object.entries(r.type)
            .map(([name, value]) => leaf(name, value))
            .join('')}</${e('ReadingType')}>`,
        ),
      );
  });
  if (options.localTime)
    entries.push(
      entry(
        'LocalTimeParameters/1',
        'LocalTimeParameters',
        [],
        '',
        `${open('LocalTimeParameters')}${Object.entries(options.localTime)
          .map(([name, value]) => leaf(name, value))
          .join('')}</${e('LocalTimeParameters')}>`,
      ),
    );
  if (options.backwards) entries.reverse();
  return `<?xml version="1.0" encoding="UTF-8"?>\n${options.before ?? ''}<${a('feed')} xmlns${atom === '' ? '' : `:${atom}`}="http://www.w3.org/2005/Atom">\n${entries.join('\n')}\n</${a('feed')}>\n`;
}

export const ELECTRICITY = {
  accumulationBehaviour: 4,
  commodity: 1,
  flowDirection: 1,
  powerOfTenMultiplier: 0,
  uom: 72,
};
