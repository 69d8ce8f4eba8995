/**
 * What a run counts: starts, runs, events; in memory that does not grow beyond what the caller asked for.
 *
 * @module
 */
import type { Duration, GaugePressure, Length } from "../units/index.ts";
import type { Plant } from "./plant.ts";

/** What happened. */
export type SystemEventKind = "pump starts" | "pump stops" | "low level" | "tank empty" | "ran dry";

/** Something that happened, and how things stood just then. */
export interface SystemEvent {
  /** Time since the start of the run, s. */
  readonly time: Duration;
  /** What happened. */
  readonly kind: SystemEventKind;
  /** Gauge pressure at the switch, Pa. */
  readonly pressure: GaugePressure;
  /** Depth of the water in the well, m. */
  readonly depth: Length;
}

const HOUR = 3600;
const DAY = 86400;

/** Starts in the bin of time now open, and the most in any so far. */
interface Bin {
  index: number;
  count: number;
  most: number;
}

/** Counts as time goes on. */
export class Tally {
  readonly events: SystemEvent[] = [];
  readonly startsByDay: number[] = [];
  eventCount = 0;
  starts = 0;
  runTime = 0;
  shortestRun: number = Number.POSITIVE_INFINITY;
  shortestCycle: number = Number.POSITIVE_INFINITY;
  readonly #keepEvents: number;
  readonly #keepDays: number;
  readonly #hour: Bin = { index: -1, count: 0, most: 0 };
  readonly #day: Bin = { index: -1, count: 0, most: 0 };
  #lastStart = Number.NEGATIVE_INFINITY;

  constructor(keepEvents: number, keepDays: number) {
    this.#keepEvents = keepEvents;
    this.#keepDays = keepDays;
  }

  /** Whether further events are only counted. */
  get full(): boolean {
    return this.events.length >= this.#keepEvents;
  }

  get mostStartsInAnHour(): number {
    return this.#hour.most;
  }

  get mostStartsInADay(): number {
    return this.#day.most;
  }

  event(time: number, kind: SystemEventKind, plant: Pick<Plant, "pressure" | "depth">): void {
    this.eventCount++;
    if (this.full) return;
    this.events.push({
      time: time as Duration,
      kind,
      pressure: plant.pressure as GaugePressure,
      depth: plant.depth() as Length,
    });
  }

  start(time: number): void {
    this.shortestCycle = Math.min(this.shortestCycle, time - this.#lastStart);
    this.#lastStart = time;
    this.starts++;
    this.#add(this.#hour, Math.floor(time / HOUR), 1);
    this.#add(this.#day, Math.floor(time / DAY), 1);
    this.#addDay(Math.floor(time / DAY), 1);
  }

  /** The end of a run; one whose start was not seen is endless, and shortest of none. */
  stop(time: number): void {
    this.shortestRun = Math.min(this.shortestRun, time - this.#lastStart);
  }

  /** `count` cycles alike, of `period` seconds, the first of them starting at `time` + `period`. */
  cycles(time: number, period: number, count: number): void {
    this.starts += count;
    this.eventCount += 2 * count;
    this.shortestCycle = Math.min(this.shortestCycle, period);
    this.#lastStart = time + period * count;
    this.#spread(HOUR, time, period, count, (index, n) => this.#add(this.#hour, index, n));
    this.#spread(DAY, time, period, count, (index, n) => {
      this.#add(this.#day, index, n);
      this.#addDay(index, n);
    });
  }

  /** How many of a row of starts fall into each bin of time: by division, whatever their number. */
  #spread(width: number, time: number, period: number, count: number, add: (index: number, n: number) => void): void {
    let done = 0;
    for (let index = Math.floor((time + period) / width); done < count; index++) {
      const until = Math.min(count, Math.max(done, Math.ceil(((index + 1) * width - time) / period) - 1));
      if (until > done) add(index, until - done);
      done = until;
    }
  }

  #add(bin: Bin, index: number, n: number): void {
    bin.count = index === bin.index ? bin.count + n : n;
    bin.index = index;
    bin.most = Math.max(bin.most, bin.count);
  }

  #addDay(index: number, n: number): void {
    if (index >= this.#keepDays) return;
    while (this.startsByDay.length <= index) this.startsByDay.push(0);
    this.startsByDay[index] = (this.startsByDay[index] as number) + n;
  }
}
