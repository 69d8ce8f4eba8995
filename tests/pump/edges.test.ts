/** Both sides of the pump module's limits, worked by hand on curves of few points, and how often a system is asked. */
import fc from "fast-check";
import { darcyWeisbachLoss } from "risingmain/pipe";
import {
  acceptanceBand,
  acceptanceTolerance,
  bestEfficiencyPoint,
  constantPressure,
  curvesInParallel,
  curvesInSeries,
  fitPumpCurve,
  minimumFlow,
  operatingBand,
  operatingPoint,
  type PumpCurve,
  pumpCurve,
  pumpDuty,
  pumpFlowAt,
  pumpHeadSlopeAt,
  shutoffPressure,
  speedFor,
} from "risingmain/pump";
import type {
  Density,
  KinematicViscosity,
  Length,
  Power,
  Ratio,
  TemperatureDifference,
  VolumeFlow,
} from "risingmain/units";
import { describe, expect, test } from "vitest";
import { refused } from "../refused.ts";

type Triple = readonly [flow: number, head: number, efficiency?: number];
const curveOf = (...points: readonly Triple[]) =>
  pumpCurve({
    points: points.map(([flow, head, efficiency]) => ({
      flow: flow as VolumeFlow,
      head: head as Length,
      ...(efficiency === undefined ? {} : { efficiency: efficiency as Ratio }),
    })),
  });
/** A straight fall from 64 m to 32 m at 1/16 m³/s: every step of it is exact. */
const straight = curveOf([0, 64], [1 / 16, 32]);
const level = (head: number) => () => head as Length;
/** Flow of a falling curve at a head; none above its shutoff head. */
const flowAt = (curve: PumpCurve, head: number): number => {
  const at = pumpFlowAt(curve, head as Length);
  return at.state === "delivers" ? at.flow : 0;
};

describe("the flow at a head", () => {
  test("above the shutoff, past the end, and at both ends", () => {
    expect(pumpFlowAt(straight, 65 as Length)).toEqual({ state: "above shutoff", short: 1 });
    expect(pumpFlowAt(straight, 31 as Length)).toEqual({ state: "past the curve", moreThan: 1 / 16 });
    expect(pumpFlowAt(straight, 64 as Length)).toEqual({ state: "delivers", flow: 0 });
    expect(pumpFlowAt(straight, 32 as Length)).toEqual({ state: "delivers", flow: 1 / 16 });
    const middle = pumpFlowAt(straight, 48 as Length);
    expect(middle.state === "delivers" ? middle.flow : Number.NaN).toBeCloseTo(1 / 32, 14);
  });

  test("each point of a curve is met to the bit", () => {
    const curve = curveOf([0, 60], [0.01, 55], [0.02, 45], [0.03, 20]);
    expect([60, 55, 45, 20].map((head) => pumpFlowAt(curve, head as Length))).toEqual(
      [0, 0.01, 0.02, 0.03].map((flow) => ({ state: "delivers", flow })),
    );
  });

  test("a curve that rises has more than one", () => {
    expect(refused(() => pumpFlowAt(curveOf([0, 50], [0.01, 60], [0.02, 20]), 40 as Length))).toBe("curve.shape");
    expect(refused(() => pumpFlowAt(undefined as never, 40 as Length))).toBe("curve");
  });
});

