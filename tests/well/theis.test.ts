import { readFileSync } from "node:fs";
import fc from "fast-check";
import type { Duration, Length, Transmissivity, VolumeFlow } from "risingmain/units";
import {
  type Aquifer,
  aquiferFromPlottedLine,
  cooperJacobDrawdown,
  drawdownOfSchedule,
  fitRecovery,
  fitStraightLine,
  fitTheis,
  intermittentSchedule,
  residualDrawdown,
  theisDrawdown,
  transmissivityFromTest,
  wellFunction,
} from "risingmain/well";
import { describe, expect, test } from "vitest";

interface TheisCase {
  readonly flow: VolumeFlow;
  readonly radius: Length;
  readonly time: readonly Duration[];
  readonly drawdown: readonly Length[];
  readonly transmissivity: number;
  readonly storativity: number;
  readonly errors: readonly [number, number];
  readonly lineTransmissivity: number;
  readonly lineStorativity: number;
  readonly lineErrors: readonly [number, number];
}
const fixture = JSON.parse(readFileSync(new URL("../fixtures/well.json", import.meta.url), "utf8")) as {
  readonly wellFunction: readonly (readonly [u: number, W: string])[];
  readonly theis: readonly TheisCase[];
};

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const power = (min: number, max: number) => number(min, max).map((exponent) => 10 ** exponent);
const aquifers: fc.Arbitrary<Aquifer> = fc.record({
  transmissivity: power(-6, -1) as unknown as fc.Arbitrary<Transmissivity>,
  storativity: power(-6, -0.5),
  radius: power(-1.3, 2) as unknown as fc.Arbitrary<Length>,
});
const flows = power(-5, -1) as unknown as fc.Arbitrary<VolumeFlow>;
const times = power(1, 8) as unknown as fc.Arbitrary<Duration>;
const share = (a: number, b: number): number => Math.abs(a / b - 1);

describe("the well function", () => {
  test("is E₁ to 1e-15 of it, from u = 1e-300 to 700", () => {
    for (const [u, W] of fixture.wellFunction) {
      // Beyond u = 500 the last bit of u itself moves W by u ulp.
      expect(share(wellFunction(u), Number(W)), `u = ${u}`).toBeLessThan(1e-15);
    }
    expect(fixture.wellFunction.length).toBeGreaterThan(130);
  });

  test("falls as u grows, across the joint at 0.5 too", () => {
    fc.assert(
      fc.property(power(-12, 2.8), number(1e-6, 1), (u, more) => {
        expect(wellFunction(u * (1 + more))).toBeLessThan(wellFunction(u));
      }),
    );
    const near = [0.5 - 2e-16, 0.5, 0.5 + 2e-16, 0.5 + 1e-12].map(wellFunction);
    for (const [i, W] of near.entries()) if (i > 0) expect(share(W, near[i - 1] as number)).toBeLessThan(2.2e-12);
  });

  test("lies between the bounds ½ e⁻ᵘ ln(1 + 2/u) and e⁻ᵘ ln(1 + 1/u)", () => {
    fc.assert(
      fc.property(power(-10, 2), (u) => {
        const W = wellFunction(u);
        expect(W).toBeGreaterThan(0.5 * Math.exp(-u) * Math.log1p(2 / u) * (1 - 1e-14));
        expect(W).toBeLessThan(Math.exp(-u) * Math.log1p(1 / u) * (1 + 1e-14));
      }),
    );
  });
});

