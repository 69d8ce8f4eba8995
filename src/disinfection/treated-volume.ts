/**
 * How much water has to be treated: what stands in the well below the static level, and what fills the pipes and tank.
 *
 * @module
 */
import { requireList, requireObject, requirePositive, requireWithin } from "../numeric/index.ts";
import type { Length, Volume } from "../units/index.ts";

/** A length of casing, screen or open hole of one bore. */
export interface BoreSection {
  /** Inside diameter of the casing, or diameter of the open hole. Above 0, to 30 m. */
  readonly insideDiameter: Length;
  /** Depth of the top of the section, from the point the static level is measured from. 0 to 5000 m. */
  readonly top: Length;
  /** Depth of the bottom of the section, from the same point; at least the top. 0 to 5000 m. */
  readonly bottom: Length;
}

/** A run of full pipe. */
export interface FilledPipe {
  /** Inside diameter, not the trade size. Above 0, to 30 m. */
  readonly insideDiameter: Length;
  /** Length of the run. 0 to 1 000 000 m. */
  readonly length: Length;
}

/** The well and what is connected to it. */
export interface TreatedVolumeInput {
  /** Depth from the measuring point down to the standing water. 0 to 5000 m. */
  readonly staticLevel: Length;
  /** The bore, in sections that do not overlap; 1 to 100 of them. */
  readonly bore: readonly BoreSection[];
  /** Inside diameter of the drop pipe, where it stands full (a check valve holds it). Its part below the static level
   * is already in the bore's water and is not counted again. Above 0, to 30 m. */
  readonly dropPipe?: Length;
  /** Yard lines and house pipe, up to 1000 runs. None where left out. */
  readonly pipes?: readonly FilledPipe[];
  /** Water held by the tank, not the tank's size. 0 to 100 000 m³; 0 where left out. */
  readonly tank?: Volume;
}

/** The water to treat, and where it stands. */
export interface TreatedVolume {
  /** Sum of the parts, m³. */
  readonly total: Volume;
  /** Water in the bore below the static level, m³. */
  readonly well: Volume;
  /** Water in the drop pipe above the static level, m³. */
  readonly dropPipe: Volume;
  /** Water in the other pipes, m³. */
  readonly pipes: Volume;
  /** Water in the tank, m³. */
  readonly tank: Volume;
  /** Height of water standing in the bore, m: what a table of gallons per foot is multiplied by. 0 in a dry well. */
  readonly waterColumn: Length;
}

/**
 * The volume of water to treat when a well and its system are disinfected.
 *
 * @remarks
 * V = Σ π d² h / 4 over the bore's wetted sections and the full pipes, plus the water in the tank, with d the inside
 * diameter and h the length below the static level. It is the water column that counts, not the depth of the well: a
 * leaflet that multiplies by the whole depth overdoses. Gravel packs and the rock around an open hole hold more water;
 * some authorities treat twice the bore's volume for that (see `publishedDoses`). Exact geometry for full, round bores.
 *
 * @param input - the well and what is connected to it; each field says its unit and range
 * @returns the volume in m³ with its parts
 * @throws {@link units.InputError} naming the first field outside its range, or a section whose bottom is above its top
 *
 * @example A 6 in well 120 ft deep with water at 20 ft
 * ```ts
 * import { treatedVolume } from "risingmain/disinfection";
 * import { feet, inches, inFeet, inUsGallons } from "risingmain/units";
 *
 * const water = treatedVolume({
 *   staticLevel: feet(20), bore: [{ insideDiameter: inches(6), top: feet(0), bottom: feet(120) }],
 * });
 * inFeet(water.waterColumn); // ≈ 100.0
 * inUsGallons(water.total); // ≈ 146.9
 * ```
 *
 * @source derived: volume of a cylinder
 */
export function treatedVolume(input: TreatedVolumeInput): TreatedVolume {
  requireObject("input", input);
  const { staticLevel, bore, dropPipe, pipes = [], tank = 0 } = input;
  requireWithin("staticLevel", staticLevel, 0, 5000, "m");
  requireList("bore", bore, 1, 100);
  requireList("pipes", pipes, 0, 1000);
  requireWithin("tank", tank, 0, 1e5, "m³");
  if (dropPipe !== undefined) requirePositive("dropPipe", dropPipe, 30, "m");

  let well = 0;
  let waterColumn = 0;
  bore.forEach((section, i) => {
    const at = `bore[${i}]`;
    requireObject(at, section);
    requirePositive(`${at}.insideDiameter`, section.insideDiameter, 30, "m");
    requireWithin(`${at}.top`, section.top, 0, 5000, "m");
    requireWithin(`${at}.bottom`, section.bottom, section.top, 5000, "m");
    const wetted = Math.max(section.bottom - Math.max(section.top, staticLevel), 0);
    well += cylinder(section.insideDiameter, wetted);
    waterColumn += wetted;
  });
  let inPipes = 0;
  pipes.forEach((run, i) => {
    const at = `pipes[${i}]`;
    requireObject(at, run);
    requirePositive(`${at}.insideDiameter`, run.insideDiameter, 30, "m");
    requireWithin(`${at}.length`, run.length, 0, 1e6, "m");
    inPipes += cylinder(run.insideDiameter, run.length);
  });
  const inDropPipe = dropPipe === undefined ? 0 : cylinder(dropPipe, staticLevel);

  return {
    total: (well + inDropPipe + inPipes + tank) as Volume,
    well: well as Volume,
    dropPipe: inDropPipe as Volume,
    pipes: inPipes as Volume,
    tank: tank as Volume,
    waterColumn: waterColumn as Length,
  };
}

function cylinder(diameter: number, length: number): number {
  return (Math.PI / 4) * diameter * diameter * length;
}
