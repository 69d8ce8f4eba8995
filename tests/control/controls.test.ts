/** What the controls do, on both sides of each limit. */
import fc from "fast-check";
import {
  checkLevelCutOff,
  checkPressureSwitch,
  checkRegulatingValve,
  checkReliefValve,
  checkSpeedSetPoint,
  pressureHeld,
  regulatedFlow,
} from "risingmain/control";
import {
  feet,
  type GaugePressure,
  gpm,
  inGpm,
  inPsi,
  minutes,
  type PressureDifference,
  perHour,
  psi,
  psiDifference,
  usGallons,
  type VolumeFlow,
} from "risingmain/units";
import { expect, test } from "vitest";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const codes = (check: { readonly conditions: readonly { readonly code: string }[] }) =>
  check.conditions.map(({ code }) => code);
/** A pump that gives 20 gpm into no pressure and shuts off at 110 psi. */
const pump = (p: GaugePressure): VolumeFlow => gpm(20 * Math.sqrt(Math.max(0, 1 - p / psi(110))));
const onSwitch = { cutIn: psi(40), cutOut: psi(60) };

test("common practice: 80/100 psi, held near 88 psi while a hose runs, and off at 100 psi once it is shut", () => {
  const job = { valve: { setPressure: psi(88), minimumFlow: gpm(1) }, cutIn: psi(80), cutOut: psi(100) };
  const strong = (p: GaugePressure): VolumeFlow => gpm(26 * Math.sqrt(Math.max(0, 1 - p / psi(160))));
  const hose = pressureHeld({ ...job, demand: gpm(6), openFlowAt: strong });
  expect(hose).toMatchObject({ state: "holds", pressure: psi(88), mode: "regulating" });
  const shut = pressureHeld({ ...job, demand: gpm(0), openFlowAt: strong });
  expect(shut).toEqual({ state: "switch opens", fillFlow: gpm(1) });
});

test("the minimum flow decides whether the switch opens", () => {
  const job = { valve: { setPressure: psi(50), minimumFlow: gpm(2) }, ...onSwitch, openFlowAt: pump };
  const state = (use: number) => pressureHeld({ ...job, demand: gpm(use) }).state;
  expect([1.99, 2, 2.01, 12, 19].map(state)).toEqual(["switch opens", "holds", "holds", "holds", "falls below cut-in"]);
  const weak = (p: GaugePressure): VolumeFlow => gpm(20 * Math.sqrt(Math.max(0, 1 - p / psi(58))));
  expect(pressureHeld({ ...job, openFlowAt: weak, demand: gpm(1) }).state).toBe("never reaches cut-out");
});

test("the pressure held never rises with use, with droop or without", () => {
  fc.assert(
    fc.property(between(1, 13), between(0, 1), between(0, 8), (use, part, droop) => {
      const valve = {
        setPressure: psi(52),
        minimumFlow: gpm(1),
        droop: psiDifference(droop),
        droopFlow: gpm(10),
      };
      const held = (demand: number): number => {
        const result = pressureHeld({ valve, ...onSwitch, demand: gpm(demand), openFlowAt: pump });
        return result.state === "holds" ? result.pressure : psi(40);
      };
      expect(held(use)).toBeLessThanOrEqual(held(1 + part * (use - 1)) + 1e-6);
    }),
  );
});

test("the flow through a valve never rises with the pressure after it, and never passes what the pump can give", () => {
  fc.assert(
    fc.property(between(0, 100), between(0, 100), between(0, 8), between(0, 15), (p, q, droop, demand) => {
      const valve = { setPressure: psi(52), minimumFlow: gpm(1), droop: psiDifference(droop), droopFlow: gpm(10) };
      const flow = (at: number): number =>
        regulatedFlow({ valve, outletPressure: psi(at), openFlow: pump(psi(at)), demand: gpm(demand) }).flow;
      expect(flow(p)).toBeLessThanOrEqual(pump(psi(p)));
      const [low, high] = [Math.min(p, q), Math.max(p, q)];
      expect(flow(low)).toBeGreaterThanOrEqual(flow(high) - 1e-15);
    }),
  );
});

test("a regulating valve's conditions, each on both sides", () => {
  const pressureAt = (q: VolumeFlow): GaugePressure => psi(110 - 0.6 * inGpm(q) ** 2);
  const check = (set: number, more: object = {}, at = pressureAt) =>
    codes(
      checkRegulatingValve({
        valve: { setPressure: psi(set), minimumFlow: gpm(1), ...more },
        ...onSwitch,
        pumpPressureAt: at,
      }),
    );
  expect(check(40.1)).toEqual([]);
  expect(check(40)).toEqual(["set at or below the cut-in"]);
  expect(check(59.9)).toEqual([]);
  expect(check(60)).toEqual(["set at or above the cut-out"]);
  expect(check(50, { maximumInlet: psi(110) })).toEqual([]);
  expect(check(50, { maximumInlet: psi(109) })).toEqual(["inlet pressure above the valve's limit"]);
  expect(check(50, {}, () => psi(60))).toEqual(["pump cannot reach cut-out"]);
  expect(check(50, { openLoss: psiDifference(2), openLossFlow: gpm(1) }, () => psi(61))).toEqual([
    "pump cannot reach cut-out",
  ]);
  expect(check(50, {}, () => psi(50))).toEqual(["pump does not reach the set pressure"]);
});

