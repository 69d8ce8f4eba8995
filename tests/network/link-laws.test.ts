/** What each kind of link loses, how steeply, and which way water may pass it. */
import type { CurveSource, Run } from "risingmain/network";
import { describe, expect, test } from "vitest";
import { curveLaw, type LinkLaw, outletLaw, runLaw } from "../../src/network/link-laws.ts";
import { refused } from "../refused.ts";
import { flow, lossOf, m, water } from "./layouts.ts";

const at = (law: LinkLaw, q: number): { loss: number; slope: number } => {
  const value = { loss: Number.NaN, slope: Number.NaN };
  law.at(q, value);
  return value;
};
const ends = { id: "r", from: "a", to: "b" };
const bore = { insideDiameter: m(0.03), length: m(40), lossCoefficient: 8 };
const darcy: Run = { ...ends, ...bore, law: "darcy-weisbach", roughness: m(1e-5) };
const rule: Run = { ...ends, ...bore, law: "hazen-williams", coefficient: 130 };
const power: Run = { ...ends, law: "power", resistance: 1e5, exponent: 1.7 };
const square: Run = { ...power, exponent: 2 };
const straight: Run = { ...power, exponent: 1 };
const area = (Math.PI / 4) * 0.03 ** 2;
/** Flow at a Reynolds number in the bore of 30 mm. */
const atReynolds = (reynolds: number) => (reynolds * 1.307e-6 * area) / 0.03;

/** Laminar, just so and just not, in transition and turbulent; and against the run. */
const flows = [1e-7, 0.999, 1.001, 1.5, 3, 20, -0.5, -1.5, -20].map((times) => times * atReynolds(2000));

describe.each<[string, Run]>([
  ["darcy-weisbach", darcy],
  ["hazen-williams", rule],
  ["power", power],
  ["square", square],
  ["straight", straight],
])("%s", (_, run) => {
  test("loses what the public formula loses, and its slope is how fast that grows", () => {
    const law = runLaw(run, water);
    const leastSlope = run.law === "darcy-weisbach" ? 0 : 1e-6 * law.usualSlope;
    for (const q of flows) {
      const { loss, slope } = at(law, q);
      expect(Math.abs(loss / lossOf(run, q) - 1)).toBeLessThan(1e-13);
      const h = 1e-4 * q;
      const growth = (lossOf(run, q + h) - lossOf(run, q - h)) / (2 * h);
      expect(Math.abs(slope / Math.max(growth, leastSlope) - 1)).toBeLessThan(1e-5);
    }
  });

  test("starts from the straight line to its loss at a usual flow: 1 m/s, or what loses 1 m", () => {
    const usual = "insideDiameter" in run ? area : run.resistance ** (-1 / run.exponent);
    expect(runLaw(run, water).usualSlope / (lossOf(run, usual) / usual)).toBeCloseTo(1, 12);
  });

  test("is never level at rest, and loses nothing there", () => {
    const law = runLaw(run, water);
    const { loss, slope } = at(law, 0);
    expect(loss).toBe(0);
    expect(slope).toBeGreaterThanOrEqual(0.999e-6 * law.usualSlope);
    expect(slope).toBeLessThanOrEqual(law.usualSlope);
  });

  test("passes both ways; behind a check or reducing valve next to nothing comes back", () => {
    const free = runLaw(run, water);
    expect(free.oneWay).toBe(false);
    expect(runLaw({ ...run, valve: { kind: "shut" } }, water).oneWay).toBe(false);
    for (const valve of [{ kind: "check" }, { kind: "reducing", setPressure: 1e5 }] as const) {
      const law = runLaw({ ...run, valve } as Run, water);
      expect(law.oneWay).toBe(true);
      expect(at(law, 0)).toEqual(at(free, 0));
      expect(at(law, 1e-3)).toEqual(at(free, 1e-3));
      expect(law.usualSlope).toBe(free.usualSlope);
      expect(law.covers).toEqual(expect.any(Function));
      const back = at(law, -1e-4);
      expect(back.slope).toBe(1e6 * free.usualSlope);
      expect(back.loss / (-1e-4 * back.slope)).toBeCloseTo(1, 12);
    }
  });
});

test("a run without fittings loses by friction alone", () => {
  for (const run of [darcy, rule]) {
    const { lossCoefficient, ...plain } = run as typeof darcy & { lossCoefficient?: number };
    const fittings = (8 * (1e-3 / area) ** 2) / (2 * 9.80665);
    expect(at(runLaw(run, water), 1e-3).loss - at(runLaw(plain, water), 1e-3).loss).toBeCloseTo(fittings, 12);
  }
});

test("the laws say where their sources end", () => {
  const covers = (run: Run, q: number) => runLaw(run, water).covers(q);
  // Laminar to 2000, no law published in transition, Colebrook from 4000 to 1e8.
  const reynolds = [0, 1900, 2100, 3900, 4100, -4100, -3000, 0.9e8, 1.1e8];
  expect(reynolds.map((re) => covers(darcy, atReynolds(re)))).toEqual([
    true,
    true,
    false,
    false,
    true,
    true,
    false,
    true,
    false,
  ]);
  // Relative roughness to 0.05.
  expect([0.0015, 0.0016].map((roughness) => covers({ ...darcy, roughness: m(roughness) } as Run, area))).toEqual([
    true,
    false,
  ]);
  const main: Run = { ...rule, insideDiameter: m(0.1) } as Run;
  expect([1, 40].map((speed) => covers(main, speed * (Math.PI / 4) * 0.1 ** 2))).toEqual([true, false]);
  expect(covers({ ...rule, insideDiameter: m(0.002) } as Run, 1e-6)).toBe(false);
  expect(covers({ ...rule, insideDiameter: m(0.002) } as Run, 0)).toBe(true);
  expect(covers(power, 1e3)).toBe(true);
  // The valve does not change what the law covers.
  expect(covers({ ...darcy, valve: { kind: "check" } }, atReynolds(3000))).toBe(false);
});

