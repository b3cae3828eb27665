/** A store that cannot be opened or will not do what it was asked, as data; the sentence is made by the desk. */
export interface StoreFaultData {
  readonly code: 'in-use' | 'newer' | 'unreadable' | 'already-there';
  readonly path: string;
  readonly found?: number;
  readonly expected?: number;
}

export class StoreFault extends Error {
  readonly data: StoreFaultData;
  constructor(data: StoreFaultData) {
    super(`${data.code}: ${data.path}`);
    this.name = 'StoreFault';
    this.data = data;
  }
}
