import fc from "fast-check";
import { bernoulli, type GradeLinesInput, type GradeStationInput, gradeLines } from "risingmain/head";
import {
  type AbsolutePressure,
  type Density,
  type GaugePressure,
  InputError,
  type Length,
  type Velocity,
} from "risingmain/units";
import { describe, expect, test } from "vitest";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const site = {
  atmosphere: 101_325 as AbsolutePressure,
  vapourPressure: 1228 as AbsolutePressure,
  density: 1000 as Density,
};
const WEIGHT = 1000 * 9.80665;

const profiles: fc.Arbitrary<GradeLinesInput> = fc
  .array(
    fc.record({
      step: number(0, 500),
      // Whole metres: moved by whole metres they keep every bit, and so their order.
      elevation: fc.integer({ min: -50, max: 50 }) as fc.Arbitrary<number> as fc.Arbitrary<Length>,
      velocity: number(0, 3) as fc.Arbitrary<Velocity>,
      headLoss: number(0, 10) as fc.Arbitrary<Length>,
      pumpHead: fc.constantFrom(0, 0, 0, 40) as fc.Arbitrary<Length>,
    }),
    { minLength: 2, maxLength: 20 },
  )
  .map((rows) => {
    let distance = 0;
    const stations = rows.map(({ step, ...row }, i): GradeStationInput => {
      if (i === 0) return { distance: 0 as Length, elevation: row.elevation, velocity: row.velocity };
      distance += step;
      return { ...row, distance: distance as Length };
    });
    return { ...site, stations, startPressure: 200_000 as GaugePressure };
  });

/** A line without velocity, by [distance, elevation, headLoss]. */
function line(
  rows: readonly (readonly [number, number, number])[],
  rest: Partial<GradeLinesInput> = {},
): GradeLinesInput {
  const stations = rows.map(([distance, elevation, headLoss]) => ({
    distance: distance as Length,
    elevation: elevation as Length,
    headLoss: headLoss as Length,
  }));
  return { ...site, stations, startPressure: 0 as GaugePressure, ...rest };
}

