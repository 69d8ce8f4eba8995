import fc from "fast-check";
import { type BernoulliInput, type BernoulliUnknown, bernoulli, totalDynamicHead } from "risingmain/head";
import { type Density, type GaugePressure, InputError, type Length, type Velocity } from "risingmain/units";
import { describe, expect, test } from "vitest";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const point = fc.record({
  elevation: number(-100, 100) as fc.Arbitrary<Length>,
  pressure: number(-5e4, 1e6) as fc.Arbitrary<GaugePressure>,
  velocity: number(0.01, 10) as fc.Arbitrary<Velocity>,
});
const cases = fc.record({
  from: point,
  to: point,
  pumpHead: number(0, 100) as fc.Arbitrary<Length>,
  headLoss: number(0, 100) as fc.Arbitrary<Length>,
  lossCoefficient: number(0, 100),
  kineticCorrection: number(1, 2),
  density: number(900, 1100) as fc.Arbitrary<Density>,
});

/** A case without the field that is asked for. */
function without(given: object, unknown: BernoulliUnknown): BernoulliInput {
  const copy = structuredClone(given) as Record<string, unknown>;
  const [first = "", second] = unknown.split(".");
  delete (second === undefined ? copy : (copy[first] as Record<string, unknown>))[second ?? first];
  return { ...copy, solveFor: unknown } as unknown as BernoulliInput;
}

const UNKNOWNS = ["from.elevation", "from.pressure", "to.elevation", "to.pressure", "pumpHead"] as const;

describe("bernoulli", () => {
  test("a balance without a fall stands still and loses nothing", () => {
    const level = { from: {}, to: {}, density: 1000 as Density };
    expect(bernoulli({ ...level, solveFor: "to.velocity" })).toMatchObject({ state: "balanced", to: { velocity: 0 } });
    expect(bernoulli({ ...level, solveFor: "headLoss" })).toMatchObject({ state: "balanced", headLoss: 0 });
  });

  test.each(UNKNOWNS)("found %s balances the energy: grade in and pump against grade out and loss", (unknown) => {
    fc.assert(
      fc.property(cases, (given) => {
        const result = bernoulli(without(given, unknown));
        if (result.state !== "balanced") throw new Error(result.state);
        const { from, to, pumpHead, headLoss } = result;
        expect(from.energyGrade + pumpHead).toBeCloseTo(to.energyGrade + headLoss, 8);
        expect(headLoss).toBeCloseTo(
          given.headLoss + (given.lossCoefficient * to.velocityHead) / given.kineticCorrection,
          8,
        );
      }),
    );
  });

  test("every part of a balance is found again from the others", () => {
    fc.assert(
      fc.property(cases, (given) => {
        const whole = bernoulli(without(given, "pumpHead"));
        if (whole.state !== "balanced") throw new Error(whole.state);
        const known = { ...given, pumpHead: whole.pumpHead };
        const again = (unknown: BernoulliUnknown) => {
          const result = bernoulli(without(known, unknown));
          if (result.state !== "balanced") throw new Error(`${unknown}: ${result.state}`);
          return result;
        };
        expect(again("from.elevation").from.elevation).toBeCloseTo(given.from.elevation, 8);
        expect(again("to.elevation").to.elevation).toBeCloseTo(given.to.elevation, 8);
        expect(again("from.pressure").from.pressure / 1e6).toBeCloseTo(given.from.pressure / 1e6, 9);
        expect(again("to.pressure").to.pressure / 1e6).toBeCloseTo(given.to.pressure / 1e6, 9);
        fc.pre(given.headLoss > 0.001);
        expect(again("headLoss").headLoss).toBeCloseTo(whole.headLoss, 8);
        fc.pre(given.to.velocity > 0.5);
        expect(again("to.velocity").to.velocity).toBeCloseTo(given.to.velocity, 6);
      }),
    );
  });

  test("the pump head from the water in a well to a pressure tank is the total dynamic head", () => {
    fc.assert(
      fc.property(
        number(1, 200),
        number(-30, 30),
        number(0, 7e5),
        number(0, 40),
        number(0, 3),
        (level, z, p, lost, V) => {
          const density = 999.7 as Density;
          const to = { elevation: z as Length, pressure: p as GaugePressure, velocity: V as Velocity };
          const headLoss = lost as Length;
          const pump = bernoulli({
            from: { elevation: -level as Length },
            to,
            headLoss,
            density,
            solveFor: "pumpHead",
          });
          const total = totalDynamicHead({
            staticLevel: level as Length,
            elevation: to.elevation,
            dischargePressure: to.pressure,
            dischargeVelocity: to.velocity,
            losses: [{ name: "all", headLoss }],
            density,
          });
          expect(pump.state === "balanced" && pump.pumpHead).toBeCloseTo(total.totalDynamicHead, 9);
        },
      ),
    );
  });

  test("water does not climb by itself: the head missing is the head a pump must add", () => {
    const up = { from: {}, to: { elevation: 3 as Length }, density: 1000 as Density };
    const short = bernoulli({ ...up, solveFor: "to.velocity" });
    expect(short).toStrictEqual({ state: "not enough head", short: 3 });
    expect(bernoulli({ ...up, solveFor: "headLoss" })).toStrictEqual(short);
    const pumped = bernoulli({ ...up, pumpHead: 3 as Length, solveFor: "to.velocity" });
    expect(pumped.state === "balanced" && pumped.to.velocity).toBe(0);
  });

  test("refuses to find what it is given", () => {
    const input = {
      from: {},
      to: { pressure: 1 as GaugePressure },
      density: 1000 as Density,
      solveFor: "to.pressure",
    } as const;
    expect(() => bernoulli(input)).toThrow(InputError);
    expect(() => bernoulli({ ...input, solveFor: "weather" as never })).toThrow(/solveFor/);
  });
});
