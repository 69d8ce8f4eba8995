/** Newton's method on the content, apart from pipes: laws written down for the purpose, and solutions found without it. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { LinkLaw } from "../../src/network/link-laws.ts";
import { flowSolver } from "../../src/network/steady-flow.ts";

const NaNs = (n: number) => new Float64Array(n).fill(Number.NaN);

/** A law by its loss and slope. */
const law = (loss: (q: number) => number, slope: (q: number) => number, usualSlope = 1): LinkLaw => ({
  at: (q, into) => {
    into.loss = loss(q);
    into.slope = slope(q);
  },
  usualSlope,
  oneWay: false,
  covers: () => true,
});
const straight = (r: number): LinkLaw =>
  law(
    (q) => r * q,
    () => r,
    r,
  );
const square = (r: number): LinkLaw =>
  law(
    (q) => r * q * Math.abs(q),
    (q) => 2 * r * Math.abs(q) + 1e-9,
    r,
  );

/** The same laws, and how often each was asked on the average. */
function counted(laws: readonly LinkLaw[]): { readonly laws: readonly LinkLaw[]; readonly asked: () => number } {
  let count = 0;
  const all = laws.map((one) => ({
    ...one,
    at: (q: number, into: { loss: number; slope: number }) => {
      count++;
      one.at(q, into);
    },
  }));
  return { laws: all, asked: () => count / laws.length };
}

/** Solves A x = b by Gauss's elimination with pivots. */
function gauss(A: number[][], b: number[]): number[] {
  const n = b.length;
  const rows = A.map((row, i) => [...row, b[i] as number]);
  const at = (i: number, j: number) => rows[i]?.[j] as number;
  for (let k = 0; k < n; k++) {
    const best = rows.reduce((p, _, i) => (i > k && Math.abs(at(i, k)) > Math.abs(at(p, k)) ? i : p), k);
    [rows[k], rows[best]] = [rows[best] as number[], rows[k] as number[]];
    for (let i = k + 1; i < n; i++) {
      const factor = at(i, k) / at(k, k);
      rows[i] = (rows[i] as number[]).map((value, j) => value - factor * at(k, j));
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let k = n - 1; k >= 0; k--) {
    x[k] = (at(k, n) - x.reduce((sum, value, j) => sum + (j > k ? at(k, j) * value : 0), 0)) / at(k, k);
  }
  return x;
}

describe("straight laws", () => {
  const cases = fc.integer({ min: 1, max: 8 }).chain((n) =>
    fc.record({
      n: fc.constant(n),
      held: fc.array(fc.double({ min: -50, max: 50, noNaN: true }), { minLength: 2, maxLength: 2 }),
      pairs: fc.array(fc.tuple(fc.nat(n + 1), fc.nat(n + 1)), { minLength: n, maxLength: 3 * n }),
      resistance: fc.array(fc.double({ min: 0.5, max: 20, noNaN: true }), { minLength: 4 * n, maxLength: 4 * n }),
      shut: fc.array(fc.boolean(), { minLength: 3 * n, maxLength: 3 * n }),
      demand: fc.array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: n, maxLength: n }),
      forced: fc.option(fc.double({ min: -50, max: 50, noNaN: true })),
      start: fc.array(fc.double({ min: -10, max: 10, noNaN: true }), { minLength: 4 * n, maxLength: 4 * n }),
    }),
  );

  test("are solved by the first linear system, as Gauss solves it, whatever is held, shut or begun with", () => {
    fc.assert(
      fc.property(cases, ({ n, held, pairs, resistance, shut, demand, forced, start }) => {
        // A path that is never shut joins every free node to the first held one.
        const path = Array.from({ length: n }, (_, i) => [i, i + 1] as const);
        const links = [...path, ...pairs.filter(([a, b]) => a !== b)];
        const closed = links.map((_, l) => Number(l >= n && (shut[l - n] ?? false)));
        const head = [...demand.map(() => 0), ...held];
        const isHeld = (i: number): boolean => i >= n || (i === 0 && forced !== null);
        if (forced !== null) head[0] = forced;
        const A = demand.map((_, i) => demand.map((_, j) => Number(isHeld(i) && i === j)));
        const b = demand.map((q, i) => (isHeld(i) ? (head[i] as number) : -q));
        links.forEach(([i, j], l) => {
          if (closed[l]) return;
          for (const [from, to] of [
            [i, j],
            [j, i],
          ] as const) {
            if (isHeld(from)) continue;
            const row = A[from] as number[];
            const w = 1 / (resistance[l] as number);
            row[from] = (row[from] as number) + w;
            if (to < n) row[to] = (row[to] as number) - w;
            else b[from] = (b[from] as number) + w * (head[to] as number);
          }
        });
        const expected = [...gauss(A, b), ...held];

        const laws = links.map((_, l) => straight(resistance[l] as number));
        const solver = flowSolver({
          free: n,
          held: Float64Array.from(held),
          ends: Int32Array.from(links.flat()),
          laws,
        });
        const condition = { demand: Float64Array.from(demand), forced: NaNs(n), shut: Uint8Array.from(closed) };
        if (forced !== null) condition.forced[0] = forced;
        for (const begin of [undefined, Float64Array.from(laws, (_, l) => start[l] as number)]) {
          const { head: found, flow, iterations, settled } = solver(condition, begin);
          expect([settled, iterations <= 2]).toEqual([true, true]);
          const scale = Math.max(1, ...expected.map(Math.abs));
          found.forEach((h, i) => {
            expect(Math.abs(h - (expected[i] as number))).toBeLessThan(1e-11 * scale);
          });
          links.forEach(([i, j], l) => {
            if (closed[l]) return;
            const q = ((expected[i] as number) - (expected[j] as number)) / (resistance[l] as number);
            expect(Math.abs((flow[l] as number) - q)).toBeLessThan(1e-10 * scale);
          });
        }
      }),
    );
  });

  test("each is asked once a system", () => {
    const { laws, asked } = counted([1, 2, 3, 4].map(straight));
    const ends = Int32Array.of(0, 1, 1, 2, 0, 2, 2, 3);
    const solver = flowSolver({ free: 3, held: Float64Array.of(7), ends, laws });
    const condition = { demand: Float64Array.of(1, 2, 4), forced: NaNs(3), shut: new Uint8Array(4) };
    const { iterations } = solver(condition);
    expect([iterations, asked()]).toEqual([1, 1]);
  });
});

