import { expect } from "vitest";

/** Meets a printed number: within half a unit of its last printed digit. */
export function near(got: number, printed: number, half: number): void {
  expect(Math.abs(got - printed), `computed ${got}, printed ${printed}`).toBeLessThanOrEqual(half * (1 + 1e-9));
}
