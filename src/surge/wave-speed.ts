/**
 * How fast a pressure wave runs along a pipe: the liquid's stiffness, softened by the wall's.
 *
 * @module
 */
import { requireObject, requireOneOf, requirePositive, requireWithin } from "../numeric/index.ts";
import type { Density, Length, Modulus, Velocity } from "../units/index.ts";

/**
 * How the pipe is held lengthwise: fixed at its upstream end only, held against all movement along its length (buried),
 * or free to slide at joints throughout.
 */
export type PipeSupport = "anchored upstream" | "anchored throughout" | "expansion joints";

/** A liquid in an elastic pipe. */
export interface WaveSpeedInput {
  /** Bulk modulus of the liquid; water about 2.1 GPa. 1e5 to 1e12 Pa. */
  readonly bulkModulus: Modulus;
  /** Density of the liquid. 1 to 25 000 kg/m³. */
  readonly density: Density;
  /** The wall; left out, the pipe is taken as rigid. */
  readonly wall?: ElasticWall;
}

/** The wall of an elastic pipe. */
export interface ElasticWall {
  /** Inside diameter. 1e-4 to 100 m. */
  readonly insideDiameter: Length;
  /** Wall thickness. Above 0, at most 10 m. */
  readonly thickness: Length;
  /** Modulus of elasticity in quick loading. 1e5 to 1e13 Pa. */
  readonly elasticModulus: Modulus;
  /** Poisson's ratio: about 0.3 for steel, 0.38 for PVC, 0.45 for PE. 0 to 0.5; read only where it matters. */
  readonly poissonRatio: number;
  /** How the pipe is held lengthwise. */
  readonly support: PipeSupport;
  /** Whether hoop stress may be taken as even through the wall: "thin", as usual, or not: "thick". */
  readonly theory: "thin" | "thick";
}

/** The speed, and the factor it came from. */
export interface WaveSpeed {
  /** Speed of a pressure wave, m/s. */
  readonly waveSpeed: Velocity;
  /** Speed in the same liquid unconfined, as in a rigid pipe, m/s. */
  readonly soundSpeed: Velocity;
  /** The factor c₁ of the wall and its support; 0 for a rigid pipe. */
  readonly supportFactor: number;
  /** Where the equation comes from. */
  readonly method: "wylie-streeter-1993";
  /** False for thin-wall theory on a wall thicker than 1/25 of the bore. */
  readonly insideRange: boolean;
}

/** Thin-wall theory holds down to this ratio of bore to wall (`wylie-streeter-1993`, section 2). */
const THINNEST_RATIO = 25;

/**
 * The speed of a pressure wave in an elastic pipe.
 *
 * @remarks
 * a = √(K/ρ) / √(1 + (K/E) (D/e) c₁)
 *
 * with K `bulkModulus`, ρ `density`, E `elasticModulus`, D `insideDiameter`, e `thickness`. Thin wall: c₁ = 1 − μ/2
 * anchored upstream, 1 − μ² anchored throughout, 1 with expansion joints. Thick wall: c₁ = (2 e/D)(1 + μ) + D/(D + e)
 * times the same. Some 1 to 2 % for metal pipe; for plastics as good as the modulus, which depends on temperature and
 * on how quick the load is (10 %). A little free air slows the wave by far more than any wall does, and is left out.
 *
 * @param input - the liquid, and the wall (left out: rigid)
 * @returns the speed, with the speed of sound in the liquid and the support factor
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example A buried steel drop line
 * ```ts
 * import { waveSpeed } from "risingmain/surge";
 * import { gigapascals, inMetresPerSecond, kilogramsPerCubicMetre, millimetres } from "risingmain/units";
 *
 * const wave = waveSpeed({
 *   bulkModulus: gigapascals(2.1), density: kilogramsPerCubicMetre(999.7),
 *   wall: {
 *     insideDiameter: millimetres(35.05), thickness: millimetres(3.56), elasticModulus: gigapascals(207),
 *     poissonRatio: 0.3, support: "anchored throughout", theory: "thick",
 *   },
 * });
 * inMetresPerSecond(wave.waveSpeed); // ≈ 1376.4
 * ```
 *
 * @source wylie-streeter-1993, chapter 2 (from memory)
 */
export function waveSpeed(input: WaveSpeedInput): WaveSpeed {
  requireObject("input", input);
  const { bulkModulus: K, density, wall } = input;
  requireWithin("bulkModulus", K, 1e5, 1e12, "Pa");
  requireWithin("density", density, 1, 25000, "kg/m³");
  const sound = Math.sqrt(K / density);
  if (wall === undefined) return result(sound, sound, 0, true);

  requireObject("wall", wall);
  const { insideDiameter: D, thickness: e, elasticModulus: E, poissonRatio: mu, support, theory } = wall;
  requireWithin("wall.insideDiameter", D, 1e-4, 100, "m");
  requirePositive("wall.thickness", e, 10, "m");
  requireWithin("wall.elasticModulus", E, 1e5, 1e13, "Pa");
  requireWithin("wall.poissonRatio", mu, 0, 0.5, "");
  requireOneOf("wall.support", support, ["anchored upstream", "anchored throughout", "expansion joints"]);
  requireOneOf("wall.theory", theory, ["thin", "thick"]);

  const thin = support === "anchored upstream" ? 1 - mu / 2 : support === "anchored throughout" ? 1 - mu * mu : 1;
  const thick = ((2 * e) / D) * (1 + mu) + (D / (D + e)) * thin;
  const c1 = theory === "thin" ? thin : thick;
  const a = sound / Math.sqrt(1 + (K / E) * (D / e) * c1);
  return result(a, sound, c1, theory === "thick" || D >= THINNEST_RATIO * e);
}

function result(a: number, sound: number, supportFactor: number, insideRange: boolean): WaveSpeed {
  return {
    waveSpeed: a as Velocity,
    soundSpeed: sound as Velocity,
    supportFactor,
    method: "wylie-streeter-1993",
    insideRange,
  };
}
