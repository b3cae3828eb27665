/** Settings and the shelf of tariffs in SQLite. */
import type { Database } from 'better-sqlite3';
import type { Tariff } from '../model/shapes/tariff.ts';
import { seal } from './seal.ts';
import { isWhole, type SealedRow } from './sealed.ts';
import type { Store } from './store.ts';

type SettingsPart = Pick<
  Store,
  | 'readSettings'
  | 'writeSettings'
  | 'readUpkeep'
  | 'writeUpkeep'
  | 'readValues'
  | 'writeValues'
  | 'readLayout'
  | 'writeLayout'
  | 'listShelf'
  | 'keepOnShelf'
  | 'dropFromShelf'
>;

export function openSettings(database: Database): SettingsPart {
  const find = database.prepare<[string], SealedRow>('SELECT value AS document, sealed FROM settings WHERE name = ?');
  const put = database.prepare(
    `INSERT INTO settings (name, value, sealed) VALUES (?, ?, ?)
     ON CONFLICT (name) DO UPDATE SET value = excluded.value, sealed = excluded.sealed`,
  );
  const forget = database.prepare('DELETE FROM settings WHERE name = ?');
  const shelf = database.prepare<[], SealedRow>('SELECT document, sealed FROM shelf ORDER BY rowid');
  const keep = database.prepare(
    `INSERT INTO shelf (id, document, sealed) VALUES (?, ?, ?)
     ON CONFLICT (id) DO UPDATE SET document = excluded.document, sealed = excluded.sealed`,
  );
  const drop = database.prepare('DELETE FROM shelf WHERE id = ?');

  /** Settings that are damaged count as never set: nothing else hangs on them, and the check names them. */
  function read(name: string): unknown {
    const row = find.get(name);
    return row && isWhole(row) ? (JSON.parse(row.document) as unknown) : undefined;
  }
  function write(name: string, value: unknown): void {
    const document = JSON.stringify(value);
    put.run(name, document, seal(document));
  }

  return {
    readSettings: () => read('installer'),
    writeSettings: (settings) => write('installer', settings),
    readUpkeep: () => read('upkeep'),
    writeUpkeep: (upkeep) => write('upkeep', upkeep),
    readValues: () => read('values'),
    writeValues(file) {
      if (file === null) forget.run('values');
      else write('values', file);
    },
    readLayout: (key) => read(`layout ${key}`),
    writeLayout(key, layout) {
      if (layout === undefined) forget.run(`layout ${key}`);
      else write(`layout ${key}`, layout);
    },
    listShelf: () =>
      shelf
        .all()
        .filter(isWhole)
        .map(({ document }) => JSON.parse(document) as Tariff),
    keepOnShelf(tariff) {
      const document = JSON.stringify(tariff);
      keep.run(tariff.id, document, seal(document));
    },
    dropFromShelf(id) {
      drop.run(id);
    },
  };
}
