/**
 * Current-carrying capacity of a metric cable by the international standard.
 *
 * @module
 */
import { requireObject, requireOneOf, requireWhole, requireWithin } from "../numeric/index.ts";
import { type Current, InputError, type Ratio, type Temperature } from "../units/index.ts";
import { ambientFactor } from "./ambient-factor.ts";
import {
  type IecInstallation,
  type IecInsulation,
  iecCapacity,
  iecCapacityAreas,
  iecGroupingFactors,
} from "./iec-60364-5-52.ts";
import { type ConductorSize, readSize } from "./size.ts";

/** Temperatures the insulations are rated for, K. */
const RATED: Readonly<Record<IecInsulation, number>> = { "PVC 70 °C": 343.15, "XLPE 90 °C": 363.15 };
/** Ambients of the tables, K: 30 °C in air, 20 °C in ground. */
const IN_AIR = 303.15;
const IN_GROUND = 293.15;
/** Nine bunched circuits are the last that the short table lists. */
const MOST_LISTED = 9;

/** A copper cable and how it lies. */
export interface IecCapacityInput {
  /** Nominal area of its conductors, 1.5 to 95 mm². */
  readonly size: ConductorSize;
  /** Its insulation. */
  readonly insulation: IecInsulation;
  /** How it is installed. */
  readonly installation: IecInstallation;
  /** Loaded conductors: 2 single-phase, 3 three-phase. */
  readonly loaded: 2 | 3;
  /** Temperature of the air, or of the ground for D1; that of the table where left out. 200 to 400 K. */
  readonly ambient?: Temperature;
  /** Circuits bunched together; 1 where left out. 1 to 100. */
  readonly circuits?: number;
}

/** A capacity and how it came about. */
export interface IecCapacity {
  /** Current the cable may carry, A; 0 where the surroundings are hotter than the insulation permits. */
  readonly capacity: Current;
  /** Table value, A. */
  readonly tabulated: Current;
  /** Factor for ambient temperature. */
  readonly ambientFactor: Ratio;
  /** Factor for circuits bunched together. */
  readonly groupingFactor: Ratio;
  /** Where the figures are from. */
  readonly method: "iec-60364-5-52";
  /** False for more bunched circuits than the table lists. */
  readonly insideRange: boolean;
}

/**
 * Current-carrying capacity of a copper cable by the international standard.
 *
 * @remarks
 * I_z = table value · √((T_c − T_a) / (T_c − T₀)) · grouping factor. Tables for copper, PVC and XLPE, methods A1, B1, C and
 * D1, 1.5 to 95 mm², recorded from memory: check them against the standard before relying on one.
 *
 * @param input - the cable and how it lies; each field says the values it takes
 * @returns the capacity with its factors
 * @throws InputError naming the first field that is not known or not in its range
 *
 * @example 4 mm² PVC in a duct in 15 °C ground
 * ```ts
 * import { iecCurrentCapacity } from "risingmain/conductor";
 * import { celsius } from "risingmain/units";
 *
 * const cable = iecCurrentCapacity({
 *   size: "4 mm²", insulation: "PVC 70 °C", installation: "D1", loaded: 2, ambient: celsius(15),
 * });
 * cable.capacity; // ≈ 38.8
 * ```
 *
 * @source iec-60364-5-52, Tables B.52.2 to B.52.5 and B.52.17
 */
export function iecCurrentCapacity(input: IecCapacityInput): IecCapacity {
  requireObject("input", input);
  const { size, insulation, installation, loaded, circuits = 1 } = input;
  const parts = readSize("size", size);
  const column = parts.system === "mm²" ? iecCapacityAreas.indexOf(parts.squareMillimetres) : -1;
  if (column < 0) throw new InputError("size", size, `${iecCapacityAreas.join(", ")} mm²`);
  requireOneOf("insulation", insulation, Object.keys(iecCapacity));
  requireOneOf("installation", installation, Object.keys(iecCapacity[insulation]));
  requireWhole("loaded", loaded, 2, 3);
  requireWhole("circuits", circuits, 1, 100);
  const tableAmbient = (installation === "D1" ? IN_GROUND : IN_AIR) as Temperature;
  const { ambient = tableAmbient } = input;
  requireWithin("ambient", ambient, 200, 400, "K");
  const tabulated = iecCapacity[insulation][installation][loaded][column] as number;
  const factor = ambientFactor({ insulation: RATED[insulation] as Temperature, ambient, tableAmbient });
  const grouping = iecGroupingFactors[Math.min(circuits, MOST_LISTED) - 1] as number;
  return {
    capacity: (tabulated * factor * grouping) as Current,
    tabulated: tabulated as Current,
    ambientFactor: factor,
    groupingFactor: grouping as Ratio,
    method: "iec-60364-5-52",
    insideRange: circuits <= MOST_LISTED,
  };
}
