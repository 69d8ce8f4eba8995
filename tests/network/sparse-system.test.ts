/** The linear solver against the equations themselves: what flows along the conductances to each node is what is asked. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { sparseSystem } from "../../src/network/sparse-ldlt.ts";

const conductance = fc.double({ min: -4, max: 4, noNaN: true }).map((power) => 10 ** power);

const graphs = fc.integer({ min: 2, max: 40 }).chain((n) =>
  fc.record({
    n: fc.constant(n),
    edges: fc.array(fc.record({ a: fc.nat(n - 1), step: fc.integer({ min: 1, max: n - 1 }), w: conductance }), {
      maxLength: 4 * n,
    }),
    ground: fc.array(fc.oneof(conductance, fc.constant(Infinity)), { minLength: n, maxLength: n }),
    b: fc.array(fc.integer({ min: -1000, max: 1000 }), { minLength: n, maxLength: n }),
  }),
);

test("every free node balances to rounding and every held one stays where it is held, from the first solution on", () => {
  fc.assert(
    fc.property(graphs, ({ n, edges, ground, b }) => {
      const ends = Int32Array.from(edges.flatMap(({ a, step }) => [a, (a + step) % n]));
      const system = sparseSystem(n, ends);
      const weights = Float64Array.from(edges, ({ w }) => w);
      for (let time = 0; time < 2; time++) {
        const x = Float64Array.from(b);
        system.solve(Float64Array.from(ground), weights, x);
        const excess = b.map((value, i) => (ground[i] as number) * (x[i] as number) - value);
        const scale = b.map((value, i) => Math.abs((ground[i] as number) * (x[i] as number)) + Math.abs(value));
        edges.forEach(({ w }, e) => {
          const [i, j] = [ends[2 * e] as number, ends[2 * e + 1] as number];
          const along = w * ((x[i] as number) - (x[j] as number));
          excess[i] = (excess[i] as number) + along;
          excess[j] = (excess[j] as number) - along;
          const size = w * (Math.abs(x[i] as number) + Math.abs(x[j] as number));
          scale[i] = (scale[i] as number) + size;
          scale[j] = (scale[j] as number) + size;
        });
        for (let i = 0; i < n; i++) {
          if (ground[i] === Infinity) expect(x[i]).toBe(b[i]);
          else expect(Math.abs(excess[i] as number)).toBeLessThanOrEqual(1e-14 * (scale[i] as number));
        }
      }
    }),
  );
});
