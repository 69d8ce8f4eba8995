/**
 * The bore that carries a flow for a given head loss: `darcyWeisbachLoss` turned around for the diameter.
 *
 * @module
 */
import { findRoot, requireObject, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { KinematicViscosity, Length, VolumeFlow } from "../units/index.ts";
import { bridge, LAMINAR_END, onBridge, TURBULENT_START } from "./bridge.ts";
import { colebrookDiameter } from "./colebrook-diameter.ts";

/** A flow, the head it may lose, and the kind of pipe. */
export interface DiameterForHeadLossInput {
  /** Flow; its direction does not matter here. 1e-9 to 1000 m³/s. */
  readonly flow: VolumeFlow;
  /** Head lost. 1e-9 to 100 000 m. */
  readonly headLoss: Length;
  /** Length of straight pipe. 0.001 to 1 000 000 m. */
  readonly length: Length;
  /** Equivalent sand-grain height of the wall, 0 for smooth. 0 to 0.1 m. */
  readonly roughness: Length;
  /** Kinematic viscosity of the liquid. 1e-9 to 1 m²/s. */
  readonly viscosity: KinematicViscosity;
}

/** The bore, or why there is none. */
export type DiameterForHeadLoss =
  | {
      /** A bore was found. */
      readonly state: "found";
      /** Inside diameter that loses just the head given, m. Pipes with a wider bore lose less. */
      readonly insideDiameter: Length;
    }
  | {
      /** The wall is rougher than half the bore that would lose so much: no formula reaches there. */
      /** Any bore that loses so much is narrower than the wall is rough. */
      readonly state: "rougher than the bore";
      /** The narrowest bore the roughness allows, twice its height, m; it loses less than the head given. */
      readonly narrowest: Length;
    };

/**
 * Inside diameter of the straight, full, round pipe that loses a given head at a given flow.
 *
 * @remarks
 * With x = 1/√f the diameter is D₁ x^−2/5, D₁⁵ = 8 Q² L / (π² g h), and in y = x^1/5 Colebrook's equation becomes
 * y⁵ = −2 log₁₀(A y² + B y³): two rough and two accurate steps solve it. Laminar flow is D⁴ = 128 ν L Q / (π g h);
 * between the two, a bracketed search from Re 4000 to 2000. The loss falls strictly with the bore, so there is one.
 *
 * @param input - the flow, the loss and the pipe; each field says its unit and the values it takes
 * @returns the bore, or that the wall is too rough for it
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example The bore for 25 gpm over 1,300 ft with 30 ft to spend
 * ```ts
 * import { diameterForHeadLoss } from "risingmain/pipe";
 * import { celsius, feet, gpm, inInches } from "risingmain/units";
 * import { waterKinematicViscosity } from "risingmain/water";
 *
 * const bore = diameterForHeadLoss({
 *   flow: gpm(25), headLoss: feet(30), length: feet(1300),
 *   roughness: feet(0.000005), viscosity: waterKinematicViscosity(celsius(10)),
 * });
 * bore.state === "found" && inInches(bore.insideDiameter); // ≈ 1.809
 * ```
 *
 * @source derived: from colebrook-1939 and the laminar law, by the substitution above
 */
export function diameterForHeadLoss(input: DiameterForHeadLossInput): DiameterForHeadLoss {
  requireObject("input", input);
  const { flow, headLoss, length: L, roughness, viscosity } = input;
  requireWithin("flow", flow, 1e-9, 1e3, "m³/s");
  requireWithin("headLoss", headLoss, 1e-9, 1e5, "m");
  requireWithin("length", L, 1e-3, 1e6, "m");
  requireWithin("roughness", roughness, 0, 0.1, "m");
  requireWithin("viscosity", viscosity, 1e-9, 1, "m²/s");
  const drop = (STANDARD_GRAVITY * headLoss) / L;
  const D = bore(flow, drop, roughness, viscosity);
  return D >= 2 * roughness
    ? { state: "found", insideDiameter: D as Length }
    : { state: "rougher than the bore", narrowest: (2 * roughness) as Length };
}

/** The bore by the law that its own Reynolds number asks for; under two roughnesses where the wall is too rough. `drop` is g h / L. */
function bore(flow: number, drop: number, roughness: number, viscosity: number): number {
  // D · Re depends on neither bore nor loss.
  const bulk = (4 * flow) / (Math.PI * viscosity);
  const turbulent = colebrookDiameter(flow, drop, roughness, viscosity);
  if (turbulent * TURBULENT_START <= bulk) return turbulent;
  const laminar = Math.sqrt(Math.sqrt((128 * viscosity * flow) / (Math.PI * drop)));
  if (laminar * LAMINAR_END >= bulk) return laminar;
  const narrow = bulk / TURBULENT_START;
  const wide = bulk / LAMINAR_END;
  const least = Math.max(narrow, 2 * roughness);
  const excess = (D: number): number =>
    (onBridge(bridge(roughness / D), bulk / D).value * 8 * flow * flow) / (Math.PI * Math.PI * (D * D * D * D * D)) -
    drop;
  // Where the narrowest bore the wall allows loses too little, none so narrow as to do; else Re is 4000 or 2000 but for
  // rounding. Where that bore is over the wide end, what is found between is under it, and so too narrow as well.
  if (excess(least) <= 0) return narrow;
  if (excess(wide) >= 0) return wide;
  return findRoot(excess, least, wide).x;
}
