/**
 * How a quantity is held: a plain number in its SI unit, told apart from others by its type alone.
 *
 * @module
 */
import { InputError } from "./input-error.ts";

declare const quantity: unique symbol;

/** A number in the SI unit of the named quantity. Nothing is stored at run time but the number. */
export type Quantity<Name extends string> = number & {
  /** The name of the quantity; exists in the type only. */
  readonly [quantity]: Name;
};

/**
 * The SI value of `value` units of `multiply / divide` each.
 *
 * @internal
 */
export function scaled(name: string, value: number, multiply = 1, divide = 1): number {
  // The type comes first: a bigint or a symbol would throw a TypeError in the product.
  if (typeof value === "number") {
    const result = (value * multiply) / divide;
    // NaN for NaN and the infinities, 0 for every other number: one subtraction for all.
    if (result - result === 0) return result;
  }
  throw new InputError(name, value, "a finite number");
}

/**
 * The number of units of `multiply / divide` in an SI value: the inverse of {@link scaled}.
 *
 * @internal
 */
export function read(name: string, value: number, multiply = 1, divide = 1): number {
  return scaled(name, value, divide, multiply);
}

/**
 * A number, where it is finite; the error shows `given`, what it was worked out from.
 *
 * @internal
 */
export function finite(name: string, value: number, given: unknown = value): number {
  if (typeof value !== "number" || value - value !== 0) throw new InputError(name, given, "a finite number");
  return value;
}