describe("the best point", () => {
  test("is the vertex of the parabola through the highest point and its neighbours", () => {
    // η = 0.7 − 400 (Q − 0.021)², read at three flows.
    const eta = (flow: number) => 0.7 - 400 * (flow - 0.021) ** 2;
    const best = bestEfficiencyPoint(
      curveOf([0, 60], [0.01, 55, eta(0.01)], [0.02, 45, eta(0.02)], [0.03, 30, eta(0.03)]),
    );
    expect(best?.flow).toBeCloseTo(0.021, 12);
    expect(best?.efficiency).toBeCloseTo(0.7, 12);
  });

  test("is an end of the curve where efficiency still rises there", () => {
    const best = bestEfficiencyPoint(curveOf([0, 60], [0.01, 55, 0.4], [0.02, 45, 0.5], [0.03, 30, 0.6]));
    expect(best).toMatchObject({ flow: 0.03, head: 30, efficiency: 0.6 });
  });

  test("is the first of two alike only where nothing bends", () => {
    // 0.5 at two flows: the vertex lies between them.
    const best = bestEfficiencyPoint(curveOf([0, 60, 0], [0.01, 55, 0.5], [0.02, 45, 0.5], [0.03, 30, 0]));
    expect(best?.flow).toBeGreaterThan(0.01);
    expect(best?.flow).toBeLessThan(0.02);
  });

  test("is none where there is no efficiency, or none above 0", () => {
    expect(bestEfficiencyPoint(straight)).toBeNull();
    expect(bestEfficiencyPoint(curveOf([0, 60, 0], [0.01, 55, 0], [0.02, 45, 0]))).toBeNull();
  });

  test("and the region of a flow, at the limits themselves", () => {
    const curve = curveOf([0, 64, 0], [1 / 32, 48, 0.5], [1 / 16, 32, 0]);
    const region = (share: number) => pumpDuty({ curve, flow: (share / 32) as VolumeFlow }).region;
    // 70 % and 120 % of the best point.
    expect([region(0.69), region(0.71), region(1.19), region(1.21)]).toEqual([
      "low",
      "preferred",
      "preferred",
      "upthrust side",
    ]);
    const own = { curve, lowFrom: 0.5 as Ratio, upthrustFrom: 1.5 as Ratio };
    const at = (share: number) => pumpDuty({ ...own, flow: (share / 32) as VolumeFlow }).region;
    expect([at(0.5), at(1.5), at(0.49), at(1.51)]).toEqual(["preferred", "preferred", "low", "upthrust side"]);
    expect(pumpDuty({ curve: straight, flow: 0.01 as VolumeFlow })).toMatchObject({
      bestFraction: null,
      region: "unknown",
    });
  });

  test("a duty on a rising part is not stable, one where the curve is level is", () => {
    const stable = (curve: PumpCurve, flow: number) => pumpDuty({ curve, flow: flow as VolumeFlow }).stable;
    const rising = curveOf([0, 50], [0.01, 60], [0.02, 20]);
    expect([stable(rising, 0.005), stable(rising, 0.015)]).toEqual([false, true]);
    // Carried back as a parabola with its vertex at no flow.
    expect(stable(curveOf([0.01, 60], [0.02, 20]), 0)).toBe(true);
  });
});

describe("acceptance", () => {
  const tolerance = { flowLow: -0.1, flowHigh: 0.2, headLow: -0.3, headHigh: 0.4 } as never;

  test("the four curves of the cross", () => {
    const { weakest, strongest } = acceptanceBand(straight, tolerance);
    const ends = [...weakest, ...strongest].map(({ runoutFlow, shutoffHead }) => [runoutFlow * 16, shutoffHead / 64]);
    [
      [0.9, 1],
      [1, 0.7],
      [1.2, 1],
      [1, 1.4],
    ].forEach((want, i) => {
      want.forEach((value, k) => {
        expect(ends[i]?.[k]).toBeCloseTo(value, 12);
      });
    });
  });

  test("the band runs from the least flow to the greatest, whatever state they are in", () => {
    const band = (head: number) => operatingBand({ curve: straight, systemHead: level(head), tolerance });
    const shown = ({ low, nominal, high }: ReturnType<typeof band>) => [low.state, nominal.state, high.state];
    expect(shown(band(50))).toEqual(["cannot lift", "running", "running"]);
    expect(shown(band(40))).toEqual(["running", "running", "runs out"]);
    expect(shown(band(90))).toEqual(["cannot lift", "cannot lift", "cannot lift"]);
    // Of pumps that cannot lift, the one that lacks more is the lower: 90 − 0.7 · 64 and 90 − 1.4 · 64.
    const { low, high } = band(90);
    expect(low.state === "cannot lift" ? low.short : 0).toBeCloseTo(90 - 0.7 * 64, 12);
    expect(high.state === "cannot lift" ? high.short : 0).toBeCloseTo(90 - 1.4 * 64, 12);
    // At 56 m: 0.9 of the flow is less than the nominal, 1.4 of the head more than 1.2 of the flow.
    const at = band(44);
    const flow = (point: typeof at.low) => (point.state === "running" ? point.flow * 16 : Number.NaN);
    // Straight lines: (64 a − 44)/(32 a) · b of the whole.
    expect(flow(at.low)).toBeCloseTo((0.7 * 64 - 44) / (0.7 * 32), 9);
    expect(flow(at.nominal)).toBeCloseTo(20 / 32, 9);
    // Both run out at 30 m: the one whose curve ends at more flow is the higher.
    const out = band(30).high;
    expect(out.state === "runs out" ? out.moreThan * 16 : Number.NaN).toBeCloseTo(1.2, 12);
  });

  test("a small pump is one up to 10 kW, and its efficiency needs its power", () => {
    const small = (watts?: number) =>
      acceptanceTolerance({ grade: "small pump", ...(watts === undefined ? {} : { shaftPower: watts as Power }) });
    expect([refused(() => small(10_000)), refused(() => small(10_001))]).toEqual([undefined, "shaftPower"]);
    expect(small().efficiencyLow).toBeNull();
    expect(refused(() => acceptanceTolerance({ grade: "2B", shaftPower: 20_000 as Power }))).toBeUndefined();
    expect(refused(() => acceptanceTolerance({ grade: "2B", shaftPower: -1 as Power }))).toBe("shaftPower");
    // −(10 (1 − P/10 kW) + 7) % (from memory, as the register says).
    expect(small(5000).efficiencyLow).toBeCloseTo(-0.12, 12);
  });
});

