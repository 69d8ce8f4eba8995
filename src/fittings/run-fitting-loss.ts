/**
 * The loss of one entry of a list of fittings, by the method of its kind.
 *
 * @module
 */
import { requireObject, requireOneOf, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import { darcyWeisbachLoss } from "../pipe/index.ts";
import { type Density, InputError, type KinematicViscosity, type Length, type VolumeFlow } from "../units/index.ts";
import { checkValveLoss } from "./check-valve.ts";
import { REFERENCE_DENSITY, valveLoss } from "./flow-coefficient.ts";
import { gradualContraction, gradualExpansion } from "./gradual-change.ts";
import { INSERT_TURNS, insertFittingCoefficient } from "./insert-fitting.ts";
import { lengthOverDiameterCoefficient } from "./length-over-diameter.ts";
import { lengthsOverDiameter } from "./lengths-over-diameter.ts";
import { headLossOf } from "./minor-loss.ts";
import { type FittingName, namedFittings } from "./named-fittings.ts";
import { ratedLoss } from "./rated-loss.ts";
import type { RunFitting } from "./run-fitting.ts";
import { threeKCoefficient } from "./three-k.ts";
import { threeKFittings } from "./three-k-fittings.ts";

/** Below this Reynolds number the water is at rest for every purpose; a coefficient would grow without bound. */
export const AT_REST: number = 1e-6;

/** From about this Reynolds number on a coefficient no longer changes with flow. */
const FULLY_TURBULENT = 1e4;

const KINDS: readonly RunFitting["kind"][] = [
  "named",
  "coefficient",
  "equivalent length",
  "insert",
  "bore change",
  "flow coefficient",
  "rated loss",
  "check valve",
];

/** The loss of one fitting at the flow of the run. */
export interface RunFittingLoss {
  readonly headLoss: number;
  readonly method: string;
  readonly insideRange: boolean;
  readonly name: string;
}

/** The run and the flow in it, checked. */
export interface Run {
  readonly flow: VolumeFlow;
  readonly insideDiameter: Length;
  readonly nominalSize: Length;
  readonly roughness: Length;
  readonly viscosity: KinematicViscosity;
}

/** One fitting by its own method. The nested functions check again; here an error names the entry of the list. */
export function lossOf(fitting: RunFitting, run: Run, reynolds: number, path: string): RunFittingLoss {
  requireObject(path, fitting);
  requireOneOf(`${path}.kind`, fitting.kind, KINDS);
  const { flow, insideDiameter } = run;
  switch (fitting.kind) {
    case "named": {
      requireOneOf(`${path}.fitting`, fitting.fitting, Object.keys(namedFittings));
      const { coefficient, method } = namedCoefficient(fitting.fitting, run, Math.max(reynolds, AT_REST));
      // The three-K method covers slow flow; one figure for every flow is one for turbulent flow.
      const insideRange = method === "darby-1999" || reynolds >= FULLY_TURBULENT || reynolds < AT_REST;
      return {
        headLoss: headLossOf(coefficient, flow, insideDiameter),
        method,
        insideRange,
        name: fitting.fitting,
      };
    }
    case "coefficient": {
      const { coefficient } = fitting;
      requireWithin(`${path}.coefficient`, coefficient, 0, 1e9, "");
      return {
        headLoss: headLossOf(coefficient, flow, insideDiameter),
        method: "given",
        insideRange: true,
        name: "fitting",
      };
    }
    case "equivalent length": {
      requireWithin(`${path}.length`, fitting.length, 0, 1e5, "m");
      const friction = darcyWeisbachLoss({ ...run, length: fitting.length });
      return {
        headLoss: friction.headLoss,
        method: "given",
        insideRange: friction.insideRange,
        name: "equivalent length",
      };
    }
    case "insert": {
      const { form, bore } = fitting;
      requireOneOf(`${path}.form`, form, Object.keys(INSERT_TURNS));
      if (bore !== undefined) requireWithin(`${path}.bore`, bore, insideDiameter / 10, insideDiameter, "m");
      const insert = insertFittingCoefficient({ ...fitting, ...run });
      return {
        headLoss: headLossOf(insert.coefficient ?? 0, flow, insideDiameter),
        method: insert.boreBasis === "measured" ? "derived" : "common practice",
        insideRange: insert.insideRange,
        name: `insert ${form}`,
      };
    }
    case "bore change": {
      const { to, angle = Math.PI } = fitting;
      requireWithin(`${path}.to`, to, insideDiameter / 20, insideDiameter * 20, "m (1/20 to 20 times the run's bore)");
      requireWithin(`${path}.angle`, angle, 0, Math.PI, "rad");
      const coefficient = boreChangeCoefficient(insideDiameter, to, angle, flow < 0);
      const headLoss = headLossOf(coefficient, flow, insideDiameter);
      return { headLoss, method: "crane-410", insideRange: true, name: to > insideDiameter ? "widening" : "narrowing" };
    }
    case "flow coefficient": {
      requireWithin(`${path}.Kv`, fitting.Kv, 1e-9, 1e9, "m³/h/bar^0.5");
      return {
        headLoss: head(valveLoss({ Kv: fitting.Kv, flow })),
        method: "iec-60534-2-1",
        insideRange: true,
        name: "valve",
      };
    }
    case "rated loss": {
      const { ratedFlow, ratedLoss: rated, exponent = 2 } = fitting;
      requireWithin(`${path}.ratedFlow`, ratedFlow, 1e-9, 1e3, "m³/s");
      requireWithin(`${path}.ratedLoss`, rated, 0, 1e8, "Pa");
      requireWithin(`${path}.exponent`, exponent, 1, 2, "");
      const { pressureLoss, insideRange } = ratedLoss({ ratedFlow, ratedLoss: rated, exponent, flow });
      return { headLoss: head(pressureLoss), method: "given", insideRange, name: "rated loss" };
    }
    case "check valve": {
      const { coefficient, crackingPressure, minimumFlow = 0 as VolumeFlow } = fitting;
      requireWithin(`${path}.coefficient`, coefficient, 0.01, 1e6, "");
      requireWithin(`${path}.crackingPressure`, crackingPressure, 0, 1e6, "Pa");
      requireWithin(`${path}.minimumFlow`, minimumFlow, 0, 1e3, "m³/s");
      if (flow < 0) throw new InputError("flow", flow, `0 m³/s or more, since ${path} is a check valve`);
      const density = REFERENCE_DENSITY as Density;
      const valve = checkValveLoss({ flow, insideDiameter, coefficient, crackingPressure, minimumFlow, density });
      return {
        headLoss: valve.headLoss,
        method: "derived",
        insideRange: valve.state !== "part open",
        name: "check valve",
      };
    }
  }
}

/** The coefficient of a named fitting, and the id of where it comes from. */
function namedCoefficient(
  name: FittingName,
  { nominalSize, insideDiameter }: Run,
  reynolds: number,
): { readonly coefficient: number; readonly method: string } {
  const how = namedFittings[name];
  if ("threeK" in how) {
    const constants = threeKFittings[how.threeK];
    return { coefficient: threeKCoefficient({ constants, reynolds, nominalSize }), method: "darby-1999" };
  }
  if ("lengthOverDiameter" in how) {
    const lengthOverDiameter = lengthsOverDiameter[how.lengthOverDiameter];
    return { coefficient: lengthOverDiameterCoefficient({ lengthOverDiameter, insideDiameter }), method: "crane-410" };
  }
  return how;
}

/** The coefficient of a change of bore, carried from the narrow side to the run. */
function boreChangeCoefficient(run: Length, to: Length, angle: number, backwards: boolean): number {
  const narrows = to < run;
  const change = { smallDiameter: narrows ? to : run, largeDiameter: narrows ? run : to, angle };
  const coefficient = narrows === backwards ? gradualExpansion(change) : gradualContraction(change);
  return coefficient * (run / change.smallDiameter) ** 4;
}

/** Head of a pressure lost by cold water. */
function head(pressureLoss: number): number {
  return pressureLoss / (REFERENCE_DENSITY * STANDARD_GRAVITY);
}
