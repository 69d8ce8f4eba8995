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

  test("says where its equation holds: Theis's anywhere, the straight line up to u = 0.01", () => {
    // u = r² S / (4 T t) = 1 · 0.04 / (4 · 1 · 1) = 0.01, exactly so in doubles.
    const at = (storativity: number) => ({
      flow: 1e-3 as VolumeFlow,
      transmissivity: 1 as Transmissivity,
      storativity,
      radius: 1 as Length,
      time: 1 as Duration,
    });
    expect(theisDrawdown(at(1)).insideRange).toBe(true);
    expect([0.04, 0.041].map((S) => cooperJacobDrawdown(at(S)).insideRange)).toEqual([true, false]);
    // Where the line is still below the static level there is no drawdown: u = 0.6 is beyond e^−γ = 0.56.
    expect(cooperJacobDrawdown({ ...at(1), time: (1 / 2.4) as Duration }).drawdown).toBe(0);
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

test("a pump that runs and rests in turn starts with each cycle and stops after its run", () => {
  const turns = { flow: 0.002, runTime: 10, cycleTime: 30, cycles: 2 };
  expect(intermittentSchedule(turns as never)).toEqual([
    { time: 0, flow: 0.002 },
    { time: 10, flow: 0 },
    { time: 30, flow: 0.002 },
    { time: 40, flow: 0 },
  ]);
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

  test("whole curve: no aquifer near or far leaves smaller squares", () => {
    const factors = [-6, -3, -1, -0.3, -1e-4, 0, 1e-4, 0.3, 1, 3, 6].map((power) => 10 ** power);
    for (const { flow, radius, time, drawdown } of fixture.theis) {
      const fit = fitTheis({
        flow,
        radius,
        readings: time.map((t, i) => ({ time: t, drawdown: drawdown[i] as Length })),
      });
      if (fit.state !== "fitted") throw new Error("no fit");
      const left = (ofT: number, ofS: number) =>
        time.map((t, i) => {
          const T = fit.transmissivity * ofT;
          const u = (radius ** 2 * fit.storativity * ofS) / (4 * T * t);
          return (drawdown[i] as number) - (flow / (4 * Math.PI * T)) * wellFunction(u);
        });
      const squares = (residuals: readonly number[]) => residuals.reduce((sum, r) => sum + r * r, 0);
      const least = squares(fit.residuals);
      for (const [i, r] of left(1, 1).entries()) expect(Math.abs((fit.residuals[i] as number) - r)).toBeLessThan(1e-11);
      expect(share(fit.deviation as number, Math.sqrt(least / (time.length - 2)))).toBeLessThan(1e-12);
      for (const ofT of factors)
        for (const ofS of factors) expect(squares(left(ofT, ofS))).toBeGreaterThanOrEqual(least * (1 - 1e-12));
    }
  });

  test("whole curve: found where r²S/(4T) is a picosecond to a terasecond, and not beyond", () => {
    const fitOf = (r2S4T: number, times: readonly number[], scale = 1) => {
      const readings = times.map((time) => ({
        time: time as Duration,
        drawdown: (scale * wellFunction(r2S4T / time)) as Length,
      }));
      return fitTheis({ flow: (4 * Math.PI) as VolumeFlow, radius: 2 as Length, readings });
    };
    // Q = 4π and s = W make T = 1, and r = 2 makes S = r²S/(4T).
    for (const [inside, beyond, times] of [
      [1.2e-12, 0.8e-12, [1e-3, 1e-2, 1e-1]],
      [0.8e12, 1.2e12, [0.25e12, 0.5e12, 1e12]],
    ] as const) {
      const fit = fitOf(inside, times);
      expect(fit.state === "fitted" && share(fit.transmissivity, 1)).toBeLessThan(1e-9);
      expect(fit.state === "fitted" && share(fit.storativity, inside)).toBeLessThan(1e-7);
      expect(fitOf(beyond, times)).toEqual({ state: "no fit" });
    }
    // So small that Q over them is no number any more: the squares are 0 at the first look, which is near this curve.
    expect(fitOf(1.2e-12, [1e-3, 1, 1e3, 1e6, 1e12], 1e-308)).toEqual({ state: "no fit" });
  });

  test("two readings left give an aquifer without errors", () => {
    const readings = [0.1, 1.2, 1.9].map((drawdown, i) => ({ time: 10 ** (i + 2), drawdown }));
    const input = { flow: 0.001, radius: 10, readings, from: 1000 } as never;
    expect(fitTheis(input)).toMatchObject({ state: "fitted", relativeErrors: null, deviation: null });
    expect(fitStraightLine(input)).toMatchObject({ state: "line", relativeErrors: null });
  });

  test("by the straight line: u is that of the first reading, and small only without the early ones", () => {
    const aquifer = { transmissivity: 1e-3 as Transmissivity, storativity: 1e-3, radius: 20 as Length };
    const flow = 0.002 as VolumeFlow;
    const readings = [6400, 100, 25_600, 400, 1600].map((seconds) => {
      const time = seconds as Duration;
      return { time, drawdown: theisDrawdown({ ...aquifer, flow, time }).drawdown };
    });
    for (const [from, first, insideRange] of [
      [0, 100, false],
      [6400, 6400, true],
    ] as const) {
      const line = fitStraightLine({ flow, radius: aquifer.radius, readings, from: from as Duration });
      if (line.state !== "line") throw new Error("no line");
      expect(share(line.greatestU, (20 * 20 * line.storativity) / (4 * line.transmissivity * first))).toBeLessThan(
        1e-12,
      );
      expect(line.insideRange).toBe(insideRange);
    }
  });

  test("by the line of a recovery, as worked by hand", () => {
    const flow = (4 * Math.PI) as VolumeFlow;
    // t/t′ = 1 + 999/t′ = e², e³, e⁴ …; the line s′ = 0.1 (ln t/t′ − 1) meets the static level at t/t′ = e.
    const fitOf = (residuals: readonly number[]) =>
      fitRecovery({
        flow,
        pumpingTime: 999 as Duration,
        readings: residuals.map((residual, i) => ({
          sinceStop: (999 / Math.expm1(i + 2)) as Duration,
          residual: residual as Length,
        })),
      });
    const two = fitOf([0.1, 0.2]);
    expect(two).toMatchObject({ state: "line", relativeError: null });
    if (two.state !== "line") return;
    // Q/(4π · 0.1) = 10.
    expect(share(two.transmissivity, 10)).toBeLessThan(1e-12);
    expect(share(two.ratioAtZero, Math.E)).toBeLessThan(1e-12);
    // About the middle, x = −1, 0, 1 and s′ = 0.1, 0.23, 0.3: slope 0.2/2 = 0.1, mean 0.21, residuals −0.01, 0.02, −0.01,
    // σ² = 6e-4/(3 − 2), standard error of the slope σ/√2.
    const three = fitOf([0.1, 0.23, 0.3]);
    if (three.state !== "line") throw new Error("no line");
    expect(share(three.relativeError as number, Math.sqrt(6e-4 / 2) / 0.1)).toBeLessThan(1e-12);
    for (const [i, r] of [-0.01, 0.02, -0.01].entries())
      expect(Math.abs((three.residuals[i] as number) - r)).toBeLessThan(1e-14);
  });

  test("shows no line where the level hardly moves, or where the line meets the static level beyond all times", () => {
    const rising = (height: number, slope: number) => [1, 2, 3].map((x) => height + slope * x);
    const line = (drawdowns: readonly number[]) =>
      fitStraightLine({
        flow: 0.001 as VolumeFlow,
        radius: 10 as Length,
        readings: drawdowns.map((drawdown, i) => ({ time: Math.exp(i + 1) as Duration, drawdown: drawdown as Length })),
      }).state;
    const recovery = (residuals: readonly number[]) =>
      fitRecovery({
        flow: 0.001 as VolumeFlow,
        pumpingTime: 999 as Duration,
        readings: residuals.map((residual, i) => ({
          sinceStop: (999 / Math.expm1(i + 1)) as Duration,
          residual: residual as Length,
        })),
      }).state;
    // Either side of 1e-6 m for each factor e; then zero at e^−1e3 and at e^−100.
    for (const state of [line, recovery])
      expect([rising(0, 0.9e-6), rising(0, 1.1e-6), rising(1, 1e-3), rising(1, 1e-2)].map(state)).toEqual([
        "no line",
        "line",
        "no line",
        "line",
      ]);
    expect(recovery([3, 2, 1])).toBe("no line");
  });

  test("from one reading: known up to the greatest drawdown any aquifer gives, at u = 0.4348", () => {
    fc.assert(
      fc.property(aquifers, flows, number(1e-3, 1e-2), (aquifer, flow, part) => {
        const { transmissivity: T, storativity, radius } = aquifer;
        const time = ((radius ** 2 * storativity) / (4 * 0.4348 * T)) as Duration;
        const greatest = (flow * wellFunction(0.4348)) / (4 * Math.PI * T);
        fc.pre(T < 1e-2 && time > 1 && time < 1e10 && greatest > 1e-5 && greatest < 9e3);
        const input = { flow, time, radius, storativity };
        expect(transmissivityFromTest({ ...input, drawdown: (greatest * (1 + part)) as Length }).state).toBe("none");
        const drawdown = (greatest * (1 - part)) as Length;
        const found = transmissivityFromTest({ ...input, drawdown });
        if (found.state !== "known") throw new Error("none");
        expect(found.transmissivity).toBeGreaterThan(T);
        const back = theisDrawdown({ ...input, transmissivity: found.transmissivity }).drawdown;
        expect(share(back, drawdown)).toBeLessThan(1e-9);
      }),
    );
  });

  test("from one reading: none where it would lie above 100 m²/s", () => {
    const input = { flow: 100, drawdown: 1e-6, time: 1, radius: 0.1, storativity: 1e-4 };
    // Q/(4π s) = 8e6 m, so that T would be thousands of m²/s.
    expect(transmissivityFromTest(input as never)).toEqual({ state: "none" });
    // Even the greatest drawdown, at u = 0.4348, wants T = 1e6 · 1/(4 · 0.4348 · 1) = 6e5 m²/s.
    expect(transmissivityFromTest({ ...input, radius: 1000, storativity: 1 } as never)).toEqual({ state: "none" });
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
    // All at one time: any curve through their mean is as good as another.
    fc.assert(
      fc.property(fc.array(number(0.1, 10), { minLength: 3, maxLength: 9 }), (drawdowns) => {
        const { flow, radius, readings } = input(drawdowns);
        const together = readings.map(({ drawdown }) => ({ time: 100 as Duration, drawdown }));
        expect(fitTheis({ flow, radius, readings: together })).toEqual({ state: "no fit" });
      }),
    );
  });
});
