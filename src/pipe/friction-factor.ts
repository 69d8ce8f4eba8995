/**
 * The Darcy friction factor of a full round pipe, whatever the flow: laminar, in between, turbulent.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import { bridge, LAMINAR_END, onBridge, TURBULENT_START } from "./bridge.ts";
import { colebrookFactor, colebrookSlope } from "./colebrook.ts";

/** The law that gave a friction factor. */
export type FrictionRegime = "laminar" | "transition" | "turbulent";

/** A flow and a wall, without dimensions. */
export interface FrictionFactorInput {
  /** Reynolds number V D / ν. 1e-9 to 1e17. */
  readonly reynolds: number;
  /** Equivalent sand-grain height of the wall over the inside diameter, 0 for smooth. 0 to 0.5. */
  readonly relativeRoughness: number;
}

/** The friction factor and where it came from. */
export interface FrictionFactor {
  /** Darcy friction factor, four times the Fanning factor. Above 0. */
  readonly value: number;
  /** d ln f / d ln Re at constant roughness: −1 in laminar flow, near −0.2 on a smooth wall, 0 on a rough one. */
  readonly slope: number;
  /** The law that gave it. */
  readonly regime: FrictionRegime;
  /** Id of the source of that law, or "derived" for the bridge between the two. */
  readonly method: "poiseuille-1840" | "colebrook-1939" | "derived";
  /** False in transition, where no law is published, and beyond Re = 1e8 or a relative roughness of 0.05. */
  readonly insideRange: boolean;
}

/**
 * Darcy friction factor in a straight, full, round pipe.
 *
 * @remarks
 * Laminar, Re ≤ 2000: f = 64 / Re. Turbulent, Re ≥ 4000: 1/√f = −2 log₁₀(k/3.7 + 2.51/(Re √f)), solved in full.
 * Between them no law is published and real flow switches to and fro; f Re², which is the head loss without
 * dimensions, follows the cubic in Re that meets both laws in value and slope, so that head loss rises strictly with
 * flow and has no kink. Within some 10 % of measurement in new pipe.
 *
 * @param input - Reynolds number (1e-9 to 1e17) and relative roughness (0 to 0.5)
 * @returns the factor, its slope, the law and whether it was used inside its range
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { frictionFactor } from "risingmain/pipe";
 *
 * frictionFactor({ reynolds: 1e5, relativeRoughness: 0.001 }).value; // ≈ 0.02217
 * ```
 *
 * @source colebrook-1939, equation 16, with the constants 3.7 and 2.51
 * @source poiseuille-1840: the laminar law
 * @source derived: the bridge, the only cubic that meets both laws in value and slope
 */
export function frictionFactor(input: FrictionFactorInput): FrictionFactor {
  requireObject("input", input);
  const { reynolds, relativeRoughness } = input;
  requireWithin("reynolds", reynolds, 1e-9, 1e17, "");
  requireWithin("relativeRoughness", relativeRoughness, 0, 0.5, "");
  return frictionOf(reynolds, relativeRoughness);
}

/** The same without the gate, for callers whose own gates keep inside it. */
export function frictionOf(reynolds: number, relativeRoughness: number): FrictionFactor {
  if (reynolds >= TURBULENT_START) {
    const value = colebrookFactor(reynolds, relativeRoughness);
    const slope = colebrookSlope(reynolds, relativeRoughness, value);
    // The chart of Colebrook's equation (`moody-1944`) ends here.
    const insideRange = reynolds <= 1e8 && relativeRoughness <= 0.05;
    return { value, slope, regime: "turbulent", method: "colebrook-1939", insideRange };
  }
  if (reynolds > LAMINAR_END) {
    const { value, slope } = onBridge(bridge(relativeRoughness), reynolds);
    return { value, slope, regime: "transition", method: "derived", insideRange: false };
  }
  return { value: 64 / reynolds, slope: -1, regime: "laminar", method: "poiseuille-1840", insideRange: true };
}
