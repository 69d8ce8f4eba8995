import fc from "fast-check";
import {
  checkValveSlam,
  closureSurge,
  compositeLine,
  criticalTime,
  type ElasticWall,
  joukowsky,
  type LinePiece,
  plasticWaveSpeed,
  pumpStopSurge,
  rigidColumnSurge,
  surgeAllowance,
  waveSpeed,
} from "risingmain/surge";
import type { Density, Duration, GaugePressure, Length, Modulus, PressureDifference, Velocity } from "risingmain/units";
import { describe, expect, test } from "vitest";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const water = { bulkModulus: 2.1e9 as Modulus, density: 1000 as Density };
const close = (a: number, b: number, share = 1e-13): void => {
  expect(Math.abs(a - b)).toBeLessThanOrEqual(share * Math.max(Math.abs(a), Math.abs(b)));
};

const walls: fc.Arbitrary<ElasticWall> = fc.record({
  insideDiameter: number(0.01, 1) as fc.Arbitrary<Length>,
  thickness: number(0.001, 0.05) as fc.Arbitrary<Length>,
  elasticModulus: number(5e8, 3e11) as fc.Arbitrary<Modulus>,
  poissonRatio: number(0, 0.5),
  support: fc.constantFrom("anchored upstream", "anchored throughout", "expansion joints"),
  theory: fc.constantFrom("thin", "thick"),
});

describe("wave speed", () => {
  test("is below the speed of sound, and reaches it as the wall grows stiff", () => {
    fc.assert(
      fc.property(walls, (wall) => {
        const { waveSpeed: a, soundSpeed } = waveSpeed({ ...water, wall });
        const stiff = waveSpeed({ ...water, wall: { ...wall, elasticModulus: 1e13 as Modulus } }).waveSpeed;
        expect(a).toBeLessThan(soundSpeed);
        expect(stiff).toBeGreaterThan(a);
        close(soundSpeed, waveSpeed(water).waveSpeed);
        expect(stiff / soundSpeed).toBeGreaterThan(0.85);
      }),
    );
  });

  test("thick-wall theory becomes thin-wall theory in a thin wall", () => {
    fc.assert(
      fc.property(walls, (wall) => {
        const thinWall = { ...wall, thickness: (wall.insideDiameter / 1e6) as Length };
        const [thin, thick] = (["thin", "thick"] as const).map(
          (theory) => waveSpeed({ ...water, wall: { ...thinWall, theory } }).waveSpeed,
        );
        close(thin as number, thick as number, 1e-5);
      }),
    );
  });

  test("thick-wall theory is Lamé's thick cylinder, for each support", () => {
    fc.assert(
      fc.property(walls, (wall) => {
        const { insideDiameter: D, thickness: e, elasticModulus: E, poissonRatio: mu, support } = wall;
        const [inner, outer] = [(D / 2) ** 2, (D / 2 + e) ** 2];
        // Strain of the bore by unit pressure, 2 u/r: free lengthwise; held lengthwise; pulled by the pressure on an end.
        const free = (2 / E) * ((outer + inner) / (outer - inner) + mu);
        const heldStill = ((2 * (1 + mu)) / E) * (((1 - 2 * mu) * inner + outer) / (outer - inner));
        const pulled = free - ((2 * mu) / E) * (inner / (outer - inner));
        const give = { "expansion joints": free, "anchored throughout": heldStill, "anchored upstream": pulled }[
          support
        ];
        const expected = 1 / Math.sqrt(water.density * (1 / water.bulkModulus + give));
        close(waveSpeed({ ...water, wall: { ...wall, theory: "thick" } }).waveSpeed, expected, 1e-12);
      }),
    );
  });

  test("depends on the ratio of bore to wall only, and on the ratio of the moduli times that of sound", () => {
    fc.assert(
      fc.property(walls, number(0.1, 10), (wall, scale) => {
        const scaled = {
          ...wall,
          insideDiameter: (wall.insideDiameter * scale) as Length,
          thickness: (wall.thickness * scale) as Length,
        };
        close(waveSpeed({ ...water, wall: scaled }).waveSpeed, waveSpeed({ ...water, wall }).waveSpeed);
        const heavier = {
          bulkModulus: (water.bulkModulus * scale) as Modulus,
          density: (water.density * scale) as Density,
        };
        const stiffer = { ...wall, elasticModulus: (wall.elasticModulus * scale) as Modulus };
        close(waveSpeed({ ...heavier, wall: stiffer }).waveSpeed, waveSpeed({ ...water, wall }).waveSpeed);
      }),
    );
  });

  test("anchored upstream only, then throughout, then jointed: the wave slows (Poisson's ratio below a half)", () => {
    fc.assert(
      fc.property(walls, number(0.01, 0.49), (wall, poissonRatio) => {
        const speed = (support: ElasticWall["support"]): number =>
          waveSpeed({ ...water, wall: { ...wall, poissonRatio, support } }).waveSpeed;
        expect(speed("anchored upstream")).toBeGreaterThan(speed("anchored throughout"));
        expect(speed("anchored throughout")).toBeGreaterThan(speed("expansion joints"));
      }),
    );
  });

  test("the manuals' equation is thin-wall theory with their rounded sound speed", () => {
    fc.assert(
      fc.property(number(5, 60), number(5e8, 4e9), (dimensionRatio, E) => {
        const bulkModulus = (300_000 * 6894.757293168361) as Modulus;
        // A density that makes sound run at 4660 ft/s.
        const density = (bulkModulus / (4660 * 0.3048) ** 2) as Density;
        const wall: ElasticWall = {
          insideDiameter: (0.01 * (dimensionRatio - 2)) as Length,
          thickness: 0.01 as Length,
          elasticModulus: E as Modulus,
          poissonRatio: 0,
          support: "expansion joints",
          theory: "thin",
        };
        close(
          plasticWaveSpeed({ dimensionRatio, elasticModulus: E as Modulus }),
          waveSpeed({ bulkModulus, density, wall }).waveSpeed,
          1e-12,
        );
      }),
    );
  });

  test("says when a wall is too thick for thin-wall theory", () => {
    const wall: ElasticWall = {
      insideDiameter: 0.05 as Length,
      thickness: 0.002 as Length,
      elasticModulus: 3e9 as Modulus,
      poissonRatio: 0.4,
      support: "anchored throughout",
      theory: "thin",
    };
    expect(waveSpeed({ ...water, wall }).insideRange).toBe(true);
    expect(waveSpeed({ ...water, wall: { ...wall, thickness: 0.0021 as Length } }).insideRange).toBe(false);
    expect(waveSpeed({ ...water, wall: { ...wall, thickness: 0.0021 as Length, theory: "thick" } }).insideRange).toBe(
      true,
    );
  });
});