/** A ring of three junctions with a tail, fed from a held node; flows in it not easy to guess. */
const ring = (laws: readonly LinkLaw[], head = 7) => {
  const ends = Int32Array.of(0, 1, 1, 2, 0, 2, 3, 0);
  return {
    solver: flowSolver({ free: 3, held: Float64Array.of(head), ends, laws }),
    condition: { demand: Float64Array.of(1, 2, 4), forced: NaNs(3), shut: new Uint8Array(4) },
  };
};

describe("how many linear systems", () => {
  test("a tree takes two, whatever the flows: the first finds them, the second the heads", () => {
    for (const size of [1e-3, 1, 1e3]) {
      const { laws, asked } = counted([1, 2, 3].map(square));
      const solver = flowSolver({ free: 3, held: Float64Array.of(5), ends: Int32Array.of(0, 1, 1, 2, 3, 0), laws });
      const demand = Float64Array.of(size, 2 * size, 4 * size);
      const { iterations, flow } = solver({ demand, forced: NaNs(3), shut: new Uint8Array(3) });
      expect([iterations, asked()]).toEqual([2, 2]);
      [6, 4, 7].forEach((times, l) => {
        expect((flow[l] as number) / (times * size)).toBeCloseTo(1, 10);
      });
    }
  });

  test("from the solution itself, one", () => {
    const { solver, condition } = ring([1, 2, 3, 4].map(square));
    const { flow, iterations } = solver(condition);
    expect(iterations).toBeGreaterThan(2);
    expect(solver(condition, flow).iterations).toBe(1);
  });

  test("a ring of square laws a few, as digits double; as many under a head of 10 km", () => {
    for (const head of [7, 10_000]) {
      const { laws, asked } = counted([1, 2, 3, 4].map(square));
      const { solver, condition } = ring(laws, head);
      const { iterations, settled } = solver(condition);
      expect(settled).toBe(true);
      expect(iterations).toBeLessThanOrEqual(7);
      // Only a step that overshoots is looked at again.
      expect(asked()).toBeLessThanOrEqual(iterations + 2);
    }
  });
});

