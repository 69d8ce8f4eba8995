/** Every field test carries its doubt: the law against trials, against sums done by hand, and against what it should not be. */
import {
  airLineLevel,
  bucketFlow,
  currentTest,
  drawdownLog,
  echoDepth,
  gaugeHead,
  insulationTest,
  type MonteCarlo,
  measuredCurve,
  pressureHold,
  tankTest,
  trajectoryFlow,
  voltageTest,
  windingTest,
} from "risingmain/field";
import {
  amperes,
  celsius,
  celsiusDegrees,
  feet,
  gigapascals,
  gpm,
  hours,
  inches,
  inFeet,
  kilogramsPerCubicMetre,
  megohms,
  minutes,
  ohms,
  percent,
  psi,
  seconds,
  standardAtmospheres,
  usGallons,
  volts,
} from "risingmain/units";
import { describe, expect, test } from "vitest";

const density = kilogramsPerCubicMetre(999.7);
const tank = { volume: usGallons(85), precharge: psi(38), atmosphere: standardAtmospheres(1) };
const line = { pipeVolume: usGallons(40), startPressure: psi(60), endPressure: psi(57), time: hours(1) };
const motor = { temperature: celsius(15) };

interface Doubt {
  readonly standardUncertainty: number;
  readonly parts: readonly { readonly share: number; readonly contribution: number; readonly name: string }[];
  readonly trial: MonteCarlo | null;
}

function present<T>(value: T | null | undefined): T {
  if (value === null || value === undefined) throw new Error("nothing given");
  return value;
}

function levelRead(options: object) {
  const read = airLineLevel({
    lineLength: feet(180),
    pressure: psi(20),
    density,
    lengthUncertainty: feet(1),
    ...options,
  });
  if (read.state !== "read") throw new Error(read.state);
  return read;
}

const pumped = (options: object) =>
  drawdownLog({
    staticLevel: feet(60),
    flow: gpm(10),
    stopped: hours(2),
    readings: [
      { time: hours(2), level: feet(90) },
      { time: hours(3), level: feet(64) },
    ],
    levelUncertainty: feet(0.3),
    ...options,
  });
const curvePoint = (options: object) =>
  measuredCurve({
    readings: [{ flow: gpm(10), pressure: psi(60), pumpingLevel: feet(120), levelUncertainty: feet(1) }],
    gaugeElevation: feet(2),
    density,
    friction: (flow) => feet(0.08 * (flow / gpm(1)) ** 2),
    gaugeDiameter: inches(1),
    ...options,
  }).points[0];
const supply = (options: object) =>
  voltageTest({ rated: volts(230), atRest: volts(240), underLoad: volts(228), starting: volts(190), ...options });

/** Each test by the caller's seed. Doubts so small that the formula is straight within them, or nearly. */
const TESTS: readonly (readonly [name: string, run: (options: object) => Doubt])[] = [
  ["bucket", (o) => bucketFlow({ volume: usGallons(5), times: [seconds(18), seconds(18.3)], ...o })],
  [
    "tank fill",
    (o) =>
      tankTest({
        ...tank,
        lowPressure: psi(40),
        highPressure: psi(60),
        time: seconds(95),
        pressureUncertainty: psi(0.3),
        ...o,
      }),
  ],
  ["air line", levelRead],
  ["gauge", (o) => gaugeHead({ pressure: psi(50), gaugeElevation: feet(3), density, ...o })],
  ["echo", (o) => echoDepth({ echoTime: seconds(0.178), airTemperature: celsius(10), ...o })],
  ["jet", (o) => trajectoryFlow({ insideDiameter: inches(3), throw: inches(18), drop: inches(13), ...o })],
  ["measured curve", (o) => present(curvePoint(o))],
  ["leak of a bare line", (o) => pressureHold({ ...line, ...o })],
  ["leak with the tank on line", (o) => pressureHold({ ...line, tank, ...o })],
  [
    "leak of a plastic line that warmed",
    (o) =>
      pressureHold({
        ...line,
        wall: { insideDiameter: inches(1.06), wall: inches(0.12), modulus: gigapascals(0.8), expansion: 1.5e-4 },
        startTemperature: celsius(12),
        endTemperature: celsius(14),
        temperatureUncertainty: celsiusDegrees(0.2),
        ...o,
      }),
  ],
  ["current", (o) => currentTest({ reading: amperes(9.8), expected: amperes(10), ...o })],
  ["drop of voltage", (o) => present(supply(o).drop)],
  ["dip of a generator", (o) => present(supply(o).dip)],
  ["winding", (o) => windingTest({ reading: ohms(3.1), cable: ohms(0.94), expected: ohms(2.2), ...motor, ...o })],
  [
    "insulation",
    (o) =>
      insulationTest({
        reading: megohms(80),
        ratedVoltage: volts(230),
        temperatureUncertainty: celsiusDegrees(0.5),
        ...motor,
        ...o,
      }),
  ],
  ["specific capacity", (o) => present(pumped(o).specificCapacityDoubt)],
  ["recovery", (o) => present(pumped(o).recoveryDoubt)],
];

