/** Both sides of every limit in the docstrings; the bridge between the regimes; pipes by text near their misses. */
import fc from "fast-check";
import {
  averageInsideDiameter,
  darcyWeisbachLoss,
  diameterForHeadLoss,
  findPipe,
  flowForHeadLoss,
  frictionFactor,
  hazenWilliamsLoss,
  listPipes,
  metalPipeWorkingPressure,
  type PipeOfRun,
  parallelFlow,
  parallelLoss,
  pipeMass,
  pipesOf,
  pressureRatingOfWall,
  ratingAtTemperature,
  roughnessForHeadLoss,
  serghidesFactor,
  seriesFlow,
  seriesLoss,
  swameeJainFactor,
  wallRoughness,
} from "risingmain/pipe";
import {
  celsius,
  fahrenheit,
  type GaugePressure,
  inCelsius,
  inches,
  inFahrenheit,
  inInches,
  type KinematicViscosity,
  type Length,
  psi,
  psiModulus,
  type Temperature,
  type VolumeFlow,
} from "risingmain/units";
import { describe, expect, test } from "vitest";
import { refused, refusedWith } from "../refused.ts";

/** Near 1e-6, and a power of two: the Reynolds number of `flowAt` is then met to the bit. */
const viscosity = (2 ** -20) as KinematicViscosity;
const bore = 0.05 as Length;
const length = 100 as Length;
/** The flow of a Reynolds number in that bore. */
const flowAt = (reynolds: number): VolumeFlow => ((reynolds * Math.PI * bore * viscosity) / 4) as VolumeFlow;

