/**
 * The steady flow and the heads of a simulated line before the event.
 *
 * @module
 */
import { InputError } from "../units/index.ts";
import { type EndLaw, endLaw } from "./line-end.ts";
import type { LineGrid } from "./line-grid.ts";
import type { SurgeSimulationInput } from "./simulation-types.ts";

/** A steady state of the line. */
export interface SteadyStart {
  /** Flow along the line, m³/s. */
  readonly flow: number;
  /** Head of each node, m. */
  readonly heads: Float64Array;
}

/** Solves the laws of both ends and the friction between them at time 0. */
export function steadyStart(input: SurgeSimulationInput, grid: LineGrid): SteadyStart {
  const start = endLaw(input.start, "start", 0);
  const end = endLaw(input.end, "end", 0);
  const resistance = grid.resistance.reduce((sum, r) => sum + r, 0);
  for (const side of ["start", "end"] as const) {
    const { [side]: lineEnd } = input;
    if (lineEnd.kind !== "flow") continue;
    for (const { flow } of lineEnd.flows) refuseTooFast(`${side}.flows`, flow, grid.smallestArea);
  }
  const flow = steadyFlow(input, start, end, resistance);
  refuseTooFast("pipes", flow, grid.smallestArea);

  const nodes = grid.distance.length;
  const heads = new Float64Array(nodes);
  // The head is known at an end that sets one; friction gives the rest.
  const drop = (reach: number): number => (grid.resistance[reach] as number) * flow * Math.abs(flow);
  if ("head" in start) {
    heads[0] = start.head - start.k * flow * Math.abs(flow);
    for (let i = 1; i < nodes; i++) heads[i] = (heads[i - 1] as number) - drop(i - 1);
    // A pump too weak to open its check valve: the other end holds the line.
    if (!(input.start.kind === "pump" && flow === 0 && "head" in end)) return possible(input, { flow, heads });
  }
  if (!("head" in end)) throw new InputError("end", input.end, "an end that sets a head, since the start sets none");
  heads[nodes - 1] = end.head + end.k * flow * Math.abs(flow);
  for (let i = nodes - 2; i >= 0; i--) heads[i] = (heads[i + 1] as number) + drop(i);
  return possible(input, { flow, heads });
}

/** No water line stands under more, m: it takes a flow forced through a valve all but shut. */
const HIGHEST = 1e5;

function possible(input: SurgeSimulationInput, steady: SteadyStart): SteadyStart {
  if (steady.heads.some((head) => !(Math.abs(head) <= HIGHEST))) {
    throw new InputError("end", input.end, `ends between which the steady heads stay within ${HIGHEST} m`);
  }
  return steady;
}

/** No water line runs faster, m/s: beyond it the input has a slip, or nothing that holds the flow back. */
const FASTEST = 100;

function steadyFlow(input: SurgeSimulationInput, start: EndLaw, end: EndLaw, resistance: number): number {
  if ("head" in start && "head" in end) {
    const drive = start.head - end.head;
    if (drive === 0 || (drive < 0 && input.start.kind === "pump")) return 0;
    return Math.sign(drive) * Math.sqrt(Math.abs(drive) / (resistance + start.k + end.k));
  }
  const flow = "flow" in start ? start.flow : "flow" in end ? 0 - end.flow : 0;
  if ("flow" in start && "flow" in end && start.flow !== 0 - end.flow) {
    throw new InputError("end", input.end, "the flow that the start of the line lays down");
  }
  if (input.start.kind === "pump" && flow < 0) {
    throw new InputError("end", input.end, "a flow that does not run back through the check valve");
  }
  return flow;
}

/** Refuses a flow faster than any water line's; infinity too, where two fixed heads meet without friction. */
function refuseTooFast(parameter: string, flow: number, smallestArea: number): void {
  if (!(Math.abs(flow) <= FASTEST * smallestArea)) {
    throw new InputError(parameter, flow, `a flow of at most ${FASTEST} m/s in the smallest pipe`);
  }
}
