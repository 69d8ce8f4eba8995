/** Pipes end to end and side by side, the one pipe that equals them, and lines of outlets. */
import fc from "fast-check";
import {
  darcyWeisbachLoss,
  equivalentPipe,
  flowForHeadLoss,
  multipleOutletFactor,
  type PipeOfRun,
  parallelFlow,
  parallelLoss,
  seriesFlow,
  seriesLoss,
} from "risingmain/pipe";
import type { KinematicViscosity, Length, VolumeFlow } from "risingmain/units";
import { describe, expect, test } from "vitest";

const logarithmic = (from: number, to: number) =>
  fc.double({ min: Math.log(from), max: Math.log(to), noNaN: true }).map((x) => Math.exp(x));
const pipe = fc
  .record({
    insideDiameter: logarithmic(0.01, 0.5),
    length: logarithmic(1, 2000),
    relativeRoughness: fc.oneof(fc.constant(0), logarithmic(1e-7, 0.02)),
  })
  .map(
    ({ relativeRoughness, ...rest }) =>
      ({ ...rest, roughness: relativeRoughness * rest.insideDiameter }) as unknown as PipeOfRun,
  );
const runs = fc.array(pipe, { minLength: 1, maxLength: 5 });
const viscosity = 1.306e-6 as KinematicViscosity;
/** From a creep to fast, for the narrowest pipe. */
const speeds = logarithmic(1e-4, 5);
const off = (got: number, want: number): number => Math.abs(got / want - 1);
const narrowest = (pipes: readonly PipeOfRun[]): number => Math.min(...pipes.map((p) => p.insideDiameter));
const flowOf = (pipes: readonly PipeOfRun[], speed: number): VolumeFlow =>
  ((speed * Math.PI * narrowest(pipes) ** 2) / 4) as VolumeFlow;

describe("series", () => {
  test("the loss is the sum over the pipes, in any order, and a pipe cut in two loses the same", () => {
    fc.assert(
      fc.property(runs, speeds, (pipes, speed) => {
        const flow = flowOf(pipes, speed);
        const whole = seriesLoss({ pipes, flow, viscosity });
        const alone = pipes.map((p) => darcyWeisbachLoss({ ...p, flow, viscosity }).headLoss);
        expect(
          off(
            whole.headLoss,
            alone.reduce((a, b) => a + b, 0),
          ),
        ).toBeLessThan(1e-14);
        expect(off(seriesLoss({ pipes: [...pipes].reverse(), flow, viscosity }).headLoss, whole.headLoss)).toBeLessThan(
          1e-14,
        );
        const halves = pipes.flatMap((p) => [p, p].map((half) => ({ ...half, length: (half.length / 2) as Length })));
        fc.pre(halves.every((p) => p.length >= 1e-3));
        expect(off(seriesLoss({ pipes: halves, flow, viscosity }).headLoss, whole.headLoss)).toBeLessThan(1e-13);
      }),
    );
  });

  test("the flow for a loss undoes it, both ways round", () => {
    fc.assert(
      fc.property(runs, speeds, fc.constantFrom(1, -1), (pipes, speed, sign) => {
        const flow = (sign * flowOf(pipes, speed)) as VolumeFlow;
        const { headLoss } = seriesLoss({ pipes, flow, viscosity });
        const solved = seriesFlow({ pipes, headLoss, viscosity });
        expect(off(solved.flow, flow)).toBeLessThan(1e-12);
        expect(
          off(
            solved.losses.reduce((a, b) => a + b, 0),
            headLoss,
          ),
        ).toBeLessThan(1e-12);
      }),
    );
  });
});

