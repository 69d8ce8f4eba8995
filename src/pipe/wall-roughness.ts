/**
 * Equivalent sand-grain roughness of pipe walls, by material.
 *
 * Sources: Moody 1944, figure 2 (new commercial pipe, printed in feet; recalled), converted by 1 ft = 0.3048 m; plastics as
 * "smooth": drawn tubing of the same chart, which handbooks use for them (common practice).
 *
 * @module
 */
import { requireOneOf } from "../numeric/index.ts";
import type { Length } from "../units/index.ts";

/** A pipe wall, by what it is made of and lined with. */
export type WallMaterial =
  | "PVC"
  | "PE"
  | "PEX"
  | "copper"
  | "drawn tubing"
  | "stainless steel"
  | "steel"
  | "galvanised steel"
  | "asphalted cast iron"
  | "cast iron"
  | "concrete, smooth"
  | "concrete, rough";

/** One material's roughness. */
export interface WallRoughness {
  /** The material. */
  readonly material: WallMaterial;
  /** Equivalent sand-grain height when new, m. 0 to 0.003. */
  readonly roughness: Length;
  /** Where the figure comes from: a source id, or "common practice". */
  readonly source: string;
}

const FOOT = 0.3048;

/**
 * Equivalent sand-grain heights of new pipe.
 *
 * @source moody-1944, figure 2; recalled
 * @source common practice: plastics taken as drawn tubing, stainless steel as steel
 */
export const wallRoughnesses: readonly WallRoughness[] = [
  { material: "PVC", roughness: (0.000005 * FOOT) as Length, source: "common practice" },
  { material: "PE", roughness: (0.000005 * FOOT) as Length, source: "common practice" },
  { material: "PEX", roughness: (0.000005 * FOOT) as Length, source: "common practice" },
  { material: "copper", roughness: (0.000005 * FOOT) as Length, source: "moody-1944" },
  { material: "drawn tubing", roughness: (0.000005 * FOOT) as Length, source: "moody-1944" },
  { material: "stainless steel", roughness: (0.00015 * FOOT) as Length, source: "common practice" },
  { material: "steel", roughness: (0.00015 * FOOT) as Length, source: "moody-1944" },
  { material: "galvanised steel", roughness: (0.0005 * FOOT) as Length, source: "moody-1944" },
  { material: "asphalted cast iron", roughness: (0.0004 * FOOT) as Length, source: "moody-1944" },
  { material: "cast iron", roughness: (0.00085 * FOOT) as Length, source: "moody-1944" },
  { material: "concrete, smooth", roughness: (0.001 * FOOT) as Length, source: "moody-1944" },
  { material: "concrete, rough", roughness: (0.01 * FOOT) as Length, source: "moody-1944" },
];

/**
 * Equivalent sand-grain roughness of a new pipe wall.
 *
 * @remarks
 * New and clean. Scale, rust and slime raise it, in iron and steel tenfold over decades; plastics hardly change.
 *
 * @param material - what the wall is made of
 * @returns the roughness, m, with its source
 * @throws {@link units.InputError} where the material is not one of the table
 *
 * @example
 * ```ts
 * import { wallRoughness } from "risingmain/pipe";
 * import { inMillimetres } from "risingmain/units";
 *
 * inMillimetres(wallRoughness("galvanised steel").roughness); // ≈ 0.152
 * ```
 *
 * @source moody-1944, figure 2
 * @source common practice: plastics taken as drawn tubing, stainless steel as steel
 */
export function wallRoughness(material: WallMaterial): WallRoughness {
  requireOneOf(
    "material",
    material,
    wallRoughnesses.map((row) => row.material),
  );
  return wallRoughnesses.find((row) => row.material === material) as WallRoughness;
}
