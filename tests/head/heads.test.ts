import fc from "fast-check";
import {
  gradeLines,
  greatestSuctionLift,
  headOfPressure,
  headOfPressureDifference,
  npshAvailable,
  pressureClassNeeded,
  pressureDifferenceOfHead,
  pressureOfHead,
  totalDynamicHead,
  velocityHead,
  velocityOfHead,
} from "risingmain/head";
import {
  type AbsolutePressure,
  type Density,
  feet,
  type GaugePressure,
  inFeet,
  type Length,
  type PressureDifference,
  psi,
  type Velocity,
} from "risingmain/units";
import { describe, expect, test } from "vitest";
import { refused } from "../refused.ts";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const densities = number(1, 25_000) as fc.Arbitrary<Density>;

describe("pressure and head", () => {
  test("undo one another", () => {
    fc.assert(
      fc.property(number(-1e6, 1e6), densities, (h, density) => {
        fc.pre(Math.abs(h * density) < 1e8);
        const head = h as Length;
        const back = headOfPressure({ pressure: pressureOfHead({ head, density }), density });
        expect(Math.abs(back - h)).toBeLessThanOrEqual(4e-16 * Math.abs(h) + Number.MIN_VALUE * 4);
        const lost = pressureDifferenceOfHead({ head, density });
        expect(headOfPressureDifference({ pressureDifference: lost, density })).toBe(back);
      }),
    );
  });

  test("go in proportion: twice the pressure stands twice as high, twice the density half as high", () => {
    fc.assert(
      fc.property(number(0.001, 1e8), number(1, 12_000), (pressure, density) => {
        const of = (p: number, d: number): number =>
          headOfPressure({ pressure: p as GaugePressure, density: d as Density });
        expect(of(2 * pressure, density)).toBe(2 * of(pressure, density));
        expect(of(pressure, 2 * density)).toBe(of(pressure, density) / 2);
        expect(of(-pressure, density) + of(pressure, density)).toBe(0);
      }),
    );
  });

  test("common practice, no source: 2.31 ft to the psi in water as it comes", () => {
    expect(inFeet(headOfPressure({ pressure: psi(1), density: 998.5 as Density }))).toBeCloseTo(2.31, 2);
  });

  test("velocity and its head undo one another", () => {
    fc.assert(
      fc.property(number(0.001, 900), (V) => {
        expect(Math.abs(velocityOfHead(velocityHead(V as Velocity)) / V - 1)).toBeLessThan(1e-15);
        expect(velocityHead(-V as Velocity)).toBe(velocityHead(V as Velocity));
      }),
    );
  });
});

describe("total dynamic head", () => {
  const inputs = fc.record({
    staticLevel: number(-100, 300) as fc.Arbitrary<Length>,
    drawdown: number(0, 100) as fc.Arbitrary<Length>,
    elevation: number(-100, 100) as fc.Arbitrary<Length>,
    dischargePressure: number(0, 1e6) as fc.Arbitrary<GaugePressure>,
    dischargeVelocity: number(0, 5) as fc.Arbitrary<Velocity>,
    losses: fc.array(
      fc.record({ name: fc.string({ maxLength: 20 }), headLoss: number(0, 50) as fc.Arbitrary<Length> }),
    ),
    density: number(950, 1010) as fc.Arbitrary<Density>,
  });

  test("is the sum of its parts", () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const { totalDynamicHead: total, parts, losses, pumpingLevel, staticHead } = totalDynamicHead(input);
        const sum = Object.values(parts).reduce((a: number, b) => a + b, 0);
        expect(total).toBeCloseTo(sum, 9);
        expect(losses).toEqual(input.losses);
        expect(pumpingLevel).toBe(input.staticLevel + input.drawdown);
        expect(staticHead).toBeCloseTo(total - parts.losses - parts.velocity, 9);
      }),
    );
  });

  test("grows by exactly what is added to a level, a rise or a loss", () => {
    fc.assert(
      fc.property(
        inputs,
        fc.constantFrom("staticLevel", "drawdown", "elevation"),
        number(0, 50),
        (input, field, more) => {
          const deeper = { ...input, [field]: input[field] + more };
          expect(totalDynamicHead(deeper).totalDynamicHead - totalDynamicHead(input).totalDynamicHead).toBeCloseTo(
            more,
            9,
          );
          const filter = { name: "filter", headLoss: more as Length };
          const lossy = totalDynamicHead({ ...input, losses: [...input.losses, filter] });
          expect(lossy.totalDynamicHead - totalDynamicHead(input).totalDynamicHead).toBeCloseTo(more, 9);
        },
      ),
    );
  });

  test("what is left out counts for nothing", () => {
    const bare = totalDynamicHead({ staticLevel: feet(60), density: 1000 as Density });
    expect(bare.totalDynamicHead).toBe(feet(60));
    expect(bare.losses).toStrictEqual([]);
  });

  test("refuses a negative drawdown, a negative loss and a loss without a name", () => {
    const base = { staticLevel: feet(60), density: 1000 as Density };
    const refusedHere = (bad: object) => refused(() => totalDynamicHead({ ...base, ...bad } as never));
    expect(refusedHere({ drawdown: -1 })).toBe("drawdown");
    expect(
      refusedHere({
        losses: [
          { name: "pipe", headLoss: 1 },
          { name: "valve", headLoss: -1 },
        ],
      }),
    ).toBe("losses[1].headLoss");
    expect(refusedHere({ losses: [{ headLoss: 1 }] })).toBe("losses[0].name");
    expect(refusedHere({ losses: null })).toBe("losses");
    expect(refusedHere({ staticLevel: "60 ft" })).toBe("staticLevel");
  });
});

