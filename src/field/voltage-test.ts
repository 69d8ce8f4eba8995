/**
 * Voltage of a running pump's supply, its drop from rest, and the dip when it starts.
 *
 * @module
 */
import { supplyTolerance } from "../motor/index.ts";
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Caution } from "../sources/index.ts";
import type { Ratio, Voltage } from "../units/index.ts";
import { type Carried, carried, type TrialOptions } from "./carried.ts";
import { mainsCautions } from "./cautions.ts";
import { clearOf } from "./judge-reading.ts";
import { VOLTMETER_SHARE } from "./usual-doubts.ts";

/** Voltages at the motor or its box. */
export interface VoltageTestInput extends TrialOptions {
  /** Rated voltage of the motor. 1 to 1000 V. */
  readonly rated: Voltage;
  /** Voltage with the pump running. 0 to 2000 V. */
  readonly underLoad: Voltage;
  /** Voltage with the pump off. 0 to 2000 V; drop and dip are not judged where left out. */
  readonly atRest?: Voltage;
  /** Lowest voltage while starting. 0 to 2000 V; the dip is not judged where left out. */
  readonly starting?: Voltage;
  /** Most dip at starting, of the voltage at rest. 0 to 1; 0.25 where left out (`ufgs-16237n`). */
  readonly dipLimit?: Ratio;
  /** Standard uncertainty of a reading, as a share of it. 0 to 1; 0.01 where left out (common practice). */
  readonly readingUncertainty?: Ratio;
}

/** What was lost of the voltage at rest, as a share of it, with its uncertainty. */
export interface VoltageLost extends Carried<Ratio> {
  /** The share; negative where the voltage rose. */
  readonly share: Ratio;
}

/** The voltages judged. */
export interface VoltageTest {
  /** Under load: within the motor's tolerance, or on which side of it. */
  readonly state: "within tolerance" | "low" | "high";
  /** True where two standard uncertainties either way would not change the state. */
  readonly sure: boolean;
  /** Least voltage allowed, V. */
  readonly lowest: Voltage;
  /** Greatest, V. */
  readonly highest: Voltage;
  /** Drop from rest to running; null where the voltage at rest was not given or none. */
  readonly drop: VoltageLost | null;
  /** Dip from rest to the lowest while starting; null where either was not given. */
  readonly dip: VoltageLost | null;
  /** Whether the dip is within its limit; null where it was not judged. */
  readonly dipInside: boolean | null;
  /** True where two standard uncertainties either way would not change that; null where it was not judged. */
  readonly dipSure: boolean | null;
  /** Source of the tolerance. */
  readonly method: "nema-mg-1";
  /** What to say with it. */
  readonly cautions: readonly Caution[];
}

const DIP_LIMIT = 0.25;
/** Under this a circuit is dead, V. */
const DEAD = 1e-6;

/**
 * Judges the voltage of a running pump, the drop from rest, and the dip at starting, generator or mains.
 *
 * @remarks
 * Tolerance as `supplyTolerance` of `risingmain/motor`: rated ± 10 % at the motor's terminals. Drop and dip are shares of the
 * voltage at rest, its readings taken as independent: of one meter, some of the error drops out. A dip must be read by a meter that holds the least value; an ordinary one is too slow and reads it too small. For
 * windings and insulation see `windingTest` and `insulationTest`.
 *
 * @param input - voltages and limits; each field says its unit and range
 * @returns the state, the limits, drop and dip
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example A generator that sags from 240 to 195 V while the pump starts
 * ```ts
 * import { voltageTest } from "risingmain/field";
 * import { volts } from "risingmain/units";
 *
 * const supply = voltageTest({ rated: volts(230), atRest: volts(240), underLoad: volts(233), starting: volts(195) });
 * supply.state; // => "within tolerance"
 * supply.dip?.share ?? 0; // ≈ 0.188
 * supply.dipInside; // => true
 * ```
 *
 * @source nema-mg-1, 12.44.1: the tolerance
 * @source ufgs-16237n, 2.1.1.4: the default dip
 * @source jcgm-100, 5.1.2
 */
export function voltageTest(input: VoltageTestInput): VoltageTest {
  requireObject("input", input);
  const { rated, underLoad, atRest, starting, dipLimit = DIP_LIMIT } = input;
  const { readingUncertainty = VOLTMETER_SHARE } = input;
  requireWithin("rated", rated, 1, 1000, "V");
  requireWithin("underLoad", underLoad, 0, 2000, "V");
  if (atRest !== undefined) requireWithin("atRest", atRest, 0, 2000, "V");
  if (starting !== undefined) requireWithin("starting", starting, 0, 2000, "V");
  requireWithin("dipLimit", dipLimit, 0, 1, "(0.25 for 25 %)");
  requireWithin("readingUncertainty", readingUncertainty, 0, 1, "(0.01 for 1 %)");
  const { state, lowest, highest, method } = supplyTolerance({ ratedVoltage: rated, voltage: underLoad });
  const lost = (voltage: Voltage | undefined): VoltageLost | null => {
    if (atRest === undefined || !(atRest > DEAD) || voltage === undefined) return null;
    const share = (rest: number, then: number): number => (rest - then) / rest;
    return {
      share: share(atRest, voltage) as Ratio,
      ...carried<Ratio>(
        [
          { name: "atRest", value: atRest, standardUncertainty: readingUncertainty * atRest, low: DEAD, high: 1e5 },
          { name: "then", value: voltage, standardUncertainty: readingUncertainty * voltage, low: 0, high: 1e5 },
        ],
        ([rest = 1, then = 0]) => share(rest, then),
        input,
      ),
    };
  };
  const dip = lost(starting);
  return {
    state: state === "voltage too low" ? "low" : state === "voltage too high" ? "high" : "within tolerance",
    sure: clearOf(underLoad, [lowest, highest], readingUncertainty * underLoad),
    lowest,
    highest,
    drop: lost(underLoad),
    dip,
    dipInside: dip === null ? null : dip.share <= dipLimit,
    dipSure: dip === null ? null : clearOf(dip.share, [dipLimit], dip.standardUncertainty),
    method,
    cautions: mainsCautions,
  };
}
