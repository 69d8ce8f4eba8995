/** Lines that the surge tests share. */
import { type SurgeSimulation, type SurgeSimulationInput, simulateSurge } from "risingmain/surge";
import type { AbsolutePressure, Density, Duration, Length, Velocity, VolumeFlow } from "risingmain/units";

export const STANDARD_GRAVITY = 9.80665;

export type Followed = Extract<SurgeSimulation, { state: "followed" }>;

/** Water near 10 °C under air at sea level. */
export const water = {
  density: 1000 as Density,
  vapourPressure: 1228 as AbsolutePressure,
  atmosphere: 101_325 as AbsolutePressure,
};

/** Gauge head at which that water boils. */
export const BOILING = (water.vapourPressure - water.atmosphere) / (1000 * STANDARD_GRAVITY);

export function area(diameter: number): number {
  return (Math.PI / 4) * diameter * diameter;
}

/** A level pipe. */
export function pipe(length: number, insideDiameter: number, waveSpeed: number, frictionFactor = 0) {
  return {
    length: length as Length,
    insideDiameter: insideDiameter as Length,
    waveSpeed: waveSpeed as Velocity,
    frictionFactor,
    endElevation: 0 as Length,
  };
}

/** A flow that stops at once. */
export function stopAtOnce(flow: number) {
  return flows([0, flow], [0, 0]);
}

/** Flows by time. */
export function flows(...rows: readonly (readonly [time: number, flow: number])[]) {
  return {
    kind: "flow",
    flows: rows.map(([time, flow]) => ({ time: time as Duration, flow: flow as VolumeFlow })),
  } as const;
}

/** A tank or main of fixed head. */
export function held(head: number) {
  return { kind: "fixed head", head: head as Length } as const;
}

/** Runs a simulation that must be possible. */
export function follow(
  input: Omit<SurgeSimulationInput, keyof typeof water | "startElevation"> & Partial<SurgeSimulationInput>,
): Followed {
  const surge = simulateSurge({ ...water, startElevation: 0 as Length, ...input });
  if (surge.state !== "followed") throw new Error(surge.state);
  return surge;
}

/** Every node of a line of one pipe, for probes. */
export function nodes(length: number, reaches: number): readonly Length[] {
  return Array.from({ length: reaches + 1 }, (_, i) => ((length * i) / reaches) as Length);
}

/** The history at the only probe. */
export function only(surge: Followed): Followed["histories"][number] {
  const [history] = surge.histories;
  if (history === undefined) throw new Error("no probe");
  return history;
}