describe("drawdown", () => {
  test("grows with flow and time, and scales: only Q/T and r²S/(T t) count", () => {
    fc.assert(
      fc.property(aquifers, flows, times, number(1.01, 10), (aquifer, flow, time, k) => {
        const at = (changed: object) => theisDrawdown({ ...aquifer, flow, time, ...changed }).drawdown;
        const s = at({});
        expect(at({ time: time * k })).toBeGreaterThanOrEqual(s);
        expect(at({ flow: flow * k })).toBeGreaterThanOrEqual(s);
        expect(at({ radius: aquifer.radius * k })).toBeLessThanOrEqual(s);
        const similar = at({
          flow: flow * k,
          transmissivity: aquifer.transmissivity * k,
          storativity: aquifer.storativity,
          time: time / k,
        });
        if (s > 1e-200) expect(share(similar, s)).toBeLessThan(1e-9);
      }),
    );
  });

  test("follows the straight line once u is small, from above", () => {
    fc.assert(
      fc.property(aquifers, flows, times, (aquifer, flow, time) => {
        const input = { ...aquifer, flow, time };
        const [curve, line] = [theisDrawdown(input), cooperJacobDrawdown(input)];
        expect(line.drawdown).toBeLessThanOrEqual(curve.drawdown * (1 + 1e-12));
        if (line.insideRange) expect(line.drawdown).toBeGreaterThan(curve.drawdown * (1 - 0.0026));
      }),
    );
  });

  test("of a history of one change is Theis's, and a history adds", () => {
    fc.assert(
      fc.property(aquifers, flows, flows, times, number(0.01, 0.99), (aquifer, flow, other, at, when) => {
        const start = 0 as Duration;
        const middle = (at * when) as Duration;
        const alone = drawdownOfSchedule({ aquifer, changes: [{ time: start, flow }], at });
        expect(alone).toBe(theisDrawdown({ ...aquifer, flow, time: at }).drawdown);
        const both = drawdownOfSchedule({
          aquifer,
          changes: [
            { time: start, flow },
            { time: middle, flow: (flow + other) as VolumeFlow },
          ],
          at,
        });
        const later = theisDrawdown({ ...aquifer, flow: other, time: (at - middle) as Duration }).drawdown;
        expect(Math.abs(both - alone - later)).toBeLessThanOrEqual(1e-9 * (both + Number.MIN_VALUE));
      }),
    );
  });

  test("never passes the static level in recovery, and comes back towards it", () => {
    fc.assert(
      fc.property(aquifers, flows, times, times, number(1.01, 100), (aquifer, flow, pumpingTime, sinceStop, k) => {
        const leftAt = (time: number) => residualDrawdown({ aquifer, flow, pumpingTime, sinceStop: time as Duration });
        const drawn = theisDrawdown({ ...aquifer, flow, time: pumpingTime }).drawdown;
        expect(leftAt(0)).toBe(drawn);
        expect(leftAt(sinceStop)).toBeGreaterThanOrEqual(0);
        // Away from the well the level may go on falling for a while; once it rises it goes on rising.
        const u = (aquifer.radius ** 2 * aquifer.storativity) / (4 * aquifer.transmissivity * sinceStop);
        if (u < 0.05) expect(leftAt(sinceStop * k)).toBeLessThanOrEqual(leftAt(sinceStop) + 1e-12 * drawn);
      }),
    );
  });

  test("of daily draws stays below that of the same pump never stopped", () => {
    fc.assert(
      fc.property(aquifers, flows, number(0.05, 0.9), fc.integer({ min: 1, max: 40 }), (aquifer, flow, run, cycles) => {
        const day = 86_400 as Duration;
        const runTime = (run * day) as Duration;
        const changes = intermittentSchedule({ flow, runTime, cycleTime: day, cycles });
        const at = ((cycles - 1) * day + runTime) as Duration;
        const drawn = drawdownOfSchedule({ aquifer, changes, at });
        expect(drawn).toBeLessThanOrEqual(theisDrawdown({ ...aquifer, flow, time: at }).drawdown * (1 + 1e-12));
        const once = theisDrawdown({ ...aquifer, flow, time: runTime }).drawdown;
        expect(drawn).toBeGreaterThanOrEqual(once * (1 - 1e-9));
      }),
    );
  });
});

