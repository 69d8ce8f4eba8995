/**
 * Surge: pressure waves in a rising main or a yard line, from one equation to a whole simulation.
 *
 * @module
 */
export {
  type ClosureSurge,
  type ClosureSurgeInput,
  closureSurge,
  criticalTime,
  type RigidColumnInput,
  rigidColumnSurge,
} from "./closure-surge.ts";
export { type CompositeLine, compositeLine, type LinePiece } from "./composite-line.ts";
export { type JoukowskyInput, joukowsky, type Surge } from "./joukowsky.ts";
export type {
  AirTank,
  ClosedEnd,
  FixedHeadEnd,
  FlowEnd,
  LineEnd,
  PumpEnd,
  ScheduledFlow,
  ValveEnd,
  ValveOpening,
} from "./line-end-types.ts";
export { type PlasticWaveSpeedInput, plasticWaveSpeed } from "./plastic-wave-speed.ts";
export {
  type CheckValveSlam,
  type CheckValveSlamInput,
  checkValveSlam,
  type PumpStopInput,
  type PumpStopSurge,
  pumpStopSurge,
} from "./pump-stop-surge.ts";
export { simulateSurge } from "./simulate-surge.ts";
export type {
  AirTankSwing,
  CheckValveMotion,
  ColumnSeparation,
  SurgeEnvelopePoint,
  SurgeHistory,
  SurgePipe,
  SurgeSimulation,
  SurgeSimulationInput,
} from "./simulation-types.ts";
export { type SurgeAllowance, type SurgeAllowanceInput, type SurgeCheck, surgeAllowance } from "./surge-allowance.ts";
export { type ElasticWall, type PipeSupport, type WaveSpeed, type WaveSpeedInput, waveSpeed } from "./wave-speed.ts";
