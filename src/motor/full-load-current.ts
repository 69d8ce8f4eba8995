/**
 * Full-load current of a motor from the code's tables.
 *
 * @module
 */
import { requireList, requireObject, requireOneOf, requirePositive, requireWithin } from "../numeric/index.ts";
import { type Current, horsepower, InputError, inHorsepower, type Power, type Voltage } from "../units/index.ts";
import type { FullLoadTable } from "./full-load-table.ts";
import { necTable430_248 } from "./nec-430-248.ts";
import { necTable430_250 } from "./nec-430-250.ts";

/** Alternating current of one phase or of three. */
export type MotorSystem = "single-phase" | "three-phase";

/** The names, for checks of input. */
export const MOTOR_SYSTEMS: readonly MotorSystem[] = ["single-phase", "three-phase"];

/**
 * Rated motor voltage and the nominal system voltages it is used on: 115 V on 110 to 120, 230 V on 220 to 240, 460 V on 440
 * to 480, 575 V on 550 to 600; 200 and 208 V motors on their own voltage only (`nfpa-70`, notes to the tables).
 */
const SYSTEM_VOLTAGES: readonly (readonly [low: number, high: number, rated: number])[] = [
  [110, 120, 115],
  [200, 200, 200],
  [208, 208, 208],
  [220, 240, 230],
  [440, 480, 460],
  [550, 600, 575],
];

/** A motor by its nameplate power. */
export interface FullLoadCurrentInput {
  /** Rated power. Above 0, at most the table's largest (10 hp single-phase, 200 hp three-phase). */
  readonly power: Power;
  /** Rated motor voltage, or the nominal voltage of the system: 110 to 120, 200, 208, 220 to 240, and for three-phase also 440 to 480 and 550 to 600 V. */
  readonly voltage: Voltage;
  /** Phases of the supply. */
  readonly system: MotorSystem;
  /** Replaces the code's table. */
  readonly table?: FullLoadTable;
}

/** A full-load current and the row it stands in. */
export interface FullLoadCurrent {
  /** Full-load current, A, for sizing conductors and short-circuit protection. */
  readonly current: Current;
  /** Rated power of the row used. */
  readonly power: Power;
  /** Rated voltage of the column used, V. */
  readonly voltage: Voltage;
  /** Source of the figure. */
  readonly method: "nfpa-70" | "table given";
  /** False where the table has no row for the power and the next larger one was used. */
  readonly insideRange: boolean;
}

/**
 * Full-load current of a motor by power, voltage and phases, from the code's Tables 430.248 and 430.250.
 *
 * @remarks
 * The currents that conductors and short-circuit protection are sized by (430.6); they are deliberately high, 10 A for a
 * 1-1/2 hp, 230 V motor that takes about 7 A in the textbook. Overloads go by the nameplate. A submersible motor's nameplate
 * current is often above the table: size by the larger of the two ({@link motorBranchCircuit} does).
 *
 * @param input - the motor; each field says its unit and the values it takes
 * @returns the current and the row it stands in
 * @throws InputError naming the first field that is not known, such as a voltage of another system
 *
 * @example
 * ```ts
 * import { fullLoadCurrent } from "risingmain/motor";
 * import { horsepower, volts } from "risingmain/units";
 *
 * fullLoadCurrent({ power: horsepower(1.5), voltage: volts(230), system: "single-phase" }).current; // => 10
 * fullLoadCurrent({ power: horsepower(1.5), voltage: volts(230), system: "three-phase" }).current; // => 6
 * fullLoadCurrent({ power: horsepower(1.5), voltage: volts(460), system: "single-phase" }); // throws InputError
 * ```
 *
 * @source nfpa-70, Tables 430.248 and 430.250
 */
export function fullLoadCurrent(input: FullLoadCurrentInput): FullLoadCurrent {
  requireObject("input", input);
  const { power, voltage, system } = input;
  requireOneOf("system", system, MOTOR_SYSTEMS);
  requirePositive("power", power, 1e9, "W");
  requireWithin("voltage", voltage, 1, 1000, "V");
  const standard = system === "single-phase" ? necTable430_248 : necTable430_250;
  const { table = standard } = input;
  const { column, rated } = findColumn(table, voltage, system);

  // 1 hp is 745.7 W mechanical, 746 W electrical: a tenth of a per cent is not another motor.
  const needed = inHorsepower(power) / 1.001;
  const listed = table.rows.filter(({ amperes }) => amperes[column] !== null);
  const row = listed.find(({ horsepower: size }) => size >= needed);
  if (row === undefined) {
    const largest = listed.at(-1)?.horsepower ?? 0;
    throw new InputError("power", power, `at most ${largest} hp, the table's largest ${system} motor at ${rated} V`);
  }
  return {
    current: row.amperes[column] as Current,
    power: horsepower(row.horsepower),
    voltage: rated as Voltage,
    method: table === standard ? "nfpa-70" : "table given",
    insideRange: row.horsepower <= needed * 1.002,
  };
}

function findColumn(table: FullLoadTable, voltage: number, system: MotorSystem): { column: number; rated: number } {
  requireObject("table", table);
  requireList("table.voltages", table.voltages, 1, 50);
  requireList("table.rows", table.rows, 1, 500);
  let before = 0;
  for (const [i, row] of Array.from(table.rows).entries()) {
    requireObject(`table.rows[${i}]`, row);
    requireWithin(`table.rows[${i}].horsepower`, row.horsepower, before, 1e6, "hp");
    before = row.horsepower;
    requireList(`table.rows[${i}].amperes`, row.amperes, table.voltages.length, table.voltages.length);
    for (const amperes of row.amperes) {
      if (amperes !== null) requireWithin(`table.rows[${i}].amperes`, amperes, 0, 1e5, "A");
    }
  }
  const exact = table.voltages.indexOf(voltage);
  const usual = SYSTEM_VOLTAGES.find(([low, high]) => voltage >= low && voltage <= high)?.[2];
  const column = exact >= 0 ? exact : table.voltages.indexOf(usual ?? voltage);
  const rated = table.voltages[column];
  if (rated === undefined) {
    throw new InputError("voltage", voltage, `a ${system} motor voltage: ${table.voltages.join(", ")} V`);
  }
  return { column, rated };
}
