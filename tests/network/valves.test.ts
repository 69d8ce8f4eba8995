/** What valves, pumps and starving outlets do, checked on the answer alone. */
import fc from "fast-check";
import { type Network, type OutletCoefficient, type Run, solveNetwork } from "risingmain/network";
import type { GaugePressure } from "risingmain/units";
import { describe, expect, test } from "vitest";
import { flow, layouts, lossOf, m, solved, water } from "./layouts.ts";

const PER_HEAD = 999.7 * 9.80665;
const pipe = { law: "darcy-weisbach", insideDiameter: m(0.0351), roughness: m(1.5e-6) } as const;

/** Heads by junction name. */
function headsOf(result: ReturnType<typeof solved>): Map<string, number> {
  return new Map(result.junctions.map(({ id, head }) => [id, head as number]));
}

test("outlets above the grade line give nothing, draw nothing in, and the rest share what there is", () => {
  fc.assert(
    fc.property(
      layouts({ loops: 4, pressureDependent: true }),
      fc.double({ min: 0, max: 30, noNaN: true }),
      (network, head) => {
        const outlets = network.outlets.filter(({ kind }) => kind === "pressure-dependent");
        const low: Network = {
          ...network,
          outlets,
          sources: [{ id: "tank", junction: "0", kind: "fixed head", head: m(head) }],
        };
        const result = solved(solveNetwork(low));
        const heads = headsOf(result);
        low.outlets.forEach((outlet, i) => {
          if (outlet.kind !== "pressure-dependent") return;
          const got = result.outlets[i];
          const h = (got?.pressure as number) / PER_HEAD;
          expect(got?.flow as number).toBeGreaterThanOrEqual(0);
          expect(Math.abs((got?.flow as number) - outlet.coefficient * Math.sqrt(Math.max(0, h)))).toBeLessThan(1e-8);
          if (h < -1e-6) expect(got?.state).toBe("starving");
        });
        low.runs.forEach((run, k) => {
          const fall = (heads.get(run.from) as number) - (heads.get(run.to) as number);
          expect(Math.abs(fall - lossOf(run, result.runs[k]?.flow as number))).toBeLessThan(1e-7);
        });
      },
    ),
  );
});

test("a check valve lets nothing back: it either balances, or holds against more head beyond it", () => {
  fc.assert(
    fc.property(
      layouts({ loops: 5, pressureDependent: true }),
      fc.array(fc.boolean(), { minLength: 20, maxLength: 20 }),
      (network, checked) => {
        const runs = network.runs.map((run, k) => (checked[k] ? { ...run, valve: { kind: "check" as const } } : run));
        const result = solved(solveNetwork({ ...network, runs }));
        const heads = headsOf(result);
        const cutOff = new Set(result.junctions.filter(({ state }) => state === "cut off").map(({ id }) => id));
        runs.forEach((run, k) => {
          const got = result.runs[k];
          if (cutOff.has(run.from) || cutOff.has(run.to)) return;
          const fall = (heads.get(run.from) as number) - (heads.get(run.to) as number);
          if (got?.state === "closed") {
            expect(got.flow).toBe(0);
            expect(fall).toBeLessThan(1e-6);
          } else {
            expect(Math.abs(fall - lossOf(run, got?.flow as number))).toBeLessThan(1e-6);
            if (run.valve !== undefined) expect(got?.flow as number).toBeGreaterThan(-1e-12);
          }
        });
      },
    ),
  );
});

test("a reducing valve holds its set pressure, or stands open below it", () => {
  fc.assert(
    fc.property(
      layouts({ loops: 0, pressureDependent: true }),
      fc.array(fc.option(fc.double({ min: 0, max: 100, noNaN: true }), { freq: 2 }), { minLength: 11, maxLength: 11 }),
      (network, sets) => {
        // Runs of a tree, all turned away from the tank; a valve wherever the list has a set pressure (m of head).
        const runs = network.runs.map((run, k): Run => {
          const [from, to] = Number(run.from) < Number(run.to) ? [run.from, run.to] : [run.to, run.from];
          const set = sets[k];
          const valve =
            typeof set === "number" && k < 9
              ? { kind: "reducing" as const, setPressure: (set * PER_HEAD) as GaugePressure }
              : undefined;
          return { ...run, from, to, ...(valve && { valve }) };
        });
        const result = solved(solveNetwork({ ...network, runs }));
        const heads = headsOf(result);
        const elevation = new Map(network.junctions.map((junction) => [junction.id, junction.elevation as number]));
        runs.forEach((run, k) => {
          const got = result.runs[k];
          const fall = (heads.get(run.from) as number) - (heads.get(run.to) as number);
          const loss = lossOf(run, got?.flow as number);
          if (run.valve?.kind !== "reducing") {
            if (got?.state !== "shut") expect(Math.abs(fall - loss)).toBeLessThan(1e-6);
            return;
          }
          const setHead = (elevation.get(run.to) as number) + run.valve.setPressure / PER_HEAD;
          if (got?.state === "reducing") {
            expect(Math.abs((heads.get(run.to) as number) - setHead)).toBeLessThan(1e-9);
            expect(fall - loss).toBeGreaterThan(-1e-6);
          } else if (got?.state !== "shut" && got?.state !== "closed") {
            expect(heads.get(run.to) as number).toBeLessThan(setHead + 1e-6);
            expect(Math.abs(fall - loss)).toBeLessThan(1e-6);
          }
        });
      },
    ),
    { numRuns: 300 },
  );
});

