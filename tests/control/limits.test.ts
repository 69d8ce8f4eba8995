/** Both sides of every limit in the docstrings, and what lies between worked by hand. */
import {
  checkLevelCutOff,
  checkPressureSwitch,
  checkRegulatingValve,
  checkReliefValve,
  checkSpeedSetPoint,
  pressureHeld,
  regulatedFlow,
  weakestPart,
} from "risingmain/control";
import type { GaugePressure, VolumeFlow } from "risingmain/units";
import { describe, expect, test } from "vitest";
import { refused } from "../refused.ts";

/** Calls whose fields a test replaces with plain numbers. */
type Call = (more: object) => unknown;

const onSwitch = { cutIn: 300_000, cutOut: 400_000 };
const valve = { setPressure: 350_000, minimumFlow: 0.0001 };
/** A pump that gives 0.004 m³/s into no pressure and shuts off at 800 kPa, in a straight line. */
const flowAt = (pressure: GaugePressure) => (0.004 * Math.max(0, 1 - pressure / 800_000)) as VolumeFlow;
const pressureAt = (flow: VolumeFlow) => (800_000 * (1 - flow / 0.004)) as GaugePressure;

const switched: Call = (more) => checkPressureSwitch({ ...onSwitch, ...more } as never);
const held = (more: object) =>
  pressureHeld({ valve, ...onSwitch, demand: 0.001, openFlowAt: flowAt, ...more } as never);
const heldBy: Call = (more) => held({ valve: { ...valve, ...more } });
const checked = (more: object) =>
  checkRegulatingValve({ valve: { ...valve, ...more }, ...onSwitch, pumpPressureAt: pressureAt } as never);
const relief = (more: object) =>
  checkReliefValve({
    setPressure: 500_000,
    cutOut: 400_000,
    pumpFlowAt: flowAt,
    parts: [{ name: "tank", rating: 700_000 }],
    ...more,
  } as never);
const driven = (more: object) =>
  checkSpeedSetPoint({
    startPressure: 300_000,
    setPressure: 350_000,
    stopPressure: 400_000,
    minimumFlow: 0.0001,
    peakDemand: 0.001,
    fullSpeedPressureAt: pressureAt,
    ...more,
  } as never);
const cutOff = (more: object) =>
  checkLevelCutOff({
    stopLevel: 50,
    restartLevel: 40,
    staticLevel: 30,
    pumpIntake: 64,
    leastSubmergence: 4,
    ...more,
  } as never);

test.each<[field: string, call: Call, accepted: readonly object[], refused: readonly object[]]>([
  ["shutoffPressure", switched, [{ shutoffPressure: 0 }, { shutoffPressure: 1e8 }], [{ shutoffPressure: 1.1e8 }]],
  ["weakestRating", switched, [{ weakestRating: 0 }, { weakestRating: 1e8 }], [{ weakestRating: -1 }]],
  ["mostStarts", switched, [{ mostStarts: 1e-9 }, { mostStarts: 1 }], [{ mostStarts: 0 }, { mostStarts: 1.1 }]],
  ["cutOut", switched, [{ cutOut: 300_001 }], [{ cutOut: 300_000 }, { cutOut: 299_999 }]],
  ["valve.droop", heldBy, [{ droop: 0 }], [{ droop: -1 }, { droop: 1.1e8 }]],
  [
    "valve.droopFlow",
    heldBy,
    [
      { droop: 1e4, droopFlow: 100 },
      { droop: 1e4, droopFlow: 0.00011 },
      { droop: 0, droopFlow: 0 },
    ],
    [
      { droop: 1e4 },
      { droop: 1e4, droopFlow: 0.0001 },
      { droop: 1e4, droopFlow: 100.1 },
      { droop: 1e4, droopFlow: "1" },
    ],
  ],
  ["valve.openLoss", heldBy, [{ openLoss: 0 }, { openLoss: 0, openLossFlow: 0 }], [{ openLoss: -1 }]],
  [
    "valve.openLossFlow",
    heldBy,
    [{ openLoss: 1e4, openLossFlow: 1e-9 }],
    [{ openLoss: 1e4 }, { openLoss: 1e4, openLossFlow: 1e-10 }],
  ],
  [
    "parts[0].name",
    relief,
    [{ parts: [{ name: "x".repeat(200), rating: 1 }] }],
    [{ parts: [{ name: "x".repeat(201), rating: 1 }] }],
  ],
  ["weakestRating", driven, [{ weakestRating: 0 }, { weakestRating: 1e8 }], [{ weakestRating: -1 }]],
  ["stopLevel", cutOff, [{ stopLevel: 1e4 }], [{ stopLevel: 1.1e4 }]],
  ["restartLevel", cutOff, [{ restartLevel: 0 }, { restartLevel: 49.9 }], [{ restartLevel: 50 }, { restartLevel: 51 }]],
])("%s is accepted up to its limits and refused past them", (field, call, within, beyond) => {
  for (const more of within) expect(refused(() => call(more))).toBeUndefined();
  for (const more of beyond) expect(refused(() => call(more))).toBe(field);
});

