/** How explanations are weighed and what is said of them: the rules of the docstring, on both sides of each limit. */
import {
  authorityCaution,
  type CauseName,
  type Diagnosis,
  type DiagnosisReading,
  diagnose,
  mainsCautions,
  pressureCautions,
} from "risingmain/field";
import { describe, expect, test } from "vitest";
import { causesOf } from "../../src/field/diagnosis-causes.ts";
import { predict } from "../../src/field/diagnosis-model.ts";
import { makeCase } from "./diagnosis-cases.ts";

/** Free figures of each explanation, and how many of them may go either way. */
const FREE: Readonly<Record<CauseName, readonly [free: number, eitherWay: number]>> = {
  "as planned": [0, 0],
  "worn pump": [2, 0],
  "plugged or part-closed main": [1, 0],
  "leak in the drop pipe": [1, 0],
  "failed check valve": [1, 0],
  "lost tank air": [1, 0],
  "wrong precharge": [1, 1],
  "low voltage": [1, 0],
  "low well level": [2, 0],
  "wrong rotation": [1, 0],
  "switch out of setting": [2, 2],
  "regulating valve stuck": [1, 1],
  "undersized run": [1, 0],
};

/** B = misfit + k ln n + 2 m ln 2. */
const score = ({ cause, misfit }: Diagnosis["explanations"][number], n: number): number =>
  misfit + FREE[cause][0] * Math.log(n) + 2 * FREE[cause][1] * Math.LN2;

/** One reading, so many of its uncertainties off what is planned. */
function alone(kind: "voltage" | "static level" | "cut-in" | "current", off: number): Diagnosis {
  const { plant } = makeCase("as planned", 2);
  const planned = {
    voltage: plant.voltage,
    "static level": plant.well.staticLevel,
    "cut-in": plant.cutIn,
    current: plant.current,
  }[kind];
  const standardUncertainty = 0.01 * planned;
  return diagnose({ plant, readings: [{ kind, value: planned + off * standardUncertainty, standardUncertainty }] });
}

test("weights are e^(−B/2) over their sum, best first, for every explanation of a plant with everything", () => {
  for (const [truth, seed] of [
    ["worn pump", 3],
    ["switch out of setting", 5],
  ] as const) {
    const { plant, readings } = makeCase(truth, seed);
    const { explanations } = diagnose({ plant, readings });
    expect(explanations.map(({ cause }) => cause).sort()).toEqual(Object.keys(FREE).sort());
    const n = readings.length;
    const parts = explanations.map((each) => Math.exp(-score(each, n) / 2));
    const sum = parts.reduce((total, part) => total + part, 0);
    explanations.forEach(({ cause, weight, fitted, residuals }, i) => {
      expect([cause, weight]).toEqual([cause, expect.closeTo((parts[i] as number) / sum, 9)]);
      expect(fitted.length).toBe(FREE[cause][0]);
      residuals.forEach(({ kind, read, predicted, inUncertainties }, k) => {
        const { value, standardUncertainty } = readings[k] as DiagnosisReading;
        expect([kind, read]).toEqual([readings[k]?.kind, value]);
        expect(inUncertainties).toBeCloseTo((read - predicted) / standardUncertainty, 6);
      });
    });
  }
});

test("so they are with three readings, a figure that may go either way at half the evidence", () => {
  const { plant } = makeCase("as planned", 2);
  const readings: readonly DiagnosisReading[] = [
    { kind: "static level", value: plant.well.staticLevel + 0.3, standardUncertainty: 0.2 },
    { kind: "cut-in", value: plant.cutIn + 7e3, standardUncertainty: 5e3 },
    { kind: "voltage", value: plant.voltage - 3, standardUncertainty: 2 },
  ];
  const { explanations, cautions } = diagnose({ plant, readings });
  const parts = explanations.map((each) => Math.exp(-score(each, 3) / 2));
  const sum = parts.reduce((total, part) => total + part, 0);
  explanations.forEach(({ cause, weight, residuals }, i) => {
    expect([cause, weight]).toEqual([cause, expect.closeTo((parts[i] as number) / sum, 9)]);
    residuals.forEach(({ kind, read, predicted, inUncertainties }, k) => {
      const { value, standardUncertainty } = readings[k] as DiagnosisReading;
      expect([kind, read]).toEqual([readings[k]?.kind, value]);
      expect(inUncertainties).toBeCloseTo((value - predicted) / standardUncertainty, 9);
    });
  });
  // The plan itself: 1.5² + 1.4² + 1.5².
  expect(explanations.find(({ cause }) => cause === "as planned")?.misfit).toBeCloseTo(2.25 + 1.96 + 2.25, 6);
  expect(cautions).toEqual([authorityCaution, ...pressureCautions, ...mainsCautions]);
});

