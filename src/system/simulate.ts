/**
 * The running system in time: every start, stop and shortage, found exactly and not by small steps.
 *
 * @module
 */
import { requireList, requireObject, requireWhole, requireWithin } from "../numeric/index.ts";
import { bankWater } from "../tank/bank.ts";
import {
  type Duration,
  type Energy,
  type Frequency,
  type GaugePressure,
  InputError,
  type Length,
  type Ratio,
  type Volume,
  type VolumeFlow,
} from "../units/index.ts";
import { type CompiledSystem, compileSystem } from "./compile.ts";
import type { RunningSystem } from "./description.ts";
import { emptyPressure } from "./locus.ts";
import type { Plant } from "./plant.ts";
import { steadyPlant } from "./steady-plant.ts";
import { storingPlant } from "./storing-plant.ts";
import { type SystemEvent, Tally } from "./tally.ts";

/** A use that stays the same for a time. */
export interface DemandSegment {
  /** How long it lasts. 0.001 s to 10 years. */
  readonly duration: Duration;
  /** Flow wanted. 0 to 100 m³/s. */
  readonly flow: VolumeFlow;
}

/** How things stand when a run begins. */
export interface RunStart {
  /** Gauge pressure at the switch; the stop pressure if left out. 0 to 100 MPa. */
  readonly pressure?: GaugePressure;
  /** Whether the pump is running; not, if left out. Below the start pressure it starts anyway. */
  readonly pumpRunning?: boolean;
  /** Drawdown in a well with a free area; 0 if left out. 0 to 10 000 m. */
  readonly drawdown?: Length;
}

/** A system, what is drawn from it, and what the caller wants to keep. */
export interface SimulationInput {
  /** The system. */
  readonly system: RunningSystem;
  /** The use, 1 to 1 000 000 segments, begun again when it ends. */
  readonly demand: readonly DemandSegment[];
  /** Length of the run. 0.001 s to 100 years. */
  readonly duration: Duration;
  /** How things stand at its beginning. */
  readonly start?: RunStart;
  /** Most events to keep; further ones are only counted, which is quicker. 1000 if left out. 0 to 10 000 000. */
  readonly keepEvents?: number;
  /** Time between samples; none are taken if left out. Such that there are at most 10 000 000. */
  readonly sampleEvery?: Duration;
  /** Days for which the starts of each are kept; 0 if left out. 0 to 40 000. */
  readonly keepDays?: number;
  /**
   * Most stretches of time, and steps of integration, to work through one by one before giving up. A year of 100 000
   * events takes some 200 000, with a storing well some 4 000 000. 5 000 000 if left out. 1 to 1e9.
   */
  readonly mostSteps?: number;
}

/** How things stood at a sampled time. */
export interface SystemSample {
  /** Time since the start of the run, s. */
  readonly time: Duration;
  /** Gauge pressure at the switch, Pa. */
  readonly pressure: GaugePressure;
  /** Water in the tanks that a tap can have, m³. */
  readonly water: Volume;
  /** Depth of the water in the well, m. */
  readonly depth: Length;
  /** Flow of the pump, m³/s. */
  readonly flow: VolumeFlow;
  /** Whether the pump is switched on. */
  readonly pumpRunning: boolean;
}

/** What a run came to. */
export interface Simulation {
  /**
   * - "completed": to its end.
   * - "ran dry": the water fell to the intake, and the run ended there.
   * - "no storage": the tanks hold no water between start and stop, so the pump would start without end.
   * - "too many steps": `mostSteps` was reached first.
   */
  readonly state: "completed" | "ran dry" | "no storage" | "too many steps";
  /** Length of time run, s. */
  readonly time: Duration;
  /** Number of starts. */
  readonly starts: number;
  /** Starts over time, Hz; 0 where no time was run. */
  readonly startRate: Frequency;
  /** Most starts in any one hour counted from the beginning. */
  readonly mostStartsInAnHour: number;
  /** Most starts in any one day counted from the beginning. */
  readonly mostStartsInADay: number;
  /** Starts of each of the first `keepDays` days, up to the last that had one. */
  readonly startsByDay: readonly number[];
  /** Shortest run from a start to a stop; null where no run ended. */
  readonly shortestRun: Duration | null;
  /** Shortest time from one start to the next; null with fewer than two. */
  readonly shortestCycle: Duration | null;
  /** Time the pump ran, s. */
  readonly runTime: Duration;
  /** Energy used, J; null where the pump's curve says nothing of power. */
  readonly energy: Energy | null;
  /** Where the energy is counted: at the wire with a motor efficiency, otherwise at the pump's shaft. */
  readonly energyAt: "wire" | "shaft";
  /** Volume pumped, m³. */
  readonly pumped: Volume;
  /** Volume delivered to the use, m³. */
  readonly delivered: Volume;
  /** Volume wanted and not delivered, m³. */
  readonly refused: Volume;
  /** Water in the tanks at the end less that at the start, m³. */
  readonly storedChange: Volume;
  /** (Pumped − delivered − stored change) over the largest volume at hand, the tanks' water included: rounding and quadrature. */
  readonly balanceError: Ratio;
  /** The first `keepEvents` events. */
  readonly events: readonly SystemEvent[];
  /** Number of events in all. */
  readonly eventCount: number;
  /** Samples, where they were asked for. */
  readonly samples: readonly SystemSample[];
  /** How things stand at the end. */
  readonly end: SystemSample;
  /** False where the pump ran past the end of its curve, its flow there being held at the last point. */
  readonly insideRange: boolean;
}

