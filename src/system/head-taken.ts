/**
 * The head a described system takes at a flow, for drawing it and for finding where its pump runs.
 *
 * @module
 */
import { pumpHeadAt } from "../pump/index.ts";
import type { GaugePressure, Length, VolumeFlow } from "../units/index.ts";
import { compileSystem } from "./compile.ts";
import { pieceAt, valueAt } from "./cubic-pieces.ts";
import type { RunningSystem } from "./description.ts";

/**
 * Head against flow with a pressure at the switch, the well's level following the flow: lift, drawdown, the losses of main
 * and open valve, and the pressure.
 */
export function headTakenBy(system: RunningSystem, pressure: GaugePressure): (flow: VolumeFlow) => Length {
  const { makes, staticLevel, rise, aquiferLoss, wellLoss, weight, mostFlow } = compileSystem(system);
  return (flow) => {
    // What the pump adds and does not reach the tank is loss.
    const lost = pumpHeadAt(system.pump, flow) - valueAt(pieceAt(makes, Math.min(flow, mostFlow)), flow);
    return (lost + staticLevel + rise + (aquiferLoss + wellLoss * flow) * flow + pressure / weight) as Length;
  };
}
