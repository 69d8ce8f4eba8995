/**
 * Losses in fittings: bends, tees, valves, changes of bore, insert fittings, filters, outlets.
 *
 * @module
 */
export { type BoreChange, contractionByJet, suddenContraction, suddenExpansion } from "./bore-change.ts";
export { type CheckValveInput, type CheckValveLoss, checkValveLoss } from "./check-valve.ts";
export {
  type CheckValveKind,
  type CheckValveMinimumInput,
  checkValveMinimumFlow,
} from "./check-valve-minimum.ts";
export {
  type CoefficientOfKvInput,
  coefficientOfKv,
  type KvOfCoefficientInput,
  kvOfCoefficient,
} from "./coefficient-of-kv.ts";
export { type ConstrictionFlowInput, constrictionFlow } from "./constriction-meter.ts";
export { type EntranceInput, entranceCoefficient, exitCoefficient } from "./entrance.ts";
export {
  type CoefficientOfLengthInput,
  coefficientOfLength,
  type EquivalentLengthInput,
  equivalentLength,
  type LengthForCInput,
  lengthForC,
  type PrintedLengthInput,
  printedLength,
} from "./equivalent-length.ts";
export { copperTubeLengths } from "./equivalent-lengths/copper-tube.ts";
export type { EquivalentLengthTable } from "./equivalent-lengths/equivalent-length-table.ts";
export { pvcPipeLengths } from "./equivalent-lengths/pvc-pipe.ts";
export { screwedFittingLengths } from "./equivalent-lengths/screwed-fittings.ts";
export { steelPipeLengths } from "./equivalent-lengths/steel-pipe.ts";
export { type FittingPart, type FittingsLoss, type FittingsLossInput, fittingsLoss } from "./fittings-loss.ts";
export {
  cvOfKv,
  kvOfCv,
  type ValveFlowInput,
  type ValveLossInput,
  valveFlow,
  valveLoss,
} from "./flow-coefficient.ts";
export {
  gradualContraction,
  gradualExpansion,
  type ReducedPortInput,
  reducedPortCoefficient,
  type TaperedChange,
} from "./gradual-change.ts";
export { type HoseFlow, type HoseFlowInput, hoseFlow } from "./hose.ts";
export { type InsertBoreRow, insertBores } from "./insert-bores.ts";
export {
  type InsertFittingCoefficient,
  type InsertFittingInput,
  type InsertForm,
  insertFittingCoefficient,
} from "./insert-fitting.ts";
export { type LengthOverDiameterInput, lengthOverDiameterCoefficient } from "./length-over-diameter.ts";
export { type LengthOverDiameterFitting, lengthsOverDiameter } from "./lengths-over-diameter.ts";
export { coefficientOfLoss, type MeasuredLoss, type MinorLossInput, minorLoss } from "./minor-loss.ts";
export { type FittingName, type NamedFitting, namedFittings } from "./named-fittings.ts";
export { type HydrantOutlet, hydrantOutletCoefficients, type NozzleFlowInput, nozzleFlow } from "./nozzle.ts";
export {
  type DischargeCoefficientInput,
  dischargeCoefficient,
  type OrificeFlowInput,
  orificeFlow,
  type TrajectoryInput,
  trajectoryVelocity,
  type VelocityCoefficientInput,
  velocityCoefficient,
} from "./orifice.ts";
export {
  type OutletFlowInput,
  type OutletPressureInput,
  outletCoefficient,
  outletFlow,
  outletPressure,
  type RatedOutlet,
} from "./outlet.ts";
export { type RatedLoss, type RatedLossInput, ratedLoss } from "./rated-loss.ts";
export type {
  BoreChangeRunFitting,
  CheckRunFitting,
  CoefficientRunFitting,
  FlowCoefficientRunFitting,
  InsertRunFitting,
  LengthRunFitting,
  NamedRunFitting,
  RatedRunFitting,
  RunFitting,
  RunFittingBase,
} from "./run-fitting.ts";
export { type BranchAngle, type TeeCoefficients, type TeeInput, teeCoefficients } from "./tee.ts";
export { type TextbookFitting, textbookCoefficients } from "./textbook-coefficients.ts";
export { type ThreeKInput, threeKCoefficient } from "./three-k.ts";
export { type ThreeKConstants, type ThreeKFitting, threeKFittings } from "./three-k-fittings.ts";
export { type FullyTurbulentInput, fullyTurbulentFactor } from "./turbulent-factor.ts";
export { type TwoKInput, twoKCoefficient } from "./two-k.ts";
export { type TwoKConstants, type TwoKFitting, twoKFittings } from "./two-k-fittings.ts";
export { type RequiredKv, type RequiredKvInput, requiredKv } from "./valve-sizing.ts";