test("a pressure switch's conditions, each on both sides", () => {
  const check = (more: object) => codes(checkPressureSwitch({ ...onSwitch, ...more }));
  expect(check({ shutoffPressure: psi(60.1) })).toEqual([]);
  expect(check({ shutoffPressure: psi(60) })).toEqual(["pump cannot reach cut-out"]);
  expect(check({ weakestRating: psi(60) })).toEqual([]);
  expect(check({ weakestRating: psi(59) })).toEqual(["cut-out above a rating"]);
  const tank = { usable: usGallons(10), pumpFlow: gpm(10) };
  expect(check({ ...tank, leastRunTime: minutes(0.99) })).toEqual([]);
  expect(check({ ...tank, leastRunTime: minutes(1.01) })).toEqual(["differential too small for the tank"]);
  expect(check({ ...tank, leastRunTime: minutes(0), mostStarts: perHour(15.01) })).toEqual([]);
  expect(check({ ...tank, leastRunTime: minutes(0), mostStarts: perHour(14.99) })).toEqual(["starts too often"]);
});

test("a relief valve's conditions, each on both sides", () => {
  const check = (more: object) =>
    codes(
      checkReliefValve({
        setPressure: psi(75),
        ratedCapacity: gpm(20),
        cutOut: psi(60),
        pumpFlowAt: pump,
        parts: [
          { name: "tank", rating: psi(100) },
          { name: "filter", rating: psi(90) },
        ],
        ...more,
      }),
    );
  expect(check({})).toEqual([]);
  expect(check({ setPressure: psi(90) })).toEqual([]);
  expect(check({ setPressure: psi(91) })).toEqual(["set above a rating"]);
  expect(check({ setPressure: psi(60) })).toEqual(["set at or below the cut-out"]);
  const needed = inGpm(pump(psi(75)));
  expect(check({ ratedCapacity: gpm(needed) })).toEqual([]);
  expect(check({ ratedCapacity: gpm(needed * 0.99) })).toEqual(["capacity too small"]);
  expect(check({ ratedCapacity: undefined })).toEqual(["capacity not known"]);
  expect(check({ ratedCapacity: undefined, parts: [{ name: "tank", rating: psi(111) }] })).toEqual([]);
});

test("a smaller relief valve lets the pressure go higher, and never past shutoff", () => {
  fc.assert(
    fc.property(between(0.1, 12), between(0, 1), (capacity, part) => {
      const at = (rated: number): number => {
        const relief = checkReliefValve({
          setPressure: psi(75),
          ratedCapacity: gpm(rated),
          cutOut: psi(60),
          pumpFlowAt: pump,
          parts: [{ name: "tank", rating: psi(100) }],
        });
        return inPsi(relief.relievingPressure ?? psi(0));
      };
      expect(at(capacity)).toBeLessThanOrEqual(at(capacity * (0.5 + part / 2)) + 1e-9);
      expect(at(capacity)).toBeLessThanOrEqual(110 + 1e-9);
    }),
  );
});

test("a drive's conditions, each on both sides", () => {
  const check = (more: object) =>
    codes(
      checkSpeedSetPoint({
        startPressure: psi(45),
        setPressure: psi(50),
        stopPressure: psi(56),
        minimumFlow: gpm(2),
        peakDemand: gpm(10),
        fullSpeedPressureAt: (q) => psi(100 - 0.4 * inGpm(q) ** 2),
        ...more,
      }),
    );
  expect(check({})).toEqual([]);
  expect(check({ setPressure: psi(45) })).toEqual(["set not above the start"]);
  expect(check({ stopPressure: psi(50) })).toEqual(["stop not above the set"]);
  expect(check({ stopPressure: psi(98.4) })).toEqual(["full speed does not reach the stop pressure"]);
  expect(check({ stopPressure: psi(98.3) })).toEqual([]);
  expect(check({ peakDemand: gpm(11.1) })).toEqual([]);
  expect(check({ peakDemand: gpm(11.2) })).toEqual(["full speed falls short of the peak"]);
  expect(check({ weakestRating: psi(100) })).toEqual([]);
  expect(check({ weakestRating: psi(99) })).toEqual(["full speed can pass a rating"]);
});

test("a level cut-off's conditions, each on both sides", () => {
  const check = (more: object) =>
    codes(
      checkLevelCutOff({
        stopLevel: feet(185),
        restartLevel: feet(120),
        staticLevel: feet(80),
        pumpIntake: feet(200),
        leastSubmergence: feet(15),
        ...more,
      }),
    );
  expect(check({})).toEqual([]);
  expect(check({ stopLevel: feet(186) })).toEqual(["submergence too small at the stop"]);
  expect(check({ stopLevel: feet(200) })).toEqual(["intake uncovered before the stop"]);
  expect(check({ restartLevel: feet(81) })).toEqual([]);
  expect(check({ restartLevel: feet(80) })).toEqual(["restart above the static level"]);
  expect(check({ staticLevel: feet(185) })).toEqual(["stops at rest"]);
});

test("a droop of nothing is no droop", () => {
  const valve = { setPressure: psi(50), minimumFlow: gpm(1) };
  const job = { ...onSwitch, demand: gpm(5), openFlowAt: pump };
  expect(pressureHeld({ ...job, valve: { ...valve, droop: 0 as PressureDifference } })).toEqual(
    pressureHeld({ ...job, valve }),
  );
});
