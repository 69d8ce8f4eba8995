/**
 * The flow that a check or foot valve wants so that its disc stays lifted.
 *
 * @module
 */
import { requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import type { Density, Length, VolumeFlow } from "../units/index.ts";

/** Kinds of check valve. */
export type CheckValveKind = "swing" | "swing clearway" | "lift" | "foot poppet" | "foot hinged";

/** A check valve by kind and size. */
export interface CheckValveMinimumInput {
  /** Kind. */
  readonly kind: CheckValveKind;
  /** Inside diameter of the pipe. 0.001 to 10 m. */
  readonly insideDiameter: Length;
  /** Density of the water. 500 to 2000 kg/m³. */
  readonly density: Density;
}

/** Velocity for full lift times √density, in m/s·√(kg/m³), of each kind. */
const LIFTING: Readonly<Record<CheckValveKind, number>> = {
  swing: 45,
  "swing clearway": 75,
  lift: 50,
  "foot poppet": 20,
  "foot hinged": 45,
};

/**
 * Least flow that holds a check valve fully open.
 *
 * @remarks
 * V = c / √ρ, with c by the kind of valve, full line size; times the area of the bore. A valve that runs below it chatters, wears and
 * loses more head than its coefficient says. Springs differ: a maker's own figure goes before this one.
 *
 * @param input - kind, bore and density; each field says its unit and the values it takes
 * @returns the least flow, m³/s
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example A swing check in 2 in schedule 40 steel
 * ```ts
 * import { checkValveMinimumFlow } from "risingmain/fittings";
 * import { inches, inGpm, kilogramsPerCubicMetre } from "risingmain/units";
 *
 * inGpm(checkValveMinimumFlow({ kind: "swing", insideDiameter: inches(2.067), density: kilogramsPerCubicMetre(999) })); // ≈ 49
 * ```
 *
 * @source crane-410, minimum pipe velocities for full disc lift, recalled
 */
export function checkValveMinimumFlow(input: CheckValveMinimumInput): VolumeFlow {
  requireObject("input", input);
  const { kind, insideDiameter, density } = input;
  requireOneOf("kind", kind, Object.keys(LIFTING));
  requireWithin("insideDiameter", insideDiameter, 1e-3, 10, "m");
  requireWithin("density", density, 500, 2000, "kg/m³");
  return ((LIFTING[kind] / Math.sqrt(density)) * (Math.PI / 4) * insideDiameter ** 2) as VolumeFlow;
}