describe("an aquifer from a test", () => {
  test.each(fixture.theis.map((each, i) => [i, each] as const))(
    "whole curve, case %i: as a general least-squares search",
    (_, each) => {
      const readings = each.time.map((time, i) => ({ time, drawdown: each.drawdown[i] as Length }));
      const fit = fitTheis({ flow: each.flow, radius: each.radius, readings });
      expect(fit.state).toBe("fitted");
      if (fit.state !== "fitted") return;
      expect(share(fit.transmissivity, each.transmissivity)).toBeLessThan(1e-6);
      expect(share(fit.storativity, each.storativity)).toBeLessThan(1e-6);
      expect(share(fit.relativeErrors?.[0] ?? 0, each.errors[0])).toBeLessThan(1e-4);
      expect(share(fit.relativeErrors?.[1] ?? 0, each.errors[1])).toBeLessThan(1e-4);
      const line = fitStraightLine({ flow: each.flow, radius: each.radius, readings });
      expect(line.state).toBe("line");
      if (line.state !== "line") return;
      expect(share(line.transmissivity, each.lineTransmissivity)).toBeLessThan(1e-9);
      expect(share(line.storativity, each.lineStorativity)).toBeLessThan(1e-6);
      expect(share(line.relativeErrors?.[0] ?? 0, each.lineErrors[0])).toBeLessThan(1e-4);
      expect(share(line.relativeErrors?.[1] ?? 0, each.lineErrors[1])).toBeLessThan(1e-4);
    },
  );

  test("comes back from readings without noise, by every way there is", () => {
    fc.assert(
      fc.property(aquifers, flows, power(-1.2, 0.3), (aquifer, flow, firstU) => {
        const first = (aquifer.radius ** 2 * aquifer.storativity) / (4 * aquifer.transmissivity * firstU);
        fc.pre(first > 0.01 && first < 1e7);
        const at = (decades: number) => (first * 10 ** decades) as Duration;
        const s = (time: Duration) => theisDrawdown({ ...aquifer, flow, time }).drawdown;
        fc.pre(s(at(0)) > 1e-5 && s(at(4)) < 1e4);
        const all = [0, 0.3, 0.6, 1, 1.5, 2].map((decades) => ({ time: at(decades), drawdown: s(at(decades)) }));
        const { transmissivity: T, storativity: S, radius } = aquifer;
        const fit = fitTheis({ flow, radius, readings: all });
        expect(fit.state === "fitted" && share(fit.transmissivity, T)).toBeLessThan(1e-6);
        expect(fit.state === "fitted" && share(fit.storativity, S)).toBeLessThan(1e-5);
        const late = [3.5, 3.7, 4].map((decades) => ({ time: at(decades), drawdown: s(at(decades)) }));
        const line = fitStraightLine({ flow, radius, readings: late });
        expect(line.state === "line" && share(line.transmissivity, T)).toBeLessThan(2e-3);
        expect(line.state === "line" && line.insideRange).toBe(true);
        if (line.state === "line") {
          const byHand = aquiferFromPlottedLine({
            flow,
            radius,
            drawdownPerLogCycle: line.drawdownPerLogCycle,
            timeAtZero: ((line.storativity * radius ** 2) / (2.2458379342675396 * line.transmissivity)) as Duration,
          });
          expect(share(byHand.transmissivity, line.transmissivity)).toBeLessThan(1e-12);
          expect(share(byHand.storativity, line.storativity)).toBeLessThan(1e-12);
        }
        if (at(4) < 1 || at(4) > 1e10) return;
        const one = transmissivityFromTest({ flow, radius, storativity: S, time: at(4), drawdown: s(at(4)) });
        expect(one.state === "known" && share(one.transmissivity, T)).toBeLessThan(1e-8);
      }),
      { numRuns: 50 },
    );
  });

  test("comes back from its own recovery", () => {
    fc.assert(
      fc.property(aquifers, flows, times, (aquifer, flow, pumpingTime) => {
        const slow = (aquifer.radius ** 2 * aquifer.storativity) / (4 * aquifer.transmissivity);
        fc.pre(slow / pumpingTime < 1e-5);
        const readings = [0.01, 0.03, 0.1, 0.5].map((part) => {
          const sinceStop = (part * pumpingTime) as Duration;
          return { sinceStop, residual: residualDrawdown({ aquifer, flow, pumpingTime, sinceStop }) };
        });
        fc.pre((readings[3]?.residual ?? 0) > 1e-4 && (readings[0]?.residual ?? 0) < 9e3);
        const fit = fitRecovery({ flow, pumpingTime, readings });
        expect(fit.state === "line" && share(fit.transmissivity, aquifer.transmissivity)).toBeLessThan(2e-3);
        expect(fit.state === "line" && Math.abs(fit.ratioAtZero - 1)).toBeLessThan(2e-3);
      }),
    );
  });

  test("readings that rise, or do not change, show no line and no curve", () => {
    const input = (drawdowns: readonly number[]) => ({
      flow: 0.001 as VolumeFlow,
      radius: 10 as Length,
      readings: drawdowns.map((drawdown, i) => ({ time: (100 * 2 ** i) as Duration, drawdown: drawdown as Length })),
    });
    expect(fitStraightLine(input([1, 1, 1, 1])).state).toBe("no line");
    expect(fitStraightLine(input([2, 1.5, 1, 0.5])).state).toBe("no line");
    expect(fitTheis(input([2, 1.5, 1, 0.5])).state).toBe("no fit");
    expect(fitTheis(input([0, 0, 0, 0])).state).toBe("no fit");
  });
});
