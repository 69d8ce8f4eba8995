/**
 * The stations of a line laid pipe by pipe: distances, velocities and losses worked out from bores, ready for grade lines.
 *
 * @module
 */
import { requireList, requireObject, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import { darcyWeisbachLoss } from "../pipe/index.ts";
import type { KinematicViscosity, Length, VolumeFlow } from "../units/index.ts";
import type { GradeStationInput } from "./grade-line-types.ts";
import { requireHead, requireName } from "./ranges.ts";

/** One run of pipe, of one bore and one slope. */
export interface LineRun {
  /** What its far end is called: "ridge". At most 200 characters; empty where left out. */
  readonly name?: string;
  /** Length. 0 to 1 000 000 m. */
  readonly length: Length;
  /** Height of its far end above the datum. ±1 000 000 m. */
  readonly endElevation: Length;
  /** Inside diameter. 0.001 to 10 m. */
  readonly insideDiameter: Length;
  /** Equivalent sand-grain height of its wall. 0 to half the diameter, m. */
  readonly roughness: Length;
  /** Loss of its fittings, in velocity heads. 0 to 1e6; 0 where left out. */
  readonly lossCoefficient?: number;
}

/** A line, and the flow along it. */
export interface LineStationsInput {
  /** What its start is called. At most 200 characters; empty where left out. */
  readonly startName?: string;
  /** Height of its start above the datum. ±1 000 000 m. */
  readonly startElevation: Length;
  /** Flow from start to end. 0 to 1000 m³/s. */
  readonly flow: VolumeFlow;
  /** Kinematic viscosity of the water. 1e-9 to 1 m²/s. */
  readonly viscosity: KinematicViscosity;
  /** The runs in order, 1 to 1000. */
  readonly runs: readonly LineRun[];
}

/** Stations for `gradeLines`. */
export interface LineStations {
  /** The start, the far end of each run, and a second station of no length wherever the bore changes. */
  readonly stations: readonly GradeStationInput[];
  /** False where the friction law of a run is used outside its published range. */
  readonly insideRange: boolean;
}

/**
 * Works out the stations of a line from its pipes and the flow in it.
 *
 * @remarks
 * h = f (L/D) V²/(2 g) + K V²/(2 g) for each run, with f from `darcyWeisbachLoss`. Where the bore changes, two stations
 * stand at one distance: the energy line runs through, the hydraulic line steps by the change of velocity head. The loss
 * of the change itself belongs in the `lossCoefficient` of the run after it. As good as the friction factor, some 10 %.
 *
 * @param input - start, flow, viscosity and runs, each with its range
 * @returns the stations, and whether every friction law was inside its range
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example A two-size line to a trough
 * ```ts
 * import { gradeLines, lineStations } from "risingmain/head";
 * import { feet, gpm, inches, inPsi, kilogramsPerCubicMetre, psi, psia, squareMetresPerSecond } from "risingmain/units";
 *
 * const { stations } = lineStations({
 *   startName: "well head", startElevation: feet(0), flow: gpm(8), viscosity: squareMetresPerSecond(1.306e-6),
 *   runs: [
 *     { name: "gate", length: feet(300), endElevation: feet(12), insideDiameter: inches(1.38), roughness: feet(5e-6) },
 *     { name: "trough", length: feet(400), endElevation: feet(-5), insideDiameter: inches(1.049), roughness: feet(5e-6) },
 *   ],
 * });
 * const lines = gradeLines({
 *   stations, startPressure: psi(50), atmosphere: psia(14.2), vapourPressure: psia(0.18),
 *   density: kilogramsPerCubicMetre(999.7),
 * });
 * stations.length; // => 4
 * inPsi(lines.stations[3]?.pressure ?? psi(0)); // ≈ 43.45
 * ```
 *
 * @source derived: Darcy–Weisbach run by run
 */
export function lineStations(input: LineStationsInput): LineStations {
  requireObject("input", input);
  const { startName = "", startElevation, flow, viscosity, runs } = input;
  requireName("startName", startName);
  requireHead("startElevation", startElevation);
  requireWithin("flow", flow, 0, 1000, "m³/s");
  requireWithin("viscosity", viscosity, 1e-9, 1, "m²/s");
  requireList("runs", runs, 1, 1000);
  const laid = Array.from(runs, checked);

  const stations: GradeStationInput[] = [];
  let at = { name: startName, distance: 0 as Length, elevation: startElevation };
  let bore: number | undefined;
  let insideRange = true;
  for (const { name, length, endElevation, insideDiameter, roughness, lossCoefficient } of laid) {
    const friction = darcyWeisbachLoss({ flow, insideDiameter, length, roughness, viscosity });
    const { velocity } = friction;
    insideRange &&= friction.insideRange;
    if (insideDiameter !== bore) stations.push({ ...at, velocity });
    bore = insideDiameter;
    at = { name, distance: (at.distance + length) as Length, elevation: endElevation };
    const minor = (lossCoefficient * velocity * velocity) / (2 * STANDARD_GRAVITY);
    stations.push({ ...at, velocity, headLoss: (friction.headLoss + minor) as Length });
  }
  return { stations, insideRange };
}

function checked(run: LineRun, i: number): Required<LineRun> {
  const at = `runs[${i}]`;
  requireObject(at, run);
  const { name = "", length, endElevation, insideDiameter, roughness, lossCoefficient = 0 } = run;
  requireName(`${at}.name`, name);
  requireWithin(`${at}.length`, length, 0, 1e6, "m");
  requireHead(`${at}.endElevation`, endElevation);
  requireWithin(`${at}.insideDiameter`, insideDiameter, 1e-3, 10, "m");
  requireWithin(`${at}.roughness`, roughness, 0, insideDiameter / 2, "m");
  requireWithin(`${at}.lossCoefficient`, lossCoefficient, 0, 1e6, "");
  return { name, length, endElevation, insideDiameter, roughness, lossCoefficient };
}
