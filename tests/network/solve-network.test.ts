/** Laws of any balanced layout. */
import { readFileSync } from "node:fs";
import fc from "fast-check";
import { type Network, type Run, solveNetwork } from "risingmain/network";
import { describe, expect, test } from "vitest";
import { runLaw } from "../../src/network/link-laws.ts";
import { flowSolver } from "../../src/network/steady-flow.ts";
import { flow, layouts, lossOf, m, solved, water } from "./layouts.ts";

const looped = layouts({ loops: 6, pressureDependent: true });

interface Fixture {
  readonly networks: readonly {
    readonly elevation: readonly number[];
    readonly runs: readonly Record<string, number | string>[];
    readonly demand: readonly number[];
    readonly sourceHead: number;
    readonly flow: readonly number[];
    readonly head: readonly number[];
  }[];
}
const fixture = JSON.parse(readFileSync(new URL("../fixtures/network.json", import.meta.url), "utf8")) as Fixture;

describe("random looped layouts solved by loop equations with scipy's hybrid method (fixtures/network.py)", () => {
  test.each(fixture.networks.map((net, i) => [i, net] as const))("network %i: heads to 1e-8 m", (_, net) => {
    const result = solved(
      solveNetwork({
        water,
        junctions: net.elevation.map((elevation, i) => ({ id: `${i}`, elevation: m(elevation) })),
        runs: net.runs.map(
          (run, k) => ({ ...run, id: `r${k}`, from: `${run["from"]}`, to: `${run["to"]}` }) as unknown as Run,
        ),
        outlets: net.demand.map((q, i) => ({
          id: `d${i}`,
          junction: `${i}`,
          kind: "fixed demand" as const,
          flow: flow(q),
        })),
        sources: [{ id: "tank", junction: "0", kind: "fixed head", head: m(net.sourceHead) }],
      }),
    );
    result.junctions.forEach(({ head }, i) => {
      expect(Math.abs(head - (net.head[i] as number))).toBeLessThan(1e-8);
    });
    result.runs.forEach((run, k) => {
      expect(Math.abs(run.flow - (net.flow[k] as number))).toBeLessThan(1e-9);
    });
  });
});

/** What enters less what leaves each junction, from the published results alone. */
function surplus(network: Network, result: ReturnType<typeof solved>): number[] {
  const sum = new Map(network.junctions.map(({ id }) => [id, 0]));
  const add = (id: string, q: number): void => {
    sum.set(id, (sum.get(id) as number) + q);
  };
  network.runs.forEach((run, k) => {
    add(run.from, -(result.runs[k]?.flow as number));
    add(run.to, result.runs[k]?.flow as number);
  });
  for (const [i, outlet] of network.outlets.entries()) add(outlet.junction, -(result.outlets[i]?.flow as number));
  for (const [i, source] of network.sources.entries()) add(source.junction, result.sources[i]?.flow as number);
  return [...sum.values()];
}

test("at each junction what enters leaves", () => {
  fc.assert(
    fc.property(looped, (network) => {
      const result = solved(solveNetwork(network));
      const carried = Math.max(...result.runs.map((run) => Math.abs(run.flow)), 1e-9);
      for (const off of surplus(network, result)) expect(Math.abs(off)).toBeLessThan(1e-12 * carried + 1e-15);
      expect(result.residuals.mass).toBeLessThan(1e-12 * carried + 1e-15);
    }),
  );
});

test("along each run the grade line falls by what the public formulas lose, so around each loop it closes", () => {
  fc.assert(
    fc.property(looped, (network) => {
      const result = solved(solveNetwork(network));
      const head = new Map(result.junctions.map(({ id, head }) => [id, head as number]));
      network.runs.forEach((run, k) => {
        const fall = (head.get(run.from) as number) - (head.get(run.to) as number);
        expect(Math.abs(fall - lossOf(run, result.runs[k]?.flow as number))).toBeLessThan(1e-7);
      });
      expect(result.residuals.energy).toBeLessThan(1e-8);
    }),
  );
});

test("an outlet gives c √h, or nothing where no pressure is left", () => {
  fc.assert(
    fc.property(looped, (network) => {
      const result = solved(solveNetwork(network));
      network.outlets.forEach((outlet, i) => {
        if (outlet.kind !== "pressure-dependent") return;
        const got = result.outlets[i];
        const h = (got?.pressure as number) / (999.7 * 9.80665);
        expect(Math.abs((got?.flow as number) - outlet.coefficient * Math.sqrt(Math.max(0, h)))).toBeLessThan(1e-9);
      });
    }),
  );
});

