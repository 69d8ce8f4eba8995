/**
 * Several pipes as one: what a run of pipes is, and what is known once it is solved.
 *
 * @module
 */
import { requireList, requireObject, requireWithin } from "../numeric/index.ts";
import type { KinematicViscosity, Length, VolumeFlow } from "../units/index.ts";

/** One straight pipe of a run. */
export interface PipeOfRun {
  /** Inside diameter, not the trade size. 0.0001 to 100 m. */
  readonly insideDiameter: Length;
  /** Length of straight pipe. 0.001 to 1 000 000 m. */
  readonly length: Length;
  /** Equivalent sand-grain height of the wall, 0 for smooth. 0 to half the diameter, m. */
  readonly roughness: Length;
}

/** Pipes and the flow through all of them together. */
export interface RunFlowInput {
  /** The pipes. 1 to 1000 of them. */
  readonly pipes: readonly PipeOfRun[];
  /** Flow through the run: through each pipe in series, divided among them in parallel. −1000 to 1000 m³/s. */
  readonly flow: VolumeFlow;
  /** Kinematic viscosity of the liquid. 1e-9 to 1 m²/s. */
  readonly viscosity: KinematicViscosity;
}

/** Pipes and the head lost from one end of the run to the other. */
export interface RunLossInput {
  /** The pipes. 1 to 1000 of them. */
  readonly pipes: readonly PipeOfRun[];
  /** Head lost from end to end. −100 000 to 100 000 m. */
  readonly headLoss: Length;
  /** Kinematic viscosity of the liquid. 1e-9 to 1 m²/s. */
  readonly viscosity: KinematicViscosity;
}

/** A run solved for what was not given. */
export interface SolvedRun {
  /** Flow through the run, m³/s. */
  readonly flow: VolumeFlow;
  /** Head lost from end to end, m. */
  readonly headLoss: Length;
  /** Each pipe's flow, m³/s, in the order given. */
  readonly flows: readonly VolumeFlow[];
  /** Each pipe's loss, m, in the order given. */
  readonly losses: readonly Length[];
}

/** Refuses what is not a list of pipes; the flow, loss and viscosity are left to whom they are handed on to. */
export function requireRun(input: { readonly pipes: readonly PipeOfRun[] }): void {
  requireObject("input", input);
  const { pipes } = input;
  requireList("pipes", pipes, 1, 1000);
  for (let i = 0; i < pipes.length; i++) {
    const pipe = pipes[i] as PipeOfRun;
    requireObject(`pipes[${i}]`, pipe);
    requireWithin(`pipes[${i}].insideDiameter`, pipe.insideDiameter, 1e-4, 100, "m");
    requireWithin(`pipes[${i}].length`, pipe.length, 1e-3, 1e6, "m");
    requireWithin(`pipes[${i}].roughness`, pipe.roughness, 0, pipe.insideDiameter / 2, "m (half the inside diameter)");
  }
}

/** Σ. */
export function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
