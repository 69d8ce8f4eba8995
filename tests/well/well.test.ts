import { readFileSync } from "node:fs";
import fc from "fast-check";
import type {
  Area,
  Density,
  Duration,
  Force,
  GaugePressure,
  Length,
  Mass,
  MassPerLength,
  Modulus,
  Transmissivity,
  Velocity,
  Volume,
  VolumeFlow,
} from "risingmain/units";
import {
  annulusVolume,
  aquiferLaw,
  availableDrawdown,
  casingVolume,
  dailyYield,
  drawdownAfterRest,
  drawdownAt,
  drawOnStorage,
  dropPipeFixings,
  fitStepTest,
  flowForDrawdown,
  hangingLoad,
  hangingStretch,
  motorCooling,
  pumpSetting,
  recuperation,
  restTime,
  singleTestLaw,
  steadyFlowConfined,
  steadyFlowUnconfined,
  sustainableFlow,
  tensileCheck,
  wellCondition,
  wellEfficiency,
} from "risingmain/well";
import { describe, expect, test } from "vitest";

interface StepFit {
  readonly coefficients: readonly [number, number];
  readonly errors: readonly [number, number];
}
interface StepCase {
  readonly flow: readonly VolumeFlow[];
  readonly drawdown: readonly Length[];
  readonly fits: Readonly<Record<"specific drawdown" | "drawdown", StepFit>>;
}
interface DrawCase {
  readonly area: Area;
  readonly specificCapacity: Transmissivity;
  readonly flow: VolumeFlow;
  readonly start: Length;
  readonly lowest: Length;
  readonly time: number;
  readonly inflow: number;
  readonly afterRest: number;
}
const fixture = JSON.parse(readFileSync(new URL("../fixtures/well.json", import.meta.url), "utf8")) as {
  readonly steps: readonly StepCase[];
  readonly draws: readonly DrawCase[];
};

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const as = <Q extends number>(arbitrary: fc.Arbitrary<number>) => arbitrary as unknown as fc.Arbitrary<Q>;
const share = (a: number, b: number): number => Math.abs(a / b - 1);

describe("volumes", () => {
  test("of a ring and of the body in it make the casing's", () => {
    fc.assert(
      fc.property(
        as<Length>(number(0.05, 2)),
        number(0.01, 0.99),
        as<Length>(number(0.1, 500)),
        (insideDiameter, part, length) => {
          const bodyDiameter = (insideDiameter * part) as Length;
          const ring = annulusVolume({ insideDiameter, bodyDiameter, length });
          const body = casingVolume({ insideDiameter: bodyDiameter, length });
          expect(share(ring + body, casingVolume({ insideDiameter, length }))).toBeLessThan(1e-13);
        },
      ),
    );
  });
});

