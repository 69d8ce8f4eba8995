/**
 * What a length of pipe holds and weighs.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import { type Area, type Density, InputError, type Length, type MassPerLength, type Volume } from "../units/index.ts";

/** A length of pipe by its bore. */
export interface PipeVolumeInput {
  /** Inside diameter. 0 to 100 m. */
  readonly insideDiameter: Length;
  /** Length. 0 to 1 000 000 m. */
  readonly length: Length;
}

/**
 * Area of the bore, which is also the volume a pipe holds in each metre.
 *
 * @remarks
 * A = π D² / 4; m² are m³ in each metre of pipe.
 *
 * @param insideDiameter - inside diameter. 0 to 100 m
 * @returns the area, m²
 * @throws {@link units.InputError} where the diameter is not a number in its range
 *
 * @example
 * ```ts
 * import { boreArea } from "risingmain/pipe";
 * import { inches, inSquareInches } from "risingmain/units";
 *
 * inSquareInches(boreArea(inches(2))); // ≈ 3.1416
 * ```
 *
 * @source derived: area of a circle
 */
export function boreArea(insideDiameter: Length): Area {
  requireWithin("insideDiameter", insideDiameter, 0, 100, "m");
  return ((Math.PI / 4) * insideDiameter * insideDiameter) as Area;
}

/**
 * Volume of water in a length of pipe.
 *
 * @remarks
 * V = π D² L / 4
 *
 * @param input - bore and length; each field says its unit and the values it takes
 * @returns the volume, m³
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example 100 ft of 1 in schedule 40 PVC
 * ```ts
 * import { findPipe, pipeVolume } from "risingmain/pipe";
 * import { feet, inUsGallons } from "risingmain/units";
 *
 * const { insideDiameter } = findPipe("1 in PVC SCH 40");
 * inUsGallons(pipeVolume({ insideDiameter, length: feet(100) })); // ≈ 4.35
 * ```
 *
 * @source derived: volume of a cylinder
 */
export function pipeVolume(input: PipeVolumeInput): Volume {
  requireObject("input", input);
  requireWithin("length", input.length, 0, 1e6, "m");
  return (boreArea(input.insideDiameter) * input.length) as Volume;
}

/** A pipe, what it is made of, and what it holds. */
export interface PipeMassInput {
  /** Outside diameter. 0.001 to 100 m. */
  readonly outsideDiameter: Length;
  /** Inside diameter, under the outside one. 0 to 100 m. */
  readonly insideDiameter: Length;
  /** Density of the pipe's material, as `pipeGradeProperties(grade).density`. 100 to 30 000 kg/m³. */
  readonly density: Density;
  /** Density of what fills the pipe; left out for an empty pipe. 0 to 30 000 kg/m³. */
  readonly contents?: Density;
}

/**
 * Mass of a metre of pipe, empty or full.
 *
 * @remarks
 * m = ρ π (D² − d²) / 4 + ρ_w π d² / 4
 *
 * with D `outsideDiameter`, d `insideDiameter`, ρ `density`, ρ_w `contents`. What hangs on the pump of a well is the pipe full of
 * water, less what the water outside carries. Couplings left out: 1 to 4 % in steel.
 *
 * @param input - diameters and densities; each field says its unit and the values it takes
 * @returns the mass of each metre, kg/m
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example 2 in schedule 40 steel
 * ```ts
 * import { findPipe, pipeGradeProperties, pipeMass } from "risingmain/pipe";
 * import { inPoundsPerFoot } from "risingmain/units";
 *
 * const pipe = findPipe("2 in steel SCH 40");
 * inPoundsPerFoot(pipeMass({ ...pipe, density: pipeGradeProperties(pipe.grade).density })); // ≈ 3.66
 * ```
 *
 * @source derived: area of a ring times density
 */
export function pipeMass(input: PipeMassInput): MassPerLength {
  requireObject("input", input);
  const { outsideDiameter: D, insideDiameter: d, density, contents = 0 } = input;
  requireWithin("outsideDiameter", D, 1e-3, 100, "m");
  requireWithin("insideDiameter", d, 0, 100, "m");
  if (d >= D) throw new InputError("insideDiameter", d, `a length under the outside diameter, ${D} m`);
  requireWithin("density", density, 100, 3e4, "kg/m³");
  requireWithin("contents", contents, 0, 3e4, "kg/m³");
  return ((Math.PI / 4) * (density * (D - d) * (D + d) + contents * d * d)) as MassPerLength;
}
