/**
 * A system's description, checked and made ready to run.
 *
 * @module
 */

import { requireLevelCutOff } from "../control/level-cut-off.ts";
import { requirePressureSwitch } from "../control/pressure-switch.ts";
import { requireRegulatingValve } from "../control/regulating-valve.ts";
import {
  monotoneCubic,
  requireList,
  requireObject,
  requireOneOf,
  requirePositive,
  requireWithin,
  STANDARD_GRAVITY,
} from "../numeric/index.ts";
import { requireCurve } from "../pump/read-curve.ts";
import { type AirBank, compileBank } from "../tank/bank.ts";
import { InputError } from "../units/index.ts";
import { requireLaw } from "../well/drawdown.ts";
import { added, type CubicPiece, pieceAt, piecesOf, upTo, valueAt } from "./cubic-pieces.ts";
import type { DryRunProtection, MainLossPoint, RunningSystem } from "./description.ts";
import { fullSpeedPower, type PowerAt, variableSpeedPower } from "./pump-power.ts";

/** A valve or drive that holds a pressure. */
export interface Regulator {
  /** Gauge pressure held at the least flow, Pa. */
  readonly set: number;
  /** Flow given even above it, m³/s. */
  readonly least: number;
  /** Fall of the pressure held per flow above the least, Pa·s/m³. */
  readonly droop: number;
}

/** A checked system, in plain numbers. */
export interface CompiledSystem {
  readonly bank: AirBank;
  /** Head of the pump less the loss in the main, m, against flow from 0 to `mostFlow`. */
  readonly makes: readonly CubicPiece[];
  /** Most flow: the end of the pump's curve, or a flow-limiting valve. */
  readonly mostFlow: number;
  /** True where the end of the curve, and not a valve, sets `mostFlow`. */
  readonly endOfCurve: boolean;
  /** Weight of the water, N/m³. */
  readonly weight: number;
  readonly cutIn: number;
  readonly cutOut: number;
  readonly regulator: Regulator | undefined;
  readonly staticLevel: number;
  readonly rise: number;
  readonly aquiferLoss: number;
  readonly wellLoss: number;
  readonly freeArea: number;
  readonly intake: number;
  readonly lowLevel: DryRunProtection | undefined;
  readonly power: PowerAt | undefined;
  /** True where the power follows the head too, as it does at variable speed. */
  readonly variableSpeed: boolean;
  /** Loss in the main, m, at a flow up to `mostFlow`. */
  readonly lossAt: (flow: number) => number;
}

/** Checks a description, field by field, and makes it ready. */
export function compileSystem(system: RunningSystem): CompiledSystem {
  requireObject("system", system);
  const { pump, motorEfficiency = 1, well, rise, mainLoss, flowLimit, lowLevel, density } = system;
  requireCurve(pump, "system.pump");
  if (pump.shape !== "falling") throw new InputError("system.pump", pump.shape, "a curve whose head falls all the way");
  requireWithin("system.motorEfficiency", motorEfficiency, 0.01, 1, "as a ratio: 0.70 for 70 %");
  requireObject("system.well", well);
  requireWithin("system.well.staticLevel", well.staticLevel, 0, 1e4, "m");
  requireLaw(well.law, "system.well.law");
  const { freeArea = 0, intake } = well;
  if (freeArea !== 0) requireWithin("system.well.freeArea", freeArea, 1e-6, 1e6, "m²");
  if (intake !== undefined) {
    requireWithin("system.well.intake", intake, 0, 1e4, "m");
    if (!(intake > well.staticLevel)) {
      throw new InputError("system.well.intake", intake, `a depth below the static level of ${well.staticLevel} m`);
    }
  }
  requireWithin("system.rise", rise, -1e4, 1e4, "m");
  if (flowLimit !== undefined) requirePositive("system.flowLimit", flowLimit, 100, "m³/s");
  const bank = compileBank(system, "system");
  if (lowLevel !== undefined) {
    requireLevelCutOff("system.lowLevel", lowLevel);
    requireWithin("system.lowLevel.restartDelay", lowLevel.restartDelay, 1, 30 * 86400, "s");
  }
  const weight = density * STANDARD_GRAVITY;
  const control = checkedControl(system, weight);

  const endOfCurve = !(flowLimit !== undefined && flowLimit < pump.runoutFlow);
  const mostFlow = endOfCurve ? pump.runoutFlow : (flowLimit as number);
  const lost = lossPieces(mainLoss, mostFlow);
  const valveLoss = { from: 0, to: mostFlow, c0: 0, c1: 0, c2: control.openLoss, c3: 0 };
  const makes = added(added(upTo(piecesOf(pump.head), mostFlow), lost, -1), [valveLoss], -1);
  const variableSpeed = system.control.kind === "variable speed";
  const atFullSpeed = fullSpeedPower(pump, density, motorEfficiency);

  return {
    bank,
    makes,
    mostFlow,
    endOfCurve,
    weight,
    cutIn: control.cutIn,
    cutOut: control.cutOut,
    regulator: control.regulator,
    staticLevel: well.staticLevel,
    rise,
    aquiferLoss: well.law.aquiferLoss,
    wellLoss: well.law.wellLoss,
    freeArea,
    intake: intake ?? Number.POSITIVE_INFINITY,
    lowLevel,
    power: atFullSpeed && (variableSpeed ? variableSpeedPower(pump, atFullSpeed) : atFullSpeed),
    variableSpeed,
    lossAt: (flow) => valueAt(pieceAt(lost, flow), flow),
  };
}