describe.each(TESTS)("%s", (_, run) => {
  test("first order agrees with Monte Carlo of the caller's seed within its sampling error", () => {
    for (const seed of [3, 8]) {
      const { standardUncertainty, trial } = run({ seed, trials: 20_000 });
      const { standardUncertainty: tried, samplingError } = present(trial);
      // Four sampling errors, and 0.5 % for what bends within the doubts: a time of 3 % adds half of its square.
      expect(Math.abs(tried - standardUncertainty)).toBeLessThan(4 * samplingError + 0.005 * standardUncertainty);
    }
  });

  test("without a seed no trials; the same seed the same bits; the parts are all of it", () => {
    const { standardUncertainty, parts, trial } = run({});
    expect(trial).toBeNull();
    expect(standardUncertainty).toBeGreaterThan(0);
    expect(parts.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
    expect(Math.hypot(...parts.map(({ contribution }) => contribution)) / standardUncertainty).toBeCloseTo(1, 12);
    expect(run({ seed: 5, trials: 200 })).toEqual(run({ seed: 5, trials: 200 }));
    expect(run({ seed: 5, trials: 200 }).trial).not.toEqual(run({ seed: 6, trials: 200 }).trial);
  });
});

test("one psi of gauge is 2.31 ft of level and of head", () => {
  expect(inFeet(gaugeHead({ pressure: psi(50), gaugeElevation: feet(3), density }).standardUncertainty)).toBeCloseTo(
    2.31,
    2,
  );
  expect(inFeet(levelRead({ lengthUncertainty: feet(0) }).standardUncertainty)).toBeCloseTo(2.31, 2);
});

test("a bare line's loss by hand: V/K times the doubts of two needles, and its own 5 %", () => {
  const { lost, lostUncertainty, leak, standardUncertainty } = pressureHold(line);
  const [K, V] = [316_000, line.pipeVolume];
  const byHand = Math.hypot((V / K) * Math.SQRT2 * 0.5, 0.05 * lost);
  expect(lostUncertainty / byHand).toBeCloseTo(1, 6);
  expect(standardUncertainty / leak).toBeCloseTo(Math.hypot(lostUncertainty / lost, 1 / 3600), 6);
});

test("a leak is told only where it is more than the doubt: the tank on line hides it", () => {
  expect(pressureHold(line).state).toBe("leaks");
  expect(pressureHold({ ...line, startPressure: psi(57), endPressure: psi(60) }).state).toBe("gains");
  expect(pressureHold({ ...line, endPressure: psi(59.5) }).state).toBe("nothing to tell");
  expect(pressureHold({ ...line, endPressure: psi(60) }).state).toBe("nothing to tell");
  // Half a kelvin of thermometer on a rigid line is more water than 3 psi.
  const warmed = { ...line, startTemperature: celsius(12), endTemperature: celsius(12) };
  expect(pressureHold(warmed).state).toBe("nothing to tell");
  const { parts } = pressureHold(warmed);
  expect(parts.find(({ name }) => name === "endTemperature")?.share).toBeGreaterThan(0.4);
  const fed = pressureHold({ ...line, tank });
  expect(fed.parts.map(({ name }) => name)).toContain("precharge");
  expect(fed.lostUncertainty / pressureHold(line).lostUncertainty).toBeGreaterThan(1000);
});

test("a measured curve's doubt by hand, the flow's through friction and velocity head", () => {
  const { standardUncertainty, flow, flowUncertainty, velocityHead } = present(curvePoint({}));
  expect(flowUncertainty).toBeCloseTo(0.03 * flow, 12);
  const slope = (2 * feet(8)) / flow + (2 * velocityHead) / flow;
  const byHand = Math.hypot(psi(1) / (999.7 * 9.80665), feet(1), slope * flowUncertainty);
  expect(standardUncertainty / byHand).toBeCloseTo(1, 6);
});

test("a verdict is sure only away from its edges", () => {
  const amps = (reading: number) =>
    currentTest({ reading: amperes(reading), expected: amperes(10), most: amperes(12) }).sure;
  expect([10, 10.8, 11.2, 11.9, 13].map(amps)).toEqual([true, false, false, false, true]);
  expect(supply({}).sure).toBe(true);
  expect(supply({ underLoad: volts(209) }).sure).toBe(false);
  expect(supply({}).dipSure).toBe(true);
  expect(supply({ dipLimit: percent(21) }).dipSure).toBe(false);
  expect(voltageTest({ rated: volts(230), underLoad: volts(228) }).dipSure).toBeNull();
  const winding = (reading: number) => windingTest({ reading: ohms(reading), expected: ohms(2.2), ...motor }).sure;
  expect([winding(2.2), winding(2.38), winding(3)]).toEqual([true, false, true]);
});

test("a resistance test says what the meter says, with the cautions of mains", () => {
  const read = windingTest({ reading: ohms(2.2), expected: ohms(2.2), temperature: celsius(20) });
  expect(read.winding).toBeCloseTo(2.2, 12);
  // Copper's 0.00393 a kelvin at 20 °C (IEC 60028), two kelvins, and 1 % of the meter.
  expect(read.standardUncertainty / 2.2).toBeCloseTo(Math.hypot(0.01, 2 * 0.003_93), 4);
  expect(read.cautions.map(({ text }) => text).join(" ")).toMatch(/locked out.*discharged/s);
  const wet = insulationTest({ reading: megohms(24), temperature: celsius(40), ratedVoltage: volts(230) });
  // Halving each 10 K: ln 2 / 10 a kelvin.
  expect(wet.standardUncertainty / wet.at40).toBeCloseTo(Math.hypot(0.05, 0.2 * Math.LN2), 6);
  expect(wet.cautions.map(({ text }) => text).join(" ")).toMatch(/500 V/);
});

test("the doubts of a log: two levels in a drawdown, the static level once in a recovery", () => {
  const { drawdownUncertainty, specificCapacity, specificCapacityDoubt, recoveryDoubt } = pumped({});
  expect(inFeet(drawdownUncertainty)).toBeCloseTo(0.3 * Math.SQRT2, 12);
  const share = present(specificCapacityDoubt).standardUncertainty / present(specificCapacity);
  expect(share).toBeCloseTo(Math.hypot(0.03, (0.3 * Math.SQRT2) / 30), 6);
  // 1 − (r − s)/(p − s) with r − s = 4 and p − s = 30 ft: slopes 26/900, 4/900, 1/30.
  const byHand = 0.3 * Math.hypot(26 / 900, 4 / 900, 1 / 30);
  expect(present(recoveryDoubt).standardUncertainty / byHand).toBeCloseTo(1, 6);
  const early = drawdownLog({
    staticLevel: feet(60),
    flow: gpm(10),
    readings: [{ time: minutes(1), level: feet(60) }],
  });
  expect([early.specificCapacityDoubt, early.recoveryDoubt]).toEqual([null, null]);
});
