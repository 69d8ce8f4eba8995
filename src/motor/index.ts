/**
 * Pump motors: currents, protection, starting, supply voltage, readings of windings and insulation.
 *
 * @module
 */
export { type CodeLetter, type CodeLetterRange, codeLetterRanges } from "./code-letters.ts";
export {
  type FullLoadCurrent,
  type FullLoadCurrentInput,
  fullLoadCurrent,
  type MotorSystem,
} from "./full-load-current.ts";
export type { FullLoadTable } from "./full-load-table.ts";
export {
  capacitorMotorEfficiency,
  enclosedMotorEfficiency,
  type LeastEfficiencyRow,
  polyphaseMotorEfficiency,
} from "./least-efficiency.ts";
export { type LockedRotorCurrent, type LockedRotorCurrentInput, lockedRotorCurrent } from "./locked-rotor.ts";
export { type MotorBranchCircuit, type MotorBranchCircuitInput, motorBranchCircuit } from "./motor-branch-circuit.ts";
export { type MotorCurrent, type MotorCurrentInput, motorCurrent } from "./motor-current.ts";
export { type ProtectionDevice, type ProtectionRule, protectionRules } from "./motor-rules.ts";
export { necTable430_248 } from "./nec-430-248.ts";
export { necTable430_250 } from "./nec-430-250.ts";
export { type TypicalMotor, type TypicalMotorInput, typicalMotor } from "./typical-motor.ts";
