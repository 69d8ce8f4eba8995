/**
 * What hangs on a wellhead: the weight of pump, pipe, cable and water, and the stretch it makes.
 *
 * @module
 */
import { requireBoolean, requireObject, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { Caution } from "../sources/index.ts";
import type { Density, Force, GaugePressure, Length, Mass, MassPerLength, Modulus, Volume } from "../units/index.ts";
import { wallArea } from "./tensile-check.ts";

/** A pump on its drop pipe. Depths are measured down from where the pipe hangs. */
export interface HangingInput {
  /** Mass of pump and motor. 0 to 1e5 kg. */
  readonly pumpMass: Mass;
  /** Volume of pump and motor, for their buoyancy. 0 to 10 m³; 0, on the safe side, where left out. */
  readonly pumpVolume?: Volume;
  /** Inside diameter of the drop pipe. 1e-3 to 1 m. */
  readonly insideDiameter: Length;
  /** Outside diameter of the drop pipe. Above the inside one, at most 2 m. */
  readonly outsideDiameter: Length;
  /** Mass of the empty pipe per length, couplings included. 0 to 1000 kg/m. */
  readonly pipeMass: MassPerLength;
  /** Mass of cable and safety line per length. 0 to 100 kg/m; 0 where left out. */
  readonly cableMass?: MassPerLength;
  /** Diameter of a round cable of the same section, for its buoyancy. 0 to 0.5 m; 0 where left out. */
  readonly cableDiameter?: Length;
  /** Length of pipe from the top to the pump. 0 to 5000 m. */
  readonly pumpSetting: Length;
  /** Depth of the water; the pipe below it is buoyed up. 0 to 10 000 m; dry, on the safe side, where left out. */
  readonly waterLevel?: Length;
  /** Density of the water. 900 to 1100 kg/m³. */
  readonly density: Density;
  /** Whether the pipe is full, held by a check valve, as when a pump is pulled. True where left out. */
  readonly full?: boolean;
  /** Pressure in the pipe at the top while the pump runs. 0 to 1e7 Pa; 0 where left out. */
  readonly topPressure?: GaugePressure;
}

/** What hangs on the top, and its parts. */
export interface HangingLoad {
  /** Force to lift the whole, at rest, N; acceleration and drag against the casing come on top. */
  readonly lifting: Force;
  /** Pull in the pipe at the top while the pump runs against `topPressure`, N. */
  readonly running: Force;
  /** Weight of pump and motor, N. */
  readonly pump: Force;
  /** Weight of the pipe, N. */
  readonly pipe: Force;
  /** Weight of the cable, N. */
  readonly cable: Force;
  /** Weight of the water in the pipe, N. */
  readonly water: Force;
  /** Buoyancy of all that is under water, N; taken off. */
  readonly buoyancy: Force;
  /** What to know before lifting. */
  readonly cautions: readonly Caution[];
}

const CAUTIONS: readonly Caution[] = [
  {
    code: "lifting-drop-pipe",
    text: "A dropped string is lost and dangerous: use a rig, clamps and a safety line rated well above this load, lift straight, keep clear of the hole, and lock the power out. A stuck pump can pull many times its weight.",
    basis: "common practice",
  },
];

/**
 * What hangs on the wellhead.
 *
 * @remarks
 * lifting = pump + pipe + cable + water in the pipe − ρ g × volume under water; running adds topPressure × bore area,
 * the thrust on the closed end.
 *
 * @param input - pump, pipe, cable, depths and water; each field says its unit and the values it takes
 * @returns the loads, N, with their parts and cautions
 * @throws {@link units.InputError} naming the first field that cannot be used
 *
 * @example
 * ```ts
 * import { hangingLoad } from "risingmain/well";
 * import { feet, inches, inPoundsForce, kilogramsPerCubicMetre, pounds, poundsPerFoot } from "risingmain/units";
 *
 * const load = hangingLoad({
 *   pumpMass: pounds(60), insideDiameter: inches(1.049), outsideDiameter: inches(1.315),
 *   pipeMass: poundsPerFoot(0.3), cableMass: poundsPerFoot(0.2), pumpSetting: feet(300),
 *   density: kilogramsPerCubicMetre(1000),
 * });
 * inPoundsForce(load.lifting); // ≈ 322
 * ```
 *
 * @source derived: weights, and Archimedes' principle
 */
export function hangingLoad(input: HangingInput): HangingLoad {
  const { boreArea, dryLength, unitWater, unitAbove, unitBelow, pump, pumpBuoyancy } = checked(input);
  const { pumpSetting: L, pipeMass, cableMass = 0, topPressure = 0 } = input;
  const wet = L - dryLength;
  const lifting = pump - pumpBuoyancy + unitAbove * dryLength + unitBelow * wet;
  return {
    lifting: lifting as Force,
    running: (lifting + topPressure * boreArea) as Force,
    pump: pump as Force,
    pipe: (pipeMass * STANDARD_GRAVITY * L) as Force,
    cable: (cableMass * STANDARD_GRAVITY * L) as Force,
    water: (unitWater * L) as Force,
    buoyancy: (pumpBuoyancy + (unitAbove - unitBelow) * wet) as Force,
    cautions: CAUTIONS,
  };
}

/** A hanging pipe that stretches. */
export interface StretchInput extends HangingInput {
  /** Stiffness of the pipe's material: its modulus of elasticity, long-term for plastic. 1e6 to 1e12 Pa. */
  readonly modulus: Modulus;
}

/**
 * How much a hanging drop pipe stretches under the weights on it.
 *
 * @remarks
 * ΔL = Σ weight × its depth / (E A), less buoyancy. Pressure inside is left out: it lengthens the pipe by its end thrust
 * and shortens it by swelling, and in plastic, whose Poisson's ratio is near ½, the two nearly cancel. Temperature
 * adds its own: leave slack in the cable, and set the pump off the bottom by more than this.
 *
 * @param input - the hanging pump, as for {@link hangingLoad}, and the stiffness
 * @returns stretch, m
 * @throws {@link units.InputError} naming the first field that cannot be used
 *
 * @example
 * ```ts
 * import { hangingStretch } from "risingmain/well";
 * import { feet, inches, inInches, kilogramsPerCubicMetre, pounds, poundsPerFoot, psiModulus } from "risingmain/units";
 *
 * const stretch = hangingStretch({
 *   pumpMass: pounds(60), insideDiameter: inches(1.049), outsideDiameter: inches(1.315),
 *   pipeMass: poundsPerFoot(0.3), cableMass: poundsPerFoot(0.2), pumpSetting: feet(300),
 *   density: kilogramsPerCubicMetre(1000), modulus: psiModulus(400_000),
 * });
 * inInches(stretch); // ≈ 3.48
 * ```
 *
 * @source derived: Hooke's law
 */
export function hangingStretch(input: StretchInput): Length {
  const { dryLength: d, unitAbove, unitBelow, pump, pumpBuoyancy } = checked(input);
  const { modulus, pumpSetting: L } = input;
  requireWithin("modulus", modulus, 1e6, 1e12, "Pa");
  const moments = (pump - pumpBuoyancy) * L + (unitAbove * d * d) / 2 + (unitBelow * (L * L - d * d)) / 2;
  return (moments / (modulus * wallArea(input))) as Length;
}

/** The hanging set, checked and cut up: net weight per length above and below the water. */
function checked(input: HangingInput) {
  requireObject("input", input);
  const { pumpMass, pumpVolume = 0, outsideDiameter: D, pipeMass, cableMass = 0, cableDiameter = 0 } = input;
  const { pumpSetting: L, waterLevel = L, density, full = true, topPressure = 0, insideDiameter } = input;
  requireWithin("pumpMass", pumpMass, 0, 1e5, "kg");
  requireWithin("pumpVolume", pumpVolume, 0, 10, "m³");
  wallArea(input);
  requireWithin("pipeMass", pipeMass, 0, 1000, "kg/m");
  requireWithin("cableMass", cableMass, 0, 100, "kg/m");
  requireWithin("cableDiameter", cableDiameter, 0, 0.5, "m");
  requireWithin("pumpSetting", L, 0, 5000, "m");
  requireWithin("waterLevel", waterLevel, 0, 10_000, "m");
  requireWithin("density", density, 900, 1100, "kg/m³");
  requireBoolean("full", full);
  requireWithin("topPressure", topPressure, 0, 1e7, "Pa");
  const boreArea = (Math.PI / 4) * insideDiameter ** 2;
  const weight = density * STANDARD_GRAVITY;
  const unitWater = full ? weight * boreArea : 0;
  const unitAbove = (pipeMass + cableMass) * STANDARD_GRAVITY + unitWater;
  return {
    boreArea,
    dryLength: Math.min(waterLevel, L) as number,
    unitWater,
    unitAbove,
    unitBelow: unitAbove - (weight * Math.PI * (D * D + cableDiameter * cableDiameter)) / 4,
    pump: pumpMass * STANDARD_GRAVITY,
    pumpBuoyancy: waterLevel < L ? weight * pumpVolume : 0,
  };
}
