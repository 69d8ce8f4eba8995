/** The linear solver where many columns share one pattern, which layouts of pipes rarely have: solutions known beforehand. */
import { expect, test } from "vitest";
import { sparseSystem } from "../../src/network/sparse-ldlt.ts";

type Edge = readonly [number, number];

/** Numbers from 1 to 2, the same in each run. */
function someNumbers(): () => number {
  let seed = 1;
  return () => {
    seed = (Math.imul(seed, 1_664_525) + 1_013_904_223) >>> 0;
    return 1 + seed / 2 ** 32;
  };
}

/** Solves for a right side that belongs to a solution chosen beforehand; gives the largest error. */
function errorOf(n: number, edges: readonly Edge[]): number {
  const next = someNumbers();
  const ground = Float64Array.from({ length: n }, next);
  const weights = Float64Array.from(edges, next);
  const chosen = Float64Array.from({ length: n }, (_, i) => (i % 2 === 0 ? next() : -next()));
  const b = chosen.map((x, i) => x * (ground[i] as number));
  edges.forEach(([i, j], e) => {
    const along = (weights[e] as number) * ((chosen[i] as number) - (chosen[j] as number));
    b[i] = (b[i] as number) + along;
    b[j] = (b[j] as number) - along;
  });
  sparseSystem(n, Int32Array.from(edges.flat())).solve(ground, weights, b);
  return Math.max(...b.map((x, i) => Math.abs(x - (chosen[i] as number))));
}

/** Every pair of nodes from one number up to another. */
const clique = (from: number, to: number): Edge[] => {
  const pairs: Edge[] = [];
  for (let i = from; i < to; i++) for (let j = i + 1; j < to; j++) pairs.push([i, j]);
  return pairs;
};
const between = ([a, b]: Edge, [c, d]: Edge): Edge[] =>
  clique(0, Math.max(b, d)).filter(([i, j]) => i >= a && i < b && j >= c && j < d);

test("all joined to all, which is one panel", () => {
  for (let n = 1; n <= 18; n++) expect(errorOf(n, clique(0, n))).toBeLessThan(1e-13);
});

test.each([1, 2, 3, 4, 5, 6, 7, 8, 9])("a panel of %d columns that hands on to two later ones", (k) => {
  for (const [p, q] of [
    [1, 1],
    [2, 1],
    [1, 2],
    [3, 2],
    [2, 3],
  ] as const) {
    // Groups one after the other: a, then p and q that a and each other are joined to; p has 12 more beside it, q 16.
    const [a, b, c, d, n] = [k, k + p, k + p + q, k + p + q + 12, k + p + q + 28];
    const edges = [
      ...clique(0, c),
      ...clique(c, d),
      ...between([a, b], [c, d]),
      ...clique(d, n),
      ...between([b, c], [d, n]),
    ];
    expect(errorOf(n, edges)).toBeLessThan(1e-13);
  }
});