describe("the law s = B Q + C Q²", () => {
  const laws = fc.record({ aquiferLoss: number(1, 1e6), wellLoss: number(0, 1e8) });

  test("gives back the flow of a drawdown", () => {
    fc.assert(
      fc.property(laws, as<VolumeFlow>(number(1e-6, 1e-3)), (law, flow) => {
        const back = flowForDrawdown(law, drawdownAt(law, flow));
        expect(share(back.flow, flow)).toBeLessThan(1e-13);
        expect(share(back.aquiferPart + back.wellPart, drawdownAt(law, flow))).toBeLessThan(1e-12);
        expect(share(wellEfficiency(law, flow), back.aquiferPart / drawdownAt(law, flow))).toBeLessThan(1e-12);
      }),
    );
  });

  test("comes back from steps without error", () => {
    fc.assert(
      fc.property(laws, (law) => {
        const steps = [0.0002, 0.0005, 0.0009].map((q) => ({
          flow: q as VolumeFlow,
          drawdown: drawdownAt(law, q as VolumeFlow),
        }));
        for (const fitted of ["specific drawdown", "drawdown"] as const) {
          const fit = fitStepTest({ steps, fitted });
          expect(share(fit.aquiferLoss, law.aquiferLoss)).toBeLessThan(
            1e-9 * (1 + (law.wellLoss * 1e-3) / law.aquiferLoss),
          );
          expect(Math.abs(fit.wellLoss - law.wellLoss)).toBeLessThan(1e-8 * (law.wellLoss + law.aquiferLoss * 1e3));
        }
      }),
    );
  });

  test.each(fixture.steps.map((each, i) => [i, each] as const))(
    "with errors, case %i: as a general least squares",
    (_, each) => {
      const steps = each.flow.map((flow, i) => ({ flow, drawdown: each.drawdown[i] as Length }));
      for (const fitted of ["specific drawdown", "drawdown"] as const) {
        const fit = fitStepTest({ steps, fitted });
        const wanted = each.fits[fitted];
        const [B, C] = wanted.coefficients;
        const [eB, eC] = wanted.errors;
        expect(Math.abs(fit.aquiferLoss - B)).toBeLessThan(1e-9 * eB + 1e-12 * Math.abs(B));
        expect(Math.abs(fit.wellLoss - C)).toBeLessThan(1e-9 * eC + 1e-12 * Math.abs(C));
        expect(share(fit.standardErrors?.[0] ?? 0, eB)).toBeLessThan(1e-8);
        expect(share(fit.standardErrors?.[1] ?? 0, eC)).toBeLessThan(1e-8);
      }
    },
  );

  test("by hand: two steps give it without errors, three with residuals", () => {
    const of = (...drawdowns: readonly number[]) =>
      fitStepTest({ steps: drawdowns.map((s, i) => ({ flow: (i + 1) as VolumeFlow, drawdown: s as Length })) });
    // s/Q = 3 and 5 at Q = 1 and 2: C = 2, B = 1.
    const two = of(3, 10);
    if (two.state !== "law") throw new Error("no law");
    expect(two.standardErrors).toBeNull();
    expect(two.law.aquiferLoss).toBeCloseTo(1, 12);
    expect(two.law.wellLoss).toBeCloseTo(2, 12);
    // s/Q = 3, 6, 6: C = (6 − 3)/2 = 1.5, B = 5 − 3 = 2, and s less 3.5, 10, 19.5 leaves:
    for (const [i, r] of [-0.5, 2, -1.5].entries()) expect(of(3, 12, 18).residuals[i]).toBeCloseTo(r, 12);
  });

  test("of a well without one of the losses has none of it, and keeps what is more than rounding", () => {
    const shares = fc
      .array(number(0.05, 1), { minLength: 1, maxLength: 8 })
      .filter((list) => Math.min(...list) < 0.9)
      .map((list) => [...list, 1]);
    const power = number(-6, 2).map((exponent) => 10 ** exponent);
    fc.assert(
      fc.property(shares, power, fc.constantFrom("specific drawdown", "drawdown"), (parts, greatest, fitted) => {
        // 10 m at the greatest flow.
        const of = (share: (part: number) => number) =>
          fitStepTest({
            steps: parts.map((q) => ({ flow: (q * greatest) as VolumeFlow, drawdown: (10 * share(q)) as Length })),
            fitted,
          });
        const linear = of((q) => q);
        expect(linear).toMatchObject({ state: "law", wellLoss: 0 });
        expect(share(linear.aquiferLoss, 10 / greatest)).toBeLessThan(1e-12);
        const square = of((q) => q * q);
        expect(square).toMatchObject({ state: "law", aquiferLoss: 0 });
        expect(share(square.wellLoss, 10 / greatest ** 2)).toBeLessThan(1e-12);
        const turning = of((q) => q - 2e-9 * q * q);
        expect(turning.state).toBe("no law");
        expect(share(turning.wellLoss, -2e-8 / greatest ** 2)).toBeLessThan(1e-4);
        const late = of((q) => q * q - 2e-9 * q);
        expect(late.state).toBe("no law");
        expect(share(late.aquiferLoss, -2e-8 / greatest)).toBeLessThan(1e-4);
      }),
    );
  });

  test("is not given where the well cleared itself during the test, or the line starts below zero", () => {
    const of = (...drawdowns: readonly number[]) =>
      fitStepTest({ steps: drawdowns.map((s, i) => ({ flow: (i + 1) as VolumeFlow, drawdown: s as Length })) });
    // s/Q falls: C below 0. s/Q = 1, 3, 5: B = −1.
    expect(of(2, 3.9, 5.5)).toMatchObject({ state: "no law" });
    expect(of(1, 6, 15)).toMatchObject({ state: "no law" });
  });

  test("sees the classes of well loss on both sides of their limits", () => {
    const foot5 = 0.3048 ** 5;
    const of = (c: number) => wellCondition(c / foot5).condition;
    expect([4.99, 5, 5.01, 9.99, 10, 10.01, 39.9, 40, 40.1].map(of)).toStrictEqual([
      "good",
      "beginning to clog",
      "beginning to clog",
      "beginning to clog",
      "beginning to clog",
      "clogged",
      "clogged",
      "clogged",
      "hard to restore",
    ]);
  });
});

