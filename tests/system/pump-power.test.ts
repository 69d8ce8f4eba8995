/** Power from input power, from efficiency, and at the speed that makes a head. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { cubicValue, monotoneCubic } from "../../src/numeric/monotone-cubic.ts";
import { headTakenBy } from "../../src/system/head-taken.ts";
import { fullSpeedPower, variableSpeedPower } from "../../src/system/pump-power.ts";
import { changed } from "../changed.ts";
import { curveOf, headOf, plainJob, SHAPE } from "./jobs.ts";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const bare = curveOf({ a: SHAPE.a, d: SHAPE.d, b: SHAPE.b, c: SHAPE.c, knots: SHAPE.knots });
const line = (y: readonly number[], slope: readonly number[], x: readonly number[] = [0, 1e-3]) => ({ x, y, slope });
const END = 1.5e-3;

test("input power over the motor's efficiency, held past the ends of what is known", () => {
  const power = fullSpeedPower({ ...bare, inputPower: line([800, 1000], [2e5, 2e5], [2e-4, 1.2e-3]) }, 1000, 0.8);
  expect([0, 7e-4, END].map((q) => power?.(q, 50))).toEqual([1000, 1125, 1250]);
  expect(fullSpeedPower(bare, 1000, 0.8)).toBeUndefined();
});

test("ρ g Q H over both efficiencies, and at no flow its limit by slopes", () => {
  // η = 1.2 x − 0.6 x² with x in litres a second: a parabola with its top at 1 L/s.
  const efficiency = line([0, 0.6], [1200, 0]);
  const power = fullSpeedPower({ ...bare, efficiency }, 998, 0.7);
  for (const q of [1e-5, 2e-4, 9e-4, 1e-3]) {
    const eta = 1200 * q - 0.6e6 * q * q;
    expect((power?.(q, 0) ?? 0) / ((998 * 9.80665 * q * headOf(SHAPE, q)) / eta / 0.7)).toBeCloseTo(1, 12);
  }
  expect(power?.(0, 0)).toBeCloseTo((998 * 9.80665 * SHAPE.a) / 1200 / 0.7, 8);
  // Past what is known, the last of it: head and efficiency at 1 L/s.
  expect(power?.(END, 0)).toBe(power?.(1e-3, 0));
});

test("an efficiency of nothing, or one that falls below, says nothing of power", () => {
  for (const efficiency of [line([0, 0], [0, 0]), line([0, 0.5], [-10, 0])]) {
    expect(fullSpeedPower({ ...bare, efficiency }, 1000, 1)?.(0, 0)).toBe(0);
  }
});

test("the affinity laws: a speed r makes r² the head and r the flow for r³ the power", () => {
  const full = (q: number): number => 700 + 4e5 * q;
  const power = variableSpeedPower(bare, full);
  fc.assert(
    fc.property(between(0.05, 1), between(1e-3, 1), (r, share) => {
      const x = share * END;
      expect(power(r * x, r * r * headOf(SHAPE, x)) / (r ** 3 * full(x))).toBeCloseTo(1, 8);
    }),
  );
  // At no flow the speed whose shutoff head it is, at most full speed; no head is no speed.
  expect(power(0, SHAPE.a / 4)).toBeCloseTo(full(0) / 8, 10);
  expect([power(0, 2 * SHAPE.a), power(0, 0), power(0, -5)]).toEqual([full(0), 0, 0]);
  // More head than full speed makes at that flow: full speed. Less than the end of the curve makes: its own speed.
  expect(power(8e-4, 1000)).toBe(full(8e-4));
  expect(power(8e-4, headOf(SHAPE, 8e-4))).toBe(full(8e-4));
  expect(power(3e-4, 0.1)).toBeCloseTo((3e-4 / END) ** 3 * full(END), 12);
  expect(power(3e-4, headOf(SHAPE, END) / 25)).toBeCloseTo(0.2 ** 3 * full(END), 10);
  expect(power(2 * END, 0.1)).toBe(full(END));
});

test("the head a system takes has the loss of each stretch of its main", () => {
  const points = [
    [5e-4, 1],
    [1e-3, 3],
    [2e-3, 12],
  ] as const;
  const mainLoss = points.map(([flow, headLoss]) => ({ flow, headLoss }));
  const { system } = changed(plainJob(), "system.mainLoss", mainLoss);
  const main = monotoneCubic([0, ...points.map(([q]) => q)], [0, ...points.map(([, h]) => h)]);
  for (const q of [1e-4, 4e-4, 8e-4, 1.4e-3]) {
    const head = headTakenBy(system, 0 as never)(q as never);
    expect(head).toBeCloseTo(32 + 8e3 * q + 1e6 * q * q + cubicValue(main, q), 9);
  }
});

test("the head a system takes is lift, drawdown, losses and pressure, past a flow limit too", () => {
  const valve = { setPressure: 345e3, minimumFlow: 6e-5, openLoss: 20e3, openLossFlow: 1e-3 };
  for (const flowLimit of [undefined, 5e-4]) {
    const { system } = changed(
      changed(plainJob(), "system.control", { kind: "switch", cutIn: 280e3, cutOut: 410e3, valve }),
      "system.flowLimit",
      flowLimit,
    );
    const head = headTakenBy(system, 3e5 as never);
    for (const q of [0, 2e-4, 5e-4, 9e-4, 1.4e-3]) {
      const lost = 3e6 * q * q + (20e3 / 9806.65) * (q / 1e-3) ** 2;
      expect(head(q as never)).toBeCloseTo(30 + 2 + 8e3 * q + 1e6 * q * q + lost + 3e5 / 9806.65, 9);
    }
  }
});
