/**
 * The running system in time: every start, stop and shortage, found exactly and not by small steps.
 *
 * @module
 */
import { requireList, requireObject, requireWhole, requireWithin } from "../numeric/index.ts";
import { InputError } from "../units/index.ts";
import { type CompiledSystem, compileSystem } from "./compile.ts";
import type { Plant } from "./plant.ts";
import { run } from "./run.ts";
import type { DemandSegment, RunStart, Simulation, SimulationInput } from "./simulation.ts";
import { steadyPlant } from "./steady-plant.ts";
import { storingPlant } from "./storing-plant.ts";
import { Tally } from "./tally.ts";

/** Segments worked through in all; more would be a slip in the units. */
const MOST_SEGMENTS = 2e7;

/** A well whose level answers in less time than this, s, keeps no memory: the run leaves out other lags of a second too. */
const SHORTEST_LAG = 1;

/**
 * Runs a system of well, pump, main, control and tanks through a pattern of use.
 *
 * @remarks
 * Between events the state follows from dw/dt = Q − q (w water in the tanks, Q the pump's flow against the pressure there,
 * q the use); in a well with a free area A, A ds/dt = Q − Q_in(s) as well (s drawdown, Q_in what flows in by the well's
 * law). Events are found, not stepped over: without a free area, times are integrals along the pump's curve by
 * quadrature (relative error below 1e-11), and cycles alike are counted by division; with one, an embedded Runge–Kutta
 * pair of orders 5 and 4 keeps 1e-9 a step. Where the tanks are empty the use gets what the pump can give at the
 * pressure of the open air, and the rest is refused. Inertia of water and motor, and lags of switch and valve, are
 * left out: all are over within seconds.
 *
 * @param input - system, use, length of the run, and what to keep; each field says its unit and the values it takes
 * @returns counts, volumes, energy, and as many events and samples as were asked for
 * @throws {@link units.InputError} naming the first field that cannot be used
 *
 * @example A day of 3 gpm on a 12 gpm pump
 * ```ts
 * import { pumpCurve } from "risingmain/pump";
 * import { simulate } from "risingmain/system";
 * import { days, feet, gpm, kilogramsPerCubicMetre, psi, standardAtmospheres, usGallons } from "risingmain/units";
 * import { singleTestLaw } from "risingmain/well";
 *
 * const pump = pumpCurve({
 *   points: [
 *     { flow: gpm(0), head: feet(400) },
 *     { flow: gpm(10), head: feet(300) },
 *     { flow: gpm(20), head: feet(0) },
 *   ],
 * });
 * const run = simulate({
 *   system: {
 *     pump,
 *     well: { staticLevel: feet(100), law: singleTestLaw({ flow: gpm(20), drawdown: feet(40) }) },
 *     rise: feet(5),
 *     mainLoss: [{ flow: gpm(10), headLoss: feet(6) }],
 *     control: { kind: "switch", cutIn: psi(40), cutOut: psi(60) },
 *     tanks: [{ volume: usGallons(85), precharge: psi(38) }],
 *     atmosphere: standardAtmospheres(1),
 *     density: kilogramsPerCubicMetre(999.7),
 *   },
 *   demand: [{ duration: days(1), flow: gpm(3) }],
 *   duration: days(1),
 * });
 * run.starts; // => 148
 * run.mostStartsInAnHour; // => 7
 * ```
 *
 * @source derived: continuity of water, and the head the pump and the system agree on
 */
export function simulate(input: SimulationInput): Simulation {
  requireObject("input", input);
  const { demand, duration, start = {}, keepEvents = 1000, sampleEvery, keepDays = 0, mostSteps = 5e6 } = input;
  const system = compileSystem(input.system);
  requireWithin("duration", duration, 1e-3, 100 * 366 * 86400, "s");
  const patternEnds = checkedPattern(demand);
  const segmentsInAll = (duration / (patternEnds.at(-1) as number)) * demand.length;
  if (!(segmentsInAll <= MOST_SEGMENTS)) {
    throw new InputError("duration", duration, `at most ${MOST_SEGMENTS} segments of use in all`);
  }
  requireWhole("keepEvents", keepEvents, 0, 1e7);
  requireWhole("keepDays", keepDays, 0, 40_000);
  requireWhole("mostSteps", mostSteps, 1, 1e9);
  if (sampleEvery !== undefined) requireWithin("sampleEvery", sampleEvery, duration / 1e7, 1e11, "s");
  const plant = beginPlant(system, start, mostSteps);
  return run(system, plant, {
    demand,
    patternEnds,
    duration,
    sampleEvery: sampleEvery ?? Number.POSITIVE_INFINITY,
    mostSteps,
    pumpRunning: start.pumpRunning === true && plant.pressure < system.cutOut,
    tally: new Tally(keepEvents, keepDays),
    motorKnown: input.system.motorEfficiency !== undefined,
  });
}

/** The ends of the segments, counted from the beginning of the pattern. */
function checkedPattern(demand: readonly DemandSegment[]): readonly number[] {
  requireList("demand", demand, 1, 1_000_000);
  let end = 0;
  return demand.map((segment, i) => {
    requireObject(`demand[${i}]`, segment);
    requireWithin(`demand[${i}].duration`, segment.duration, 1e-3, 10 * 366 * 86400, "s");
    requireWithin(`demand[${i}].flow`, segment.flow, 0, 100, "m³/s");
    end += segment.duration;
    return end;
  });
}

function beginPlant(system: CompiledSystem, start: RunStart, mostSteps: number): Plant {
  requireObject("start", start);
  const { pressure = system.cutOut, pumpRunning = false, drawdown = 0 } = start;
  requireWithin("start.pressure", pressure, 0, 1e8, "Pa gauge");
  requireWithin("start.drawdown", drawdown, 0, 1e4, "m");
  if (typeof pumpRunning !== "boolean") throw new InputError("start.pumpRunning", pumpRunning, "true or false");
  const begin = { pressure, drawdown, mostSteps };
  // A bore that fills within a second follows the flow at once, as far as a pump's cycle goes.
  const lag = system.freeArea * (system.aquiferLoss + 2 * system.wellLoss * system.mostFlow);
  return lag >= SHORTEST_LAG ? storingPlant(system, begin) : steadyPlant(system, begin);
}
