/**
 * The shortcuts of the trade for voltage drop, under their own names, and how far each is off.
 *
 * The exact form is `voltage-drop.ts`.
 *
 * @module
 */
import { requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import type { Area, Current, Length, Ratio, ResistancePerLength, Voltage } from "../units/index.ts";
import { lineFactor, readSegments, requireSystem, type SupplySystem } from "./circuit.ts";
import { type CollapsedDrop, type VoltageDropInput, voltageDrop } from "./voltage-drop.ts";

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

/** One conductor at a power factor. */
export interface EffectiveImpedanceInput {
  /** Resistance per length of one conductor. 0 to 10 Ω/m. */
  readonly resistance: ResistancePerLength;
  /** Reactance per length of one conductor. 0 to 10 Ω/m. */
  readonly reactance: ResistancePerLength;
  /** Power factor of the load, lagging. 0 to 1. */
  readonly powerFactor: Ratio;
}

/**
 * Effective impedance of a conductor at a power factor, R cos φ + X sin φ, as the code's Table 9 lists it for 0.85.
 *
 * @remarks
 * Times current, length and 2 or √3 it is the usual drop formula: the `inPhase` part of {@link voltageDrop}, low by
 * (I (X cos φ − R sin φ))² / 2V, at most 0.13 % of the voltage for drops up to 5 %.
 *
 * @param input - resistance, reactance and power factor
 * @returns the effective impedance of one conductor, Ω/m
 * @throws InputError naming the first field that is not in its range
 *
 * @example
 * ```ts
 * import { effectiveImpedance } from "risingmain/conductor";
 * import { inOhmsPerThousandFeet, ohmsPerThousandFeet, ratio } from "risingmain/units";
 *
 * const z = effectiveImpedance({
 *   resistance: ohmsPerThousandFeet(0.054), reactance: ohmsPerThousandFeet(0.052), powerFactor: ratio(0.85),
 * });
 * inOhmsPerThousandFeet(z); // ≈ 0.0733
 * ```
 *
 * @source nfpa-70, Chapter 9 Table 9, note on effective impedance
 */
export function effectiveImpedance(input: EffectiveImpedanceInput): ResistancePerLength {
  requireObject("input", input);
  const { resistance, reactance, powerFactor } = input;
  requireWithin("resistance", resistance, 0, 10, "Ω/m");
  requireWithin("reactance", reactance, 0, 10, "Ω/m");
  requireWithin("powerFactor", powerFactor, 0, 1, "as a ratio");
  return (resistance * powerFactor + reactance * Math.sqrt(1 - powerFactor * powerFactor)) as ResistancePerLength;
}

/** A run for a tabulated drop. */
export interface TabulatedDropInput {
  /** Line-to-line drop per ampere and metre of run, go and return or √3 included, Ω/m (1 mV/(A·m) is 0.001 Ω/m). 0 to 10. */
  readonly dropPerAmpereMetre: ResistancePerLength;
  /** Line current. 0 to 10 000 A. */
  readonly current: Current;
  /** One-way length. 0 to 100 000 m. */
  readonly length: Length;
}

/**
 * Voltage drop by a tabulated figure in millivolts per ampere and metre.
 *
 * @remarks
 * Drop = figure · I · L. The British tables print the figure at the conductor's full working temperature and for the worst
 * power factor, so it reads high for a lightly loaded cable.
 *
 * @param input - figure, current and length
 * @returns the drop, V
 * @throws InputError naming the first field that is not in its range
 *
 * @example
 * ```ts
 * import { tabulatedDrop } from "risingmain/conductor";
 * import { amperes, metres, ohmsPerKilometre } from "risingmain/units";
 *
 * tabulatedDrop({ dropPerAmpereMetre: ohmsPerKilometre(18), current: amperes(16), length: metres(18) }); // ≈ 5.18
 * ```
 *
 * @source bs-7671, appendix 4
 */
export function tabulatedDrop(input: TabulatedDropInput): Voltage {
  requireObject("input", input);
  const { dropPerAmpereMetre, current, length } = input;
  requireWithin("dropPerAmpereMetre", dropPerAmpereMetre, 0, 10, "Ω/m");
  requireWithin("current", current, 0, 1e4, "A");
  requireWithin("length", length, 0, 1e5, "m");
  return (dropPerAmpereMetre * current * length) as Voltage;
}

/** One shortcut beside the exact drop. */
export interface ApproximateDrop {
  /** Its name. */
  readonly form: "resistance alone" | "resistance and power factor" | "usual formula" | "whole impedance";
  /** The drop it gives, V. */
  readonly drop: Voltage;
  /** How far it is off, as a share of the exact drop; positive where it reads high. 0 where there is no drop at all. */
  readonly error: Ratio;
}

/** The shortcuts beside the exact drop. */
export interface ApproximateDrops {
  /** The conductors carry the current. */
  readonly state: "carried";
  /** The exact drop, V. */
  readonly exact: Voltage;
  /** Each shortcut with its error. */
  readonly forms: readonly ApproximateDrop[];
}

/**
 * The shortcuts of the trade beside the exact drop of one circuit, with the error of each.
 *
 * @remarks
 * Resistance alone, k I R; resistance and power factor, k I R cos φ; the usual formula, k I (R cos φ + X sin φ); the whole
 * impedance, k I √(R² + X²), which is the largest any power factor can give. The source's own impedance is left out.
 *
 * @param input - as for {@link voltageDrop}
 * @returns the exact drop and each shortcut, or `"collapsed"`
 * @throws InputError naming the first field that is not in its range
 *
 * @example
 * ```ts
 * import { approximateDrops, conductorImpedance } from "risingmain/conductor";
 * import { amperes, feet, inPercent, ratio, volts } from "risingmain/units";
 *
 * const compared = approximateDrops({
 *   system: "single-phase", sourceVoltage: volts(230), current: amperes(10), powerFactor: ratio(0.85),
 *   segments: [{ length: feet(300), ...conductorImpedance({ size: "12 AWG", raceway: "plastic" }) }],
 * });
 * if (compared.state !== "carried") throw new Error(compared.state);
 * inPercent(compared.forms[0]?.error ?? ratio(0)); // ≈ 15
 * ```
 *
 * @source derived: the terms of the sending-end equation
 */
export function approximateDrops(input: VoltageDropInput): ApproximateDrops | CollapsedDrop {
  requireObject("input", input);
  // The source's impedance is no part of the conductors that the shortcuts are about.
  const { system, sourceVoltage, current, powerFactor, segments } = input;
  const exact = voltageDrop({ system, sourceVoltage, current, powerFactor, segments });
  if (exact.state === "collapsed") return exact;
  const ohms = readSegments("segments", segments, system);
  const perAmpere = lineFactor(system) * current;
  const r = ohms.reduce((sum, one) => sum + one.r, 0);
  const x = ohms.reduce((sum, one) => sum + one.x, 0);
  const form = (name: ApproximateDrop["form"], drop: number): ApproximateDrop => ({
    form: name,
    drop: drop as Voltage,
    error: (exact.drop > 0 ? (drop - exact.drop) / exact.drop : 0) as Ratio,
  });
  return {
    state: "carried",
    exact: exact.drop,
    forms: [
      form("resistance alone", perAmpere * r),
      form("resistance and power factor", exact.resistive),
      form("usual formula", exact.inPhase),
      form("whole impedance", perAmpere * Math.hypot(r, x)),
    ],
  };
}