const pieces: fc.Arbitrary<LinePiece[]> = fc.array(
  fc.record({
    length: number(1, 1000) as fc.Arbitrary<Length>,
    insideDiameter: number(0.01, 1) as fc.Arbitrary<Length>,
    waveSpeed: number(200, 1400) as fc.Arbitrary<Velocity>,
  }),
  { minLength: 1, maxLength: 8 },
);

describe("composite line", () => {
  test("keeps length, time of travel and inertia, in any order and however it is cut", () => {
    fc.assert(
      fc.property(pieces, (line) => {
        const whole = compositeLine(line);
        close(
          whole.length / whole.waveSpeed,
          line.reduce((t, p) => t + p.length / p.waveSpeed, 0),
        );
        close(whole.criticalTime, criticalTime(whole.length, whole.waveSpeed));
        const cut = line.flatMap((p) => [p, p]).map((p) => ({ ...p, length: (p.length / 2) as Length }));
        for (const other of [compositeLine([...line].reverse()), compositeLine(cut)]) {
          close(other.waveSpeed, whole.waveSpeed, 1e-12);
          close(other.insideDiameter, whole.insideDiameter, 1e-12);
        }
      }),
    );
  });
});

describe("stopping the water", () => {
  const line = { length: 300 as Length, waveSpeed: 1000 as Velocity, density: 1000 as Density };

  test("Joukowsky is linear in the change and goes as pressure over weight", () => {
    fc.assert(
      fc.property(number(0.001, 10), number(100, 1400), (V, a) => {
        const one = joukowsky({ velocityChange: V as Velocity, waveSpeed: a as Velocity, density: 1000 as Density });
        const two = joukowsky({
          velocityChange: (2 * V) as Velocity,
          waveSpeed: a as Velocity,
          density: 1000 as Density,
        });
        expect(two.pressure).toBe(2 * one.pressure);
        close(one.pressure, one.head * 1000 * 9.80665);
      }),
    );
  });

  test("a slower closure never makes more, and the two laws meet at the critical time", () => {
    const surge = (closureTime: number) =>
      closureSurge({ ...line, velocityChange: 2 as Velocity, closureTime: closureTime as Duration });
    const critical = surge(0).criticalTime;
    expect(surge(critical).closure).toBe("rapid");
    expect(surge(critical * (1 + 1e-12)).closure).toBe("slow");
    close(surge(critical * (1 + 1e-12)).pressure, surge(critical).pressure, 1e-11);
    fc.assert(
      fc.property(number(0, 20), number(0, 20), (s, t) => {
        expect(surge(Math.max(s, t)).pressure).toBeLessThanOrEqual(surge(Math.min(s, t)).pressure);
      }),
    );
    expect(surge(critical).fullSurgeLength).toBeCloseTo(0, 9);
    expect(surge(0).fullSurgeLength).toBe(300);
  });

  test("Michaud's peak is twice the mean that stops the column", () => {
    fc.assert(
      fc.property(number(0.7, 100), (time) => {
        const slow = closureSurge({ ...line, velocityChange: 2 as Velocity, closureTime: time as Duration });
        const mean = rigidColumnSurge({
          length: line.length,
          velocityChange: 2 as Velocity,
          time: time as Duration,
          density: line.density,
        });
        close(slow.pressure, 2 * mean.pressure);
      }),
    );
  });

  test("a check valve that is on time does not slam", () => {
    const slam = (closingDelay: number) =>
      checkValveSlam({ ...line, staticHead: 60 as Length, closingDelay: closingDelay as Duration });
    expect(slam(0).pressure).toBe(0);
    close(slam(0.3).pressure, 3 * slam(0.1).pressure);
    close(slam(0.2).pressure, joukowsky({ ...line, velocityChange: slam(0.2).reverseVelocity }).pressure);
  });

  test("a stopped pump's swing is even about the static head without friction, and stops at boiling", () => {
    const stop = (velocity: number, vapourHead = -10) =>
      pumpStopSurge({
        velocity: velocity as Velocity,
        waveSpeed: 1000 as Velocity,
        staticHead: 80 as Length,
        frictionHead: 0 as Length,
        vapourHead: vapourHead as Length,
      });
    close(stop(0.5).highestHead - 80, 80 - stop(0.5).lowestHead, 1e-12);
    expect(stop(0.5).state).toBe("column holds");
    expect(stop(1).state).toBe("column separates");
    expect(stop(1).lowestHead).toBe(-10);
    // Friction lifts the head the fall begins from, not the height the wave comes back to.
    const rubbed = pumpStopSurge({
      velocity: 0.5 as Velocity,
      waveSpeed: 1000 as Velocity,
      staticHead: 80 as Length,
      frictionHead: 5 as Length,
      vapourHead: -10 as Length,
    });
    close(rubbed.highestHead, stop(0.5).highestHead);
    close(rubbed.lowestHead, stop(0.5).lowestHead + 5);
  });
});

describe("surge allowance", () => {
  const check = (material: "pvc" | "pe", working: number, recurring: number, occasional: number) =>
    surgeAllowance({
      material,
      pressureClass: 100 as GaugePressure,
      workingPressure: working as GaugePressure,
      recurringSurge: recurring as PressureDifference,
      occasionalSurge: occasional as PressureDifference,
    });

  test.each([
    ["pvc", 100, 0, 60, "within allowance"],
    ["pvc", 100, 1, 0, "over allowance"],
    ["pvc", 100, 0, 61, "over allowance"],
    ["pvc", 101, 0, 0, "over allowance"],
    ["pe", 100, 50, 100, "within allowance"],
    ["pe", 100, 51, 0, "over allowance"],
    ["pe", 100, 0, 101, "over allowance"],
  ] as const)("%s at %d with %d recurring and %d occasional: %s", (material, working, recurring, occasional, state) => {
    expect(check(material, working, recurring, occasional).state).toBe(state);
  });

  test("each margin is what is allowed less what occurs", () => {
    for (const { margin, allowed, pressure } of check("pe", 80, 30, 90).checks) expect(margin).toBe(allowed - pressure);
  });
});