describe("grade lines", () => {
  test("the energy line never rises without a pump, and the hydraulic line lies a velocity head below", () => {
    fc.assert(
      fc.property(profiles, (input) => {
        const { stations } = gradeLines(input);
        stations.forEach((station, i) => {
          const V = input.stations[i]?.velocity ?? 0;
          expect(station.energyGrade - station.hydraulicGrade).toBeCloseTo((V * V) / (2 * 9.80665), 9);
          if (i === 0) return;
          const rise = station.energyGrade - (stations[i - 1]?.energyGrade ?? 0);
          expect(rise).toBeLessThanOrEqual((input.stations[i]?.pumpHead ?? 0) + 1e-9);
        });
      }),
    );
  });

  test("agree with Bernoulli from the first station to the last", () => {
    fc.assert(
      fc.property(profiles, (input) => {
        const { stations } = gradeLines(input);
        const sum = (field: "headLoss" | "pumpHead"): Length =>
          input.stations.reduce((total, station) => total + (station[field] ?? 0), 0) as Length;
        const first = input.stations[0] as GradeStationInput;
        const last = input.stations.at(-1) as GradeStationInput;
        const balance = bernoulli({
          from: {
            elevation: first.elevation,
            velocity: first.velocity ?? (0 as Velocity),
            pressure: input.startPressure,
          },
          to: { elevation: last.elevation, velocity: last.velocity ?? (0 as Velocity) },
          headLoss: sum("headLoss"),
          pumpHead: sum("pumpHead"),
          density: input.density,
          solveFor: "to.pressure",
        });
        if (balance.state !== "balanced") throw new Error(balance.state);
        expect((stations.at(-1)?.pressure ?? 0) / 1e5).toBeCloseTo(balance.to.pressure / 1e5, 8);
      }),
    );
  });

  test("raising the datum raises the lines and moves no pressure", () => {
    fc.assert(
      fc.property(profiles, fc.integer({ min: -500, max: 500 }), (input, z) => {
        const raised = {
          ...input,
          stations: input.stations.map((station) => ({ ...station, elevation: (station.elevation + z) as Length })),
        };
        const low = gradeLines(input);
        gradeLines(raised).stations.forEach((station, i) => {
          expect(station.hydraulicGrade).toBeCloseTo((low.stations[i]?.hydraulicGrade ?? 0) + z, 8);
          expect(Math.abs(station.pressure - (low.stations[i]?.pressure ?? 0))).toBeLessThan(1e-4);
          expect(station.highPoint).toBe(low.stations[i]?.highPoint);
        });
      }),
    );
  });

  test("at rest the pressure is that of the water's height, whatever the losses", () => {
    const { stations } = gradeLines(
      line(
        [
          [0, 0, 0],
          [100, -20, 7],
          [200, -35, 3],
        ],
        { staticGrade: 2 as Length },
      ),
    );
    expect(stations.map(({ staticPressure }) => staticPressure / WEIGHT)).toStrictEqual([2, 22, 37]);
  });

  test("a pump's shutoff head stands in the line at rest", () => {
    const input = line([
      [0, 0, 0],
      [0, 0, 0],
      [500, 30, 10],
    ]);
    const stations = input.stations.map((station, i) =>
      i === 1 ? { ...station, pumpHead: 60 as Length, shutoffHead: 80 as Length } : station,
    );
    const [, , end] = gradeLines({ ...input, stations }).stations;
    expect((end?.pressure ?? 0) / WEIGHT).toBeCloseTo(20, 9);
    expect((end?.staticPressure ?? 0) / WEIGHT).toBeCloseTo(50, 9);
  });

  test("names the states: full, below the limit, siphon, column separation", () => {
    const at = (elevation: number, leastPressure = 0) =>
      gradeLines(
        line(
          [
            [0, 0, 0],
            [10, elevation, 0],
          ],
          { leastPressure: leastPressure as GaugePressure },
        ),
      ).stations[1]?.state;
    expect(at(-1)).toBe("full");
    expect(at(0)).toBe("full");
    expect(at(-1, 20_000)).toBe("below limit");
    expect(at(1)).toBe("siphon");
    expect(at(10.2)).toBe("siphon");
    expect(at(10.3)).toBe("column separation");
  });

  test("an open end is not called a siphon by a rounding", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e6 }), fc.integer({ min: 2, max: 30 }), (tenths, parts) => {
        const fall = tenths / 10;
        // Losses that use the fall up, each cut in so many that their sum is off in its last bits.
        const rows = Array.from(
          { length: parts },
          (_, i) => [i + 1, fall * (1 - (i + 1) / parts), fall / parts] as const,
        );
        const { stations } = gradeLines(line([[0, fall, 0], ...rows]));
        expect(stations.every(({ state }) => state === "full")).toBe(true);
      }),
    );
  });

  test("finds the stretches above the line where pipe and line cross", () => {
    // The line is level at 10; the pipe goes up through it half way to each crest, and comes down again.
    const lines = gradeLines(
      line(
        [
          [0, 9, 0],
          [100, 11, 0],
          [200, 9, 0],
          [300, 5, 0],
          [400, 15, 0],
        ],
        { startPressure: WEIGHT as GaugePressure },
      ),
    );
    expect(lines.siphons).toHaveLength(2);
    const [first, second] = lines.siphons;
    expect(first?.start).toBeCloseTo(50, 9);
    expect(first?.end).toBeCloseTo(150, 9);
    expect(second?.start).toBeCloseTo(350, 9);
    expect(second?.end).toBe(400);
    expect(lines.state).toBe("siphon");
  });

  test("a stretch above the line may begin with the line, and part in its middle", () => {
    // Half a metre under the pipe at the start, 11.5 m under it at the crest, which is past what the air can hold up.
    const lines = gradeLines(
      line(
        [
          [0, 1, 0],
          [100, 12, 0],
          [200, 0, 0],
        ],
        { startPressure: (-0.5 * WEIGHT) as GaugePressure },
      ),
    );
    expect(lines.stations.map(({ state }) => state)).toEqual(["siphon", "column separation", "full"]);
    expect(lines.siphons).toHaveLength(1);
    expect(lines.siphons[0]?.start).toBe(0);
    // The line is level at 0.5 m: the pipe falls through it 11.5 of 12 m down.
    expect(lines.siphons[0]?.end).toBeCloseTo(100 + (100 * 11.5) / 12, 9);
    const low = [
      [0, 0, 0],
      [100, -1, 0],
    ] as const;
    expect(gradeLines(line(low)).siphons).toEqual([]);
  });

  test("marks high points, on a level crest too, and neither end of the line", () => {
    const crests = (...elevations: number[]) =>
      gradeLines(line(elevations.map((z, i) => [i, z - 1000, 0] as const))).stations.map(({ highPoint }) => highPoint);
    expect(crests(3, 2, 1)).toStrictEqual([false, false, false]);
    expect(crests(1, 2, 1)).toStrictEqual([false, true, false]);
    expect(crests(1, 2, 2, 1)).toStrictEqual([false, true, true, false]);
    expect(crests(1, 2, 2, 3)).toStrictEqual([false, false, false, false]);
    expect(crests(2, 2, 1, 3)).toStrictEqual([false, false, false, false]);
    expect(crests(1, 2, 1, 0)).toStrictEqual([false, true, false, false]);
  });

  test("sections carry the extremes of their two ends", () => {
    const { sections, stations } = gradeLines(
      line([
        [0, 0, 0],
        [100, -20, 5],
        [250, -10, 5],
      ]),
    );
    expect(sections.map(({ from, to, length }) => [from, to, length])).toStrictEqual([
      [0, 1, 100],
      [1, 2, 150],
    ]);
    expect(sections[0]?.highestPressure).toBe(stations[1]?.staticPressure);
    expect(sections[1]?.lowestPressure).toBe(stations[2]?.pressure);
  });

  test("refuses stations that run backwards, and losses before the first", () => {
    expect(() =>
      gradeLines(
        line([
          [0, 0, 0],
          [100, 0, 0],
          [99, 0, 0],
        ]),
      ),
    ).toThrow(InputError);
    expect(() =>
      gradeLines(
        line([
          [0, 0, 1],
          [100, 0, 0],
        ]),
      ),
    ).toThrow(/stations\[0\]\.headLoss/);
  });
});