describe("a fitted curve", () => {
  const points = (...list: readonly (readonly [number, number])[]) =>
    list.map(([flow, head]) => ({ flow: flow as VolumeFlow, head: head as Length }));

  test("says whether its shutoff was given", () => {
    const basis = (...list: readonly (readonly [number, number])[]) =>
      fitPumpCurve({ points: points(...list) }).curve.shutoffBasis;
    expect(basis([0, 60], [0.01, 50], [0.02, 20])).toBe("given");
    expect(basis([0.005, 58], [0.01, 50], [0.02, 20])).toBe("extrapolated");
  });

  test("from the least flow on; with its vertex at the last point it falls to there", () => {
    const to = (end: number) => refused(() => fitPumpCurve({ points: points([0, 60], [end / 2, 50], [end, 20]) }));
    expect([to(1e-9), to(0.99e-9)]).toEqual([undefined, "points"]);
    // H = 30 + 10 (1 − Q)².
    const shares = [0, 0.25, 0.5, 0.75, 1].map((q) => [q, 30 + 10 * (1 - q) ** 2] as const);
    const { curve } = fitPumpCurve({ points: points(...shares), form: "quadratic" });
    expect(curve.shape).toBe("falling");
    expect(pumpHeadSlopeAt(curve, 1 as VolumeFlow)).toBeCloseTo(0, 9);
  });

  test("is refused what is no form, no point, no flow, and too few different flows", () => {
    const good = points([0, 60], [0.01, 50], [0.02, 20]);
    expect(refused(() => fitPumpCurve({ points: good, form: "cubic" as never }))).toBe("form");
    expect(refused(() => fitPumpCurve({ points: [...good, { flow: 0 as VolumeFlow, head: -1 as Length }] }))).toBe(
      "points[3].head",
    );
    expect(refused(() => fitPumpCurve({ points: points([0, 60], [0, 50], [1e-10, 20]) }))).toBe("points");
    expect(refused(() => fitPumpCurve({ points: points([0.01, 60], [0.01, 50], [0.01, 20]), form: "quadratic" }))).toBe(
      "points",
    );
  });
});

describe("a speed for a point", () => {
  const of = (flow: number, head: number) =>
    speedFor({ curve: straight, flow: flow as VolumeFlow, head: head as Length });

  test("at the greatest speed itself, and at the end of the curve", () => {
    expect(of(1 / 32, 48)).toMatchObject({ state: "runs", speed: 1 });
    expect(of(1 / 32, 48.001).state).toBe("too little");
    expect(of(1 / 16, 32)).toMatchObject({ state: "runs", speed: 1, similarFlow: 1 / 16 });
    // Half the end's flow at half the speed: a quarter of its head.
    expect(of(1 / 32, 8)).toMatchObject({ state: "runs", speed: 0.5, similarFlow: 1 / 16 });
    expect(of(1 / 32, 7.999).state).toBe("past the curve");
  });

  test("of a vanishing flow is that of none, √(H/H₀)", () => {
    for (const flow of [0, Number.MIN_VALUE, 1e-300, 1e-20]) {
      const found = of(flow, 16);
      expect(found.state === "runs" ? found.speed : Number.NaN).toBeCloseTo(0.5, 12);
    }
  });

  test("at constant pressure: the least speed is none too low, and how the speed at no flow grows with the head", () => {
    const held = (head: number) =>
      constantPressure({
        curve: straight,
        systemHead: level(head),
        flows: [0 as VolumeFlow],
        leastSpeed: 0.5 as Ratio,
      });
    expect(held(16).rows[0]?.belowLeast).toBe(false);
    expect(held(15.99).rows[0]?.belowLeast).toBe(true);
    // d√(H/64)/dH by a central difference.
    const slope = (held(16.01).speedAtNoFlow - held(15.99).speedAtNoFlow) / 0.02;
    expect(held(16).speedPerHead / slope).toBeCloseTo(1, 5);
  });
});

