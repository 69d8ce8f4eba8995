/**
 * Curves as plain data, as they come back from JSON or from another program: what is taken, what is refused, and what is
 * read where the lines of a curve do not all span the same flows.
 */
import {
  bestEfficiencyPoint,
  curvesInSeries,
  minimumFlow,
  operatingPoint,
  type PumpCurve,
  pumpCurve,
  pumpDuty,
  pumpEfficiencyAt,
  pumpHeadAt,
  pumpInputPowerAt,
  pumpPowerAt,
  speedFor,
} from "risingmain/pump";
import type { Density, Length, Power, Ratio, TemperatureDifference, VolumeFlow } from "risingmain/units";
import { describe, expect, test } from "vitest";
import { refused } from "../refused.ts";

interface Line {
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly slope: readonly number[];
}

/** Straight lines through points; the slope of each piece at its first point, the last's at the end. */
function line(...points: readonly (readonly [flow: number, value: number])[]): Line {
  const [x, y] = [points.map(([flow]) => flow), points.map(([, value]) => value)];
  const slope = x.map((_, i) => {
    const [a, b] = i + 1 < x.length ? [i, i + 1] : [i - 1, i];
    return ((y[b] as number) - (y[a] as number)) / ((x[b] as number) - (x[a] as number));
  });
  return { x, y, slope };
}

/** A curve of these lines whose other fields agree with its heads. */
function curveOf(
  head: Line,
  lines: Partial<Record<"efficiency" | "inputPower" | "npshRequired", Line>> = {},
): PumpCurve {
  const curve = {
    head,
    ...lines,
    shutoffHead: head.y[0],
    shutoffBasis: "given",
    greatestHead: Math.max(...head.y),
    runoutFlow: head.x.at(-1),
    runoutHead: head.y.at(-1),
    shape: "falling",
    rising: [],
  };
  return curve as unknown as PumpCurve;
}

const FALL = line([0, 40], [0.01, 30], [0.02, 10]);
const flow = (value: number) => value as VolumeFlow;
const refusedOf = (curve: PumpCurve) => refused(() => pumpHeadAt(curve, flow(0)));

/** A list with one member changed. */
const with_ = (list: readonly number[], i: number, value: number): number[] =>
  list.map((was, k) => (k === i ? value : was));

describe("the lines of a curve", () => {
  /** The greatest value of each line. */
  const most = { head: 10_000, efficiency: 1, inputPower: 1e8, npshRequired: 1000 };
  const names = Object.keys(most) as (keyof typeof most)[];
  const curveWith = (name: keyof typeof most, changed: Line): PumpCurve =>
    name === "head" ? curveOf(changed) : curveOf(FALL, { [name]: changed });
  /** A falling line from the greatest value, over the same flows. */
  const usual = (name: keyof typeof most) => line([0, most[name]], [0.01, most[name] / 2], [0.02, 0]);

  test.each(names)("%s: at its limits taken, just beyond refused", (name) => {
    const good = usual(name);
    const path = `curve.${name}`;
    const refusedWith = (change: Partial<Line>) => refusedOf(curveWith(name, { ...good, ...change }));
    expect(refusedWith({})).toBeUndefined();
    expect(refusedWith({ slope: [1e24, -1e24, 0] })).toBeUndefined();
    expect(refusedWith({ x: [0, 1, 100] })).toBeUndefined();
    expect(refusedWith({ x: [0, 1e-16, 0.02] })).toBeUndefined();
    expect(refusedWith({ y: with_(good.y, 0, most[name] * (1 + 1e-15)) })).toBe(`${path}.y[0]`);
    expect(refusedWith({ y: with_(good.y, 2, -1e-15) })).toBe(`${path}.y[2]`);
    expect(refusedWith({ y: with_(good.y, 1, Number.NaN) })).toBe(`${path}.y[1]`);
    expect(refusedWith({ slope: [-1e24, 1.01e24, 0] })).toBe(`${path}.slope[1]`);
    expect(refusedWith({ slope: [-1e24, 1e24, -1.01e24] })).toBe(`${path}.slope[2]`);
    expect(refusedWith({ x: [0, 1, 100.1] })).toBe(`${path}.x[2]`);
    expect(refusedWith({ x: [-1e-9, 1, 2] })).toBe(`${path}.x[0]`);
    expect(refusedWith({ x: [0, 0.01, 0.01] })).toBe(`${path}.x[2]`);
    expect(refusedWith({ x: [0, 0.9e-16, 0.01] })).toBe(`${path}.x[1]`);
    expect(refusedWith({ x: [0, 0.02, 0.01] })).toBe(`${path}.x[2]`);
  });

  test.each(names)("%s: three lists of one length, of two points or more", (name) => {
    const good = usual(name);
    const path = `curve.${name}`;
    const refusedWith = (change: Partial<Line>) => refusedOf(curveWith(name, { ...good, ...change }));
    expect(refusedWith({ y: good.y.slice(0, 2) })).toBe(`${path}.y`);
    expect(refusedWith({ y: [...good.y, 0] })).toBe(`${path}.y`);
    expect(refusedWith({ slope: good.slope.slice(0, 2) })).toBe(`${path}.slope`);
    expect(refusedWith({ slope: [...good.slope, 0] })).toBe(`${path}.slope`);
    expect(refusedOf(curveWith(name, { x: [0], y: [1], slope: [0] }))).toBe(`${path}.x`);
    expect(refusedOf(curveWith(name, { x: [0, 0.02], y: [1, 0], slope: [0, 0] }))).toBeUndefined();
    for (const field of ["x", "y", "slope"]) expect(refusedWith({ [field]: "0, 1, 2" })).toBe(`${path}.${field}`);
    for (const none of [null, 7]) expect(refusedOf({ ...curveOf(FALL), [name]: none })).toBe(path);
  });

  const long = (count: number) => {
    const x = Array.from({ length: count }, (_, i) => i / count);
    return { x, y: x.map((share) => 100 - share), slope: x.map(() => -1) };
  };
  test("a hundred thousand points are taken", () => {
    expect(refusedOf(curveOf(long(100_000)))).toBeUndefined();
  });
  test("one more is not", () => {
    expect(refusedOf(curveOf(long(100_001)))).toBe("curve.head.x");
  });
});

