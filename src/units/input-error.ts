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
  override readonly name: string = "InputError";
  /** The field or argument that was refused, as a path: `pipe.insideDiameter`, `points[2].head`. */
  readonly parameter: string;
  /** What was given. */
  readonly value: unknown;
  /** What would have been accepted, in words, with its unit. */
  readonly expected: string;

  /**
   * @param parameter - the field or argument that was refused
   * @param value - what was given
   * @param expected - what would have been accepted, in words, with its unit
   */
  constructor(parameter: string, value: unknown, expected: string) {
    super(`${parameter}: expected ${expected}, got ${shown(value)}`);
    this.parameter = parameter;
    this.value = value;
    this.expected = expected;
  }
}

/** The longest text repeated back; a whole file pasted into one field would bury the message. */
const LONGEST_SHOWN = 80;

/** A value as a short text that never throws, whatever it is. */
function shown(value: unknown): string {
  if (typeof value === "string") {
    return JSON.stringify(value.length > LONGEST_SHOWN ? `${value.slice(0, LONGEST_SHOWN)}…` : value);
  }
  if (value === null || typeof value !== "object") {
    return typeof value === "function" ? "a function" : String(value);
  }
  return Array.isArray(value) ? `a list of ${value.length}` : "an object";
}
