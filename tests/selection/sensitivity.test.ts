/** Sensitivities of functions whose derivatives are known. */
import fc from "fast-check";
import { sensitivity, tornado } from "risingmain/selection";
import { describe, expect, test } from "vitest";
import { refused } from "../refused.ts";

const amount = fc.double({ min: 0.1, max: 100, noNaN: true });

test("the elasticity of a power is its exponent, to the cube of the step", () => {
  fc.assert(
    fc.property(amount, fc.double({ min: -5, max: 5, noNaN: true }), (x, power) => {
      const [only] = sensitivity({ inputs: { x }, evaluate: ({ x: at = 1 }) => ({ y: at ** power }), step: 1e-3 });
      expect(Math.abs((only?.elasticity as number) - power)).toBeLessThan(1e-4);
      expect(only?.changePerPercent as number).toBeCloseTo(((only?.elasticity as number) * x ** power) / 100, 6);
    }),
  );
});

test("one entry for each input and result, inputs in order", () => {
  const entries = sensitivity({
    inputs: { b: 2, a: 3 },
    evaluate: ({ a = 0, b = 0 }) => ({ sum: a + b, product: a * b }),
  });
  expect(entries.map(({ input, output }) => `${input} ${output}`)).toEqual([
    "b sum",
    "b product",
    "a sum",
    "a product",
  ]);
});

test("tornado bars are the model at the ends of each range, widest first", () => {
  fc.assert(
    fc.property(amount, amount, amount, (a, b, c) => {
      const { base, bars } = tornado({
        inputs: { x: 1, y: 1, z: 1 },
        ranges: { x: [0, 1], y: [0, 1], z: [0, 1] },
        evaluate: ({ x = 0, y = 0, z = 0 }) => ({ out: a * x + b * y + c * z }),
        output: "out",
      });
      expect(base).toBeCloseTo(a + b + c, 9);
      const swings = bars.map(({ swing }) => swing);
      expect(swings).toEqual([...swings].sort((p, q) => q - p));
      expect(bars.find(({ input }) => input === "y")?.swing).toBeCloseTo(b, 9);
    }),
  );
});

test("a result that is 0 has no elasticity, and yet it changes", () => {
  const [only] = sensitivity({ inputs: { x: 3 }, evaluate: ({ x = 0 }) => ({ y: x - 3 }) });
  expect(only?.elasticity).toBeNull();
  expect(only?.changePerPercent).toBeCloseTo(0.03, 12);
});

describe("what is refused, by name", () => {
  const sum = (inputs: Readonly<Record<string, number>>) => ({
    sum: Object.values(inputs).reduce((total, value) => total + value, 0),
  });
  const many = (count: number) => Object.fromEntries(Array.from({ length: count }, (_, i) => [`x${i}`, 1]));
  test.each<[name: string, call: (value: never) => unknown, accepted: readonly unknown[], refused: readonly unknown[]]>(
    [
      [
        "inputs",
        (inputs) => tornado({ inputs, ranges: {}, evaluate: sum, output: "sum" }),
        [many(1), many(1000)],
        [{}, many(1001), undefined],
      ],
      ["inputs.x", (x) => sensitivity({ inputs: { x }, evaluate: sum }), [1e15, -1e15], [0, 1.1e15, Number.NaN]],
      ["step", (step) => sensitivity({ inputs: { x: 1 }, evaluate: sum, step }), [1e-6, 0.5], [0.9e-6, 0.51]],
      ["evaluate", (evaluate) => sensitivity({ inputs: { x: 1 }, evaluate }), [sum], [undefined, "sum"]],
      [
        "evaluate(inputs)",
        (made) => sensitivity({ inputs: { x: 1 }, evaluate: () => made }),
        [{ y: 1 }],
        [undefined, 1],
      ],
      [
        "evaluate(inputs).y",
        (y) => sensitivity({ inputs: { x: 1 }, evaluate: () => ({ y }) }),
        [1],
        [Number.NaN, Infinity, "1"],
      ],
      // A result that is there at the point and not beside it.
      [
        "evaluate(inputs)",
        (name) => sensitivity({ inputs: { x: 1 }, evaluate: ({ x }) => (x === 1 ? { y: 1 } : { [name]: 1 }) }),
        ["y"],
        ["z"],
      ],
      ["ranges", (name) => swing({ [name]: [0, 1] }), ["x"], ["y", "toString"]],
      ["ranges", (ranges) => swing(ranges), [{}], [undefined]],
      ["ranges.x", (x) => swing({ x }), [[0, 1]], [[0], [0, 1, 2], { length: 2 }]],
      ["ranges.x[0]", (low) => swing({ x: [low, 1] }), [-1e15, 1], [-1.1e15]],
      ["ranges.x[1]", (high) => swing({ x: [1, high] }), [1, 1e15], [0.9, 1.1e15]],
      ["output", (output) => tornado({ inputs: { x: 1 }, ranges: {}, evaluate: sum, output }), ["sum"], [undefined, 1]],
      [
        "evaluate(inputs)",
        (output) => tornado({ inputs: { x: 1 }, ranges: {}, evaluate: sum, output }),
        ["sum"],
        ["product", "toString"],
      ],
    ],
  )("%s", (name, call, accepted, wrong) => {
    for (const value of accepted) expect(refused(() => call(value as never))).toBeUndefined();
    for (const value of wrong) expect(refused(() => call(value as never))).toBe(name);
  });

  function swing(ranges: never | object): unknown {
    return tornado({
      inputs: { x: 1 },
      ranges: ranges as Record<string, [number, number]>,
      evaluate: sum,
      output: "sum",
    });
  }
});