describe("what follows from the heads", () => {
  test.each<[string, object]>([
    ["curve.head.x[0]", { head: line([0.001, 40], [0.02, 10]) }],
    ["curve.runoutFlow", { runoutFlow: 0.03 }],
    ["curve.shutoffHead", { shutoffHead: 41 }],
    ["curve.shape", { shape: "rising in part" }],
    ["curve.shape", { ...curveOf(line([0, 40], [0.01, 40], [0.02, 10])), shape: "falling" }],
    ["curve.shutoffBasis", { shutoffBasis: "guessed" }],
  ])("%s must agree with them", (path, change) => {
    expect(refusedOf(curveOf(FALL))).toBeUndefined();
    expect(refusedOf({ ...curveOf(FALL), ...change })).toBe(path);
  });

  test("a head that stays level is not falling", () => {
    const level = { ...curveOf(line([0, 40], [0.01, 40], [0.02, 10])), shape: "rising in part" as const };
    expect(pumpHeadAt(level, flow(0.005))).toBe(40);
  });
});

describe("a line that does not span the curve", () => {
  const part = line([0.005, 0.4], [0.01, 0.6], [0.015, 0.5]);
  const curve = curveOf(FALL, { efficiency: part, inputPower: { ...part, y: part.y.map((y) => 1000 * y) } });

  test("is read from its first point to its last, both included", () => {
    const read = (q: number) => pumpEfficiencyAt(curve, flow(q));
    expect([0.00499, 0.005, 0.015, 0.01501].map(read)).toEqual([null, 0.4, 0.5, null]);
    expect(pumpInputPowerAt(curve, flow(0.004))).toBeNull();
  });

  test("so too at another speed", () => {
    // At full speed the similar point is the point itself; at half, it has twice the flow.
    const at = (q: number, speed: number) => {
      const head = (pumpHeadAt(curve, flow(q / speed)) * speed ** 2) as Length;
      const found = speedFor({ curve, flow: flow(q), head });
      return found.state === "runs" ? [found.efficiency, found.shaftPower] : [];
    };
    for (const [q, efficiency, power] of [
      [0.00499, null, null],
      [0.005, 0.4, 400],
      [0.015, 0.5, 500],
      [0.01501, null, null],
    ] as const) {
      for (const [k, want] of [efficiency, power].entries()) {
        const got = at(q, 1)[k];
        if (want === null) expect(got).toBeNull();
        else expect(got).toBeCloseTo(want, 9);
      }
    }
    const [efficiency, power] = at(0.005, 0.5);
    expect(efficiency).toBeCloseTo(0.6, 9);
    expect(power).toBeCloseTo(600 * 0.5 ** 3, 7);
  });

  test("makes no best point, no duty's region and no least flow past the end of the heads", () => {
    const long = curveOf(FALL, { efficiency: line([0, 0], [0.02, 0.5], [0.03, 0.6]) });
    expect(bestEfficiencyPoint(long)).toBeNull();
    expect(pumpDuty({ curve: long, flow: flow(0.01) })).toMatchObject({ bestFraction: null, region: "unknown" });
    const riseAllowed = 5 as TemperatureDifference;
    expect(minimumFlow({ curve: long, riseAllowed })).toEqual({ state: "unknown" });
    expect(minimumFlow({ curve, riseAllowed })).toEqual({ state: "unknown" });
  });

  test("leaves a sum of powers the flows that all have, or nothing", () => {
    const power = (...points: readonly (readonly [flow: number, power: number])[]) =>
      curveOf(FALL, { inputPower: line(...points) });
    const early = power([0.002, 200], [0.01, 1000]);
    const late = power([0.004, 800], [0.014, 2800]);
    const set = curvesInSeries([early, late]);
    const read = (q: number) => pumpInputPowerAt(set, flow(q));
    // 1e5 W per m³/s, and twice that.
    expect(read(0.007)).toBeCloseTo(3e5 * 0.007, 9);
    expect([0.0039, 0.0101].map(read)).toEqual([null, null]);
    expect(set.inputPower?.x).toEqual([0.004, 0.01]);
    expect(pumpInputPowerAt(curvesInSeries([early, power([0.011, 1], [0.014, 2])]), flow(0.01))).toBeNull();
    expect(pumpInputPowerAt(curvesInSeries([early, curveOf(FALL)]), flow(0.005))).toBeNull();
  });
});

