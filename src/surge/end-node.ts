/**
 * The node at an end of a simulated line: the line's wave, the end's law, a tank beside it, and a cavity if it boils.
 *
 * @module
 */
import type { GaugePressure, Volume } from "../units/index.ts";
import { airPressure, fillTank, settledTank, type TankSite, type TankState, tankFlow } from "./air-tank.ts";
import { type EndLaw, endLaw, flowAtHead, flowInto } from "./line-end.ts";
import type { AirTank, LineEnd, PumpEnd } from "./line-end-types.ts";
import type { AirTankSwing } from "./simulation-types.ts";

/** An end as the simulation carries it from step to step. */
export interface EndNode {
  /** What is there. */
  readonly end: LineEnd | PumpEnd;
  /** Which end of the line. */
  readonly at: "start" | "end";
  /** Where it stands. */
  readonly site: TankSite;
  /** Head at which the water boils there, m above the datum. */
  readonly boilingHead: number;
  /** The tank beside it, and its extremes so far. */
  readonly tank?: { readonly given: AirTank; readonly state: TankState; mostAir: number; leastAir: number };
  /** Volume of the cavity, m³. */
  cavity: number;
  /** Flow through the end into the node at the last step, m³/s. */
  passing: number;
  /** Whether the check valve stands open. */
  open: boolean;
  /** When the flow through the open check valve turned, s; undefined while it runs forwards. */
  turned: number | undefined;
  /** When the check valve first shut after the stop, s, and the flow through it just before. */
  shut: { readonly time: number; readonly flow: number } | undefined;
}

/** Head of the node and flow into the line. */
export interface NodeState {
  /** Head, m. */
  readonly head: number;
  /** Flow into the line, m³/s. */
  readonly into: number;
}

/** An end in balance before the event, with the flow into the line. */
export function settledEnd(
  place: Pick<EndNode, "end" | "at" | "site" | "boilingHead">,
  { head, into }: NodeState,
): EndNode {
  const given = place.end.kind === "fixed head" ? undefined : place.end.airTank;
  const node = { ...place, cavity: 0, passing: into, open: into > 0, turned: undefined, shut: undefined };
  if (given === undefined) return node;
  const state = settledTank(given, place.site, head);
  return { ...node, tank: { given, state, mostAir: state.air, leastAir: state.air } };
}

/** Moves an end by one step, beside a line that obeys H = C + B q with q the flow into it. */
export function stepEnd(node: EndNode, time: number, timeStep: number, C: number, B: number): NodeState {
  const law = endLaw(node.end, node.at, time);
  if (node.end.kind === "fixed head") return { head: node.end.head, into: (node.end.head - C) / B };

  const checked = checkValve(node, time);
  // With the tank taking `flow`, the line is met as if its C were lower by B · flow.
  const passingWith = (flow: number): number => checked(flowInto(law, C - B * flow, B));
  const headWith = (flow: number): number => C + B * (passingWith(flow) - flow);
  let taken = tankTakes(node, timeStep, headWith);
  let passing = passingWith(taken);
  let head = headWith(taken);
  if (node.cavity > 0 || head < node.boilingHead) {
    const held = heldAtBoiling(node, law, checked, timeStep, C, B);
    node.cavity = Math.max(0, held.cavity);
    if (held.cavity > 0) ({ taken, passing, head } = held);
  }
  if (node.tank !== undefined) {
    fillTank(node.tank.given, node.tank.state, timeStep, taken);
    node.tank.mostAir = Math.max(node.tank.mostAir, node.tank.state.air);
    node.tank.leastAir = Math.min(node.tank.leastAir, node.tank.state.air);
  }
  noteCheckValve(node, time, passing);
  return { head, into: (head - C) / B };
}

/** The node held at the boiling head, where line and end no longer agree and the cavity makes up the difference. */
function heldAtBoiling(
  node: EndNode,
  law: EndLaw,
  checked: (flow: number) => number,
  timeStep: number,
  C: number,
  B: number,
): { readonly taken: number; readonly passing: number; readonly head: number; readonly cavity: number } {
  const head = node.boilingHead;
  const passing = checked(flowAtHead(law, head));
  const taken = tankTakes(node, timeStep, () => head);
  return { taken, passing, head, cavity: node.cavity + timeStep * ((head - C) / B - passing + taken) };
}

function tankTakes({ tank, site }: EndNode, timeStep: number, headAt: (flow: number) => number): number {
  return tank === undefined ? 0 : tankFlow(tank.given, tank.state, site, timeStep, headAt);
}

/** What the check valve lets through of a flow: all of it at an end without one, or while the open valve is late. */
function checkValve(node: EndNode, time: number): (flow: number) => number {
  if (node.end.kind !== "pump") return (flow) => flow;
  const late = node.open && time - (node.turned ?? time) < node.end.checkValveDelay;
  return (flow) => (flow < 0 && !late ? 0 : flow);
}

function noteCheckValve(node: EndNode, time: number, passing: number): void {
  if (node.end.kind !== "pump") return;
  node.turned = passing < 0 ? (node.turned ?? time) : undefined;
  const shuts = node.open && passing === 0;
  if (shuts && time > node.end.stopTime) node.shut ??= { time, flow: Math.min(0, node.passing) };
  node.open = passing !== 0;
  node.passing = passing;
}

/** The motion of an end's tank, for the result. */
export function tankSwing({ at, site, tank }: EndNode): readonly AirTankSwing[] {
  if (tank === undefined) return [];
  const gauge = (air: number): GaugePressure =>
    (airPressure(tank.given, tank.state, air) - site.atmosphere) as GaugePressure;
  return [
    {
      at,
      highestPressure: gauge(tank.leastAir),
      lowestPressure: gauge(tank.mostAir),
      leastWater: (tank.given.volume - tank.mostAir) as Volume,
      mostWater: (tank.given.volume - tank.leastAir) as Volume,
    },
  ];
}
