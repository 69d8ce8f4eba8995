/**
 * The running system: well, pump, main, control and tanks together, in time.
 *
 * @module
 */
export type {
  DryRunProtection,
  MainLossPoint,
  RunningSystem,
  SpeedControl,
  SwitchControl,
  WellInService,
} from "./description.ts";
export { type PipeMainLossInput, pipeMainLoss } from "./main-loss.ts";
export { simulate } from "./simulate.ts";
export type { DemandSegment, RunStart, Simulation, SimulationInput, SystemSample } from "./simulation.ts";
export type { SystemEvent, SystemEventKind } from "./tally.ts";