test("the same answer from any start", () => {
  fc.assert(
    fc.property(
      layouts({ loops: 6, pressureDependent: false }),
      fc.infiniteStream(fc.double({ min: -0.01, max: 0.01, noNaN: true })),
      (network, stream) => {
        const index = new Map(network.junctions.map(({ id }, i) => [id, i]));
        const n = network.junctions.length;
        const ends = Int32Array.from(
          network.runs.flatMap(({ from, to }) => [index.get(from) as number, index.get(to) as number]),
        );
        const solver = flowSolver({
          free: n,
          held: new Float64Array(0),
          ends,
          laws: network.runs.map((run) => runLaw(run, water)),
        });
        const forced = new Float64Array(n).fill(Number.NaN);
        forced[0] = 80;
        const demand = Float64Array.from(network.outlets, (outlet) =>
          outlet.kind === "fixed demand" ? outlet.flow : 0,
        );
        const condition = { demand, forced, shut: new Uint8Array(network.runs.length) };
        const first = solver(condition);
        const second = solver(
          condition,
          Float64Array.from(network.runs, () => stream.next().value as number),
        );
        first.head.forEach((h, i) => {
          expect(Math.abs(h - (second.head[i] as number))).toBeLessThan(1e-8);
        });
      },
    ),
  );
});

test("in a tree the flows are the sums of what is drawn beyond, and heads the sums of losses, to the last bit", () => {
  fc.assert(
    fc.property(layouts({ loops: 0, pressureDependent: false }), (network) => {
      const result = solved(solveNetwork(network));
      // By hand: junctions are numbered so that each hangs on an earlier one by the run before it.
      const n = network.junctions.length;
      const taken = network.outlets.map((outlet) => (outlet.kind === "fixed demand" ? (outlet.flow as number) : 0));
      const parent = (i: number): number => {
        const { from, to } = network.runs[i - 1] as Run;
        return Number(to) === i ? Number(from) : Number(to);
      };
      for (let i = n - 1; i > 0; i--) taken[parent(i)] = (taken[parent(i)] as number) + (taken[i] as number);
      for (let i = 1; i < n; i++) {
        const run = network.runs[i - 1] as Run;
        const got = result.runs[i - 1]?.flow as number;
        expect(Math.abs(Math.abs(got) - (taken[i] as number))).toBeLessThanOrEqual(
          4 * Number.EPSILON * (taken[i] as number),
        );
        const up = result.junctions[parent(i)]?.head as number;
        const loss = lossOf(run, got) * (Number(run.to) === i ? 1 : -1);
        expect(Math.abs((result.junctions[i]?.head as number) - (up - loss))).toBeLessThanOrEqual(
          1e-13 * (Math.abs(up) + Math.abs(loss)),
        );
      }
      expect(result.residuals.energy).toBeLessThanOrEqual(
        1e-13 * Math.max(...result.junctions.map(({ head }) => Math.abs(head))),
      );
    }),
  );
});

test("turning every run round negates its flow and moves no head", () => {
  fc.assert(
    fc.property(looped, (network) => {
      const turned = { ...network, runs: network.runs.map((run) => ({ ...run, from: run.to, to: run.from })) };
      const [a, b] = [solved(solveNetwork(network)), solved(solveNetwork(turned))];
      for (const [i, { head }] of a.junctions.entries()) {
        expect(Math.abs(head - (b.junctions[i]?.head as number))).toBeLessThan(1e-9);
      }
    }),
  );
});

test("two twin runs side by side act as one of half the resistance at double flow", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1e4, max: 1e7, noNaN: true }),
      fc.constantFrom(1, 1.5, 1.852, 2),
      fc.double({ min: 1e-5, max: 1e-3, noNaN: true }),
      (resistance, exponent, q) => {
        const line = (id: string, r: number) => ({
          id,
          from: "a",
          to: "b",
          law: "power" as const,
          resistance: r,
          exponent,
        });
        const frame = {
          water,
          junctions: [
            { id: "a", elevation: m(0) },
            { id: "b", elevation: m(0) },
          ],
          outlets: [{ id: "tap", junction: "b", kind: "fixed demand" as const, flow: flow(q) }],
          sources: [{ id: "tank", junction: "a", kind: "fixed head" as const, head: m(50) }],
        };
        const twins = solved(solveNetwork({ ...frame, runs: [line("1", resistance), line("2", resistance)] }));
        const merged = solved(solveNetwork({ ...frame, runs: [line("1", resistance / 2 ** exponent)] }));
        expect(twins.runs[0]?.flow).toBeCloseTo(q / 2, 15);
        expect(Math.abs((twins.junctions[1]?.head as number) - (merged.junctions[1]?.head as number))).toBeLessThan(
          1e-9 * (1 + resistance * q ** exponent),
        );
      },
    ),
  );
});

