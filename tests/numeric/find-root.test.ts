/** Brent's method: roots and number of calls against SciPy's, and the bracket kept. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { findRoot } from "../../src/numeric/index.ts";
import { fixture } from "./fixture.ts";

/** The functions of the fixture, by its names. */
const functions: Readonly<Record<string, (x: number) => number>> = {
  "cos x - x": (x) => Math.cos(x) - x,
  "x^3 - 2x - 5": (x) => x ** 3 - 2 * x - 5,
  "exp x - 1e4": (x) => Math.exp(x) - 1e4,
  "x^9": (x) => x ** 9,
  "1 - 1/x": (x) => 1 - 1 / x,
  "sqrt x - 3": (x) => Math.sqrt(x) - 3,
  "jump at 1/3": (x) => (x > 1 / 3 ? 1 : -1),
};

test.each(fixture.roots)("$name, in not many more calls than SciPy takes", ({ name, low, high, x, calls }) => {
  const f = functions[name] as (x: number) => number;
  let called = 0;
  const counted = (at: number): number => {
    called++;
    return f(at);
  };
  const root = findRoot(counted, low, high);
  expect(Math.abs(root.x - x)).toBeLessThanOrEqual(4 * Number.EPSILON * Math.max(Math.abs(x), 1e-15));
  expect(root.residual).toBe(f(root.x));
  expect(root.evaluations).toBe(called);
  // SciPy stops at 4 epsilon of x, this at 2: a third more calls where the root is flat.
  expect(called).toBeLessThanOrEqual(Math.ceil((4 / 3) * calls) + 1);
  // The other way round is the same task.
  expect(Math.abs(findRoot(f, high, low).x - x)).toBeLessThanOrEqual(4 * Number.EPSILON * Math.max(Math.abs(x), 1e-15));
});

test("a root at an end is taken at once", () => {
  expect(findRoot((x) => x - 2, 2, 5)).toEqual({ x: 2, residual: 0, evaluations: 2 });
  expect(findRoot((x) => x - 5, 2, 5)).toEqual({ x: 5, residual: 0, evaluations: 2 });
});

test("ends of one sign are no bracket", () => {
  expect(() => findRoot((x) => x * x + 1, -1, 1)).toThrow("no sign change");
  expect(() => findRoot((x) => -x * x - 1, -1, 1)).toThrow("no sign change");
});

test("a tolerance is kept, and saves calls", () => {
  const f = (x: number): number => Math.exp(x) - 1e4;
  const exact = Math.log(1e4);
  const rough = findRoot(f, 0, 20, 1e-3);
  expect(Math.abs(rough.x - exact)).toBeLessThanOrEqual(1e-3);
  expect(rough.evaluations).toBeLessThan(findRoot(f, 0, 20).evaluations);
});

test("a rising function's root lies between its sign change, wherever that is", () => {
  const place = fc.double({ min: -100, max: 100, noNaN: true });
  fc.assert(
    fc.property(place, fc.double({ min: 0.1, max: 50, noNaN: true }), (at, steepness) => {
      const { x } = findRoot((z) => Math.atan(steepness * (z - at)), -150, 200);
      expect(Math.abs(x - at)).toBeLessThanOrEqual(1e-13 * Math.max(1, Math.abs(at)));
    }),
  );
});
