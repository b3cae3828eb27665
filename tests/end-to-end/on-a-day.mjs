/** Preloaded by a host whose screens must look the same whenever the tests run: its clock begins at noon of `TEST_DAY`. */
const { parse, now } = Date;
const ahead = parse(`${process.env.TEST_DAY}T12:00:00Z`) - now();

globalThis.Date = class extends Date {
  constructor(...given) {
    super(...(given.length === 0 ? [now() + ahead] : given));
  }
  static now() {
    return now() + ahead;
  }
};