/** Segments worked through in all; more would be a slip in the units. */
const MOST_SEGMENTS = 2e7;

/** A well whose level answers in less time than this, s, keeps no memory: the run leaves out other lags of a second too. */
const SHORTEST_LAG = 1;

/** Two starts are alike when the well's level differs by less than this, m. */
const SAME_LEVEL = 1e-11;

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

interface RunInput {
  readonly demand: readonly DemandSegment[];
  readonly patternEnds: readonly number[];
  readonly duration: number;
  readonly sampleEvery: number;
  readonly mostSteps: number;
  readonly pumpRunning: boolean;
  readonly tally: Tally;
  readonly motorKnown: boolean;
}

/** What went by since the last start, for cycles that repeat. */
interface Cycle {
  /** True from a start on, while nothing but one stop has happened under the same use. */
  open: boolean;
  elapsed: number;
  runTime: number;
  pumped: number;
  energy: number;
  /** The well's drawdown at that start. */
  memory: number;
}

function run(system: CompiledSystem, plant: Plant, input: RunInput): Simulation {
  const { demand, patternEnds, duration, sampleEvery, mostSteps, tally } = input;
  const patternLength = patternEnds.at(-1) as number;
  const samples: SystemSample[] = [];
  const waterAtStart = plant.water;
  // In one object, changed in place: variables shared with the functions below would be boxed anew at every change.
  const clock = { time: 0, on: false, heldUntil: Number.NEGATIVE_INFINITY };
  let wanted = 0;
  let pumped = 0;
  let refused = 0;
  let energy = 0;
  let runTime = 0;
  let nextSample = sampleEvery < Number.POSITIVE_INFINITY ? 0 : Number.POSITIVE_INFINITY;
  let steps = 0;
  let pastCurve = false;
  const cycle: Cycle = { open: false, elapsed: 0, runTime: 0, pumped: 0, energy: 0, memory: 0 };
  let state: Simulation["state"] = storesBetween(system) ? "completed" : "no storage";

  const sample = (): SystemSample => ({
    time: clock.time as Duration,
    pressure: plant.pressure as GaugePressure,
    water: plant.water as Volume,
    depth: plant.depth as Length,
    flow: plant.flow as VolumeFlow,
    pumpRunning: clock.on,
  });
  const lowLevel = (): void => {
    tally.event(clock.time, "low level", plant.pressure, plant.depth);
    tally.stop(clock.time);
    clock.on = false;
    cycle.open = false;
    plant.stop();
    const { restartDelay, restartLevel } = system.lowLevel as NonNullable<CompiledSystem["lowLevel"]>;
    clock.heldUntil = clock.time + Math.max(restartDelay, plant.recoveryTime(restartLevel));
  };
  const startPump = (use: number): void => {
    clock.on = true;
    tally.start(clock.time);
    tally.event(clock.time, "pump starts", plant.pressure, plant.depth);
    if (!plant.start(use)) lowLevel();
  };

  if (state === "completed") {
    if (input.pumpRunning) {
      clock.on = true;
      if (!plant.start((demand[0] as DemandSegment).flow)) lowLevel();
    }
    for (let segment = 0, round = 0; clock.time < duration && state === "completed"; ) {
      // Adding 0 makes an ordinary 0 of −0, by which a volume must not be divided.
      const use = (demand[segment] as DemandSegment).flow + 0;
      const until = Math.min(duration, round * patternLength + (patternEnds[segment] as number));
      cycle.open = false;
      while (clock.time < until && state === "completed") {
        if (clock.time >= nextSample) {
          samples.push(sample());
          nextSample = samples.length * sampleEvery;
        }
        if (++steps + plant.steps > mostSteps) {
          state = "too many steps";
          break;
        }
        const held = clock.heldUntil > clock.time;
        const stop = Math.min(until, nextSample, held && !clock.on ? clock.heldUntil : until);
        const limit = stop - clock.time;
        const wasOn = clock.on;
        const outcome = clock.on ? plant.running(limit, use) : plant.resting(limit, use, held);
        const { elapsed } = plant;
        // The end of a stretch that ran its length is where it was meant to be, not where rounding put it.
        clock.time = outcome === "limit" ? stop : Math.min(stop, clock.time + elapsed);
        wanted += use * elapsed;
        pumped += plant.pumped;
        refused += plant.refused;
        energy += plant.energy;
        if (wasOn) runTime += elapsed;
        if (plant.flow >= system.mostFlow && system.endOfCurve) pastCurve = true;
        cycle.elapsed += elapsed;
        cycle.pumped += plant.pumped;
        cycle.energy += plant.energy;
        if (wasOn) cycle.runTime += elapsed;
        switch (outcome) {
          case "limit":
            break;
          case "cut-out":
            clock.on = false;
            plant.stop();
            tally.stop(clock.time);
            tally.event(clock.time, "pump stops", plant.pressure, plant.depth);
            break;
          case "cut-in": {
            startPump(use);
            if (!clock.on || sampleEvery < Number.POSITIVE_INFINITY) break;
            if (cycle.open && tally.full && Math.abs(cycle.memory - plant.memory) <= SAME_LEVEL) {
              const alike = Math.floor((until - clock.time) / cycle.elapsed);
              if (alike > 0) {
                tally.cycles(clock.time, cycle.elapsed, alike);
                clock.time = Math.min(until, clock.time + alike * cycle.elapsed);
                wanted += use * cycle.elapsed * alike;
                pumped += cycle.pumped * alike;
                energy += cycle.energy * alike;
                runTime += cycle.runTime * alike;
              }
            }
            cycle.open = true;
            cycle.elapsed = cycle.runTime = cycle.pumped = cycle.energy = 0;
            cycle.memory = plant.memory;
            break;
          }
          case "low level":
            lowLevel();
            break;
          case "tank empty":
            cycle.open = false;
            tally.event(clock.time, "tank empty", plant.pressure, plant.depth);
            break;
          case "given up":
            state = "too many steps";
            break;
          case "ran dry":
            tally.event(clock.time, "ran dry", plant.pressure, plant.depth);
            state = "ran dry";
            break;
        }
      }
      segment++;
      if (segment === demand.length) {
        segment = 0;
        round++;
      }
    }
  }

  const storedChange = plant.water - waterAtStart;
  const delivered = wanted - refused;
  const largest = Math.max(pumped, delivered, waterAtStart, plant.water);
  return {
    state,
    time: clock.time as Duration,
    starts: tally.starts,
    startRate: (clock.time > 0 ? tally.starts / clock.time : 0) as Frequency,
    mostStartsInAnHour: tally.mostStartsInAnHour,
    mostStartsInADay: tally.mostStartsInADay,
    startsByDay: tally.startsByDay,
    shortestRun: finiteOrNull(tally.shortestRun) as Duration | null,
    shortestCycle: finiteOrNull(tally.shortestCycle) as Duration | null,
    runTime: runTime as Duration,
    energy: (system.power === undefined ? null : energy) as Energy | null,
    energyAt: input.motorKnown ? "wire" : "shaft",
    pumped: pumped as Volume,
    delivered: delivered as Volume,
    refused: refused as Volume,
    storedChange: storedChange as Volume,
    balanceError: (largest > 0 ? (pumped - delivered - storedChange) / largest : 0) as Ratio,
    events: tally.events,
    eventCount: tally.eventCount,
    samples,
    end: sample(),
    insideRange: !pastCurve,
  };
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

/** Whether the tanks take any water between start and stop. */
function storesBetween({ bank, cutIn, cutOut }: CompiledSystem): boolean {
  const empty = emptyPressure(bank);
  return bankWater(bank, cutOut) > bankWater(bank, Math.max(cutIn, empty)) && cutOut > empty;
}

function finiteOrNull(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}