test("two pumps on one main: each gives what its curve says at the head they share; the weaker may be held shut", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 20, max: 100, noNaN: true }),
      fc.double({ min: 20, max: 100, noNaN: true }),
      fc.double({ min: 1e-6, max: 2e-4, noNaN: true }),
      (shutoffA, shutoffB, coefficient) => {
        const curve = (shutoff: number) => (q: number) => m(shutoff - 1e7 * q * q);
        const result = solved(
          solveNetwork({
            water,
            junctions: [
              { id: "tee", elevation: m(0) },
              { id: "end", elevation: m(5) },
            ],
            runs: [{ id: "line", from: "tee", to: "end", length: m(100), ...pipe }],
            outlets: [
              {
                id: "hose",
                junction: "end",
                kind: "pressure-dependent",
                coefficient: coefficient as OutletCoefficient,
              },
            ],
            sources: [
              { id: "a", junction: "tee", kind: "curve", headAtFlow: curve(shutoffA), largestFlow: flow(0.002) },
              { id: "b", junction: "tee", kind: "curve", headAtFlow: curve(shutoffB), largestFlow: flow(0.002) },
            ],
          }),
        );
        const shared = result.junctions[0]?.head as number;
        [shutoffA, shutoffB].forEach((shutoff, i) => {
          const source = result.sources[i];
          expect(Math.abs((source?.flow as number) - Math.sqrt(Math.max(0, shutoff - shared) / 1e7))).toBeLessThan(
            1e-8,
          );
          if (shutoff < shared - 1e-3) expect(source?.state).toBe("held shut");
        });
      },
    ),
  );
});

describe("what cannot be", () => {
  const line = (id: string, from: string, to: string): Run => ({ id, from, to, length: m(50), ...pipe });
  const frame = { water, junctions: ["a", "b", "c"].map((id) => ({ id, elevation: m(0) })) };

  test("fixed demands beyond the end of the pump's curve: cannot supply, and how much is short", () => {
    const result = solveNetwork({
      ...frame,
      runs: [line("1", "a", "b"), line("2", "b", "c")],
      outlets: [{ id: "field", junction: "c", kind: "fixed demand", flow: flow(0.003) }],
      sources: [
        { id: "pump", junction: "a", kind: "curve", headAtFlow: (q) => m(60 - 5e6 * q * q), largestFlow: flow(0.002) },
      ],
    });
    expect(result).toMatchObject({ state: "cannot supply", sources: ["pump"] });
    if (result.state === "cannot supply") expect(result.short).toBeCloseTo(0.001, 12);
  });

  test("a part behind a shut valve is cut off and its outlets starve", () => {
    const result = solved(
      solveNetwork({
        ...frame,
        runs: [line("1", "a", "b"), { ...line("2", "b", "c"), valve: { kind: "shut" } }],
        outlets: [
          { id: "near", junction: "b", kind: "fixed demand", flow: flow(0.0003) },
          { id: "far", junction: "c", kind: "fixed demand", flow: flow(0.0003) },
        ],
        sources: [{ id: "tank", junction: "a", kind: "fixed head", head: m(30) }],
      }),
    );
    expect(result.junctions[2]?.state).toBe("cut off");
    expect(result.outlets.map(({ state }) => state)).toEqual(["running", "starving"]);
    expect(result.outlets[1]?.flow).toBe(0);
    expect(result.sources[0]?.flow).toBeCloseTo(0.0003, 15);
    expect(result.everyOutletServed).toBe(false);
  });

  test("a demand that pulls the grade line under the pipe: negative pressure, and the outlet starves", () => {
    const result = solved(
      solveNetwork({
        ...frame,
        runs: [line("1", "a", "b"), line("2", "b", "c")],
        outlets: [{ id: "field", junction: "c", kind: "fixed demand", flow: flow(0.003) }],
        sources: [{ id: "tank", junction: "a", kind: "fixed head", head: m(5) }],
      }),
    );
    expect(result.junctions[2]?.state).toBe("negative pressure");
    expect(result.outlets[0]?.state).toBe("starving");
  });

  test("a reducing valve with another way round it is refused", () => {
    expect(() =>
      solveNetwork({
        ...frame,
        runs: [
          line("1", "a", "b"),
          { ...line("2", "b", "c"), valve: { kind: "reducing", setPressure: 2e5 as GaugePressure } },
          line("3", "a", "c"),
        ],
        outlets: [],
        sources: [{ id: "tank", junction: "a", kind: "fixed head", head: m(30) }],
      }),
    ).toThrow(/only way/);
  });

  test("a lower tank on the same main is filled by the higher one, and the run is told as reversed", () => {
    const result = solved(
      solveNetwork({
        ...frame,
        runs: [line("1", "a", "b")],
        outlets: [],
        sources: [
          { id: "low", junction: "a", kind: "fixed head", head: m(10) },
          { id: "high", junction: "b", kind: "fixed head", head: m(12) },
        ],
        junctions: frame.junctions.slice(0, 2),
      }),
    );
    expect(result.runs[0]?.state).toBe("reversed");
    expect(result.sources.map(({ state }) => state)).toEqual(["filling", "supplying"]);
  });
});
