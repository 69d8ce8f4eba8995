/** A step down a convex content: how far, and how often the slope is asked. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { stepLength } from "../../src/network/step-length.ts";

/** The length, and where the slope was asked for it. */
function stepped(slopeAt: (t: number) => number): { readonly t: number; readonly asked: readonly number[] } {
  const asked: number[] = [];
  const slope = (t: number): number => {
    asked.push(t);
    return slopeAt(t);
  };
  return { t: stepLength(slope, slopeAt(0), slopeAt(1)), asked };
}

describe("along a straight slope", () => {
  test("the full step is taken at the first look where the second half of it climbs less than it falls", () => {
    // Level at 0.76: the second half begins at −0.26 and ends at 0.24.
    expect(stepped((t) => t - 0.76)).toEqual({ t: 1, asked: [0.5] });
  });

  test("otherwise half of it, where that is downhill still but no more than half as steep, or level", () => {
    for (const level of [0.75, 0.74]) expect(stepped((t) => t - level)).toEqual({ t: 0.5, asked: [0.5] });
    expect(stepped((t) => 2 * t - 1)).toEqual({ t: 0.5, asked: [0.5] });
    expect(stepped((t) => Math.max(t - 1, 3 * t - 2))).toEqual({ t: 0.5, asked: [0.5] });
  });

  test("or to where it is level, in two looks", () => {
    const { t, asked } = stepped((t) => t - 0.375);
    expect(t).toBe(0.375);
    expect(asked).toEqual([0.5, 0.375]);
  });
});

test("the content falls, by a step that ends no more than half as steep as it began", () => {
  // Slopes of three straight pieces that never fall, bent anywhere and as steep as you like.
  const slopes = fc
    .record({
      downhill: fc.double({ min: 1e-3, max: 1e3, noNaN: true }),
      kinks: fc.tuple(
        fc.double({ min: 1e-6, max: 0.5, noNaN: true }),
        fc.double({ min: 0.5, max: 0.999999, noNaN: true }),
      ),
      rises: fc.tuple(...[0, 1, 2].map(() => fc.double({ min: -6, max: 6, noNaN: true }).map((power) => 10 ** power))),
    })
    .map(({ downhill, kinks: [a, b], rises }) => {
      const [r0 = 0, r1 = 0, r2 = 0] = rises;
      return (t: number): number =>
        -downhill + r0 * Math.min(t, a) + r1 * Math.max(0, Math.min(t, b) - a) + r2 * Math.max(0, t - b);
    });
  fc.assert(
    fc.property(slopes, (slopeAt) => {
      fc.pre(slopeAt(1) > 0);
      const { t, asked } = stepped(slopeAt);
      expect(asked.length).toBeLessThan(60);
      if (t < 1) {
        expect(t).toBeGreaterThan(0);
        expect(slopeAt(t)).toBeLessThanOrEqual(0);
        expect(slopeAt(t)).toBeGreaterThanOrEqual(slopeAt(0) / 2);
      } else {
        expect(t).toBe(1);
        expect(slopeAt(0.5) + slopeAt(1)).toBeLessThan(0);
      }
    }),
  );
});

describe("a slope with a kink", () => {
  test("close to the start: every other look halves the bracket", () => {
    // Half as steep at 0.625e-6, and a wall at 1e-6: log₂ 1e6 = 20 halvings reach it.
    const { t, asked } = stepped((t) => (t < 1e-6 ? -1 + 8e5 * t : 1e9));
    expect(t).toBeLessThan(1e-6);
    expect(t).toBeGreaterThan(0.62e-6);
    expect(asked.length).toBeLessThanOrEqual(2 * 22);
  });

  test("between two floats of the start: it gives up after a hundred looks, next to nothing on", () => {
    const { t, asked } = stepped((t) => (t > 0 ? 1 : -1));
    expect(asked.length).toBe(100);
    expect(t).toBeGreaterThan(0);
    expect(t).toBeLessThan(1e-15);
  });

  test("that is never half as steep: the last point that is still downhill", () => {
    const { t, asked } = stepped((t) => (t <= 0.3 ? -1 : 0.5));
    expect(asked.length).toBe(100);
    expect(t).toBeLessThanOrEqual(0.3);
    expect(t).toBeGreaterThan(0.3 - 1e-12);
  });
});
