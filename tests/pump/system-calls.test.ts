/**
 * How often a system is asked, how often the curve is read, and how near the answer is, on a grid of pumps and systems.
 * Counts, not times, so that they are the same on every machine.
 */
import { type OperatingPoint, operatingPoint, type PumpCurve, pumpCurve, pumpHeadAt } from "risingmain/pump";
import type { Length, VolumeFlow } from "risingmain/units";
import { describe, expect, test } from "vitest";
import { refused } from "../refused.ts";

/** What a system takes, as a share of the shutoff head, at a share of the curve's last flow. */
type System = (share: number) => number;

const curveThrough = (points: readonly (readonly [flow: number, head: number])[]): PumpCurve =>
  pumpCurve({ points: points.map(([flow, head]) => ({ flow: flow as VolumeFlow, head: head as Length })) });

/** A straight fall from 64 m to 32 m at 1/16 m³/s. */
const straight = () =>
  curveThrough([
    [0, 64],
    [1 / 16, 32],
  ]);

/** The straight fall, a parabola, a sheet's few points, and many points with bends either way. */
const pumps = () => [
  straight(),
  curveThrough([0, 0.25, 0.5, 0.75, 1].map((share) => [0.004 * share, 90 - 60 * share ** 2])),
  curveThrough([
    [0, 110],
    [0.5e-3, 104],
    [1e-3, 88],
    [1.5e-3, 58],
    [1.8e-3, 33],
  ]),
  curveThrough([300, 299, 280, 262, 220, 190, 130, 90, 20, 0].map((head, i) => [i / 9, head])),
];

/** All ways to take one of each list. */
function each<const T extends readonly (readonly number[])[]>(
  lists: T,
  make: (...values: { [K in keyof T]: number }) => System,
): readonly System[] {
  const all = lists.reduce<number[][]>((so, list) => so.flatMap((begun) => list.map((next) => [...begun, next])), [[]]);
  return all.map((values) => make(...(values as { [K in keyof T]: number })));
}

const LIFTS = [-0.2, 0.2, 0.8, 0.99];
const LOW_LIFTS = [0, 0.2, 0.5];
const AT = [0.1, 0.3, 0.5, 0.7];

interface Kind {
  readonly systems: () => readonly System[];
  /** Calls of the system, the one at no flow among them: in the mean, and at most. */
  readonly mean: number;
  readonly most: number;
  /** Readings of the curve's slopes in the mean: each step of the inner search reads two. */
  readonly read: number;
  /** Error of the flow as a share of it, beyond what rounding of the heads moves it. */
  readonly error: number;
}

/** The bounds are the counts of the method as it is, with about one part in a hundred to spare. */
const kinds: Readonly<Record<string, Kind>> = {
  "one power of the flow": {
    systems: () =>
      each([LIFTS, [0.03, 0.3, 3, 30], [1, 1.75, 1.83, 1.9, 2, 4]], (lift, k, n) => (q) => lift + k * q ** n),
    mean: 3.72,
    most: 4,
    read: 25,
    error: 1e-13,
  },
  "friction and drawdown": {
    systems: () =>
      each([LIFTS, [0.03, 0.3, 3], [1.75, 2], [0.05, 0.3]], (lift, k, n, b) => (q) => lift + b * q + k * q ** n),
    mean: 4.73,
    most: 6,
    read: 30.2,
    error: 1e-12,
  },
  level: {
    systems: () => each([Array.from({ length: 30 }, (_, i) => -0.2 + i / 25)], (lift) => () => lift),
    mean: 3,
    most: 3,
    read: 17.3,
    error: 1e-12,
  },
  "friction beyond a threshold alone": {
    systems: () => each([LOW_LIFTS, AT], (lift, at) => (q) => lift + 2 * Math.max(0, q - at)),
    mean: 7,
    most: 11,
    read: 43.8,
    error: 1e-9,
  },
  "friction with a kink": {
    systems: () => each([LOW_LIFTS, AT], (lift, at) => (q) => lift + 0.1 * q ** 1.8 + 2 * Math.max(0, q - at)),
    mean: 6.9,
    most: 9,
    read: 43.8,
    error: 1e-10,
  },
  "friction that levels off": {
    systems: () =>
      each(
        [
          [0, 0.2],
          [0.1, 0.3, 0.5],
          [1, 5, 20],
        ],
        (lift, top, k) => (q) => lift + Math.min(top, k * q ** 2),
      ),
    mean: 4,
    most: 7,
    read: 24.3,
    error: 1e-12,
  },
  "laminar flow that turns": {
    systems: () =>
      each([LOW_LIFTS, [0.1, 0.3, 0.6], [0.3, 1]], (lift, at, k) => (q) => {
        const w = Math.min(1, Math.max(0, (q - at) / 0.1));
        const turned = w * w * (3 - 2 * w);
        return lift + k * ((1 - turned) * 0.6 * at ** 0.75 * q + turned * q ** 1.75);
      }),
    mean: 4.53,
    most: 10,
    read: 28.5,
    error: 1e-12,
  },
  "a table with straight lines between": {
    systems: () =>
      each([LOW_LIFTS, [4, 10], [0.2, 1]], (lift, n, k) => (q) => {
        const i = Math.min(n - 1, Math.floor(q * n));
        const at = (j: number) => (j / n) ** 1.9;
        return lift + k * (at(i) + (q * n - i) * (at(i + 1) - at(i)));
      }),
    mean: 5,
    most: 6,
    read: 30.5,
    error: 1e-9,
  },
  "one step": {
    systems: () =>
      each(
        [LOW_LIFTS, [0.15, 0.35, 0.55, 0.75, 0.85], [0.2, 0.6]],
        (lift, at, height) => (q) => lift + 0.1 * q ** 1.8 + (q > at ? height : 0),
      ),
    mean: 21.8,
    most: 70,
    read: 156.7,
    error: 1e-11,
  },
  stairs: {
    systems: () =>
      each([LOW_LIFTS, [7, 50], [0.2, 0.6]], (lift, n, height) => (q) => lift + (height * Math.floor(n * q)) / n),
    mean: 17.7,
    most: 62,
    read: 88.9,
    error: 1e-11,
  },
};

