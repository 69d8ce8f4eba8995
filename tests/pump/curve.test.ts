import fc from "fast-check";
import {
  npshRequiredAt,
  pumpCurve,
  pumpEfficiencyAt,
  pumpFlowAt,
  pumpHeadAt,
  pumpHeadSlopeAt,
  pumpInputPowerAt,
} from "risingmain/pump";
import type { KinematicViscosity, Length, Power, Ratio, VolumeFlow } from "risingmain/units";
import { describe, expect, test } from "vitest";
import { refused } from "../refused.ts";
import { fallingCurves, number } from "./systems.ts";

const at = (share: number, end: number): VolumeFlow => Math.min(share * end, end) as VolumeFlow;

/** Any points at all, rising ones among them, at flows a tenth apart. */
const anyPoints = fc
  .array(number(1, 300), { minLength: 2, maxLength: 11 })
  .map((heads) => heads.map((head, i) => ({ flow: (i / 1000) as VolumeFlow, head: head as Length })));

describe("a curve through points", () => {
  test("passes through every one of them", () => {
    fc.assert(
      fc.property(anyPoints, (points) => {
        const curve = pumpCurve({ points });
        for (const { flow, head } of points) expect(pumpHeadAt(curve, flow)).toBe(head);
      }),
    );
  });

  test("never leaves the band of the two points it lies between, and is monotone there", () => {
    fc.assert(
      fc.property(anyPoints, fc.nat(9), number(0, 1), number(0, 1), (points, piece, a, b) => {
        const i = piece % (points.length - 1);
        const [p, q] = [points[i], points[i + 1]] as [(typeof points)[0], (typeof points)[0]];
        const curve = pumpCurve({ points });
        const [low, high] = a < b ? [a, b] : [b, a];
        const read = (share: number) => pumpHeadAt(curve, at(p.flow + share * (q.flow - p.flow), 1));
        const [first, second] = [read(low), read(high)];
        expect(Math.min(first, second)).toBeGreaterThanOrEqual(Math.min(p.head, q.head));
        expect(Math.max(first, second)).toBeLessThanOrEqual(Math.max(p.head, q.head));
        const slack = 1e-12 * Math.max(p.head, q.head);
        if (q.head > p.head) expect(second).toBeGreaterThanOrEqual(first - slack);
        else expect(second).toBeLessThanOrEqual(first + slack);
      }),
      { numRuns: 1000 },
    );
  });

  test("is the parabola its points lie on", () => {
    fc.assert(
      fc.property(
        number(20, 300),
        number(1e-4, 0.1),
        number(0.1, 0.95),
        fc.integer({ min: 3, max: 9 }),
        number(0, 1),
        (a, end, fall, n, share) => {
          const parabola = (q: number) => a * (1 - fall * (q / end) ** 2);
          const points = Array.from({ length: n }, (_, i) => {
            const flow = (end * i) / (n - 1);
            return { flow: flow as VolumeFlow, head: parabola(flow) as Length };
          });
          const flow = at(share, points.at(-1)?.flow ?? 0);
          const curve = pumpCurve({ points });
          expect(Math.abs(pumpHeadAt(curve, flow) / parabola(flow) - 1)).toBeLessThan(1e-12);
          const slope = (-2 * a * fall * flow) / end / end;
          expect(Math.abs(pumpHeadSlopeAt(curve, flow) - slope)).toBeLessThan((1e-11 * a) / end);
        },
      ),
    );
  });

  test("without a point at no flow is carried back along the parabola", () => {
    const parabola = (q: number) => 100 - 4e5 * q * q;
    const flows = [0.004, 0.006, 0.008, 0.01];
    const curve = pumpCurve({ points: flows.map((q) => ({ flow: q as VolumeFlow, head: parabola(q) as Length })) });
    expect(curve.shutoffBasis).toBe("extrapolated");
    expect(Math.abs(curve.shutoffHead - 100)).toBeLessThan(1e-10);
    expect(Math.abs(pumpHeadAt(curve, 0.002 as VolumeFlow) - parabola(0.002))).toBeLessThan(1e-10);
  });

  test("says whether it falls, and where it does not", () => {
    fc.assert(
      fc.property(anyPoints, (points) => {
        const curve = pumpCurve({ points });
        const falls = points.every(({ head }, i) => i === 0 || head < (points[i - 1]?.head ?? 0));
        expect(curve.shape).toBe(falls ? "falling" : "rising in part");
        const gain = points.reduce((sum, { head }, i) => sum + Math.max(0, head - (points[i - 1]?.head ?? head)), 0);
        expect(Math.abs(curve.rising.reduce((sum, { rise }) => sum + rise, 0) - gain)).toBeLessThan(1e-9);
      }),
    );
  });

  test("names each part that does not fall once, however many points it has", () => {
    const rising = (...heads: readonly number[]) =>
      pumpCurve({ points: heads.map((head, i) => ({ flow: i as VolumeFlow, head: head as Length })) }).rising;
    expect(rising(10, 13, 15, 9, 9, 7, 8, 11, 12, 4)).toEqual([
      { fromFlow: 0, toFlow: 2, rise: 5 },
      { fromFlow: 3, toFlow: 4, rise: 0 },
      { fromFlow: 5, toFlow: 8, rise: 5 },
    ]);
  });

  test("begins at a given shutoff head, or at one carried back", () => {
    const basis = (first: number) =>
      pumpCurve({ points: [first, 0.01, 0.02].map((q) => ({ flow: q as VolumeFlow, head: (50 - q) as Length })) })
        .shutoffBasis;
    expect([0, 0.001].map(basis)).toEqual(["given", "extrapolated"]);
  });

  test("does not depend on the order of its points, and survives JSON", () => {
    fc.assert(
      fc.property(anyPoints, number(0, 1), (points, share) => {
        const curve = pumpCurve({ points });
        expect(pumpCurve({ points: [...points].reverse() })).toStrictEqual(curve);
        const read = JSON.parse(JSON.stringify(curve)) as typeof curve;
        expect(pumpHeadAt(read, at(share, curve.runoutFlow))).toBe(pumpHeadAt(curve, at(share, curve.runoutFlow)));
      }),
    );
  });

  test("read backwards gives the flow that was put in", () => {
    fc.assert(
      fc.property(fallingCurves, number(0, 1), (curve, share) => {
        const flow = at(share, curve.runoutFlow);
        const back = pumpFlowAt(curve, pumpHeadAt(curve, flow));
        expect(back.state).toBe("delivers");
        // Where the curve is nearly level a rounding of the head moves the flow by its root.
        if (back.state === "delivers") expect(Math.abs(back.flow - flow)).toBeLessThan(1e-5 * curve.runoutFlow);
        if (back.state === "delivers") {
          expect(Math.abs(pumpHeadAt(curve, back.flow) - pumpHeadAt(curve, flow))).toBeLessThan(
            1e-12 * curve.shutoffHead,
          );
        }
      }),
    );
  });
});

