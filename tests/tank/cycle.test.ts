/** Laws of filling and cycling. */
import fc from "fast-check";
import {
  motorStartLimit,
  stockTank,
  tankCycle,
  tankFillTime,
  tankSizeForRunTime,
  tankSizeForStarts,
  worstDemand,
  worstDemandOnCurve,
} from "risingmain/tank";
import {
  type Duration,
  type Frequency,
  type GaugePressure,
  gpm,
  horsepower,
  inPerHour,
  psi,
  psia,
  usGallons,
  type Volume,
  type VolumeFlow,
} from "risingmain/units";
import { expect, test } from "vitest";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const tank = { volume: usGallons(85), precharge: psi(38), cutIn: psi(40), cutOut: psi(60), atmosphere: psia(14.7) };

test("no use cycles a pump oftener than the worst use, which is exactly half a steady flow", () => {
  fc.assert(
    fc.property(between(1e-3, 5), between(1e-5, 0.1), between(0.001, 0.999), (usable, flow, part) => {
      const given = { usable: usable as Volume, pumpFlow: flow as VolumeFlow };
      const worst = worstDemand(given);
      expect(worst.demand).toBe(flow / 2);
      const cycle = tankCycle({ ...given, demand: (part * flow) as VolumeFlow });
      if (cycle.state !== "cycling") throw new Error(cycle.state);
      expect(cycle.cycleTime).toBeGreaterThanOrEqual(worst.cycleTime * (1 - 1e-12));
      expect(Math.abs(cycle.runTime + cycle.offTime - cycle.cycleTime)).toBeLessThan(1e-9 * cycle.cycleTime);
    }),
  );
});

test("on a curve that is level the worst use is half, and the cycle that of the closed form", () => {
  fc.assert(
    fc.property(between(1e-5, 0.01), between(1, 1.4), (flow, polytropicExponent) => {
      const worst = worstDemandOnCurve({ ...tank, polytropicExponent, pumpFlowAt: () => flow as VolumeFlow });
      if (worst.state !== "cycles") throw new Error(worst.state);
      expect(Math.abs(worst.shareOfMeanFlow - 0.5)).toBeLessThan(1e-12);
      expect(Math.abs((worst.demand * worst.cycleTime) / (worst.runTime * flow) - 1)).toBeLessThan(1e-11);
    }),
    { numRuns: 20 },
  );
});

/** Mean of a pump's flow over the water it stores: by Jensen's inequality the worst use is at most half of it. */
const meanFlow = (pumpFlowAt: (p: GaugePressure) => VolumeFlow): number => {
  const steps = 400;
  const low = 1 / (tank.cutIn + tank.atmosphere);
  const high = 1 / (tank.cutOut + tank.atmosphere);
  // The water stored runs evenly with 1/p, so equal steps of it are equal steps of water.
  const flows = Array.from({ length: steps }, (_, i) => {
    const p = 1 / (low + ((i + 0.5) / steps) * (high - low)) - tank.atmosphere;
    return pumpFlowAt(p as GaugePressure);
  });
  return flows.reduce((sum, flow) => sum + flow, 0) / steps;
};

test("on a falling curve the worst use is at most half the mean flow, and its neighbours cycle less", () => {
  fc.assert(
    fc.property(between(8, 40), between(65, 200), (most, shutoff) => {
      const pumpFlowAt = (p: GaugePressure): VolumeFlow => gpm(most * Math.sqrt(Math.max(0, 1 - p / psi(shutoff))));
      const worst = worstDemandOnCurve({ ...tank, pumpFlowAt });
      if (worst.state !== "cycles") throw new Error(worst.state);
      expect(worst.demand).toBeLessThan(0.5 * meanFlow(pumpFlowAt) * (1 + 1e-6));
      for (const side of [0.98, 1.02]) {
        const demand = (side * worst.demand) as VolumeFlow;
        const fill = tankFillTime({ ...tank, pumpFlowAt, demand });
        if (fill.state !== "fills") continue;
        expect(fill.time + (worst.offTime * worst.demand) / demand).toBeGreaterThan(worst.cycleTime);
      }
    }),
    { numRuns: 20 },
  );
});

test("a pump that does not pass the cut-out never stops", () => {
  const pumpFlowAt = (p: GaugePressure): VolumeFlow => Math.max(0, (psi(58) - p) * 1e-8) as VolumeFlow;
  expect(tankFillTime({ ...tank, pumpFlowAt, demand: gpm(0) }).state).toBe("never stops");
  expect(worstDemandOnCurve({ ...tank, pumpFlowAt }).state).toBe("no cycle");
});

test("a tank sized for a run time or for starts meets them, and a larger one does better", () => {
  fc.assert(
    fc.property(between(1e-4, 0.01), between(30, 300), between(2, 20), (flow, run, hourly) => {
      const job = { ...tank, pumpFlow: flow as VolumeFlow };
      const byRun = tankSizeForRunTime({ ...job, runTime: run as Duration });
      const byStarts = tankSizeForStarts({ ...job, starts: (hourly / 3600) as Frequency });
      if (byRun.state !== "sized" || byStarts.state !== "sized") throw new Error("not sized");
      expect(Math.abs(byRun.usable / flow / run - 1)).toBeLessThan(1e-12);
      const starts = (usable: number): number =>
        inPerHour(worstDemand({ usable: usable as Volume, pumpFlow: job.pumpFlow }).starts);
      expect(Math.abs(starts(byStarts.usable) / hourly - 1)).toBeLessThan(1e-12);
      expect(starts(byStarts.usable * 1.1)).toBeLessThan(hourly);
    }),
  );
  const none = tankSizeForRunTime({ ...tank, precharge: psi(60), pumpFlow: gpm(10), runTime: 60 as Duration });
  expect(none.state).toBe("no water enters");
});

test("cycling, standing still and running on, on both sides of their limits", () => {
  const state = (demand: number) => tankCycle({ usable: usGallons(10), pumpFlow: gpm(10), demand: gpm(demand) }).state;
  expect([0, 0.01, 9.99, 10, 11].map(state)).toEqual(["stays off", "cycling", "cycling", "runs on", "runs on"]);
});

test("a small motor may start twice as often, on both sides of three quarters of a horsepower", () => {
  expect(
    [0.5, 0.75, 0.76].map((hp) => Math.round(inPerHour(motorStartLimit(horsepower(hp)).perHour) * 10) / 10),
  ).toEqual([15, 15, 7.5]);
});

test("the chart has no row past its last pump and no column between its settings", () => {
  const state = (flow: number, cutIn: number) =>
    stockTank({ pumpFlow: gpm(flow), cutIn: psi(cutIn), cutOut: psi(cutIn + 20) }).state;
  expect([state(32, 40), state(32.1, 40), state(10, 45)]).toEqual(["listed", "not listed", "not listed"]);
});
