/** Water against a recorded library, its own definitions, and physics. */
import { readFileSync } from "node:fs";
import fc from "fast-check";
import { celsius, type Temperature } from "risingmain/units";
import {
  waterAt,
  waterBulkModulus,
  waterDensity,
  waterDynamicViscosity,
  waterIsothermalBulkModulus,
  waterKinematicViscosity,
  waterSpeedOfSound,
  waterVapourPressure,
  waterVapourPressureHead,
} from "risingmain/water";
import { describe, expect, test } from "vitest";

interface Row {
  readonly temperature: Temperature;
  readonly density: number;
  readonly dynamicViscosity: number;
  readonly speedOfSound: number;
  readonly isothermalBulkModulus: number;
  readonly vapourPressure?: number;
  readonly second?: { readonly density: number; readonly dynamicViscosity: number; readonly speedOfSound: number };
}

const fixture = JSON.parse(readFileSync(new URL("../fixtures/water.json", import.meta.url), "utf8")) as {
  readonly rows: readonly Row[];
};
const liquid = fc.double({ min: 253.15, max: 383.15, noNaN: true }).map((t) => t as Temperature);

const off = (got: number, want: number): number => Math.abs(got / want - 1);

describe("against the python library iapws", () => {
  test.each(fixture.rows)("same equations at $temperature K: to the rounding of doubles", (row) => {
    const water = waterAt({ temperature: row.temperature });
    // Sums of terms that cancel by up to four digits: 1e-12.
    expect(off(water.density, row.density)).toBeLessThan(1e-13);
    expect(off(water.dynamicViscosity, row.dynamicViscosity)).toBeLessThan(1e-13);
    expect(off(water.speedOfSound, row.speedOfSound)).toBeLessThan(1e-12);
    expect(off(waterIsothermalBulkModulus(row.temperature), row.isothermalBulkModulus)).toBeLessThan(1e-12);
    if (row.vapourPressure !== undefined) expect(off(water.vapourPressure, row.vapourPressure)).toBeLessThan(1e-12);
  });

  test("the full formulation IAPWS-95 agrees within the published uncertainties of SR6-08, 0 to 99 °C", () => {
    const rows = fixture.rows.flatMap(({ temperature, second }) => (second ? [{ temperature, second }] : []));
    expect(rows.length).toBeGreaterThan(35);
    for (const { temperature, second } of rows) {
      expect(off(waterDensity(temperature), second.density)).toBeLessThan(1e-6);
      expect(off(waterDynamicViscosity(temperature), second.dynamicViscosity)).toBeLessThan(1.7e-3);
      expect(off(waterSpeedOfSound(temperature), second.speedOfSound)).toBeLessThan(1e-5);
    }
  });
});

describe("laws", () => {
  test("water is densest near 4 °C, and thins and boils the more the warmer it is", () => {
    expect(waterDensity(celsius(3.98))).toBeGreaterThan(waterDensity(celsius(3.88)));
    expect(waterDensity(celsius(3.98))).toBeGreaterThan(waterDensity(celsius(4.08)));
    fc.assert(
      fc.property(liquid, liquid, (a, b) => {
        fc.pre(b - a > 1e-6);
        expect(waterDynamicViscosity(b)).toBeLessThan(waterDynamicViscosity(a));
        expect(waterVapourPressure(b)).toBeGreaterThan(waterVapourPressure(a));
      }),
    );
  });

  test("kinematic viscosity, moduli and vapour head follow from their definitions", () => {
    fc.assert(
      fc.property(liquid, (t) => {
        const density = waterDensity(t);
        expect(off(waterKinematicViscosity(t) * density, waterDynamicViscosity(t))).toBeLessThan(1e-15);
        expect(off(waterBulkModulus(t), density * waterSpeedOfSound(t) ** 2)).toBeLessThan(1e-15);
        expect(waterBulkModulus(t)).toBeGreaterThanOrEqual(waterIsothermalBulkModulus(t));
        expect(off(waterVapourPressureHead(t) * density * 9.80665, waterVapourPressure(t))).toBeLessThan(1e-15);
      }),
    );
  });

  test("the range is 0 to 100 °C, the accepted range wider", () => {
    expect(waterAt({ temperature: celsius(-0.01) }).insideRange).toBe(false);
    expect(waterAt({ temperature: celsius(0) }).insideRange).toBe(true);
    expect(waterAt({ temperature: celsius(100) }).insideRange).toBe(true);
    expect(waterAt({ temperature: celsius(100.01) }).insideRange).toBe(false);
    expect(() => waterAt({ temperature: celsius(110.1) })).toThrow("−20 to 110 °C");
    expect(() => waterAt({ temperature: 52 as Temperature })).toThrow("temperature");
  });
});
