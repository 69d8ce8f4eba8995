/** The friction factor against 50 digits, and the laws it must keep in every regime. */
import { readFileSync } from "node:fs";
import fc from "fast-check";
import { frictionFactor } from "risingmain/pipe";
import { describe, expect, test } from "vitest";

type Row = readonly [reynolds: number, relativeRoughness: number, f: number, tail: number];
const { rows } = JSON.parse(readFileSync(new URL("../fixtures/colebrook.json", import.meta.url), "utf8")) as {
  readonly rows: readonly Row[];
};

const roughness = fc.oneof(
  fc.constant(0),
  fc.double({ min: -9, max: Math.log10(0.5), noNaN: true }).map((x) => 10 ** x),
);
const reynoldsOf = (from: number, to: number) =>
  fc.double({ min: Math.log(from), max: Math.log(to), noNaN: true }).map((x) => Math.exp(x));
const factor = (reynolds: number, relativeRoughness: number) => frictionFactor({ reynolds, relativeRoughness });
/** Head loss without dimensions: f Re². */
const loss = (reynolds: number, relativeRoughness: number) => factor(reynolds, relativeRoughness).value * reynolds ** 2;

/** Last place of a double. */
function ulp(x: number): number {
  return 2 ** (Math.floor(Math.log2(x)) - 52);
}

/** Errors over some rows: relative, and in last places. */
function errors(of: readonly Row[]): { worst: number; rms: number; worstUlp: number; meanUlp: number } {
  const inUlp = of.map(([re, k, f, tail]) => Math.abs((factor(re, k).value - f) / ulp(f) - tail));
  const relative = of.map(([, , f], i) => ((inUlp[i] as number) * ulp(f)) / f);
  return {
    worst: Math.max(...relative),
    rms: Math.sqrt(relative.reduce((sum, e) => sum + e * e, 0) / relative.length),
    worstUlp: Math.max(...inUlp),
    meanUlp: inUlp.reduce((sum, e) => sum + e, 0) / inUlp.length,
  };
}

describe("Colebrook and White against 50 digits", () => {
  test("on the chart, Re 4e3 to 1e8 and k 0 to 0.05: within 4.5e-16", () => {
    const chart = rows.filter(([re, k]) => re <= 1e8 && k <= 0.05);
    expect(chart.length).toBeGreaterThan(2000);
    const { worst, rms, worstUlp, meanUlp } = errors(chart);
    console.log(
      `Colebrook, ${chart.length} points: worst ${worst.toExponential(2)} (${worstUlp.toFixed(2)} ulp), ` +
        `rms ${rms.toExponential(2)}, mean ${meanUlp.toFixed(3)} ulp`,
    );
    expect(worst).toBeLessThan(4.5e-16);
    expect(meanUlp).toBeLessThan(0.5);
  });

  test("beyond it, to Re 1e17 and k 0.5: within 1e-15", () => {
    const beyond = rows.filter(([re, k]) => re > 1e8 || k > 0.05);
    expect(beyond.length).toBeGreaterThan(250);
    expect(errors(beyond).worst).toBeLessThan(1e-15);
  });
});

describe("laws", () => {
  test("laminar flow is 64/Re on any wall", () => {
    fc.assert(
      fc.property(reynoldsOf(1e-9, 2000), roughness, (re, k) => {
        fc.pre(re <= 2000);
        expect(factor(re, k)).toEqual({
          value: 64 / re,
          slope: -1,
          regime: "laminar",
          method: "poiseuille-1840",
          insideRange: true,
        });
      }),
    );
  });

  test("the slope is the derivative d ln f / d ln Re, in every regime", () => {
    fc.assert(
      fc.property(reynoldsOf(10, 1e9), roughness, (re, k) => {
        const step = 1e-6;
        const edges = [2000, 4000];
        fc.pre(edges.every((edge) => Math.abs(re / edge - 1) > 2 * step));
        const numeric =
          (Math.log(factor(re * (1 + step), k).value) - Math.log(factor(re * (1 - step), k).value)) /
          (Math.log1p(step) - Math.log1p(-step));
        // Central difference: a third derivative of up to 1e3 times 1e-12 / 6, and rounding of some 1e-15 / 1e-6.
        expect(Math.abs(numeric - factor(re, k).slope)).toBeLessThan(3e-9);
      }),
    );
  });

  test("value and slope have no step at Re 2000 and 4000: the C1 bridge", () => {
    fc.assert(
      fc.property(roughness, fc.constantFrom(2000, 4000), (k, edge) => {
        const [below, above] = [factor(edge * (1 - 1e-12), k), factor(edge * (1 + 1e-12), k)];
        expect(Math.abs(below.value / above.value - 1)).toBeLessThan(1e-11);
        expect(Math.abs(below.slope - above.slope)).toBeLessThan(1e-9);
      }),
    );
  });

  test("head loss rises strictly with flow, through every regime", () => {
    fc.assert(
      fc.property(reynoldsOf(1, 1e9), fc.double({ min: 1e-12, max: 1, noNaN: true }), roughness, (re, more, k) => {
        expect(loss(re * (1 + more), k)).toBeGreaterThan(loss(re, k));
        // The relative slope of the loss is 2 + d ln f / d ln Re.
        expect(2 + factor(re, k).slope).toBeGreaterThan(0.9);
      }),
      { numRuns: 2000 },
    );
  });

  test("a rougher wall never loses less, and turbulent flow always more", () => {
    fc.assert(
      fc.property(reynoldsOf(1, 1e9), roughness, fc.double({ min: 0.01, max: 1, noNaN: true }), (re, k, more) => {
        const rougher = Math.min(0.5, k * (1 + more) + 1e-4);
        expect(loss(re, rougher)).toBeGreaterThanOrEqual(loss(re, k));
        if (re > 4000 && rougher > k * 1.001) expect(loss(re, rougher)).toBeGreaterThan(loss(re, k));
      }),
    );
  });

  test("the factor satisfies Colebrook's own equation", () => {
    fc.assert(
      fc.property(reynoldsOf(4000, 1e8), roughness, (re, k) => {
        fc.pre(re >= 4000);
        const root = Math.sqrt(factor(re, k).value);
        expect(Math.abs(root * -2 * Math.log10(k / 3.7 + 2.51 / (re * root)) - 1)).toBeLessThan(2e-15);
      }),
    );
  });

  test("inside the range: the laws, not the bridge, nor what lies beyond the chart", () => {
    expect(factor(1000, 0.01).insideRange).toBe(true);
    expect(factor(3000, 0.01).insideRange).toBe(false);
    expect(factor(1e5, 0.05).insideRange).toBe(true);
    expect(factor(1e5, 0.051).insideRange).toBe(false);
    expect(factor(1.1e8, 0).insideRange).toBe(false);
  });
});