test("friction at a Reynolds number beyond any pipe goes on as the square of the flow", () => {
  const wide: Run = { ...darcy, insideDiameter: m(1), roughness: m(0.01), lossCoefficient: 0 };
  const water0 = { ...water, kinematicViscosity: 1e-8 } as typeof water;
  const q = (1e17 * 1e-8 * (Math.PI / 4)) / 1; // at Re = 1e17 in a bore of 1 m
  const law = runLaw(wide, water0);
  expect(at(law, 30 * q).loss / at(law, 3 * q).loss).toBeCloseTo(100, 9);
  expect(law.covers(3 * q)).toBe(false);
});

test("an outlet loses (Q / c)², and draws next to nothing in", () => {
  const law = outletLaw(2e-4, 9);
  expect(law.oneWay).toBe(true);
  expect(at(law, 6e-4).loss).toBeCloseTo(9, 12);
  expect(at(law, 6e-4).slope / ((2 * 9) / 6e-4)).toBeCloseTo(1, 12);
  // From rest to what it gives at 9 m of head.
  expect(law.usualSlope / (9 / 6e-4)).toBeCloseTo(1, 12);
  expect(at(law, -1e-6).loss / (-1e-6 * 1e6 * law.usualSlope)).toBeCloseTo(1, 12);
});

describe("a source's curve", () => {
  const source = (headAtFlow: (q: number) => number): CurveSource =>
    ({ id: "p", junction: "a", kind: "curve", headAtFlow, largestFlow: flow(0.002) }) as unknown as CurveSource;
  const parabola = (q: number) => 50 - 5e6 * q * q; // 50 m down to 30 m

  test("is a loss with its sign turned, steep on both sides of what it gives", () => {
    const law = curveLaw(source(parabola), "sources[0]");
    expect(law.oneWay).toBe(true);
    expect(law.covers(1)).toBe(true);
    expect(law.usualSlope).toBeCloseTo(20 / 0.002, 9);
    for (const q of [0, 0.0005, 0.0013, 0.002]) expect(at(law, q).loss).toBe(-parabola(q));
    for (const q of [0.0005, 0.0013]) expect(at(law, q).slope / (2 * 5e6 * q)).toBeCloseTo(1, 5);
    // At the ends the slope is taken from the one side there is.
    expect(at(law, 0.002).slope / (2 * 5e6 * 0.002)).toBeCloseTo(1, 5);
    const steep = 1e6 * law.usualSlope;
    expect(at(law, -1e-4)).toEqual({ loss: -50 - steep * 1e-4, slope: steep });
    expect(at(law, 0.0021).slope).toBe(steep);
    expect(at(law, 0.0021).loss).toBeCloseTo(-30 + steep * 1e-4, 6);
  });

  test("is asked only from rest to its largest flow, and at the ends once for all", () => {
    const asked: number[] = [];
    const law = curveLaw(
      source((q) => {
        asked.push(q);
        return parabola(q);
      }),
      "sources[0]",
    );
    expect(asked).toEqual([0, 0.002]);
    for (const q of [-1, 0, 0.001, 0.002, 5]) at(law, q);
    expect(Math.min(...asked)).toBe(0);
    expect(Math.max(...asked)).toBe(0.002);
    // Outside nothing is asked; at each end the slope takes two, inside three.
    expect(asked.length).toBe(2 + 2 + 3 + 2);
  });

  test("a level one has a slope to step by: a millionth of 1 m over its largest flow", () => {
    const law = curveLaw(
      source(() => 40),
      "sources[0]",
    );
    expect(law.usualSlope).toBe(1 / 0.002);
    expect(at(law, 0.001).slope).toBeCloseTo(1e-6 / 0.002, 15);
  });

  test("may not rise, as a whole or anywhere by more than rounding", () => {
    const rising = source((q) => parabola(q) + 25 * (q / 0.002) ** 2);
    expect(refused(() => curveLaw(rising, "sources[3]"))).toBe("sources[3].headAtFlow");
    const humped = curveLaw(
      source((q) => parabola(q) + 0.05 * Math.sin(1e6 * q)),
      "sources[3]",
    );
    const top = 0.001 + (2 * Math.PI - (1000 % (2 * Math.PI))) / 1e6; // where the sine rises
    expect(refused(() => at(humped, top))).toBe(`sources[3].headAtFlow(${top})`);
    // Up by 1e-4 of its usual slope, 10 m over the largest flow: rounding.
    const level = curveLaw(
      source((q) => (q < 0.0019 ? 40 + 0.001 * (q / 0.002) : 30)),
      "sources[3]",
    );
    expect(at(level, 0.001).slope).toBe(1e-6 * level.usualSlope);
  });
});
