/**
 * What the explicit approximations to Colebrook's equation share: input, result, gate.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { FrictionFactorInput } from "./friction-factor.ts";

/** A friction factor by an explicit approximation. */
export interface ExplicitFactor {
  /** Darcy friction factor, four times the Fanning factor. Above 0. */
  readonly value: number;
  /** Id of the source of the formula. */
  readonly method: string;
  /** True inside the range that source gives. */
  readonly insideRange: boolean;
}

/** Refuses what is no turbulent flow over a wall; under Re 2000 these formulas may meet log 1 = 0. */
export function requireTurbulent(input: FrictionFactorInput): void {
  requireObject("input", input);
  requireWithin("reynolds", input.reynolds, 2000, 1e17, "");
  requireWithin("relativeRoughness", input.relativeRoughness, 0, 0.5, "");
}

/** Whether Reynolds number and relative roughness lie inside a rectangle. */
export function isInside(
  { reynolds, relativeRoughness }: FrictionFactorInput,
  reynoldsRange: readonly [number, number],
  roughnessRange: readonly [number, number],
): boolean {
  return (
    reynolds >= reynoldsRange[0] &&
    reynolds <= reynoldsRange[1] &&
    relativeRoughness >= roughnessRange[0] &&
    relativeRoughness <= roughnessRange[1]
  );
}