describe("sustainable flow", () => {
  test("takes exactly the drawdown there is, and falls with time and well loss", () => {
    const aquifer = { transmissivity: 2e-4 as Transmissivity, storativity: 1e-4, radius: 0.1 as Length };
    fc.assert(
      fc.property(
        as<Length>(number(0.5, 100)),
        as<Duration>(number(1e3, 1e8)),
        number(0, 1e7),
        (drawdown, time, wellLoss) => {
          const { flow } = sustainableFlow({ aquifer, drawdown, time, wellLoss });
          expect(share(drawdownAt(aquiferLaw({ ...aquifer, time, wellLoss }), flow), drawdown)).toBeLessThan(1e-12);
          expect(sustainableFlow({ aquifer, drawdown, time: (time * 2) as Duration, wellLoss }).flow).toBeLessThan(
            flow,
          );
          expect(sustainableFlow({ aquifer, drawdown, time, wellLoss: wellLoss + 1e6 }).flow).toBeLessThan(flow);
        },
      ),
    );
  });

  test("is capped at 100 m³/s, and 0 without drawdown", () => {
    const of = (aquiferLoss: number, drawdown: number) =>
      flowForDrawdown({ aquiferLoss, wellLoss: 0 }, drawdown as Length);
    expect(of(0.1, 10)).toEqual({ flow: 100, aquiferPart: 10, wellPart: 0, capped: false });
    expect(of(0.1, 11)).toEqual({ flow: 100, aquiferPart: 10, wellPart: 0, capped: true });
    expect(of(0, 1).capped).toBe(true);
    expect(of(0, 0)).toEqual({ flow: 0, aquiferPart: 0, wellPart: 0, capped: false });
  });

  test("available drawdown is there or short, on both sides of its limit", () => {
    const at = (lowestLevel: number) =>
      availableDrawdown({ staticLevel: 20 as Length, lowestLevel: lowestLevel as Length, reserve: 5 as Length });
    expect(at(25.5)).toStrictEqual({ state: "available", drawdown: 0.5 });
    expect(at(25)).toStrictEqual({ state: "none", short: 0 });
    expect(at(24)).toStrictEqual({ state: "none", short: 1 });
  });
});