describe("parallel", () => {
  test("the flow is the sum over the pipes; n like pipes carry n times one's", () => {
    fc.assert(
      fc.property(runs, logarithmic(1e-4, 50), (pipes, head) => {
        const headLoss = head as Length;
        const alone = pipes.map((p) => flowForHeadLoss({ ...p, headLoss, viscosity }).flow);
        expect(
          off(
            parallelFlow({ pipes, headLoss, viscosity }).flow,
            alone.reduce((a, b) => a + b, 0),
          ),
        ).toBeLessThan(1e-14);
        const [first] = pipes as [PipeOfRun];
        expect(
          off(parallelFlow({ pipes: [first, first, first], headLoss, viscosity }).flow, 3 * (alone[0] as number)),
        ).toBeLessThan(1e-14);
      }),
    );
  });

  test("dividing a flow undoes it: flows sum, and each loses the same", () => {
    fc.assert(
      fc.property(runs, logarithmic(1e-4, 50), fc.constantFrom(1, -1), (pipes, head, sign) => {
        const { flow } = parallelFlow({ pipes, headLoss: (sign * head) as Length, viscosity });
        fc.pre(Math.abs(flow) < 1e3);
        const solved = parallelLoss({ pipes, flow, viscosity });
        expect(off(solved.headLoss, sign * head)).toBeLessThan(1e-12);
        expect(
          off(
            solved.flows.reduce((a, b) => a + b, 0),
            flow,
          ),
        ).toBeLessThan(1e-12);
        pipes.forEach((p, i) => {
          const loss = darcyWeisbachLoss({ ...p, flow: solved.flows[i] as VolumeFlow, viscosity }).headLoss;
          expect(off(loss, solved.headLoss)).toBeLessThan(1e-12);
        });
      }),
    );
  });

  test("no flow, no loss", () => {
    const one = { insideDiameter: 0.05, length: 10, roughness: 0 } as unknown as PipeOfRun;
    expect(parallelLoss({ pipes: [one, one], flow: 0 as VolumeFlow, viscosity })).toMatchObject({
      headLoss: 0,
      flows: [0, 0],
    });
    expect(seriesFlow({ pipes: [one, one], headLoss: 0 as Length, viscosity })).toMatchObject({
      flow: 0,
      losses: [0, 0],
    });
  });
});

test("the equivalent pipe loses what the run loses", () => {
  fc.assert(
    fc.property(
      runs,
      logarithmic(0.3, 5),
      fc.constantFrom("series" as const, "parallel" as const),
      (pipes, speed, arrangement) => {
        const flow = flowOf(pipes, speed);
        const wall = { length: 100 as Length, roughness: 1.5e-6 as Length };
        const bore = equivalentPipe({ arrangement, pipes, flow, viscosity, ...wall });
        if (bore.state !== "found") expect.unreachable();
        const { headLoss } = (arrangement === "series" ? seriesLoss : parallelLoss)({ pipes, flow, viscosity });
        const one = darcyWeisbachLoss({ ...wall, insideDiameter: bore.insideDiameter, flow, viscosity });
        expect(off(one.headLoss, headLoss)).toBeLessThan(1e-11);
      },
    ),
  );
});

describe("a line of equal outlets", () => {
  const factor = (outlets: number, exponent: number) => multipleOutletFactor({ outlets, exponent });

  test("one outlet is a plain line; laminar flow gives the sum of the whole numbers; many outlets 1/(m + 1)", () => {
    expect(factor(1, 1.852).factor).toBe(1);
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), (n) => {
        expect(off(factor(n, 1).factor, (n + 1) / (2 * n))).toBeLessThan(1e-13);
        expect(off(factor(n, 2).factor, ((n + 1) * (2 * n + 1)) / (6 * n * n))).toBeLessThan(1e-13);
      }),
    );
    expect(factor(100_000, 1.852).factor).toBeCloseTo(1 / 2.852, 4);
  });

  test("it is the loss of the line, pipe by pipe", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 40 }),
        fc.constantFrom("whole spacing" as const, "half spacing" as const),
        (n, first) => {
          // Laminar, so that the exponent is exactly 1; the reach before outlet i carries n − i shares.
          const spacing = 10;
          const pipes = Array.from({ length: n }, (_, i) =>
            first === "half spacing" && i === 0 ? spacing / 2 : spacing,
          );
          const pipe = {
            insideDiameter: 0.05 as Length,
            roughness: 0 as Length,
            viscosity: 1e-4 as KinematicViscosity,
          };
          const share = 1e-7;
          const loss = (length: number, shares: number) =>
            darcyWeisbachLoss({ ...pipe, length: length as Length, flow: (share * shares) as VolumeFlow }).headLoss;
          const line = pipes.reduce((sum, length, i) => sum + loss(length, n - i), 0);
          const full = loss(
            pipes.reduce((a, b) => a + b, 0),
            n,
          );
          expect(off(multipleOutletFactor({ outlets: n, exponent: 1, first }).factor, line / full)).toBeLessThan(1e-12);
        },
      ),
    );
  });

  test("Christiansen's approximation is within 0.2 % from four outlets on, near the exponents of water", () => {
    fc.assert(
      fc.property(fc.integer({ min: 4, max: 1000 }), fc.double({ min: 1.7, max: 2, noNaN: true }), (n, m) => {
        const { factor: exact, christiansen } = factor(n, m);
        expect(off(christiansen, exact)).toBeLessThan(2e-3);
      }),
    );
  });
});
