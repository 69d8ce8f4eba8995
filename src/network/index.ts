/**
 * Networks: yard lines from any source to many outlets, branched or looped.
 *
 * @module
 */
export { type GradeLineInput, type GradePoint, gradeLine } from "./grade-line.ts";
export type {
  CheckValve,
  CurveSource,
  DarcyRun,
  FixedDemand,
  FixedHeadSource,
  HazenWilliamsRun,
  Junction,
  Network,
  NetworkSource,
  NetworkWater,
  OpenOutlet,
  Outlet,
  PowerRun,
  ReducingValve,
  Run,
  RunEnds,
  ShutValve,
} from "./network-parts.ts";
export type {
  CannotSupply,
  JunctionResult,
  NetworkResult,
  NotSettled,
  OutletResult,
  Residuals,
  RunResult,
  SolvedNetwork,
  SourceResult,
} from "./network-solution.ts";
export {
  type OutletCoefficient,
  type OutletNozzle,
  type OutletRating,
  outletOfNozzle,
  outletOfRating,
} from "./outlet-coefficient.ts";
export { type PumpSourceInput, pumpSource, type RegulatedAt } from "./pump-source.ts";
export {
  type GreatestVelocity,
  type LeastPressure,
  type Scenario,
  type ScenarioResult,
  type ScenarioResults,
  type SolveScenariosInput,
  solveScenarios,
} from "./scenarios.ts";
export { type SolveNetworkInput, solveNetwork } from "./solve-network.ts";
export { type TankSourceInput, tankSource } from "./tank-source.ts";
export { type WorstCombination, type WorstCombinationInput, worstCombination } from "./worst-combination.ts";
