/**
 * Pump motors: currents, protection, starting, supply voltage, readings of windings and insulation.
 *
 * @module
 */
export { type CodeLetter, type CodeLetterRange, codeLetterRanges } from "./code-letters.ts";
export { type DriveOutput, type DriveOutputInput, driveOutputPeak } from "./drive-output.ts";
export {
  type FullLoadCurrent,
  type FullLoadCurrentInput,
  fullLoadCurrent,
  type MotorSystem,
} from "./full-load-current.ts";
export type { FullLoadTable } from "./full-load-table.ts";
export {
  type InsulationAtTemperatureInput,
  type InsulationLifeInput,
  type InsulationReading,
  type InsulationReadingInput,
  insulationAtTemperature,
  insulationLife,
  insulationReading,
  leastPolarizationIndex,
  type ThermalClass,
} from "./insulation-reading.ts";
export {
  capacitorMotorEfficiency,
  enclosedMotorEfficiency,
  type LeastEfficiencyRow,
  polyphaseMotorEfficiency,
} from "./least-efficiency.ts";
export {
  type CodeLetterOf,
  type CodeLetterOfInput,
  codeLetterOf,
  type LockedRotorCurrent,
  type LockedRotorCurrentInput,
  lockedRotorCurrent,
} from "./locked-rotor.ts";
export { type MotorBranchCircuit, type MotorBranchCircuitInput, motorBranchCircuit } from "./motor-branch-circuit.ts";
export { type MotorConnection, type MotorConnectionKind, motorConnections } from "./motor-connection.ts";
export { type MotorCurrent, type MotorCurrentInput, motorCurrent } from "./motor-current.ts";
export { motorFeederAmpacity } from "./motor-feeder.ts";
export { type ProtectionDevice, type ProtectionRule, protectionRules } from "./motor-rules.ts";
export { necTable430_248 } from "./nec-430-248.ts";
export { necTable430_250 } from "./nec-430-250.ts";
export { type PowerReading, type PowerReadingInput, powerReading } from "./power-reading.ts";
export { type ReducedSupplyStart, type ReducedSupplyStartInput, reducedSupplyStart } from "./reduced-supply-start.ts";
export { type SupplyTolerance, type SupplyToleranceInput, supplyTolerance } from "./supply-tolerance.ts";
export { type TypicalMotor, type TypicalMotorInput, typicalMotor } from "./typical-motor.ts";
export { type UnbalanceDeratingRow, unbalanceDerating } from "./unbalance-derating.ts";
export {
  type CurrentUnbalance,
  currentUnbalance,
  type VoltageUnbalance,
  voltageUnbalance,
} from "./voltage-unbalance.ts";
export {
  type ThreeWireReading,
  type ThreeWireReadingInput,
  threeWireReading,
  type WindingReading,
  type WindingReadingInput,
  windingReading,
} from "./winding-reading.ts";
