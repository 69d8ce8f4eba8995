/** Head loss and its inverses: odd, increasing, round-tripping, the same in any system of units. */
import fc from "fast-check";
import {
  type DarcyWeisbachInput,
  darcyWeisbachLoss,
  diameterForHeadLoss,
  flowForHeadLoss,
  lengthForHeadLoss,
  roughnessForHeadLoss,
} from "risingmain/pipe";
import { InputError, type Length, type VolumeFlow } from "risingmain/units";
import { describe, expect, test } from "vitest";

const logarithmic = (from: number, to: number) =>
  fc.double({ min: Math.log(from), max: Math.log(to), noNaN: true }).map((x) => Math.exp(x));

/** Any pipe from a capillary to a tunnel, at a Reynolds number of any regime. */
const pipes = fc
  .record({
    insideDiameter: logarithmic(2e-3, 5),
    length: logarithmic(1, 1e4),
    reynolds: logarithmic(1, 1e8),
    relativeRoughness: fc.oneof(fc.constant(0), logarithmic(1e-8, 0.02)),
    viscosity: logarithmic(1e-7, 1e-4),
  })
  .map(
    ({ reynolds, relativeRoughness, ...pipe }) =>
      ({
        ...pipe,
        roughness: relativeRoughness * pipe.insideDiameter,
        flow: (reynolds * Math.PI * pipe.insideDiameter * pipe.viscosity) / 4,
      }) as unknown as DarcyWeisbachInput,
  )
  .filter((pipe) => pipe.flow < 1e3 && pipe.flow > 1e-9)
  .filter((pipe) => Math.abs(Math.log10(darcyWeisbachLoss(pipe).headLoss)) < 5);

const off = (got: number, want: number): number => Math.abs(got / want - 1);

describe("the loss", () => {
  test("laminar flow is Hagen–Poiseuille: h = 128 ν L Q / (π g D⁴)", () => {
    fc.assert(
      fc.property(pipes, (p) => {
        const got = darcyWeisbachLoss(p);
        fc.pre(got.regime === "laminar");
        const h = (128 * p.viscosity * p.length * p.flow) / (Math.PI * 9.80665 * p.insideDiameter ** 4);
        expect(off(got.headLoss, h)).toBeLessThan(2e-15);
      }),
    );
  });

  test("reversed flow is the same loss reversed, bit for bit", () => {
    fc.assert(
      fc.property(pipes, (p) => {
        const forth = darcyWeisbachLoss(p);
        const back = darcyWeisbachLoss({ ...p, flow: -p.flow as VolumeFlow });
        expect(back).toEqual({ ...forth, headLoss: -forth.headLoss, velocity: -forth.velocity });
      }),
    );
  });

  test("more flow loses more; at rest nothing, with the laminar slope", () => {
    fc.assert(
      fc.property(pipes, fc.double({ min: 1e-9, max: 2, noNaN: true }), (p, more) => {
        const flow = (p.flow * (1 + more)) as VolumeFlow;
        fc.pre(flow <= 1e3);
        expect(darcyWeisbachLoss({ ...p, flow }).headLoss).toBeGreaterThan(darcyWeisbachLoss(p).headLoss);
        const rest = darcyWeisbachLoss({ ...p, flow: 0 as VolumeFlow });
        expect(rest).toMatchObject({ headLoss: 0, reynolds: 0, frictionFactor: 0, regime: "at rest" });
        const creep = darcyWeisbachLoss({ ...p, flow: (p.flow * 1e-9) as VolumeFlow });
        if (creep.regime === "laminar") expect(off(rest.headLossSlope, creep.headLossSlope)).toBeLessThan(1e-14);
      }),
    );
  });

  test("the slope is the derivative of the loss with flow", () => {
    fc.assert(
      fc.property(pipes, (p) => {
        const at = darcyWeisbachLoss(p);
        fc.pre([2000, 4000].every((edge) => Math.abs(at.reynolds / edge - 1) > 1e-4));
        const [less, more] = [1 - 1e-5, 1 + 1e-5].map((factor) =>
          darcyWeisbachLoss({ ...p, flow: (p.flow * factor) as VolumeFlow }),
        );
        const numeric = ((more?.headLoss ?? 0) - (less?.headLoss ?? 0)) / (2e-5 * p.flow);
        expect(off(numeric, at.headLossSlope)).toBeLessThan(1e-8);
      }),
    );
  });

  test("loss is in proportion to length", () => {
    fc.assert(
      fc.property(pipes, (p) => {
        const whole = darcyWeisbachLoss(p).headLoss;
        const half = darcyWeisbachLoss({ ...p, length: (p.length / 2) as Length }).headLoss;
        expect(half * 2).toBe(whole);
      }),
    );
  });

  test("the same pipe in any consistent units: loss over length depends on Re, k and V²/(g D) alone", () => {
    fc.assert(
      fc.property(pipes, logarithmic(0.1, 10), (p, scale) => {
        // All lengths times `scale`, and times such that gravity stays the same: Froude's and Reynolds's law together.
        const time = Math.sqrt(scale);
        const model = {
          insideDiameter: p.insideDiameter * scale,
          length: p.length * scale,
          roughness: p.roughness * scale,
          flow: (p.flow * scale ** 3) / time,
          viscosity: (p.viscosity * scale ** 2) / time,
        } as unknown as DarcyWeisbachInput;
        fc.pre(model.flow <= 1e3);
        const [one, other] = [darcyWeisbachLoss(p), darcyWeisbachLoss(model)];
        expect(off(other.reynolds, one.reynolds)).toBeLessThan(2e-15);
        expect(off(other.headLoss / model.length, one.headLoss / p.length)).toBeLessThan(2e-14);
      }),
    );
  });
});