describe("what a curve refuses", () => {
  const good = [
    { flow: 0 as VolumeFlow, head: 50 as Length },
    { flow: 0.002 as VolumeFlow, head: 40 as Length },
  ];
  const bad: readonly [string, unknown][] = [
    ["points", { points: good.slice(1) }],
    ["points", { points: [...good, good[1]] }],
    ["points[1].efficiency", { points: [good[0], { ...good[1], efficiency: 70 }] }],
    ["points[0].efficiency", { points: [{ ...good[0], efficiency: 0.3 }, good[1]] }],
    ["points[1].head", { points: [good[0], { ...good[1], head: -1 }] }],
    ["points[0].flow", { points: [{ ...good[0], flow: Number.NaN }, good[1]] }],
    ["viscosity", { points: good, viscosity: 1e-5 as KinematicViscosity }],
  ];
  test.each(bad)("%s", (parameter, input) => {
    expect(refused(() => pumpCurve(input as Parameters<typeof pumpCurve>[0]))).toBe(parameter);
  });
  const at = (...flows: readonly number[]) => ({ points: flows.map((flow) => ({ flow, head: 5 })) }) as never;
  test.each<[string, never, never]>([
    ["points", at(0, 1e-9), at(0, 0.99e-9)],
    ["points", at(0, 1e-6, 1), at(0, 0.99e-6, 1)],
    ["points[1].flow", at(0, 100), at(0, 100.1)],
    ...(
      [
        ["head", 10_000],
        ["efficiency", 1],
        ["inputPower", 1e8],
        ["npshRequired", 1000],
      ] as const
    ).map(([name, most]): [string, never, never] => {
      const points = (value: number) => ({ points: [good[0], { ...good[1], [name]: value }] }) as never;
      return [`points[1].${name}`, points(most), points(most * (1 + 1e-15))];
    }),
    ["viscosity", { points: good, viscosity: 2.7e-7 } as never, { points: good, viscosity: 2.6e-7 } as never],
    ["viscosity", { points: good, viscosity: 1.9e-6 } as never, { points: good, viscosity: 2e-6 } as never],
  ])("%s: at the limit taken, just beyond refused", (parameter, taken, beyond) => {
    expect(refused(() => pumpCurve(taken))).toBeUndefined();
    expect(refused(() => pumpCurve(beyond))).toBe(parameter);
  });
  test("a flow past the end of the curve", () => {
    expect(() => pumpHeadAt(pumpCurve({ points: good }), 0.0021 as VolumeFlow)).toThrow(/flow/);
  });
});

test("power and required suction are known only where points gave them", () => {
  const given = { inputPower: 500 as Power, npshRequired: 2 as Length };
  const curve = pumpCurve({
    points: [
      { flow: 0 as VolumeFlow, head: 50 as Length },
      { flow: 0.002 as VolumeFlow, head: 45 as Length, ...given },
      { flow: 0.003 as VolumeFlow, head: 38 as Length, ...given },
      { flow: 0.004 as VolumeFlow, head: 25 as Length },
    ],
  });
  const read = (flow: number) => [
    pumpInputPowerAt(curve, flow as VolumeFlow),
    npshRequiredAt(curve, flow as VolumeFlow),
  ];
  expect([0, 0.0019, 0.0031].map(read)).toEqual([
    [null, null],
    [null, null],
    [null, null],
  ]);
  expect([0.002, 0.003].map(read)).toEqual([
    [500, 2],
    [500, 2],
  ]);
});

test("efficiency is 0 at no flow and unknown past its last point", () => {
  const curve = pumpCurve({
    points: [
      { flow: 0 as VolumeFlow, head: 50 as Length },
      { flow: 0.002 as VolumeFlow, head: 45 as Length, efficiency: 0.6 as Ratio },
      { flow: 0.003 as VolumeFlow, head: 38 as Length },
    ],
  });
  expect(pumpEfficiencyAt(curve, 0 as VolumeFlow)).toBe(0);
  expect(pumpEfficiencyAt(curve, 0.001 as VolumeFlow)).toBeCloseTo(0.3, 12);
  expect(pumpEfficiencyAt(curve, 0.0025 as VolumeFlow)).toBeNull();
});
