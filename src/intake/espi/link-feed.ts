/** Ties the parts of a feed together by their links: blocks to meter readings, those to reading types and usage points. */
import type { Block, Entry, Feed, ReadingType } from './feed.ts';

export interface LinkedRecord {
  readonly meter: string;
  readonly name: string;
  readonly serviceKind: number | undefined;
  readonly readingType: ReadingType | undefined;
  readonly blocks: readonly Block[];
}

export interface LinkedFeed {
  readonly records: readonly LinkedRecord[];
  /** Blocks that no link ties to a meter reading though there are several to choose from. */
  readonly unlinked: number;
}

export function linkFeed(feed: Feed): LinkedFeed {
  const { entries } = feed;
  const meterReadings = entries.filter((e) => e.isMeterReading);
  const usagePoints = entries.filter((e) => e.serviceKind !== undefined);
  const types = entries.filter((e) => e.readingType !== undefined);
  const groups = new Map<Entry | undefined, Block[]>();
  let unlinked = 0;
  const owners = ownerFinder(meterReadings);
  for (const block of feed.blocks) {
    if (block.start.length === 0) continue;
    const own = owners(entries[block.entry]!) ?? onlyOne(meterReadings);
    if (!own && meterReadings.length > 1) unlinked++;
    const group = groups.get(own);
    if (group) group.push(block);
    else groups.set(own, [block]);
  }
  const pointOf = ownerFinder(usagePoints);
  const records = [...groups].map(([reading, blocks]): LinkedRecord => {
    const point = (reading && pointOf(reading)) ?? onlyOne(usagePoints);
    const type =
      types.find((t) => t.self !== '' && reading?.related.includes(t.self)) ??
      // Nothing to confuse it with.
      (reading === undefined || reading.related.every((link) => !/ReadingType/.test(link))
        ? onlyOne(types)
        : undefined);
    return {
      meter: point?.self ?? '',
      name: nameOf(point, reading, type),
      serviceKind: point?.serviceKind,
      readingType: type?.readingType,
      blocks,
    };
  });
  return { records: uniqueNames(records, groups, usagePoints, pointOf), unlinked };
}

/** The entry that a part hangs under: named as related, or above it in the path. Longest path first. */
function ownerFinder(owners: readonly Entry[]): (part: Entry) => Entry | undefined {
  const byRelated = new Map<string, Entry>();
  const bySelf = new Map<string, Entry>();
  for (const owner of owners) {
    for (const link of owner.related) if (link !== '' && !byRelated.has(link)) byRelated.set(link, owner);
    if (owner.self !== '') bySelf.set(owner.self, owner);
  }
  return (part) => {
    if (owners.includes(part)) return part;
    const named = byRelated.get(part.up) ?? byRelated.get(part.self);
    if (named) return named;
    for (const path of [part.self, part.up])
      for (let at = path.length; at > 0; at = path.lastIndexOf('/', at - 1)) {
        const above = bySelf.get(path.slice(0, at));
        if (above) return above;
      }
    return undefined;
  };
}

const onlyOne = <T>(list: readonly T[]): T | undefined => (list.length === 1 ? list[0] : undefined);

const nameOf = (point: Entry | undefined, reading: Entry | undefined, type: Entry | undefined): string =>
  reading?.title || type?.title || point?.title || '';

/** Where several records bear one name, the title of the usage point goes before it. */
function uniqueNames(
  records: readonly LinkedRecord[],
  groups: ReadonlyMap<Entry | undefined, Block[]>,
  points: readonly Entry[],
  pointOf: (part: Entry) => Entry | undefined,
): LinkedRecord[] {
  const readings = [...groups.keys()];
  return records.map((record, i) => {
    if (records.filter((r) => r.name === record.name).length < 2) return record;
    const reading = readings[i];
    const title = ((reading && pointOf(reading)) ?? onlyOne(points))?.title ?? '';
    const name = [title, record.name].filter((word) => word !== '').join(', ');
    return { ...record, name: name.slice(0, 120) };
  });
}
