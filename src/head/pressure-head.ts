/**
 * Pressure as the height of water that makes it, and back: h = p / (ρ g).
 *
 * The trade's 2.31 ft per psi is this at about 16 to 20 °C; cold well water stands a little lower for the same gauge.
 *
 * @module
 */
import { requireObject, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { Density, GaugePressure, Length, PressureDifference } from "../units/index.ts";
import { requireDensity, requireHead, requirePressure } from "./ranges.ts";

/** A gauge pressure, and the liquid it stands in. */
export interface PressureHeadInput {
  /** Gauge pressure; negative under suction. −1e9 to 1e9 Pa. */
  readonly pressure: GaugePressure;
  /** Density of the liquid. 1 to 25 000 kg/m³. */
  readonly density: Density;
}

/** A loss or rise of pressure, and the liquid it happens in. */
export interface PressureDifferenceHeadInput {
  /** The difference of two pressures, of either sign. −1e9 to 1e9 Pa. */
  readonly pressureDifference: PressureDifference;
  /** Density of the liquid. 1 to 25 000 kg/m³. */
  readonly density: Density;
}

/** A height of liquid. */
export interface HeadInput {
  /** The head; negative under suction. −1 000 000 to 1 000 000 m. */
  readonly head: Length;
  /** Density of the liquid. 1 to 25 000 kg/m³. */
  readonly density: Density;
}

/**
 * The height of liquid that a gauge pressure holds up.
 *
 * @remarks
 * h = p / (ρ g)
 *
 * with h the head, p `pressure`, ρ `density`, g standard gravity, 9.806 65 m/s². Exact for a liquid of one density;
 * the true gravity of a place lies within 0.3 % of the standard one.
 *
 * @param input - the pressure (−1e9 to 1e9 Pa) and the density (1 to 25 000 kg/m³)
 * @returns the head, m, of the pressure's sign
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example The head of 50 psi in water at 10 °C: not quite 2.31 ft for each psi
 * ```ts
 * import { headOfPressure } from "risingmain/head";
 * import { inFeet, kilogramsPerCubicMetre, psi } from "risingmain/units";
 *
 * inFeet(headOfPressure({ pressure: psi(50), density: kilogramsPerCubicMetre(999.7) })); // ≈ 115.37
 * ```
 *
 * @source derived: hydrostatic balance of a column at rest
 */
export function headOfPressure(input: PressureHeadInput): Length {
  requireObject("input", input);
  const { pressure, density } = input;
  requirePressure("pressure", pressure);
  return head(pressure, density);
}

/**
 * The height of liquid worth a loss or rise of pressure: the head lost across a filter rated in psi.
 *
 * @remarks
 * Δh = Δp / (ρ g), as {@link headOfPressure}; a difference has no atmosphere in it.
 *
 * @param input - the difference (−1e9 to 1e9 Pa) and the density (1 to 25 000 kg/m³)
 * @returns the head, m, of the difference's sign
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example The head that a filter takes
 * ```ts
 * import { headOfPressureDifference } from "risingmain/head";
 * import { inFeet, kilogramsPerCubicMetre, psiDifference } from "risingmain/units";
 *
 * const density = kilogramsPerCubicMetre(999.7);
 * inFeet(headOfPressureDifference({ pressureDifference: psiDifference(10), density })); // ≈ 23.07
 * ```
 *
 * @source derived: hydrostatic balance of a column at rest
 */
export function headOfPressureDifference(input: PressureDifferenceHeadInput): Length {
  requireObject("input", input);
  const { pressureDifference, density } = input;
  requirePressure("pressureDifference", pressureDifference);
  return head(pressureDifference, density);
}

/**
 * The gauge pressure at the foot of a height of liquid open to the air; undoes {@link headOfPressure}.
 *
 * @remarks
 * p = ρ g h, with the symbols of {@link headOfPressure}.
 *
 * @param input - the head (−1 000 000 to 1 000 000 m) and the density (1 to 25 000 kg/m³)
 * @returns the gauge pressure, Pa, of the head's sign; below −1 atmosphere it means that no liquid can stand there
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example What a gauge reads under 240 ft of cold water
 * ```ts
 * import { pressureOfHead } from "risingmain/head";
 * import { feet, inPsi, kilogramsPerCubicMetre } from "risingmain/units";
 *
 * inPsi(pressureOfHead({ head: feet(240), density: kilogramsPerCubicMetre(999.7) })); // ≈ 104.02
 * ```
 *
 * @source derived: hydrostatic balance of a column at rest
 */
export function pressureOfHead(input: HeadInput): GaugePressure {
  requireObject("input", input);
  return pressure(input) as GaugePressure;
}

/**
 * The pressure that a head lost or gained is worth; undoes {@link headOfPressureDifference}.
 *
 * @remarks
 * Δp = ρ g Δh, with the symbols of {@link headOfPressure}.
 *
 * @param input - the head (−1 000 000 to 1 000 000 m) and the density (1 to 25 000 kg/m³)
 * @returns the difference of pressure, Pa, of the head's sign
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example What 28 ft of friction takes off the gauge
 * ```ts
 * import { pressureDifferenceOfHead } from "risingmain/head";
 * import { feet, inPsiDifference, kilogramsPerCubicMetre } from "risingmain/units";
 *
 * inPsiDifference(pressureDifferenceOfHead({ head: feet(28), density: kilogramsPerCubicMetre(999.7) })); // ≈ 12.135
 * ```
 *
 * @source derived: hydrostatic balance of a column at rest
 */
export function pressureDifferenceOfHead(input: HeadInput): PressureDifference {
  requireObject("input", input);
  return pressure(input) as PressureDifference;
}

function head(pascals: number, density: number): Length {
  requireDensity(density);
  return (pascals / (density * STANDARD_GRAVITY)) as Length;
}

function pressure({ head, density }: HeadInput): number {
  requireHead("head", head);
  requireDensity(density);
  return density * STANDARD_GRAVITY * head;
}