describe("a least flow", () => {
  const least = (rise: number, ...points: readonly Triple[]) =>
    minimumFlow({ curve: curveOf(...points), riseAllowed: rise as TemperatureDifference });

  test("is known where the best efficiency is the last point's, and above nothing", () => {
    expect(least(1, [0, 60], [0.01, 50, 0.4], [0.02, 40, 0.6]).state).toBe("known");
    // 9.80665 · 0.01 · (1e6 − 1)/4186 = 23 K.
    expect(least(24, [0, 0.02], [0.01, 0.01, 1e-6]).state).toBe("known");
    expect(least(24, [0, 0.02], [0.01, 0.01, 0.99e-6])).toEqual({ state: "unknown" });
    expect(least(24, [0, 0.02], [0.01, 0.01, 0])).toEqual({ state: "unknown" });
    expect(least(24, [0, 0.02], [0.01, 0.01])).toEqual({ state: "unknown" });
  });

  test("is the best flow where the rise there is just the one allowed", () => {
    // At half efficiency g H = c ΔT: 4186/4 m and 9.80665/4 K, quarters so that both products round alike.
    const at = (rise: number) => least(rise, [0, 2000], [0.01, 4186 / 4, 0.5]);
    expect(at(9.80665 / 4)).toEqual({ state: "known", flow: 0.01 });
    expect(at(9.80665 / 4.001).state).toBe("too warm at any flow");
  });
});

test("whether a shut pump reaches its outlet", () => {
  const reaches = (staticLevel: number) =>
    shutoffPressure({ curve: straight, staticLevel: staticLevel as Length, density: 1000 as Density }).reaches;
  expect([reaches(63.9), reaches(64), reaches(64.1)]).toEqual([true, false, false]);
});

describe("sets", () => {
  const half = curveOf([0, 32], [1 / 16, 16]);
  const extrapolated = curveOf([0.01, 60], [0.05, 40]);

  test("in series heads add, in parallel flows, unlike pumps too", () => {
    const series = curvesInSeries([straight, half]);
    expect([series.shutoffHead, series.runoutFlow]).toEqual([96, 1 / 16]);
    const parallel = curvesInParallel([straight, half]);
    const flow = (head: number) => flowAt(parallel, head) * 16;
    // Above 32 m the stronger runs alone.
    expect(flow(48)).toBeCloseTo(0.5, 6);
    expect(flow(32)).toBeCloseTo(1, 6);
    expect(parallel.shutoffHead).toBe(64);
    // Two alike and one unlike: the set ends at 32 m, where the half joins or the whole ends.
    expect(curvesInParallel([straight, straight, half]).runoutFlow).toBeCloseTo(2 / 16, 12);
    // Ends at 32 m, with 18 m of the other's 30 m fallen.
    const joined = curvesInParallel([straight, curveOf([0, 50], [1 / 16, 20])]);
    expect(joined.runoutHead).toBe(32);
    expect(joined.runoutFlow * 16).toBeCloseTo(1 + 18 / 30, 12);
    expect(flowAt(curvesInParallel([half, half, straight]), 32)).toBeCloseTo(1 / 16, 6);
  });

  test("in parallel are good to a thousandth of the set's greatest flow, close about a shutoff head too", () => {
    // H = H₀ (1 − 0.7 sᵉ): level at no flow, straight, or steep there.
    const pump = (shutoff: number, end: number, e: number) =>
      curveOf(...[0, 0.25, 0.5, 0.75, 1].map((s) => [end * s, shutoff * (1 - 0.7 * s ** e)] as const));
    let worst = 0;
    for (const share of [0.7, 0.95, 0.999])
      for (const e of [0.8, 2]) {
        const pumps = [pump(100, 0.01, e), pump(100 * share, 0.01, e)];
        const set = curvesInParallel(pumps);
        const near = [1e-2, 3e-3, 1e-4, 3e-5].flatMap((by) => [1 - by, 1 + by]);
        for (const head of [...near.map((by) => 100 * share * by), 75, 45].filter((head) => head < 100)) {
          const sum = pumps.reduce((so, one) => so + flowAt(one, head), 0);
          worst = Math.max(worst, Math.abs(flowAt(set, head) - sum) / set.runoutFlow);
        }
      }
    expect(worst).toBeLessThan(1e-3);
  });

  test("in series keep two points of unlike sheets that differ by more than rounding", () => {
    const other = curveOf([0, 64], [1 / 32 + 1e-12, 48], [1 / 16, 32]);
    const one = curveOf([0, 64], [1 / 32, 48], [1 / 16, 32]);
    expect(curvesInSeries([one, other]).head.x).toEqual([0, 1 / 32, 1 / 32 + 1e-12, 1 / 16]);
  });

  test("a shutoff is given where it is given of all", () => {
    expect(curvesInSeries([straight, half]).shutoffBasis).toBe("given");
    expect(curvesInSeries([straight, extrapolated]).shutoffBasis).toBe("extrapolated");
    expect(curvesInParallel([straight, straight]).shutoffBasis).toBe("given");
    expect(curvesInParallel([straight, half]).shutoffBasis).toBe("given");
    expect(curvesInParallel([straight, extrapolated]).shutoffBasis).toBe("extrapolated");
  });

  test("each curve is looked at, by its place", () => {
    expect(refused(() => curvesInSeries([straight, {} as never]))).toMatch(/^curves\[1\]/);
    expect(refused(() => curvesInParallel([straight, {} as never]))).toMatch(/^curves\[1\]/);
    expect(refused(() => curvesInParallel([straight, curveOf([0, 50], [0.01, 60], [0.02, 20])]))).toBe(
      "curves[1].shape",
    );
  });
});

