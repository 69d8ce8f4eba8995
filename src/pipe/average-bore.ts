/**
 * The bore that pipe has on average, where its standard sets only the least wall.
 *
 * @module
 */
import { requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import { InputError, type Length } from "../units/index.ts";
import type { PipeSize } from "./pipe-size.ts";
import type { InsideDiameterBasis } from "./pipe-table.ts";

/** What the average bore is worked out from; a `PipeSize` has it all. */
export type AverageBoreInput = Pick<
  PipeSize,
  "standard" | "outsideDiameter" | "wall" | "insideDiameter" | "insideDiameterBasis"
>;

/** Walls may be 12 % over the least, so they are 6 % over on average. */
const AVERAGE_EXCESS = 0.06;
/** In ASTM D2241 the band is never under 0.020 in, so the average is at least 0.010 in over the least wall; in m. */
const THIN_WALL_EXCESS = 0.01 * 0.0254;

const BASES: readonly InsideDiameterBasis[] = [
  "average",
  "controlled",
  "outside less two minimum walls",
  "outside less two nominal walls",
];

/**
 * Average inside diameter of a pipe, for friction.
 *
 * @remarks
 * d = D − 2.12 t where the standard sets the least wall t (and t + 0.010 in for thin walls of ASTM D2241); the printed inside
 * diameter where that is an average, held by the standard or nominal already.
 *
 * The bore left by least walls is the widest there is: in 1 in SDR 21 it is 2 % over the average, and shows 8 % too little
 * friction. Walls average within about 3 % of this.
 *
 * @param pipe - the pipe, as `findPipe` returns it
 * @returns the average inside diameter, m
 * @throws {@link units.InputError} naming the first field that is not in its range
 *
 * @example
 * ```ts
 * import { averageInsideDiameter, findPipe } from "risingmain/pipe";
 * import { inInches } from "risingmain/units";
 *
 * const pipe = findPipe("1 in PVC SDR 21");
 * inInches(pipe.insideDiameter); // ≈ 1.189
 * inInches(averageInsideDiameter(pipe)); // ≈ 1.169
 * inInches(averageInsideDiameter(findPipe("1-1/4 in PE SIDR 15"))); // ≈ 1.380
 * ```
 *
 * @source ppi-pe-handbook: outside diameter less 2.12 walls, recalled
 * @source astm-d2241: the tolerance of walls, which an industry table of average walls bears out
 */
export function averageInsideDiameter(pipe: AverageBoreInput): Length {
  requireObject("pipe", pipe);
  const { standard, outsideDiameter, wall, insideDiameter, insideDiameterBasis } = pipe;
  requireOneOf("pipe.insideDiameterBasis", insideDiameterBasis, BASES);
  requireWithin("pipe.insideDiameter", insideDiameter, 1e-4, 100, "m");
  if (insideDiameterBasis !== "outside less two minimum walls") return insideDiameter;
  requireWithin("pipe.outsideDiameter", outsideDiameter, 1e-4, 100, "m");
  requireWithin("pipe.wall", wall, 0, outsideDiameter / 2, "m (half the outside diameter)");
  const least = standard === "ASTM D2241" ? THIN_WALL_EXCESS : 0;
  const bore = outsideDiameter - 2 * (wall + Math.max(AVERAGE_EXCESS * wall, least));
  if (!(bore > 0)) throw new InputError("pipe.wall", wall, "a wall that leaves a bore");
  return bore as Length;
}
