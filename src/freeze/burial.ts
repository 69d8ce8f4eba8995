/**
 * How deep to lay a line, and what a frost-proof hydrant lets go each time it is shut.
 *
 * @module
 */
import { requireObject, requirePositive, requireWithin } from "../numeric/index.ts";
import type { Caution } from "../sources/index.ts";
import type { Length, Ratio, Volume } from "../units/index.ts";

/** 12 in, the larger of the two margins in use, m (`plumbing-exam-burial`). */
const USUAL_MARGIN = 12 * 0.0254;

/** Frost and the margin under it. */
export interface BurialInput {
  /** Depth of frost. 0 to 20 m. */
  readonly frostDepth: Length;
  /** Cover wanted below the frost. 0 to 5 m; 12 in where left out. 6 and 12 in are both in use. */
  readonly margin?: Length;
}

/** A depth to lay a line at. */
export interface BurialDepth {
  /** Cover over the top of the pipe, m. */
  readonly cover: Length;
  /** What to say with it. */
  readonly cautions: readonly Caution[];
}

const CAUTIONS: readonly Caution[] = [
  {
    code: "burial-local",
    text: "The local code's burial depth wins. Under a drive cleared of snow, in gravel or on a windy ridge frost goes deeper.",
    basis: "common practice",
  },
  {
    code: "trench",
    text: "Have buried services marked before digging. Never enter an unshored trench deeper than the local rule allows: trench walls kill.",
    basis: "common practice",
  },
];

/**
 * The cover to give a water line below the frost.
 *
 * @remarks
 * cover = frost depth + margin. Restatements of two codes give 6 in and 12 in; the larger is taken where none is given.
 *
 * @param input - frost depth and margin; each field says its unit and range
 * @returns the cover and the cautions
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { burialDepth } from "risingmain/freeze";
 * import { feet, inFeet } from "risingmain/units";
 *
 * inFeet(burialDepth({ frostDepth: feet(4) }).cover); // ≈ 5.00
 * ```
 *
 * @source plumbing-exam-burial
 */
export function burialDepth(input: BurialInput): BurialDepth {
  requireObject("input", input);
  const { frostDepth, margin = USUAL_MARGIN } = input;
  requireWithin("frostDepth", frostDepth, 0, 20, "m");
  requireWithin("margin", margin, 0, 5, "m");
  return { cover: (frostDepth + margin) as Length, cautions: CAUTIONS };
}

/** A frost-proof hydrant: its valve is at the bottom and the riser drains into gravel. */
export interface DrainBackInput {
  /** Inside diameter of the riser. Above 0, to 1 m. */
  readonly riserDiameter: Length;
  /** Length of the riser from the drain up to the spout. 0 to 20 m. */
  readonly riserLength: Length;
  /** Inside diameter of a hose left on, which drains too. Above 0, to 1 m; none where left out. */
  readonly hoseDiameter?: Length;
  /** Length of that hose. 0 to 1000 m; 0 where left out. */
  readonly hoseLength?: Length;
  /** Open share of the gravel round the drain. 0.05 to 0.6; 0.35 where left out (common practice for washed gravel). */
  readonly porosity?: Ratio;
  /** How often the hydrant may be shut before the gravel has soaked away the first. 1 to 1000; 1 where left out. */
  readonly draws?: number;
}

/** What drains, and the gravel that takes it. */
export interface DrainBack {
  /** Water that drains at each shut-off, m³. */
  readonly drained: Volume;
  /** Gravel that holds it (times the draws), m³. */
  readonly gravel: Volume;
  /** What to say with it. */
  readonly cautions: readonly Caution[];
}

const DRAIN_CAUTIONS: readonly Caution[] = [
  {
    code: "weep-hole",
    text: "The drain is an opening in the drinking-water line below ground: keep the gravel drained and far from manure, and fit the backflow device the code asks for. Some codes forbid the drain.",
    basis: "common practice",
  },
  {
    code: "hose-off",
    text: "Take the hose off in frost, or the riser cannot drain. Open and shut the hydrant fully: half open it washes out the gravel.",
    basis: "common practice",
  },
];

/**
 * The water that a frost-proof hydrant drains each time it is shut, and the gravel to hold it.
 *
 * @remarks
 * V = π d² l/4 of the riser (and of a hose left on), gravel V n/porosity with n `draws`. In a soil that stands full of water
 * the riser does not drain at all.
 *
 * @param input - riser, hose and gravel; each field says its unit and range
 * @returns the two volumes and the cautions
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example A one inch riser, 8 ft from drain to spout
 * ```ts
 * import { drainBack } from "risingmain/freeze";
 * import { feet, inches, inUsGallons } from "risingmain/units";
 *
 * inUsGallons(drainBack({ riserDiameter: inches(1.049), riserLength: feet(8) }).drained); // ≈ 0.359
 * ```
 *
 * @source derived: volume of a cylinder
 * @source common practice: the gravel
 */
export function drainBack(input: DrainBackInput): DrainBack {
  requireObject("input", input);
  const { riserDiameter, riserLength, hoseDiameter, hoseLength = 0, porosity = 0.35, draws = 1 } = input;
  requirePositive("riserDiameter", riserDiameter, 1, "m");
  requireWithin("riserLength", riserLength, 0, 20, "m");
  if (hoseDiameter !== undefined) requirePositive("hoseDiameter", hoseDiameter, 1, "m");
  requireWithin("hoseLength", hoseLength, 0, 1000, "m");
  requireWithin("porosity", porosity, 0.05, 0.6, "(0.35 for 35 percent)");
  requireWithin("draws", draws, 1, 1000, "");
  const drained = (Math.PI / 4) * (riserDiameter ** 2 * riserLength + (hoseDiameter ?? 0) ** 2 * hoseLength);
  return { drained: drained as Volume, gravel: ((drained * draws) / porosity) as Volume, cautions: DRAIN_CAUTIONS };
}
