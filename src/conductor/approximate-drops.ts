/**
 * The shortcuts of the trade for voltage drop beside the exact form, and how far each is off.
 *
 * @module
 */
import { requireObject } from "../numeric/index.ts";
import type { Ratio, Voltage } from "../units/index.ts";
import { lineFactor, readSegments } from "./circuit.ts";
import { type CollapsedDrop, type VoltageDropInput, voltageDrop } from "./voltage-drop.ts";

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
