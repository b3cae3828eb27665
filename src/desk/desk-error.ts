/** How every refusal looks, over HTTP and over IPC alike. */
export interface DeskRefusal {
  readonly code: string;
  readonly message: string;
  /** File and line, or field. */
  readonly where?: string | undefined;
  readonly remedy?: string | undefined;
}

export class DeskError extends Error {
  readonly code: string;
  readonly where: string | undefined;
  readonly remedy: string | undefined;
  constructor(refusal: DeskRefusal) {
    super(refusal.message);
    this.name = 'DeskError';
    this.code = refusal.code;
    this.where = refusal.where;
    this.remedy = refusal.remedy;
  }
  toRefusal(): DeskRefusal {
    return {
      code: this.code,
      message: this.message,
      ...(this.where === undefined ? {} : { where: this.where }),
      ...(this.remedy === undefined ? {} : { remedy: this.remedy }),
    };
  }
}