describe("the operating point", () => {
  const fallOf = (head: number) => operatingPoint({ curve: straight, systemHead: level(head) });

  test("at shutoff there is no flow, and at the end of the curve it runs there", () => {
    expect(fallOf(64).state).toBe("cannot lift");
    const nearly = fallOf(63.999);
    expect(nearly.state === "running" ? nearly.flow * 16 : Number.NaN).toBeCloseTo(0.001 / 32, 9);
    const end = fallOf(32);
    expect(end.state === "running" ? end.flow : Number.NaN).toBeCloseTo(1 / 16, 12);
    expect(fallOf(31.9)).toMatchObject({ state: "runs out", moreThan: 1 / 16 });
  });

  test("a rising curve is met on its far side, and may run out", () => {
    const curve = curveOf([0, 50], [0.01, 60], [0.02, 20]);
    const meets = operatingPoint({ curve, systemHead: level(49) });
    if (meets.state !== "running") throw new Error(meets.state);
    expect(meets.flow).toBeLessThan(0.02);
    expect(meets.head).toBeCloseTo(49, 6);
    expect(operatingPoint({ curve, systemHead: level(10) })).toMatchObject({ state: "runs out", moreThan: 0.02 });
  });

  test("a system that is no function, or no head, is refused", () => {
    const asked = (systemHead: unknown) =>
      refused(() => operatingPoint({ curve: straight, systemHead: systemHead as never }));
    expect(asked(3)).toBe("systemHead");
    for (const head of [-1.1e5, 1.1e12, Number.NaN, "3"]) expect(asked(() => head)).toMatch(/^systemHead/);
    expect(asked(() => -1e5)).toBeUndefined();
    expect(asked(() => 1e12)).toBeUndefined();
  });

  test("a pipe with lift is asked a few times, not tens, and counts each", () => {
    const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    let asked = 0;
    let runs = 0;
    let most = 0;
    const curve = curveOf([0, 110], [0.5e-3, 104], [1e-3, 88], [1.5e-3, 58], [1.8e-3, 33]);
    fc.assert(
      fc.property(between(0, 100), between(0.02, 0.06), between(10, 400), (lift, insideDiameter, length) => {
        let calls = 0;
        const systemHead = (flow: VolumeFlow): Length => {
          calls++;
          const { headLoss } = darcyWeisbachLoss({
            flow,
            insideDiameter: insideDiameter as Length,
            length: length as Length,
            roughness: 1.5e-6 as Length,
            viscosity: 1.3e-6 as KinematicViscosity,
          });
          return (lift + headLoss) as Length;
        };
        const point = operatingPoint({ curve, systemHead });
        asked += calls;
        runs++;
        most = Math.max(most, calls);
        if (point.state !== "running") return;
        expect(point.evaluations).toBe(calls);
        expect(point.head).toBeCloseTo(systemHead(point.flow as VolumeFlow), 7);
      }),
    );
    expect(asked / runs).toBeLessThan(6);
    expect(most).toBeLessThan(20);
  });
});
