import { expect } from "vitest";

/** Meets a printed number: within half a unit of its last printed digit. What is no number at all meets none. */
export function near(got: unknown, printed: number, half: number): void {
  expect(got, `computed ${String(got)}, printed ${printed}`).toBeTypeOf("number");
  expect(Math.abs(Number(got) - printed), `computed ${got}, printed ${printed}`).toBeLessThanOrEqual(half * (1 + 1e-9));
}