describe("the inverses undo it to 1e-12", () => {
  const options = { numRuns: 2000 };

  test("flow", () => {
    fc.assert(
      fc.property(pipes, fc.constantFrom(1, -1), (p, sign) => {
        const { headLoss } = darcyWeisbachLoss({ ...p, flow: (p.flow * sign) as VolumeFlow });
        const { flow, velocity, reynolds } = flowForHeadLoss({ ...p, headLoss });
        expect(off(flow, p.flow * sign)).toBeLessThan(1e-12);
        const forward = darcyWeisbachLoss({ ...p, flow });
        expect(off(velocity, forward.velocity)).toBeLessThan(1e-12);
        expect(off(reynolds, forward.reynolds)).toBeLessThan(1e-12);
      }),
      options,
    );
  });

  test("diameter", () => {
    fc.assert(
      fc.property(pipes, (p) => {
        const bore = diameterForHeadLoss({ ...p, headLoss: darcyWeisbachLoss(p).headLoss });
        expect(bore.state).toBe("found");
        if (bore.state === "found") expect(off(bore.insideDiameter, p.insideDiameter)).toBeLessThan(1e-12);
      }),
      options,
    );
  });

  test("length", () => {
    fc.assert(
      fc.property(pipes, (p) => {
        expect(off(lengthForHeadLoss({ ...p, headLoss: darcyWeisbachLoss(p).headLoss }), p.length)).toBeLessThan(1e-12);
      }),
      options,
    );
  });

  test("roughness, where the flow is turbulent; its error is that of a difference from the smooth wall", () => {
    fc.assert(
      fc.property(pipes, (p) => {
        const loss = darcyWeisbachLoss(p);
        const wall = roughnessForHeadLoss({ ...p, headLoss: loss.headLoss });
        if (loss.reynolds < 4000) {
          expect(wall.state).toBe("not turbulent");
          return;
        }
        // A smooth wall may read as a hair smoother than smooth.
        if (p.roughness < 1e-12 * p.insideDiameter && wall.state === "smoother than smooth") return;
        expect(wall.state).toBe("found");
        if (wall.state !== "found") return;
        const argument = p.roughness / p.insideDiameter / 3.7 + 2.51 / (loss.reynolds * Math.sqrt(loss.frictionFactor));
        expect(Math.abs(wall.roughness - p.roughness) / p.insideDiameter).toBeLessThan(1e-13 * argument * 3.7);
      }),
      options,
    );
  });
});

describe("where there is no answer, the result says so", () => {
  const pipe = { insideDiameter: 0.05 as Length, length: 100 as Length, flow: 0.002 as VolumeFlow };
  const viscosity = 1e-6 as DarcyWeisbachInput["viscosity"];

  test("a wall rougher than the bore that would lose so much", () => {
    expect(diameterForHeadLoss({ ...pipe, viscosity, headLoss: 5000 as Length, roughness: 0.05 as Length })).toEqual({
      state: "rougher than the bore",
      narrowest: 0.1,
    });
  });

  test("a loss below that of a smooth wall, or above any", () => {
    const smooth = darcyWeisbachLoss({ ...pipe, viscosity, roughness: 0 as Length }).headLoss;
    expect(roughnessForHeadLoss({ ...pipe, viscosity, headLoss: (smooth * 0.9) as Length })).toEqual({
      state: "smoother than smooth",
      smoothLoss: smooth,
    });
    expect(roughnessForHeadLoss({ ...pipe, viscosity, headLoss: (smooth * 100) as Length }).state).toBe(
      "beyond roughness",
    );
  });

  test("an input out of range names its field", () => {
    const good = { ...pipe, viscosity, roughness: 0 as Length };
    for (const [field, value] of Object.entries({
      flow: 1001,
      insideDiameter: 0,
      length: -1,
      roughness: 0.026,
      viscosity: 0,
    })) {
      try {
        darcyWeisbachLoss({ ...good, [field]: value });
        expect.unreachable();
      } catch (error) {
        expect(error).toBeInstanceOf(InputError);
        expect((error as InputError).parameter).toBe(field);
      }
    }
  });
});