describe("a pressure switch", () => {
  const tank = { usable: 0.06, pumpFlow: 0.001 };

  test("runs W / Q at the shortest and starts Q / 4W at the most; met to the bit, neither limit is passed", () => {
    const check = checkPressureSwitch({ ...onSwitch, ...tank, mostStarts: 0.001 / (4 * 0.06) } as never);
    expect(check.shortestRun).toBe(60);
    expect(check.mostStarts).toBeCloseTo(0.001 / (4 * 0.06), 15);
    expect(check.conditions).toEqual([]);
  });

  test("is not held against a tank of which only one half is known, nor against starts without a limit", () => {
    const known = (more: object) => checkPressureSwitch({ ...onSwitch, ...more } as never).shortestRun;
    expect(known({ usable: 1e-6 })).toBeUndefined();
    expect(known({ pumpFlow: 1 })).toBeUndefined();
  });

  test("cites the minute's run only where the caller named none", () => {
    const small = { ...onSwitch, usable: 0.03, pumpFlow: 0.001 };
    const basis = (more: object) => checkPressureSwitch({ ...small, ...more } as never).conditions[0]?.basis;
    expect(basis({})).toBe("the-driller-when-the-well");
    expect(basis({ leastRunTime: 60 })).toBe("common practice");
  });
});

describe("the flow through a regulating valve", () => {
  const through = (outletPressure: number, more: object = {}, demand = 0, openFlow = 0.002) =>
    regulatedFlow({ valve: { ...valve, ...more }, outletPressure, openFlow, demand } as never);

  test("without droop: wide open, then what is used, then the minimum", () => {
    expect(through(349_999)).toEqual({ flow: 0.002, mode: "open" });
    expect(through(350_000, {}, 0.001)).toEqual({ flow: 0.001, mode: "regulating" });
    expect(through(350_000, {}, 0.003)).toEqual({ flow: 0.002, mode: "open" });
    expect(through(350_000, {}, 0.00005)).toEqual({ flow: 0.0001, mode: "minimum flow" });
    expect(through(350_001, {}, 0.001)).toEqual({ flow: 0.0001, mode: "minimum flow" });
  });

  test("with droop: half the way down the pressure, half the way up the flow", () => {
    const droop = { droop: 20_000, droopFlow: 0.0021 };
    const half = through(340_000, droop);
    expect(half.flow).toBeCloseTo(0.0001 + (0.0021 - 0.0001) / 2, 15);
    expect(half.mode).toBe("regulating");
    expect(through(350_000, droop)).toEqual({ flow: 0.0001, mode: "minimum flow" });
    expect(through(350_001, droop)).toEqual({ flow: 0.0001, mode: "minimum flow" });
    expect(through(330_000, droop)).toEqual({ flow: 0.002, mode: "open" });
  });

  test("a pump that gives just what the valve would pass leaves it open", () => {
    expect(through(360_000, {}, 0, 0.0001).mode).toBe("open");
  });
});

describe("the pressure held", () => {
  test("at a use the pump meets below the set pressure, the valve stands open", () => {
    // 0.004 (1 − p / 800 kPa) = 0.00235 at p = 330 kPa.
    const below = held({ demand: 0.00235 });
    expect(below).toMatchObject({ state: "holds", mode: "open" });
    expect((below as { pressure: number }).pressure).toBeCloseTo(330_000, 6);
  });

  test("with droop, the use is met as far down as it is up; past that the valve stands open", () => {
    const drooping = { ...valve, droop: 20_000, droopFlow: 0.0021 };
    // 0.0011 is half way from 0.0001 to 0.0021.
    const half = held({ demand: 0.0011, valve: drooping });
    expect(half).toMatchObject({ state: "holds", mode: "regulating" });
    expect((half as { pressure: number }).pressure).toBeCloseTo(340_000, 6);
    expect(held({ demand: 0.0024, valve: drooping })).toMatchObject({ state: "holds", mode: "open" });
    expect(held({ demand: 0.0001, valve: drooping })).toEqual({
      state: "holds",
      pressure: 350_000,
      mode: "regulating",
    });
  });

  test("at the use the pump gives at the set pressure, holds there, open; a little under it, throttled", () => {
    const demand = flowAt(350_000 as GaugePressure);
    expect(held({ demand })).toEqual({ state: "holds", pressure: 350_000, mode: "open" });
    expect(held({ demand: demand * 0.999 })).toEqual({ state: "holds", pressure: 350_000, mode: "regulating" });
  });

  test("at the use the pump gives at the cut-in, just holds there", () => {
    expect(held({ demand: 0.0025 })).toEqual({ state: "holds", pressure: 300_000, mode: "open" });
    expect(held({ demand: 0.0026 })).toMatchObject({ state: "falls below cut-in" });
  });

  test("is never under the cut-in: a valve set lower holds nothing but its minimum flow", () => {
    const low = { ...valve, setPressure: 200_000 };
    expect(held({ valve: low, demand: 0.0001 })).toEqual({ state: "holds", pressure: 300_000, mode: "regulating" });
    expect(held({ valve: low, demand: 0.00011 })).toMatchObject({ state: "falls below cut-in" });
  });

  test("is never over the cut-out: a valve set higher stands open", () => {
    const high = { ...valve, setPressure: 500_000 };
    // 0.004 (1 − 400 / 800) = 0.002 at the cut-out.
    expect(held({ valve: high, demand: 0.0019 })).toMatchObject({ state: "switch opens" });
    expect(held({ valve: high, demand: 0.002 })).toEqual({ state: "holds", pressure: 400_000, mode: "open" });
    expect(held({ valve: high, demand: 0.0021 })).toMatchObject({ state: "holds", mode: "open" });
  });
});

