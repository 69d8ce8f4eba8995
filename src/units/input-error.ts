/**
 * The one error that wrong input raises.
 *
 * @module
 */

/**
 * An input that cannot be used: not a number, outside the accepted range, of the wrong dimension, contradictory.
 *
 * A physical "no" (a pump that cannot lift, a wire that is too thin) is a result, never this error.
 * The ESM and CJS builds hold two copies of the class: test `error.name === "InputError"`, not `instanceof`.
 *
 * @source derived
 *
 * @example
 * ```ts
 * import { feet, InputError } from "risingmain/units";
 *
 * feet(Number.NaN); // throws InputError
 * ```
 */
export class InputError extends RangeError {
  /** Always "InputError"; the way to recognise the error across module systems. */
  declare readonly name: "InputError";
  /** The field or argument that was refused, as a path: `pipe.insideDiameter`, `points[2].head`. */
  declare readonly parameter: string;
  /** What was given. */
  declare readonly value: unknown;
  /** What would have been accepted, in words, with its unit. */
  declare readonly expected: string;

  /**
   * @param parameter - the field or argument that was refused
   * @param value - what was given
   * @param expected - what would have been accepted, in words, with its unit
   */
  constructor(parameter: string, value: unknown, expected: string) {
    // An object may have no text of its own, or a text that throws: its type says enough. A whole file pasted into one
    // field would bury the message. Every program that uses one formula carries this class, so it is kept small.
    super(
      `${parameter}: expected ${expected}, got ${Object(value) === value ? typeof value : String(value).slice(0, 80)}`,
    );
    Object.assign(this, { name: "InputError", parameter, value, expected });
  }
}
