/** The order of elimination against elimination itself, played on sets of neighbours. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Elimination, eliminationOf } from "../../src/network/elimination-order.ts";

/** A graph: its number of nodes, and pairs of them. */
type Graph = readonly [n: number, edges: readonly (readonly [number, number])[]];

const eliminated = ([n, edges]: Graph): Elimination => eliminationOf(n, Int32Array.from(edges.flat()));

/**
 * Takes out one node after the other, joining all its neighbours: in the order given, or each time one that has the least.
 * Gives what each node was joined to when its turn came.
 */
function played([n, edges]: Graph, order?: Int32Array): readonly Set<number>[] {
  const near = Array.from({ length: n }, () => new Set<number>());
  const join = (a: number, b: number): void => {
    if (a === b) return;
    near[a]?.add(b);
    near[b]?.add(a);
  };
  for (const [a, b] of edges) join(a, b);
  const left = new Set(near.keys());
  const sizeOf = (i: number) => (near[i] as Set<number>).size;
  for (let k = 0; k < n; k++) {
    const node = order?.[k] ?? [...left].reduce((best, i) => (sizeOf(i) < sizeOf(best) ? i : best));
    left.delete(node);
    const beside = [...(near[node] as Set<number>)];
    for (const a of beside) {
      near[a]?.delete(node);
      for (const b of beside) join(a, b);
    }
  }
  return near;
}

/** Numbers that the factor keeps beside its diagonal. */
const fill = (sets: readonly Set<number>[]): number => sets.reduce((sum, { size }) => sum + size, 0);

const path = (n: number): Graph => [n, Array.from({ length: n - 1 }, (_, i) => [i, i + 1])];
const ring = (n: number): Graph => [n, Array.from({ length: n }, (_, i) => [i, (i + 1) % n])];
const star = (n: number): Graph => [n, Array.from({ length: n - 1 }, (_, i) => [n - 1, i])];
const complete = (n: number): Graph => [
  n,
  path(n)[1].flatMap(([, j]) => Array.from({ length: j }, (_, i) => [i, j] as const)),
];
const wheel = (n: number): Graph => [n + 1, [...ring(n)[1], ...star(n + 1)[1]]];
const grid = (w: number, h: number): Graph => [
  w * h,
  Array.from({ length: w * h }, (_, i) => [
    ...(i % w < w - 1 ? [[i, i + 1] as const] : []),
    ...(i < w * (h - 1) ? [[i, i + w] as const] : []),
  ]).flat(),
];
/** Any pairs: loops on one node and repeated edges among them. The same in each run. */
const tangle = (n: number, edges: number): Graph => {
  let seed = n;
  const next = (): number => {
    seed = (Math.imul(seed, 1_664_525) + 1_013_904_223) >>> 0;
    return Math.floor((seed / 2 ** 32) * n);
  };
  return [n, Array.from({ length: edges }, () => [next(), next()] as const)];
};

/** Orders every node once and gives each panel the neighbours that its columns have when their turn comes. */
function expectPatternOf(graph: Graph): void {
  const { order, first, rowStart, rows } = eliminated(graph);
  const [n] = graph;
  expect([...order].sort((a, b) => a - b)).toEqual(Array.from({ length: n }, (_, i) => i));
  expect([first[0], first.at(-1), rowStart[0], rowStart.at(-1)]).toEqual([0, n, 0, rows.length]);
  const near = played(graph, order);
  for (let s = 0; s + 1 < first.length; s++) {
    const columns = order.slice(first[s], first[s + 1]);
    expect(columns.length).toBeGreaterThan(0);
    const beside = [...rows.slice(rowStart[s], rowStart[s + 1])];
    columns.forEach((node, j) => {
      const expected = new Set([...columns.slice(j + 1), ...beside]);
      expect(near[node]).toEqual(expected);
      expect(expected.size).toBe(columns.length - j - 1 + beside.length);
    });
  }
}

test("every panel has the neighbours that elimination gives its columns", () => {
  fc.assert(
    fc.property(
      fc
        .integer({ min: 1, max: 30 })
        .chain((n) => fc.tuple(fc.constant(n), fc.array(fc.tuple(fc.nat(n - 1), fc.nat(n - 1)), { maxLength: 3 * n }))),
      expectPatternOf,
    ),
  );
});

test("nor is any neighbour lost where the pattern outgrows the edges", () => {
  const graph = tangle(200, 500);
  expect(eliminated(graph).rows.length).toBeGreaterThan(2 * 500);
  expectPatternOf(graph);
});

describe("nothing is filled in where nothing need be", () => {
  const binary: Graph = [31, Array.from({ length: 30 }, (_, i) => [i + 1, i >> 1] as const)];
  const ladderOfTriangles: Graph = [20, [...path(20)[1], ...Array.from({ length: 18 }, (_, i) => [i, i + 2] as const)]];
  const parts: Graph = [12, [...path(5)[1], [7, 8], [8, 9], [9, 7]]];
  test.each<[string, Graph]>([
    ["no edge", [4, []]],
    ["a path", path(10)],
    ["a star", star(9)],
    ["a tree", binary],
    ["triangles side by side", ladderOfTriangles],
    ["parts that nothing joins", parts],
    ["all joined to all", complete(9)],
  ])("%s", (_, graph) => {
    expect(fill(played(graph, eliminated(graph).order))).toBe(graph[1].length);
  });

  test("a ring of n takes n − 3 more, whatever the order; a wheel as many", () => {
    for (const n of [3, 4, 5, 8, 20]) {
      expect(fill(played(ring(n), eliminated(ring(n)).order))).toBe(n + (n - 3));
      expect(fill(played(wheel(n), eliminated(wheel(n)).order))).toBe(2 * n + (n - 3));
    }
  });
});

test("all joined to all is one panel; a tree has a panel for each node", () => {
  expect(eliminated(complete(9)).first).toEqual(Int32Array.of(0, 9));
  for (const tree of [star(9), path(9), path(10)]) expect(eliminated(tree).first.length - 1).toBe(tree[0]);
});

test.each<[string, Graph]>([
  ["a small grid", grid(5, 5)],
  ["a grid", grid(12, 12)],
  ["a strip", grid(3, 20)],
  ["a yard with a few loops", tangle(60, 75)],
  ["a thin tangle", tangle(100, 150)],
  ["a tangle", tangle(120, 300)],
  ["a thick tangle", tangle(60, 500)],
])("the approximate degrees keep the factor of %s as sparse as the true ones, within a twentieth", (_, graph) => {
  expect(fill(played(graph, eliminated(graph).order)) / fill(played(graph))).toBeLessThan(1.05);
});