describe("a low-yield well", () => {
  test.each(fixture.draws.map((each, i) => [i, each] as const))(
    "case %i: as a general integrator of its equation",
    (_, each) => {
      const well = { area: each.area, specificCapacity: each.specificCapacity };
      const draw = drawOnStorage({ ...well, flow: each.flow, startDrawdown: each.start, lowestDrawdown: each.lowest });
      expect(draw.state).toBe("drawn down");
      if (draw.state !== "drawn down") return;
      expect(share(draw.time, each.time)).toBeLessThan(1e-9);
      expect(share(draw.inflow, each.inflow)).toBeLessThan(1e-8);
      const left = drawdownAfterRest({ ...well, startDrawdown: each.lowest, time: each.time as Duration });
      expect(Math.abs(left - each.afterRest)).toBeLessThan(1e-9 * each.lowest);
    },
  );

  const wells = fc.record({
    area: as<Area>(number(0.005, 10)),
    specificCapacity: as<Transmissivity>(number(1e-7, 1e-3)),
  });

  test("rests and recovers along its own law, never past static", () => {
    fc.assert(
      fc.property(wells, as<Length>(number(1, 100)), number(0.01, 0.99), (well, startDrawdown, part) => {
        const endDrawdown = (startDrawdown * part) as Length;
        const time = restTime({ ...well, startDrawdown, endDrawdown });
        expect(share(drawdownAfterRest({ ...well, startDrawdown, time }), endDrawdown)).toBeLessThan(1e-12);
        expect(drawdownAfterRest({ ...well, startDrawdown, time: 1e12 as Duration })).toBeGreaterThanOrEqual(0);
        const seen = recuperation({
          area: well.area,
          firstDrawdown: startDrawdown,
          laterDrawdown: endDrawdown,
          time: Math.max(time, 1e-3) as Duration,
        });
        if (time > 1e-3) expect(share(seen.specificCapacity, well.specificCapacity)).toBeLessThan(1e-10);
      }),
    );
  });

  test("gives more in shorter turns near its lowest level, and never more than its inflow there", () => {
    fc.assert(
      fc.property(
        wells,
        as<Length>(number(5, 100)),
        number(1.1, 50),
        number(0.1, 0.8),
        (well, lowestDrawdown, times, part) => {
          const flow = (well.specificCapacity * lowestDrawdown * times) as VolumeFlow;
          const day = (restart: number) =>
            dailyYield({ ...well, flow, lowestDrawdown, restartDrawdown: (restart * lowestDrawdown) as Length });
          const [long, short] = [day(part), day(part + 0.1)];
          expect(short.volume).toBeGreaterThanOrEqual(long.volume * (1 - 1e-9));
          expect(short.startsPerDay).toBeGreaterThan(long.startsPerDay);
          expect(short.volume).toBeLessThanOrEqual(short.mostVolume * (1 + 1e-9));
        },
      ),
    );
  });

  test("keeps up with a flow its inflow can match", () => {
    const draw = drawOnStorage({
      area: 0.02 as Area,
      specificCapacity: 1e-5 as Transmissivity,
      flow: 1e-4 as VolumeFlow,
      startDrawdown: 0 as Length,
      lowestDrawdown: 20 as Length,
    });
    expect(draw.state === "holds" && draw.drawdown).toBeCloseTo(10, 12);
  });

  test("keeps up all day: no draws, no rests", () => {
    const day = dailyYield({
      area: 0.02 as Area,
      specificCapacity: 1e-5 as Transmissivity,
      flow: 1e-4 as VolumeFlow,
      restartDrawdown: 5 as Length,
      lowestDrawdown: 20 as Length,
    });
    expect(day).toMatchObject({ volumePerDraw: 0, drawTime: 86_400, restTime: 0, startsPerDay: 0 });
    expect(day.volume).toBeCloseTo(1e-4 * 86_400, 12);
    expect(day.mostVolume).toBeCloseTo(1e-5 * 20 * 86_400, 12);
  });

  test("that would take longer than 1e12 s to draw down holds at its lowest level", () => {
    // A lake of 1e5 m² under a flow of 1e-9 m³/s: 1e5 · 10 m / 1e-9 m³/s = 1e15 s, less what flows in.
    const slow = { area: 1e5, specificCapacity: 1e-12, flow: 1e-9, startDrawdown: 0, lowestDrawdown: 10 };
    expect(drawOnStorage(slow as never)).toEqual({ state: "holds", drawdown: 10 });
    expect(drawOnStorage({ ...slow, flow: 1e-5 } as never).state).toBe("drawn down");
  });
});

describe("a pump's setting", () => {
  const good = {
    pumpSetting: 50 as Length,
    lengthBelowIntake: 1 as Length,
    wellDepth: 70 as Length,
    casingDepth: 60 as Length,
    screenTop: 60 as Length,
    pumpingLevel: 40 as Length,
  };
  test("is good, and each check fails on the far side of its limit alone", () => {
    expect(pumpSetting(good).good).toBe(true);
    const at = (changed: object) => pumpSetting({ ...good, ...changed });
    expect(at({ casingDepth: 51 as Length }).good).toBe(true);
    expect(at({ casingDepth: 50.9 as Length })).toMatchObject({
      good: false,
      insideCasing: { met: false },
      covered: { met: true },
    });
    expect(at({ screenTop: 50.9 as Length })).toMatchObject({
      good: false,
      aboveScreen: { met: false },
      insideCasing: { met: true },
    });
    expect(at({ bottomClearance: 19.1 as Length })).toMatchObject({ good: false, offBottom: { met: false } });
    expect(at({ pumpingLevel: 47 as Length })).toMatchObject({ good: false, covered: { met: false } });
    const suction = { headAtSurface: 10 as Length, npshRequired: 19 as Length };
    expect(at({ suction }).suction).toStrictEqual({ met: true, margin: 1 });
    expect(at({ suction: { ...suction, margin: 2 as Length } })).toMatchObject({
      good: false,
      suction: { met: false },
    });
  });
  test("without a screen has no check of it, and is as deep as casing or bottom allows", () => {
    const { screenTop: _, ...open } = good;
    expect(pumpSetting(open)).toMatchObject({ good: true, aboveScreen: null, deepest: 59 });
    expect(pumpSetting({ ...open, bottomClearance: 15 as Length }).deepest).toBe(54);
    expect(pumpSetting({ ...good, screenTop: 52 as Length }).deepest).toBe(51);
  });
  test("hung at the deepest or the shallowest depth it names, is good", () => {
    const { deepest, shallowest } = pumpSetting(good);
    for (const depth of [deepest, shallowest]) expect(pumpSetting({ ...good, pumpSetting: depth }).good).toBe(true);
  });
});

