/**
 * Entrances and exits of pipe.
 *
 * @module
 */
import { polyline, requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";

/** The mouth of a pipe out of a tank, and how it is shaped. */
export interface EntranceInput {
  /** "projecting" into the tank, or "flush" with its wall. */
  readonly mouth: "projecting" | "flush";
  /** Radius of the rounding of a flush mouth over the inside diameter; 0, a sharp edge, when left out. 0 to 10. */
  readonly rounding?: number;
}

/** Radius over diameter and coefficient of a flush mouth (`crane-410`, recalled). */
const ROUNDED: readonly (readonly [rounding: number, coefficient: number])[] = [
  [0, 0.5],
  [0.02, 0.28],
  [0.04, 0.24],
  [0.06, 0.15],
  [0.1, 0.09],
  [0.15, 0.04],
];
const PROJECTING = 0.78;

/**
 * Resistance coefficient of the entrance to a pipe.
 *
 * @remarks
 * 0.78 where the pipe projects into the tank, 0.5 where it is flush and sharp, falling to 0.04 as the edge is rounded to 0.15
 * of the diameter; in line between the printed roundings. On the velocity head in the pipe.
 *
 * @param input - the mouth and its rounding; each field says the values it takes
 * @returns K, 0.04 to 0.78
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { entranceCoefficient } from "risingmain/fittings";
 *
 * entranceCoefficient({ mouth: "flush" }); // => 0.5
 * entranceCoefficient({ mouth: "flush", rounding: 0.2 }); // => 0.04
 * ```
 *
 * @source crane-410, recalled
 */
export function entranceCoefficient(input: EntranceInput): number {
  requireObject("input", input);
  const { mouth, rounding = 0 } = input;
  requireOneOf("mouth", mouth, ["projecting", "flush"]);
  requireWithin("rounding", rounding, 0, 10, "");
  if (mouth === "projecting") return PROJECTING;
  return polyline(ROUNDED, rounding);
}

/**
 * Resistance coefficient of the exit of a pipe into a tank or the open: the whole velocity head is lost.
 *
 * @remarks
 * K = 1 whatever the shape of the lip. On the velocity head in the pipe. Where a jet's own velocity head is counted as
 * delivered (a nozzle), it is not counted here as well.
 *
 * @returns K = 1
 *
 * @example
 * ```ts
 * import { exitCoefficient } from "risingmain/fittings";
 *
 * exitCoefficient(); // => 1
 * ```
 *
 * @source derived: sudden widening without end
 */
export function exitCoefficient(): number {
  return 1;
}