describe("the regimes", () => {
  test("laminar up to 2000, turbulent from 4000, a transition between", () => {
    const regime = (reynolds: number) => frictionFactor({ reynolds, relativeRoughness: 1e-4 }).regime;
    expect([1999, 2000, 2000.1, 3999.9, 4000].map(regime)).toEqual([
      "laminar",
      "laminar",
      "transition",
      "transition",
      "turbulent",
    ]);
  });

  test("the chart ends at a Reynolds number of 1e8 and a relative roughness of 0.05, ends included", () => {
    const inside = (reynolds: number, relativeRoughness: number) =>
      frictionFactor({ reynolds, relativeRoughness }).insideRange;
    expect([inside(1e8, 0.05), inside(1.001e8, 0.05), inside(1e8, 0.0501)]).toEqual([true, false, false]);
  });

  test("a flow in the transition is found from its own loss, and the bore too", () => {
    const reynolds = fc.double({ min: 2001, max: 3999, noNaN: true });
    const roughness = fc.double({ min: 0, max: 1e-3, noNaN: true });
    fc.assert(
      fc.property(reynolds, roughness, fc.constantFrom(1, -1), (re, rough, sign) => {
        const pipe = { insideDiameter: bore, length, roughness: rough as Length, viscosity };
        const { headLoss } = darcyWeisbachLoss({ ...pipe, flow: flowAt(re) });
        const found = flowForHeadLoss({ ...pipe, headLoss: (sign * headLoss) as Length });
        expect(Math.abs(found.flow / (sign * flowAt(re)) - 1)).toBeLessThan(1e-12);
        expect(Math.abs(found.reynolds / re - 1)).toBeLessThan(1e-12);
        const size = diameterForHeadLoss({ ...pipe, flow: flowAt(re), headLoss });
        expect(size.state === "found" && Math.abs(size.insideDiameter / bore - 1) < 1e-9).toBe(true);
      }),
    );
  });

  test("a flow in the transition is found to the last digits on any wall, next to its ends above all", () => {
    for (const share of [0, 1e-6, 1e-4, 0.01, 0.1, 0.3, 0.5]) {
      const pipe = { insideDiameter: bore, length, roughness: (share * bore) as Length, viscosity };
      for (const from of [1e-12, 1e-9, 1e-6, 1e-4, 0.01, 0.1, 0.3, 0.5]) {
        for (const re of [2000 * (1 + from), 4000 * (1 - from / 2)]) {
          const { headLoss } = darcyWeisbachLoss({ ...pipe, flow: flowAt(re) });
          expect(Math.abs(flowForHeadLoss({ ...pipe, headLoss }).reynolds / re - 1)).toBeLessThan(2e-15);
        }
      }
    }
  });

  test("at the ends of the transition flow and bore are found as well, whichever way they round", () => {
    const viscosity = 9e-7 as KinematicViscosity;
    const bores = Array.from({ length: 200 }, (_, i) => (0.01 * 1.02 ** i) as Length);
    for (const re of [2000, 4000]) {
      for (const share of [0, 1e-4, 0.02]) {
        for (const insideDiameter of bores) {
          const pipe = { insideDiameter, length, roughness: (share * insideDiameter) as Length, viscosity };
          const flow = ((re * Math.PI * insideDiameter * viscosity) / 4) as VolumeFlow;
          const { headLoss } = darcyWeisbachLoss({ ...pipe, flow });
          expect(Math.abs(flowForHeadLoss({ ...pipe, headLoss }).reynolds / re - 1)).toBeLessThan(1e-14);
          const size = diameterForHeadLoss({ ...pipe, flow, headLoss });
          expect(size.state === "found" && Math.abs(size.insideDiameter / insideDiameter - 1)).toBeLessThan(1e-14);
        }
      }
    }
  });

  test("a wall up to half the bore is none too rough, one a little over is, laminar or not", () => {
    for (const re of [1000, 2100, 3000, 3900, 1e5]) {
      const asked = { flow: flowAt(re), length, viscosity };
      const roughest = (bore / 2) as Length;
      const { headLoss } = darcyWeisbachLoss({ ...asked, insideDiameter: bore, roughness: roughest });
      const found = diameterForHeadLoss({ ...asked, headLoss, roughness: (roughest * (1 - 1e-12)) as Length });
      expect(found.state === "found" && Math.abs(found.insideDiameter / bore - 1)).toBeLessThan(1e-11);
      for (const over of [1 + 1e-9, 1.2, 1.9, 3.9]) {
        const roughness = (over * roughest) as Length;
        const none = { state: "rougher than the bore", narrowest: 2 * roughness };
        expect(diameterForHeadLoss({ ...asked, headLoss, roughness })).toEqual(none);
      }
    }
  });

  test("a wall rougher than any bore that would do is said so, laminar or not", () => {
    const asked = (roughness: number, flow: VolumeFlow, headLoss: number) =>
      diameterForHeadLoss({ flow, headLoss: headLoss as Length, length, roughness: roughness as Length, viscosity });
    // A bore of 50 mm would do smooth; with walls of 30 mm grains there is none that narrow.
    for (const re of [500, 3000, 1e5]) {
      const { headLoss } = darcyWeisbachLoss({
        insideDiameter: bore,
        length,
        roughness: 0 as Length,
        viscosity,
        flow: flowAt(re),
      });
      expect(asked(0, flowAt(re), headLoss).state).toBe("found");
      expect(asked(0.1, flowAt(re), headLoss * 100)).toEqual({ state: "rougher than the bore", narrowest: 0.2 });
    }
  });

  test("a wall of just half the bore is none too rough", () => {
    // Laminar flow has one bore whatever its wall.
    const asked = { flow: flowAt(1000), length, viscosity, headLoss: 0.01 as Length };
    const smooth = diameterForHeadLoss({ ...asked, roughness: 0 as Length });
    if (smooth.state !== "found") expect.unreachable();
    expect(diameterForHeadLoss({ ...asked, roughness: (smooth.insideDiameter / 2) as Length })).toEqual(smooth);
  });

  test("an explicit formula says where its authors' range ends, ends included", () => {
    const inside = (f: typeof swameeJainFactor, reynolds: number, relativeRoughness: number) =>
      f({ reynolds, relativeRoughness }).insideRange;
    // Swamee and Jain: 5000 to 1e8, 1e-6 to 1e-2.
    expect(inside(swameeJainFactor, 5000, 1e-6)).toBe(true);
    expect(inside(swameeJainFactor, 1e8, 1e-2)).toBe(true);
    expect(inside(swameeJainFactor, 1.01e8, 1e-3)).toBe(false);
    expect(inside(swameeJainFactor, 4990, 1e-3)).toBe(false);
    expect(inside(swameeJainFactor, 1e5, 1.01e-2)).toBe(false);
    expect(inside(swameeJainFactor, 1e5, 0.99e-6)).toBe(false);
  });

  test("water at rest in a pipe loses nothing", () => {
    const still = darcyWeisbachLoss({
      insideDiameter: bore,
      length,
      roughness: 0 as Length,
      viscosity,
      flow: 0 as VolumeFlow,
    });
    expect(still).toMatchObject({ headLoss: 0 });
  });

  test("what moves slower than a Reynolds number of 1e-9 is at rest", () => {
    const regime = (reynolds: number) =>
      darcyWeisbachLoss({ insideDiameter: bore, length, roughness: 0 as Length, viscosity, flow: flowAt(reynolds) })
        .regime;
    expect([regime(0.999e-9), regime(1e-9)]).toEqual(["at rest", "laminar"]);
  });

  test("on a wall so rough that the flow does not count, Serghides has the law of the fully rough wall", () => {
    // 1/√f = 2 log₁₀(3.7/k); some of these leave his correction nothing at all to go by.
    for (let k = 0.01; k < 0.02; k += 1e-5) {
      const { value } = serghidesFactor({ reynolds: 1e17, relativeRoughness: k });
      expect(Math.abs(value * (2 * Math.log10(3.7 / k)) ** 2 - 1)).toBeLessThan(1e-13);
    }
  });
});

