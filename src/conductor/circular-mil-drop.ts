/**
 * Voltage drop by the circular-mil form of the American trade, and the area it asks for.
 *
 * The exact form is `voltage-drop.ts`; how far the shortcuts are off, `approximate-drops.ts`.
 *
 * @module
 */
import { requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import type { Area, Current, Length, Voltage } from "../units/index.ts";
import { lineFactor, requireSystem, type SupplySystem } from "./circuit.ts";

/** One circular mil, m². */
const CIRCULAR_MIL = (Math.PI / 4) * 0.0000254 ** 2;
const FOOT = 0.3048;
/** Ohms of a wire one foot long and one circular mil in area at about 75 °C, as the trade rounds them. */
const CONSTANTS: Readonly<Record<"copper" | "aluminium", number>> = { copper: 12.9, aluminium: 21.2 };

/** A run for the circular-mil form. */
export interface CircularMilDropInput {
  /** How the circuit is fed. */
  readonly system: SupplySystem;
  /** Line current. 0 to 10 000 A. */
  readonly current: Current;
  /** One-way length. 0 to 100 000 m. */
  readonly length: Length;
  /** Area of one conductor. 1e-9 to 0.1 m². */
  readonly area: Area;
  /** Metal; copper where left out. */
  readonly material?: "copper" | "aluminium";
  /** Replaces the metal's constant, ohm circular mils per foot: 12.9 for copper, 21.2 for aluminium. 1 to 100. */
  readonly constant?: number;
}

/**
 * Voltage drop by the circular-mil form, k K I L / cmil.
 *
 * @remarks
 * K = 12.9 Ω·cmil/ft for copper and 21.2 for aluminium at about 75 °C, k = 2 or √3, L in feet one way. Resistance only: for
 * pump circuits it reads high by the power factor that it leaves out, commonly 10 to 25 %.
 *
 * @param input - the run; each field says its unit and the values it takes
 * @returns the drop, V
 * @throws InputError naming the first field that is not in its range
 *
 * @example 10 A over 140 ft of 8 AWG
 * ```ts
 * import { circularMilDrop, conductorGeometry } from "risingmain/conductor";
 * import { amperes, feet } from "risingmain/units";
 *
 * circularMilDrop({
 *   system: "single-phase", current: amperes(10), length: feet(140), area: conductorGeometry("8 AWG").area,
 * }); // ≈ 2.19
 * ```
 *
 * @source common practice
 */
export function circularMilDrop(input: CircularMilDropInput): Voltage {
  requireObject("input", input);
  const { area } = input;
  requireWithin("area", area, 1e-9, 0.1, "m²");
  return (areaTimesDrop(input) / area) as Voltage;
}

/** A run for which the circular-mil form is to give the area. */
export interface CircularMilAreaInput extends Omit<CircularMilDropInput, "area"> {
  /** Greatest drop allowed. Above 0, at most 1000 V. */
  readonly drop: Voltage;
}

/**
 * Least area of conductor for a drop, by the circular-mil form.
 *
 * @remarks
 * {@link circularMilDrop} solved for the area: k K I L / drop.
 *
 * @param input - the run and the drop allowed
 * @returns the area, m²
 * @throws InputError naming the first field that is not in its range
 *
 * @example
 * ```ts
 * import { circularMilArea } from "risingmain/conductor";
 * import { amperes, feet, inCircularMils, volts } from "risingmain/units";
 *
 * inCircularMils(
 *   circularMilArea({ system: "three-phase", current: amperes(20), length: feet(200), drop: volts(14.4) }),
 * ); // ≈ 6207
 * ```
 *
 * @source common practice
 */
export function circularMilArea(input: CircularMilAreaInput): Area {
  requireObject("input", input);
  requireWithin("drop", input.drop, 1e-6, 1000, "V");
  return (areaTimesDrop(input) / input.drop) as Area;
}

function areaTimesDrop(input: Omit<CircularMilDropInput, "area">): number {
  const { system, current, length, material = "copper" } = input;
  requireSystem(system);
  requireWithin("current", current, 0, 1e4, "A");
  requireWithin("length", length, 0, 1e5, "m");
  requireOneOf("material", material, ["copper", "aluminium"]);
  const { constant = CONSTANTS[material] } = input;
  requireWithin("constant", constant, 1, 100, "Ω·cmil/ft");
  return lineFactor(system) * constant * current * (length / FOOT) * CIRCULAR_MIL;
}
