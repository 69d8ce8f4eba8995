import { readFileSync } from "node:fs";
import fc from "fast-check";
import {
  acceptanceTolerance,
  type OperatingPoint,
  operatingBand,
  operatingPoint,
  pumpCurve,
  pumpHeadAt,
  wornCurve,
} from "risingmain/pump";
import type { Length, Ratio, VolumeFlow } from "risingmain/units";
import { describe, expect, test } from "vitest";
import { fallingCurves, number, systemOf, systems } from "./systems.ts";

interface Case {
  readonly a: number;
  readonly b: number;
  readonly end: number;
  readonly z: number;
  readonly B: number;
  readonly C: number;
  readonly k: number;
  readonly n: number;
  readonly state: "running" | "runs out";
  readonly flow?: string;
  readonly head?: string;
}
const fixture = JSON.parse(readFileSync(new URL("../fixtures/pump.json", import.meta.url), "utf8")) as {
  readonly operatingPoints: readonly Case[];
};

/** Flow as one number: nothing for a pump that cannot lift, the end of the curve for one that runs out. */
function flowOf(point: OperatingPoint): number {
  if (point.state === "cannot lift") return 0;
  return point.state === "running" ? point.flow : point.moreThan;
}

describe("against 30-digit roots", () => {
  test.each(fixture.operatingPoints.map((each, i) => [i, each] as const))("case %i", (_, each) => {
    const { a, b, end, z, B, C, k, n } = each;
    const points = [0, 0.25, 0.5, 0.75, 1].map((share) => {
      const flow = share * end;
      return { flow: flow as VolumeFlow, head: (a - b * flow * flow) as Length };
    });
    const systemHead = (q: VolumeFlow) => (z + B * q + C * q * q + k * q ** n) as Length;
    const point = operatingPoint({ curve: pumpCurve({ points }), systemHead });
    expect(point.state).toBe(each.state);
    if (point.state !== "running") return;
    expect(Math.abs(point.flow / Number(each.flow) - 1)).toBeLessThan(1e-11);
    expect(Math.abs(point.head - Number(each.head))).toBeLessThan(1e-11 * a);
    expect(point.evaluations).toBeLessThanOrEqual(7);
  });
});

describe("the operating point", () => {
  test("is where the two heads meet, or there is a reason", () => {
    fc.assert(
      fc.property(fallingCurves, systems, (curve, shares) => {
        const systemHead = systemOf(curve, shares);
        const point = operatingPoint({ curve, systemHead });
        if (point.state === "running") {
          const miss = pumpHeadAt(curve, point.flow) - systemHead(point.flow);
          expect(Math.abs(miss)).toBeLessThan(1e-10 * curve.shutoffHead);
          expect(point.stable).toBe(true);
        } else if (point.state === "cannot lift") {
          expect(systemHead(0 as VolumeFlow) - curve.shutoffHead).toBe(point.short);
          expect(point.short).toBeGreaterThanOrEqual(0);
        } else {
          expect(curve.runoutHead - systemHead(curve.runoutFlow)).toBeCloseTo(point.spare, 9);
          expect(point.spare).toBeGreaterThan(0);
        }
      }),
      { numRuns: 300 },
    );
  });

  test("takes at most six calls on smooth systems", () => {
    fc.assert(
      fc.property(
        fallingCurves,
        number(-0.2, 0.95),
        number(0.01, 3),
        number(1.7, 2),
        (curve, lift, friction, exponent) => {
          const systemHead = systemOf(curve, { lift, friction, exponent, drawdown: 0 });
          const point = operatingPoint({ curve, systemHead });
          if (point.state === "running") expect(point.evaluations).toBeLessThanOrEqual(6);
        },
      ),
      { numRuns: 300 },
    );
  });

  test("is found on systems with steps and kinks, in a bounded number of calls", () => {
    fc.assert(
      fc.property(fallingCurves, systems, number(0, 1), number(0, 0.6), (curve, shares, where, step) => {
        const smooth = systemOf(curve, shares);
        const edge = where * curve.runoutFlow;
        let calls = 0;
        const systemHead = (flow: VolumeFlow) => {
          calls++;
          return (smooth(flow) + (flow > edge ? step * curve.shutoffHead : 0)) as Length;
        };
        const point = operatingPoint({ curve, systemHead });
        expect(calls).toBeLessThan(150);
        if (point.state !== "running") return;
        // Either the heads meet, or the flow stands at the step, which passes the pump's head.
        const miss = Math.abs(pumpHeadAt(curve, point.flow) - systemHead(point.flow));
        const atStep = Math.abs(point.flow - edge) <= 1e-9 * curve.runoutFlow;
        expect(atStep || miss < 1e-9 * curve.shutoffHead).toBe(true);
      }),
      { numRuns: 300 },
    );
  });

  test("falls when the water stands lower, the pressure is higher, the pipe rougher, the pump worn", () => {
    fc.assert(
      fc.property(fallingCurves, systems, number(0.001, 0.3), (curve, shares, more) => {
        const flow = flowOf(operatingPoint({ curve, systemHead: systemOf(curve, shares) }));
        const with_ = (changed: Partial<typeof shares>) =>
          flowOf(operatingPoint({ curve, systemHead: systemOf(curve, { ...shares, ...changed }) }));
        const slack = 1e-9 * curve.runoutFlow;
        expect(with_({ lift: shares.lift + more })).toBeLessThanOrEqual(flow + slack);
        expect(with_({ friction: shares.friction + more })).toBeLessThanOrEqual(flow + slack);
        expect(with_({ drawdown: shares.drawdown + more })).toBeLessThanOrEqual(flow + slack);
        for (const wear of [{ headLost: more as Ratio }, { flowLost: more as Ratio }]) {
          const worn = flowOf(operatingPoint({ curve: wornCurve(curve, wear), systemHead: systemOf(curve, shares) }));
          expect(worn).toBeLessThanOrEqual(flow + slack);
        }
      }),
      { numRuns: 300 },
    );
  });

  test("of a level system is the flow at its head", () => {
    const curve = pumpCurve({
      points: [
        { flow: 0 as VolumeFlow, head: 100 as Length },
        { flow: 0.005 as VolumeFlow, head: 50 as Length },
      ],
    });
    const point = operatingPoint({ curve, systemHead: () => 75 as Length });
    expect(point.state === "running" && point.flow).toBeCloseTo(0.0025, 15);
  });

  test("of a rising curve is the first from rest, and says when it is not stable", () => {
    const curve = pumpCurve({
      points: [
        { flow: 0 as VolumeFlow, head: 50 as Length },
        { flow: 0.001 as VolumeFlow, head: 55 as Length },
        { flow: 0.002 as VolumeFlow, head: 52 as Length },
        { flow: 0.003 as VolumeFlow, head: 40 as Length },
      ],
    });
    expect(curve.rising).toStrictEqual([{ fromFlow: 0, toFlow: 0.001, rise: 5 }]);
    const steep = (flow: VolumeFlow) => (45 + 20_000 * flow) as Length;
    const unstable = operatingPoint({ curve, systemHead: steep });
    expect(unstable.state).toBe("running");
    expect(unstable.state === "running" && unstable.stable).toBe(false);
    expect(operatingPoint({ curve, systemHead: () => 52 as Length }).state).toBe("cannot lift");
  });

  test("refuses a system that falls, and one that gives no head", () => {
    const curve = pumpCurve({
      points: [
        { flow: 0 as VolumeFlow, head: 100 as Length },
        { flow: 0.005 as VolumeFlow, head: 10 as Length },
      ],
    });
    for (const bad of [(q: number) => 60 - 1e6 * q, () => Number.NaN, () => "60"] as unknown[]) {
      expect(() => operatingPoint({ curve, systemHead: bad as (flow: VolumeFlow) => Length })).toThrow(/systemHead/);
    }
  });
});