describe("net positive suction head", () => {
  const suction = fc.record({
    atmosphere: number(5e4, 1.1e5) as fc.Arbitrary<AbsolutePressure>,
    vapourPressure: number(600, 4e4) as fc.Arbitrary<AbsolutePressure>,
    surfacePressure: number(0, 2e5) as fc.Arbitrary<GaugePressure>,
    density: number(950, 1000) as fc.Arbitrary<Density>,
    suctionLoss: number(0, 5) as fc.Arbitrary<Length>,
  });

  test("at the greatest lift it is what is required plus the margin", () => {
    fc.assert(
      fc.property(suction, number(0, 10), number(0, 2), (input, required, margin) => {
        const lift = greatestSuctionLift({ ...input, npshRequired: required as Length, margin: margin as Length });
        const waterAbovePump = (lift.state === "can lift" ? -lift.greatestLift : lift.depthNeeded) as Length;
        expect(npshAvailable({ ...input, waterAbovePump }).npshAvailable).toBeCloseTo(required + margin, 9);
      }),
    );
  });

  test("is the sum of its parts", () => {
    fc.assert(
      fc.property(suction, number(-10, 10), (input, z) => {
        const { npshAvailable: total, ...parts } = npshAvailable({ ...input, waterAbovePump: z as Length });
        const { atmosphericHead, surfaceHead, waterAbovePump, vapourHead, suctionLoss } = parts;
        expect(total).toBeCloseTo(atmosphericHead + surfaceHead + waterAbovePump - vapourHead - suctionLoss, 9);
      }),
    );
  });

  test("hot water under thin air must be flooded", () => {
    const lift = greatestSuctionLift({
      atmosphere: 70_000 as AbsolutePressure,
      vapourPressure: 60_000 as AbsolutePressure,
      density: 970 as Density,
      suctionLoss: 1 as Length,
      npshRequired: 3 as Length,
      margin: 0.5 as Length,
    });
    expect(lift.state).toBe("must be flooded");
  });
});

test("a lift of nothing is still a lift", () => {
  const lift = (npshRequired: number) =>
    greatestSuctionLift({
      atmosphere: 98_066.5 as AbsolutePressure,
      vapourPressure: 0 as AbsolutePressure,
      density: 1000 as Density,
      suctionLoss: 0 as Length,
      npshRequired: npshRequired as Length,
      margin: 0 as Length,
    });
  // Ten metres of water.
  expect(lift(10)).toEqual({ state: "can lift", greatestLift: 0 });
  expect(lift(10.5).state).toBe("must be flooded");
});

const density = 1000;
test.each<[field: string, call: (value: never) => unknown, accepted: readonly unknown[], refused: readonly unknown[]]>([
  ["density", (v) => headOfPressure({ pressure: psi(1), density: v }), [1, 25_000], [0.999, 25_001]],
  ["pressure", (v) => headOfPressure({ pressure: v, density } as never), [-1e9, 1e9], [-1.001e9, 1.001e9]],
  ["velocity", (v) => velocityHead(v), [-1000, 1000], [-1001, 1001]],
  [
    "losses[0].name",
    (name) => totalDynamicHead({ staticLevel: 1, density, losses: [{ name, headLoss: 1 }] } as never),
    ["", "x".repeat(200)],
    ["x".repeat(201), 1],
  ],
  [
    "staticGrade",
    (staticGrade) =>
      gradeLines({
        stations: [
          { distance: 0, elevation: 0 },
          { distance: 1, elevation: 0 },
        ],
        startPressure: 0,
        atmosphere: 1e5,
        vapourPressure: 0,
        density,
        staticGrade,
      } as never),
    [-1e6, 1e6],
    [-1.001e6, 1.001e6],
  ],
])("%s is accepted up to its limits and refused past them", (field, call, within, beyond) => {
  for (const value of within) expect(refused(() => call(value as never))).toBeUndefined();
  for (const value of beyond) expect(refused(() => call(value as never))).toBe(field);
});

describe("pressure class", () => {
  const classes = [200, 100, 160, 125].map((value) => psi(value));

  test("holds what pressure and surge come to, to the pascal", () => {
    const need = (surge: number) =>
      pressureClassNeeded({ highestPressure: 100, surge, classes: [110, 120, 130] } as never);
    expect([10, 11, 20, 30].map((surge) => need(surge))).toMatchObject([
      { pressureClass: 110, margin: 0 },
      { pressureClass: 120, margin: 9 },
      { pressureClass: 120, margin: 0 },
      { pressureClass: 130, margin: 0 },
    ]);
    expect(need(31)).toMatchObject({ state: "none strong enough", short: 1 });
  });

  test("is the lowest that holds, in whatever order they come", () => {
    fc.assert(
      fc.property(number(0, 250), number(0, 50), (pressure, surge) => {
        const need = pressureClassNeeded({
          highestPressure: psi(pressure),
          surge: psi(surge) as number as PressureDifference,
          classes,
        });
        const total = psi(pressure) + psi(surge);
        const enough = classes.filter((value) => value >= total);
        expect(need.state === "enough" ? need.pressureClass : Infinity).toBe(Math.min(...enough));
        if (need.state === "enough") expect(need.margin).toBe(need.pressureClass - total);
        else expect(need.short).toBe(total - psi(200));
      }),
    );
  });
});
