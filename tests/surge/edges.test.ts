import fc from "fast-check";
import { simulateSurge, waveSpeed } from "risingmain/surge";
import { InputError } from "risingmain/units";
import { expect, test } from "vitest";

/** A number at or near an edge of its range, or anywhere inside. */
function edge(low: number, high: number): fc.Arbitrary<number> {
  const inside = Math.sqrt(Math.max(low, 1e-12)) * Math.sqrt(Math.max(high, 1e-12));
  return fc.oneof(
    { weight: 3, arbitrary: fc.double({ min: low, max: high, noNaN: true }) },
    { weight: 1, arbitrary: fc.constantFrom(low, high, Math.min(high, Math.max(low, inside))) },
  );
}

const tank = fc.record({
  volume: edge(1e-6, 1e4),
  precharge: edge(-5e4, 1e8),
  exponent: edge(1, 1.4),
  connectionDiameter: edge(1e-3, 10),
  connectionLoss: edge(0, 1e4),
});
const times = fc.array(edge(0, 5), { minLength: 1, maxLength: 4 }).map((list) => [...list].sort((a, b) => a - b));
const rows = <Name extends string>(name: Name, low: number, high: number) =>
  times.chain((list) =>
    fc.tuple(...list.map(() => edge(low, high))).map((values) => list.map((time, i) => ({ time, [name]: values[i] }))),
  );
const airTank = fc.option(tank, { nil: undefined });
const withTank = (end: fc.Arbitrary<object>) =>
  fc.tuple(end, airTank).map(([given, t]) => (t === undefined ? given : { ...given, airTank: t }));
const fixed = fc.record({ kind: fc.constant("fixed head"), head: edge(-1e4, 1e4) });
const closed = withTank(fc.constant({ kind: "closed" }));
const valve = withTank(
  fc.record({
    kind: fc.constant("valve"),
    outletHead: edge(-1e4, 1e4),
    ratedFlow: edge(1e-9, 100),
    ratedHeadLoss: edge(1e-6, 1e4),
    openings: rows("opening", 0, 1),
  }),
);
const flow = withTank(fc.record({ kind: fc.constant("flow"), flows: rows("flow", -0.01, 0.01) }));
const pump = withTank(
  fc.record({
    kind: fc.constant("pump"),
    sourceHead: edge(-1e4, 1e4),
    shutoffHead: edge(0.01, 1e4),
    ratedFlow: edge(1e-9, 100),
    ratedHead: edge(0, 1e4),
    stopTime: edge(0, 5),
    halfSpeedTime: edge(0, 5),
    checkValveDelay: edge(0, 5),
  }),
);
const inputs = fc.record({
  pipes: fc.array(
    fc.record({
      length: edge(0.01, 1000),
      insideDiameter: edge(1e-3, 10),
      waveSpeed: edge(10, 3000),
      frictionFactor: edge(0, 1),
      endElevation: edge(-1e4, 1e4),
    }),
    { minLength: 1, maxLength: 3 },
  ),
  startElevation: edge(-1e4, 1e4),
  start: fc.oneof(fixed, closed, valve, flow, pump),
  end: fc.oneof(fixed, closed, valve, flow),
  density: edge(500, 2000),
  vapourPressure: edge(0, 9e4),
  atmosphere: edge(9.1e4, 2e5),
  steps: fc.integer({ min: 1, max: 120 }),
  reaches: fc.constantFrom(3, 10, 40),
  probes: fc.constantFrom([], [0]),
});

function everyNumber(value: unknown): number[] {
  if (typeof value === "number") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(everyNumber) : [];
}

test("a line at the edges of every range: finite numbers, or an InputError", () => {
  const states = { followed: 0, "cannot start": 0, refused: 0 };
  fc.assert(
    fc.property(inputs, ({ steps, ...input }) => {
      const travel = input.pipes.reduce((sum, { length, waveSpeed }) => sum + length / waveSpeed, 0);
      const duration = (travel / input.reaches) * steps;
      // Whatever else, most lines must get past the gate: near-level, near-level heads.
      for (const scale of [1, 1e-3]) {
        const level = JSON.parse(JSON.stringify({ ...input, duration }), (key, value: unknown) =>
          /elevation|head$/i.test(key) && typeof value === "number" && key !== "shutoffHead" && key !== "ratedHead"
            ? value * scale
            : value,
        );
        try {
          const surge = simulateSurge(level);
          states[surge.state]++;
          expect(everyNumber(surge).every(Number.isFinite)).toBe(true);
        } catch (error) {
          if (!(error instanceof InputError)) throw error;
          states.refused++;
        }
      }
    }),
    { numRuns: 200 },
  );
  expect(states.followed).toBeGreaterThan(20);
});

test("a wave speed at the edges of every range is finite", () => {
  fc.assert(
    fc.property(
      fc.record({
        bulkModulus: edge(1e5, 1e12),
        density: edge(1, 25_000),
        wall: fc.record({
          insideDiameter: edge(1e-4, 100),
          thickness: edge(5e-324, 10),
          elasticModulus: edge(1e5, 1e13),
          poissonRatio: edge(0, 0.5),
          support: fc.constantFrom("anchored upstream", "anchored throughout", "expansion joints"),
          theory: fc.constantFrom("thin", "thick"),
        }),
      }),
      (input) => {
        const result = waveSpeed(input as never);
        expect(everyNumber(result).every(Number.isFinite)).toBe(true);
        expect(result.waveSpeed).toBeGreaterThanOrEqual(0);
      },
    ),
  );
});
