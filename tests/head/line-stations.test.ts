import fc from "fast-check";
import { gradeLines, type LineStationsInput, lineStations } from "risingmain/head";
import { darcyWeisbachLoss } from "risingmain/pipe";
import type {
  AbsolutePressure,
  Density,
  GaugePressure,
  KinematicViscosity,
  Length,
  VolumeFlow,
} from "risingmain/units";
import { expect, test } from "vitest";
import { refused } from "../refused.ts";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const lines: fc.Arbitrary<LineStationsInput> = fc.record({
  startElevation: number(-50, 50) as fc.Arbitrary<Length>,
  flow: number(0, 0.005) as fc.Arbitrary<VolumeFlow>,
  viscosity: fc.constant(1.3e-6 as KinematicViscosity),
  runs: fc.array(
    fc.record({
      length: number(0, 500) as fc.Arbitrary<Length>,
      endElevation: number(-50, 50) as fc.Arbitrary<Length>,
      insideDiameter: fc.constantFrom(0.025, 0.035, 0.05) as fc.Arbitrary<number> as fc.Arbitrary<Length>,
      roughness: fc.constant(1.5e-6 as Length),
      lossCoefficient: number(0, 20),
    }),
    { minLength: 1, maxLength: 6 },
  ),
});
const site = {
  startPressure: 4e5 as GaugePressure,
  atmosphere: 1e5 as AbsolutePressure,
  vapourPressure: 1228 as AbsolutePressure,
};

test("the energy line falls by each run's friction and fittings, and by nothing where the bore changes", () => {
  fc.assert(
    fc.property(lines, (line) => {
      const { stations } = lineStations(line);
      const { stations: drawn } = gradeLines({ ...site, stations, density: 1000 as Density });
      let lost = 0;
      for (const run of line.runs) {
        const { headLoss, velocity } = darcyWeisbachLoss({ ...run, flow: line.flow, viscosity: line.viscosity });
        lost += headLoss + (run.lossCoefficient ?? 0) * ((velocity * velocity) / (2 * 9.80665));
      }
      const fall = (drawn[0]?.energyGrade ?? 0) - (drawn.at(-1)?.energyGrade ?? 0);
      expect(Math.abs(fall - lost)).toBeLessThan(1e-9 * (1 + lost));
      drawn.forEach((station, i) => {
        const before = drawn[i - 1];
        if (before?.distance !== station.distance || stations[i]?.headLoss !== undefined) return;
        expect(station.energyGrade).toBe(before.energyGrade);
      });
    }),
  );
});

test("one station at the start, one a run, one more a change of bore", () => {
  fc.assert(
    fc.property(lines, (line) => {
      const changes = line.runs.filter(
        (run, i) => i > 0 && run.insideDiameter !== line.runs[i - 1]?.insideDiameter,
      ).length;
      const { stations } = lineStations(line);
      expect(stations).toHaveLength(1 + line.runs.length + changes);
      const total = line.runs.reduce((sum, { length }) => sum + length, 0);
      expect(stations.at(-1)?.distance).toBeCloseTo(total, 9);
    }),
  );
});

const laid = (...runs: object[]) =>
  lineStations({
    startElevation: 0,
    flow: 0.001,
    viscosity: 1.3e-6,
    runs: runs.map((run) => ({ length: 100, endElevation: 0, insideDiameter: 0.05, roughness: 1.5e-6, ...run })),
  } as never);

test("fittings on no length of pipe lose K velocity heads", () => {
  const velocity = 0.001 / (Math.PI * 0.025 ** 2);
  const { stations } = laid({ length: 0, lossCoefficient: 10 });
  expect(stations[1]?.headLoss).toBeCloseTo((10 * velocity ** 2) / (2 * 9.80665), 12);
});

test("one run outside the friction law's range puts the line outside it", () => {
  // Relative roughness 0.1, past the 0.05 of the chart.
  const rough = { roughness: 0.005 };
  expect([laid({}, {}), laid(rough, {}), laid({}, rough), laid(rough)].map(({ insideRange }) => insideRange)).toEqual([
    true,
    false,
    false,
    false,
  ]);
});

test("the wall's roughness is at most half the bore", () => {
  expect(refused(() => laid({}, { roughness: 0.025 }))).toBeUndefined();
  expect(refused(() => laid({}, { roughness: 0.0251 }))).toBe("runs[1].roughness");
});
