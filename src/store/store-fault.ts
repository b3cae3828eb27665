/** A store that cannot be opened or will not do what it was asked, as data; the sentence is made by the desk. */

/** A stored piece that is no longer what was stored. */
export interface Damage {
  readonly kind: 'household' | 'import' | 'readings' | 'raw-file' | 'estimate' | 'check' | 'settings' | 'tariff';
  readonly householdId?: string;
  /** Name of the household, as far as it can still be read. */
  readonly household?: string;
  readonly evidenceId?: string;
  /** Of the import. */
  readonly fileName?: string;
  /** Of the written estimate. */
  readonly number?: number;
}

export interface StoreFaultData {
  readonly code:
    | 'in-use'
    | 'newer'
    /** Of Node, which cannot pack what is kept. */
    | 'old-runtime'
    | 'unreadable'
    | 'already-there'
    | 'damaged'
    | 'disk-full'
    | 'read-only'
    | 'disk-failed'
    | 'gone';
  readonly path: string;
  readonly found?: number;
  readonly expected?: number;
  readonly damage?: Damage;
  /** With `newer`: the newest copy of the older form. */
  readonly copy?: string;
  /** With `gone`: whether everything was written anew where it had been. */
  readonly rescued?: boolean;
}

export class StoreFault extends Error {
  readonly data: StoreFaultData;
  constructor(data: StoreFaultData) {
    super(`${data.code}: ${data.path}`);
    this.name = 'StoreFault';
    this.data = data;
  }
}

/** Runs `work` on the file at `path`; what SQLite throws for the disk's reasons becomes a StoreFault. */
export function withFaults<T>(path: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    const code = codeOf((error as { code?: unknown }).code);
    throw code === undefined ? error : new StoreFault({ code, path });
  }
}

function codeOf(code: unknown): StoreFaultData['code'] | undefined {
  const name = typeof code === 'string' ? code : '';
  if (name === 'SQLITE_FULL') return 'disk-full';
  if (name === 'SQLITE_READONLY_DBMOVED') return 'gone';
  if (name.startsWith('SQLITE_READONLY')) return 'read-only';
  if (name.startsWith('SQLITE_IOERR') || name === 'EIO') return 'disk-failed';
  if (name.startsWith('SQLITE_BUSY') || name.startsWith('SQLITE_LOCKED')) return 'in-use';
  if (name.startsWith('SQLITE_CANTOPEN') || name.startsWith('SQLITE_CORRUPT') || name === 'SQLITE_NOTADB') {
    return 'unreadable';
  }
  return undefined;
}