test("two unlike runs side by side merge into one that carries both flows, anywhere in a looped layout", () => {
  fc.assert(
    fc.property(
      looped,
      fc.nat(20),
      fc.double({ min: 1e3, max: 1e7, noNaN: true }),
      fc.constantFrom(1, 1.5, 1.852, 2),
      fc.double({ min: 0.05, max: 0.95, noNaN: true }),
      (network, pick, resistance, exponent, share) => {
        const k = pick % network.runs.length;
        const { id, from, to } = network.runs[k] as Run;
        const line = (name: string, r: number): Run => ({ id: name, from, to, law: "power", resistance: r, exponent });
        const others = network.runs.filter((_, i) => i !== k);
        const merged = solved(solveNetwork({ ...network, runs: [...others, line(id, resistance)] }));
        // By hand: h = r Q^n in both, so a run that takes the share a of the flow has r / a^n.
        const pair = [line("a", resistance / share ** exponent), line("b", resistance / (1 - share) ** exponent)];
        const apart = solved(solveNetwork({ ...network, runs: [...others, ...pair] }));
        merged.junctions.forEach(({ head }, i) => {
          expect(Math.abs(head - (apart.junctions[i]?.head as number))).toBeLessThan(1e-7);
        });
        const [a, b] = apart.runs.slice(-2).map((run) => run.flow as number);
        const whole = merged.runs.at(-1)?.flow as number;
        expect(Math.abs((a as number) + (b as number) - whole)).toBeLessThan(1e-8);
        expect(Math.abs((a as number) - share * whole)).toBeLessThan(1e-8);
      },
    ),
  );
});

test("a layout that mirrors itself carries mirrored flows", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 5, max: 300, noNaN: true }),
      fc.double({ min: 1e-5, max: 1e-3, noNaN: true }),
      (length, q) => {
        const pipe = {
          law: "darcy-weisbach" as const,
          insideDiameter: m(0.0266),
          length: m(length),
          roughness: m(1.5e-6),
        };
        const { runs } = solved(
          solveNetwork({
            water,
            junctions: ["s", "left", "right", "end"].map((id) => ({ id, elevation: m(0) })),
            runs: [
              ["s", "left"],
              ["s", "right"],
              ["left", "end"],
              ["right", "end"],
              ["left", "right"],
            ].map(([from, to], i) => ({
              id: `${i}`,
              from: from as string,
              to: to as string,
              ...pipe,
            })),
            outlets: [{ id: "tap", junction: "end", kind: "fixed demand", flow: flow(q) }],
            sources: [{ id: "tank", junction: "s", kind: "fixed head", head: m(80) }],
          }),
        );
        expect(Math.abs((runs[0]?.flow as number) - (runs[1]?.flow as number))).toBeLessThan(1e-12);
        expect(Math.abs(runs[4]?.flow as number)).toBeLessThan(1e-9);
      },
    ),
  );
});

test("more demand at one outlet raises no pressure anywhere", () => {
  fc.assert(
    fc.property(looped, fc.nat(11), fc.double({ min: 0, max: 5e-4, noNaN: true }), (network, pick, more) => {
      const at = pick % network.junctions.length;
      const outlets = network.outlets.map((outlet, i) =>
        i === at && outlet.kind === "fixed demand" ? { ...outlet, flow: flow(outlet.flow + more) } : outlet,
      );
      const [a, b] = [solved(solveNetwork(network)), solved(solveNetwork({ ...network, outlets }))];
      a.junctions.forEach(({ head }, i) => {
        expect(b.junctions[i]?.head as number).toBeLessThanOrEqual(head + 1e-7);
      });
    }),
  );
});

test("a wider pipe in a tree lowers no pressure beyond it", () => {
  fc.assert(
    fc.property(
      layouts({ loops: 0, pressureDependent: true }),
      fc.nat(10),
      fc.double({ min: 1, max: 3, noNaN: true }),
      (network, pick, wider) => {
        const k = pick % network.runs.length;
        const runs = network.runs.map((run, i) =>
          i === k && run.law !== "power" ? { ...run, insideDiameter: m(run.insideDiameter * wider) } : run,
        );
        const beyond = new Set([k + 1]);
        for (let i = k + 2; i < network.junctions.length; i++) {
          const { from, to } = network.runs[i - 1] as Run;
          if (beyond.has(Number(Number(to) === i ? from : to))) beyond.add(i);
        }
        const [a, b] = [solved(solveNetwork(network)), solved(solveNetwork({ ...network, runs }))];
        for (const i of beyond)
          expect(b.junctions[i]?.head as number).toBeGreaterThanOrEqual((a.junctions[i]?.head as number) - 1e-7);
      },
    ),
  );
});
