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
  return finite(name, value, (value * multiply) / divide);
}

/**
 * The number of units of `multiply / divide` in an SI value: the inverse of {@link scaled}.
 *
 * @internal
 */
export function read(name: string, value: number, multiply = 1, divide = 1): number {
  return finite(name, value, (value * divide) / multiply);
}

/**
 * The result, where it and the number it came from are finite.
 *
 * @internal
 */
export function finite(name: string, value: number, result: number): number {
  // `result - result` is NaN for NaN and the infinities, 0 for every other number: one subtraction for both tests.
  if (typeof value !== "number" || result - result !== 0) throw new InputError(name, value, "a finite number");
  return result;
}
