/**
 * The equipment grounding conductor of a circuit, enlarged where the circuit conductors are.
 *
 * @module
 */
import { requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import { type Area, type Current, InputError } from "../units/index.ts";
import { CONDUCTOR_MATERIALS, type ConductorMaterial } from "./material.ts";
import { necTable250_122 } from "./nec-250-122.ts";
import { necChapter9Table8 } from "./nec-chapter-9-table-8.ts";
import { type ConductorSize, readSize } from "./size.ts";

/** One circular mil, m². */
const CIRCULAR_MIL = (Math.PI / 4) * 0.0000254 ** 2;

/** Circuit conductors made larger than the ampacity asked for. */
export interface EnlargedConductor {
  /** The size that would have done. */
  readonly from: ConductorSize;
  /** The size used. */
  readonly to: ConductorSize;
}

/** A circuit to be grounded. */
export interface GroundingConductorInput {
  /** Rating of the circuit's breaker or fuse. 1 to 6000 A. */
  readonly overcurrentRating: Current;
  /** Metal of the grounding conductor; copper where left out. */
  readonly material?: ConductorMaterial;
  /** Where the circuit conductors were enlarged, for voltage drop for instance. */
  readonly enlarged?: EnlargedConductor;
}

/** The grounding conductor and why. */
export interface GroundingConductor {
  /** Least size. */
  readonly size: ConductorSize;
  /** Size by the rating alone. */
  readonly byRating: ConductorSize;
  /** Area that the enlargement asks for, m²; that of the table's size where nothing was enlarged. */
  readonly area: Area;
  /** Where the rule is from. */
  readonly method: "nfpa-70";
}

/**
 * Least size of the equipment grounding conductor.
 *
 * @remarks
 * By the rating of the overcurrent device (Table 250.122); where the circuit conductors were made larger than the ampacity
 * asked for, larger in the same proportion of circular mils (250.122(B)), areas by Chapter 9 Table 8, the ratio not rounded.
 * It need not be larger than the circuit conductors themselves (250.122(A)). For a motor, the rating is that of its
 * short-circuit protection. In a drilled well a metal casing is bonded to it as well.
 *
 * @param input - rating, metal and enlargement; each field says the values it takes
 * @returns the size
 * @throws InputError naming the first field that is not known or not in its range
 *
 * @example A 20 A pump circuit, 12 AWG enlarged to 8 AWG for voltage drop
 * ```ts
 * import { groundingConductor } from "risingmain/conductor";
 * import { amperes } from "risingmain/units";
 *
 * const ground = groundingConductor({
 *   overcurrentRating: amperes(20), enlarged: { from: "12 AWG", to: "8 AWG" },
 * });
 * ground.byRating; // => "12 AWG"
 * ground.size; // => "8 AWG"
 * ```
 *
 * @source nfpa-70, Table 250.122 and 250.122(A), (B)
 */
export function groundingConductor(input: GroundingConductorInput): GroundingConductor {
  requireObject("input", input);
  const { overcurrentRating, material = "copper", enlarged } = input;
  requireWithin("overcurrentRating", overcurrentRating, 1, 6000, "A");
  requireOneOf("material", material, CONDUCTOR_MATERIALS);
  const row = necTable250_122.find(({ rating }) => overcurrentRating <= rating);
  const byRating = (row as (typeof necTable250_122)[number])[material];
  if (enlarged === undefined) {
    return { size: byRating, byRating, area: (tableArea("", byRating) * CIRCULAR_MIL) as Area, method: "nfpa-70" };
  }
  requireObject("enlarged", enlarged);
  const from = tableArea("enlarged.from", enlarged.from);
  const to = tableArea("enlarged.to", enlarged.to);
  if (to < from) throw new InputError("enlarged.to", enlarged.to, `at least ${enlarged.from}`);
  const base = tableArea("", byRating);
  // The ratio comes last: 8 to 6 AWG must not be rounded up by a product that is a hair too large.
  const area = (base * to) / from;
  // It is never required to be larger than the conductors it goes with (250.122(A)).
  const needed = Math.min(area, to) * (1 - 1e-12);
  // Beyond Table 8 the size by rating does if it has the area, or else the size of the circuit's own conductors.
  const beyond = base >= needed ? byRating : enlarged.to;
  const size = necChapter9Table8.find(({ circularMils }) => circularMils >= needed)?.size ?? beyond;
  return { size, byRating, area: (area * CIRCULAR_MIL) as Area, method: "nfpa-70" };
}

/** Circular mils as the code prints them; the two largest sizes of Table 250.122 lie beyond Table 8 and are their own name. */
function tableArea(parameter: string, size: ConductorSize): number {
  const parts = readSize(parameter, size);
  const row = necChapter9Table8.find((candidate) => candidate.size === size);
  if (row !== undefined) return row.circularMils;
  if (parts.system === "kcmil") return parts.thousandCircularMils * 1000;
  throw new InputError(parameter, size, "an AWG size from 18 to 4/0, or kcmil");
}