describe("Hazen–Williams", () => {
  const pipe = { flow: 0.001 as VolumeFlow, insideDiameter: bore, length, coefficient: 150 };

  test("its range includes its ends: bore 2 in to 6 ft, 10 ft/s, 5 to 25 °C", () => {
    const outside = (given: object) => hazenWilliamsLoss({ ...pipe, ...given }).outside;
    const fed = (insideDiameter: number) => ({ insideDiameter, flow: 1e-3 });
    expect([outside(fed(0.0508)), outside(fed(0.0507)), outside(fed(1.8288)), outside(fed(1.829))]).toEqual([
      [],
      ["bore"],
      [],
      ["bore"],
    ]);
    const wide = 0.0625;
    const speed = (v: number) => outside({ insideDiameter: wide, flow: (v * Math.PI * wide * wide) / 4 });
    expect([speed(3.048), speed(3.0481)]).toEqual([[], ["velocity"]]);
    const warm = (kelvin: number) => outside({ ...fed(0.0508), temperature: kelvin });
    expect([warm(278.15), warm(278.1), warm(298.15), warm(298.2)]).toEqual([[], ["temperature"], [], ["temperature"]]);
  });

  test("a flow at rest has no slope, and a limit passed is no range kept", () => {
    const still = hazenWilliamsLoss({ ...pipe, flow: 0 as VolumeFlow });
    expect(still).toMatchObject({ headLoss: 0, headLossSlope: 0 });
    expect(hazenWilliamsLoss({ ...pipe, insideDiameter: 0.02 as Length }).insideRange).toBe(false);
    expect(refused(() => hazenWilliamsLoss({ ...pipe, temperature: 1 as Temperature }))).toBe("temperature");
  });
});

describe("roughness from a loss", () => {
  const given = { flow: flowAt(1e5), insideDiameter: bore, length, viscosity };
  const loss = (roughness: number) => darcyWeisbachLoss({ ...given, roughness: roughness as Length }).headLoss;
  const state = (headLoss: number, flow = given.flow) =>
    roughnessForHeadLoss({ ...given, flow, headLoss: headLoss as Length }).state;

  test("from the smooth pipe's own to the roughest's, both included", () => {
    expect([state(loss(0)), state(loss(0) * 0.999)]).toEqual(["found", "smoother than smooth"]);
    expect([state(loss(bore / 2)), state(loss(bore / 2) * 1.001)]).toEqual(["found", "beyond roughness"]);
    expect([state(1, flowAt(4000)), state(1, flowAt(3999))]).toEqual(["beyond roughness", "not turbulent"]);
  });
});