interface CheckedControl {
  readonly cutIn: number;
  readonly cutOut: number;
  readonly regulator: Regulator | undefined;
  /** Head lost in a wide open valve per flow squared, s²/m⁵. */
  readonly openLoss: number;
}

function checkedControl({ control }: RunningSystem, weight: number): CheckedControl {
  requireObject("system.control", control);
  requireOneOf("system.control.kind", control.kind, ["switch", "variable speed"]);
  if (control.kind === "variable speed") {
    const { startPressure, setPressure, stopPressure, minimumFlow } = control;
    requirePressureSwitch({ cutIn: startPressure, cutOut: stopPressure }, "startPressure", "stopPressure");
    requireWithin("system.control.setPressure", setPressure, 0, 1e8, "Pa gauge");
    requirePositive("system.control.minimumFlow", minimumFlow, 100, "m³/s");
    const regulator = { set: setPressure, least: minimumFlow, droop: 0 };
    return { cutIn: startPressure, cutOut: stopPressure, regulator, openLoss: 0 };
  }
  requirePressureSwitch(control);
  const { cutIn, cutOut, valve } = control;
  if (valve === undefined) return { cutIn, cutOut, regulator: undefined, openLoss: 0 };
  requireRegulatingValve(valve);
  const { setPressure, minimumFlow, droop = 0, droopFlow = 0, openLoss = 0, openLossFlow = 1 } = valve;
  return {
    cutIn,
    cutOut,
    regulator: { set: setPressure, least: minimumFlow, droop: droop > 0 ? droop / (droopFlow - minimumFlow) : 0 },
    openLoss: openLoss > 0 ? openLoss / weight / openLossFlow ** 2 : 0,
  };
}

/** The loss in the main as pieces from no flow to `end`. */
function lossPieces(points: readonly MainLossPoint[], end: number): readonly CubicPiece[] {
  requireList("system.mainLoss", points, 1, 1000);
  let before = { flow: 0, headLoss: 0 };
  points.forEach((point, i) => {
    requireObject(`system.mainLoss[${i}]`, point);
    requirePositive(`system.mainLoss[${i}].flow`, point.flow, 100, "m³/s");
    requireWithin(`system.mainLoss[${i}].headLoss`, point.headLoss, 0, 1e4, "m");
    // A gap of a millionth: closer points give slopes of rounding alone.
    if (!(point.flow > before.flow * (1 + 1e-6))) {
      throw new InputError(`system.mainLoss[${i}].flow`, point.flow, `a flow above ${before.flow} m³/s: ascending`);
    }
    if (point.headLoss < before.headLoss) {
      throw new InputError(`system.mainLoss[${i}].headLoss`, point.headLoss, "a loss that does not fall with flow");
    }
    before = point;
  });
  const [only] = points;
  if (points.length === 1 && only !== undefined) {
    // Divided twice, so that the square of a small flow does not vanish first.
    const c2 = only.headLoss / only.flow / only.flow;
    if (!Number.isFinite(c2)) throw new InputError("system.mainLoss[0].flow", only.flow, "a flow that can be squared");
    return [{ from: 0, to: end, c0: 0, c1: 0, c2, c3: 0 }];
  }
  if (before.flow < end) {
    throw new InputError("system.mainLoss", before.flow, `points that reach the most flow of ${end} m³/s`);
  }
  const flows: number[] = points.map(({ flow }) => flow);
  const losses: number[] = points.map(({ headLoss }) => headLoss);
  return upTo(piecesOf(monotoneCubic([0, ...flows], [0, ...losses])), end);
}