test("a motor is cooled on one side of its least flow and not on the other, and a sleeve of the size named is enough", () => {
  const input = { casingInsideDiameter: 0.15 as Length, motorDiameter: 0.095 as Length };
  const { leastFlow } = motorCooling({ ...input, flow: 0 as VolumeFlow });
  expect(motorCooling({ ...input, flow: leastFlow }).sleeve).toBe("not needed");
  const slow = motorCooling({ ...input, flow: (leastFlow * 0.9) as VolumeFlow });
  expect(slow.sleeve).toBe("needed: too slow");
  const sleeved = motorCooling({
    ...input,
    casingInsideDiameter: slow.greatestSleeve,
    flow: (leastFlow * 0.9) as VolumeFlow,
  });
  expect(share(sleeved.velocity, slow.leastVelocity)).toBeLessThan(1e-12);
  expect(motorCooling({ ...input, flow: 0.01 as VolumeFlow, feedsFromAbove: true }).sleeve).toBe(
    "needed: fed from above",
  );
  const wanted = (motorDiameter: number, leastVelocity?: Velocity) =>
    motorCooling({
      flow: 0 as VolumeFlow,
      casingInsideDiameter: 0.5 as Length,
      motorDiameter: motorDiameter as Length,
      ...(leastVelocity !== undefined && { leastVelocity }),
    }).leastVelocity;
  expect([0.1143, 0.1144, 0.2412, 0.2413].map((d) => wanted(d))).toStrictEqual([0.0762, 0.1524, 0.1524, 0.24384]);
  expect(wanted(0.095, 0.3 as Velocity)).toBe(0.3);
});

