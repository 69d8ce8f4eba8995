/** A step of Dormand and Prince against SciPy's, taken from SciPy's own table. */
import { expect, test } from "vitest";
import { dormandPrince, type Rates, stepRoom } from "../../src/numeric/index.ts";
import { stepOn, within } from "../../src/numeric/runge-kutta.ts";
import { apart, fixture } from "./fixture.ts";

/** Those of the fixture: two numbers that move each other, and an integral carried along. */
const rates: Rates = (state, out) => {
  const [a = 0, b = 0] = state;
  out[0] = a * (1.5 - b);
  out[1] = b * (a - 3);
  out[2] = a * b;
};
const MOVING = 2;

test.each(fixture.steps)("from $from by $step", ({ from, step, next, error, within: inside }) => {
  const room = stepRoom(from.length, MOVING);
  const start = Float64Array.from(from);
  rates(start, room.stages[0] as Float64Array);
  dormandPrince(rates, start, step, room);
  expect(apart(room.next, next)).toBeLessThan(1e-15);
  expect(apart(room.error, error.slice(0, MOVING))).toBeLessThan(1e-6);
  for (const { share, state } of inside) {
    expect(apart(within(start, step, share, room), state.slice(0, MOVING))).toBeLessThan(1e-14);
  }
});

test("the last rates of a step are the first of the next", () => {
  const room = stepRoom(3, MOVING);
  const start = Float64Array.from([2, 1, 3]);
  rates(start, room.stages[0] as Float64Array);
  dormandPrince(rates, start, 0.1, room);
  stepOn(room);
  const expected = new Float64Array(3);
  rates(room.next, expected);
  expect(room.stages[0]).toEqual(expected);
  expect(new Set(room.stages).size).toBe(7);
});
