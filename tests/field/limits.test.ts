/** Both sides of every limit in the docstrings of the field tests. */
import {
  airLineLevel,
  bucketFlow,
  bucketRuns,
  bucketTime,
  currentTest,
  diagnose,
  drawdownLog,
  echoDepth,
  gaugeHead,
  insulationTest,
  judgeReading,
  leaningTape,
  leastAirGap,
  liftingLoad,
  measuredCurve,
  monteCarlo,
  pressureHold,
  propagateUncertainty,
  settingHardware,
  tankTest,
  testAllowance,
  trajectoryFlow,
  voltageTest,
  windingTest,
} from "risingmain/field";
import { describe, expect, test } from "vitest";
import { changed, from, type Limit } from "../changed.ts";
import { refused } from "../refused.ts";
import { makeCase } from "./diagnosis-cases.ts";

/** A field test, an input it takes, and its limits. */
type Limited = readonly [name: string, run: (input: never) => unknown, good: () => object, limits: readonly Limit[]];

const density = 1000;
const gauge = { pressure: 3e5, gaugeElevation: 1, density };
const tank = { volume: 0.3, precharge: 2.6e5, atmosphere: 101_325 };
const hold = { pipeVolume: 0.15, startPressure: 4e5, endPressure: 3.9e5, time: 3600 };
const wall = { insideDiameter: 0.03, wall: 0.003, modulus: 8e8 };
const one = [{ name: "x", value: 1, standardUncertainty: 0.1 }];
const model = ([x = 0]: readonly number[]) => x;
const log = { staticLevel: 20, flow: 1e-3, readings: [{ time: 3600, level: 25 }] };
const curve = { readings: [{ flow: 1e-3, pressure: 3e5, pumpingLevel: 30 }], gaugeElevation: 1, density };
const hoist = {
  pumpMass: 30,
  pumpSetting: 60,
  pipeMass: 2,
  insideDiameter: 0.03,
  outsideDiameter: 0.04,
  density,
  capacity: 500,
};
const volts = { rated: 230, underLoad: 228, atRest: 240, starting: 190 };
const YEAR = 31_557_600;