test("an answer is not touched by the next one", () => {
  const { solver, condition } = ring([1, 2, 3, 4].map(square));
  const first = solver(condition);
  const [flow, head] = [first.flow.slice(), first.head.slice()];
  solver({ ...condition, demand: Float64Array.of(9, 9, 9) });
  expect(first.flow).toEqual(flow);
  expect(first.head).toEqual(head);
});

test("a link shut keeps no flow of an earlier solution and is not asked", () => {
  const laws = [1, 2, 3, 4].map(square);
  const { solver, condition } = ring(laws);
  const fresh = ring(laws).solver;
  const shut = Uint8Array.of(0, 0, 1, 0);
  solver(condition);
  const { flow, head, iterations } = solver({ ...condition, shut });
  expect(flow[2]).toBe(0);
  const alone = fresh({ ...condition, shut });
  expect(head).toEqual(alone.head);
  expect(flow).toEqual(alone.flow);
  expect(iterations).toBe(alone.iterations);
});

describe("where full steps go astray", () => {
  /** Two links side by side that share a flow of 1: one flattens out, the other is straight and slight. */
  const flattening = law(
    (q) => Math.atan(50 * q),
    (q) => 50 / (1 + (50 * q) ** 2),
    50,
  );
  const shared = (start: number) => {
    const { laws, asked } = counted([flattening, straight(1e-3)]);
    const solver = flowSolver({ free: 1, held: Float64Array.of(2), ends: Int32Array.of(1, 0, 1, 0), laws });
    const condition = { demand: Float64Array.of(1), forced: NaNs(1), shut: new Uint8Array(2) };
    return { ...solver(condition, Float64Array.of(start, 1 - start)), asked: asked() };
  };
  // atan(50 q) = 0.001 (1 − q), and what is left out of q on the right changes the sixth digit only.
  const expected = Math.tan(0.001 * (1 - Math.tan(0.001 * (1 - 2e-5)) / 50)) / 50;

  test("full steps from q on the flat part would go further out each time", () => {
    // By hand, Newton's step on f(q) = atan(50 q) − 0.001 (1 − q).
    let q = 0.06;
    for (let k = 0; k < 4; k++) {
      const to = q - (Math.atan(50 * q) - 0.001 * (1 - q)) / (50 / (1 + (50 * q) ** 2) + 0.001);
      expect(Math.abs(to)).toBeGreaterThan(Math.abs(q));
      q = to;
    }
  });

  test.each([0.06, -0.06, 1, -3, 100, 0.001])("from %d the line search brings them home", (start) => {
    const { flow, head, settled, iterations, asked } = shared(start);
    expect(settled).toBe(true);
    expect(Math.abs((flow[0] as number) - expected)).toBeLessThan(1e-12);
    expect(Math.abs((flow[1] as number) - (1 - expected))).toBeLessThan(1e-12);
    expect(head[0]).toBeCloseTo(2 - 0.001 * (1 - expected), 11);
    expect(iterations).toBeLessThanOrEqual(12);
    expect(asked).toBeLessThanOrEqual(40);
  });
});

describe("a law that jumps at rest, between two halves that mirror each other", () => {
  /** Nothing flows across, where the loss is off by the jump: no flow balances any closer. */
  const bridged = (jump: number) => {
    const across = law(
      (q) => 3 * q + (q < 0 ? -jump : jump),
      () => 3,
      3,
    );
    const solver = flowSolver({
      free: 3,
      held: Float64Array.of(100),
      ends: Int32Array.of(3, 0, 3, 1, 0, 2, 1, 2, 0, 1),
      laws: [square(1), square(1), square(2), square(2), across],
    });
    return solver({ demand: Float64Array.of(0, 0, 4), forced: NaNs(3), shut: new Uint8Array(5) });
  };

  test("is accepted to a hundred-millionth of the heads, soon after nothing improves", () => {
    for (const jump of [1e-9, 1e-8, 1e-7]) {
      const { settled, iterations, head } = bridged(jump);
      expect(settled).toBe(true);
      expect(iterations).toBeLessThanOrEqual(10);
      // 2 a side: 2² on the way out, 2 · 2² on.
      expect(head[2]).toBeCloseTo(100 - 4 - 8, 6);
    }
  });

  test("is not settled beyond, and the search ends", () => {
    const { settled, iterations } = bridged(1e-4);
    expect(settled).toBe(false);
    expect(iterations).toBe(300);
  });
});
