/**
 * A line of several pipes end to end, as one pipe that a wave takes as long to run along.
 *
 * @module
 */
import { requireList, requireObject, requireWithin } from "../numeric/index.ts";
import type { Area, Duration, Length, Velocity } from "../units/index.ts";

/** One pipe of the line. */
export interface LinePiece {
  /** Length. 1e-3 to 1 000 000 m. */
  readonly length: Length;
  /** Inside diameter. 1e-4 to 100 m. */
  readonly insideDiameter: Length;
  /** Wave speed in it. 1 to 10 000 m/s. */
  readonly waveSpeed: Velocity;
}

/** The one pipe that stands for the line. */
export interface CompositeLine {
  /** Length of all pieces, m. */
  readonly length: Length;
  /** Wave speed that gives the same time of travel, m/s. */
  readonly waveSpeed: Velocity;
  /** Bore with the same inertia at the same flow, m². */
  readonly area: Area;
  /** Inside diameter of that bore, m. */
  readonly insideDiameter: Length;
  /** Time for a wave to run there and back: the critical closing time, s. */
  readonly criticalTime: Duration;
}

/**
 * The equivalent pipe of several in series.
 *
 * @remarks
 * L = Σ Lᵢ;  L/a = Σ Lᵢ/aᵢ;  L/A = Σ Lᵢ/Aᵢ
 *
 * The times of travel and the inertia are those of the line. The part reflections where pipes meet are lost, so use it
 * for slow closures and first estimates; `simulateSurge` takes the pieces as they are.
 *
 * @param pieces - 1 to 1000 pipes, in order
 * @returns the equivalent pipe and the critical time
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example Steel in the well, then polyethylene to the house
 * ```ts
 * import { compositeLine } from "risingmain/surge";
 * import { inMetresPerSecond, inSeconds, metres, metresPerSecond, millimetres } from "risingmain/units";
 *
 * const line = compositeLine([
 *   { length: metres(60), insideDiameter: millimetres(35), waveSpeed: metresPerSecond(1380) },
 *   { length: metres(120), insideDiameter: millimetres(35), waveSpeed: metresPerSecond(300) },
 * ]);
 * inMetresPerSecond(line.waveSpeed); // ≈ 405.9
 * inSeconds(line.criticalTime); // ≈ 0.887
 * ```
 *
 * @source derived: equal time of travel and equal inertia
 */
export function compositeLine(pieces: readonly LinePiece[]): CompositeLine {
  requireList("pieces", pieces, 1, 1000);
  let length = 0;
  let time = 0;
  let inertia = 0;
  for (const [i, piece] of Array.from(pieces).entries()) {
    requireObject(`pieces[${i}]`, piece);
    requireWithin(`pieces[${i}].length`, piece.length, 1e-3, 1e6, "m");
    requireWithin(`pieces[${i}].insideDiameter`, piece.insideDiameter, 1e-4, 100, "m");
    requireWithin(`pieces[${i}].waveSpeed`, piece.waveSpeed, 1, 10000, "m/s");
    length += piece.length;
    time += piece.length / piece.waveSpeed;
    inertia += piece.length / ((Math.PI / 4) * piece.insideDiameter * piece.insideDiameter);
  }
  const area = length / inertia;
  return {
    length: length as Length,
    waveSpeed: (length / time) as Velocity,
    area: area as Area,
    insideDiameter: Math.sqrt((4 * area) / Math.PI) as Length,
    criticalTime: (2 * time) as Duration,
  };
}
