/**
 * What a measured head loss says about a pipe: how long it is, or how rough its wall has become.
 *
 * @module
 */
import { requireObject, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { KinematicViscosity, Length, VolumeFlow } from "../units/index.ts";
import { TURBULENT_START } from "./bridge.ts";
import { darcyWeisbachLoss } from "./darcy-weisbach.ts";

/** A flow through a pipe of unknown length, and the head it lost. */
export interface LengthForHeadLossInput {
  /** Flow; its direction does not matter here. 1e-9 to 1000 m³/s. */
  readonly flow: VolumeFlow;
  /** Head lost. 0 to 100 000 m. */
  readonly headLoss: Length;
  /** Inside diameter, not the trade size. 0.0001 to 100 m. */
  readonly insideDiameter: Length;
  /** Equivalent sand-grain height of the wall, 0 for smooth. 0 to half the diameter, m. */
  readonly roughness: Length;
  /** Kinematic viscosity of the liquid. 1e-9 to 1 m²/s. */
  readonly viscosity: KinematicViscosity;
}

/**
 * Length of straight pipe that loses a measured head, by Darcy and Weisbach.
 *
 * @remarks
 * L = h / (h per metre), with the loss per metre from `darcyWeisbachLoss`. Fittings on the line read as pipe.
 *
 * @param input - the flow, the loss and the pipe; each field says its unit and the values it takes
 * @returns the length, m
 * @throws {@link units.InputError} naming the first field that is not a number in its range, or the flow where the
 * loss per metre is too small to tell a length from
 *
 * @example
 * ```ts
 * import { lengthForHeadLoss } from "risingmain/pipe";
 * import { celsius, feet, gpm, inches, inFeet, millimetres } from "risingmain/units";
 * import { waterKinematicViscosity } from "risingmain/water";
 *
 * const length = lengthForHeadLoss({
 *   flow: gpm(18), headLoss: feet(46.98), insideDiameter: inches(1.38),
 *   roughness: millimetres(0.0015), viscosity: waterKinematicViscosity(celsius(10)),
 * });
 * inFeet(length); // ≈ 1000
 * ```
 *
 * @source derived: the loss is in proportion to the length; friction by colebrook-1939
 */
export function lengthForHeadLoss(input: LengthForHeadLossInput): Length {
  requireObject("input", input);
  const { flow, headLoss, insideDiameter, roughness, viscosity } = input;
  requireWithin("flow", flow, 1e-9, 1e3, "m³/s");
  requireWithin("headLoss", headLoss, 0, 1e5, "m");
  const perMetre = darcyWeisbachLoss({ flow, insideDiameter, length: 1 as Length, roughness, viscosity }).headLoss;
  return (headLoss / perMetre) as Length;
}

/** A flow through a pipe of unknown roughness, and the head it lost. */
export interface RoughnessForHeadLossInput {
  /** Flow; its direction does not matter here. 1e-9 to 1000 m³/s. */
  readonly flow: VolumeFlow;
  /** Head lost. 1e-9 to 100 000 m. */
  readonly headLoss: Length;
  /** Inside diameter, not the trade size. 0.0001 to 100 m. */
  readonly insideDiameter: Length;
  /** Length of straight pipe. 0.001 to 1 000 000 m. */
  readonly length: Length;
  /** Kinematic viscosity of the liquid. 1e-9 to 1 m²/s. */
  readonly viscosity: KinematicViscosity;
}

/** The roughness, or why the loss does not tell it. */
export type RoughnessForHeadLoss =
  | {
      /** A roughness was found. */
      readonly state: "found";
      /** Equivalent sand-grain height of the wall, m. */
      readonly roughness: Length;
    }
  | {
      /** Less head was lost than in a smooth pipe: the flow, the bore or a gauge is not what it was taken for. */
      /** Even a smooth pipe would lose more. */
      readonly state: "smoother than smooth";
      /** Head that a smooth pipe would have lost, m. */
      readonly smoothLoss: Length;
    }
  | {
      /** More head was lost than any wall explains (roughness above half the bore): look for a blockage or valve. */
      /** No roughness loses so much. */
      readonly state: "beyond roughness";
      /** Head lost at a roughness of half the bore, m. */
      readonly roughestLoss: Length;
    }
  | {
      /** The flow was not turbulent: the wall plays no part, or none that a published law tells. */
      /** In slow flow the wall does not count. */
      readonly state: "not turbulent";
      /** Reynolds number of the flow, below 4000. */
      readonly reynolds: number;
    };

/**
 * Roughness of a pipe wall, from a measured head loss.
 *
 * @remarks
 * f = 2 g h D / (L V²), then Colebrook's equation read for the roughness:
 * ε = 3.7 D (10^(−1/(2√f)) − 2.51/(Re √f)). Near the smooth limit the two terms nearly cancel, and a small error of
 * the gauge or flow makes any roughness of it: measure at the highest flow there is.
 *
 * @param input - the flow, the loss and the pipe; each field says its unit and the values it takes
 * @returns the roughness, or why the loss does not tell it
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example An old steel line that loses 30 ft where it lost 23 when new
 * ```ts
 * import { roughnessForHeadLoss } from "risingmain/pipe";
 * import { celsius, feet, gpm, inches, inMillimetres } from "risingmain/units";
 * import { waterKinematicViscosity } from "risingmain/water";
 *
 * const wall = roughnessForHeadLoss({
 *   flow: gpm(25), headLoss: feet(30), insideDiameter: inches(1.61), length: feet(500),
 *   viscosity: waterKinematicViscosity(celsius(10)),
 * });
 * wall.state === "found" && inMillimetres(wall.roughness); // ≈ 0.222
 * ```
 *
 * @source colebrook-1939: solved for the roughness
 */
export function roughnessForHeadLoss(input: RoughnessForHeadLossInput): RoughnessForHeadLoss {
  requireObject("input", input);
  const { flow, headLoss, insideDiameter: D, length: L, viscosity } = input;
  requireWithin("flow", flow, 1e-9, 1e3, "m³/s");
  requireWithin("headLoss", headLoss, 1e-9, 1e5, "m");
  requireWithin("insideDiameter", D, 1e-4, 100, "m");
  requireWithin("length", L, 1e-3, 1e6, "m");
  requireWithin("viscosity", viscosity, 1e-9, 1, "m²/s");
  const loss = (roughness: number): ReturnType<typeof darcyWeisbachLoss> =>
    darcyWeisbachLoss({ flow, insideDiameter: D, length: L, roughness: roughness as Length, viscosity });
  const smooth = loss(0);
  if (smooth.reynolds < TURBULENT_START) return { state: "not turbulent", reynolds: smooth.reynolds };
  if (headLoss < smooth.headLoss) return { state: "smoother than smooth", smoothLoss: smooth.headLoss };
  const roughest = loss(D / 2);
  if (headLoss > roughest.headLoss) return { state: "beyond roughness", roughestLoss: roughest.headLoss };
  const rootFactor = Math.sqrt((2 * STANDARD_GRAVITY * headLoss * D) / L) / smooth.velocity;
  const relative = 3.7 * (10 ** (-0.5 / rootFactor) - 2.51 / (smooth.reynolds * rootFactor));
  // Rounding may leave a smooth pipe a hair below 0.
  return { state: "found", roughness: (Math.max(0, relative) * D) as Length };
}
