import { expect } from "vitest";

/** Meets a printed number: within half a unit of its last printed digit. What is no number at all meets none. */
export function near(got: unknown, printed: number, half: number): void {
  if (typeof got !== "number") return expect.unreachable(`computed ${String(got)}, printed ${printed}`);
  expect(Math.abs(got - printed), `computed ${got}, printed ${printed}`).toBeLessThanOrEqual(half * (1 + 1e-9));
}
