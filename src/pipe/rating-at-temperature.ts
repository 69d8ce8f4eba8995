/**
 * Pressure rating of plastic pipe in water warmer than its standard rates it for.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import {
  celsius,
  fahrenheit,
  type GaugePressure,
  InputError,
  inCelsius,
  inFahrenheit,
  type Temperature,
} from "../units/index.ts";
import type { DeratingRow, DeratingTable } from "./derating/derating-table.ts";
import { isoPeDerating } from "./derating/iso-pe.ts";
import { isoPvcDerating } from "./derating/iso-pvc.ts";
import { pe3408Derating } from "./derating/pe3408.ts";
import { pe4710Derating } from "./derating/pe4710.ts";
import { pexDerating } from "./derating/pex.ts";
import { pvcDerating } from "./derating/pvc.ts";
import type { PipeSize } from "./pipe-size.ts";

/** The table of each grade that has one. */
const TABLES: Readonly<Record<string, DeratingTable>> = {
  "PVC 1120": pvcDerating,
  PE3408: pe3408Derating,
  PE4710: pe4710Derating,
  PEX: pexDerating,
  PE80: isoPeDerating,
  PE100: isoPeDerating,
  "PVC-U": isoPvcDerating,
};

/** A pipe and the water in it. */
export interface RatingAtTemperatureInput {
  /** The pipe; of it the grade and the rating are used. */
  readonly pipe: Pick<PipeSize, "grade" | "pressureRating">;
  /** Temperature of the water, or of the ground where that is warmer. 250 to 450 K. */
  readonly temperature: Temperature;
}

/** The rating of a pipe at a temperature, or why there is none. */
export type RatingAtTemperature =
  | {
      /** The pipe is rated at this temperature. */
      readonly state: "rated";
      /** Pressure rating at the temperature, Pa. */
      readonly pressureRating: GaugePressure;
      /** Share of the rating at the rating temperature, 0 to 1. */
      readonly factor: number;
      /** Id of the source of the factor. */
      readonly method: string;
    }
  | {
      /** No factor is published for water so warm. */
      readonly state: "too warm";
      /** Warmest water with a published factor, K. */
      readonly warmest: Temperature;
      /** Id of the source of the factors. */
      readonly method: string;
    }
  | {
      /** The standard gives this pipe no rating (copper, steel): see `metalPipeWorkingPressure`. */
      readonly state: "no rating";
    };

/**
 * Pressure rating of a plastic pipe at the temperature of its water.
 *
 * @remarks
 * The rating at 73 °F (or 20 °C) times a published factor: in steps for PE and PVC-U, in line between the printed temperatures
 * for PVC, PEX and metric PE (PVC's curve bends so little that the line is off by some 0.003). Colder water earns no credit. Pipe in the sun or a hot attic takes the temperature of its wall, not of the water.
 *
 * @param input - the pipe and the temperature; each field says its unit and the values it takes
 * @returns the rating and its factor, or that the water is too warm, or that the pipe has no rating
 * @throws {@link units.InputError} where a field is not in its range or the grade has no table
 *
 * @example
 * ```ts
 * import { findPipe, ratingAtTemperature } from "risingmain/pipe";
 * import { fahrenheit, inPsi } from "risingmain/units";
 *
 * const rating = ratingAtTemperature({ pipe: findPipe("2 in PVC SDR 21"), temperature: fahrenheit(90) });
 * rating.state === "rated" ? inPsi(rating.pressureRating) : 0; // ≈ 150.0
 * ratingAtTemperature({ pipe: findPipe("2 in PVC SDR 21"), temperature: fahrenheit(150) }).state; // => "too warm"
 * ratingAtTemperature({ pipe: findPipe("1 in copper type L"), temperature: fahrenheit(60) }).state; // => "no rating"
 * ```
 *
 * @source ppfa-ub3: PVC
 * @source ppi-pe-handbook: PE4710
 * @source awwa-m55: PE3408
 * @source astm-f876: PEX, recalled
 * @source en-12201-2: PE80 and PE100, recalled
 * @source iso-1452-2: PVC-U, recalled
 */
export function ratingAtTemperature(input: RatingAtTemperatureInput): RatingAtTemperature {
  requireObject("input", input);
  const { pipe, temperature } = input;
  requireObject("pipe", pipe);
  requireWithin("temperature", temperature, 250, 450, "K");
  const { grade, pressureRating } = pipe;
  if (pressureRating === null) return { state: "no rating" };
  requireWithin("pipe.pressureRating", pressureRating, 0, 1e8, "Pa");
  const table = typeof grade === "string" && Object.hasOwn(TABLES, grade) ? TABLES[grade] : undefined;
  if (table === undefined) {
    throw new InputError("pipe.grade", grade, `one of ${Object.keys(TABLES).join(", ")}`);
  }
  const factor = factorAt(table, table.unit === "°F" ? inFahrenheit(temperature) : inCelsius(temperature));
  if (factor === null) {
    const [last] = table.rows.at(-1) as DeratingRow;
    const warmest = table.unit === "°F" ? fahrenheit(last) : celsius(last);
    return { state: "too warm", warmest, method: table.source };
  }
  return { state: "rated", pressureRating: (factor * pressureRating) as GaugePressure, factor, method: table.source };
}

/** Kelvins and back cost some 1e-13 degrees; a temperature that near a printed one is that one. */
const SAME = 1e-9;

function factorAt(table: DeratingTable, temperature: number): number | null {
  let [t0, f0] = table.rows[0];
  for (const [t1, f1] of table.rows) {
    if (temperature <= t1 + SAME) {
      if (table.between === "steps" || t1 === t0) return f1;
      return f0 + Math.min(1, (temperature - t0) / (t1 - t0)) * (f1 - f0);
    }
    [t0, f0] = [t1, f1];
  }
  return null;
}
