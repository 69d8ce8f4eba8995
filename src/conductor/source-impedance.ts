/**
 * Impedance of the supply that a circuit hangs on: a transformer, or a service of known fault current.
 *
 * @module
 */
import { requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import type { ApparentPower, Current, Ratio, Resistance, Voltage } from "../units/index.ts";
import type { SourceImpedance } from "./circuit.ts";

/** A transformer by its plate. */
export interface TransformerImpedanceInput {
  /** Rated apparent power. 100 VA to 100 MVA. */
  readonly rating: ApparentPower;
  /** Rated secondary voltage, line to line for three-phase. 10 to 1000 V. */
  readonly voltage: Voltage;
  /** Impedance on the plate as a ratio: 2 % is 0.02. 0.001 to 0.3. */
  readonly impedance: Ratio;
  /** Reactance over resistance; 2 where left out, usual for small pole transformers. 0 to 100. */
  readonly reactanceOverResistance?: number;
}

/** Reactance over resistance of small distribution transformers and services: common practice. */
const USUAL_X_OVER_R = 2;

/**
 * Impedance of a supply transformer as a pump circuit sees it.
 *
 * @remarks
 * Z = z V² / S, split by the ratio of reactance to resistance; of the whole winding single-phase, of each phase
 * three-phase. The utility's own line ahead of the transformer is left out.
 *
 * @param input - the transformer; each field says its unit and the values it takes
 * @returns resistance and reactance, Ω; pass it as `source`
 * @throws InputError naming the first field that is not in its range
 *
 * @example A 10 kVA pole transformer of 2 %
 * ```ts
 * import { transformerImpedance } from "risingmain/conductor";
 * import { kilovoltAmperes, percent, volts } from "risingmain/units";
 *
 * const pole = transformerImpedance({ rating: kilovoltAmperes(10), voltage: volts(240), impedance: percent(2) });
 * pole.resistance; // ≈ 0.0515
 * pole.reactance; // ≈ 0.103
 * ```
 *
 * @source derived: definition of per-unit impedance
 */
export function transformerImpedance(input: TransformerImpedanceInput): SourceImpedance {
  requireObject("input", input);
  const { rating, voltage, impedance, reactanceOverResistance = USUAL_X_OVER_R } = input;
  requireWithin("rating", rating, 100, 1e8, "VA");
  requireWithin("voltage", voltage, 10, 1000, "V");
  requireWithin("impedance", impedance, 0.001, 0.3, "as a ratio");
  requireWithin("reactanceOverResistance", reactanceOverResistance, 0, 100, "");
  return split((impedance * voltage * voltage) / rating, reactanceOverResistance);
}

/** A service of known fault current. */
export interface ServiceImpedanceInput {
  /** Phases of the service. */
  readonly system: "single-phase" | "three-phase";
  /** Voltage with nothing connected, line to line for three-phase. 10 to 1000 V. */
  readonly voltage: Voltage;
  /** Current that flows at the service when its lines are shorted, as the utility states it. 10 to 200 000 A. */
  readonly faultCurrent: Current;
  /** Reactance over resistance; 2 where left out. 0 to 100. */
  readonly reactanceOverResistance?: number;
}

/**
 * Impedance of a service from the fault current that the utility states for it.
 *
 * @remarks
 * Z = V / I between two wires, V / (√3 I) for each of three phases.
 *
 * @param input - the service; each field says its unit and the values it takes
 * @returns resistance and reactance, Ω; pass it as `source`
 * @throws InputError naming the first field that is not in its range
 *
 * @example
 * ```ts
 * import { serviceImpedance } from "risingmain/conductor";
 * import { amperes, volts } from "risingmain/units";
 *
 * const service = serviceImpedance({ system: "single-phase", voltage: volts(240), faultCurrent: amperes(2000) });
 * service.resistance; // ≈ 0.0537
 * ```
 *
 * @source derived: Ohm's law at the fault
 */
export function serviceImpedance(input: ServiceImpedanceInput): SourceImpedance {
  requireObject("input", input);
  const { system, voltage, faultCurrent, reactanceOverResistance = USUAL_X_OVER_R } = input;
  requireOneOf("system", system, ["single-phase", "three-phase"]);
  requireWithin("voltage", voltage, 10, 1000, "V");
  requireWithin("faultCurrent", faultCurrent, 10, 2e5, "A");
  requireWithin("reactanceOverResistance", reactanceOverResistance, 0, 100, "");
  return split(voltage / (faultCurrent * (system === "three-phase" ? Math.sqrt(3) : 1)), reactanceOverResistance);
}

function split(impedance: number, ratio: number): SourceImpedance {
  const resistance = impedance / Math.hypot(1, ratio);
  return { resistance: resistance as Resistance, reactance: (resistance * ratio) as Resistance };
}
