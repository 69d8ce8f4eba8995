/** The standard atmosphere against hydrostatics. */
import fc from "fast-check";
import type { Length } from "risingmain/units";
import { atmosphereAt } from "risingmain/water";
import { expect, test } from "vitest";

const elevations = fc.double({ min: -2000, max: 11000, noNaN: true });
const at = (z: number): number => atmosphereAt(z as Length);

test("sea level is one standard atmosphere, exactly", () => {
  expect(at(0)).toBe(101325);
});

test("pressure falls with elevation, by the weight of the air between", () => {
  fc.assert(
    fc.property(elevations, (z) => {
      fc.pre(z > -1990 && z < 10990);
      const slope = (at(z + 1) - at(z - 1)) / 2;
      // dp/dz = −ρ g with ρ = p/(R T), T and g falling with height as the standard has them.
      const geopotential = (6356766 * z) / (6356766 + z);
      const gravity = 9.80665 * (6356766 / (6356766 + z)) ** 2;
      const weight = (at(z) / (287.05287 * (288.15 - 0.0065 * geopotential))) * gravity;
      // The central difference over 2 m is good to 1e-8, its rounding to 1e-8.
      expect(Math.abs(-slope / weight - 1)).toBeLessThan(1e-7);
    }),
  );
});

test("beyond the lowest layer it is refused", () => {
  expect(() => at(11001)).toThrow("elevation");
  expect(() => at(-2001)).toThrow("elevation");
});
