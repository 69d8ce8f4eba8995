/**
 * What hangs on the hoist while a pump is set or pulled.
 *
 * @module
 */
import { requireObject, requirePositive, requireWithin } from "../numeric/index.ts";
import type { Caution } from "../sources/index.ts";
import type { Density, Length, Mass, MassPerLength, Ratio } from "../units/index.ts";
import { liftingCautions } from "./cautions.ts";

/** A pump on its pipe. */
export interface LiftingInput {
  /** Pump and motor together. 0 to 100 000 kg. */
  readonly pump: Mass;
  /** Length of drop pipe. 0 to 5000 m. */
  readonly pipeLength: Length;
  /** Mass of the pipe with its couplings. 0 to 1000 kg/m. */
  readonly pipe: MassPerLength;
  /** Mass of the cable. 0 to 100 kg/m; 0 where left out. */
  readonly cable?: MassPerLength;
  /** Inside diameter of the pipe, for the water it holds over its check valve. 0 to 5 m; an empty pipe where left out. */
  readonly insideDiameter?: Length;
  /** Density of that water. 900 to 1100 kg/m³; 1000 where left out. */
  readonly density?: Density;
  /** Rated load of the weakest part: hoist, mast, clamp or sling. Above 0, to 1 000 000 kg. */
  readonly capacity: Mass;
  /** Capacity over load that is wanted. 1 to 20; 2 where left out (common practice: half the rating for jerks and drag). */
  readonly wantedMargin?: Ratio;
}

/** The load. */
export interface Lifting {
  /** "enough" where the capacity is at least the wanted margin over the load. */
  readonly state: "enough" | "margin too small" | "over capacity";
  /** Whole load, kg; no help from buoyancy taken. */
  readonly load: Mass;
  /** Pipe, kg. */
  readonly pipe: Mass;
  /** Cable, kg. */
  readonly cable: Mass;
  /** Water in the pipe, kg. */
  readonly water: Mass;
  /** Capacity over load; 20 where the load is none or less than a twentieth. */
  readonly margin: Ratio;
  /** What to say with it. */
  readonly cautions: readonly Caution[];
}

const MARGIN = 2;
const MOST_MARGIN = 20;

/**
 * The load on the hoist with everything hanging, against its rating.
 *
 * @remarks
 * load = pump + l (pipe + cable) + ρ π d² l/4. The pipe comes up full unless it has a weep hole or the check valve is let go, and
 * that water often weighs more than the pump. Buoyancy helps only below the water and is left out. Sand in the casing and rust
 * hold a pump with a force no formula knows.
 *
 * @param input - pump, pipe, cable, water and hoist; each field says its unit and range
 * @returns load, parts, margin and cautions
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example 300 ft of 1-1/4 in steel pipe, full
 * ```ts
 * import { liftingLoad } from "risingmain/field";
 * import { feet, inches, inPounds, pounds, poundsPerFoot } from "risingmain/units";
 *
 * const pulled = liftingLoad({
 *   pump: pounds(60), pipeLength: feet(300), pipe: poundsPerFoot(2.3), cable: poundsPerFoot(0.2),
 *   insideDiameter: inches(1.38), capacity: pounds(2000),
 * });
 * inPounds(pulled.load); // ≈ 1005
 * pulled.state; // => "margin too small"
 * ```
 *
 * @source derived: sum of weights
 * @source common practice: the margin
 */
export function liftingLoad(input: LiftingInput): Lifting {
  requireObject("input", input);
  const { pump, pipeLength, pipe, cable = 0, insideDiameter = 0, density = 1000, capacity } = input;
  const wanted = input.wantedMargin ?? MARGIN;
  requireWithin("pump", pump, 0, 1e5, "kg");
  requireWithin("pipeLength", pipeLength, 0, 5000, "m");
  requireWithin("pipe", pipe, 0, 1000, "kg/m");
  requireWithin("cable", cable, 0, 100, "kg/m");
  requireWithin("insideDiameter", insideDiameter, 0, 5, "m");
  requireWithin("density", density, 900, 1100, "kg/m³");
  requirePositive("capacity", capacity, 1e6, "kg");
  requireWithin("wantedMargin", wanted, 1, 20, "");
  const inPipe = pipe * pipeLength;
  const inCable = cable * pipeLength;
  const water = density * (Math.PI / 4) * insideDiameter * insideDiameter * pipeLength;
  const load = pump + inPipe + inCable + water;
  const margin = capacity < MOST_MARGIN * load ? capacity / load : MOST_MARGIN;
  return {
    state: margin >= wanted ? "enough" : margin >= 1 ? "margin too small" : "over capacity",
    load: load as Mass,
    pipe: inPipe as Mass,
    cable: inCable as Mass,
    water: water as Mass,
    margin: margin as Ratio,
    cautions: liftingCautions,
  };
}
