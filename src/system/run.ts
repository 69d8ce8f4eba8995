/**
 * The clockwork of a run: from stretch to stretch of time, each ended by the use, a sample or the plant itself.
 *
 * @module
 */
import { bankWater } from "../tank/bank.ts";
import type { Duration, Energy, Frequency, GaugePressure, Length, Ratio, Volume, VolumeFlow } from "../units/index.ts";
import type { CompiledSystem } from "./compile.ts";
import type { Plant } from "./plant.ts";
import type { DemandSegment, Simulation, SystemSample } from "./simulation.ts";
import type { Tally } from "./tally.ts";

/** Two starts are alike when the well's level differs by less than this, m. */
const SAME_LEVEL = 1e-11;

/** A checked run. */
export interface RunInput {
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

/** Runs a plant to the end of its time. */
export function run(system: CompiledSystem, plant: Plant, input: RunInput): Simulation {
  const { demand, patternEnds, duration, sampleEvery, mostSteps, tally } = input;
  const patternLength = patternEnds.at(-1) as number;
  const samples: SystemSample[] = [];
  const waterAtStart = plant.water;
  // In one object, changed in place: variables shared with the functions below would be boxed anew at every change.
  const clock = { time: 0, on: false, heldUntil: Number.NEGATIVE_INFINITY, pastCurve: false };
  let wanted = 0;
  let pumped = 0;
  let refused = 0;
  let energy = 0;
  let runTime = 0;
  let nextSample = sampleEvery < Number.POSITIVE_INFINITY ? 0 : Number.POSITIVE_INFINITY;
  let steps = 0;
  const cycle: Cycle = { open: false, elapsed: 0, runTime: 0, pumped: 0, energy: 0, memory: 0 };
  let state: Simulation["state"] = storesBetween(system) ? "completed" : "no storage";

  const sample = (): SystemSample => ({
    time: clock.time as Duration,
    pressure: plant.pressure as GaugePressure,
    water: plant.water as Volume,
    depth: plant.depth() as Length,
    flow: plant.flow as VolumeFlow,
    pumpRunning: clock.on,
  });
  const lowLevel = (): void => {
    tally.event(clock.time, "low level", plant);
    tally.stop(clock.time);
    clock.on = false;
    cycle.open = false;
    plant.stop();
    const { restartDelay, restartLevel } = system.lowLevel as NonNullable<CompiledSystem["lowLevel"]>;
    clock.heldUntil = clock.time + Math.max(restartDelay, plant.recoveryTime(restartLevel));
  };
  const lookAtCurve = (): void => {
    if (plant.flow >= system.mostFlow && system.endOfCurve) clock.pastCurve = true;
  };
  const startPump = (use: number): void => {
    clock.on = true;
    tally.start(clock.time);
    tally.event(clock.time, "pump starts", plant);
    if (!plant.start(use)) lowLevel();
    lookAtCurve();
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
        lookAtCurve();
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
            tally.event(clock.time, "pump stops", plant);
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
            tally.event(clock.time, "tank empty", plant);
            break;
          case "given up":
            state = "too many steps";
            break;
          case "ran dry":
            tally.event(clock.time, "ran dry", plant);
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
    insideRange: !clock.pastCurve,
  };
}

/** Whether the tanks take any water between start and stop. */
function storesBetween({ bank, cutIn, cutOut }: CompiledSystem): boolean {
  return bankWater(bank, cutOut) > bankWater(bank, cutIn);
}

function finiteOrNull(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}
