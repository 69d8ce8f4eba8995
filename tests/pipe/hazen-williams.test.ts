/** Hazen–Williams: exact constant, inverses, range, and its distance from Darcy–Weisbach. */
import fc from "fast-check";
import {
  coefficientForHeadLoss,
  compareLosses,
  type HazenWilliamsInput,
  hazenWilliamsCoefficient,
  hazenWilliamsDiameter,
  hazenWilliamsFlow,
  hazenWilliamsLoss,
} from "risingmain/pipe";
import { celsius, type Duration, feet, gpm, inches, type Length, type VolumeFlow } from "risingmain/units";
import { waterKinematicViscosity } from "risingmain/water";
import { describe, expect, test } from "vitest";
import { hazenWilliamsResistance } from "../../src/pipe/hazen-williams.ts";

const logarithmic = (from: number, to: number) =>
  fc.double({ min: Math.log(from), max: Math.log(to), noNaN: true }).map((x) => Math.exp(x));
const pipes = fc
  .record({
    flow: logarithmic(1e-5, 10),
    insideDiameter: logarithmic(0.005, 2),
    length: logarithmic(1, 1e4),
    coefficient: fc.double({ min: 60, max: 160, noNaN: true }),
  })
  .map((pipe) => pipe as unknown as HazenWilliamsInput)
  .filter((pipe) => Math.abs(Math.log10(hazenWilliamsLoss(pipe).headLoss)) < 5);
const off = (got: number, want: number): number => Math.abs(got / want - 1);

test("it is the rule in feet, V = 1.318 C R^0.63 S^0.54, to the rounding of doubles", () => {
  fc.assert(
    fc.property(pipes, (p) => {
      const { headLoss, velocity } = hazenWilliamsLoss(p);
      const radius = p.insideDiameter / 4 / 0.3048;
      const speed = 1.318 * p.coefficient * radius ** 0.63 * (headLoss / p.length) ** 0.54;
      expect(off(velocity / 0.3048, speed)).toBeLessThan(1e-14);
    }),
  );
});

test("it is odd in the flow, in proportion to length, and goes with the powers 1/0.54 of flow and −1/0.54 of C", () => {
  fc.assert(
    fc.property(pipes, (p) => {
      const h = hazenWilliamsLoss(p).headLoss;
      expect(hazenWilliamsLoss({ ...p, flow: -p.flow as VolumeFlow }).headLoss).toBe(-h);
      expect(hazenWilliamsLoss({ ...p, length: (2 * p.length) as Length }).headLoss).toBe(2 * h);
      expect(
        off(hazenWilliamsLoss({ ...p, flow: (2 * p.flow) as VolumeFlow }).headLoss, h * 2 ** (1 / 0.54)),
      ).toBeLessThan(1e-14);
      expect(
        off(hazenWilliamsLoss({ ...p, coefficient: p.coefficient / 1.1 }).headLoss, h * 1.1 ** (1 / 0.54)),
      ).toBeLessThan(1e-14);
      expect(off(hazenWilliamsLoss(p).headLossSlope, h / 0.54 / p.flow)).toBeLessThan(1e-14);
    }),
  );
});

test("flow, diameter and C undo the loss to 1e-12", () => {
  fc.assert(
    fc.property(pipes, (p) => {
      const { headLoss } = hazenWilliamsLoss(p);
      expect(off(hazenWilliamsFlow({ ...p, headLoss }), p.flow)).toBeLessThan(1e-12);
      expect(off(hazenWilliamsDiameter({ ...p, headLoss }), p.insideDiameter)).toBeLessThan(1e-12);
      expect(off(coefficientForHeadLoss({ ...p, headLoss }), p.coefficient)).toBeLessThan(1e-12);
      expect(hazenWilliamsFlow({ ...p, headLoss: -headLoss as Length })).toBe(-hazenWilliamsFlow({ ...p, headLoss }));
    }),
  );
});

test("its resistance times the flow to the power 1/0.54 is the loss", () => {
  fc.assert(
    fc.property(pipes, (p) => {
      const resistance = hazenWilliamsResistance(p.insideDiameter, p.length, p.coefficient);
      expect(off(resistance * p.flow ** (1 / 0.54), hazenWilliamsLoss(p).headLoss)).toBeLessThan(1e-13);
    }),
  );
});

test("the limits passed are named", () => {
  const good = { flow: gpm(50), insideDiameter: inches(3.068), length: feet(100), coefficient: 150 };
  expect(hazenWilliamsLoss(good)).toMatchObject({ insideRange: true, outside: [] });
  expect(hazenWilliamsLoss({ ...good, insideDiameter: inches(1.38) }).outside).toEqual(["bore", "velocity"]);
  expect(hazenWilliamsLoss({ ...good, temperature: celsius(40) }).outside).toEqual(["temperature"]);
  expect(hazenWilliamsLoss({ ...good, temperature: celsius(15) }).outside).toEqual([]);
});

describe("against Darcy–Weisbach", () => {
  const smooth = { length: feet(1000), roughness: feet(0.000005), viscosity: waterKinematicViscosity(celsius(15)) };

  test("in a 12 in smooth main at 5 ft/s the two are within 5 %; in a small slow line far apart", () => {
    const main = compareLosses({ ...smooth, flow: gpm(1760), insideDiameter: feet(1), coefficient: 150 });
    expect(Math.abs(main.difference)).toBeLessThan(0.05);
    const small = compareLosses({ ...smooth, flow: gpm(2), insideDiameter: inches(1.049), coefficient: 150 });
    expect(small.difference).toBeLessThan(-0.2);
  });

  test("the matching coefficient closes the difference", () => {
    fc.assert(
      fc.property(logarithmic(1e-5, 1), logarithmic(0.01, 1), (flow, bore) => {
        const input = { ...smooth, flow: flow as VolumeFlow, insideDiameter: bore as Length, coefficient: 140 };
        const { matchingCoefficient, darcyWeisbach } = compareLosses(input);
        fc.pre(matchingCoefficient >= 10 && matchingCoefficient <= 200);
        const closed = hazenWilliamsLoss({ ...input, coefficient: matchingCoefficient });
        expect(off(closed.headLoss, darcyWeisbach.headLoss)).toBeLessThan(1e-13);
      }),
    );
  });
});

test("the coefficient of an age is that of the next printed one, and older than all says so", () => {
  const year = 365.25 * 86400;
  const at = (years: number) => hazenWilliamsCoefficient({ material: "cast iron", age: (years * year) as Duration });
  expect([0, 1, 5, 6, 20].map((years) => at(years).coefficient)).toEqual([130, 120, 120, 100, 100]);
  expect(at(20).insideRange).toBe(true);
  expect(at(21)).toMatchObject({ coefficient: 100, age: 20, insideRange: false });
  // Printed for any age: no scale grows on plastic.
  expect(hazenWilliamsCoefficient({ material: "plastic", age: (100 * year) as Duration }).insideRange).toBe(true);
  expect(() => hazenWilliamsCoefficient({ material: "straw" as "plastic" })).toThrow("material");
});