describe("a regulating valve's check", () => {
  test("takes the loss of the open valve off, as the square of the flow", () => {
    // At 0.0001 m³/s the pump makes 780 kPa; a loss of 1 kPa at half that flow is 4 kPa at it.
    const { throttled } = checked({ openLoss: 1000, openLossFlow: 0.00005 });
    expect(throttled).toBeCloseTo(780_000 - 1000 * 2 ** 2 - 400_000, 6);
  });

  test.each([{}, { openLoss: 0 }, { openLossFlow: 0.001 }, { openLoss: 0, openLossFlow: 0 }])(
    "takes no loss off where there is none: %j",
    (more) => {
      expect(checked(more).throttled).toBeCloseTo(780_000 - 400_000, 6);
    },
  );

  test("holds the inlet's limit against the most the pump makes, which is at shutoff, where one is given", () => {
    expect(checked({ maximumInlet: 790_000 }).conditions.map(({ code, value }) => [code, value])).toEqual([
      ["inlet pressure above the valve's limit", 800_000],
    ]);
    expect(checked({}).conditions).toEqual([]);
  });
});

describe("a relief valve", () => {
  test("guards the first of the weakest parts", () => {
    const parts = [100, 90, 90, 95].map((rating, i) => ({ name: `part ${i}`, rating: rating as GaugePressure }));
    expect(weakestPart(parts).name).toBe("part 1");
  });

  test("too small by a factor, against a pump that never falls off, relieves at the square of it", () => {
    let asked = 0;
    const constant = (pressure: GaugePressure) => {
      asked = Math.max(asked, pressure);
      return 0.001 as VolumeFlow;
    };
    const at = (ratedCapacity: number) => relief({ ratedCapacity, pumpFlowAt: constant }).relievingPressure as number;
    expect(at(0.001)).toBe(500_000);
    expect(at(0.0005) / 500_000).toBeCloseTo(2 ** 2, 12);
    expect(at(0.0001) / 500_000).toBeCloseTo(10 ** 2, 12);
    // 500 kPa × 1000² is past any pump: the search stops soon after 1 GPa.
    expect(at(0.000001)).toBeGreaterThanOrEqual(1e9);
    expect(asked).toBeLessThan(2e9);
  });

  test.each([0, 1e-300])("that passes %d m³/s leaves the pump at its shutoff", (ratedCapacity) => {
    expect(relief({ ratedCapacity }).relievingPressure).toBeCloseTo(800_000, 6);
  });

  test("the search ends within 60 calls of the pump, from the lowest set pressure to the highest", () => {
    for (const setPressure of [0, 1, 1e5, 1e8]) {
      let calls = 0;
      const pumpFlowAt = (pressure: GaugePressure) => {
        calls++;
        return (0.004 * Math.max(0, 1 - pressure / (2 * setPressure + 1))) as VolumeFlow;
      };
      relief({ setPressure, ratedCapacity: 0.0001, pumpFlowAt });
      expect(calls).toBeLessThanOrEqual(60);
    }
  });
});

describe("a drive", () => {
  test("met to the bit, the peak is not short; short of it, the pressure that is reached is told", () => {
    // 800 kPa × (1 − 0.5) = 400 kPa at 0.002 m³/s.
    const at = (setPressure: number) => driven({ peakDemand: 0.002, setPressure, stopPressure: 700_000 });
    expect(at(400_000).conditions).toEqual([]);
    expect(at(410_000).reserveAtPeak).toBe(-10_000);
    expect(at(410_000).conditions.map(({ code, value, limit }) => [code, value, limit])).toEqual([
      ["full speed falls short of the peak", 400_000, 410_000],
    ]);
  });

  test("without a rating is held against none", () => {
    expect(driven({}).conditions).toEqual([]);
  });
});