const TESTS: readonly Limited[] = [
  [
    "airLineLevel",
    airLineLevel,
    () => ({ lineLength: 50, pressure: 1e5, density }),
    [
      from("lineLength", 0, 5000),
      from("pressure", 0, 5e7),
      from("density", 900, 1100),
      from("pressureUncertainty", 0, 1e7),
      from("lengthUncertainty", 0, 100),
    ],
  ],
  [
    "bucketFlow",
    bucketFlow,
    () => ({ volume: 0.02, times: [20, 30] }),
    [
      ["volume", [1e-9, 1000], [0.9e-9, 1001]],
      [
        "times",
        [[20], Array.from({ length: 1000 }, () => 20)],
        [[], Array.from({ length: 1001 }, () => 20), undefined],
      ],
      from("times[1]", 0.01, 1e6),
      from("volumeUncertainty", 0, 0.01),
      // Half of the shortest.
      from("timeUncertainty", 0, 10),
    ],
  ],
  [
    "bucketRuns",
    bucketRuns,
    () => ({ volume: 0.02, flow: 1e-3, wanted: 0.1 }),
    [
      ["volume", [1e-6, 1000], [0.9e-9, 1001]],
      ["flow", [1e-9, 1], [0.9e-9, 1001]],
      ["wanted", [1e-6, 0.5], [0.9e-6, 0.51]],
      from("volumeUncertainty", 0, 0.01),
      from("timeUncertainty", 0, 3600),
    ],
  ],
  [
    "bucketTime",
    bucketTime,
    () => ({ volume: 0.02, flow: 1e-3 }),
    [from("flow", 1e-9, 1000), from("volume", 1e-9, 1000)],
  ],
  [
    "currentTest",
    currentTest,
    () => ({ reading: 9, expected: 10 }),
    [
      from("reading", 0, 1e5),
      from("expected", 1e-6, 1e5),
      from("most", 1e-6, 1e5),
      from("tolerance", 0, 1),
      from("readingUncertainty", 0, 1e5),
      from("expectedUncertainty", 0, 1e5),
    ],
  ],
  [
    "drawdownLog",
    drawdownLog,
    () => log,
    [
      from("staticLevel", 0, 5000),
      from("flow", 1e-9, 1000),
      from("stopped", 0, YEAR),
      from("steadySpan", 60, 86_400),
      from("steadyChange", 0, 100),
      from("levelUncertainty", 0, 100),
      from("flowUncertainty", 0, 1000),
      from("readings[0].time", 0, YEAR),
      from("readings[0].level", 0, 5000),
      [
        "readings",
        [
          [
            { time: 1, level: 20 },
            { time: 1, level: 21 },
          ],
        ],
        [[], undefined],
      ],
      ["readings[0]", [], [undefined]],
      // Not before the reading ahead of it.
      ["readings[1].time", [], [3599]],
    ],
  ],
  [
    "echoDepth",
    echoDepth,
    () => ({ echoTime: 0.2, airTemperature: 283.15 }),
    [
      from("echoTime", 0, 60),
      ["airTemperature", [223.15, 333.15], [223.1, 333.2]],
      from("timeUncertainty", 0, 10),
      from("temperatureUncertainty", 0, 50),
    ],
  ],
  [
    "gaugeHead",
    gaugeHead,
    () => gauge,
    [
      from("pressure", -1e5, 1e8),
      from("gaugeElevation", -5000, 5000),
      from("density", 900, 1100),
      from("pressureUncertainty", 0, 1e7),
      from("elevationUncertainty", 0, 100),
    ],
  ],
  [
    "insulationTest",
    insulationTest,
    () => ({ reading: 8e7, ratedVoltage: 230, temperature: 288 }),
    [from("readingUncertainty", 0, 1e15), from("temperatureUncertainty", 0, 50), from("reading", 0, 1e15)],
  ],
  [
    "judgeReading",
    judgeReading,
    () => ({ reading: 15, low: 10, high: 20 }),
    [
      from("reading", -1e100, 1e100),
      ["low", [-1e100, 20], [-1.1e100]],
      ["high", [10, 1e100], [9.99, 1.1e100]],
      from("standardUncertainty", 0, 1e100),
    ],
  ],
  [
    "leaningTape",
    leaningTape,
    () => ({ trueDepth: 50, offset: 1 }),
    [from("trueDepth", 0, 5000), from("offset", 0, 5000)],
  ],
  [
    "leastAirGap",
    leastAirGap,
    () => ({ bore: 0.02 }),
    [from("bore", 0, 1), ["rule", ["twice the bore, 20 mm at least"], ["none"]]],
  ],
  [
    "liftingLoad",
    liftingLoad,
    () => hoist,
    [
      ["capacity", [1e-9, 1e6], [0, 1.01e6]],
      ["wantedMargin", [1, 20], [0.99, 20.1]],
    ],
  ],
  [
    "measuredCurve",
    measuredCurve,
    () => curve,
    [
      from("gaugeElevation", -5000, 5000),
      from("density", 900, 1100),
      from("gaugeDiameter", 0.001, 10),
      ["friction", [() => 0, () => 1e6], [5, () => -1e-9, () => 1.01e6, () => Number.NaN]],
      from("readings[0].flow", 0, 1000),
      from("readings[0].pressure", -1e5, 1e8),
      from("readings[0].pumpingLevel", 0, 5000),
      from("readings[0].flowUncertainty", 0, 1000),
      from("readings[0].pressureUncertainty", 0, 1e7),
      from("readings[0].levelUncertainty", 0, 100),
      [
        "readings",
        [Array.from({ length: 1000 }, () => curve.readings[0])],
        [[], Array.from({ length: 1001 }, () => curve.readings[0])],
      ],
      ["readings[0]", [], [undefined]],
    ],
  ],
  [
    "monteCarlo",
    monteCarlo,
    () => ({ inputs: one, model, seed: 1, trials: 100 }),
    [
      ["seed", [0, 4_294_967_295], [-1, 4_294_967_296, 0.5]],
      ["trials", [100], [99, 1_000_001, 100.5]],
      ["spreads", [["rectangular"], ["triangular"]], [[], ["normal", "normal"]]],
      ["model", [], [() => Number.POSITIVE_INFINITY, undefined]],
    ],
  ],
  [
    "propagateUncertainty",
    propagateUncertainty,
    () => ({ inputs: one, model }),
    [
      ["inputs", [Array.from({ length: 100 }, () => one[0])], [[], Array.from({ length: 101 }, () => one[0])]],
      ["inputs[0]", [], [undefined]],
      ["inputs[0].name", ["", "y"], [undefined, 5]],
      ["inputs[0].value", [-1e99, 1e99], [-1.01e100, 1.01e100]],
      ["inputs[0].standardUncertainty", [0, 1e99], [-1e-9, 1.01e100]],
      ["model", [() => 1e100, () => -1e100], [() => 1.01e100, () => "1", () => Number.NaN, undefined]],
      ["correlations", [[]], [null, Array.from({ length: 4951 }, () => ({ first: 0, second: 1, coefficient: 0 }))]],
    ],
  ],
  [
    "propagateUncertainty with two readings",
    propagateUncertainty,
    () => ({ inputs: [...one, ...one], model, correlations: [{ first: 0, second: 1, coefficient: 0.5 }] }),
    [
      ["correlations[0].first", [0], [-1, 2, 0.5]],
      ["correlations[0].second", [1], [0, -1, 2]],
      ["correlations[0]", [], [undefined]],
      ["correlations[0].coefficient", [-1, 1], [-1.001, 1.001]],
    ],
  ],
  [
    "pressureHold",
    pressureHold,
    () => hold,
    [
      from("pipeVolume", 0, 1e5),
      from("startPressure", 0, 1e8),
      from("endPressure", 0, 1e8),
      from("time", 1, 8_640_000),
      from("bulkModulus", 1e8, 1e10),
      from("volumeUncertainty", 0, 1e5),
      from("pressureUncertainty", 0, 1e6),
      from("timeUncertainty", 0, 86_400),
      from("temperatureUncertainty", 0, 50),
      from("prechargeUncertainty", 0, 1e6),
      from("tankUncertainty", 0, 1000),
      ["wall", [wall, { ...wall, expansion: 0 }], [5, null]],
    ],
  ],
  [
    "pressureHold with a wall and temperatures",
    pressureHold,
    () => ({ ...hold, wall, startTemperature: 285, endTemperature: 286 }),
    [
      from("wall.insideDiameter", 0.001, 10),
      from("wall.wall", 1e-4, 1),
      from("wall.modulus", 1e6, 1e12),
      from("wall.expansion", 0, 0.001),
      ["startTemperature", [273.15, 372.15], [273.1, 372.2]],
      ["endTemperature", [273.15, 372.15], [273.1, 372.2, undefined]],
    ],
  ],
  [
    "settingHardware",
    settingHardware,
    () => ({ pumpSetting: 60, pumpingLevel: 45 }),
    [
      from("jointLength", 0.1, 5000),
      from("reelLength", 0.1, 1e5),
      from("cableBeyond", 0, 1e4),
      ["barbFittings", [0, 1000], [-1, 1001, 1.5]],
    ],
  ],
  [
    "tankTest",
    tankTest,
    () => ({ ...tank, lowPressure: 2.8e5, highPressure: 4.1e5, time: 90 }),
    [
      ["lowPressure", [0], [-1, 1.01e8]],
      ["highPressure", [2.8e5, 1e8], [2.79e5, 1.01e8]],
      from("time", 0.1, 86_400),
      from("pressureUncertainty", 0, 1e6),
      from("timeUncertainty", 0, 86_400),
    ],
  ],
  [
    "testAllowance",
    testAllowance,
    () => ({ length: 100, diameter: 0.1, pressure: 1e6 }),
    [
      from("length", 0, 1e6),
      from("diameter", 0, 10),
      from("pressure", 0, 1e8),
      ["edition", ["current", "older", undefined], ["newer"]],
    ],
  ],
  [
    "trajectoryFlow",
    trajectoryFlow,
    () => ({ insideDiameter: 0.08, throw: 0.5, drop: 0.3 }),
    [
      from("insideDiameter", 0.005, 5),
      from("throw", 0.001, 100),
      from("drop", 0.001, 100),
      from("lengthUncertainty", 0, 1),
      from("diameterUncertainty", 0, 1),
    ],
  ],
  [
    "voltageTest",
    voltageTest,
    () => volts,
    [
      from("rated", 1, 1000),
      from("underLoad", 0, 2000),
      from("atRest", 0, 2000),
      from("starting", 0, 2000),
      from("dipLimit", 0, 1),
      from("readingUncertainty", 0, 1),
    ],
  ],
  [
    "windingTest",
    windingTest,
    () => ({ reading: 3, cable: 0.9, expected: 2.2, temperature: 288 }),
    [from("readingUncertainty", 0, 1e4), from("cableUncertainty", 0, 1000), from("temperatureUncertainty", 0, 50)],
  ],
];