describe("runs of pipes", () => {
  const pipes = [
    { insideDiameter: 0.05 as Length, length, roughness: 0 as Length },
    { insideDiameter: 0.03 as Length, length, roughness: 0 as Length },
  ];

  test("the flow, or the loss, is the same in each, and nothing moves at nothing", () => {
    const series = seriesFlow({ pipes, headLoss: 2 as Length, viscosity });
    expect(series.flows).toEqual([series.flow, series.flow]);
    const parallel = parallelLoss({ pipes, flow: 0.002 as VolumeFlow, viscosity });
    expect(parallel.losses).toEqual([parallel.headLoss, parallel.headLoss]);
    expect(seriesFlow({ pipes, headLoss: 0 as Length, viscosity })).toMatchObject({ flow: 0, losses: [0, 0] });
    expect(parallelLoss({ pipes, flow: 0 as VolumeFlow, viscosity })).toMatchObject({ headLoss: 0, flows: [0, 0] });
  });

  test("one pipe alone is itself", () => {
    const one = pipes.slice(0, 1);
    const flow = 0.002 as VolumeFlow;
    const { headLoss } = seriesLoss({ pipes: one, flow, viscosity });
    expect(Math.abs(seriesFlow({ pipes: one, headLoss, viscosity }).flow / flow - 1)).toBeLessThan(1e-13);
    expect(Math.abs(parallelLoss({ pipes: one, flow, viscosity }).headLoss / headLoss - 1)).toBeLessThan(1e-13);
    expect(Math.abs(parallelFlow({ pipes: one, headLoss, viscosity }).flow / flow - 1)).toBeLessThan(1e-13);
  });

  test("a tunnel before a narrow pipe takes nothing from its flow", () => {
    const narrow = pipes[1] as PipeOfRun;
    // Alone with the head the tunnel would carry more than the library takes for a flow, 1000 m³/s.
    const tunnel = { insideDiameter: 100 as Length, length, roughness: 0 as Length };
    const run = (...of: PipeOfRun[]) => seriesFlow({ pipes: of, headLoss: 50 as Length, viscosity }).flow;
    expect(run(tunnel, narrow) / run(narrow)).toBeCloseTo(1, 12);
  });

  test("each pipe's own fields are looked at, by its place", () => {
    const bad = [pipes[0], { ...pipes[1], roughness: 0.016 as Length }] as typeof pipes;
    expect(refused(() => seriesLoss({ pipes: bad, flow: 0.001 as VolumeFlow, viscosity }))).toBe("pipes[1].roughness");
    expect(refused(() => parallelLoss({ pipes, flow: 100 as VolumeFlow, viscosity }))).toBe("flow");
    expect(
      refused(() =>
        flowForHeadLoss({ insideDiameter: bore, length, roughness: 0.026 as Length, viscosity, headLoss: 1 as Length }),
      ),
    ).toBe("roughness");
  });
});

describe("a pipe's pressure rating in the warm", () => {
  const pvc = findPipe("2 in PVC SCH 40");
  const of = (grade: string, pressureRating: GaugePressure | null, temperature: Temperature) =>
    ratingAtTemperature({ pipe: { ...pvc, grade, pressureRating }, temperature } as never);

  test("a pipe without one has none, an unknown grade is refused", () => {
    expect(of("PVC 1120", null, celsius(20))).toEqual({ state: "no rating" });
    for (const grade of ["straw", "toString", 3 as never])
      expect(refused(() => of(grade, psi(100), celsius(20)))).toBe("pipe.grade");
  });

  test("too warm says up to where, in the table's own degrees, and is not too warm there", () => {
    for (const [grade, degrees] of [
      ["PVC 1120", inFahrenheit],
      ["PE100", inCelsius],
    ] as const) {
      const hot = of(grade, psi(100), celsius(99));
      if (hot.state !== "too warm") throw new Error(hot.state);
      const last = degrees(hot.warmest);
      expect(Math.abs(last - Math.round(last))).toBeLessThan(1e-9);
      expect(of(grade, psi(100), hot.warmest).state).toBe("rated");
      expect(of(grade, psi(100), (hot.warmest + 0.01) as Temperature).state).toBe("too warm");
    }
    // PPFA's table for PVC ends at 140 °F.
    const pvcHot = of("PVC 1120", psi(100), celsius(99));
    expect(pvcHot.state === "too warm" && Math.abs(inFahrenheit(pvcHot.warmest) - 140) < 1e-9).toBe(true);
    expect(of("PVC 1120", psi(100), fahrenheit(73))).toMatchObject({ state: "rated", factor: 1 });
  });
});

