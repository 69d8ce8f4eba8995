/**
 * The grid of a simulated line: reaches that a wave crosses in one time step each (Courant number 1).
 *
 * @module
 */
import { STANDARD_GRAVITY } from "../numeric/index.ts";
import type { SurgePipe } from "./simulation-types.ts";

/** A line cut into reaches. Node i and i + 1 are the ends of reach i. */
export interface LineGrid {
  /** Time step, s. */
  readonly timeStep: number;
  /** Distance of each node, m. */
  readonly distance: Float64Array;
  /** Elevation of each node, m. */
  readonly elevation: Float64Array;
  /** Impedance a/(g A) of each reach, s/m². */
  readonly impedance: Float64Array;
  /** Friction f Δx/(2 g D A²) of each reach, s²/m⁵. */
  readonly resistance: Float64Array;
  /** Water in each reach, m³. */
  readonly water: Float64Array;
  /** Bore of the first pipe, m². */
  readonly firstArea: number;
  /** The smallest bore, m². */
  readonly smallestArea: number;
  /** Largest share by which a wave speed was moved. */
  readonly waveSpeedShift: number;
}

/**
 * Cuts a line into about `reaches` reaches of equal time of travel.
 *
 * One pipe fits exactly. Of several, each takes the nearest whole number of reaches, at least one, and its wave speed is
 * moved to fit (`wylie-streeter-1993`, chapter 3): less harm than interpolation, which smears the wave.
 */
export function lineGrid(pipes: readonly SurgePipe[], startElevation: number, reaches: number): LineGrid {
  const travel = pipes.reduce((sum, { length, waveSpeed }) => sum + length / waveSpeed, 0);
  const timeStep = travel / reaches;
  const counts = pipes.map(({ length, waveSpeed }) => Math.max(1, Math.round(length / waveSpeed / timeStep)));
  const total = counts.reduce((sum, count) => sum + count, 0);
  const grid = {
    timeStep,
    distance: new Float64Array(total + 1),
    elevation: new Float64Array(total + 1),
    impedance: new Float64Array(total),
    resistance: new Float64Array(total),
    water: new Float64Array(total),
    firstArea: area(pipes[0] as SurgePipe),
    smallestArea: Math.min(...pipes.map(area)),
    waveSpeedShift: 0,
  };
  grid.elevation[0] = startElevation;

  let node = 0;
  let start = 0;
  let low = startElevation;
  pipes.forEach((pipe, p) => {
    const count = counts[p] as number;
    const dx = pipe.length / count;
    const a = dx / timeStep;
    const A = area(pipe);
    grid.waveSpeedShift = Math.max(grid.waveSpeedShift, Math.abs(a / pipe.waveSpeed - 1));
    for (let i = 1; i <= count; i++) {
      grid.impedance[node] = a / (STANDARD_GRAVITY * A);
      grid.resistance[node] = (pipe.frictionFactor * dx) / (2 * STANDARD_GRAVITY * pipe.insideDiameter * A * A);
      grid.water[node] = A * dx;
      node++;
      grid.distance[node] = start + (pipe.length * i) / count;
      grid.elevation[node] = low + ((pipe.endElevation - low) * i) / count;
    }
    start += pipe.length;
    low = pipe.endElevation;
  });
  return grid;
}

function area({ insideDiameter: D }: SurgePipe): number {
  return (Math.PI / 4) * D * D;
}