describe("a drop pipe", () => {
  const hanging = {
    pumpMass: 30 as Mass,
    insideDiameter: 0.027 as Length,
    outsideDiameter: 0.033 as Length,
    pipeMass: 0.5 as MassPerLength,
    cableMass: 0.3 as MassPerLength,
    pumpSetting: 90 as Length,
    density: 1000 as Density,
  };
  const bodies = { pumpVolume: 0.004 as Volume, cableDiameter: 0.02 as Length };
  test("full and all under water weighs its solids less the water they push aside", () => {
    const load = hangingLoad({ ...hanging, ...bodies, waterLevel: 0 as Length });
    const solids = 30 + 0.8 * 90;
    const wall = (Math.PI / 4) * (0.033 ** 2 - 0.027 ** 2) * 90;
    const cable = (Math.PI / 4) * 0.02 ** 2 * 90;
    expect(load.lifting).toBeCloseTo((solids - 1000 * (wall + cable + 0.004)) * 9.80665, 6);
  });
  test("empty carries no water, and pulled by pressure as well while it runs", () => {
    const load = hangingLoad({ ...hanging, full: false, topPressure: 3e5 as GaugePressure });
    expect(load.water).toBe(0);
    expect(load.lifting).toBeCloseTo((30 + 0.8 * 90) * 9.80665, 9);
    expect(load.running - load.lifting).toBeCloseTo((3e5 * Math.PI * 0.027 ** 2) / 4, 9);
  });
  test("buoys its pump up only where that hangs in water", () => {
    const at = (waterLevel?: number) =>
      hangingLoad({ ...hanging, ...bodies, ...(waterLevel !== undefined && { waterLevel: waterLevel as Length }) });
    expect([at(), at(90), at(100)].map(({ buoyancy }) => buoyancy)).toEqual([0, 0, 0]);
    expect(at(90 - 1e-9).buoyancy).toBeCloseTo(1000 * 9.80665 * 0.004, 6);
  });
  test("is lighter where more of it is under water, and its parts make the whole", () => {
    fc.assert(
      fc.property(as<Length>(number(0, 120)), number(0, 20), (waterLevel, deeper) => {
        const load = hangingLoad({ ...hanging, ...bodies, waterLevel });
        const parts = load.pump + load.pipe + load.cable + load.water - load.buoyancy;
        expect(share(load.lifting, parts)).toBeLessThan(1e-12);
        expect(hangingLoad({ ...hanging, waterLevel: (waterLevel + deeper) as Length }).lifting).toBeGreaterThanOrEqual(
          load.lifting,
        );
      }),
    );
  });
  test("stretches as a sum over short pieces says", () => {
    const input = { ...hanging, ...bodies, waterLevel: 40 as Length, modulus: 2.8e9 as Modulus };
    const area = (Math.PI / 4) * (0.033 ** 2 - 0.027 ** 2);
    const pieces = 20_000;
    const dx = 90 / pieces;
    let sum = 0;
    for (let i = 0; i < pieces; i++) {
      // The pull at a depth is the weight of all that hangs below it.
      const depth = (i + 0.5) * dx;
      const below = hangingLoad({
        ...input,
        pumpSetting: (90 - depth) as Length,
        waterLevel: Math.max(0, 40 - depth) as Length,
      });
      sum += (below.lifting / (2.8e9 * area)) * dx;
    }
    expect(share(hangingStretch(input), sum)).toBeLessThan(1e-8);
  });
  test("bears its greatest load and no more", () => {
    const section = {
      insideDiameter: 0.027 as Length,
      outsideDiameter: 0.033 as Length,
      strength: 48e6 as Modulus,
      safetyFactor: 5,
    };
    const { greatestLoad, allowed } = tensileCheck({ ...section, load: 0 as Force });
    expect(allowed).toBe(48e6 / 5);
    expect(tensileCheck({ ...section, load: greatestLoad })).toMatchObject({ met: true, share: 1 });
    expect(tensileCheck({ ...section, load: (greatestLoad * 0.9999) as Force }).met).toBe(true);
    expect(tensileCheck({ ...section, load: (greatestLoad * 1.0001) as Force }).met).toBe(false);
  });
  test("by hand: valves 10 m above the water and each 50 m up, none at the wellhead, guides and ties each spacing", () => {
    const fixings = dropPipeFixings({
      pumpSetting: 130 as Length,
      pumpingLevel: 110 as Length,
      valveAboveLevel: 10 as Length,
      valveSpacing: 50 as Length,
      guideSpacing: 30 as Length,
      tieSpacing: 4 as Length,
    });
    // 110 − 10 = 100, 50, and 0 is the wellhead; a guide at the pump and 4 in 130/30; 130/4 = 32.5.
    expect(fixings).toMatchObject({ checkValves: [130, 100, 50], guides: 5, ties: 33 });
  });
  test("has its valves in order, none below the pump", () => {
    fc.assert(
      fc.property(as<Length>(number(0, 500)), as<Length>(number(0, 600)), (pumpSetting_, pumpingLevel) => {
        const { checkValves } = dropPipeFixings({ pumpSetting: pumpSetting_, pumpingLevel });
        expect(checkValves[0]).toBe(pumpSetting_);
        for (let i = 1; i < checkValves.length; i++) expect(checkValves[i]).toBeLessThan(checkValves[i - 1] as number);
      }),
    );
  });
});

test("steady flow: twice the radius gives about a tenth more; half the drawdown of an open aquifer three quarters", () => {
  const circle = { wellRadius: 0.1 as Length, influenceRadius: 300 as Length };
  const confined = { ...circle, transmissivity: 1e-3 as Transmissivity, drawdown: 4 as Length };
  const gain = steadyFlowConfined({ ...confined, wellRadius: 0.2 as Length }) / steadyFlowConfined(confined);
  expect(gain).toBeGreaterThan(1.08);
  expect(gain).toBeLessThan(1.11);
  const open = { ...circle, conductivity: 1e-4 as Velocity, saturatedThickness: 20 as Length };
  const flow = (s: number) => steadyFlowUnconfined({ ...open, drawdown: s as Length });
  expect(share(flow(10) / flow(20), 0.75)).toBeLessThan(1e-12);
  // A drawdown that is small beside the thickness is as in a confined aquifer.
  const small = steadyFlowConfined({ ...circle, transmissivity: 2e-3 as Transmissivity, drawdown: 1e-6 as Length });
  expect(share(flow(1e-6), small)).toBeLessThan(1e-6);
});

test("a single test gives a straight line through its own point", () => {
  const law = singleTestLaw({ flow: 0.002 as VolumeFlow, drawdown: 7 as Length });
  expect(drawdownAt(law, 0.002 as VolumeFlow)).toBeCloseTo(7, 12);
  expect(wellEfficiency(law, 0.002 as VolumeFlow)).toBe(1);
});
