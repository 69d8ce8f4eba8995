/**
 * A warning that travels with a number, as data: the same text in a plan, a report and an app.
 *
 * @module
 */

/** A warning to show beside a result that touches pressure, mains, lifting, chlorine, exhaust or drinking water. */
export interface Caution {
  /** Short name that does not change, for an app that words or filters its own: `chlorine-mixing`. */
  readonly code: string;
  /** The warning in one or two plain sentences. */
  readonly text: string;
  /** A source id with its locator, "common practice", or "derived". */
  readonly basis: string;
}