test("weights of explanations a hundred doubts apart are still shares", () => {
  const { explanations } = alone("voltage", -20);
  // 20² = 400; and of one that lies at 2000 of them, e^(−2e6).
  for (const { weight } of [...explanations, ...alone("voltage", -2000).explanations])
    expect(weight >= 0 && weight <= 1).toBe(true);
  expect(explanations.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 12);
});

test("one reading is as planned up to 1 + 2 √2 of misfit", () => {
  // √3.828 = 1.957; a low voltage explains it by a weight of e^(3.8/2), less than ten.
  expect(alone("voltage", -1.95).state).toBe("as planned");
  expect(alone("voltage", -1.96).state).not.toBe("as planned");
});

test("one explanation is told from ten to one on", () => {
  // 2 ln 10 = 4.605 = 2.146².
  expect(alone("voltage", -2.14).state).toBe("cannot tell");
  const told = alone("voltage", -2.16);
  expect([told.state, told.explanations[0]?.cause]).toEqual(["told", "low voltage"]);
  expect(told.explanations[0]?.fitted[0]).toEqual({
    name: "voltage over planned",
    value: expect.closeTo(1 - 0.0216, 6),
  });
});

test("what fits, but is outweighed ten to one, is not as planned", () => {
  // Four readings, one of them 2.9 off: 8.41 under 4 + 2 √8 = 9.66; 7.5 of it bought for ln 4 = 1.39.
  const { plant } = makeCase("as planned", 2);
  const readings = (off: number): readonly DiagnosisReading[] => [
    { kind: "static level", value: plant.well.staticLevel, standardUncertainty: 0.1 },
    { kind: "cut-in", value: plant.cutIn, standardUncertainty: 5e3 },
    { kind: "cut-out", value: plant.cutOut, standardUncertainty: 5e3 },
    { kind: "voltage", value: plant.voltage * (1 - 0.01 * off), standardUncertainty: 0.01 * plant.voltage },
  ];
  // 4.605 + 1.386 = 5.99 = 2.448².
  expect(diagnose({ plant, readings: readings(2.44) }).state).toBe("as planned");
  expect(diagnose({ plant, readings: readings(2.46) }).state).toBe("told");
});

test("nothing fits past 1 + 5 √2 of misfit", () => {
  // A level above the static one is no fault known; √8.07 = 2.841.
  expect(alone("static level", -2.83).state).toBe("cannot tell");
  expect(alone("static level", -2.85).state).toBe("none fits");
});

test("a reversed pump's own doubt stands beside the reading's", () => {
  const { plant, readings } = makeCase("wrong rotation", 3);
  const swapped: DiagnosisReading = { kind: "swapped shutoff pressure", value: 1e5, standardUncertainty: 1e4 };
  const { explanations } = diagnose({ plant, readings: [...readings, swapped] });
  // A flat spread of 0.45 of the shutoff head has its width over √12.
  const own = (0.45 / Math.sqrt(12)) * plant.pump.shutoffHead * plant.density * 9.80665;
  const residual = explanations[0]?.residuals.at(-1);
  expect(residual?.inUncertainties).toBeCloseTo((1e5 - (residual?.predicted ?? 0)) / Math.hypot(1e4, own), 6);
});

