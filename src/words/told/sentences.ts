/** Tables of what is said to a code of the model: the compiler holds that none is missing and that the gaps are the code's own. */

/** Names of the gaps of an English text: `{days, number}` gives "days". */
type GapOf<T extends string> = T extends `${string}{${infer Gap}}${infer Rest}`
  ? (Gap extends `${infer Name},${string}` ? Name : Gap) | GapOf<Rest>
  : never;
type Fits<P, C extends keyof P, T extends string> = [GapOf<T>, keyof P[C]] extends [keyof P[C], GapOf<T>]
  ? T
  : { readonly wrongGaps: GapOf<T> };

export const sentences =
  <P>() =>
  <const T extends Readonly<Partial<Record<keyof P, string>>>>(
    table: T &
      Readonly<Record<keyof P, string>> & {
        readonly [C in keyof P]: Fits<P, C, C extends keyof T ? T[C] & string : string>;
      },
  ): Readonly<Record<keyof P, string>> =>
    table;
