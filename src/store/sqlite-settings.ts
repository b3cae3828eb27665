/** Settings and the shelf of tariffs in SQLite. */
import type { Database } from 'better-sqlite3';
import type { Tariff } from '../model/shapes/tariff.ts';
import type { Store } from './store.ts';

type SettingsPart = Pick<
  Store,
  'readSettings' | 'writeSettings' | 'readLayout' | 'writeLayout' | 'listShelf' | 'keepOnShelf' | 'dropFromShelf'
>;

export function openSettings(database: Database): SettingsPart {
  const read = database.prepare<[string], { value: string }>('SELECT value FROM settings WHERE name = ?');
  const write = database.prepare(
    'INSERT INTO settings (name, value) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET value = excluded.value',
  );
  const forget = database.prepare('DELETE FROM settings WHERE name = ?');
  const shelf = database.prepare<[], { document: string }>('SELECT document FROM shelf ORDER BY rowid');
  const keep = database.prepare(
    'INSERT INTO shelf (id, document) VALUES (?, ?) ON CONFLICT (id) DO UPDATE SET document = excluded.document',
  );
  const drop = database.prepare('DELETE FROM shelf WHERE id = ?');

  return {
    readSettings() {
      const row = read.get('installer');
      return row && (JSON.parse(row.value) as unknown);
    },
    writeSettings(settings) {
      write.run('installer', JSON.stringify(settings));
    },
    readLayout(key) {
      const row = read.get(`layout ${key}`);
      return row && (JSON.parse(row.value) as unknown);
    },
    writeLayout(key, layout) {
      if (layout === undefined) forget.run(`layout ${key}`);
      else write.run(`layout ${key}`, JSON.stringify(layout));
    },
    listShelf: () => shelf.all().map(({ document }) => JSON.parse(document) as Tariff),
    keepOnShelf(tariff) {
      keep.run(tariff.id, JSON.stringify(tariff));
    },
    dropFromShelf(id) {
      drop.run(id);
    },
  };
}
