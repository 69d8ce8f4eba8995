/**
 * The fittings of a run of pipe: one loss, with the parts it was summed from.
 *
 * @module
 */
import { requireList, requireObject, requireWhole, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import { darcyWeisbachLoss } from "../pipe/index.ts";
import { InputError, type KinematicViscosity, type Length, type Velocity, type VolumeFlow } from "../units/index.ts";
import type { RunFitting } from "./run-fitting.ts";
import { AT_REST, lossOf } from "./run-fitting-loss.ts";

/** A run of pipe with fittings on it, and the flow in it. */
export interface FittingsLossInput {
  /** Flow; a negative flow runs backwards, which no check valve allows. −1000 to 1000 m³/s. */
  readonly flow: VolumeFlow;
  /** Inside diameter of the run. 0.001 to 10 m. */
  readonly insideDiameter: Length;
  /** Nominal size of the run as a length, for the three-K method; the inside diameter when left out. 0.001 to 10 m. */
  readonly nominalSize?: Length;
  /** Sand-grain roughness of the run, for equivalent lengths. 0 to half the diameter, m. */
  readonly roughness: Length;
  /** Kinematic viscosity of the water. 1e-9 to 1 m²/s. */
  readonly viscosity: KinematicViscosity;
  /** The fittings. 0 to 1000 entries. */
  readonly fittings: readonly RunFitting[];
}

/** The loss of one entry of the list. */
export interface FittingPart {
  /** What it is called. */
  readonly label: string;
  /** How many. */
  readonly count: number;
  /** Head lost by all of them, m; negative when the flow is. */
  readonly headLoss: Length;
  /** Resistance coefficient of one at this flow, on the velocity head in the run; null at rest. */
  readonly coefficient: number | null;
  /** Id of the source of the method, "derived", "common practice" (usual insert bores), or "given" for the caller's own figure. */
  readonly method: string;
  /** False where the method was used outside the range it is published for, or the flow does not hold a check valve open. */
  readonly insideRange: boolean;
}

/** The loss of all fittings on a run. */
export interface FittingsLoss {
  /** Head lost by all of them, m; negative when the flow is. */
  readonly headLoss: Length;
  /** Sum of the resistance coefficients at this flow; null at rest. */
  readonly coefficient: number | null;
  /** Length of the run's own pipe that loses as much at this flow, m; null at rest. */
  readonly equivalentLength: Length | null;
  /** Mean velocity in the run, m/s, with the sign of the flow. */
  readonly velocity: Velocity;
  /** The parts, in the order given. */
  readonly parts: readonly FittingPart[];
  /** False where any part was used outside its range. */
  readonly insideRange: boolean;
}

/**
 * Head lost in the fittings of a run, with the parts.
 *
 * @remarks
 * h = Σ n K V² / (2 g) over the entries, each K by its own method: three-K for named elbows, tees and valves, a length in
 * diameters for foot valves, one figure for entrances, exits and unions, the sum of narrowing, bore, turn and widening for
 * insert fittings, f L / D for an equivalent length, and the caller's own figures for the rest. Fittings are taken one by one:
 * two closer than about ten bores disturb each other, by up to a third either way. Tees by their share of flow: give the
 * coefficients of `teeCoefficients`.
 *
 * @param input - the run, the flow and the fittings; each field says its unit and the values it takes
 * @returns the head lost, as a coefficient, as a length of pipe, and part by part
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example A drop pipe of 1-1/4 in polyethylene at 10 gpm
 * ```ts
 * import { fittingsLoss } from "risingmain/fittings";
 * import { gpm, inches, inFeet, millimetres, psiDifference, squareMetresPerSecond } from "risingmain/units";
 *
 * const loss = fittingsLoss({
 *   flow: gpm(10), insideDiameter: inches(1.38), roughness: millimetres(0.0015), viscosity: squareMetresPerSecond(1.306e-6),
 *   fittings: [
 *     { kind: "insert", form: "coupling", count: 2 },
 *     { kind: "named", fitting: "elbow 90", count: 3 },
 *     { kind: "check valve", coefficient: 5, crackingPressure: psiDifference(0.5) },
 *     { kind: "rated loss", label: "sediment filter", ratedFlow: gpm(15), ratedLoss: psiDifference(5) },
 *   ],
 * });
 * loss.parts.map((part) => part.label); // => ["insert coupling", "elbow 90", "check valve", "sediment filter"]
 * inFeet(loss.headLoss); // ≈ 6.53
 * ```
 *
 * @source darby-1999: named elbows, tees and valves
 * @source crane-410: foot valves and entrances
 * @source derived: insert fittings, check valves, exits, the sum
 */
export function fittingsLoss(input: FittingsLossInput): FittingsLoss {
  requireObject("input", input);
  const { flow, insideDiameter: D, nominalSize = D, roughness, viscosity, fittings } = input;
  requireWithin("flow", flow, -1e3, 1e3, "m³/s");
  requireWithin("insideDiameter", D, 1e-3, 10, "m");
  requireWithin("nominalSize", nominalSize, 1e-3, 10, "m");
  requireWithin("roughness", roughness, 0, D / 2, "m (half the inside diameter)");
  requireWithin("viscosity", viscosity, 1e-9, 1, "m²/s");
  requireList("fittings", fittings, 0, 1000);

  const V = (4 * flow) / (Math.PI * D * D);
  const velocityHead = (V * V) / (2 * STANDARD_GRAVITY);
  const reynolds = (Math.abs(V) * D) / viscosity;
  requireWithin("flow (as a Reynolds number)", reynolds, 0, 1e12, "");
  const atRest = reynolds < AT_REST;
  const run = { flow, insideDiameter: D, nominalSize, roughness, viscosity };

  const parts = fittings.map((fitting, i): FittingPart => {
    const path = `fittings[${i}]`;
    requireObject(path, fitting);
    const { count = 1, label } = fitting;
    requireWhole(`${path}.count`, count, 0, 1e5);
    if (label !== undefined && typeof label !== "string") throw new InputError(`${path}.label`, label, "a text");
    const one = lossOf(fitting, run, reynolds, path);
    return {
      label: label ?? one.name,
      count,
      headLoss: (atRest ? 0 : count * one.headLoss) as Length,
      coefficient: atRest ? null : Math.abs(one.headLoss) / velocityHead,
      method: one.method,
      insideRange: one.insideRange,
    };
  });

  const headLoss = parts.reduce((sum, part) => sum + part.headLoss, 0);
  const perLength = atRest ? 0 : darcyWeisbachLoss({ ...run, length: 1 as Length }).headLoss;
  return {
    headLoss: headLoss as Length,
    coefficient: atRest ? null : Math.abs(headLoss) / velocityHead,
    equivalentLength: atRest ? null : ((headLoss / perLength) as Length),
    velocity: V as Velocity,
    parts,
    insideRange: parts.every((part) => part.insideRange),
  };
}