describe("pipes by text", () => {
  test("what is not a text, or blank, or longer than a label is refused", () => {
    for (const text of [undefined, 3, "   ", "2 in PVC SCH 40".padEnd(121)])
      expect(refused(() => findPipe(text as string))).toBe("pipe");
    expect(refused(() => findPipe("2 in PVC SCH 40".padEnd(120)))).toBeUndefined();
  });

  test("of two grades alike in body the one of the lower rating is taken", () => {
    const both = listPipes({ standard: "ASTM D2239" }).filter(
      ({ nominal, series }) => nominal === "1 in" && series === "SIDR 15",
    );
    const found = findPipe("1 in PE SIDR 15");
    expect(both.length).toBeGreaterThan(1);
    expect(found.pressureRating).toBe(Math.min(...both.map(({ pressureRating }) => pressureRating ?? Infinity)));
  });

  test("a rating is met to a twentieth, and a pipe without one is of none", () => {
    expect(findPipe("2 in PVC SCH 80 400 psi").name).toBe("2 in PVC 1120 SCH 80");
    expect(refused(() => findPipe("2 in PVC SCH 80 399 psi"))).toBe("pipe");
    expect(refused(() => findPipe("1 in copper type L 100 psi"))).toBe("pipe");
  });

  test("at most so many are named, and how many more there are", () => {
    const said = (text: string) => {
      try {
        return String(findPipe(text));
      } catch (error) {
        return (error as Error).message;
      }
    };
    for (const [text, material] of [
      ["7 in PVC", "PVC"],
      ["7 in copper SCH 40", "copper"],
    ] as const) {
      const many = said(text);
      const named = (many.match(new RegExp(`"[^"]* in ${material}[^"]*"`, "g")) ?? []).length;
      const more = Number(/ and (\d+) more/.exec(many)?.[1]);
      expect(named + more).toBe(listPipes({ material }).length);
    }
    expect(said("2 in PVC SCH 41")).not.toMatch(/more/);
    // Just as many as are named: six ratios, each of two grades.
    expect(said("40 mm PE").match(/"[^"]*"/g)).toHaveLength(12);
    expect(said("40 mm PE")).not.toMatch(/more/);
    // What is near keeps the most of what was asked for: first the size with its material, then the material.
    expect(said("2 in PVC SCH 41")).toMatch(/"2 in PVC/);
    expect(said("2 in PVC SCH 41")).not.toMatch(/"3 in|copper|steel/);
    expect(said("7 in copper type L")).toMatch(/type L/);
    expect(said("7 in copper type L")).not.toMatch(/type M/);
  });

  test("a list by standard, by material, by both; and by what there is not", () => {
    const all = listPipes();
    const d2241 = listPipes({ standard: "ASTM D2241" });
    expect(d2241).toEqual(all.filter(({ standard }) => standard === "ASTM D2241"));
    expect(listPipes({ material: "copper" })).toEqual(all.filter(({ material }) => material === "copper"));
    expect(listPipes({ standard: "ASTM D2241", material: "PVC" })).toEqual(d2241);
    for (const [filter, named] of [
      [{ standard: "ASTM D2241", material: "copper" }, "ASTM D2241"],
      [{ material: "straw" }, "straw"],
      [{ standard: "none" }, "none"],
    ] as const) {
      const list = () => listPipes(filter as never);
      expect(refusedWith(list)).toEqual(["filter", named]);
      expect(list).toThrow(/ASTM D2241 \(PVC\), ASTM D2239 \(PE\)/);
    }
    expect(d2241.length).toBeGreaterThan(0);
    expect(d2241.length).toBeLessThan(all.length);
  });

  test("a roughness of what there is no wall of is refused", () => {
    expect(refused(() => wallRoughness("straw" as never))).toBe("material");
    expect(wallRoughness("galvanised steel").roughness).toBeCloseTo(0.00015, 5);
  });
});

describe("sizes of one's own", () => {
  test("the average bore leaves 2.12 walls, and never less than the tolerance of thin ones", () => {
    const pipe = (standard: string, wall: number) => ({
      standard,
      outsideDiameter: inches(2.375),
      wall: inches(wall),
      insideDiameter: inches(2.2),
      insideDiameterBasis: "outside less two minimum walls" as const,
    });
    const average = (standard: string, wall: number) => inInches(averageInsideDiameter(pipe(standard, wall) as never));
    expect(average("ASTM D3035", 0.1)).toBeCloseTo(2.375 - 2.12 * 0.1, 12);
    // A thin wall of D2241 may be 0.020 in over its minimum, half of that on average.
    expect(average("ASTM D2241", 0.1)).toBeCloseTo(2.375 - 2 * 0.11, 3);
    expect(refused(() => average("ASTM D3035", 1.15))).toBe("pipe.wall");
    expect(() => average("ASTM D3035", 1.2)).toThrow("half the outside diameter");
    // Walls that meet in the middle: 2.12 of them are the outside diameter.
    const closed = { ...pipe("ASTM D3035", 1), outsideDiameter: inches(2.12) };
    expect(refused(() => averageInsideDiameter(closed as never))).toBe("pipe.wall");
  });

  test("a bore that is an average, held or nominal already is the average bore", () => {
    for (const insideDiameterBasis of ["average", "controlled", "outside less two nominal walls"] as const) {
      const pipe = { ...findPipe("2 in PVC SDR 21"), insideDiameterBasis };
      expect(averageInsideDiameter(pipe)).toBe(pipe.insideDiameter);
    }
  });

  test("a wall is at most a third of the outside diameter", () => {
    const D = 0.3 as Length;
    for (const [wall, field] of [
      [0.0999, undefined],
      [0.1001, "wall"],
    ] as const) {
      const pipe = { outsideDiameter: D, wall: wall as Length };
      expect(refused(() => pressureRatingOfWall({ ...pipe, designStress: psiModulus(2000) }))).toBe(field);
      expect(refused(() => metalPipeWorkingPressure({ ...pipe, allowableStress: psiModulus(6000) }))).toBe(field);
    }
  });

  test("a ring has an inside under its outside", () => {
    const mass = (d: number) =>
      refused(() => pipeMass({ outsideDiameter: 0.1 as Length, insideDiameter: d as Length, density: 1000 as never }));
    expect([mass(0.1), mass(0.11), mass(0.0999)]).toEqual(["insideDiameter", "insideDiameter", undefined]);
  });

  test("a table's words must be words, and a pipe without a rating has no temperature of one", () => {
    const provenance = { outsideDiameter: "read", wall: "read", insideDiameter: "read" };
    const row = ["SCH 40", "2 in", 2.375, 0.154, 2.067, [280], provenance];
    const table = {
      standard: "own",
      source: "own",
      material: "PVC",
      unit: "in",
      wallBasis: "minimum",
      insideDiameterBasis: "as printed",
      ratingTemperature: 73,
      grades: [{ grade: "A" }, { grade: "B" }],
      rows: [row],
    };
    const made = (changes: object) => pipesOf({ ...table, ...changes } as never);
    const [a, b] = made({});
    expect(a?.pressureRating).toBeCloseTo(280 * 6894.757293168361, 6);
    expect(a?.ratingTemperature).toBeCloseTo(295.93, 2);
    expect(b).toMatchObject({ pressureRating: null, ratingTemperature: null });
    expect(made({ ratingTemperature: null })[0]?.ratingTemperature).toBeNull();
    const spoilt = (at: number, value: unknown) => ({ rows: [row.map((cell, i) => (i === at ? value : cell))] });
    for (const [changes, field] of [
      [{ standard: 3 }, "table"],
      [{ insideDiameterBasis: 3 }, "table"],
      [{ grades: [{ grade: 3 }] }, "table.grades"],
      [{ grades: [3] }, "table.grades"],
      [spoilt(0, 3), "table.rows"],
      [spoilt(1, 3), "table.rows"],
      [spoilt(6, { ...provenance, wall: 3 }), "table.rows"],
      [spoilt(6, { ...provenance, pressureRating: 3 }), "table.rows"],
    ] as const)
      expect(refused(() => made(changes))).toBe(field);
  });
});
