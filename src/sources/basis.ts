/**
 * What a number rests on.
 *
 * @module
 */

/** What a limit, a table or a function rests on. */
export interface Basis {
  /** A printed source, a fact of the trade, physics worked out from what is stated, or what the caller gave. */
  readonly kind: "published" | "common practice" | "derived" | "given";
  /** Source id in the bibliography; only where published. */
  readonly source?: string;
  /** Where in the source; or what it was worked out from. */
  readonly locator?: string;
}
