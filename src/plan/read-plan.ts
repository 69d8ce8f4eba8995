/**
 * Whether a value is a plan, as far as its readers need to know.
 *
 * @module
 */
import { requireList, requireObject } from "../numeric/index.ts";
import { InputError } from "../units/index.ts";
import type { Plan } from "./plan-system.ts";

/** Names of the stages, for the check; power may be null. */
const STAGES = ["site", "demand", "well", "layout", "pump", "dropPipe", "controls", "tank", "disinfection"] as const;

/**
 * Reads a plan that may have been stored, edited or made up. What is plainly no plan is refused first; a part missing
 * further down shows when the reader trips over it, and is then the plan's fault, not the reader's.
 */
export function readPlan<T>(plan: Plan, read: (plan: Plan) => T): T {
  requirePlan(plan);
  try {
    return read(plan);
  } catch (error) {
    // An engine's own errors: a part that is missing, or so deep that writing it fills the stack.
    const { name, message } = error as Error;
    if (name === "TypeError" || name === "RangeError")
      throw new InputError("plan", plan, `a whole plan, as planSystem made it (${message})`);
    throw error;
  }
}

function requirePlan(plan: Plan): void {
  requireObject("plan", plan);
  if (plan.version !== 1) throw new InputError("plan.version", plan.version, "1: a plan from planSystem");
  if (typeof plan.name !== "string") throw new InputError("plan.name", plan.name, "a text");
  requireObject("plan.stages", plan.stages);
  for (const stage of STAGES) requireObject(`plan.stages.${stage}`, plan.stages[stage]);
  requireList("plan.findings", plan.findings, 0, 10_000);
  requireList("plan.commissioning", plan.commissioning, 0, 10_000);
  requireList("plan.cautions", plan.cautions, 0, 1000);
}
