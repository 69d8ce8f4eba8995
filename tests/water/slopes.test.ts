/** The slopes of the equation of state against differences of its own volume. */
import { expect, test } from "vitest";
import { specificVolume, volumeSlopeWithTemperature } from "../../src/water/liquid-at-one-bar.ts";

test.each([255, 275, 277.13, 280, 300, 340, 380])("volume's slope with temperature at %f K", (temperature) => {
  const step = 0.05;
  // Five points: the error goes with the fourth power of the step.
  const at = (n: number): number => specificVolume(temperature + n * step);
  const difference = (8 * (at(1) - at(-1)) - (at(2) - at(-2))) / (12 * step);
  expect(Math.abs(volumeSlopeWithTemperature(temperature) - difference)).toBeLessThan(1e-13);
});

test("water is densest near 4 °C: the slope changes its sign there", () => {
  expect(volumeSlopeWithTemperature(276.9)).toBeLessThan(0);
  expect(volumeSlopeWithTemperature(277.3)).toBeGreaterThan(0);
});
