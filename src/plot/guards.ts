/**
 * Guards for what charts read: names, and numbers of results that may have been stored and edited since.
 *
 * @module
 */
import { InputError } from "../units/index.ts";

/** Longest name a chart writes. */
const LONGEST_NAME = 200;

/** Refuses what is not a text of 1 to 200 letters. */
export function requireName(parameter: string, value: unknown): void {
  if (!(typeof value === "string" && value.length > 0 && value.length <= LONGEST_NAME)) {
    throw new InputError(parameter, value, `a name of 1 to ${LONGEST_NAME} letters`);
  }
}

/** Refuses two things of one name: a chart tells lines apart by their names. */
export function requireDifferent(parameter: string, names: readonly string[]): void {
  const twice = names.find((name, i) => names.indexOf(name) !== i);
  if (twice !== undefined) throw new InputError(parameter, twice, "names that differ");
}