describe("explanations and their figures", () => {
  const { plant } = makeCase("as planned", 4);
  const named = (cause: CauseName) => {
    const found = causesOf(plant).find((each) => each.cause === cause);
    if (found === undefined) throw new Error(cause);
    return found;
  };

  test("ends of what is tried", () => {
    const ends = (cause: CauseName) => named(cause).free.map(({ low, high }) => [low, high]);
    const { shutoffHead, runoutFlow } = plant.pump;
    expect(ends("worn pump")).toEqual([
      [0, 0.6],
      [0.2, 1.5],
    ]);
    const wide = runoutFlow / Math.sqrt(shutoffHead);
    expect(ends("leak in the drop pipe")).toEqual([[0, wide]]);
    expect(ends("failed check valve")).toEqual([[0, wide]]);
    expect(ends("low voltage")).toEqual([[0.7, 1]]);
    expect(ends("lost tank air")).toEqual([[0.1, 1]]);
    expect(ends("wrong precharge")).toEqual([
      [-Math.min(276e3, 0.9 * (plant.tank.precharge + plant.tank.atmosphere)), 276e3],
    ]);
    expect(ends("low well level")).toEqual([
      [0, shutoffHead],
      [1, 10],
    ]);
    expect(ends("switch out of setting")).toEqual([
      [-276e3, 276e3],
      [-276e3, 276e3],
    ]);
    expect(ends("regulating valve stuck")).toEqual([[-276e3, 276e3]]);
    expect(ends("wrong rotation")).toEqual([[0.3, 0.75]]);
    expect(ends("undersized run")).toEqual([[1, 1000]]);
    // A main that takes all the shutoff head at a hundredth of the flow.
    const { flow, headLoss } = plant.mainLoss;
    const [[low, high]] = ends("plugged or part-closed main") as [[number, number]];
    expect([low, high * headLoss * ((0.01 * runoutFlow) / flow) ** 2]).toEqual([1, expect.closeTo(shutoffHead, 9)]);
  });

  test("what each makes of the plant, by what it would read", () => {
    const reads = (cause: CauseName, values: readonly number[], kind: DiagnosisReading["kind"], more: object = {}) =>
      predict(plant, named(cause).fault(values), { kind, ...more });
    const sound = (kind: DiagnosisReading["kind"], more: object = {}) => reads("as planned", [], kind, more);
    const { precharge, atmosphere } = plant.tank;
    expect(reads("low voltage", [0.8], "voltage")).toBeCloseTo(0.8 * plant.voltage, 9);
    expect(reads("low well level", [4, 2], "static level")).toBe(plant.well.staticLevel + 4);
    expect(reads("switch out of setting", [1e4, 2e4], "cut-in")).toBe(plant.cutIn + 1e4);
    expect(reads("switch out of setting", [1e4, 2e4], "cut-out")).toBe(plant.cutOut + 2e4);
    expect(reads("regulating valve stuck", [-5e4], "regulated pressure")).toBe((plant.regulatedPressure ?? 0) - 5e4);
    expect(reads("wrong precharge", [3e4], "precharge")).toBeCloseTo(precharge + 3e4, 6);
    expect(reads("lost tank air", [0.8], "precharge")).toBeCloseTo(0.8 * (precharge + atmosphere) - atmosphere, 6);
    // Air that went at the mean rate since the tank was set goes on as it went: in its age a fifth again.
    const age = plant.tankAge as number;
    expect(reads("lost tank air", [0.8], "precharge fall", { over: age })).toBeCloseTo(
      0.2 * (precharge + atmosphere),
      3,
    );
    // Wear of a fifth with as much off the head: 0.8 of the shutoff head.
    const shutoff = (cause: CauseName, values: readonly number[]) =>
      reads(cause, values, "shutoff pressure") / (plant.density * 9.80665) + plant.well.staticLevel + plant.rise;
    expect(shutoff("worn pump", [0.2, 1]) / plant.pump.shutoffHead).toBeCloseTo(0.8, 4);
    expect(shutoff("worn pump", [0.2, 0.5]) / plant.pump.shutoffHead).toBeCloseTo(0.9, 4);
    expect(shutoff("wrong rotation", [0.7]) / plant.pump.shutoffHead).toBeCloseTo(0.7, 4);
    expect(reads("worn pump", [0.6, 1.5], "flow")).toBe(0);
    expect(reads("worn pump", [0.3, 0.2], "flow")).toBeLessThan(0.9 * sound("flow"));
    // Turned right again it makes all it should.
    expect(reads("wrong rotation", [0.5], "swapped shutoff pressure")).toBe(sound("shutoff pressure"));
    expect(reads("undersized run", [9], "far flow")).toBeLessThan(sound("far flow") / 1.5);
    expect(reads("plugged or part-closed main", [9], "flow")).toBeLessThan(sound("flow"));
    expect(reads("plugged or part-closed main", [1], "flow")).toBe(sound("flow"));
    expect(reads("leak in the drop pipe", [1e-5], "flow")).toBeLessThan(sound("flow"));
    expect(reads("leak in the drop pipe", [1e-5], "pressure fall")).toBeGreaterThan(0);
    expect(reads("failed check valve", [1e-5], "pressure fall")).toBeGreaterThan(0);
    expect(reads("failed check valve", [1e-5], "flow")).toBe(sound("flow"));
  });

  test("none blames what the plant has not", () => {
    const { yard: _, regulatedPressure: __, threePhase: ___, ...bare } = plant;
    const causes = (changes: object) => causesOf({ ...bare, ...changes } as never).map(({ cause }) => cause);
    expect(causes({}).length).toBe(10);
    expect(causes({ threePhase: true })[10]).toBe("wrong rotation");
    expect(causes({ threePhase: false }).length).toBe(10);
    expect(causes({ regulatedPressure: 0 })[10]).toBe("regulating valve stuck");
    expect(causes({ yard: plant.yard })[10]).toBe("undersized run");
    // A pump of hardly any head, or a main of hardly any loss, still has something to try.
    const weak = causesOf({ ...plant, pump: { ...plant.pump, shutoffHead: 0.25 } } as never);
    expect(weak.find(({ cause }) => cause === "low well level")?.free[0]?.high).toBe(1);
    expect(weak.find(({ cause }) => cause === "failed check valve")?.free[0]?.high).toBe(plant.pump.runoutFlow);
    const lossy = causesOf({ ...plant, mainLoss: { flow: 1e-9, headLoss: 1e4 } } as never);
    expect(lossy.find(({ cause }) => cause === "plugged or part-closed main")?.free[0]?.high).toBe(2);
  });
});
