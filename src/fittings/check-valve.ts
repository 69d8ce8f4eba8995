/**
 * A check valve: shut until the cracking pressure, chattering until the flow holds it open, then a fitting like any other.
 *
 * @module
 */
import { requireObject, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { Density, Length, PressureDifference, VolumeFlow } from "../units/index.ts";

/** A check valve and the flow through it. */
export interface CheckValveInput {
  /** Flow; what would run backwards is stopped. −1000 to 1000 m³/s. */
  readonly flow: VolumeFlow;
  /** Inside diameter that the coefficient refers to. 0.0001 to 100 m. */
  readonly insideDiameter: Length;
  /** Resistance coefficient held fully open. 0.01 to 1e6. */
  readonly coefficient: number;
  /** Pressure that lifts the disc off its seat: 0.5 to 1 psi of spring is usual. 0 to 1e6 Pa. */
  readonly crackingPressure: PressureDifference;
  /** Density of the water. 500 to 2000 kg/m³. */
  readonly density: Density;
  /** Flow that holds it fully open, as its maker gives it; what the cracking pressure asks for when left out. 0 to 1000 m³/s. */
  readonly minimumFlow?: VolumeFlow;
}

/** What a check valve does at a flow. */
export interface CheckValveLoss {
  /** "shut" at rest and against backflow; "part open", where the disc may chatter; "open". */
  readonly state: "shut" | "part open" | "open";
  /** Head lost by forward flow, m; just above 0 flow the cracking head. 0 when shut. */
  readonly headLoss: Length;
  /** Head that cracks the valve, m. */
  readonly crackingHead: Length;
  /** Flow that holds the valve open, m³/s. */
  readonly minimumFlow: VolumeFlow;
}

/**
 * Head lost in a check valve, and whether the flow holds it open.
 *
 * @remarks
 * Open: h = K V² / (2 g). Part open, the spring (or the weight of the disc) is not yet overcome and
 * h = h_c + (h_m − h_c)(Q / Q_m)², from the cracking head h_c at the first drop to the open loss h_m at the flow Q_m that holds
 * the disc against its stop. Without a `minimumFlow`, Q_m is where K V²/(2 g) reaches h_c and the loss stays at h_c until
 * then; a given one smaller than that is raised to it, since the spring must be held down in any case.
 * A simple law of the spring: in the part-open range good to about the cracking pressure itself. A valve left part open wears
 * and hammers: choose the valve for the flow, not for the pipe.
 *
 * @param input - the valve and the flow; each field says its unit and the values it takes
 * @returns the state, the head lost, and the flow that holds it open
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example A spring check of 0.5 psi in 1 in pipe
 * ```ts
 * import { checkValveLoss } from "risingmain/fittings";
 * import { gpm, inches, inFeet, kilogramsPerCubicMetre, psiDifference } from "risingmain/units";
 *
 * const valve = {
 *   insideDiameter: inches(1.049), coefficient: 5, crackingPressure: psiDifference(0.5), density: kilogramsPerCubicMetre(999.7),
 * };
 * checkValveLoss({ ...valve, flow: gpm(5) }).state; // => "part open"
 * inFeet(checkValveLoss({ ...valve, flow: gpm(15) }).headLoss); // ≈ 2.41
 * checkValveLoss({ ...valve, flow: gpm(-5) }).state; // => "shut"
 * ```
 *
 * @source derived: force balance on a disc held by a spring
 */
export function checkValveLoss(input: CheckValveInput): CheckValveLoss {
  requireObject("input", input);
  const { flow, insideDiameter, coefficient, crackingPressure, density, minimumFlow = 0 } = input;
  requireWithin("flow", flow, -1e3, 1e3, "m³/s");
  requireWithin("insideDiameter", insideDiameter, 1e-4, 100, "m");
  requireWithin("coefficient", coefficient, 0.01, 1e6, "");
  requireWithin("crackingPressure", crackingPressure, 0, 1e6, "Pa");
  requireWithin("density", density, 500, 2000, "kg/m³");
  requireWithin("minimumFlow", minimumFlow, 0, 1e3, "m³/s");

  const area = (Math.PI / 4) * insideDiameter ** 2;
  /** h = r Q² held open. */
  const r = coefficient / (2 * STANDARD_GRAVITY * area * area);
  const cracking = crackingPressure / (density * STANDARD_GRAVITY);
  const holding = Math.max(minimumFlow, Math.sqrt(cracking / r));
  const common = { crackingHead: cracking as Length, minimumFlow: holding as VolumeFlow };
  if (flow <= 0) return { state: "shut", headLoss: 0 as Length, ...common };
  if (flow >= holding) return { state: "open", headLoss: (r * flow * flow) as Length, ...common };
  const share = flow / holding;
  return {
    state: "part open",
    headLoss: (cracking + (r * holding * holding - cracking) * share * share) as Length,
    ...common,
  };
}