/** A curve that counts how often its slopes are read. */
function counted(curve: PumpCurve, read: () => void): PumpCurve {
  const slope = new Proxy(curve.head.slope, {
    get: (target, key) => {
      if (key !== "length") read();
      return Reflect.get(target, key) as unknown;
    },
  });
  return { ...curve, head: { ...curve.head, slope } };
}

/**
 * Whether an answer is right but for the error allowed: the pump's head less the system's, which falls all the way, changes
 * its sign there, or is what is left at the end; rounding of the heads counts as nothing.
 */
function isRight(point: OperatingPoint, curve: PumpCurve, system: (flow: number) => number, error: number): boolean {
  const rounding = 8 * Number.EPSILON * curve.shutoffHead;
  const excess = (flow: number): number => pumpHeadAt(curve, flow as VolumeFlow) - system(flow);
  const end = curve.runoutFlow;
  if (point.state === "runs out") return point.spare > 0 && Math.abs(point.spare - excess(end)) <= rounding;
  if (point.state !== "running") return false;
  const beyond = Math.min(point.flow * (1 + error), end);
  return excess(point.flow * (1 - error)) > -rounding && excess(beyond) < rounding;
}

describe("a falling curve meets a system", () => {
  test.each(Object.entries(kinds))("of %s", (_, { systems, mean, most, read, error }) => {
    let cases = 0;
    let calls = 0;
    let reads = 0;
    let greatest = 0;
    let wrong = 0;
    for (const curve of pumps()) {
      const watched = counted(curve, () => {
        reads++;
      });
      for (const share of systems()) {
        const system = (flow: number) => curve.shutoffHead * share(flow / curve.runoutFlow);
        let asked = 0;
        const point = operatingPoint({
          curve: watched,
          systemHead: (flow) => {
            asked++;
            return system(flow) as Length;
          },
        });
        cases++;
        calls += asked;
        greatest = Math.max(greatest, asked);
        if (!isRight(point, curve, system, error)) wrong++;
        if (point.state === "running" && point.evaluations !== asked) wrong++;
      }
    }
    expect(wrong).toBe(0);
    expect(greatest).toBeLessThanOrEqual(most);
    expect(calls / cases).toBeLessThanOrEqual(mean);
    expect(reads / cases).toBeLessThanOrEqual(read);
  });

  test("however little head is left at its end, it runs out", () => {
    const curve = straight();
    for (let left = 1; left > 1e-11; left /= 2) {
      // Its friction leaves so many metres of the 32 m there, and grows from the square towards the flow itself.
      const systemHead = (flow: VolumeFlow) => (4 + ((28 - left) * 2 * (16 * flow) ** 2) / (1 + 16 * flow)) as Length;
      const spare = 32 - systemHead(curve.runoutFlow);
      expect(operatingPoint({ curve, systemHead })).toEqual({ state: "runs out", moreThan: curve.runoutFlow, spare });
    }
  });
});

describe("a system that is not what it should be", () => {
  test("may fall by what is rounding beside 64 m, and no more", () => {
    const fallen = (by: number) =>
      operatingPoint({ curve: straight(), systemHead: (flow) => (flow > 0 ? -by : 0) as Length });
    expect(fallen(64 * 1e-12).state).toBe("runs out");
    expect(refused(() => fallen(64 * 1.01e-12))).toBe("systemHead");
  });

  test("falls by rounding, and the pump makes its head at a point of the curve: that is the point", () => {
    const kinked = curveThrough([
      [0, 64],
      [0.01, 48],
      [0.02, 16],
    ]);
    const point = operatingPoint({ curve: kinked, systemHead: (flow) => (flow > 0 ? 48 - 1e-11 : 48) as Length });
    expect(point).toMatchObject({ state: "running", flow: 0.01 });
  });

  test("changes while it is asked: an answer, or a refusal by name", () => {
    const changed = (to: number) => {
      let asked = 0;
      return () =>
        operatingPoint({
          curve: straight(),
          // A step, so that Brent's method asks again at flows that were asked before.
          systemHead: (flow) => (++asked > 13 ? to : flow > 0.04 ? 60 : 10) as Length,
        });
    };
    expect(refused(changed(1000))).toBe("systemHead");
    expect(refused(changed(10))).toBeUndefined();
  });
});
