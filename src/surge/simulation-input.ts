/**
 * The gate in front of `simulate-surge.ts`: every field of its input in its range, and the cost bounded.
 *
 * @module
 */
import {
  requireList,
  requireObject,
  requireOneOf,
  requirePositive,
  requireWhole,
  requireWithin,
} from "../numeric/index.ts";
import { InputError } from "../units/index.ts";
import type { AirTank, FlowEnd, LineEnd, PumpEnd, ValveEnd } from "./line-end-types.ts";
import type { SurgeSimulationInput } from "./simulation-types.ts";

/** Reaches of a line where none are asked for: 50 draw a closure of one critical time in 100 steps. */
export const USUAL_REACHES = 50;

/** Refuses an input that is out of range anywhere. */
export function checkSimulation(input: SurgeSimulationInput): void {
  requireObject("input", input);
  requireList("pipes", input.pipes, 1, 100);
  for (const [i, pipe] of Array.from(input.pipes).entries()) {
    const at = `pipes[${i}]`;
    requireObject(at, pipe);
    requireWithin(`${at}.length`, pipe.length, 0.01, 1e5, "m");
    requireWithin(`${at}.insideDiameter`, pipe.insideDiameter, 1e-3, 10, "m");
    requireWithin(`${at}.waveSpeed`, pipe.waveSpeed, 10, 3000, "m/s");
    requireWithin(`${at}.frictionFactor`, pipe.frictionFactor, 0, 1, "");
    requireWithin(`${at}.endElevation`, pipe.endElevation, -1e4, 1e4, "m");
  }
  requireWithin("startElevation", input.startElevation, -1e4, 1e4, "m");
  checkEnd("start", input.start, ["fixed head", "closed", "valve", "flow", "pump"]);
  checkEnd("end", input.end, ["fixed head", "closed", "valve", "flow"]);
  requireWithin("density", input.density, 500, 2000, "kg/m³");
  requireWithin("vapourPressure", input.vapourPressure, 0, 1e5, "Pa");
  requireWithin("atmosphere", input.atmosphere, 0, 2e5, "Pa");
  if (!(input.atmosphere > input.vapourPressure)) {
    throw new InputError("atmosphere", input.atmosphere, "more than the vapour pressure");
  }
  requirePositive("duration", input.duration, 1e5, "s");
  const { reaches = USUAL_REACHES, probes = [] } = input;
  requireWhole("reaches", reaches, input.reaches === undefined ? 1 : input.pipes.length, 2000);
  requireList("probes", probes, 0, 50);
  const length = input.pipes.reduce((sum, pipe) => sum + pipe.length, 0);
  for (const [i, probe] of Array.from(probes).entries()) requireWithin(`probes[${i}]`, probe, 0, length, "m");
}

/** The number of steps, refused where the run would cost too much. */
export function stepsWithin(duration: number, timeStep: number, nodes: number, probes: number): number {
  const most = Math.min(200_000, 20e6 / nodes, 2e6 / probes);
  const steps = Math.ceil(duration / timeStep);
  if (!(steps <= most)) {
    const expected = `at most ${Math.floor(most)} time steps of ${timeStep} s; fewer reaches or probes make more room`;
    throw new InputError("duration", duration, expected);
  }
  return steps;
}

function checkEnd(at: "start" | "end", end: LineEnd | PumpEnd, kinds: readonly string[]): void {
  requireObject(at, end);
  requireOneOf(`${at}.kind`, end.kind, kinds);
  switch (end.kind) {
    case "fixed head":
      requireWithin(`${at}.head`, end.head, -1e4, 1e4, "m");
      return;
    case "closed":
      break;
    case "valve":
      checkValve(at, end);
      break;
    case "flow":
      checkRows(`${at}.flows`, end.flows, (row) => row.flow, "flow", -100, 100, "m³/s");
      break;
    case "pump":
      checkPump(at, end);
  }
  if (end.airTank !== undefined) checkTank(`${at}.airTank`, end.airTank);
}

function checkValve(at: string, end: ValveEnd): void {
  requireWithin(`${at}.outletHead`, end.outletHead, -1e4, 1e4, "m");
  requireWithin(`${at}.ratedFlow`, end.ratedFlow, 1e-9, 100, "m³/s");
  requireWithin(`${at}.ratedHeadLoss`, end.ratedHeadLoss, 1e-6, 1e4, "m");
  checkRows(`${at}.openings`, end.openings, (row) => row.opening, "opening", 0, 1, "");
}

function checkPump(at: string, end: PumpEnd): void {
  requireWithin(`${at}.sourceHead`, end.sourceHead, -1e4, 1e4, "m");
  requireWithin(`${at}.shutoffHead`, end.shutoffHead, 0.01, 1e4, "m");
  requireWithin(`${at}.ratedFlow`, end.ratedFlow, 1e-9, 100, "m³/s");
  requireWithin(`${at}.ratedHead`, end.ratedHead, 0, 1e4, "m");
  if (!(end.ratedHead < end.shutoffHead)) {
    throw new InputError(`${at}.ratedHead`, end.ratedHead, "less than the shutoff head");
  }
  requireWithin(`${at}.stopTime`, end.stopTime, 0, 1e6, "s");
  requireWithin(`${at}.halfSpeedTime`, end.halfSpeedTime, 0, 1e6, "s");
  requireWithin(`${at}.checkValveDelay`, end.checkValveDelay, 0, 1000, "s");
}

function checkRows<Row extends ValveEnd["openings"][number] | FlowEnd["flows"][number]>(
  at: string,
  rows: readonly Row[],
  value: (row: Row) => number,
  name: string,
  low: number,
  high: number,
  unit: string,
): void {
  requireList(at, rows, 1, 1000);
  let before = 0;
  for (const [i, row] of Array.from(rows).entries()) {
    requireObject(`${at}[${i}]`, row);
    requireWithin(`${at}[${i}].time`, row.time, before, 1e6, "s");
    requireWithin(`${at}[${i}].${name}`, value(row), low, high, unit);
    before = row.time;
  }
}

function checkTank(at: string, tank: AirTank): void {
  requireObject(at, tank);
  requireWithin(`${at}.volume`, tank.volume, 1e-6, 1e4, "m³");
  requireWithin(`${at}.precharge`, tank.precharge, -5e4, 1e8, "Pa");
  requireWithin(`${at}.exponent`, tank.exponent, 1, 1.4, "");
  requireWithin(`${at}.connectionDiameter`, tank.connectionDiameter, 1e-3, 10, "m");
  requireWithin(`${at}.connectionLoss`, tank.connectionLoss, 0, 1e4, "");
}
