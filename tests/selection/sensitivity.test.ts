/** Sensitivities of functions whose derivatives are known. */
import fc from "fast-check";
import { sensitivity, tornado } from "risingmain/selection";
import { expect, test } from "vitest";

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