describe.each(TESTS)("%s", (_, run, good, limits) => {
  test.each(limits)("%s", (path, accepted, beyond) => {
    const answer = (value: unknown) => [value, refused(() => run(changed(good(), path, value) as never))];
    expect(accepted.map(answer)).toEqual(accepted.map((value) => [value, undefined]));
    expect(beyond.map(answer)).toEqual(beyond.map((value) => [value, path]));
  });

  test("no input is refused as such", () => {
    expect(refused(() => run(undefined as never))).toBe("input");
  });
});

describe("diagnose", () => {
  const job = () => {
    const { plant, readings } = makeCase("as planned", 1);
    return { plant, readings: readings.slice(0, 1) };
  };
  const answer = (path: string) => (value: unknown) => [value, refused(() => diagnose(changed(job(), path, value)))];
  const limits: readonly Limit[] = [
    from("plant.well.staticLevel", 0, 5000),
    from("plant.rise", -1000, 1000),
    from("plant.mainLoss.flow", 1e-9, 100),
    from("plant.mainLoss.headLoss", 1e-6, 1e4),
    ["plant.cutIn", [0], [-1, 1.01e7]],
    ["plant.cutOut", [1e7], [0, 1.01e7]],
    from("plant.density", 900, 1100),
    from("plant.voltage", 1, 1000),
    from("plant.current", 0.01, 1e4),
    ["plant.threePhase", [true, false, undefined], [1]],
    from("plant.tankAge", 3600, 100 * YEAR),
    ["plant.tankAge", [undefined], []],
    ["plant.regulatedPressure", [undefined], []],
    from("plant.regulatedPressure", 0, 1e7),
    from("plant.yard.loss.flow", 1e-9, 100),
    from("plant.yard.loss.headLoss", 1e-6, 1e4),
    from("plant.yard.outlet.flow", 1e-9, 100),
    from("plant.yard.outlet.headLoss", 1e-6, 1e4),
    from("plant.yard.rise", -1000, 1000),
    from("readings[0].value", -1e9, 1e9),
    ["readings[0].standardUncertainty", [1e-12, 1e9], [0.9e-12, 1.01e9]],
    from("readings[0].at", 0, 1e7),
    from("readings[0].over", 1, 86_400),
    ["readings[0].kind", ["flow"], ["colour", undefined]],
    ["readings[0]", [], [undefined]],
    [
      "readings",
      [Array.from({ length: 100 }, () => job().readings[0])],
      [[], Array.from({ length: 101 }, () => job().readings[0])],
    ],
    ["plant", [], [undefined]],
    ["plant.well", [], [undefined]],
    ["plant.tank", [], [undefined]],
    ["plant.mainLoss", [], [null]],
    ["plant.yard", [undefined], [null]],
    ["plant.yard.loss", [], [undefined]],
  ];

  test.each(limits)("%s", (path, accepted, beyond) => {
    expect(accepted.map(answer(path))).toEqual(accepted.map((value) => [value, undefined]));
    expect(beyond.map(answer(path))).toEqual(beyond.map((value) => [value, path]));
  });

  test("a fall of the precharge may be watched for a hundred years", () => {
    const read = (over: number) => ({ kind: "precharge fall", value: 0, standardUncertainty: 7e3, over });
    expect([100 * YEAR, 101 * YEAR].map((over) => answer("readings[0]")(read(over))[1])).toEqual([
      undefined,
      "readings[0].over",
    ]);
  });

  test("a reading of what the plant has not", () => {
    for (const [part, kind] of [
      ["yard", "far flow"],
      ["regulatedPressure", "regulated pressure"],
      ["threePhase", "swapped shutoff pressure"],
    ] as const) {
      const reading = { kind, value: 1, standardUncertainty: 1 };
      const without = changed(changed(job(), "readings[0]", reading), `plant.${part}`, undefined);
      expect(refused(() => diagnose(changed(job(), "readings[0]", reading)))).toBeUndefined();
      expect(refused(() => diagnose(without))).toBe("readings[0].kind");
    }
    expect(refused(() => diagnose(undefined as never))).toBe("input");
  });
});
