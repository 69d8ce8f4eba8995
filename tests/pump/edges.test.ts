/** Both sides of the pump module's limits, worked by hand on curves of few points, and how often a system is asked. */
import fc from "fast-check";
import { darcyWeisbachLoss } from "risingmain/pipe";
import {
  acceptanceBand,
  acceptanceTolerance,
  bestEfficiencyPoint,
  curvesInParallel,
  curvesInSeries,
  fitPumpCurve,
  operatingBand,
  operatingPoint,
  pumpCurve,
  pumpDuty,
  pumpFlowAt,
} from "risingmain/pump";
import type { KinematicViscosity, Length, Power, Ratio, VolumeFlow } from "risingmain/units";
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

  test("a duty on a rising part is not stable", () => {
    const curve = curveOf([0, 50], [0.01, 60], [0.02, 20]);
    const stable = (flow: number) => pumpDuty({ curve, flow: flow as VolumeFlow }).stable;
    expect([stable(0.005), stable(0.015)]).toEqual([false, true]);
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

describe("sets", () => {
  const half = curveOf([0, 32], [1 / 16, 16]);
  const extrapolated = curveOf([0.01, 60], [0.05, 40]);

  test("in series heads add, in parallel flows, unlike pumps too", () => {
    const series = curvesInSeries([straight, half]);
    expect([series.shutoffHead, series.runoutFlow]).toEqual([96, 1 / 16]);
    const parallel = curvesInParallel([straight, half]);
    const flow = (head: number) => {
      const at = pumpFlowAt(parallel, head as Length);
      return at.state === "delivers" ? at.flow * 16 : Number.NaN;
    };
    // Above 32 m the stronger runs alone.
    expect(flow(48)).toBeCloseTo(0.5, 6);
    expect(flow(32)).toBeCloseTo(1, 6);
    expect(parallel.shutoffHead).toBe(64);
  });

  test("a shutoff is given where it is given of all", () => {
    expect(curvesInSeries([straight, half]).shutoffBasis).toBe("given");
    expect(curvesInSeries([straight, extrapolated]).shutoffBasis).toBe("extrapolated");
    expect(curvesInParallel([straight, straight]).shutoffBasis).toBe("given");
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