describe("an efficiency that is best at no flow", () => {
  // Not what a pump has, but what such data may say.
  const curve = curveOf(FALL, { efficiency: line([0, 0.6], [0.01, 0.5], [0.02, 0.4]) });

  test("is the best point, and no share of it is a region", () => {
    expect(bestEfficiencyPoint(curve)).toEqual({ flow: 0, head: 40, efficiency: 0.6 });
    expect(pumpDuty({ curve, flow: flow(0.01) })).toMatchObject({ bestFraction: null, region: "unknown" });
  });

  test("never warms the water much: the least flow is none", () => {
    // 9.80665 · 40 · (1/0.6 − 1)/4186 = 0.0625 K.
    expect(minimumFlow({ curve, riseAllowed: 0.063 as TemperatureDifference })).toEqual({ state: "known", flow: 0 });
    expect(minimumFlow({ curve, riseAllowed: 0.062 as TemperatureDifference }).state).toBe("too warm at any flow");
  });
});

test("power is known from the least efficiency on, and electrical power by both efficiencies behind the shaft", () => {
  const curve = curveOf(FALL, { efficiency: line([0, 0], [0.01, 1e-6], [0.02, 0.5]) });
  const at = (q: number, driveEfficiency?: number) =>
    pumpPowerAt({
      curve,
      flow: flow(q),
      density: 1000 as Density,
      motorEfficiency: 0.8 as Ratio,
      ...(driveEfficiency === undefined ? {} : { driveEfficiency: driveEfficiency as Ratio }),
    });
  expect([0, 0.0099, 0.01].map((q) => at(q).state)).toEqual(["unknown", "unknown", "known"]);
  const power = at(0.02, 0.9);
  if (power.state !== "known") throw new Error(power.state);
  // Water power 1000 · 9.80665 · 0.02 · 10 = 1961.33 W.
  expect(power.shaftPower).toBeCloseTo(1961.33 / 0.5, 9);
  expect(power.electricalPower).toBeCloseTo(1961.33 / 0.5 / 0.8 / 0.9, 9);
  const idle = pumpPowerAt({
    curve: curveOf(FALL, { inputPower: line([0, 300], [0.02, 600]) }),
    flow: flow(0),
    density: 1000 as Density,
    motorEfficiency: 0.8 as Ratio,
  });
  expect(idle).toMatchObject({ state: "known", from: "input power", shaftPower: 300 as Power });
});

describe("a curve that rises in part", () => {
  const curve = () =>
    pumpCurve({
      points: [50, 60, 45, 52, 20].map((head, i) => ({ flow: flow(1e-5 * i), head: head as Length })),
    });

  test("is followed from rest: the first meeting, to 1e-11, no flow asked about once", () => {
    for (let rise = 2.6; rise <= 3.4; rise += 0.1) {
      // By 3 m a point: 46 m at the third point's 45, 49 m at the fourth's 52; the heads meet three times.
      const system = (q: number) => 40 + rise * 1e5 * q;
      const asked: number[] = [];
      const point = operatingPoint({
        curve: curve(),
        systemHead: (q) => {
          asked.push(q);
          return system(q) as Length;
        },
      });
      if (point.state !== "running") throw new Error(point.state);
      expect(point.flow).toBeLessThan(2e-5);
      const excess = (q: number) => pumpHeadAt(curve(), flow(q)) - system(q);
      expect(excess(point.flow * (1 - 1e-11))).toBeGreaterThan(0);
      expect(excess(point.flow * (1 + 1e-11))).toBeLessThan(0);
      expect(asked.filter((q) => q === 0)).toHaveLength(1);
      expect(point.evaluations).toBe(asked.length);
    }
  });

  test("met where it is level is stable there", () => {
    const met = operatingPoint({ curve: curve(), systemHead: () => 45 as Length });
    expect(met).toMatchObject({ state: "running", flow: 2e-5, head: 45, stable: true });
  });

  test("met at its very end runs there", () => {
    const met = operatingPoint({ curve: curve(), systemHead: () => 20 as Length });
    expect(met).toMatchObject({ state: "running", flow: 4e-5, head: 20 });
  });
});
