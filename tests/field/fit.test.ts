/** The fit of one and two figures: where algebra puts the least, inside the ends, in few calls. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { fitResiduals } from "../../src/field/fit-residuals.ts";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

test("a straight line's one figure: Σ a b / Σ a², or the end before it", () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(between(-5, 5), between(-5, 5)), { minLength: 1, maxLength: 4 }),
      between(-10, 0),
      between(0.5, 10),
      (rows, low, width) => {
        const high = low + width;
        const aa = rows.reduce((sum, [a]) => sum + a * a, 0);
        fc.pre(aa > 0.1);
        const best = rows.reduce((sum, [a, b]) => sum + a * b, 0) / aa;
        const want = Math.min(Math.max(best, low), high);
        const fit = fitResiduals(([x = 0]) => rows.map(([a, b]) => a * x - b), [{ low, high }]);
        expect(fit.values[0]).toBeCloseTo(want, 5);
        expect(fit.least).toBeCloseTo(
          rows.reduce((sum, [a, b]) => sum + (a * want - b) ** 2, 0),
          5,
        );
      },
    ),
  );
});

test("two figures of a plane by the normal equations, in shares of unlike ranges", () => {
  fc.assert(
    fc.property(between(0.1, 0.9), between(0.1, 0.9), between(1e-3, 1e3), between(1e-3, 1e3), (s, t, one, two) => {
      const ends = [
        { low: -one, high: 2 * one },
        { low: two, high: 3 * two },
      ];
      const [a, b] = [-one + 3 * one * s, two + 2 * two * t];
      // Three residuals that vanish together at (a, b) alone.
      const f = ([x = 0, y = 0]: readonly number[]) => [
        (x - a) / one + (y - b) / two,
        (x - a) / one - (2 * (y - b)) / two,
        (y - b) / two,
      ];
      const { values, least } = fitResiduals(f, ends);
      expect(((values[0] as number) - a) / one).toBeCloseTo(0, 5);
      expect(((values[1] as number) - b) / two).toBeCloseTo(0, 5);
      expect(least).toBeLessThan(1e-9);
    }),
  );
});

test("a curved valley of two figures: Rosenbrock's (1960), whose least is 0 at (1, 1)", () => {
  const { values, least } = fitResiduals(
    ([x = 0, y = 0]) => [10 * (y - x * x), 1 - x],
    [
      { low: -2, high: 2 },
      { low: -1, high: 3 },
    ],
  );
  expect(least).toBeLessThan(1e-6);
  expect(values[0]).toBeCloseTo(1, 2);
});

test("nothing free is one look; one and two figures end after their looks and two descents of sixteen steps", () => {
  const counted = (ends: readonly { low: number; high: number }[], f: (v: readonly number[]) => readonly number[]) => {
    let calls = 0;
    const fit = fitResiduals((values) => {
      calls++;
      return f(values);
    }, ends);
    return { calls, ...fit };
  };
  expect(counted([], () => [3, 4])).toEqual({ calls: 1, values: [], least: 25 });
  const end = { low: -3, high: 9 };
  const bent = counted([end], ([x = 0]) => [Math.sin(x) + 2, x * x]);
  expect(bent.calls).toBeLessThanOrEqual(12 + 2 * 16 * 2);
  expect(counted([end, end], ([x = 0, y = 0]) => [x * y - 1, x - y]).calls).toBeLessThanOrEqual(49 + 2 * 16 * 3);
  // A level one stops as soon as no step helps: damping from 10⁻³ to 10⁴ by tens is seven of them.
  expect(counted([end], () => [1]).calls).toBeLessThanOrEqual(12 + 7 * 2);
  // What is met at once is not improved on for ever.
  const met = counted([{ low: 0, high: 4 }], ([x = 0]) => [x]);
  expect(met.values).toEqual([0]);
  expect(met.calls).toBeLessThanOrEqual(12 + 2 * 16 * 2);
});

test("looks reach both ends, crowded at the low one unless a figure may have either sign", () => {
  const seen = (low: number, high: number): readonly number[] => {
    const looks: number[] = [];
    fitResiduals(
      ([x = 0]) => {
        looks.push(x);
        return [1];
      },
      [{ low, high }],
    );
    return looks.slice(0, 12);
  };
  const even = seen(-1, 10);
  even.forEach((x, i) => {
    expect(x).toBeCloseTo(-1 + i, 12);
  });
  const crowded = seen(0, 11 ** 3);
  crowded.forEach((x, i) => {
    expect(x).toBeCloseTo(i ** 3, 9);
  });
});

test("no figure is ever tried beyond its ends, nor a step of a slope; overflow is no figure", () => {
  const ends = [
    { low: 2, high: 5 },
    { low: -1, high: 8 },
  ];
  for (const [a, b] of [
    [-3, 20],
    [9, -7],
    [4.9, 7.9],
    [2.1, -0.9],
  ] as const) {
    const f = ([x = 0, y = 0]: readonly number[]) => {
      expect([x >= 2 && x <= 5, y >= -1 && y <= 8]).toEqual([true, true]);
      return [x - a, 2 * (y - b), (x - a) * (y - b)];
    };
    const { values } = fitResiduals(f, ends);
    expect(values[0]).toBeCloseTo(Math.min(Math.max(a, 2), 5), 4);
    fitResiduals(([x = 0]) => f([x, 0]), [{ low: 2, high: 5 }]);
  }
  expect(fitResiduals(([x = 0]) => [1e200 * (x + 1)], [{ low: 0, high: 4 }]).values[0]).toBe(0);
});

test("the lower of two valleys is found though the other is met first", () => {
  // Two dips: of depth 1 near 2 and of depth 2 near 80, between looks.
  const dips = ([x = 0]: readonly number[]) => [
    Math.sqrt(4 - Math.exp(-((x - 2) ** 2)) - 2 * Math.exp(-(((x - 80) / 8) ** 2))),
  ];
  const { values, least } = fitResiduals(dips, [{ low: 0, high: 100 }]);
  expect(Math.abs((values[0] as number) - 80)).toBeLessThan(1);
  expect(least).toBeLessThan(2.05);
});
