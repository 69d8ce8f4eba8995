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
export {
  type DemandSegment,
  type RunStart,
  type Simulation,
  type SimulationInput,
  type SystemSample,
  simulate,
} from "./simulate.ts";
export type { SystemEvent, SystemEventKind } from "./tally.ts";