describe("the band of an acceptance grade", () => {
  const grades = fc.constantFrom("1U", "1E", "1B", "2U", "2B", "3B", "small pump" as const);

  test("holds the nominal point, and a wider grade's band holds a narrower one's", () => {
    fc.assert(
      fc.property(fallingCurves, systems, grades, (curve, shares, grade) => {
        const systemHead = systemOf(curve, shares);
        const { low, nominal, high } = operatingBand({ curve, systemHead, tolerance: acceptanceTolerance({ grade }) });
        expectNoMore(low, nominal, 0);
        expectNoMore(nominal, high, 0);
        const wide = operatingBand({ curve, systemHead, tolerance: acceptanceTolerance({ grade: "small pump" }) });
        // Past nine tenths of the curve the wider grade's own curve has ended.
        const known = nominal.state === "running" && nominal.flow < 0.9 * curve.runoutFlow;
        if (known && !grade.endsWith("U")) expectNoMore(wide.low, low, 1e-9 * curve.runoutFlow);
      }),
      { numRuns: 300 },
    );
  });

  test("holds a pump short of half its head tolerance", () => {
    fc.assert(
      fc.property(fallingCurves, systems, (curve, shares) => {
        const systemHead = systemOf(curve, shares);
        const tolerance = acceptanceTolerance({ grade: "2B" });
        const { low, high } = operatingBand({ curve, systemHead, tolerance });
        const between = operatingPoint({ curve: wornCurve(curve, { headLost: 0.025 as Ratio }), systemHead });
        expectNoMore(low, between, 1e-9 * curve.runoutFlow);
        expectNoMore(between, high, 1e-9 * curve.runoutFlow);
      }),
      { numRuns: 300 },
    );
  });
});

/** The first delivers no more than the second; past the end of a curve flows are not known and not compared. */
function expectNoMore(first: OperatingPoint, second: OperatingPoint, slack: number): void {
  const rank = ({ state }: OperatingPoint): number => ["cannot lift", "running", "runs out"].indexOf(state);
  expect(rank(first)).toBeLessThanOrEqual(rank(second));
  if (first.state === "running" && second.state === "running") {
    expect(first.flow).toBeLessThanOrEqual(second.flow + slack);
  }
}
